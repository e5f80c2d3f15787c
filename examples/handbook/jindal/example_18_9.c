/* Jindal, Machine Design, Example 18-9: bearing for a load that changes in stages. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double load[] = {3000, 4000, 5000};                         /* N */
	const double turns[] = {0.25 * 1440, 0.5 * 1080, 0.25 * 720};     /* in each minute */
	const double life = 10e3 * 60 * (turns[0] + turns[1] + turns[2]); /* 10 000 h */
	const double book = 34219;                                        /* N */

	vane_error error;
	double mean;
	vane_bearing_mean_load(load, turns, 3, 3, &mean, NULL);
	const double here = vane_bearing_rating(mean, life, 3, &error);
	printf("Jindal, Machine Design, Example 18-9: "
	       "book %.0f N, here %.2f N, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
