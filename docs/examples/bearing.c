/* How long a shaft bearing lasts at 1500 r/min, and how long 99 % of them do. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double rating = 29.6e3, load = 3.2e3, speed = 25;
	const double life = vane_bearing_life(rating, load, 3, &error);
	const double sure = life * vane_bearing_reliability_factor(0.99, &error);
	printf("90 %% outlive %.0f million turns, %.0f h\n", life / 1e6,
	       vane_bearing_life_time(life, speed, &error) / 3600);
	printf("99 %% outlive %.0f million turns, %.0f h\n", sure / 1e6,
	       vane_bearing_life_time(sure, speed, &error) / 3600);
	return error.code;
}
