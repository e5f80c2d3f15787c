/* What 85 N.m leave in an M12 bolt, and how far that is from certain. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double diameter = 0.012, pitch = 0.00175, torque = 85, face = 0.0155;
	const double middle = vane_thread_pitch_diameter(diameter, pitch, &error);
	const double area = vane_thread_stress_area(diameter, pitch, &error);
	const double preload = vane_thread_preload(torque, pitch, middle, 0.12, 0.12, face, &error);
	/* Torque by a wrench of 4 %, friction known to 25 %. */
	const double low = vane_thread_preload_low(torque, 0.04, 0.25, pitch, middle, 0.12, 0.12,
						   face, &error);
	const double high = vane_thread_preload_high(torque, 0.04, 0.25, pitch, middle, 0.12, 0.12,
						     face, &error);
	printf("stress area %.1f mm2\n", area * 1e6);
	printf("preload %.1f kN, from %.1f to %.1f kN\n", preload / 1e3, low / 1e3, high / 1e3);
	printf("stress %.0f MPa, of which class 10.9 bears 830 MPa\n",
	       vane_thread_tensile_stress(preload, area, &error) / 1e6);
	return error.code;
}
