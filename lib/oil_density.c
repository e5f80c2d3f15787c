#include "oil.h"

#include "check.h"

/* K1 of lubricating oils and the base temperature of API MPMS 11.1:1980. */
#define LUBRICANT (0.6278 * VN_KILOGRAM / (VN_CUBIC_METRE * VN_KELVIN))
#define BASE (288.15 * VN_KELVIN)

static double correction(double expansion, double rise)
{
	const double x = expansion * rise;
	return exp(-x * (1 + 0.8 * x));
}

/* Both terms by division, lest the square of a great density overflow. */
static double expansion(double density_15, double k0, double k1, double k2)
{
	return (k0 / density_15 + k1) / density_15 + k2;
}

static double density_at(double density_15, const double *given)
{
	return density_15 *
	       correction(expansion(density_15, given[1], given[2], given[3]), given[0]);
}

/* Whatever the expansion, the law gives at most exp(1/3.2) times density_15. */
static double base_density(double temperature, double density, double k0, double k1, double k2,
			   vane_error *error)
{
	const double given[] = {temperature - BASE, k0, k1, k2};
	double low = 0.7 * density, high = density;
	while (density_at(high, given) < density) {
		low = high;
		high *= 2;
	}
	return vn_result(vn_oil_bisect(density_at, given, density, low, high), error);
}

static double density_result(double density, vane_error *error)
{
	if (density > 0)
		return vn_result(density, error);
	vn_fail(VANE_OUT_OF_RANGE, "result", density,
		"The parameters are admissible one by one, but no density is left, in kg/m3.",
		error);
	return NAN;
}

static bool group_valid(double k0, double k1, double k2, vane_error *error)
{
	const double dense = VN_KILOGRAM / VN_CUBIC_METRE;
	return vn_between(k0, 0, 3000 * dense * dense / VN_KELVIN, "k0", "kg2/(m6.K)", error) &&
	       vn_between(k1, 0, 2 * dense / VN_KELVIN, "k1", "kg/(m3.K)", error) &&
	       vn_between(k2, -0.01 / VN_KELVIN, 0.01 / VN_KELVIN, "k2", "1/K", error);
}

double vane_oil_lubricant_expansion(double density_15, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(density_15, 0, "density_15", "kg/m3", error))
		return NAN;
	return vn_result(LUBRICANT / density_15, error);
}

double vane_oil_lubricant_density(double temperature, double density_15, vane_error *error)
{
	return vane_oil_api_density(temperature, density_15, 0, LUBRICANT, 0, error);
}

double vane_oil_lubricant_density_15(double temperature, double density, vane_error *error)
{
	return vane_oil_api_density_15(temperature, density, 0, LUBRICANT, 0, error);
}

double vane_oil_api_expansion(double density_15, double k0, double k1, double k2, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(density_15, 0, "density_15", "kg/m3", error) ||
	    !group_valid(k0, k1, k2, error))
		return NAN;
	return vn_result(expansion(density_15, k0, k1, k2), error);
}

double vane_oil_api_density(double temperature, double density_15, double k0, double k1, double k2,
			    vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_above(density_15, 0, "density_15", "kg/m3", error) ||
	    !group_valid(k0, k1, k2, error))
		return NAN;
	const double given[] = {temperature - BASE, k0, k1, k2};
	return density_result(density_at(density_15, given), error);
}

double vane_oil_api_density_15(double temperature, double density, double k0, double k1, double k2,
			       vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) || !group_valid(k0, k1, k2, error))
		return NAN;
	return base_density(temperature, density, k0, k1, k2, error);
}

double vane_oil_volume_correction(double temperature, double reference_temperature,
				  double thermal_expansion, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_above(reference_temperature, 0, "reference_temperature", "K", error) ||
	    !vn_least(thermal_expansion, 0, "thermal_expansion", "1/K", error))
		return NAN;
	return vn_result(correction(thermal_expansion, temperature - reference_temperature), error);
}

double vane_oil_hydrometer_factor(double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(temperature, 200 * VN_KELVIN, 500 * VN_KELVIN, "temperature", "K", error))
		return NAN;
	const double t = (temperature - BASE) / VN_KELVIN;
	return 1 - t * (2.3e-5 + 2e-8 * t);
}

static double in_celsius(double temperature)
{
	return (temperature - 273.15 * VN_KELVIN) / VN_KELVIN;
}

/* Relative to water, as the laws have it. */
static double gravity(double density_15)
{
	return density_15 / (999 * VN_KILOGRAM / VN_CUBIC_METRE);
}

double vane_oil_specific_heat(double temperature, double density_15, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_above(density_15, 0, "density_15", "kg/m3", error))
		return NAN;
	const double heat = (1685 + 3.39 * in_celsius(temperature)) / sqrt(gravity(density_15));
	return vn_result(heat * VN_JOULE / (VN_KILOGRAM * VN_KELVIN), error);
}

double vane_oil_conductivity(double temperature, double density_15, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(temperature, 0, 1000 * VN_KELVIN, "temperature", "K", error) ||
	    !vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_above(density_15, 0, "density_15", "kg/m3", error))
		return NAN;
	const double law = 0.1172 * (1 - 0.00054 * in_celsius(temperature)) / gravity(density_15);
	return vn_result(law * VN_WATT / (VN_METRE * VN_KELVIN), error);
}
