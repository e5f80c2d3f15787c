/* Half a turn of a ring: the radius, and how hard the vanes are thrown. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	vane_ring ring;
	vane_ring_default(&ring);
	ring.large_radius = 0.0345;
	ring.small_radius = 0.0310;
	ring.width = 0.024;
	for (int degrees = 0; degrees <= 180; degrees += 30) {
		vane_ring_point point;
		const double angle = degrees * 3.14159265358979 / 180;
		if (vane_ring_at(&ring, angle, &point, &error) != VANE_OK)
			return error.code;
		printf("%3d deg: %.3f mm\n", degrees, point.radius * 1e3);
	}
	return 0;
}
