/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 5-3: eccentricity of a vane pump.
 *
 * The book's formula counts the crescent once a turn; vane_displacement_eccentric() gives the true
 * displacement, here 2.4 times as large.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double ring = vane_units_m_from_in(3, NULL);
	const double rotor = vane_units_m_from_in(2, NULL);
	const double width = vane_units_m_from_in(2, NULL);
	const double displacement = vane_units_m3_from_in3(5, NULL);
	const double book = 0.318; /* in */

	vane_error error;
	const double of_1_m = vane_displacement_textbook(ring, rotor, 1, width, &error);
	const double here = vane_units_in_from_m(displacement / of_1_m, NULL);
	printf("Esposito, Fluid Power with Applications, Example 5-3: "
	       "book %.3f in, here %.5f in, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
