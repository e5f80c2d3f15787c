/*
 * Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 7.2: volumetric efficiency of a
 * pump.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double flow = vane_units_m3_per_s_from_us_gal_per_min(52, NULL);
	const double displacement = vane_units_m3_from_in3(3.75, NULL);
	const double speed = vane_units_rev_per_s_from_rev_per_min(3300, NULL);
	const double book = 97.067; /* % */

	vane_error error;
	const double here =
		100 * vane_stand_volumetric_efficiency(flow, speed, displacement, &error);
	printf("Sullivan, Fluid Power, Example 7.2: "
	       "book %.3f %%, here %.5f %%, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
