/* What leaks past the two faces of a 12-vane rotor, and how much more when worn. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double inner = 0.020, outer = 0.032; /* m, shaft seal to rotor's rim */
	const double dp = 14e6, viscosity = 0.028;
	const double angle = 6.283185307179586;

	for (double gap = 10e-6; gap < 45e-6; gap *= 2) {
		const double flow =
			2 * vane_slot_disc_flow(gap, inner, outer, angle, dp, viscosity, &error);
		if (error.code != VANE_OK)
			return error.code;
		printf("gap %2.0f um: %6.3f L/min\n", gap * 1e6,
		       vane_units_l_per_min_from_m3_per_s(flow, NULL));
	}
	return 0;
}
