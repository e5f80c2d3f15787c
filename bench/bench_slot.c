/* What the guards of a formula cost: vane_slot_flow() beside the same
 * arithmetic in a loop of the caller's own. Prints nanoseconds and a ratio. */
#include "fastest.h"

#include <vane.h>

#include <stdio.h>

enum { CALLS = 1 << 20, ROUNDS = 15 };

static double library_sum, hand_sum;

static double gap(int32_t i)
{
	return 1e-6 * (10 + i % 64);
}

static void by_library(void)
{
	double sum = 0;
	for (int32_t i = 0; i < CALLS; i++)
		sum += vane_slot_flow(0.020, gap(i), 0.005, 15e6, 8.6e-3, 0.1, NULL);
	library_sum = sum;
}

static void by_hand(void)
{
	double sum = 0;
	for (int32_t i = 0; i < CALLS; i++) {
		const double h = gap(i);
		sum += 0.020 * h * h * h * 15e6 / (12 * 8.6e-3 * 0.005) + 0.020 * h * 0.1 / 2;
	}
	hand_sum = sum;
}

int main(void)
{
	const double library = fastest(by_library, 1, ROUNDS) / CALLS;
	const double hand = fastest(by_hand, 1, ROUNDS) / CALLS;
	printf("vane_slot_flow  %6.2f ns\nby hand         %6.2f ns\nratio           %6.2f\n",
	       library, hand, library / hand);
	const double difference = library_sum - hand_sum;
	return !(difference < 1e-9 * hand_sum && -difference < 1e-9 * hand_sum);
}
