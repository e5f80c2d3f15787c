#include "vane/slot.h"

#include "slot.h"

/* Dynamic head and the excess drop of a flow that develops in a pipe. */
static const double pipe_inertial_coefficient = 2.25;

/* tanh(n x) = 1 - 2 / (exp(2 n x) + 1): the ones sum to 31 zeta(5) / 32, and of the rest five
 * terms leave less than 1e-20. */
static double duct_factor(double ratio)
{
	double sum = 0;
	for (int n = 9; n > 0 && ratio > 0; n -= 2)
		sum += 1 / (pow(n, 5) * (exp(n * M_PI / ratio) + 1));
	return 1 - ratio * (0.63024887628386693 - 1.2548212389325000 * sum);
}

double vane_slot_duct_factor(double ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(ratio, 0, 1, "ratio", "", error))
		return NAN;
	return duct_factor(ratio);
}

double vane_slot_duct_flow(double width, double gap, double length, double dp, double viscosity,
			   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) || !vn_above(gap, 0, "gap", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return NAN;
	const double narrow = fmin(width, gap), wide = fmax(width, gap);
	return vn_result(duct_factor(narrow / wide) *
				 vn_poiseuille(wide / length, vn_cube(narrow), dp, viscosity),
			 error);
}

double vane_slot_duct_friction(double ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(ratio, 0, 1, "ratio", "", error))
		return NAN;
	return 96 / ((1 + ratio) * (1 + ratio) * duct_factor(ratio));
}

double vane_slot_duct_reynolds(double flow, double width, double gap, double kinematic_viscosity,
			       vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) || !vn_above(width, 0, "width", "m", error) ||
	    !vn_above(gap, 0, "gap", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(2 * (fabs(flow) / (width + gap) / kinematic_viscosity), error);
}

double vane_slot_duct_wall_shear(double width, double gap, double length, double dp,
				 vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) || !vn_above(gap, 0, "gap", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error))
		return NAN;
	return vn_result(dp / 2 * (width / (width + gap)) * (gap / length), error);
}

double vane_slot_pipe_flow(double diameter, double length, double dp, double viscosity,
			   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return NAN;
	return vn_result(M_PI / 128 * (diameter / length) * vn_cube(diameter) * (dp / viscosity),
			 error);
}

double vane_slot_pipe_velocity(double diameter, double length, double dp, double viscosity,
			       double radius, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_between(radius, 0, 0.5 * diameter, "radius", "m", error))
		return NAN;
	const double outer = diameter / 2;
	return vn_result((outer - radius) * ((outer + radius) / length) * (dp / viscosity / 4),
			 error);
}

double vane_slot_pipe_wall_shear(double diameter, double length, double dp, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error))
		return NAN;
	return vn_result(dp / 4 * (diameter / length), error);
}

double vane_slot_pipe_reynolds(double flow, double diameter, double kinematic_viscosity,
			       vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(4 * M_1_PI * (fabs(flow) / diameter / kinematic_viscosity), error);
}

double vane_slot_pipe_inertia(double flow, double length, double kinematic_viscosity,
			      vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) || !vn_above(length, 0, "length", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(pipe_inertial_coefficient / 16 * M_1_PI *
				 (fabs(flow) / length / kinematic_viscosity),
			 error);
}

double vane_slot_pipe_entry_length(double diameter, double reynolds, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_least(reynolds, 0, "reynolds", "", error))
		return NAN;
	return vn_result(0.056 * diameter * reynolds, error);
}

double vane_slot_entry_length(double gap, double reynolds, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(gap, 0, "gap", "m", error) || !vn_least(reynolds, 0, "reynolds", "", error))
		return NAN;
	return vn_result(0.022 * gap * reynolds, error);
}
