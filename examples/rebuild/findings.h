/* Everything the sheet says, computed from a job and its readings. */
#ifndef FINDINGS_H
#define FINDINGS_H

#include "job.h"
#include "readings.h"

#include "vane/displacement.h"

enum { GROUPS = 8, CURVE = 41 };

/* Readings at one speed and one temperature, with the curve predicted for their means. */
struct group {
	double speed;
	double temperature;
	double inlet_pressure;
	double curve_pressure[CURVE];
	double curve_flow[CURVE];
	int64_t count;
};

struct at_reading {
	double predicted; /* Flow predicted at the reading's own speed, pressures, temperature. */
	double predicted_slip; /* Slip and dead-volume compression in that prediction. */
	double measured_slip;  /* Reference displacement times speed less flow. */
	double volumetric;
	double mechanical;
	double overall;
	int group;
};

struct findings {
	vane_width ring;
	vane_width rotor;
	vane_width narrowest;
	vane_width_limits limits;
	vane_decision decision;
	vane_parts parts; /* With the mean widths. */
	vane_parts_gaps gaps;
	vane_displacement displacement;
	vane_oil oil;
	vane_performance duty;
	vane_performance duty_at_limit; /* The same parts with both clearances at their limits. */
	vane_derived derived;
	vane_error derived_error;
	vane_slip_fit fit;
	vane_error fit_error;
	vane_error fuller_fit_error;
	vane_slip_fit fuller_fit;
	vane_thread_class bolt;
	vane_joint joint;
	vane_joint_result held;
	double motor_iec;
	double motor_nema;
	double reference;  /* Displacement that efficiencies and slips are reckoned by. */
	double slip_ratio; /* Measured slip over predicted slip, upper half of the pressures. */
	double slip_doubt; /* Its standard uncertainty from that of the derived displacement. */
	double flow_ratio; /* Measured flow over predicted flow, the same readings. */
	double mean_width; /* Of all vanes. */
	int64_t ratio_readings;
	int64_t derived_readings;
	double derived_temperature;
	double least_inlet_pressure;
	double greatest_volumetric;
	int32_t narrowest_vane; /* Counted from 1. */
	int32_t cautions;
	int32_t groups;
	int32_t left_out; /* Readings in no group, for want of room in the plot. */
	struct group group[GROUPS];
	struct at_reading at[READINGS_LIMIT];
};

/* 0, or -1 with a complaint in the library's own words. */
int findings_compute(const struct job *job, const struct readings *readings,
		     struct findings *findings, struct complaint *complaint);

#endif
