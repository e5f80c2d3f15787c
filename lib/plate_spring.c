#include "check.h"
#include "plate.h"
#include "twofold.h"
#include "vane/plate.h"

#include <math.h>

#define PI 3.14159265358979323846

static bool wire_ok(double wire_diameter, double coil_diameter, vane_error *error)
{
	return vn_above(wire_diameter, 0, "wire_diameter", "m", error) &&
	       vn_above(coil_diameter, wire_diameter, "coil_diameter", "m", error);
}

static vn_two cube(vn_two x)
{
	return vn_two_times(vn_two_square(x), x);
}

/* G d^4/(8 D^3 part) */
static double coiled(double wire_diameter, double coil_diameter, double part, double shear_modulus)
{
	const vn_two stiff = vn_two_scaled(vn_two_of(shear_modulus / 8), wire_diameter);
	const vn_two thin = cube(vn_two_ratio(wire_diameter, coil_diameter));
	return vn_two_round(vn_two_over(vn_two_times(stiff, thin), vn_two_of(part)));
}

double vane_plate_spring_rate(double wire_diameter, double coil_diameter, double coils,
			      double shear_modulus, vane_error *error)
{
	vn_begin(error);
	if (!wire_ok(wire_diameter, coil_diameter, error) ||
	    !vn_above(coils, 0, "coils", "", error) ||
	    !vn_above(shear_modulus, 0, "shear_modulus", "Pa", error))
		return NAN;
	return vn_result(coiled(wire_diameter, coil_diameter, coils, shear_modulus), error);
}

double vane_plate_spring_coils(double wire_diameter, double coil_diameter, double rate,
			       double shear_modulus, vane_error *error)
{
	vn_begin(error);
	if (!wire_ok(wire_diameter, coil_diameter, error) ||
	    !vn_above(rate, 0, "rate", "N/m", error) ||
	    !vn_above(shear_modulus, 0, "shear_modulus", "Pa", error))
		return NAN;
	return vn_result(coiled(wire_diameter, coil_diameter, rate, shear_modulus), error);
}

/* 8 F D/(pi d^3) */
static vn_two torsion(double force, double wire_diameter, double coil_diameter)
{
	const vn_two wire = vn_two_of(wire_diameter);
	const vn_two thin = vn_two_over(vn_two_over(vn_two_of(8 * force), wire), wire);
	return vn_two_over(vn_two_times(thin, vn_two_ratio(coil_diameter, wire_diameter)),
			   vn_two_pi);
}

double vane_plate_spring_stress(double force, double wire_diameter, double coil_diameter,
				vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(force, "force", "N", error) || !wire_ok(wire_diameter, coil_diameter, error))
		return NAN;
	/* (4 C - 1)/(4 C - 4) is 1 + 0.75/(C - 1). */
	const double k = 1 + 0.75 * wire_diameter / (coil_diameter - wire_diameter) +
			 0.615 * wire_diameter / coil_diameter;
	return vn_result(
		vn_two_round(vn_two_scaled(torsion(force, wire_diameter, coil_diameter), k)),
		error);
}

double vane_plate_spring_stress_bergstrasser(double force, double wire_diameter,
					     double coil_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(force, "force", "N", error) || !wire_ok(wire_diameter, coil_diameter, error))
		return NAN;
	const double inverse = wire_diameter / coil_diameter;
	return vn_result(vn_two_round(vn_two_scaled(torsion(force, wire_diameter, coil_diameter),
						    (4 + 2 * inverse) / (4 - 3 * inverse))),
			 error);
}

double vane_plate_spring_pitch(double free_length, double wire_diameter, double dead_wires,
			       double pitches, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(free_length, 0, "free_length", "m", error) ||
	    !vn_above(wire_diameter, 0, "wire_diameter", "m", error) ||
	    !vn_least(dead_wires, 0, "dead_wires", "", error) ||
	    !vn_above(pitches, 0, "pitches", "", error))
		return NAN;
	return vn_result(fma(-dead_wires, wire_diameter, free_length) / pitches, error);
}

double vane_plate_spring_stable_length(double mean_diameter, double end_factor,
				       double shear_modulus, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(mean_diameter, 0, "mean_diameter", "m", error) ||
	    !vn_above(end_factor, 0, "end_factor", "", error) ||
	    !vn_above(shear_modulus, 0, "shear_modulus", "Pa", error) ||
	    !vn_above(modulus, shear_modulus, "modulus", "Pa", error))
		return NAN;
	const double ratio = shear_modulus / modulus;
	return vn_result(PI * mean_diameter / end_factor *
				 sqrt(2 * ((modulus - shear_modulus) / modulus) / (1 + 2 * ratio)),
			 error);
}

static bool ring_ok(double width, double mean_diameter, double thickness, double waves,
		    vane_error *error)
{
	return vn_above(width, 0, "width", "m", error) &&
	       vn_above(mean_diameter, width, "mean_diameter", "m", error) &&
	       vn_above(thickness, 0, "thickness", "m", error) &&
	       vn_least(waves, 2, "waves", "", error);
}

double vane_plate_wave_rate(double width, double mean_diameter, double thickness, double waves,
			    double turns, double modulus, vane_error *error)
{
	vn_begin(error);
	if (!ring_ok(width, mean_diameter, thickness, waves, error) ||
	    !vn_least(turns, 1, "turns", "", error) ||
	    !vn_above(modulus, 0, "modulus", "Pa", error))
		return NAN;
	const vn_two ratio =
		vn_two_over(vn_two_sum(mean_diameter, width), vn_two_sum(mean_diameter, -width));
	const vn_two stiff = vn_two_times(vn_two_scaled(vn_two_of(modulus), width),
					  cube(vn_two_ratio(thickness, mean_diameter)));
	const vn_two fourth = vn_two_square(vn_two_square(vn_two_of(waves)));
	/* 2.4 is 12/5. */
	return vn_result(vn_two_round(vn_two_over(
				 vn_two_scaled(vn_two_times(vn_two_times(stiff, fourth), ratio), 5),
				 vn_two_scaled(vn_two_of(12), turns))),
			 error);
}

double vane_plate_wave_stress(double force, double width, double mean_diameter, double thickness,
			      double waves, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(force, "force", "N", error) ||
	    !ring_ok(width, mean_diameter, thickness, waves, error))
		return NAN;
	const vn_two wide = vn_two_over(vn_two_ratio(0.75 * force, width), vn_two_of(thickness));
	const vn_two thin = vn_two_over(vn_two_ratio(mean_diameter, thickness),
					vn_two_square(vn_two_of(waves)));
	return vn_result(vn_two_round(vn_two_times(vn_two_times(wide, thin), vn_two_pi)), error);
}

static bool cone_ok(double outer_diameter, double inner_diameter, double thickness,
		    double cone_height, double modulus, double poisson, vane_error *error)
{
	return vn_above(inner_diameter, 0, "inner_diameter", "m", error) &&
	       vn_above(outer_diameter, inner_diameter, "outer_diameter", "m", error) &&
	       vn_above(thickness, 0, "thickness", "m", error) &&
	       vn_least(cone_height, 0, "cone_height", "m", error) &&
	       vn_above(modulus, 0, "modulus", "Pa", error) &&
	       vn_between(poisson, 0, 0.5, "poisson", "", error);
}

/* coth y - 1/y */
static double langevin(double y)
{
	if (y > 6)
		return 1 / tanh(y) - 1 / y;
	/* Continued fraction of tanh: y/(3 + y^2/(5 + y^2/(7 + ...))). */
	double tail = 0;
	for (int k = 61; k >= 5; k -= 2)
		tail = y * y / (k + tail);
	return y / (3 + tail);
}

/* 4 E/(1 - nu^2) t^3/(K De^2) */
static vn_two cone_rate(double outer_diameter, double inner_diameter, double thickness,
			double modulus, double poisson)
{
	const double half = vn_plate_log(outer_diameter, inner_diameter) / 4;
	/* (d - 1)/d is (De - Di)/De, so that De goes out. */
	const vn_two thin =
		vn_two_over(vn_two_of(thickness), vn_two_sum(outer_diameter, -inner_diameter));
	const vn_two stretch = vn_two_times(vn_two_sum(1, -poisson), vn_two_sum(1, poisson));
	const vn_two stiff = vn_two_times(vn_two_scaled(vn_two_of(4 * modulus), thickness),
					  vn_two_times(vn_two_square(thin), vn_two_pi));
	return vn_two_scaled(vn_two_over(stiff, stretch), langevin(half));
}

/* (h - s)/t */
static vn_two left_over(double cone_height, double deflection, double thickness)
{
	return vn_two_over(vn_two_sum(cone_height, -deflection), vn_two_of(thickness));
}

/* 1 + (h - s) (h - s/2)/t^2 */
static vn_two force_bracket(double cone_height, double deflection, double thickness)
{
	const vn_two middle = left_over(cone_height, deflection / 2, thickness);
	const vn_two left = left_over(cone_height, deflection, thickness);
	return vn_two_plus(vn_two_of(1), vn_two_times(left, middle));
}

/* 1 + (1.5 (h - s)^2 - 0.5 h^2)/t^2 */
static vn_two rate_bracket(double cone_height, double deflection, double thickness)
{
	const vn_two left = vn_two_square(left_over(cone_height, deflection, thickness));
	const vn_two whole = vn_two_square(vn_two_ratio(cone_height, thickness));
	return vn_two_plus(vn_two_of(1),
			   vn_two_minus(vn_two_scaled(left, 1.5), vn_two_scaled(whole, 0.5)));
}

static double cone_force(vn_two rate, double cone_height, double deflection, double thickness)
{
	return vn_two_round(vn_two_times(vn_two_scaled(rate, deflection),
					 force_bracket(cone_height, deflection, thickness)));
}

double vane_plate_disc_force(double outer_diameter, double inner_diameter, double thickness,
			     double cone_height, double deflection, double modulus, double poisson,
			     vane_error *error)
{
	vn_begin(error);
	if (!cone_ok(outer_diameter, inner_diameter, thickness, cone_height, modulus, poisson,
		     error) ||
	    !vn_least(deflection, 0, "deflection", "m", error))
		return NAN;
	const vn_two rate = cone_rate(outer_diameter, inner_diameter, thickness, modulus, poisson);
	return vn_result(cone_force(rate, cone_height, deflection, thickness), error);
}

double vane_plate_disc_rate(double outer_diameter, double inner_diameter, double thickness,
			    double cone_height, double deflection, double modulus, double poisson,
			    vane_error *error)
{
	vn_begin(error);
	if (!cone_ok(outer_diameter, inner_diameter, thickness, cone_height, modulus, poisson,
		     error) ||
	    !vn_least(deflection, 0, "deflection", "m", error))
		return NAN;
	const vn_two rate = cone_rate(outer_diameter, inner_diameter, thickness, modulus, poisson);
	return vn_result(
		vn_two_round(vn_two_times(rate, rate_bracket(cone_height, deflection, thickness))),
		error);
}

int32_t vane_plate_disc_run(const vane_plate_disc *disc, double deflection,
			    vane_plate_disc_state *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_plate_disc_state){NAN, NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_pointer(disc, "disc", error))
		return VANE_INVALID_ARGUMENT;
	const vane_plate_disc *d = disc;
	if (!cone_ok(d->outer_diameter, d->inner_diameter, d->thickness, d->cone_height, d->modulus,
		     d->poisson, error)) {
		vn_within("disc", error);
		return VANE_INVALID_ARGUMENT;
	}
	if (!vn_least(deflection, 0, "deflection", "m", error))
		return VANE_INVALID_ARGUMENT;
	const vn_two rate = cone_rate(d->outer_diameter, d->inner_diameter, d->thickness,
				      d->modulus, d->poisson);
	const double log_ratio = vn_plate_log(d->outer_diameter, d->inner_diameter) / 2;
	const double narrow = (d->outer_diameter - d->inner_diameter) / d->inner_diameter;
	const double ratio = d->outer_diameter / d->inner_diameter;
	const double left = (d->cone_height - deflection) / d->thickness;
	const double middle = (left + d->cone_height / d->thickness) / 2;
	/* K3, K2 and 2 K3 - K2 of the standard. */
	const double k3 = 3 / PI * (narrow / log_ratio);
	const double k2 = 6 / PI * (ratio * vn_plate_two(log_ratio) / log_ratio / log_ratio);
	const double k5 = 6 / PI * (ratio * vn_plate_six(log_ratio) / log_ratio / log_ratio);
	const double unit = vn_two_round(rate) / d->thickness * (deflection / d->thickness);
	const vane_plate_disc_state found = {
		.force = cone_force(rate, d->cone_height, deflection, d->thickness),
		.rate = vn_two_round(
			vn_two_times(rate, rate_bracket(d->cone_height, deflection, d->thickness))),
		.stress_top = -unit * 3 / PI,
		.stress_one = -unit * fma(k2, middle, k3),
		.stress_two = -unit * fma(k2, middle, -k3),
		.stress_three = unit / ratio * fma(k5, middle, k3),
		.stress_four = unit / ratio * fma(k5, middle, -k3),
	};
	const double parts[] = {found.force,      found.rate,       found.stress_top,
				found.stress_one, found.stress_two, found.stress_three,
				found.stress_four};
	for (int i = 0; i < (int)(sizeof parts / sizeof *parts); i++)
		if (!isfinite(vn_result(parts[i], error)))
			return VANE_OUT_OF_RANGE;
	*out = found;
	return VANE_OK;
}
