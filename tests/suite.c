/* Runs one suite in Check's fork mode under a GSL error handler that counts:
 * the library must never reach it, and must leave the host's handler alone. */
#include "row.h"

#include <gsl/gsl_errno.h>
#include <stdio.h>
#include <stdlib.h>

void row_note(const row *r)
{
	const char *path = getenv("VANE_ROWS");
	FILE *file = path ? fopen(path, "a") : NULL;
	if (!file)
		return;
	/* Appended by one write when the buffer is flushed, for tests run as processes. */
	fprintf(file, "%s\t%.17g\t%.17g\t%.17g\n", r->source, r->got, r->want, r->tolerance);
	ck_assert(fclose(file) == 0);
}

static int gsl_errors;

static void count_gsl_error(const char *reason, const char *file, int line, int code)
{
	(void)reason, (void)file, (void)line, (void)code;
	gsl_errors++;
}

static void setup(void)
{
	gsl_errors = 0;
	gsl_set_error_handler(count_gsl_error);
}

static void teardown(void)
{
	ck_assert_msg(gsl_errors == 0, "the library reached GSL's error handler %d times",
		      gsl_errors);
	ck_assert_msg(gsl_set_error_handler(NULL) == count_gsl_error,
		      "the library replaced the host's GSL error handler");
}

int suite_run(const char *topic, const TTest *const *tests, int count)
{
	Suite *suite = suite_create(topic);
	TCase *tcase = tcase_create(topic);
	tcase_add_checked_fixture(tcase, setup, teardown);
	tcase_set_timeout(tcase, 120);
	for (int i = 0; i < count; i++)
		tcase_add_test(tcase, tests[i]);
	suite_add_tcase(suite, tcase);
	SRunner *runner = srunner_create(suite);
	srunner_run_all(runner, CK_NORMAL);
	const int failed = srunner_ntests_failed(runner);
	srunner_free(runner);
	return failed ? EXIT_FAILURE : EXIT_SUCCESS;
}
