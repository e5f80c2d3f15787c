/* JCGM 100:2008 (GUM), G.4.1, from memory: degrees of freedom of a combined uncertainty. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	/* Relative standard uncertainties, %, of three factors, and their degrees of freedom. */
	const vane_source source[] = {{0.25, 1, 9}, {0.57, 1, 4}, {0.82, 1, 14}};
	const double book_uncertainty = 1.03, book_freedom = 19.0;

	vane_error error;
	vane_combined combined;
	vane_measure_combine(source, 3, NULL, 0, 0.95, &combined, NULL, &error);
	printf("GUM, G.4.1, relative uncertainty: book %.2f %%, here %.4f %%, difference %.1g\n",
	       book_uncertainty, combined.uncertainty, combined.uncertainty - book_uncertainty);
	printf("GUM, G.4.1, degrees of freedom: book %.1f, here %.3f, difference %.1g\n",
	       book_freedom, combined.degrees_of_freedom,
	       combined.degrees_of_freedom - book_freedom);
	return error.code;
}
