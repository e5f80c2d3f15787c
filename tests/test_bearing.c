#include "row.h"
#include "vane/bearing.h"

#include <string.h>

static const double hour = 3600, balls = 3, rollers = 10.0 / 3;

/* Shigley's Weibull parameters. */
static const double x0 = 0.02, xc = 4.459, slope = 1.483;

static double life_hours(double rating, double load, double per_minute)
{
	return vane_bearing_life_time(vane_bearing_life(rating, load, balls, NULL), per_minute / 60,
				      NULL) /
	       hour;
}

/* Rating for a life in hours and a reliability by Shigley. */
static double catalog(double load, double hours, double per_minute, double reliability,
		      double exponent)
{
	const double factor = vane_bearing_weibull3_life(reliability, x0, xc, slope, NULL);
	return vane_bearing_rating(load, hours * 60 * per_minute / factor, exponent, NULL);
}

START_TEST(published)
{
	const double design = 1.2 * 1.898;
	/* Life over the basic one of a bearing of 19.5 kN. */
	const double ratio = 30e3 * 60 * 300 / vane_bearing_life(19.5, design, balls, NULL);
	const double fixed = vane_bearing_equivalent_load(1250, 625, 0.56, 1.2, 1, NULL);
	const double turning = vane_bearing_equivalent_load(1250, 625, 0.56, 1.2, 1.2, NULL);
	const double loads[] = {3000, 4000, 5000}, turns[] = {0.25 * 1440, 0.5 * 1080, 0.25 * 720};
	double mean;
	ck_assert_int_eq(vane_bearing_mean_load(loads, turns, 3, balls, &mean, NULL), VANE_OK);
	const row rows[] = {
		{"BR-111 Shigley 8th solution 11-1: x_D", 30e3 * 60 * 300 / 1e6, 540, 0.01},
		{"BR-111 Shigley 8th solution 11-1: C10 [kN]",
		 catalog(design, 30e3, 300, 0.9, balls), 18.59, 0.02},
		{"BR-111 Shigley 8th solution 11-1: reliability",
		 vane_bearing_weibull3_reliability(ratio, x0, xc, slope, NULL), 0.919, 0.0011},
		{"BR-112 Shigley 8th solution 11-2: C10 [lbf]", catalog(854, 50e3, 480, 0.9, balls),
		 9665, 10},
		{"BR-113 Shigley 8th solution 11-3: C10 [kN]",
		 vane_bearing_rating(10.279, 1440e6, rollers, NULL), 91.1, 0.05},
		{"BR-J2 Jindal Example 18-2: life [Mrev]",
		 vane_bearing_life(5590, fixed, balls, NULL) / 1e6, 57.3, 0.06},
		{"BR-J2 Jindal Example 18-2: life, outer ring turns [Mrev]",
		 vane_bearing_life(5590, turning, balls, NULL) / 1e6, 43.46, 0.01},
		{"BR-J4 Jindal Example 18-4: life [h]", life_hours(41, 20, 720), 199.424, 0.001},
		{"BR-J7 Jindal Example 18-7: rating [N]",
		 vane_bearing_rating(3500,
				     6000 * 60 * 1400 / vane_bearing_weibull_life(0.98, 1.17, NULL),
				     balls, NULL),
		 44589, 1},
		{"BR-J9 Jindal Example 18-9: rating [N]",
		 vane_bearing_rating(mean, 10e3 * 60 * (turns[0] + turns[1] + turns[2]), balls,
				     NULL),
		 34219, 2},
		{"BR-W1 Wentzell Example 20.1: life [h]", life_hours(5050, 2400, 1750), 88.73,
		 0.01},
		{"BR-a1 ISO 281:2007 table 12 (from memory): 90 %",
		 vane_bearing_reliability_factor(0.90, NULL), 1, 1e-15},
		{"BR-a1 ISO 281:2007 table 12 (from memory): 95 %",
		 vane_bearing_reliability_factor(0.95, NULL), 0.64, 1e-15},
		{"BR-a1 ISO 281:2007 table 12 (from memory): 96 %",
		 vane_bearing_reliability_factor(0.96, NULL), 0.55, 1e-15},
		{"BR-a1 ISO 281:2007 table 12 (from memory): 97 %",
		 vane_bearing_reliability_factor(0.97, NULL), 0.47, 1e-15},
		{"BR-a1 ISO 281:2007 table 12 (from memory): 98 %",
		 vane_bearing_reliability_factor(0.98, NULL), 0.37, 1e-15},
		{"BR-a1 ISO 281:2007 table 12 (from memory): 99 %",
		 vane_bearing_reliability_factor(0.99, NULL), 0.25, 1e-15},
		{"ISO 281:2007 table 3 (from memory): P, f0 Fa/C0 1.38, Y 1.45",
		 vane_bearing_groove_load(1000, 1000, 10000, 13.8, NULL), 560 + 1450, 1e-9},
		{"ISO 281:2007 table 3 (from memory): P, Fa below e Fr",
		 vane_bearing_groove_load(1000, 299, 10000, 1.38e5 / 2990, NULL), 1000, 1e-9},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(reliability_runs_on)
{
	/* Between the rows of the standard runs the law it was rounded from. */
	for (double r = 0.9; r <= 0.9995; r += 0.0005) {
		const double law = 0.05 + 0.95 * pow(log(r) / log(0.9), 2.0 / 3);
		ck_assert(fabs(vane_bearing_reliability_factor(r, NULL) - law) <= 0.006);
	}
	for (double r = 0.02; r < 1; r += 0.05) {
		CHECK_NEAR(vane_bearing_weibull_reliability(vane_bearing_weibull_life(r, 1.5, NULL),
							    1.5, NULL),
			   r, 1e-14);
		CHECK_NEAR(vane_bearing_weibull3_reliability(
				   vane_bearing_weibull3_life(r, x0, xc, slope, NULL), x0, xc,
				   slope, NULL),
			   r, 1e-14);
	}
	CHECK_NEAR(vane_bearing_weibull_life(0.9, 1.17, NULL), 1, 1e-15);
	ck_assert(vane_bearing_weibull3_reliability(x0, x0, xc, slope, NULL) == 1);
	CHECK_NEAR(vane_bearing_modified_life(1e6, 0.64, 2, NULL), 1.28e6, 1e-15);
}
END_TEST

START_TEST(oil_and_dirt)
{
	/* mpmath, 30 digits, the formulas as printed. */
	CHECK_NEAR(vane_bearing_life_factor_ball(0.2, 0.5, 100, 1000, NULL), 0.16469797428448165,
		   2e-14);
	CHECK_NEAR(vane_bearing_life_factor_ball(0.7, 0.5, 100, 1000, NULL), 0.64775254232702571,
		   2e-14);
	CHECK_NEAR(vane_bearing_life_factor_ball(2, 0.5, 100, 1000, NULL), 1.7017773653459996,
		   2e-14);
	CHECK_NEAR(vane_bearing_life_factor_roller(0.2, 0.5, 100, 1000, NULL), 0.11780644967620383,
		   2e-14);
	CHECK_NEAR(vane_bearing_life_factor_roller(0.7, 0.5, 100, 1000, NULL), 0.21440706797969099,
		   2e-14);
	CHECK_NEAR(vane_bearing_life_factor_roller(2, 0.5, 100, 1000, NULL), 0.33737266935866137,
		   2e-14);
	/* Dirt alone leaves a tenth; thick oil and light loads end at 50. */
	ck_assert(vane_bearing_life_factor_ball(1, 0, 1e300, 1e-300, NULL) == 0.1);
	ck_assert(vane_bearing_life_factor_ball(4, 1, 1000, 1000, NULL) == 50);
	ck_assert(vane_bearing_life_factor_roller(9, 1, 1e300, 1e-300, NULL) == 50);
	ck_assert(vane_bearing_life_factor_roller(9, 0.3, 1, 10, NULL) ==
		  vane_bearing_life_factor_roller(4, 0.3, 1, 10, NULL));
	/* The bands of the law meet, as far as its constants are printed. */
	for (int band = 0; band < 2; band++) {
		const double at = band ? 1 : 0.4;
		CHECK_NEAR(vane_bearing_life_factor_ball(at * (1 - 1e-12), 0.5, 10, 100, NULL),
			   vane_bearing_life_factor_ball(at, 0.5, 10, 100, NULL), 5e-4);
		CHECK_NEAR(vane_bearing_life_factor_roller(at * (1 - 1e-12), 0.5, 10, 100, NULL),
			   vane_bearing_life_factor_roller(at, 0.5, 10, 100, NULL), 5e-4);
	}
	/* ISO 281's law by hand: 500 r/min, 1500 r/min, 100 mm. */
	CHECK_NEAR(vane_bearing_reference_viscosity(500.0 / 60, 0.1, NULL), 2.5886146827044346e-5,
		   4e-15);
	CHECK_NEAR(vane_bearing_reference_viscosity(25, 0.1, NULL), 1.1618950038622251e-5, 4e-15);
	double clean, dirty;
	ck_assert_int_eq(vane_bearing_contamination(VANE_BEARING_13_10, 1, 0.1, &clean, NULL),
			 VANE_OK);
	CHECK_NEAR(clean, 0.87799436350349442, 1e-14);
	ck_assert_int_eq(vane_bearing_contamination(VANE_BEARING_19_16, 1, 0.1, &dirty, NULL),
			 VANE_OK);
	CHECK_NEAR(dirty, 0.13506140703109366, 1e-14);
	ck_assert_int_eq(vane_bearing_contamination(VANE_BEARING_15_12, 1, 0.1, &clean, NULL),
			 VANE_OK);
	CHECK_NEAR(clean, 0.4268379236959919, 1e-14);
	ck_assert_int_eq(vane_bearing_contamination(VANE_BEARING_17_14, 1, 0.1, &dirty, NULL),
			 VANE_OK);
	CHECK_NEAR(dirty, 0.23501906562673161, 1e-14);
	ck_assert_int_eq(vane_bearing_contamination(VANE_BEARING_19_16, 1, 0.001, &dirty, NULL),
			 VANE_OK);
	ck_assert(dirty == 0);
	ck_assert_int_eq(vane_bearing_contamination(VANE_BEARING_13_10, 100, 1e6, &clean, NULL),
			 VANE_OK);
	ck_assert(clean <= 1 && clean > 0.99);
}
END_TEST

START_TEST(loads_and_speeds)
{
	/* ISO 281:2007, table 3 (from memory): every row, and e from both sides. */
	static const struct {
		double thrust, e, y;
	} table[] = {{0.172, 0.19, 2.30}, {0.345, 0.22, 1.99}, {0.689, 0.26, 1.71},
		     {1.03, 0.28, 1.55},  {1.38, 0.30, 1.45},  {2.07, 0.34, 1.31},
		     {3.45, 0.38, 1.15},  {5.17, 0.42, 1.04},  {6.89, 0.44, 1.00}};
	for (size_t i = 0; i < sizeof table / sizeof *table; i++) {
		const double f0 = 14, c0 = 14 * 1000 / table[i].thrust;
		CHECK_NEAR(vane_bearing_groove_load(100, 1000, c0, f0, NULL),
			   56 + table[i].y * 1000, 1e-14);
		const double limit = 1000 / table[i].e;
		CHECK_NEAR(vane_bearing_groove_load(limit * 1.001, 1000, c0, f0, NULL),
			   limit * 1.001, 1e-15);
		CHECK_NEAR(vane_bearing_groove_load(limit * 0.999, 1000, c0, f0, NULL),
			   0.56 * limit * 0.999 + table[i].y * 1000, 1e-14);
	}
	/* At 100/3 r/min a bearing of its own rating lives 500 h. */
	CHECK_NEAR(vane_bearing_speed_factor(100.0 / 3 / 60, balls, NULL), 1, 1e-15);
	const double f = vane_bearing_speed_factor(24, rollers, NULL);
	CHECK_NEAR(vane_bearing_life_time(vane_bearing_life(1, f, rollers, NULL), 24, NULL),
		   500 * hour, 1e-14);
	CHECK_NEAR(vane_bearing_rating(700, vane_bearing_life(5000, 700, rollers, NULL), rollers,
				       NULL),
		   5000, 1e-14);
	/* mpmath, 30 digits: a life so short that the rounding of 1/p would show. */
	CHECK_NEAR(vane_bearing_rating(6148.584207552635, 0.013380531299990584, 1.56819426428997,
				       NULL),
		   0.0586158916371211, 4e-16);
	CHECK_NEAR(vane_bearing_speed_product(0.06, 25, NULL) * 60000, 90000, 1e-15);
	ck_assert(vane_bearing_groove_load(0, 0, 1, 1, NULL) == 0);
	/* Outside the table the nearest row holds. */
	CHECK_NEAR(vane_bearing_groove_load(0, 1, 1e6, 14, NULL), 2.3, 1e-15);
	CHECK_NEAR(vane_bearing_groove_load(0, 1e6, 1e6, 14, NULL), 1e6, 1e-15);
	const double loads[] = {0, 1e300, 1e300}, turns[] = {2, 1e300, 1e300};
	double mean;
	ck_assert_int_eq(vane_bearing_mean_load(loads, turns, 3, rollers, &mean, NULL), VANE_OK);
	CHECK_NEAR(mean, 1e300, 1e-15);
	ck_assert_int_eq(vane_bearing_mean_load(loads, turns, 1, rollers, &mean, NULL), VANE_OK);
	ck_assert(mean == 0);
}
END_TEST

START_TEST(rejects)
{
	vane_error error;
	CHECK_REJECTS(vane_bearing_life(0, 1, 3, &error), error, "rating");
	CHECK_REJECTS(vane_bearing_life(1, 0, 3, &error), error, "load");
	CHECK_REJECTS(vane_bearing_rating(1, 1, 5, &error), error, "exponent");
	CHECK_REJECTS(vane_bearing_rating(1, 0, 3, &error), error, "life");
	CHECK_REJECTS(vane_bearing_life_time(1, 0, &error), error, "speed");
	CHECK_REJECTS(vane_bearing_speed_factor(NAN, 3, &error), error, "speed");
	CHECK_REJECTS(vane_bearing_speed_product(0, 1, &error), error, "pitch_diameter");
	CHECK_REJECTS(vane_bearing_equivalent_load(1, -1, 1, 1, 1, &error), error, "axial_force");
	CHECK_REJECTS(vane_bearing_equivalent_load(1, 1, 1, 1, 0, &error), error,
		      "rotation_factor");
	CHECK_REJECTS(vane_bearing_groove_load(1, 1, 0, 1, &error), error, "static_rating");
	CHECK_REJECTS(vane_bearing_groove_load(1, 1, 1, 0, &error), error, "geometry_factor");
	CHECK_REJECTS(vane_bearing_reliability_factor(0.89, &error), error, "reliability");
	CHECK_REJECTS(vane_bearing_weibull_life(1, 1.5, &error), error, "reliability");
	CHECK_REJECTS(vane_bearing_weibull_reliability(1, 6, &error), error, "slope");
	CHECK_REJECTS(vane_bearing_weibull3_life(0.9, 1, 1, 1.5, &error), error,
		      "characteristic_life");
	CHECK_REJECTS(vane_bearing_weibull3_reliability(-1, 0, 1, 1.5, &error), error,
		      "life_ratio");
	CHECK_REJECTS(vane_bearing_modified_life(1, 0, 1, &error), error, "reliability_factor");
	CHECK_REJECTS(vane_bearing_life_factor_ball(0.09, 1, 1, 1, &error), error,
		      "viscosity_ratio");
	CHECK_REJECTS(vane_bearing_life_factor_roller(1, 1.1, 1, 1, &error), error,
		      "contamination");
	CHECK_REJECTS(vane_bearing_reference_viscosity(0, 1, &error), error, "speed");
	double out = 0;
	ck_assert_int_eq(vane_bearing_contamination(5, 1, 1, &out, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "cleanliness");
	ck_assert(isnan(out));
	ck_assert_int_eq(vane_bearing_contamination(1, 1, 1, NULL, &error), VANE_INVALID_ARGUMENT);
	const double loads[] = {1, NAN}, turns[] = {1, 1};
	ck_assert_int_eq(vane_bearing_mean_load(loads, turns, 2, 3, &out, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "load");
	ck_assert_int_eq(error.index, 1);
	ck_assert(isnan(out));
	ck_assert_int_eq(vane_bearing_mean_load(NULL, turns, 2, 3, &out, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_bearing_mean_load(turns, turns, 0, 3, &out, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "stages");
}
END_TEST

SUITE("bearing", published, reliability_runs_on, oil_and_dirt, loads_and_speeds, rejects)
