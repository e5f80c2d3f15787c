#include "row.h"

#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <vane.h>

enum { PARAMETERS = 7, MOST = 1000, SPACING = 3 };

/* Formulas of every arity there is, with a value that each parameter takes. */
typedef struct sample {
	const char *name;
	double (*call)(const double *x, vane_error *error);
	int32_t arity;
	double typical[PARAMETERS];
} sample;

static double inches(const double *x, vane_error *e)
{
	return vane_units_m_from_in(x[0], e);
}

static double viscosity(const double *x, vane_error *e)
{
	return vane_oil_dynamic_viscosity(x[0], x[1], e);
}

static double barus(const double *x, vane_error *e)
{
	return vane_oil_barus(x[0], x[1], x[2], e);
}

static double probability(const double *x, vane_error *e)
{
	return vane_measure_probability(x[0], x[1], x[2], x[3], e);
}

static double walther(const double *x, vane_error *e)
{
	return vane_oil_walther(x[0], x[1], x[2], x[3], x[4], e);
}

static double slot(const double *x, vane_error *e)
{
	return vane_slot_flow(x[0], x[1], x[2], x[3], x[4], x[5], e);
}

static double annulus(const double *x, vane_error *e)
{
	return vane_slot_annulus_flow(x[0], x[1], x[2], x[3], x[4], x[5], x[6], e);
}

static const sample samples[] = {
	{"vane_units_m_from_in", inches, 1, {2.5}},
	{"vane_oil_dynamic_viscosity", viscosity, 2, {32e-6, 860}},
	{"vane_oil_barus", barus, 3, {0.03, 2e-8, 15e6}},
	{"vane_measure_probability", probability, 4, {30e-6, 3e-6, 20e-6, 50e-6}},
	{"vane_oil_walther", walther, 5, {320, 313.15, 32e-6, 373.15, 5.4e-6}},
	{"vane_slot_flow", slot, 6, {0.020, 30e-6, 0.005, 15e6, 8.6e-3, 0.1}},
	{"vane_slot_annulus_flow", annulus, 7, {0.02, 20e-6, 0.03, 0.25, 1e6, 8.6e-3, 0.1}},
};
enum { SAMPLES = sizeof samples / sizeof *samples };

static const sample *const slot_sample = &samples[5];

/* Values that differ from element to element and stay where the formula takes them. */
static double value(const sample *s, int32_t j, int64_t i)
{
	return s->typical[j] * (1 + 1e-4 * (double)((i * (j + 3)) % 97));
}

static bool same_bits(double a, double b)
{
	return memcmp(&a, &b, sizeof a) == 0;
}

/* The arguments of a call, laid out by the strides that it asks for. */
typedef struct layout {
	double data[PARAMETERS][MOST * SPACING];
	const double *argument[PARAMETERS];
	int64_t stride[PARAMETERS];
	double out[MOST + 1];
} layout;

static const double untouched = -12345;

static layout *lay_out(const sample *s, int64_t n, const int64_t stride[PARAMETERS])
{
	layout *l = malloc(sizeof *l);
	ck_assert_ptr_nonnull(l);
	for (int32_t j = 0; j < s->arity; j++) {
		for (int64_t k = 0; k < MOST * SPACING; k++)
			l->data[j][k] = NAN;
		l->stride[j] = stride[j];
		double *start =
			stride[j] < 0 && n > 0 ? &l->data[j][-stride[j] * (n - 1)] : l->data[j];
		for (int64_t i = 0; i < (stride[j] ? n : 1); i++)
			start[i * stride[j]] = value(s, j, i);
		l->argument[j] = start;
	}
	for (int64_t i = 0; i <= MOST; i++)
		l->out[i] = untouched;
	return l;
}

static double scalar(const sample *s, const layout *l, int64_t i, vane_error *error)
{
	double x[PARAMETERS];
	for (int32_t j = 0; j < s->arity; j++)
		x[j] = l->argument[j][i * l->stride[j]];
	return s->call(x, error);
}

static int32_t run(const sample *s, int64_t n, layout *l, vane_error *error)
{
	return vane_array_run(s->name, n, l->argument, l->stride, l->out, error);
}

static void compare(const sample *s, int64_t n, const int64_t stride[PARAMETERS])
{
	layout *l = lay_out(s, n, stride);
	vane_error e;
	ck_assert_msg(run(s, n, l, &e) == VANE_OK, "%s: %s", s->name, e.text);
	ck_assert_int_eq(e.code, VANE_OK);
	ck_assert_int_eq(e.index, -1);
	for (int64_t i = 0; i < n; i++) {
		const double want = scalar(s, l, i, &e);
		ck_assert_msg(isfinite(want), "%s: %s", s->name, e.text);
		ck_assert_msg(same_bits(l->out[i], want), "%s, element %d of %d", s->name, (int)i,
			      (int)n);
	}
	ck_assert(l->out[n] == untouched);
	free(l);
}

static const int64_t sizes[] = {0, 1, 2, 255, 256, 257, 512, MOST};
enum { SIZES = sizeof sizes / sizeof *sizes };

START_TEST(bits_of_the_scalar_call)
{
	static const int64_t strides[][PARAMETERS] = {
		{1, 1, 1, 1, 1, 1, 1},
		{0, 0, 0, 0, 0, 0, 0},
		{2, 2, 2, 2, 2, 2, 2},
		{-1, -1, -1, -1, -1, -1, -1},
		{SPACING, 1, 0, -2, 1, 0, -SPACING},
		{0, -1, 1, 2, -SPACING, 1, 0},
	};
	for (int s = 0; s < SAMPLES; s++)
		for (int k = 0; k < SIZES; k++)
			for (size_t m = 0; m < sizeof strides / sizeof *strides; m++)
				compare(&samples[s], sizes[k], strides[m]);
}
END_TEST

START_TEST(out_may_be_an_argument)
{
	static const int64_t stride[PARAMETERS] = {0, 1, 0, 1, 0, 0};
	const sample *s = slot_sample;
	for (int32_t j = 0; j < s->arity; j++)
		for (int k = 1; k < SIZES; k++) {
			const int64_t n = sizes[k];
			layout *want = lay_out(s, n, stride), *l = lay_out(s, n, stride);
			ck_assert_int_eq(run(s, n, want, NULL), VANE_OK);
			ck_assert_int_eq(vane_array_run(s->name, n, l->argument, l->stride,
							l->data[j], NULL),
					 VANE_OK);
			ck_assert_mem_eq(l->data[j], want->out, (size_t)n * sizeof(double));
			free(want);
			free(l);
		}
}
END_TEST

START_TEST(out_keeps_a_bad_argument_until_it_is_reported)
{
	static const int64_t stride[PARAMETERS] = {0, 1, 0, 1, 0, 0};
	layout *l = lay_out(slot_sample, MOST, stride);
	vane_error e;
	l->data[1][300] = -3;
	ck_assert_int_eq(
		vane_array_run("vane_slot_flow", MOST, l->argument, l->stride, l->data[1], &e),
		VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.index, 300);
	ck_assert_str_eq(e.name, "gap");
	ck_assert(e.value == -3);
	ck_assert(isnan(l->data[1][300]) && l->data[1][299] > 0 && l->data[1][301] > 0);
	free(l);
}
END_TEST

START_TEST(bad_elements_do_not_stop_the_rest)
{
	static const int64_t stride[PARAMETERS] = {1, 1, 0, 2, -1, 1};
	const sample *s = slot_sample;
	const int64_t first[] = {0, 1, 255, 256, 700, 999};
	for (size_t k = 0; k < sizeof first / sizeof *first; k++)
		for (int quiet = 0; quiet < 2; quiet++) {
			layout *l = lay_out(s, MOST, stride);
			l->data[0][first[k]] = NAN;
			/* Later ones, of another name and in another block, are not reported. */
			if (first[k] < 999)
				l->data[1][first[k] + 1] = -1;
			l->data[1][999] = first[k] < 999 ? -2 : l->data[1][999];
			vane_error e, single;
			ck_assert_int_eq(run(s, MOST, l, quiet ? NULL : &e), VANE_INVALID_ARGUMENT);
			for (int64_t i = 0; i < MOST; i++) {
				const double want = scalar(s, l, i, NULL);
				ck_assert(isnan(want) ? isnan(l->out[i])
						      : same_bits(l->out[i], want));
			}
			ck_assert(isnan(l->out[first[k]]));
			if (!quiet) {
				ck_assert(isnan(scalar(s, l, first[k], &single)));
				ck_assert_int_eq(e.code, VANE_INVALID_ARGUMENT);
				ck_assert_int_eq(e.index, first[k]);
				ck_assert_str_eq(e.name, "width");
				ck_assert_str_eq(e.text, single.text);
				ck_assert(isnan(e.value));
			}
			free(l);
		}
}
END_TEST

START_TEST(status_is_the_first_bad_elements)
{
	double width[] = {0.02, 1e300, -1};
	const double gap = 1e100, one = 1;
	const double *argument[] = {width, &gap, &one, &one, &one, &one};
	const int64_t stride[] = {1, 0, 0, 0, 0, 0};
	double out[3];
	vane_error e;
	ck_assert_int_eq(vane_array_run("vane_slot_flow", 3, argument, stride, out, &e),
			 VANE_OUT_OF_RANGE);
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
	ck_assert_int_eq(e.index, 1);
	ck_assert_str_eq(e.name, "result");
	ck_assert(out[0] > 0 && isnan(out[1]) && isnan(out[2]));
	/* A bad value that is repeated is bad from the first element on. */
	const double nan = NAN;
	argument[4] = &nan;
	ck_assert_int_eq(vane_array_run("vane_slot_flow", 3, argument, stride, out, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.index, 0);
	ck_assert_str_eq(e.name, "viscosity");
	ck_assert(isnan(out[0]) && isnan(out[1]) && isnan(out[2]));
	/* A call that succeeds leaves nothing of an earlier error. */
	ck_assert_int_eq(vane_array_run("vane_slot_flow", 0, argument, stride, out, &e), VANE_OK);
	ck_assert_int_eq(e.code, VANE_OK);
	ck_assert_int_eq(e.index, -1);
	ck_assert_str_eq(e.text, "");
}
END_TEST

/* Refused as a whole: NaN throughout, and the parameter named. */
static void refused(const char *formula, int64_t n, const double *const *argument,
		    const int64_t *stride, const char *name, const char *words)
{
	double out[4] = {1, 1, 1, untouched};
	vane_error e;
	ck_assert_int_eq(vane_array_run(formula, n, argument, stride, out, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.code, VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(e.index, -1);
	ck_assert_str_eq(e.name, name);
	ck_assert_msg(strstr(e.text, words) != NULL, "'%s' is not in: %s", words, e.text);
	const size_t length = strlen(e.text);
	ck_assert(length > 0 && e.text[length - 1] == '.');
	for (int i = 0; i < 3; i++)
		ck_assert(n == 3 ? isnan(out[i]) : out[i] == 1);
	ck_assert(out[3] == untouched);
	ck_assert_int_eq(vane_array_run(formula, n, argument, stride, out, NULL),
			 VANE_INVALID_ARGUMENT);
}

START_TEST(rejects)
{
	static const char *const strangers[] = {
		"",
		"slot_flow",
		"vane_slot_flow ",
		"vane_slot_flo",
		"vane_slot_floww",
		"VANE_SLOT_FLOW",
		"vane_a",
		"vane_zzz",
		"zzz",
		"vane_pump_run",
		"vane_array_run",
		"vane_version",
		"%s%n",
		"vane_slot_flow_under_a_name_that_is_longer_than_the_name_in_a_record_of_errors",
	};
	const double ones[4] = {1, 1, 1, 1};
	const double *argument[] = {ones, ones, ones, ones, ones, ones};
	int64_t stride[] = {1, 1, 1, 1, 1, 1};
	const char *const name = "vane_slot_flow";
	for (size_t i = 0; i < sizeof strangers / sizeof *strangers; i++)
		refused(strangers[i], 3, argument, stride, "formula", "vane_slot_flow");
	refused(NULL, 3, argument, stride, "formula", "null pointer");
	refused(name, 3, NULL, stride, "argument", "null pointer");
	refused(name, 3, argument, NULL, "stride", "null pointer");
	refused(name, -1, argument, stride, "n", "between 0 and");
	refused(name, INT64_MIN, argument, stride, "n", "between 0 and");
	refused(name, ((int64_t)1 << 53) + 1, argument, stride, "n", "between 0 and");
	refused(name, INT64_MAX, argument, stride, "n", "between 0 and");
	argument[2] = NULL;
	refused(name, 3, argument, stride, "argument",
		"argument[2], which is parameter 3 of vane_slot_flow");
	refused(name, 0, argument, stride, "argument", "parameter 3");
	argument[2] = ones;
	const int64_t far = (int64_t)1 << 52;
	const int64_t strides[] = {far + 1, -far - 1, INT64_MAX, INT64_MIN};
	for (size_t i = 0; i < sizeof strides / sizeof *strides; i++) {
		stride[5] = strides[i];
		refused(name, 3, argument, stride, "stride",
			"stride[5], which is of parameter 6 of vane_slot_flow");
	}
	/* The last admissible stride lets the next argument be looked at. */
	argument[1] = NULL;
	stride[0] = far;
	refused(name, 3, argument, stride, "argument", "argument[1]");
	stride[0] = -far;
	refused(name, 3, argument, stride, "argument", "argument[1]");
	argument[1] = ones;
	double out = 0;
	vane_error e;
	/* One element is reached by any stride, and none by none. */
	ck_assert_int_eq(vane_array_run(name, 1, argument, stride, &out, &e), VANE_OK);
	ck_assert(same_bits(out, vane_slot_flow(1, 1, 1, 1, 1, 1, NULL)));
	ck_assert_int_eq(vane_array_run(name, 0, argument, stride, &out, &e), VANE_OK);
	ck_assert_int_eq(vane_array_run(name, 3, argument, stride, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "out");
}
END_TEST

START_TEST(knows_the_formulas_of_every_topic)
{
	/* The first and the last of the table among them. */
	static const struct {
		const char *name;
		int32_t arity;
	} known[] = {
		{"vane_clearance_thermal", 6},
		{"vane_displacement_eccentric", 4},
		{"vane_displacement_roots_outlet", 5},
		{"vane_displacement_roots_zone", 3},
		{"vane_measure_probability", 4},
		{"vane_measure_rectangular", 1},
		{"vane_oil_grade_viscosity", 1},
		{"vane_oil_index", 2},
		{"vane_oil_walther", 5},
		{"vane_shaft_ideal_torque", 2},
		{"vane_shaft_power", 2},
		{"vane_slot_annulus_flow", 7},
		{"vane_slot_flow", 6},
		{"vane_slot_orifice_flow", 5},
		{"vane_slot_tip_flow", 7},
		{"vane_stand_speed_corrected", 4},
		{"vane_stand_volumetric_efficiency", 3},
		{"vane_thread_preload", 6},
		{"vane_thread_von_mises", 2},
		{"vane_units_bar_from_pa", 1},
		{"vane_units_w_from_hp", 1},
		{"vane_units_w_from_kw", 1},
	};
	const double one = 1;
	double out;
	vane_error e;
	for (size_t i = 0; i < sizeof known / sizeof *known; i++) {
		/* The last parameter must be there, and nothing beyond it is looked at. */
		const double *argument[PARAMETERS + 1] = {NULL};
		const int64_t stride[PARAMETERS + 1] = {0};
		char position[32];
		snprintf(position, sizeof position, "parameter %d of", (int)known[i].arity);
		for (int32_t j = 0; j < known[i].arity; j++) {
			ck_assert_int_eq(
				vane_array_run(known[i].name, 0, argument, stride, &out, &e),
				VANE_INVALID_ARGUMENT);
			ck_assert_str_eq(e.name, "argument");
			argument[j] = &one;
		}
		ck_assert_msg(strstr(e.text, position) != NULL, "%s: %s", known[i].name, e.text);
		ck_assert_msg(vane_array_run(known[i].name, 0, argument, stride, &out, &e) ==
				      VANE_OK,
			      "%s: %s", known[i].name, e.text);
	}
}
END_TEST

SUITE("array", bits_of_the_scalar_call, out_may_be_an_argument,
      out_keeps_a_bad_argument_until_it_is_reported, bad_elements_do_not_stop_the_rest,
      status_is_the_first_bad_elements, rejects, knows_the_formulas_of_every_topic)
