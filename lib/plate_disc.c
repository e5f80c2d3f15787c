#include "check.h"
#include "twofold.h"
#include "vane/plate.h"

#include <math.h>

/* (1 - nu) (other + nu) */
static vn_two stiffening(double other, double poisson)
{
	return vn_two_times(vn_two_sum(1, -poisson), vn_two_sum(other, poisson));
}

double vane_plate_stiffness(double thickness, double modulus, double poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(thickness, 0, "thickness", "m", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return NAN;
	const vn_two cube = vn_two_scaled(
		vn_two_scaled(vn_two_scaled(vn_two_of(modulus), thickness), thickness), thickness);
	return vn_result(vn_two_round(vn_two_over(cube, vn_two_scaled(stiffening(1, poisson), 12))),
			 error);
}

static bool disc_ok(double radius, double thickness, vane_error *error)
{
	return vn_above(radius, 0, "radius", "m", error) &&
	       vn_above(thickness, 0, "thickness", "m", error);
}

static bool elastic_ok(double modulus, double poisson, vane_error *error)
{
	return vn_above(modulus, 0, "modulus", "Pa", error) &&
	       vn_between(poisson, 0, 0.5, "poisson", "", error);
}

/* 3/16 (1 - nu) (other + nu) p a^4/(E t^3) */
static double pressed(double other, double pressure, double radius, double thickness,
		      double modulus, double poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(pressure, "pressure", "Pa", error) || !disc_ok(radius, thickness, error) ||
	    !elastic_ok(modulus, poisson, error))
		return NAN;
	const vn_two ratio = vn_two_ratio(radius, thickness);
	const vn_two load = vn_two_times(vn_two_scaled(stiffening(other, poisson), 0.1875),
					 vn_two_ratio(pressure, modulus));
	const vn_two cube = vn_two_times(vn_two_square(ratio), ratio);
	return vn_result(vn_two_round(vn_two_scaled(vn_two_times(load, cube), radius)), error);
}

double vane_plate_clamped_deflection(double pressure, double radius, double thickness,
				     double modulus, double poisson, vane_error *error)
{
	return pressed(1, pressure, radius, thickness, modulus, poisson, error);
}

double vane_plate_supported_deflection(double pressure, double radius, double thickness,
				       double modulus, double poisson, vane_error *error)
{
	return pressed(5, pressure, radius, thickness, modulus, poisson, error);
}

/* 3/8 (other + nu) p a^2/t^2 */
static double stressed(double other, double pressure, double radius, double thickness,
		       double poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(pressure, "pressure", "Pa", error) || !disc_ok(radius, thickness, error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return NAN;
	const vn_two load = vn_two_scaled(vn_two_sum(other, poisson), 0.375);
	const vn_two area = vn_two_square(vn_two_ratio(radius, thickness));
	return vn_result(vn_two_round(vn_two_times(vn_two_scaled(load, pressure), area)), error);
}

double vane_plate_clamped_edge_stress(double pressure, double radius, double thickness,
				      vane_error *error)
{
	return stressed(2, pressure, radius, thickness, 0, error);
}

double vane_plate_clamped_centre_stress(double pressure, double radius, double thickness,
					double poisson, vane_error *error)
{
	return stressed(1, pressure, radius, thickness, poisson, error);
}

double vane_plate_supported_stress(double pressure, double radius, double thickness, double poisson,
				   vane_error *error)
{
	return stressed(3, pressure, radius, thickness, poisson, error);
}

/* 3/(4 pi) (1 - nu) (other + nu) F a^2/(E t^3) */
static double pushed(double other, double force, double radius, double thickness, double modulus,
		     double poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(force, "force", "N", error) || !disc_ok(radius, thickness, error) ||
	    !elastic_ok(modulus, poisson, error))
		return NAN;
	const vn_two load = vn_two_times(
		vn_two_over(vn_two_scaled(stiffening(other, poisson), 0.75), vn_two_pi),
		vn_two_over(vn_two_ratio(force, modulus), vn_two_of(thickness)));
	const vn_two area = vn_two_square(vn_two_ratio(radius, thickness));
	return vn_result(vn_two_round(vn_two_times(load, area)), error);
}

double vane_plate_clamped_force_deflection(double force, double radius, double thickness,
					   double modulus, double poisson, vane_error *error)
{
	return pushed(1, force, radius, thickness, modulus, poisson, error);
}

double vane_plate_supported_force_deflection(double force, double radius, double thickness,
					     double modulus, double poisson, vane_error *error)
{
	return pushed(3, force, radius, thickness, modulus, poisson, error);
}
