/*
 * Rows: a value from outside the code it checks, with its source beside it.
 * A comparison fails on NaN.
 */
#ifndef VANE_TESTS_ROW_H
#define VANE_TESTS_ROW_H

#include <check.h>
#include <math.h>

/* One published value: the id, where it is printed, what libvane gives, what
 * is printed, and how far the two may differ (half the last printed digit
 * unless the row says why not). */
typedef struct row {
	const char *source;
	double got, want, tolerance;
} row;

/* Appends the row to the file that VANE_ROWS names, if it names one: the
 * documentation shows what is published beside what comes out here. */
void row_note(const row *r);

static inline void row_check(const row *r)
{
	row_note(r);
	ck_assert_msg(fabs(r->got - r->want) <= r->tolerance, "%s: got %.12g, want %.12g +- %.3g",
		      r->source, r->got, r->want, r->tolerance);
}

#define ROWS_CHECK(rows)                                                                           \
	for (size_t row_i = 0; row_i < sizeof(rows) / sizeof *(rows); row_i++)                     \
	row_check(&(rows)[row_i])

/* got equals want to a relative tolerance. */
#define CHECK_NEAR(got, want, relative)                                                            \
	do {                                                                                       \
		const double got_ = (got), want_ = (want);                                         \
		ck_assert_msg(fabs(got_ - want_) <= fabs(want_) * (relative) + 1e-300,             \
			      #got ": got %.15g, want %.15g", got_, want_);                        \
	} while (0)

/* The call fails: NaN out, and the error names the parameter. */
#define CHECK_REJECTS(call, error, parameter)                                                      \
	do {                                                                                       \
		ck_assert(isnan(call));                                                            \
		ck_assert_int_eq((error).code, VANE_INVALID_ARGUMENT);                             \
		ck_assert_str_eq((error).name, parameter);                                         \
		ck_assert(strstr((error).text, parameter) != NULL);                                \
	} while (0)

/* Every test program is one suite; the list of its tests closes the file. The
 * counting GSL handler lives in suite.c. */
int suite_run(const char *topic, const TTest *const *tests, int count);

#define SUITE(topic, ...)                                                                          \
	int main(void)                                                                             \
	{                                                                                          \
		const TTest *const tests[] = {__VA_ARGS__};                                        \
		return suite_run(topic, tests, (int)(sizeof tests / sizeof *tests));               \
	}

#endif
