/* A pressure plate as a clamped disc: how thick for 10 um of deflection. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double pressure = 7e6, radius = 0.040, modulus = 205e9, poisson = 0.29;
	for (int mm = 10; mm <= 18; mm += 4) {
		const double deflection = vane_plate_clamped_deflection(pressure, radius, mm / 1e3,
									modulus, poisson, &error);
		const double stress =
			vane_plate_clamped_edge_stress(pressure, radius, mm / 1e3, &error);
		printf("%d mm: %4.1f um, %3.0f MPa at the edge\n", mm, deflection * 1e6,
		       stress / 1e6);
	}
	return error.code;
}
