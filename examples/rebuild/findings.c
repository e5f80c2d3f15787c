#include "findings.h"

#include <math.h>
#include <string.h>

static const double service_factor = 1.1;

static int measure_widths(const struct job *job, struct findings *findings, vane_error *error)
{
	const vane_instrument *instrument = &job->instrument;
	vane_width width;
	double sum = 0.0;

	if (vane_clearance_width(job->ring_width.reading, job->ring_width.readings, instrument,
				 &findings->ring, error) ||
	    vane_clearance_width(job->rotor_width.reading, job->rotor_width.readings, instrument,
				 &findings->rotor, error))
		return -1;
	for (int32_t i = 0; i < job->vane_sets; i++) {
		if (vane_clearance_width(job->vane_width[i].reading, job->vane_width[i].readings,
					 instrument, &width, error))
			return -1;
		sum += width.mean;
		if (i == 0 || width.mean < findings->narrowest.mean) {
			findings->narrowest = width;
			findings->narrowest_vane = i + 1;
		}
	}
	findings->mean_width = sum / job->vane_sets;
	return 0;
}

static int judge_widths(const struct job *job, struct findings *findings, vane_error *error)
{
	vane_width_limits *limits = &findings->limits;

	vane_width_limits_default(limits);
	limits->ring_rotor_high = job->ring_rotor_limit;
	limits->ring_vane_high = job->ring_vane_limit;
	limits->ring_least = job->ring_least;
	limits->rotor_least = job->rotor_least;
	limits->vane_least = job->vane_least;
	return vane_clearance_decide(&findings->ring, &findings->rotor, &findings->narrowest,
				     job->same_instrument, limits, &findings->decision, error);
}

static int predict_duty(const struct job *job, struct findings *findings, vane_error *error)
{
	vane_parts at_limit;

	findings->parts = job->parts;
	findings->parts.ring.width = findings->ring.mean;
	findings->parts.rotor_width = findings->rotor.mean;
	findings->parts.vane_width = findings->mean_width;
	at_limit = findings->parts;
	at_limit.rotor_width = findings->ring.mean - job->ring_rotor_limit;
	at_limit.vane_width = findings->ring.mean - job->ring_vane_limit;
	if (vane_parts_gaps_of(&findings->parts, &findings->gaps, error) ||
	    vane_displacement_run(&findings->parts, &findings->displacement, error) ||
	    vane_oil_from_grade(job->oil_grade, job->viscosity_index, &findings->oil, error) ||
	    vane_pump_run(&findings->parts, &findings->oil, &job->duty, &findings->duty, error) ||
	    vane_pump_run(&at_limit, &findings->oil, &job->duty, &findings->duty_at_limit, error))
		return -1;
	findings->cautions = findings->duty.caution | findings->displacement.caution;
	findings->motor_iec =
		vane_shaft_motor_iec(findings->duty.shaft_power, service_factor, error);
	if (error->code)
		return -1;
	findings->motor_nema =
		vane_shaft_motor_nema(findings->duty.shaft_power, service_factor, error);
	return error->code ? -1 : 0;
}

static int hold_cover(const struct job *job, struct findings *findings, vane_error *error)
{
	vane_joint *joint = &findings->joint;

	*joint = job->joint;
	joint->pressure = job->duty.outlet_pressure > 0.0 ? job->duty.outlet_pressure : 0.0;
	joint->stress_area =
		job->thread == JOB_METRIC
			? vane_thread_stress_area(joint->diameter, joint->pitch, error)
			: vane_thread_stress_area_unified(joint->diameter, joint->pitch, error);
	if (error->code ||
	    vane_thread_strength(job->bolt_grade, joint->diameter, &findings->bolt, error))
		return -1;
	joint->proof_stress = findings->bolt.proof;
	return vane_joint_run(joint, &findings->held, error);
}

/* One oil temperature is what the standards ask for: take the one with most readings. */
static void derive_displacement(const struct readings *readings, struct findings *findings)
{
	static const double band = 3.0;
	vane_reading chosen[READINGS_LIMIT];
	int64_t most = 0;
	double temperature = 0.0;

	for (int64_t i = 0; i < readings->count; i++) {
		int64_t count = 0;

		for (int64_t j = 0; j < readings->count; j++)
			count += fabs(readings->item[j].temperature -
				      readings->item[i].temperature) <= band;
		if (count > most) {
			most = count;
			temperature = readings->item[i].temperature;
		}
	}
	most = 0;
	for (int64_t i = 0; i < readings->count; i++)
		if (fabs(readings->item[i].temperature - temperature) <= band)
			chosen[most++] = readings->item[i];
	findings->derived_readings = most;
	findings->derived_temperature = temperature;
	(void)vane_stand_displacement(chosen, most, &findings->derived, &findings->derived_error);
	findings->reference = findings->displacement.selected;
	if (findings->derived_error.code == VANE_OK && findings->derived.displacement > 0.0)
		findings->reference = findings->derived.displacement;
}

/* The fuller law first; if the readings cannot carry it, the plain laminar one. */
static void fit_slip(const struct readings *readings, struct findings *findings)
{
	(void)vane_stand_slip_fit(readings->item, readings->count, &findings->oil,
				  VANE_SLIP_LAMINAR | VANE_SLIP_ORIFICE, &findings->fuller_fit,
				  NULL, &findings->fuller_fit_error);
	(void)vane_stand_slip_fit(readings->item, readings->count, &findings->oil,
				  VANE_SLIP_LAMINAR, &findings->fit, NULL, &findings->fit_error);
}

static void sort_into_groups(const struct readings *readings, struct findings *findings)
{
	for (int64_t i = 0; i < readings->count; i++) {
		const vane_reading *reading = &readings->item[i];
		int chosen = 0;

		while (chosen < findings->groups &&
		       (fabs(reading->speed / findings->group[chosen].speed - 1.0) > 0.03 ||
			fabs(reading->temperature - findings->group[chosen].temperature) > 3.0))
			chosen++;
		if (chosen == GROUPS) {
			findings->at[i].group = -1;
			findings->left_out++;
			continue;
		}
		struct group *group = &findings->group[chosen];

		if (chosen == findings->groups)
			findings->groups++;
		group->speed += (reading->speed - group->speed) / (double)(group->count + 1);
		group->temperature +=
			(reading->temperature - group->temperature) / (double)(group->count + 1);
		group->inlet_pressure += (reading->inlet_pressure - group->inlet_pressure) /
					 (double)(group->count + 1);
		group->count++;
		findings->at[i].group = chosen;
	}
}

static int draw_curves(const struct job *job, double greatest, struct findings *findings,
		       vane_error *error)
{
	vane_performance performance;
	vane_duty duty = job->duty;

	for (int i = 0; i < findings->groups; i++) {
		struct group *group = &findings->group[i];
		double from = group->inlet_pressure > 0.0 ? group->inlet_pressure : 0.0;

		duty.speed = group->speed;
		duty.temperature = group->temperature;
		duty.inlet_pressure = group->inlet_pressure;
		for (int j = 0; j < CURVE; j++) {
			duty.outlet_pressure = from + (greatest - from) * j / (CURVE - 1);
			if (vane_pump_run(&findings->parts, &findings->oil, &duty, &performance,
					  error))
				return -1;
			group->curve_pressure[j] = duty.outlet_pressure;
			group->curve_flow[j] = performance.inlet_flow;
		}
	}
	return 0;
}

static int compare(const struct job *job, const struct readings *readings, double greatest,
		   struct findings *findings, vane_error *error)
{
	double slip[2] = {0.0, 0.0};
	double flow[2] = {0.0, 0.0};
	double speed = 0.0;

	findings->least_inlet_pressure = readings->item[0].inlet_pressure;
	for (int64_t i = 0; i < readings->count; i++) {
		const vane_reading *reading = &readings->item[i];
		struct at_reading *at = &findings->at[i];
		double dp = reading->pressure - reading->inlet_pressure;
		vane_duty duty = job->duty;
		vane_performance performance;

		duty.speed = reading->speed;
		duty.temperature = reading->temperature;
		duty.inlet_pressure = reading->inlet_pressure;
		duty.outlet_pressure = reading->pressure;
		if (vane_pump_run(&findings->parts, &findings->oil, &duty, &performance, error))
			return -1;
		findings->cautions |= performance.caution;
		at->predicted = performance.inlet_flow;
		at->predicted_slip = performance.ideal_flow - performance.inlet_flow;
		at->measured_slip = findings->reference * reading->speed - reading->flow;
		at->volumetric = vane_stand_volumetric_efficiency(reading->flow, reading->speed,
								  findings->reference, NULL);
		at->mechanical = vane_stand_mechanical_efficiency(findings->reference, dp,
								  reading->torque, NULL);
		at->overall = vane_stand_overall_efficiency(reading->flow, dp, reading->torque,
							    reading->speed, NULL);
		findings->greatest_volumetric = fmax(findings->greatest_volumetric, at->volumetric);
		findings->least_inlet_pressure =
			fmin(findings->least_inlet_pressure, reading->inlet_pressure);
		/* At low pressure the slip is smaller than what the flow meter can tell. */
		if (reading->pressure >= 0.5 * greatest) {
			slip[0] += at->measured_slip;
			slip[1] += at->predicted_slip;
			flow[0] += reading->flow;
			flow[1] += at->predicted;
			speed += reading->speed;
			findings->ratio_readings++;
		}
	}
	findings->slip_ratio = slip[0] / slip[1];
	if (findings->derived_error.code == VANE_OK)
		findings->slip_doubt = findings->derived.uncertainty * speed / slip[1];
	findings->flow_ratio = flow[0] / flow[1];
	return 0;
}

int findings_compute(const struct job *job, const struct readings *readings,
		     struct findings *findings, struct complaint *complaint)
{
	vane_error error = {0};
	double greatest = 0.0;

	memset(findings, 0, sizeof *findings);
	for (int64_t i = 0; i < readings->count; i++)
		greatest = fmax(greatest, readings->item[i].pressure);
	if (measure_widths(job, findings, &error) || judge_widths(job, findings, &error) ||
	    predict_duty(job, findings, &error) || hold_cover(job, findings, &error))
		return complain(complaint, "%s: %s: %s", job->path, error.name, error.text);
	derive_displacement(readings, findings);
	fit_slip(readings, findings);
	sort_into_groups(readings, findings);
	if (draw_curves(job, fmax(greatest, job->duty.outlet_pressure), findings, &error) ||
	    compare(job, readings, greatest, findings, &error))
		return complain(complaint, "%s: %s: %s", job->path, error.name, error.text);
	return 0;
}
