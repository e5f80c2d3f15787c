#include "oil.h"

#include "check.h"

#include <stddef.h>

/* ASTM D2161: seconds at 100 degF, x in mm2/s. */
static double at_100_degf(double x, const double *given)
{
	(void)given;
	const double cubic = 3930.2 + x * (262.7 + x * (23.97 + x * 1.646));
	return 4.6324 * x + 1e5 * ((1 + 0.03264 * x) / cubic);
}

/* 100 degF is 310.92777... K. */
static double temperature_factor(double temperature)
{
	const double fahrenheit = 1.8 * (temperature / VN_KELVIN) - 459.67;
	return 1 + 0.000061 * (fahrenheit - 100);
}

double vane_oil_saybolt(double kinematic_viscosity, double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(kinematic_viscosity, 1.8e-6 * VN_SQUARE_METRE_PER_SECOND,
		      "kinematic_viscosity", "m2/s", error) ||
	    !vn_above(temperature, 0, "temperature", "K", error))
		return NAN;
	return vn_result(temperature_factor(temperature) *
				 at_100_degf(vn_oil_mm2_per_s(kinematic_viscosity), NULL) *
				 VN_SECOND,
			 error);
}

double vane_oil_saybolt_viscosity(double saybolt, double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(saybolt, 31 * VN_SECOND, "saybolt", "s", error) ||
	    !vn_above(temperature, 0, "temperature", "K", error))
		return NAN;
	const double seconds = saybolt / VN_SECOND / temperature_factor(temperature);
	if (!(seconds > at_100_degf(0, NULL))) {
		vn_fail(VANE_NO_SOLUTION, "saybolt", saybolt,
			"saybolt is shorter, in s, than any liquid takes at that temperature.",
			error);
		return NAN;
	}
	/* The second term of the law is positive. */
	return vn_result(vn_oil_from_mm2_per_s(
				 vn_oil_bisect(at_100_degf, NULL, seconds, 0, seconds / 4.6324)),
			 error);
}

double vane_oil_saybolt_handbook(double saybolt, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(saybolt, 32 * VN_SECOND, "saybolt", "s", error))
		return NAN;
	const double t = saybolt / VN_SECOND;
	const double x = t <= 100 ? 0.226 * t - 195 / t : 0.220 * t - 135 / t;
	return vn_result(vn_oil_from_mm2_per_s(x), error);
}

double vane_oil_capillary_viscosity(double constant, double time, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(constant, 0, "constant", "m2/s2", error) ||
	    !vn_above(time, 0, "time", "s", error))
		return NAN;
	return vn_result(constant * time, error);
}

double vane_oil_plate_viscosity(double force, double gap, double area, double wall_speed,
				vane_error *error)
{
	vn_begin(error);
	if (!vn_above(force, 0, "force", "N", error) || !vn_above(gap, 0, "gap", "m", error) ||
	    !vn_above(area, 0, "area", "m2", error) ||
	    !vn_above(wall_speed, 0, "wall_speed", "m/s", error))
		return NAN;
	return vn_result((force / area) * (gap / wall_speed), error);
}
