/*
 * How every function guards its door. Each check is true when the value is
 * admissible; otherwise it fills the error record and is false. A comparison
 * with NaN is false, so each check is written to pass only on a true one.
 */
#ifndef VANE_LIB_CHECK_H
#define VANE_LIB_CHECK_H

#include "vane/error.h"

#include <stdbool.h>

/* Marks the call as successful so far. */
void vn_begin(vane_error *error);

/* Finite. */
bool vn_finite(double x, const char *name, const char *unit, vane_error *error);

/* Finite and > limit. */
bool vn_above(double x, double limit, const char *name, const char *unit, vane_error *error);

/* Finite and >= limit. */
bool vn_least(double x, double limit, const char *name, const char *unit, vane_error *error);

/* low <= x <= high. */
bool vn_between(double x, double low, double high, const char *name, const char *unit,
		vane_error *error);

/* low <= n <= high. */
bool vn_count(int64_t n, int64_t low, int64_t high, const char *name, vane_error *error);

/* A pointer that must not be NULL. */
bool vn_pointer(const void *p, const char *name, vane_error *error);

/* Fails with a code and a sentence of one's own. Always false. */
bool vn_fail(int32_t code, const char *name, double value, const char *text, vane_error *error);

/* The result itself when it is finite; otherwise NaN and VANE_OUT_OF_RANGE. */
double vn_result(double x, vane_error *error);

/* Says which element of an array the error is about. */
void vn_at(int64_t index, vane_error *error);

/* Puts a record's name before the field's: "gap" becomes "parts.gap". */
void vn_within(const char *record, vane_error *error);

#endif
