/* A program as a user writes it: built outside the source tree against the
 * installed package, from C and from C++. */
#include <vane.h>

#include <math.h>
#include <stdio.h>

int main(void)
{
	vane_error error;
	const double power = vane_shaft_power(100, 25, &error);
	if (error.code != VANE_OK || !(fabs(power - 15707.963267948966) < 1e-6)) {
		fprintf(stderr, "power: got %.9g W, want 15707.9633 W. %s\n", power, error.text);
		return 1;
	}
	const double nan_out = vane_thread_stress_area(-1, 0.001, &error);
	if (!isnan(nan_out) || error.code != VANE_INVALID_ARGUMENT) {
		fprintf(stderr, "a negative diameter gave %.9g m2\n", nan_out);
		return 1;
	}
	printf("libvane %s: %s\n", vane_version(), error.text);
	return 0;
}
