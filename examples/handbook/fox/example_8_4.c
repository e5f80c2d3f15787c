/*
 * Fox and McDonald, Introduction to Fluid Mechanics, Example 8.4: viscosity from the flow of a
 * capillary.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = 0.5e-3, length = 1, dp = 1e6; /* m, m, Pa */
	const double flow = 880e-9;                           /* m3/s */
	const double book = 0.00174;                          /* Pa.s */

	vane_error error;
	const double flow_of_1_pa_s = vane_slot_pipe_flow(diameter, length, dp, 1, &error);
	const double here = flow_of_1_pa_s / flow;
	printf("Fox and McDonald, Introduction to Fluid Mechanics, Example 8.4: "
	       "book %.5f Pa.s, here %.7f Pa.s, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
