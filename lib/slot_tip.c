#include "vane/slot.h"

#include "slot.h"

/* The parabolic gap between x = -s and s: all integrals are multiples of the scale a / h0. */
typedef struct parabola {
	double scale;   /* a */
	double phi;     /* atan(s / a) */
	double product; /* sin(phi) cos(phi) */
	double second;  /* I2 h0^2 / a */
	double third;   /* 4 I3 h0^3 / a */
	double square;  /* cos(phi)^2 */
} parabola;

static bool tip_ok(double film, double radius, double half_width, vane_error *error)
{
	return vn_above(film, 0, "film", "m", error) && vn_above(radius, 0, "radius", "m", error) &&
	       vn_above(half_width, 0, "half_width", "m", error);
}

static parabola parabola_of(double film, double radius, double half_width)
{
	const double scale = M_SQRT2 * sqrt(radius) * sqrt(film);
	const double phi = atan2(half_width, scale), reach = hypot(half_width, scale);
	const double cosine = scale / reach, product = half_width / reach * cosine;
	const double second = phi + product, square = cosine * cosine;
	return (parabola){scale, phi, product, second, 3 * second + 2 * product * square, square};
}

double vane_slot_tip_integral_2(double film, double radius, double half_width, vane_error *error)
{
	vn_begin(error);
	if (!tip_ok(film, radius, half_width, error))
		return NAN;
	const parabola p = parabola_of(film, radius, half_width);
	return vn_result(p.scale / film * p.second / film, error);
}

double vane_slot_tip_integral_3(double film, double radius, double half_width, vane_error *error)
{
	vn_begin(error);
	if (!tip_ok(film, radius, half_width, error))
		return NAN;
	const parabola p = parabola_of(film, radius, half_width);
	return vn_result(p.scale / film * p.third / 4 / film / film, error);
}

static bool force_ok(double width, double film, double radius, double half_width, double dp,
		     double viscosity, double wall_speed, vane_error *error)
{
	return vn_above(width, 0, "width", "m", error) && tip_ok(film, radius, half_width, error) &&
	       vn_finite(dp, "dp", "Pa", error) &&
	       vn_above(viscosity, 0, "viscosity", "Pa.s", error) &&
	       vn_finite(wall_speed, "wall_speed", "m/s", error);
}

/* Width times (dp h0 I2 / (2 I3) + mu U (a / h0) factor). */
static double force(const parabola *p, double width, double film, double dp, double viscosity,
		    double wall_speed, double factor)
{
	return width * (2 * dp * film * (p->second / p->third) +
			viscosity * wall_speed * (p->scale / film) * factor);
}

double vane_slot_tip_still_force(double width, double film, double radius, double half_width,
				 double dp, double viscosity, double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!force_ok(width, film, radius, half_width, dp, viscosity, wall_speed, error))
		return NAN;
	const parabola p = parabola_of(film, radius, half_width);
	/* 3 I2^2 / I3 - 2 I1, which vanishes for a long tip, with sin(phi) cos(phi) taken out. */
	const double factor = 4 * p.product * (3 * p.second - 2 * p.phi * p.square) / p.third;
	return vn_result(force(&p, width, film, dp, viscosity, wall_speed, factor), error);
}

double vane_slot_tip_sliding_force(double width, double film, double radius, double half_width,
				   double dp, double viscosity, double wall_speed,
				   vane_error *error)
{
	vn_begin(error);
	if (!force_ok(width, film, radius, half_width, dp, viscosity, wall_speed, error))
		return NAN;
	const parabola p = parabola_of(film, radius, half_width);
	/* 4 I1 - 3 I2^2 / I3 over one denominator. */
	const double factor =
		4 * (3 * p.second * (p.phi - p.product) + 4 * p.phi * p.product * p.square) /
		p.third;
	return vn_result(force(&p, width, film, dp, viscosity, wall_speed, -factor), error);
}
