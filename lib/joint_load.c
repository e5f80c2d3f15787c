#include "check.h"
#include "dimension.h"
#include "vane/joint.h"

#include <float.h>
#include <math.h>
#include <stddef.h>

static const double pi = 3.14159265358979323846;
static const double below_one = 1 - DBL_EPSILON / 2;

static double in_series(double bolt_stiffness, double joint_stiffness)
{
	return vane_joint_stiffness_series(bolt_stiffness, joint_stiffness, NULL);
}

static bool is_pair(double bolt_stiffness, double joint_stiffness, vane_error *error)
{
	return vn_above(bolt_stiffness, 0, "bolt_stiffness", "N/m", error) &&
	       vn_above(joint_stiffness, 0, "joint_stiffness", "N/m", error);
}

static bool is_loaded(double preload, double load, double load_factor, vane_error *error)
{
	return vn_least(preload, 0, "preload", "N", error) &&
	       vn_least(load, 0, "load", "N", error) &&
	       vn_between(load_factor, 0, 1, "load_factor", "", error);
}

double vane_joint_load_factor(double bolt_stiffness, double joint_stiffness, double introduction,
			      vane_error *error)
{
	vn_begin(error);
	if (!is_pair(bolt_stiffness, joint_stiffness, error) ||
	    !vn_between(introduction, 0, 1, "introduction", "", error))
		return NAN;
	return vn_result(introduction / (1 + joint_stiffness / bolt_stiffness), error);
}

double vane_joint_clamp(double preload, double load, double load_factor, vane_error *error)
{
	vn_begin(error);
	if (!is_loaded(preload, load, load_factor, error))
		return NAN;
	/* What rounding takes off the product is given back: near separation it would be all. */
	const double relief = 1 - load_factor, rest = 1 - relief - load_factor;
	const double taken = relief * load;
	const double clamp = preload - taken - fma(relief, load, -taken) - rest * load;
	return vn_result(fmax(0, clamp), error);
}

double vane_joint_bolt_load(double preload, double load, double load_factor, vane_error *error)
{
	vn_begin(error);
	if (!is_loaded(preload, load, load_factor, error))
		return NAN;
	return vn_result(fmax(preload + load_factor * load, load), error);
}

double vane_joint_separation_load(double preload, double load_factor, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !vn_between(load_factor, 0, below_one, "load_factor", "", error))
		return NAN;
	return vn_result(preload / (1 - load_factor), error);
}

double vane_joint_yield_load(double preload, double load_factor, double yield_force,
			     vane_error *error)
{
	vn_begin(error);
	if (!vn_above(yield_force, 0, "yield_force", "N", error) ||
	    !vn_between(preload, 0, yield_force, "preload", "N", error) ||
	    !vn_between(load_factor, 0, 1, "load_factor", "", error))
		return NAN;
	const double reserve = yield_force - preload;
	/* Without a load factor the bolt feels nothing before the joint opens. */
	return load_factor > 0 ? fmin(reserve / load_factor, yield_force) : yield_force;
}

double vane_joint_load_safety(double proof_load, double preload, double load, double load_factor,
			      vane_error *error)
{
	vn_begin(error);
	if (!vn_above(proof_load, 0, "proof_load", "N", error) ||
	    !vn_between(preload, 0, proof_load, "preload", "N", error) ||
	    !vn_above(load, 0, "load", "N", error) ||
	    !vn_above(load_factor, 0, "load_factor", "", error) ||
	    !vn_between(load_factor, 0, 1, "load_factor", "", error))
		return NAN;
	return vn_result((proof_load - preload) / load / load_factor, error);
}

double vane_joint_separation_safety(double preload, double load, double load_factor,
				    vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !vn_above(load, 0, "load", "N", error) ||
	    !vn_between(load_factor, 0, below_one, "load_factor", "", error))
		return NAN;
	return vn_result(preload / load / (1 - load_factor), error);
}

double vane_joint_yield_safety(double proof_load, double preload, double load, double load_factor,
			       vane_error *error)
{
	vn_begin(error);
	if (!vn_above(proof_load, 0, "proof_load", "N", error) ||
	    !vn_above(preload, 0, "preload", "N", error) ||
	    !is_loaded(preload, load, load_factor, error))
		return NAN;
	const double tension = vn_result(preload + load_factor * load, error);
	return vn_result(proof_load / tension, error);
}

double vane_joint_assembly_preload(double tightening_factor, double clamp, double load,
				   double load_factor, double seating_loss, double thermal_loss,
				   vane_error *error)
{
	vn_begin(error);
	if (!vn_least(tightening_factor, 1, "tightening_factor", "", error) ||
	    !vn_least(clamp, 0, "clamp", "N", error) || !vn_least(load, 0, "load", "N", error) ||
	    !vn_between(load_factor, 0, 1, "load_factor", "", error) ||
	    !vn_least(seating_loss, 0, "seating_loss", "N", error) ||
	    !vn_least(thermal_loss, 0, "thermal_loss", "N", error))
		return NAN;
	return vn_result(tightening_factor *
				 (clamp + (1 - load_factor) * load + seating_loss + thermal_loss),
			 error);
}

double vane_joint_face_pressure(double force, double face_diameter, double hole_diameter,
				vane_error *error)
{
	vn_begin(error);
	if (!vn_least(force, 0, "force", "N", error) ||
	    !vn_least(hole_diameter, 0, "hole_diameter", "m", error) ||
	    !vn_above(face_diameter, hole_diameter, "face_diameter", "m", error))
		return NAN;
	return vn_result(4 / pi * force / (face_diameter - hole_diameter) /
				 (face_diameter + hole_diameter),
			 error);
}

double vane_joint_turn_angle(double preload, double pitch, double bolt_stiffness,
			     double joint_stiffness, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !vn_above(pitch, 0, "pitch", "m", error) ||
	    !is_pair(bolt_stiffness, joint_stiffness, error))
		return NAN;
	return vn_result(2 * pi * (preload / in_series(bolt_stiffness, joint_stiffness)) / pitch,
			 error);
}

int32_t vane_joint_embedding_depth(double roughness, int32_t sheared, int32_t faces,
				   int32_t interfaces, vane_joint_embedding *out, vane_error *error)
{
	/* VDI 2230 part 1:2003, table 5, micrometres: thread, face, inner; load along the bolt,
	 * then across it; up to each roughness. From memory. */
	static const double depths[2][3][3] = {
		{{3, 2.5, 1.5}, {3, 3, 2}, {3, 4, 3}},
		{{3, 3, 2}, {3, 4.5, 2.5}, {3, 6.5, 3.5}},
	};
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_joint_embedding){NAN, NAN, NAN, NAN};
	if (!vn_between(roughness, 0, 160e-6 * VN_METRE, "roughness", "m", error) ||
	    !vn_count(sheared, 0, 1, "sheared", error) || !vn_count(faces, 0, 2, "faces", error) ||
	    !vn_count(interfaces, 0, 1000, "interfaces", error))
		return VANE_INVALID_ARGUMENT;
	const double micrometre = 1e-6 * VN_METRE;
	const int row = (roughness >= 10e-6 * VN_METRE) + (roughness >= 40e-6 * VN_METRE);
	const double *depth = depths[sheared][row];
	*out = (vane_joint_embedding){
		.thread = depth[0] * micrometre,
		.face = depth[1] * micrometre,
		.inner = depth[2] * micrometre,
		.embedding = (depth[0] + faces * depth[1] + interfaces * depth[2]) * micrometre,
	};
	return VANE_OK;
}

double vane_joint_embedding_loss(double embedding, double bolt_stiffness, double joint_stiffness,
				 vane_error *error)
{
	vn_begin(error);
	if (!vn_least(embedding, 0, "embedding", "m", error) ||
	    !is_pair(bolt_stiffness, joint_stiffness, error))
		return NAN;
	return vn_result(embedding * in_series(bolt_stiffness, joint_stiffness), error);
}

static bool is_heated(double length, double bolt_stiffness, double joint_stiffness,
		      double bolt_expansion, double bolt_rise, double joint_expansion,
		      double joint_rise, vane_error *error)
{
	return vn_above(length, 0, "length", "m", error) &&
	       is_pair(bolt_stiffness, joint_stiffness, error) &&
	       vn_least(bolt_expansion, 0, "bolt_expansion", "1/K", error) &&
	       vn_finite(bolt_rise, "bolt_rise", "K", error) &&
	       vn_least(joint_expansion, 0, "joint_expansion", "1/K", error) &&
	       vn_finite(joint_rise, "joint_rise", "K", error);
}

/* How much more the parts grow than the bolt: a difference of products, each kept whole. */
static double strain(double bolt_expansion, double bolt_rise, double joint_expansion,
		     double joint_rise)
{
	const double bolt = bolt_expansion * bolt_rise;
	return fma(joint_expansion, joint_rise, -bolt) + fma(-bolt_expansion, bolt_rise, bolt);
}

double vane_joint_thermal_change(double length, double bolt_stiffness, double joint_stiffness,
				 double bolt_expansion, double bolt_rise, double joint_expansion,
				 double joint_rise, vane_error *error)
{
	vn_begin(error);
	if (!is_heated(length, bolt_stiffness, joint_stiffness, bolt_expansion, bolt_rise,
		       joint_expansion, joint_rise, error))
		return NAN;
	return vn_result(strain(bolt_expansion, bolt_rise, joint_expansion, joint_rise) * length *
				 in_series(bolt_stiffness, joint_stiffness),
			 error);
}

double vane_joint_hot_preload(double preload, double length, double bolt_stiffness,
			      double joint_stiffness, double bolt_expansion, double bolt_rise,
			      double joint_expansion, double joint_rise, double bolt_ratio,
			      double joint_ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(preload, 0, "preload", "N", error) ||
	    !is_heated(length, bolt_stiffness, joint_stiffness, bolt_expansion, bolt_rise,
		       joint_expansion, joint_rise, error) ||
	    !vn_above(bolt_ratio, 0, "bolt_ratio", "", error) ||
	    !vn_above(joint_ratio, 0, "joint_ratio", "", error))
		return NAN;
	/* All in stiffnesses of the cold bolt. */
	const double softness = bolt_stiffness / joint_stiffness;
	const double more = strain(bolt_expansion, bolt_rise, joint_expansion, joint_rise);
	const double tension = fma(preload, softness, preload + length * more * bolt_stiffness) /
			       (1 / bolt_ratio + softness / joint_ratio);
	/* Not fmax(): it would turn a NaN into a slack bolt. */
	return vn_result(tension < 0 ? 0 : tension, error);
}
