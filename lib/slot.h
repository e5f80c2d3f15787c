/* What the files of the slot topic share. */
#ifndef VANE_LIB_SLOT_H
#define VANE_LIB_SLOT_H

#include "check.h"

#include <gsl/gsl_math.h>

static inline double vn_cube(double x)
{
	return x * x * x;
}

/* aspect cubed_gap dp / (12 viscosity) */
double vn_poiseuille(double aspect, double cubed_gap, double dp, double viscosity);

static inline bool vn_angle(double angle, const char *name, vane_error *error)
{
	return vn_above(angle, 0, name, "rad", error) &&
	       vn_between(angle, 0, 2 * M_PI, name, "rad", error);
}

/* Natural logarithm of outer / inner, which may be nearly 1. */
double vn_log_ratio(double inner, double outer);

/* sinh(x) / x - 1 for x of which sinh(x) is at hand. */
double vn_sinhc_excess(double x, double sinh_x);

/* inner (sinh(x) / x - 1), x the logarithm of outer / inner. */
double vn_sinhc_share(double inner, double outer, double x);

#endif
