/*
 * Subramanya, 1000 Solved Problems in Fluid Mechanics, Example 7.21: oil between parallel plates.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double gap = 12e-3, length = 25, mean = 1.4, height = 2e-3; /* m, m, m/s, m */
	const double viscosity = 0.105, density = 0.92 * 998;             /* Pa.s, kg/m3 */

	vane_error error;
	const double dp = mean * gap / vane_slot_flow(1, gap, length, 1, viscosity, 0, NULL);
	const double here[] = {
		vane_slot_velocity(gap, length, dp, viscosity, 0, gap / 2, NULL),
		vane_slot_velocity(gap, length, dp, viscosity, 0, height, NULL),
		vane_slot_shear(gap, length, dp, viscosity, 0, 0, NULL),
		vane_slot_shear(gap, length, dp, viscosity, 0, height, &error),
		dp / (density * 9.81),
	};
	const struct {
		const char *what, *unit;
		double value;
		int digits;
	} book[] = {{"greatest speed", "m/s", 2.1, 1},
		    {"speed at 2 mm", "m/s", 1.167, 3},
		    {"shear at the wall", "Pa", 73.5, 1},
		    {"shear at 2 mm", "Pa", 49, 0},
		    {"loss of head", "m", 34, 0}};
	for (int i = 0; i < 5; i++)
		printf("Subramanya, 1000 Solved Problems in Fluid Mechanics, Example 7.21, %s: "
		       "book %.*f %s, here %.5g %s, difference %.1g\n",
		       book[i].what, book[i].digits, book[i].value, book[i].unit, here[i],
		       book[i].unit, here[i] - book[i].value);
	return error.code;
}
