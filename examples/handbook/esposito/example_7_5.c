/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 7-5: speed, torque and power of a
 * motor.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double displacement = 82e-6, flow = 6e-4, dp = 70e5;           /* m3, m3/s, Pa */
	const double book_speed = 439, book_torque = 91.4, book_power = 4.2; /* r/min, N.m, kW */

	vane_error error;
	const double speed = flow / displacement;
	const double torque = vane_shaft_ideal_torque(displacement, dp, NULL);
	const double power = 1e-3 * vane_shaft_power(torque, speed, &error);
	const double per_minute = vane_units_rev_per_min_from_rev_per_s(speed, NULL);
	printf("Esposito, Fluid Power with Applications, Example 7-5, speed: "
	       "book %.0f r/min, here %.2f r/min, difference %.1g\n",
	       book_speed, per_minute, per_minute - book_speed);
	printf("Esposito, Fluid Power with Applications, Example 7-5, torque: "
	       "book %.1f N.m, here %.3f N.m, difference %.1g\n",
	       book_torque, torque, torque - book_torque);
	printf("Esposito, Fluid Power with Applications, Example 7-5, power: "
	       "book %.1f kW, here %.3f kW, difference %.1g\n",
	       book_power, power, power - book_power);
	return error.code;
}
