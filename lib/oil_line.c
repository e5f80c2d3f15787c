#include "oil.h"

#include "check.h"

/* Least viscosity of eq. (2) of ASTM D341. */
#define LEAST (2.1e-7 * VN_SQUARE_METRE_PER_SECOND)

static double correction(double x)
{
	return exp(-1.47 - x * (1.84 + 0.51 * x));
}

/* The one of Z is long lost here, where a million of it could overflow. */
#define THICK (1e20 * VN_SQUARE_METRE_PER_SECOND)

/* Z - 1. */
static double excess(double viscosity, int32_t law)
{
	const double above = vn_oil_mm2_per_s(viscosity - VN_OIL_THINNEST);
	return law == VANE_OIL_D341 ? above + correction(vn_oil_mm2_per_s(viscosity)) : above;
}

double vn_oil_inner_log(double viscosity, int32_t law)
{
	if (!(viscosity < THICK))
		return log(viscosity / VN_SQUARE_METRE_PER_SECOND) + log(1e6);
	return log1p(excess(viscosity, law));
}

/* ln(Z_a / Z_b), exact for neighbours. */
static double inner_difference(double a, double b, int32_t law)
{
	if (!(a > b / 2 && a / 2 < b && a < THICK))
		return vn_oil_inner_log(a, law) - vn_oil_inner_log(b, law);
	double rise = vn_oil_mm2_per_s(a - b);
	if (law == VANE_OIL_D341) {
		const double bend =
			rise * (1.84 + 0.51 * (vn_oil_mm2_per_s(a) + vn_oil_mm2_per_s(b)));
		rise += correction(vn_oil_mm2_per_s(b)) * expm1(-bend);
	}
	return log1p(rise / (1 + excess(b, law)));
}

double vn_oil_outer_ratio(double a, double b, int32_t law)
{
	const double second = vn_oil_inner_log(b, law);
	const double part = inner_difference(a, b, law) / second;
	return fabs(part) < 0.5 ? log1p(part) : log(vn_oil_inner_log(a, law) / second);
}

double vn_oil_from_inner_log(double inner, int32_t law)
{
	const double z = expm1(inner);
	double x = z + 0.3;
	if (law != VANE_OIL_D341 || !(x < 100))
		return vn_oil_from_mm2_per_s(z) + VN_OIL_THINNEST;
	/* Z is convex in x and the start lies above: Newton comes down and stops. */
	for (;;) {
		const double c = correction(x);
		const double next = x - (x - 0.3 + c - z) / (1 - c * (1.84 + 1.02 * x));
		if (!(next < x))
			break;
		x = next;
	}
	return vn_oil_from_mm2_per_s(x);
}

bool vn_oil_points_valid(double temperature_1, double viscosity_1, double temperature_2,
			 double viscosity_2, int32_t law, vane_error *error)
{
	const bool full = law == VANE_OIL_D341;
	if (!vn_above(temperature_1, 0, "temperature_1", "K", error) ||
	    !(full ? vn_least(viscosity_1, LEAST, "viscosity_1", "m2/s", error)
		   : vn_above(viscosity_1, VN_OIL_THINNEST, "viscosity_1", "m2/s", error)) ||
	    !vn_above(temperature_2, 0, "temperature_2", "K", error) ||
	    !(full ? vn_least(viscosity_2, LEAST, "viscosity_2", "m2/s", error)
		   : vn_above(viscosity_2, VN_OIL_THINNEST, "viscosity_2", "m2/s", error)))
		return false;
	if (temperature_1 == temperature_2)
		return vn_fail(VANE_INVALID_ARGUMENT, "temperature_2", temperature_2,
			       "temperature_2 must differ from temperature_1, in K.", error);
	if ((temperature_2 > temperature_1 && viscosity_2 > viscosity_1) ||
	    (temperature_2 < temperature_1 && viscosity_2 < viscosity_1))
		return vn_fail(
			VANE_INVALID_ARGUMENT, "viscosity_2", viscosity_2,
			"viscosity_2, in m2/s, must not make viscosity rise with temperature.",
			error);
	return true;
}

double vn_oil_line_at(double temperature, double temperature_1, double viscosity_1,
		      double temperature_2, double viscosity_2, int32_t law)
{
	const double first = vn_oil_inner_log(viscosity_1, law);
	const double second = vn_oil_inner_log(viscosity_2, law);
	return first * pow(second / first, vn_oil_log_ratio(temperature, temperature_1) /
						   vn_oil_log_ratio(temperature_2, temperature_1));
}

static double viscosity_at(double temperature, double temperature_1, double viscosity_1,
			   double temperature_2, double viscosity_2, int32_t law, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_oil_points_valid(temperature_1, viscosity_1, temperature_2, viscosity_2, law,
				 error))
		return NAN;
	const double inner = vn_oil_line_at(temperature, temperature_1, viscosity_1, temperature_2,
					    viscosity_2, law);
	return vn_result(vn_oil_from_inner_log(inner, law), error);
}

static double temperature_of(double kinematic_viscosity, double temperature_1, double viscosity_1,
			     double temperature_2, double viscosity_2, int32_t law,
			     vane_error *error)
{
	if (!vn_oil_points_valid(temperature_1, viscosity_1, temperature_2, viscosity_2, law,
				 error))
		return NAN;
	const double fall = vn_oil_outer_ratio(viscosity_2, viscosity_1, law);
	if (!(fall != 0)) {
		vn_fail(VANE_NO_SOLUTION, "viscosity_2", viscosity_2,
			"viscosity_2 equals viscosity_1, in m2/s: such an oil has no one "
			"temperature for a viscosity.",
			error);
		return NAN;
	}
	const double part = vn_oil_outer_ratio(kinematic_viscosity, viscosity_1, law) / fall;
	const double rise = part * vn_oil_log_ratio(temperature_2, temperature_1);
	const double temperature = temperature_1 * exp(rise);
	if (temperature == 0) {
		vn_fail(VANE_NO_SOLUTION, "kinematic_viscosity", kinematic_viscosity,
			"kinematic_viscosity is not reached above absolute zero, in m2/s.", error);
		return NAN;
	}
	return vn_result(temperature, error);
}

double vane_oil_walther(double temperature, double temperature_1, double viscosity_1,
			double temperature_2, double viscosity_2, vane_error *error)
{
	return viscosity_at(temperature, temperature_1, viscosity_1, temperature_2, viscosity_2,
			    VANE_OIL_WALTHER, error);
}

double vane_oil_walther_temperature(double kinematic_viscosity, double temperature_1,
				    double viscosity_1, double temperature_2, double viscosity_2,
				    vane_error *error)
{
	vn_begin(error);
	if (!vn_above(kinematic_viscosity, VN_OIL_THINNEST, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return temperature_of(kinematic_viscosity, temperature_1, viscosity_1, temperature_2,
			      viscosity_2, VANE_OIL_WALTHER, error);
}

double vane_oil_walther_line(double temperature, double intercept, double slope, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_finite(intercept, "intercept", "", error) ||
	    !vn_least(slope, 0, "slope", "", error))
		return NAN;
	const double outer = intercept - slope * log10(temperature / VN_KELVIN);
	const double inner = VN_OIL_LN10 * pow(10, outer);
	return vn_result(vn_oil_from_inner_log(inner, VANE_OIL_WALTHER), error);
}

double vane_oil_d341(double temperature, double temperature_1, double viscosity_1,
		     double temperature_2, double viscosity_2, vane_error *error)
{
	return viscosity_at(temperature, temperature_1, viscosity_1, temperature_2, viscosity_2,
			    VANE_OIL_D341, error);
}

double vane_oil_d341_temperature(double kinematic_viscosity, double temperature_1,
				 double viscosity_1, double temperature_2, double viscosity_2,
				 vane_error *error)
{
	vn_begin(error);
	if (!vn_least(kinematic_viscosity, LEAST, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return temperature_of(kinematic_viscosity, temperature_1, viscosity_1, temperature_2,
			      viscosity_2, VANE_OIL_D341, error);
}

double vane_oil_d341_z(double kinematic_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(kinematic_viscosity, LEAST, "kinematic_viscosity", "m2/s", error))
		return NAN;
	const double x = vn_oil_mm2_per_s(kinematic_viscosity);
	return vn_result(x + 0.7 + correction(x), error);
}

double vane_oil_d341_z_long(double kinematic_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(kinematic_viscosity, LEAST, "kinematic_viscosity", "m2/s", error))
		return NAN;
	const double x = vn_oil_mm2_per_s(kinematic_viscosity);
	const double c = exp(-1.14883 - 2.65868 * x), d = exp(-0.0038138 - 12.5645 * x);
	const double e = exp(5.46491 - 37.6289 * x), f = exp(13.0458 - 74.6851 * x);
	const double g = exp(37.4619 - 192.643 * x), h = exp(80.4945 - 400.468 * x);
	return vn_result(x + 0.7 + (c - d) + (e - f) + (g - h), error);
}

double vane_oil_d341_viscosity(double z, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(z, 1.06, "z", "", error))
		return NAN;
	const double q = z - 0.7;
	const double bend = exp(-0.7487 - q * (3.295 - q * (0.6119 - 0.3193 * q)));
	return vn_result(vn_oil_from_mm2_per_s(q - bend), error);
}

double vane_oil_blend(double fraction, double kinematic_viscosity_1, double kinematic_viscosity_2,
		      vane_error *error)
{
	vn_begin(error);
	if (!vn_between(fraction, 0, 1, "fraction", "", error) ||
	    !vn_least(kinematic_viscosity_1, LEAST, "kinematic_viscosity_1", "m2/s", error) ||
	    !vn_least(kinematic_viscosity_2, LEAST, "kinematic_viscosity_2", "m2/s", error))
		return NAN;
	const double first = vn_oil_inner_log(kinematic_viscosity_1, VANE_OIL_D341);
	const double second = vn_oil_inner_log(kinematic_viscosity_2, VANE_OIL_D341);
	const double inner = second * pow(first / second, fraction);
	return vn_result(vn_oil_from_inner_log(inner, VANE_OIL_D341), error);
}

double vane_oil_blend_fraction(double kinematic_viscosity, double kinematic_viscosity_1,
			       double kinematic_viscosity_2, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(kinematic_viscosity, LEAST, "kinematic_viscosity", "m2/s", error) ||
	    !vn_least(kinematic_viscosity_1, LEAST, "kinematic_viscosity_1", "m2/s", error) ||
	    !vn_least(kinematic_viscosity_2, LEAST, "kinematic_viscosity_2", "m2/s", error))
		return NAN;
	const double whole =
		vn_oil_outer_ratio(kinematic_viscosity_1, kinematic_viscosity_2, VANE_OIL_D341);
	const double part =
		vn_oil_outer_ratio(kinematic_viscosity, kinematic_viscosity_2, VANE_OIL_D341) /
		whole;
	if (!(kinematic_viscosity >= fmin(kinematic_viscosity_1, kinematic_viscosity_2) &&
	      kinematic_viscosity <= fmax(kinematic_viscosity_1, kinematic_viscosity_2) &&
	      whole != 0)) {
		vn_fail(VANE_NO_SOLUTION, "kinematic_viscosity", kinematic_viscosity,
			"kinematic_viscosity must lie between kinematic_viscosity_1 and "
			"kinematic_viscosity_2, which "
			"must differ, in m2/s.",
			error);
		return NAN;
	}
	return vn_result(fmin(part, 1), error);
}
