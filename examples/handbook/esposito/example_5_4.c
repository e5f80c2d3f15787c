/*
 * Esposito, Fluid Power with Applications, 5th ed., Example 5-4: displacement of a vane pump.
 *
 * The book's formula counts the crescent once a turn; vane_displacement_eccentric() gives the true
 * displacement, here 2.4 times as large.
 */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double ring = 75e-3, rotor = 50e-3, width = 50e-3, eccentricity = 8e-3; /* m */
	const double book = 0.0785;                                                   /* L */

	vane_error error;
	const double here =
		1e3 * vane_displacement_textbook(ring, rotor, eccentricity, width, &error);
	printf("Esposito, Fluid Power with Applications, Example 5-4: "
	       "book %.4f L, here %.6f L, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
