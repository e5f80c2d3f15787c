/* A line through readings of which one is wild: least squares, and what bears it. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	enum { READINGS = 8 };
	double x[READINGS][2], y[READINGS];
	for (int i = 0; i < READINGS; i++) {
		x[i][0] = 1;
		x[i][1] = i;
		y[i] = 2 + 0.5 * i + (i % 2 ? 0.01 : -0.01);
	}
	y[5] += 3; /* a slip of the pen */

	double plain[16], robust[16], uncertainty[16];
	vane_fit_options options;
	vane_fit_summary summary;
	vane_error error;
	vane_fit_options_default(&options);
	if (vane_fit_linear(x[0], 2 * READINGS, y, NULL, 0, READINGS, &options, plain, uncertainty,
			    NULL, NULL, &summary, &error) != VANE_OK)
		return error.code;
	if (vane_fit_robust(x[0], 2 * READINGS, y, READINGS, &options, robust, uncertainty, NULL,
			    NULL, &summary, &error) != VANE_OK)
		return error.code;
	printf("least squares: %.3f + %.3f x\n", plain[0], plain[1]);
	printf("robust:        %.3f + %.3f x\n", robust[0], robust[1]);
	return 0;
}
