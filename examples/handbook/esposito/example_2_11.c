/* Esposito, Fluid Power with Applications, 5th ed., Example 2-11: oil gives way under pressure. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double volume = vane_units_m3_from_in3(10, NULL);
	const double dp = vane_units_pa_from_psi(1900, NULL);
	const double bulk_modulus = vane_units_pa_from_psi(250000, NULL);
	const double book = -0.076; /* in3 */

	vane_error error;
	const double change = vane_oil_volume_change(volume, dp, bulk_modulus, &error);
	const double here = vane_units_in3_from_m3(change, NULL);
	printf("Esposito, Fluid Power with Applications, Example 2-11: "
	       "book %.3f in3, here %.5f in3, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
