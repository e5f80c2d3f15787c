#include "oil.h"

#include "check.h"

#include <stddef.h>

enum { MOST = 1000000 };

static bool readings_valid(const double *temperature, const double *kinematic_viscosity,
			   int64_t readings, vane_error *error)
{
	for (int64_t i = 0; i < readings; i++)
		if (!vn_above(temperature[i], 0, "temperature", "K", error) ||
		    !vn_above(kinematic_viscosity[i], VN_OIL_THINNEST, "kinematic_viscosity",
			      "m2/s", error)) {
			vn_at(i, error);
			return false;
		}
	return true;
}

/* The line relative to the first reading: its logarithms are differences, so
 * that neighbouring readings keep their digits. */
typedef struct relative_line {
	double mean_x, mean_y, slope;
} relative_line;

static relative_line line_through(const double *temperature, const double *viscosity, int64_t n,
				  int32_t law)
{
	relative_line r = {0, 0, 0};
	double xx = 0, xy = 0;
	for (int64_t i = 0; i < n; i++) {
		const double x = vn_oil_log_ratio(temperature[i], temperature[0]);
		const double y = vn_oil_outer_ratio(viscosity[i], viscosity[0], law);
		const double dx = x - r.mean_x, dy = y - r.mean_y;
		r.mean_x += dx / (double)(i + 1);
		r.mean_y += dy / (double)(i + 1);
		xx += dx * (x - r.mean_x);
		xy += dx * (y - r.mean_y);
	}
	r.slope = xy / xx;
	return r;
}

static double line_viscosity(const relative_line *r, double x, double inner, int32_t law)
{
	return vn_oil_from_inner_log(inner * exp(r->mean_y + r->slope * (x - r->mean_x)), law);
}

/* What the line misses by: the readings over it, less 1. */
static bool measure(const relative_line *r, const double *temperature, const double *viscosity,
		    int64_t n, int32_t law, vane_oil_line *out, double *deviation,
		    vane_error *error)
{
	const double inner = vn_oil_inner_log(viscosity[0], law);
	double squares = 0, greatest = -1;
	for (int64_t i = 0; i < n; i++) {
		const double x = vn_oil_log_ratio(temperature[i], temperature[0]);
		/* Two readings are the line: what is left would be rounding. */
		const double fitted = n == 2 ? viscosity[i] : line_viscosity(r, x, inner, law);
		const double off = (viscosity[i] - fitted) / fitted;
		if (!isfinite(vn_result(off, error)))
			return false;
		if (deviation)
			deviation[i] = off;
		squares += off * off;
		if (fabs(off) > greatest) {
			greatest = fabs(off);
			out->worst = i;
		}
		if (!(temperature[i] >= out->temperature_1)) {
			out->temperature_1 = temperature[i];
			out->viscosity_1 = fitted;
		}
		if (!(temperature[i] <= out->temperature_2)) {
			out->temperature_2 = temperature[i];
			out->viscosity_2 = fitted;
		}
	}
	out->slope = r->slope < 0 ? -r->slope : 0;
	/* log10 log10 Z in the middle of the readings, and from there along the line to 1 K. */
	out->intercept = (log(inner / VN_OIL_LN10) + r->mean_y -
			  r->slope * (log(temperature[0] / VN_KELVIN) + r->mean_x)) /
			 VN_OIL_LN10;
	out->greatest_deviation = greatest;
	out->scatter = sqrt(squares / (double)n);
	return isfinite(vn_result(out->scatter, error)) &&
	       isfinite(vn_result(out->intercept, error));
}

static bool slope_valid(const relative_line *r, const double *temperature, const double *viscosity,
			vane_error *error)
{
	if (!isfinite(r->slope))
		return vn_fail(VANE_NOT_IDENTIFIABLE, "temperature", temperature[0],
			       "temperature must hold two different values at least, in K.", error);
	if (r->slope > 0)
		return vn_fail(VANE_NOT_IDENTIFIABLE, "kinematic_viscosity", viscosity[0],
			       "kinematic_viscosity must not rise with temperature, in m2/s.",
			       error);
	return true;
}

static bool fit(const double *temperature, const double *viscosity, int64_t n, int32_t law,
		vane_oil_line *out, double *deviation, vane_error *error)
{
	if (!vn_pointer(out, "line", error) || !vn_count(n, 2, MOST, "readings", error) ||
	    !vn_pointer(temperature, "temperature", error) ||
	    !vn_pointer(viscosity, "kinematic_viscosity", error) ||
	    !vn_count(law, VANE_OIL_WALTHER, VANE_OIL_D341, "law", error) ||
	    !readings_valid(temperature, viscosity, n, error))
		return false;
	const relative_line r = line_through(temperature, viscosity, n, law);
	return slope_valid(&r, temperature, viscosity, error) &&
	       measure(&r, temperature, viscosity, n, law, out, deviation, error);
}

int32_t vane_oil_fit(const double *temperature, const double *kinematic_viscosity, int64_t readings,
		     int32_t law, vane_oil_line *line, double *deviation, vane_error *error)
{
	static const vane_oil_line nothing = {NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, 0};
	vane_error own;
	if (!error)
		error = &own;
	vn_begin(error);
	if (line)
		*line = nothing;
	if (fit(temperature, kinematic_viscosity, readings, law, line, deviation, error))
		return VANE_OK;
	if (line)
		*line = nothing;
	for (int64_t i = 0; deviation && readings <= MOST && i < readings; i++)
		deviation[i] = NAN;
	return error->code;
}
