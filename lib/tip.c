#include "vane/tip.h"
#include "check.h"
#include "displacement.h"
#include "parts.h"
#include "ring.h"

#include <gsl/gsl_integration.h>
#include <math.h>

#define PI 3.14159265358979323846

typedef struct revolution {
	const vane_parts *parts;
	double dp, omega;
	bool settled; /* no vane has jammed so far */
} revolution;

/* Pressures on a vane above that of the inlet. */
typedef struct pressures {
	double leading, trailing, root;
} pressures;

/* One vane seals each land, and hands over to the next when it is half a pitch past the land's
 * middle: the same boundary, on the mean over a pitch, that the slip and the plates see. A lobe is
 * counted from where a vane takes over the small land. */
static double take_over(const vane_parts *p)
{
	return vn_parts_small_middle(p) - vn_parts_pitch(p) / 2;
}

static pressures around(const vane_parts *p, double dp, double angle)
{
	double x = remainder(angle - take_over(p), PI);
	if (x < 0)
		x += PI;
	const double pitch = vn_parts_pitch(p),
		     large = vn_parts_large_middle(p) - vn_parts_small_middle(p);
	pressures at = {0, 0, 0};
	if (x >= large)
		at.leading = dp;
	if (x < pitch || x >= large + pitch)
		at.trailing = dp;
	at.root = p->roots == VANE_ROOTS_OUTLET ? dp : (at.leading + at.trailing) / 2;
	return at;
}

static double sign(double x)
{
	return (x > 0) - (x < 0);
}

typedef struct line {
	double start, slope;
} line;

/* The least F >= 0 that equals mu (|mouth(F)| + |foot(F)|): of the four straight lines whose
 * greatest that sum is, the one met last. A line that rises too steeply to be met is a jam. NaN
 * where a line is not finite. */
static bool slot_friction(double mu, line mouth, line foot, double *friction)
{
	line sums[4];
	*friction = NAN;
	if (!isfinite(mouth.start) || !isfinite(mouth.slope) || !isfinite(foot.start) ||
	    !isfinite(foot.slope))
		return true;
	*friction = 0;
	for (int i = 0; i < 4; i++) {
		const double first = i & 1 ? -mu : mu, second = i & 2 ? -mu : mu;
		sums[i] = (line){first * mouth.start + second * foot.start,
				 first * mouth.slope + second * foot.slope};
		if (sums[i].slope < 1)
			*friction = fmax(*friction, sums[i].start / (1 - sums[i].slope));
	}
	for (int i = 0; i < 4; i++)
		if (sums[i].slope >= 1 && sums[i].start + sums[i].slope * *friction > *friction)
			return false;
	return true;
}

static vane_tip_force forces(revolution *turn, double angle)
{
	const vane_parts *p = turn->parts;
	const vane_ring_point crown = vn_ring_point(&p->ring, angle);
	const vane_tip_contact tip = vn_contact(p, angle);
	const pressures at = around(p, turn->dp, angle);
	const double t = p->vane_thickness, width = p->vane_width,
		     omega2 = turn->omega * turn->omega;
	const double mass = p->vane_density * p->vane_height * t * width;
	const double root = crown.radius - p->vane_height, centre = root + p->vane_height / 2;
	const double engaged = p->rotor_radius - root, exposed = crown.radius - p->rotor_radius;
	const double c = cos(tip.normal), s = sin(tip.normal), mu = p->tip_friction;
	const double across = at.trailing - at.leading;

	/* Along the vane, outward: what presses it on the ring, slot friction apart. */
	const double outward = (at.root * t - at.leading * (t / 2 - tip.offset) -
				at.trailing * (t / 2 + tip.offset)) *
				       width +
			       mass * omega2 * (centre - crown.second);
	/* Across the vane: Coriolis force, pressure on the exposed height, pressure that falls
	 * linearly along the engaged flank; and their moments about the root. */
	const double coriolis = 2 * mass * omega2 * crown.slope;
	const double side = across * width * exposed, flank = across * width * engaged / 2;
	const double moment = coriolis * (centre - root) - side * (engaged + exposed / 2) -
			      flank * 2 * engaged / 3;

	/* Each force is a straight line in the slot's friction: what it is without, and per newton. */
	const double slide = sign(crown.slope), along = c + mu * s, over = (s - mu * c) / along;
	const line push = {outward * over, -slide * over};
	const line mouth = {(moment - push.start * p->vane_height) / engaged,
			    -push.slope * p->vane_height / engaged};
	const line foot = {coriolis - side - flank - push.start - mouth.start,
			   -push.slope - mouth.slope};
	double friction;
	if (!slot_friction(p->slot_friction, mouth, foot, &friction))
		turn->settled = false;
	return (vane_tip_force){
		.contact = (outward - friction * slide) / along,
		.slot_mouth = mouth.start + mouth.slope * friction,
		.slot_root = foot.start + foot.slope * friction,
		.slot_friction = friction,
		.sliding = tip.height * c + (crown.slope - tip.offset) * s,
	};
}

static bool check(const vane_parts *parts, double dp, double speed, vane_error *error)
{
	return vn_parts_check(parts, error) && vn_least(dp, 0, "dp", "Pa", error) &&
	       vn_least(speed, 0, "speed", "1/s", error);
}

static int32_t unsettled(vane_error *error)
{
	vn_fail(VANE_NO_SOLUTION, "parts.slot_friction", 0,
		"The vane jams: with this parts.slot_friction no contact force balances it.",
		error);
	return VANE_NO_SOLUTION;
}

int32_t vane_tip_at(const vane_parts *parts, double dp, double speed, double angle,
		    vane_tip_force *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_tip_force){NAN, NAN, NAN, NAN, NAN};
	if (!check(parts, dp, speed, error) || !vn_finite(angle, "angle", "rad", error))
		return VANE_INVALID_ARGUMENT;
	revolution turn = {parts, dp, 2 * PI * speed, true};
	const vane_tip_force force = forces(&turn, angle);
	if (!isfinite(force.contact) || !isfinite(force.slot_friction)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	if (!turn.settled)
		return unsettled(error);
	*out = force;
	return VANE_OK;
}

static double tip_work(double angle, void *context)
{
	const vane_tip_force f = forces(context, angle);
	return f.contact < 0 ? 0 : f.contact * f.sliding;
}

static double slot_work(double angle, void *context)
{
	revolution *turn = context;
	return forces(turn, angle).slot_friction *
	       fabs(vn_ring_point(&turn->parts->ring, angle).slope);
}

enum { BREAKS = VN_RING_JOINTS + 5 };

/* Angles at which forces jump or bend, over one lobe, in rising order. */
static int breaks(const vane_parts *p, double angle[BREAKS])
{
	const double start = take_over(p), pitch = vn_parts_pitch(p),
		     large = vn_parts_large_middle(p) - vn_parts_small_middle(p);
	double at[BREAKS - 2];
	int count = vn_ring_joints(&p->ring, at);
	at[count++] = start + pitch;
	at[count++] = start + large;
	at[count++] = start + large + pitch;
	int n = 0;
	angle[n++] = start;
	angle[n++] = start + PI;
	for (int i = 0; i < count; i++) {
		const double x = remainder(at[i] - start, PI);
		angle[n++] = start + (x < 0 ? x + PI : x);
	}
	for (int i = 1; i < n; i++)
		for (int k = i; k > 0 && angle[k] < angle[k - 1]; k--) {
			const double swap = angle[k];
			angle[k] = angle[k - 1];
			angle[k - 1] = swap;
		}
	return n;
}

int32_t vane_tip_run(const vane_parts *parts, double dp, double speed, vane_tip_revolution *out,
		     vane_error *error)
{
	/* Samples for the extremes, each stretch; they are reports, not parts of a sum. */
	enum { SAMPLES = 64, PIECES = 8 };
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_tip_revolution){NAN, NAN, NAN, NAN, NAN, 0, 0};
	if (!check(parts, dp, speed, error))
		return VANE_INVALID_ARGUMENT;
	revolution turn = {parts, dp, 2 * PI * speed, true};
	vane_tip_revolution r = {0, 0, -INFINITY, INFINITY, 0, 0, 0};
	double at[BREAKS];
	const int count = breaks(parts, at);
	gsl_function tip = {tip_work, &turn}, slot = {slot_work, &turn};
	bool edge = false;
	for (int i = 0; i + 1 < count; i++) {
		const double span = at[i + 1] - at[i];
		if (!(span > 1e-12))
			continue;
		/* Reactions change sign inside a stretch, which bends the friction: hence pieces. */
		for (int k = 0; k < PIECES; k++) {
			const double a = at[i] + span * k / PIECES,
				     b = at[i] + span * (k + 1) / PIECES;
			double part, estimate, size, spread;
			gsl_integration_qk31(&tip, a, b, &part, &estimate, &size, &spread);
			r.tip_torque += part;
			gsl_integration_qk31(&slot, a, b, &part, &estimate, &size, &spread);
			r.slot_torque += part;
		}
		for (int k = 0; k < SAMPLES; k++) {
			const double angle = at[i] + span * (k + 0.5) / SAMPLES;
			const double contact = forces(&turn, angle).contact;
			edge = edge ||
			       fabs(vn_contact(parts, angle).offset) > parts->vane_thickness / 2;
			r.greatest_contact = fmax(r.greatest_contact, contact);
			if (contact < r.least_contact) {
				r.least_contact = contact;
				r.least_angle = angle;
			}
		}
	}
	/* Both lobes are alike, so the mean over one is that over a turn. */
	r.tip_torque *= parts->vanes * parts->tip_friction / PI;
	r.slot_torque *= parts->vanes / PI;
	if (!(r.least_contact > 0))
		r.caution |= VANE_CAUTION_LIFT_OFF;
	if (edge)
		r.caution |= VANE_CAUTION_EDGE_CONTACT;
	if (!isfinite(r.tip_torque) || !isfinite(r.slot_torque)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	if (!turn.settled)
		return unsettled(error);
	*out = r;
	return VANE_OK;
}
