/*
 * Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 14.3: a pump that leaks drives
 * a motor.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double pump = vane_units_m3_from_in3(0.75, NULL);
	const double motor = vane_units_m3_from_in3(0.57, NULL);
	const double speed = vane_units_rev_per_s_from_rev_per_min(1200, NULL);
	const double leak = vane_units_m3_per_s_from_us_gal_per_min(0.5, NULL);
	const double book_flow = 3.4, book_speed = 1376.3, book_efficiency = 87.17;

	vane_error error;
	const double flow = pump * speed - leak;
	const double gallons = vane_units_us_gal_per_min_from_m3_per_s(flow, NULL);
	const double motor_speed = vane_units_rev_per_min_from_rev_per_s(flow / motor, NULL);
	const double efficiency = 100 * vane_stand_volumetric_efficiency(flow, speed, pump, &error);
	printf("Sullivan, Fluid Power, Example 14.3, flow: "
	       "book %.1f gal/min, here %.3f gal/min, difference %.1g\n",
	       book_flow, gallons, gallons - book_flow);
	printf("Sullivan, Fluid Power, Example 14.3, speed of the motor: "
	       "book %.1f r/min, here %.3f r/min, difference %.1g\n",
	       book_speed, motor_speed, motor_speed - book_speed);
	printf("Sullivan, Fluid Power, Example 14.3, volumetric efficiency: "
	       "book %.2f %%, here %.4f %%, difference %.1g\n",
	       book_efficiency, efficiency, efficiency - book_efficiency);
	return error.code;
}
