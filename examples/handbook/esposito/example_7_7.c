/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 7-7: the motor of a hydrostatic
 * transmission.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double pump = 82e-6, pump_speed = 500, motor_speed = 400; /* m3, r/min, r/min */
	const double pump_volumetric = 0.82, motor_volumetric = 0.92, motor_mechanical = 0.90;
	const double dp = 70e5;                                    /* Pa */
	const double book_displacement = 77.3, book_torque = 77.5; /* cm3, N.m */

	vane_error error;
	const double flow = pump_volumetric * pump * pump_speed;
	const double motor = flow * motor_volumetric / motor_speed;
	const double torque = motor_mechanical * vane_shaft_ideal_torque(motor, dp, &error);
	const double cm3 = vane_units_cm3_from_m3(motor, NULL);
	printf("Esposito, Fluid Power with Applications, Example 7-7, displacement: "
	       "book %.1f cm3, here %.3f cm3, difference %.1g\n",
	       book_displacement, cm3, cm3 - book_displacement);
	printf("Esposito, Fluid Power with Applications, Example 7-7, torque: "
	       "book %.1f N.m, here %.3f N.m, difference %.1g\n",
	       book_torque, torque, torque - book_torque);
	return error.code;
}
