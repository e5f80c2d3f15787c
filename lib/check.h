/*
 * How every function guards its door. Each check is true when the value is
 * admissible; otherwise it fills the error record and is false. A comparison
 * with NaN is false, so each check is written to pass only on a true one.
 */
#ifndef VANE_LIB_CHECK_H
#define VANE_LIB_CHECK_H

#include "vane/error.h"

#include <math.h>
#include <stdbool.h>

/* What writes the sentences stays out of line: a check that passes costs its
 * comparison and no call. */
void vn_refuse_finite(double x, const char *name, const char *unit, vane_error *error);
void vn_refuse_above(double x, double limit, const char *name, const char *unit, vane_error *error);
void vn_refuse_least(double x, double limit, const char *name, const char *unit, vane_error *error);
void vn_refuse_between(double x, double low, double high, const char *name, const char *unit,
		       vane_error *error);
void vn_refuse_count(int64_t n, int64_t low, int64_t high, const char *name, vane_error *error);
void vn_refuse_pointer(const char *name, vane_error *error);
void vn_refuse_result(double x, vane_error *error);

/* Marks the call as successful so far. */
static inline void vn_begin(vane_error *error)
{
	if (!error)
		return;
	error->value = 0;
	error->index = -1;
	error->code = VANE_OK;
	error->name[0] = '\0';
	error->text[0] = '\0';
}

/* Finite. */
static inline bool vn_finite(double x, const char *name, const char *unit, vane_error *error)
{
	if (isfinite(x))
		return true;
	vn_refuse_finite(x, name, unit, error);
	return false;
}

/* Finite and > limit. */
static inline bool vn_above(double x, double limit, const char *name, const char *unit,
			    vane_error *error)
{
	if (x > limit && isfinite(x))
		return true;
	vn_refuse_above(x, limit, name, unit, error);
	return false;
}

/* Finite and >= limit. */
static inline bool vn_least(double x, double limit, const char *name, const char *unit,
			    vane_error *error)
{
	if (x >= limit && isfinite(x))
		return true;
	vn_refuse_least(x, limit, name, unit, error);
	return false;
}

/* low <= x <= high. */
static inline bool vn_between(double x, double low, double high, const char *name, const char *unit,
			      vane_error *error)
{
	if (x >= low && x <= high)
		return true;
	vn_refuse_between(x, low, high, name, unit, error);
	return false;
}

/* low <= n <= high. */
static inline bool vn_count(int64_t n, int64_t low, int64_t high, const char *name,
			    vane_error *error)
{
	if (n >= low && n <= high)
		return true;
	vn_refuse_count(n, low, high, name, error);
	return false;
}

/* A pointer that must not be NULL. */
static inline bool vn_pointer(const void *p, const char *name, vane_error *error)
{
	if (p)
		return true;
	vn_refuse_pointer(name, error);
	return false;
}

/* The result itself when it is finite; otherwise NaN and VANE_OUT_OF_RANGE. */
static inline double vn_result(double x, vane_error *error)
{
	if (isfinite(x))
		return x;
	vn_refuse_result(x, error);
	return NAN;
}

/* Fails with a code and a sentence of one's own. Always false. */
bool vn_fail(int32_t code, const char *name, double value, const char *text, vane_error *error);

/* Says which element of an array the error is about. */
void vn_at(int64_t index, vane_error *error);

/* Puts a record's name before the field's: "gap" becomes "parts.gap". */
void vn_within(const char *record, vane_error *error);

#endif
