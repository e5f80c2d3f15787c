#include "check.h"

#include <inttypes.h>
#include <stdio.h>
#include <string.h>

enum { NUMBER = 32, USUAL_DIGITS = 9, ALL_DIGITS = 17 };

/* printf writes the decimal sign of the host's locale, and the sign of a NaN as
 * the host has it; a library's text must not depend on either. */
static const char *number(char text[NUMBER], double x, int digits)
{
	if (isnan(x))
		return "nan";
	snprintf(text, NUMBER, "%.*g", digits, x);
	char *out = text;
	for (const char *in = text; *in; in++) {
		if (strchr("0123456789+-einf", *in))
			*out++ = *in;
		else if (out == text || out[-1] != '.')
			*out++ = '.';
	}
	*out = '\0';
	return text;
}

/* The usual digits, or as many more as tell a value from a limit that it has passed. */
static int digits_between(double x, double limit)
{
	char left[NUMBER], right[NUMBER];
	int digits = USUAL_DIGITS;
	while (x != limit && digits < ALL_DIGITS &&
	       strcmp(number(left, x, digits), number(right, limit, digits)) == 0)
		digits++;
	return digits;
}

static void refuse(const char *got, double x, const char *name, const char *unit, const char *range,
		   vane_error *error)
{
	error->value = x;
	error->index = -1;
	error->code = VANE_INVALID_ARGUMENT;
	snprintf(error->name, sizeof error->name, "%s", name);
	snprintf(error->text, sizeof error->text, "%s must be %s; it is %s%s%s.", name, range, got,
		 *unit ? " " : "", unit);
}

static void refuse_limit(double x, const char *relation, double limit, const char *name,
			 const char *unit, vane_error *error)
{
	if (!error)
		return;
	const int digits = digits_between(x, limit);
	char range[80], text[NUMBER];
	snprintf(range, sizeof range, "finite and %s %s%s%s", relation, number(text, limit, digits),
		 *unit ? " " : "", unit);
	refuse(number(text, x, digits), x, name, unit, range, error);
}

void vn_refuse_finite(double x, const char *name, const char *unit, vane_error *error)
{
	char text[NUMBER];
	if (error)
		refuse(number(text, x, USUAL_DIGITS), x, name, unit, "finite", error);
}

void vn_refuse_above(double x, double limit, const char *name, const char *unit, vane_error *error)
{
	refuse_limit(x, "greater than", limit, name, unit, error);
}

void vn_refuse_least(double x, double limit, const char *name, const char *unit, vane_error *error)
{
	refuse_limit(x, "at least", limit, name, unit, error);
}

void vn_refuse_between(double x, double low, double high, const char *name, const char *unit,
		       vane_error *error)
{
	if (!error)
		return;
	const int below = digits_between(x, low), above = digits_between(x, high);
	const int digits = below > above ? below : above;
	char range[80], from[NUMBER], to[NUMBER];
	snprintf(range, sizeof range, "between %s and %s%s%s", number(from, low, digits),
		 number(to, high, digits), *unit ? " " : "", unit);
	refuse(number(from, x, digits), x, name, unit, range, error);
}

void vn_refuse_count(int64_t n, int64_t low, int64_t high, const char *name, vane_error *error)
{
	if (!error)
		return;
	char range[80], got[NUMBER];
	snprintf(range, sizeof range, "between %" PRId64 " and %" PRId64, low, high);
	snprintf(got, sizeof got, "%" PRId64, n);
	refuse(got, (double)n, name, "", range, error);
}

void vn_refuse_pointer(const char *name, vane_error *error)
{
	char text[96];
	snprintf(text, sizeof text, "%s must not be a null pointer.", name);
	vn_fail(VANE_INVALID_ARGUMENT, name, 0, text, error);
}

bool vn_fail(int32_t code, const char *name, double value, const char *text, vane_error *error)
{
	if (!error)
		return false;
	error->value = value;
	error->index = -1;
	error->code = code;
	snprintf(error->name, sizeof error->name, "%s", name);
	snprintf(error->text, sizeof error->text, "%s", text);
	return false;
}

void vn_refuse_result(double x, vane_error *error)
{
	vn_fail(VANE_OUT_OF_RANGE, "result", x,
		"The parameters are admissible one by one, but the result is too large for a "
		"double.",
		error);
}

void vn_at(int64_t index, vane_error *error)
{
	if (error && error->code != VANE_OK)
		error->index = index;
}

void vn_within(const char *record, vane_error *error)
{
	if (!error || error->code == VANE_OK)
		return;
	char plain[sizeof error->name], sentence[sizeof error->text];
	memcpy(plain, error->name, sizeof plain);
	memcpy(sentence, error->text, sizeof sentence);
	snprintf(error->name, sizeof error->name, "%s.%.*s", record,
		 (int)(sizeof plain - strlen(record) - 2), plain);
	/* The sentence begins with the name only where a check wrote it. */
	if (strncmp(sentence, plain, strlen(plain)) == 0)
		snprintf(error->text, sizeof error->text, "%s.%.*s", record,
			 (int)(sizeof sentence - strlen(record) - 2), sentence);
}
