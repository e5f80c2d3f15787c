/*
 * Massey and Ward-Smith, Mechanics of Fluids, Example 6.3: pressure and a moving wall both drive
 * oil through a slot.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double gap = 0.18e-3, length = 0.12, dp = 12e3; /* m, m, Pa */
	const double viscosity = 0.5, wall_speed = 5;         /* Pa.s, m/s */
	const double book = 0.00045; /* m2/s: flow for each metre of width */

	vane_error error;
	const double here = vane_slot_flow(1, gap, length, dp, viscosity, wall_speed, &error);
	printf("Massey and Ward-Smith, Mechanics of Fluids, Example 6.3: "
	       "book %.5f m2/s, here %.7f m2/s, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
