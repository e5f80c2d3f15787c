#include "vane/slot.h"

#include "slot.h"

double vane_slot_inertial_flow(double conductance, double area, double dp, double viscosity,
			       double density, double loss_coefficient, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(conductance, 0, "conductance", "m3", error) ||
	    !vn_above(area, 0, "area", "m2", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(viscosity, 0, "viscosity", "Pa.s", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) ||
	    !vn_least(loss_coefficient, 0, "loss_coefficient", "", error))
		return NAN;
	/* Over B: the flow without inertia, and the root of 4 a |dp| / B^2. */
	const double creeping = conductance * (dp / viscosity);
	const double root = sqrt(2 * loss_coefficient * density) * (sqrt(fabs(dp)) / viscosity) *
			    (conductance / area);
	return vn_result(2 * creeping / (1 + hypot(1, root)), error);
}

double vane_slot_in_series(double conductance, double other_conductance, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(conductance, 0, "conductance", "m3", error) ||
	    !vn_least(other_conductance, 0, "other_conductance", "m3", error))
		return NAN;
	const double less = fmin(conductance, other_conductance);
	const double more = fmax(conductance, other_conductance);
	return more > 0 ? less / (1 + less / more) : 0;
}

double vane_slot_in_parallel(double conductance, double other_conductance, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(conductance, 0, "conductance", "m3", error) ||
	    !vn_least(other_conductance, 0, "other_conductance", "m3", error))
		return NAN;
	return vn_result(conductance + other_conductance, error);
}

double vane_slot_sharp_orifice_flow(double area, double dp, double density,
				    double discharge_coefficient, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(area, 0, "area", "m2", error) || !vn_finite(dp, "dp", "Pa", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error) ||
	    !vn_above(discharge_coefficient, 0, "discharge_coefficient", "", error) ||
	    !vn_between(discharge_coefficient, 0, 1, "discharge_coefficient", "", error))
		return NAN;
	const double speed = M_SQRT2 * (sqrt(fabs(dp)) / sqrt(density));
	return vn_result(copysign(discharge_coefficient * area * speed, dp), error);
}

double vane_slot_discharge_coefficient(double area, double flow, double dp, double density,
				       vane_error *error)
{
	vn_begin(error);
	if (!vn_above(area, 0, "area", "m2", error) || !vn_finite(flow, "flow", "m3/s", error) ||
	    !vn_above(dp, 0, "dp", "Pa", error) || !vn_above(density, 0, "density", "kg/m3", error))
		return NAN;
	return vn_result(fabs(flow) / area / (M_SQRT2 * (sqrt(dp) / sqrt(density))), error);
}

double vane_slot_contraction(double ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(ratio, 0, 1, "ratio", "", error))
		return NAN;
	const double least = M_PI / (M_PI + 2);
	if (ratio == 1)
		return 1;
	/* The left side is concave and starts with the slope 1 / least, so Newton's steps climb to
	 * the root from below. Halving at worst, near ratio 1, they end within 60. */
	double jet = ratio * least;
	for (int i = 0; i < 60; i++) {
		const double arc = atan(jet), square = jet * jet;
		const double miss = ratio - jet - M_2_PI * (1 - jet) * (1 + jet) * arc;
		const double slope =
			1 + M_2_PI * ((1 - jet) * (1 + jet) / (1 + square) - 2 * jet * arc);
		const double next = jet + miss / slope;
		if (!(next > jet && next <= ratio))
			break;
		jet = next;
	}
	return ratio > 0 ? fmax(jet / ratio, least) : least;
}
