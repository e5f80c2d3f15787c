#include "row.h"

#include "vane/pump.h"
#include "worked_pump.h"

#include <stdbool.h>
#include <string.h>

/* Oil that is 32 mm2/s at 40 degrees, 860 kg/m3 at any temperature, and does not thicken. */
static vane_oil worked_oil(void)
{
	vane_oil oil;
	vane_oil_default(&oil);
	oil.temperature_1 = 313.15;
	oil.viscosity_1 = 32e-6;
	oil.temperature_2 = 373.15;
	oil.viscosity_2 = 5.4e-6;
	oil.density = 860;
	oil.thermal_expansion = 0;
	oil.bulk_modulus = 1.6e9;
	oil.pressure_viscosity = 0;
	return oil;
}

static vane_duty worked_duty(void)
{
	return (vane_duty){25, 15e6, 0, 0, 313.15};
}

static vane_performance run(const vane_parts *p, const vane_oil *o, const vane_duty *d)
{
	vane_performance r;
	vane_error e;
	ck_assert_msg(vane_pump_run(p, o, d, &r, &e) == VANE_OK, "%s", e.text);
	return r;
}

START_TEST(worked_performance)
{
	const vane_parts p = worked_pump();
	vane_oil oil = worked_oil();
	const vane_duty duty = worked_duty();
	const vane_performance r = run(&p, &oil, &duty);
	/* The printed power and overall efficiency leave compression out. */
	oil.bulk_modulus = 1e30;
	const vane_performance stiff = run(&p, &oil, &duty);
	const row rows[] = {
		{"worked pump, dynamic viscosity, Pa.s", r.viscosity, 0.02752, 1e-12},
		{"worked pump, ideal flow, L/min", r.ideal_flow * 6e4, 54.464924, 5e-7},
		{"worked pump, slip, L/min", r.slip.total * 6e4, 2.193720, 5e-7},
		{"worked pump, efficiency without compression", r.incompressible_efficiency,
		 0.959722, 5e-7},
		{"worked pump, compressibility, outlet basis, L/min", r.compressibility_loss * 6e4,
		 0.541638, 5e-7},
		/* The program's least chamber is 2.7e-6 too large: see test_displacement.c. */
		{"worked pump, compressibility, inlet basis, L/min", r.compressibility_inlet * 6e4,
		 0.033731 * (99.4743702 / 99.474637), 6e-7},
		{"worked pump, volumetric efficiency, outlet basis", r.volumetric_efficiency,
		 0.949778, 5e-7},
		{"worked pump, volumetric efficiency, inlet basis", r.volumetric_efficiency_inlet,
		 0.959103, 5e-7},
		{"worked pump, hydromechanical efficiency", r.hydromechanical_efficiency, 0.917776,
		 5e-7},
		{"worked pump, shaft power, kW", r.shaft_power / 1e3, 14.836116, 5e-7},
		{"worked pump, delivered flow, incompressible, L/min", stiff.outlet_flow * 6e4,
		 52.271204, 5e-7},
		{"worked pump, hydraulic power, incompressible, kW", stiff.hydraulic_power / 1e3,
		 13.067801, 5e-7},
		{"worked pump, overall efficiency, incompressible", stiff.overall_efficiency,
		 0.880810, 5e-7},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(r.roots, VANE_ROOTS_OUTLET);
	ck_assert(r.displacement == r.displacement_b);
	ck_assert_int_eq(r.caution, VANE_CAUTION_HEATING | VANE_CAUTION_LIFT_OFF);
}
END_TEST

START_TEST(balances)
{
	const vane_parts p = worked_pump();
	const vane_oil oil = worked_oil();
	vane_duty duty = worked_duty();
	for (duty.outlet_pressure = 1e6; duty.outlet_pressure < 30e6; duty.outlet_pressure *= 1.7) {
		const vane_performance r = run(&p, &oil, &duty);
		CHECK_NEAR(r.outlet_flow + r.slip.total + r.compressibility_loss, r.ideal_flow,
			   1e-13);
		CHECK_NEAR(r.heat + r.hydraulic_power, r.shaft_power, 1e-13);
		CHECK_NEAR(r.volumetric_efficiency * r.hydromechanical_efficiency,
			   r.overall_efficiency, 1e-12);
		ck_assert(r.overall_efficiency > 0 && r.overall_efficiency < 1);
	}
}
END_TEST

START_TEST(pressure_steals_flow_and_clearance_more)
{
	vane_parts p = worked_pump();
	const vane_oil oil = worked_oil();
	vane_duty duty = worked_duty();
	double last = 1;
	for (duty.outlet_pressure = 0.5e6; duty.outlet_pressure < 20e6;
	     duty.outlet_pressure += 1e6) {
		const vane_performance r = run(&p, &oil, &duty);
		ck_assert(r.volumetric_efficiency < last);
		last = r.volumetric_efficiency;
	}
	duty = worked_duty();
	const double sound = run(&p, &oil, &duty).outlet_flow;
	p.rotor_width -= 12.7e-6;
	ck_assert(run(&p, &oil, &duty).outlet_flow < sound);
	p.rotor_width = 23.7e-3;
	duty.speed = 2;
	const vane_performance dry = run(&p, &oil, &duty);
	ck_assert(dry.outlet_flow < 0);
	ck_assert_int_eq(dry.caution & VANE_CAUTION_NO_FLOW, VANE_CAUTION_NO_FLOW);
}
END_TEST

/* A pump, an oil and a duty that give no reason for caution. */
typedef struct calm {
	vane_parts parts;
	vane_oil oil;
	vane_duty duty;
} calm;

static calm calm_pump(void)
{
	calm c = {worked_pump(), worked_oil(), worked_duty()};
	c.parts.ring.law = VANE_RING_CONSTANT_ACCELERATION;
	c.parts.tip_friction = c.parts.slot_friction = 0.01;
	c.duty.outlet_pressure = 1e6;
	return c;
}

static int32_t cautions(const calm *c)
{
	return run(&c->parts, &c->oil, &c->duty).caution;
}

/* Each of the four calculations that the pump joins has its own say. */
START_TEST(every_caution_reaches_the_pump)
{
	calm c = calm_pump();
	ck_assert_int_eq(cautions(&c), 0);

	c.parts.ring.large_dwell -= 8 * DEGREE;
	c.parts.ring.rise += 8 * DEGREE;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_SHORT_DWELL);
	c = calm_pump();
	c.parts.ring.small_dwell -= 8 * DEGREE;
	c.parts.ring.rise += 8 * DEGREE;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_SHORT_DWELL);

	c = calm_pump();
	c.parts.tip_radius = 6e-3;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_EDGE_CONTACT);
	c = calm_pump();
	c.parts.ring.law = VANE_RING_POLYNOMIAL_345;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_LIFT_OFF);

	c = calm_pump();
	c.parts.notch = 12 * DEGREE;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_CROSS_PORT);
	c = calm_pump();
	c.parts.rotor_width = 23.9e-3;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_HEATING);
	c.parts.rotor_width = 23.8e-3;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_HEATING | VANE_CAUTION_INERTIA);
	c.parts.rotor_width = 23e-3;
	c.duty.outlet_pressure = 15e6;
	ck_assert(cautions(&c) & VANE_CAUTION_NOT_LAMINAR);

	c = calm_pump();
	c.oil.viscosity_1 = 9e-6;
	c.oil.viscosity_2 = 3e-6;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_THIN_OIL);
	c.oil.viscosity_1 = 900e-6;
	c.oil.viscosity_2 = 60e-6;
	ck_assert_int_eq(cautions(&c), VANE_CAUTION_THICK_OIL);
	c = calm_pump();
	c.parts.rotor_width = 23.7e-3;
	c.duty.speed = 2;
	ck_assert(cautions(&c) & VANE_CAUTION_NO_FLOW);
}
END_TEST

START_TEST(rejects)
{
#define FIELD(name, value)                                                                         \
	{                                                                                          \
		offsetof(vane_duty, name), "duty." #name, value                                    \
	}
	static const struct {
		size_t offset;
		const char *name;
		double value;
	} cases[] = {
		FIELD(speed, 0),
		FIELD(outlet_pressure, -1),
		FIELD(inlet_pressure, -2e5),
		FIELD(case_pressure, -2e5),
		FIELD(temperature, 0),
	};
#undef FIELD
	const vane_parts p = worked_pump();
	const vane_oil oil = worked_oil();
	vane_performance r;
	vane_error e;
	for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
		for (int nan = 0; nan < 2; nan++) {
			vane_duty bad = worked_duty();
			const double value = nan ? NAN : cases[i].value;
			memcpy((char *)&bad + cases[i].offset, &value, sizeof value);
			ck_assert_int_eq(vane_pump_run(&p, &oil, &bad, &r, &e),
					 VANE_INVALID_ARGUMENT);
			ck_assert_msg(strcmp(e.name, cases[i].name) == 0, "%s for %s", e.name,
				      cases[i].name);
		}
	ck_assert_int_eq(vane_pump_run(&p, NULL, NULL, &r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_pump_run(NULL, &oil, NULL, &r, &e), VANE_INVALID_ARGUMENT);
	vane_oil bad = oil;
	bad.bulk_modulus = -1;
	const vane_duty duty = worked_duty();
	ck_assert_int_eq(vane_pump_run(&p, &bad, &duty, &r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "oil.bulk_modulus");
	vane_duty furnace = duty;
	furnace.temperature = 2e6;
	vane_oil swelling = oil;
	swelling.thermal_expansion = 7e-4;
	ck_assert_int_eq(vane_pump_run(&p, &swelling, &furnace, &r, &e), VANE_OUT_OF_RANGE);
	ck_assert_str_eq(e.name, "duty.temperature");
	vane_duty_default(NULL);
	/* Every floating-point output is NaN, every integer 0. */
	const double *field = (const double *)&r;
	const size_t doubles = offsetof(vane_performance, slip) / sizeof(double);
	for (size_t i = 0; i < doubles; i++)
		ck_assert(isnan(field[i]));
	ck_assert(isnan(r.slip.total) && isnan(r.torque.total) && isnan(r.density) &&
		  isnan(r.heat));
	ck_assert(r.roots == 0 && r.caution == 0 && r.slip.caution == 0 && r.slip.roots == 0);
}
END_TEST

/* Every double is NaN and every integer 0. */
static bool is_nothing(const vane_performance *r)
{
	const double doubles[] = {
		r->displacement,
		r->displacement_a,
		r->displacement_b,
		r->ideal_flow,
		r->slip.total,
		r->compressibility_loss,
		r->compressibility_inlet,
		r->outlet_flow,
		r->inlet_flow,
		r->volumetric_efficiency,
		r->volumetric_efficiency_inlet,
		r->incompressible_efficiency,
		r->torque.total,
		r->hydromechanical_efficiency,
		r->overall_efficiency,
		r->shaft_power,
		r->hydraulic_power,
		r->heat,
		r->viscosity,
		r->kinematic_viscosity,
		r->density,
	};
	for (size_t i = 0; i < sizeof doubles / sizeof *doubles; i++)
		if (!isnan(doubles[i]))
			return false;
	return r->roots == 0 && r->caution == 0 && r->slip.caution == 0 && r->slip.roots == 0;
}

enum { DUTIES = 7 };

static void map_duties(vane_duty duty[DUTIES])
{
	for (int i = 0; i < DUTIES; i++) {
		duty[i] = worked_duty();
		duty[i].speed = 10 + 5 * i;
		duty[i].outlet_pressure = 2e6 * (i + 1);
		duty[i].temperature = 300 + 10 * i;
	}
}

static void same_as_run(const vane_parts *p, const vane_oil *oil, const vane_duty *duty,
			const vane_performance *mapped)
{
	const vane_performance single = run(p, oil, duty);
	ck_assert_mem_eq(mapped, &single, sizeof single);
}

START_TEST(map_has_the_bits_of_run)
{
	const vane_parts p = worked_pump();
	const vane_oil oil = worked_oil();
	vane_duty duty[DUTIES];
	vane_performance r[DUTIES];
	vane_error e;
	map_duties(duty);
	ck_assert_int_eq(vane_pump_map(&p, &oil, duty, DUTIES, r, &e), VANE_OK);
	ck_assert_int_eq(e.code, VANE_OK);
	ck_assert_int_eq(e.index, -1);
	for (int i = 0; i < DUTIES; i++)
		same_as_run(&p, &oil, &duty[i], &r[i]);
	ck_assert(r[0].outlet_flow != r[1].outlet_flow);
}
END_TEST

START_TEST(map_goes_on_after_a_bad_duty)
{
	const vane_parts p = worked_pump();
	const vane_oil oil = worked_oil();
	vane_duty duty[DUTIES];
	vane_performance r[DUTIES];
	vane_error e;
	map_duties(duty);
	duty[2].speed = -1;
	duty[5].temperature = NAN;
	for (int quiet = 0; quiet < 2; quiet++) {
		memset(r, 0, sizeof r);
		ck_assert_int_eq(vane_pump_map(&p, &oil, duty, DUTIES, r, quiet ? NULL : &e),
				 VANE_INVALID_ARGUMENT);
		for (int i = 0; i < DUTIES; i++)
			if (i == 2 || i == 5)
				ck_assert(is_nothing(&r[i]));
			else
				same_as_run(&p, &oil, &duty[i], &r[i]);
	}
	ck_assert_int_eq(e.code, VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.index, 2);
	ck_assert_str_eq(e.name, "duty.speed");
	ck_assert(e.value == -1);
	ck_assert(strstr(e.text, "duty.speed") == e.text);
}
END_TEST

/* The whole map is refused: nothing in any record, no duty blamed. */
static void map_refused(const vane_parts *p, const vane_oil *oil, const vane_duty *duty,
			const char *name)
{
	vane_performance r[DUTIES];
	vane_error e;
	memset(r, 0, sizeof r);
	ck_assert_int_eq(vane_pump_map(p, oil, duty, DUTIES, r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.code, VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.index, -1);
	ck_assert_str_eq(e.name, name);
	for (int i = 0; i < DUTIES; i++)
		ck_assert(is_nothing(&r[i]));
}

START_TEST(map_rejects)
{
	const vane_parts p = worked_pump();
	const vane_oil oil = worked_oil();
	vane_duty duty[DUTIES];
	vane_performance r[DUTIES];
	vane_error e;
	map_duties(duty);
	map_refused(NULL, &oil, duty, "parts");
	map_refused(&p, NULL, duty, "oil");
	map_refused(&p, &oil, NULL, "duty");
	vane_parts bad_parts = p;
	bad_parts.rotor_width = NAN;
	map_refused(&bad_parts, &oil, duty, "parts.rotor_width");
	vane_oil bad_oil = oil;
	bad_oil.bulk_modulus = -1;
	map_refused(&p, &bad_oil, duty, "oil.bulk_modulus");

	ck_assert_int_eq(vane_pump_map(&p, &oil, duty, DUTIES, NULL, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "out");
	r[0] = (vane_performance){.heat = 1};
	const int64_t counts[] = {-1, INT64_MIN, 1000000001, INT64_MAX};
	for (size_t i = 0; i < sizeof counts / sizeof *counts; i++) {
		ck_assert_int_eq(vane_pump_map(&p, &oil, duty, counts[i], r, &e),
				 VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(e.name, "duties");
	}
	ck_assert_int_eq(vane_pump_map(&p, &oil, duty, 0, r, &e), VANE_OK);
	ck_assert_int_eq(vane_pump_map(&p, &oil, NULL, 0, r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "duty");
	ck_assert(r[0].heat == 1);

	/* An oil that only some temperatures suit is a matter of the duty. */
	vane_oil swelling = oil;
	swelling.thermal_expansion = 7e-4;
	duty[4].temperature = 2e6;
	ck_assert_int_eq(vane_pump_map(&p, &swelling, duty, DUTIES, r, &e), VANE_OUT_OF_RANGE);
	ck_assert_int_eq(e.index, 4);
	ck_assert(is_nothing(&r[4]) && r[3].outlet_flow > 0 && r[5].outlet_flow > 0);
}
END_TEST

SUITE("pump", worked_performance, balances, pressure_steals_flow_and_clearance_more,
      every_caution_reaches_the_pump, rejects, map_has_the_bits_of_run,
      map_goes_on_after_a_bad_duty, map_rejects)
