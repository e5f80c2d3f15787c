#include "vane/slot.h"

#include "slot.h"

/* Below this ratio of gap to mean diameter the curvature is under an ulp. */
static const double thinnest = 1e-9;

/* An offset of the whole gap is the limit of the formulas, off by the square of this. */
static const double least_opening = 1e-10;

/* Bipolar coordinates of two circles: b = M / sinh(m + d), a = M / sinh(m - d). */
typedef struct circles {
	double rho;     /* gap over mean diameter, tanh(d) / tanh(m) */
	double opening; /* sinh(d) / rho = eps sinh(m) */
	double sinh_d;
	double cosh_d;
	double d;        /* half of beta - alpha */
	double thinning; /* 1 - rho^2 */
} circles;

static circles circles_of(double diameter, double gap, double eccentricity)
{
	circles c = {.rho = gap / (diameter + gap)};
	c.thinning = diameter / (diameter + gap) * ((diameter + 2 * gap) / (diameter + gap));
	c.opening = sqrt((1 - eccentricity) * (1 + eccentricity) / c.thinning);
	c.sinh_d = c.rho * c.opening;
	c.cosh_d = hypot(1, c.sinh_d);
	c.d = asinh(c.sinh_d);
	return c;
}

/* Excess of an integral of csch^2 over its midpoint sum from m onwards with steps of 2 d: the first
 * steps one by one, without cancellation, then Euler and Maclaurin's series, which is good to the
 * last digit from NEAR d onwards. */
enum { NEAR = 30, ORDER = 8 };

static double midpoint_excess(const circles *c, double m, double sinhc)
{
	static const double bernoulli[ORDER] = {
		1.0 / 12,       -7.0 / 240,           31.0 / 1344,     -127.0 / 3840,
		2555.0 / 33792, -1414477.0 / 5591040, 57337.0 / 49152, -118518239.0 / 16711680,
	};
	const double steps = (NEAR - m / c->d) / 2;
	const int count = steps > 0 ? (int)ceil(steps) : 0;
	double sum = 0, low = sinh(m);
	for (int k = 0; k < count; k++) {
		const double middle = c->sinh_d / sinh(m + (2 * k + 1) * c->d);
		const double high = sinh(m + (2 * k + 2) * c->d);
		sum += 2 * c->d / low * ((sinhc + middle * middle) / high);
		low = high;
	}
	/* Taylor coefficients of coth, with their signs and powers of the step taken in. */
	const double step = 2 * c->d, start = m + 2 * count * c->d;
	double z[2 * ORDER + 1] = {1 / tanh(start), step / sinh(start) / sinh(start)};
	for (int n = 1; n < 2 * ORDER; n++) {
		double folded = 0;
		for (int i = 0; i <= n; i++)
			folded += z[i] * z[n - i];
		z[n + 1] = step * folded / (n + 1);
	}
	double tail = 0;
	for (int j = ORDER; j > 0; j--)
		tail += bernoulli[j - 1] * z[2 * j];
	return sum + tail;
}

/* Flow over that of a thin centred annulus of the same mean diameter. The page of this topic has
 * the derivation. */
static double exact_factor(double diameter, double gap, double eccentricity)
{
	const double eps2 = eccentricity * eccentricity;
	circles c = circles_of(diameter, gap, eccentricity);
	if (c.rho < thinnest)
		return 1 + 1.5 * eps2;
	if (c.opening < least_opening) {
		c.opening = least_opening;
		c.sinh_d = c.d = c.rho * c.opening;
	}
	const double rho2 = c.rho * c.rho, room = (1 - eccentricity) * (1 + eccentricity);
	const double rest = c.thinning + rho2 * room, rest2 = rest * rest;
	const double sinhc = vn_sinhc_excess(2 * c.d, 2 * c.sinh_d * c.cosh_d);
	double sum = room * (2 - rest2 * (sinhc / (c.sinh_d * c.sinh_d)));
	if (eccentricity > 0) {
		const double m = asinh(c.opening / eccentricity);
		const double excess = c.opening / c.cosh_d * midpoint_excess(&c, m, sinhc);
		sum += c.thinning *
		       (eps2 * (3 - rho2 * eps2) + (1 + sinhc) * rest2 * (excess / rho2));
	}
	return 0.75 * sum / rest;
}

static bool shape_ok(double diameter, double length, double eccentricity, vane_error *error)
{
	return vn_above(diameter, 0, "diameter", "m", error) &&
	       vn_above(length, 0, "length", "m", error) &&
	       vn_between(eccentricity, 0, 1, "eccentricity", "", error);
}

static bool drive_ok(double dp, double viscosity, double wall_speed, vane_error *error)
{
	return vn_finite(dp, "dp", "Pa", error) &&
	       vn_above(viscosity, 0, "viscosity", "Pa.s", error) &&
	       vn_finite(wall_speed, "wall_speed", "m/s", error);
}

double vane_slot_annulus_exact_flow(double diameter, double gap, double length, double eccentricity,
				    double dp, double viscosity, double wall_speed,
				    vane_error *error)
{
	vn_begin(error);
	if (!vn_least(gap, 0, "gap", "m", error) ||
	    !shape_ok(diameter, length, eccentricity, error) ||
	    !drive_ok(dp, viscosity, wall_speed, error))
		return NAN;
	const circles c = circles_of(diameter, gap, eccentricity);
	const double b = diameter / 2, sinhc = vn_sinhc_excess(2 * c.d, 2 * c.sinh_d * c.cosh_d);
	const double driven = vn_poiseuille((diameter + gap) / length, vn_cube(gap), dp, viscosity);
	return vn_result(M_PI * (exact_factor(diameter, gap, eccentricity) * driven +
				 wall_speed * b * (gap + (b + gap) * sinhc)),
			 error);
}

static double axial_force(double diameter, double gap, double length, double eccentricity,
			  double dp, double viscosity, double wall_speed, bool inner,
			  vane_error *error)
{
	vn_begin(error);
	if (!vn_above(gap, 0, "gap", "m", error) ||
	    !shape_ok(diameter, length, eccentricity, error) ||
	    !drive_ok(dp, viscosity, wall_speed, error))
		return NAN;
	if (eccentricity == 1) {
		vn_fail(VANE_INVALID_ARGUMENT, "eccentricity", eccentricity,
			"eccentricity must be less than 1; the cylinders touch.", error);
		return NAN;
	}
	const circles c = circles_of(diameter, gap, eccentricity);
	const double b = diameter / 2, sinhc = vn_sinhc_excess(2 * c.d, 2 * c.sinh_d * c.cosh_d);
	const double drag = viscosity * wall_speed * (length / c.d);
	const double share = inner ? b * (gap + (b + gap) * sinhc) : (b + gap) * (gap - b * sinhc);
	return vn_result(M_PI * (dp * share + (inner ? -drag : drag)), error);
}

double vane_slot_annulus_inner_force(double diameter, double gap, double length,
				     double eccentricity, double dp, double viscosity,
				     double wall_speed, vane_error *error)
{
	return axial_force(diameter, gap, length, eccentricity, dp, viscosity, wall_speed, true,
			   error);
}

double vane_slot_annulus_outer_force(double diameter, double gap, double length,
				     double eccentricity, double dp, double viscosity,
				     double wall_speed, vane_error *error)
{
	return axial_force(diameter, gap, length, eccentricity, dp, viscosity, wall_speed, false,
			   error);
}

double vane_slot_annulus_velocity(double diameter, double gap, double length, double dp,
				  double viscosity, double wall_speed, double height,
				  vane_error *error)
{
	vn_begin(error);
	if (!vn_above(gap, 0, "gap", "m", error) || !shape_ok(diameter, length, 0, error) ||
	    !drive_ok(dp, viscosity, wall_speed, error) ||
	    !vn_between(height, 0, gap, "height", "m", error))
		return NAN;
	const double b = diameter / 2, a = b + gap, r = b + height;
	const double whole = log1p(gap / b), rest = log1p((gap - height) / r);
	/* a^2 - r^2 is 2 a r sinh(ln(a / r)), and a^2 - b^2 likewise. */
	const double curved = vn_sinhc_share(r, a, rest) - vn_sinhc_share(b, a, whole);
	return vn_result(dp / viscosity / 2 * (a / length) * rest * (height + curved) +
				 wall_speed * (rest / whole),
			 error);
}

double vane_slot_annulus_friction(double ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(ratio, 0, 1, "ratio", "", error))
		return NAN;
	if (ratio == 1)
		return 96;
	const double gap = 1 - ratio, x = ratio > 0.5 ? -log1p(-gap) : -log(ratio);
	if (x > 2)
		return vn_result(64 * gap * gap / (1 + ratio * ratio - gap * (1 + ratio) / x),
				 error);
	/* 1 + r^2 - (1 - r^2) / x is 2 r (cosh(x) - sinh(x) / x). */
	const double sine = sinh(x / 2);
	return vn_result(32 * gap * gap / (ratio * (2 * sine * sine - vn_sinhc_excess(x, sinh(x)))),
			 error);
}

double vane_slot_annulus_exact_reynolds(double flow, double diameter, double gap,
					double kinematic_viscosity, vane_error *error)
{
	vn_begin(error);
	if (!vn_finite(flow, "flow", "m3/s", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_least(gap, 0, "gap", "m", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(M_2_PI * (fabs(flow) / (diameter + gap) / kinematic_viscosity), error);
}

static bool rotation_ok(double diameter, double gap, double length, double viscosity, double speed,
			vane_error *error)
{
	return vn_above(diameter, 0, "diameter", "m", error) &&
	       vn_above(gap, 0, "gap", "m", error) && vn_above(length, 0, "length", "m", error) &&
	       vn_above(viscosity, 0, "viscosity", "Pa.s", error) &&
	       vn_finite(speed, "speed", "1/s", error);
}

/* 2 pi n times pi mu L d^2 / 4, and the rest of a torque. */
static double torque(double diameter, double length, double viscosity, double speed, double ratio)
{
	return M_PI * M_PI / 2 * viscosity * speed * diameter * diameter * length * ratio;
}

double vane_slot_annulus_torque(double diameter, double gap, double length, double viscosity,
				double speed, vane_error *error)
{
	vn_begin(error);
	if (!rotation_ok(diameter, gap, length, viscosity, speed, error))
		return NAN;
	const double outer = diameter + 2 * gap;
	return vn_result(torque(diameter, length, viscosity, speed,
				outer / (diameter + gap) * (outer / gap)),
			 error);
}

double vane_slot_petroff_torque(double diameter, double gap, double length, double viscosity,
				double speed, vane_error *error)
{
	vn_begin(error);
	if (!rotation_ok(diameter, gap, length, viscosity, speed, error))
		return NAN;
	return vn_result(torque(diameter, length, viscosity, speed, diameter / gap), error);
}

double vane_slot_taylor(double gap, double diameter, double speed, double kinematic_viscosity,
			vane_error *error)
{
	vn_begin(error);
	if (!vn_above(gap, 0, "gap", "m", error) ||
	    !vn_above(diameter, 0, "diameter", "m", error) ||
	    !vn_finite(speed, "speed", "1/s", error) ||
	    !vn_above(kinematic_viscosity, 0, "kinematic_viscosity", "m2/s", error))
		return NAN;
	return vn_result(M_PI * fabs(speed) * diameter * (gap / kinematic_viscosity) *
				 (M_SQRT2 * sqrt(gap / diameter)),
			 error);
}
