/*
 * Fox and McDonald, Introduction to Fluid Mechanics, Example 8.2: friction of a journal bearing
 * without load.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = vane_units_m_from_in(3, NULL);
	const double length = vane_units_m_from_in(1.25, NULL);
	const double gap = vane_units_m_from_in(0.0025 / 2, NULL);
	const double foot = 0.3048,
		     viscosity = vane_units_n_from_lbf(2.01e-4, NULL) / (foot * foot);
	const double speed = vane_units_rev_per_s_from_rev_per_min(3600, NULL);
	const double book_torque = 11.2, book_power = 0.64; /* lbf.in, hp */

	vane_error error;
	const double torque =
		vane_slot_petroff_torque(diameter, gap, length, viscosity, speed, NULL);
	const double power = vane_shaft_power(torque, speed, &error);
	const double inch_pounds = vane_units_lbf_in_from_n_m(torque, NULL);
	const double horsepower = vane_units_hp_from_w(power, NULL);
	printf("Fox and McDonald, Introduction to Fluid Mechanics, Example 8.2, torque: "
	       "book %.1f lbf.in, here %.3f lbf.in, difference %.1g\n",
	       book_torque, inch_pounds, inch_pounds - book_torque);
	printf("Fox and McDonald, Introduction to Fluid Mechanics, Example 8.2, power: "
	       "book %.2f hp, here %.4f hp, difference %.1g\n",
	       book_power, horsepower, horsepower - book_power);
	return error.code;
}
