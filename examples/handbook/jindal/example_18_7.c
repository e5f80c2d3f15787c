/* Jindal, Machine Design, Example 18-7: bearing that 98 % of a lot outlive. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double load = 3500, hours = 6000, per_minute = 1400; /* N */
	const double reliability = 0.98, slope = 1.17;
	const double book = 44589; /* N */

	vane_error error;
	const double life = 60 * hours * per_minute;
	const double factor = vane_bearing_weibull_life(reliability, slope, NULL);
	const double here = vane_bearing_rating(load, life / factor, 3, &error);
	printf("Jindal, Machine Design, Example 18-7: "
	       "book %.0f N, here %.2f N, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
