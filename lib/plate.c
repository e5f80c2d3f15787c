#include "vane/plate.h"
#include "check.h"
#include "dimension.h"
#include "plate.h"

#include <math.h>

#define PI 3.14159265358979323846

/* Deflection, slope and radial moment against the load, and the shear, in
 * units of the outer radius and the stiffness. */
enum { DEFLECTION, SLOPE, MOMENT, SHEAR, STATES };

/* A plate of outer radius 1 and stiffness 1, and its state at the inner edge. */
typedef struct bending {
	double b, poisson;
	double pressure, zone_inner, zone_outer;
	double line, circle;
	double start[STATES];
	double length, stiffness, thickness; /* What the units are. */
	int32_t outer_edge;
} bending;

/* A state in all its parts, in the same units. */
typedef struct section {
	double state[STATES];
	double tangential;
} section;

/* What the state at the inner edge makes of itself at r, one column for each
 * of its parts: column[j][i] is part i at r for part j of 1 at the edge. */
static void columns(const bending *p, double r, double column[STATES][STATES])
{
	const double b = p->b, x = b > 0 ? b / r : 0, nu = p->poisson;
	const double s = b > 0 ? vn_plate_log(r, b) : INFINITY;
	const double sum = (1 + nu) / 2, rest = (1 - nu) / 2, square = x * x;
	const double fall = -expm1(-s); /* 1 - x^2 */
	for (int j = 0; j < STATES; j++)
		for (int i = 0; i < STATES; i++)
			column[j][i] = 0;
	column[DEFLECTION][DEFLECTION] = 1;
	column[MOMENT][DEFLECTION] = r * r * vn_plate_two(s) / 4;
	column[MOMENT][SLOPE] = r * fall / 2;
	column[MOMENT][MOMENT] = sum + rest * square;
	if (!(b > 0))
		return;
	const double rise = (r - b) * (r + b) / (b * r); /* 1/x - x */
	column[SLOPE][DEFLECTION] = (sum * b * s + rest * r * rise) / 2;
	column[SLOPE][SLOPE] = sum * x + rest / x;
	column[SLOPE][MOMENT] = (1 - nu) * sum * rise / r;
	column[SHEAR][DEFLECTION] = b * r * r * vn_plate_three(s) / 4;
	column[SHEAR][SLOPE] = b * r * vn_plate_six(s) / 4;
	column[SHEAR][MOMENT] = b * (sum * s + rest * fall) / 2;
	column[SHEAR][SHEAR] = x;
}

/* What a pressure of 1 from radius r0 outwards takes from the state at r. */
static void add_pressure(double times, double nu, double r, double r0, double load[STATES])
{
	if (!(r > r0))
		return;
	const double s = vn_plate_log(r, r0), fall = -expm1(-s), square = r * r;
	load[DEFLECTION] += times * square * square * vn_plate_eleven(s) / 64;
	load[SLOPE] += times * square * r * vn_plate_fourteen(s) / 16;
	load[MOMENT] +=
		times * square * ((1 + nu) * vn_plate_two(s) + (1 - nu) / 2 * fall * fall) / 8;
}

static void loads(const bending *p, double r, double load[STATES])
{
	for (int i = 0; i < STATES; i++)
		load[i] = 0;
	add_pressure(p->pressure, p->poisson, r, p->zone_inner, load);
	add_pressure(-p->pressure, p->poisson, r, p->zone_outer, load);
	if (r > p->zone_inner) {
		const double end = fmin(r, p->zone_outer);
		load[SHEAR] +=
			p->pressure * (end - p->zone_inner) * (end + p->zone_inner) / (2 * r);
	}
	if (r > p->circle && p->line != 0) {
		const double c = p->circle, s = vn_plate_log(r, c), nu = p->poisson;
		load[DEFLECTION] += p->line * c * r * r * vn_plate_three(s) / 4;
		load[SLOPE] += p->line * c * r * vn_plate_six(s) / 4;
		load[MOMENT] += p->line * c * ((1 + nu) * s - (1 - nu) * expm1(-s)) / 4;
		load[SHEAR] += p->line * c / r;
	}
}

/* The two parts of a state that an edge makes 0. */
static void held(int32_t edge, int zero[2], int open[2])
{
	const bool moves = edge == VANE_PLATE_FREE || edge == VANE_PLATE_GUIDED;
	const bool turns = edge == VANE_PLATE_FREE || edge == VANE_PLATE_SUPPORTED;
	zero[0] = moves ? SHEAR : DEFLECTION;
	open[0] = moves ? DEFLECTION : SHEAR;
	zero[1] = turns ? MOMENT : SLOPE;
	open[1] = turns ? SLOPE : MOMENT;
}

static section at(const bending *p, double r)
{
	section out;
	double column[STATES][STATES], load[STATES];
	columns(p, r, column);
	loads(p, r, load);
	for (int i = 0; i < STATES; i++) {
		out.state[i] = -load[i];
		for (int j = 0; j < STATES; j++)
			if (p->start[j] != 0)
				out.state[i] += p->start[j] * column[j][i];
	}
	if (r >= 1) {
		int zero[2], open[2];
		held(p->outer_edge, zero, open);
		out.state[zero[0]] = 0;
		out.state[zero[1]] = 0;
	}
	const double nu = p->poisson, moment = out.state[MOMENT];
	out.tangential = r > 0 ? nu * moment + (1 - nu) * (1 + nu) * out.state[SLOPE] / r : moment;
	return out;
}

/* The state at the inner edge that meets both edges. */
static void begin_state(bending *p, int32_t inner_edge)
{
	int zero[2], open[2], outer_zero[2], outer_open[2];
	double column[STATES][STATES], load[STATES];
	held(inner_edge, zero, open);
	held(p->outer_edge, outer_zero, outer_open);
	columns(p, 1, column);
	loads(p, 1, load);
	const double a = column[open[0]][outer_zero[0]], b = column[open[1]][outer_zero[0]];
	const double c = column[open[0]][outer_zero[1]], d = column[open[1]][outer_zero[1]];
	const double u = load[outer_zero[0]], v = load[outer_zero[1]];
	const double determinant = a * d - b * c;
	p->start[zero[0]] = 0;
	p->start[zero[1]] = 0;
	p->start[open[0]] = (u * d - b * v) / determinant;
	p->start[open[1]] = (a * v - u * c) / determinant;
}

static bool plate_ok(const vane_plate *p, vane_error *error)
{
	if (!vn_pointer(p, "plate", error))
		return false;
	if (vn_least(p->inner_radius, 0, "inner_radius", "m", error) &&
	    vn_above(p->outer_radius, p->inner_radius, "outer_radius", "m", error) &&
	    vn_above(p->thickness, 0, "thickness", "m", error) &&
	    vn_above(p->modulus, 0, "modulus", "Pa", error) &&
	    vn_between(p->poisson, 0, 0.5, "poisson", "", error) &&
	    vn_finite(p->pressure, "pressure", "Pa", error) &&
	    vn_between(p->zone_inner, p->inner_radius, p->outer_radius, "zone_inner", "m", error) &&
	    vn_between(p->zone_outer, p->zone_inner, p->outer_radius, "zone_outer", "m", error) &&
	    vn_finite(p->force, "force", "N", error) &&
	    vn_between(p->force_radius, p->inner_radius, p->outer_radius, "force_radius", "m",
		       error) &&
	    vn_count(p->inner_edge, VANE_PLATE_FREE, VANE_PLATE_CLAMPED, "inner_edge", error) &&
	    vn_count(p->outer_edge, VANE_PLATE_FREE, VANE_PLATE_CLAMPED, "outer_edge", error))
		return true;
	vn_within("plate", error);
	return false;
}

static int32_t bend(const vane_plate *p, bending *out, vane_error *error)
{
	if (!plate_ok(p, error))
		return VANE_INVALID_ARGUMENT;
	/* Where there is no hole the plate neither turns at its centre nor is cut there. */
	const int32_t inner_edge = p->inner_radius > 0 ? p->inner_edge : VANE_PLATE_GUIDED;
	if (inner_edge < VANE_PLATE_SUPPORTED && p->outer_edge < VANE_PLATE_SUPPORTED) {
		vn_fail(VANE_NO_SOLUTION, "plate.outer_edge", p->outer_edge,
			"Neither plate.inner_edge nor plate.outer_edge carries the load: one must "
			"be "
			"supported (3) or clamped (4).",
			error);
		return VANE_NO_SOLUTION;
	}
	if (p->force != 0 && !(p->force_radius > 0)) {
		vn_fail(VANE_NO_SOLUTION, "plate.force_radius", p->force_radius,
			"plate.force_radius is 0 m: the stress under a force at a point has no "
			"limit.",
			error);
		return VANE_NO_SOLUTION;
	}
	const double a = p->outer_radius, ratio = a / p->thickness;
	/* 1/stiffness in the outer radius and the modulus. */
	const double soft = 12 * (1 - p->poisson) * (1 + p->poisson) * ratio * ratio * ratio;
	const double circle = p->force_radius / a;
	*out = (bending){
		.b = p->inner_radius / a,
		.poisson = p->poisson,
		.pressure = p->pressure / p->modulus * soft,
		.zone_inner = p->zone_inner / a,
		.zone_outer = p->zone_outer / a,
		.line = p->force != 0 ? p->force / a / a / p->modulus * soft / (2 * PI * circle)
				      : 0,
		.circle = circle,
		.length = a,
		.stiffness = p->modulus / soft, /* By the outer radius cubed. */
		.thickness = p->thickness,
		.outer_edge = p->outer_edge,
	};
	begin_state(out, inner_edge);
	for (int i = 0; i < STATES; i++)
		if (!isfinite(vn_result(out->start[i], error)))
			return VANE_OUT_OF_RANGE;
	return VANE_OK;
}

static vane_plate_state dimensioned(const bending *p, const section *s)
{
	const double a = p->length, moment = p->stiffness * a * a;
	const double stress = 6 * p->stiffness * (a / p->thickness) * (a / p->thickness);
	return (vane_plate_state){
		.deflection = -s->state[DEFLECTION] * a,
		.slope = -s->state[SLOPE],
		.radial_moment = s->state[MOMENT] * moment,
		.tangential_moment = s->tangential * moment,
		.shear = s->state[SHEAR] * p->stiffness * a,
		.radial_stress = s->state[MOMENT] * stress,
		.tangential_stress = s->tangential * stress,
	};
}

static const vane_plate_state no_state = {NAN, NAN, NAN, NAN, NAN, NAN, NAN};

int32_t vane_plate_at(const vane_plate *plate, double radius, vane_plate_state *out,
		      vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = no_state;
	bending p;
	const int32_t status = bend(plate, &p, error);
	if (status == VANE_INVALID_ARGUMENT)
		return status;
	vane_error late;
	vn_begin(&late);
	if (!vn_between(radius, plate->inner_radius, plate->outer_radius, "radius", "m", &late)) {
		if (error)
			*error = late;
		return VANE_INVALID_ARGUMENT;
	}
	if (status != VANE_OK)
		return status;
	const section s = at(&p, radius / plate->outer_radius);
	const vane_plate_state found = dimensioned(&p, &s);
	const double parts[] = {found.deflection,        found.slope, found.radial_moment,
				found.tangential_moment, found.shear, found.radial_stress,
				found.tangential_stress};
	for (int i = 0; i < (int)(sizeof parts / sizeof *parts); i++)
		if (!isfinite(vn_result(parts[i], error)))
			return VANE_OUT_OF_RANGE;
	*out = found;
	return VANE_OK;
}

/* What the search follows, and how it grows with radius. */
enum { BENT, RADIAL, TANGENTIAL, FOLLOWED };

static double value(const section *s, int what)
{
	return what == BENT     ? s->state[DEFLECTION]
	       : what == RADIAL ? s->state[MOMENT]
				: s->tangential;
}

static double growth(const bending *p, const section *s, double r, int what)
{
	if (what == BENT)
		return s->state[SLOPE];
	const double nu = p->poisson, moment = s->state[MOMENT];
	const double radial = s->state[SHEAR] + (s->tangential - moment) / r;
	if (what == RADIAL)
		return radial;
	const double turn = s->state[SLOPE] / r, bend_rate = moment - nu * turn;
	return nu * radial + (1 - nu) * (1 + nu) * (bend_rate - turn) / r;
}

typedef struct peak {
	double size, radius;
} peak;

static void consider(const bending *p, double r, int what, peak *best)
{
	const section s = at(p, r);
	const double x = value(&s, what);
	if (isnan(x) || fabs(x) > fabs(best->size))
		*best = (peak){x, r};
}

/* Where the growth changes its sign between two radii. */
static double turning(const bending *p, double low, double high, int what, bool rises)
{
	for (int i = 0; i < 60; i++) {
		const double middle = low + (high - low) / 2;
		const section s = at(p, middle);
		if ((growth(p, &s, middle, what) > 0) == rises)
			low = middle;
		else
			high = middle;
	}
	return low + (high - low) / 2;
}

static void search(const bending *p, double from, double to, peak best[FOLLOWED])
{
	enum { STEPS = 32 };
	double before[FOLLOWED] = {0}, last = from;
	for (int i = 0; i <= STEPS; i++) {
		const double r = i == STEPS ? to : from + (to - from) * i / STEPS;
		const section s = at(p, r);
		for (int what = 0; what < FOLLOWED; what++) {
			const double now = r > 0 ? growth(p, &s, r, what) : 0;
			if ((now > 0 && before[what] < 0) || (now < 0 && before[what] > 0))
				consider(p, turning(p, last, r, what, before[what] > 0), what,
					 &best[what]);
			before[what] = now;
		}
		last = r;
	}
	for (int what = 0; what < FOLLOWED; what++) {
		consider(p, from, what, &best[what]);
		consider(p, to, what, &best[what]);
	}
}

static void order(double *x, int count)
{
	for (int i = 1; i < count; i++)
		for (int j = i; j > 0 && x[j] < x[j - 1]; j--) {
			const double held_back = x[j];
			x[j] = x[j - 1];
			x[j - 1] = held_back;
		}
}

int32_t vane_plate_run(const vane_plate *plate, vane_plate_peaks *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_plate_peaks){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	bending p;
	const int32_t status = bend(plate, &p, error);
	if (status != VANE_OK)
		return status;
	double ends[] = {p.b, p.zone_inner, p.zone_outer, p.circle, 1};
	enum { ENDS = sizeof ends / sizeof *ends };
	order(ends, ENDS);
	peak best[FOLLOWED];
	for (int what = 0; what < FOLLOWED; what++)
		best[what] = (peak){0, p.b};
	for (int i = 1; i < ENDS; i++)
		if (ends[i] > ends[i - 1])
			search(&p, ends[i - 1], ends[i], best);
	const section edge = at(&p, 1);
	const section peaks = {
		.state = {[DEFLECTION] = best[BENT].size, [MOMENT] = best[RADIAL].size},
		.tangential = best[TANGENTIAL].size,
	};
	const vane_plate_state found = dimensioned(&p, &peaks);
	const double a = p.length;
	const vane_plate_peaks all = {
		.deflection = found.deflection,
		.deflection_radius = best[BENT].radius * a,
		.radial_stress = found.radial_stress,
		.radial_radius = best[RADIAL].radius * a,
		.tangential_stress = found.tangential_stress,
		.tangential_radius = best[TANGENTIAL].radius * a,
		.inner_reaction = p.start[SHEAR] * p.stiffness * a,
		.outer_reaction = -edge.state[SHEAR] * p.stiffness * a,
	};
	const double parts[] = {all.deflection, all.radial_stress, all.tangential_stress,
				all.inner_reaction, all.outer_reaction};
	for (int i = 0; i < (int)(sizeof parts / sizeof *parts); i++)
		if (!isfinite(vn_result(parts[i], error)))
			return VANE_OUT_OF_RANGE;
	*out = all;
	return VANE_OK;
}

void vane_plate_default(vane_plate *plate)
{
	if (!plate)
		return;
	*plate = (vane_plate){
		.outer_radius = 0.1 * VN_METRE,
		.thickness = 0.01 * VN_METRE,
		.modulus = 206e9 * VN_PASCAL,
		.poisson = 0.3,
		.zone_outer = 0.1 * VN_METRE,
		.inner_edge = VANE_PLATE_FREE,
		.outer_edge = VANE_PLATE_SUPPORTED,
	};
}
