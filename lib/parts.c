#include "parts.h"

#include "check.h"
#include "dimension.h"
#include "ring.h"

#include <math.h>

#define PI 3.14159265358979323846

void vane_parts_default(vane_parts *parts)
{
	if (!parts)
		return;
	*parts = (vane_parts){
		.vane_density = 7800 * VN_KILOGRAM / VN_CUBIC_METRE,
		.tip_film = 1e-6 * VN_METRE,
		.shaft_eccentricity = 0.5,
		.vane_offset = 1,
		.tip_friction = 0.06,
		.slot_friction = 0.10,
		.seal_friction = 150 * VN_NEWTON / VN_METRE,
		.roots = VANE_ROOTS_OUTLET,
	};
	vane_ring_default(&parts->ring);
}

static bool rotating_group(const vane_parts *p, vane_error *e)
{
	return vn_above(p->plate_bore, 0, "plate_bore", "m", e) &&
	       vn_above(p->groove_inner, p->plate_bore, "groove_inner", "m", e) &&
	       vn_above(p->groove_outer, p->groove_inner, "groove_outer", "m", e) &&
	       vn_above(p->rotor_radius, p->groove_outer, "rotor_radius", "m", e) &&
	       vn_above(p->rotor_width, 0, "rotor_width", "m", e) &&
	       vn_between(p->rotor_width, 0, p->ring.width, "rotor_width", "m", e) &&
	       vn_above(p->vane_width, 0, "vane_width", "m", e) &&
	       vn_between(p->vane_width, 0, p->ring.width, "vane_width", "m", e) &&
	       vn_above(p->vane_thickness, 0, "vane_thickness", "m", e) &&
	       vn_least(p->slot_width, p->vane_thickness, "slot_width", "m", e) &&
	       vn_above(p->vane_height, 0, "vane_height", "m", e) &&
	       vn_above(p->vane_density, 0, "vane_density", "kg/m3", e) &&
	       vn_above(p->tip_radius, 0, "tip_radius", "m", e) &&
	       vn_least(p->tip_film, 0, "tip_film", "m", e) &&
	       vn_count(p->vanes, 4, 64, "vanes", e) &&
	       vn_count(p->roots, VANE_ROOTS_ZONE, VANE_ROOTS_OUTLET, "roots", e);
}

static bool ports(const vane_parts *p, vane_error *e)
{
	return vn_least(p->inlet_open, 0, "inlet_open", "rad", e) &&
	       vn_above(p->inlet_close, p->inlet_open, "inlet_close", "rad", e) &&
	       vn_above(p->outlet_open, p->inlet_close, "outlet_open", "rad", e) &&
	       vn_above(p->outlet_close, p->outlet_open, "outlet_close", "rad", e) &&
	       vn_between(p->outlet_close, 0, PI + p->inlet_open, "outlet_close", "rad", e) &&
	       vn_between(p->notch, 0, p->outlet_open - p->inlet_close, "notch", "rad", e);
}

static bool shaft_and_friction(const vane_parts *p, vane_error *e)
{
	return vn_above(p->shaft_radius, 0, "shaft_radius", "m", e) &&
	       vn_least(p->shaft_gap, 0, "shaft_gap", "m", e) &&
	       vn_above(p->shaft_length, 0, "shaft_length", "m", e) &&
	       /* At 1 the shaft touches its bore and the film's drag has no limit. */
	       vn_between(p->shaft_eccentricity, 0, 0.9999, "shaft_eccentricity", "", e) &&
	       vn_between(p->rotor_offset, 0, 1, "rotor_offset", "", e) &&
	       vn_between(p->vane_offset, 0, 1, "vane_offset", "", e) &&
	       vn_between(p->tip_friction, 0, 0.9999, "tip_friction", "", e) &&
	       vn_between(p->slot_friction, 0, 0.9999, "slot_friction", "", e) &&
	       vn_least(p->seal_friction, 0, "seal_friction", "N/m", e);
}

/* Fields that are sound one by one can still not fit together. */
static bool assembly(const vane_parts *p, vane_error *e)
{
	const double small = p->ring.small_radius;
	if (!vn_between(p->rotor_radius, 0, small, "rotor_radius", "m", e) ||
	    !vn_between(p->tip_radius, 0, small, "tip_radius", "m", e))
		return false;
	if (!(p->tip_radius < small))
		return vn_fail(VANE_INVALID_ARGUMENT, "tip_radius", p->tip_radius,
			       "tip_radius must be less than ring.small_radius, in m.", e);
	if (p->tip_radius < p->vane_thickness / 2)
		return vn_fail(VANE_INVALID_ARGUMENT, "tip_radius", p->tip_radius,
			       "tip_radius must be at least half of vane_thickness, in m, to round "
			       "the tip.",
			       e);
	if (p->vanes % 2 != 0)
		return vn_fail(VANE_INVALID_ARGUMENT, "vanes", p->vanes,
			       "vanes must be even between 4 and 64.", e);
	if (p->slot_width * p->vanes >= 2 * PI * p->groove_outer)
		return vn_fail(
			VANE_INVALID_ARGUMENT, "slot_width", p->slot_width,
			"slot_width must leave metal between the slots at groove_outer, in m.", e);
	if (p->vane_height <= p->ring.large_radius - p->rotor_radius)
		return vn_fail(VANE_INVALID_ARGUMENT, "vane_height", p->vane_height,
			       "vane_height must exceed ring.large_radius less rotor_radius, in m: "
			       "the vane "
			       "would leave its slot.",
			       e);
	if (p->slot_width * p->vanes >= 2 * PI * (small - p->vane_height))
		return vn_fail(
			VANE_INVALID_ARGUMENT, "vane_height", p->vane_height,
			"vane_height must leave metal between the slots at ring.small_radius less "
			"vane_height, in m.",
			e);
	return true;
}

bool vn_parts_check(const vane_parts *parts, vane_error *error)
{
	if (!vn_pointer(parts, "parts", error))
		return false;
	if (!vn_ring_check(&parts->ring, error)) {
		vn_within("ring", error);
		vn_within("parts", error);
		return false;
	}
	if (rotating_group(parts, error) && ports(parts, error) &&
	    shaft_and_friction(parts, error) && assembly(parts, error))
		return true;
	vn_within("parts", error);
	return false;
}

vane_parts_gaps vn_parts_gaps(const vane_parts *parts)
{
	return (vane_parts_gaps){
		(parts->ring.width - parts->rotor_width) / 2,
		(parts->ring.width - parts->vane_width) / 2,
		parts->slot_width - parts->vane_thickness,
	};
}

int32_t vane_parts_gaps_of(const vane_parts *parts, vane_parts_gaps *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_parts_gaps){NAN, NAN, NAN};
	if (!vn_parts_check(parts, error))
		return VANE_INVALID_ARGUMENT;
	*out = vn_parts_gaps(parts);
	return VANE_OK;
}

double vn_parts_pitch(const vane_parts *parts)
{
	return 2 * PI / parts->vanes;
}

double vn_parts_vane_angle(const vane_parts *parts, double radius)
{
	return 2 * asin(fmin(parts->vane_thickness / (2 * radius), 1));
}

double vn_parts_large_land(const vane_parts *parts)
{
	return parts->outlet_open - parts->notch - parts->inlet_close;
}

double vn_parts_small_land(const vane_parts *parts)
{
	return PI - parts->outlet_close + parts->inlet_open;
}

double vn_parts_large_middle(const vane_parts *parts)
{
	return parts->inlet_close + vn_parts_large_land(parts) / 2;
}

double vn_parts_small_middle(const vane_parts *parts)
{
	return parts->inlet_open - vn_parts_small_land(parts) / 2;
}
