#include "vane/array.h"

#include "check.h"
#include "vane.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Up to here an int64_t is a double as well, and eight times it is an offset in bytes. */
static const int64_t greatest = INT64_C(1) << 53;

enum { BLOCK = 256, GREATEST_ARITY = 12 };

#define EACH_ARITY(DO) DO(1) DO(2) DO(3) DO(4) DO(5) DO(6) DO(7) DO(8) DO(9) DO(10) DO(11) DO(12)

/* As many parameters of a formula. */
#define DOUBLES_1 double
#define DOUBLES_2 DOUBLES_1, double
#define DOUBLES_3 DOUBLES_2, double
#define DOUBLES_4 DOUBLES_3, double
#define DOUBLES_5 DOUBLES_4, double
#define DOUBLES_6 DOUBLES_5, double
#define DOUBLES_7 DOUBLES_6, double
#define DOUBLES_8 DOUBLES_7, double
#define DOUBLES_9 DOUBLES_8, double
#define DOUBLES_10 DOUBLES_9, double
#define DOUBLES_11 DOUBLES_10, double
#define DOUBLES_12 DOUBLES_11, double

/* As many elements of a block. */
#define ELEMENTS_1 argument[0][i]
#define ELEMENTS_2 ELEMENTS_1, argument[1][i]
#define ELEMENTS_3 ELEMENTS_2, argument[2][i]
#define ELEMENTS_4 ELEMENTS_3, argument[3][i]
#define ELEMENTS_5 ELEMENTS_4, argument[4][i]
#define ELEMENTS_6 ELEMENTS_5, argument[5][i]
#define ELEMENTS_7 ELEMENTS_6, argument[6][i]
#define ELEMENTS_8 ELEMENTS_7, argument[7][i]
#define ELEMENTS_9 ELEMENTS_8, argument[8][i]
#define ELEMENTS_10 ELEMENTS_9, argument[9][i]
#define ELEMENTS_11 ELEMENTS_10, argument[10][i]
#define ELEMENTS_12 ELEMENTS_11, argument[11][i]

/* A pointer of the formula's own type, so that the compiler holds the table to the headers. */
typedef union function {
#define MEMBER(arity) double (*of_##arity)(DOUBLES_##arity, vane_error *);
	EACH_ARITY(MEMBER)
#undef MEMBER
} function;

/* Elements `first` to `end` of contiguous arguments. */
typedef void loop(function f, const double *const *argument, int32_t first, int32_t end,
		  double *out, vane_error *error);

#define LOOP(arity)                                                                                \
	static void loop_##arity(function f, const double *const *argument, int32_t first,         \
				 int32_t end, double *out, vane_error *error)                      \
	{                                                                                          \
		for (int32_t i = first; i < end; i++)                                              \
			out[i] = f.of_##arity(ELEMENTS_##arity, error);                            \
	}
EACH_ARITY(LOOP)
#undef LOOP

static loop *const loops[] = {
#define PLACE(arity) [arity] = loop_##arity,
	EACH_ARITY(PLACE)
#undef PLACE
};

typedef struct entry {
	const char *name;
	function call;
	int32_t arity;
} entry;

static const entry table[] = {
#define FORMULA(name, arity) {#name, {.of_##arity = name}, arity},
#include "array_table.h"
#undef FORMULA
};

static int by_name(const void *name, const void *other)
{
	return strcmp(name, ((const entry *)other)->name);
}

static const entry *look_up(const char *name, vane_error *error)
{
	const entry *f = bsearch(name, table, sizeof table / sizeof *table, sizeof *table, by_name);
	if (!f)
		vn_fail(VANE_INVALID_ARGUMENT, "formula", 0,
			"formula must be the C name of a function that takes doubles and returns "
			"one, such as vane_slot_flow.",
			error);
	return f;
}

static bool argument_ok(const entry *f, int32_t j, const double *argument, vane_error *error)
{
	if (argument)
		return true;
	char text[sizeof error->text];
	snprintf(text, sizeof text,
		 "argument[%" PRId32 "], which is parameter %" PRId32
		 " of %s, must not be a null pointer.",
		 j, j + 1, f->name);
	return vn_fail(VANE_INVALID_ARGUMENT, "argument", 0, text, error);
}

static bool stride_ok(const entry *f, int32_t j, int64_t n, int64_t stride, vane_error *error)
{
	if (n < 2 || (stride <= greatest / (n - 1) && stride >= -(greatest / (n - 1))))
		return true;
	char text[sizeof error->text];
	snprintf(text, sizeof text,
		 "stride[%" PRId32 "], which is of parameter %" PRId32
		 " of %s, must be at most 2^53 in size when multiplied by n - 1.",
		 j, j + 1, f->name);
	return vn_fail(VANE_INVALID_ARGUMENT, "stride", (double)stride, text, error);
}

static const entry *admit(const char *name, int64_t n, const double *const *argument,
			  const int64_t *stride, vane_error *error)
{
	const entry *f = vn_pointer(name, "formula", error) ? look_up(name, error) : NULL;
	if (!f || !vn_pointer(argument, "argument", error) || !vn_pointer(stride, "stride", error))
		return NULL;
	for (int32_t j = 0; j < f->arity; j++)
		if (!argument_ok(f, j, argument[j], error) || !stride_ok(f, j, n, stride[j], error))
			return NULL;
	return f;
}

/* A result of NaN is a refusal; asked again with an error record, the formula says why. */
static int32_t explain(const entry *f, const double *const *argument, const double *block,
		       int32_t count, int64_t first, vane_error *error)
{
	double again[BLOCK];
	int32_t status = VANE_OK;
	for (int32_t i = 0; i < count && status == VANE_OK; i++)
		if (isnan(block[i])) {
			loops[f->arity](f->call, argument, i, i + 1, again, error);
			vn_at(first + i, error);
			status = error->code;
		}
	return status;
}

static bool any_nan(const double *x, int32_t count)
{
	int32_t found = 0;
	for (int32_t i = 0; i < count; i++)
		found |= isnan(x[i]) != 0;
	return found;
}

static int32_t run(const entry *f, int64_t n, const double *const *argument, const int64_t *stride,
		   double *out, vane_error *error)
{
	double gathered[GREATEST_ARITY][BLOCK];
	const double *ready[GREATEST_ARITY];
	/* out may be one of the arguments. */
	double block[BLOCK];
	int32_t status = VANE_OK;
	for (int32_t j = 0; j < f->arity; j++)
		if (stride[j] == 0)
			for (int32_t i = 0; i < BLOCK && i < n; i++)
				gathered[j][i] = argument[j][0];
	for (int64_t first = 0; first < n; first += BLOCK) {
		const int32_t count = n - first < BLOCK ? (int32_t)(n - first) : BLOCK;
		for (int32_t j = 0; j < f->arity; j++) {
			ready[j] = stride[j] == 1 ? argument[j] + first : gathered[j];
			if (stride[j] != 0 && stride[j] != 1)
				for (int32_t i = 0; i < count; i++)
					gathered[j][i] = argument[j][(first + i) * stride[j]];
		}
		loops[f->arity](f->call, ready, 0, count, block, NULL);
		if (status == VANE_OK && any_nan(block, count))
			status = explain(f, ready, block, count, first, error);
		memcpy(out + first, block, (size_t)count * sizeof *block);
	}
	return status;
}

int32_t vane_array_run(const char *formula, int64_t n, const double *const *argument,
		       const int64_t *stride, double *out, vane_error *error)
{
	vane_error own;
	if (!error)
		error = &own;
	vn_begin(error);
	if (!vn_pointer(out, "out", error) || !vn_count(n, 0, greatest, "n", error))
		return error->code;
	const entry *f = admit(formula, n, argument, stride, error);
	if (f)
		return run(f, n, argument, stride, out, error);
	for (int64_t i = 0; i < n; i++)
		out[i] = NAN;
	return error->code;
}
