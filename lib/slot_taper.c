#include "vane/slot.h"

#include "slot.h"

/* Of the continued fraction below; what is left is under 1e-17 up to fraction_end. */
enum { LEVELS = 20 };
static const double fraction_end = 0.6;

double vane_slot_taper_drag_flow(double width, double gap_in, double gap_out, double wall_speed,
				 vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !vn_least(gap_in, 0, "gap_in", "m", error) ||
	    !vn_least(gap_out, 0, "gap_out", "m", error) ||
	    !vn_finite(wall_speed, "wall_speed", "m/s", error))
		return NAN;
	const double narrow = fmin(gap_in, gap_out), wide = fmax(gap_in, gap_out);
	const double gap = wide > 0 ? narrow / (1 + narrow / wide) : 0;
	return vn_result(width * gap * wall_speed, error);
}

static bool taper_ok(double gap_in, double gap_out, double length, double dp, double viscosity,
		     double wall_speed, vane_error *error)
{
	return vn_above(gap_in, 0, "gap_in", "m", error) &&
	       vn_above(gap_out, 0, "gap_out", "m", error) &&
	       vn_above(length, 0, "length", "m", error) && vn_finite(dp, "dp", "Pa", error) &&
	       vn_above(viscosity, 0, "viscosity", "Pa.s", error) &&
	       vn_finite(wall_speed, "wall_speed", "m/s", error);
}

double vane_slot_taper_pressure(double gap_in, double gap_out, double length, double dp,
				double viscosity, double wall_speed, double position,
				vane_error *error)
{
	vn_begin(error);
	if (!taper_ok(gap_in, gap_out, length, dp, viscosity, wall_speed, error) ||
	    !vn_between(position, 0, length, "position", "m", error))
		return NAN;
	const double along = position / length, rest = (length - position) / length;
	const double gap = gap_in * rest + gap_out * along, sum = gap_in + gap_out;
	const double driven = rest * ((gap + gap_out) / sum) * (gap_in / gap) * (gap_in / gap);
	const double dragged = along * rest * ((gap_in - gap_out) / sum) * (length / gap) / gap;
	return vn_result(dp * driven + 6 * viscosity * wall_speed * dragged, error);
}

/* atanh(z) / z - 1 for z = (h1 - h2) / (h1 + h2). With z = 2 w / (1 + w^2), which halves the area
 * tangent, it is w^2 + (1 + w^2) (atanh(w) / w - 1); there the 1 cancels by itself in Gauss's
 * continued fraction. */
static double excess(double gap_in, double gap_out)
{
	const double narrow = fmin(gap_in, gap_out), wide = fmax(gap_in, gap_out);
	const double ratio = narrow / wide, root = 1 + sqrt(ratio);
	const double difference = (wide - narrow) / wide, w = difference / (root * root);
	if (w > fraction_end) {
		const double logarithm = ratio > 1e-300 ? -log(ratio) : log(wide) - log(narrow);
		return logarithm * (1 + ratio) / (2 * difference) - 1;
	}
	const double square = w * w;
	double level = 2 * LEVELS + 1;
	for (int k = LEVELS; k > 1; k--)
		level = 2 * k - 1 - k * k * square / level;
	const double t = square / level;
	return square + (1 + square) * (t / (1 - t));
}

double vane_slot_taper_load(double width, double gap_in, double gap_out, double length, double dp,
			    double viscosity, double wall_speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !taper_ok(gap_in, gap_out, length, dp, viscosity, wall_speed, error))
		return NAN;
	const double sum = gap_in + gap_out, z = (gap_in - gap_out) / sum;
	/* atanh(z) / z - 1 begins with z^2 / 3. */
	const double over_z = z != 0 ? excess(gap_in, gap_out) / z : 0;
	return vn_result(width * length *
				 (dp * (gap_in / sum) +
				  12 * viscosity * wall_speed * over_z * (length / sum) / sum),
			 error);
}

double vane_slot_taper_still_force(double width, double gap_in, double gap_out, double length,
				   double dp, double viscosity, double wall_speed,
				   vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !taper_ok(gap_in, gap_out, length, dp, viscosity, wall_speed, error))
		return NAN;
	const double sum = gap_in + gap_out;
	const double drag = viscosity * wall_speed * (2 - 4 * excess(gap_in, gap_out));
	return vn_result(width * (dp * gap_in * (gap_out / sum) + drag * (length / sum)), error);
}

double vane_slot_taper_sliding_force(double width, double gap_in, double gap_out, double length,
				     double dp, double viscosity, double wall_speed,
				     vane_error *error)
{
	vn_begin(error);
	if (!vn_above(width, 0, "width", "m", error) ||
	    !taper_ok(gap_in, gap_out, length, dp, viscosity, wall_speed, error))
		return NAN;
	const double sum = gap_in + gap_out;
	const double drag = viscosity * wall_speed * (2 + 8 * excess(gap_in, gap_out));
	return vn_result(width * (dp * gap_in * (gap_out / sum) - drag * (length / sum)), error);
}
