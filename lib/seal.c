#include "vane/seal.h"
#include "check.h"
#include "dimension.h"

#include <math.h>

#define PI 3.14159265358979323846

int32_t vane_seal_usual(int32_t use, vane_seal_guide *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_seal_guide){NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_count(use, VANE_SEAL_STATIC_RADIAL, VANE_SEAL_DYNAMIC, "use", error))
		return VANE_INVALID_ARGUMENT;
	static const double squeeze[][2] = {{0.10, 0.30}, {0.15, 0.35}, {0.08, 0.20}};
	*out = (vane_seal_guide){squeeze[use - 1][0], squeeze[use - 1][1], 0.75, 0.85, 0.01, 0.05};
	return VANE_OK;
}

double vane_seal_stretch(double inner_diameter, double groove_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(inner_diameter, 0, "inner_diameter", "m", error) ||
	    !vn_above(groove_diameter, 0, "groove_diameter", "m", error))
		return NAN;
	return vn_result((groove_diameter - inner_diameter) / inner_diameter, error);
}

/* Root of x^3 + stretched x^2 = free + 1. Newton's iteration from above, on a
 * convex function, cannot pass it. */
static double section_ratio(double free, double stretched)
{
	double x = fmin(cbrt(free + 1), sqrt((free + 1) / stretched));
	for (int i = 0; i < 60; i++) {
		const double step =
			(x * x * (x + stretched) - (free + 1)) / (x * (3 * x + 2 * stretched));
		x -= step;
		if (!(fabs(step) > 1e-16 * x))
			break;
	}
	return x;
}

static double stretched_section(double inner_diameter, double section, double groove_diameter)
{
	return section * section_ratio(inner_diameter / section, groove_diameter / section);
}

double vane_seal_stretched_section(double inner_diameter, double section, double groove_diameter,
				   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(inner_diameter, 0, "inner_diameter", "m", error) ||
	    !vn_above(section, 0, "section", "m", error) ||
	    !vn_above(groove_diameter, 0, "groove_diameter", "m", error))
		return NAN;
	return vn_result(stretched_section(inner_diameter, section, groove_diameter), error);
}

double vane_seal_squeeze(double section, double gland_depth, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error) ||
	    !vn_above(gland_depth, 0, "gland_depth", "m", error))
		return NAN;
	return vn_result((section - gland_depth) / section, error);
}

double vane_seal_squeeze_stretched(double inner_diameter, double section, double groove_diameter,
				   double gland_depth, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(inner_diameter, 0, "inner_diameter", "m", error) ||
	    !vn_above(section, 0, "section", "m", error) ||
	    !vn_above(groove_diameter, 0, "groove_diameter", "m", error) ||
	    !vn_above(gland_depth, 0, "gland_depth", "m", error))
		return NAN;
	const double thinner = stretched_section(inner_diameter, section, groove_diameter);
	return vn_result((thinner - gland_depth) / thinner, error);
}

static bool is_squeeze(double squeeze, vane_error *error)
{
	return vn_between(squeeze, 0, nextafter(1, 0), "squeeze", "", error);
}

double vane_seal_gland_depth(double section, double squeeze, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error) || !is_squeeze(squeeze, error))
		return NAN;
	return vn_result(section * (1 - squeeze), error);
}

double vane_seal_piston_groove(double bore_diameter, double section, double squeeze,
			       vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error) || !is_squeeze(squeeze, error) ||
	    !vn_above(bore_diameter, 2 * section, "bore_diameter", "m", error))
		return NAN;
	return vn_result(fma(-2 * section, 1 - squeeze, bore_diameter), error);
}

double vane_seal_rod_groove(double rod_diameter, double section, double squeeze, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(rod_diameter, 0, "rod_diameter", "m", error) ||
	    !vn_above(section, 0, "section", "m", error) || !is_squeeze(squeeze, error))
		return NAN;
	return vn_result(rod_diameter + 2 * section * (1 - squeeze), error);
}

double vane_seal_groove_width_rule(double section, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error))
		return NAN;
	return vn_result(1.4 * section, error);
}

double vane_seal_groove_width(double section, double gland_depth, double fill, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error) ||
	    !vn_above(gland_depth, 0, "gland_depth", "m", error) ||
	    !vn_above(fill, 0, "fill", "", error) || !vn_between(fill, 0, 1, "fill", "", error))
		return NAN;
	return vn_result(PI / 4 * (section / gland_depth) * (section / fill), error);
}

double vane_seal_fill(double section, double groove_width, double gland_depth, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error) ||
	    !vn_above(groove_width, 0, "groove_width", "m", error) ||
	    !vn_above(gland_depth, 0, "gland_depth", "m", error))
		return NAN;
	return vn_result(PI / 4 * (section / groove_width) * (section / gland_depth), error);
}

/* Length over cold length; false when nothing is left of the part. */
static bool grow(double expansion, double temperature_rise, double *ratio, vane_error *error)
{
	*ratio = fma(expansion, temperature_rise, 1);
	return *ratio > 0 || vn_fail(VANE_NO_SOLUTION, "temperature_rise", temperature_rise,
				     "At this expansion and temperature_rise, in K, the part "
				     "would shrink to nothing.",
				     error);
}

double vane_seal_hot_fill(double fill, double swell, double expansion, double gland_expansion,
			  double temperature_rise, vane_error *error)
{
	vn_begin(error);
	double rubber, gland;
	if (!vn_above(fill, 0, "fill", "", error) || !vn_above(swell, -1, "swell", "", error) ||
	    !vn_least(expansion, 0, "expansion", "1/K", error) ||
	    !vn_least(gland_expansion, 0, "gland_expansion", "1/K", error) ||
	    !vn_finite(temperature_rise, "temperature_rise", "K", error) ||
	    !grow(expansion, temperature_rise, &rubber, error) ||
	    !grow(gland_expansion, temperature_rise, &gland, error))
		return NAN;
	const double excess = (expansion - gland_expansion) * temperature_rise / gland;
	const double ratio = fabs(excess) < 0.5 ? 1 + excess : rubber / gland;
	return vn_result(fill * (1 + swell) * ratio * ratio * ratio, error);
}

double vane_seal_hot_section(double section, double swell, double expansion,
			     double temperature_rise, vane_error *error)
{
	vn_begin(error);
	double rubber;
	if (!vn_above(section, 0, "section", "m", error) ||
	    !vn_above(swell, -1, "swell", "", error) ||
	    !vn_least(expansion, 0, "expansion", "1/K", error) ||
	    !vn_finite(temperature_rise, "temperature_rise", "K", error) ||
	    !grow(expansion, temperature_rise, &rubber, error))
		return NAN;
	return vn_result(section * cbrt(1 + swell) * rubber, error);
}

double vane_seal_gap(double bore_diameter, double piston_diameter, double eccentricity,
		     double breathing, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(piston_diameter, 0, "piston_diameter", "m", error) ||
	    !vn_least(bore_diameter, piston_diameter, "bore_diameter", "m", error) ||
	    !vn_between(eccentricity, 0, 1, "eccentricity", "", error) ||
	    !vn_least(breathing, 0, "breathing", "m", error))
		return NAN;
	return vn_result((bore_diameter - piston_diameter) * ((1 + eccentricity) / 2) + breathing,
			 error);
}

double vane_seal_cover_gap(double initial_gap, double load, double separation_load,
			   double bolt_stiffness, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(initial_gap, 0, "initial_gap", "m", error) ||
	    !vn_least(load, 0, "load", "N", error) ||
	    !vn_least(separation_load, 0, "separation_load", "N", error) ||
	    !vn_above(bolt_stiffness, 0, "bolt_stiffness", "N/m", error))
		return NAN;
	const double excess = fmax(load - separation_load, 0);
	return vn_result(initial_gap + excess / bolt_stiffness, error);
}

/* Widest usual radial gap, 0.01 mm, by pressure (rows) and section (columns).
 * Common practice, no source; from memory. */
enum { PRESSURES = 7, SECTIONS = 5 };
static const double pressure_step[PRESSURES] = {3.5e6, 7e6, 10.5e6, 14e6, 17.5e6, 21e6, 35e6};
static const double section_step[SECTIONS - 1] = {2e-3, 3e-3, 5e-3, 7e-3};
static const double gap_70[PRESSURES][SECTIONS] = {
	{8, 9, 10, 13, 15},
	{5, 7, 8, 9, 10},
	{3, 4, 5, 7, 8},
};
static const double gap_90[PRESSURES][SECTIONS] = {
	{13, 15, 20, 23, 25}, {10, 13, 15, 18, 20}, {7, 9, 10, 13, 15}, {5, 7, 8, 9, 10},
	{4, 5, 7, 8, 9},      {3, 4, 5, 7, 8},      {2, 3, 3, 4, 4},
};

double vane_seal_gap_limit(double pressure, double section, double hardness, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(pressure, 0, "pressure", "Pa", error) ||
	    !vn_above(section, 0, "section", "m", error) ||
	    !vn_between(hardness, 70, 95, "hardness", "", error))
		return NAN;
	int row = 0, column = 0;
	while (row < PRESSURES && pressure > pressure_step[row] * VN_PASCAL)
		row++;
	/* A section on a step belongs to the smaller ones, whose limit is narrower. */
	while (column < SECTIONS - 1 && section > section_step[column] * VN_METRE)
		column++;
	if (row == PRESSURES)
		return 0;
	return (hardness < 90 ? gap_70 : gap_90)[row][column] * 1e-5 * VN_METRE;
}

int32_t vane_seal_extrusion_check(double gap, double pressure, double section, double hardness,
				  vane_seal_extrusion *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_seal_extrusion){NAN, NAN, 0, 0};
	if (!vn_least(gap, 0, "gap", "m", error))
		return VANE_INVALID_ARGUMENT;
	const double limit = vane_seal_gap_limit(pressure, section, hardness, error);
	if (isnan(limit))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_seal_extrusion){limit, limit - gap, limit == 0 || gap > limit, 0};
	return VANE_OK;
}

double vane_seal_modulus(double hardness, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(hardness, 20, 95, "hardness", "", error))
		return NAN;
	return vn_result(0.0981e6 * VN_PASCAL / 0.137505 * (56 + 7.62336 * hardness) /
				 (2.54 * (100 - hardness)),
			 error);
}

double vane_seal_line_force(double section, double squeeze, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(section, 0, "section", "m", error) ||
	    !vn_between(squeeze, 0, 0.5, "squeeze", "", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error))
		return NAN;
	const double c3 = squeeze * squeeze * squeeze;
	return vn_result(modulus * section * (1.25 * squeeze * sqrt(squeeze) + 50 * c3 * c3),
			 error);
}

static bool is_contact(double section, double line_force, double modulus, vane_error *error)
{
	return vn_above(section, 0, "section", "m", error) &&
	       vn_least(line_force, 0, "line_force", "N/m", error) &&
	       vn_above(modulus, 0, "modulus", "Pa", error);
}

/* Roots one by one: the products may pass what a double holds. */
double vane_seal_contact_width(double section, double line_force, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!is_contact(section, line_force, modulus, error))
		return NAN;
	return vn_result(sqrt(6 / PI) * sqrt(section) * (sqrt(line_force) / sqrt(modulus)), error);
}

double vane_seal_contact_stress(double section, double line_force, double modulus,
				vane_error *error)
{
	vn_begin(error);
	if (!is_contact(section, line_force, modulus, error))
		return NAN;
	return vn_result(sqrt(8 / (3 * PI)) * sqrt(line_force) * (sqrt(modulus) / sqrt(section)),
			 error);
}
