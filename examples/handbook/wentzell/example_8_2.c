/* Wentzell, Machine Design, Example 8.2: active coils of a helical spring. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double wire = vane_units_m_from_in(0.105, NULL);
	const double coil = vane_units_m_from_in(0.620, NULL);
	const double shear_modulus = vane_units_pa_from_psi(11.85e6, NULL);
	const double force = vane_units_n_from_lbf(35, NULL);
	const double deflection = vane_units_m_from_in(0.5, NULL);
	const double book = 10.79; /* coils */

	vane_error error;
	const double rate = force / deflection;
	const double here = vane_plate_spring_coils(wire, coil, rate, shear_modulus, &error);
	printf("Wentzell, Machine Design, Example 8.2: "
	       "book %.2f, here %.4f, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
