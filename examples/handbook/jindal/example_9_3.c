/* Jindal, Machine Design, Example 9-3: nut factor of an M18 bolt from its frictions. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = 18e-3, pitch = 2.5e-3; /* m */
	const double thread_friction = 0.15, bearing_friction = 0.13;
	const double book = 0.18343;

	vane_error error;
	/* The book's mean of nominal and root diameter, and its collar of 1.25 d. */
	const double root = diameter - 1.226869 * pitch, mean = (diameter + root) / 2;
	const double here = vane_thread_nut_factor(diameter, pitch, mean, thread_friction,
						   bearing_friction, 1.25 * diameter, &error);
	printf("Jindal, Machine Design, Example 9-3: "
	       "book %.5f, here %.7f, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
