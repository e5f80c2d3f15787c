/* A clearance at assembly and when the rotor has warmed before its ring. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double ring = 0.024030, rotor = 0.024000, steel = 11.5e-6;
	for (int ahead = 0; ahead <= 90; ahead += 30)
		printf("rotor %2d K ahead: %4.1f um\n", ahead,
		       vane_clearance_thermal(ring, rotor, steel, steel, 0, ahead, &error) * 1e6);
	return error.code;
}
