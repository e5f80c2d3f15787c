/* What the array door costs: vane_array_run() for vane_slot_flow(), beside a loop over the scalar
 * calls and beside the same arithmetic in a loop of the caller's own, for three layouts of the
 * arguments. Prints nanoseconds per element and ratios; fails if a bit differs. The arrays stay in
 * the cache. */
#include "fastest.h"

#include <vane.h>

#include <stdio.h>
#include <string.h>

enum { PARAMETERS = 6, N = 4096, TURNS = 32, ROUNDS = 25 };

typedef struct layout {
	const char *name;
	void (*by_hand)(void);
	int64_t gap_stride, stride;
} layout;

static double columns[PARAMETERS][N], records[N][PARAMETERS];
static const double *argument[PARAMETERS];
static int64_t stride[PARAMETERS];
static double from_array[N], from_scalar[N], from_hand[N];

static void by_array(void)
{
	vane_array_run("vane_slot_flow", N, argument, stride, from_array, NULL);
}

static double at(int32_t parameter, int64_t i)
{
	return argument[parameter][i * stride[parameter]];
}

static void by_scalar(void)
{
	for (int64_t i = 0; i < N; i++)
		from_scalar[i] = vane_slot_flow(at(0, i), at(1, i), at(2, i), at(3, i), at(4, i),
						at(5, i), NULL);
}

/* Strides that the compiler knows, as a caller's own loop would have them. */
static inline void by_hand(int64_t gap_stride, int64_t s)
{
	const double *const width = argument[0], *const gap = argument[1];
	const double *const length = argument[2], *const dp = argument[3];
	const double *const viscosity = argument[4], *const wall_speed = argument[5];
	for (int64_t i = 0; i < N; i++) {
		const double w = width[i * s], h = gap[i * gap_stride];
		from_hand[i] =
			w / length[i * s] * (h * h * h) / 12 * (dp[i * s] / viscosity[i * s]) +
			w * h * (wall_speed[i * s] / 2);
	}
}

static void contiguous_by_hand(void)
{
	by_hand(1, 1);
}

static void repeated_by_hand(void)
{
	by_hand(1, 0);
}

static void strided_by_hand(void)
{
	by_hand(PARAMETERS, PARAMETERS);
}

static const layout layouts[] = {
	{"contiguous", contiguous_by_hand, 1, 1},
	{"repeated but for gap", repeated_by_hand, 1, 0},
	{"strided by 6", strided_by_hand, PARAMETERS, PARAMETERS},
};

static void fill(void)
{
	static const double typical[PARAMETERS] = {0.020, 10e-6, 0.005, 15e6, 8.6e-3, 0.1};
	for (int32_t j = 0; j < PARAMETERS; j++)
		for (int32_t i = 0; i < N; i++)
			records[i][j] = columns[j][i] = typical[j] * (1 + (i + j) % 64 / 64.0);
}

static int measure(const layout *l)
{
	for (int32_t j = 0; j < PARAMETERS; j++) {
		stride[j] = j == 1 ? l->gap_stride : l->stride;
		argument[j] = l->stride == PARAMETERS ? &records[0][j] : columns[j];
	}
	const double array = fastest(by_array, TURNS, ROUNDS) / N;
	const double scalar = fastest(by_scalar, TURNS, ROUNDS) / N;
	const double hand = fastest(l->by_hand, TURNS, ROUNDS) / N;
	printf("%-20s  array %6.2f ns  scalar calls %6.2f ns  by hand %6.2f ns"
	       "  array/scalar %5.2f  array/hand %5.2f\n",
	       l->name, array, scalar, hand, array / scalar, array / hand);
	return memcmp(from_array, from_scalar, sizeof from_array) == 0 &&
	       memcmp(from_hand, from_scalar, sizeof from_hand) == 0;
}

int main(void)
{
	int good = 1;
	fill();
	for (size_t i = 0; i < sizeof layouts / sizeof *layouts; i++)
		good &= measure(&layouts[i]);
	return !good;
}
