/* A clearance from two widths, read with one micrometer: is it below 60 um for certain? */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double clearance = 58e-6; /* ring less rotor */
	/* Each width repeats to 0.8 um; a permissible error of 2 um is common to both, and cancels. */
	const vane_source source[] = {{0.8e-6, 1, 9}, {0.8e-6, -1, 9}};
	vane_combined both;
	if (vane_measure_combine(source, 2, NULL, 0, 0.95, &both, NULL, &error) != VANE_OK)
		return error.code;
	printf("uncertainty %.2f um, expanded %.2f um (coverage %.2f)\n", both.uncertainty * 1e6,
	       both.expanded * 1e6, both.coverage);
	printf("below 60 um with a probability of %.4f\n",
	       vane_measure_probability_most(clearance, both.uncertainty, 60e-6, &error));
	printf("the common error alone would be %.2f um\n",
	       vane_measure_rectangular(2e-6, &error) * 1e6);
	return error.code;
}
