#include "vane/thread.h"

#include "row.h"

#include <float.h>
#include <stdint.h>

#define PI 3.14159265358979323846
#define INCH 0.0254
#define LBF 4.4482216152605
#define KSI 6894757.2931683613

static double area(double diameter_mm, double pitch_mm)
{
	return vane_thread_stress_area(diameter_mm * 1e-3, pitch_mm * 1e-3, NULL) * 1e6;
}

static double area_inch(double diameter, double threads)
{
	return vane_thread_stress_area_unified(diameter * INCH, INCH / threads, NULL) /
	       (INCH * INCH);
}

static double pitch_diameter(double diameter_mm, double pitch_mm)
{
	return vane_thread_pitch_diameter(diameter_mm * 1e-3, pitch_mm * 1e-3, NULL) * 1e3;
}

static double root_diameter(double diameter_mm, double pitch_mm)
{
	return vane_thread_root_diameter(diameter_mm * 1e-3, pitch_mm * 1e-3, NULL) * 1e3;
}

START_TEST(test_geometry)
{
	/* B-GEO: ISO 724 / DIN 13-1, from memory. */
	const row rows[] = {
		{"B-GEO-M6 d2, ISO 724, from memory", pitch_diameter(6, 1), 5.350, 5e-4},
		{"B-GEO-M6 d3, DIN 13-1, from memory", root_diameter(6, 1), 4.773, 5e-4},
		{"B-GEO-M8 d2, ISO 724, from memory", pitch_diameter(8, 1.25), 7.188, 5e-4},
		{"B-GEO-M8 d3, DIN 13-1, from memory", root_diameter(8, 1.25), 6.466, 5e-4},
		{"B-GEO-M10 d2, ISO 724, from memory", pitch_diameter(10, 1.5), 9.026, 5e-4},
		{"B-GEO-M10 d3, DIN 13-1, from memory", root_diameter(10, 1.5), 8.160, 5e-4},
		{"B-GEO-M12 d2, ISO 724, from memory", pitch_diameter(12, 1.75), 10.863, 5e-4},
		{"B-GEO-M12 d3, DIN 13-1, from memory", root_diameter(12, 1.75), 9.853, 5e-4},
		{"B-GEO-M16 d2, ISO 724, from memory", pitch_diameter(16, 2), 14.701, 5e-4},
		{"B-GEO-M16 d3, DIN 13-1, from memory", root_diameter(16, 2), 13.546, 5e-4},
		{"B-GEO-M20 d2, ISO 724, from memory", pitch_diameter(20, 2.5), 18.376, 5e-4},
		{"B-GEO-M20 d3, DIN 13-1, from memory", root_diameter(20, 2.5), 16.933, 5e-4},
		{"M12 d1, ISO 724 (1.082532 P), from memory",
		 vane_thread_minor_diameter(0.012, 0.00175, NULL) * 1e3, 10.106, 5e-4},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_area_metric)
{
	/* Three digits: ISO 898-1 tables 4 and 6, from memory. More: Bickford, Introduction to the
	 * Design and Behavior of Bolted Joints, 4th ed., metric stress-area table. */
	const row rows[] = {
		{"B-AS-M5, ISO 898-1, from memory", area(5, 0.8), 14.2, 0.05},
		{"B-AS-M5, Bickford 4th ed.", area(5, 0.8), 14.183, 5e-4},
		{"B-AS-M6, ISO 898-1, from memory", area(6, 1), 20.1, 0.05},
		{"B-AS-M6, Bickford 4th ed.", area(6, 1), 20.123, 5e-4},
		{"B-AS-M10, ISO 898-1, from memory", area(10, 1.5), 58.0, 0.05},
		{"B-AS-M10, Bickford 4th ed.", area(10, 1.5), 57.99, 5e-3},
		{"B-AS-M16, ISO 898-1, from memory", area(16, 2), 157, 0.5},
		{"B-AS-M16, Bickford 4th ed.", area(16, 2), 156.67, 5e-3},
		{"B-AS-M20, ISO 898-1, from memory", area(20, 2.5), 245, 0.5},
		{"B-AS-M20, Bickford 4th ed.", area(20, 2.5), 244.79, 5e-3},
		{"B-AS-M8x1, ISO 898-1, from memory", area(8, 1), 39.2, 0.05},
		{"B-AS-M8x1, four-digit formula table", area(8, 1), 39.17, 5e-3},
		{"B-AS-M12x1.25, ISO 898-1, from memory", area(12, 1.25), 92.1, 0.05},
		{"B-AS-M12x1.25, four-digit formula table", area(12, 1.25), 92.07, 5e-3},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_area_unified)
{
	/* Shigley, 9th ed., table 8-2 cuts two of its values (5/16-24, 1/2-20) instead of rounding
	 * them: one whole last digit there. */
	const row rows[] = {
		{"B-UN-1_4 UNC, Shigley table 8-2", area_inch(0.25, 20), 0.0318, 5e-5},
		{"B-UN-1_4 UNF, Shigley table 8-2", area_inch(0.25, 28), 0.0364, 5e-5},
		{"B-UN-5_16 UNC, Shigley table 8-2", area_inch(0.3125, 18), 0.0524, 5e-5},
		{"B-UN-5_16 UNF, Shigley table 8-2", area_inch(0.3125, 24), 0.0580, 1e-4},
		{"B-UN-7_16 UNC, Shigley table 8-2", area_inch(0.4375, 14), 0.1063, 5e-5},
		{"B-UN-7_16 UNF, Shigley table 8-2", area_inch(0.4375, 20), 0.1187, 5e-5},
		{"B-UN-1_2 UNC, Shigley table 8-2", area_inch(0.5, 13), 0.1419, 5e-5},
		{"B-UN-1_2 UNF, Shigley table 8-2", area_inch(0.5, 20), 0.1599, 1e-4},
		{"B-UN-5_8 UNC, Shigley table 8-2", area_inch(0.625, 11), 0.226, 5e-4},
		{"B-UN-5_8 UNF, Shigley table 8-2", area_inch(0.625, 18), 0.256, 5e-4},
		{"B-UN-3_4 UNC, Shigley table 8-2", area_inch(0.75, 10), 0.334, 5e-4},
		{"B-UN-3_4 UNF, Shigley table 8-2", area_inch(0.75, 16), 0.373, 5e-4},
		{"B-UN-1 UNC, Shigley table 8-2", area_inch(1, 8), 0.606, 5e-4},
		{"B-UN-1 UNF, Shigley table 8-2", area_inch(1, 12), 0.663, 5e-4},
		{"B-H1-5_8, ASME PCC-1 table H-1", area_inch(0.625, 11), 0.2260, 5e-5},
		{"B-H1-3_4, ASME PCC-1 table H-1", area_inch(0.75, 10), 0.3345, 5e-5},
		{"B-H1-7_8, ASME PCC-1 table H-1", area_inch(0.875, 9), 0.4617, 5e-5},
		{"B-H1-1, ASME PCC-1 table H-1", area_inch(1, 8), 0.6057, 5e-5},
	};
	ROWS_CHECK(rows);
}
END_TEST

static double proof_kN(int32_t grade, double diameter_mm, double area_mm2)
{
	vane_thread_class class;
	ck_assert_int_eq(vane_thread_strength(grade, diameter_mm * 1e-3, &class, NULL), VANE_OK);
	return vane_thread_proof_load(area_mm2 * 1e-6, class.proof, NULL) * 1e-3;
}

START_TEST(test_proof_load)
{
	/* ISO 898-1:2013, table 5, from memory. The standard multiplies its three-digit areas and
	 * rounds either way: one last digit below 100 kN, half of one above. */
	const int32_t a = VANE_THREAD_8_8, b = VANE_THREAD_10_9, c = VANE_THREAD_12_9;
	const row rows[] = {
		{"B-PL-M6-8.8", proof_kN(a, 6, 20.1), 11.6, 0.1},
		{"B-PL-M8-8.8", proof_kN(a, 8, 36.6), 21.2, 0.1},
		{"B-PL-M10-8.8", proof_kN(a, 10, 58.0), 33.7, 0.1},
		{"B-PL-M12-8.8", proof_kN(a, 12, 84.3), 48.9, 0.1},
		{"B-PL-M16-8.8", proof_kN(a, 16, 157), 91.0, 0.1},
		{"B-PL-M20-8.8", proof_kN(a, 20, 245), 147, 0.5},
		{"B-PL-M6-10.9", proof_kN(b, 6, 20.1), 16.7, 0.1},
		{"B-PL-M8-10.9", proof_kN(b, 8, 36.6), 30.4, 0.1},
		{"B-PL-M10-10.9", proof_kN(b, 10, 58.0), 48.1, 0.1},
		{"B-PL-M12-10.9", proof_kN(b, 12, 84.3), 70.0, 0.1},
		{"B-PL-M16-10.9", proof_kN(b, 16, 157), 130, 0.5},
		{"B-PL-M20-10.9", proof_kN(b, 20, 245), 203, 0.5},
		{"B-PL-M6-12.9", proof_kN(c, 6, 20.1), 19.5, 0.1},
		{"B-PL-M8-12.9", proof_kN(c, 8, 36.6), 35.5, 0.1},
		{"B-PL-M10-12.9", proof_kN(c, 10, 58.0), 56.3, 0.1},
		{"B-PL-M12-12.9", proof_kN(c, 12, 84.3), 81.8, 0.1},
		{"B-PL-M16-12.9", proof_kN(c, 16, 157), 152, 0.5},
		{"B-PL-M20-12.9", proof_kN(c, 20, 245), 238, 0.5},
		{"B-SMF, Shigley 8th ed. p. 221", 0.75 * proof_kN(b, 10, 58.0), 36.1, 0.05},
	};
	ROWS_CHECK(rows);
}
END_TEST

static void check_class(int32_t grade, double diameter, double unit, double proof, double yield,
			double tensile)
{
	vane_error error;
	vane_thread_class class;
	ck_assert_int_eq(vane_thread_strength(grade, diameter, &class, &error), VANE_OK);
	ck_assert_int_eq(error.code, VANE_OK);
	CHECK_NEAR(class.proof, proof * unit, 1e-15);
	CHECK_NEAR(class.yield, yield * unit, 1e-15);
	CHECK_NEAR(class.tensile, tensile * unit, 1e-15);
}

START_TEST(test_strength)
{
	/* B-SP: ISO 898-1, table 3, from memory. */
	check_class(VANE_THREAD_8_8, 0.0016, 1e6, 580, 640, 800);
	check_class(VANE_THREAD_8_8, 16 * 1e-3, 1e6, 580, 640, 800);
	check_class(VANE_THREAD_8_8, 0.018, 1e6, 600, 660, 830);
	check_class(VANE_THREAD_10_9, 0.012, 1e6, 830, 940, 1040);
	check_class(VANE_THREAD_12_9, 0.039, 1e6, 970, 1100, 1220);
	/* B-J429: SAE J429 as Shigley and Mischke, 5th ed., p. 341. */
	check_class(VANE_THREAD_SAE_2, 0.25 * INCH, KSI, 55, 57, 74);
	check_class(VANE_THREAD_SAE_2, 0.75 * INCH, KSI, 55, 57, 74);
	check_class(VANE_THREAD_SAE_2, 0.875 * INCH, KSI, 33, 36, 60);
	check_class(VANE_THREAD_SAE_5, 0.25 * INCH, KSI, 85, 92, 120);
	check_class(VANE_THREAD_SAE_5, 1 * INCH, KSI, 85, 92, 120);
	check_class(VANE_THREAD_SAE_5, 1.125 * INCH, KSI, 74, 81, 105);
	check_class(VANE_THREAD_SAE_8, 0.25 * INCH, KSI, 120, 130, 150);
	check_class(VANE_THREAD_SAE_8, 1.5 * INCH, KSI, 120, 130, 150);
}
END_TEST

START_TEST(test_strength_rejects)
{
	const struct {
		int32_t grade;
		double diameter;
		const char *name;
		int32_t status;
	} bad[] = {
		{0, 0.012, "grade", VANE_INVALID_ARGUMENT},
		{26, 0.012, "grade", VANE_INVALID_ARGUMENT},
		{INT32_MIN, 0.012, "grade", VANE_INVALID_ARGUMENT},
		{INT32_MAX, 0.012, "grade", VANE_INVALID_ARGUMENT},
		{VANE_THREAD_8_8, 0.0015, "diameter", VANE_INVALID_ARGUMENT},
		{VANE_THREAD_10_9, 0.042, "diameter", VANE_NO_SOLUTION},
		{VANE_THREAD_12_9, NAN, "diameter", VANE_INVALID_ARGUMENT},
		{VANE_THREAD_12_9, INFINITY, "diameter", VANE_INVALID_ARGUMENT},
		{VANE_THREAD_SAE_2, 0.19 * INCH, "diameter", VANE_NO_SOLUTION},
		{VANE_THREAD_SAE_5, 1.75 * INCH, "diameter", VANE_NO_SOLUTION},
		{VANE_THREAD_SAE_8, -1, "diameter", VANE_INVALID_ARGUMENT},
		{VANE_THREAD_SAE_8, NAN, "diameter", VANE_INVALID_ARGUMENT},
	};
	for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
		vane_error error;
		vane_thread_class out = {1, 1, 1, 1};
		ck_assert_int_eq(vane_thread_strength(bad[i].grade, bad[i].diameter, &out, &error),
				 bad[i].status);
		ck_assert_int_eq(error.code, bad[i].status);
		ck_assert_str_eq(error.name, bad[i].name);
		ck_assert(isnan(out.proof) && isnan(out.yield) && isnan(out.tensile));
	}
	vane_error error;
	ck_assert_int_eq(vane_thread_strength(VANE_THREAD_8_8, 0.012, NULL, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
}
END_TEST

static double factor_unified(double diameter, double threads)
{
	const double d = diameter * INCH, pitch = INCH / threads;
	return vane_thread_nut_factor(d, pitch, vane_thread_pitch_diameter(d, pitch, NULL), 0.15,
				      0.15, 1.25 * d, NULL);
}

START_TEST(test_torque)
{
	/* Torque is homogeneous in length and force, so inch rows are in inch and lbf. B-MOT
	 * compares with another short form, hence half a percent; B-J95 and B-J93 are cut. */
	const row rows[] = {
		{"B-S83b, Shigley 9th ed. example 8-3(b), from memory",
		 vane_thread_torque_nut_factor(25000, 0.2, 0.75, NULL), 3750, 0.5},
		{"B-S83c, Shigley 9th ed. example 8-3(c), from memory",
		 vane_thread_torque_exact(25000, 1 / 16.0, 0.7094, 0.15, 0.15, 1.25 * 0.75, NULL),
		 3551, 0.5},
		{"B-K15 1/4-20, Shigley ch. 8 statement, from memory", factor_unified(0.25, 20),
		 0.202, 5e-4},
		{"B-K15 3/4-16, Shigley ch. 8 statement, from memory", factor_unified(0.75, 16),
		 0.189, 5e-4},
		{"B-J93, Jindal, Machine Design, example 9-3",
		 vane_thread_nut_factor(18, 2.5, (18 + root_diameter(18, 2.5)) / 2, 0.15, 0.13,
					1.25 * 18, NULL),
		 0.18343, 1e-5},
		{"B-J95, Jindal, Machine Design, example 9-5",
		 vane_thread_torque_nut_factor(0.75 * vane_thread_proof_load(115e-6, 650e6, NULL),
					       0.2, 0.014, NULL),
		 156.97, 0.01},
		{"B-W61, Wentzell, Machine Design, example 6.1",
		 vane_thread_torque_nut_factor(0.85 * vane_thread_proof_load(0.334, 85000, NULL),
					       0.2, 0.75, NULL),
		 3619.7, 0.05},
		{"B-MOT, VDI 2230 short form 0.16 P + 0.58 d2 mu + DK/2 mu, from memory",
		 vane_thread_torque(1, 1.5, pitch_diameter(10, 1.5), 0.12, 0.12, 12.735, NULL),
		 1.63231, 0.005 * 1.63231},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_trade_torque)
{
	/* Common practice, no source: 75 to 80 lbf.ft on a 1/2-13 grade 5 bolt is near 75 % of
	 * proof. */
	vane_thread_class class;
	ck_assert_int_eq(vane_thread_strength(VANE_THREAD_SAE_5, 0.5 * INCH, &class, NULL),
			 VANE_OK);
	const double proof = vane_thread_proof_load(
		vane_thread_stress_area_unified(0.5 * INCH, INCH / 13, NULL), class.proof, NULL);
	for (double foot_pounds = 75; foot_pounds <= 80; foot_pounds += 5) {
		const double fraction =
			vane_thread_preload_nut_factor(foot_pounds * 12 * INCH * LBF, 0.2,
						       0.5 * INCH, NULL) /
			proof;
		ck_assert(fraction > 0.70 && fraction < 0.82);
	}
}
END_TEST

START_TEST(test_tightening_stress)
{
	/* Own calculation, mpmath: M12x1.75, 75 N.m, friction 0.12, the tables' d2 = 10.863 mm,
	 * d1 = 10.106 mm, As = 84.3 mm2. */
	const double preload = vane_thread_preload(75, 0.00175, 0.010863, 0.12, 0.12, 0.0155, NULL);
	const double torque = vane_thread_torque(preload, 0.00175, 0.010863, 0.12, 0, 0.0155, NULL);
	const double tensile = vane_thread_tensile_stress(preload, 84.3e-6, NULL);
	const double between = vane_thread_shear_stress(torque, (0.010863 + 0.010106) / 2, NULL);
	const double shear = vane_thread_shear_stress(
		torque, vane_thread_stress_diameter(0.012, 0.00175, NULL), NULL);
	const row rows[] = {
		{"preload, mpmath", preload, 38243.2213, 5e-5},
		{"tensile, mpmath", tensile * 1e-6, 453.656, 5e-4},
		{"shear at (d1 + d2)/2, mpmath", between * 1e-6, 174.259, 5e-4},
		{"von Mises at (d1 + d2)/2, mpmath",
		 vane_thread_von_mises(tensile, between, NULL) * 1e-6, 544.888, 5e-4},
		{"shear at the stress diameter, mpmath", shear * 1e-6, 180.713633637, 5e-9},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_limits)
{
	/* Without friction the bolt is a screw jack: T = F P / (2 pi). */
	CHECK_NEAR(vane_thread_preload(50, 0.002, 0.0147, 0, 0, 0.02, NULL), 2 * PI * 50 / 0.002,
		   1e-15);
	CHECK_NEAR(vane_thread_torque(1e4, 0.002, 0.0147, 0, 0, 0.02, NULL), 1e4 * 0.002 / (2 * PI),
		   1e-15);
	/* A preload and its torque undo each other. */
	for (double f = 0; f < 0.5; f += 0.07) {
		const double t = vane_thread_torque(3e4, 0.0015, 0.009, f, 0.5 - f, 0.013, NULL);
		CHECK_NEAR(vane_thread_preload(t, 0.0015, 0.009, f, 0.5 - f, 0.013, NULL), 3e4,
			   1e-15);
		const double k = vane_thread_torque_nut_factor(3e4, 0.1 + f, 0.01, NULL);
		CHECK_NEAR(vane_thread_preload_nut_factor(k, 0.1 + f, 0.01, NULL), 3e4, 1e-15);
	}
	ck_assert(vane_thread_preload(0, 0.0015, 0.009, 0.1, 0.1, 0.013, NULL) == 0);
	/* Diameters nest, and the stress diameter is the mean of d2 and d3. */
	const double d2 = vane_thread_pitch_diameter(0.01, 0.0015, NULL);
	const double d3 = vane_thread_root_diameter(0.01, 0.0015, NULL);
	const double d1 = vane_thread_minor_diameter(0.01, 0.0015, NULL);
	ck_assert(0.01 > d2 && d2 > d1 && d1 > d3 && d3 > 0);
	const double d0 = vane_thread_stress_diameter(0.01, 0.0015, NULL);
	CHECK_NEAR(d0, (d2 + d3) / 2, 1e-15);
	CHECK_NEAR(vane_thread_stress_area(0.01, 0.0015, NULL), PI / 4 * d0 * d0, 1e-15);
	/* A fine pitch takes nothing off the bar. */
	CHECK_NEAR(vane_thread_stress_area(0.01, 1e-20, NULL), PI / 4 * 1e-4, 1e-15);
	CHECK_NEAR(vane_thread_stress_area_unified(0.01, 1e-20, NULL), PI / 4 * 1e-4, 1e-15);
	ck_assert(vane_thread_von_mises(3e8, 0, NULL) == 3e8);
	CHECK_NEAR(vane_thread_von_mises(0, 1e8, NULL), 1e8 * sqrt(3), 1e-15);
}
END_TEST

START_TEST(test_rejects)
{
	typedef double geometry(double, double, vane_error *);
	geometry *const all[] = {
		vane_thread_pitch_diameter, vane_thread_minor_diameter,
		vane_thread_root_diameter,  vane_thread_stress_diameter,
		vane_thread_stress_area,    vane_thread_stress_area_unified,
	};
	const double bad[] = {-1, NAN, INFINITY, -INFINITY};
	vane_error e;
	for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
		CHECK_REJECTS(all[i](0.01, 0, &e), e, "pitch");
		CHECK_REJECTS(all[i](0.01226, 0.01, &e), e, "diameter");
		ck_assert(all[i](0.01227, 0.01, &e) > 0);
		ck_assert_int_eq(e.code, VANE_OK);
		for (size_t k = 0; k < 4; k++) {
			const double x = bad[k];
			CHECK_REJECTS(all[i](x, 0.001, &e), e, "diameter");
			CHECK_REJECTS(all[i](0.01, x, &e), e, "pitch");
		}
	}
	for (size_t k = 0; k < 4; k++) {
		const double x = bad[k];
		CHECK_REJECTS(vane_thread_torque(x, 1, 1, 1, 1, 1, &e), e, "preload");
		CHECK_REJECTS(vane_thread_torque(1, x, 1, 1, 1, 1, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_torque(1, 1, x, 1, 1, 1, &e), e, "pitch_diameter");
		CHECK_REJECTS(vane_thread_torque(1, 1, 1, x, 1, 1, &e), e, "thread_friction");
		CHECK_REJECTS(vane_thread_torque(1, 1, 1, 1, x, 1, &e), e, "bearing_friction");
		CHECK_REJECTS(vane_thread_torque(1, 1, 1, 1, 1, x, &e), e, "bearing_diameter");
		CHECK_REJECTS(vane_thread_preload(x, 1, 1, 1, 1, 1, &e), e, "torque");
		CHECK_REJECTS(vane_thread_preload(1, x, 1, 1, 1, 1, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_preload(1, 1, x, 1, 1, 1, &e), e, "pitch_diameter");
		CHECK_REJECTS(vane_thread_preload(1, 1, 1, x, 1, 1, &e), e, "thread_friction");
		CHECK_REJECTS(vane_thread_preload(1, 1, 1, 1, x, 1, &e), e, "bearing_friction");
		CHECK_REJECTS(vane_thread_preload(1, 1, 1, 1, 1, x, &e), e, "bearing_diameter");
		CHECK_REJECTS(vane_thread_torque_nut_factor(x, 1, 1, &e), e, "preload");
		CHECK_REJECTS(vane_thread_torque_nut_factor(1, x, 1, &e), e, "nut_factor");
		CHECK_REJECTS(vane_thread_torque_nut_factor(1, 1, x, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_preload_nut_factor(x, 1, 1, &e), e, "torque");
		CHECK_REJECTS(vane_thread_preload_nut_factor(1, x, 1, &e), e, "nut_factor");
		CHECK_REJECTS(vane_thread_preload_nut_factor(1, 1, x, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_proof_load(x, 1, &e), e, "stress_area");
		CHECK_REJECTS(vane_thread_proof_load(1, x, &e), e, "proof_stress");
		CHECK_REJECTS(vane_thread_tensile_stress(x, 1, &e), e, "force");
		CHECK_REJECTS(vane_thread_tensile_stress(1, x, &e), e, "stress_area");
		CHECK_REJECTS(vane_thread_shear_stress(x, 1, &e), e, "torque");
		CHECK_REJECTS(vane_thread_shear_stress(1, x, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_von_mises(x, 1, &e), e, "tensile_stress");
		CHECK_REJECTS(vane_thread_von_mises(1, x, &e), e, "shear_stress");
	}
	CHECK_REJECTS(vane_thread_preload_nut_factor(1, 0, 1, &e), e, "nut_factor");
	CHECK_REJECTS(vane_thread_shear_stress(1, 0, &e), e, "diameter");
	ck_assert(isnan(vane_thread_preload(1, 0, 1, 1, 1, 1, NULL)));
}
END_TEST

START_TEST(test_overflow)
{
	vane_error e;
	ck_assert(isnan(vane_thread_stress_area(1e200, 1, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
	/* An arm too long for a double must not come out as no preload at all. */
	ck_assert(isnan(vane_thread_preload(1, 1, 1e300, 1e300, 1, 1, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_thread_torque(1e300, 1e300, 1, 0, 0, 1, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_thread_von_mises(DBL_MAX, DBL_MAX, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
	/* Parts that overflow on the way to an ordinary result do not matter. */
	CHECK_NEAR(vane_thread_shear_stress(1e300, 1e110, NULL), 16 / PI * 1e-30, 1e-14);
	CHECK_NEAR(vane_thread_preload_nut_factor(1e300, 1e200, 1e200, NULL), 1e-100, 1e-14);
}
END_TEST

SUITE("thread", test_geometry, test_area_metric, test_area_unified, test_proof_load, test_strength,
      test_strength_rejects, test_torque, test_trade_torque, test_tightening_stress, test_limits,
      test_rejects, test_overflow)
