/*
 * Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., Example 11.1: stresses in a thick
 * cylinder.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double inner = 10e-3, outer = 50e-3, pressure = 300e6; /* m, m, Pa */
	const double book_inner = 325, book_outer = 25;              /* MPa */

	vane_error error;
	const double at_inner = 1e-6 * vane_plate_cylinder_tangential_stress(inner, outer, pressure,
									     0, inner, NULL);
	const double at_outer = 1e-6 * vane_plate_cylinder_tangential_stress(inner, outer, pressure,
									     0, outer, &error);
	printf("Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.1, inside: "
	       "book %.0f MPa, here %.2f MPa, difference %.1g\n",
	       book_inner, at_inner, at_inner - book_inner);
	printf("Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.1, outside: "
	       "book %.0f MPa, here %.2f MPa, difference %.1g\n",
	       book_outer, at_outer, at_outer - book_outer);
	return error.code;
}
