#include "slot.h"

/* Twelve terms leave less than 1e-17 of the sum up to here; above it the
 * subtraction costs no more than half of the digits of 1. */
static const double series_end = 2;
enum { TERMS = 12 };

double vn_log_ratio(double inner, double outer)
{
	const double excess = (outer - inner) / inner;
	return isfinite(excess) ? log1p(excess) : log(outer) - log(inner);
}

static double series(double x)
{
	const double square = x * x;
	double sum = 1;
	for (int k = TERMS; k > 1; k--)
		sum = 1 + square / (2 * k * (2 * k + 1)) * sum;
	return square / 6 * sum;
}

double vn_sinhc_excess(double x, double sinh_x)
{
	return x <= series_end ? series(x) : sinh_x / x - 1;
}

double vn_sinhc_share(double inner, double outer, double x)
{
	if (x <= series_end)
		return inner * series(x);
	return (outer - inner * (inner / outer)) / (2 * x) - inner;
}
