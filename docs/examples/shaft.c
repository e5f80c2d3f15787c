/* Torque of a pump, and what it does to the shaft and its key. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double torque = vane_shaft_ideal_torque(35e-6, 14e6, &error) / 0.92;
	printf("%.1f N.m, %.1f kW at 1500 r/min\n", torque,
	       vane_shaft_power(torque, 25, &error) / 1e3);
	printf("shaft %.0f MPa, key %.0f MPa in shear\n",
	       vane_shaft_torsion_stress(torque, 0.022, 0, &error) / 1e6,
	       vane_shaft_key_shear(torque, 0.022, 0.006, 0.025, &error) / 1e6);
	return error.code;
}
