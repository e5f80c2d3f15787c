/* Contact and volumes for parts that have been checked already. */
#ifndef VANE_LIB_DISPLACEMENT_H
#define VANE_LIB_DISPLACEMENT_H

#include "vane/displacement.h"

vane_tip_contact vn_contact(const vane_parts *parts, double angle);

/* Volume of the chamber whose middle is at the angle, and its rate by angle. */
void vn_chamber(const vane_parts *parts, double angle, double *volume, double *rate);

#endif
