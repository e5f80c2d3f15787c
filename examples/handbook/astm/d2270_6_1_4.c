/* ASTM D2270, 6.1.4, first example: viscosity index above 100. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double viscosity_40 = vane_units_m2_per_s_from_cst(22.83, NULL);
	const double viscosity_100 = vane_units_m2_per_s_from_cst(5.05, NULL);
	const double book = 156;

	vane_error error;
	const double here = vane_oil_index(viscosity_40, viscosity_100, &error);
	printf("ASTM D2270, 6.1.4 (1): book %.0f, here %.2f, difference %.1g\n", book, here,
	       here - book);
	return error.code;
}
