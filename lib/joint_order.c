#include "check.h"
#include "vane/joint.h"

#include <math.h>
#include <string.h>

static const int32_t bolts_most = 1000;

/* Each number followed by the one half the bolts further on. */
static void pair(int32_t half, int32_t *order)
{
	for (int32_t i = half - 1; i >= 0; i--) {
		const int32_t number = order[i];
		order[2 * i] = number;
		order[2 * i + 1] = number + half;
	}
}

int32_t vane_joint_circle_order(int32_t bolts, int32_t *order, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(order, "order", error) || !vn_count(bolts, 1, bolts_most, "bolts", error))
		return VANE_INVALID_ARGUMENT;
	int32_t odd = bolts;
	while (odd % 2 == 0)
		odd /= 2;
	for (int32_t i = 0; i < odd; i++)
		order[i] = i * ((odd - 1) / 2) % odd + 1;
	for (int32_t half = odd; half < bolts; half *= 2)
		pair(half, order);
	return VANE_OK;
}

/* Square of the distance from the middle, in half spacings, of a bolt of the first two edges. */
static int32_t distance(int32_t number, int32_t columns, int32_t rows)
{
	const int32_t x = number <= columns ? number - 1 : columns - 1;
	const int32_t y = number <= columns ? 0 : number - columns;
	const int32_t across = 2 * x - (columns - 1), along = 2 * y - (rows - 1);
	return across * across + along * along;
}

int32_t vane_joint_rectangle_order(int32_t columns, int32_t bolts, int32_t *order,
				   vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(order, "order", error) || !vn_count(bolts, 4, bolts_most, "bolts", error))
		return VANE_INVALID_ARGUMENT;
	memset(order, 0, (size_t)bolts * sizeof *order);
	const int32_t half = bolts / 2;
	if (!vn_count(columns, 2, half, "columns", error))
		return VANE_INVALID_ARGUMENT;
	const int32_t rows = half - columns + 2;
	if (bolts % 2) {
		vn_fail(VANE_NO_SOLUTION, "bolts", bolts,
			"An odd number of bolts does not go round a rectangle in opposite pairs.",
			error);
		return VANE_NO_SOLUTION;
	}
	for (int32_t number = 1; number <= half; number++) {
		const int32_t far = distance(number, columns, rows);
		int32_t at = number - 1;
		for (; at > 0 && distance(order[at - 1], columns, rows) > far; at--)
			order[at] = order[at - 1];
		order[at] = number;
	}
	pair(half, order);
	return VANE_OK;
}

int32_t vane_joint_passes(int32_t passes, double *fraction, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(fraction, "fraction", error) || !vn_count(passes, 3, 20, "passes", error))
		return VANE_INVALID_ARGUMENT;
	for (int32_t i = 1; i < passes; i++)
		fraction[i - 1] = (double)i / (passes - 1);
	fraction[passes - 1] = 1;
	return VANE_OK;
}
