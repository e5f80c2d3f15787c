#include "sheet.h"

#include "diagnose.h"
#include "slip_paths.h"

#include "vane/units.h"

#include <math.h>
#include <string.h>

static double micro(double length)
{
	return vane_units_um_from_m(length, NULL);
}

static double bar(double pressure)
{
	return vane_units_bar_from_pa(pressure, NULL);
}

static double litres(double flow)
{
	return vane_units_l_per_min_from_m3_per_s(flow, NULL);
}

static double rpm(double speed)
{
	return vane_units_rev_per_min_from_rev_per_s(speed, NULL);
}

static double celsius(double temperature)
{
	return vane_units_degc_from_k(temperature, NULL);
}

static double cubic(double volume)
{
	return vane_units_cm3_from_m3(volume, NULL);
}

static const char *verdict_word(int32_t verdict)
{
	return verdict == VANE_VERDICT_CONFORMS     ? "conforms"
	       : verdict == VANE_VERDICT_NOT_PROVEN ? "not proven"
						    : "FAILS";
}

static const char *action_word(int32_t action)
{
	return action == VANE_ACTION_REUSE   ? "use again"
	       : action == VANE_ACTION_MATCH ? "match"
					     : "replace";
}

static const char *roots_word(int32_t roots)
{
	return roots == VANE_ROOTS_ZONE ? "roots with the zone" : "roots at the outlet";
}

static void width_row(struct paper *paper, const char *name, const vane_width *width, int action)
{
	paper_cell(paper, "%s", name);
	paper_cell(paper, "%.4f", vane_units_mm_from_m(width->mean, NULL));
	paper_cell(paper, "%.4f", vane_units_mm_from_m(width->least, NULL));
	paper_cell(paper, "%.4f", vane_units_mm_from_m(width->greatest, NULL));
	paper_cell(paper, "%.2f", micro(width->uncertainty));
	paper_cell(paper, "%s", action_word(action));
}

static void gap_row(struct paper *paper, const char *name, const vane_gap *gap, double low,
		    double high, int32_t verdict, double probability)
{
	paper_cell(paper, "%s", name);
	paper_cell(paper, "%.1f", micro(gap->total));
	paper_cell(paper, "%.1f", micro(gap->per_side));
	paper_cell(paper, "%.2f", micro(gap->uncertainty));
	paper_cell(paper, "%.1f..%.1f", micro(low), micro(high));
	paper_cell(paper, "%s", verdict_word(verdict));
	paper_cell(paper, "%.1f %%", 100.0 * probability);
}

static void clearances(const struct job *job, const struct findings *findings, struct paper *paper)
{
	static const char *const widths[] = {"Width, mm", "mean",  "least",
					     "greatest",  "u, µm", "do"};
	static const char *const gaps[] = {"Clearance, µm", "total",   "per side", "u",
					   "limits",        "verdict", "within"};
	const vane_decision *decision = &findings->decision;
	const vane_width_limits *limits = &findings->limits;
	char name[40];

	paper_heading(paper, "Clearances against limits");
	(void)snprintf(name, sizeof name, "Narrowest vane (no. %d)", (int)findings->narrowest_vane);
	paper_table(paper, 6, widths);
	width_row(paper, "Ring", &findings->ring, decision->ring);
	width_row(paper, "Rotor", &findings->rotor, decision->rotor);
	width_row(paper, name, &findings->narrowest, decision->vane);
	paper_table_end(paper);
	paper_table(paper, 7, gaps);
	gap_row(paper, "Ring to rotor", &decision->ring_rotor, limits->ring_rotor_low,
		limits->ring_rotor_high, decision->ring_rotor_verdict,
		decision->ring_rotor_probability);
	gap_row(paper, "Ring to vane", &decision->ring_vane, limits->ring_vane_low,
		limits->ring_vane_high, decision->ring_vane_verdict,
		decision->ring_vane_probability);
	paper_table_end(paper);
	paper_paragraph(
		paper,
		"\"Match\": sound as far as known, but pair it with another part. Limits "
		"are for the total, both sides together; their source: %s. u is the "
		"standard uncertainty; a verdict keeps %.3f u of guard band. \"Within\" is the "
		"probability that the limits are kept. Vane in slot: %.1f µm, both flanks "
		"together. Instrument: %s.",
		job->limits_source, limits->coverage, micro(findings->gaps.slot),
		job->instrument_name);
}

static void displacement(const struct findings *findings, struct paper *paper)
{
	static const char *const head[] = {"Displacement", "cm³/rev", "in³/rev"};
	const vane_displacement *geometric = &findings->displacement;

	paper_heading(paper, "Displacement");
	paper_table(paper, 3, head);
	paper_cell(paper, "Geometric, roots at the outlet%s",
		   geometric->roots == VANE_ROOTS_OUTLET ? " (used)" : "");
	paper_cell(paper, "%.3f", cubic(geometric->roots_outlet));
	paper_cell(paper, "%.4f", vane_units_in3_from_m3(geometric->roots_outlet, NULL));
	paper_cell(paper, "Geometric, roots with the zone%s",
		   geometric->roots == VANE_ROOTS_ZONE ? " (used)" : "");
	paper_cell(paper, "%.3f", cubic(geometric->roots_zone));
	paper_cell(paper, "%.4f", vane_units_in3_from_m3(geometric->roots_zone, NULL));
	if (findings->derived_error.code == VANE_OK) {
		paper_cell(paper, "Derived from the readings");
		paper_cell(paper, "%.3f", cubic(findings->derived.displacement));
		paper_cell(paper, "%.4f",
			   vane_units_in3_from_m3(findings->derived.displacement, NULL));
	}
	paper_table_end(paper);
}

static void value(struct paper *paper, const char *name, const char *text)
{
	paper_cell(paper, "%s", name);
	paper_cell(paper, "%s", text);
}

static const char *file_name(const char *path)
{
	const char *slash = strrchr(path, '/');

	return slash == NULL ? path : slash + 1;
}

#define VALUE(name, ...)                                                                           \
	((void)snprintf(words, sizeof words, __VA_ARGS__), value(paper, name, words))

static void performance(const struct job *job, const struct findings *findings, struct paper *paper)
{
	static const char *const head[] = {"At the duty", "predicted"};
	const vane_performance *duty = &findings->duty;
	char words[PAPER_CELL];

	paper_heading(paper, "Predicted performance at the duty");
	paper_table(paper, 2, head);
	VALUE("Duty", "%.0f r/min, %.0f bar, %.0f °C", rpm(job->duty.speed),
	      bar(job->duty.outlet_pressure), celsius(job->duty.temperature));
	VALUE("Inlet; case", "%.2f bar; %.2f bar", bar(job->duty.inlet_pressure),
	      bar(job->duty.case_pressure));
	VALUE("Ideal flow", "%.2f L/min", litres(duty->ideal_flow));
	VALUE("Slip", "%.3f L/min", litres(duty->slip.total));
	VALUE("Flow as a meter at the inlet pressure shows it", "%.2f L/min (%.2f US gal/min)",
	      litres(duty->inlet_flow),
	      vane_units_us_gal_per_min_from_m3_per_s(duty->inlet_flow, NULL));
	VALUE("Flow at the outlet pressure", "%.2f L/min", litres(duty->outlet_flow));
	VALUE("The same with both clearances at their limits", "%.2f L/min (inlet)",
	      litres(findings->duty_at_limit.inlet_flow));
	VALUE("Volumetric efficiency, inlet basis", "%.4f", duty->volumetric_efficiency_inlet);
	VALUE("Hydraulic-mechanical efficiency", "%.4f", duty->hydromechanical_efficiency);
	VALUE("Overall efficiency", "%.4f", duty->overall_efficiency);
	VALUE("Heat to oil and pump", "%.2f kW", 1e-3 * duty->heat);
	paper_table_end(paper);
}

static void slip(const struct findings *findings, const char *drawing, struct paper *paper)
{
	static const char *const head[] = {"Path", "L/min", "share"};
	struct slip_path path[SLIP_PATHS];

	paper_heading(paper, "Slip by path at the duty");
	slip_paths(&findings->duty.slip, path);
	paper_table(paper, 3, head);
	for (int i = 0; i < SLIP_PATHS; i++) {
		paper_cell(paper, "%s", path[i].name);
		paper_cell(paper, "%.4f", litres(path[i].flow));
		paper_cell(paper, "%.1f %%", 100.0 * path[i].flow / findings->duty.slip.total);
	}
	paper_cell(paper, "Total");
	paper_cell(paper, "%.4f", litres(findings->duty.slip.total));
	paper_cell(paper, "100.0 %%");
	paper_table_end(paper);
	paper_figure(paper, drawing,
		     "Predicted slip by path at the duty, from the measured parts.");
}

static void efficiency(struct paper *paper, double number)
{
	if (isfinite(number) && number > 0.0)
		paper_cell(paper, "%.3f", number);
	else
		paper_cell(paper, "-");
}

static void reduced(const struct readings *readings, const struct findings *findings,
		    const char *drawing, struct paper *paper)
{
	static const char *const head[] = {"No.",       "r/min", "bar",   "°C",   "L/min",
					   "predicted", "off",   "η vol", "η hm", "η all"};

	paper_heading(paper, "Readings reduced");
	paper_figure(paper, drawing,
		     "Flow over pressure: predicted from the measured parts (lines) and measured "
		     "(marks), at each speed and temperature of the readings.");
	if (findings->left_out > 0)
		paper_paragraph(paper,
				"%d readings are in the table only: the plot has room for %d "
				"pairs of speed and temperature.",
				(int)findings->left_out, GROUPS);
	paper_table(paper, 10, head);
	for (int64_t i = 0; i < readings->count; i++) {
		const vane_reading *reading = &readings->item[i];
		const struct at_reading *at = &findings->at[i];

		paper_cell(paper, "%g", readings->label[i]);
		paper_cell(paper, "%.0f", rpm(reading->speed));
		paper_cell(paper, "%.1f", bar(reading->pressure));
		paper_cell(paper, "%.1f", celsius(reading->temperature));
		paper_cell(paper, "%.2f", litres(reading->flow));
		paper_cell(paper, "%.2f", litres(at->predicted));
		paper_cell(paper, "%+.1f %%", 100.0 * (reading->flow / at->predicted - 1.0));
		efficiency(paper, at->volumetric);
		efficiency(paper, at->mechanical);
		efficiency(paper, at->overall);
	}
	paper_table_end(paper);
	paper_paragraph(paper,
			"Efficiencies are volumetric, hydraulic-mechanical and overall, by the %s "
			"displacement of %.3f cm³/rev%s.",
			findings->derived_error.code == VANE_OK ? "derived" : "geometric",
			cubic(findings->reference),
			readings->has_torque ? "" : "; torque was not measured");
}

static void derived(const struct findings *findings, struct paper *paper)
{
	const vane_derived *out = &findings->derived;

	if (findings->derived_error.code != VANE_OK) {
		paper_paragraph(paper, "Derived displacement: none. %s",
				findings->derived_error.text);
		return;
	}
	paper_paragraph(paper,
			"Derived displacement: %.3f cm³/rev, standard uncertainty %.3f from the "
			"scatter alone, %s method, from the %d readings near %.0f °C.%s%s",
			cubic(out->displacement), cubic(out->uncertainty),
			out->method == VANE_DERIVED_TWO_STEP ? "two-step" : "intercept",
			(int)findings->derived_readings, celsius(findings->derived_temperature),
			out->caution & VANE_CAUTION_CURVATURE ? " Caution: " : "",
			out->caution & VANE_CAUTION_CURVATURE
				? vane_caution_text(VANE_CAUTION_CURVATURE)
				: "");
}

static void slip_law(const char *name, const vane_slip_fit *fit, const vane_error *error,
		     struct paper *paper)
{
	char orifice[80] = "";

	if (error->code != VANE_OK) {
		paper_paragraph(paper, "Slip law, %s: not identifiable. %s", name, error->text);
		return;
	}
	if (fit->terms & VANE_SLIP_ORIFICE)
		(void)snprintf(orifice, sizeof orifice, ", orifice %.4f ± %.4f mm²",
			       1e6 * fit->orifice, 1e6 * fit->orifice_uncertainty);
	paper_paragraph(
		paper,
		"Slip law, %s: displacement %.3f ± %.3f cm³/rev, laminar coefficient %.3g ± "
		"%.1g m³%s; residual %.3f L/min, condition number %.1f.%s%s",
		name, cubic(fit->displacement), cubic(fit->displacement_uncertainty), fit->laminar,
		fit->laminar_uncertainty, orifice, litres(fit->residual), fit->condition,
		fit->caution & VANE_CAUTION_ILL_CONDITIONED ? " Do not use these: " : "",
		fit->caution & VANE_CAUTION_ILL_CONDITIONED
			? vane_caution_text(VANE_CAUTION_ILL_CONDITIONED)
			: "");
}

static void drive(const struct findings *findings, struct paper *paper)
{
	static const char *const head[] = {"Drive", "at the duty"};
	const vane_torque *torque = &findings->duty.torque;
	char words[PAPER_CELL];

	paper_heading(paper, "Drive");
	paper_table(paper, 2, head);
	VALUE("Shaft torque", "%.1f N·m (%.1f lbf·ft)", torque->total,
	      vane_units_lbf_ft_from_n_m(torque->total, NULL));
	VALUE("Of that, friction of vanes, faces, films and seal", "%.2f N·m", torque->loss);
	VALUE("Shaft power", "%.2f kW (%.1f hp)", 1e-3 * findings->duty.shaft_power,
	      vane_units_hp_from_w(findings->duty.shaft_power, NULL));
	VALUE("IEC motor, service factor 1.1", "%.4g kW", 1e-3 * findings->motor_iec);
	VALUE("NEMA motor, service factor 1.1", "%.4g hp",
	      vane_units_hp_from_w(findings->motor_nema, NULL));
	paper_table_end(paper);
}

static void bolts(const struct job *job, const struct findings *findings, struct paper *paper)
{
	static const char *const head[] = {"Cover bolts, each", "low", "nominal", "high"};
	const vane_joint_result *held = &findings->held;

	paper_heading(paper, "Cover bolts");
	paper_table(paper, 4, head);
	paper_cell(paper, "Preload, kN");
	paper_cell(paper, "%.1f", 1e-3 * held->preload_low);
	paper_cell(paper, "%.1f", 1e-3 * held->preload);
	paper_cell(paper, "%.1f", 1e-3 * held->preload_high);
	paper_cell(paper, "Preload over proof load");
	paper_cell(paper, "%.0f %%", 100.0 * held->proof_fraction_low);
	paper_cell(paper, "%.0f %%", 100.0 * held->proof_fraction);
	paper_cell(paper, "%.0f %%", 100.0 * held->proof_fraction_high);
	paper_cell(paper, "Clamp left at the duty's pressure, kN");
	paper_cell(paper, "%.1f", 1e-3 * held->clamp_low);
	paper_cell(paper, "%.1f", 1e-3 * held->clamp);
	paper_cell(paper, "-");
	paper_cell(paper, "Bolt load at the duty's pressure, kN");
	paper_cell(paper, "-");
	paper_cell(paper, "%.1f", 1e-3 * held->bolt_load);
	paper_cell(paper, "%.1f", 1e-3 * held->bolt_load_high);
	paper_cell(paper, "Pressure that opens the cover, bar");
	paper_cell(paper, "%.0f", bar(held->separation_pressure_low));
	paper_cell(paper, "%.0f", bar(held->separation_pressure));
	paper_cell(paper, "-");
	paper_table_end(paper);
	paper_paragraph(
		paper,
		"%d bolts, %.1f N·m (%.1f lbf·ft) each, torque ± %.0f %%, %s ± %.0f %%; proof "
		"load %.1f kN each. %s %s",
		(int)job->joint.bolts, job->joint.torque,
		vane_units_lbf_ft_from_n_m(job->joint.torque, NULL),
		100.0 * job->joint.torque_scatter,
		job->joint.nut_factor > 0.0 ? "nut factor" : "friction",
		100.0 * job->joint.friction_scatter, 1e-3 * held->proof_load,
		held->separated ? "AT THE LOW END OF THE SCATTER THE COVER OPENS."
				: "The cover stays closed at the low end of the scatter.",
		held->overloaded ? "AT THE HIGH END A BOLT IS LOADED ABOVE ITS PROOF LOAD."
				 : "The bolts stay below proof load at the high end.");
	if (job->cover_note[0] != '\0')
		paper_paragraph(paper, "Note: %s", job->cover_note);
}

static void cautions(struct paper *paper)
{
	paper_heading(paper, "Cautions");
	paper_item(paper,
		   "Oil under pressure cuts and injects: stop the pump, let the pressure off "
		   "and prove that it is gone before anything is loosened. An injection wound "
		   "is an emergency even if it looks small.");
	paper_item(paper, "Accumulators, hung loads, springs and tightened bolts hold energy after "
			  "the motor stands still: lock out, lower, discharge.");
	paper_item(paper,
		   "A bolted cover that opens under pressure throws oil and metal: nobody in "
		   "front of it on the first run; pressure up in steps.");
	paper_item(paper, "Local codes, the documentation of the parts themselves and licensed "
			  "practice come before every number on this sheet.");
}

int sheet_write(const struct job *job, const struct readings *readings,
		const struct findings *findings, const struct drawings *drawings, FILE *text,
		FILE *html)
{
	char sentence[VERDICT_LENGTH];
	char title[JOB_TEXT + 40];
	struct paper paper;

	(void)snprintf(title, sizeof title, "Rebuild sheet: pump %s", job->pump);
	if (paper_begin(&paper, text, html, title))
		return -1;
	paper_paragraph(&paper, "Site: %s. Date: %s.", job->site, job->date);
	if (job->note[0] != '\0')
		paper_paragraph(&paper, "Note: %s", job->note);
	diagnose_verdict(job, findings, sentence);
	paper_verdict(&paper, sentence);
	clearances(job, findings, &paper);
	displacement(findings, &paper);
	performance(job, findings, &paper);
	slip(findings, drawings->slip, &paper);
	reduced(readings, findings, drawings->flow, &paper);
	derived(findings, &paper);
	slip_law("laminar and orifice", &findings->fuller_fit, &findings->fuller_fit_error, &paper);
	slip_law("laminar only", &findings->fit, &findings->fit_error, &paper);
	drive(findings, &paper);
	bolts(job, findings, &paper);
	paper_heading(&paper, "Diagnosis");
	diagnose_items(job, readings, findings, &paper);
	cautions(&paper);
	paper_heading(&paper, "Provenance");
	paper_paragraph(&paper,
			"Computed by libvane %s from %s and %s; %s; pressures are gauge; plots by "
			"gnuplot. No number here replaces an inspection of the parts.",
			vane_version(), file_name(job->path), file_name(readings->path),
			roots_word(findings->displacement.roots));
	paper_end(&paper);
	return ferror(text) || ferror(html) ? -1 : 0;
}
