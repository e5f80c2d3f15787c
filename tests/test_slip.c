#include "row.h"

#include "vane/slip.h"
#include "worked_pump.h"

#include <string.h>

static vane_slip_state worked_state(void)
{
	return (vane_slip_state){15e6, 0, 0, 25, 0.02752, 860, 0, 8e-8};
}

static vane_slip run(const vane_parts *p, const vane_slip_state *s)
{
	vane_slip slip;
	ck_assert_int_eq(vane_slip_run(p, s, &slip, NULL), VANE_OK);
	return slip;
}

START_TEST(worked_paths)
{
	const vane_parts p = worked_pump();
	vane_slip_state state = worked_state();
	const vane_slip s = run(&p, &state);
	state.pressure_viscosity = 20e-9;
	const vane_slip thick = run(&p, &state);
	const row rows[] = {
		{"worked pump, face_inner, m3/s", s.face_inner, 1.434673683e-5, 5e-15},
		{"worked pump, face_outer", s.face_outer, 4.406940670e-6, 5e-16},
		{"worked pump, face_edge", s.face_edge, 1.618153532e-6, 5e-16},
		{"worked pump, vane_end", s.vane_end, 2.639220600e-6, 5e-16},
		{"worked pump, vane_end_root", s.vane_end_root, 6.230143937e-7, 5e-17},
		{"worked pump, tip by pressure", s.tip, 6.929082162e-8, 5e-18},
		{"worked pump, tip drag", s.tip_drag, 2.211531199e-8, 5e-18},
		{"worked pump, vane end drag", s.vane_end_drag, 7.450601137e-7, 5e-17},
		{"worked pump, slot", s.slot, 1.209146416e-5, 5e-15},
		{"worked pump, total", s.total, 3.656199643e-5, 5e-15},
		{"worked pump, total, Barus 20 1/GPa", thick.total, 3.169172676e-5, 5e-15},
		{"worked pump, Graetz number of the vane end", s.greatest_graetz, 16.435, 5e-4},
		{"worked pump, greatest inertia ratio", s.greatest_inertia, 2.9e-3, 5e-5},
		{"worked pump, greatest Reynolds number", s.greatest_reynolds, 8.5, 0.05},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(s.caution, VANE_CAUTION_HEATING);
	ck_assert_int_eq(s.roots, VANE_ROOTS_OUTLET);
}
END_TEST

START_TEST(worked_sensitivities)
{
	vane_parts p = worked_pump();
	vane_slip_state state = worked_state();
	p.vane_offset = 0;
	const vane_slip centred = run(&p, &state);
	p = worked_pump();
	p.rotor_offset = 1;
	const vane_slip touching = run(&p, &state);
	p = worked_pump();
	state.viscosity = 10e-6 * 860;
	const vane_slip thin = run(&p, &state);
	state = worked_state();
	state.outlet_pressure = 7e6;
	const vane_slip low = run(&p, &state);
	const row rows[] = {
		{"worked pump, slot with a centred vane, L/min", centred.slot * 6e4, 0.181372,
		 5e-7},
		{"worked pump, rotor on one plate, outer face", touching.face_outer * 6e4, 1.057666,
		 1e-6},
		{"worked pump, rotor on one plate, edge", touching.face_edge * 6e4, 0.388357, 1e-6},
		{"worked pump, 10 mm2/s, total", thin.total * 6e4, 6.918636, 5e-7},
		{"worked pump, 7 MPa, total", low.total * 6e4, 1.048286, 5e-7},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(scaling)
{
	vane_slip_state state = worked_state();
	vane_parts p = worked_pump();
	const vane_slip one = run(&p, &state);
	p.rotor_width = 23.920e-3;
	const vane_slip two = run(&p, &state);
	CHECK_NEAR(two.face_outer, 8 * one.face_outer, 1e-10);
	CHECK_NEAR(two.face_edge, 8 * one.face_edge, 1e-10);
	ck_assert(two.slot == one.slot && two.tip == one.tip);
	p.vane_width = 23.930e-3;
	CHECK_NEAR(run(&p, &state).vane_end, 8 * one.vane_end, 1e-10);
	p = worked_pump();
	state.speed = 0;
	const vane_slip still = run(&p, &state);
	ck_assert(still.tip_drag == 0 && still.vane_end_drag == 0);
	CHECK_NEAR(still.total, one.total - one.tip_drag - one.vane_end_drag, 1e-12);
	state.outlet_pressure = 0;
	ck_assert(run(&p, &state).total == 0);
}
END_TEST

START_TEST(closed_gaps_do_not_leak)
{
	vane_parts p = worked_pump();
	const vane_slip_state state = worked_state();
	p.rotor_width = p.vane_width = p.ring.width;
	p.slot_width = p.vane_thickness;
	p.tip_film = 0;
	const vane_slip s = run(&p, &state);
	ck_assert(s.total == 0);
	p = worked_pump();
	p.shaft_gap = 0;
	/* One face still drains to the shaft, the other is shut. */
	ck_assert(run(&p, &state).face_inner > 0);
	p.shaft_gap = 1;
	const double both = run(&p, &state).face_inner;
	p.shaft_gap = 0;
	CHECK_NEAR(run(&p, &state).face_inner, both / 2, 1e-6);
}
END_TEST

START_TEST(roots_with_the_zone_spare_the_root_paths)
{
	vane_parts p = worked_pump();
	const vane_slip_state state = worked_state();
	const vane_slip outlet = run(&p, &state);
	p.roots = VANE_ROOTS_ZONE;
	const vane_slip zone = run(&p, &state);
	ck_assert(zone.slot == 0 && zone.vane_end_root == 0);
	ck_assert(zone.vane_end == outlet.vane_end && zone.tip == outlet.tip);
	/* The groove meets the outlet over 186 of 360 degrees. */
	ck_assert(zone.face_inner < outlet.face_inner);
	ck_assert(zone.total < outlet.total && zone.total > 0);
}
END_TEST

START_TEST(the_zero_of_the_angles_is_free)
{
	vane_parts p = worked_pump();
	const vane_slip_state state = worked_state();
	const vane_slip before = run(&p, &state);
	p.ring.phase += 1;
	p.inlet_open += 1, p.inlet_close += 1, p.outlet_open += 1, p.outlet_close += 1;
	const vane_slip after = run(&p, &state);
	CHECK_NEAR(after.total, before.total, 1e-12);
}
END_TEST

START_TEST(cautions)
{
	vane_parts p = worked_pump();
	const vane_slip_state state = worked_state();
	p.tip_film = 150e-6;
	const vane_slip lifted = run(&p, &state);
	ck_assert(lifted.greatest_reynolds > 2000);
	ck_assert(lifted.caution & VANE_CAUTION_NOT_LAMINAR);
	p = worked_pump();
	p.outlet_open = 90 * DEGREE;
	ck_assert(run(&p, &state).caution & VANE_CAUTION_CROSS_PORT);
	p = worked_pump();
	p.rotor_width = 23.5e-3;
	ck_assert(run(&p, &state).caution & VANE_CAUTION_INERTIA);
}
END_TEST

START_TEST(rejects)
{
#define FIELD(name, value)                                                                         \
	{                                                                                          \
		offsetof(vane_slip_state, name), "state." #name, value                             \
	}
	static const struct {
		size_t offset;
		const char *name;
		double value;
	} cases[] = {
		FIELD(outlet_pressure, -1),
		FIELD(inlet_pressure, INFINITY),
		FIELD(case_pressure, INFINITY),
		FIELD(speed, -1),
		FIELD(viscosity, 0),
		FIELD(density, 0),
		FIELD(pressure_viscosity, -1),
		FIELD(thermal_diffusivity, 0),
	};
#undef FIELD
	const vane_parts p = worked_pump();
	vane_slip slip;
	vane_error error;
	for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
		for (int nan = 0; nan < 2; nan++) {
			vane_slip_state bad = worked_state();
			const double value = nan ? NAN : cases[i].value;
			memcpy((char *)&bad + cases[i].offset, &value, sizeof value);
			ck_assert_int_eq(vane_slip_run(&p, &bad, &slip, &error),
					 VANE_INVALID_ARGUMENT);
			ck_assert_msg(strcmp(error.name, cases[i].name) == 0, "%s for %s",
				      error.name, cases[i].name);
			ck_assert(isnan(slip.total) && isnan(slip.greatest_graetz) &&
				  slip.caution == 0);
		}
	ck_assert_int_eq(vane_slip_run(&p, NULL, &slip, &error), VANE_INVALID_ARGUMENT);
	vane_slip_state state = worked_state();
	state.outlet_pressure = 1e308;
	state.viscosity = 1e-300;
	ck_assert_int_eq(vane_slip_run(&p, &state, &slip, &error), VANE_OUT_OF_RANGE);
	ck_assert(isnan(slip.total));
}
END_TEST

SUITE("slip", worked_paths, worked_sensitivities, scaling, closed_gaps_do_not_leak,
      roots_with_the_zone_spare_the_root_paths, the_zero_of_the_angles_is_free, cautions, rejects)
