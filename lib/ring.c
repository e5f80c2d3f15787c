#include "ring.h"

#include "check.h"

#include <gsl/gsl_integration.h>
#include <math.h>

#define PI 3.14159265358979323846

static vane_ring_lift constant_acceleration(double u)
{
	if (u < 0.5)
		return (vane_ring_lift){2 * u * u, 4 * u, 4, 0};
	const double v = 1 - u;
	return (vane_ring_lift){1 - 2 * v * v, 4 * v, -4, 0};
}

/* The lift is written as sin^2, which keeps its digits where 1 - cos loses them. */
static vane_ring_lift simple_harmonic(double u)
{
	const double s = sin(PI * u / 2), rate = sin(PI * u);
	return (vane_ring_lift){s * s, PI / 2 * rate, PI * PI / 2 * cos(PI * u),
				-PI * PI * PI / 2 * rate};
}

/* x - sin x without the cancellation at small x. */
static double sine_defect(double x)
{
	if (x > 0.5)
		return x - sin(x);
	const double x2 = x * x;
	double term = x * x2 / 6, sum = 0;
	for (int k = 4; fabs(term) > 1e-18 * fabs(sum); k += 2) {
		sum += term;
		term *= -x2 / (k * (k + 1));
	}
	return sum;
}

static vane_ring_lift cycloidal(double u)
{
	const double x = 2 * PI * u;
	/* 1 - cos x = 2 sin^2(x/2) */
	const double s = sin(PI * u);
	const double lift =
		u <= 0.5 ? sine_defect(x) / (2 * PI) : 1 - sine_defect(2 * PI * (1 - u)) / (2 * PI);
	return (vane_ring_lift){lift, 2 * s * s, 2 * PI * sin(x), 4 * PI * PI * cos(x)};
}

static vane_ring_lift polynomial_345(double u)
{
	const double v = 1 - u;
	return (vane_ring_lift){u * u * u * (10 + u * (-15 + 6 * u)), 30 * u * u * v * v,
				60 * u * v * (v - u), 60 + 360 * u * (u - 1)};
}

static vane_ring_lift polynomial_4567(double u)
{
	const double v = 1 - u, uv = u * v, u2 = u * u;
	return (vane_ring_lift){u2 * u2 * (35 + u * (-84 + u * (70 - 20 * u))), 140 * uv * uv * uv,
				420 * uv * uv * (v - u), 840 * uv * (1 - 5 * uv)};
}

/* Of a law whose acceleration is pieced together, from its first half. */
static vane_ring_lift mirrored(vane_ring_lift (*half)(double), double u)
{
	if (u < 0.5)
		return half(u);
	const vane_ring_lift l = half(1 - u);
	return (vane_ring_lift){1 - l.lift, l.velocity, -l.acceleration, l.jerk};
}

/* Acceleration rises from 0 to its peak by a quarter of a sine, over an eighth. */
static vane_ring_lift quarter_sine(double peak, double u)
{
	const double x = 4 * PI * u, s = sin(x / 2);
	return (vane_ring_lift){peak / (16 * PI * PI) * sine_defect(x), peak / (4 * PI) * 2 * s * s,
				peak * sin(x), 4 * PI * peak * cos(x)};
}

static vane_ring_lift trapezoid_half(double u)
{
	const double peak = 8 * PI / (PI + 2);
	if (u < 0.125)
		return quarter_sine(peak, u);
	const double lift_1 = (PI / 2 - 1) / (16 * PI * PI), rate_1 = 1 / (4 * PI);
	if (u < 0.375) {
		const double t = u - 0.125;
		return (vane_ring_lift){peak * (lift_1 + t * (rate_1 + t / 2)), peak * (rate_1 + t),
					peak, 0};
	}
	const double lift_2 = lift_1 + (rate_1 + 0.125) / 4, rate_2 = rate_1 + 0.25;
	const double t = u - 0.375, x = 4 * PI * t, s = sin(x / 2);
	return (vane_ring_lift){peak * (lift_2 + t * rate_2 + 2 * s * s / (16 * PI * PI)),
				peak * (rate_2 + sin(x) / (4 * PI)), peak * cos(x),
				-4 * PI * peak * sin(x)};
}

static vane_ring_lift sine_half(double u)
{
	const double peak = 4 * PI * PI / (PI + 4);
	if (u < 0.125)
		return quarter_sine(peak, u);
	const double t = u - 0.125, x = 4 * PI / 3 * t, s = sin(x / 2);
	const double lift_1 = (PI / 2 - 1) / (16 * PI * PI), rate_1 = 1 / (4 * PI);
	return (vane_ring_lift){peak * (lift_1 + t * rate_1 + 18 * s * s / (16 * PI * PI)),
				peak * (rate_1 + 3 * sin(x) / (4 * PI)), peak * cos(x),
				-4 * PI / 3 * peak * sin(x)};
}

static vane_ring_lift lift(int32_t law, double u)
{
	switch (law) {
	case VANE_RING_CONSTANT_ACCELERATION:
		return constant_acceleration(u);
	case VANE_RING_SIMPLE_HARMONIC:
		return simple_harmonic(u);
	case VANE_RING_CYCLOIDAL:
		return cycloidal(u);
	case VANE_RING_POLYNOMIAL_345:
		return polynomial_345(u);
	case VANE_RING_POLYNOMIAL_4567:
		return polynomial_4567(u);
	case VANE_RING_MODIFIED_TRAPEZOID:
		return mirrored(trapezoid_half, u);
	default:
		return mirrored(sine_half, u);
	}
}

int32_t vane_ring_law_at(int32_t law, double fraction, vane_ring_lift *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_ring_lift){NAN, NAN, NAN, NAN};
	if (!vn_count(law, VANE_RING_CONSTANT_ACCELERATION, VANE_RING_MODIFIED_SINE, "law",
		      error) ||
	    !vn_between(fraction, 0, 1, "fraction", "", error))
		return VANE_INVALID_ARGUMENT;
	*out = lift(law, fraction);
	return VANE_OK;
}

void vane_ring_default(vane_ring *ring)
{
	if (!ring)
		return;
	*ring = (vane_ring){
		.small_dwell = 34 * PI / 180,
		.rise = 56 * PI / 180,
		.large_dwell = 34 * PI / 180,
		.fall = 56 * PI / 180,
		.law = VANE_RING_POLYNOMIAL_345,
	};
}

bool vn_ring_check(const vane_ring *ring, vane_error *error)
{
	/* Angles typed in degrees to nine digits add up to pi this closely. */
	const double tolerance = 1e-6;
	if (!vn_above(ring->small_radius, 0, "small_radius", "m", error) ||
	    !vn_above(ring->large_radius, ring->small_radius, "large_radius", "m", error) ||
	    !vn_above(ring->width, 0, "width", "m", error) ||
	    !vn_least(ring->small_dwell, 0, "small_dwell", "rad", error) ||
	    !vn_above(ring->rise, 0, "rise", "rad", error) ||
	    !vn_least(ring->large_dwell, 0, "large_dwell", "rad", error) ||
	    !vn_above(ring->fall, 0, "fall", "rad", error) ||
	    /* Farther from zero an angle loses the digits that resolve the lobe. */
	    !vn_between(ring->phase, -2 * PI, 2 * PI, "phase", "rad", error) ||
	    !vn_count(ring->law, VANE_RING_CONSTANT_ACCELERATION, VANE_RING_MODIFIED_SINE, "law",
		      error) ||
	    !vn_count(ring->reserved, 0, 0, "reserved", error))
		return false;
	const double sum = ring->small_dwell + ring->rise + ring->large_dwell + ring->fall;
	if (!(fabs(sum - PI) <= tolerance))
		return vn_fail(
			VANE_INVALID_ARGUMENT, "fall", sum,
			"fall must make small_dwell, rise, large_dwell and fall add up to pi rad.",
			error);
	return true;
}

vane_ring_point vn_ring_point(const vane_ring *ring, double angle)
{
	const double stroke = ring->large_radius - ring->small_radius;
	double x = remainder(angle - ring->phase, PI);
	if (x < 0)
		x += PI;
	const double rise = ring->small_dwell / 2, large = rise + ring->rise,
		     fall = large + ring->large_dwell, end = fall + ring->fall;
	if (x <= rise || x >= end)
		return (vane_ring_point){ring->small_radius, 0, 0, 0};
	if (x >= large && x <= fall)
		return (vane_ring_point){ring->large_radius, 0, 0, 0};
	const bool up = x < large;
	const double span = up ? ring->rise : ring->fall;
	/* On the fall the fraction is counted back from its end, which is exact where 1 - f is not. */
	const double u = up ? (x - rise) / span : (end - x) / span;
	const double turn = up ? 1 : -1;
	const vane_ring_lift f = lift(ring->law, fmin(fmax(u, 0), 1));
	return (vane_ring_point){
		ring->small_radius + stroke * f.lift,
		turn * stroke * f.velocity / span,
		stroke * f.acceleration / (span * span),
		turn * stroke * f.jerk / (span * span * span),
	};
}

/* Fractions of a transition between which its law is analytic; all have the middle. */
static int pieces(int32_t law, const double **end)
{
	static const double smooth[] = {0.5, 1}, sine[] = {0.125, 0.5, 0.875, 1};
	static const double trapezoid[] = {0.125, 0.375, 0.5, 0.625, 0.875, 1};
	switch (law) {
	case VANE_RING_MODIFIED_TRAPEZOID:
		*end = trapezoid;
		return 6;
	case VANE_RING_MODIFIED_SINE:
		*end = sine;
		return 4;
	default:
		*end = smooth;
		return 2;
	}
}

int vn_ring_joints(const vane_ring *ring, double angle[VN_RING_JOINTS])
{
	const double rise = ring->small_dwell / 2, fall = rise + ring->rise + ring->large_dwell;
	const double *end;
	const int count = pieces(ring->law, &end);
	int n = 0;
	angle[n++] = rise + ring->phase;
	for (int i = 0; i < count; i++)
		angle[n++] = rise + ring->rise * end[i] + ring->phase;
	angle[n++] = fall + ring->phase;
	for (int i = 0; i < count; i++)
		angle[n++] = fall + ring->fall * end[i] + ring->phase;
	return n;
}

double vn_ring_integral(const vane_ring *ring, double from, double to,
			double (*integrand)(double angle, void *context), const void *context)
{
	double joint[VN_RING_JOINTS];
	const int joints = vn_ring_joints(ring, joint);
	/* The integrand takes GSL's context, which is not const; it never writes to it. */
	gsl_function f = {integrand, (void *)(uintptr_t)context};
	double sum = 0, turn = PI * floor((from - ring->phase) / PI), low = ring->phase + turn;
	for (; low < to; turn += PI)
		for (int i = 0; i <= joints; i++) {
			const double high = turn + (i < joints ? joint[i] : ring->phase + PI);
			const double a = fmax(low, from), b = fmin(high, to);
			double part, estimate, size, spread;
			/* qk31 neither allocates nor fails. */
			if (b > a) {
				gsl_integration_qk31(&f, a, b, &part, &estimate, &size, &spread);
				sum += part;
			}
			low = high;
		}
	return sum;
}

int32_t vane_ring_at(const vane_ring *ring, double angle, vane_ring_point *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_ring_point){NAN, NAN, NAN, NAN};
	if (!vn_pointer(ring, "ring", error))
		return VANE_INVALID_ARGUMENT;
	if (!vn_ring_check(ring, error)) {
		vn_within("ring", error);
		return VANE_INVALID_ARGUMENT;
	}
	if (!vn_finite(angle, "angle", "rad", error))
		return VANE_INVALID_ARGUMENT;
	const vane_ring_point point = vn_ring_point(ring, angle);
	if (!isfinite(point.slope) || !isfinite(point.second) || !isfinite(point.third)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = point;
	return VANE_OK;
}

int32_t vane_ring_turned(const vane_ring *ring, vane_ring *out, vane_error *error)
{
	vn_begin(error);
	const vane_ring from = ring ? *ring : (vane_ring){.law = 0};
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_ring){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0, 0};
	if (!vn_pointer(ring, "ring", error))
		return VANE_INVALID_ARGUMENT;
	if (!vn_ring_check(&from, error)) {
		vn_within("ring", error);
		return VANE_INVALID_ARGUMENT;
	}
	*out = from;
	out->rise = from.fall;
	out->fall = from.rise;
	out->phase = remainder(PI / 2 - from.phase, PI);
	return VANE_OK;
}
