#include "vane/clearance.h"

#include "check.h"
#include "dimension.h"

#include <math.h>

enum { MOST_READINGS = 100000 };

#define HALF_THOU (12.7e-6 * VN_METRE)

static int32_t failure(vane_error *error)
{
	/* Without a record the code is lost, and an input is the likelier cause. */
	return error ? error->code : VANE_INVALID_ARGUMENT;
}

static bool instrument_ok(const vane_instrument *instrument, vane_error *error)
{
	if (vn_least(instrument->error_limit, 0, "error_limit", "m", error) &&
	    vn_least(instrument->repeatability, 0, "repeatability", "m", error) &&
	    vn_least(instrument->resolution, 0, "resolution", "m", error) &&
	    vn_least(instrument->temperature_range, 0, "temperature_range", "K", error) &&
	    vn_least(instrument->expansion, 0, "expansion", "1/K", error))
		return true;
	vn_within("instrument", error);
	return false;
}

static bool width_ok(const vane_width *width, const char *record, vane_error *error)
{
	if (vn_above(width->mean, 0, "mean", "m", error) &&
	    vn_least(width->uncertainty, 0, "uncertainty", "m", error) &&
	    vn_between(width->systematic, 0, width->uncertainty, "systematic", "m", error) &&
	    vn_least(width->spread, 0, "spread", "m", error) &&
	    vn_above(width->least, 0, "least", "m", error) &&
	    vn_above(width->greatest, 0, "greatest", "m", error))
		return true;
	vn_within(record, error);
	return false;
}

static void width_nothing(vane_width *out)
{
	*out = (vane_width){NAN, NAN, NAN, NAN, NAN, NAN};
}

static void gap_nothing(vane_gap *out)
{
	*out = (vane_gap){NAN, NAN, NAN, NAN};
}

static bool readings_ok(const double *reading, int64_t readings, vane_error *error)
{
	for (int64_t i = 0; i < readings; i++) {
		if (!vn_above(reading[i], 0, "reading", "m", error)) {
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

/* Deviations from the first reading are exact or nearly so, the sum is not. */
static void summarise(const double *reading, int64_t readings, vane_width *out)
{
	const double first = reading[0];
	double sum = 0;
	out->least = out->greatest = first;
	for (int64_t i = 1; i < readings; i++) {
		sum += reading[i] - first;
		out->least = fmin(out->least, reading[i]);
		out->greatest = fmax(out->greatest, reading[i]);
	}
	const double shift = sum / (double)readings;
	double square = 0;
	for (int64_t i = 0; i < readings; i++) {
		const double deviation = reading[i] - first - shift;
		square += deviation * deviation;
	}
	out->mean = first + shift;
	out->spread = readings > 1 ? sqrt(square / (double)(readings - 1)) : 0;
}

int32_t vane_clearance_width(const double *reading, int64_t readings,
			     const vane_instrument *instrument, vane_width *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	width_nothing(out);
	if (!vn_pointer(reading, "reading", error) ||
	    !vn_count(readings, 1, MOST_READINGS, "readings", error) ||
	    !vn_pointer(instrument, "instrument", error) || !instrument_ok(instrument, error) ||
	    !readings_ok(reading, readings, error))
		return VANE_INVALID_ARGUMENT;
	vane_width width;
	summarise(reading, readings, &width);
	const double random =
		fmax(instrument->repeatability, width.spread) / sqrt((double)readings);
	const double thermal = width.mean * instrument->expansion * instrument->temperature_range;
	width.systematic = instrument->error_limit / sqrt(3);
	width.uncertainty = hypot(hypot(random, width.systematic),
				  hypot(instrument->resolution / sqrt(12), thermal / sqrt(3)));
	if (!isfinite(vn_result(width.uncertainty + width.mean, error)))
		return VANE_OUT_OF_RANGE;
	/* hypot may round below its larger argument's exact value. */
	width.uncertainty = fmax(width.uncertainty, width.systematic);
	*out = width;
	return VANE_OK;
}

static void between(const vane_width *outer, const vane_width *inner, int32_t same_instrument,
		    vane_gap *out)
{
	const double so = same_instrument ? outer->systematic : 0;
	const double si = same_instrument ? inner->systematic : 0;
	/* u^2 - s^2 as a product: the systematic part may be nearly all of u. */
	const double own_outer = sqrt(outer->uncertainty - so) * sqrt(outer->uncertainty + so);
	const double own_inner = sqrt(inner->uncertainty - si) * sqrt(inner->uncertainty + si);
	out->total = outer->mean - inner->mean;
	out->per_side = out->total / 2;
	out->uncertainty = hypot(hypot(own_outer, own_inner), so - si);
	out->correlation =
		so > 0 && si > 0 ? so / outer->uncertainty * (si / inner->uncertainty) : 0;
}

int32_t vane_clearance_between(const vane_width *outer, const vane_width *inner,
			       int32_t same_instrument, vane_gap *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	gap_nothing(out);
	if (!vn_pointer(outer, "outer", error) || !vn_pointer(inner, "inner", error) ||
	    !width_ok(outer, "outer", error) || !width_ok(inner, "inner", error) ||
	    !vn_count(same_instrument, 0, 1, "same_instrument", error))
		return VANE_INVALID_ARGUMENT;
	vane_gap gap;
	between(outer, inner, same_instrument, &gap);
	if (!isfinite(vn_result(gap.uncertainty, error)))
		return VANE_OUT_OF_RANGE;
	*out = gap;
	return VANE_OK;
}

double vane_clearance_thermal(double outer, double inner, double outer_expansion,
			      double inner_expansion, double outer_rise, double inner_rise,
			      vane_error *error)
{
	vn_begin(error);
	if (!vn_above(outer, 0, "outer", "m", error) || !vn_above(inner, 0, "inner", "m", error) ||
	    !vn_least(outer_expansion, 0, "outer_expansion", "1/K", error) ||
	    !vn_least(inner_expansion, 0, "inner_expansion", "1/K", error) ||
	    !vn_finite(outer_rise, "outer_rise", "K", error) ||
	    !vn_finite(inner_rise, "inner_rise", "K", error))
		return NAN;
	const double outer_growth = outer * (outer_expansion * outer_rise);
	const double inner_growth = inner * (inner_expansion * inner_rise);
	return vn_result((outer - inner) + (outer_growth - inner_growth), error);
}

void vane_width_limits_default(vane_width_limits *limits)
{
	if (limits)
		*limits = (vane_width_limits){.ring_rotor_high = HALF_THOU,
					      .ring_vane_high = HALF_THOU,
					      .coverage = 1.645};
}

static bool width_limits_ok(const vane_width_limits *limits, vane_error *error)
{
	if (vn_finite(limits->ring_rotor_low, "ring_rotor_low", "m", error) &&
	    vn_above(limits->ring_rotor_high, limits->ring_rotor_low, "ring_rotor_high", "m",
		     error) &&
	    vn_finite(limits->ring_vane_low, "ring_vane_low", "m", error) &&
	    vn_above(limits->ring_vane_high, limits->ring_vane_low, "ring_vane_high", "m", error) &&
	    vn_least(limits->ring_least, 0, "ring_least", "m", error) &&
	    vn_least(limits->rotor_least, 0, "rotor_least", "m", error) &&
	    vn_least(limits->vane_least, 0, "vane_least", "m", error) &&
	    vn_least(limits->coverage, 0, "coverage", "", error))
		return true;
	vn_within("limits", error);
	return false;
}

static bool worn_out(const vane_width *width, double least, double coverage)
{
	return width->mean < least - coverage * width->uncertainty;
}

static void decide(const vane_width *ring, const vane_width *rotor, const vane_width *vane,
		   const vane_width_limits *limits, vane_decision *out)
{
	const bool rotor_fits = out->ring_rotor_verdict == VANE_VERDICT_CONFORMS;
	const bool vane_fits = out->ring_vane_verdict == VANE_VERDICT_CONFORMS;
	const bool ring_stays = !worn_out(ring, limits->ring_least, limits->coverage);

	out->ring = !ring_stays               ? VANE_ACTION_REPLACE
		    : rotor_fits || vane_fits ? VANE_ACTION_REUSE
					      : VANE_ACTION_MATCH;
	out->rotor = worn_out(rotor, limits->rotor_least, limits->coverage) ? VANE_ACTION_REPLACE
		     : ring_stays && rotor_fits                             ? VANE_ACTION_REUSE
									    : VANE_ACTION_MATCH;
	out->vane = worn_out(vane, limits->vane_least, limits->coverage) ? VANE_ACTION_REPLACE
		    : ring_stays && vane_fits                            ? VANE_ACTION_REUSE
									 : VANE_ACTION_MATCH;
}

int32_t vane_clearance_decide(const vane_width *ring, const vane_width *rotor,
			      const vane_width *vane, int32_t same_instrument,
			      const vane_width_limits *limits, vane_decision *out,
			      vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	vane_decision result = {0};
	gap_nothing(&result.ring_rotor);
	gap_nothing(&result.ring_vane);
	result.ring_rotor_probability = result.ring_vane_probability = NAN;
	*out = result;
	if (!vn_pointer(ring, "ring", error) || !vn_pointer(rotor, "rotor", error) ||
	    !vn_pointer(vane, "vane", error) || !vn_pointer(limits, "limits", error) ||
	    !width_ok(ring, "ring", error) || !width_ok(rotor, "rotor", error) ||
	    !width_ok(vane, "vane", error) ||
	    !vn_count(same_instrument, 0, 1, "same_instrument", error) ||
	    !width_limits_ok(limits, error))
		return VANE_INVALID_ARGUMENT;
	vane_error local;
	vane_error *const why = error ? error : &local;
	between(ring, rotor, same_instrument, &result.ring_rotor);
	between(ring, vane, same_instrument, &result.ring_vane);
	if (!isfinite(vn_result(result.ring_rotor.uncertainty, error)) ||
	    !isfinite(vn_result(result.ring_vane.uncertainty, error)))
		return VANE_OUT_OF_RANGE;
	if (vane_measure_verdict(result.ring_rotor.total, result.ring_rotor.uncertainty,
				 limits->ring_rotor_low, limits->ring_rotor_high, limits->coverage,
				 &result.ring_rotor_verdict, &result.ring_rotor_probability,
				 why) != VANE_OK) {
		vn_within("ring_rotor", why);
		return failure(why);
	}
	if (vane_measure_verdict(result.ring_vane.total, result.ring_vane.uncertainty,
				 limits->ring_vane_low, limits->ring_vane_high, limits->coverage,
				 &result.ring_vane_verdict, &result.ring_vane_probability,
				 why) != VANE_OK) {
		vn_within("ring_vane", why);
		return failure(why);
	}
	decide(ring, rotor, vane, limits, &result);
	*out = result;
	return VANE_OK;
}
