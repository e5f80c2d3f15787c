#include "check.h"

#include <math.h>
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

static bool reject(double x, const char *name, const char *unit, const char *range,
		   vane_error *error)
{
	if (!error)
		return false;
	char got[NUMBER];
	error->value = x;
	error->index = -1;
	error->code = VANE_INVALID_ARGUMENT;
	snprintf(error->name, sizeof error->name, "%s", name);
	snprintf(error->text, sizeof error->text, "%s must be %s; it is %s%s%s.", name, range,
		 number(got, x), *unit ? " " : "", unit);
	return false;
}

static bool reject_limit(double x, const char *relation, double limit, const char *name,
			 const char *unit, vane_error *error)
{
	char range[80], text[NUMBER];
	snprintf(range, sizeof range, "finite and %s %s%s%s", relation, number(text, limit),
		 *unit ? " " : "", unit);
	return reject(x, name, unit, range, error);
}

void vn_begin(vane_error *error)
{
	if (!error)
		return;
	error->value = 0;
	error->index = -1;
	error->code = VANE_OK;
	error->name[0] = '\0';
	error->text[0] = '\0';
}

bool vn_finite(double x, const char *name, const char *unit, vane_error *error)
{
	return isfinite(x) || reject(x, name, unit, "finite", error);
}

bool vn_above(double x, double limit, const char *name, const char *unit, vane_error *error)
{
	return (x > limit && isfinite(x)) ||
	       reject_limit(x, "greater than", limit, name, unit, error);
}

bool vn_least(double x, double limit, const char *name, const char *unit, vane_error *error)
{
	return (x >= limit && isfinite(x)) || reject_limit(x, "at least", limit, name, unit, error);
}

bool vn_between(double x, double low, double high, const char *name, const char *unit,
		vane_error *error)
{
	if (x >= low && x <= high)
		return true;
	char range[80], from[NUMBER], to[NUMBER];
	snprintf(range, sizeof range, "between %s and %s%s%s", number(from, low), number(to, high),
		 *unit ? " " : "", unit);
	return reject(x, name, unit, range, error);
}

bool vn_count(int64_t n, int64_t low, int64_t high, const char *name, vane_error *error)
{
	return vn_between((double)n, (double)low, (double)high, name, "", error);
}

bool vn_pointer(const void *p, const char *name, vane_error *error)
{
	if (p)
		return true;
	char text[96];
	snprintf(text, sizeof text, "%s must not be a null pointer.", name);
	return vn_fail(VANE_INVALID_ARGUMENT, name, 0, text, error);
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

double vn_result(double x, vane_error *error)
{
	if (isfinite(x))
		return x;
	vn_fail(VANE_OUT_OF_RANGE, "result", x,
		"The parameters are admissible one by one, but the result is too large for a "
		"double.",
		error);
	return NAN;
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
