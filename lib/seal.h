/* The table of O-ring sizes. */
#ifndef VANE_LIB_SEAL_H
#define VANE_LIB_SEAL_H

#include <stdint.h>

enum { VN_SEAL_ROWS = 369 };

struct vn_seal_row {
	int16_t dash, diameter, diameter_tolerance, section, section_tolerance;
};

extern const struct vn_seal_row vn_seal_rows[VN_SEAL_ROWS];

#endif
