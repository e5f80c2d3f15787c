/* Stiffness, load, loss, heat, fatigue and order: the formulas beside the cover's record. */
#include "vane/joint.h"

#include "row.h"
#include "vane/thread.h"

#include <float.h>
#include <stdint.h>
#include <string.h>

#define PI 3.14159265358979323846
#define DEG30 (PI / 6)

static double frustum(double modulus, double diameter, double face, double thickness)
{
	return vane_joint_frustum_stiffness(modulus, diameter, face, thickness, DEG30, NULL);
}

static double series(double first, double second)
{
	return vane_joint_stiffness_series(first, second, NULL);
}

static double factor(double bolt, double joint)
{
	return vane_joint_load_factor(bolt, joint, 1, NULL);
}

START_TEST(test_print)
{
	/* Stiffness is homogeneous, so inch rows are in inch and Mpsi. */
	const double d = 0.5;
	const double a = frustum(30, d, 0.75, 0.5), b = frustum(14.5, d, 1.327, 0.11);
	const double c = frustum(14.5, d, 0.860, 0.515), e = frustum(30, d, 0.75, 0.095);
	const double km = series(series(a, b), series(c, e));
	const double f = frustum(30, d, 0.75, 0.4225), g = frustum(30, d, 1.018, 0.1725);
	const double h = frustum(14.5, d, 0.75, 0.25), cap = series(series(f, g), h);
	const double half = 1.345 / 2;
	const double k3 = frustum(14.5, d, 0.75, half);
	const double mixed =
		series(series(frustum(30, d, 0.75, 0.595),
			      frustum(14.5, d, 0.75 + 2 * tan(DEG30) * 0.595, half - 0.595)),
		       k3);
	const row rows[] = {
		{"B-SM824 k1, Shigley 8th ed. solution 8-24", a, 33.3, 0.02},
		{"B-SM824 k2", b, 173.8, 0.3},
		{"B-SM824 k3", c, 21.47, 0.02},
		{"B-SM824 k4", e, 97.27, 0.05},
		{"B-SM824 km", km, 10.79, 0.01},
		{"B-SM824 C", factor(3.94, km), 0.267, 6e-4},
		{"B-SM824b thread, Shigley 8th ed. solution 8-24",
		 vane_joint_bar_stiffness(0.1419, 0.72, 30, NULL), 5.9125, 1e-3},
		{"B-SM824b shank",
		 vane_joint_bar_stiffness(vane_thread_area(0.5, NULL), 0.5, 30, NULL), 11.778,
		 4e-3},
		{"B-SM824b bolt",
		 vane_joint_bolt_stiffness(vane_thread_area(0.5, NULL), 0.5, 0.1419, 0.72, 30,
					   NULL),
		 3.936, 1e-3},
		{"B-SM825 k1, Shigley 8th ed. solution 8-25", f, 36.14, 0.02},
		{"B-SM825 k2", g, 134.6, 0.2},
		{"B-SM825 k3", h, 23.49, 0.02},
		{"B-SM825 km", cap, 12.87, 0.01},
		{"B-SM825 C", factor(5.04, cap), 0.281, 6e-4},
		{"B-S82(a), Shigley 9th ed. example 8-2, from memory", mixed, 9.378, 0.02},
		{"B-S82(b), from memory",
		 vane_joint_grip_stiffness(30, d, 0.75, 1.345, DEG30, NULL), 14.64, 0.03},
		{"B-S82(c), from memory",
		 vane_joint_wileman_stiffness(30, d, 1.345, 0.78715, 0.62873, NULL), 14.92, 0.03},
		{"B-MK2, Brown, Marks' Calculations for Machine Design, ch. 8 example 2",
		 vane_joint_frustum_stiffness(30e6, d, 0.75, 0.797, DEG30, NULL), 2.74e7, 2e5},
		{"B-MK2s, Marks' Calculations, ch. 8 example 2",
		 series(series(2.74e7, 1.42e7), 2.69e8), 9.04e6, 1e4},
		{"B-MK5 k, Marks' Calculations, ch. 8 p. 345",
		 series(series(4.49e7, 3.26e7), 1.73e8), 1.7e7, 1e5},
		{"B-MK5 C", factor(6.38e6, series(series(4.49e7, 3.26e7), 1.73e8)), 0.27, 5e-3},
		{"B-J94, Jindal, Machine Design, example 9-4, MPa",
		 vane_joint_bolt_load(
			 105 * 245, 20000,
			 factor(vane_joint_bar_stiffness(vane_thread_area(20, NULL), 84, 205e3,
							 NULL),
				vane_joint_grip_stiffness(105e3, 20, 30, 80, PI / 4, NULL)),
			 NULL) /
			 245,
		 123.28, 0.01},
		{"B-SM822n, Shigley 8th ed. solution 8-22",
		 vane_joint_load_safety(600e6 * 84.3e-6, 37900, 10600, 0.2346, NULL), 5.1, 0.06},
		{"B-W64, Wentzell, Machine Design, example 6.4, ten studs",
		 vane_joint_bolt_load(10 * 0.9 * 120000 * 1.073, 500 * PI / 4 * 20 * 20,
				      factor(10 * 1.073, 50), NULL),
		 1186593, 2},
	};
	ROWS_CHECK(rows);
	/* The same stack by the procedure. */
	const vane_joint_layer layers[] = {{0.095, 30}, {0.5, 30}, {0.75, 14.5}};
	double got;
	ck_assert_int_eq(vane_joint_stack_stiffness(layers, 3, 0.5, 0.75, 0.75, DEG30, &got, NULL),
			 VANE_OK);
	CHECK_NEAR(got, mixed, 1e-14);
	const row s82 = {"B-S82(a), from memory", got, 9.378, 0.02};
	row_check(&s82);
}
END_TEST

START_TEST(test_stiffness)
{
	/* Own calculation, mpmath: quadrature of 1/(E A) along the bolt and along the cones. */
	const double E = 205e9, L = 0.04, dw = 0.018, dh = 0.013;
	CHECK_NEAR(vane_joint_frustum_stiffness(207e9, 0.012, 0.018, 0.01, DEG30, NULL),
		   6027428932.702253, 1e-14);
	CHECK_NEAR(vane_joint_grip_stiffness(207e9, 0.012, 0.018, 0.03, DEG30, NULL),
		   2497971450.322127, 1e-14);
	CHECK_NEAR(vane_joint_cone_stiffness(L, dw, dh, 0.015, E, NULL), 225409272.8950677, 1e-14);
	CHECK_NEAR(vane_joint_cone_stiffness(L, dw, dh, 0.025, E, NULL), 1425359885.601431, 1e-14);
	CHECK_NEAR(vane_joint_cone_stiffness(L, dw, dh, 0.08, E, NULL), 2105290904.338439, 1e-14);
	CHECK_NEAR(vane_joint_cone_stiffness_tapped(L, dw, dh, 0.015, E, NULL), 225409272.8950677,
		   1e-14);
	CHECK_NEAR(vane_joint_cone_stiffness_tapped(L, dw, dh, 0.025, E, NULL), 1607575240.014054,
		   1e-14);
	CHECK_NEAR(vane_joint_cone_stiffness_tapped(L, dw, dh, 0.08, E, NULL), 3739027859.340134,
		   1e-14);
	CHECK_NEAR(vane_joint_bolt_stiffness_vdi(0.012, 0.009853, 0.012, 0.02, 0.02, 0.5, 0.33, E,
						 110e9, NULL),
		   322257214.3098256, 1e-14);
	/* A thin layer is a plain ring. */
	CHECK_NEAR(vane_joint_frustum_stiffness(E, dh, dw, 1e-12, DEG30, NULL),
		   E * PI / 4 * (dw * dw - dh * dh) / 1e-12, 1e-8);
	/* Through the face's own size the stiffness does not jump. */
	CHECK_NEAR(vane_joint_cone_stiffness(L, dw, dh, dw * (1 + 1e-12), E, NULL),
		   vane_joint_cone_stiffness(L, dw, dh, dw, E, NULL), 1e-9);
	vane_joint_plate plate;
	const double moduli[] = {207e9, 71e9, 119e9, 100e9};
	for (int32_t i = VANE_JOINT_STEEL; i <= VANE_JOINT_IRON; i++) {
		ck_assert_int_eq(vane_joint_plate_data(i, &plate, NULL), VANE_OK);
		ck_assert(plate.modulus == moduli[i - 1]);
		/* The fit agrees with the cones as the book finds it, within 5 %. */
		const double fit = vane_joint_wileman_stiffness(
			plate.modulus, 0.012, 0.03, plate.coefficient, plate.exponent, NULL);
		const double cones =
			vane_joint_grip_stiffness(plate.modulus, 0.012, 0.018, 0.03, DEG30, NULL);
		ck_assert(fabs(fit / cones - 1) < 0.05);
	}
	vane_error e;
	ck_assert_int_eq(vane_joint_plate_data(0, &plate, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "metal");
	ck_assert(isnan(plate.modulus) && isnan(plate.exponent));
	ck_assert_int_eq(vane_joint_plate_data(1, NULL, NULL), VANE_INVALID_ARGUMENT);
	CHECK_NEAR(series(3, 6), 2, 1e-15);
	CHECK_NEAR(series(DBL_MAX, DBL_MAX), DBL_MAX / 2, 1e-15);
	CHECK_NEAR(series(1e-300, 1e300), 1e-300, 1e-15);
}
END_TEST

START_TEST(test_stack)
{
	/* Own calculation, mpmath: quadrature through the layers. */
	vane_joint_layer layers[] = {{0.003, 207e9}, {0.012, 71e9}, {0.020, 100e9}};
	vane_error e;
	double got;
	ck_assert_int_eq(
		vane_joint_stack_stiffness(layers, 3, 0.012, 0.018, 0.022, DEG30, &got, &e),
		VANE_OK);
	CHECK_NEAR(got, 1319389572.731371, 1e-14);
	/* A nut face so wide that its cone never begins. */
	ck_assert_int_eq(vane_joint_stack_stiffness(layers, 1, 0.012, 0.018, 0.05, DEG30, &got, &e),
			 VANE_OK);
	CHECK_NEAR(got, 13003928330.81088, 1e-14);
	double mirrored;
	ck_assert_int_eq(
		vane_joint_stack_stiffness(layers, 1, 0.012, 0.05, 0.018, DEG30, &mirrored, &e),
		VANE_OK);
	CHECK_NEAR(mirrored, got, 1e-14);
	/* One layer cut in two is the same layer. */
	const vane_joint_layer cut[] = {{0.001, 207e9}, {0.002, 207e9}};
	ck_assert_int_eq(vane_joint_stack_stiffness(cut, 2, 0.012, 0.018, 0.018, DEG30, &got, &e),
			 VANE_OK);
	CHECK_NEAR(got, vane_joint_grip_stiffness(207e9, 0.012, 0.018, 0.003, DEG30, NULL), 1e-13);

	layers[2].modulus = 0;
	ck_assert_int_eq(
		vane_joint_stack_stiffness(layers, 3, 0.012, 0.018, 0.022, DEG30, &got, &e),
		VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "layer.modulus");
	ck_assert_int_eq(e.index, 2);
	ck_assert(isnan(got));
	layers[0].thickness = NAN;
	ck_assert_int_eq(
		vane_joint_stack_stiffness(layers, 3, 0.012, 0.018, 0.022, DEG30, &got, &e),
		VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "layer.thickness");
	const struct {
		double hole, head, nut, angle;
		const char *name;
	} bad[] = {
		{0, 0.018, 0.022, 0.5, "hole_diameter"},
		{0.012, 0.012, 0.022, 0.5, "head_diameter"},
		{0.012, 0.018, NAN, 0.5, "nut_diameter"},
		{0.012, 0.018, 0.022, 0, "half_angle"},
		{0.012, 0.018, 0.022, 1.51, "half_angle"},
	};
	for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
		ck_assert_int_eq(vane_joint_stack_stiffness(cut, 2, bad[i].hole, bad[i].head,
							    bad[i].nut, bad[i].angle, &got, &e),
				 VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(e.name, bad[i].name);
		ck_assert(isnan(got));
	}
	ck_assert_int_eq(vane_joint_stack_stiffness(cut, 0, 1, 2, 2, 0.5, &got, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "layers");
	ck_assert_int_eq(vane_joint_stack_stiffness(NULL, 2, 1, 2, 2, 0.5, &got, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "layer");
	ck_assert_int_eq(vane_joint_stack_stiffness(cut, 2, 1, 2, 2, 0.5, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	const vane_joint_layer huge[] = {{1e308, 1}, {1e308, 1}};
	ck_assert_int_eq(vane_joint_stack_stiffness(huge, 2, 1, 2, 2, 0.5, &got, &e),
			 VANE_OUT_OF_RANGE);
	ck_assert(isnan(got));
}
END_TEST

START_TEST(test_load)
{
	/* Worked cover: 1/6 of 9907.7978 N on top of 38243.2213 N. */
	const double F = 38243.2213, P = 9907.7978, phi = factor(3.2e8, 1.6e9);
	const row rows[] = {
		{"load factor", phi, 1.0 / 6, 1e-16},
		{"clamp, hand", vane_joint_clamp(F, P, phi, NULL), 29986.7231, 1e-4},
		{"bolt, hand", vane_joint_bolt_load(F, P, phi, NULL), 39894.5209, 1e-4},
		{"safety of separation",
		 vane_joint_separation_safety(F, P, phi, NULL) * P * (1 - phi), F, 1e-10},
	};
	ROWS_CHECK(rows);
	const double opens = vane_joint_separation_load(F, phi, NULL);
	CHECK_NEAR(opens, F * 1.2, 1e-14);
	CHECK_NEAR(vane_joint_bolt_load(F, opens, phi, NULL), opens, 1e-14);
	ck_assert(vane_joint_clamp(F, opens, phi, NULL) < 1e-11 * F);
	ck_assert(vane_joint_clamp(F, 1.01 * opens, phi, NULL) == 0);
	ck_assert(vane_joint_bolt_load(F, 2 * opens, phi, NULL) == 2 * opens);
	/* Both ways to yield: closed above, open below. */
	CHECK_NEAR(vane_joint_yield_load(F, phi, F + 1000, NULL), 6000, 1e-11);
	ck_assert(vane_joint_yield_load(F, phi, 60000, NULL) == 60000);
	for (double yield = F; yield < 2 * F; yield += 1234) {
		const double load = vane_joint_yield_load(F, phi, yield, NULL);
		CHECK_NEAR(vane_joint_bolt_load(F, load, phi, NULL), yield, 1e-13);
	}
	ck_assert(vane_joint_yield_load(F, 0, F, NULL) == F);
	CHECK_NEAR(vane_joint_yield_safety(50000, F, P, phi, NULL), 50000 / 39894.5209333, 1e-10);
	ck_assert(vane_joint_load_factor(1, 1, 0, NULL) == 0);
	CHECK_NEAR(vane_joint_load_factor(1, 3, 0.5, NULL), 0.125, 1e-15);
	CHECK_NEAR(vane_joint_assembly_preload(1.6, 5000, 12000, 0.25, 900, 100, NULL), 24000,
		   1e-15);
	CHECK_NEAR(vane_joint_face_pressure(1000, 0.018, 0.013, NULL),
		   1000 / (PI / 4 * (0.018 * 0.018 - 0.013 * 0.013)), 1e-14);
	/* Turning by an angle stretches bolt and squeezes parts by its share of the pitch. */
	CHECK_NEAR(vane_joint_turn_angle(38400, 0.00175, 3.2e8, 1.6e9, NULL),
		   2 * PI * (38400 / 3.2e8 + 38400 / 1.6e9) / 0.00175, 1e-14);
}
END_TEST

START_TEST(test_embedding)
{
	/* VDI 2230-1:2003, table 5, from memory: thread, face, inner, and head, nut, one inner. */
	const struct {
		double roughness;
		int32_t sheared;
		double thread, face, inner, all;
	} want[] = {
		{0, 0, 3, 2.5, 1.5, 9.5},      {9.9e-6, 0, 3, 2.5, 1.5, 9.5},
		{10e-6, 0, 3, 3, 2, 11},       {40e-6, 0, 3, 4, 3, 14},
		{160e-6, 0, 3, 4, 3, 14},      {5e-6, 1, 3, 3, 2, 11},
		{20e-6, 1, 3, 4.5, 2.5, 14.5}, {50e-6, 1, 3, 6.5, 3.5, 19.5},
	};
	vane_error e;
	vane_joint_embedding out;
	for (size_t i = 0; i < sizeof want / sizeof *want; i++) {
		ck_assert_int_eq(vane_joint_embedding_depth(want[i].roughness, want[i].sheared, 2,
							    1, &out, &e),
				 VANE_OK);
		CHECK_NEAR(out.thread, want[i].thread * 1e-6, 1e-15);
		CHECK_NEAR(out.face, want[i].face * 1e-6, 1e-15);
		CHECK_NEAR(out.inner, want[i].inner * 1e-6, 1e-15);
		CHECK_NEAR(out.embedding, want[i].all * 1e-6, 1e-15);
	}
	const struct {
		double roughness;
		int32_t sheared, faces, interfaces;
		const char *name;
	} bad[] = {
		{-1e-9, 0, 2, 1, "roughness"},  {1.61e-4, 0, 2, 1, "roughness"},
		{NAN, 0, 2, 1, "roughness"},    {1e-6, 2, 2, 1, "sheared"},
		{1e-6, -1, 2, 1, "sheared"},    {1e-6, 0, 3, 1, "faces"},
		{1e-6, 0, 2, -1, "interfaces"}, {1e-6, 0, 2, 1001, "interfaces"},
	};
	for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
		ck_assert_int_eq(vane_joint_embedding_depth(bad[i].roughness, bad[i].sheared,
							    bad[i].faces, bad[i].interfaces, &out,
							    &e),
				 VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(e.name, bad[i].name);
		ck_assert(isnan(out.thread) && isnan(out.embedding));
	}
	ck_assert_int_eq(vane_joint_embedding_depth(1e-6, 0, 2, 1, NULL, NULL),
			 VANE_INVALID_ARGUMENT);
	CHECK_NEAR(vane_joint_embedding_loss(9.5e-6, 3.2e8, 1.6e9, NULL),
		   9.5e-6 / (1 / 3.2e8 + 1 / 1.6e9), 1e-15);
}
END_TEST

START_TEST(test_heat)
{
	/* Own calculation, mpmath: steel bolt, aluminium parts. */
	CHECK_NEAR(vane_joint_thermal_change(0.04, 3.2e8, 1.6e9, 11.5e-6, 60, 23e-6, 65, NULL),
		   8586.666666666667, 1e-14);
	CHECK_NEAR(vane_joint_hot_preload(40000, 0.04, 3.2e8, 1.6e9, 11.5e-6, 60, 23e-6, 65, 0.97,
					  0.95, NULL),
		   46964.27972027972, 1e-14);
	/* Cold or alike, nothing changes; unchanged moduli leave the plain change. */
	ck_assert(vane_joint_thermal_change(0.04, 3e8, 1e9, 1e-5, 50, 1e-5, 50, NULL) == 0);
	CHECK_NEAR(vane_joint_hot_preload(40000, 0.04, 3e8, 1e9, 1e-5, 0, 2e-5, 0, 1, 1, NULL),
		   40000, 1e-15);
	CHECK_NEAR(vane_joint_hot_preload(40000, 0.04, 3e8, 1e9, 1e-5, 80, 2e-5, 30, 1, 1, NULL),
		   40000 + vane_joint_thermal_change(0.04, 3e8, 1e9, 1e-5, 80, 2e-5, 30, NULL),
		   1e-14);
	/* A bolt far hotter than its parts goes slack. */
	ck_assert(vane_joint_hot_preload(1000, 0.04, 3e8, 1e9, 1e-5, 500, 1e-5, 0, 1, 1, NULL) ==
		  0);
	/* Near cancellation the digits are kept. */
	CHECK_NEAR(vane_joint_thermal_change(1, 2, 2, 3, 1.0 / 3, 1, 1, NULL), 0x1p-54, 1e-15);
}
END_TEST

START_TEST(test_fatigue)
{
	/* Own calculation, mpmath: crossing of the load line and each curve. */
	const double se = 129e6, su = 830e6, sp = 600e6, si = 450e6, sa = 30e6;
	CHECK_NEAR(vane_joint_goodman(se, su, si, sa, si + sa, NULL), 1.70385818561001, 1e-14);
	CHECK_NEAR(vane_joint_goodman(se, su, si, sa, 500e6, NULL), 1.563636363636364, 1e-14);
	CHECK_NEAR(vane_joint_gerber(se, su, si, sa, NULL), 2.566495285157022, 1e-14);
	CHECK_NEAR(vane_joint_elliptic(se, sp, si, sa, NULL), 2.195789322224911, 1e-14);
	/* Without preload or near the strength, each curve where it ends. */
	CHECK_NEAR(vane_joint_elliptic(se, sp, 0, sa, NULL), se / sa * sp / hypot(sp, se), 1e-14);
	const double near = 1 - 0x1p-50;
	CHECK_NEAR(vane_joint_gerber(1, 1, near, 1, NULL), 0x1p-50 * 2 / 3, 1e-14);
	CHECK_NEAR(vane_joint_elliptic(1, 1, near, 1, NULL), 0x1p-50, 1e-14);
	CHECK_NEAR(vane_joint_alternating_stress(2000, 10000, 0.25, 1e-4, NULL), 1e7, 1e-15);
	CHECK_NEAR(vane_joint_mean_stress(30000, 2000, 10000, 0.25, 1e-4, NULL), 315e6, 1e-15);
	ck_assert(vane_joint_alternating_stress(5, 5, 1, 1, NULL) == 0);
}
END_TEST

static void check_order(const int32_t *order, const int32_t *want, int32_t n)
{
	for (int32_t i = 0; i < n; i++)
		ck_assert_int_eq(order[i], want[i]);
}

static void check_permutation(const int32_t *order, int32_t n)
{
	char seen[1001] = {0};
	for (int32_t i = 0; i < n; i++) {
		ck_assert_int_ge(order[i], 1);
		ck_assert_int_le(order[i], n);
		ck_assert(!seen[order[i]]);
		seen[order[i]] = 1;
	}
}

START_TEST(test_circle)
{
	/* Common practice, no source; the orders that hang beside the wrench. */
	const int32_t three[] = {1, 2, 3}, four[] = {1, 3, 2, 4}, five[] = {1, 3, 5, 2, 4};
	const int32_t six[] = {1, 4, 2, 5, 3, 6}, eight[] = {1, 5, 3, 7, 2, 6, 4, 8};
	const int32_t twelve[] = {1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12};
	const int32_t sixteen[] = {1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16};
	const struct {
		const int32_t *order;
		int32_t n;
	} known[] = {{three, 3}, {four, 4},    {five, 5},    {six, 6},
		     {eight, 8}, {twelve, 12}, {sixteen, 16}};
	int32_t order[1001];
	vane_error e;
	for (size_t i = 0; i < sizeof known / sizeof *known; i++) {
		ck_assert_int_eq(vane_joint_circle_order(known[i].n, order, &e), VANE_OK);
		check_order(order, known[i].order, known[i].n);
	}
	for (int32_t n = 1; n <= 1000; n += n < 100 ? 1 : 75) {
		order[n] = -7;
		ck_assert_int_eq(vane_joint_circle_order(n, order, NULL), VANE_OK);
		check_permutation(order, n);
		ck_assert_int_eq(order[n], -7);
		for (int32_t i = 0; n % 2 == 0 && i < n; i += 2)
			ck_assert_int_eq(order[i + 1], order[i] + n / 2);
	}
	ck_assert_int_eq(vane_joint_circle_order(0, order, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "bolts");
	ck_assert_int_eq(vane_joint_circle_order(1001, order, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_joint_circle_order(INT32_MIN, order, NULL), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_joint_circle_order(4, NULL, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "order");
}
END_TEST

START_TEST(test_rectangle)
{
	/* Common practice, no source: 4 corners; 2 x 4 as a cylinder head; 3 x 3. */
	const int32_t four[] = {1, 3, 2, 4}, head[] = {2, 6, 3, 7, 1, 5, 4, 8};
	const int32_t square[] = {2, 6, 4, 8, 1, 5, 3, 7};
	int32_t order[1001];
	vane_error e;
	ck_assert_int_eq(vane_joint_rectangle_order(2, 4, order, &e), VANE_OK);
	check_order(order, four, 4);
	ck_assert_int_eq(vane_joint_rectangle_order(4, 8, order, &e), VANE_OK);
	check_order(order, head, 8);
	ck_assert_int_eq(vane_joint_rectangle_order(3, 8, order, &e), VANE_OK);
	check_order(order, square, 8);
	for (int32_t columns = 2; columns < 12; columns++) {
		for (int32_t rows = 2; rows < 12; rows++) {
			const int32_t n = 2 * (columns + rows) - 4;
			order[n] = -7;
			ck_assert_int_eq(vane_joint_rectangle_order(columns, n, order, NULL),
					 VANE_OK);
			check_permutation(order, n);
			ck_assert_int_eq(order[n], -7);
			for (int32_t i = 0; i < n; i += 2)
				ck_assert_int_eq(order[i + 1], order[i] + n / 2);
		}
	}
	ck_assert_int_eq(vane_joint_rectangle_order(500, 1000, order, &e), VANE_OK);
	check_permutation(order, 1000);
	const struct {
		int32_t columns, bolts, status;
		const char *name;
	} bad[] = {
		{1, 8, VANE_INVALID_ARGUMENT, "columns"},
		{5, 8, VANE_INVALID_ARGUMENT, "columns"},
		{INT32_MAX, 8, VANE_INVALID_ARGUMENT, "columns"},
		{INT32_MIN, 8, VANE_INVALID_ARGUMENT, "columns"},
		{3, 9, VANE_NO_SOLUTION, "bolts"},
		{3, 3, VANE_INVALID_ARGUMENT, "bolts"},
		{3, 1001, VANE_INVALID_ARGUMENT, "bolts"},
		{3, -1, VANE_INVALID_ARGUMENT, "bolts"},
	};
	for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
		order[0] = order[7] = -7;
		ck_assert_int_eq(
			vane_joint_rectangle_order(bad[i].columns, bad[i].bolts, order, &e),
			bad[i].status);
		ck_assert_int_eq(e.code, bad[i].status);
		ck_assert_str_eq(e.name, bad[i].name);
		const int32_t left = bad[i].bolts >= 4 && bad[i].bolts <= 1000 ? 0 : -7;
		ck_assert(order[0] == left && order[7] == left);
	}
	ck_assert_int_eq(vane_joint_rectangle_order(3, 8, NULL, NULL), VANE_INVALID_ARGUMENT);
}
END_TEST

START_TEST(test_passes)
{
	double fraction[21];
	vane_error e;
	for (int32_t n = 3; n <= 20; n++) {
		fraction[n] = -7;
		ck_assert_int_eq(vane_joint_passes(n, fraction, &e), VANE_OK);
		CHECK_NEAR(fraction[0], 1.0 / (n - 1), 1e-15);
		for (int32_t i = 1; i < n; i++)
			ck_assert(fraction[i] > fraction[i - 1] ||
				  (i == n - 1 && fraction[i] == 1));
		ck_assert(fraction[n - 2] == 1 && fraction[n - 1] == 1 && fraction[n] == -7);
	}
	ck_assert_int_eq(vane_joint_passes(2, fraction, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "passes");
	ck_assert_int_eq(vane_joint_passes(21, fraction, NULL), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_joint_passes(4, NULL, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "fraction");
}
END_TEST

/* Each formula once with good numbers; every number of it in turn made bad. */
typedef double call(const double *x, vane_error *error);

#define CALL(name, ...)                                                                            \
	static double name(const double *x, vane_error *e)                                         \
	{                                                                                          \
		return vane_joint_##name(__VA_ARGS__, e);                                          \
	}

CALL(bar_stiffness, x[0], x[1], x[2])
CALL(bolt_stiffness, x[0], x[1], x[2], x[3], x[4])
CALL(bolt_stiffness_vdi, x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7], x[8])
CALL(frustum_stiffness, x[0], x[1], x[2], x[3], x[4])
CALL(grip_stiffness, x[0], x[1], x[2], x[3], x[4])
CALL(wileman_stiffness, x[0], x[1], x[2], x[3], x[4])
CALL(cone_stiffness, x[0], x[1], x[2], x[3], x[4])
CALL(cone_stiffness_tapped, x[0], x[1], x[2], x[3], x[4])
CALL(stiffness_series, x[0], x[1])
CALL(load_factor, x[0], x[1], x[2])
CALL(clamp, x[0], x[1], x[2])
CALL(bolt_load, x[0], x[1], x[2])
CALL(separation_load, x[0], x[1])
CALL(yield_load, x[0], x[1], x[2])
CALL(load_safety, x[0], x[1], x[2], x[3])
CALL(separation_safety, x[0], x[1], x[2])
CALL(yield_safety, x[0], x[1], x[2], x[3])
CALL(assembly_preload, x[0], x[1], x[2], x[3], x[4], x[5])
CALL(face_pressure, x[0], x[1], x[2])
CALL(turn_angle, x[0], x[1], x[2], x[3])
CALL(embedding_loss, x[0], x[1], x[2])
CALL(alternating_stress, x[0], x[1], x[2], x[3])
CALL(mean_stress, x[0], x[1], x[2], x[3], x[4])
CALL(goodman, x[0], x[1], x[2], x[3], x[4])
CALL(gerber, x[0], x[1], x[2], x[3])
CALL(elliptic, x[0], x[1], x[2], x[3])

START_TEST(test_rejects)
{
	const struct {
		call *call;
		double good[9];
		const char *names;
	} all[] = {
		{bar_stiffness, {1, 1, 1}, "area length modulus"},
		{bolt_stiffness,
		 {1, 1, 1, 1, 1},
		 "shank_area shank_length stress_area thread_length modulus"},
		{bolt_stiffness_vdi,
		 {1, 1, 1, 1, 1, 1, 1, 1, 1},
		 "diameter root_diameter shank_diameter shank_length thread_length head_ratio "
		 "nut_ratio modulus nut_modulus"},
		{frustum_stiffness,
		 {1, 1, 2, 1, 0.5},
		 "modulus hole_diameter face_diameter thickness half_angle"},
		{grip_stiffness,
		 {1, 1, 2, 1, 0.5},
		 "modulus hole_diameter face_diameter length half_angle"},
		{wileman_stiffness,
		 {1, 1, 1, 1, 1},
		 "modulus diameter length coefficient exponent"},
		{cone_stiffness,
		 {4, 2, 1, 3, 1},
		 "length face_diameter hole_diameter outer_diameter modulus"},
		{cone_stiffness_tapped,
		 {4, 2, 1, 3, 1},
		 "length face_diameter hole_diameter outer_diameter modulus"},
		{stiffness_series, {1, 1}, "first second"},
		{load_factor, {1, 1, 1}, "bolt_stiffness joint_stiffness introduction"},
		{clamp, {1, 1, 1}, "preload load load_factor"},
		{bolt_load, {1, 1, 1}, "preload load load_factor"},
		{separation_load, {1, 0.5}, "preload load_factor"},
		{yield_load, {1, 0.5, 2}, "preload load_factor yield_force"},
		{load_safety, {2, 1, 1, 0.5}, "proof_load preload load load_factor"},
		{separation_safety, {1, 1, 0.5}, "preload load load_factor"},
		{yield_safety, {2, 1, 1, 0.5}, "proof_load preload load load_factor"},
		{assembly_preload,
		 {1, 1, 1, 1, 1, 1},
		 "tightening_factor clamp load load_factor seating_loss thermal_loss"},
		{face_pressure, {1, 2, 1}, "force face_diameter hole_diameter"},
		{turn_angle, {1, 1, 1, 1}, "preload pitch bolt_stiffness joint_stiffness"},
		{embedding_loss, {1, 1, 1}, "embedding bolt_stiffness joint_stiffness"},
		{alternating_stress, {1, 2, 1, 1}, "load_low load_high load_factor stress_area"},
		{mean_stress,
		 {1, 1, 2, 1, 1},
		 "preload load_low load_high load_factor stress_area"},
		{goodman,
		 {1, 3, 1, 1, 2},
		 "endurance tensile preload_stress alternating_stress mean_stress"},
		{gerber, {1, 3, 1, 1}, "endurance tensile preload_stress alternating_stress"},
		{elliptic,
		 {1, 3, 1, 1},
		 "endurance proof_stress preload_stress alternating_stress"},
	};
	const double bad[] = {-1, NAN, INFINITY, -INFINITY};
	vane_error e;
	for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
		ck_assert(isfinite(all[i].call(all[i].good, &e)));
		ck_assert_int_eq(e.code, VANE_OK);
		const char *name = all[i].names;
		for (int at = 0; *name; at++) {
			const size_t length = strcspn(name, " ");
			for (size_t k = 0; k < 4; k++) {
				double x[9];
				memcpy(x, all[i].good, sizeof x);
				x[at] = bad[k];
				ck_assert(isnan(all[i].call(x, &e)));
				ck_assert_int_eq(e.code, VANE_INVALID_ARGUMENT);
				ck_assert_msg(strlen(e.name) == length &&
						      memcmp(e.name, name, length) == 0,
					      "%s for %.*s", e.name, (int)length, name);
			}
			name += length + (name[length] == ' ');
		}
	}
	CHECK_REJECTS(vane_joint_separation_load(1, 1, &e), e, "load_factor");
	ck_assert(vane_joint_separation_load(1, 1 - DBL_EPSILON / 2, &e) == 2 / DBL_EPSILON);
	CHECK_REJECTS(vane_joint_load_safety(2, 1, 1, 0, &e), e, "load_factor");
	CHECK_REJECTS(vane_joint_yield_load(3, 0.5, 2, &e), e, "preload");
	CHECK_REJECTS(vane_joint_goodman(1, 1, 1, 1, 2, &e), e, "tensile");
	CHECK_REJECTS(vane_joint_goodman(1, 3, 1, 1, 0.5, &e), e, "mean_stress");
	CHECK_REJECTS(vane_joint_cone_stiffness(0.02, 2, 1, 3, 1, &e), e, "length");
	CHECK_REJECTS(vane_joint_cone_stiffness_tapped(200, 2, 1, 3, 1, &e), e, "length");
	CHECK_REJECTS(vane_joint_wileman_stiffness(1, 1, 0.49, 1, 1, &e), e, "length");
	CHECK_REJECTS(vane_joint_wileman_stiffness(1, 1, 1, 1, 1.01, &e), e, "exponent");
	CHECK_REJECTS(vane_joint_frustum_stiffness(1, 1, 1, 1, 0.5, &e), e, "face_diameter");
	CHECK_REJECTS(vane_joint_thermal_change(0, 1, 1, 1, 1, 1, 1, &e), e, "length");
	CHECK_REJECTS(vane_joint_thermal_change(1, 0, 1, 1, 1, 1, 1, &e), e, "bolt_stiffness");
	CHECK_REJECTS(vane_joint_thermal_change(1, 1, 0, 1, 1, 1, 1, &e), e, "joint_stiffness");
	CHECK_REJECTS(vane_joint_thermal_change(1, 1, 1, -1, 1, 1, 1, &e), e, "bolt_expansion");
	CHECK_REJECTS(vane_joint_thermal_change(1, 1, 1, 1, NAN, 1, 1, &e), e, "bolt_rise");
	CHECK_REJECTS(vane_joint_thermal_change(1, 1, 1, 1, 1, -1, 1, &e), e, "joint_expansion");
	CHECK_REJECTS(vane_joint_thermal_change(1, 1, 1, 1, 1, 1, INFINITY, &e), e, "joint_rise");
	CHECK_REJECTS(vane_joint_hot_preload(-1, 1, 1, 1, 1, 1, 1, 1, 1, 1, &e), e, "preload");
	CHECK_REJECTS(vane_joint_hot_preload(1, 1, 1, 1, 1, 1, 1, 1, 0, 1, &e), e, "bolt_ratio");
	CHECK_REJECTS(vane_joint_hot_preload(1, 1, 1, 1, 1, 1, 1, 1, 1, 0, &e), e, "joint_ratio");
	/* What cannot be held in a double is no answer. */
	ck_assert(isnan(vane_joint_hot_preload(DBL_MAX, 1, 1, 1, 1, 1, 1, 1, 10, 10, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_joint_bar_stiffness(DBL_MAX, 1e-9, 1, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
}
END_TEST

SUITE("joint bolt", test_print, test_stiffness, test_stack, test_load, test_embedding, test_heat,
      test_fatigue, test_circle, test_rectangle, test_passes, test_rejects)
