#include "vane/joint.h"

#include "check.h"
#include "vane/thread.h"

#include <math.h>
#include <stddef.h>

static const double pi = 3.14159265358979323846;
static const double scatter_most = 0.99;
static const int32_t bolts_most = 1000;

void vane_joint_default(vane_joint *joint)
{
	if (!joint)
		return;
	*joint = (vane_joint){
		.torque_scatter = 0.25,
		.thread_friction = 0.12,
		.bearing_friction = 0.12,
		.bolts = 4,
	};
}

static void clear(vane_joint_result *out)
{
	*out = (vane_joint_result){
		.preload = NAN,
		.preload_low = NAN,
		.preload_high = NAN,
		.proof_load = NAN,
		.proof_fraction = NAN,
		.proof_fraction_low = NAN,
		.proof_fraction_high = NAN,
		.load = NAN,
		.load_factor = NAN,
		.clamp = NAN,
		.clamp_low = NAN,
		.bolt_load = NAN,
		.bolt_load_high = NAN,
		.separation_pressure = NAN,
		.separation_pressure_low = NAN,
	};
}

static bool is_tightened(const vane_joint *joint, vane_error *error)
{
	return vn_above(joint->pitch, 0, "pitch", "m", error) &&
	       vn_above(joint->diameter, 1.22687 * joint->pitch, "diameter", "m", error) &&
	       vn_above(joint->stress_area, 0, "stress_area", "m2", error) &&
	       vn_above(joint->torque, 0, "torque", "N.m", error) &&
	       vn_between(joint->torque_scatter, 0, scatter_most, "torque_scatter", "", error) &&
	       vn_least(joint->thread_friction, 0, "thread_friction", "", error) &&
	       vn_least(joint->bearing_friction, 0, "bearing_friction", "", error) &&
	       vn_between(joint->friction_scatter, 0, scatter_most, "friction_scatter", "",
			  error) &&
	       vn_above(joint->bearing_diameter, 0, "bearing_diameter", "m", error) &&
	       vn_least(joint->nut_factor, 0, "nut_factor", "", error) &&
	       vn_above(joint->proof_stress, 0, "proof_stress", "Pa", error);
}

static bool is_loaded(const vane_joint *joint, vane_error *error)
{
	return vn_above(joint->bolt_stiffness, 0, "bolt_stiffness", "N/m", error) &&
	       vn_above(joint->joint_stiffness, 0, "joint_stiffness", "N/m", error) &&
	       vn_least(joint->pressure, 0, "pressure", "Pa", error) &&
	       vn_above(joint->pressure_radius, 0, "pressure_radius", "m", error) &&
	       vn_least(joint->seating_loss, 0, "seating_loss", "N", error) &&
	       vn_least(joint->spring_force, 0, "spring_force", "N", error) &&
	       vn_count(joint->bolts, 1, bolts_most, "bolts", error);
}

static double preload(const vane_joint *joint, double torque_ratio, double friction_ratio)
{
	const double torque = joint->torque * torque_ratio;
	if (joint->nut_factor > 0)
		return vane_thread_preload_nut_factor(torque, joint->nut_factor * friction_ratio,
						      joint->diameter, NULL);
	return vane_thread_preload(torque, joint->pitch,
				   vane_thread_pitch_diameter(joint->diameter, joint->pitch, NULL),
				   joint->thread_friction * friction_ratio,
				   joint->bearing_friction * friction_ratio,
				   joint->bearing_diameter, NULL);
}

static double positive(double x)
{
	return x > 0 ? x : 0;
}

/* The part of the load that a closed joint takes off its own clamp. */
static double relief(const vane_joint *joint)
{
	return 1 / (1 + joint->bolt_stiffness / joint->joint_stiffness);
}

static double clamp(const vane_joint *joint, double tension, double load)
{
	return positive(tension - relief(joint) * load);
}

static double separation(const vane_joint *joint, double tension, double area)
{
	return positive((joint->bolts * tension / relief(joint) - joint->spring_force) / area);
}

static bool is_finite(const vane_joint_result *out)
{
	return isfinite(out->preload) && isfinite(out->preload_low) &&
	       isfinite(out->preload_high) && isfinite(out->proof_load) &&
	       isfinite(out->proof_fraction) && isfinite(out->proof_fraction_low) &&
	       isfinite(out->proof_fraction_high) && isfinite(out->load) &&
	       isfinite(out->load_factor) && isfinite(out->clamp) && isfinite(out->clamp_low) &&
	       isfinite(out->bolt_load) && isfinite(out->bolt_load_high) &&
	       isfinite(out->separation_pressure) && isfinite(out->separation_pressure_low);
}

int32_t vane_joint_run(const vane_joint *joint, vane_joint_result *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	clear(out);
	if (!vn_pointer(joint, "joint", error))
		return VANE_INVALID_ARGUMENT;
	if (!is_tightened(joint, error) || !is_loaded(joint, error)) {
		vn_within("joint", error);
		return VANE_INVALID_ARGUMENT;
	}

	const double off = joint->torque_scatter, slip = joint->friction_scatter;
	const double area = pi * joint->pressure_radius * joint->pressure_radius;
	vane_joint_result r = {
		.preload = preload(joint, 1, 1),
		.preload_low = preload(joint, 1 - off, 1 + slip),
		.preload_high = preload(joint, 1 + off, 1 - slip),
		.proof_load = joint->stress_area * joint->proof_stress,
		.load = (joint->pressure * area + joint->spring_force) / joint->bolts,
		.load_factor = 1 / (1 + joint->joint_stiffness / joint->bolt_stiffness),
	};
	r.proof_fraction = r.preload / r.proof_load;
	r.proof_fraction_low = r.preload_low / r.proof_load;
	r.proof_fraction_high = r.preload_high / r.proof_load;

	const double tension = positive(r.preload - joint->seating_loss);
	const double tension_low = positive(r.preload_low - joint->seating_loss);
	r.clamp = clamp(joint, tension, r.load);
	r.clamp_low = clamp(joint, tension_low, r.load);
	r.bolt_load = r.clamp + r.load;
	r.bolt_load_high = clamp(joint, r.preload_high, r.load) + r.load;
	r.separation_pressure = separation(joint, tension, area);
	r.separation_pressure_low = separation(joint, tension_low, area);
	r.separated = !(r.clamp_low > 0);
	r.overloaded = r.bolt_load_high > r.proof_load;

	if (!is_finite(&r)) {
		vn_result(INFINITY, error);
		return VANE_OUT_OF_RANGE;
	}
	*out = r;
	return VANE_OK;
}
