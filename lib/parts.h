/* What the floors above need of parts that have been checked already. */
#ifndef VANE_LIB_PARTS_H
#define VANE_LIB_PARTS_H

#include "vane/parts.h"

#include <stdbool.h>

/* Checks the pointer and every field; error names begin with "parts.". */
bool vn_parts_check(const vane_parts *parts, vane_error *error);

vane_parts_gaps vn_parts_gaps(const vane_parts *parts);

/* Distance of the vanes round the rotor. */
double vn_parts_pitch(const vane_parts *parts);

/* Angle that the vane's thickness takes at a radius. */
double vn_parts_vane_angle(const vane_parts *parts, double radius);

/* Land between inlet port and outlet port (notch tip), and between outlet and inlet port. */
double vn_parts_large_land(const vane_parts *parts);
double vn_parts_small_land(const vane_parts *parts);

/* Middles of the lands, between which the under-vane groove faces the inlet or the outlet. */
double vn_parts_large_middle(const vane_parts *parts);
double vn_parts_small_middle(const vane_parts *parts);

#endif
