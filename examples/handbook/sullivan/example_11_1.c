/* Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 11.1: groove for an O-ring. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double bore = vane_units_m_from_in(4.000, NULL);
	const double section = vane_units_m_from_in(0.140, NULL);
	const double squeeze = 0.20;
	const double book_diameter = 3.776, book_width = 0.196; /* in */

	vane_error error;
	const double diameter = vane_seal_piston_groove(bore, section, squeeze, &error);
	const double width = vane_seal_groove_width_rule(section, NULL);
	const double inch_diameter = vane_units_in_from_m(diameter, NULL);
	const double inch_width = vane_units_in_from_m(width, NULL);
	printf("Sullivan, Fluid Power, Example 11.1, diameter: "
	       "book %.3f in, here %.5f in, difference %.1g\n",
	       book_diameter, inch_diameter, inch_diameter - book_diameter);
	printf("Sullivan, Fluid Power, Example 11.1, width: "
	       "book %.3f in, here %.5f in, difference %.1g\n",
	       book_width, inch_width, inch_width - book_width);
	return error.code;
}
