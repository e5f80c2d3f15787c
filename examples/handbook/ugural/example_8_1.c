/*
 * Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.1: pressure that a
 * cylinder bears.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double inner = 0.15, outer = 0.20, stress = 250e6; /* m, m, Pa */
	const double book_inside = 70, book_outside = 54.6875;   /* MPa */

	vane_error error;
	const double inside = 1e-6 * vane_plate_cylinder_inner_pressure(inner, outer, stress, NULL);
	const double outside =
		1e-6 * vane_plate_cylinder_outer_pressure(inner, outer, stress, &error);
	printf("Ugural and Fenster, Advanced Strength, Example 8.1, inside: "
	       "book %.0f MPa, here %.2f MPa, difference %.1g\n",
	       book_inside, inside, inside - book_inside);
	printf("Ugural and Fenster, Advanced Strength, Example 8.1, outside: "
	       "book %.4f MPa, here %.6f MPa, difference %.1g\n",
	       book_outside, outside, outside - book_outside);
	return error.code;
}
