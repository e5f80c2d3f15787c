#include "vane/contact.h"
#include "check.h"
#include "twofold.h"

#include <math.h>

#define PI 3.14159265358979323846

double vane_contact_modulus(double modulus_1, double poisson_1, double modulus_2, double poisson_2,
			    vane_error *error)
{
	vn_begin(error);
	if (!vn_above(modulus_1, 0, "modulus_1", "Pa", error) ||
	    !vn_between(poisson_1, 0, 0.5, "poisson_1", "", error) ||
	    !vn_above(modulus_2, 0, "modulus_2", "Pa", error) ||
	    !vn_between(poisson_2, 0, 0.5, "poisson_2", "", error))
		return NAN;
	const double soft_1 = (1 - poisson_1) * (1 + poisson_1) / modulus_1;
	const double soft_2 = (1 - poisson_2) * (1 + poisson_2) / modulus_2;
	return vn_result(1 / (soft_1 + soft_2), error);
}

double vane_contact_curvature(double radius_1, double radius_2, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(radius_1, 0, "radius_1", "m", error) ||
	    !vn_above(radius_2, 0, "radius_2", "m", error))
		return NAN;
	return vn_result(1 / radius_1 + 1 / radius_2, error);
}

double vane_contact_curvature_hollow(double radius, double hollow_radius, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(radius, 0, "radius", "m", error) ||
	    !vn_above(hollow_radius, radius, "hollow_radius", "m", error))
		return NAN;
	return vn_result((hollow_radius - radius) / hollow_radius / radius, error);
}

static bool bodies_ok(double curvature, double contact_modulus, vane_error *error)
{
	return vn_above(curvature, 0, "curvature", "1/m", error) &&
	       vn_above(contact_modulus, 0, "contact_modulus", "Pa", error);
}

static bool line_ok(double line_load, double curvature, double contact_modulus, vane_error *error)
{
	return vn_least(line_load, 0, "line_load", "N/m", error) &&
	       bodies_ok(curvature, contact_modulus, error);
}

static bool sphere_ok(double force, double curvature, double contact_modulus, vane_error *error)
{
	return vn_least(force, 0, "force", "N", error) &&
	       bodies_ok(curvature, contact_modulus, error);
}

double vane_contact_line_half_width(double line_load, double curvature, double contact_modulus,
				    vane_error *error)
{
	vn_begin(error);
	if (!line_ok(line_load, curvature, contact_modulus, error))
		return NAN;
	return vn_result(2 * sqrt(line_load / contact_modulus / curvature / PI), error);
}

double vane_contact_line_pressure(double line_load, double curvature, double contact_modulus,
				  vane_error *error)
{
	vn_begin(error);
	if (!line_ok(line_load, curvature, contact_modulus, error))
		return NAN;
	return vn_result(sqrt(line_load * curvature / PI * contact_modulus), error);
}

double vane_contact_line_shear(double pressure, double half_width, double depth, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure, 0, "pressure", "Pa", error) ||
	    !vn_above(half_width, 0, "half_width", "m", error) ||
	    !vn_least(depth, 0, "depth", "m", error))
		return NAN;
	/* z (h - z)/(a h) with h^2 = a^2 + z^2, and (h - z) (h + z) = a^2. */
	const bool near = depth < half_width;
	const vn_two x = near ? vn_two_ratio(depth, half_width) : vn_two_ratio(half_width, depth);
	const vn_two square = vn_two_plus(vn_two_of(1), vn_two_square(x));
	const double slant = sqrt(square.high);
	const vn_two under = vn_two_plus(square, near ? vn_two_scaled(x, slant) : vn_two_of(slant));
	return vn_result(vn_two_round(vn_two_scaled(vn_two_over(x, under), pressure)), error);
}

/* Powers 5/2 and 1/2 of (sqrt(5) - 1)/2. */
static const double shear_factor = 0.30028310600077760789;
static const double shear_depth = 0.78615137775742328607;

double vane_contact_line_shear_greatest(double pressure, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure, 0, "pressure", "Pa", error))
		return NAN;
	return vn_result(shear_factor * pressure, error);
}

double vane_contact_line_shear_depth(double half_width, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(half_width, 0, "half_width", "m", error))
		return NAN;
	return vn_result(shear_depth * half_width, error);
}

/* Smith and Liu, J. Appl. Mech. 20 (1953) 157, at friction 0, 1/12, 1/6, 1/3. */
static const double sliding_compression[] = {1, 1.09, 1.19, 1.40};
static const double sliding_shear[] = {0.300, 0.308, 0.339, 0.435};
static const double sliding_octahedral[] = {0.272, 0.265, 0.277, 0.368};

static double sliding(const double *factor, double pressure, double friction, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure, 0, "pressure", "Pa", error) ||
	    !vn_between(friction, 0, 1.0 / 3, "friction", "", error))
		return NAN;
	const double twelfths = 12 * friction;
	const int i = twelfths < 1 ? 0 : twelfths < 2 ? 1 : 2;
	const double part = i == 2 ? (twelfths - 2) / 2 : twelfths - i;
	return vn_result(pressure * (factor[i] * (1 - part) + factor[i + 1] * part), error);
}

double vane_contact_sliding_stress(double pressure, double friction, vane_error *error)
{
	return sliding(sliding_compression, pressure, friction, error);
}

double vane_contact_sliding_shear(double pressure, double friction, vane_error *error)
{
	return sliding(sliding_shear, pressure, friction, error);
}

double vane_contact_sliding_octahedral(double pressure, double friction, vane_error *error)
{
	return sliding(sliding_octahedral, pressure, friction, error);
}

/* 3 F/(4 k E') */
static vn_two sphere_cube(double force, double curvature, double contact_modulus)
{
	return vn_two_over(vn_two_ratio(0.75 * force, contact_modulus), vn_two_of(curvature));
}

double vane_contact_sphere_radius(double force, double curvature, double contact_modulus,
				  vane_error *error)
{
	vn_begin(error);
	if (!sphere_ok(force, curvature, contact_modulus, error))
		return NAN;
	return vn_result(vn_two_cbrt(sphere_cube(force, curvature, contact_modulus)), error);
}

double vane_contact_sphere_pressure(double force, double curvature, double contact_modulus,
				    vane_error *error)
{
	vn_begin(error);
	if (!sphere_ok(force, curvature, contact_modulus, error))
		return NAN;
	const double radius = vn_two_cbrt(sphere_cube(force, curvature, contact_modulus));
	const vn_two strain =
		vn_two_scaled(vn_two_scaled(vn_two_of(2 * radius), curvature), contact_modulus);
	return vn_result(vn_two_round(vn_two_over(strain, vn_two_pi)), error);
}

double vane_contact_sphere_approach(double force, double curvature, double contact_modulus,
				    vane_error *error)
{
	vn_begin(error);
	if (!sphere_ok(force, curvature, contact_modulus, error))
		return NAN;
	const double radius = vn_two_cbrt(sphere_cube(force, curvature, contact_modulus));
	return vn_result(
		vn_two_round(vn_two_scaled(vn_two_scaled(vn_two_of(radius), curvature), radius)),
		error);
}

double vane_contact_sphere_tension(double pressure, double poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure, 0, "pressure", "Pa", error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return NAN;
	return vn_result((1 - 2 * poisson) * pressure / 3, error);
}

/* 1 - z atan(1/z) for z >= 1 */
static double arc_rest(double z)
{
	/* Continued fraction of atan: x/(1 + x^2/(3 + 4 x^2/(5 + 9 x^2/(7 + ...)))). */
	const double square = 1 / z / z;
	double tail = 0;
	for (int k = 24; k >= 1; k--)
		tail = k * k * square / (2 * k + 1 + tail);
	return tail / (1 + tail);
}

/* 1.5/(1 + z^2) - (1 + nu) (1 - z atan(1/z)), twice the shear by the pressure. */
static vn_two sphere_difference(vn_two z, double poisson)
{
	const vn_two stretch = vn_two_sum(1, poisson);
	if (z.high > 1e15) /* To the last digit; and the square may be infinite. */
		return vn_two_of((1.5 - stretch.high / 3) / z.high / z.high);
	if (z.high >= 1) {
		const vn_two square = vn_two_over(vn_two_of(1), vn_two_square(z));
		const vn_two normal =
			vn_two_over(vn_two_scaled(square, 1.5), vn_two_plus(vn_two_of(1), square));
		return vn_two_minus(normal, vn_two_scaled(stretch, arc_rest(z.high)));
	}
	/* Near the surface, without the 1 that would cancel. */
	const vn_two square = vn_two_square(z);
	const vn_two one = vn_two_plus(vn_two_of(1), square);
	const vn_two angle = {atan(z.high), z.low / one.high};
	const vn_two rest = vn_two_minus(vn_two_scaled(vn_two_pi, 0.5), angle);
	const vn_two apart = vn_two_times(stretch, vn_two_times(z, rest));
	const vn_two less = vn_two_over(vn_two_scaled(square, 1.5), one);
	return vn_two_plus(vn_two_sum(0.5, -poisson), vn_two_minus(apart, less));
}

double vane_contact_sphere_shear(double pressure, double contact_radius, double depth,
				 double poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure, 0, "pressure", "Pa", error) ||
	    !vn_above(contact_radius, 0, "contact_radius", "m", error) ||
	    !vn_least(depth, 0, "depth", "m", error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return NAN;
	const vn_two difference = sphere_difference(vn_two_ratio(depth, contact_radius), poisson);
	return vn_result(fabs(vn_two_round(vn_two_scaled(difference, pressure / 2))), error);
}
