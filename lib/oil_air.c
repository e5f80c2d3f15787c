#include "oil.h"

#include "check.h"

#define ATMOSPHERE (101325 * VN_PASCAL)

/* Oil with air at one pressure: volumes of both, relative to the whole at the
 * reference pressure, were all air free; `gas` is one over the other, which
 * outlives either. `free` is the share that is free, `fade` how fast it falls
 * with pressure. */
typedef struct aerated {
	double liquid, air, gas, free, fade;
	double bulk_modulus, gas_modulus;
} aerated;

static bool air_valid(double air_fraction, double reference_absolute_pressure,
		      double polytropic_exponent, const char *const name[3], vane_error *error)
{
	return vn_between(air_fraction, 0, 0.999, name[0], "", error) &&
	       vn_above(reference_absolute_pressure, 0, name[1], "Pa", error) &&
	       vn_between(polytropic_exponent, 1, 2, name[2], "", error);
}

static bool pressure_valid(double absolute_pressure, double bulk_modulus, vane_error *error)
{
	return vn_above(absolute_pressure, 0, "absolute_pressure", "Pa", error) &&
	       vn_above(bulk_modulus, 0, "bulk_modulus", "Pa", error);
}

static aerated state_of(double absolute_pressure, double bulk_modulus, double air_fraction,
			double reference_absolute_pressure, double polytropic_exponent)
{
	const double strain = (absolute_pressure - reference_absolute_pressure) / bulk_modulus;
	const double spread =
		pow(reference_absolute_pressure / absolute_pressure, 1 / polytropic_exponent);
	return (aerated){
		.liquid = (1 - air_fraction) * exp(-strain),
		.air = air_fraction * spread,
		/* Without air none, however far the liquid is compressed away. */
		.gas = air_fraction > 0 ? air_fraction / (1 - air_fraction) * spread * exp(strain)
					: 0,
		.free = 1,
		.bulk_modulus = bulk_modulus,
		.gas_modulus = polytropic_exponent * absolute_pressure,
	};
}

static double volume_of(const aerated *a)
{
	return a->liquid + a->air * a->free;
}

/* -v / (dv/dp), so that density and modulus conserve mass. */
static double modulus_of(const aerated *a)
{
	const double gas = a->gas * a->free;
	if (!(gas < 1e300))
		return a->gas_modulus / (1 + a->gas_modulus * (a->fade / a->free));
	return (1 + gas) / (1 / a->bulk_modulus + (gas / a->gas_modulus + a->gas * a->fade));
}

static double gas_fraction_of(const aerated *a)
{
	const double gas = a->gas * a->free;
	return gas < 1e300 ? gas / (1 + gas) : 1;
}

static bool aerated_from(double absolute_pressure, double bulk_modulus, double air_fraction,
			 double reference_absolute_pressure, double polytropic_exponent, aerated *a,
			 vane_error *error)
{
	static const char *const name[] = {"air_fraction", "reference_absolute_pressure",
					   "polytropic_exponent"};
	vn_begin(error);
	if (!pressure_valid(absolute_pressure, bulk_modulus, error) ||
	    !air_valid(air_fraction, reference_absolute_pressure, polytropic_exponent, name, error))
		return false;
	*a = state_of(absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure,
		      polytropic_exponent);
	return true;
}

/* A volume beyond all bounds, or of nothing, is no state of oil. */
static double volume_result(double volume, vane_error *error)
{
	return vn_result(volume > 0 ? volume : NAN, error);
}

double vane_oil_aerated_volume(double absolute_pressure, double bulk_modulus, double air_fraction,
			       double reference_absolute_pressure, double polytropic_exponent,
			       vane_error *error)
{
	aerated a;
	if (!aerated_from(absolute_pressure, bulk_modulus, air_fraction,
			  reference_absolute_pressure, polytropic_exponent, &a, error))
		return NAN;
	return volume_result(volume_of(&a), error);
}

double vane_oil_aerated_density(double absolute_pressure, double bulk_modulus, double air_fraction,
				double reference_absolute_pressure, double polytropic_exponent,
				double density, vane_error *error)
{
	aerated a;
	if (!aerated_from(absolute_pressure, bulk_modulus, air_fraction,
			  reference_absolute_pressure, polytropic_exponent, &a, error) ||
	    !vn_above(density, 0, "density", "kg/m3", error))
		return NAN;
	return vn_result(density / volume_result(volume_of(&a), error), error);
}

double vane_oil_aerated_modulus(double absolute_pressure, double bulk_modulus, double air_fraction,
				double reference_absolute_pressure, double polytropic_exponent,
				vane_error *error)
{
	aerated a;
	if (!aerated_from(absolute_pressure, bulk_modulus, air_fraction,
			  reference_absolute_pressure, polytropic_exponent, &a, error))
		return NAN;
	return vn_result(modulus_of(&a), error);
}

double vane_oil_aerated_gas_fraction(double absolute_pressure, double bulk_modulus,
				     double air_fraction, double reference_absolute_pressure,
				     double polytropic_exponent, vane_error *error)
{
	aerated a;
	if (!aerated_from(absolute_pressure, bulk_modulus, air_fraction,
			  reference_absolute_pressure, polytropic_exponent, &a, error))
		return NAN;
	return vn_result(gas_fraction_of(&a), error);
}

double vane_oil_effective_modulus(double absolute_pressure, double bulk_modulus,
				  double gas_fraction, double polytropic_exponent,
				  vane_error *error)
{
	vn_begin(error);
	if (!pressure_valid(absolute_pressure, bulk_modulus, error) ||
	    !vn_between(gas_fraction, 0, 1, "gas_fraction", "", error) ||
	    !vn_between(polytropic_exponent, 1, 2, "polytropic_exponent", "", error))
		return NAN;
	const double gas_modulus = polytropic_exponent * absolute_pressure;
	return vn_result(1 / (gas_fraction / gas_modulus + (1 - gas_fraction) / bulk_modulus),
			 error);
}

static double free_share(double pressure, double from, double at)
{
	if (pressure <= from)
		return 1;
	if (pressure >= at)
		return 0;
	const double x = (pressure - from) / (at - from), y = (at - pressure) / (at - from);
	return y * y * y * (1 + x * (3 + 6 * x));
}

/* -d(free share)/dp. */
static double free_fade(double pressure, double from, double at)
{
	if (pressure <= from || pressure >= at)
		return 0;
	const double x = (pressure - from) / (at - from), y = (at - pressure) / (at - from);
	return 30 * (x * y) * (x * y) / (at - from);
}

double vane_oil_free_air(double absolute_pressure, double dissolving_from, double dissolved_at,
			 vane_error *error)
{
	vn_begin(error);
	if (!vn_above(absolute_pressure, 0, "absolute_pressure", "Pa", error) ||
	    !vn_least(dissolving_from, 0, "dissolving_from", "Pa", error) ||
	    !vn_above(dissolved_at, dissolving_from, "dissolved_at", "Pa", error))
		return NAN;
	return free_share(absolute_pressure, dissolving_from, dissolved_at);
}

void vane_oil_air_default(vane_oil_air *air)
{
	if (!air)
		return;
	*air = (vane_oil_air){
		.fraction = 0.005,
		.absolute_pressure = ATMOSPHERE,
		.polytropic_exponent = 1.2,
		.dissolving_from = 0,
		.dissolved_at = 0,
	};
}

int32_t vane_oil_mixture_at(const vane_oil_air *air, double absolute_pressure, double density,
			    double bulk_modulus, vane_oil_mixture *mixture, vane_error *error)
{
	static const char *const name[] = {"fraction", "absolute_pressure", "polytropic_exponent"};
	vane_error own;
	if (!error)
		error = &own;
	vn_begin(error);
	if (!vn_pointer(mixture, "mixture", error))
		return error->code;
	*mixture = (vane_oil_mixture){NAN, NAN, NAN, NAN};
	if (!vn_pointer(air, "air", error) ||
	    !pressure_valid(absolute_pressure, bulk_modulus, error) ||
	    !vn_above(density, 0, "density", "kg/m3", error))
		return error->code;
	if (!air_valid(air->fraction, air->absolute_pressure, air->polytropic_exponent, name,
		       error) ||
	    !vn_least(air->dissolving_from, 0, "dissolving_from", "Pa", error) ||
	    !vn_least(air->dissolved_at, 0, "dissolved_at", "Pa", error)) {
		vn_within("air", error);
		return error->code;
	}
	aerated a = state_of(absolute_pressure, bulk_modulus, air->fraction, air->absolute_pressure,
			     air->polytropic_exponent);
	if (air->dissolved_at > air->dissolving_from) {
		a.free = free_share(absolute_pressure, air->dissolving_from, air->dissolved_at);
		a.fade = free_fade(absolute_pressure, air->dissolving_from, air->dissolved_at);
	}
	const vane_oil_mixture out = {
		.volume = volume_of(&a),
		.density = density / volume_of(&a),
		.bulk_modulus = modulus_of(&a),
		.gas_fraction = gas_fraction_of(&a),
	};
	if (!isfinite(volume_result(out.volume, error)) ||
	    !isfinite(vn_result(out.density, error)) ||
	    !isfinite(vn_result(out.bulk_modulus, error)) ||
	    !isfinite(vn_result(out.gas_fraction, error)))
		return error->code;
	*mixture = out;
	return VANE_OK;
}

double vane_oil_bunsen(double temperature, double density_15, double ostwald, vane_error *error)
{
	const double unit = VN_KILOGRAM / VN_CUBIC_METRE;
	vn_begin(error);
	if (!vn_between(temperature, 228 * VN_KELVIN, 423 * VN_KELVIN, "temperature", "K", error) ||
	    !vn_between(density_15, 700 * unit, 970 * unit, "density_15", "kg/m3", error) ||
	    !vn_between(ostwald, 0.001, 10, "ostwald", "", error))
		return NAN;
	const double reach = 0.639 * (700 * VN_KELVIN - temperature) / temperature;
	const double at_850 = 0.3 * pow(3.333 * ostwald, reach);
	return 273.15 * VN_KELVIN / temperature * 7.7 * at_850 *
	       ((980 * unit - density_15) / (1000 * unit));
}

double vane_oil_dissolved_air(double bunsen_coefficient, double absolute_pressure,
			      vane_error *error)
{
	vn_begin(error);
	if (!vn_above(bunsen_coefficient, 0, "bunsen_coefficient", "", error) ||
	    !vn_above(absolute_pressure, 0, "absolute_pressure", "Pa", error))
		return NAN;
	return vn_result(bunsen_coefficient * (absolute_pressure / ATMOSPHERE), error);
}

double vane_oil_saturation_pressure(double bunsen_coefficient, double dissolved_air,
				    vane_error *error)
{
	vn_begin(error);
	if (!vn_above(bunsen_coefficient, 0, "bunsen_coefficient", "", error) ||
	    !vn_least(dissolved_air, 0, "dissolved_air", "", error))
		return NAN;
	return vn_result(ATMOSPHERE * (dissolved_air / bunsen_coefficient), error);
}
