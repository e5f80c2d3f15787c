/* What the floors above need of an oil. */
#ifndef VANE_LIB_OIL_H
#define VANE_LIB_OIL_H

#include "vane/oil.h"

#include <stdbool.h>

/* Checks the pointer and every field; error names begin with "oil.". */
bool vn_oil_check(const vane_oil *oil, vane_error *error);

/* vane_oil_at() at a temperature that is a field of a record, by which an error names it. */
int32_t vn_oil_at(const vane_oil *oil, double temperature, const char *record,
		  vane_oil_state *state, vane_error *error);

#endif
