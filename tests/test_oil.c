#include "row.h"

#include "vane/oil.h"

#include <string.h>

static vane_error error;

static double iso46(double celsius)
{
	return 1e6 * vane_oil_walther(celsius + 273.15, 313.15, 46e-6, 373.15, 6.8e-6, NULL);
}

/* 32 and 5.4 mm2/s at 40 and 100 degC; zero is 273 or 273.15. */
static double worksheet(double celsius, double zero)
{
	return 1e6 * vane_oil_walther(celsius + zero, 40 + zero, 32e-6, 100 + zero, 5.4e-6, NULL);
}

static double outer(double viscosity)
{
	return log10(log10(viscosity + 0.7));
}

static double worksheet_b(void)
{
	return (outer(worksheet(20, 273)) - outer(worksheet(70, 273))) / log10(343.0 / 293);
}

static double index_of(double u, double y)
{
	return vane_oil_index(u * 1e-6, y * 1e-6, NULL);
}

START_TEST(test_published)
{
	const double b = worksheet_b();
	const row rows[] = {
		{"F-DV-01 ASTM D341 worksheet, B", b, 3.7449, 6e-5},
		{"F-DV-01 ASTM D341 worksheet, A", outer(worksheet(20, 273)) + b * log10(293),
		 9.5259, 6e-5},
		{"F-DV-02 ASTM D341 worksheet, 80 C", worksheet(80, 273), 8.5, 0.05},
		{"F-DV-02 own computation", worksheet(80, 273), 8.533104, 5e-7},
		{"F-DV-03 own computation, 273.15", worksheet(80, 273.15), 8.53321, 5e-6},
		{"VG 46 20 C, own computation", iso46(20), 133.838181, 5e-7},
		{"VG 46 50 C, own computation", iso46(50), 29.972990, 5e-7},
		{"VG 46 60 C, own computation", iso46(60), 20.622748, 5e-7},
		{"VG 46 80 C, own computation", iso46(80), 11.102611, 5e-7},
		{"F-PV-04 Barus, from memory", vane_oil_barus(1, 2e-8, 20e6, NULL), 1.49182, 1e-5},
		{"Barus mean, own computation", vane_oil_barus_factor(2e-8, 0, 15e6, NULL),
		 0.8639392644, 5e-11},
		/* An index moves 0.01 when L or H moves by half its last digit. */
		{"F-VI-01 ASTM D2270 5.1.4", index_of(119.94, 8.86), 0, 0.01},
		{"F-VI-02 ASTM D2270 5.1.4", index_of(69.48, 8.86), 100, 0.011},
		{"F-VI-06 ASTM D2270 6.1.4", index_of(22.83, 5.05), 156, 0.5},
		{"F-VI-06 H not rounded", index_of(22.83, 5.05), 156.423, 5e-4},
		{"F-VI-T2 ASTM D2270 Table 1", index_of(7.994, 2), 0, 1e-9},
		{"F-VI-T2 ASTM D2270 Table 1", index_of(6.394, 2), 100, 1e-9},
		{"F-VI-T4 ASTM D2270 Table 1", index_of(25.32, 4), 0, 1e-9},
		{"F-VI-T4 ASTM D2270 Table 1", index_of(19.56, 4), 100, 1e-9},
		{"F-VI-T10 ASTM D2270 Table 1", index_of(147.7, 10), 0, 1e-9},
		{"F-VI-T10 ASTM D2270 Table 1", index_of(82.87, 10), 100, 1e-9},
		{"F-VI-T20 ASTM D2270 Table 1", index_of(493.2, 20), 0, 1e-9},
		{"F-VI-T20 ASTM D2270 Table 1", index_of(229.5, 20), 100, 1e-9},
		{"F-VI-T40 ASTM D2270 Table 1", index_of(1730, 40), 0, 1e-9},
		{"F-VI-T40 ASTM D2270 Table 1", index_of(651.8, 40), 100, 1e-9},
		{"F-VG-3 ISO 3448", 1e6 * vane_oil_grade_viscosity(3, NULL), 3.2, 1e-9},
		{"F-VG-10 ISO 3448", 1e6 * vane_oil_grade_viscosity(10, NULL), 10, 1e-9},
		{"F-VG-22 ISO 3448", 1e6 * vane_oil_grade_viscosity(22, NULL), 22, 1e-9},
		{"F-VG-32 ISO 3448", 1e6 * vane_oil_grade_viscosity(32, NULL), 32, 1e-9},
		{"F-VG-46 ISO 3448", 1e6 * vane_oil_grade_viscosity(46, NULL), 46, 1e-9},
		{"F-VG-68 ISO 3448", 1e6 * vane_oil_grade_viscosity(68, NULL), 68, 1e-9},
		{"F-VG-460 ISO 3448", 1e6 * vane_oil_grade_viscosity(460, NULL), 460, 1e-9},
		{"F-VG-1500 ISO 3448", 1e6 * vane_oil_grade_viscosity(1500, NULL), 1500, 1e-9},
		{"F-VG-3200 ISO 3448, from memory", 1e6 * vane_oil_grade_viscosity(3200, NULL),
		 3200, 1e-9},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_limits)
{
	CHECK_NEAR(iso46(40), 46, 1e-14);
	CHECK_NEAR(iso46(100), 6.8, 1e-14);
	CHECK_NEAR(vane_oil_walther(333, 313, 2e-5, 373, 2e-5, NULL), 2e-5, 1e-14);
	CHECK_NEAR(vane_oil_barus_factor(0, 0, 15e6, NULL), 1, 0);
	CHECK_NEAR(vane_oil_barus_factor(2e-8, 15e6, 15e6, NULL), exp(-0.3), 1e-15);
	CHECK_NEAR(vane_oil_barus_factor(2e-8, 0, 1e-3, NULL), 1 - 1e-11, 1e-15);
	CHECK_NEAR(vane_oil_barus_factor(2e-8, 15e6, 1e6, NULL),
		   vane_oil_barus_factor(2e-8, 1e6, 15e6, NULL), 1e-15);
	CHECK_NEAR(vane_oil_density(288.15, 870, 288.15, 6.5e-4, NULL), 870, 0);
	CHECK_NEAR(vane_oil_dynamic_viscosity(32e-6, 860, NULL), 0.02752, 1e-15);
}
END_TEST

START_TEST(test_index_round_trip)
{
	for (double u = 7; u < 5000; u *= 1.37)
		for (double index = 80; index <= 250; index += 17) {
			const double y = vane_oil_viscosity_100(u * 1e-6, index, &error);
			ck_assert_int_eq(error.code, VANE_OK);
			CHECK_NEAR(vane_oil_index(u * 1e-6, y, NULL), index, 1e-9);
		}
	ck_assert(isnan(vane_oil_viscosity_100(3.2e-6, 100, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_viscosity_100(46e-6, 1e4, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
}
END_TEST

START_TEST(test_state)
{
	vane_oil oil;
	vane_oil_state state, below, above;
	ck_assert_int_eq(vane_oil_from_grade(46, 100, &oil, &error), VANE_OK);
	CHECK_NEAR(vane_oil_index(oil.viscosity_1, oil.viscosity_2, NULL), 100, 1e-9);
	ck_assert_int_eq(vane_oil_at(&oil, 323.15, &state, &error), VANE_OK);
	vane_oil_at(&oil, 323.14, &below, NULL);
	vane_oil_at(&oil, 323.16, &above, NULL);
	CHECK_NEAR(state.viscosity_temperature, log(below.viscosity / above.viscosity) / 0.02,
		   1e-7);
	CHECK_NEAR(state.viscosity, state.kinematic_viscosity * state.density, 1e-15);
	CHECK_NEAR(state.density, 870 * exp(-6.5e-4 * 35), 1e-14);

	oil.bulk_modulus = -1;
	ck_assert_int_eq(vane_oil_at(&oil, 323.15, &state, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "oil.bulk_modulus");
	ck_assert(isnan(state.viscosity) && isnan(state.specific_heat));
	ck_assert_int_eq(vane_oil_at(NULL, 323.15, &state, NULL), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_oil_at(&oil, 323.15, NULL, NULL), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_oil_from_grade(45, 100, &oil, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "grade");
	ck_assert(isnan(oil.viscosity_1) && isnan(oil.specific_heat));
	ck_assert_int_eq(vane_oil_from_grade(3, 100, &oil, &error), VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "viscosity_index");
	ck_assert(isnan(oil.viscosity_1));
	vane_oil_default(NULL);
}
END_TEST

START_TEST(test_rejections)
{
	CHECK_REJECTS(vane_oil_walther(0, 313, 46e-6, 373, 7e-6, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_walther(300, 313, 3e-7, 373, 7e-6, &error), error, "viscosity_1");
	CHECK_REJECTS(vane_oil_walther(300, 313, 46e-6, 313, 7e-6, &error), error, "temperature_2");
	CHECK_REJECTS(vane_oil_walther(300, 313, 7e-6, 373, 46e-6, &error), error, "viscosity_2");
	/* F-VI-11: no index below 2 mm2/s. */
	CHECK_REJECTS(vane_oil_index(5e-6, 1.99e-6, &error), error, "viscosity_100");
	CHECK_REJECTS(vane_oil_index(5e-6, 5e-6, &error), error, "viscosity_40");
	CHECK_REJECTS(vane_oil_viscosity_100(46e-6, NAN, &error), error, "index");
	CHECK_REJECTS(vane_oil_barus(1, -1e-9, 0, &error), error, "pressure_viscosity");
	CHECK_REJECTS(vane_oil_barus_factor(2e-8, INFINITY, 0, &error), error, "inlet_pressure");
	CHECK_REJECTS(vane_oil_density(300, 0, 288, 0, &error), error, "density");
	CHECK_REJECTS(vane_oil_grade_viscosity(NAN, &error), error, "grade");
	ck_assert(isnan(vane_oil_walther(1e-300, 313, 46e-6, 373, 7e-6, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

SUITE("oil", test_published, test_limits, test_index_round_trip, test_state, test_rejections)
