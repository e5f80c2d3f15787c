/* What the floors above need of a ring that has been checked already. */
#ifndef VANE_LIB_RING_H
#define VANE_LIB_RING_H

#include "vane/ring.h"

#include <stdbool.h>

bool vn_ring_check(const vane_ring *ring, vane_error *error);

/* vane_ring_at() for a ring known to be sound. */
vane_ring_point vn_ring_point(const vane_ring *ring, double angle);

#endif
