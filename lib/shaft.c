#include "vane/shaft.h"
#include "check.h"
#include "dimension.h"
#include "parts.h"
#include "ring.h"
#include "shaft.h"
#include "vane/displacement.h"
#include "vane/tip.h"

#include <math.h>

#define PI 3.14159265358979323846

double vane_shaft_ideal_torque(double displacement, double dp, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(displacement, 0, "displacement", "m3", error) ||
	    !vn_finite(dp, "dp", "Pa", error))
		return NAN;
	return vn_result(displacement / (2 * PI) * dp, error);
}

double vane_shaft_power(double torque, double speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(torque, "torque", "N.m", error) || !vn_finite(speed, "speed", "1/s", error))
		return NAN;
	return vn_result(2 * PI * speed * torque, error);
}

/* Least rating of a rising list, each times unit, that is at least the power. */
static double next_rating(const double *rating, int count, double unit, double power, double factor,
			  vane_error *error)
{
	vn_begin(error);
	if (!vn_above(power, 0, "power", "W", error) ||
	    !vn_least(factor, 1, "service_factor", "", error))
		return NAN;
	for (int i = 0; i < count; i++)
		if (rating[i] * unit >= power * factor)
			return rating[i] * unit;
	vn_fail(VANE_NO_SOLUTION, "power", power,
		"power times service_factor exceeds the largest rated output of the list, in W.",
		error);
	return NAN;
}

double vane_shaft_motor_iec(double power, double service_factor, vane_error *error)
{
	/* IEC 60072-1, kW. */
	static const double rating[] = {0.06, 0.09, 0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1,
					1.5,  2.2,  3,    4,    5.5,  7.5,  11,   15,   18.5,
					22,   30,   37,   45,   55,   75,   90,   110,  132,
					150,  160,  185,  200,  220,  250};
	return next_rating(rating, (int)(sizeof rating / sizeof *rating), 1000 * VN_WATT, power,
			   service_factor, error);
}

double vane_shaft_motor_nema(double power, double service_factor, vane_error *error)
{
	/* NEMA MG 1, hp of 550 ft.lbf/s. */
	static const double rating[] = {0.5, 0.75, 1,   1.5, 2,   3,   5,   7.5, 10,
					15,  20,   25,  30,  40,  50,  60,  75,  100,
					125, 150,  200, 250, 300, 350, 400, 450, 500};
	return next_rating(rating, (int)(sizeof rating / sizeof *rating),
			   550 * 0.3048 * 4.4482216152605 * VN_WATT, power, service_factor, error);
}

static double crown_cubed(double angle, void *context)
{
	const double l = vn_ring_point(context, angle).radius;
	return l * l * l;
}

/* Mean of the crown's radius cubed over the lobe. */
static double mean_crown_cubed(const vane_ring *ring)
{
	return vn_ring_integral(ring, ring->phase, ring->phase + PI, crown_cubed, ring) / PI;
}

static double fourth(double x)
{
	return x * x * x * x;
}

/* Films whose drag has no limit when the gap closes. */
static bool films(const vane_parts *p, const vane_parts_gaps *gap, vane_error *error)
{
	if (!(gap->face > 0))
		return vn_fail(
			VANE_NO_SOLUTION, "parts.rotor_width", p->rotor_width,
			"parts.rotor_width equals parts.ring.width: without a face clearance the "
			"torque has no limit.",
			error);
	if (!(gap->end > 0))
		return vn_fail(
			VANE_NO_SOLUTION, "parts.vane_width", p->vane_width,
			"parts.vane_width equals parts.ring.width: without an end clearance the "
			"torque has no limit.",
			error);
	if (!(p->shaft_gap > 0))
		return vn_fail(
			VANE_NO_SOLUTION, "parts.shaft_gap", p->shaft_gap,
			"parts.shaft_gap is 0 m: without a gap the shaft's torque has no limit.",
			error);
	return true;
}

int32_t vn_shaft_run(const vane_parts *parts, double dp, double speed, double viscosity,
		     vane_torque *out, int32_t *caution, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_torque){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_parts_check(parts, error) || !vn_least(dp, 0, "dp", "Pa", error) ||
	    !vn_above(speed, 0, "speed", "1/s", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return VANE_INVALID_ARGUMENT;
	const vane_parts_gaps gap = vn_parts_gaps(parts);
	if (!films(parts, &gap, error))
		return VANE_NO_SOLUTION;
	vane_displacement displacement;
	vane_tip_revolution vanes;
	int32_t status = vane_displacement_run(parts, &displacement, error);
	if (status == VANE_OK)
		status = vane_tip_run(parts, dp, speed, &vanes, error);
	if (status != VANE_OK)
		return status;
	const double omega = 2 * PI * speed, rotor = parts->rotor_radius;
	const double ring_areas = fourth(parts->groove_inner) - fourth(parts->plate_bore) +
				  fourth(rotor) - fourth(parts->groove_outer);
	const double eccentricity = parts->shaft_eccentricity;
	vane_torque t = {
		.ideal = dp * displacement.selected / (2 * PI),
		.vane_tip = vanes.tip_torque,
		.vane_slot = vanes.slot_torque,
		/* Two faces, each mu omega pi r^4 / (2 h). */
		.face = PI * viscosity * omega * ring_areas / gap.face,
		.vane_end = 2 * parts->vanes * parts->vane_thickness * viscosity * omega /
			    (3 * gap.end) *
			    (mean_crown_cubed(&parts->ring) - rotor * rotor * rotor),
		.shaft_film = 2 * PI * viscosity * omega * parts->shaft_radius *
			      parts->shaft_radius * parts->shaft_radius * parts->shaft_length /
			      (parts->shaft_gap * sqrt((1 - eccentricity) * (1 + eccentricity))),
		.seal = parts->seal_friction * PI * 2 * parts->shaft_radius * parts->shaft_radius,
	};
	t.loss = t.vane_tip + t.vane_slot + t.face + t.vane_end + t.shaft_film + t.seal;
	t.total = t.ideal + t.loss;
	if (!isfinite(t.total)) {
		vn_result(t.total, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = t;
	*caution = displacement.caution | vanes.caution;
	return VANE_OK;
}

int32_t vane_shaft_run(const vane_parts *parts, double dp, double speed, double viscosity,
		       vane_torque *out, vane_error *error)
{
	int32_t caution;
	return vn_shaft_run(parts, dp, speed, viscosity, out, &caution, error);
}
