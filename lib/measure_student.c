#include "vane/measure.h"

#include "check.h"

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_randist.h>
#include <gsl/gsl_sf_gamma.h>
#include <math.h>

/*
 * Both probabilities are carried: what is small keeps its digits only when it is
 * not taken from 1.
 */
typedef struct odds {
	double central; /* Of being nearer to 0 than the quantile. */
	double tail;    /* Of being above it; at most 1/2. */
} odds;

/* Above as many degrees of freedom the series ends in rounding: everywhere, and where the square
 * of the normal quantile is this part of them. */
static const double series_freedom = 1e5, near_freedom = 2000, near_part = 4e-3;
static const double far_out = 1e10;
static const double root_half = 0.70710678118654752440;
static const double root_two_pi = 2.50662827463100050242;

static double normal(const odds *wanted)
{
	double z = gsl_cdf_ugaussian_Qinv(wanted->tail);
	/* Where the tail is all but 1/2 that has lost its digits; Newton brings them back. */
	for (int i = 0; i < 3 && wanted->tail > 1e-300; i++) {
		const double excess = wanted->central < 0.5
					      ? 0.5 * (wanted->central - erf(z * root_half))
					      : 0.5 * erfc(z * root_half) - wanted->tail;
		z += excess * root_two_pi * exp(0.5 * z * z);
	}
	return z;
}

static double student_series(double z, double nu)
{
	const double s = z * z;
	const double g1 = (s + 1) / 4;
	const double g2 = ((5 * s + 16) * s + 3) / 96;
	const double g3 = (((3 * s + 19) * s + 17) * s - 15) / 384;
	const double g4 = ((((79 * s + 776) * s + 1482) * s - 1920) * s - 945) / 92160;
	return z + z * (g1 + (g2 + (g3 + g4 / nu) / nu) / nu) / nu;
}

static double student_tail(double t, double nu)
{
	const double r = t / sqrt(nu);
	if (r > 1)
		return 0.5 * gsl_cdf_beta_P(1 / (1 + r * r), 0.5 * nu, 0.5);
	return 0.5 * gsl_cdf_beta_Q(r * r / (1 + r * r), 0.5, 0.5 * nu);
}

/* Far out only the first term of the tail is left, whose logarithm neither overflows nor vanishes. */
static double student_log_tail(double t, double nu)
{
	const double r = t / sqrt(nu);
	if (r > far_out)
		return -nu * log(r) - log(nu) - gsl_sf_lnbeta(0.5 * nu, 0.5);
	return log(student_tail(t, nu));
}

static double student_central(double t, double nu)
{
	const double r = t / sqrt(nu);
	if (r > 1)
		return 1 - 2 * student_tail(t, nu);
	return gsl_cdf_beta_P(r * r / (1 + r * r), 0.5, 0.5 * nu);
}

/* Newton in the logarithms of quantile and probability, kept between the quantiles of the normal
 * distribution and of one degree of freedom. */
static double student(const odds *wanted, double nu)
{
	const double pi = 3.14159265358979323846;
	const double z = normal(wanted);
	if (!(wanted->central > 0))
		return 0;
	if (nu > series_freedom || (nu > near_freedom && z * z < near_part * nu))
		return student_series(z, nu);
	const double cauchy = wanted->central < 0.5 ? log(tan(0.5 * pi * wanted->central))
						    : -log(tan(pi * wanted->tail));
	double low = log(z) - 1e-9, high = cauchy + 1e-9, x = low;
	for (int i = 0; i < 200 && high - low > 0; i++) {
		const double t = exp(x), density = t * gsl_ran_tdist_pdf(t, nu);
		double excess, slope; /* Of the logarithm of a probability that grows with t. */
		if (wanted->central < 0.5) {
			const double central = student_central(t, nu);
			excess = log(central / wanted->central);
			slope = 2 * density / central;
		} else {
			const double tail = student_log_tail(t, nu);
			excess = log(wanted->tail) - tail;
			slope = t > far_out * sqrt(nu) ? nu : density * exp(-tail);
		}
		if (excess > 0)
			high = x;
		else
			low = x;
		double next = x - excess / slope;
		if (!(next > low && next < high))
			next = 0.5 * (low + high);
		if (fabs(next - x) <= 2e-16 * fabs(x) + 1e-16)
			break;
		x = next;
	}
	return exp(x);
}

static bool probability_ok(double probability, vane_error *error)
{
	if (probability > 0 && probability < 1)
		return true;
	vn_refuse_between(probability, 0, 1, "probability", "", error);
	return false;
}

static double sign_of(double probability)
{
	return probability < 0.5 ? -1 : 1;
}

static odds one_sided(double probability)
{
	return (odds){
		.central = fabs(1 - 2 * probability),
		.tail = probability < 0.5 ? probability : 1 - probability,
	};
}

double vane_measure_normal_quantile(double probability, vane_error *error)
{
	vn_begin(error);
	if (!probability_ok(probability, error))
		return NAN;
	const odds wanted = one_sided(probability);
	return vn_result(sign_of(probability) * normal(&wanted), error);
}

double vane_measure_student_quantile(double probability, double degrees_of_freedom,
				     vane_error *error)
{
	vn_begin(error);
	if (!probability_ok(probability, error) ||
	    !vn_least(degrees_of_freedom, 1, "degrees_of_freedom", "", error))
		return NAN;
	const odds wanted = one_sided(probability);
	return vn_result(sign_of(probability) * student(&wanted, degrees_of_freedom), error);
}

double vane_measure_coverage(double probability, double degrees_of_freedom, vane_error *error)
{
	vn_begin(error);
	if (!probability_ok(probability, error) ||
	    !vn_least(degrees_of_freedom, 1, "degrees_of_freedom", "", error))
		return NAN;
	const odds wanted = {probability, 0.5 * (1 - probability)};
	return vn_result(student(&wanted, degrees_of_freedom), error);
}
