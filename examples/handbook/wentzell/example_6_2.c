/* Wentzell, Machine Design, Example 6.2: turn of the nut that stretches a bolt. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double length = vane_units_m_from_in(5, NULL);
	const double pitch = vane_units_m_from_in(0.1, NULL);
	const double stress = vane_units_pa_from_psi(0.85 * 85000, NULL);
	const double modulus = vane_units_pa_from_psi(30e6, NULL);
	const double book = 43.35; /* degrees */

	vane_error error;
	const double stretch = vane_thread_stretch(stress, length, modulus, NULL);
	const double angle = vane_thread_turn_angle(stretch, pitch, &error);
	const double here = vane_units_deg_from_rad(angle, NULL);
	printf("Wentzell, Machine Design, Example 6.2: "
	       "book %.2f deg, here %.4f deg, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
