#include "vane/slot.h"

#include "slot.h"

/* Dynamic head and the excess drop of a developing flow between plates. */
static const double inertial_coefficient = 1.674;

/* Reynolds number at which the orifice turns laminar. */
static const double critical_reynolds = 20;

/* Quotients in this order keep each factor away from overflow. */
double vn_poiseuille(double aspect, double cubed_gap, double dp, double viscosity)
{
	return aspect * cubed_gap / 12 * (dp / viscosity);
}

double vane_slot_flow(double width, double gap, double length, double dp, double viscosity,
		      double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) || !vn_least(gap, 0, "gap", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_finite(wall_speed, "wall_speed", "m/s", error))
		return NAN;
	return vn_result(vn_poiseuille(width / length, vn_cube(gap), dp, viscosity) +
				 width * gap * (wall_speed / 2),
			 error);
}

double vane_slot_disc_flow(double gap, double inner_radius, double outer_radius, double angle,
			   double dp, double viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(gap, 0, "gap", "m", error) ||
	    !vn_above(inner_radius, 0, "inner_radius", "m", error) ||
	    !vn_above(outer_radius, inner_radius, "outer_radius", "m", error) ||
	    !vn_angle(angle, "angle", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return NAN;
	const double log_ratio = vn_log_ratio(inner_radius, outer_radius);
	return vn_result(vn_poiseuille(angle / log_ratio, vn_cube(gap), dp, viscosity), error);
}

/* Li2(exp(-s)), s >= 1.5: what is left of the defining series is under 1e-18. */
static double dilogarithm(double s)
{
	const double x = exp(-s);
	double sum = 0;
	for (int k = 24; k > 0; k--)
		sum = x * (sum + 1.0 / (k * k));
	return sum;
}

/* Li2(1 - exp(-s)) / s, s < 1.5, by Bernoulli's numbers over (2 k + 1)!. */
static double complement(double s)
{
	static const double coefficient[] = {
		1.0 / 36,
		-1.0 / 3600,
		1.0 / 211680,
		-1.0 / 10886400,
		1.0 / 526901760,
		-4.0647616451442256e-11,
		8.9216910204564523e-13,
		-1.9939295860721074e-14,
		4.5189800296199183e-16,
		-1.0356517612181247e-17,
		2.395218621026187e-19,
	};
	double sum = 0;
	for (int k = 10; k >= 0; k--)
		sum = s * s * (coefficient[k] + sum);
	return 1 - s / 4 + sum;
}

/* Euler's reflection turns pi^2/6 - Li2(exp(-s)) into a sum of positive terms:
 * Li2(u) - s ln u with u = 1 - exp(-s). */
static double edge_factor(double vane_angle, double log_ratio)
{
	const double s = M_PI * (vane_angle / log_ratio);
	if (s < 1e-9)
		return (1 + s / 4 - (log(M_PI) + log(vane_angle) - log(log_ratio))) / M_PI;
	if (s < 1.5)
		return (complement(s) - log(-expm1(-s))) / M_PI;
	return (M_PI / 6 - dilogarithm(s) / M_PI) / s;
}

static bool edge_ok(double vane_angle, double log_ratio, vane_error *error)
{
	return vn_angle(vane_angle, "vane_angle", error) &&
	       vn_above(log_ratio, 0, "log_ratio", "", error);
}

double vane_slot_edge_factor(double vane_angle, double log_ratio, vane_error *error)
{
	vn_begin(error);
	if (!edge_ok(vane_angle, log_ratio, error))
		return NAN;
	return vn_result(edge_factor(vane_angle, log_ratio), error);
}

double vane_slot_edge_flow(double gap, double vane_angle, double log_ratio, double dp,
			   double viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(gap, 0, "gap", "m", error) || !edge_ok(vane_angle, log_ratio, error) ||
	    !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return NAN;
	return vn_result(
		vn_poiseuille(edge_factor(vane_angle, log_ratio), vn_cube(gap), dp, viscosity),
		error);
}

double vane_slot_annulus_flow(double diameter, double gap, double length, double eccentricity,
			      double dp, double viscosity, double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_least(gap, 0, "gap", "m", error) || !vn_above(length, 0, "length", "m", error) ||
	    !vn_between(eccentricity, 0, 1, "eccentricity", "", error) ||
	    !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_finite(wall_speed, "wall_speed", "m/s", error))
		return NAN;
	const double factor = 1 + 1.5 * eccentricity * eccentricity;
	return vn_result(
		M_PI * (factor * vn_poiseuille(diameter / length, vn_cube(gap), dp, viscosity) +
			diameter * gap * (wall_speed / 2)),
		error);
}

double vane_slot_vane_flow(double width, double gap, double length, double offset, double dp,
			   double viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) || !vn_least(gap, 0, "gap", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) ||
	    !vn_between(offset, 0, 1, "offset", "", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return NAN;
	const double factor = (1 + 3 * offset * offset) / 4;
	return vn_result(factor * vn_poiseuille(width / length, vn_cube(gap), dp, viscosity),
			 error);
}

double vane_slot_taper_flow(double width, double gap_in, double gap_out, double length, double dp,
			    double viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !vn_least(gap_in, 0, "gap_in", "m", error) ||
	    !vn_least(gap_out, 0, "gap_out", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error))
		return NAN;
	const double narrow = fmin(gap_in, gap_out), wide = fmax(gap_in, gap_out);
	const double cubed = wide > 0 ? 2 * narrow * narrow * (wide / (1 + narrow / wide)) : 0;
	return vn_result(vn_poiseuille(width / length, cubed, dp, viscosity), error);
}

double vane_slot_tip_flow(double width, double film, double radius, double half_width, double dp,
			  double viscosity, double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) || !vn_least(film, 0, "film", "m", error) ||
	    !vn_above(radius, 0, "radius", "m", error) ||
	    !vn_above(half_width, 0, "half_width", "m", error) ||
	    !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_finite(wall_speed, "wall_speed", "m/s", error))
		return NAN;
	const double phi = atan2(half_width, M_SQRT2 * sqrt(radius) * sqrt(film));
	const double product = sin(phi) * cos(phi);
	const double second = phi + product;
	const double third = (3 * second + 2 * product * cos(phi) * cos(phi)) / 4;
	/* film^3 / a without the division by a, which is 0 where there is no film. */
	const double cubed = film * film * (sqrt(film) / (M_SQRT2 * sqrt(radius))) / third;
	return vn_result(vn_poiseuille(width, cubed, dp, viscosity) +
				 width * film * (second / third) * (wall_speed / 2),
			 error);
}

double vane_slot_tip_radius(double tip_radius, double ring_radius, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(tip_radius, 0, "tip_radius", "m", error) ||
	    !vn_above(ring_radius, tip_radius, "ring_radius", "m", error))
		return NAN;
	return vn_result(tip_radius * (ring_radius / (ring_radius - tip_radius)), error);
}

static double reynolds(double flow, double width, double kinematic_viscosity)
{
	return 2 * (fabs(flow) / width / kinematic_viscosity);
}

double vane_slot_reynolds(double flow, double width, double kinematic_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) || !vn_above(width, 0, "width", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(reynolds(flow, width, kinematic_viscosity), error);
}

double vane_slot_disc_reynolds(double flow, double inner_radius, double angle,
			       double kinematic_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) ||
	    !vn_above(inner_radius, 0, "inner_radius", "m", error) ||
	    !vn_angle(angle, "angle", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(reynolds(flow, angle * inner_radius, kinematic_viscosity), error);
}

double vane_slot_annulus_reynolds(double flow, double diameter, double kinematic_viscosity,
				  vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(reynolds(flow / M_PI, diameter, kinematic_viscosity), error);
}

double vane_slot_tip_reynolds(double flow, double width, double kinematic_viscosity,
			      vane_error *error)
{
	return vane_slot_reynolds(flow, width, kinematic_viscosity, error);
}

double vane_slot_inertia(double flow, double width, double gap, double length,
			 double kinematic_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) || !vn_above(width, 0, "width", "m", error) ||
	    !vn_above(gap, 0, "gap", "m", error) || !vn_above(length, 0, "length", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	const double number = reynolds(flow, width, kinematic_viscosity);
	return vn_result(inertial_coefficient / 48 * number * (gap / length), error);
}

double vane_slot_graetz(double flow, double width, double gap, double length,
			double thermal_diffusivity, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) || !vn_above(width, 0, "width", "m", error) ||
	    !vn_above(gap, 0, "gap", "m", error) || !vn_above(length, 0, "length", "m", error) ||
	    !vn_above(thermal_diffusivity, 0, "thermal_diffusivity", "m2/s", error))
		return NAN;
	return vn_result(fabs(flow) / width / thermal_diffusivity * (gap / length), error);
}

double vane_slot_shear_force(double width, double length, double gap, double viscosity,
			     double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !vn_above(length, 0, "length", "m", error) || !vn_above(gap, 0, "gap", "m", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_finite(wall_speed, "wall_speed", "m/s", error))
		return NAN;
	return vn_result(viscosity * wall_speed * width * (length / gap), error);
}

double vane_slot_orifice_flow(double area, double dp, double density, double kinematic_viscosity,
			      double discharge_coefficient, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(area, 0, "area", "m2", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error) ||
	    !vn_above(discharge_coefficient, 0, "discharge_coefficient", "", error) ||
	    !vn_between(discharge_coefficient, 0, 1, "discharge_coefficient", "", error))
		return NAN;
	/* A turbulence limit too small to represent would leave 0/0. */
	if (dp == 0)
		return 0;
	const double hydraulic_diameter = sqrt(area) * (2 / sqrt(M_PI));
	const double speed = critical_reynolds / discharge_coefficient *
			     (kinematic_viscosity / hydraulic_diameter);
	const double critical = density / 2 * speed * speed;
	return vn_result(discharge_coefficient * area * sqrt(2 / density) *
				 (dp / sqrt(hypot(dp, critical))),
			 error);
}
