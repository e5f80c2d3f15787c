#include "check.h"

#include <stdio.h>
#include <string.h>

enum { NUMBER = 32 };

/* printf writes the decimal sign of the host's locale; a library's text must
 * not depend on it. */
static const char *number(char text[NUMBER], double x)
{
	snprintf(text, NUMBER, "%.9g", x);
	char *out = text;
	for (const char *in = text; *in; in++) {
		if (strchr("0123456789+-einfa", *in))
			*out++ = *in;
		else if (out == text || out[-1] != '.')
			*out++ = '.';
	}
	*out = '\0';
	return text;
}

static void refuse(double x, const char *name, const char *unit, const char *range,
		   vane_error *error)
{
	if (!error)
		return;
	char got[NUMBER];
	error->value = x;
	error->index = -1;
	error->code = VANE_INVALID_ARGUMENT;
	snprintf(error->name, sizeof error->name, "%s", name);
	snprintf(error->text, sizeof error->text, "%s must be %s; it is %s%s%s.", name, range,
		 number(got, x), *unit ? " " : "", unit);
}

static void refuse_limit(double x, const char *relation, double limit, const char *name,
			 const char *unit, vane_error *error)
{
	if (!error)
		return;
	char range[80], text[NUMBER];
	snprintf(range, sizeof range, "finite and %s %s%s%s", relation, number(text, limit),
		 *unit ? " " : "", unit);
	refuse(x, name, unit, range, error);
}

void vn_refuse_finite(double x, const char *name, const char *unit, vane_error *error)
{
	refuse(x, name, unit, "finite", error);
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
	char range[80], from[NUMBER], to[NUMBER];
	snprintf(range, sizeof range, "between %s and %s%s%s", number(from, low), number(to, high),
		 *unit ? " " : "", unit);
	refuse(x, name, unit, range, error);
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
