/* De Nevers, Fluid Mechanics for Chemical Engineers, Example 6.13: leakage along a valve stem. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = vane_units_m_from_in(0.25, NULL);
	const double gap = vane_units_m_from_in(0.0001, NULL);
	const double length = vane_units_m_from_in(1, NULL);
	const double dp = vane_units_pa_from_psi(100, NULL);
	const double viscosity = vane_units_pa_s_from_cp(0.6, NULL);
	const double book = 0.27; /* in3/h */

	vane_error error;
	const double flow =
		vane_slot_annulus_flow(diameter, gap, length, 0, dp, viscosity, 0, &error);
	const double here = vane_units_in3_from_m3(3600 * flow, NULL);
	printf("De Nevers, Fluid Mechanics for Chemical Engineers, Example 6.13: "
	       "book %.2f in3/h, here %.4f in3/h, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
