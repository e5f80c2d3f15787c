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

SUITE("shaft", published, worked_torque, drive, no_clearance_has_no_torque,
      viscous_parts_follow_speed_and_viscosity, rejects)
