#include "vane/slot.h"

#include "slot.h"

static bool lands_ok(double length_in, double length_out, double dp, double viscosity,
		     double wall_speed, vane_error *error)
{
	return vn_above(length_in, 0, "length_in", "m", error) &&
	       vn_above(length_out, 0, "length_out", "m", error) &&
	       vn_finite(dp, "dp", "Pa", error) &&
	       vn_above(viscosity, 0, "viscosity", "Pa.s", error) &&
	       vn_finite(wall_speed, "wall_speed", "m/s", error);
}

double vane_slot_step_flow(double width, double gap_in, double length_in, double gap_out,
			   double length_out, double dp, double viscosity, double wall_speed,
			   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !vn_least(gap_in, 0, "gap_in", "m", error) ||
	    !vn_least(gap_out, 0, "gap_out", "m", error) ||
	    !lands_ok(length_in, length_out, dp, viscosity, wall_speed, error))
		return NAN;
	const double narrow = fmin(gap_in, gap_out), wide = fmax(gap_in, gap_out);
	if (narrow == 0)
		return 0;
	const double tight = gap_in < gap_out ? length_in : length_out;
	const double loose = gap_in < gap_out ? length_out : length_in;
	const double r = narrow / wide;
	const double second = tight + loose * (r * r), third = tight + loose * vn_cube(r);
	return vn_result(vn_poiseuille(width / third, vn_cube(narrow), dp, viscosity) +
				 width * narrow * (second / third) * (wall_speed / 2),
			 error);
}

static bool step_ok(double gap_in, double length_in, double gap_out, double length_out, double dp,
		    double viscosity, double wall_speed, vane_error *error)
{
	return vn_above(gap_in, 0, "gap_in", "m", error) &&
	       vn_above(gap_out, 0, "gap_out", "m", error) &&
	       lands_ok(length_in, length_out, dp, viscosity, wall_speed, error);
}

static double step_pressure(double gap_in, double length_in, double gap_out, double length_out,
			    double dp, double viscosity, double wall_speed)
{
	/* Gaps over the wider one, so that no cube overflows. */
	const double wide = fmax(gap_in, gap_out);
	const double in = vn_cube(gap_in / wide), out = vn_cube(gap_out / wide);
	const double whole = length_in * out + length_out * in;
	const double rise = (gap_in - gap_out) / wide * (length_in / wide) * (length_out / wide);
	return dp * (length_out * in / whole) +
	       6 * viscosity * wall_speed * rise * (wide / whole) / wide;
}

double vane_slot_step_pressure(double gap_in, double length_in, double gap_out, double length_out,
			       double dp, double viscosity, double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!step_ok(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed, error))
		return NAN;
	return vn_result(
		step_pressure(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed),
		error);
}

double vane_slot_step_load(double width, double gap_in, double length_in, double gap_out,
			   double length_out, double dp, double viscosity, double wall_speed,
			   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !step_ok(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed, error))
		return NAN;
	const double pressure =
		step_pressure(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed);
	return vn_result(width / 2 * (dp * length_in + pressure * (length_in + length_out)), error);
}

static double shear_force(double width, double gap_in, double length_in, double gap_out,
			  double length_out, double dp, double viscosity, double wall_speed,
			  double sign, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !step_ok(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed, error))
		return NAN;
	/* h1 (dp - p) + h2 p, with the parts of p apart: each then is a sum of one sign. */
	const double driven = step_pressure(gap_in, length_in, gap_out, length_out, 1, 1, 0);
	const double rest = step_pressure(gap_out, length_out, gap_in, length_in, 1, 1, 0);
	const double dragged =
		step_pressure(gap_in, length_in, gap_out, length_out, 0, viscosity, wall_speed);
	const double pressed =
		dp * (gap_in * rest + gap_out * driven) - (gap_in - gap_out) * dragged;
	const double drag = viscosity * wall_speed * (length_in / gap_in + length_out / gap_out);
	return vn_result(width * (pressed / 2 + sign * drag), error);
}

double vane_slot_step_still_force(double width, double gap_in, double length_in, double gap_out,
				  double length_out, double dp, double viscosity, double wall_speed,
				  vane_error *error)
{
	return shear_force(width, gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed,
			   1, error);
}

double vane_slot_step_sliding_force(double width, double gap_in, double length_in, double gap_out,
				    double length_out, double dp, double viscosity,
				    double wall_speed, vane_error *error)
{
	return shear_force(width, gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed,
			   -1, error);
}
