#include "thread.h"

#include "check.h"
#include "vane/thread.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double sqrt3 = 1.73205080756887729353;
static const double scatter_most = 0.99;

static bool is_loaded(double yield_stress, double pitch, double pitch_diameter,
		      double stress_diameter, double thread_friction, vane_error *error)
{
	return vn_above(yield_stress, 0, "yield_stress", "Pa", error) &&
	       vn_above(stress_diameter, 0, "stress_diameter", "m", error) &&
	       vn_least(pitch_diameter, stress_diameter, "pitch_diameter", "m", error) &&
	       vn_thread_is_screw(pitch, pitch_diameter, thread_friction, error);
}

/* Von Mises stress over tensile stress while the wrench turns. */
static double rise(double pitch, double pitch_diameter, double stress_diameter,
		   double thread_friction)
{
	const double slope = vn_thread_slope(pitch, pitch_diameter, thread_friction);
	return hypot(1, 1.5 * sqrt3 * (pitch_diameter / stress_diameter * slope));
}

double vane_thread_preload_utilization(double utilization, double yield_stress, double pitch,
				       double pitch_diameter, double stress_diameter,
				       double thread_friction, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(utilization, 0, "utilization", "", error) ||
	    !vn_between(utilization, 0, 1, "utilization", "", error) ||
	    !is_loaded(yield_stress, pitch, pitch_diameter, stress_diameter, thread_friction,
		       error))
		return NAN;
	const double stress = utilization * yield_stress /
			      rise(pitch, pitch_diameter, stress_diameter, thread_friction);
	return vn_result(pi / 4 * stress_diameter * (stress_diameter * stress), error);
}

double vane_thread_utilization(double preload, double yield_stress, double pitch,
			       double pitch_diameter, double stress_diameter,
			       double thread_friction, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !is_loaded(yield_stress, pitch, pitch_diameter, stress_diameter, thread_friction,
		       error))
		return NAN;
	const double stress = 4 / pi * (preload / stress_diameter / stress_diameter);
	return vn_result(stress / yield_stress *
				 rise(pitch, pitch_diameter, stress_diameter, thread_friction),
			 error);
}

static bool is_scatter(double torque_scatter, double friction_scatter, vane_error *error)
{
	return vn_between(torque_scatter, 0, scatter_most, "torque_scatter", "", error) &&
	       vn_between(friction_scatter, 0, scatter_most, "friction_scatter", "", error);
}

double vane_thread_preload_low(double torque, double torque_scatter, double friction_scatter,
			       double pitch, double pitch_diameter, double thread_friction,
			       double bearing_friction, double bearing_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !is_scatter(torque_scatter, friction_scatter, error) ||
	    !vn_thread_is_turned(pitch, pitch_diameter, thread_friction, bearing_friction,
				 bearing_diameter, error))
		return NAN;
	const double lever =
		vn_result(vn_thread_arm(pitch, pitch_diameter,
					fma(friction_scatter, thread_friction, thread_friction),
					fma(friction_scatter, bearing_friction, bearing_friction),
					bearing_diameter),
			  error);
	return vn_result(fma(-torque_scatter, torque, torque) / lever, error);
}

double vane_thread_preload_high(double torque, double torque_scatter, double friction_scatter,
				double pitch, double pitch_diameter, double thread_friction,
				double bearing_friction, double bearing_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(torque, 0, "torque", "N.m", error) ||
	    !is_scatter(torque_scatter, friction_scatter, error) ||
	    !vn_thread_is_turned(pitch, pitch_diameter, thread_friction, bearing_friction,
				 bearing_diameter, error))
		return NAN;
	const double lever =
		vn_result(vn_thread_arm(pitch, pitch_diameter,
					fma(-friction_scatter, thread_friction, thread_friction),
					fma(-friction_scatter, bearing_friction, bearing_friction),
					bearing_diameter),
			  error);
	return vn_result(fma(torque_scatter, torque, torque) / lever, error);
}

double vane_thread_scatter(double torque_scatter, double friction_scatter, double efficiency,
			   vane_error *error)
{
	vn_begin(error);
	if (!is_scatter(torque_scatter, friction_scatter, error) ||
	    !vn_between(efficiency, 0, 1, "efficiency", "", error))
		return NAN;
	return vn_result(hypot(torque_scatter, (1 - efficiency) * friction_scatter), error);
}

double vane_thread_tightening_factor(double scatter, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(scatter, 0, scatter_most, "scatter", "", error))
		return NAN;
	return vn_result((1 + scatter) / (1 - scatter), error);
}

static double scatter_of(double factor)
{
	return (factor - 1) / (factor + 1);
}

double vane_thread_factor_scatter(double tightening_factor, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(tightening_factor, 1, "tightening_factor", "", error))
		return NAN;
	return vn_result(scatter_of(tightening_factor), error);
}

int32_t vane_thread_tightening_accuracy(int32_t tightening, vane_thread_accuracy *out,
					vane_error *error)
{
	/* VDI 2230 part 1, table A8 of 2003, in the order of the enumerators; the estimate is that
	 * of 1986. From memory. */
	static const double factors[][2] = {
		{1.2, 1.4}, {1.2, 1.4}, {1.2, 1.6}, {1.4, 1.6}, {1.6, 1.8}, {2.5, 4},
	};
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_thread_accuracy){NAN, NAN, NAN, NAN};
	if (!vn_count(tightening, VANE_THREAD_BY_YIELD, VANE_THREAD_BY_IMPACT, "tightening", error))
		return VANE_INVALID_ARGUMENT;
	const double *usual = factors[tightening - 1];
	*out = (vane_thread_accuracy){
		.factor_low = usual[0],
		.factor_high = usual[1],
		.scatter_low = scatter_of(usual[0]),
		.scatter_high = scatter_of(usual[1]),
	};
	return VANE_OK;
}

int32_t vane_thread_finish_factor(int32_t finish, double *nut_factor, vane_error *error)
{
	/* Shigley, 9th ed., table 8-15, in the order of the enumerators. */
	static const double factors[] = {0.30, 0.20, 0.18, 0.16, 0.12, 0.09};
	vn_begin(error);
	if (!vn_pointer(nut_factor, "nut_factor", error))
		return VANE_INVALID_ARGUMENT;
	*nut_factor = NAN;
	if (!vn_count(finish, VANE_THREAD_BLACK, VANE_THREAD_LOW_GRIP, "finish", error))
		return VANE_INVALID_ARGUMENT;
	*nut_factor = factors[finish - 1];
	return VANE_OK;
}

int32_t vane_thread_preload_sample(const double *preload, int64_t readings, vane_thread_sample *out,
				   vane_error *error)
{
	static const int64_t readings_most = 100000;
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_thread_sample){NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_pointer(preload, "preload", error) ||
	    !vn_count(readings, 2, readings_most, "readings", error))
		return VANE_INVALID_ARGUMENT;
	double least = INFINITY, greatest = 0;
	for (int64_t i = 0; i < readings; i++) {
		if (!vn_above(preload[i], 0, "preload", "N", error)) {
			vn_at(i, error);
			return VANE_INVALID_ARGUMENT;
		}
		least = fmin(least, preload[i]);
		greatest = fmax(greatest, preload[i]);
	}

	/* In units of the greatest: no sum overflows and no square vanishes. */
	const double n = (double)readings;
	double sum = 0, squares = 0;
	for (int64_t i = 0; i < readings; i++)
		sum += preload[i] / greatest;
	for (int64_t i = 0; i < readings; i++) {
		const double off = preload[i] / greatest - sum / n;
		squares += off * off;
	}
	const double factor = greatest / least;
	if (!isfinite(factor)) {
		vn_result(factor, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = (vane_thread_sample){
		.mean = sum / n * greatest,
		.deviation = sqrt(squares / (n - 1)) * greatest,
		.least = least,
		.greatest = greatest,
		.factor = factor,
		.scatter = (greatest - least) / greatest / (1 + least / greatest),
	};
	return VANE_OK;
}
