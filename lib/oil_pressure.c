#include "oil.h"

#include "check.h"

/* Roelands: every isotherm passes through exp(-9.67) Pa.s at -1/5.1e-9 Pa, and
 * every isobar ends at 138 K. */
#define COMMON_VISCOSITY (6.3149855334110630081e-5 * VN_PASCAL * VN_SECOND)
#define PRESSURE (5.1e-9 / VN_PASCAL)
#define COLDEST (138 * VN_KELVIN)
#define LEAST_VISCOSITY (6.32e-5 * VN_PASCAL * VN_SECOND)
#define LEAST_PRESSURE (-1.96e8 * VN_PASCAL)

static bool viscosity_valid(double viscosity, const char *name, vane_error *error)
{
	return vn_above(viscosity, LEAST_VISCOSITY, name, "Pa.s", error);
}

/* How far the logarithm of a viscosity lies above the common point. */
static double height(double viscosity)
{
	return vn_oil_log_ratio(viscosity, COMMON_VISCOSITY);
}

double vane_oil_roelands(double viscosity, double pressure, double temperature,
			 double reference_temperature, double pressure_index,
			 double temperature_slope, vane_error *error)
{
	vn_begin(error);
	if (!viscosity_valid(viscosity, "viscosity", error) ||
	    !vn_above(pressure, LEAST_PRESSURE, "pressure", "Pa", error) ||
	    !vn_above(temperature, COLDEST, "temperature", "K", error) ||
	    !vn_above(reference_temperature, COLDEST, "reference_temperature", "K", error) ||
	    !vn_least(pressure_index, 0, "pressure_index", "", error) ||
	    !vn_least(temperature_slope, 0, "temperature_slope", "", error))
		return NAN;
	const double rise = pressure_index * log1p(PRESSURE * pressure);
	const double fall = temperature_slope * vn_oil_log_ratio(temperature - COLDEST,
								 reference_temperature - COLDEST);
	const double h = height(viscosity), up = rise - fall;
	/* From the nearer of the viscosity and the common point. */
	const double result =
		up < -1 ? COMMON_VISCOSITY * exp(h * exp(up)) : viscosity * exp(h * expm1(up));
	return vn_result(result, error);
}

double vane_oil_roelands_index(double viscosity, double pressure_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!viscosity_valid(viscosity, "viscosity", error) ||
	    !vn_least(pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error))
		return NAN;
	return vn_result(pressure_viscosity / (PRESSURE * height(viscosity)), error);
}

double vane_oil_roelands_coefficient(double viscosity, double pressure_index, vane_error *error)
{
	vn_begin(error);
	if (!viscosity_valid(viscosity, "viscosity", error) ||
	    !vn_least(pressure_index, 0, "pressure_index", "", error))
		return NAN;
	return vn_result(PRESSURE * height(viscosity) * pressure_index, error);
}

double vane_oil_roelands_slope(double temperature_1, double viscosity_1, double temperature_2,
			       double viscosity_2, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature_1, COLDEST, "temperature_1", "K", error) ||
	    !viscosity_valid(viscosity_1, "viscosity_1", error) ||
	    !vn_above(temperature_2, COLDEST, "temperature_2", "K", error) ||
	    !viscosity_valid(viscosity_2, "viscosity_2", error))
		return NAN;
	if (temperature_1 == temperature_2) {
		vn_fail(VANE_INVALID_ARGUMENT, "temperature_2", temperature_2,
			"temperature_2 must differ from temperature_1, in K.", error);
		return NAN;
	}
	const double drop = vn_oil_log_ratio(viscosity_1, viscosity_2);
	const double span = vn_oil_log_ratio(temperature_2 - COLDEST, temperature_1 - COLDEST);
	if (drop * span < 0) {
		vn_fail(VANE_INVALID_ARGUMENT, "viscosity_2", viscosity_2,
			"viscosity_2 must not make viscosity rise with temperature, in "
			"Pa.s.",
			error);
		return NAN;
	}
	/* Close to zero on either side: log1p keeps the digits of neighbours. */
	const double h = height(viscosity_2), part = drop / h;
	const double bend = fabs(part) < 0.5 ? log1p(part) : log(height(viscosity_1) / h);
	return vn_result(bend / span, error);
}

static void no_modulus(double pressure, vane_error *error)
{
	vn_fail(VANE_NO_SOLUTION, "pressure", pressure,
		"pressure is so low, in Pa, that the law leaves no bulk modulus.", error);
}

/* ln(rho / rho_0) under a modulus that rises in a straight line; NaN where it
 * has come down to nothing. */
static double compression(double pressure, double bulk_modulus, double modulus_slope)
{
	const double x = pressure / bulk_modulus, y = modulus_slope * x;
	if (!(y > -1))
		return NAN;
	return fabs(y) < 1e-16 ? x : log1p(y) / modulus_slope;
}

static bool modulus_valid(double pressure, double bulk_modulus, double modulus_slope,
			  vane_error *error)
{
	return vn_finite(pressure, "pressure", "Pa", error) &&
	       vn_above(bulk_modulus, 0, "bulk_modulus", "Pa", error) &&
	       vn_least(modulus_slope, 0, "modulus_slope", "", error);
}

double vane_oil_pressure_density(double pressure, double density, double bulk_modulus,
				 double modulus_slope, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(density, 0, "density", "kg/m3", error) ||
	    !modulus_valid(pressure, bulk_modulus, modulus_slope, error))
		return NAN;
	const double c = compression(pressure, bulk_modulus, modulus_slope);
	const double result = density * exp(c);
	if (isnan(c) || result == 0) {
		no_modulus(pressure, error);
		return NAN;
	}
	return vn_result(result, error);
}

double vane_oil_volume_change(double volume, double dp, double bulk_modulus, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(volume, 0, "volume", "m3", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(bulk_modulus, 0, "bulk_modulus", "Pa", error))
		return NAN;
	return vn_result(-volume * (dp / bulk_modulus), error);
}

double vane_oil_measured_modulus(double volume, double volume_change, double dp, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(volume, 0, "volume", "m3", error))
		return NAN;
	if (!(volume_change < 0 && isfinite(volume_change))) {
		vn_fail(VANE_INVALID_ARGUMENT, "volume_change", volume_change,
			"volume_change must be finite and less than 0 m3.", error);
		return NAN;
	}
	if (!vn_above(dp, 0, "dp", "Pa", error))
		return NAN;
	return vn_result(volume / -volume_change * dp, error);
}

double vane_oil_modulus(double pressure, double temperature, double bulk_modulus,
			double modulus_slope, double reference_temperature,
			double modulus_temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !modulus_valid(pressure, bulk_modulus, modulus_slope, error) ||
	    !vn_above(reference_temperature, 0, "reference_temperature", "K", error) ||
	    !vn_least(modulus_temperature, 0, "modulus_temperature", "1/K", error))
		return NAN;
	const double cold =
		bulk_modulus * exp(-modulus_temperature * (temperature - reference_temperature));
	const double result = cold + modulus_slope * pressure;
	if (!(result > 0)) {
		no_modulus(pressure, error);
		return NAN;
	}
	return vn_result(result, error);
}

double vane_oil_secant_modulus(double pressure, double bulk_modulus, double modulus_slope,
			       vane_error *error)
{
	vn_begin(error);
	if (!modulus_valid(pressure, bulk_modulus, modulus_slope, error))
		return NAN;
	const double c = compression(pressure, bulk_modulus, modulus_slope);
	if (isnan(c)) {
		no_modulus(pressure, error);
		return NAN;
	}
	return vn_result(c == 0 ? bulk_modulus : pressure / -expm1(-c), error);
}

double vane_oil_tangent_modulus(double pressure, double secant_modulus, double secant_slope,
				vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(pressure, "pressure", "Pa", error) ||
	    !vn_above(secant_modulus, 0, "secant_modulus", "Pa", error) ||
	    !vn_finite(secant_slope, "secant_slope", "", error))
		return NAN;
	if (!(pressure < secant_modulus)) {
		vn_fail(VANE_INVALID_ARGUMENT, "pressure", pressure,
			"pressure must be less than secant_modulus, in Pa: else no volume is left.",
			error);
		return NAN;
	}
	const double rest = fma(-pressure, secant_slope, secant_modulus);
	if (!(rest > 0)) {
		vn_fail(VANE_NO_SOLUTION, "secant_slope", secant_slope,
			"secant_slope is so great that the volume would grow under pressure.",
			error);
		return NAN;
	}
	if (!isfinite(vn_result(rest, error)))
		return NAN;
	return vn_result(secant_modulus * ((secant_modulus - pressure) / rest), error);
}

/* beta^2 T K / (rho c), in an order that neither overflows nor underflows early. */
static double heat_share(double bulk_modulus, double temperature, double density,
			 double thermal_expansion, double specific_heat)
{
	return (thermal_expansion * temperature) * (thermal_expansion * (bulk_modulus / density)) /
	       specific_heat;
}

static bool heat_valid(double temperature, double density, double thermal_expansion,
		       double specific_heat, vane_error *error)
{
	return vn_above(temperature, 0, "temperature", "K", error) &&
	       vn_above(density, 0, "density", "kg/m3", error) &&
	       vn_least(thermal_expansion, 0, "thermal_expansion", "1/K", error) &&
	       vn_above(specific_heat, 0, "specific_heat", "J/(kg.K)", error);
}

double vane_oil_adiabatic_modulus(double isothermal_modulus, double temperature, double density,
				  double thermal_expansion, double specific_heat, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(isothermal_modulus, 0, "isothermal_modulus", "Pa", error) ||
	    !heat_valid(temperature, density, thermal_expansion, specific_heat, error))
		return NAN;
	const double share = heat_share(isothermal_modulus, temperature, density, thermal_expansion,
					specific_heat);
	if (!(share < 1)) {
		vn_fail(VANE_NO_SOLUTION, "thermal_expansion", thermal_expansion,
			"thermal_expansion is greater, in 1/K, than the other properties allow any "
			"liquid.",
			error);
		return NAN;
	}
	return vn_result(isothermal_modulus / (1 - share), error);
}

double vane_oil_isothermal_modulus(double adiabatic_modulus, double temperature, double density,
				   double thermal_expansion, double specific_heat,
				   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(adiabatic_modulus, 0, "adiabatic_modulus", "Pa", error) ||
	    !heat_valid(temperature, density, thermal_expansion, specific_heat, error))
		return NAN;
	const double share = heat_share(adiabatic_modulus, temperature, density, thermal_expansion,
					specific_heat);
	if (!isfinite(vn_result(share, error)))
		return NAN;
	return vn_result(adiabatic_modulus / (1 + share), error);
}

double vane_oil_sound_speed(double bulk_modulus, double density, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(bulk_modulus, 0, "bulk_modulus", "Pa", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error))
		return NAN;
	return vn_result(sqrt(bulk_modulus / density), error);
}
