#include "check.h"
#include "vane/thread.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double sqrt3 = 1.73205080756887729353;

/* The two threads meet at the radius of the inner diameter's cylinder (bolt) or the outer's
 * (nut); what shears there is half a pitch, widened by the flanks over the depth. */
static double area_per_length(double cylinder, double depth, double pitch)
{
	return pi * cylinder * (0.5 + depth / (sqrt3 * pitch));
}

static bool is_external(double pitch, double minor_diameter, double pitch_diameter,
			vane_error *error)
{
	return vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_above(minor_diameter, 0, "minor_diameter", "m", error) &&
	       vn_least(pitch_diameter, minor_diameter, "pitch_diameter", "m", error);
}

static bool is_internal(double pitch, double pitch_diameter, double diameter, vane_error *error)
{
	return vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_above(pitch_diameter, 0, "pitch_diameter", "m", error) &&
	       vn_least(diameter, pitch_diameter, "diameter", "m", error);
}

double vane_thread_shear_area_external(double length, double pitch, double minor_diameter,
				       double pitch_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(length, 0, "length", "m", error) ||
	    !is_external(pitch, minor_diameter, pitch_diameter, error))
		return NAN;
	return vn_result(
		length * area_per_length(minor_diameter, pitch_diameter - minor_diameter, pitch),
		error);
}

double vane_thread_shear_area_internal(double length, double pitch, double pitch_diameter,
				       double diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(length, 0, "length", "m", error) ||
	    !is_internal(pitch, pitch_diameter, diameter, error))
		return NAN;
	return vn_result(length * area_per_length(diameter, diameter - pitch_diameter, pitch),
			 error);
}

double vane_thread_strip_force(double shear_area, double shear_strength, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(shear_area, 0, "shear_area", "m2", error) ||
	    !vn_above(shear_strength, 0, "shear_strength", "Pa", error))
		return NAN;
	return vn_result(shear_area * shear_strength, error);
}

static bool is_carried(double force, double shear_strength, vane_error *error)
{
	return vn_least(force, 0, "force", "N", error) &&
	       vn_above(shear_strength, 0, "shear_strength", "Pa", error);
}

/* An area that overflowed would pass for no length at all. */
static double engagement(double force, double shear_strength, double area, vane_error *error)
{
	return vn_result(force / shear_strength / vn_result(area, error), error);
}

double vane_thread_engagement_external(double force, double shear_strength, double pitch,
				       double minor_diameter, double pitch_diameter,
				       vane_error *error)
{
	vn_begin(error);
	if (!is_carried(force, shear_strength, error) ||
	    !is_external(pitch, minor_diameter, pitch_diameter, error))
		return NAN;
	return engagement(force, shear_strength,
			  area_per_length(minor_diameter, pitch_diameter - minor_diameter, pitch),
			  error);
}

double vane_thread_engagement_internal(double force, double shear_strength, double pitch,
				       double pitch_diameter, double diameter, vane_error *error)
{
	vn_begin(error);
	if (!is_carried(force, shear_strength, error) ||
	    !is_internal(pitch, pitch_diameter, diameter, error))
		return NAN;
	return engagement(force, shear_strength,
			  area_per_length(diameter, diameter - pitch_diameter, pitch), error);
}

double vane_thread_nut_dilation(double width, double diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(width, 1.375 * diameter, "width", "m", error))
		return NAN;
	/* 3.8 r - r^2 - 2.61 is 1 - (1.9 - r)^2. */
	const double below = fmax(0, 1.9 - width / diameter);
	return vn_result(1 - below * below, error);
}

double vane_thread_bolt_bending(double strength_ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(strength_ratio, 0, "strength_ratio", "", error) ||
	    !vn_between(strength_ratio, 0, 2.2, "strength_ratio", "", error))
		return NAN;
	/* The printed polynomial written round 1.5, where its terms do not cancel. */
	const double x = strength_ratio - 1.5;
	return strength_ratio <= 1
		       ? 0.897
		       : 1.10433125 + x * (0.3808 + x * (-0.52295 + x * (-0.4452 + x * 0.9353)));
}

double vane_thread_nut_bending(double strength_ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(strength_ratio, 0.4, "strength_ratio", "", error))
		return NAN;
	/* The printed polynomial written round 0.75, where its terms do not cancel. */
	const double x = strength_ratio - 0.75;
	return strength_ratio >= 1 ? 0.897 : 0.9725 + x * (-0.388 + x * (0.02 + x * 1.296));
}
