#include "vane/thread.h"

#include "check.h"
#include "dimension.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double sqrt3 = 1.73205080756887729353;

/* A diameter less a multiple of the pitch. The multiple, an odd share of sqrt(3), comes in two
 * doubles: near the least diameters one alone would cost half the digits. */
struct depth {
	double high, low;
};

static const struct depth pitch_depth = {0.649519052838329, -1.7879585399481943e-17};
static const struct depth minor_depth = {1.0825317547305484, -1.0381417730748034e-16};
static const struct depth root_depth = {1.2268693220279547, 1.55706953398744e-17};
static const struct depth root_depth_unified = {1.299038105676658, -3.5759170798963886e-17};
static const struct depth stress_depth = {0.9381941874331419, -1.154445029803771e-18};
static const struct depth stress_depth_unified = {0.9742785792574935, -2.6819378099222915e-17};
static const struct depth strong_depth = {0.3247595264191645, -8.939792699740972e-18};

/* What is left, and what rounding took off it. */
struct rest {
	double value, error;
};

static struct rest rest_of(double diameter, double pitch, struct depth depth)
{
	const double off = depth.high * pitch, value = diameter - off, back = value - diameter;
	const double lost = (diameter - (value - back)) - (off + back);
	return (struct rest){value, lost - fma(depth.high, pitch, -off) - depth.low * pitch};
}

static double less(double diameter, double pitch, struct depth depth)
{
	const struct rest rest = rest_of(diameter, pitch, depth);
	return rest.value + rest.error;
}

static bool is_thread(double diameter, double pitch, vane_error *error)
{
	return vn_above(pitch, 0, "pitch", "m", error) &&
	       vn_above(diameter, 1.22687 * pitch, "diameter", "m", error);
}

static double circle(double diameter, double pitch, struct depth depth)
{
	const struct rest d = rest_of(diameter, pitch, depth);
	return pi / 4 * fma(d.value, d.value, 2 * d.value * d.error);
}

static double diameter_less(double diameter, double pitch, struct depth depth, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(less(diameter, pitch, depth), error);
}

double vane_thread_pitch_diameter(double diameter, double pitch, vane_error *error)
{
	return diameter_less(diameter, pitch, pitch_depth, error);
}

double vane_thread_minor_diameter(double diameter, double pitch, vane_error *error)
{
	return diameter_less(diameter, pitch, minor_depth, error);
}

double vane_thread_root_diameter(double diameter, double pitch, vane_error *error)
{
	return diameter_less(diameter, pitch, root_depth, error);
}

double vane_thread_root_diameter_unified(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(pitch, 0, "pitch", "m", error) ||
	    !vn_above(diameter, 1.29904 * pitch, "diameter", "m", error))
		return NAN;
	return vn_result(less(diameter, pitch, root_depth_unified), error);
}

double vane_thread_stress_diameter(double diameter, double pitch, vane_error *error)
{
	return diameter_less(diameter, pitch, stress_depth, error);
}

double vane_thread_stress_area(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(circle(diameter, pitch, stress_depth), error);
}

double vane_thread_stress_area_unified(double diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!is_thread(diameter, pitch, error))
		return NAN;
	return vn_result(circle(diameter, pitch, stress_depth_unified), error);
}

double vane_thread_stress_area_strong(double pitch_diameter, double pitch, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(pitch, 0, "pitch", "m", error) ||
	    !vn_above(pitch_diameter, 0.32476 * pitch, "pitch_diameter", "m", error))
		return NAN;
	return vn_result(circle(pitch_diameter, pitch, strong_depth), error);
}

double vane_thread_area(double diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error))
		return NAN;
	return vn_result(pi / 4 * diameter * diameter, error);
}

double vane_thread_lead_angle(double pitch, double pitch_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(pitch, 0, "pitch", "m", error) ||
	    !vn_above(pitch_diameter, 0, "pitch_diameter", "m", error))
		return NAN;
	return vn_result(atan(pitch / pitch_diameter / pi), error);
}

double vane_thread_bearing_diameter(double face_diameter, double hole_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(hole_diameter, 0, "hole_diameter", "m", error) ||
	    !vn_above(face_diameter, hole_diameter, "face_diameter", "m", error))
		return NAN;
	return vn_result(face_diameter / 2 + hole_diameter / 2, error);
}

static bool is_bolt(double diameter, double length, vane_error *error)
{
	return vn_above(diameter, 0, "diameter", "m", error) &&
	       vn_above(length, 0, "length", "m", error);
}

double vane_thread_length(double diameter, double length, vane_error *error)
{
	vn_begin(error);
	if (!is_bolt(diameter, length, error))
		return NAN;
	const double allowance = length <= 0.125 * VN_METRE ? 0.006
				 : length <= 0.2 * VN_METRE ? 0.012
							    : 0.025;
	return vn_result(2 * diameter + allowance * VN_METRE, error);
}

double vane_thread_length_inch(double diameter, double length, vane_error *error)
{
	const double inch = 0.0254 * VN_METRE;
	vn_begin(error);
	if (!is_bolt(diameter, length, error))
		return NAN;
	const double allowance = length <= 6 * inch ? inch / 4 : inch / 2;
	return vn_result(2 * diameter + allowance, error);
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
