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
		{"F-VI-01 ASTM D2270 5.1.4", 1e6 * vane_oil_index_l(8.86e-6, NULL), 119.94, 0.005},
		{"F-VI-02 ASTM D2270 5.1.4", 1e6 * vane_oil_index_h(8.86e-6, NULL), 69.48, 0.005},
		/* The standard rounds 28.975 down. */
		{"F-VI-04 ASTM D2270 6.1.4", 1e6 * vane_oil_index_h(5.05e-6, NULL), 28.97, 0.006},
		{"F-VI-05 ASTM D2270 6.1.4",
		 vane_oil_index_exponent(22.83e-6, 5.05e-6, 28.97e-6, NULL), 0.14708, 6e-6},
		{"F-VI-06 H rounded", vane_oil_index_b(22.83e-6, 5.05e-6, 28.97e-6, NULL), 156.37,
		 0.006},
		{"F-VI-06 ASTM D2270 6.1.4", index_of(22.83, 5.05), 156, 0.5},
		{"F-VI-06 H not rounded", index_of(22.83, 5.05), 156.423, 5e-4},
		{"F-VI-T2 ASTM D2270 Table 1, L", 1e6 * vane_oil_index_l(2e-6, NULL), 7.994, 1e-12},
		{"F-VI-T2 ASTM D2270 Table 1, H", 1e6 * vane_oil_index_h(2e-6, NULL), 6.394, 1e-12},
		{"F-VI-T4 ASTM D2270 Table 1, L", 1e6 * vane_oil_index_l(4e-6, NULL), 25.32, 1e-12},
		{"F-VI-T4 ASTM D2270 Table 1, H", 1e6 * vane_oil_index_h(4e-6, NULL), 19.56, 1e-12},
		{"F-VI-T10 ASTM D2270 Table 1, L", 1e6 * vane_oil_index_l(10e-6, NULL), 147.7,
		 1e-12},
		{"F-VI-T10 ASTM D2270 Table 1, H", 1e6 * vane_oil_index_h(10e-6, NULL), 82.87,
		 1e-12},
		{"F-VI-T20 ASTM D2270 Table 1, L", 1e6 * vane_oil_index_l(20e-6, NULL), 493.2,
		 1e-12},
		{"F-VI-T20 ASTM D2270 Table 1, H", 1e6 * vane_oil_index_h(20e-6, NULL), 229.5,
		 1e-12},
		{"F-VI-T40 ASTM D2270 Table 1, L", 1e6 * vane_oil_index_l(40e-6, NULL), 1730,
		 1e-12},
		{"F-VI-T40 ASTM D2270 Table 1, H", 1e6 * vane_oil_index_h(40e-6, NULL), 651.8,
		 1e-12},
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

static void grade_check(const char *source, double grade, double midpoint, double minimum,
			double maximum)
{
	const double least = vane_oil_grade_minimum(grade, NULL);
	const double most = vane_oil_grade_maximum(grade, NULL);
	const row rows[] = {
		{source, 1e6 * vane_oil_grade_viscosity(grade, NULL), midpoint, 1e-9},
		{source, 1e6 * least, minimum, 1e-9},
		{source, 1e6 * most, maximum, 1e-9},
		{source, vane_oil_grade_nearest(least, NULL), grade, 0},
		{source, vane_oil_grade_nearest(most, NULL), grade, 0},
	};
	ROWS_CHECK(rows);
}

/* ISO 3448 and ASTM D2422. */
START_TEST(test_grades)
{
	static const struct {
		const char *source;
		double grade, midpoint, minimum, maximum;
	} grades[] = {
		{"F-VG-3 limits from memory", 3, 3.2, 2.88, 3.52},
		{"F-VG-10", 10, 10, 9, 11},
		{"F-VG-22", 22, 22, 19.8, 24.2},
		{"F-VG-32", 32, 32, 28.8, 35.2},
		{"F-VG-46", 46, 46, 41.4, 50.6},
		{"F-VG-68", 68, 68, 61.2, 74.8},
		{"F-VG-460", 460, 460, 414, 506},
		{"F-VG-1500", 1500, 1500, 1350, 1650},
		{"F-VG-3200 from memory", 3200, 3200, 2880, 3520},
	};
	for (size_t i = 0; i < sizeof grades / sizeof *grades; i++)
		grade_check(grades[i].source, grades[i].grade, grades[i].midpoint,
			    grades[i].minimum, grades[i].maximum);
	/* sqrt(32 * 46) = 38.37. */
	CHECK_NEAR(vane_oil_grade_nearest(38.3e-6, NULL), 32, 0);
	CHECK_NEAR(vane_oil_grade_nearest(38.4e-6, NULL), 46, 0);
	CHECK_NEAR(vane_oil_grade_nearest(1e-300, NULL), 2, 0);
	CHECK_NEAR(vane_oil_grade_nearest(1e300, NULL), 3200, 0);
}
END_TEST

static double back_and_forth(double viscosity)
{
	return 1e6 * vane_oil_d341_viscosity(vane_oil_d341_z(viscosity * 1e-6, NULL), NULL);
}

static double z_long(double viscosity)
{
	return vane_oil_d341_z_long(viscosity * 1e-6, NULL);
}

/* 2.2 and 1 mm2/s at 40 and 100 degC. */
static double thin(double kelvin)
{
	return 1e6 * vane_oil_d341(kelvin, 313.15, 2.2e-6, 373.15, 1e-6, NULL);
}

START_TEST(test_d341)
{
	const row rows[] = {
		/* The standard's own inverse is a fit: 1 %. */
		{"F-DV-10 ASTM D341 eq. (2), (3)", back_and_forth(0.3), 0.3, 0.003},
		{"F-DV-11 ASTM D341 eq. (2), (3)", back_and_forth(0.5), 0.5, 0.005},
		{"F-DV-12 ASTM D341 eq. (2), (3)", back_and_forth(1), 1, 0.01},
		{"F-DV-13 ASTM D341 eq. (2), (3)", back_and_forth(1.5), 1.5, 0.015},
		{"F-DV-14 ASTM D341 eq. (2), (3)", back_and_forth(2), 2, 0.02},
		{"F-DV-15 ASTM D341 eq. (2), (3)", back_and_forth(3), 3, 0.03},
		{"F-DV-10 reproduced", back_and_forth(0.3), 0.299929, 5e-7},
		{"F-DV-15 reproduced", back_and_forth(3), 3.000008, 5e-7},
		/* Long form from memory; two fits of one curve: 0.5 %. */
		{"F-DV-20 ASTM D341 X1", z_long(0.3), 1.126451, 0.0056},
		{"F-DV-21 ASTM D341 X1", z_long(0.5), 1.280661, 0.0064},
		{"F-DV-22 ASTM D341 X1", z_long(1), 1.721928, 0.0086},
		{"F-DV-23 ASTM D341 X1", z_long(1.5), 2.204619, 0.011},
		{"F-DV-24 ASTM D341 X1", z_long(2), 2.700754, 0.0135},
		{"F-DV-20 reproduced", z_long(0.3), 1.122673, 5e-7},
		{"F-DV-21 reproduced", z_long(0.5), 1.282036, 5e-7},
		{"F-DV-24 reproduced", z_long(2), 2.701555, 5e-7},
		{"eq. (2), own computation", vane_oil_d341_z(1e-6, NULL), 1.721928, 5e-7},
		{"thin oil at 150 C, own computation", thin(423.15), 0.6412563880755, 1e-12},
		{"the same by the short form",
		 1e6 * vane_oil_walther(423.15, 313.15, 2.2e-6, 373.15, 1e-6, NULL),
		 0.6798694186501, 1e-12},
		{"temperature of 0.8 mm2/s, own computation",
		 vane_oil_d341_temperature(0.8e-6, 313.15, 2.2e-6, 373.15, 1e-6, NULL),
		 396.5022679074, 5e-10},
		{"temperature of 20 mm2/s, own computation",
		 vane_oil_walther_temperature(20e-6, 313.15, 46e-6, 373.15, 6.8e-6, NULL),
		 334.031361453, 5e-9},
		{"F-DV-02 from A and B", 1e6 * vane_oil_walther_line(353, 9.525928, 3.744932, NULL),
		 8.533, 6e-4},
		{"blend, own computation", 1e6 * vane_oil_blend(0.3, 220e-6, 32e-6, NULL),
		 52.57592209262, 5e-11},
		{"thin blend, own computation", 1e6 * vane_oil_blend(0.5, 1e-6, 10e-6, NULL),
		 2.410856052739, 5e-12},
		{"share for a blend, own computation",
		 vane_oil_blend_fraction(68e-6, 220e-6, 32e-6, NULL), 0.4419786765483, 5e-13},
	};
	ROWS_CHECK(rows);

	CHECK_NEAR(thin(313.15), 2.2, 1e-15);
	CHECK_NEAR(thin(373.15), 1, 1e-14);
	CHECK_NEAR(vane_oil_blend(0, 220e-6, 32e-6, NULL), 32e-6, 1e-15);
	CHECK_NEAR(vane_oil_blend(1, 220e-6, 32e-6, NULL), 220e-6, 1e-14);
	CHECK_NEAR(vane_oil_blend_fraction(220e-6, 220e-6, 32e-6, NULL), 1, 0);
	CHECK_NEAR(vane_oil_blend_fraction(32e-6, 220e-6, 32e-6, NULL), 0, 0);
	for (double kelvin = 250; kelvin < 450; kelvin += 13) {
		CHECK_NEAR(vane_oil_d341_temperature(thin(kelvin) * 1e-6, 313.15, 2.2e-6, 373.15,
						     1e-6, NULL),
			   kelvin, 2e-15);
		CHECK_NEAR(vane_oil_walther_temperature(iso46(kelvin - 273.15) * 1e-6, 313.15,
							46e-6, 373.15, 6.8e-6, NULL),
			   kelvin, 2e-15);
	}
	/* Neighbours keep their digits. */
	CHECK_NEAR(vane_oil_walther_temperature(20e-6, 313, 20e-6 * (1 + 1e-9), 315,
						20e-6 * (1 - 1e-9), NULL),
		   sqrt(313.0 * 315), 1e-8);
	CHECK_NEAR(vane_oil_d341_temperature(1e-6, 313, 1e-6 * (1 + 1e-9), 315, 1e-6 * (1 - 1e-9),
					     NULL),
		   sqrt(313.0 * 315), 1e-8);
	ck_assert(isnan(vane_oil_d341_temperature(1e-6, 313, 2e-6, 315, 2e-6, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_blend_fraction(10e-6, 220e-6, 32e-6, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_blend_fraction(32e-6, 32e-6, 32e-6, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
}
END_TEST

START_TEST(test_fit)
{
	const double temperature[] = {293.15, 313.15, 333.15, 353.15, 373.15};
	const double viscosity[] = {134e-6, 46.2e-6, 20.5e-6, 11.1e-6, 6.75e-6};
	double deviation[5];
	vane_oil_line line;
	ck_assert_int_eq(
		vane_oil_fit(temperature, viscosity, 5, VANE_OIL_WALTHER, &line, deviation, &error),
		VANE_OK);
	const row rows[] = {
		{"A, own computation", line.intercept, 9.452069720003, 5e-12},
		{"B, own computation", line.slope, 3.698094461622, 5e-12},
		{"deviation, own computation", deviation[1], 0.004323031393, 1e-12},
		{"scatter, own computation", line.scatter, 0.003495136219421, 1e-14},
		{"coldest, own computation", 1e6 * line.viscosity_1, 134.4381990385, 1e-9},
		{"hottest, own computation", 1e6 * line.viscosity_2, 6.764057418531, 1e-11},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(line.worst, 1);
	CHECK_NEAR(line.greatest_deviation, deviation[1], 0);
	CHECK_NEAR(line.temperature_1, 293.15, 0);
	CHECK_NEAR(line.temperature_2, 373.15, 0);
	CHECK_NEAR(vane_oil_walther_line(333.15, line.intercept, line.slope, NULL) *
			   (1 + deviation[2]),
		   viscosity[2], 1e-12);

	/* F-DV-01, ASTM D341 worksheet: 32 and 5.4 mm2/s at 40 and 100 degC, T = t + 273. */
	const double two[] = {313, 373}, of_two[] = {32e-6, 5.4e-6};
	ck_assert_int_eq(vane_oil_fit(two, of_two, 2, VANE_OIL_WALTHER, &line, NULL, NULL),
			 VANE_OK);
	const row worksheet_rows[] = {
		{"F-DV-01 A", line.intercept, 9.5259, 6e-5},
		{"F-DV-01 B", line.slope, 3.7449, 6e-5},
	};
	ROWS_CHECK(worksheet_rows);
	CHECK_NEAR(line.viscosity_1, 32e-6, 0);
	CHECK_NEAR(line.viscosity_2, 5.4e-6, 0);
	CHECK_NEAR(line.scatter, 0, 0);

	double many[9], on_line[9];
	for (int i = 0; i < 9; i++) {
		many[i] = 430 - 20 * i;
		on_line[i] = thin(many[i]) * 1e-6;
	}
	ck_assert_int_eq(vane_oil_fit(many, on_line, 9, VANE_OIL_D341, &line, NULL, NULL), VANE_OK);
	ck_assert(line.greatest_deviation < 1e-13);
	CHECK_NEAR(line.temperature_1, 270, 0);
	CHECK_NEAR(vane_oil_d341(300, line.temperature_1, line.viscosity_1, line.temperature_2,
				 line.viscosity_2, NULL),
		   thin(300) * 1e-6, 1e-13);
}
END_TEST

START_TEST(test_fit_refusals)
{
	double temperature[] = {313, 313, 373}, viscosity[] = {46e-6, 45e-6, 7e-6};
	double deviation[3] = {0, 0, 0};
	vane_oil_line line;
	ck_assert_int_eq(vane_oil_fit(temperature, viscosity, 2, 0, &line, deviation, &error),
			 VANE_NOT_IDENTIFIABLE);
	ck_assert_str_eq(error.name, "temperature");
	ck_assert(isnan(line.slope) && isnan(deviation[0]) && isnan(deviation[1]));
	ck_assert_int_eq(line.worst, 0);
	ck_assert_int_eq(vane_oil_fit(temperature, viscosity, 1, 0, &line, deviation, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "readings");
	ck_assert_int_eq(vane_oil_fit(temperature, viscosity, 3, 2, &line, deviation, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "law");
	viscosity[2] = 60e-6;
	ck_assert_int_eq(vane_oil_fit(temperature, viscosity, 3, 0, &line, deviation, &error),
			 VANE_NOT_IDENTIFIABLE);
	ck_assert_str_eq(error.name, "kinematic_viscosity");
	viscosity[2] = 3e-7;
	ck_assert_int_eq(vane_oil_fit(temperature, viscosity, 3, 0, &line, deviation, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(error.index, 2);
	ck_assert(isnan(deviation[2]));
	ck_assert_int_eq(vane_oil_fit(NULL, viscosity, 3, 0, &line, NULL, NULL),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_oil_fit(temperature, viscosity, 3, 0, NULL, deviation, NULL),
			 VANE_INVALID_ARGUMENT);
}
END_TEST

START_TEST(test_index_reversed)
{
	const row rows[] = {
		{"F-MI-03 Esposito, Example 2-14", vane_oil_index_a_viscosity(80, 400, 150, NULL),
		 200, 1e-9},
		{"F-MI-03 the other way", vane_oil_index_a(200, 400, 150, NULL), 80, 1e-12},
		{"index 150, own computation", 1e6 * vane_oil_viscosity_40(10e-6, 150, NULL),
		 61.04604051565, 5e-11},
		{"index 50, own computation", 1e6 * vane_oil_viscosity_40(10e-6, 50, NULL), 115.285,
		 1e-12},
	};
	ROWS_CHECK(rows);
	for (double y = 2; y < 150; y *= 1.31)
		for (double index = -50; index <= 200; index += 25) {
			const double u = vane_oil_viscosity_40(y * 1e-6, index, &error);
			ck_assert_int_eq(error.code, VANE_OK);
			ck_assert(fabs(vane_oil_index(u, y * 1e-6, NULL) - index) < 1e-11);
		}
	ck_assert(isnan(vane_oil_viscosity_40(10e-6, 1e6, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_index_a_viscosity(200, 400, 150, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	CHECK_REJECTS(vane_oil_index_l(1.99e-6, &error), error, "viscosity_100");
	CHECK_REJECTS(vane_oil_index_h(NAN, &error), error, "viscosity_100");
	CHECK_REJECTS(vane_oil_index_a(1, 2, 2, &error), error, "l");
	CHECK_REJECTS(vane_oil_index_b(3e-5, 5e-6, 2e-5, &error), error, "viscosity_40");
}
END_TEST

static double degf(double fahrenheit)
{
	return (fahrenheit + 459.67) / 1.8;
}

static double seconds(double viscosity)
{
	return vane_oil_saybolt(viscosity * 1e-6, degf(100), NULL);
}

static double from_seconds(double saybolt)
{
	return 1e6 * vane_oil_saybolt_viscosity(saybolt, degf(100), NULL);
}

START_TEST(test_saybolt)
{
	const row rows[] = {
		{"F-SU-01 ASTM D2161", from_seconds(700), 151.0891, 5e-5},
		/* An older correlation, printed to one decimal. */
		{"F-SU-50 Hydraulic Institute, 1990", from_seconds(50), 7.4, 0.05},
		{"F-SU-70 Hydraulic Institute, 1990", from_seconds(70), 13.1, 0.05},
		{"F-SU-m1.81 ASTM D2161 Table 1, from memory", seconds(1.81), 32, 0.1},
		{"F-SU-m5 ASTM D2161 Table 1, from memory", seconds(5), 42.4, 0.1},
		{"F-SU-m10 ASTM D2161 Table 1, from memory", seconds(10), 58.9, 0.1},
		{"F-SU-m20 ASTM D2161 Table 1, from memory", seconds(20), 97.8, 0.1},
		{"F-SU-50 reproduced", from_seconds(50), 7.373036, 5e-7},
		{"F-SU-m20 reproduced", seconds(20), 97.82267, 5e-6},
		{"210 F, own computation", vane_oil_saybolt(20e-6, degf(210), NULL), 98.47906028168,
		 5e-11},
		{"210 F back, own computation",
		 1e6 * vane_oil_saybolt_viscosity(100, degf(210), NULL), 20.35764120646, 5e-11},
		{"F-SU-03 Esposito, Example 2-12", 1e6 * vane_oil_saybolt_handbook(230, NULL), 50,
		 0.05},
		{"0.226 t - 195 / t at 50 s, from memory",
		 1e6 * vane_oil_saybolt_handbook(50, NULL), 7.4, 1e-12},
		{"F-MI-01 Esposito, Example 2-13, cSt",
		 1e6 * vane_oil_capillary_viscosity(0.1e-6, 250, NULL), 25, 0.05},
		{"F-MI-01 Esposito, Example 2-13, cP",
		 1e3 * vane_oil_dynamic_viscosity(25e-6, 890, NULL), 22.3, 0.06},
		{"F-MI-02 Esposito, Example 2-18", vane_oil_plate_viscosity(10, 0.005, 1, 1, NULL),
		 0.05, 1e-15},
	};
	ROWS_CHECK(rows);
	for (double x = 1.8; x < 5000; x *= 1.4)
		CHECK_NEAR(from_seconds(seconds(x)), x, 3e-15);
	CHECK_REJECTS(vane_oil_saybolt(1.79e-6, 300, &error), error, "kinematic_viscosity");
	CHECK_REJECTS(vane_oil_saybolt_viscosity(30, 300, &error), error, "saybolt");
	CHECK_REJECTS(vane_oil_saybolt_viscosity(50, 0, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_saybolt_handbook(31, &error), error, "saybolt");
	CHECK_REJECTS(vane_oil_capillary_viscosity(0, 1, &error), error, "constant");
	CHECK_REJECTS(vane_oil_plate_viscosity(1, 1, 1, 0, &error), error, "wall_speed");
	ck_assert(isnan(vane_oil_saybolt_viscosity(32, 1e9, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
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
	CHECK_REJECTS(vane_oil_grade_minimum(45, &error), error, "grade");
	CHECK_REJECTS(vane_oil_grade_maximum(45, &error), error, "grade");
	CHECK_REJECTS(vane_oil_grade_nearest(0, &error), error, "viscosity_40");
	CHECK_REJECTS(vane_oil_d341(0, 313, 4e-6, 373, 1e-6, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_d341(300, 313, 4e-6, 373, 2e-7, &error), error, "viscosity_2");
	CHECK_REJECTS(vane_oil_d341_temperature(2e-7, 313, 4e-6, 373, 1e-6, &error), error,
		      "kinematic_viscosity");
	CHECK_REJECTS(vane_oil_walther_temperature(3e-7, 313, 4e-6, 373, 1e-6, &error), error,
		      "kinematic_viscosity");
	CHECK_REJECTS(vane_oil_walther_line(300, 9, -1, &error), error, "slope");
	CHECK_REJECTS(vane_oil_d341_z(2e-7, &error), error, "kinematic_viscosity");
	CHECK_REJECTS(vane_oil_d341_z_long(NAN, &error), error, "kinematic_viscosity");
	CHECK_REJECTS(vane_oil_d341_viscosity(1, &error), error, "z");
	CHECK_REJECTS(vane_oil_blend(1.01, 4e-6, 1e-6, &error), error, "fraction");
	ck_assert(isnan(vane_oil_walther(1e-300, 313, 46e-6, 373, 7e-6, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

SUITE("oil", test_published, test_limits, test_grades, test_d341, test_fit, test_fit_refusals,
      test_index_round_trip, test_index_reversed, test_saybolt, test_state, test_rejections)
