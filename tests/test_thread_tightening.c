/* Sizes, tables, tightening and stripping: what a bolt is, and what a wrench does to it. */
#include "vane/thread.h"

#include "row.h"

#include <float.h>
#include <stdint.h>
#include <string.h>

#define PI 3.14159265358979323846
#define INCH 0.0254
#define LBF 4.4482216152605
#define KSI 6894757.2931683613

static vane_thread_size size(int32_t series, double diameter)
{
	vane_error error;
	vane_thread_size out;
	ck_assert_int_eq(vane_thread_find(series, diameter, &out, &error), VANE_OK);
	ck_assert_int_eq(error.code, VANE_OK);
	return out;
}

START_TEST(test_sizes_metric)
{
	/* Pitch, d2, d3: ISO 262, ISO 724, DIN 13-1, from memory. Areas: three digits ISO 898-1
	 * tables 4 and 6, from memory; more digits Bickford, Introduction to the Design and Behavior
	 * of Bolted Joints, 4th ed. */
	const struct {
		const char *name;
		int32_t series;
		double diameter, pitch, pitch_diameter, root_diameter, area, area_half, fine,
			fine_half;
	} sizes[] = {
		/* clang-format off */
		{"M3", VANE_THREAD_COARSE, 3, 0.5, 2.675, 2.387, 5.03, 0.005, 0, 0},
		{"M4", VANE_THREAD_COARSE, 4, 0.7, 3.545, 3.141, 8.78, 0.005, 0, 0},
		{"M5", VANE_THREAD_COARSE, 5, 0.8, 4.480, 4.019, 14.2, 0.05, 14.183, 0.0005},
		{"M6", VANE_THREAD_COARSE, 6, 1, 5.350, 4.773, 20.1, 0.05, 20.123, 0.0005},
		{"M8", VANE_THREAD_COARSE, 8, 1.25, 7.188, 6.466, 36.6, 0.05, 36.609, 0.0005},
		{"M10", VANE_THREAD_COARSE, 10, 1.5, 9.026, 8.160, 58, 0.05, 57.99, 0.005},
		{"M12", VANE_THREAD_COARSE, 12, 1.75, 10.863, 9.853, 84.3, 0.05, 84.267, 0.0005},
		{"M14", VANE_THREAD_COARSE, 14, 2, 12.701, 11.546, 115, 0.5, 115.44, 0.005},
		{"M16", VANE_THREAD_COARSE, 16, 2, 14.701, 13.546, 157, 0.5, 156.67, 0.005},
		{"M18", VANE_THREAD_COARSE, 18, 2.5, 16.376, 14.933, 192, 0.5, 0, 0},
		{"M20", VANE_THREAD_COARSE, 20, 2.5, 18.376, 16.933, 245, 0.5, 244.79, 0.005},
		{"M22", VANE_THREAD_COARSE, 22, 2.5, 20.376, 18.933, 303, 0.5, 303.4, 0.05},
		{"M24", VANE_THREAD_COARSE, 24, 3, 22.051, 20.319, 353, 0.5, 352.5, 0.05},
		{"M27", VANE_THREAD_COARSE, 27, 3, 25.051, 23.319, 459, 0.5, 459.41, 0.005},
		{"M30", VANE_THREAD_COARSE, 30, 3.5, 27.727, 25.706, 561, 0.5, 560.59, 0.005},
		{"M36", VANE_THREAD_COARSE, 36, 4, 33.402, 31.093, 817, 0.5, 816.72, 0.005},
		{"M8x1", VANE_THREAD_FINE, 8, 1, 7.350, 6.773, 39.2, 0.05, 39.17, 0.005},
		{"M10x1.25", VANE_THREAD_FINE, 10, 1.25, 9.188, 8.466, 61.2, 0.05, 61.2, 0.05},
		{"M10x1", VANE_THREAD_FINER, 10, 1, 9.350, 8.773, 64.5, 0.05, 0, 0},
		{"M12x1.5", VANE_THREAD_FINE, 12, 1.5, 11.026, 10.160, 88.1, 0.05, 0, 0},
		{"M12x1.25", VANE_THREAD_FINER, 12, 1.25, 11.188, 10.466, 92.1, 0.05, 92.07, 0.005},
		{"M14x1.5", VANE_THREAD_FINE, 14, 1.5, 13.026, 12.160, 125, 0.5, 124.5, 0.05},
		{"M16x1.5", VANE_THREAD_FINE, 16, 1.5, 15.026, 14.160, 167, 0.5, 167.2, 0.05},
		{"M18x1.5", VANE_THREAD_FINER, 18, 1.5, 17.026, 16.160, 216, 0.5, 0, 0},
		{"M20x1.5", VANE_THREAD_FINER, 20, 1.5, 19.026, 18.160, 272, 0.5, 271.5, 0.05},
		{"M22x1.5", VANE_THREAD_FINER, 22, 1.5, 21.026, 20.160, 333, 0.5, 0, 0},
		{"M24x2", VANE_THREAD_FINE, 24, 2, 22.701, 21.546, 384, 0.5, 384.4, 0.05},
		{"M30x2", VANE_THREAD_FINE, 30, 2, 28.701, 27.546, 621, 0.5, 621.2, 0.05},
		/* clang-format on */
	};
	for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
		const vane_thread_size s = size(sizes[i].series, sizes[i].diameter * 1e-3);
		const row rows[] = {
			{sizes[i].name, s.diameter * 1e3, sizes[i].diameter, 1e-12},
			{sizes[i].name, s.pitch * 1e3, sizes[i].pitch, 1e-12},
			{sizes[i].name, s.pitch_diameter * 1e3, sizes[i].pitch_diameter, 5e-4},
			{sizes[i].name, s.root_diameter * 1e3, sizes[i].root_diameter, 5e-4},
			{sizes[i].name, s.stress_area * 1e6, sizes[i].area, sizes[i].area_half},
		};
		ROWS_CHECK(rows);
		if (sizes[i].fine > 0)
			ck_assert_msg(fabs(s.stress_area * 1e6 - sizes[i].fine) <=
					      sizes[i].fine_half,
				      "%s", sizes[i].name);
	}
}
END_TEST

START_TEST(test_sizes_unified)
{
	/* Shigley, 9th ed., table 8-2. It cuts 5/16-24 and 1/2-20 instead of rounding: one whole
	 * last digit. */
	const struct {
		const char *name;
		double diameter, coarse, area_coarse, fine, area_fine;
	} sizes[] = {
		/* clang-format off */
		{"1/4", 0.25, 20, 0.0318, 28, 0.0364},
		{"5/16", 0.3125, 18, 0.0524, 24, 0.058},
		{"3/8", 0.375, 16, 0.0775, 24, 0.0878},
		{"7/16", 0.4375, 14, 0.1063, 20, 0.1187},
		{"1/2", 0.5, 13, 0.1419, 20, 0.1599},
		{"9/16", 0.5625, 12, 0.182, 18, 0.203},
		{"5/8", 0.625, 11, 0.226, 18, 0.256},
		{"3/4", 0.75, 10, 0.334, 16, 0.373},
		{"7/8", 0.875, 9, 0.462, 14, 0.509},
		{"1", 1, 8, 0.606, 12, 0.663},
		{"1-1/4", 1.25, 7, 0.969, 12, 1.073},
		{"1-1/2", 1.5, 6, 1.405, 12, 1.581},
		/* clang-format on */
	};
	for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
		const double half = sizes[i].diameter < 0.55 ? 5e-5 : 5e-4;
		const double cut =
			strcmp(sizes[i].name, "5/16") == 0 || strcmp(sizes[i].name, "1/2") == 0 ? 2
												: 1;
		const vane_thread_size c = size(VANE_THREAD_UNC, sizes[i].diameter * INCH);
		const vane_thread_size f = size(VANE_THREAD_UNF, sizes[i].diameter * INCH);
		const row rows[] = {
			{sizes[i].name, INCH / c.pitch, sizes[i].coarse, 1e-12},
			{sizes[i].name, INCH / f.pitch, sizes[i].fine, 1e-12},
			{sizes[i].name, c.stress_area / (INCH * INCH), sizes[i].area_coarse, half},
			{sizes[i].name, f.stress_area / (INCH * INCH), sizes[i].area_fine,
			 half * cut},
		};
		ROWS_CHECK(rows);
	}
	/* Numbered sizes: 10-24, 10-32 at 0.190 in; 8-UN above an inch: ASME PCC-1 table H-1, from
	 * memory. */
	const row more[] = {
		{"10-24", INCH / size(VANE_THREAD_UNC, 0.19 * INCH).pitch, 24, 1e-12},
		{"10-32", INCH / size(VANE_THREAD_UNF, 0.19 * INCH).pitch, 32, 1e-12},
		{"1-1/8-8", size(VANE_THREAD_8_UN, 1.125 * INCH).stress_area / (INCH * INCH), 0.790,
		 5e-4},
		{"1-1/4-8", size(VANE_THREAD_8_UN, 1.25 * INCH).stress_area / (INCH * INCH), 1.000,
		 5e-4},
		{"1-1/2-8", size(VANE_THREAD_8_UN, 1.5 * INCH).stress_area / (INCH * INCH), 1.492,
		 5e-4},
		{"2-8", size(VANE_THREAD_8_UN, 2 * INCH).stress_area / (INCH * INCH), 2.77, 5e-3},
		{"1-20 UNEF", INCH / size(VANE_THREAD_UNEF, INCH).pitch, 20, 1e-12},
		{"1-1/8-12", INCH / size(VANE_THREAD_12_UN, 1.125 * INCH).pitch, 12, 1e-12},
		{"3/4-16", INCH / size(VANE_THREAD_16_UN, 0.75 * INCH).pitch, 16, 1e-12},
		{"number 0-80", size(VANE_THREAD_UNF, 0.06 * INCH).diameter / INCH, 0.06, 1e-15},
	};
	ROWS_CHECK(more);
	/* Shigley, 9th ed., table 8-2, minor-diameter area of 3/4-10: 0.302 in2. From memory. */
	const double root = size(VANE_THREAD_UNC, 0.75 * INCH).root_diameter;
	const row minor = {"minor area 3/4-10", vane_thread_area(root, NULL) / (INCH * INCH), 0.302,
			   5e-4};
	row_check(&minor);
}
END_TEST

START_TEST(test_find)
{
	/* A real M12 measures 11.7 to 11.97 over its crests. */
	ck_assert(size(VANE_THREAD_COARSE, 0.0117).diameter == 12 * 1e-3);
	ck_assert(size(VANE_THREAD_COARSE, 0.001).pitch == 0.25 * 1e-3);
	ck_assert(size(VANE_THREAD_COARSE, 0.00097).pitch == 0.25 * 1e-3);
	ck_assert(size(VANE_THREAD_UNC, 0.1016).pitch == INCH / 4);
	ck_assert(size(VANE_THREAD_UNC, 0.1046).pitch == INCH / 4);
	/* Within 3 % of 1-5/8 in too, but nearer to 1-11/16 in. */
	ck_assert(size(VANE_THREAD_UNEF, 1.67 * INCH).diameter == 1.6875 * INCH);
	ck_assert(size(VANE_THREAD_UNEF, 1.64 * INCH).diameter == 1.625 * INCH);
	vane_error error;
	vane_thread_size out;
	ck_assert_int_eq(vane_thread_find(VANE_THREAD_COARSE, 0.013, &out, &error),
			 VANE_NO_SOLUTION);
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "diameter");
	ck_assert(isnan(out.diameter) && isnan(out.stress_area));
	ck_assert_int_eq(vane_thread_find(VANE_THREAD_FINE, 0.006, &out, NULL), VANE_NO_SOLUTION);
	const double bad[] = {0, -1, NAN, INFINITY, 0.00096, 0.11};
	for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
		ck_assert_int_eq(vane_thread_find(VANE_THREAD_COARSE, bad[i], &out, &error),
				 VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(error.name, "diameter");
		ck_assert(isnan(out.pitch));
	}
	ck_assert_int_eq(vane_thread_find(0, 0.012, &out, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "series");
	ck_assert_int_eq(vane_thread_find(10, 0.012, &out, NULL), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_thread_find(1, 0.012, NULL, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
}
END_TEST

static void check_class(int32_t grade, double diameter, double unit, double proof, double yield,
			double tensile)
{
	vane_thread_class class;
	ck_assert_int_eq(vane_thread_strength(grade, diameter, &class, NULL), VANE_OK);
	CHECK_NEAR(class.proof, proof * unit, 1e-15);
	CHECK_NEAR(class.yield, yield * unit, 1e-15);
	CHECK_NEAR(class.tensile, tensile * unit, 1e-15);
}

START_TEST(test_grades)
{
	/* ISO 898-1, table 3, from memory; J429 and ASTM: Shigley and Mischke, 5th ed., p. 341, A574
	 * from memory. */
	check_class(VANE_THREAD_4_6, 0.012, 1e6, 225, 240, 400);
	check_class(VANE_THREAD_5_8, 0.012, 1e6, 380, 420, 520);
	check_class(VANE_THREAD_6_8, 0.012, 1e6, 440, 480, 600);
	check_class(VANE_THREAD_9_8, 0.016, 1e6, 650, 720, 900);
	check_class(VANE_THREAD_SAE_1, 1.5 * INCH, KSI, 33, 36, 60);
	check_class(VANE_THREAD_SAE_4, INCH, KSI, 65, 100, 115);
	check_class(VANE_THREAD_SAE_5_2, INCH, KSI, 85, 92, 120);
	check_class(VANE_THREAD_SAE_7, INCH, KSI, 105, 115, 133);
	check_class(VANE_THREAD_SAE_8_2, INCH, KSI, 120, 130, 150);
	check_class(VANE_THREAD_A307, INCH, KSI, 33, 36, 60);
	check_class(VANE_THREAD_A325, 0.5 * INCH, KSI, 85, 92, 120);
	check_class(VANE_THREAD_A325, 1.125 * INCH, KSI, 74, 81, 105);
	check_class(VANE_THREAD_A354_BC, 2.5 * INCH, KSI, 105, 109, 125);
	check_class(VANE_THREAD_A354_BD, 2.5 * INCH, KSI, 120, 130, 150);
	check_class(VANE_THREAD_A449, 1.5 * INCH, KSI, 74, 81, 105);
	check_class(VANE_THREAD_A449, 3 * INCH, KSI, 55, 58, 90);
	check_class(VANE_THREAD_A490, 1.5 * INCH, KSI, 120, 130, 150);
	check_class(VANE_THREAD_A193_B7, 1 * INCH, KSI, 105, 105, 125);
	check_class(VANE_THREAD_A574, 0.5 * INCH, KSI, 140, 162, 180);
	check_class(VANE_THREAD_A574, 0.625 * INCH, KSI, 135, 153, 170);
	vane_error error;
	vane_thread_class out;
	ck_assert_int_eq(vane_thread_strength(VANE_THREAD_9_8, 0.018, &out, &error),
			 VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "diameter");
	ck_assert_int_eq(vane_thread_strength(VANE_THREAD_A325, 0.25 * INCH, &out, &error),
			 VANE_NO_SOLUTION);
	ck_assert(isnan(out.proof));
}
END_TEST

START_TEST(test_endurance)
{
	/* Shigley, 9th ed., table 8-17; VDI 2230 sigma_ASV. Both from memory. */
	const struct {
		int32_t grade;
		double diameter, want;
	} rows[] = {
		{VANE_THREAD_SAE_5, INCH, 18.6 * KSI},
		{VANE_THREAD_SAE_5, 1.125 * INCH, 16.3 * KSI},
		{VANE_THREAD_SAE_7, INCH, 20.6 * KSI},
		{VANE_THREAD_SAE_8, INCH, 23.2 * KSI},
		{VANE_THREAD_8_8, 0.02, 129e6},
		{VANE_THREAD_9_8, 0.01, 140e6},
		{VANE_THREAD_10_9, 0.02, 162e6},
		{VANE_THREAD_12_9, 0.02, 190e6},
	};
	vane_error error;
	vane_thread_class class;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		ck_assert_int_eq(
			vane_thread_strength(rows[i].grade, rows[i].diameter, &class, NULL),
			VANE_OK);
		CHECK_NEAR(class.endurance, rows[i].want, 1e-15);
	}
	ck_assert_int_eq(vane_thread_strength(VANE_THREAD_4_6, 0.012, &class, NULL), VANE_OK);
	ck_assert(class.endurance == 0);
	ck_assert_int_eq(vane_thread_strength(VANE_THREAD_8_8, NAN, &class, NULL),
			 VANE_INVALID_ARGUMENT);
	ck_assert(isnan(class.endurance));
	CHECK_NEAR(vane_thread_endurance_rolled(0.012, NULL), 48.875e6, 1e-14);
	CHECK_NEAR(vane_thread_endurance_rolled_after(0.012, 0.7, NULL), 1.3 * 48.875e6, 1e-14);
	CHECK_REJECTS(vane_thread_endurance_rolled(0.0039, &error), error, "diameter");
	CHECK_REJECTS(vane_thread_endurance_rolled_after(0.041, 0.5, &error), error, "diameter");
	CHECK_REJECTS(vane_thread_endurance_rolled_after(0.01, 1.01, &error), error,
		      "preload_fraction");
}
END_TEST

START_TEST(test_utilization)
{
	/* VDI 2230-1:2003, table A1, class 8.8, 90 % of yield, from memory. The torques hang on the
	 * bearing face, DKm from ISO 4014 grade B and ISO 273 medium, also from memory: 1.2 %. */
	const struct {
		const char *name;
		double diameter, friction, preload, torque;
	} table[] = {
		/* clang-format off */
		{"B-VDI-M6-08", 6, 0.08, 10.7, 7.7},
		{"B-VDI-M6-10", 6, 0.10, 10.4, 9},
		{"B-VDI-M6-12", 6, 0.12, 10.2, 10.1},
		{"B-VDI-M6-14", 6, 0.14, 9.9, 11.3},
		{"B-VDI-M6-16", 6, 0.16, 9.6, 12.3},
		{"B-VDI-M6-20", 6, 0.20, 9, 14.1},
		{"B-VDI-M8-08", 8, 0.08, 19.5, 18.5},
		{"B-VDI-M8-10", 8, 0.10, 19.1, 21.6},
		{"B-VDI-M8-12", 8, 0.12, 18.6, 24.6},
		{"B-VDI-M8-14", 8, 0.14, 18.1, 27.3},
		{"B-VDI-M8-16", 8, 0.16, 17.6, 29.8},
		{"B-VDI-M8-20", 8, 0.20, 16.5, 34.3},
		{"B-VDI-M10-08", 10, 0.08, 31, 36},
		{"B-VDI-M10-10", 10, 0.10, 30.3, 43},
		{"B-VDI-M10-12", 10, 0.12, 29.6, 48},
		{"B-VDI-M10-14", 10, 0.14, 28.8, 54},
		{"B-VDI-M10-16", 10, 0.16, 27.9, 59},
		{"B-VDI-M10-20", 10, 0.20, 26.3, 68},
		{"B-VDI-M12-08", 12, 0.08, 45.2, 63},
		{"B-VDI-M12-10", 12, 0.10, 44.1, 73},
		{"B-VDI-M12-12", 12, 0.12, 43, 84},
		{"B-VDI-M12-14", 12, 0.14, 41.9, 93},
		{"B-VDI-M12-16", 12, 0.16, 40.7, 102},
		{"B-VDI-M12-20", 12, 0.20, 38.3, 117},
		{"B-VDI-M16-08", 16, 0.08, 84.7, 153},
		{"B-VDI-M16-10", 16, 0.10, 82.9, 180},
		{"B-VDI-M16-12", 16, 0.12, 80.9, 206},
		{"B-VDI-M16-14", 16, 0.14, 78.8, 230},
		{"B-VDI-M16-16", 16, 0.16, 76.6, 252},
		{"B-VDI-M16-20", 16, 0.20, 72.2, 291},
		{"B-VDI-M20-08", 20, 0.08, 136, 308},
		{"B-VDI-M20-10", 20, 0.10, 134, 363},
		{"B-VDI-M20-12", 20, 0.12, 130, 415},
		{"B-VDI-M20-14", 20, 0.14, 127, 464},
		{"B-VDI-M20-16", 20, 0.16, 123, 509},
		{"B-VDI-M20-20", 20, 0.20, 116, 588},
		/* clang-format on */
	};
	const double faces[][2] = {{8.74, 6.6},   {11.47, 9}, {14.47, 11},
				   {16.47, 13.5}, {22, 17.5}, {27.7, 22.5}};
	for (size_t i = 0; i < sizeof table / sizeof *table; i++) {
		const vane_thread_size s = size(VANE_THREAD_COARSE, table[i].diameter * 1e-3);
		vane_thread_class class;
		ck_assert_int_eq(vane_thread_strength(VANE_THREAD_8_8, s.diameter, &class, NULL),
				 VANE_OK);
		const double mu = table[i].friction;
		const double stress = vane_thread_stress_diameter(s.diameter, s.pitch, NULL);
		const double preload = vane_thread_preload_utilization(
			0.9, class.yield, s.pitch, s.pitch_diameter, stress, mu, NULL);
		const double bearing = vane_thread_bearing_diameter(faces[i / 6][0] * 1e-3,
								    faces[i / 6][1] * 1e-3, NULL);
		const row rows[] = {
			{table[i].name, preload * 1e-3, table[i].preload,
			 table[i].preload < 100 ? 0.06 : 0.6},
			{table[i].name,
			 vane_thread_torque_exact(preload, s.pitch, s.pitch_diameter, mu, mu,
						  bearing, NULL),
			 table[i].torque, 0.012 * table[i].torque},
		};
		ROWS_CHECK(rows);
		CHECK_NEAR(vane_thread_utilization(preload, class.yield, s.pitch, s.pitch_diameter,
						   stress, mu, NULL),
			   0.9, 1e-14);
	}
	/* Without torsion 90 % is 90 %. */
	const double free = vane_thread_preload_utilization(0.9, 640e6, 1e-12, 0.01, 0.01, 0, NULL);
	CHECK_NEAR(free, 0.9 * 640e6 * PI / 4 * 1e-4, 1e-12);
}
END_TEST

START_TEST(test_tightening_factor)
{
	/* VDI 2230 table A8, from memory. */
	const row rows[] = {
		{"B-AA1.4", vane_thread_tightening_factor(0.17, NULL), 1.4, 0.03},
		{"B-AA1.6", vane_thread_tightening_factor(0.23, NULL), 1.6, 0.03},
		{"B-AA1.8", vane_thread_tightening_factor(0.28, NULL), 1.8, 0.03},
		{"B-AA1.2", vane_thread_tightening_factor(0.09, NULL), 1.2, 0.03},
		{"B-AA1.3", vane_thread_tightening_factor(0.12, NULL), 1.3, 0.03},
		{"1.6 back", vane_thread_factor_scatter(1.6, NULL), 0.23, 5e-3},
		{"1.8 back", vane_thread_factor_scatter(1.8, NULL), 0.28, 6e-3},
	};
	ROWS_CHECK(rows);
	const struct {
		int32_t way;
		double low, high, scatter_low, scatter_high;
	} ways[] = {
		{VANE_THREAD_BY_YIELD, 1.2, 1.4, 0.09, 0.17},
		{VANE_THREAD_BY_ANGLE, 1.2, 1.4, 0.09, 0.17},
		{VANE_THREAD_BY_HYDRAULICS, 1.2, 1.6, 0.09, 0.23},
		{VANE_THREAD_BY_TRIAL, 1.4, 1.6, 0.17, 0.23},
		{VANE_THREAD_BY_ESTIMATE, 1.6, 1.8, 0.23, 0.28},
		{VANE_THREAD_BY_IMPACT, 2.5, 4, 0.43, 0.60},
	};
	vane_error error;
	vane_thread_accuracy out;
	for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
		ck_assert_int_eq(vane_thread_tightening_accuracy(ways[i].way, &out, NULL), VANE_OK);
		ck_assert(out.factor_low == ways[i].low && out.factor_high == ways[i].high);
		ck_assert(fabs(out.scatter_low - ways[i].scatter_low) < 6e-3);
		ck_assert(fabs(out.scatter_high - ways[i].scatter_high) < 6e-3);
	}
	ck_assert_int_eq(vane_thread_tightening_accuracy(7, &out, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "tightening");
	ck_assert(isnan(out.factor_low) && isnan(out.scatter_high));
	ck_assert_int_eq(vane_thread_tightening_accuracy(1, NULL, NULL), VANE_INVALID_ARGUMENT);
	CHECK_REJECTS(vane_thread_tightening_factor(1, &error), error, "scatter");
	CHECK_REJECTS(vane_thread_factor_scatter(0.9, &error), error, "tightening_factor");
}
END_TEST

START_TEST(test_finish)
{
	/* B-T15: Shigley, 9th ed., table 8-15. */
	const double want[] = {0.30, 0.20, 0.18, 0.16, 0.12, 0.09};
	vane_error error;
	double got;
	for (int32_t i = VANE_THREAD_BLACK; i <= VANE_THREAD_LOW_GRIP; i++) {
		ck_assert_int_eq(vane_thread_finish_factor(i, &got, NULL), VANE_OK);
		ck_assert(got == want[i - 1]);
	}
	ck_assert_int_eq(vane_thread_finish_factor(0, &got, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "finish");
	ck_assert(isnan(got));
	ck_assert_int_eq(vane_thread_finish_factor(1, NULL, NULL), VANE_INVALID_ARGUMENT);
}
END_TEST

START_TEST(test_sample)
{
	/* B-T13: Shigley, 9th ed., table 8-13, twenty bolts as received at 90 N.m, kN; the readings
	 * from memory. */
	double preload[] = {23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8,
			    34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0, 40.5, 42.7};
	const int64_t n = sizeof preload / sizeof *preload;
	vane_error error;
	vane_thread_sample out;
	ck_assert_int_eq(vane_thread_preload_sample(preload, n, &out, &error), VANE_OK);
	const row rows[] = {
		{"B-T13 mean", out.mean, 34.3, 0.05},
		{"B-T13 standard deviation", out.deviation, 4.91, 0.005},
		{"least", out.least, 23.6, 0},
		{"greatest", out.greatest, 42.7, 0},
		{"factor", out.factor, 42.7 / 23.6, 1e-15},
		{"scatter", out.scatter, (42.7 - 23.6) / (42.7 + 23.6), 1e-15},
	};
	ROWS_CHECK(rows);
	/* Alike to the last bit, and huge: no spread, no overflow. */
	for (int i = 0; i < n; i++)
		preload[i] = 1e308;
	ck_assert_int_eq(vane_thread_preload_sample(preload, n, &out, &error), VANE_OK);
	ck_assert(out.mean == 1e308 && out.deviation == 0 && out.factor == 1 && out.scatter == 0);
	preload[3] = DBL_MIN;
	ck_assert_int_eq(vane_thread_preload_sample(preload, n, &out, &error), VANE_OUT_OF_RANGE);
	ck_assert(isnan(out.mean) && isnan(out.factor));
	preload[3] = 0;
	ck_assert_int_eq(vane_thread_preload_sample(preload, n, &out, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "preload");
	ck_assert_int_eq(error.index, 3);
	ck_assert_int_eq(vane_thread_preload_sample(preload, 1, &out, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "readings");
	ck_assert_int_eq(vane_thread_preload_sample(NULL, n, &out, &error), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_thread_preload_sample(preload, n, NULL, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
}
END_TEST

START_TEST(test_low_and_high)
{
	/* Own calculation, mpmath: M12x1.75, 75 N.m, frictions 0.12 and 0.10 off by 20 %. */
	const row rows[] = {
		{"low",
		 vane_thread_preload_low(75, 0.25, 0.2, 0.00175, 0.010863, 0.12, 0.10, 0.0155,
					 NULL),
		 26637.88656430688, 1e-10},
		{"high",
		 vane_thread_preload_high(75, 0.25, 0.2, 0.00175, 0.010863, 0.12, 0.10, 0.0155,
					  NULL),
		 62474.60515861675, 1e-10},
		{"chance", vane_thread_scatter(0.3, 0.5, 0.2, NULL), 0.5, 1e-15},
	};
	ROWS_CHECK(rows);
	const double as_is = vane_thread_preload(75, 0.00175, 0.0109, 0.12, 0.1, 0.0155, NULL);
	ck_assert(vane_thread_preload_low(75, 0, 0, 0.00175, 0.0109, 0.12, 0.1, 0.0155, NULL) ==
		  as_is);
	ck_assert(vane_thread_preload_high(75, 0, 0, 0.00175, 0.0109, 0.12, 0.1, 0.0155, NULL) ==
		  as_is);
	ck_assert(vane_thread_scatter(0.25, 0.5, 1, NULL) == 0.25);
	/* The scatter by chance is what small scatters do to the preload. */
	vane_thread_parts p;
	ck_assert_int_eq(
		vane_thread_torque_parts(3e4, 0.00175, 0.0109, 0.12, 0.1, 0.0155, &p, NULL),
		VANE_OK);
	const double low =
		vane_thread_preload_low(75, 0, 1e-6, 0.00175, 0.0109, 0.12, 0.1, 0.0155, NULL);
	CHECK_NEAR((as_is - low) / as_is, vane_thread_scatter(0, 1e-6, p.efficiency, NULL), 1e-5);
	vane_error e;
	CHECK_REJECTS(vane_thread_preload_low(75, 1, 0, 1, 1, 1, 1, 1, &e), e, "torque_scatter");
	CHECK_REJECTS(vane_thread_preload_high(75, 0, -1, 1, 1, 1, 1, 1, &e), e,
		      "friction_scatter");
	CHECK_REJECTS(vane_thread_preload_low(-1, 0, 0, 1, 1, 1, 1, 1, &e), e, "torque");
	CHECK_REJECTS(vane_thread_preload_low(1, 0, 0, 1, 1, -1, 1, 1, &e), e, "thread_friction");
	CHECK_REJECTS(vane_thread_preload_high(1, 0, 0, 1, 1, 1, NAN, 1, &e), e,
		      "bearing_friction");
	CHECK_REJECTS(vane_thread_preload_high(1, 0, 0, 1, 1, 1, 1, 0, &e), e, "bearing_diameter");
	CHECK_REJECTS(vane_thread_scatter(0, 0, 1.1, &e), e, "efficiency");
	ck_assert(isnan(vane_thread_preload_low(1, 0, 0.9, 1, 1e-300, DBL_MAX, 0, 1, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
}
END_TEST

START_TEST(test_parts)
{
	/* Own calculation, mpmath. */
	vane_error error;
	vane_thread_parts p;
	ck_assert_int_eq(
		vane_thread_torque_parts(30000, 0.00175, 0.010863, 0.12, 0.10, 0.0155, &p, &error),
		VANE_OK);
	const row rows[] = {
		{"pitch", p.pitch, 8.355634512324505, 1e-14},
		{"thread", p.thread, 22.57832150714486, 1e-14},
		{"bearing", p.bearing, 23.25, 1e-14},
		{"torque", p.torque, 54.18395601946936, 1e-14},
		{"shank", p.shank, 8.355634512324505 + 22.57832150714486, 1e-14},
		{"loosening", p.loosening, 23.25 + 22.57832150714486 - 8.355634512324505, 2e-14},
		{"efficiency", p.efficiency, 8.355634512324505 / 54.18395601946936, 1e-15},
	};
	ROWS_CHECK(rows);
	ck_assert(p.torque ==
		  vane_thread_torque(30000, 0.00175, 0.010863, 0.12, 0.10, 0.0155, NULL));
	ck_assert_int_eq(vane_thread_torque_parts(1, 1, 1, 0, 0, 1, &p, NULL), VANE_OK);
	ck_assert(p.efficiency == 1 && p.loosening == -p.torque);
	ck_assert_int_eq(vane_thread_torque_parts(1e300, 1e300, 1, 0, 0, 1, &p, &error),
			 VANE_OUT_OF_RANGE);
	ck_assert(isnan(p.pitch) && isnan(p.efficiency));
	ck_assert_int_eq(vane_thread_torque_parts(0, 1, 1, 0, 0, 1, &p, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "preload");
	ck_assert(isnan(p.torque));
	ck_assert_int_eq(vane_thread_torque_parts(1, 1, 1, 0, 0, 1, NULL, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
}
END_TEST

START_TEST(test_turn)
{
	const row rows[] = {
		{"B-W62, Wentzell, Machine Design, example 6.2, deg",
		 vane_thread_turn_angle(vane_thread_stretch(0.85 * 85000, 5, 30e6, NULL), 0.1,
					NULL) *
			 180 / PI,
		 43.35, 5e-3},
		{"B-W64, Wentzell, Machine Design, example 6.4, stud torque",
		 vane_thread_torque_nut_factor(0.9 * vane_thread_proof_load(1.073, 120000, NULL),
					       0.15, 1.25, NULL),
		 21728.25, 0.005},
		{"lead angle of 3/4-16, Shigley 9th ed. example 8-3(c): tan 0.02804",
		 tan(vane_thread_lead_angle(1 / 16.0, 0.7094, NULL)), 0.02804, 5e-6},
	};
	ROWS_CHECK(rows);
	/* Without friction nothing but the lead is left, exact or not. */
	CHECK_NEAR(vane_thread_torque_exact(1e4, 0.002, 0.0147, 0, 0, 0.02, NULL),
		   1e4 * 0.002 / (2 * PI), 1e-15);
	for (double f = 0; f <= 1; f += 0.0625) {
		const double t =
			vane_thread_torque_exact(3e4, 0.0015, 0.009, f, 1 - f, 0.013, NULL);
		CHECK_NEAR(vane_thread_preload_exact(t, 0.0015, 0.009, f, 1 - f, 0.013, NULL), 3e4,
			   1e-15);
		CHECK_NEAR(vane_thread_nut_factor(0.01, 0.0015, 0.009, f, 1 - f, 0.013, NULL),
			   t / 3e4 / 0.01, 1e-15);
		ck_assert(t >= vane_thread_torque(3e4, 0.0015, 0.009, f, 1 - f, 0.013, NULL) *
				       (1 - 1e-15));
	}
	/* The thread's part is F d2/2 tan(phi + rho'). */
	const double phi = vane_thread_lead_angle(0.0015, 0.009, NULL);
	CHECK_NEAR(vane_thread_torque_exact(1e4, 0.0015, 0.009, 0.12, 0, 0.01, NULL),
		   1e4 * 0.0045 * tan(phi + atan(0.12 / cos(PI / 6))), 1e-14);
}
END_TEST

START_TEST(test_geometry)
{
	/* ASME B1.1 writes 1/2-13 with its basic pitch diameter of 0.4500 in; ISO 888, ASME B18.2.1
	 * lengths of thread, from memory. */
	const row rows[] = {
		{"1/2-13, both forms",
		 vane_thread_stress_area_strong(0.5 - 0.649519052838 / 13, 1 / 13.0, NULL),
		 vane_thread_stress_area_unified(0.5, 1 / 13.0, NULL), 1e-12},
		{"M12, 80 long", vane_thread_length(0.012, 0.08, NULL) * 1e3, 30, 1e-12},
		{"M12, 125 long", vane_thread_length(0.012, 0.125, NULL) * 1e3, 30, 1e-12},
		{"M12, 160 long", vane_thread_length(0.012, 0.16, NULL) * 1e3, 36, 1e-12},
		{"M12, 220 long", vane_thread_length(0.012, 0.22, NULL) * 1e3, 49, 1e-12},
		{"1/2, 4 long", vane_thread_length_inch(0.5 * INCH, 4 * INCH, NULL) / INCH, 1.25,
		 1e-14},
		{"1/2, 7 long", vane_thread_length_inch(0.5 * INCH, 7 * INCH, NULL) / INCH, 1.5,
		 1e-14},
	};
	ROWS_CHECK(rows);
	/* Near the least diameter the digits are still there: mpmath. */
	CHECK_NEAR(vane_thread_root_diameter(1.2269, 1, NULL), 3.0677972045352026e-5, 1e-15);
}
END_TEST

START_TEST(test_strip)
{
	/* Own calculation, mpmath, from FED-STD-H28's formulas: M12x1.75, 12 mm engaged. */
	const double d = 0.012, d2 = 0.01086334, d1 = 0.01010557, pitch = 0.00175;
	const double bolt = vane_thread_shear_area_external(0.012, pitch, d1, d2, NULL);
	const double nut = vane_thread_shear_area_internal(0.012, pitch, d2, d, NULL);
	const row rows[] = {
		{"external", bolt * 1e6, 285.7279801793954, 1e-11},
		{"internal", nut * 1e6, 395.840921738732, 1e-11},
		{"force", vane_thread_strip_force(bolt, 4e8, NULL), 285.7279801793954e-6 * 4e8,
		 1e-8},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(vane_thread_engagement_external(bolt * 4e8, 4e8, pitch, d1, d2, NULL), 0.012,
		   1e-15);
	CHECK_NEAR(vane_thread_engagement_internal(nut * 2e8, 2e8, pitch, d2, d, NULL), 0.012,
		   1e-15);
	/* Alexander's factors as printed, from memory. */
	for (double r = 0.4; r <= 2.2; r += 0.01) {
		const double c3 =
			r < 1 ? 0.728 + 1.769 * r - 2.896 * r * r + 1.296 * r * r * r : 0.897;
		const double c2 = r > 1 ? 5.594 - 13.682 * r + 14.107 * r * r - 6.057 * r * r * r +
						  0.9353 * r * r * r * r
					: 0.897;
		CHECK_NEAR(vane_thread_nut_bending(r, NULL), c3, 1e-13);
		CHECK_NEAR(vane_thread_bolt_bending(r, NULL), c2, 1e-13);
	}
	for (double s = 1.4; s < 1.9; s += 0.05)
		CHECK_NEAR(vane_thread_nut_dilation(s * 0.0625, 0.0625, NULL),
			   3.8 * s - s * s - 2.61, 1e-13);
	ck_assert(vane_thread_nut_dilation(0.024, 0.012, NULL) == 1);
	ck_assert(vane_thread_nut_bending(5, NULL) == 0.897);
	ck_assert(vane_thread_bolt_bending(0.2, NULL) == 0.897);
}
END_TEST

START_TEST(test_rejects)
{
	vane_error e;
	const double bad[] = {-1, NAN, INFINITY, -INFINITY};
	for (size_t k = 0; k < 4; k++) {
		const double x = bad[k];
		CHECK_REJECTS(vane_thread_root_diameter_unified(x, 1, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_root_diameter_unified(1, x, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_stress_area_strong(x, 1, &e), e, "pitch_diameter");
		CHECK_REJECTS(vane_thread_stress_area_strong(1, x, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_area(x, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_lead_angle(x, 1, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_lead_angle(1, x, &e), e, "pitch_diameter");
		CHECK_REJECTS(vane_thread_bearing_diameter(x, 0.5, &e), e, "face_diameter");
		CHECK_REJECTS(vane_thread_bearing_diameter(1, x, &e), e, "hole_diameter");
		CHECK_REJECTS(vane_thread_length(x, 1, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_length(1, x, &e), e, "length");
		CHECK_REJECTS(vane_thread_length_inch(x, 1, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_length_inch(1, x, &e), e, "length");
		CHECK_REJECTS(vane_thread_torque_exact(x, 1, 1, 0, 0, 1, &e), e, "preload");
		CHECK_REJECTS(vane_thread_torque_exact(1, x, 1, 0, 0, 1, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_torque_exact(1, 0.5, x, 0, 0, 1, &e), e,
			      "pitch_diameter");
		CHECK_REJECTS(vane_thread_torque_exact(1, 0.5, 1, x, 0, 1, &e), e,
			      "thread_friction");
		CHECK_REJECTS(vane_thread_torque_exact(1, 0.5, 1, 0, x, 1, &e), e,
			      "bearing_friction");
		CHECK_REJECTS(vane_thread_torque_exact(1, 0.5, 1, 0, 0, x, &e), e,
			      "bearing_diameter");
		CHECK_REJECTS(vane_thread_preload_exact(x, 1, 1, 0, 0, 1, &e), e, "torque");
		CHECK_REJECTS(vane_thread_nut_factor(x, 1, 1, 0, 0, 1, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_stretch(x, 1, 1, &e), e, "stress");
		CHECK_REJECTS(vane_thread_stretch(1, x, 1, &e), e, "length");
		CHECK_REJECTS(vane_thread_stretch(1, 1, x, &e), e, "modulus");
		CHECK_REJECTS(vane_thread_turn_angle(x, 1, &e), e, "stretch");
		CHECK_REJECTS(vane_thread_turn_angle(1, x, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_preload_utilization(x, 1, 1, 1, 1, 0, &e), e,
			      "utilization");
		CHECK_REJECTS(vane_thread_preload_utilization(1, x, 1, 1, 1, 0, &e), e,
			      "yield_stress");
		CHECK_REJECTS(vane_thread_preload_utilization(1, 1, 1, 1, x, 0, &e), e,
			      "stress_diameter");
		CHECK_REJECTS(vane_thread_utilization(x, 1, 1, 1, 1, 0, &e), e, "preload");
		CHECK_REJECTS(vane_thread_shear_area_external(x, 1, 1, 1, &e), e, "length");
		CHECK_REJECTS(vane_thread_shear_area_external(1, x, 1, 1, &e), e, "pitch");
		CHECK_REJECTS(vane_thread_shear_area_external(1, 1, x, 1, &e), e, "minor_diameter");
		CHECK_REJECTS(vane_thread_shear_area_external(1, 1, 1, x, &e), e, "pitch_diameter");
		CHECK_REJECTS(vane_thread_shear_area_internal(1, 1, x, 1, &e), e, "pitch_diameter");
		CHECK_REJECTS(vane_thread_shear_area_internal(1, 1, 1, x, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_strip_force(x, 1, &e), e, "shear_area");
		CHECK_REJECTS(vane_thread_strip_force(1, x, &e), e, "shear_strength");
		CHECK_REJECTS(vane_thread_engagement_external(x, 1, 1, 1, 1, &e), e, "force");
		CHECK_REJECTS(vane_thread_engagement_internal(1, x, 1, 1, 1, &e), e,
			      "shear_strength");
		CHECK_REJECTS(vane_thread_nut_dilation(x, 1, &e), e, "width");
		CHECK_REJECTS(vane_thread_nut_dilation(2, x, &e), e, "diameter");
		CHECK_REJECTS(vane_thread_bolt_bending(x, &e), e, "strength_ratio");
		CHECK_REJECTS(vane_thread_nut_bending(x, &e), e, "strength_ratio");
	}
	CHECK_REJECTS(vane_thread_torque_exact(1, 0.51, 1, 0, 0, 1, &e), e, "pitch");
	CHECK_REJECTS(vane_thread_torque_exact(1, 0.5, 1, 1.01, 0, 1, &e), e, "thread_friction");
	CHECK_REJECTS(vane_thread_preload_utilization(1, 1, 0.5, 1, 1.01, 0, &e), e,
		      "pitch_diameter");
	CHECK_REJECTS(vane_thread_preload_utilization(1.01, 1, 1, 1, 1, 0, &e), e, "utilization");
	CHECK_REJECTS(vane_thread_preload_utilization(0, 1, 1, 1, 1, 0, &e), e, "utilization");
	CHECK_REJECTS(vane_thread_nut_dilation(1.375, 1, &e), e, "width");
	CHECK_REJECTS(vane_thread_bolt_bending(2.21, &e), e, "strength_ratio");
	CHECK_REJECTS(vane_thread_nut_bending(0.39, &e), e, "strength_ratio");
	/* An area too great for a double is no reason for a length of zero. */
	ck_assert(isnan(vane_thread_engagement_internal(1, 1, 1, 1, DBL_MAX, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
}
END_TEST

SUITE("thread tightening", test_sizes_metric, test_sizes_unified, test_find, test_grades,
      test_endurance, test_utilization, test_tightening_factor, test_finish, test_sample,
      test_low_and_high, test_parts, test_turn, test_geometry, test_strip, test_rejects)
