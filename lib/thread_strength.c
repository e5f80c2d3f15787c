#include "check.h"
#include "dimension.h"
#include "vane/thread.h"

#include <math.h>
#include <stddef.h>

static const double inch = 0.0254;                             /* m */
static const double ksi = 4448.2216152605 / (0.0254 * 0.0254); /* Pa */
/* Inch sizes come as products with 0.0254, so a boundary needs room for rounding; no size lies
 * within a micrometre of it. */
static const double slack = 1e-6; /* m */

typedef struct strength {
	int32_t grade;
	double least, most; /* diameters; what is above the row before belongs to a row */
	double proof, yield, tensile;
	double endurance; /* Shigley, 9th ed., table 8-17, from memory; 0 where it has none */
} strength;

static const strength strengths[] = {
	/* ISO 898-1:2013, tables 3 and 4, millimetres and MPa. From memory. */
	{VANE_THREAD_4_6, 1.6, 39, 225, 240, 400, 0},
	{VANE_THREAD_4_8, 1.6, 39, 310, 340, 420, 0},
	{VANE_THREAD_5_6, 1.6, 39, 280, 300, 500, 0},
	{VANE_THREAD_5_8, 1.6, 39, 380, 420, 520, 0},
	{VANE_THREAD_6_8, 1.6, 39, 440, 480, 600, 0},
	{VANE_THREAD_8_8, 1.6, 16, 580, 640, 800, 129},
	{VANE_THREAD_8_8, 16, 39, 600, 660, 830, 129},
	{VANE_THREAD_9_8, 1.6, 16, 650, 720, 900, 140},
	{VANE_THREAD_10_9, 1.6, 39, 830, 940, 1040, 162},
	{VANE_THREAD_12_9, 1.6, 39, 970, 1100, 1220, 190},
	/* SAE J429 and ASTM, inches and ksi: Shigley and Mischke, 5th ed., p. 341. */
	{VANE_THREAD_SAE_1, 0.25, 1.5, 33, 36, 60, 0},
	{VANE_THREAD_SAE_2, 0.25, 0.75, 55, 57, 74, 0},
	{VANE_THREAD_SAE_2, 0.75, 1.5, 33, 36, 60, 0},
	{VANE_THREAD_SAE_4, 0.25, 1.5, 65, 100, 115, 0},
	{VANE_THREAD_SAE_5, 0.25, 1, 85, 92, 120, 18.6},
	{VANE_THREAD_SAE_5, 1, 1.5, 74, 81, 105, 16.3},
	{VANE_THREAD_SAE_5_2, 0.25, 1, 85, 92, 120, 0},
	{VANE_THREAD_SAE_7, 0.25, 1.5, 105, 115, 133, 20.6},
	{VANE_THREAD_SAE_8, 0.25, 1.5, 120, 130, 150, 23.2},
	{VANE_THREAD_SAE_8_2, 0.25, 1, 120, 130, 150, 0},
	{VANE_THREAD_A307, 0.25, 1.5, 33, 36, 60, 0},
	{VANE_THREAD_A325, 0.5, 1, 85, 92, 120, 0},
	{VANE_THREAD_A325, 1, 1.5, 74, 81, 105, 0},
	{VANE_THREAD_A354_BC, 0.25, 2.5, 105, 109, 125, 0},
	{VANE_THREAD_A354_BD, 0.25, 2.5, 120, 130, 150, 0},
	{VANE_THREAD_A449, 0.25, 1, 85, 92, 120, 0},
	{VANE_THREAD_A449, 1, 1.5, 74, 81, 105, 0},
	{VANE_THREAD_A449, 1.5, 3, 55, 58, 90, 0},
	{VANE_THREAD_A490, 0.5, 1.5, 120, 130, 150, 0},
	{VANE_THREAD_A193_B7, 0.25, 2.5, 105, 105, 125, 0},
	/* From memory. */
	{VANE_THREAD_A574, 0.25, 0.5, 140, 162, 180, 0},
	{VANE_THREAD_A574, 0.5, 1.5, 135, 153, 170, 0},
};

static bool is_metric(int32_t grade)
{
	return grade <= VANE_THREAD_12_9 || (grade >= VANE_THREAD_4_6 && grade <= VANE_THREAD_9_8);
}

/* The row of a grade and diameter, or NULL. */
static const strength *find(int32_t grade, double diameter)
{
	const double unit = (is_metric(grade) ? 1e-3 : inch) * VN_METRE, room = slack * VN_METRE;
	for (size_t i = 0; i < sizeof strengths / sizeof *strengths; i++) {
		const strength *row = &strengths[i];
		if (row->grade != grade)
			continue;
		/* Rows of a grade follow each other upward, and the first one holds its limit. */
		if (diameter < row->least * unit - room)
			return NULL;
		if (diameter <= row->most * unit + room)
			return row;
	}
	return NULL;
}

int32_t vane_thread_strength(int32_t grade, double diameter, vane_thread_class *out,
			     vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_thread_class){NAN, NAN, NAN, NAN};
	if (!vn_count(grade, VANE_THREAD_8_8, VANE_THREAD_A574, "grade", error) ||
	    !vn_between(diameter, 0.0016 * VN_METRE, 0.0762 * VN_METRE, "diameter", "m", error))
		return VANE_INVALID_ARGUMENT;
	const strength *row = find(grade, diameter);
	if (!row) {
		vn_fail(VANE_NO_SOLUTION, "diameter", diameter,
			"The grade has no strengths for bolts of this diameter.", error);
		return VANE_NO_SOLUTION;
	}
	const double unit = (is_metric(grade) ? 1e6 : ksi) * VN_PASCAL;
	*out = (vane_thread_class){
		.proof = row->proof * unit,
		.yield = row->yield * unit,
		.tensile = row->tensile * unit,
		.endurance = row->endurance * unit,
	};
	return VANE_OK;
}

/* VDI 2230 part 1: 0.85 (150 mm / d + 45) MPa. */
static double rolled(double diameter)
{
	return 0.85e6 * VN_PASCAL * (0.15 * VN_METRE / diameter + 45);
}

double vane_thread_endurance_rolled(double diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(diameter, 0.004 * VN_METRE, 0.04 * VN_METRE, "diameter", "m", error))
		return NAN;
	return vn_result(rolled(diameter), error);
}

double vane_thread_endurance_rolled_after(double diameter, double preload_fraction,
					  vane_error *error)
{
	vn_begin(error);
	if (!vn_between(diameter, 0.004 * VN_METRE, 0.04 * VN_METRE, "diameter", "m", error) ||
	    !vn_between(preload_fraction, 0, 1, "preload_fraction", "", error))
		return NAN;
	return vn_result((2 - preload_fraction) * rolled(diameter), error);
}
