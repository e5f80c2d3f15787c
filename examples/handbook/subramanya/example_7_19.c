/*
 * Subramanya, 1000 Solved Problems in Fluid Mechanics, Example 7.19: water seeps through a crack.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double gap = 0.12e-3, length = 0.5, dp = 5 * 9790; /* m, m, Pa */
	const double viscosity = 998e-6;                         /* Pa.s */
	const double book = 0.848;                               /* L/min for each metre of width */

	vane_error error;
	const double flow = vane_slot_flow(1, gap, length, dp, viscosity, 0, &error);
	const double here = vane_units_l_per_min_from_m3_per_s(flow, NULL);
	printf("Subramanya, 1000 Solved Problems in Fluid Mechanics, Example 7.19: "
	       "book %.3f L/min, here %.5f L/min, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
