#include "row.h"

#include "vane/shaft.h"
#include "worked_pump.h"

static const double inch = 0.0254, pound = 4.4482216152605,
		    horsepower = 550 * 0.3048 * 4.4482216152605;

START_TEST(published)
{
	const double psi = pound / (inch * inch), in3 = inch * inch * inch, gallon = 231 * in3;
	const double inch_pound = pound * inch;
	const row rows[] = {
		{"P-05 Esposito, example 5-8, theoretical torque, in.lb (793 from a rounded flow)",
		 vane_shaft_ideal_torque(5 * in3, 1000 * psi, NULL) / inch_pound, 793, 4},
		{"P-07 Esposito, example 5-9, theoretical torque, N.m",
		 vane_shaft_ideal_torque(100e-6, 70e5, NULL), 112, 0.8},
		{"V-05 Esposito, example 7-1, pressure back from torque: 1000 in.lb",
		 vane_shaft_ideal_torque(6.2832 * in3, 1000 * psi, NULL) / inch_pound, 1000, 0.01},
		{"P-13 Esposito, example 7-5, motor torque, N.m",
		 vane_shaft_ideal_torque(0.082e-3, 70e5, NULL), 91.4, 0.05},
		{"P-22 Sullivan, 4th ed., example 2.10, torque, lb.ft",
		 vane_shaft_ideal_torque(5 * gallon / 750, 1000 * psi, NULL) / (12 * inch_pound),
		 20.43, 0.01},
		{"P-02 hp = in.lb r/min / 63025.36 (definition)",
		 vane_shaft_power(63025.36 * inch_pound, 1.0 / 60, NULL) / horsepower, 1, 1e-7},
		{"P-03 kW = N.m r/min / 9549.297 (definition)",
		 vane_shaft_power(9549.297, 1.0 / 60, NULL), 1000, 1e-4},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(worked_torque)
{
	const vane_parts p = worked_pump();
	vane_torque t;
	ck_assert_int_eq(vane_shaft_run(&p, 15e6, 25, 0.02752, &t, NULL), VANE_OK);
	const row rows[] = {
		{"worked pump, ideal torque, N.m", t.ideal, 86.683618, 5e-7},
		{"worked pump, vane tips", t.vane_tip, 6.950994, 5e-7},
		{"worked pump, slots", t.vane_slot, 0.269806, 5e-7},
		{"worked pump, faces", t.face, 0.383325, 5e-7},
		{"worked pump, vane ends", t.vane_end, 0.024472, 5e-7},
		{"worked pump, shaft film", t.shaft_film, 0.014087, 5e-7},
		{"worked pump, lip seal", t.seal, 0.123345, 5e-7},
		{"worked pump, losses", t.loss, 7.766028, 1e-6},
		{"worked pump, shaft torque", t.total, 94.449647, 1e-6},
		{"worked pump, shaft power, kW", vane_shaft_power(t.total, 25, NULL) / 1e3,
		 14.836116, 5e-7},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(drive)
{
	const row rows[] = {
		{"worked pump, 14.84 kW with factor 1.1, kW (IEC 60072-1, from memory)",
		 vane_shaft_motor_iec(14836, 1.1, NULL) / 1e3, 18.5, 1e-12},
		{"exactly a rating is enough, kW", vane_shaft_motor_iec(15e3, 1, NULL) / 1e3, 15,
		 1e-12},
		{"a watt more is not, kW", vane_shaft_motor_iec(15001, 1, NULL) / 1e3, 18.5, 1e-12},
		{"20 hp with factor 1.1 (NEMA MG 1, from memory), hp",
		 vane_shaft_motor_nema(20 * horsepower, 1.1, NULL) / horsepower, 25, 1e-9},
	};
	ROWS_CHECK(rows);
	vane_error e;
	ck_assert(isnan(vane_shaft_motor_iec(1e9, 1, &e)));
	ck_assert_int_eq(e.code, VANE_NO_SOLUTION);
}
END_TEST

START_TEST(no_clearance_has_no_torque)
{
	vane_parts p = worked_pump();
	vane_torque t;
	vane_error e;
	p.rotor_width = p.ring.width;
	ck_assert_int_eq(vane_shaft_run(&p, 15e6, 25, 0.03, &t, &e), VANE_NO_SOLUTION);
	ck_assert_str_eq(e.name, "parts.rotor_width");
	ck_assert(isnan(t.total));
	p = worked_pump();
	p.shaft_gap = 0;
	ck_assert_int_eq(vane_shaft_run(&p, 15e6, 25, 0.03, &t, &e), VANE_NO_SOLUTION);
	ck_assert_str_eq(e.name, "parts.shaft_gap");
}
END_TEST

START_TEST(viscous_parts_follow_speed_and_viscosity)
{
	const vane_parts p = worked_pump();
	vane_torque a, b;
	vane_shaft_run(&p, 15e6, 25, 0.02, &a, NULL);
	vane_shaft_run(&p, 15e6, 50, 0.01, &b, NULL);
	CHECK_NEAR(b.face, a.face, 1e-14);
	CHECK_NEAR(b.vane_end, a.vane_end, 1e-14);
	CHECK_NEAR(b.shaft_film, a.shaft_film, 1e-14);
	ck_assert(a.seal == b.seal && a.ideal == b.ideal);
}
END_TEST

START_TEST(rejects)
{
	vane_error e;
	CHECK_REJECTS(vane_shaft_ideal_torque(-1, 1, &e), e, "displacement");
	CHECK_REJECTS(vane_shaft_ideal_torque(1, NAN, &e), e, "dp");
	CHECK_REJECTS(vane_shaft_power(INFINITY, 1, &e), e, "torque");
	CHECK_REJECTS(vane_shaft_power(1, NAN, &e), e, "speed");
	CHECK_REJECTS(vane_shaft_motor_iec(0, 1, &e), e, "power");
	CHECK_REJECTS(vane_shaft_motor_nema(1, 0.9, &e), e, "service_factor");
	const vane_parts p = worked_pump();
	vane_torque t;
	ck_assert_int_eq(vane_shaft_run(&p, -1, 25, 0.03, &t, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "dp");
	ck_assert_int_eq(vane_shaft_run(&p, 1, 0, 0.03, &t, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "speed");
	ck_assert_int_eq(vane_shaft_run(&p, 1, 1, NAN, &t, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "viscosity");
	ck_assert(isnan(t.ideal) && isnan(t.total));
}
END_TEST

START_TEST(strength)
{
	const double pi = 3.14159265358979323846;
	const row rows[] = {
		{"H-03 solid shaft in torsion, standard (from memory) [MPa]",
		 vane_shaft_torsion_stress(120, 0.02, 0, NULL) / 1e6, 76.394, 0.001},
		{"H-03 back: diameter [mm]", vane_shaft_torsion_diameter(120, 76.394e6, NULL) * 1e3,
		 20, 0.001},
	};
	ROWS_CHECK(rows);
	/* A thin tube: 2 T/(pi D^2 s), and its twist by Bredt. */
	const double d = 0.05, wall = 1e-9;
	CHECK_NEAR(vane_shaft_torsion_stress(10, d + wall, d - wall, NULL),
		   2 * 10 / (pi * d * d * wall), 1e-7);
	CHECK_NEAR(vane_shaft_twist(10, 2, d + wall, d - wall, 8e10, NULL),
		   4 * 10 * 2 / (pi * d * d * d * wall * 8e10), 1e-7);
	/* The outside moves by the stress over the modulus. */
	CHECK_NEAR(vane_shaft_twist(10, 2, 0.03, 0.01, 8e10, NULL) * 0.015 / 2 * 8e10,
		   vane_shaft_torsion_stress(10, 0.03, 0.01, NULL), 1e-14);
	/* A tube and the core that fits it are a bar: their stiffnesses add up. */
	CHECK_NEAR(1 / vane_shaft_twist(1, 1, 0.03, 0, 1, NULL),
		   1 / vane_shaft_twist(1, 1, 0.03, 0.02, 1, NULL) +
			   1 / vane_shaft_twist(1, 1, 0.02, 0, 1, NULL),
		   1e-14);
	CHECK_NEAR(vane_shaft_bending_stress(120, 0.02, 0.004, NULL),
		   2 * vane_shaft_torsion_stress(120, 0.02, 0.004, NULL), 1e-15);
	CHECK_NEAR(vane_shaft_von_mises(3, 0, NULL), 3, 1e-15);
	CHECK_NEAR(vane_shaft_von_mises(1, 4, NULL), 7, 1e-15);
	/* 120 N.m at 10 mm is 12 kN: over 6 x 30 mm, over 3 x 30 mm, over 4 of 8 teeth. */
	CHECK_NEAR(vane_shaft_key_shear(120, 0.02, 6e-3, 30e-3, NULL), 12e3 / 180e-6, 1e-14);
	CHECK_NEAR(vane_shaft_key_bearing(120, 0.02, 3e-3, 30e-3, NULL), 12e3 / 90e-6, 1e-14);
	CHECK_NEAR(vane_shaft_spline_shear(120, 0.02, 2e-3, 30e-3, 8, 0.5, NULL), 12e3 / 240e-6,
		   1e-14);
	CHECK_NEAR(vane_shaft_spline_bearing(120, 0.02, 1e-3, 30e-3, 8, 0.5, NULL), 12e3 / 120e-6,
		   1e-14);
}
END_TEST

START_TEST(strength_rejects)
{
	vane_error error;
	CHECK_REJECTS(vane_shaft_torsion_stress(NAN, 1, 0, &error), error, "torque");
	CHECK_REJECTS(vane_shaft_torsion_stress(1, 1, 1, &error), error, "diameter");
	CHECK_REJECTS(vane_shaft_torsion_stress(1, 1, -1, &error), error, "bore_diameter");
	CHECK_REJECTS(vane_shaft_torsion_diameter(-1, 1, &error), error, "torque");
	CHECK_REJECTS(vane_shaft_torsion_diameter(1, 0, &error), error, "stress");
	CHECK_REJECTS(vane_shaft_twist(1, 0, 1, 0, 1, &error), error, "length");
	CHECK_REJECTS(vane_shaft_twist(1, 1, 1, 0, 0, &error), error, "shear_modulus");
	CHECK_REJECTS(vane_shaft_bending_stress(NAN, 1, 0, &error), error, "bending_moment");
	CHECK_REJECTS(vane_shaft_von_mises(NAN, 1, &error), error, "bending_stress");
	CHECK_REJECTS(vane_shaft_von_mises(1, INFINITY, &error), error, "torsion_stress");
	CHECK_REJECTS(vane_shaft_key_shear(1, 1, 0, 1, &error), error, "key_width");
	CHECK_REJECTS(vane_shaft_key_bearing(1, 1, 0, 1, &error), error, "key_depth");
	CHECK_REJECTS(vane_shaft_key_bearing(1, 0, 1, 1, &error), error, "diameter");
	CHECK_REJECTS(vane_shaft_spline_shear(1, 1, 0, 1, 8, 1, &error), error, "tooth_thickness");
	CHECK_REJECTS(vane_shaft_spline_shear(1, 1, 1, 1, 8, 1.1, &error), error, "share");
	CHECK_REJECTS(vane_shaft_spline_bearing(1, 1, 1, 1, 0.5, 1, &error), error, "teeth");
	CHECK_REJECTS(vane_shaft_spline_bearing(1, 1, 1, 0, 8, 1, &error), error, "spline_length");
}
END_TEST

SUITE("shaft", published, worked_torque, drive, strength, strength_rejects,
      no_clearance_has_no_torque, viscous_parts_follow_speed_and_viscosity, rejects)
