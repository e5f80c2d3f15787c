/* ASTM D2270, 5.1.4: the reference oils of a viscosity between two lines of the table. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double viscosity_100 = vane_units_m2_per_s_from_cst(8.86, NULL);
	const double book_l = 119.94, book_h = 69.48; /* mm2/s */

	vane_error error;
	const double l = 1e6 * vane_oil_index_l(viscosity_100, NULL);
	const double h = 1e6 * vane_oil_index_h(viscosity_100, &error);
	printf("ASTM D2270, 5.1.4, L: book %.2f mm2/s, here %.4f mm2/s, difference %.1g\n", book_l,
	       l, l - book_l);
	printf("ASTM D2270, 5.1.4, H: book %.2f mm2/s, here %.4f mm2/s, difference %.1g\n", book_h,
	       h, h - book_h);
	return error.code;
}
