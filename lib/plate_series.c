#include "plate.h"
#include "twofold.h"

#include <math.h>

/* Where the series hands over to the closed form, which by then cancels little. */
static const double handover = 4;

/* Sum over k >= from of (double_part 2^k + constant + linear k) s^k/k!, times
 * exp(-decay s). The coefficients are small whole numbers, none negative. */
static double series(double s, double double_part, double constant, double linear, int from,
		     double decay)
{
	double power = 1, two = 1, sum = 0;
	for (int k = 1; k < 100; k++) {
		power *= s / k;
		two *= 2;
		if (k < from)
			continue;
		const double term = (double_part * two + constant + linear * k) * power;
		sum += term;
		if (term < sum * 1e-18 && k > from)
			break;
	}
	return sum * exp(-decay * s);
}

/* s exp(-s), and 0 where s is infinite. */
static double fading(double s)
{
	return s < 1000 ? s * exp(-s) : 0;
}

double vn_plate_log(double r, double r0)
{
	if (r < 2 * r0) {
		const vn_two x = vn_two_over(vn_two_sum(r, -r0), vn_two_of(r0));
		return 2 * (log1p(x.high) + x.low / (1 + x.high));
	}
	const vn_two x = vn_two_ratio(r, r0);
	const double more = x.low / x.high;
	return 2 * (isfinite(more) ? log(x.high) + more : log(x.high));
}

double vn_plate_two(double s)
{
	return s < handover ? series(s, 0, 1, 0, 2, 1) : 1 - exp(-s) - fading(s);
}

double vn_plate_three(double s)
{
	return s < handover ? series(s, 0, -2, 1, 3, 1) / 2 : s / 2 + fading(s) / 2 + expm1(-s);
}

double vn_plate_six(double s)
{
	return s < handover ? series(s, 0, -1, 1, 2, 1) : s + expm1(-s);
}

double vn_plate_eleven(double s)
{
	if (s < handover)
		return series(s, 1, 4, -4, 4, 2);
	const double square = exp(-s);
	return 1 + square * (4 - 5 * square) - 2 * fading(s) * (2 + square);
}

double vn_plate_fourteen(double s)
{
	return s < handover ? series(s, 1, 0, -2, 3, 2) : -expm1(-2 * s) - 2 * fading(s);
}
