#include "row.h"

#include "vane/tip.h"
#include "worked_pump.h"

#include <stdbool.h>

START_TEST(worked_forces)
{
	const vane_parts p = worked_pump();
	const double at[] = {0.001, 20, 30, 45, 60, 90, 110, 125, 140, 150, 160};
	const double want[] = {325.637, 644.360, 641.662, 641.388, 641.515, 326.039,
			       3.7168,  4.7526,  1.3237,  -0.1876, 0.9758};
	const double digit[] = {5e-4, 5e-4, 5e-4, 5e-4, 5e-4, 5e-4, 5e-5, 5e-5, 5e-5, 5e-5, 5e-5};
	vane_tip_force f;
	for (int i = 0; i < 11; i++) {
		ck_assert_int_eq(vane_tip_at(&p, 15e6, 25, at[i] * DEGREE, &f, NULL), VANE_OK);
		const row rows[] = {
			{"worked pump, contact force, N", f.contact, want[i], digit[i]}};
		ROWS_CHECK(rows);
	}
	vane_tip_at(&p, 15e6, 25, 90 * DEGREE, &f, NULL);
	const row mouth[] = {
		{"worked pump, slot mouth on the large land, N", f.slot_mouth, 3108.8, 0.05}};
	ROWS_CHECK(mouth);
	vane_parts smooth = p;
	smooth.tip_friction = smooth.slot_friction = 0;
	vane_tip_at(&smooth, 15e6, 25, 45 * DEGREE, &f, NULL);
	const row frictionless[] = {
		{"worked pump, frictionless at 45 deg, N", f.contact, 675.252437, 5e-7}};
	ROWS_CHECK(frictionless);
}
END_TEST

START_TEST(worked_torques)
{
	const vane_parts p = worked_pump();
	vane_tip_revolution r;
	ck_assert_int_eq(vane_tip_run(&p, 15e6, 25, &r, NULL), VANE_OK);
	const row rows[] = {
		{"worked pump, vane tip friction, N.m", r.tip_torque, 6.950994, 5e-7},
		{"worked pump, slot friction, N.m", r.slot_torque, 0.269806, 5e-7},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(r.caution, VANE_CAUTION_LIFT_OFF);
	ck_assert(r.greatest_contact > 640 && r.least_contact < 0);
}
END_TEST

/* With equal pressure on root and tip and no friction, contact needs the centre of gravity farther
 * out than the second derivative, at every speed. */
START_TEST(lift_off_does_not_depend_on_speed)
{
	const double least[] = {4.676, 0.370, -5.449, -3.205, -11.083};
	for (int32_t law = 1; law <= 5; law++) {
		vane_parts p = worked_pump();
		p.ring.law = law;
		p.tip_friction = p.slot_friction = 0;
		const double mass =
			p.vane_density * p.vane_height * p.vane_thickness * p.vane_width;
		for (double speed = 5; speed < 60; speed *= 2) {
			const double omega = 2 * 3.14159265358979323846 * speed;
			double lowest = INFINITY;
			for (int i = 0; i < 36000; i++) {
				vane_tip_force f;
				vane_tip_contact c;
				vane_tip_at(&p, 0, speed, i * DEGREE / 200, &f, NULL);
				vane_displacement_contact(&p, i * DEGREE / 200, &c, NULL);
				lowest = fmin(lowest,
					      f.contact * cos(c.normal) / (mass * omega * omega));
			}
			const row rows[] = {{"worked pump, least margin of contact, mm",
					     lowest * 1e3, least[law - 1], 6e-4}};
			ROWS_CHECK(rows);
		}
	}
}
END_TEST

/* Friction against which the slot's reactions can be anything: they are straight lines in it. */
typedef struct reactions {
	double mouth, mouth_slope, foot, foot_slope;
} reactions;

/* From a slot without friction and one with very little; false where even that jams, or has
 * nothing to hold. */
static bool reactions_of(vane_parts p, double dp, double speed, double angle, reactions *out)
{
	vane_tip_force none, some;
	p.slot_friction = 0;
	ck_assert_int_eq(vane_tip_at(&p, dp, speed, angle, &none, NULL), VANE_OK);
	p.slot_friction = 0.01;
	if (vane_tip_at(&p, dp, speed, angle, &some, NULL) != VANE_OK || some.slot_friction == 0)
		return false;
	*out = (reactions){
		none.slot_mouth,
		(some.slot_mouth - none.slot_mouth) / some.slot_friction,
		none.slot_root,
		(some.slot_root - none.slot_root) / some.slot_friction,
	};
	return true;
}

/* What Coulomb's law makes of a friction. */
static double coulomb(const reactions *r, double mu, double friction)
{
	return mu * (fabs(r->mouth + r->mouth_slope * friction) +
		     fabs(r->foot + r->foot_slope * friction));
}

/* Steps so short that they never pass the first friction that is its own cause; infinite where
 * there is none. */
static double iterated(const reactions *r, double mu)
{
	const double step = 1 / (1 + mu * (fabs(r->mouth_slope) + fabs(r->foot_slope)));
	double friction = 0, lack;
	do {
		lack = step * (coulomb(r, mu, friction) - friction);
		friction += lack;
	} while (lack > 1e-14 * friction && friction < 1e30);
	return friction < 1e30 ? friction : INFINITY;
}

/* How steeply the law rises just above a friction. */
static double steepness(const reactions *r, double mu, double friction)
{
	const double more = friction * 1e-6;
	return (coulomb(r, mu, friction + more) - coulomb(r, mu, friction)) / more;
}

typedef struct tally {
	int jams, steep, past_steep;
} tally;

/* One vane at one angle, by iteration and by the library. */
static void same_friction(const vane_parts *p, double dp, double speed, double angle, tally *seen)
{
	const double mu = p->slot_friction;
	reactions r;
	if (!reactions_of(*p, dp, speed, angle, &r))
		return;
	const double steepest = mu * (fabs(r.mouth_slope) + fabs(r.foot_slope)),
		     second = mu * fabs(fabs(r.mouth_slope) - fabs(r.foot_slope));
	/* Nearer to 1 the iteration takes too long. */
	if (fabs(steepest - 1) < 0.01 || fabs(second - 1) < 0.01)
		return;
	const double want = iterated(&r, mu);
	vane_tip_force f;
	const int32_t status = vane_tip_at(p, dp, speed, angle, &f, NULL);
	if (isinf(want)) {
		ck_assert_int_eq(status, VANE_NO_SOLUTION);
		ck_assert(isnan(f.slot_friction) && isnan(f.contact));
		seen->jams++;
		return;
	}
	ck_assert_int_eq(status, VANE_OK);
	CHECK_NEAR(f.slot_friction, want, 1e-8);
	CHECK_NEAR(f.slot_friction, mu * (fabs(f.slot_mouth) + fabs(f.slot_root)), 1e-9);
	seen->steep += steepness(&r, mu, want) > 0.5;
	seen->past_steep += steepest > 1;
}

START_TEST(slot_friction_is_that_of_an_iteration)
{
	const double grip[] = {0.1, 0.3, 0.5, 0.7, 0.9, 0.9999};
	const double drag[] = {0, 0.3, 0.6, 0.9999}, height[] = {4.8e-3, 6e-3, 11e-3};
	tally seen = {0, 0, 0};
	for (int i = 0; i < 6 * 4 * 3 * 2 * 2; i++) {
		vane_parts p = worked_pump();
		p.slot_friction = grip[i % 6];
		p.tip_friction = drag[i / 6 % 4];
		p.vane_height = height[i / 24 % 3];
		p.roots = i / 72 % 2 ? VANE_ROOTS_ZONE : VANE_ROOTS_OUTLET;
		for (int k = 0; k < 60; k++)
			same_friction(&p, i / 144 * 15e6, 25, (3 * k + 0.5) * DEGREE, &seen);
	}
	/* A slope of more than 1 is not yet a jam, nor is one of nearly 1. */
	ck_assert_msg(seen.jams > 500 && seen.steep > 500 && seen.past_steep > 500,
		      "%d jams, %d steep, %d past steep", seen.jams, seen.steep, seen.past_steep);
}
END_TEST

/* What counts as a jam is whether a balance exists, not how slowly it would be approached. */
START_TEST(a_jam_is_the_want_of_a_balance)
{
	vane_parts p = worked_pump();
	vane_tip_force f;
	vane_error e;
	/* Friction here brings forth 0.865 of itself: a slow approach, but one. */
	p.vane_height = 4.75e-3;
	ck_assert_int_eq(vane_tip_at(&p, 0, 25, 114 * DEGREE, &f, NULL), VANE_OK);
	CHECK_NEAR(f.slot_friction, 0.1 * (fabs(f.slot_mouth) + fabs(f.slot_root)), 1e-13);
	const row rows[] = {{"iteration to 1e-13, N", f.slot_friction, 9.83297447, 5e-9}};
	ROWS_CHECK(rows);
	/* And here 18 times itself: no double holds where an iteration ends, and there is no end. */
	p.vane_height = 4.71e-3;
	p.tip_friction = 0.3;
	ck_assert_int_eq(vane_tip_at(&p, 0, 25, 110 * DEGREE, &f, &e), VANE_NO_SOLUTION);
	ck_assert_str_eq(e.name, "parts.slot_friction");
	/* Forces that no double holds are another matter. */
	ck_assert_int_eq(vane_tip_at(&p, 1e308, 1e200, 110 * DEGREE, &f, &e), VANE_OUT_OF_RANGE);
	ck_assert(isnan(f.slot_friction));
}
END_TEST

START_TEST(rejects)
{
	vane_parts p = worked_pump();
	vane_tip_revolution r;
	vane_tip_force f;
	vane_error e;
	ck_assert_int_eq(vane_tip_run(&p, -1, 25, &r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "dp");
	ck_assert(isnan(r.tip_torque) && isnan(r.least_angle) && r.caution == 0);
	ck_assert_int_eq(vane_tip_run(&p, 1e6, NAN, &r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "speed");
	ck_assert_int_eq(vane_tip_at(&p, 1e6, 25, NAN, &f, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "angle");
	ck_assert(isnan(f.contact) && isnan(f.sliding));
	ck_assert_int_eq(vane_tip_run(&p, 1e308, 1e200, &r, &e), VANE_OUT_OF_RANGE);
	/* A slot that grips harder than the pressure pushes has no balance to find. */
	p.slot_friction = 0.999;
	p.vane_height = 4.8e-3;
	ck_assert_int_eq(vane_tip_run(&p, 15e6, 25, &r, &e), VANE_NO_SOLUTION);
	ck_assert_str_eq(e.name, "parts.slot_friction");
	ck_assert(isnan(r.tip_torque) && r.caution == 0);
}
END_TEST

SUITE("tip", worked_forces, worked_torques, lift_off_does_not_depend_on_speed,
      slot_friction_is_that_of_an_iteration, a_jam_is_the_want_of_a_balance, rejects)
