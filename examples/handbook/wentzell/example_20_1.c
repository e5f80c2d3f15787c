/* Wentzell, Machine Design, Example 20.1: life of a ball bearing in hours. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double rating = vane_units_n_from_lbf(5050, NULL);
	const double load = vane_units_n_from_lbf(2400, NULL);
	const double speed = vane_units_rev_per_s_from_rev_per_min(1750, NULL);
	const double book = 88.73; /* h */

	vane_error error;
	const double life = vane_bearing_life(rating, load, 3, NULL);
	const double here = vane_bearing_life_time(life, speed, &error) / 3600;
	printf("Wentzell, Machine Design, Example 20.1: "
	       "book %.2f h, here %.4f h, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
