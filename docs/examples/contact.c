/* A vane's rounded tip on its ring: the pressure, and where the steel shears most. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double line_load = 20e3; /* N/m */
	const double modulus = vane_contact_modulus(205e9, 0.3, 205e9, 0.3, &error);
	const double curvature = vane_contact_curvature_hollow(0.0015, 0.034, &error);
	const double pressure = vane_contact_line_pressure(line_load, curvature, modulus, &error);
	const double half = vane_contact_line_half_width(line_load, curvature, modulus, &error);
	printf("strip of %.1f um, %.0f MPa in its middle\n", 2 * half * 1e6, pressure / 1e6);
	printf("greatest shear %.0f MPa, %.1f um below the surface\n",
	       vane_contact_line_shear_greatest(pressure, &error) / 1e6,
	       vane_contact_line_shear_depth(half, &error) * 1e6);
	return error.code;
}
