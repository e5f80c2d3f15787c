/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 7-1: displacement and pressure of a
 * rotary vane actuator.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double rotor = vane_units_m_from_in(0.5, NULL);
	const double vane = vane_units_m_from_in(1.5, NULL);
	const double length = vane_units_m_from_in(1, NULL);
	const double torque = vane_units_n_m_from_lbf_in(1000, NULL);
	const double book_displacement = 6.2832, book_pressure = 1000; /* in3, psi */

	vane_error error;
	/* A balanced pump fills its crescents twice a turn; the actuator has its space once. */
	const double displacement = vane_displacement_roots_zone(vane, rotor, length, NULL) / 2;
	const double torque_of_1_pa = vane_shaft_ideal_torque(displacement, 1, &error);
	const double cubic_inches = vane_units_in3_from_m3(displacement, NULL);
	const double psi = vane_units_psi_from_pa(torque / torque_of_1_pa, NULL);
	printf("Esposito, Fluid Power with Applications, Example 7-1, displacement: "
	       "book %.4f in3, here %.6f in3, difference %.1g\n",
	       book_displacement, cubic_inches, cubic_inches - book_displacement);
	printf("Esposito, Fluid Power with Applications, Example 7-1, pressure: "
	       "book %.0f psi, here %.2f psi, difference %.1g\n",
	       book_pressure, psi, psi - book_pressure);
	return error.code;
}
