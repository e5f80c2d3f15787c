#include "row.h"

#include "vane/tip.h"
#include "worked_pump.h"

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

SUITE("tip", worked_forces, worked_torques, lift_off_does_not_depend_on_speed, rejects)
