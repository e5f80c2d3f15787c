/* Jindal, Machine Design, Example 18-2: life of a ball bearing under radial and axial force. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double rating = 5590, radial = 1250, axial = 625; /* N */
	const double radial_factor = 0.56, axial_factor = 1.2, outer_turns = 1.2;
	const double book_inner = 57.3, book_outer = 43.46; /* million revolutions */

	vane_error error;
	const double load =
		vane_bearing_equivalent_load(radial, axial, radial_factor, axial_factor, 1, NULL);
	const double turning = vane_bearing_equivalent_load(radial, axial, radial_factor,
							    axial_factor, outer_turns, NULL);
	const double inner = 1e-6 * vane_bearing_life(rating, load, 3, NULL);
	const double outer = 1e-6 * vane_bearing_life(rating, turning, 3, &error);
	printf("Jindal, Machine Design, Example 18-2, inner ring turns: "
	       "book %.1f Mrev, here %.3f Mrev, difference %.1g\n",
	       book_inner, inner, inner - book_inner);
	printf("Jindal, Machine Design, Example 18-2, outer ring turns: "
	       "book %.2f Mrev, here %.4f Mrev, difference %.1g\n",
	       book_outer, outer, outer - book_outer);
	return error.code;
}
