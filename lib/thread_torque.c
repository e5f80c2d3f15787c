#include "thread.h"

#include "check.h"
#include "vane/thread.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double sqrt3 = 1.73205080756887729353;

bool vn_thread_is_screw(double pitch, double pitch_diameter, double thread_friction,
			vane_error *error)
{
	return vn_above(pitch_diameter, 0, "pitch_diameter", "m", error) &&
	       vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_between(pitch, 0, 0.5 * pitch_diameter, "pitch", "m", error) &&
	       vn_between(thread_friction, 0, 1, "thread_friction", "", error);
}

/* No pitch above half the diameter, no friction above 1: the denominator stays above 0.8. */
double vn_thread_slope(double pitch, double pitch_diameter, double thread_friction)
{
	const double lead = pitch / pitch_diameter / pi;
	return fma(thread_friction, 2 / sqrt3, lead) / fma(-2 / sqrt3 * thread_friction, lead, 1);
}

bool vn_thread_is_turned(double pitch, double pitch_diameter, double thread_friction,
			 double bearing_friction, double bearing_diameter, vane_error *error)
{
	return vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_above(pitch_diameter, 0, "pitch_diameter", "m", error) &&
	       vn_least(thread_friction, 0, "thread_friction", "", error) &&
	       vn_least(bearing_friction, 0, "bearing_friction", "", error) &&
	       vn_above(bearing_diameter, 0, "bearing_diameter", "m", error);
}

double vn_thread_arm(double pitch, double pitch_diameter, double thread_friction,
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
	    !vn_thread_is_turned(pitch, pitch_diameter, thread_friction, bearing_friction,
				 bearing_diameter, error))
		return NAN;
	return vn_result(preload * vn_thread_arm(pitch, pitch_diameter, thread_friction,
						 bearing_friction, bearing_diameter),
			 error);
}

double vane_thread_preload(double torque, double pitch, double pitch_diameter,
			   double thread_friction, double bearing_friction, double bearing_diameter,
			   vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !vn_thread_is_turned(pitch, pitch_diameter, thread_friction, bearing_friction,
				 bearing_diameter, error))
		return NAN;
	/* An arm that overflowed would pass for a preload of zero. */
	const double lever = vn_result(vn_thread_arm(pitch, pitch_diameter, thread_friction,
						     bearing_friction, bearing_diameter),
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

/* The same with the thread's lever as the book has it, the product of lead and friction kept. */
static bool is_turned_exact(double pitch, double pitch_diameter, double thread_friction,
			    double bearing_friction, double bearing_diameter, vane_error *error)
{
	return vn_thread_is_screw(pitch, pitch_diameter, thread_friction, error) &&
	       vn_between(bearing_friction, 0, 1, "bearing_friction", "", error) &&
	       vn_above(bearing_diameter, 0, "bearing_diameter", "m", error);
}

static double arm_exact(double pitch, double pitch_diameter, double thread_friction,
			double bearing_friction, double bearing_diameter)
{
	return fma(pitch_diameter / 2, vn_thread_slope(pitch, pitch_diameter, thread_friction),
		   bearing_friction * bearing_diameter / 2);
}

double vane_thread_torque_exact(double preload, double pitch, double pitch_diameter,
				double thread_friction, double bearing_friction,
				double bearing_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !is_turned_exact(pitch, pitch_diameter, thread_friction, bearing_friction,
			     bearing_diameter, error))
		return NAN;
	return vn_result(preload * arm_exact(pitch, pitch_diameter, thread_friction,
					     bearing_friction, bearing_diameter),
			 error);
}

double vane_thread_preload_exact(double torque, double pitch, double pitch_diameter,
				 double thread_friction, double bearing_friction,
				 double bearing_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !is_turned_exact(pitch, pitch_diameter, thread_friction, bearing_friction,
			     bearing_diameter, error))
		return NAN;
	const double lever = vn_result(arm_exact(pitch, pitch_diameter, thread_friction,
						 bearing_friction, bearing_diameter),
				       error);
	return vn_result(torque / lever, error);
}

double vane_thread_nut_factor(double diameter, double pitch, double pitch_diameter,
			      double thread_friction, double bearing_friction,
			      double bearing_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !is_turned_exact(pitch, pitch_diameter, thread_friction, bearing_friction,
			     bearing_diameter, error))
		return NAN;
	return vn_result(arm_exact(pitch, pitch_diameter, thread_friction, bearing_friction,
				   bearing_diameter) /
				 diameter,
			 error);
}

int32_t vane_thread_torque_parts(double preload, double pitch, double pitch_diameter,
				 double thread_friction, double bearing_friction,
				 double bearing_diameter, vane_thread_parts *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_thread_parts){NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_above(preload, 0, "preload", "N", error) ||
	    !vn_thread_is_turned(pitch, pitch_diameter, thread_friction, bearing_friction,
				 bearing_diameter, error))
		return VANE_INVALID_ARGUMENT;

	const double lead = pitch / (2 * pi);
	const double thread = thread_friction * pitch_diameter / sqrt3;
	const double bearing = bearing_friction * bearing_diameter / 2;
	const vane_thread_parts parts = {
		.pitch = preload * lead,
		.thread = preload * thread,
		.bearing = preload * bearing,
		.shank = preload * (lead + thread),
		.torque = preload * (lead + thread + bearing),
		.loosening = preload * (thread + bearing - lead),
		.efficiency = lead / (lead + thread + bearing),
	};
	if (!isfinite(parts.torque)) {
		vn_result(parts.torque, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = parts;
	return VANE_OK;
}

double vane_thread_stretch(double stress, double length, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(stress, 0, "stress", "Pa", error) ||
	    !vn_above(length, 0, "length", "m", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error))
		return NAN;
	return vn_result(stress / modulus * length, error);
}

double vane_thread_turn_angle(double stretch, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(stretch, 0, "stretch", "m", error) ||
	    !vn_above(pitch, 0, "pitch", "m", error))
		return NAN;
	return vn_result(stretch / pitch * (2 * pi), error);
}
