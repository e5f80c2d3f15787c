#include "diagnose.h"

#include "vane/units.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* What a shop's flow meter and pressure gauge can be trusted to; common practice, no source. */
static const double flow_doubt = 0.03;
static const double slip_doubt = 0.30;
static const double displacement_doubt = 0.02;

static double litres(double flow)
{
	return vane_units_l_per_min_from_m3_per_s(flow, NULL);
}

static void append(char *sentence, const char *words)
{
	size_t used = strlen(sentence);

	(void)snprintf(sentence + used, VERDICT_LENGTH - used, "%s", words);
}

/* How far the slip ratio may be from 1; twice the standard uncertainty covers about 95 %. */
static double agreement(const struct findings *findings)
{
	return fmax(slip_doubt, 2.0 * findings->slip_doubt);
}

/* The worse of the two side clearances decides. */
static int32_t worse_verdict(const vane_decision *decision)
{
	return decision->ring_rotor_verdict > decision->ring_vane_verdict
		       ? decision->ring_rotor_verdict
		       : decision->ring_vane_verdict;
}

static const char *which(const vane_decision *decision, int32_t verdict)
{
	int rotor = decision->ring_rotor_verdict == verdict;
	int vanes = decision->ring_vane_verdict == verdict;

	if (rotor && vanes)
		return "the clearances of ring to rotor and of ring to vanes are";
	return rotor ? "the clearance of ring to rotor is" : "the clearance of ring to vanes is";
}

void diagnose_verdict(const struct job *job, const struct findings *findings, char *sentence)
{
	const vane_decision *decision = &findings->decision;
	int32_t worse = worse_verdict(decision);
	int cover = !findings->held.separated && !findings->held.overloaded;
	int short_flow = findings->flow_ratio < 1.0 - flow_doubt;
	double lost = 1.0 - findings->duty.inlet_flow / findings->duty_at_limit.inlet_flow;
	char words[300];

	sentence[0] = '\0';
	if (worse == VANE_VERDICT_FAILS)
		append(sentence, "Do not put back as it is: ");
	else if (worse == VANE_VERDICT_NOT_PROVEN)
		append(sentence, "Not proven, measure again: ");
	else if (short_flow || !cover)
		append(sentence, "Not yet fit for service: ");
	else
		append(sentence, "Fit for service as measured: ");
	(void)snprintf(words, sizeof words, "%s %s", which(decision, worse),
		       worse == VANE_VERDICT_FAILS        ? "outside the limits"
		       : worse == VANE_VERDICT_NOT_PROVEN ? "too near a limit to tell"
							  : "within the limits");
	append(sentence, words);
	if (lost > 0.005) {
		(void)snprintf(
			words, sizeof words,
			", which costs %.1f %% of the flow at %.0f bar against the same pump "
			"at the limits",
			100.0 * lost, vane_units_bar_from_pa(job->duty.outlet_pressure, NULL));
		append(sentence, words);
	}
	if (isfinite(findings->flow_ratio) && isfinite(findings->slip_ratio)) {
		(void)snprintf(
			words, sizeof words,
			"; in the upper half of the pressures the measured flow is %.1f %% of "
			"the predicted one and the slip %.2f times what the clearances explain",
			100.0 * findings->flow_ratio, findings->slip_ratio);
		append(sentence, words);
	}
	if (findings->slip_ratio > 1.0 + agreement(findings))
		append(sentence, ", so that oil leaks where nothing was measured");
	append(sentence, cover ? "; the cover bolts hold at both ends of their scatter."
			       : "; the cover bolts do not hold over their scatter.");
}

static void flow_item(const struct job *job, const struct readings *readings,
		      const struct findings *findings, struct paper *paper)
{
	int64_t nearest = 0;
	double best = INFINITY;

	for (int64_t i = 0; i < readings->count; i++) {
		const vane_reading *reading = &readings->item[i];
		double distance = hypot(reading->speed / job->duty.speed - 1.0,
					(reading->pressure - job->duty.outlet_pressure) /
						(job->duty.outlet_pressure + 1e5));

		if (distance < best) {
			best = distance;
			nearest = i;
		}
	}
	paper_item(
		paper,
		"Flow: reading %g, the nearest to the duty (%.0f r/min, %.0f bar, %.0f °C), gave "
		"%.2f L/min where these parts are predicted to give %.2f L/min at the same speed, "
		"pressure and temperature: %+.1f %%.",
		readings->label[nearest],
		vane_units_rev_per_min_from_rev_per_s(readings->item[nearest].speed, NULL),
		vane_units_bar_from_pa(readings->item[nearest].pressure, NULL),
		vane_units_degc_from_k(readings->item[nearest].temperature, NULL),
		litres(readings->item[nearest].flow), litres(findings->at[nearest].predicted),
		100.0 * (readings->item[nearest].flow / findings->at[nearest].predicted - 1.0));
}

static void slip_item(const struct findings *findings, struct paper *paper)
{
	double doubt = agreement(findings);
	const char *meaning;

	if (!isfinite(findings->slip_ratio) || !isfinite(doubt))
		meaning = "the ratio cannot be formed";
	else if (findings->slip_ratio > 1.0 + doubt)
		meaning =
			"more oil slips than the measured clearances explain. Look at what was not "
			"measured: scored or dished plates, ring track and vane tips, vanes that "
			"stick "
			"or lift, a plate that does not clamp, a valve or seal that leaks on the "
			"stand, "
			"air in the oil, the flow meter";
	else if (findings->slip_ratio < 1.0 - doubt)
		meaning =
			"less oil slips than the measured clearances would let. Look at the width "
			"measurements, the oil's real grade and temperature, and the flow meter";
	else
		meaning = "the measured clearances explain the slip";
	paper_item(
		paper,
		"Slip: over the %d readings in the upper half of the pressures the measured slip "
		"is %.2f times the predicted one, give or take %.2f for the displacement alone: "
		"%s. (Within %.2f of 1 is taken as agreement: twice that doubt, or 0.30 as common "
		"practice, no source.)",
		(int)findings->ratio_readings, findings->slip_ratio, findings->slip_doubt, meaning,
		doubt);
}

static void displacement_item(const struct findings *findings, struct paper *paper)
{
	double geometric = findings->displacement.selected;
	double other = findings->displacement.roots == VANE_ROOTS_ZONE
			       ? findings->displacement.roots_outlet
			       : findings->displacement.roots_zone;
	double ratio = findings->derived.displacement / geometric;

	if (findings->derived_error.code != VANE_OK) {
		paper_item(
			paper,
			"Displacement: these readings do not give one (%s) Efficiencies and slips "
			"use the geometric displacement.",
			findings->derived_error.text);
		return;
	}
	paper_item(
		paper,
		"Displacement: derived from the readings it is %+.1f %% off the geometric one: %s.",
		100.0 * (ratio - 1.0),
		fabs(ratio - 1.0) <= displacement_doubt ? "they agree"
		: fabs(findings->derived.displacement / other - 1.0) <= displacement_doubt
			? "it agrees with the other root convention; look at how the plates feed "
			  "the roots"
		: ratio < 1.0 ? "the pump does not fill, slip bends with pressure, or the ring "
				"is not the one described"
			      : "the ring is not the one described, or speed or flow is misread");
}

static void oil_item(const struct job *job, const struct readings *readings,
		     const struct findings *findings, struct paper *paper)
{
	double least = INFINITY;
	double most = 0.0;
	vane_oil_state state;

	for (int64_t i = 0; i < readings->count; i++) {
		if (vane_oil_at(&findings->oil, readings->item[i].temperature, &state, NULL))
			continue;
		least = fmin(least, state.kinematic_viscosity);
		most = fmax(most, state.kinematic_viscosity);
	}
	paper_item(
		paper,
		"Oil: ISO VG %g, viscosity index %g, has %.1f mm²/s at the duty's %.0f °C and had "
		"%.1f to %.1f mm²/s on the stand, if it is still the oil it was when new.%s%s",
		job->oil_grade, job->viscosity_index, 1e6 * findings->duty.kinematic_viscosity,
		vane_units_degc_from_k(job->duty.temperature, NULL), 1e6 * least, 1e6 * most,
		job->oil_note[0] != '\0' ? " Note: " : "", job->oil_note);
}

void diagnose_items(const struct job *job, const struct readings *readings,
		    const struct findings *findings, struct paper *paper)
{
	flow_item(job, readings, findings, paper);
	slip_item(findings, paper);
	displacement_item(findings, paper);
	oil_item(job, readings, findings, paper);
	if (findings->greatest_volumetric > 1.005)
		paper_item(paper,
			   "A volumetric efficiency of %.3f is above 1: the displacement, the "
			   "speed or "
			   "the flow meter is wrong.",
			   findings->greatest_volumetric);
	/* 0.2 bar below atmosphere: a limit many suction lines are laid out by. */
	if (findings->least_inlet_pressure < -2e4)
		paper_item(
			paper,
			"The inlet fell to %.2f bar: air comes out of the oil there, and flow lost "
			"to it looks like slip (common practice, no source).",
			vane_units_bar_from_pa(findings->least_inlet_pressure, NULL));
	for (int32_t bit = 1; bit <= VANE_CAUTION_NO_FLOW; bit *= 2)
		if (findings->cautions & bit)
			paper_item(paper, "Caution on the prediction: %s", vane_caution_text(bit));
}
