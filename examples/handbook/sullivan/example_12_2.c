/*
 * Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 12.2: oil warms in a relief
 * valve.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double dp = vane_units_pa_from_psi(1000, NULL);
	const double density = 0.85 * 999;          /* kg/m3 */
	const double specific_heat = 0.42 * 4186.8; /* J/(kg.K) */
	const double book = 8.31;                   /* degrees Fahrenheit */

	vane_error error;
	const double rise = vane_slot_temperature_rise(dp, density, specific_heat, &error);
	const double here = 1.8 * rise;
	printf("Sullivan, Fluid Power, Example 12.2: "
	       "book %.2f F, here %.4f F, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
