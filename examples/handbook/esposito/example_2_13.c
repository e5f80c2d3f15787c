/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 2-13: viscosity from a capillary
 * viscometer.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double time = 250;        /* s */
	const double constant = 0.1e-6; /* m2/s for each second */
	const double book = 25;         /* cSt */

	vane_error error;
	const double viscosity = vane_oil_capillary_viscosity(constant, time, &error);
	const double here = vane_units_cst_from_m2_per_s(viscosity, NULL);
	printf("Esposito, Fluid Power with Applications, Example 2-13: "
	       "book %.0f cSt, here %.2f cSt, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
