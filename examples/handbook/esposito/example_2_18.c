/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 2-18: viscosity from the force on a
 * sliding plate.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double force = 10, gap = 5e-3, area = 1, speed = 1; /* N, m, m2, m/s */
	const double book = 0.05;                                 /* Pa.s */

	vane_error error;
	const double here = vane_oil_plate_viscosity(force, gap, area, speed, &error);
	printf("Esposito, Fluid Power with Applications, Example 2-18: "
	       "book %.2f Pa.s, here %.4f Pa.s, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
