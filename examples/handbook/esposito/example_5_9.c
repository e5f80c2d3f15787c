/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 5-9, from memory: overall efficiency
 * of a pump.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double flow = 0.0015, dp = 70e5, torque = 120; /* m3/s, Pa, N.m */
	const double speed = vane_units_rev_per_s_from_rev_per_min(1000, NULL);
	const double book = 83.6; /* % */

	vane_error error;
	const double here = 100 * vane_stand_overall_efficiency(flow, dp, torque, speed, &error);
	printf("Esposito, Fluid Power with Applications, Example 5-9: "
	       "book %.1f %%, here %.3f %%, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
