/* Massey and Ward-Smith, Mechanics of Fluids, Example 6.4: how fast does a dashpot move? */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = 50e-3, gap = 0.2e-3, length = 0.13; /* m */
	const double dp = 1.4e6, viscosity = 870 * 1e-4;            /* Pa, Pa.s */
	const double book = 0.0065;                                 /* m/s */

	vane_error error;
	/* The piston sweeps its own area; what it drags along of the film comes on top. */
	const double area = vane_thread_area(diameter, NULL);
	const double leak =
		vane_slot_annulus_flow(diameter, gap, length, 0, dp, viscosity, 0, NULL);
	const double drag =
		vane_slot_annulus_flow(diameter, gap, length, 0, 0, viscosity, 1, &error);
	const double here = leak / (area + drag);
	printf("Massey and Ward-Smith, Mechanics of Fluids, Example 6.4: "
	       "book %.4f m/s, here %.6f m/s, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
