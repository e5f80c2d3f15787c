#include "oil.h"

#include "check.h"
#include "dimension.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

double vn_oil_bisect(double (*rising)(double, const double *), const double *given, double value,
		     double low, double high)
{
	for (;;) {
		const double middle = low + (high - low) / 2;
		if (middle <= low || middle >= high)
			return high;
		if (rising(middle, given) < value)
			low = middle;
		else
			high = middle;
	}
}

double vane_oil_density(double temperature, double density, double reference_temperature,
			double thermal_expansion, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) ||
	    !vn_above(reference_temperature, 0, "reference_temperature", "K", error) ||
	    !vn_least(thermal_expansion, 0, "thermal_expansion", "1/K", error))
		return NAN;
	return vn_result(density * exp(-thermal_expansion * (temperature - reference_temperature)),
			 error);
}

double vane_oil_dynamic_viscosity(double kinematic_viscosity, double density, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error))
		return NAN;
	return vn_result(kinematic_viscosity * density, error);
}

double vane_oil_barus(double viscosity, double pressure_viscosity, double pressure,
		      vane_error *error)
{
	vn_begin(error);
	if (!vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_least(pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error) ||
	    !vn_finite(pressure, "pressure", "Pa", error))
		return NAN;
	return vn_result(viscosity * exp(pressure_viscosity * pressure), error);
}

double vane_oil_barus_factor(double pressure_viscosity, double inlet_pressure,
			     double outlet_pressure, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error) ||
	    !vn_finite(inlet_pressure, "inlet_pressure", "Pa", error) ||
	    !vn_finite(outlet_pressure, "outlet_pressure", "Pa", error))
		return NAN;
	const double rise = pressure_viscosity * fabs(outlet_pressure - inlet_pressure);
	const double mean = rise > 0 ? -expm1(-rise) / rise : 1;
	const double lower = fmin(inlet_pressure, outlet_pressure);
	return vn_result(mean * exp(-pressure_viscosity * lower), error);
}

void vane_oil_default(vane_oil *oil)
{
	if (!oil)
		return;
	*oil = (vane_oil){
		.temperature_1 = 313.15 * VN_KELVIN,
		.viscosity_1 = 46e-6 * VN_SQUARE_METRE_PER_SECOND,
		.temperature_2 = 373.15 * VN_KELVIN,
		.viscosity_2 = 6.8e-6 * VN_SQUARE_METRE_PER_SECOND,
		.density = 870 * VN_KILOGRAM / VN_CUBIC_METRE,
		.reference_temperature = 288.15 * VN_KELVIN,
		.thermal_expansion = 6.5e-4 / VN_KELVIN,
		.bulk_modulus = 1.6e9 * VN_PASCAL,
		.pressure_viscosity = 2e-8 / VN_PASCAL,
		.specific_heat = 1950 * VN_JOULE / (VN_KILOGRAM * VN_KELVIN),
	};
}

int32_t vane_oil_from_grade(double grade, double viscosity_index, vane_oil *oil, vane_error *error)
{
	vane_error own;
	if (!error)
		error = &own;
	vn_begin(error);
	if (!vn_pointer(oil, "oil", error))
		return error->code;
	*oil = (vane_oil){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	const double viscosity_40 = vane_oil_grade_viscosity(grade, error);
	if (error->code != VANE_OK)
		return error->code;
	if (!vn_finite(viscosity_index, "viscosity_index", "", error))
		return error->code;
	const double viscosity_100 = vane_oil_viscosity_100(viscosity_40, viscosity_index, error);
	if (error->code != VANE_OK) {
		vn_fail(error->code, "viscosity_index", viscosity_index,
			"viscosity_index cannot be had at this grade: the oil would be thinner "
			"than "
			"2 mm2/s at 100 degC, or would not thin at all.",
			error);
		return error->code;
	}
	vane_oil_default(oil);
	oil->viscosity_1 = viscosity_40;
	oil->viscosity_2 = viscosity_100;
	return VANE_OK;
}

bool vn_oil_check(const vane_oil *oil, vane_error *error)
{
	if (!vn_pointer(oil, "oil", error))
		return false;
	if (vn_oil_points_valid(oil->temperature_1, oil->viscosity_1, oil->temperature_2,
				oil->viscosity_2, VANE_OIL_WALTHER, error) &&
	    vn_above(oil->density, 0, "density", "kg/m3", error) &&
	    vn_above(oil->reference_temperature, 0, "reference_temperature", "K", error) &&
	    vn_least(oil->thermal_expansion, 0, "thermal_expansion", "1/K", error) &&
	    vn_above(oil->bulk_modulus, 0, "bulk_modulus", "Pa", error) &&
	    vn_least(oil->pressure_viscosity, 0, "pressure_viscosity", "1/Pa", error) &&
	    vn_above(oil->specific_heat, 0, "specific_heat", "J/(kg.K)", error))
		return true;
	vn_within("oil", error);
	return false;
}

int32_t vane_oil_at(const vane_oil *oil, double temperature, vane_oil_state *state,
		    vane_error *error)
{
	vane_error own;
	if (!error)
		error = &own;
	vn_begin(error);
	if (!vn_pointer(state, "state", error))
		return error->code;
	*state = (vane_oil_state){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_pointer(oil, "oil", error) ||
	    !vn_above(temperature, 0, "temperature", "K", error) || !vn_oil_check(oil, error))
		return error->code;
	const double w = vn_oil_line_at(temperature, oil->temperature_1, oil->viscosity_1,
					oil->temperature_2, oil->viscosity_2, VANE_OIL_WALTHER);
	const double kinematic = vn_oil_from_inner_log(w, VANE_OIL_WALTHER);
	const double density = oil->density * exp(-oil->thermal_expansion *
						  (temperature - oil->reference_temperature));
	const double first = vn_oil_inner_log(oil->viscosity_1, VANE_OIL_WALTHER);
	const double second = vn_oil_inner_log(oil->viscosity_2, VANE_OIL_WALTHER);
	const double bend =
		log(first / second) / vn_oil_log_ratio(oil->temperature_2, oil->temperature_1);
	const double offset = 0.7e-6 * VN_SQUARE_METRE_PER_SECOND;
	const double slope =
		(1 + offset / kinematic) * w * bend / temperature + oil->thermal_expansion;
	if (!isfinite(vn_result(kinematic, error)) || !isfinite(vn_result(density, error)) ||
	    !isfinite(vn_result(kinematic * density, error)) || !isfinite(vn_result(slope, error)))
		return error->code;
	if (!(density > 0) || !(kinematic * density > 0)) {
		vn_fail(VANE_OUT_OF_RANGE, "temperature", temperature,
			"temperature is so far from oil.reference_temperature that no density is "
			"left, in K.",
			error);
		return error->code;
	}
	*state = (vane_oil_state){
		.temperature = temperature,
		.viscosity = kinematic * density,
		.kinematic_viscosity = kinematic,
		.density = density,
		.bulk_modulus = oil->bulk_modulus,
		.pressure_viscosity = oil->pressure_viscosity,
		.specific_heat = oil->specific_heat,
		.viscosity_temperature = slope,
	};
	return VANE_OK;
}

int32_t vn_oil_at(const vane_oil *oil, double temperature, const char *record,
		  vane_oil_state *state, vane_error *error)
{
	vane_error own;
	if (!error)
		error = &own;
	const int32_t status = vane_oil_at(oil, temperature, state, error);
	if (status != VANE_OK && strcmp(error->name, "temperature") == 0)
		vn_within(record, error);
	return status;
}
