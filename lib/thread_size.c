#include "check.h"
#include "dimension.h"
#include "vane/thread.h"

#include <math.h>
#include <stddef.h>

enum {
	COARSE = VANE_THREAD_COARSE,
	FINE = VANE_THREAD_FINE,
	FINER = VANE_THREAD_FINER,
	UNC = VANE_THREAD_UNC,
	UNF = VANE_THREAD_UNF,
	UNEF = VANE_THREAD_UNEF,
	UN_8 = VANE_THREAD_8_UN,
	UN_12 = VANE_THREAD_12_UN,
	UN_16 = VANE_THREAD_16_UN
};

static const struct {
	int32_t series;
	double diameter, pitch_or_threads;
} sizes[] = {
	/* clang-format off */
	/* ISO 262:1998, millimetres and millimetres. From memory. */
	{COARSE, 1, 0.25}, {COARSE, 1.1, 0.25}, {COARSE, 1.2, 0.25}, {COARSE, 1.4, 0.3},
	{COARSE, 1.6, 0.35}, {COARSE, 1.8, 0.35}, {COARSE, 2, 0.4}, {COARSE, 2.2, 0.45},
	{COARSE, 2.5, 0.45}, {COARSE, 3, 0.5}, {COARSE, 3.5, 0.6}, {COARSE, 4, 0.7},
	{COARSE, 4.5, 0.75}, {COARSE, 5, 0.8}, {COARSE, 6, 1}, {COARSE, 7, 1}, {COARSE, 8, 1.25},
	{COARSE, 10, 1.5}, {COARSE, 12, 1.75}, {COARSE, 14, 2}, {COARSE, 16, 2}, {COARSE, 18, 2.5},
	{COARSE, 20, 2.5}, {COARSE, 22, 2.5}, {COARSE, 24, 3}, {COARSE, 27, 3}, {COARSE, 30, 3.5},
	{COARSE, 33, 3.5}, {COARSE, 36, 4}, {COARSE, 39, 4}, {COARSE, 42, 4.5}, {COARSE, 45, 4.5},
	{COARSE, 48, 5}, {COARSE, 52, 5}, {COARSE, 56, 5.5}, {COARSE, 60, 5.5}, {COARSE, 64, 6},
	/* As above, first column of fine pitches. */
	{FINE, 8, 1}, {FINE, 10, 1.25}, {FINE, 12, 1.5}, {FINE, 14, 1.5}, {FINE, 16, 1.5},
	{FINE, 18, 2}, {FINE, 20, 2}, {FINE, 22, 2}, {FINE, 24, 2}, {FINE, 27, 2}, {FINE, 30, 2},
	{FINE, 33, 2}, {FINE, 36, 3}, {FINE, 39, 3}, {FINE, 42, 3}, {FINE, 45, 3}, {FINE, 48, 3},
	{FINE, 52, 4}, {FINE, 56, 4}, {FINE, 60, 4}, {FINE, 64, 4},
	/* As above, second column. */
	{FINER, 10, 1}, {FINER, 12, 1.25}, {FINER, 18, 1.5}, {FINER, 20, 1.5}, {FINER, 22, 1.5},
	/* ASME B1.1-2003, inches and threads an inch. From memory. */
	{UNC, 0.073, 64}, {UNC, 0.086, 56}, {UNC, 0.099, 48}, {UNC, 0.112, 40}, {UNC, 0.125, 40},
	{UNC, 0.138, 32}, {UNC, 0.164, 32}, {UNC, 0.19, 24}, {UNC, 0.216, 24}, {UNC, 0.25, 20},
	{UNC, 0.3125, 18}, {UNC, 0.375, 16}, {UNC, 0.4375, 14}, {UNC, 0.5, 13}, {UNC, 0.5625, 12},
	{UNC, 0.625, 11}, {UNC, 0.75, 10}, {UNC, 0.875, 9}, {UNC, 1, 8}, {UNC, 1.125, 7},
	{UNC, 1.25, 7}, {UNC, 1.375, 6}, {UNC, 1.5, 6}, {UNC, 1.75, 5}, {UNC, 2, 4.5},
	{UNC, 2.25, 4.5}, {UNC, 2.5, 4}, {UNC, 2.75, 4}, {UNC, 3, 4}, {UNC, 3.25, 4}, {UNC, 3.5, 4},
	{UNC, 3.75, 4}, {UNC, 4, 4},
	/* As above. */
	{UNF, 0.06, 80}, {UNF, 0.073, 72}, {UNF, 0.086, 64}, {UNF, 0.099, 56}, {UNF, 0.112, 48},
	{UNF, 0.125, 44}, {UNF, 0.138, 40}, {UNF, 0.164, 36}, {UNF, 0.19, 32}, {UNF, 0.216, 28},
	{UNF, 0.25, 28}, {UNF, 0.3125, 24}, {UNF, 0.375, 24}, {UNF, 0.4375, 20}, {UNF, 0.5, 20},
	{UNF, 0.5625, 18}, {UNF, 0.625, 18}, {UNF, 0.75, 16}, {UNF, 0.875, 14}, {UNF, 1, 12},
	{UNF, 1.125, 12}, {UNF, 1.25, 12}, {UNF, 1.375, 12}, {UNF, 1.5, 12},
	/* As above. */
	{UNEF, 0.216, 32}, {UNEF, 0.25, 32}, {UNEF, 0.3125, 32}, {UNEF, 0.375, 32},
	{UNEF, 0.4375, 28}, {UNEF, 0.5, 28}, {UNEF, 0.5625, 24}, {UNEF, 0.625, 24},
	{UNEF, 0.6875, 24}, {UNEF, 0.75, 20}, {UNEF, 0.8125, 20}, {UNEF, 0.875, 20},
	{UNEF, 0.9375, 20}, {UNEF, 1, 20}, {UNEF, 1.0625, 18}, {UNEF, 1.125, 18},
	{UNEF, 1.1875, 18}, {UNEF, 1.25, 18}, {UNEF, 1.3125, 18}, {UNEF, 1.375, 18},
	{UNEF, 1.4375, 18}, {UNEF, 1.5, 18}, {UNEF, 1.5625, 18}, {UNEF, 1.625, 18},
	{UNEF, 1.6875, 18},
	/* As above, constant pitch, the common sizes. */
	{UN_8, 1, 8}, {UN_8, 1.125, 8}, {UN_8, 1.25, 8}, {UN_8, 1.375, 8}, {UN_8, 1.5, 8},
	{UN_8, 1.625, 8}, {UN_8, 1.75, 8}, {UN_8, 1.875, 8}, {UN_8, 2, 8}, {UN_8, 2.25, 8},
	{UN_8, 2.5, 8}, {UN_8, 2.75, 8}, {UN_8, 3, 8}, {UN_8, 3.25, 8}, {UN_8, 3.5, 8},
	{UN_8, 3.75, 8}, {UN_8, 4, 8},
	/* As above. */
	{UN_12, 0.5625, 12}, {UN_12, 0.625, 12}, {UN_12, 0.6875, 12}, {UN_12, 0.75, 12},
	{UN_12, 0.8125, 12}, {UN_12, 0.875, 12}, {UN_12, 0.9375, 12}, {UN_12, 1, 12},
	{UN_12, 1.125, 12}, {UN_12, 1.25, 12}, {UN_12, 1.375, 12}, {UN_12, 1.5, 12},
	{UN_12, 1.625, 12}, {UN_12, 1.75, 12}, {UN_12, 1.875, 12}, {UN_12, 2, 12},
	{UN_12, 2.25, 12}, {UN_12, 2.5, 12}, {UN_12, 2.75, 12}, {UN_12, 3, 12}, {UN_12, 3.25, 12},
	{UN_12, 3.5, 12}, {UN_12, 3.75, 12}, {UN_12, 4, 12},
	/* As above. */
	{UN_16, 0.375, 16}, {UN_16, 0.4375, 16}, {UN_16, 0.5, 16}, {UN_16, 0.5625, 16},
	{UN_16, 0.625, 16}, {UN_16, 0.6875, 16}, {UN_16, 0.75, 16}, {UN_16, 0.8125, 16},
	{UN_16, 0.875, 16}, {UN_16, 0.9375, 16}, {UN_16, 1, 16}, {UN_16, 1.125, 16},
	{UN_16, 1.25, 16}, {UN_16, 1.375, 16}, {UN_16, 1.5, 16}, {UN_16, 1.625, 16},
	{UN_16, 1.75, 16}, {UN_16, 1.875, 16}, {UN_16, 2, 16}, {UN_16, 2.25, 16}, {UN_16, 2.5, 16},
	{UN_16, 2.75, 16}, {UN_16, 3, 16}, {UN_16, 3.25, 16}, {UN_16, 3.5, 16}, {UN_16, 3.75, 16},
	{UN_16, 4, 16},
	/* clang-format on */
};

static bool is_metric(int32_t series)
{
	return series <= VANE_THREAD_FINER;
}

static const double tolerance = 0.03;

int32_t vane_thread_find(int32_t series, double diameter, vane_thread_size *out, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	*out = (vane_thread_size){NAN, NAN, NAN, NAN, NAN, NAN};
	if (!vn_count(series, VANE_THREAD_COARSE, VANE_THREAD_16_UN, "series", error) ||
	    !vn_between(diameter, 0.00097 * VN_METRE, 0.1046 * VN_METRE, "diameter", "m", error))
		return VANE_INVALID_ARGUMENT;

	/* Some sizes lie so close that a diameter is within the tolerance of two. */
	const double millimetre = 1e-3 * VN_METRE, inch = 0.0254 * VN_METRE;
	const bool metric = is_metric(series);
	double nominal = 0, pitch = 0, off = INFINITY;
	for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
		const double size = sizes[i].diameter * (metric ? millimetre : inch);
		const double away = fabs(diameter - size);
		if (sizes[i].series != series || !(away <= tolerance * size) || !(away < off))
			continue;
		off = away;
		nominal = size;
		pitch = metric ? sizes[i].pitch_or_threads * millimetre
			       : inch / sizes[i].pitch_or_threads;
	}
	if (!(nominal > 0)) {
		vn_fail(VANE_NO_SOLUTION, "diameter", diameter,
			"No size of this series lies within 3 % of the diameter.", error);
		return VANE_NO_SOLUTION;
	}
	*out = (vane_thread_size){
		.diameter = nominal,
		.pitch = pitch,
		.pitch_diameter = vane_thread_pitch_diameter(nominal, pitch, NULL),
		.minor_diameter = vane_thread_minor_diameter(nominal, pitch, NULL),
		.root_diameter = metric ? vane_thread_root_diameter(nominal, pitch, NULL)
					: vane_thread_root_diameter_unified(nominal, pitch, NULL),
		.stress_area = metric ? vane_thread_stress_area(nominal, pitch, NULL)
				      : vane_thread_stress_area_unified(nominal, pitch, NULL),
	};
	return VANE_OK;
}
