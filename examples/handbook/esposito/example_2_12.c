/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 2-12: viscosity from Saybolt seconds,
 * by the rule of handbooks.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double seconds = 230;
	const double book = 50; /* cSt */

	vane_error error;
	const double viscosity = vane_oil_saybolt_handbook(seconds, &error);
	const double here = vane_units_cst_from_m2_per_s(viscosity, NULL);
	printf("Esposito, Fluid Power with Applications, Example 2-12: "
	       "book %.0f cSt, here %.2f cSt, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
