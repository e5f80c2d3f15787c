/* A stopwatch. Include it first: it asks for POSIX's clock. */
#ifndef VANE_BENCH_FASTEST_H
#define VANE_BENCH_FASTEST_H

#define _POSIX_C_SOURCE 200809L
#include <time.h>

static inline double now(void)
{
	struct timespec t;
	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

/* Nanoseconds that one turn of the work takes, by the fastest of some rounds of so many turns: what
 * disturbs a measurement only makes it slower. */
static inline double fastest(void (*work)(void), int turns, int rounds)
{
	/* Or the compiler would see through the turns and do one for all. */
	void (*volatile turn)(void) = work;
	double least = 1e300;
	for (int i = 0; i < rounds; i++) {
		const double start = now();
		for (int j = 0; j < turns; j++)
			turn();
		const double taken = now() - start;
		least = taken < least ? taken : least;
	}
	return 1e9 * least / turns;
}

#endif
