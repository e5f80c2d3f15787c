#include "check.h"
#include "dimension.h"
#include "vane/joint.h"

#include <math.h>

static const double pi = 3.14159265358979323846;

double vane_joint_bar_stiffness(double area, double length, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(area, 0, "area", "m2", error) || !vn_above(length, 0, "length", "m", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error))
		return NAN;
	return vn_result(area / length * modulus, error);
}

double vane_joint_bolt_stiffness(double shank_area, double shank_length, double stress_area,
				 double thread_length, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(shank_area, 0, "shank_area", "m2", error) ||
	    !vn_least(shank_length, 0, "shank_length", "m", error) ||
	    !vn_above(stress_area, 0, "stress_area", "m2", error) ||
	    !vn_above(thread_length, 0, "thread_length", "m", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error))
		return NAN;
	return vn_result(modulus / (shank_length / shank_area + thread_length / stress_area),
			 error);
}

double vane_joint_bolt_stiffness_vdi(double diameter, double root_diameter, double shank_diameter,
				     double shank_length, double thread_length, double head_ratio,
				     double nut_ratio, double modulus, double nut_modulus,
				     vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(root_diameter, 0, "root_diameter", "m", error) ||
	    !vn_above(shank_diameter, 0, "shank_diameter", "m", error) ||
	    !vn_least(shank_length, 0, "shank_length", "m", error) ||
	    !vn_least(thread_length, 0, "thread_length", "m", error) ||
	    !vn_least(head_ratio, 0, "head_ratio", "", error) ||
	    !vn_least(nut_ratio, 0, "nut_ratio", "", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error) ||
	    !vn_above(nut_modulus, 0, "nut_modulus", "Pa", error))
		return NAN;
	const double bolt = head_ratio / diameter + shank_length / shank_diameter / shank_diameter +
			    (thread_length + diameter / 2) / root_diameter / root_diameter;
	const double nut = nut_ratio / diameter;
	return vn_result(pi / 4 / (bolt / modulus + nut / nut_modulus), error);
}

/* The logarithm of a hollow cone from one diameter to a greater one. */
static double cone(double hole, double from, double growth)
{
	return log1p(2 * (hole / (from - hole)) * (growth / (growth + (from + hole))));
}

static bool is_cone(double modulus, double hole, double face, double angle, vane_error *error)
{
	return vn_above(modulus, 0, "modulus", "Pa", error) &&
	       vn_above(hole, 0, "hole_diameter", "m", error) &&
	       vn_above(face, hole, "face_diameter", "m", error) &&
	       vn_above(angle, 0, "half_angle", "rad", error) &&
	       vn_between(angle, 0, 1.5, "half_angle", "rad", error);
}

static double frustum(double modulus, double hole, double face, double thickness, double slope)
{
	return pi * slope * (modulus * hole) / cone(hole, face, 2 * thickness * slope);
}

double vane_joint_frustum_stiffness(double modulus, double hole_diameter, double face_diameter,
				    double thickness, double half_angle, vane_error *error)
{
	vn_begin(error);
	if (!is_cone(modulus, hole_diameter, face_diameter, half_angle, error) ||
	    !vn_above(thickness, 0, "thickness", "m", error))
		return NAN;
	return vn_result(frustum(modulus, hole_diameter, face_diameter, thickness, tan(half_angle)),
			 error);
}

double vane_joint_grip_stiffness(double modulus, double hole_diameter, double face_diameter,
				 double length, double half_angle, vane_error *error)
{
	vn_begin(error);
	if (!is_cone(modulus, hole_diameter, face_diameter, half_angle, error) ||
	    !vn_above(length, 0, "length", "m", error))
		return NAN;
	return vn_result(
		frustum(modulus, hole_diameter, face_diameter, length / 2, tan(half_angle)) / 2,
		error);
}

double vane_joint_wileman_stiffness(double modulus, double diameter, double length,
				    double coefficient, double exponent, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(modulus, 0, "modulus", "Pa", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_least(length, 0.5 * diameter, "length", "m", error) ||
	    !vn_above(coefficient, 0, "coefficient", "", error) ||
	    !vn_between(exponent, 0, 1, "exponent", "", error))
		return NAN;
	return vn_result(modulus * diameter * coefficient * exp(exponent * (diameter / length)),
			 error);
}

int32_t vane_joint_plate_data(int32_t metal, vane_joint_plate *out, vane_error *error)
{
	/* Shigley, 9th ed., table 8-8, in the order of the enumerators. From memory. */
	static const vane_joint_plate plates[] = {
		{207e9, 0.291, 0.78715, 0.62873},
		{71e9, 0.334, 0.79670, 0.63816},
		{119e9, 0.326, 0.79568, 0.63553},
		{100e9, 0.211, 0.77871, 0.61616},
	};
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_joint_plate){NAN, NAN, NAN, NAN};
	if (!vn_count(metal, VANE_JOINT_STEEL, VANE_JOINT_IRON, "metal", error))
		return VANE_INVALID_ARGUMENT;
	*out = plates[metal - 1];
	out->modulus *= VN_PASCAL;
	return VANE_OK;
}

static bool is_clamped(double length, double face, double hole, double outer, double modulus,
		       vane_error *error)
{
	return vn_above(hole, 0, "hole_diameter", "m", error) &&
	       vn_above(face, hole, "face_diameter", "m", error) &&
	       vn_above(length, 0.01 * face, "length", "m", error) &&
	       vn_between(length, 0, nextafter(100 * face, 0), "length", "m", error) &&
	       vn_above(outer, hole, "outer_diameter", "m", error) &&
	       vn_above(modulus, 0, "modulus", "Pa", error);
}

/* VDI 2230: cones until they meet or reach the outer diameter, a sleeve between. */
static double cone_and_sleeve(double length, double face, double hole, double outer, double modulus,
			      double cones, double slope)
{
	const double growth = fmin(fmax(outer - face, 0), cones * length * slope);
	const double height = growth / (cones * slope);
	const double sleeve = outer > face ? length - height : length;
	double give = 0;
	if (growth > 0)
		give += 2 / (cones * slope * hole) * cone(hole, face, growth);
	if (sleeve > 0)
		give += 4 * sleeve / (outer - hole) / (outer + hole);
	return pi * modulus / give;
}

double vane_joint_cone_stiffness(double length, double face_diameter, double hole_diameter,
				 double outer_diameter, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!is_clamped(length, face_diameter, hole_diameter, outer_diameter, modulus, error))
		return NAN;
	const double slope = 0.362 + 0.032 * log(length / face_diameter / 2) +
			     0.153 * log(fmax(1, outer_diameter / face_diameter));
	return vn_result(cone_and_sleeve(length, face_diameter, hole_diameter, outer_diameter,
					 modulus, 1, slope),
			 error);
}

double vane_joint_cone_stiffness_tapped(double length, double face_diameter, double hole_diameter,
					double outer_diameter, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!is_clamped(length, face_diameter, hole_diameter, outer_diameter, modulus, error))
		return NAN;
	const double slope = 0.348 + 0.013 * log(length / face_diameter) +
			     0.193 * log(fmax(1, outer_diameter / face_diameter));
	return vn_result(cone_and_sleeve(length, face_diameter, hole_diameter, outer_diameter,
					 modulus, 2, slope),
			 error);
}

static bool is_stack(const vane_joint_layer *layer, int64_t layers, vane_error *error)
{
	for (int64_t i = 0; i < layers; i++) {
		if (vn_above(layer[i].thickness, 0, "thickness", "m", error) &&
		    vn_above(layer[i].modulus, 0, "modulus", "Pa", error))
			continue;
		vn_within("layer", error);
		vn_at(i, error);
		return false;
	}
	return true;
}

int32_t vane_joint_stack_stiffness(const vane_joint_layer *layer, int64_t layers,
				   double hole_diameter, double head_diameter, double nut_diameter,
				   double half_angle, double *stiffness, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(stiffness, "stiffness", error))
		return VANE_INVALID_ARGUMENT;
	*stiffness = NAN;
	if (!vn_pointer(layer, "layer", error) || !vn_count(layers, 1, 1000, "layers", error) ||
	    !is_stack(layer, layers, error) ||
	    !vn_above(hole_diameter, 0, "hole_diameter", "m", error) ||
	    !vn_above(head_diameter, hole_diameter, "head_diameter", "m", error) ||
	    !vn_above(nut_diameter, hole_diameter, "nut_diameter", "m", error) ||
	    !vn_above(half_angle, 0, "half_angle", "rad", error) ||
	    !vn_between(half_angle, 0, 1.5, "half_angle", "rad", error))
		return VANE_INVALID_ARGUMENT;

	const double slope = tan(half_angle);
	double grip = 0;
	for (int64_t i = 0; i < layers; i++)
		grip += layer[i].thickness;
	/* Where the cone from the head has grown to the one from the nut. */
	const double meet = grip / 2 + (nut_diameter - head_diameter) / (4 * slope);
	double give = 0, top = 0;
	for (int64_t i = 0; i < layers; i++) {
		const double bottom = top + layer[i].thickness;
		const double split = fmin(fmax(meet, top), bottom);
		if (split > top)
			give += 1 / frustum(layer[i].modulus, hole_diameter,
					    head_diameter + 2 * slope * top, split - top, slope);
		if (bottom > split)
			give += 1 / frustum(layer[i].modulus, hole_diameter,
					    nut_diameter + 2 * slope * (grip - bottom),
					    bottom - split, slope);
		top = bottom;
	}
	const double whole = vn_result(1 / give, error);
	if (!(whole > 0)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*stiffness = whole;
	return VANE_OK;
}

double vane_joint_stiffness_series(double first, double second, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(first, 0, "first", "N/m", error) ||
	    !vn_above(second, 0, "second", "N/m", error))
		return NAN;
	const double softer = fmin(first, second), stiffer = fmax(first, second);
	return vn_result(softer / (1 + softer / stiffer), error);
}
