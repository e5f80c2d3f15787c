/*
 * Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., Example 11.2: a closed cylinder
 * grows.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double inner = 0.1, outer = 0.4, pressure = 150e6; /* m, m, Pa */
	const double modulus = 72e9, poisson = 0.33;             /* Pa */
	const double book_axial = 10, book_growth = 0.3003;      /* MPa, mm */

	vane_error error;
	const double axial = vane_plate_cylinder_axial_stress(inner, outer, pressure, 0, NULL);
	const double growth =
		1e3 * vane_plate_cylinder_displacement(inner, outer, pressure, 0, inner, axial,
						       modulus, poisson, &error);
	printf("Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.2, axial stress: "
	       "book %.0f MPa, here %.2f MPa, difference %.1g\n",
	       book_axial, 1e-6 * axial, 1e-6 * axial - book_axial);
	printf("Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.2, radius: "
	       "book %.4f mm, here %.6f mm, difference %.1g\n",
	       book_growth, growth, growth - book_growth);
	return error.code;
}
