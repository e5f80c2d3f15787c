/*
 * Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 4.4: Reynolds number in a pipe.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = vane_units_m_from_in(1, NULL);
	const double velocity = vane_units_m_from_in(12 * 40.83, NULL); /* of 40.83 ft/s */
	const double inch = 0.0254, viscosity = 0.05 * inch * inch;     /* m2/s */
	const double book = 9799;

	vane_error error;
	const double flow = velocity * vane_thread_area(diameter, NULL);
	const double here = vane_slot_pipe_reynolds(flow, diameter, viscosity, &error);
	printf("Sullivan, Fluid Power, Example 4.4: "
	       "book %.0f, here %.2f, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
