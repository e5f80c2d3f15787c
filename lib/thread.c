#include "vane/thread.h"

#include "check.h"
#include "dimension.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double sqrt3 = 1.73205080756887729353;
/* Diameter over pitch below which a thread has no root: 17 sqrt(3)/24, rounded up. */
static const double least_diameter = 1.22687;
#define INCH (0.0254 * VN_METRE)
/* Inch sizes come as products with 0.0254, so a boundary needs room for rounding; no size lies
 * within a micrometre of it. */
#define SLACK (1e-6 * VN_METRE)

static bool is_thread(double diameter, double pitch, vane_error *error)
{
	return vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_above(diameter, least_diameter * pitch, "diameter", "m", error);
}

static double circle(double diameter)
{
	return pi / 4 * diameter * diameter;
}

double vane_thread_pitch_diameter(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(diameter - 3 * sqrt3 / 8 * pitch, error);
}

double vane_thread_minor_diameter(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(diameter - 5 * sqrt3 / 8 * pitch, error);
}

double vane_thread_root_diameter(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(diameter - 17 * sqrt3 / 24 * pitch, error);
}

double vane_thread_stress_diameter(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(diameter - 13 * sqrt3 / 24 * pitch, error);
}

double vane_thread_stress_area(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(circle(diameter - 13 * sqrt3 / 24 * pitch), error);
}

double vane_thread_stress_area_unified(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(circle(diameter - 9 * sqrt3 / 16 * pitch), error);
}

static bool is_turned(double pitch, double pitch_diameter, double thread_friction,
		      double bearing_friction, double bearing_diameter, vane_error *error)
{
	return vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_above(pitch_diameter, 0, "pitch_diameter", "m", error) &&
	       vn_least(thread_friction, 0, "thread_friction", "", error) &&
	       vn_least(bearing_friction, 0, "bearing_friction", "", error) &&
	       vn_above(bearing_diameter, 0, "bearing_diameter", "m", error);
}

static double arm(double pitch, double pitch_diameter, double thread_friction,
		  double bearing_friction, double bearing_diameter)
{
	return pitch / (2 * pi) + thread_friction * pitch_diameter / sqrt3 +
	       bearing_friction * bearing_diameter / 2;
}

double vane_thread_torque(double preload, double pitch, double pitch_diameter,
			  double thread_friction, double bearing_friction, double bearing_diameter,
			  vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !is_turned(pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter,
		       error))
		return NAN;
	return vn_result(preload * arm(pitch, pitch_diameter, thread_friction, bearing_friction,
				       bearing_diameter),
			 error);
}

double vane_thread_preload(double torque, double pitch, double pitch_diameter,
			   double thread_friction, double bearing_friction, double bearing_diameter,
			   vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !is_turned(pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter,
		       error))
		return NAN;
	/* An arm that overflowed would pass for a preload of zero. */
	const double lever = vn_result(
		arm(pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter),
		error);
	return vn_result(torque / lever, error);
}

double vane_thread_torque_nut_factor(double preload, double nut_factor, double diameter,
				     vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !vn_above(nut_factor, 0, "nut_factor", "", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error))
		return NAN;
	return vn_result(nut_factor * preload * diameter, error);
}

double vane_thread_preload_nut_factor(double torque, double nut_factor, double diameter,
				      vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !vn_above(nut_factor, 0, "nut_factor", "", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error))
		return NAN;
	return vn_result(torque / nut_factor / diameter, error);
}

double vane_thread_proof_load(double stress_area, double proof_stress, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(stress_area, 0, "stress_area", "m2", error) ||
	    !vn_above(proof_stress, 0, "proof_stress", "Pa", error))
		return NAN;
	return vn_result(stress_area * proof_stress, error);
}

double vane_thread_tensile_stress(double force, double stress_area, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(force, 0, "force", "N", error) ||
	    !vn_above(stress_area, 0, "stress_area", "m2", error))
		return NAN;
	return vn_result(force / stress_area, error);
}

double vane_thread_shear_stress(double torque, double diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error))
		return NAN;
	/* Divided one by one: a cube overflows or vanishes long before the stress does. */
	return vn_result(16 / pi * (torque / diameter) / diameter / diameter, error);
}

double vane_thread_von_mises(double tensile_stress, double shear_stress, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(tensile_stress, 0, "tensile_stress", "Pa", error) ||
	    !vn_least(shear_stress, 0, "shear_stress", "Pa", error))
		return NAN;
	return vn_result(hypot(tensile_stress, sqrt3 * shear_stress), error);
}

static void set(vane_thread_class *out, double unit, double proof, double yield, double tensile)
{
	out->proof = proof * unit;
	out->yield = yield * unit;
	out->tensile = tensile * unit;
}

static bool strength_metric(int32_t grade, double diameter, vane_thread_class *out,
			    vane_error *error)
{
	const double MPa = 1e6 * VN_PASCAL;
	if (!vn_between(diameter, 0.0016 * VN_METRE, 0.039 * VN_METRE, "diameter", "m", error))
		return false;
	if (grade == VANE_THREAD_12_9)
		set(out, MPa, 970, 1100, 1220);
	else if (grade == VANE_THREAD_10_9)
		set(out, MPa, 830, 940, 1040);
	else if (diameter > 0.016 * VN_METRE + SLACK)
		set(out, MPa, 600, 660, 830);
	else
		set(out, MPa, 580, 640, 800);
	return true;
}

static bool strength_inch(int32_t grade, double diameter, vane_thread_class *out, vane_error *error)
{
	const double ksi = 4448.2216152605 * VN_NEWTON / (INCH * INCH);
	if (!vn_between(diameter, 0.25 * INCH - SLACK, 1.5 * INCH + SLACK, "diameter", "m", error))
		return false;
	if (grade == VANE_THREAD_SAE_8)
		set(out, ksi, 120, 130, 150);
	else if (grade == VANE_THREAD_SAE_5 && diameter > INCH + SLACK)
		set(out, ksi, 74, 81, 105);
	else if (grade == VANE_THREAD_SAE_5)
		set(out, ksi, 85, 92, 120);
	else if (diameter > 0.75 * INCH + SLACK)
		set(out, ksi, 33, 36, 60);
	else
		set(out, ksi, 55, 57, 74);
	return true;
}

int32_t vane_thread_strength(int32_t grade, double diameter, vane_thread_class *out,
			     vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	set(out, 1, NAN, NAN, NAN);
	if (!vn_count(grade, VANE_THREAD_8_8, VANE_THREAD_SAE_8, "grade", error))
		return VANE_INVALID_ARGUMENT;
	const bool found = grade <= VANE_THREAD_12_9 ? strength_metric(grade, diameter, out, error)
						     : strength_inch(grade, diameter, out, error);
	return found ? VANE_OK : VANE_INVALID_ARGUMENT;
}
