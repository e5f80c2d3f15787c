#include "fit.h"

#include "check.h"

#include <math.h>

static double saturation(const double *b, double x, double *d)
{
	const double e = exp(-b[1] * x);
	d[0] = -expm1(-b[1] * x);
	d[1] = b[0] * x * e;
	return b[0] * d[0];
}

static double decay(const double *b, double x, double *d)
{
	d[0] = exp(-b[1] * x);
	d[1] = -b[0] * x * d[0];
	d[2] = 1;
	return b[0] * d[0] + b[2];
}

static double two_decays(const double *b, double x, double *d)
{
	d[0] = 1;
	d[1] = exp(-b[3] * x);
	d[2] = exp(-b[4] * x);
	d[3] = -b[1] * x * d[1];
	d[4] = -b[2] * x * d[2];
	return b[0] + b[1] * d[1] + b[2] * d[2];
}

static double power(const double *b, double x, double *d)
{
	d[0] = pow(x, b[1]);
	d[1] = b[0] * d[0] * log(x);
	return b[0] * d[0];
}

static double power_offset(const double *b, double x, double *d)
{
	d[0] = 1;
	d[1] = pow(x, b[2]);
	d[2] = b[1] * d[1] * log(x);
	return b[0] + b[1] * d[1];
}

static double vogel(const double *b, double x, double *d)
{
	const double r = x + b[2];
	d[0] = exp(b[1] / r);
	d[1] = b[0] * d[0] / r;
	d[2] = -d[1] * b[1] / r;
	return b[0] * d[0];
}

static double hyperbola(const double *b, double x, double *d)
{
	const double r = 1 + b[1] * x;
	d[0] = b[1] * x / r;
	d[1] = b[0] * x / r / r;
	return b[0] * d[0];
}

static double decay_ratio(const double *b, double x, double *d)
{
	const double r = b[1] + b[2] * x, y = exp(-b[0] * x) / r;
	d[0] = -x * y;
	d[1] = -y / r;
	d[2] = x * d[1];
	return y;
}

static double quadratic_ratio(const double *b, double x, double *d)
{
	const double top = x * (x + b[1]), below = x * (x + b[2]) + b[3];
	d[0] = top / below;
	d[1] = b[0] * x / below;
	d[3] = -b[0] * d[0] / below;
	d[2] = x * d[3];
	return b[0] * d[0];
}

static double cubic_ratio(const double *b, double x, double *d)
{
	const double below = 1 + x * (b[4] + x * (b[5] + x * b[6]));
	const double y = (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / below;
	d[0] = 1 / below;
	for (int32_t i = 1; i < 4; i++)
		d[i] = x * d[i - 1];
	for (int32_t i = 4; i < 7; i++)
		d[i] = -y * d[i - 3];
	return y;
}

static double logistic(const double *b, double x, double *d)
{
	const double e = exp(b[1] - b[2] * x);
	d[0] = 1 / (1 + e);
	d[1] = -b[0] * d[0] / (1 + 1 / e);
	d[2] = -x * d[1];
	return b[0] * d[0];
}

static double stribeck(const double *b, double x, double *d)
{
	d[0] = 1;
	d[1] = exp(-b[2] * x);
	d[2] = -b[1] * x * d[1];
	d[3] = x;
	return b[0] + b[1] * d[1] + b[3] * x;
}

typedef struct model {
	double (*at)(const double *b, double x, double *slope);
	int32_t coefficients;
	bool positive;
} model;

static const model models[] = {
	[VANE_FIT_SATURATION] = {saturation, 2, false},
	[VANE_FIT_DECAY] = {decay, 3, false},
	[VANE_FIT_TWO_DECAYS] = {two_decays, 5, false},
	[VANE_FIT_POWER] = {power, 2, true},
	[VANE_FIT_POWER_OFFSET] = {power_offset, 3, true},
	[VANE_FIT_VOGEL] = {vogel, 3, false},
	[VANE_FIT_HYPERBOLA] = {hyperbola, 2, false},
	[VANE_FIT_DECAY_RATIO] = {decay_ratio, 3, false},
	[VANE_FIT_QUADRATIC_RATIO] = {quadratic_ratio, 4, false},
	[VANE_FIT_CUBIC_RATIO] = {cubic_ratio, 7, false},
	[VANE_FIT_LOGISTIC] = {logistic, 3, false},
	[VANE_FIT_STRIBECK] = {stribeck, 4, false},
};

double vn_model(int32_t number, const double *b, double x, double *slope)
{
	return models[number].at(b, x, slope);
}

bool vn_model_ok(int32_t number, int64_t coefficients, const double *x, int64_t n,
		 vane_error *error)
{
	if (!vn_count(number, VANE_FIT_SATURATION, VANE_FIT_STRIBECK, "model", error) ||
	    !vn_count(coefficients, models[number].coefficients, models[number].coefficients,
		      "coefficients", error) ||
	    !vn_fit_array_ok(x, n, "x", error))
		return false;
	for (int64_t i = 0; models[number].positive && i < n; i++) {
		if (!vn_above(x[i], 0, "x", "", error)) {
			vn_at(i, error);
			return false;
		}
	}
	return true;
}
