#include "fit.h"

#include "check.h"

#include <math.h>

void vane_fit_options_default(vane_fit_options *options)
{
	if (options)
		*options = (vane_fit_options){
			.rank_tolerance = 1e-10,
			.weight = VANE_FIT_BISQUARE,
			.iterations = 2000,
		};
}

bool vn_outputs_clear(const vn_outputs *o, vane_error *error)
{
	for (int32_t i = 0; i < VN_FIT_MOST; i++) {
		if (o->coefficient)
			o->coefficient[i] = NAN;
		if (o->uncertainty)
			o->uncertainty[i] = NAN;
	}
	for (int32_t i = 0; o->correlation && i < VN_FIT_MOST * VN_FIT_MOST; i++)
		o->correlation[i] = NAN;
	const bool counted = o->readings <= VN_FIT_MOST_READINGS;
	for (int64_t i = 0; o->reading && counted && i < o->readings; i++)
		o->reading[i] = (vane_fit_reading){NAN, NAN, NAN, NAN, NAN};
	if (o->summary)
		*o->summary = (vane_fit_summary){
			.residual = NAN,
			.square_sum = NAN,
			.r_squared = NAN,
			.condition = NAN,
			.degrees_of_freedom = NAN,
		};
	return vn_pointer(o->coefficient, "coefficient", error) &&
	       vn_pointer(o->uncertainty, "coefficient_uncertainty", error) &&
	       vn_pointer(o->summary, "out", error) &&
	       vn_count(o->readings, 1, VN_FIT_MOST_READINGS, "readings", error);
}

bool vn_fit_options_ok(const vane_fit_options *options, vane_error *error)
{
	if (!vn_pointer(options, "options", error))
		return false;
	if (vn_between(options->rank_tolerance, 0, 1, "rank_tolerance", "", error) &&
	    vn_least(options->ridge, 0, "ridge", "", error) &&
	    vn_count(options->known, 0, 1, "known", error) &&
	    vn_count(options->weight, VANE_FIT_BISQUARE, VANE_FIT_HUBER, "weight", error) &&
	    vn_count(options->iterations, 1, 100000, "iterations", error))
		return true;
	vn_within("options", error);
	return false;
}

bool vn_fit_array_ok(const double *x, int64_t n, const char *name, vane_error *error)
{
	if (!vn_pointer(x, name, error))
		return false;
	for (int64_t i = 0; i < n; i++) {
		if (!vn_finite(x[i], name, "", error)) {
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

bool vn_fit_uncertainty_ok(const double *uncertainty, int64_t weights, int64_t readings,
			   vane_error *error)
{
	if (!vn_count(weights, 0, readings, "weights", error))
		return false;
	if (weights == 0)
		return true;
	if (weights != readings)
		return vn_fail(VANE_INVALID_ARGUMENT, "weights", (double)weights,
			       "weights must be as many as readings, or 0.", error);
	if (!vn_pointer(uncertainty, "uncertainty", error))
		return false;
	for (int64_t i = 0; i < weights; i++) {
		if (!vn_above(uncertainty[i], 0, "uncertainty", "", error)) {
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

int32_t vn_fit_columns(int64_t elements, int64_t readings, vane_error *error)
{
	if (elements >= readings && elements % readings == 0 && elements / readings <= VN_FIT_MOST)
		return (int32_t)(elements / readings);
	vn_fail(VANE_INVALID_ARGUMENT, "elements", (double)elements,
		"elements must be 1 to 16 times readings.", error);
	return 0;
}

int32_t vn_fit_refuse(int32_t code, const char *name, double value, const char *text,
		      vane_error *error)
{
	vn_fail(code, name, value, text, error);
	return code;
}

int32_t vn_fit_few(int64_t readings, vane_error *error)
{
	return vn_fit_refuse(VANE_NOT_IDENTIFIABLE, "readings", (double)readings,
			     "Too few readings: take at least as many as coefficients, and one "
			     "more where the uncertainties are not known.",
			     error);
}

int32_t vn_fit_dependent(double condition, vane_error *error)
{
	return vn_fit_refuse(VANE_NOT_IDENTIFIABLE, "x", condition,
			     "The readings do not vary enough to tell the coefficients apart; the "
			     "value is the condition number.",
			     error);
}

int32_t vn_fit_large(vane_error *error)
{
	return vn_fit_refuse(VANE_OUT_OF_RANGE, "readings", 0,
			     "The readings are too large, too small or too unlike for a fit.",
			     error);
}

int32_t vn_fit_memory(vane_error *error)
{
	return vn_fit_refuse(VANE_NO_MEMORY, "readings", 0,
			     "Working memory for the fit could not be had.", error);
}

double vn_fit_total(const double *y, const double *uncertainty, int64_t n, bool about_mean)
{
	double mean = 0, weights = 0, sum = 0, least = INFINITY;
	for (int64_t i = 0; uncertainty && i < n; i++)
		least = fmin(least, uncertainty[i]);
	for (int64_t i = 0; about_mean && i < n; i++) {
		/* Over the greatest, for 1/u^2 would overflow or vanish where u does not. */
		const double ratio = uncertainty ? least / uncertainty[i] : 1, w = ratio * ratio;
		weights += w;
		if (w > 0)
			mean += (y[i] - mean) * (w / weights);
	}
	for (int64_t i = 0; i < n; i++) {
		const double d = (y[i] - mean) / (uncertainty ? uncertainty[i] : 1);
		sum += d * d;
	}
	return sum;
}
