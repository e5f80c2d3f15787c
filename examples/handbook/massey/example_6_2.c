/*
 * Massey and Ward-Smith, Mechanics of Fluids, Example 6.2: oil leaves a hydrostatic pad between
 * two discs.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double gap = 1e-3, dp = 15e3, viscosity = 0.6;     /* m, Pa, Pa.s */
	const double inner_radius = 0.025, outer_radius = 0.150; /* m; only their ratio counts */
	const double full_turn = 2 * 3.14159265358979323846;     /* rad */
	const double book = 7.31e-6;                             /* m3/s */

	vane_error error;
	const double here = vane_slot_disc_flow(gap, inner_radius, outer_radius, full_turn, dp,
						viscosity, &error);
	printf("Massey and Ward-Smith, Mechanics of Fluids, Example 6.2: "
	       "book %.2e m3/s, here %.4e m3/s, difference %.1e\n",
	       book, here, here - book);
	return error.code;
}
