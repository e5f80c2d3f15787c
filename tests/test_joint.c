#include "vane/joint.h"

#include "row.h"
#include "vane/thread.h"

#include <float.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#define INCH 0.0254
#define LBF 4.4482216152605

/* An invented cover on four M12 bolts of class 8.8. */
static vane_joint cover(void)
{
	vane_joint j;
	vane_joint_default(&j);
	j.diameter = 0.012;
	j.pitch = 0.00175;
	j.stress_area = 84.3e-6;
	j.torque = 75;
	j.bearing_diameter = 0.0155;
	j.proof_stress = 580e6;
	j.bolt_stiffness = 3.2e8;
	j.joint_stiffness = 1.6e9;
	j.pressure = 15e6;
	j.pressure_radius = 0.029;
	return j;
}

static vane_joint_result run(const vane_joint *joint)
{
	vane_error error;
	vane_joint_result out;
	ck_assert_int_eq(vane_joint_run(joint, &out, &error), VANE_OK);
	ck_assert_int_eq(error.code, VANE_OK);
	return out;
}

START_TEST(test_default)
{
	vane_joint j;
	memset(&j, 0xff, sizeof j);
	vane_joint_default(&j);
	ck_assert(j.thread_friction == 0.12 && j.bearing_friction == 0.12);
	ck_assert(j.torque_scatter == 0.25 && j.friction_scatter == 0 && j.nut_factor == 0);
	ck_assert(j.pressure == 0 && j.seating_loss == 0 && j.spring_force == 0);
	ck_assert_int_eq(j.bolts, 4);
	vane_joint_default(NULL);
	/* What must be given is missing. */
	vane_joint_result out;
	ck_assert_int_eq(vane_joint_run(&j, &out, NULL), VANE_INVALID_ARGUMENT);
}
END_TEST

START_TEST(test_worked)
{
	/* Own calculation, mpmath, 25 digits; the first six also by hand with the table's rounded
	 * d2 = 10.863 mm in place of 10.86334 mm, which moves forces by 0.5 N and pressure by
	 * 1 kPa. */
	const vane_joint j = cover();
	const vane_joint_result r = run(&j);
	const row rows[] = {
		{"preload, rounded d2", r.preload, 38243.2213, 0.5},
		{"load, hand", r.load, 9907.7978, 5e-5},
		{"load_factor, hand", r.load_factor, 1.0 / 6, 1e-15},
		{"clamp, rounded d2", r.clamp, 29986.7231, 0.5},
		{"bolt_load, rounded d2", r.bolt_load, 39894.5209, 0.5},
		{"separation_pressure, rounded d2", r.separation_pressure, 69.478e6, 1e3},
		{"preload, mpmath", r.preload, 38242.75971237, 1e-8},
		{"preload_low, mpmath", r.preload_low, 28682.06978428, 1e-8},
		{"preload_high, mpmath", r.preload_high, 47803.44964047, 1e-8},
		{"proof_load, mpmath", r.proof_load, 48894, 1e-8},
		{"proof_fraction, mpmath", r.proof_fraction, 0.7821564959376, 1e-13},
		{"proof_fraction_low, mpmath", r.proof_fraction_low, 0.5866173719532, 1e-13},
		{"proof_fraction_high, mpmath", r.proof_fraction_high, 0.977695619922, 1e-12},
		{"clamp, mpmath", r.clamp, 29986.26151966, 1e-8},
		{"clamp_low, mpmath", r.clamp_low, 20425.57159156, 1e-8},
		{"bolt_load, mpmath", r.bolt_load, 39894.05935092, 1e-8},
		{"bolt_load_high, mpmath", r.bolt_load_high, 49454.74927901, 1e-8},
		{"separation_pressure, mpmath", r.separation_pressure, 69477565.70596, 1e-4},
		{"separation_pressure_low, mpmath", r.separation_pressure_low, 52108174.27947,
		 1e-4},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(r.separated, 0);
	ck_assert_int_eq(r.overloaded, 1);
}
END_TEST

START_TEST(test_worked_scatter)
{
	/* Own calculation, mpmath: both scatters, unequal frictions, seating and springs. */
	vane_joint j = cover();
	j.thread_friction = 0.14;
	j.bearing_friction = 0.10;
	j.friction_scatter = 0.2;
	j.seating_loss = 2500;
	j.spring_force = 250;
	const vane_joint_result r = run(&j);
	const row rows[] = {
		{"preload, mpmath", r.preload, 38828.02317688, 1e-8},
		{"preload_low, mpmath", r.preload_low, 24865.07334739, 1e-8},
		{"preload_high, mpmath", r.preload_high, 58557.88650782, 1e-8},
		{"proof_fraction, mpmath", r.proof_fraction, 0.7941265426612, 1e-13},
		{"proof_fraction_low, mpmath", r.proof_fraction_low, 0.5085506063604, 1e-13},
		{"proof_fraction_high, mpmath", r.proof_fraction_high, 1.19764974246, 1e-11},
		{"load, mpmath", r.load, 9970.297831259, 1e-8},
		{"clamp, mpmath", r.clamp, 28019.44165083, 1e-8},
		{"clamp_low, mpmath", r.clamp_low, 14056.49182134, 1e-8},
		{"bolt_load, mpmath", r.bolt_load, 37989.73948209, 1e-8},
		{"bolt_load_high, mpmath", r.bolt_load_high, 60219.60281303, 1e-8},
		{"separation_pressure, mpmath", r.separation_pressure, 65904344.06359, 1e-4},
		{"separation_pressure_low, mpmath", r.separation_pressure_low, 40537143.27777,
		 1e-4},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_nut_factor)
{
	/* Common practice, no source: 75 to 80 lbf.ft on a 1/2-13 grade 5 bolt is near 75 % of
	 * proof. */
	vane_joint j = cover();
	j.diameter = 0.5 * INCH;
	j.pitch = INCH / 13;
	j.stress_area = 0.1419 * INCH * INCH;
	j.proof_stress = 85000 * LBF / (INCH * INCH);
	j.nut_factor = 0.2;
	for (double foot_pounds = 75; foot_pounds <= 80; foot_pounds += 5) {
		j.torque = foot_pounds * 12 * INCH * LBF;
		const vane_joint_result r = run(&j);
		CHECK_NEAR(r.preload, foot_pounds * 12 / (0.2 * 0.5) * LBF, 1e-14);
		CHECK_NEAR(r.proof_fraction, foot_pounds * 120 / (0.1419 * 85000), 1e-14);
		ck_assert(r.proof_fraction > 0.70 && r.proof_fraction < 0.82);
	}
	/* The factor scatters as friction does, and friction itself no longer counts. */
	j.friction_scatter = 0.3;
	const vane_joint_result r = run(&j);
	CHECK_NEAR(r.preload_low, r.preload * 0.75 / 1.3, 1e-14);
	CHECK_NEAR(r.preload_high, r.preload * 1.25 / 0.7, 1e-14);
	j.thread_friction = 0.5;
	ck_assert(run(&j).preload == r.preload);
}
END_TEST

START_TEST(test_limits)
{
	vane_joint j = cover();
	j.seating_loss = 4000;
	j.pressure = 0;
	vane_joint_result r = run(&j);
	ck_assert(r.load == 0 && r.clamp == r.preload - 4000);
	ck_assert(r.clamp_low == r.preload_low - 4000 && r.bolt_load == r.clamp);
	ck_assert(r.bolt_load_high == r.preload_high);

	/* At the separation pressure no clamp is left; above it the bolt carries everything. */
	j.spring_force = 300;
	const double opens = run(&j).separation_pressure;
	const double opens_low = run(&j).separation_pressure_low;
	j.pressure = opens;
	r = run(&j);
	ck_assert(r.clamp <= 1e-10 * r.preload);
	CHECK_NEAR(r.bolt_load, r.load, 1e-10);
	j.pressure = 1.01 * opens;
	r = run(&j);
	ck_assert(r.clamp == 0 && r.bolt_load == r.load);
	j.pressure = 1.01 * opens_low;
	r = run(&j);
	ck_assert(r.clamp > 0 && r.clamp_low == 0);
	ck_assert_int_eq(r.separated, 1);
	j.pressure = 0.99 * opens_low;
	ck_assert_int_eq(run(&j).separated, 0);

	/* Seating that eats the preload leaves the joint open without pressure. */
	j = cover();
	j.pressure = 0;
	j.seating_loss = 1e6;
	r = run(&j);
	ck_assert(r.clamp == 0 && r.bolt_load == 0 && r.separation_pressure == 0);
	ck_assert_int_eq(r.separated, 1);

	/* No scatter: the three preloads are one. Without friction: T = F P / (2 pi). */
	j = cover();
	j.torque_scatter = 0;
	j.thread_friction = j.bearing_friction = 0;
	r = run(&j);
	ck_assert(r.preload == r.preload_low && r.preload == r.preload_high);
	CHECK_NEAR(r.preload, 2 * 3.14159265358979323846 * 75 / 0.00175, 1e-15);

	/* A bolt far softer than the joint feels none of the load, a far stiffer one all of it. */
	j.bolt_stiffness = 1;
	j.joint_stiffness = 1e300;
	r = run(&j);
	CHECK_NEAR(r.bolt_load, r.preload, 1e-15);
	j.bolt_stiffness = 1e20;
	j.joint_stiffness = 1;
	r = run(&j);
	CHECK_NEAR(r.load_factor, 1, 1e-15);
	CHECK_NEAR(r.bolt_load, r.preload + r.load, 1e-15);
}
END_TEST

START_TEST(test_properties)
{
	for (int32_t bolts = 1; bolts <= 12; bolts++) {
		vane_joint j = cover();
		j.bolts = bolts;
		j.friction_scatter = 0.1 + 0.05 * bolts;
		j.seating_loss = 500 * bolts;
		const vane_joint_result r = run(&j);
		ck_assert(r.preload_low < r.preload && r.preload < r.preload_high);
		ck_assert(r.clamp_low <= r.clamp && r.clamp <= r.preload);
		ck_assert(r.separation_pressure_low <= r.separation_pressure);
		ck_assert(r.bolt_load <= r.bolt_load_high);
		/* Equilibrium: the bolts pull what the pressure and the clamp push. */
		CHECK_NEAR(bolts * (r.bolt_load - r.clamp),
			   j.pressure * 3.14159265358979323846 * 0.029 * 0.029, 1e-12);
		ck_assert_int_eq(r.separated, r.separation_pressure_low <= j.pressure);
		ck_assert_int_eq(r.overloaded, r.bolt_load_high > r.proof_load);
	}
}
END_TEST

static void check_cleared(const vane_joint_result *out)
{
	const double *field = &out->preload;
	for (size_t i = 0; i < offsetof(vane_joint_result, separated) / sizeof *field; i++) {
		double x;
		memcpy(&x, (const char *)out + i * sizeof x, sizeof x);
		ck_assert(isnan(x));
	}
	ck_assert_int_eq(out->separated, 0);
	ck_assert_int_eq(out->overloaded, 0);
}

static void check_rejected(const vane_joint *joint, const char *name)
{
	vane_error error;
	vane_joint_result out;
	memset(&out, 1, sizeof out);
	ck_assert_int_eq(vane_joint_run(joint, &out, &error), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(error.code, VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, name);
	ck_assert(strstr(error.text, name) == error.text);
	check_cleared(&out);
}

#define FIELD(f)                                                                                   \
	{                                                                                          \
		offsetof(vane_joint, f), "joint." #f                                               \
	}

START_TEST(test_rejects)
{
	const struct {
		size_t offset;
		const char *name;
	} fields[] = {
		FIELD(diameter),         FIELD(pitch),
		FIELD(stress_area),      FIELD(torque),
		FIELD(torque_scatter),   FIELD(thread_friction),
		FIELD(bearing_friction), FIELD(friction_scatter),
		FIELD(bearing_diameter), FIELD(nut_factor),
		FIELD(proof_stress),     FIELD(bolt_stiffness),
		FIELD(joint_stiffness),  FIELD(pressure),
		FIELD(pressure_radius),  FIELD(seating_loss),
		FIELD(spring_force),
	};
	const double bad[] = {-1e-9, NAN, INFINITY, -INFINITY};
	ck_assert_uint_eq(sizeof fields / sizeof *fields,
			  offsetof(vane_joint, bolts) / sizeof(double));
	for (size_t i = 0; i < sizeof fields / sizeof *fields; i++) {
		for (size_t k = 0; k < sizeof bad / sizeof *bad; k++) {
			vane_joint j = cover();
			memcpy((char *)&j + fields[i].offset, &bad[k], sizeof bad[k]);
			check_rejected(&j, fields[i].name);
		}
	}
	const size_t positive[] = {0, 1, 2, 3, 8, 10, 11, 12, 14};
	for (size_t i = 0; i < sizeof positive / sizeof *positive; i++) {
		vane_joint j = cover();
		const double zero = 0;
		memcpy((char *)&j + fields[positive[i]].offset, &zero, sizeof zero);
		check_rejected(&j, fields[positive[i]].name);
	}
	vane_joint j = cover();
	j.torque_scatter = 1;
	check_rejected(&j, "joint.torque_scatter");
	j = cover();
	j.friction_scatter = 1;
	check_rejected(&j, "joint.friction_scatter");
	j = cover();
	j.diameter = 1.2268 * j.pitch;
	check_rejected(&j, "joint.diameter");
	const int32_t counts[] = {0, -1, 1001, INT32_MIN, INT32_MAX};
	for (size_t i = 0; i < sizeof counts / sizeof *counts; i++) {
		j = cover();
		j.bolts = counts[i];
		check_rejected(&j, "joint.bolts");
	}
}
END_TEST

START_TEST(test_null_and_huge)
{
	vane_error error;
	vane_joint j = cover();
	vane_joint_result out;
	ck_assert_int_eq(vane_joint_run(NULL, &out, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "joint");
	check_cleared(&out);
	ck_assert_int_eq(vane_joint_run(&j, NULL, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
	ck_assert_int_eq(vane_joint_run(NULL, NULL, NULL), VANE_INVALID_ARGUMENT);

	const size_t huge[] = {
		offsetof(vane_joint, torque),
		offsetof(vane_joint, thread_friction),
		offsetof(vane_joint, pressure_radius),
		offsetof(vane_joint, proof_stress),
	};
	for (size_t i = 0; i < sizeof huge / sizeof *huge; i++) {
		j = cover();
		j.friction_scatter = 0.5;
		j.stress_area = 2;
		const double most = DBL_MAX;
		memcpy((char *)&j + huge[i], &most, sizeof most);
		ck_assert_int_eq(vane_joint_run(&j, &out, &error), VANE_OUT_OF_RANGE);
		ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
		check_cleared(&out);
	}
}
END_TEST

SUITE("joint", test_default, test_worked, test_worked_scatter, test_nut_factor, test_limits,
      test_properties, test_rejects, test_null_and_huge)
