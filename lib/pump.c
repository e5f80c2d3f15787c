#include "vane/pump.h"
#include "check.h"
#include "dimension.h"
#include "oil.h"
#include "parts.h"
#include "shaft.h"
#include "vane/displacement.h"

#include <math.h>
#include <stddef.h>

#define PI 3.14159265358979323846

#define ATMOSPHERE (101325 * VN_PASCAL)

static const int64_t most_duties = 1000000000;

/* Heat conductivity of mineral oil; handbook value, from memory. It only serves to judge whether
 * films warm up. */
#define CONDUCTIVITY (0.13 * VN_WATT / (VN_METRE * VN_KELVIN))

void vane_duty_default(vane_duty *duty)
{
	if (!duty)
		return;
	*duty = (vane_duty){
		.speed = 25 / VN_SECOND,
		.outlet_pressure = 10e6 * VN_PASCAL,
		.temperature = 323.15 * VN_KELVIN,
	};
}

static bool check_duty(const vane_duty *d, vane_error *e)
{
	if (!vn_pointer(d, "duty", e))
		return false;
	if (vn_above(d->speed, 0, "speed", "1/s", e) &&
	    vn_above(d->inlet_pressure, -ATMOSPHERE, "inlet_pressure", "Pa", e) &&
	    vn_least(d->outlet_pressure, d->inlet_pressure, "outlet_pressure", "Pa", e) &&
	    vn_above(d->case_pressure, -ATMOSPHERE, "case_pressure", "Pa", e) &&
	    vn_above(d->temperature, 0, "temperature", "K", e))
		return true;
	vn_within("duty", e);
	return false;
}

static vane_performance nothing(void)
{
	const vane_slip slip = {NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN,
				NAN, NAN, NAN, NAN, NAN, 0,   0};
	const vane_torque torque = {NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	return (vane_performance){
		NAN,    NAN, NAN, NAN, slip, NAN, NAN, NAN, NAN, NAN, NAN, NAN,
		torque, NAN, NAN, NAN, NAN,  NAN, NAN, NAN, NAN, 0,   0,
	};
}

/* Oil that is carried past the lands is compressed on its way: a full chamber's worth on the
 * outlet basis, only what returns in the dead volume on the inlet basis. */
static void compress(vane_performance *r, const vane_displacement *d, const vane_parts *parts,
		     double dp, double speed, double bulk_modulus)
{
	const double chambers = 2 * parts->vanes * speed, strain = dp / bulk_modulus;
	r->compressibility_loss = -chambers * d->greatest * expm1(-strain);
	r->compressibility_inlet = chambers * d->least * expm1(strain);
}

static int32_t judge(const vane_performance *r)
{
	int32_t caution = 0;
	if (r->kinematic_viscosity < 10e-6 * VN_SQUARE_METRE_PER_SECOND)
		caution |= VANE_CAUTION_THIN_OIL;
	if (r->kinematic_viscosity > 860e-6 * VN_SQUARE_METRE_PER_SECOND)
		caution |= VANE_CAUTION_THICK_OIL;
	if (!(r->outlet_flow > 0))
		caution |= VANE_CAUTION_NO_FLOW;
	return caution;
}

int32_t vane_pump_run(const vane_parts *parts, const vane_oil *oil, const vane_duty *duty,
		      vane_performance *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = nothing();
	if (!vn_parts_check(parts, error) || !check_duty(duty, error))
		return VANE_INVALID_ARGUMENT;
	vane_oil_state state;
	vane_displacement displacement;
	int32_t vanes = 0;
	vane_performance r = nothing();
	const double dp = duty->outlet_pressure - duty->inlet_pressure;
	int32_t status = vn_oil_at(oil, duty->temperature, "duty", &state, error);
	if (status != VANE_OK)
		return status;
	const double diffusivity = CONDUCTIVITY / (state.density * state.specific_heat);
	if (!(diffusivity > 0) || !isfinite(diffusivity)) {
		vn_fail(VANE_OUT_OF_RANGE, "oil.specific_heat", oil->specific_heat,
			"oil.specific_heat, in J/(kg.K), leaves no thermal diffusivity at this "
			"density that a double can hold.",
			error);
		return VANE_OUT_OF_RANGE;
	}
	const vane_slip_state drive = {
		.outlet_pressure = duty->outlet_pressure,
		.inlet_pressure = duty->inlet_pressure,
		.case_pressure = duty->case_pressure,
		.speed = duty->speed,
		.viscosity = state.viscosity,
		.density = state.density,
		.pressure_viscosity = state.pressure_viscosity,
		.thermal_diffusivity = diffusivity,
	};
	if ((status = vane_displacement_run(parts, &displacement, error)) != VANE_OK ||
	    (status = vane_slip_run(parts, &drive, &r.slip, error)) != VANE_OK ||
	    (status = vn_shaft_run(parts, dp, duty->speed, state.viscosity, &r.torque, &vanes,
				   error)) != VANE_OK)
		return status;
	r.displacement = displacement.selected;
	r.displacement_a = displacement.roots_zone;
	r.displacement_b = displacement.roots_outlet;
	r.ideal_flow = r.displacement * duty->speed;
	compress(&r, &displacement, parts, dp, duty->speed, state.bulk_modulus);
	r.outlet_flow = r.ideal_flow - r.slip.total - r.compressibility_loss;
	r.inlet_flow = r.ideal_flow - r.slip.total - r.compressibility_inlet;
	r.volumetric_efficiency = r.outlet_flow / r.ideal_flow;
	r.volumetric_efficiency_inlet = r.inlet_flow / r.ideal_flow;
	r.incompressible_efficiency = 1 - r.slip.total / r.ideal_flow;
	r.shaft_power = 2 * PI * duty->speed * r.torque.total;
	/* Gauge inlet pressure is what the supply has already given the oil. */
	r.hydraulic_power = dp * r.outlet_flow;
	r.hydromechanical_efficiency = r.torque.ideal / r.torque.total;
	r.overall_efficiency = r.hydraulic_power / r.shaft_power;
	r.heat = r.shaft_power - r.hydraulic_power;
	r.viscosity = state.viscosity;
	r.kinematic_viscosity = state.kinematic_viscosity;
	r.density = state.density;
	r.roots = parts->roots;
	r.caution = judge(&r) | r.slip.caution | vanes;
	if (!isfinite(r.outlet_flow) || !isfinite(r.inlet_flow) ||
	    !isfinite(r.volumetric_efficiency) || !isfinite(r.volumetric_efficiency_inlet) ||
	    !isfinite(r.incompressible_efficiency) || !isfinite(r.heat) ||
	    !isfinite(r.overall_efficiency) || !isfinite(r.hydromechanical_efficiency)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = r;
	return VANE_OK;
}

/* What no duty can make good. */
static int32_t check_pump(const vane_parts *parts, const vane_oil *oil, const vane_duty *duty,
			  vane_error *error)
{
	vane_displacement displacement;
	const int32_t status = vane_displacement_run(parts, &displacement, error);
	if (status != VANE_OK)
		return status;
	return vn_oil_check(oil, error) && vn_pointer(duty, "duty", error) ? VANE_OK
									   : VANE_INVALID_ARGUMENT;
}

int32_t vane_pump_map(const vane_parts *parts, const vane_oil *oil, const vane_duty *duty,
		      int64_t duties, vane_performance *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_count(duties, 0, most_duties, "duties", error) || !vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	int32_t first = check_pump(parts, oil, duty, error);
	if (first != VANE_OK) {
		for (int64_t i = 0; i < duties; i++)
			out[i] = nothing();
		return first;
	}
	vn_begin(error);
	for (int64_t i = 0; i < duties; i++) {
		/* Once an error is recorded, no later duty may write over it. */
		const int32_t status = vane_pump_run(parts, oil, &duty[i], &out[i],
						     first == VANE_OK ? error : NULL);
		if (first == VANE_OK && status != VANE_OK) {
			first = status;
			vn_at(i, error);
		}
	}
	return first;
}
