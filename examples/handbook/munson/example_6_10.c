/*
 * Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Example 6.10: the same flow through a
 * tube and through an annulus. The answer for the tube is quoted from memory.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double flow = 12e-6, viscosity = 0.0045;    /* m3/s, Pa.s */
	const double tube = 4e-3, rod = 2e-3, gap = 1e-3; /* m: bore, rod in it, gap between them */
	const double book_tube = 8.59, book_annulus = 68.2; /* kPa for each metre */

	vane_error error;
	const double in_tube = 1e-3 * flow / vane_slot_pipe_flow(tube, 1, 1, viscosity, NULL);
	const double in_annulus =
		1e-3 * flow / vane_slot_annulus_exact_flow(rod, gap, 1, 0, 1, viscosity, 0, &error);
	printf("Munson, Fundamentals of Fluid Mechanics, Example 6.10, tube: "
	       "book %.2f kPa/m, here %.4f kPa/m, difference %.1g\n",
	       book_tube, in_tube, in_tube - book_tube);
	printf("Munson, Fundamentals of Fluid Mechanics, Example 6.10, annulus: "
	       "book %.1f kPa/m, here %.3f kPa/m, difference %.1g\n",
	       book_annulus, in_annulus, in_annulus - book_annulus);
	return error.code;
}
