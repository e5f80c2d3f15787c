#include "oil.h"

#include "check.h"
#include "dimension.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

/* 0.3 mm2/s, where the outer logarithm of the short form reaches minus infinity. */
#define THINNEST (3e-7 * VN_SQUARE_METRE_PER_SECOND)

/* ln(a/b), exact for neighbours and without overflow for strangers. */
static double log_ratio(double a, double b)
{
	if (a > b / 2 && a / 2 < b)
		return log1p((a - b) / b);
	return log(a) - log(b);
}

/* ln(nu + 0.7) with nu in mm2/s. */
static double inner_log(double viscosity)
{
	const double excess = (viscosity - THINNEST) / VN_SQUARE_METRE_PER_SECOND;
	/* Beyond 1e20 the product could overflow, and the one is long lost. */
	return excess < 1e20 ? log1p(1e6 * excess) : log(excess) + log(1e6);
}

static bool points_valid(double temperature_1, double viscosity_1, double temperature_2,
			 double viscosity_2, vane_error *error)
{
	if (!vn_above(temperature_1, 0, "temperature_1", "K", error) ||
	    !vn_above(viscosity_1, THINNEST, "viscosity_1", "m2/s", error) ||
	    !vn_above(temperature_2, 0, "temperature_2", "K", error) ||
	    !vn_above(viscosity_2, THINNEST, "viscosity_2", "m2/s", error))
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

/* The viscosity of which w is ln(nu + 0.7). */
static double outer_exp(double w)
{
	return expm1(w) / 1e6 * VN_SQUARE_METRE_PER_SECOND + THINNEST;
}

/* ln(nu + 0.7) at a temperature: linear in its own logarithm over ln T. */
static double law(double temperature, double temperature_1, double viscosity_1,
		  double temperature_2, double viscosity_2)
{
	const double first = inner_log(viscosity_1), second = inner_log(viscosity_2);
	return first * pow(second / first, log_ratio(temperature, temperature_1) /
						   log_ratio(temperature_2, temperature_1));
}

double vane_oil_walther(double temperature, double temperature_1, double viscosity_1,
			double temperature_2, double viscosity_2, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(temperature, 0, "temperature", "K", error) ||
	    !points_valid(temperature_1, viscosity_1, temperature_2, viscosity_2, error))
		return NAN;
	const double w = law(temperature, temperature_1, viscosity_1, temperature_2, viscosity_2);
	return vn_result(outer_exp(w), error);
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

/* ISO 3448: the number of a grade is its midpoint, but rounded below 10. */
static const struct {
	double grade, midpoint;
} grades[] = {
	{2, 2.2},   {3, 3.2},   {5, 4.6},     {7, 6.8},     {10, 10},     {15, 15},     {22, 22},
	{32, 32},   {46, 46},   {68, 68},     {100, 100},   {150, 150},   {220, 220},   {320, 320},
	{460, 460}, {680, 680}, {1000, 1000}, {1500, 1500}, {2200, 2200}, {3200, 3200},
};

double vane_oil_grade_viscosity(double grade, vane_error *error)
{
	vn_begin(error);
	for (size_t i = 0; i < sizeof grades / sizeof *grades; i++)
		if (grades[i].grade == grade)
			return grades[i].midpoint / 1e6 * VN_SQUARE_METRE_PER_SECOND;
	vn_fail(VANE_INVALID_ARGUMENT, "grade", grade,
		"grade must be a number of ISO 3448: 2, 3, 5, 7, 10, 15, 22, 32, 46, 68 and so on "
		"to 3200.",
		error);
	return NAN;
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
	if (points_valid(oil->temperature_1, oil->viscosity_1, oil->temperature_2, oil->viscosity_2,
			 error) &&
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
	const double w = law(temperature, oil->temperature_1, oil->viscosity_1, oil->temperature_2,
			     oil->viscosity_2);
	const double kinematic = outer_exp(w);
	const double density = oil->density * exp(-oil->thermal_expansion *
						  (temperature - oil->reference_temperature));
	const double bend = log(inner_log(oil->viscosity_1) / inner_log(oil->viscosity_2)) /
			    log_ratio(oil->temperature_2, oil->temperature_1);
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
