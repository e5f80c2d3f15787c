/*
 * Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., Example 13.3: a clamped plate
 * begins to yield.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double radius = 0.1, thickness = 10e-3, yield = 315e6; /* m, m, Pa */
	const double modulus = 200e9, poisson = 0.29;                /* Pa */
	const double book_pressure = 4.2, book_deflection = 0.36;    /* MPa, mm */

	vane_error error;
	const double pressure = yield / vane_plate_clamped_edge_stress(1, radius, thickness, NULL);
	const double deflection = 1e3 * vane_plate_clamped_deflection(pressure, radius, thickness,
								      modulus, poisson, &error);
	printf("Boresi and Schmidt, Advanced Mechanics of Materials, Example 13.3, pressure: "
	       "book %.1f MPa, here %.3f MPa, difference %.1g\n",
	       book_pressure, 1e-6 * pressure, 1e-6 * pressure - book_pressure);
	printf("Boresi and Schmidt, Advanced Mechanics of Materials, Example 13.3, deflection: "
	       "book %.2f mm, here %.4f mm, difference %.1g\n",
	       book_deflection, deflection, deflection - book_deflection);
	return error.code;
}
