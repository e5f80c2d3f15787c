#include "check.h"
#include "vane/joint.h"

#include <math.h>

static bool is_cycle(double load_low, double load_high, double load_factor, double stress_area,
		     vane_error *error)
{
	return vn_least(load_low, 0, "load_low", "N", error) &&
	       vn_least(load_high, load_low, "load_high", "N", error) &&
	       vn_between(load_factor, 0, 1, "load_factor", "", error) &&
	       vn_above(stress_area, 0, "stress_area", "m2", error);
}

double vane_joint_alternating_stress(double load_low, double load_high, double load_factor,
				     double stress_area, vane_error *error)
{
	vn_begin(error);
	if (!is_cycle(load_low, load_high, load_factor, stress_area, error))
		return NAN;
	return vn_result(load_factor * ((load_high - load_low) / 2) / stress_area, error);
}

double vane_joint_mean_stress(double preload, double load_low, double load_high, double load_factor,
			      double stress_area, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !is_cycle(load_low, load_high, load_factor, stress_area, error))
		return NAN;
	const double load = load_low / 2 + load_high / 2;
	return vn_result((load_factor * load + preload) / stress_area, error);
}

static bool is_fatigued(double endurance, double strength, const char *name, double preload_stress,
			double alternating_stress, vane_error *error)
{
	return vn_above(endurance, 0, "endurance", "Pa", error) &&
	       vn_least(preload_stress, 0, "preload_stress", "Pa", error) &&
	       vn_above(strength, preload_stress, name, "Pa", error) &&
	       vn_above(alternating_stress, 0, "alternating_stress", "Pa", error);
}

double vane_joint_goodman(double endurance, double tensile, double preload_stress,
			  double alternating_stress, double mean_stress, vane_error *error)
{
	vn_begin(error);
	if (!is_fatigued(endurance, tensile, "tensile", preload_stress, alternating_stress,
			 error) ||
	    !vn_least(mean_stress, preload_stress, "mean_stress", "Pa", error))
		return NAN;
	const double used =
		tensile * (alternating_stress / endurance) + (mean_stress - preload_stress);
	return vn_result((tensile - preload_stress) / vn_result(used, error), error);
}

/* Both curves in units of the strength that ends them, and as quotients: the book's forms are
 * differences that lose their digits as the preload nears that strength. */
double vane_joint_gerber(double endurance, double tensile, double preload_stress,
			 double alternating_stress, vane_error *error)
{
	vn_begin(error);
	if (!is_fatigued(endurance, tensile, "tensile", preload_stress, alternating_stress, error))
		return NAN;
	const double e = endurance / tensile, i = preload_stress / tensile;
	const double reserve = (tensile - preload_stress) / tensile * (1 + i);
	const double root = sqrt(1 + 4 * e * (e + i));
	return vn_result(2 * (endurance / alternating_stress) * reserve / (root + 1 + 2 * i * e),
			 error);
}

double vane_joint_elliptic(double endurance, double proof_stress, double preload_stress,
			   double alternating_stress, vane_error *error)
{
	vn_begin(error);
	if (!is_fatigued(endurance, proof_stress, "proof_stress", preload_stress,
			 alternating_stress, error))
		return NAN;
	const double e = endurance / proof_stress, i = preload_stress / proof_stress;
	const double reserve = (proof_stress - preload_stress) / proof_stress * (1 + i);
	const double root = hypot(sqrt(reserve), e);
	return vn_result(endurance / alternating_stress * reserve / (root + i * e), error);
}
