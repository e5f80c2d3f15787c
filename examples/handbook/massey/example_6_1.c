/*
 * Massey and Ward-Smith, Mechanics of Fluids, Example 6.1: what pressure drives oil through a
 * pipe?
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = 12e-3, velocity = 2.3, viscosity = 0.08; /* m, m/s, Pa.s */
	const double book = 40889;                                       /* Pa for each metre */

	vane_error error;
	const double area = vane_thread_area(diameter, NULL);
	/* Laminar flow is in proportion to the pressure: so much for 1 Pa on 1 m of pipe. */
	const double flow_of_1_pa = vane_slot_pipe_flow(diameter, 1, 1, viscosity, &error);
	const double here = velocity * area / flow_of_1_pa;
	printf("Massey and Ward-Smith, Mechanics of Fluids, Example 6.1: "
	       "book %.0f Pa/m, here %.2f Pa/m, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
