/* JCGM 100:2008 (GUM), H.1: uncertainty of a gauge block against its standard. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	/* Standard uncertainties in nm with their degrees of freedom. */
	const vane_source difference[] = {{5.8, 1, 24}, {3.9, 1, 5}, {6.7, 1, 8}};
	const double book_difference = 9.7, book_block = 32; /* nm */

	vane_error error;
	vane_combined d, block;
	vane_measure_combine(difference, 3, NULL, 0, 0.99, &d, NULL, NULL);
	const vane_source length[] = {
		{25, 1, 18}, {d.uncertainty, 1, d.degrees_of_freedom}, {2.9, 1, 50}, {16.6, 1, 2}};
	vane_measure_combine(length, 4, NULL, 0, 0.99, &block, NULL, &error);
	printf("GUM, H.1, difference of the blocks: book %.1f nm, here %.3f nm, difference %.1g\n",
	       book_difference, d.uncertainty, d.uncertainty - book_difference);
	printf("GUM, H.1, length of the block: book %.0f nm, here %.2f nm, difference %.1g\n",
	       book_block, block.uncertainty, block.uncertainty - book_block);
	return error.code;
}
