#include "vane/slip.h"
#include "check.h"
#include "parts.h"
#include "ring.h"
#include "vane/oil.h"
#include "vane/slot.h"

#include <math.h>
#include <stddef.h>

#define PI 3.14159265358979323846

/* Both lobes, both faces, both ends. */
enum { LOBES = 2, SIDES = 2 };

/* Everything that several paths share. */
typedef struct slip_case {
	const vane_parts *parts;
	const vane_slip_state *state;
	vane_parts_gaps gap;
	double drop;        /* outlet to inlet pressure, weighed by the fluidity along the way */
	double kinematic;   /* kinematic viscosity */
	double inlet_angle; /* of the groove that faces the inlet, both lobes */
	double faces;       /* both faces in units of a centred one; rotor offset included */
	double large_seals, small_seals; /* mean of 1/(sealing vanes in series) */
} slip_case;

/* Mean over a pitch of 1/n for n vanes sealing in series on a land. A land longer than the open
 * angle of a chamber by k pitches and a fraction holds k+1 vanes, and k+2 for that fraction. */
static double seals(const vane_parts *parts, double land, double radius)
{
	const double pitch = vn_parts_pitch(parts);
	const double trapped = land - (pitch - vn_parts_vane_angle(parts, radius));
	if (trapped <= 0)
		return 1;
	const double whole = floor(trapped / pitch), part = trapped / pitch - whole;
	return (1 - part) / (whole + 1) + part / (whole + 2);
}

/* Pressure difference whose flow at constant viscosity equals that of oil that thickens with
 * pressure: exact for every film of fixed gap (Kirchhoff's transform). */
static double weighed(const vane_slip_state *s, double from, double to)
{
	return (from - to) * vane_oil_barus_factor(s->pressure_viscosity, to, from, NULL);
}

/* A number that cannot be told counts as too large, never as small. */
static void keep(double *greatest, double x)
{
	if (!(x <= *greatest))
		*greatest = isnan(x) ? INFINITY : x;
}

/* Keeps the greatest numbers that judge a film: flow through a width of gap and length. */
static void judge(const slip_case *c, vane_slip *out, double flow, double width, double gap,
		  double length)
{
	if (!(gap > 0))
		return;
	keep(&out->greatest_reynolds, vane_slot_reynolds(flow, width, c->kinematic, NULL));
	keep(&out->greatest_inertia,
	     vane_slot_inertia(flow, width, gap, length, c->kinematic, NULL));
	keep(&out->greatest_graetz,
	     vane_slot_graetz(fabs(flow), width, gap, length, c->state->thermal_diffusivity, NULL));
}

/* Groove to shaft: one face ends at the open shaft, the other in the gap along it. */
static void inner_face(const slip_case *c, vane_slip *out)
{
	const vane_parts *p = c->parts;
	const vane_slip_state *s = c->state;
	const double turn = p->roots == VANE_ROOTS_OUTLET ? 2 * PI : 2 * PI - c->inlet_angle;
	const double mu = s->viscosity;
	/* Per pascal, so that the two films in series do not depend on the pressure. */
	const double face =
		c->faces / SIDES *
		vane_slot_disc_flow(c->gap.face, p->plate_bore, p->groove_inner, turn, 1, mu, NULL);
	const double shaft =
		vane_slot_annulus_flow(2 * p->shaft_radius, p->shaft_gap, p->shaft_length,
				       p->shaft_eccentricity, 1, mu, 0, NULL);
	out->face_inner = (face + vane_slot_in_series(face, shaft, NULL)) *
			  weighed(s, s->outlet_pressure, s->case_pressure);
	if (shaft > 0)
		keep(&out->greatest_reynolds,
		     vane_slot_annulus_reynolds(vane_slot_in_series(face, shaft, NULL) *
							(s->outlet_pressure - s->case_pressure),
						2 * p->shaft_radius, c->kinematic, NULL));
	judge(c, out, face * (s->outlet_pressure - s->case_pressure), turn * p->plate_bore,
	      c->gap.face, p->groove_inner - p->plate_bore);
}

static void outer_face(const slip_case *c, vane_slip *out)
{
	const vane_parts *p = c->parts;
	const vane_slip_state *s = c->state;
	const double log_ratio = log1p((p->rotor_radius - p->groove_outer) / p->groove_outer);
	const double mean_radius = (p->rotor_radius - p->groove_outer) / log_ratio;
	const double vane_angle = vn_parts_vane_angle(p, p->rotor_radius);
	if (p->roots == VANE_ROOTS_OUTLET) {
		/* The slots interrupt the film. */
		const double metal = 1 - p->vanes * p->slot_width / (2 * PI * mean_radius);
		out->face_outer = c->faces * metal *
				  vane_slot_disc_flow(c->gap.face, p->groove_outer, p->rotor_radius,
						      c->inlet_angle, c->drop, s->viscosity, NULL);
		judge(c, out, out->face_outer / SIDES, c->inlet_angle * p->groove_outer,
		      c->gap.face, p->rotor_radius - p->groove_outer);
	} else {
		/* The groove is in sectors; oil crosses the bridges between their ends. */
		const double large = vn_parts_large_land(p), small = vn_parts_small_land(p);
		const double span = log1p((p->groove_outer - p->groove_inner) / p->groove_inner);
		out->face_outer =
			c->faces * LOBES * span *
			vane_slot_flow(1, c->gap.face, 1, c->drop, s->viscosity, 0, NULL) *
			(1 / fmax(large, vane_angle) + 1 / fmax(small, vane_angle));
	}
	out->face_edge = c->faces * LOBES * (c->large_seals + c->small_seals) *
			 vane_slot_edge_flow(c->gap.face, vane_angle, log_ratio, c->drop,
					     s->viscosity, NULL);
}

/* Sealing vanes of one land: ends, tip by pressure, and what tip and ends drag along. sign is
 * that of the drag: it adds to slip on the large land and takes from it on the small one. */
static void land(const slip_case *c, vane_slip *out, double radius, double share, double sign)
{
	const vane_parts *p = c->parts;
	const vane_slip_state *s = c->state;
	const double height = radius - p->rotor_radius, half = p->vane_thickness / 2;
	const double omega = 2 * PI * s->speed, width = p->ring.width;
	if (height > 0) {
		out->vane_end += LOBES * SIDES * share *
				 vane_slot_flow(height, c->gap.end, p->vane_thickness, c->drop,
						s->viscosity, 0, NULL);
		/* Couette flow at half the plate's speed, which grows with the radius. */
		out->vane_end_drag += sign * LOBES * SIDES * c->gap.end * omega *
				      (radius + p->rotor_radius) * height / 4;
		judge(c, out,
		      vane_slot_flow(height, c->gap.end, p->vane_thickness, c->drop, s->viscosity,
				     0, NULL),
		      height, c->gap.end, p->vane_thickness);
	}
	if (p->tip_film > 0 && p->tip_radius < radius) {
		const double curve = vane_slot_tip_radius(p->tip_radius, radius, NULL);
		out->tip += LOBES * share *
			    vane_slot_tip_flow(width, p->tip_film, curve, half, c->drop,
					       s->viscosity, 0, NULL);
		keep(&out->greatest_reynolds,
		     vane_slot_tip_reynolds(vane_slot_tip_flow(width, p->tip_film, curve, half,
							       c->drop, s->viscosity, 0, NULL),
					    width, c->kinematic, NULL));
		out->tip_drag += sign * LOBES *
				 vane_slot_tip_flow(width, p->tip_film, curve, half, 0,
						    s->viscosity, omega * radius, NULL);
	}
}

static double inverse_engaged(double angle, void *context)
{
	const vane_parts *p = context;
	return 1 / (p->rotor_radius - (vn_ring_point(&p->ring, angle).radius - p->vane_height));
}

/* Sum over the vanes in both inlet zones of one over the length engaged in the slot. */
static double engaged(const vane_parts *parts)
{
	const double sum = vn_ring_integral(&parts->ring, vn_parts_small_middle(parts),
					    vn_parts_large_middle(parts), inverse_engaged, parts);
	return LOBES * sum / vn_parts_pitch(parts);
}

/* Root to inlet chambers, past the vane's flanks and its ends in the slot. */
static void roots(const slip_case *c, vane_slip *out)
{
	const vane_parts *p = c->parts;
	if (p->roots != VANE_ROOTS_OUTLET)
		return;
	const double per_length = engaged(p), mu = c->state->viscosity;
	const double flanks = vane_slot_vane_flow(p->vane_width, c->gap.slot, 1, p->vane_offset,
						  c->drop, mu, NULL);
	const double ends =
		SIDES * vane_slot_flow(p->vane_thickness, c->gap.end, 1, c->drop, mu, 0, NULL);
	out->slot = flanks * per_length;
	out->vane_end_root = ends * per_length;
	const double engagement = p->rotor_radius - (p->ring.large_radius - p->vane_height);
	/* Against one wall all the clearance is on the other flank. */
	judge(c, out, flanks / engagement, p->vane_width, c->gap.slot, engagement);
}

static bool check_state(const vane_slip_state *s, vane_error *e)
{
	if (!vn_pointer(s, "state", e))
		return false;
	if (vn_finite(s->inlet_pressure, "inlet_pressure", "Pa", e) &&
	    vn_least(s->outlet_pressure, s->inlet_pressure, "outlet_pressure", "Pa", e) &&
	    vn_finite(s->case_pressure, "case_pressure", "Pa", e) &&
	    vn_least(s->speed, 0, "speed", "1/s", e) &&
	    vn_above(s->viscosity, 0, "viscosity", "Pa.s", e) &&
	    vn_above(s->density, 0, "density", "kg/m3", e) &&
	    vn_least(s->pressure_viscosity, 0, "pressure_viscosity", "1/Pa", e) &&
	    vn_above(s->thermal_diffusivity, 0, "thermal_diffusivity", "m2/s", e))
		return true;
	vn_within("state", e);
	return false;
}

static int32_t cautions(const slip_case *c, const vane_slip *slip)
{
	const vane_parts *p = c->parts;
	const double pitch = vn_parts_pitch(p);
	int32_t caution = 0;
	if (slip->greatest_reynolds > 2000)
		caution |= VANE_CAUTION_NOT_LAMINAR;
	if (slip->greatest_inertia > 0.01)
		caution |= VANE_CAUTION_INERTIA;
	if (slip->greatest_graetz > 10)
		caution |= VANE_CAUTION_HEATING;
	if (vn_parts_large_land(p) < pitch - vn_parts_vane_angle(p, p->ring.large_radius) ||
	    vn_parts_small_land(p) < pitch - vn_parts_vane_angle(p, p->ring.small_radius))
		caution |= VANE_CAUTION_CROSS_PORT;
	return caution;
}

static const vane_slip nowhere = {NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN,
				  NAN, NAN, NAN, NAN, NAN, 0,   0};

int32_t vane_slip_run(const vane_parts *parts, const vane_slip_state *state, vane_slip *out,
		      vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = nowhere;
	if (!vn_parts_check(parts, error) || !check_state(state, error))
		return VANE_INVALID_ARGUMENT;
	const slip_case c = {
		.parts = parts,
		.state = state,
		.gap = vn_parts_gaps(parts),
		.drop = weighed(state, state->outlet_pressure, state->inlet_pressure),
		.kinematic = state->viscosity / state->density,
		.inlet_angle =
			LOBES * (vn_parts_large_middle(parts) - vn_parts_small_middle(parts)),
		.faces = SIDES * (1 + 3 * parts->rotor_offset * parts->rotor_offset),
		.large_seals = seals(parts, vn_parts_large_land(parts), parts->ring.large_radius),
		.small_seals = seals(parts, vn_parts_small_land(parts), parts->ring.small_radius),
	};
	vane_slip slip = {.roots = parts->roots};
	inner_face(&c, &slip);
	outer_face(&c, &slip);
	land(&c, &slip, parts->ring.large_radius, c.large_seals, 1);
	land(&c, &slip, parts->ring.small_radius, c.small_seals, -1);
	roots(&c, &slip);
	slip.total = slip.face_inner + slip.face_outer + slip.face_edge + slip.vane_end +
		     slip.vane_end_root + slip.tip + slip.slot + slip.tip_drag + slip.vane_end_drag;
	slip.caution = cautions(&c, &slip);
	if (!isfinite(slip.total) || !isfinite(slip.greatest_reynolds) ||
	    !isfinite(slip.greatest_inertia) || !isfinite(slip.greatest_graetz)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = slip;
	return VANE_OK;
}
