#include "vane/slot.h"

#include "slot.h"

static bool plates_ok(double gap, double length, double dp, double viscosity, double wall_speed,
		      vane_error *error)
{
	return vn_above(gap, 0, "gap", "m", error) && vn_above(length, 0, "length", "m", error) &&
	       vn_finite(dp, "dp", "Pa", error) &&
	       vn_above(viscosity, 0, "viscosity", "Pa.s", error) &&
	       vn_finite(wall_speed, "wall_speed", "m/s", error);
}

double vane_slot_velocity(double gap, double length, double dp, double viscosity, double wall_speed,
			  double height, vane_error *error)
{
	vn_begin(error);
	if (!plates_ok(gap, length, dp, viscosity, wall_speed, error) ||
	    !vn_between(height, 0, gap, "height", "m", error))
		return NAN;
	return vn_result(height * ((gap - height) / length) * (dp / viscosity / 2) +
				 wall_speed * (height / gap),
			 error);
}

double vane_slot_shear(double gap, double length, double dp, double viscosity, double wall_speed,
		       double height, vane_error *error)
{
	vn_begin(error);
	if (!plates_ok(gap, length, dp, viscosity, wall_speed, error) ||
	    !vn_between(height, 0, gap, "height", "m", error))
		return NAN;
	return vn_result(dp * ((gap / 2 - height) / length) + viscosity * (wall_speed / gap),
			 error);
}

static double wall_force(double width, double gap, double length, double dp, double viscosity,
			 double wall_speed, double sign, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !plates_ok(gap, length, dp, viscosity, wall_speed, error))
		return NAN;
	return vn_result(dp / 2 * width * gap +
				 sign * (viscosity * wall_speed * width * (length / gap)),
			 error);
}

double vane_slot_still_wall_force(double width, double gap, double length, double dp,
				  double viscosity, double wall_speed, vane_error *error)
{
	return wall_force(width, gap, length, dp, viscosity, wall_speed, 1, error);
}

double vane_slot_sliding_wall_force(double width, double gap, double length, double dp,
				    double viscosity, double wall_speed, vane_error *error)
{
	return wall_force(width, gap, length, dp, viscosity, wall_speed, -1, error);
}

static bool radii_ok(double inner_radius, double outer_radius, vane_error *error)
{
	return vn_above(inner_radius, 0, "inner_radius", "m", error) &&
	       vn_above(outer_radius, inner_radius, "outer_radius", "m", error);
}

double vane_slot_disc_pressure(double inner_radius, double outer_radius, double inner_pressure,
			       double outer_pressure, double radius, vane_error *error)
{
	vn_begin(error);
	if (!radii_ok(inner_radius, outer_radius, error) ||
	    !vn_finite(inner_pressure, "inner_pressure", "Pa", error) ||
	    !vn_finite(outer_pressure, "outer_pressure", "Pa", error) ||
	    !vn_between(radius, inner_radius, outer_radius, "radius", "m", error))
		return NAN;
	const double whole = vn_log_ratio(inner_radius, outer_radius);
	return vn_result(inner_pressure * (vn_log_ratio(radius, outer_radius) / whole) +
				 outer_pressure * (vn_log_ratio(inner_radius, radius) / whole),
			 error);
}

double vane_slot_disc_force(double inner_radius, double outer_radius, double angle,
			    double inner_pressure, double outer_pressure, vane_error *error)
{
	vn_begin(error);
	if (!radii_ok(inner_radius, outer_radius, error) || !vn_angle(angle, "angle", error) ||
	    !vn_finite(inner_pressure, "inner_pressure", "Pa", error) ||
	    !vn_finite(outer_pressure, "outer_pressure", "Pa", error))
		return NAN;
	/* With x = ln(r_o / r_i), r_o^2 - r_i^2 is 2 r_i r_o sinh(x): both weights come out as sums
	 * that stay exact where the radii are nearly equal. */
	const double x = vn_log_ratio(inner_radius, outer_radius);
	const double across = outer_radius - inner_radius;
	const double share = vn_sinhc_share(inner_radius, outer_radius, x);
	const double inner = inner_radius * across + outer_radius * share;
	const double outer = outer_radius * (across - share);
	return vn_result(angle / 2 * (inner_pressure * inner + outer_pressure * outer), error);
}

double vane_slot_disc_torque(double gap, double inner_radius, double outer_radius, double angle,
			     double viscosity, double speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(gap, 0, "gap", "m", error) || !radii_ok(inner_radius, outer_radius, error) ||
	    !vn_angle(angle, "angle", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_finite(speed, "speed", "1/s", error))
		return NAN;
	const double squares = (outer_radius - inner_radius) * (outer_radius + inner_radius);
	const double sum = inner_radius * inner_radius + outer_radius * outer_radius;
	return vn_result(angle * viscosity * (M_PI / 2 * speed) * squares * (sum / gap), error);
}
