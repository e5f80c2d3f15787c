#include "vane/measure.h"

#include "check.h"

#include <gsl/gsl_integration.h>
#include <math.h>

static const double root_half = 0.70710678118654752440;

static double even_part(double t, void *middle)
{
	return exp(-0.5 * t * t) * cosh(*(const double *)middle * t);
}

/* Probability mass of half width h about m in standard units, where the two tails would cancel:
 * an integral of the even part, by a rule that neither allocates nor fails. */
static double narrow_mass(double m, double h)
{
	const double root_two_pi = 2.50662827463100050242;
	double sum, estimate, size, spread;
	gsl_function f = {even_part, &m};
	gsl_integration_qk21(&f, 0, h, &sum, &estimate, &size, &spread);
	return 2 * sum * exp(-0.5 * m * m) / root_two_pi;
}

static double within(double value, double uncertainty, double low, double high)
{
	/* Without doubt the value is either within or not. */
	if (!(uncertainty > 0))
		return value >= low && value <= high;
	const double above = (value - low) / uncertainty;
	const double below = (high - value) / uncertainty;
	const double h = 0.5 * (high - low) / uncertainty;
	const double m = 0.5 * (below - above);
	if (h < 0.5 && fabs(m) * h < 0.5)
		return narrow_mass(m, h);
	if (above < 0)
		return 0.5 * (erfc(-above * root_half) - erfc(below * root_half));
	if (below < 0)
		return 0.5 * (erfc(-below * root_half) - erfc(above * root_half));
	return 0.5 * (erf(above * root_half) + erf(below * root_half));
}

/* Probability of being on the right side of a limit that is `room` away. */
static double beyond(double room, double uncertainty)
{
	if (!(uncertainty > 0))
		return room >= 0;
	return 0.5 * erfc(-room / uncertainty * root_half);
}

static bool value_ok(double value, double uncertainty, vane_error *error)
{
	return vn_finite(value, "value", "", error) &&
	       vn_least(uncertainty, 0, "uncertainty", "", error);
}

static bool limits_ok(double value, double uncertainty, double low, double high, vane_error *error)
{
	return value_ok(value, uncertainty, error) && vn_finite(low, "low", "", error) &&
	       vn_above(high, low, "high", "", error);
}

double vane_measure_probability(double value, double uncertainty, double low, double high,
				vane_error *error)
{
	vn_begin(error);
	if (!limits_ok(value, uncertainty, low, high, error))
		return NAN;
	return vn_result(within(value, uncertainty, low, high), error);
}

double vane_measure_probability_most(double value, double uncertainty, double high,
				     vane_error *error)
{
	vn_begin(error);
	if (!value_ok(value, uncertainty, error) || !vn_finite(high, "high", "", error))
		return NAN;
	return vn_result(beyond(high - value, uncertainty), error);
}

double vane_measure_probability_least(double value, double uncertainty, double low,
				      vane_error *error)
{
	vn_begin(error);
	if (!value_ok(value, uncertainty, error) || !vn_finite(low, "low", "", error))
		return NAN;
	return vn_result(beyond(value - low, uncertainty), error);
}

/* Clears the outputs that are there; false if one is not. */
static bool cleared(int32_t *verdict, double *probability, vane_error *error)
{
	if (verdict)
		*verdict = 0;
	if (probability)
		*probability = NAN;
	return vn_pointer(verdict, "verdict", error) &&
	       vn_pointer(probability, "probability", error);
}

static int32_t settle(bool fails, bool conforms, double p, int32_t *verdict, double *probability,
		      vane_error *error)
{
	if (isnan(vn_result(p, error)))
		return VANE_OUT_OF_RANGE;
	*verdict = fails      ? VANE_VERDICT_FAILS
		   : conforms ? VANE_VERDICT_CONFORMS
			      : VANE_VERDICT_NOT_PROVEN;
	*probability = p;
	return VANE_OK;
}

int32_t vane_measure_verdict(double value, double uncertainty, double low, double high,
			     double coverage, int32_t *verdict, double *probability,
			     vane_error *error)
{
	vn_begin(error);
	if (!cleared(verdict, probability, error) ||
	    !limits_ok(value, uncertainty, low, high, error) ||
	    !vn_least(coverage, 0, "coverage", "", error))
		return VANE_INVALID_ARGUMENT;
	const double guard = coverage * uncertainty;
	return settle(value < low - guard || value > high + guard,
		      value >= low + guard && value <= high - guard,
		      within(value, uncertainty, low, high), verdict, probability, error);
}

int32_t vane_measure_verdict_most(double value, double uncertainty, double high, double coverage,
				  int32_t *verdict, double *probability, vane_error *error)
{
	vn_begin(error);
	if (!cleared(verdict, probability, error) || !value_ok(value, uncertainty, error) ||
	    !vn_finite(high, "high", "", error) || !vn_least(coverage, 0, "coverage", "", error))
		return VANE_INVALID_ARGUMENT;
	const double guard = coverage * uncertainty;
	return settle(value > high + guard, value <= high - guard,
		      beyond(high - value, uncertainty), verdict, probability, error);
}

int32_t vane_measure_verdict_least(double value, double uncertainty, double low, double coverage,
				   int32_t *verdict, double *probability, vane_error *error)
{
	vn_begin(error);
	if (!cleared(verdict, probability, error) || !value_ok(value, uncertainty, error) ||
	    !vn_finite(low, "low", "", error) || !vn_least(coverage, 0, "coverage", "", error))
		return VANE_INVALID_ARGUMENT;
	const double guard = coverage * uncertainty;
	return settle(value < low - guard, value >= low + guard, beyond(value - low, uncertainty),
		      verdict, probability, error);
}
