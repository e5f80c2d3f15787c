#include "check.h"
#include "twofold.h"
#include "vane/plate.h"

#include <math.h>

/* 1 - (a/b)^2 */
static vn_two wall(double inner, double outer)
{
	const vn_two narrow = vn_two_over(vn_two_sum(outer, -inner), vn_two_of(outer));
	return vn_two_times(narrow, vn_two_plus(vn_two_of(1), vn_two_ratio(inner, outer)));
}

/* (a/b)^2 */
static vn_two share(double a, double b)
{
	return vn_two_square(vn_two_ratio(a, b));
}

static vn_two one_plus(vn_two x)
{
	return vn_two_plus(vn_two_of(1), x);
}

static bool radii_ok(double inner_radius, double outer_radius, vane_error *error)
{
	return vn_above(inner_radius, 0, "inner_radius", "m", error) &&
	       vn_above(outer_radius, inner_radius, "outer_radius", "m", error);
}

static bool loads_ok(double inner_pressure, double outer_pressure, vane_error *error)
{
	return vn_finite(inner_pressure, "inner_pressure", "Pa", error) &&
	       vn_finite(outer_pressure, "outer_pressure", "Pa", error);
}

static bool cylinder_ok(double inner_radius, double outer_radius, double inner_pressure,
			double outer_pressure, double radius, vane_error *error)
{
	return radii_ok(inner_radius, outer_radius, error) &&
	       loads_ok(inner_pressure, outer_pressure, error) &&
	       vn_between(radius, inner_radius, outer_radius, "radius", "m", error);
}

double vane_plate_cylinder_radial_stress(double inner_radius, double outer_radius,
					 double inner_pressure, double outer_pressure,
					 double radius, vane_error *error)
{
	vn_begin(error);
	if (!cylinder_ok(inner_radius, outer_radius, inner_pressure, outer_pressure, radius, error))
		return NAN;
	const vn_two inside = vn_two_times(share(inner_radius, radius), wall(radius, outer_radius));
	const vn_two both = vn_two_plus(vn_two_scaled(inside, inner_pressure),
					vn_two_scaled(wall(inner_radius, radius), outer_pressure));
	return vn_result(-vn_two_round(vn_two_over(both, wall(inner_radius, outer_radius))), error);
}

double vane_plate_cylinder_tangential_stress(double inner_radius, double outer_radius,
					     double inner_pressure, double outer_pressure,
					     double radius, vane_error *error)
{
	vn_begin(error);
	if (!cylinder_ok(inner_radius, outer_radius, inner_pressure, outer_pressure, radius, error))
		return NAN;
	const vn_two part = vn_two_over(
		vn_two_times(share(inner_radius, radius), one_plus(share(radius, outer_radius))),
		wall(inner_radius, outer_radius));
	const vn_two uneven = vn_two_times(vn_two_sum(inner_pressure, -outer_pressure), part);
	return vn_result(vn_two_round(vn_two_minus(uneven, vn_two_of(outer_pressure))), error);
}

double vane_plate_cylinder_axial_stress(double inner_radius, double outer_radius,
					double inner_pressure, double outer_pressure,
					vane_error *error)
{
	vn_begin(error);
	if (!radii_ok(inner_radius, outer_radius, error) ||
	    !loads_ok(inner_pressure, outer_pressure, error))
		return NAN;
	const vn_two even =
		vn_two_minus(vn_two_scaled(share(inner_radius, outer_radius), inner_pressure),
			     vn_two_of(outer_pressure));
	return vn_result(vn_two_round(vn_two_over(even, wall(inner_radius, outer_radius))), error);
}

double vane_plate_cylinder_shear_stress(double inner_radius, double outer_radius,
					double inner_pressure, double outer_pressure, double radius,
					vane_error *error)
{
	vn_begin(error);
	if (!cylinder_ok(inner_radius, outer_radius, inner_pressure, outer_pressure, radius, error))
		return NAN;
	const vn_two part =
		vn_two_over(share(inner_radius, radius), wall(inner_radius, outer_radius));
	return vn_result(
		vn_two_round(vn_two_times(vn_two_sum(inner_pressure, -outer_pressure), part)),
		error);
}

double vane_plate_cylinder_displacement(double inner_radius, double outer_radius,
					double inner_pressure, double outer_pressure, double radius,
					double axial_stress, double modulus, double poisson,
					vane_error *error)
{
	vn_begin(error);
	if (!cylinder_ok(inner_radius, outer_radius, inner_pressure, outer_pressure, radius,
			 error) ||
	    !vn_finite(axial_stress, "axial_stress", "Pa", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error) ||
	    !vn_between(poisson, 0, 0.5, "poisson", "", error))
		return NAN;
	const vn_two even =
		vn_two_minus(vn_two_scaled(share(inner_radius, outer_radius), inner_pressure),
			     vn_two_of(outer_pressure));
	const vn_two uneven = vn_two_times(vn_two_sum(inner_pressure, -outer_pressure),
					   share(inner_radius, radius));
	const vn_two sum = vn_two_plus(vn_two_times(vn_two_sum(1, -poisson), even),
				       vn_two_times(vn_two_sum(1, poisson), uneven));
	const vn_two stress = vn_two_minus(vn_two_over(sum, wall(inner_radius, outer_radius)),
					   vn_two_scaled(vn_two_of(poisson), axial_stress));
	return vn_result(vn_two_round(vn_two_times(stress, vn_two_ratio(radius, modulus))), error);
}

double vane_plate_cylinder_inner_pressure(double inner_radius, double outer_radius, double stress,
					  vane_error *error)
{
	vn_begin(error);
	if (!radii_ok(inner_radius, outer_radius, error) ||
	    !vn_least(stress, 0, "stress", "Pa", error))
		return NAN;
	const vn_two part = vn_two_over(wall(inner_radius, outer_radius),
					one_plus(share(inner_radius, outer_radius)));
	return vn_result(vn_two_round(vn_two_scaled(part, stress)), error);
}

double vane_plate_cylinder_outer_pressure(double inner_radius, double outer_radius, double stress,
					  vane_error *error)
{
	vn_begin(error);
	if (!radii_ok(inner_radius, outer_radius, error) ||
	    !vn_least(stress, 0, "stress", "Pa", error))
		return NAN;
	return vn_result(vn_two_round(vn_two_scaled(wall(inner_radius, outer_radius), stress / 2)),
			 error);
}

double vane_plate_press_pressure(double interference, double bore_radius, double contact_radius,
				 double hub_radius, double shaft_modulus, double shaft_poisson,
				 double hub_modulus, double hub_poisson, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(interference, 0, "interference", "m", error) ||
	    !vn_least(bore_radius, 0, "bore_radius", "m", error) ||
	    !vn_above(contact_radius, bore_radius, "contact_radius", "m", error) ||
	    !vn_above(hub_radius, contact_radius, "hub_radius", "m", error) ||
	    !vn_above(shaft_modulus, 0, "shaft_modulus", "Pa", error) ||
	    !vn_between(shaft_poisson, 0, 0.5, "shaft_poisson", "", error) ||
	    !vn_above(hub_modulus, 0, "hub_modulus", "Pa", error) ||
	    !vn_between(hub_poisson, 0, 0.5, "hub_poisson", "", error))
		return NAN;
	const vn_two hub = vn_two_over(one_plus(share(contact_radius, hub_radius)),
				       wall(contact_radius, hub_radius));
	const vn_two shaft = vn_two_over(one_plus(share(bore_radius, contact_radius)),
					 wall(bore_radius, contact_radius));
	const vn_two soft_hub =
		vn_two_over(vn_two_plus(hub, vn_two_of(hub_poisson)), vn_two_of(hub_modulus));
	const vn_two soft_shaft = vn_two_over(vn_two_minus(shaft, vn_two_of(shaft_poisson)),
					      vn_two_of(shaft_modulus));
	return vn_result(vn_two_round(vn_two_over(vn_two_ratio(interference, contact_radius),
						  vn_two_plus(soft_hub, soft_shaft))),
			 error);
}

/* 2 pi r L f p */
static vn_two grip(double pressure, double radius, double length, double friction)
{
	const vn_two area = vn_two_scaled(vn_two_scaled(vn_two_pi, 2 * radius), length);
	return vn_two_scaled(vn_two_scaled(area, friction), pressure);
}

static bool joint_ok(double pressure, double radius, double length, double friction,
		     vane_error *error)
{
	return vn_least(pressure, 0, "pressure", "Pa", error) &&
	       vn_above(radius, 0, "radius", "m", error) &&
	       vn_above(length, 0, "length", "m", error) &&
	       vn_least(friction, 0, "friction", "", error);
}

double vane_plate_press_force(double pressure, double radius, double length, double friction,
			      vane_error *error)
{
	vn_begin(error);
	if (!joint_ok(pressure, radius, length, friction, error))
		return NAN;
	return vn_result(vn_two_round(grip(pressure, radius, length, friction)), error);
}

double vane_plate_press_torque(double pressure, double radius, double length, double friction,
			       vane_error *error)
{
	vn_begin(error);
	if (!joint_ok(pressure, radius, length, friction, error))
		return NAN;
	return vn_result(
		vn_two_round(vn_two_scaled(grip(pressure, radius, length, friction), radius)),
		error);
}
