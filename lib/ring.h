/* What the floors above need of a ring that has been checked already. */
#ifndef VANE_LIB_RING_H
#define VANE_LIB_RING_H

#include "vane/ring.h"

#include <stdbool.h>

bool vn_ring_check(const vane_ring *ring, vane_error *error);

/* vane_ring_at() for a ring known to be sound. */
vane_ring_point vn_ring_point(const vane_ring *ring, double angle);

enum { VN_RING_JOINTS = 14 };

/* Angles of the lobe that follows the phase, in rising order, between which the radius is
 * analytic; the middle of each transition is among them. Returns how many. */
int vn_ring_joints(const vane_ring *ring, double angle[VN_RING_JOINTS]);

/* Integral over the angle of something that depends on the ring's radius, joint by joint. */
double vn_ring_integral(const vane_ring *ring, double from, double to,
			double (*integrand)(double angle, void *context), const void *context);

#endif
