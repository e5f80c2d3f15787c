#include "check.h"
#include "dimension.h"
#include "seal.h"
#include "vane/seal.h"

#include <math.h>
#include <stddef.h>

static bool is_class(int32_t tolerances, vane_error *error)
{
	return vn_count(tolerances, VANE_SEAL_CLASS_A, VANE_SEAL_CLASS_B, "tolerances", error);
}

double vane_seal_diameter_tolerance(double inner_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(inner_diameter, 0, "inner_diameter", "m", error))
		return NAN;
	/* x^0.95, with less of the exponent's rounding. */
	const double x = inner_diameter / VN_METRE * 1e3;
	return vn_result((0.009 * (x * pow(x, -0.05)) + 0.11) * 1e-3 * VN_METRE, error);
}

double vane_seal_section_tolerance(double section, vane_error *error)
{
	static const struct {
		double to, tolerance;
	} step[] = {{2.25e-3, 0.08e-3}, {3.15e-3, 0.09e-3}, {4.5e-3, 0.10e-3}, {6.3e-3, 0.13e-3}};
	vn_begin(error);
	if (!vn_between(section, 0.0008 * VN_METRE, 0.0084 * VN_METRE, "section", "m", error))
		return NAN;
	for (int i = 0; i < 4; i++)
		if (section <= step[i].to * VN_METRE)
			return step[i].tolerance * VN_METRE;
	return 0.15e-3 * VN_METRE;
}

static vane_seal_size size_of(const struct vn_seal_row *row, int32_t tolerances)
{
	const double thou = 25.4e-6 * VN_METRE;
	const double diameter = row->diameter * thou, section = row->section * thou;
	const bool a = tolerances == VANE_SEAL_CLASS_A;
	return (vane_seal_size){
		.inner_diameter = diameter,
		.section = section,
		.outer_diameter = (row->diameter + 2 * row->section) * thou,
		.inner_tolerance = a ? row->diameter_tolerance * thou
				     : vane_seal_diameter_tolerance(diameter, NULL),
		.section_tolerance = a ? row->section_tolerance * thou
				       : vane_seal_section_tolerance(section, NULL),
		.dash = row->dash,
		.tolerances = tolerances,
	};
}

int32_t vane_seal_find(int32_t dash, int32_t tolerances, vane_seal_size *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_seal_size){NAN, NAN, NAN, NAN, NAN, 0, 0};
	if (!vn_count(dash, 1, 932, "dash", error) || !is_class(tolerances, error))
		return VANE_INVALID_ARGUMENT;
	for (int i = 0; i < VN_SEAL_ROWS; i++) {
		if (vn_seal_rows[i].dash != dash)
			continue;
		*out = size_of(&vn_seal_rows[i], tolerances);
		return VANE_OK;
	}
	vn_fail(VANE_NO_SOLUTION, "dash", dash, "The series has no ring of this dash number.",
		error);
	return VANE_NO_SOLUTION;
}

/* A tolerance to either side counts as a rectangular distribution. */
static double spread(double uncertainty, double tolerance)
{
	return hypot(uncertainty, tolerance / sqrt(3));
}

/* Logarithm of the likelihood, but for a constant. */
static double likelihood(const vane_seal_candidate *c, double diameter_spread,
			 double section_spread)
{
	return -c->distance * c->distance / 2 - log(diameter_spread / VN_METRE) -
	       log(section_spread / VN_METRE);
}

static void clear(vane_seal_candidate *candidate, int64_t candidates)
{
	for (int64_t i = 0; i < candidates; i++)
		candidate[i] =
			(vane_seal_candidate){{NAN, NAN, NAN, NAN, NAN, 0, 0}, NAN, NAN, NAN, NAN};
}

int32_t vane_seal_identify(double inner_diameter, double section, double diameter_uncertainty,
			   double section_uncertainty, int32_t tolerances, double coverage,
			   vane_seal_candidate *candidate, int64_t candidates, int64_t *matches,
			   vane_error *error)
{
	vn_begin(error);
	if (matches)
		*matches = 0;
	if (!vn_count(candidates, 1, VN_SEAL_ROWS, "candidates", error) ||
	    !vn_pointer(candidate, "candidate", error))
		return VANE_INVALID_ARGUMENT;
	clear(candidate, candidates);
	if (!vn_pointer(matches, "matches", error) || !is_class(tolerances, error) ||
	    !vn_above(inner_diameter, 0, "inner_diameter", "m", error) ||
	    !vn_between(inner_diameter, 0, 10 * VN_METRE, "inner_diameter", "m", error) ||
	    !vn_above(section, 0, "section", "m", error) ||
	    !vn_between(section, 0, VN_METRE, "section", "m", error) ||
	    !vn_least(diameter_uncertainty, 0, "diameter_uncertainty", "m", error) ||
	    !vn_least(section_uncertainty, 0, "section_uncertainty", "m", error) ||
	    !vn_least(coverage, 0, "coverage", "", error))
		return VANE_INVALID_ARGUMENT;

	vane_seal_candidate all[VN_SEAL_ROWS];
	double score[VN_SEAL_ROWS], best = -INFINITY, sum = 0;
	for (int i = 0; i < VN_SEAL_ROWS; i++) {
		vane_seal_candidate *c = &all[i];
		c->size = size_of(&vn_seal_rows[i], tolerances);
		c->diameter_error = inner_diameter - c->size.inner_diameter;
		c->section_error = section - c->size.section;
		const double s_d = spread(diameter_uncertainty, c->size.inner_tolerance);
		const double s_w = spread(section_uncertainty, c->size.section_tolerance);
		c->distance = hypot(c->diameter_error / s_d, c->section_error / s_w);
		score[i] = likelihood(c, s_d, s_w);
		best = fmax(best, score[i]);
		*matches += c->distance <= coverage;
	}
	for (int i = 0; i < VN_SEAL_ROWS; i++) {
		all[i].probability = exp(score[i] - best);
		sum += all[i].probability;
	}
	for (int64_t k = 0; k < candidates; k++) {
		int next = 0;
		for (int i = 1; i < VN_SEAL_ROWS; i++)
			if (score[i] > score[next])
				next = i;
		candidate[k] = all[next];
		candidate[k].probability /= sum;
		score[next] = -INFINITY;
	}
	return VANE_OK;
}
