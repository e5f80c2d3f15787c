#include "vane/slot.h"

#include "slot.h"

static const double walls_cool = 1, oil_keeps = 10;

/* (exp(x) - 1) / x */
static double growth(double x)
{
	return x != 0 ? expm1(x) / x : 1;
}

double vane_slot_barus_viscosity(double viscosity, double pressure_viscosity, double inlet_pressure,
				 double outlet_pressure, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_least(pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error) ||
	    !vn_finite(inlet_pressure, "inlet_pressure", "Pa", error) ||
	    !vn_finite(outlet_pressure, "outlet_pressure", "Pa", error))
		return NAN;
	const double lower = fmin(inlet_pressure, outlet_pressure);
	const double rise = pressure_viscosity * fabs(inlet_pressure - outlet_pressure);
	return vn_result(viscosity * exp(pressure_viscosity * lower) / growth(-rise), error);
}

double vane_slot_isothermal_factor(double dp, double pressure_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(dp, 0, "dp", "Pa", error) ||
	    !vn_least(pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error))
		return NAN;
	return vn_result(growth(pressure_viscosity * dp), error);
}

static double exponent(double dp, double pressure_viscosity, double viscosity_temperature,
		       double density, double specific_heat)
{
	return (pressure_viscosity + viscosity_temperature / density / specific_heat) * dp;
}

static bool oil_ok(double dp, double pressure_viscosity, double viscosity_temperature,
		   double density, double specific_heat, vane_error *error)
{
	return vn_least(dp, 0, "dp", "Pa", error) &&
	       vn_least(pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error) &&
	       vn_least(viscosity_temperature, 0, "viscosity_temperature", "1/K", error) &&
	       vn_above(density, 0, "density", "kg/m3", error) &&
	       vn_above(specific_heat, 0, "specific_heat", "J/(kg.K)", error);
}

double vane_slot_adiabatic_factor(double dp, double pressure_viscosity,
				  double viscosity_temperature, double density,
				  double specific_heat, vane_error *error)
{
	vn_begin(error);
	if (!oil_ok(dp, pressure_viscosity, viscosity_temperature, density, specific_heat, error))
		return NAN;
	return vn_result(growth(exponent(dp, pressure_viscosity, viscosity_temperature, density,
					 specific_heat)),
			 error);
}

double vane_slot_temperature_rise(double dp, double density, double specific_heat,
				  vane_error *error)
{
	vn_begin(error);
	if (!vn_least(dp, 0, "dp", "Pa", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) ||
	    !vn_above(specific_heat, 0, "specific_heat", "J/(kg.K)", error))
		return NAN;
	return vn_result(dp / density / specific_heat, error);
}

double vane_slot_friction_temperature_rise(double power, double flow, double density,
					   double specific_heat, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(power, 0, "power", "W", error) || !vn_above(flow, 0, "flow", "m3/s", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) ||
	    !vn_above(specific_heat, 0, "specific_heat", "J/(kg.K)", error))
		return NAN;
	return vn_result(power / flow / density / specific_heat, error);
}

double vane_slot_couette_temperature_rise(double viscosity, double wall_speed,
					  double thermal_conductivity, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_finite(wall_speed, "wall_speed", "m/s", error) ||
	    !vn_above(thermal_conductivity, 0, "thermal_conductivity", "W/(m.K)", error))
		return NAN;
	return vn_result(wall_speed * (viscosity / thermal_conductivity) * wall_speed / 8, error);
}

double vane_slot_poiseuille_temperature_rise(double gap, double length, double dp, double viscosity,
					     double thermal_conductivity, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(gap, 0, "gap", "m", error) || !vn_above(length, 0, "length", "m", error) ||
	    !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_above(thermal_conductivity, 0, "thermal_conductivity", "W/(m.K)", error))
		return NAN;
	const double slope = dp * (gap / length) * gap;
	return vn_result(slope / viscosity * (slope / thermal_conductivity) / 192, error);
}

static const vane_slot_heat no_heat = {NAN, NAN, NAN, NAN, NAN, 0, 0};

int32_t vane_slot_heating(const vane_slot_film *film, vane_slot_heat *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = no_heat;
	if (!vn_pointer(film, "film", error))
		return VANE_INVALID_ARGUMENT;
	const vane_slot_film f = *film;
	if (!vn_least(f.graetz, 0, "graetz", "", error) ||
	    !oil_ok(f.dp, f.pressure_viscosity, f.viscosity_temperature, f.density, f.specific_heat,
		    error)) {
		vn_within("film", error);
		return VANE_INVALID_ARGUMENT;
	}
	const double isothermal = growth(f.pressure_viscosity * f.dp);
	const double adiabatic = growth(exponent(
		f.dp, f.pressure_viscosity, f.viscosity_temperature, f.density, f.specific_heat));
	const double rise = f.dp / f.density / f.specific_heat;
	/* The isothermal factor is never the greater one. */
	if (isnan(vn_result(adiabatic, error)) || isnan(vn_result(rise, error)))
		return VANE_OUT_OF_RANGE;
	out->isothermal_factor = isothermal;
	out->adiabatic_factor = adiabatic;
	out->least_factor = f.graetz > oil_keeps ? adiabatic : isothermal;
	out->greatest_factor = f.graetz < walls_cool ? isothermal : adiabatic;
	out->temperature_rise = rise;
	out->regime = f.graetz < walls_cool  ? VANE_SLOT_ISOTHERMAL
		      : f.graetz > oil_keeps ? VANE_SLOT_ADIABATIC
					     : VANE_SLOT_BETWEEN;
	return VANE_OK;
}
