#include "check.h"
#include "vane/contact.h"

#include <gsl/gsl_sf_ellint.h>
#include <math.h>

#define PI 3.14159265358979323846

/* Longest ellipse that is looked at. */
static const double slender = 1e12;

static int32_t too_slender(const char *name, double value, vane_error *error)
{
	vn_fail(VANE_NO_SOLUTION, name, value,
		"The contact is over 1e12 times as long as wide: it is a line.", error);
	return VANE_NO_SOLUTION;
}

/* Arguments here are finite, at most one is 0, and all are far from the ends of
 * the range of a double. */
static double carlson_d(double x, double y, double z)
{
	gsl_sf_result result;
	return gsl_sf_ellint_RD_e(x, y, z, GSL_PREC_DOUBLE, &result) ? NAN : result.val;
}

static double carlson_f(double x, double y, double z)
{
	gsl_sf_result result;
	return gsl_sf_ellint_RF_e(x, y, z, GSL_PREC_DOUBLE, &result) ? NAN : result.val;
}

int32_t vane_contact_relative(double first_1, double second_1, double first_2, double second_2,
			      double angle, vane_contact_shape *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_contact_shape){NAN, NAN};
	if (!vn_finite(first_1, "first_1", "1/m", error) ||
	    !vn_finite(second_1, "second_1", "1/m", error) ||
	    !vn_finite(first_2, "first_2", "1/m", error) ||
	    !vn_finite(second_2, "second_2", "1/m", error) ||
	    !vn_finite(angle, "angle", "rad", error))
		return VANE_INVALID_ARGUMENT;
	const double own_1 = first_1 - second_1, own_2 = first_2 - second_2;
	const double mean = first_1 / 2 + second_1 / 2 + first_2 / 2 + second_2 / 2;
	const double half = hypot((own_1 + own_2) * cos(angle), (own_1 - own_2) * sin(angle)) / 2;
	const double low = mean - half, high = mean + half;
	if (!isfinite(vn_result(low, error)) || !isfinite(vn_result(high, error)))
		return VANE_OUT_OF_RANGE;
	if (!(low > 0 && high <= slender * low)) {
		vn_fail(VANE_NO_SOLUTION, "first_1", low,
			"The lesser relative curvature, in 1/m, is not positive, or next to "
			"nothing "
			"beside the greater: the bodies do not touch at a point.",
			error);
		return VANE_NO_SOLUTION;
	}
	*out = (vane_contact_shape){low, high};
	return VANE_OK;
}

/* Principal stresses below the middle of an ellipse, by its pressure, and how
 * they grow with depth; lengths by the shorter semi-axis. */
enum { MAJOR, MINOR, NORMAL, AXES };

typedef struct stresses {
	double value[AXES], growth[AXES];
} stresses;

static stresses below(double a, double z, double poisson)
{
	const double major = a * a + z * z, minor = 1 + z * z, square = z * z;
	const double s = sqrt(major) * sqrt(minor), inverse = 1 / s;
	const double inverse_growth = -z * (major + minor) / s / major / minor;
	const double i_major = 2.0 / 3 * carlson_d(square, minor, major);
	const double i_minor = 2.0 / 3 * carlson_d(square, major, minor);
	const double i[] = {i_major, i_minor};
	const double i_growth[] = {-2 / (major * s), -2 / (minor * s)};
	const double j[] = {2 / (major + s), 2 / (minor + s)};
	stresses out;
	for (int k = MAJOR; k <= MINOR; k++) {
		out.value[k] = a / 2 *
			       (2 * poisson * (z * (i_major + i_minor) - 2 * inverse) +
				2 * (1 - poisson) * z * i[k] - (1 - 2 * poisson) * j[k]);
		out.growth[k] =
			a / 2 *
			(2 * poisson *
				 (i_major + i_minor + z * (i_growth[MAJOR] + i_growth[MINOR]) -
				  2 * inverse_growth) +
			 2 * (1 - poisson) * (i[k] + z * i_growth[k]) -
			 (1 - 2 * poisson) * z * i_growth[k]);
	}
	out.value[NORMAL] = -a * inverse;
	out.growth[NORMAL] = -a * inverse_growth;
	return out;
}

static double difference(const double x[AXES], int pair)
{
	return x[pair] - x[(pair + 1) % AXES];
}

/* Greatest half difference of two of the stresses along the normal, and where. */
static void greatest_shear(double a, double poisson, double *shear, double *depth)
{
	enum { STEPS = 96 };
	const double deepest = 3;
	*shear = 0;
	*depth = 0;
	int at[AXES] = {0};
	double best[AXES] = {0};
	for (int i = 0; i <= STEPS; i++) {
		const stresses s = below(a, deepest * i / STEPS, poisson);
		for (int pair = 0; pair < AXES; pair++)
			if (fabs(difference(s.value, pair)) > best[pair]) {
				best[pair] = fabs(difference(s.value, pair));
				at[pair] = i;
			}
	}
	for (int pair = 0; pair < AXES; pair++) {
		double low = deepest * fmax(at[pair] - 1, 0) / STEPS;
		double high = deepest * fmin(at[pair] + 1, STEPS) / STEPS;
		for (int i = 0; i < 60; i++) {
			const double z = (low + high) / 2;
			const stresses s = below(a, z, poisson);
			if ((difference(s.growth, pair) > 0) == (difference(s.value, pair) > 0))
				low = z;
			else
				high = z;
		}
		/* Greatest at the surface, or where it stops growing. */
		const double z = low > 0 ? (low + high) / 2 : 0;
		const stresses s = below(a, z, poisson);
		if (fabs(difference(s.value, pair)) / 2 > *shear) {
			*shear = fabs(difference(s.value, pair)) / 2;
			*depth = z;
		}
	}
}

/* Ratio of the curvatures for a ratio of the axes, which is the square root of
 * the argument. */
static double curvature_ratio(double square)
{
	return carlson_d(0, square, 1) / carlson_d(0, 1, square);
}

/* Ratio of the axes, shorter to longer, for a ratio of the curvatures. */
static double axes_ratio(double ratio)
{
	if (ratio >= 1)
		return 1;
	/* The logarithms of the two are nearly in proportion, 2/3 to 1/2. */
	const double wanted = log(ratio);
	double low = wanted, high = wanted / 2, x = wanted * 2 / 3;
	for (int i = 0; i < 100; i++) {
		const double step = 1e-5;
		const double off = log(curvature_ratio(exp(2 * x))) - wanted;
		const double slope =
			(log(curvature_ratio(exp(2 * x - 2 * step))) - wanted - off) / -step;
		if (off > 0)
			high = x;
		else
			low = x;
		double next = x - off / slope;
		if (!(next >= low && next <= high))
			next = (low + high) / 2;
		const double moved = fabs(next - x);
		x = next;
		if (moved <= 4e-16 * fabs(x))
			break;
	}
	return exp(x);
}

int32_t vane_contact_point(double force, const vane_contact_shape *shape, double contact_modulus,
			   double poisson, vane_contact_ellipse *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_contact_ellipse){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_least(force, 0, "force", "N", error) || !vn_pointer(shape, "shape", error))
		return VANE_INVALID_ARGUMENT;
	const double low = shape->curvature_low, high = shape->curvature_high;
	if (!vn_above(low, 0, "curvature_low", "1/m", error) ||
	    !vn_least(high, low, "curvature_high", "1/m", error)) {
		vn_within("shape", error);
		return VANE_INVALID_ARGUMENT;
	}
	if (!vn_above(contact_modulus, 0, "contact_modulus", "Pa", error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return VANE_INVALID_ARGUMENT;
	if (!(high / low <= slender))
		return too_slender("shape.curvature_high", high, error);
	if (!(force > 0)) {
		*out = (vane_contact_ellipse){0, 0, 0, 0, 0, 0, 0, 0};
		return VANE_OK;
	}
	const double k = axes_ratio(low / high), square = k * k;
	/* By Carlson's forms the complete integrals cancel nowhere. */
	const double second = square / 3 * (carlson_d(0, square, 1) + carlson_d(0, 1, square));
	const double first = carlson_f(0, square, 1);
	const double mean = low / 2 + high / 2;
	const double a = cbrt(1.5 / PI * second / square * (force / contact_modulus / mean));
	const double b = k * a;
	const double pressure = mean * b / second * contact_modulus;
	double shear, depth;
	greatest_shear(1 / k, poisson, &shear, &depth);
	const stresses surface = below(1 / k, 0, poisson);
	const vane_contact_ellipse found = {
		.semi_major = a,
		.semi_minor = b,
		.pressure = pressure,
		.approach = mean * b / second * b * first,
		.shear = shear * pressure,
		.shear_depth = depth * b,
		.stress_major = surface.value[MAJOR] * pressure,
		.stress_minor = surface.value[MINOR] * pressure,
	};
	const double parts[] = {found.semi_major, found.pressure, found.approach,
				found.stress_major, found.stress_minor};
	for (int i = 0; i < (int)(sizeof parts / sizeof *parts); i++)
		if (!isfinite(vn_result(parts[i], error)))
			return VANE_OUT_OF_RANGE;
	*out = found;
	return VANE_OK;
}

int32_t vane_contact_stresses(double pressure, double semi_minor, double semi_major, double depth,
			      double poisson, vane_contact_stress *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_contact_stress){NAN, NAN, NAN, NAN};
	if (!vn_least(pressure, 0, "pressure", "Pa", error) ||
	    !vn_above(semi_minor, 0, "semi_minor", "m", error) ||
	    !vn_least(semi_major, semi_minor, "semi_major", "m", error) ||
	    !vn_least(depth, 0, "depth", "m", error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return VANE_INVALID_ARGUMENT;
	if (!(semi_major / semi_minor <= slender))
		return too_slender("semi_major", semi_major, error);
	/* Below this the stresses fall as the square of the depth to the last digit. */
	const double a = semi_major / semi_minor, far = 1e9 * a;
	double z = depth / semi_minor, fade = 1;
	if (z > far) {
		fade = far / z;
		z = far;
	}
	const stresses s = below(a, z, poisson);
	double least = s.value[NORMAL], most = s.value[NORMAL];
	for (int i = MAJOR; i <= MINOR; i++) {
		least = fmin(least, s.value[i]);
		most = fmax(most, s.value[i]);
	}
	const double size = pressure * fade * fade;
	*out = (vane_contact_stress){
		.major = s.value[MAJOR] * size,
		.minor = s.value[MINOR] * size,
		.normal = s.value[NORMAL] * size,
		.shear = (most - least) / 2 * size,
	};
	return VANE_OK;
}
