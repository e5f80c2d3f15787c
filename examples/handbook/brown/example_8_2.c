/*
 * Brown, Marks' Calculations for Machine Design (2005), chapter 8, Example 2: stiffness of clamped
 * parts.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double inch = 0.0254, diameter = 0.5 * inch, thickness = 0.797 * inch; /* m */
	const double modulus = vane_units_pa_from_psi(30e6, NULL);
	const double half_angle = vane_units_rad_from_deg(30, NULL);
	const double lb_per_in = vane_units_n_from_lbf(1, NULL) / inch;
	const double second = 1.42e7 * lb_per_in, third = 2.69e8 * lb_per_in;
	const double book_first = 2.74e7, book_all = 9.04e6; /* lbf/in */

	vane_error error;
	const double first = vane_joint_frustum_stiffness(modulus, diameter, 1.5 * diameter,
							  thickness, half_angle, NULL);
	const double two = vane_joint_stiffness_series(first, second, NULL);
	const double all = vane_joint_stiffness_series(two, third, &error);
	printf("Brown, Marks' Calculations for Machine Design, Example 8-2, first frustum: "
	       "book %.2e lbf/in, here %.4e lbf/in, difference %.1g\n",
	       book_first, first / lb_per_in, first / lb_per_in - book_first);
	printf("Brown, Marks' Calculations for Machine Design, Example 8-2, all three: "
	       "book %.2e lbf/in, here %.4e lbf/in, difference %.1g\n",
	       book_all, all / lb_per_in, all / lb_per_in - book_all);
	return error.code;
}
