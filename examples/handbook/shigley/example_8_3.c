/*
 * Shigley's Mechanical Engineering Design, 9th ed., Example 8-3(b) and (c), from memory: torque of
 * a bolt.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = vane_units_m_from_in(0.75, NULL);
	const double pitch = vane_units_m_from_in(1.0 / 16, NULL);
	const double mean = vane_units_m_from_in(0.7094, NULL);
	const double preload = vane_units_n_from_lbf(25000, NULL);
	const double friction = 0.15, nut_factor = 0.2;
	const double book_short = 3750, book_long = 3551; /* lbf.in */

	vane_error error;
	const double by_factor = vane_thread_torque_nut_factor(preload, nut_factor, diameter, NULL);
	const double by_friction = vane_thread_torque_exact(preload, pitch, mean, friction,
							    friction, 1.25 * diameter, &error);
	const double shorter = vane_units_lbf_in_from_n_m(by_factor, NULL);
	const double longer = vane_units_lbf_in_from_n_m(by_friction, NULL);
	printf("Shigley, Mechanical Engineering Design, Example 8-3(b): "
	       "book %.0f lbf.in, here %.2f lbf.in, difference %.1g\n",
	       book_short, shorter, shorter - book_short);
	printf("Shigley, Mechanical Engineering Design, Example 8-3(c): "
	       "book %.0f lbf.in, here %.2f lbf.in, difference %.1g\n",
	       book_long, longer, longer - book_long);
	return error.code;
}
