/*
 * Sums, products and quotients in twice the digits of a double, for formulas of
 * a dozen factors and for differences that nearly vanish: rounded once at the
 * end they keep within an ulp or two.
 */
#ifndef VANE_LIB_TWOFOLD_H
#define VANE_LIB_TWOFOLD_H

#include <math.h>

/* The unrounded sum of the two; low is some ulps of high at most. */
typedef struct vn_two {
	double high, low;
} vn_two;

static const vn_two vn_two_pi = {3.14159265358979323846, 1.2246467991473532e-16};

static inline vn_two vn_two_of(double x)
{
	return (vn_two){x, 0};
}

static inline vn_two vn_two_sum(double a, double b)
{
	const double high = a + b, part = high - a;
	return (vn_two){high, (a - (high - part)) + (b - part)};
}

static inline vn_two vn_two_plus(vn_two a, vn_two b)
{
	const vn_two s = vn_two_sum(a.high, b.high);
	return vn_two_sum(s.high, s.low + (a.low + b.low));
}

static inline vn_two vn_two_minus(vn_two a, vn_two b)
{
	return vn_two_plus(a, (vn_two){-b.high, -b.low});
}

static inline vn_two vn_two_times(vn_two a, vn_two b)
{
	const double high = a.high * b.high;
	return (vn_two){high, fma(a.high, b.high, -high) + (a.high * b.low + a.low * b.high)};
}

static inline vn_two vn_two_over(vn_two a, vn_two b)
{
	const double high = a.high / b.high;
	return (vn_two){high, (fma(-high, b.high, a.high) + a.low - high * b.low) / b.high};
}

static inline vn_two vn_two_scaled(vn_two a, double x)
{
	return vn_two_times(a, vn_two_of(x));
}

static inline vn_two vn_two_ratio(double a, double b)
{
	return vn_two_over(vn_two_of(a), vn_two_of(b));
}

static inline vn_two vn_two_square(vn_two a)
{
	return vn_two_times(a, a);
}

/* Where a product has left the range of a double its low part means nothing. */
static inline double vn_two_round(vn_two a)
{
	return isfinite(a.low) ? a.high + a.low : a.high;
}

static inline double vn_two_cbrt(vn_two a)
{
	const double y = cbrt(a.high);
	if (!(y != 0 && isfinite(y)))
		return y;
	const vn_two cube = vn_two_scaled(vn_two_square(vn_two_of(y)), y);
	const double more = ((a.high - cube.high) + (a.low - cube.low)) / (3 * y * y);
	return isfinite(more) ? y + more : y;
}

#endif
