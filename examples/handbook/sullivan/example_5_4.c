/*
 * Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 5.4: coefficient of an orifice.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double inch = 0.0254, area = 3.14 * inch * inch; /* m, m2 */
	const double flow = vane_units_m3_per_s_from_us_gal_per_min(1000, NULL);
	const double dp = vane_units_pa_from_psi(120, NULL);
	const double density = 0.85 * 1000; /* kg/m3 */
	const double book = 0.7;

	vane_error error;
	const double here = vane_slot_discharge_coefficient(area, flow, dp, density, &error);
	printf("Sullivan, Fluid Power, Example 5.4: "
	       "book %.1f, here %.3f, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
