/* Displacement of a balanced pump, with and without what its vanes take. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double large = 0.0345, small = 0.0310, width = 0.024, thickness = 0.0018;
	printf("under-vane chambers pump with the zone: %.2f cm3\n",
	       vane_displacement_roots_zone(large, small, width, &error) * 1e6);
	printf("they stay at the outlet:                %.2f cm3\n",
	       vane_displacement_roots_outlet(large, small, width, thickness, 12, &error) * 1e6);
	return error.code;
}
