#include "nist.h"
#include "row.h"
#include "vane/fit.h"
#include "vane/measure.h"

#include <stdbool.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>

enum { MOST = VANE_FIT_COEFFICIENTS };

static vane_fit_options usual(void)
{
	vane_fit_options options;
	vane_fit_options_default(&options);
	return options;
}

/* All that a fit writes. */
typedef struct answer {
	double b[MOST], u[MOST], r[MOST * MOST];
	vane_fit_reading reading[128];
	vane_fit_summary summary;
	vane_error error;
	int32_t status;
} answer;

static void line(const double *x, const double *y, const double *u, int64_t n, int64_t p,
		 const vane_fit_options *options, answer *a)
{
	a->status = vane_fit_linear(x, n * p, y, u, u ? n : 0, n, options, a->b, a->u, a->r,
				    a->reading, &a->summary, &a->error);
}

static void curve(int32_t model, const double *x, const double *y, const double *u, int64_t n,
		  const double *start, int64_t p, answer *a)
{
	const vane_fit_options options = usual();
	a->status = vane_fit_curve(model, x, y, u, u ? n : 0, n, start, p, &options, a->b, a->u,
				   a->r, a->reading, &a->summary, &a->error);
}

/* To `digits` significant digits. */
static void near(const char *set, const char *what, double got, double want, double digits)
{
	const row one = {set, got, want, fabs(want) * pow(10, -digits)};
	ck_assert_msg(fabs(got - want) <= one.tolerance, "%s, %s: got %.16g, want %.16g", set, what,
		      got, want);
}

static bool nothing(const answer *a)
{
	for (int i = 0; i < MOST; i++)
		if (!isnan(a->b[i]) || !isnan(a->u[i]) || !isnan(a->r[17 * i]))
			return false;
	return isnan(a->reading[0].residual) && isnan(a->summary.residual) &&
	       isnan(a->summary.condition) && a->summary.rank == 0 && a->summary.outliers == 0;
}

/* NIST StRD, linear: certified to 15 digits. What a set can give in doubles hangs on it: the
 * Wampler sets cancel powers of 20 down to 1, Longley has a condition number of 43 000. */
START_TEST(certified_lines)
{
	static const struct {
		const char *name;
		double digits, of_uncertainty;
	} reach[] = {{"Norris", 11, 13},  {"Pontius", 12, 13}, {"Filip", 11, 13},
		     {"Wampler3", 8, 13}, {"Wampler4", 8, 13}, {"Wampler5", 7, 13},
		     {"NoInt1", 14, 14},  {"NoInt2", 14, 14},  {"Longley", 11, 11}};
	const vane_fit_options options = usual();
	for (size_t k = 0; k < sizeof line_sets / sizeof *line_sets; k++) {
		const line_set *const s = &line_sets[k];
		answer a;
		if (s->degree < 0)
			line(s->x, s->y, NULL, s->readings, s->columns, &options, &a);
		else
			a.status = vane_fit_polynomial(s->x, s->y, NULL, 0, s->readings, s->degree,
						       &options, a.b, a.u, a.reading, &a.summary,
						       &a.error);
		ck_assert_int_eq(a.status, VANE_OK);
		ck_assert_str_eq(s->name, reach[k].name);
		for (int j = 0; j < s->columns; j++) {
			near(s->name, "coefficient", a.b[j], s->coefficient[j], reach[k].digits);
			near(s->name, "uncertainty", a.u[j], s->uncertainty[j],
			     reach[k].of_uncertainty);
		}
		near(s->name, "residual", a.summary.residual, s->residual, reach[k].of_uncertainty);
		near(s->name, "R^2", a.summary.r_squared, s->r_squared, 13);
		ck_assert_int_eq(a.summary.coefficients, s->columns);
		ck_assert_int_eq(a.summary.rank, s->columns);
		ck_assert(a.summary.degrees_of_freedom == s->readings - s->columns);
		ck_assert(a.b[s->columns] == 0 && a.u[s->columns] == 0);
		double sum = 0;
		for (int i = 0; i < s->readings; i++)
			sum += a.reading[i].leverage;
		CHECK_NEAR(sum, s->columns, 1e-12);
	}
}
END_TEST

/* Wampler1 and 2 lie on their polynomials; the certified deviations are 0. */
START_TEST(certified_exact_polynomials)
{
	for (int set = 0; set < 2; set++) {
		double x[21], y[21], want[6];
		answer a;
		for (int j = 0; j < 6; j++)
			want[j] = set ? pow(10, -j) : 1;
		for (int i = 0; i < 21; i++) {
			x[i] = i;
			y[i] = 0;
			for (int j = 5; j >= 0; j--)
				y[i] = y[i] * x[i] + want[j];
		}
		const vane_fit_options options = usual();
		a.status = vane_fit_polynomial(x, y, NULL, 0, 21, 5, &options, a.b, a.u, NULL,
					       &a.summary, &a.error);
		ck_assert_int_eq(a.status, VANE_OK);
		for (int j = 0; j < 6; j++) {
			near(set ? "Wampler2" : "Wampler1", "coefficient", a.b[j], want[j], 8);
			ck_assert(a.u[j] < 1e-8 * want[j]);
		}
		ck_assert(a.summary.residual < 1e-14 * y[20] && a.summary.r_squared > 1 - 1e-15);
	}
}
END_TEST

/* NIST StRD, non-linear: certified to 11 digits, from both of their start values. */
START_TEST(certified_curves)
{
	for (size_t k = 0; k < sizeof curve_sets / sizeof *curve_sets; k++) {
		const curve_set *const s = &curve_sets[k];
		for (int from = 0; from < 2; from++) {
			answer a;
			curve(s->model, s->x, s->y, NULL, s->readings, from ? s->near : s->start,
			      s->coefficients, &a);
			ck_assert_msg(a.status == VANE_OK, "%s: %s", s->name, a.error.text);
			for (int j = 0; j < s->coefficients; j++) {
				near(s->name, "coefficient", a.b[j], s->coefficient[j], 9);
				near(s->name, "uncertainty", a.u[j], s->uncertainty[j], 9);
			}
			near(s->name, "sum", a.summary.square_sum, s->square_sum, 10);
			ck_assert(a.summary.iterations > 0 && a.summary.condition > 1);
			double sum = 0, squares = 0, y[128];
			ck_assert_int_eq(vane_fit_curve_at(s->model, a.b, s->coefficients, s->x,
							   s->readings, y, NULL),
					 VANE_OK);
			for (int i = 0; i < s->readings; i++) {
				sum += a.reading[i].leverage;
				squares += a.reading[i].residual * a.reading[i].residual;
				ck_assert(a.reading[i].residual == s->y[i] - y[i]);
			}
			CHECK_NEAR(sum, s->coefficients, 1e-10);
			CHECK_NEAR(squares, a.summary.square_sum, 1e-12);
		}
	}
}
END_TEST

static const double few_x[] = {1, 2, 3, 4, 5, 6, 8};
static const double few_y[] = {2.1, 3.9, 6.2, 7.8, 10.3, 11.8, 16.4};
static const double few_u[] = {.1, .2, .1, .3, .2, .1, .4};

static void parabola(double *x)
{
	for (int i = 0; i < 7; i++) {
		x[3 * i] = 1;
		x[3 * i + 1] = few_x[i];
		x[3 * i + 2] = few_x[i] * few_x[i];
	}
}

START_TEST(weighted)
{
	/* mpmath, 40 digits, by the normal equations. */
	double x[21];
	parabola(x);
	vane_fit_options options = usual();
	answer a, known, poly;
	line(x, few_y, few_u, 7, 3, &options, &a);
	options.known = 1;
	line(x, few_y, few_u, 7, 3, &options, &known);
	ck_assert(a.status == VANE_OK && known.status == VANE_OK);
	const double rounding = 1e-12;
	const row rows[] = {
		{"mpmath: b0", a.b[0], 0.095640611255446679, rounding},
		{"mpmath: b1", a.b[1], 2.0237286536787386, rounding},
		{"mpmath: b2", a.b[2], -0.0084670426210429893, rounding},
		{"mpmath: u0, relative", a.u[0], 0.2818879077031922, rounding},
		{"mpmath: u1, relative", a.u[1], 0.18439708408607208, rounding},
		{"mpmath: u2, relative", a.u[2], 0.024283236604400334, rounding},
		{"mpmath: u0, known", known.u[0], 0.18098101337346318, rounding},
		{"mpmath: u1, known", known.u[1], 0.11838880004795291, rounding},
		{"mpmath: u2, known", known.u[2], 0.015590611191734278, rounding},
		{"mpmath: r01", a.r[1], -0.90924604297620113, rounding},
		{"mpmath: r20", known.r[32], 0.82245512288487068, rounding},
		{"mpmath: s", a.summary.residual, 1.5575551404472618, rounding},
		{"mpmath: sum", a.summary.square_sum, 9.7039120621347571, rounding},
		{"mpmath: condition", a.summary.condition, 19.1184253677925, 1e-11},
		{"mpmath: R^2", a.summary.r_squared, 0.99833838278604656, rounding},
		{"mpmath: leverage 0", a.reading[0].leverage, 0.90875491820605664, rounding},
		{"mpmath: leverage 6", a.reading[6].leverage, 0.41042595282310521, rounding},
		{"mpmath: standardized 5", a.reading[5].standardized, -1.6370167208632704, 1e-11},
		{"mpmath: standardized 5, known", known.reading[5].standardized,
		 -2.5497438085787071, 1e-11},
		{"mpmath: distance 2", a.reading[2].distance, 0.69158064656628042, 1e-11},
		{"mpmath: distance 5", a.reading[5].distance, 2.3799525767004277, 1e-11},
	};
	ROWS_CHECK(rows);
	ck_assert(a.reading[3].weight == 1 && a.summary.caution == 0);
	poly.status = vane_fit_polynomial(few_x, few_y, few_u, 7, 7, 2, &options, poly.b, poly.u,
					  poly.reading, &poly.summary, NULL);
	ck_assert_int_eq(poly.status, VANE_OK);
	for (int j = 0; j < 3; j++) {
		near("polynomial", "b", poly.b[j], a.b[j], 10);
		near("polynomial", "u", poly.u[j], known.u[j], 12);
	}
	CHECK_NEAR(poly.reading[2].distance, known.reading[2].distance, 1e-11);
	/* As many readings as coefficients, where the uncertainties are known. */
	line(x, few_y, few_u, 3, 3, &options, &known);
	ck_assert_int_eq(known.status, VANE_OK);
	ck_assert(known.summary.degrees_of_freedom == 0 && known.u[0] > 0);
	ck_assert(known.reading[0].leverage > 1 - 1e-12 && known.reading[0].standardized == 0);
}
END_TEST

START_TEST(ridge)
{
	double x[21];
	parabola(x);
	vane_fit_options options = usual();
	options.ridge = 0.1;
	answer a;
	line(x, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_OK);
	/* mpmath, 40 digits, by the normal equations. */
	const double rounding = 1e-12;
	const row rows[] = {
		{"mpmath: b0", a.b[0], 1.3297183044024168, rounding},
		{"mpmath: b1", a.b[1], 1.2522658742592588, rounding},
		{"mpmath: b2", a.b[2], 0.082472136995847796, rounding},
		{"mpmath: u0", a.u[0], 0.37194227154952608, rounding},
		{"mpmath: u2", a.u[2], 0.017262510131364612, rounding},
		{"mpmath: r01", a.r[1], -0.73242479275950895, rounding},
		{"mpmath: freedom", a.summary.degrees_of_freedom, 4.5970672433627069, rounding},
		{"mpmath: s", a.summary.residual, 0.47019186846950103, rounding},
		{"mpmath: leverage 6", a.reading[6].leverage, 0.77996411936043466, rounding},
		{"mpmath: distance 6", a.reading[6].distance, 1.2412850226952034, 1e-11},
	};
	ROWS_CHECK(rows);
	/* Two equal columns share what the one would have. */
	double twice[14], once[7];
	for (int i = 0; i < 7; i++)
		twice[2 * i] = twice[2 * i + 1] = once[i] = few_x[i];
	options.ridge = 1e-6;
	line(twice, few_y, NULL, 7, 2, &options, &a);
	ck_assert_int_eq(a.status, VANE_OK);
	ck_assert_int_eq(a.summary.rank, 1);
	ck_assert(a.summary.condition > 1e10 && isfinite(a.summary.condition));
	CHECK_NEAR(a.b[0], a.b[1], 1e-9);
	const double both = a.b[0] + a.b[1];
	options.ridge = 0;
	line(once, few_y, NULL, 7, 1, &options, &a);
	CHECK_NEAR(both, a.b[0], 1e-9);
}
END_TEST

/* Brownlee's stack loss data, from memory: air flow, water, acid, loss. */
static const double stack[21][4] = {
	{80, 27, 89, 42}, {80, 27, 88, 37}, {75, 25, 90, 37}, {62, 24, 87, 28}, {62, 22, 87, 18},
	{62, 23, 87, 18}, {62, 24, 93, 19}, {62, 24, 93, 20}, {58, 23, 87, 15}, {58, 18, 80, 14},
	{58, 18, 89, 14}, {58, 17, 88, 13}, {58, 18, 82, 11}, {58, 19, 93, 12}, {50, 18, 89, 8},
	{50, 18, 86, 7},  {50, 19, 72, 8},  {50, 19, 79, 8},  {50, 20, 80, 9},  {56, 20, 82, 15},
	{70, 20, 91, 15},
};

static void stack_loss(double *x, double *y)
{
	for (int i = 0; i < 21; i++) {
		x[4 * i] = 1;
		for (int j = 0; j < 3; j++)
			x[4 * i + j + 1] = stack[i][j];
		y[i] = stack[i][3];
	}
}

START_TEST(influence)
{
	double x[84], y[21];
	stack_loss(x, y);
	const vane_fit_options options = usual();
	answer a;
	line(x, y, NULL, 21, 4, &options, &a);
	ck_assert_int_eq(a.status, VANE_OK);
	/* Printed in many textbooks, from memory. */
	const row rows[] = {
		{"stack loss: b0", a.b[0], -39.9197, 5e-5},
		{"stack loss: air flow", a.b[1], 0.7156, 5e-5},
		{"stack loss: water", a.b[2], 1.2953, 5e-5},
		{"stack loss: acid", a.b[3], -0.1521, 5e-5},
		{"stack loss: u0", a.u[0], 11.8960, 5e-5},
		{"stack loss: u1", a.u[1], 0.1349, 5e-5},
		{"stack loss: u2", a.u[2], 0.3680, 5e-5},
		{"stack loss: u3", a.u[3], 0.1563, 5e-5},
		{"stack loss: s", a.summary.residual, 3.243, 5e-4},
		{"stack loss: R^2", a.summary.r_squared, 0.9136, 5e-5},
		{"stack loss: leverage of 21", a.reading[20].leverage, 0.285, 5e-4},
		{"stack loss: standardized 21", a.reading[20].standardized, -2.64, 0.005},
		{"stack loss: Cook's distance of 21", a.reading[20].distance, 0.692, 5e-4},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(a.summary.outliers, 0);
	ck_assert_int_eq(a.summary.caution, VANE_CAUTION_ILL_CONDITIONED);
	/* Cook's distance is what leaving the reading out does. */
	double moved = 0, part[80], rest[20];
	memcpy(part, x, sizeof part);
	memcpy(rest, y, sizeof rest);
	answer without;
	line(part, rest, NULL, 20, 4, &options, &without);
	for (int i = 0; i < 21; i++) {
		double d = 0;
		for (int j = 0; j < 4; j++)
			d += x[4 * i + j] * (a.b[j] - without.b[j]);
		moved += d * d;
	}
	CHECK_NEAR(a.reading[20].distance, moved / (4 * a.summary.residual * a.summary.residual),
		   1e-10);
}
END_TEST

START_TEST(robust)
{
	double x[84], y[21];
	stack_loss(x, y);
	answer plain;
	const vane_fit_options as_usual = usual();
	line(x, y, NULL, 21, 4, &as_usual, &plain);
	for (int k = 0; k < 2; k++) {
		vane_fit_options options = usual();
		options.weight = k ? VANE_FIT_HUBER : VANE_FIT_BISQUARE;
		answer a;
		a.status = vane_fit_robust(x, 84, y, 21, &options, a.b, a.u, a.r, a.reading,
					   &a.summary, &a.error);
		ck_assert_msg(a.status == VANE_OK, "%s", a.error.text);
		for (int j = 0; j < 4; j++) {
			CHECK_NEAR(a.r[j], plain.r[j], 1e-12);
			CHECK_NEAR(a.u[j] / a.summary.residual, plain.u[j] / plain.summary.residual,
				   1e-12);
		}
		ck_assert(a.reading[20].leverage == plain.reading[20].leverage);
		/* The reading that least squares does not show. */
		ck_assert(a.reading[20].standardized < -3 && a.summary.outliers >= 1);
		/* mpmath, 30 digits, by the normal equations. */
		const row rows[] = {
			{"mpmath: b0", a.b[0], k ? -41.3469333627 : -41.5576346357, 1e-6},
			{"mpmath: b3", a.b[3], k ? -0.131522519398 : -0.1257291431, 1e-8},
			{"mpmath: s", a.summary.residual, k ? 2.99823157349 : 3.1162014697, 1e-7},
			{"mpmath: u1", a.u[1], k ? 0.124665649454 : 0.129570805499, 1e-8},
			{"mpmath: weight of 21", a.reading[20].weight,
			 k ? 0.4400960966 : 0.3127799478, 1e-7},
			{"mpmath: standardized 21", a.reading[20].standardized,
			 k ? -3.056150715 : -3.110263737, 1e-7},
		};
		ROWS_CHECK(rows);
	}
}
END_TEST

START_TEST(robust_against_wild_readings)
{
	double x[40], y[20];
	const vane_fit_options options = usual();
	for (int i = 0; i < 20; i++) {
		x[2 * i] = 1;
		x[2 * i + 1] = i;
		y[i] = 3 + 2 * i;
	}
	/* A quarter of them wild, the others exactly on the line. */
	for (int i = 0; i < 20; i += 4)
		y[i] += 1000 * (i + 1);
	answer a;
	a.status = vane_fit_robust(x, 40, y, 20, &options, a.b, a.u, a.r, a.reading, &a.summary,
				   &a.error);
	ck_assert_msg(a.status == VANE_OK, "%s", a.error.text);
	CHECK_NEAR(a.b[0], 3, 1e-9);
	CHECK_NEAR(a.b[1], 2, 1e-9);
	ck_assert_int_eq(a.summary.outliers, 5);
	for (int i = 0; i < 20; i++)
		ck_assert(i % 4 ? a.reading[i].weight > 0.99 : a.reading[i].weight == 0);
	/* All on the line. */
	for (int i = 0; i < 20; i++)
		y[i] = 3 + 2 * i;
	a.status = vane_fit_robust(x, 40, y, 20, &options, a.b, a.u, a.r, a.reading, &a.summary,
				   &a.error);
	ck_assert_int_eq(a.status, VANE_OK);
	CHECK_NEAR(a.b[1], 2, 1e-12);
	ck_assert_int_eq(a.summary.outliers, 0);
	/* Readings that are all the same. */
	for (int i = 0; i < 20; i++)
		y[i] = 0;
	a.status = vane_fit_robust(x, 40, y, 20, &options, a.b, a.u, a.r, a.reading, &a.summary,
				   &a.error);
	ck_assert_int_eq(a.status, VANE_OK);
	ck_assert(a.b[0] == 0 && a.b[1] == 0 && a.summary.residual == 0);
	/* Too few iterations. */
	vane_fit_options once = options;
	once.iterations = 1;
	double stack_x[84], stack_y[21];
	stack_loss(stack_x, stack_y);
	a.status = vane_fit_robust(stack_x, 84, stack_y, 21, &once, a.b, a.u, a.r, a.reading,
				   &a.summary, &a.error);
	ck_assert_int_eq(a.status, VANE_NO_SOLUTION);
	ck_assert(nothing(&a));
}
END_TEST

START_TEST(curves_of_the_trade)
{
	double x[10], u[10];
	for (int i = 0; i < 10; i++) {
		x[i] = 0.5 * (i + 1);
		u[i] = i % 2 ? 0.2 : 0.1;
	}
	/* mpmath, 40 digits, Gauss-Newton. */
	static const double cooling[] = {83.1, 71.9, 63.7, 55.2, 50.3,
					 45.1, 41.2, 38.9, 35.8, 34.4};
	static const double loss[] = {1.31, 1.72, 2.19, 2.71, 3.29, 3.88, 4.51, 5.20, 5.87, 6.61};
	static const double friction[] = {0.1101, 0.0872, 0.0741, 0.0668, 0.0633,
					  0.0615, 0.0618, 0.0619, 0.0631, 0.0638};
	const double from_decay[] = {60, 0.2, 10}, from_power[] = {0, 1, 1},
		     from_stribeck[] = {0.01, 0.1, 0.5, 0.01};
	answer plain, weighed, power, stribeck;
	curve(VANE_FIT_DECAY, x, cooling, NULL, 10, from_decay, 3, &plain);
	curve(VANE_FIT_DECAY, x, cooling, u, 10, from_decay, 3, &weighed);
	curve(VANE_FIT_POWER_OFFSET, x, loss, NULL, 10, from_power, 3, &power);
	curve(VANE_FIT_STRIBECK, x, friction, NULL, 10, from_stribeck, 4, &stribeck);
	ck_assert(plain.status == VANE_OK && weighed.status == VANE_OK);
	ck_assert(power.status == VANE_OK && stribeck.status == VANE_OK);
	const row rows[] = {
		{"mpmath: decay b1", plain.b[0], 70.9493751295959, 7e-8},
		{"mpmath: decay b2", plain.b[1], 0.436871204754806, 4e-10},
		{"mpmath: decay b3", plain.b[2], 26.1687025570154, 3e-8},
		{"mpmath: decay u2", plain.u[1], 0.0160214703045941, 2e-11},
		{"mpmath: decay r13", plain.r[2], -0.565952531028373, 6e-10},
		{"mpmath: decay sum", plain.summary.square_sum, 1.39188982438168, 1e-11},
		{"mpmath: weighted decay b1", weighed.b[0], 71.8496063316853, 7e-8},
		{"mpmath: weighted decay b3", weighed.b[2], 24.8542071533634, 3e-8},
		{"mpmath: weighted decay u1", weighed.u[0], 0.686630831460099, 7e-10},
		{"mpmath: weighted decay r12", weighed.r[1], -0.599071364159996, 6e-10},
		{"mpmath: weighted decay sum", weighed.summary.square_sum, 69.7419963199381, 1e-9},
		{"mpmath: power b1", power.b[0], 1.0460514069275, 1e-9},
		{"mpmath: power b2", power.b[1], 0.669747158285063, 1e-9},
		{"mpmath: power b3", power.b[2], 1.31450469304865, 1e-9},
		{"mpmath: power u3", power.u[2], 0.00759686638932353, 1e-11},
		{"mpmath: Stribeck b1", stribeck.b[0], 0.0479913188609679, 1e-10},
		{"mpmath: Stribeck b2", stribeck.b[1], 0.101927930964195, 1e-10},
		{"mpmath: Stribeck b3", stribeck.b[2], 1.03990423082647, 1e-9},
		{"mpmath: Stribeck b4", stribeck.b[3], 0.0030925712532988, 1e-11},
		{"mpmath: Stribeck u3", stribeck.u[2], 0.0244311514924248, 1e-10},
		{"mpmath: Stribeck r14", stribeck.r[3], -0.992636026197755, 1e-9},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* GUM H.3, calibration of a thermometer: a line, and the uncertainty of a correction read off it.
 * Readings from memory; they give the printed values. */
START_TEST(thermometer)
{
	static const double t[] = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999,
				   24.513, 25.002, 25.503, 26.010, 26.511};
	static const double b[] = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165,
				   -0.156, -0.157, -0.159, -0.161, -0.160};
	double x[22];
	for (int i = 0; i < 11; i++) {
		x[2 * i] = 1;
		x[2 * i + 1] = t[i] - 20;
	}
	const vane_fit_options options = usual();
	answer a;
	line(x, b, NULL, 11, 2, &options, &a);
	ck_assert_int_eq(a.status, VANE_OK);
	const double freedom = a.summary.degrees_of_freedom;
	const vane_source source[] = {{a.u[0], 1, freedom}, {a.u[1], 30 - 20, freedom}};
	const double correlation[] = {1, a.r[1], a.r[1], 1};
	vane_combined correction;
	ck_assert_int_eq(
		vane_measure_combine(source, 2, correlation, 4, 0.95, &correction, NULL, NULL),
		VANE_OK);
	const row rows[] = {
		{"GUM H.3: y1", a.b[0], -0.1712, 5e-5},
		{"GUM H.3: y2", a.b[1], 0.00218, 5e-6},
		{"GUM H.3: s(y1)", a.u[0], 0.0029, 5e-5},
		{"GUM H.3: s(y2)", a.u[1], 0.00067, 5e-6},
		{"GUM H.3: r(y1, y2)", a.r[1], -0.930, 5e-4},
		{"GUM H.3: s", a.summary.residual, 0.0035, 5e-5},
		{"GUM H.3: b(30)", a.b[0] + 10 * a.b[1], -0.1494, 5e-5},
		{"GUM H.3: u(b(30))", correction.uncertainty, 0.0041, 5e-5},
		{"GUM H.3: degrees of freedom", correction.degrees_of_freedom, 9, 0},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* Slip q = C dp^n in SI: sizes far from 1, and no scatter at all. */
START_TEST(slip_law)
{
	double dp[6], q[6];
	for (int i = 0; i < 6; i++) {
		dp[i] = 2.5e6 * (i + 1);
		q[i] = 3e-11 * pow(dp[i], 0.85);
	}
	const double start[] = {1e-9, 0.6};
	answer a;
	curve(VANE_FIT_POWER, dp, q, NULL, 6, start, 2, &a);
	ck_assert_msg(a.status == VANE_OK, "%s", a.error.text);
	CHECK_NEAR(a.b[0], 3e-11, 1e-9);
	CHECK_NEAR(a.b[1], 0.85, 1e-10);
	ck_assert(a.summary.residual < 1e-12 * q[0]);
	/* Nothing hangs on the units of y. */
	for (int i = 0; i < 6; i++)
		q[i] = 60000 * (q[i] + 1e-7 * (i % 3));
	const double in_litres[] = {start[0] * 60000, start[1]};
	answer litres, metres;
	curve(VANE_FIT_POWER, dp, q, NULL, 6, in_litres, 2, &litres);
	for (int i = 0; i < 6; i++)
		q[i] /= 60000;
	curve(VANE_FIT_POWER, dp, q, NULL, 6, start, 2, &metres);
	ck_assert(litres.status == VANE_OK && metres.status == VANE_OK);
	CHECK_NEAR(litres.b[0], 60000 * metres.b[0], 1e-7);
	CHECK_NEAR(litres.u[1], metres.u[1], 1e-7);
	CHECK_NEAR(litres.summary.condition, metres.summary.condition, 1e-6);
}
END_TEST

START_TEST(lines_refused)
{
	vane_fit_options options = usual();
	answer a;
	double x[21], same[21], y[7];
	parabola(x);
	/* Collinear: the third column is a sum of the others. */
	for (int i = 0; i < 7; i++) {
		same[3 * i] = 1;
		same[3 * i + 1] = few_x[i];
		same[3 * i + 2] = 0.1 + 0.7 * few_x[i];
	}
	line(same, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	ck_assert(a.error.value > 1e10 && nothing(&a));
	/* A column of zeros. */
	for (int i = 0; i < 7; i++)
		same[3 * i + 2] = 0;
	line(same, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	/* All columns of zeros; a column of zeros is not lifted by the least ridge alone. */
	double zeros[21] = {0};
	line(zeros, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	options.ridge = 1;
	line(zeros, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	options.ridge = 0;
	/* No tolerance at all is that of a double. */
	options.rank_tolerance = 0;
	for (int i = 0; i < 7; i++)
		same[3 * i + 2] = 0.1 + 0.7 * few_x[i];
	line(same, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	options = usual();
	/* Filip's raw powers have a condition number of 5e9: what that leaves, or nothing. */
	static double powers[82 * 11];
	for (int i = 0; i < 82; i++)
		for (int j = 0; j < 11; j++)
			powers[11 * i + j] = pow(filip_x[i], j);
	line(powers, filip_y, NULL, 82, 11, &options, &a);
	ck_assert_int_eq(a.status, VANE_OK);
	for (int j = 0; j < 11; j++)
		near("Filip, raw powers", "coefficient", a.b[j], filip_b[j], 5);
	options.rank_tolerance = 1e-9;
	line(powers, filip_y, NULL, 82, 11, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	ck_assert(a.error.value > 1e9 && a.error.value < 1e10);
	options = usual();
	/* Too few. */
	line(x, few_y, NULL, 3, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	ck_assert_str_eq(a.error.name, "readings");
	ck_assert(a.error.value == 3 && nothing(&a));
	/* Too large for their squares. */
	for (int i = 0; i < 7; i++)
		y[i] = 1e200 * few_y[i] * few_y[i];
	line(x, y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_OUT_OF_RANGE);
	for (int i = 0; i < 21; i++)
		same[i] = 1.7e308;
	line(same, few_y, NULL, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_OUT_OF_RANGE);
	ck_assert(nothing(&a));
	/* A weight of zero, a weight without end. */
	const double bad_u[] = {1, 1, 0, 1, 1, 1, 1}, no_u[] = {1, 1, 1, 1, INFINITY, 1, 1};
	line(x, few_y, bad_u, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(a.error.name, "uncertainty");
	ck_assert_int_eq(a.error.index, 2);
	line(x, few_y, no_u, 7, 3, &options, &a);
	ck_assert_int_eq(a.status, VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(a.error.index, 4);
	ck_assert_int_eq(vane_fit_linear(x, 21, few_y, few_u, 6, 7, &options, a.b, a.u, NULL, NULL,
					 &a.summary, &a.error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(a.error.name, "weights");
	ck_assert_int_eq(vane_fit_linear(x, 21, few_y, NULL, 7, 7, &options, a.b, a.u, NULL, NULL,
					 &a.summary, &a.error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(a.error.name, "uncertainty");
	memcpy(y, few_y, sizeof y);
	y[3] = NAN;
	line(x, y, NULL, 7, 3, &options, &a);
	ck_assert_str_eq(a.error.name, "y");
	ck_assert_int_eq(a.error.index, 3);
	x[4] = INFINITY;
	line(x, few_y, NULL, 7, 3, &options, &a);
	ck_assert_str_eq(a.error.name, "x");
	ck_assert_int_eq(a.error.index, 4);
	x[4] = few_x[1];
	const int64_t wrong[] = {0, 6, 20, 7 * 17, -7};
	for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
		a.status = vane_fit_linear(x, wrong[i], few_y, NULL, 0, 7, &options, a.b, a.u, NULL,
					   NULL, &a.summary, &a.error);
		ck_assert_int_eq(a.status, VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(a.error.name, "elements");
	}
	line(x, few_y, NULL, 0, 3, &options, &a);
	ck_assert_str_eq(a.error.name, "readings");
	line(x, NULL, NULL, 7, 3, &options, &a);
	ck_assert_str_eq(a.error.name, "y");
	line(NULL, few_y, NULL, 7, 3, &options, &a);
	ck_assert_str_eq(a.error.name, "x");
	line(x, few_y, NULL, 7, 3, NULL, &a);
	ck_assert_str_eq(a.error.name, "options");
	ck_assert_int_eq(vane_fit_linear(x, 21, few_y, NULL, 0, 7, &options, a.b, a.u, NULL, NULL,
					 NULL, NULL),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_fit_linear(x, 21, few_y, NULL, 0, 7, &options, a.b, NULL, NULL, NULL,
					 &a.summary, &a.error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(a.error.name, "coefficient_uncertainty");
	ck_assert_int_eq(vane_fit_linear(x, 21, few_y, NULL, 0, 7, &options, a.b, a.u, NULL, NULL,
					 &a.summary, NULL),
			 VANE_OK);
}
END_TEST

START_TEST(options_refused)
{
	double x[21];
	parabola(x);
	const struct {
		const char *name;
		vane_fit_options options;
	} wrong[] = {
		{"options.rank_tolerance", {-1e-9, 0, 0, 1, 10}},
		{"options.rank_tolerance", {1.1, 0, 0, 1, 10}},
		{"options.ridge", {0, NAN, 0, 1, 10}},
		{"options.known", {0, 0, 2, 1, 10}},
		{"options.weight", {0, 0, 0, 0, 10}},
		{"options.weight", {0, 0, 0, 3, 10}},
		{"options.iterations", {0, 0, 0, 1, 0}},
	};
	for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
		answer a;
		line(x, few_y, NULL, 7, 3, &wrong[i].options, &a);
		ck_assert_int_eq(a.status, VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(a.error.name, wrong[i].name);
		ck_assert(nothing(&a));
	}
	vane_fit_options_default(NULL);
}
END_TEST

START_TEST(polynomials_refused)
{
	const vane_fit_options options = usual();
	answer a;
	const double three[] = {1, 2, 3, 1, 2, 3, 1}, one[] = {4, 4, 4, 4, 4, 4, 4};
#define POLYNOMIAL(x, n, degree)                                                                   \
	vane_fit_polynomial(x, few_y, NULL, 0, n, degree, &options, a.b, a.u, a.reading,           \
			    &a.summary, &a.error)
	ck_assert_int_eq(POLYNOMIAL(three, 7, 2), VANE_OK);
	ck_assert_int_eq(POLYNOMIAL(three, 7, 3), VANE_NOT_IDENTIFIABLE);
	ck_assert(isnan(a.b[0]) && isnan(a.reading[6].leverage));
	ck_assert_int_eq(POLYNOMIAL(one, 7, 1), VANE_NOT_IDENTIFIABLE);
	ck_assert_int_eq(POLYNOMIAL(few_x, 7, 6), VANE_NOT_IDENTIFIABLE);
	ck_assert_int_eq(POLYNOMIAL(few_x, 7, 16), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(a.error.name, "degree");
	ck_assert_int_eq(POLYNOMIAL(few_x, 7, -1), VANE_INVALID_ARGUMENT);
	/* Degree 0 is the mean. */
	ck_assert_int_eq(POLYNOMIAL(one, 7, 0), VANE_OK);
	CHECK_NEAR(a.b[0], (2.1 + 3.9 + 6.2 + 7.8 + 10.3 + 11.8 + 16.4) / 7, 1e-14);
	const double wide[] = {-1.7e308, 1.7e308, 0, 1e308, 2, 3, 4};
	ck_assert_int_eq(POLYNOMIAL(wide, 7, 2), VANE_OUT_OF_RANGE);
	ck_assert(isnan(a.b[0]));
}
END_TEST

START_TEST(curves_refused)
{
	const double start[] = {1, 0.5, 1}, half[] = {0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
	answer a;
	curve(0, few_x, few_y, NULL, 7, start, 2, &a);
	ck_assert_int_eq(a.status, VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(a.error.name, "model");
	ck_assert(nothing(&a));
	curve(13, few_x, few_y, NULL, 7, start, 2, &a);
	ck_assert_str_eq(a.error.name, "model");
	curve(VANE_FIT_POWER, few_x, few_y, NULL, 7, start, 3, &a);
	ck_assert_str_eq(a.error.name, "coefficients");
	const double zero_x[] = {1, 2, 0, 4, 5, 6, 7};
	curve(VANE_FIT_POWER, zero_x, few_y, NULL, 7, start, 2, &a);
	ck_assert_str_eq(a.error.name, "x");
	ck_assert_int_eq(a.error.index, 2);
	curve(VANE_FIT_POWER, few_x, few_y, NULL, 2, start, 2, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	ck_assert_str_eq(a.error.name, "readings");
	curve(VANE_FIT_POWER, few_x, few_y, NULL, 7, NULL, 2, &a);
	ck_assert_str_eq(a.error.name, "start");
	const double not_a_start[] = {1, NAN};
	curve(VANE_FIT_POWER, few_x, few_y, NULL, 7, not_a_start, 2, &a);
	ck_assert_str_eq(a.error.name, "start");
	ck_assert_int_eq(a.error.index, 1);
	/* No value at the start: a pole, an overflow. */
	const double pole[] = {1, 1, -3}, steep[] = {1, 1e6};
	curve(VANE_FIT_VOGEL, few_x, few_y, NULL, 7, pole, 3, &a);
	ck_assert_int_eq(a.status, VANE_OUT_OF_RANGE);
	curve(VANE_FIT_POWER, few_x, few_y, NULL, 7, steep, 2, &a);
	ck_assert_int_eq(a.status, VANE_OUT_OF_RANGE);
	ck_assert(nothing(&a));
	/* One x does not tell a factor from an exponent; a decay already over not its rate. */
	curve(VANE_FIT_POWER, half, few_y, NULL, 7, start, 2, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	ck_assert(nothing(&a));
	double late[7], level[7];
	for (int i = 0; i < 7; i++) {
		late[i] = 1000 + few_x[i];
		level[i] = 20 + 0.01 * (i % 3);
	}
	const double over[] = {5, 1, 20};
	curve(VANE_FIT_DECAY, late, level, NULL, 7, over, 3, &a);
	ck_assert(a.status == VANE_NOT_IDENTIFIABLE || a.status == VANE_NO_SOLUTION);
	ck_assert(nothing(&a));
	/* Nothing at x = 0 hangs on the coefficients; no coefficient has an effect that counts. */
	const double none[] = {0, 0, 0, 0, 0, 0, 0}, off[] = {0, 0.5};
	curve(VANE_FIT_SATURATION, none, few_y, NULL, 7, start, 2, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	double faint[7];
	for (int i = 0; i < 7; i++)
		faint[i] = 1e-200 * few_x[i];
	curve(VANE_FIT_SATURATION, faint, few_y, NULL, 7, off, 2, &a);
	ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	/* Too few iterations. */
	vane_fit_options options = usual();
	options.iterations = 2;
	a.status = vane_fit_curve(VANE_FIT_SATURATION, boxbod_x, boxbod_y, NULL, 0, 6, boxbod_start,
				  2, &options, a.b, a.u, a.r, a.reading, &a.summary, &a.error);
	ck_assert_int_eq(a.status, VANE_NO_SOLUTION);
	ck_assert(nothing(&a));
}
END_TEST

START_TEST(curve_at)
{
	vane_error e;
	const double b[] = {2, 3, -4}, x[] = {5, 6, 4};
	double y[3];
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_VOGEL, b, 3, x, 2, y, &e), VANE_OK);
	CHECK_NEAR(y[0], 2 * exp(3), 1e-15);
	CHECK_NEAR(y[1], 2 * exp(1.5), 1e-15);
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_VOGEL, b, 3, x, 3, y, &e), VANE_OUT_OF_RANGE);
	ck_assert_int_eq(e.index, 2);
	ck_assert(isnan(y[0]) && isnan(y[2]));
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_VOGEL, b, 2, x, 3, y, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_POWER, b, 2, NULL, 3, y, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_POWER, NULL, 2, x, 3, y, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "coefficient");
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_POWER, b, 2, x, 3, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_fit_curve_at(VANE_FIT_POWER, b, 2, x, 0, y, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "readings");
}
END_TEST

/* Rows of such weights leave GSL's singular values among the denormal numbers, where they do not
 * settle unless held above them. */
START_TEST(faint_readings)
{
	static const double weak[] = {1e290, 1e300, 1e305, 1e307, 5e307, 1e308, 1.5e308};
	const vane_fit_options options = usual();
	double x[13], y[13], u[13];
	uint32_t state = 1;
	for (int round = 0; round < 2000; round++) {
		for (int i = 0; i < 13; i++) {
			state = state * 1664525u + 1013904223u;
			x[i] = i + (state >> 16) / 65536.0;
			y[i] = state >> 28;
			u[i] = i == round % 13 ? 1 : weak[(state >> 16) % 7];
		}
		answer a;
		a.status = vane_fit_polynomial(x, y, u, 13, 13, 11, &options, a.b, a.u, a.reading,
					       &a.summary, &a.error);
		ck_assert_int_eq(a.status, VANE_NOT_IDENTIFIABLE);
	}
}
END_TEST

/* R^2 has no unit: it must not change with that of y and its uncertainties. */
START_TEST(share_in_any_unit)
{
	static const double unit[] = {1e-160, 1e-155, 1e155, 1e160};
	const vane_fit_options options = usual();
	double x[21], y[7], u[7];
	parabola(x);
	answer plain, a;
	line(x, few_y, few_u, 7, 3, &options, &plain);
	ck_assert(plain.status == VANE_OK && plain.summary.r_squared < 1);
	for (int k = 0; k < 4; k++) {
		for (int i = 0; i < 7; i++) {
			y[i] = few_y[i] * unit[k];
			u[i] = few_u[i] * unit[k];
		}
		line(x, y, u, 7, 3, &options, &a);
		ck_assert_int_eq(a.status, VANE_OK);
		CHECK_NEAR(a.summary.r_squared, plain.summary.r_squared, 1e-13);
	}
}
END_TEST

/* Of their squares nothing or too little is left, which would look like no scatter at all. */
START_TEST(tiny_readings)
{
	static const double unit[] = {1e-160, 1e-170};
	const vane_fit_options options = usual();
	double x[21], y[7];
	parabola(x);
	for (int k = 0; k < 2; k++) {
		answer a;
		for (int i = 0; i < 7; i++)
			y[i] = few_y[i] * unit[k];
		line(x, y, NULL, 7, 3, &options, &a);
		ck_assert_int_eq(a.status, VANE_OUT_OF_RANGE);
		ck_assert(nothing(&a));
		a.status = vane_fit_robust(x, 21, y, 7, &options, a.b, a.u, a.r, a.reading,
					   &a.summary, &a.error);
		ck_assert_int_eq(a.status, VANE_OUT_OF_RANGE);
		ck_assert(nothing(&a));
	}
	const double base[] = {1, 2, 3, 4, 5, 6, 7}, start[] = {unit[1], 1};
	answer a;
	curve(VANE_FIT_SATURATION, base, y, NULL, 7, start, 2, &a);
	ck_assert_int_ne(a.status, VANE_OK);
	ck_assert(nothing(&a));
}
END_TEST

#if defined(__has_feature)
#if __has_feature(address_sanitizer) || __has_feature(thread_sanitizer)
#define OWN_ALLOCATOR
#endif
#elif defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
#define OWN_ALLOCATOR
#endif

/* A sanitizer takes failed allocations for its own affair. */
START_TEST(no_memory)
{
#ifndef OWN_ALLOCATOR
	enum { COUNT = 200000 };
	double *const x = calloc(COUNT * 16, sizeof *x), *const y = calloc(COUNT, sizeof *y);
	ck_assert(x && y);
	for (int i = 0; i < COUNT; i++)
		x[i] = 1 + i;
	const vane_fit_options options = usual();
	const double start[] = {1, 1};
	struct rlimit before;
	ck_assert_int_eq(getrlimit(RLIMIT_DATA, &before), 0);
	/* Valgrind lets a program have what it asks for. */
	const struct rlimit none = {0, before.rlim_max};
	ck_assert_int_eq(setrlimit(RLIMIT_DATA, &none), 0);
	void *volatile granted = malloc(sizeof *x * COUNT * 16);
	ck_assert_int_eq(setrlimit(RLIMIT_DATA, &before), 0);
	/* Each limit is passed by another allocation. */
	static const unsigned megabytes[] = {30, 38, 50, 58};
	int refused = 0;
	for (size_t i = 0; !granted && i < sizeof megabytes / sizeof *megabytes; i++) {
		const struct rlimit limit = {megabytes[i] * 1000000ul, before.rlim_max};
		answer a[3];
		ck_assert_int_eq(setrlimit(RLIMIT_DATA, &limit), 0);
		a[0].status = vane_fit_linear(x, COUNT * 16, y, NULL, 0, COUNT, &options, a[0].b,
					      a[0].u, NULL, NULL, &a[0].summary, &a[0].error);
		a[1].status = vane_fit_robust(x, COUNT, y, COUNT, &options, a[1].b, a[1].u, NULL,
					      NULL, &a[1].summary, &a[1].error);
		a[2].status =
			vane_fit_curve(VANE_FIT_POWER, x, y, NULL, 0, COUNT, start, 2, &options,
				       a[2].b, a[2].u, NULL, NULL, &a[2].summary, &a[2].error);
		ck_assert_int_eq(setrlimit(RLIMIT_DATA, &before), 0);
		for (int k = 0; k < 3; k++) {
			refused += a[k].status == VANE_NO_MEMORY;
			ck_assert(a[k].status == VANE_NO_MEMORY ? isnan(a[k].b[0]) : k > 0);
		}
	}
	ck_assert(granted || refused >= 8);
	free(granted);
	free(x);
	free(y);
#endif
}
END_TEST

/* Whatever the numbers, a fit ends, and in numbers or in none. */
START_TEST(hostile)
{
	static const double odd[] = {0,     1,      -1,   1e-300, 1e300, -1e300, 5e-324,
				     1e150, -1e150, 1e16, 1e-16,  3,     -7,     0.1};
	const int count = sizeof odd / sizeof *odd;
	const int32_t coefficients[] = {0, 2, 3, 5, 2, 3, 3, 2, 3, 4, 7, 3, 4};
	uint32_t state = 1;
	vane_fit_options options = usual();
	options.iterations = 50;
	for (int round = 0; round < 4000; round++) {
		double x[24], y[12], start[7];
		answer a;
#define DRAW() (state = state * 1664525u + 1013904223u, odd[(state >> 16) % (uint32_t)count])
		for (int i = 0; i < 24; i++)
			x[i] = DRAW();
		for (int i = 0; i < 12; i++)
			y[i] = DRAW();
		for (int i = 0; i < 7; i++)
			start[i] = DRAW();
		switch (round % 4) {
		case 0:
			line(x, y, NULL, 12, 2, &options, &a);
			break;
		case 1:
			a.status = vane_fit_robust(x, 24, y, 12, &options, a.b, a.u, a.r, a.reading,
						   &a.summary, &a.error);
			break;
		case 2:
			a.status = vane_fit_polynomial(x, y, NULL, 0, 12, round % 7, &options, a.b,
						       a.u, a.reading, &a.summary, &a.error);
			for (int i = 0; i < MOST; i++)
				a.r[17 * i] = a.b[i];
			break;
		default:
			a.status = vane_fit_curve((round / 4) % 12 + 1, x, y, NULL, 0, 12, start,
						  coefficients[(round / 4) % 12 + 1], &options, a.b,
						  a.u, a.r, a.reading, &a.summary, &a.error);
		}
		if (a.status != VANE_OK) {
			ck_assert(nothing(&a) || a.error.code == VANE_INVALID_ARGUMENT);
			continue;
		}
		for (int i = 0; i < MOST; i++)
			ck_assert(isfinite(a.b[i]) && isfinite(a.u[i]));
		for (int i = 0; i < 12; i++)
			ck_assert(isfinite(a.reading[i].residual) &&
				  isfinite(a.reading[i].standardized) &&
				  isfinite(a.reading[i].distance) &&
				  isfinite(a.reading[i].leverage));
		ck_assert(isfinite(a.summary.r_squared) && isfinite(a.summary.condition) &&
			  isfinite(a.summary.residual));
	}
}
END_TEST

SUITE("fit", certified_lines, certified_exact_polynomials, certified_curves, weighted, ridge,
      influence, robust, robust_against_wild_readings, curves_of_the_trade, thermometer, slip_law,
      lines_refused, options_refused, polynomials_refused, curves_refused, curve_at, faint_readings,
      share_in_any_unit, tiny_readings, no_memory, hostile)
