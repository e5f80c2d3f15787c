/* Jindal, Machine Design, Example 18-4: life of a ball bearing in hours. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double rating = 41e3, load = 20e3; /* N */
	const double speed = vane_units_rev_per_s_from_rev_per_min(720, NULL);
	const double book = 199.424; /* h */

	vane_error error;
	const double life = vane_bearing_life(rating, load, 3, NULL);
	const double here = vane_bearing_life_time(life, speed, &error) / 3600;
	printf("Jindal, Machine Design, Example 18-4: "
	       "book %.3f h, here %.5f h, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
