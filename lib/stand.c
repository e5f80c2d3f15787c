#include "vane/stand.h"

#include "check.h"
#include "fit.h"
#include "oil.h"

#include <math.h>
#include <stdlib.h>

enum { MOST_READINGS = 100000, TERMS = 4, CURVATURE_READINGS = 5, LEVELS = 3 };

static const double two_pi = 6.28318530717958647693;
static const double rank_tolerance = 1e-6;

double vane_stand_volumetric_efficiency(double flow, double speed, double displacement,
					vane_error *error)
{
	vn_begin(error);
	if (!vn_least(flow, 0, "flow", "m3/s", error) ||
	    !vn_above(speed, 0, "speed", "1/s", error) ||
	    !vn_above(displacement, 0, "displacement", "m3", error))
		return NAN;
	return vn_result(flow / speed / displacement, error);
}

double vane_stand_mechanical_efficiency(double displacement, double dp, double torque,
					vane_error *error)
{
	vn_begin(error);
	if (!vn_above(displacement, 0, "displacement", "m3", error) ||
	    !vn_least(dp, 0, "dp", "Pa", error) || !vn_above(torque, 0, "torque", "N.m", error))
		return NAN;
	return vn_result(displacement * dp / torque / two_pi, error);
}

double vane_stand_overall_efficiency(double flow, double dp, double torque, double speed,
				     vane_error *error)
{
	vn_begin(error);
	if (!vn_least(flow, 0, "flow", "m3/s", error) || !vn_least(dp, 0, "dp", "Pa", error) ||
	    !vn_above(torque, 0, "torque", "N.m", error) ||
	    !vn_above(speed, 0, "speed", "1/s", error))
		return NAN;
	return vn_result(flow * dp / torque / speed / two_pi, error);
}

double vane_stand_speed_corrected(double flow, double displacement, double speed,
				  double nominal_speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(flow, 0, "flow", "m3/s", error) ||
	    !vn_above(displacement, 0, "displacement", "m3", error) ||
	    !vn_above(speed, 0, "speed", "1/s", error) ||
	    !vn_above(nominal_speed, 0, "nominal_speed", "1/s", error))
		return NAN;
	return vn_result(flow + displacement * (nominal_speed - speed), error);
}

static double difference(const vane_reading *r)
{
	return r->pressure - r->inlet_pressure;
}

static bool reading_ok(const vane_reading *r, vane_error *error)
{
	return vn_above(r->speed, 0, "speed", "1/s", error) &&
	       vn_finite(r->inlet_pressure, "inlet_pressure", "Pa", error) &&
	       vn_least(r->pressure, r->inlet_pressure, "pressure", "Pa", error) &&
	       vn_above(r->temperature, 0, "temperature", "K", error) &&
	       vn_least(r->flow, 0, "flow", "m3/s", error) &&
	       vn_least(r->torque, 0, "torque", "N.m", error);
}

static bool readings_ok(const vane_reading *reading, int64_t readings, vane_error *error)
{
	if (!vn_pointer(reading, "reading", error) ||
	    !vn_count(readings, 1, MOST_READINGS, "readings", error))
		return false;
	for (int64_t i = 0; i < readings; i++) {
		if (!reading_ok(&reading[i], error)) {
			vn_within("reading", error);
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

static int32_t refuse(int32_t code, const char *text, vane_error *error)
{
	vn_fail(code, "readings", 0, text, error);
	return code;
}

static int32_t no_memory(vane_error *error)
{
	return refuse(VANE_NO_MEMORY, "Working memory for the readings could not be had.", error);
}

/* Least and greatest of what a function says of each reading. */
typedef struct range {
	double least, greatest;
} range;

static void widen(range *r, double x)
{
	r->least = fmin(r->least, x);
	r->greatest = fmax(r->greatest, x);
}

static range difference_range(const vane_reading *reading, int64_t readings)
{
	range r = {INFINITY, 0};
	for (int64_t i = 0; i < readings; i++)
		widen(&r, difference(&reading[i]));
	return r;
}

/* One level holds what lies within 2 % of the greatest pressure difference. */
static double level_width(const range *dp)
{
	return 0.02 * dp->greatest;
}

enum bend { STRAIGHT, ROOT, SQUARE };

static int32_t line_fit(const vane_reading *reading, int64_t readings, double greatest,
			enum bend bend, vn_fit *out, vane_error *error)
{
	const int32_t columns = bend == STRAIGHT ? 2 : 3;
	double *x = calloc((size_t)readings * (size_t)(columns + 1), sizeof *x);
	if (!x)
		return no_memory(error);
	double *y = x + readings * columns;
	for (int64_t i = 0; i < readings; i++) {
		const double share = difference(&reading[i]) / greatest;
		double *row = x + i * columns;
		y[i] = reading[i].flow;
		row[0] = reading[i].speed;
		row[1] = -share;
		if (bend != STRAIGHT)
			row[2] = bend == ROOT ? -sqrt(share) : -share * share;
	}
	const int32_t status = vn_fit_linear(x, y, readings, columns, rank_tolerance, out, error);
	free(x);
	return status;
}

/* The third coefficient is the flow that the bend takes at the greatest
 * pressure; below a 1e-9 part of the flow it is rounding. */
static bool bends(const vane_reading *reading, int64_t readings, double greatest, enum bend bend)
{
	vn_fit fit;
	if (line_fit(reading, readings, greatest, bend, &fit, NULL) != VANE_OK)
		return false;
	double flow = 0;
	for (int64_t i = 0; i < readings; i++)
		flow = fmax(flow, reading[i].flow);
	const double size = fabs(fit.coefficient[2]);
	return size > 2 * fit.uncertainty[2] && size > 1e-9 * flow;
}

static int32_t intercept(const vane_reading *reading, int64_t readings, double greatest,
			 vane_derived *out, vane_error *error)
{
	vn_fit fit;
	const int32_t status = line_fit(reading, readings, greatest, STRAIGHT, &fit, error);
	if (status != VANE_OK)
		return status;
	double speed = 0;
	for (int64_t i = 0; i < readings; i++)
		speed += reading[i].speed / (double)readings;
	out->displacement = fit.coefficient[0];
	out->uncertainty = fit.uncertainty[0];
	out->slope = fit.coefficient[1] / greatest;
	out->slope_uncertainty = fit.uncertainty[1] / greatest;
	out->residual = sqrt(fit.square_sum / (double)fit.freedom) / speed;
	out->method = VANE_DERIVED_INTERCEPT;
	out->levels = 0;
	out->degrees_of_freedom = (int32_t)fit.freedom;
	out->caution = 0;
	if (readings >= CURVATURE_READINGS && (bends(reading, readings, greatest, ROOT) ||
					       bends(reading, readings, greatest, SQUARE)))
		out->caution = VANE_CAUTION_CURVATURE;
	return VANE_OK;
}

/* What a pressure level comes to. */
typedef struct level {
	double dp, speed, flow; /* Means. */
	double slope;           /* Of flow against speed. */
} level;

static int by_difference(const void *a, const void *b)
{
	const double x = difference(a), y = difference(b);
	return (x > y) - (x < y);
}

/* Slope of flow against speed from deviations, for speeds that differ. */
static bool level_of(const vane_reading *reading, int64_t readings, level *out)
{
	range speed = {INFINITY, 0};
	*out = (level){0};
	for (int64_t i = 0; i < readings; i++) {
		out->dp += difference(&reading[i]) / (double)readings;
		out->speed += reading[i].speed / (double)readings;
		out->flow += reading[i].flow / (double)readings;
		widen(&speed, reading[i].speed);
	}
	if (!(speed.greatest - speed.least >= 0.1 * out->speed))
		return false;
	double product = 0, square = 0;
	for (int64_t i = 0; i < readings; i++) {
		const double deviation = (reading[i].speed - out->speed) / out->speed;
		product += deviation * (reading[i].flow - out->flow);
		square += deviation * deviation;
	}
	out->slope = product / square / out->speed;
	return true;
}

/* Gathers the levels that have two speeds into the front of `levels`. */
static int64_t level_all(const vane_reading *sorted, int64_t readings, double width, level *levels)
{
	int64_t count = 0;
	for (int64_t first = 0, next; first < readings; first = next) {
		const double limit = difference(&sorted[first]) + width;
		for (next = first + 1; next < readings && difference(&sorted[next]) <= limit;)
			next++;
		count += level_of(&sorted[first], next - first, &levels[count]);
	}
	return count;
}

static int32_t level_fit(const level *levels, int64_t count, double greatest, double displacement,
			 vn_fit *out, vane_error *error)
{
	/* With a displacement: slip through the origin. Without: slopes to zero pressure. */
	const bool slip = !isnan(displacement);
	const int32_t columns = slip ? 1 : 2;
	double *x = malloc((size_t)count * (size_t)(columns + 1) * sizeof *x);
	if (!x)
		return no_memory(error);
	double *y = x + count * columns;
	for (int64_t i = 0; i < count; i++) {
		y[i] = slip ? displacement * levels[i].speed - levels[i].flow : levels[i].slope;
		x[i * columns] = slip ? levels[i].dp / greatest : 1;
		if (!slip)
			x[i * columns + 1] = levels[i].dp / greatest;
	}
	const int32_t status = vn_fit_linear(x, y, count, columns, rank_tolerance, out, error);
	free(x);
	return status;
}

static int32_t two_step(const level *levels, int64_t count, double greatest, vane_derived *out,
			vane_error *error)
{
	vn_fit steps, slip;
	int32_t status = level_fit(levels, count, greatest, NAN, &steps, error);
	if (status != VANE_OK)
		return status;
	out->displacement = steps.coefficient[0];
	status = level_fit(levels, count, greatest, out->displacement, &slip, error);
	if (status != VANE_OK)
		return status;
	out->uncertainty = steps.uncertainty[0];
	out->slope = slip.coefficient[0] / greatest;
	out->slope_uncertainty = slip.uncertainty[0] / greatest;
	out->residual = sqrt(steps.square_sum / (double)steps.freedom);
	out->method = VANE_DERIVED_TWO_STEP;
	out->levels = (int32_t)count;
	out->degrees_of_freedom = (int32_t)steps.freedom;
	out->caution = 0;
	return VANE_OK;
}

/* VANE_NO_SOLUTION: too few levels for it, take the other method. */
static int32_t try_two_step(const vane_reading *reading, int64_t readings, const range *dp,
			    vane_derived *out, vane_error *error)
{
	vane_reading *sorted = malloc((size_t)readings * sizeof *sorted);
	level *levels = malloc((size_t)readings * sizeof *levels);
	int32_t status = VANE_NO_MEMORY;
	if (!sorted || !levels) {
		no_memory(error);
	} else {
		for (int64_t i = 0; i < readings; i++)
			sorted[i] = reading[i];
		qsort(sorted, (size_t)readings, sizeof *sorted, by_difference);
		const int64_t count = level_all(sorted, readings, level_width(dp), levels);
		status = count < LEVELS ? VANE_NO_SOLUTION
					: two_step(levels, count, dp->greatest, out, error);
	}
	free(sorted);
	free(levels);
	return status;
}

static void derived_nothing(vane_derived *out)
{
	*out = (vane_derived){
		.displacement = NAN,
		.uncertainty = NAN,
		.slope = NAN,
		.slope_uncertainty = NAN,
		.residual = NAN,
	};
}

static int32_t derive(const vane_reading *reading, int64_t readings, vane_derived *out,
		      vane_error *error)
{
	const range dp = difference_range(reading, readings);
	if (!isfinite(dp.greatest))
		return refuse(VANE_OUT_OF_RANGE, "A pressure difference is too large for a double.",
			      error);
	if (readings < 3)
		return refuse(
			VANE_NOT_IDENTIFIABLE,
			"A displacement with its uncertainty needs three readings or more, at "
			"different pressures.",
			error);
	if (!(dp.greatest - dp.least > level_width(&dp)))
		return refuse(VANE_NOT_IDENTIFIABLE,
			      "All readings are at one pressure difference: take more, at other "
			      "pressures at the same temperature.",
			      error);
	const int32_t status = try_two_step(reading, readings, &dp, out, error);
	if (status != VANE_NO_SOLUTION)
		return status;
	return intercept(reading, readings, dp.greatest, out, error);
}

int32_t vane_stand_displacement(const vane_reading *reading, int64_t readings, vane_derived *out,
				vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	derived_nothing(out);
	if (!readings_ok(reading, readings, error))
		return VANE_INVALID_ARGUMENT;
	vane_derived result;
	int32_t status = derive(reading, readings, &result, error);
	if (status == VANE_OK &&
	    !isfinite(vn_result(result.displacement + result.uncertainty + result.slope +
					result.slope_uncertainty + result.residual,
				error)))
		status = VANE_OUT_OF_RANGE;
	if (status == VANE_OK)
		*out = result;
	return status;
}

/* How far the plan of readings spreads, to say what it lacks. */
typedef struct stand_plan {
	range speed, dp, viscosity;
} stand_plan;

/* Which columns are fitted: V always, then the terms asked for. */
static int32_t columns_of(int32_t terms, int32_t column[TERMS])
{
	int32_t count = 0;
	column[count++] = 0;
	for (int32_t i = 1; i < TERMS; i++) {
		if (terms & (1 << (i - 1)))
			column[count++] = i;
	}
	return count;
}

static int32_t slip_row(const vane_reading *r, const vane_oil *oil, double row[TERMS],
			stand_plan *plan, vane_error *error)
{
	vane_oil_state state;
	const int32_t status = vn_oil_at(oil, r->temperature, "reading", &state, error);
	if (status != VANE_OK)
		return status;
	const double dp = difference(r);
	const double barus = vane_oil_barus_factor(state.pressure_viscosity, r->inlet_pressure,
						   r->pressure, error);
	row[0] = r->speed;
	row[1] = -dp * barus / state.viscosity;
	row[2] = -sqrt(2 * dp / state.density);
	row[3] = -r->speed * dp;
	for (int32_t i = 0; i < TERMS; i++) {
		if (!isfinite(row[i]))
			return refuse(
				VANE_OUT_OF_RANGE,
				"A pressure, speed or viscosity is too large for the slip law.",
				error);
	}
	widen(&plan->speed, r->speed);
	widen(&plan->viscosity, state.viscosity);
	if (dp > 0)
		widen(&plan->dp, dp);
	return VANE_OK;
}

static int32_t slip_columns(const vane_reading *reading, int64_t readings, const vane_oil *oil,
			    const int32_t *column, int32_t columns, double *x, double *y,
			    stand_plan *plan, vane_error *error)
{
	for (int64_t i = 0; i < readings; i++) {
		double row[TERMS];
		const int32_t status = slip_row(&reading[i], oil, row, plan, error);
		if (status != VANE_OK) {
			vn_at(i, error);
			return status;
		}
		for (int32_t j = 0; j < columns; j++)
			x[i * columns + j] = row[column[j]];
		y[i] = reading[i].flow;
	}
	return VANE_OK;
}

static bool narrower(const range *r, double ratio)
{
	return !(r->greatest >= ratio * r->least);
}

static const char *wanting(const stand_plan *plan, int32_t terms, int64_t freedom)
{
	const bool both = (terms & VANE_SLIP_LAMINAR) && (terms & VANE_SLIP_ORIFICE);
	if (freedom < 1)
		return "Take at least one reading more than there are coefficients, over several "
		       "pressures, temperatures and speeds.";
	if ((terms & VANE_SLIP_COMPRESSIBILITY) && narrower(&plan->speed, 1.5))
		return "Compression cannot be told from slip at one speed: take more readings "
		       "at a second speed, 1.5 times the first or more.";
	if (both && narrower(&plan->viscosity, 2))
		return "Laminar and orifice slip cannot be told apart: take more readings at a "
		       "second temperature that halves the viscosity.";
	if (terms && narrower(&plan->dp, 4))
		return "The pressures are too much alike: take more readings, at three pressures "
		       "or more that span 4 to 1.";
	return "The readings do not vary independently: take every pressure at two speeds "
	       "and two temperatures.";
}

static void slip_nothing(vane_slip_fit *out, double *correlation)
{
	*out = (vane_slip_fit){
		.displacement = NAN,
		.laminar = NAN,
		.orifice = NAN,
		.compressibility = NAN,
		.displacement_uncertainty = NAN,
		.laminar_uncertainty = NAN,
		.orifice_uncertainty = NAN,
		.compressibility_uncertainty = NAN,
		.residual = NAN,
		.condition = NAN,
	};
	for (int32_t i = 0; correlation && i < TERMS * TERMS; i++)
		correlation[i] = NAN;
}

static void slip_result(const vn_fit *fit, const int32_t *column, int32_t terms, vane_slip_fit *out,
			double *correlation)
{
	double value[TERMS] = {0}, uncertainty[TERMS] = {0};
	bool vague = fit->condition > 30;
	for (int32_t i = 0; correlation && i < TERMS * TERMS; i++)
		correlation[i] = 0;
	for (int32_t i = 0; i < fit->columns; i++) {
		const int32_t to = column[i];
		value[to] = fit->coefficient[i];
		uncertainty[to] = fit->uncertainty[i];
		vague = vague || uncertainty[to] > 0.5 * fabs(value[to]);
		for (int32_t j = 0; correlation && j < fit->columns; j++)
			correlation[to * TERMS + column[j]] =
				fit->correlation[i * fit->columns + j];
	}
	*out = (vane_slip_fit){
		.displacement = value[0],
		.laminar = value[1],
		.orifice = value[2],
		.compressibility = value[3],
		.displacement_uncertainty = uncertainty[0],
		.laminar_uncertainty = uncertainty[1],
		.orifice_uncertainty = uncertainty[2],
		.compressibility_uncertainty = uncertainty[3],
		.residual = sqrt(fit->square_sum / (double)fit->freedom),
		.condition = fit->condition,
		.terms = terms,
		.degrees_of_freedom = (int32_t)fit->freedom,
		.caution = vague ? VANE_CAUTION_ILL_CONDITIONED : 0,
	};
}

static int32_t slip_fit(const vane_reading *reading, int64_t readings, const vane_oil *oil,
			int32_t terms, double *memory, vane_slip_fit *out, double *correlation,
			vane_error *error)
{
	int32_t column[TERMS];
	const int32_t columns = columns_of(terms, column);
	const range none = {INFINITY, 0};
	stand_plan plan = {none, none, none};
	vn_fit fit;
	int32_t status = slip_columns(reading, readings, oil, column, columns, memory,
				      memory + readings * columns, &plan, error);
	if (status != VANE_OK)
		return status;
	const int64_t freedom = readings - columns;
	if (freedom < 1)
		return refuse(VANE_NOT_IDENTIFIABLE, wanting(&plan, terms, freedom), error);
	status = vn_fit_linear(memory, memory + readings * columns, readings, columns,
			       rank_tolerance, &fit, error);
	if (status == VANE_NOT_IDENTIFIABLE)
		return refuse(status, wanting(&plan, terms, freedom), error);
	if (status == VANE_OK)
		slip_result(&fit, column, terms, out, correlation);
	return status;
}

int32_t vane_stand_slip_fit(const vane_reading *reading, int64_t readings, const vane_oil *oil,
			    int32_t terms, vane_slip_fit *out, double *correlation,
			    vane_error *error)
{
	vn_begin(error);
	if (correlation)
		for (int i = 0; i < TERMS * TERMS; i++)
			correlation[i] = NAN;
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	slip_nothing(out, correlation);
	if (!readings_ok(reading, readings, error) || !vn_oil_check(oil, error) ||
	    !vn_count(terms, 0, 7, "terms", error))
		return VANE_INVALID_ARGUMENT;
	double *memory = malloc((size_t)readings * (TERMS + 1) * sizeof *memory);
	if (!memory)
		return no_memory(error);
	const int32_t status =
		slip_fit(reading, readings, oil, terms, memory, out, correlation, error);
	free(memory);
	return status;
}
