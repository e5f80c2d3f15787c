/* Prints what libvane makes of one unit (or of 20 degrees), as lines
 * "from <tab> to <tab> value" in the unit names of GNU units. */
#include "vane/units.h"

#include <stdio.h>

#define BOTH(si, shop, si_name, shop_name)                                                         \
	printf("1 %s\t%s\t%.17g\n", shop_name, si_name, vane_units_##si##_from_##shop(1, NULL));   \
	printf("1 %s\t%s\t%.17g\n", si_name, shop_name, vane_units_##shop##_from_##si(1, NULL))

int main(void)
{
	BOTH(m, mm, "m", "mm");
	BOTH(m, um, "m", "micrometer");
	BOTH(m, in, "m", "inch");
	BOTH(m, thou, "m", "thou");
	BOTH(pa, bar, "Pa", "bar");
	BOTH(pa, psi, "Pa", "psi");
	BOTH(pa, mpa, "Pa", "N/mm^2");
	BOTH(pa, kpa, "Pa", "kPa");
	BOTH(pa, ksi, "Pa", "ksi");
	BOTH(m2_per_s, cst, "m^2/s", "cSt");
	BOTH(pa_s, cp, "Pa s", "cP");
	BOTH(m3_per_s, l_per_min, "m^3/s", "liter/min");
	BOTH(m3_per_s, us_gal_per_min, "m^3/s", "usgallon/min");
	BOTH(m3, cm3, "m^3", "cm^3");
	BOTH(m3, in3, "m^3", "inch^3");
	BOTH(n_m, lbf_ft, "N m", "lbf ft");
	BOTH(n_m, lbf_in, "N m", "lbf inch");
	BOTH(n, lbf, "N", "lbf");
	BOTH(w, hp, "W", "hp");
	BOTH(w, kw, "W", "kW");
	BOTH(rev_per_s, rev_per_min, "rev/s", "rev/min");
	BOTH(rad, deg, "radian", "degree");
	BOTH(s, min, "s", "minute");
	printf("tempC(20)\tK\t%.17g\n", vane_units_k_from_degc(20, NULL));
	printf("tempF(20)\tK\t%.17g\n", vane_units_k_from_degf(20, NULL));
	printf("20 K\ttempC\t%.17g\n", vane_units_degc_from_k(20, NULL));
	printf("20 K\ttempF\t%.17g\n", vane_units_degf_from_k(20, NULL));
	return 0;
}
