/* What the sources of the topic share, and what the floors above need of an oil. */
#ifndef VANE_LIB_OIL_H
#define VANE_LIB_OIL_H

#include "vane/oil.h"

#include "dimension.h"

#include <math.h>
#include <stdbool.h>

/* Checks the pointer and every field; error names begin with "oil.". */
bool vn_oil_check(const vane_oil *oil, vane_error *error);

/* vane_oil_at() at a temperature that is a field of a record, by which an error names it. */
int32_t vn_oil_at(const vane_oil *oil, double temperature, const char *record,
		  vane_oil_state *state, vane_error *error);

/* 0.3 mm2/s, where the outer logarithm of the short form reaches minus infinity. */
#define VN_OIL_THINNEST (3e-7 * VN_SQUARE_METRE_PER_SECOND)

#define VN_OIL_LN10 2.302585092994045684

/* ln(a/b), exact for neighbours and without overflow for strangers. */
static inline double vn_oil_log_ratio(double a, double b)
{
	if (a > b / 2 && a / 2 < b)
		return log1p((a - b) / b);
	const double ratio = a / b;
	return ratio > 1e-300 && ratio < 1e300 ? log(ratio) : log(a) - log(b);
}

/* The laws of viscosity are written in mm2/s. */
static inline double vn_oil_mm2_per_s(double viscosity)
{
	return 1e6 * (viscosity / VN_SQUARE_METRE_PER_SECOND);
}

static inline double vn_oil_from_mm2_per_s(double x)
{
	return x / 1e6 * VN_SQUARE_METRE_PER_SECOND;
}

/* The point at which a function that rises from low to high reaches a value. */
double vn_oil_bisect(double (*rising)(double, const double *), const double *given, double value,
		     double low, double high);

/* ln(Z) of a law, what falls in a straight line over ln(T) once more logarithmed. */
double vn_oil_inner_log(double viscosity, int32_t law);

/* Its inverse. */
double vn_oil_from_inner_log(double inner, int32_t law);

/* ln(ln Z_a / ln Z_b), exact for neighbours: linear in ln(T). */
double vn_oil_outer_ratio(double a, double b, int32_t law);

/* Two points of one law: names the faulty one. */
bool vn_oil_points_valid(double temperature_1, double viscosity_1, double temperature_2,
			 double viscosity_2, int32_t law, vane_error *error);

/* ln(Z) at a temperature, on the line through two points. */
double vn_oil_line_at(double temperature, double temperature_1, double viscosity_1,
		      double temperature_2, double viscosity_2, int32_t law);

#endif
