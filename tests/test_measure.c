#include "row.h"
#include "vane/measure.h"

#include <string.h>

enum { MOST = 64 };

static const double certain = 1e30;

/* Sources at full size, with these uncertainties and degrees of freedom. */
static vane_combined sum(const double *uncertainty, const double *freedom, int64_t n, double p)
{
	vane_source source[MOST];
	vane_combined out;
	for (int64_t i = 0; i < n; i++)
		source[i] = (vane_source){uncertainty[i], 1, freedom ? freedom[i] : certain};
	ck_assert_int_eq(vane_measure_combine(source, n, NULL, 0, p, &out, NULL, NULL), VANE_OK);
	return out;
}

static double within(double c)
{
	return vane_measure_probability(c * 1e-6, 1.161810e-6, 28e-6, 48e-6, NULL);
}

static int32_t verdict(double c, double k)
{
	int32_t out;
	double p;
	ck_assert_int_eq(
		vane_measure_verdict(c * 1e-6, 1.161810e-6, 28e-6, 48e-6, k, &out, &p, NULL),
		VANE_OK);
	ck_assert(p >= 0 && p <= 1);
	return out;
}

START_TEST(end_gauge)
{
	/* JCGM 100 H.1, a 50 mm end gauge; nm. */
	const double d[] = {5.8, 3.9, 6.7}, d_freedom[] = {24, 5, 8};
	const vane_combined difference = sum(d, d_freedom, 3, 0.99);
	/* u(delta alpha): 0.58e-6/K; u(delta theta): 0.029 K; from limits 1e-6/K and 0.05 K. */
	const vane_source alpha = {vane_measure_rectangular(1e-6, NULL), -50e6 * -0.1, 50};
	const vane_source theta = {vane_measure_rectangular(0.05, NULL), -50e6 * 11.5e-6, 2};
	vane_combined by_alpha, by_theta;
	ck_assert_int_eq(vane_measure_combine(&alpha, 1, NULL, 0, 0.99, &by_alpha, NULL, NULL),
			 VANE_OK);
	ck_assert_int_eq(vane_measure_combine(&theta, 1, NULL, 0, 0.99, &by_theta, NULL, NULL),
			 VANE_OK);
	const double parts[] = {25, 9.7, 2.9, 16.6}, freedom[] = {18, 25.6, 50, 2};
	const vane_combined length = sum(parts, freedom, 4, 0.99);
	const double second[] = {length.uncertainty, 11.7, 1.7};
	const row rows[] = {
		{"U-01 GUM H.1: u(d) [nm]", difference.uncertainty, 9.7, 0.05},
		/* The guide rounds u(d) to 9.7 first. */
		{"U-01 GUM H.1: nu(d)",
		 difference.degrees_of_freedom * pow(9.7 / difference.uncertainty, 4), 25.6, 0.06},
		{"U-02 GUM H.1: by expansion [nm]", by_alpha.uncertainty, 2.9, 0.05},
		{"U-02 GUM H.1: by temperature [nm]", by_theta.uncertainty, 16.6, 0.05},
		{"U-03 GUM H.1: variance [nm2]", length.uncertainty * length.uncertainty, 1002,
		 1.5},
		{"U-03 GUM H.1: u(l) [nm]", length.uncertainty, 32, 0.5},
		{"GUM H.1.6: nu_eff(l), 16 when cut down, from memory", length.degrees_of_freedom,
		 16.5, 0.5},
		/* U-05: the guide multiplies the rounded 32 nm by t99(16). */
		{"U-05 GUM H.1: U99 [nm]",
		 vane_measure_expanded(32, vane_measure_coverage(0.99, 16, NULL), NULL), 93, 1},
		{"U-05 GUM H.1: U99 of the unrounded u [nm]", length.expanded, 92.48, 1},
		{"U-06 GUM H.1.7: u with second order [nm]", sum(second, NULL, 3, 0.95).uncertainty,
		 34, 0.5},
		{"U-07 GUM H.1: l [mm]", 50.000623 + 215e-6, 50.000838, 1e-12},
		{"GUM H.1.3.4: u(Delta) of a swing of 0.5 K, from memory",
		 vane_measure_u_shaped(0.5, NULL), 0.35, 0.005},
		{"GUM G.4.2: 25 % of doubt, 8, from memory", vane_measure_freedom(0.25, NULL), 8,
		 1e-12},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(student)
{
	const row rows[] = {
		{"U-08 GUM Table G.2: t95(10)", vane_measure_coverage(0.95, 10, NULL), 2.23, 0.005},
		{"U-08 GUM Table G.2: t95(50)", vane_measure_coverage(0.95, 50, NULL), 2.01, 0.005},
		{"U-08 GUM Table G.2: t99(16)", vane_measure_coverage(0.99, 16, NULL), 2.92, 0.005},
		{"GUM Table G.2: t68.27(1), from memory",
		 vane_measure_coverage(erf(sqrt(0.5)), 1, NULL), 1.84, 0.005},
		{"GUM Table G.2: t95.45(2), from memory",
		 vane_measure_coverage(erf(sqrt(2)), 2, NULL), 4.53, 0.005},
		{"GUM Table G.2: t99.73(1), from memory",
		 vane_measure_coverage(erf(sqrt(4.5)), 1, NULL), 235.80, 0.005},
		{"GUM Table G.2: t90(5), from memory", vane_measure_coverage(0.90, 5, NULL), 2.02,
		 0.005},
		{"GUM Table G.2: t99(infinite)", vane_measure_coverage(0.99, 1e30, NULL), 2.576,
		 0.0005},
		{"GUM Table G.1: 90 %, from memory", vane_measure_coverage(0.90, 1e30, NULL), 1.645,
		 0.0005},
		{"ISO 14253-1:2017: 95 % at one limit", vane_measure_normal_quantile(0.95, NULL),
		 1.645, 0.0005},
	};
	ROWS_CHECK(rows);
	/* mpmath, 30 digits. */
	CHECK_NEAR(vane_measure_normal_quantile(0.975, NULL), 1.95996398454005423552, 4e-16);
	CHECK_NEAR(vane_measure_normal_quantile(1e-10, NULL), -6.36134090240406079653, 1e-15);
	/* One and two degrees of freedom have closed forms. */
	for (double p = 0.05; p < 1; p += 0.1) {
		const double pi = 3.14159265358979323846, s = 2 * p - 1;
		CHECK_NEAR(vane_measure_coverage(p, 1, NULL), tan(pi * p / 2), 1e-13);
		CHECK_NEAR(vane_measure_coverage(p, 2, NULL), p * sqrt(2 / (1 - p * p)), 1e-13);
		CHECK_NEAR(vane_measure_student_quantile(p, 2, NULL), s * sqrt(2 / (1 - s * s)),
			   1e-13);
		/* Both branches meet. */
		CHECK_NEAR(vane_measure_coverage(p, 1e5, NULL),
			   vane_measure_coverage(p, 1e5 * (1 + 1e-12), NULL), 1e-12);
		CHECK_NEAR(vane_measure_coverage(p, 1e30, NULL),
			   vane_measure_normal_quantile(0.5 + p / 2, NULL), 1e-14);
	}
	ck_assert(vane_measure_student_quantile(0.5, 7, NULL) == 0);
	ck_assert(vane_measure_normal_quantile(0.5, NULL) == 0);
	CHECK_NEAR(vane_measure_coverage(1e-300, 3, NULL), 1.360349523175663e-300, 1e-13);
	/* Cauchy: 1/(pi q). */
	CHECK_NEAR(vane_measure_student_quantile(1e-250, 1, NULL), -3.18309886183790671538e249,
		   1e-12);
	ck_assert(isnan(vane_measure_student_quantile(5e-324, 1, NULL)));
}
END_TEST

/* Between the normal distribution and few degrees of freedom, where every term of the series still
 * tells. */
START_TEST(student_of_many)
{
	const struct {
		double probability, freedom, quantile;
	} mpmath[] = {
		{0.975, 2500, 1.9609133447955668776},   {0.999, 2500, 3.0934955108929478766},
		{0.9375, 3000, 1.5345493918178124769},  {0.999, 20000, 3.0906398618543303127},
		{0.999, 200000, 3.0902730573051985323}, {0.999999, 200000, 4.7535645089899569427},
	};
	for (size_t i = 0; i < sizeof mpmath / sizeof *mpmath; i++)
		CHECK_NEAR(vane_measure_student_quantile(mpmath[i].probability, mpmath[i].freedom,
							 NULL),
			   mpmath[i].quantile, 1e-14);
}
END_TEST

START_TEST(combination)
{
	/* GUM G.4.1: relative uncertainties of three factors, per cent. */
	const double factor[] = {0.25, 0.57, 0.82}, freedom[] = {9, 4, 14};
	const vane_combined product = sum(factor, freedom, 3, 0.95);
	const double mixed[] = {0.57, 0.25}, mixed_freedom[] = {9, certain};
	const double normal[] = {1, 1, 1, 1}, wide[] = {1, 1, 1, 10};
	const row rows[] = {
		{"U-09 GUM G.4.1: u [%]", product.uncertainty, 1.03, 0.005},
		{"U-09 GUM G.4.1: nu_eff", product.degrees_of_freedom, 19.0, 0.1},
		{"GUM G.4.1: t95(19) u [%], from memory", product.expanded, 2.15, 0.006},
		{"U-10: nu_eff", sum(mixed, mixed_freedom, 2, 0.95).degrees_of_freedom, 12.8, 0.1},
		{"U-11 JCGM 101 9.2.2: u", sum(normal, NULL, 4, 0.95).uncertainty, 2, 0.005},
		{"U-11 JCGM 101 9.2.2: 95 %", sum(normal, NULL, 4, 0.95).expanded, 3.92, 0.005},
		{"U-12 JCGM 101 9.2.3: GUM 95 %", sum(normal, NULL, 4, 0.95).expanded, 3.92, 0.005},
		{"U-13 JCGM 101 9.2.4: u", sum(wide, NULL, 4, 0.95).uncertainty, 10.1, 0.06},
		{"U-13 JCGM 101 9.2.4: GUM 95 %", sum(wide, NULL, 4, 0.95).expanded, 19.9, 0.1},
	};
	ROWS_CHECK(rows);
	const double a = 3;
	CHECK_NEAR(vane_measure_trapezoid(a, 1, NULL), vane_measure_rectangular(a, NULL), 1e-15);
	CHECK_NEAR(vane_measure_trapezoid(a, 0, NULL), vane_measure_triangular(a, NULL), 1e-15);
	CHECK_NEAR(vane_measure_rectangular(a, NULL), sqrt(3), 1e-15);
	CHECK_NEAR(vane_measure_u_shaped(a, NULL), 3 / sqrt(2), 1e-15);
	/* GUM 4.3.3 with 240 ug at 3 u, from memory. */
	CHECK_NEAR(vane_measure_from_expanded(240e-6, 3, NULL), 80e-6, 1e-15);
}
END_TEST

/* GUM H.2: resistance and reactance from simultaneous readings. */
START_TEST(correlated)
{
	static const double reading[3][5] = {
		{5.007, 4.994, 5.005, 4.990, 4.999},
		{19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3},
		{1.0456, 1.0438, 1.0468, 1.0428, 1.0433},
	};
	vane_sample mean[3];
	double r[9], share[3];
	for (int i = 0; i < 3; i++) {
		ck_assert_int_eq(vane_measure_sample(reading[i], 5, &mean[i], NULL), VANE_OK);
		for (int j = 0; j < 3; j++)
			ck_assert_int_eq(vane_measure_correlation(reading[i], reading[j], 5,
								  &r[3 * i + j], NULL),
					 VANE_OK);
	}
	const double v = mean[0].mean, i = mean[1].mean, phi = mean[2].mean, z = v / i;
	const double slope[3][3] = {
		{cos(phi) / i, -z * cos(phi) / i, -z * sin(phi)},
		{sin(phi) / i, -z * sin(phi) / i, z * cos(phi)},
		{1 / i, -z / i, 0},
	};
	vane_combined u[3];
	for (int k = 0; k < 3; k++) {
		vane_source source[3];
		for (int j = 0; j < 3; j++)
			source[j] = (vane_source){mean[j].uncertainty, slope[k][j],
						  mean[j].degrees_of_freedom};
		ck_assert_int_eq(vane_measure_combine(source, 3, r, 9, 0.95, &u[k], share, NULL),
				 VANE_OK);
		CHECK_NEAR(share[0] + share[1] + share[2], 1, 1e-12);
		ck_assert(u[k].degrees_of_freedom == 4);
	}
	const row rows[] = {
		{"GUM H.2 Table H.2: mean V, from memory", v, 4.9990, 5e-5},
		{"GUM H.2 Table H.2: u(V), from memory", mean[0].uncertainty, 0.0032, 5e-5},
		{"GUM H.2 Table H.2: r(V, I), from memory", r[1], -0.36, 0.005},
		{"GUM H.2 Table H.2: r(V, phi), from memory", r[2], 0.86, 0.005},
		{"GUM H.2 Table H.2: r(I, phi), from memory", r[5], -0.65, 0.005},
		{"U-15 GUM H.2: R", z * cos(phi), 127.732, 0.001},
		{"U-15 GUM H.2: X", z * sin(phi), 219.847, 0.001},
		{"U-15 GUM H.2: Z", z, 254.260, 0.001},
		{"U-15 GUM H.2: u(R)", u[0].uncertainty, 0.071, 0.0006},
		{"U-15 GUM H.2: u(X)", u[1].uncertainty, 0.295, 0.0006},
		{"U-15 GUM H.2: u(Z)", u[2].uncertainty, 0.236, 0.0006},
	};
	ROWS_CHECK(rows);

	/* One instrument on two parts: all of it cancels, and so does nearly all of it. */
	const double all[] = {1, 1, 1, 1}, most[] = {1, 1 - 1e-12, 1 - 1e-12, 1};
	const vane_source pair[] = {{2e-6, 1, 9}, {2e-6, -1, 5}};
	vane_combined out;
	ck_assert_int_eq(vane_measure_combine(pair, 2, all, 4, 0.95, &out, share, NULL), VANE_OK);
	ck_assert(out.uncertainty == 0 && out.expanded == 0 && share[0] == 0);
	ck_assert_int_eq(vane_measure_combine(pair, 2, most, 4, 0.95, &out, share, NULL), VANE_OK);
	CHECK_NEAR(out.uncertainty, 2e-6 * sqrt(2 * (1 - most[1])), 1e-4);
	ck_assert(out.degrees_of_freedom == 5);
	/* All sources moving together add up. */
	const vane_source both[] = {{2e-6, 1, 9}, {3e-6, 1, 5}};
	ck_assert_int_eq(vane_measure_combine(both, 2, all, 4, 0.95, &out, share, NULL), VANE_OK);
	CHECK_NEAR(out.uncertainty, 5e-6, 1e-14);
	CHECK_NEAR(share[0], 0.4, 1e-14);
}
END_TEST

START_TEST(certified_samples)
{
	/* NIST StRD univariate: NumAcc1 to 4, and their definitions are their data. */
	static double reading[1001];
	const double three[] = {10000001, 10000003, 10000002};
	vane_sample s;
	ck_assert_int_eq(vane_measure_sample(three, 3, &s, NULL), VANE_OK);
	ck_assert(s.mean == 10000002 && s.spread == 1);
	const double base[] = {1, 1000000, 10000000};
	for (int k = 0; k < 3; k++) {
		reading[0] = base[k] + 0.2;
		for (int i = 1; i < 1001; i++)
			reading[i] = base[k] + (i % 2 ? 0.1 : 0.3);
		ck_assert_int_eq(vane_measure_sample(reading, 1001, &s, NULL), VANE_OK);
		const row rows[] = {
			{"NIST StRD NumAcc2 to 4: mean", s.mean, base[k] + 0.2, 4e-16 * base[k]},
			/* The data themselves are rounded to a double. */
			{"NIST StRD NumAcc2 to 4: s", s.spread, 0.1, 2e-16 * base[k]},
		};
		ROWS_CHECK(rows);
		CHECK_NEAR(s.uncertainty, s.spread / sqrt(1001), 1e-15);
		ck_assert(s.degrees_of_freedom == 1000 && s.least == reading[1] &&
			  s.greatest == reading[2]);
	}
	const double small[] = {1e-200, 2e-200, 3e-200}, large[] = {1e300, 2e300, 3e300};
	vane_measure_sample(small, 3, &s, NULL);
	CHECK_NEAR(s.spread, 1e-200, 1e-14);
	vane_measure_sample(large, 3, &s, NULL);
	CHECK_NEAR(s.spread, 1e300, 1e-14);
	double r;
	ck_assert_int_eq(vane_measure_correlation(small, large, 3, &r, NULL), VANE_OK);
	CHECK_NEAR(r, 1, 1e-14);
}
END_TEST

START_TEST(probability_values)
{
	const row rows[] = {
		{"prototype: 46 um", within(46), 0.957416, 5e-7},
		{"prototype: 47 um", within(47), 0.805305, 5e-7},
		{"prototype: 48.5 um", within(48.5), 0.333466, 5e-7},
		{"prototype: 51 um", within(51), 0.004909, 5e-7},
		/* JCGM 106:2012, from memory. */
		{"JCGM 106 7.3, breakdown voltage at most -5.40 V",
		 vane_measure_probability_most(-5.47, 0.05, -5.40, NULL), 0.92, 0.005},
		{"JCGM 106 7.4, SAE 40 oil, 12.5 to 16.3 mm2/s",
		 vane_measure_probability(13.6, 1.8, 12.5, 16.3, NULL), 0.66, 0.005},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(within(30), within(46), 1e-9);
}
END_TEST

START_TEST(probability_without_cancellation)
{
	/* mpmath, 40 digits: ncdf(b) - ncdf(a). */
	CHECK_NEAR(vane_measure_probability(60, 1, 28, 48, NULL), 1.776482112077679e-33, 1e-13);
	CHECK_NEAR(vane_measure_probability(20, 1, 28, 48, NULL), 6.2209605742717841e-16, 1e-13);
	CHECK_NEAR(vane_measure_probability(3, 1, 0, 1e-9, NULL), 4.4318484185857798e-12, 1e-14);
	CHECK_NEAR(vane_measure_probability(0, 1, -1.0 / 1024, 1.0 / 1024, NULL),
		   0.00077918401756108201, 1e-14);
	CHECK_NEAR(vane_measure_probability(0, 1, 5, 5.0625, NULL), 7.975453917754417e-8, 1e-13);
	CHECK_NEAR(vane_measure_probability(0, 1, 0.25, 1.25, NULL), 0.29564390065022102, 1e-14);
	/* Both branches meet where the half width is half a standard uncertainty. */
	CHECK_NEAR(vane_measure_probability(0.3, 1, 0, 1 - 1e-12, NULL),
		   vane_measure_probability(0.3, 1, 0, 1 + 1e-12, NULL), 1e-11);
	ck_assert(vane_measure_probability(0, 1e-300, -1, 1, NULL) == 1);
	ck_assert(vane_measure_probability(3, 1e-300, -1, 1, NULL) == 0);
	ck_assert(vane_measure_probability(1e308, 1, -1e308, 1e308, NULL) == 0.5);
	ck_assert(vane_measure_probability(2, 0, 1, 2, NULL) == 1);
}
END_TEST

START_TEST(one_limit)
{
	/* The other limit far away changes nothing; and the two sides mirror each other. */
	for (double x = -6; x <= 6; x += 0.75) {
		const double most = vane_measure_probability_most(x, 1.5, 2, NULL);
		CHECK_NEAR(most, vane_measure_probability(x, 1.5, -1e6, 2, NULL), 1e-14);
		CHECK_NEAR(vane_measure_probability_least(-x, 1.5, -2, NULL), most, 1e-15);
		int32_t a, b, c;
		double p, q;
		ck_assert_int_eq(vane_measure_verdict_most(x, 1.5, 2, 1.645, &a, &p, NULL),
				 VANE_OK);
		ck_assert_int_eq(vane_measure_verdict_least(-x, 1.5, -2, 1.645, &b, &q, NULL),
				 VANE_OK);
		vane_measure_verdict(x, 1.5, -1e6, 2, 1.645, &c, &q, NULL);
		ck_assert(a == b && a == c && p == most);
		ck_assert_int_eq(a, x > 2 + 1.645 * 1.5    ? VANE_VERDICT_FAILS
				    : x <= 2 - 1.645 * 1.5 ? VANE_VERDICT_CONFORMS
							   : VANE_VERDICT_NOT_PROVEN);
	}
	/* 1.645 standard uncertainties from its limit a value keeps it with 95 %. */
	CHECK_NEAR(
		vane_measure_probability_most(0, 1, vane_measure_normal_quantile(0.95, NULL), NULL),
		0.95, 1e-14);
	/* mpmath: ncdf(-20). */
	CHECK_NEAR(vane_measure_probability_least(0, 1, 20, NULL), 2.7536241186062337e-89, 1e-13);
	ck_assert(vane_measure_probability_most(1, 0, 1, NULL) == 1);
	ck_assert(vane_measure_probability_least(1, 0, 1.5, NULL) == 0);
}
END_TEST

START_TEST(guard_band)
{
	/* Independent prototype: accept 29.9112 ... 46.0888 (k = 1.645) and
	 * 30.3236 ... 45.6764 (k = 2). */
	const struct {
		double k, low, high;
	} bands[] = {{1.645, 29.9112, 46.0888}, {2, 30.3236, 45.6764}};
	for (int i = 0; i < 2; i++) {
		const double k = bands[i].k;
		ck_assert_int_eq(verdict(bands[i].low + 6e-5, k), VANE_VERDICT_CONFORMS);
		ck_assert_int_eq(verdict(bands[i].low - 6e-5, k), VANE_VERDICT_NOT_PROVEN);
		ck_assert_int_eq(verdict(bands[i].high - 6e-5, k), VANE_VERDICT_CONFORMS);
		ck_assert_int_eq(verdict(bands[i].high + 6e-5, k), VANE_VERDICT_NOT_PROVEN);
		/* The rejection zone mirrors the acceptance zone about each limit. */
		ck_assert_int_eq(verdict(96 - bands[i].high - 6e-5, k), VANE_VERDICT_NOT_PROVEN);
		ck_assert_int_eq(verdict(96 - bands[i].high + 6e-5, k), VANE_VERDICT_FAILS);
		ck_assert_int_eq(verdict(56 - bands[i].low - 6e-5, k), VANE_VERDICT_FAILS);
	}
	ck_assert_int_eq(verdict(47.9, 0), VANE_VERDICT_CONFORMS);
	ck_assert_int_eq(verdict(48.1, 0), VANE_VERDICT_FAILS);
	/* U-14, ISO 14253-1:1998, from memory: tolerance +-0.010, U = 2 u = 0.002. */
	const struct {
		double value;
		int32_t verdict;
	} zones[] = {
		{0.00799, VANE_VERDICT_CONFORMS},   {-0.00799, VANE_VERDICT_CONFORMS},
		{0.00801, VANE_VERDICT_NOT_PROVEN}, {-0.00801, VANE_VERDICT_NOT_PROVEN},
		{0.01199, VANE_VERDICT_NOT_PROVEN}, {-0.01199, VANE_VERDICT_NOT_PROVEN},
		{0.01201, VANE_VERDICT_FAILS},      {-0.01201, VANE_VERDICT_FAILS},
	};
	int32_t v;
	double p;
	for (size_t i = 0; i < sizeof zones / sizeof *zones; i++) {
		vane_measure_verdict(zones[i].value, 0.001, -0.010, 0.010, 2, &v, &p, NULL);
		ck_assert_int_eq(v, zones[i].verdict);
	}
	/* A band narrower than twice the guard proves nothing. */
	vane_measure_verdict(0, 1, -1, 1, 2, &v, &p, NULL);
	ck_assert_int_eq(v, VANE_VERDICT_NOT_PROVEN);
	ck_assert_int_eq(vane_measure_verdict(3, 0, 1, 2, 1.645, &v, &p, NULL), VANE_OK);
	ck_assert(p == 0);
	ck_assert_int_eq(v, VANE_VERDICT_FAILS);
}
END_TEST

START_TEST(rejections)
{
	vane_error e;
	CHECK_REJECTS(vane_measure_rectangular(-1, &e), e, "half_range");
	CHECK_REJECTS(vane_measure_triangular(NAN, &e), e, "half_range");
	CHECK_REJECTS(vane_measure_u_shaped(INFINITY, &e), e, "half_range");
	CHECK_REJECTS(vane_measure_trapezoid(-1, 0.5, &e), e, "half_range");
	CHECK_REJECTS(vane_measure_trapezoid(1, 1.01, &e), e, "ratio");
	CHECK_REJECTS(vane_measure_from_expanded(-1, 2, &e), e, "expanded");
	CHECK_REJECTS(vane_measure_from_expanded(1, 0, &e), e, "coverage");
	CHECK_REJECTS(vane_measure_expanded(-1, 2, &e), e, "uncertainty");
	CHECK_REJECTS(vane_measure_expanded(1, 0, &e), e, "coverage");
	CHECK_REJECTS(vane_measure_freedom(0, &e), e, "doubt");
	CHECK_REJECTS(vane_measure_normal_quantile(0, &e), e, "probability");
	CHECK_REJECTS(vane_measure_normal_quantile(1, &e), e, "probability");
	CHECK_REJECTS(vane_measure_student_quantile(NAN, 3, &e), e, "probability");
	CHECK_REJECTS(vane_measure_student_quantile(0.5, 0.9, &e), e, "degrees_of_freedom");
	CHECK_REJECTS(vane_measure_coverage(1, 3, &e), e, "probability");
	CHECK_REJECTS(vane_measure_coverage(0.95, INFINITY, &e), e, "degrees_of_freedom");
	CHECK_REJECTS(vane_measure_probability(NAN, 1, 0, 1, &e), e, "value");
	CHECK_REJECTS(vane_measure_probability(0, -1e-9, 0, 1, &e), e, "uncertainty");
	CHECK_REJECTS(vane_measure_probability(0, 1, -INFINITY, 1, &e), e, "low");
	CHECK_REJECTS(vane_measure_probability(0, 1, 1, 1, &e), e, "high");
	CHECK_REJECTS(vane_measure_probability_most(0, 1, INFINITY, &e), e, "high");
	CHECK_REJECTS(vane_measure_probability_most(NAN, 1, 0, &e), e, "value");
	CHECK_REJECTS(vane_measure_probability_least(0, 1, -INFINITY, &e), e, "low");
	CHECK_REJECTS(vane_measure_probability_least(0, -1, 0, &e), e, "uncertainty");

	int32_t v = 7;
	double p = 7;
	ck_assert_int_eq(vane_measure_verdict(0, 1, -1, 1, -1, &v, &p, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "coverage");
	ck_assert(v == 0 && isnan(p));
	ck_assert_int_eq(vane_measure_verdict(0, 1, -1, 1, 1, NULL, &p, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_measure_verdict_most(0, 1, NAN, 1, &v, &p, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "high");
	ck_assert_int_eq(vane_measure_verdict_least(0, 1, NAN, 1, &v, &p, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "low");

	vane_sample s;
	const double bad[] = {1, NAN}, good[] = {1, 2}, same[] = {3, 3};
	const double huge[] = {-1.7e308, 1.7e308};
	ck_assert_int_eq(vane_measure_sample(bad, 2, &s, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "reading");
	ck_assert_int_eq(e.index, 1);
	ck_assert(isnan(s.mean) && isnan(s.greatest));
	ck_assert_int_eq(vane_measure_sample(good, 1, &s, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "readings");
	ck_assert_int_eq(vane_measure_sample(NULL, 2, &s, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_measure_sample(good, 2, NULL, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_measure_sample(huge, 2, &s, &e), VANE_OUT_OF_RANGE);
	ck_assert(isnan(s.mean));
	ck_assert_int_eq(vane_measure_correlation(good, same, 2, &p, &e), VANE_NOT_IDENTIFIABLE);
	ck_assert(isnan(p));
	ck_assert_int_eq(vane_measure_correlation(good, bad, 2, &p, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "second");
	ck_assert_int_eq(vane_measure_correlation(huge, good, 2, &p, &e), VANE_OUT_OF_RANGE);
}
END_TEST

START_TEST(combination_rejections)
{
	vane_error e;
	vane_combined out;
	double share[3];
	vane_source source[3];
	for (int i = 0; i < 3; i++) {
		vane_source_default(&source[i]);
		source[i].uncertainty = 1;
	}
	vane_source_default(NULL);
#define COMBINE(n, r, elements, p) vane_measure_combine(source, n, r, elements, p, &out, share, &e)
	ck_assert_int_eq(COMBINE(0, NULL, 0, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "sources");
	ck_assert_int_eq(COMBINE(2, NULL, 0, 1), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "probability");
	ck_assert(isnan(out.uncertainty) && isnan(out.expanded) && isnan(share[0]));
	/* Every two of three strongly opposed: no three quantities are. */
	const double opposed[] = {1, -0.9, -0.9, -0.9, 1, -0.9, -0.9, -0.9, 1};
	const double lopsided[] = {1, 0.5, 0.4, 1}, scaled[] = {2, 0, 0, 2}, off[] = {0.9, 0, 0, 1};
	ck_assert_int_eq(COMBINE(3, opposed, 9, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "correlation");
	ck_assert_int_eq(COMBINE(2, lopsided, 4, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.index, 1);
	ck_assert_int_eq(COMBINE(2, scaled, 4, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(COMBINE(2, off, 4, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(COMBINE(2, lopsided, 3, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "elements");
	ck_assert_int_eq(COMBINE(2, NULL, 4, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "correlation");
	source[1].uncertainty = -1;
	ck_assert_int_eq(COMBINE(2, NULL, 0, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "source.uncertainty");
	ck_assert_int_eq(e.index, 1);
	source[1].uncertainty = 1e300;
	source[1].sensitivity = 1e300;
	ck_assert_int_eq(COMBINE(2, NULL, 0, 0.95), VANE_OUT_OF_RANGE);
	ck_assert(isnan(out.coverage) && isnan(share[1]));
	source[1].degrees_of_freedom = 0.5;
	ck_assert_int_eq(COMBINE(2, NULL, 0, 0.95), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "source.degrees_of_freedom");
	ck_assert_int_eq(vane_measure_combine(NULL, 1, NULL, 0, 0.9, &out, NULL, NULL),
			 VANE_INVALID_ARGUMENT);
	/* Sizes that would overflow or vanish when squared. */
	const double large[] = {3e200, 4e200}, small[] = {3e-200, 4e-200};
	CHECK_NEAR(sum(large, NULL, 2, 0.95).uncertainty, 5e200, 1e-15);
	CHECK_NEAR(sum(small, NULL, 2, 0.95).uncertainty, 5e-200, 1e-15);
	const double none[] = {0, 0};
	ck_assert(sum(none, NULL, 2, 0.95).expanded == 0);
}
END_TEST

SUITE("measure", end_gauge, student, student_of_many, combination, correlated, certified_samples,
      probability_values, probability_without_cancellation, one_limit, guard_band, rejections,
      combination_rejections)
