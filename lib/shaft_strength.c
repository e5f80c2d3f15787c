#include "check.h"
#include "twofold.h"
#include "vane/shaft.h"

#include <math.h>

static bool torque_ok(double torque, vane_error *error)
{
	return vn_finite(torque, "torque", "N.m", error);
}

static bool tube_ok(double diameter, double bore_diameter, vane_error *error)
{
	return vn_least(bore_diameter, 0, "bore_diameter", "m", error) &&
	       vn_above(diameter, bore_diameter, "diameter", "m", error);
}

/* factor moment/(pi D^3 (1 - (d/D)^4)) */
static vn_two strained(double factor, double moment, double diameter, double bore_diameter)
{
	const vn_two ratio = vn_two_ratio(bore_diameter, diameter), whole = vn_two_of(diameter);
	const vn_two wall = vn_two_over(vn_two_sum(diameter, -bore_diameter), whole);
	const vn_two ring = vn_two_times(vn_two_times(wall, vn_two_plus(vn_two_of(1), ratio)),
					 vn_two_plus(vn_two_of(1), vn_two_square(ratio)));
	const vn_two solid = vn_two_over(
		vn_two_over(vn_two_over(vn_two_of(factor * moment), whole), whole), whole);
	return vn_two_over(solid, vn_two_times(ring, vn_two_pi));
}

double vane_shaft_torsion_stress(double torque, double diameter, double bore_diameter,
				 vane_error *error)
{
	vn_begin(error);
	if (!torque_ok(torque, error) || !tube_ok(diameter, bore_diameter, error))
		return NAN;
	return vn_result(vn_two_round(strained(16, torque, diameter, bore_diameter)), error);
}

double vane_shaft_torsion_diameter(double torque, double stress, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !vn_above(stress, 0, "stress", "Pa", error))
		return NAN;
	const vn_two cube = vn_two_over(vn_two_ratio(16 * torque, stress), vn_two_pi);
	return vn_result(vn_two_cbrt(cube), error);
}

double vane_shaft_twist(double torque, double length, double diameter, double bore_diameter,
			double shear_modulus, vane_error *error)
{
	vn_begin(error);
	if (!torque_ok(torque, error) || !vn_above(length, 0, "length", "m", error) ||
	    !tube_ok(diameter, bore_diameter, error) ||
	    !vn_above(shear_modulus, 0, "shear_modulus", "Pa", error))
		return NAN;
	const vn_two slim = vn_two_over(vn_two_ratio(length, diameter), vn_two_of(shear_modulus));
	return vn_result(
		vn_two_round(vn_two_times(strained(32, torque, diameter, bore_diameter), slim)),
		error);
}

double vane_shaft_bending_stress(double bending_moment, double diameter, double bore_diameter,
				 vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(bending_moment, "bending_moment", "N.m", error) ||
	    !tube_ok(diameter, bore_diameter, error))
		return NAN;
	return vn_result(vn_two_round(strained(32, bending_moment, diameter, bore_diameter)),
			 error);
}

double vane_shaft_von_mises(double bending_stress, double torsion_stress, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(bending_stress, "bending_stress", "Pa", error) ||
	    !vn_finite(torsion_stress, "torsion_stress", "Pa", error))
		return NAN;
	return vn_result(hypot(bending_stress, sqrt(3) * torsion_stress), error);
}

double vane_shaft_key_shear(double torque, double diameter, double key_width, double key_length,
			    vane_error *error)
{
	vn_begin(error);
	if (!torque_ok(torque, error) || !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(key_width, 0, "key_width", "m", error) ||
	    !vn_above(key_length, 0, "key_length", "m", error))
		return NAN;
	return vn_result(2 * (torque / diameter / key_width / key_length), error);
}

double vane_shaft_key_bearing(double torque, double diameter, double key_depth, double key_length,
			      vane_error *error)
{
	vn_begin(error);
	if (!torque_ok(torque, error) || !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(key_depth, 0, "key_depth", "m", error) ||
	    !vn_above(key_length, 0, "key_length", "m", error))
		return NAN;
	return vn_result(2 * (torque / diameter / key_depth / key_length), error);
}

static bool spline_ok(double spline_length, double teeth, double share, vane_error *error)
{
	if (!vn_above(spline_length, 0, "spline_length", "m", error) ||
	    !vn_least(teeth, 1, "teeth", "", error))
		return false;
	if (share > 0 && share <= 1)
		return true;
	return vn_fail(VANE_INVALID_ARGUMENT, "share", share,
		       "share must be greater than 0 and at most 1.", error);
}

double vane_shaft_spline_shear(double torque, double pitch_diameter, double tooth_thickness,
			       double spline_length, double teeth, double share, vane_error *error)
{
	vn_begin(error);
	if (!torque_ok(torque, error) ||
	    !vn_above(pitch_diameter, 0, "pitch_diameter", "m", error) ||
	    !vn_above(tooth_thickness, 0, "tooth_thickness", "m", error) ||
	    !spline_ok(spline_length, teeth, share, error))
		return NAN;
	return vn_result(2 * (torque / pitch_diameter / tooth_thickness / spline_length) /
				 (teeth * share),
			 error);
}

double vane_shaft_spline_bearing(double torque, double mean_diameter, double tooth_height,
				 double spline_length, double teeth, double share,
				 vane_error *error)
{
	vn_begin(error);
	if (!torque_ok(torque, error) || !vn_above(mean_diameter, 0, "mean_diameter", "m", error) ||
	    !vn_above(tooth_height, 0, "tooth_height", "m", error) ||
	    !spline_ok(spline_length, teeth, share, error))
		return NAN;
	return vn_result(2 * (torque / mean_diameter / tooth_height / spline_length) /
				 (teeth * share),
			 error);
}
