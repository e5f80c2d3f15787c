/* Massey and Ward-Smith, Mechanics of Fluids, Example 6.7: flow and load of a stepped bearing. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double width = 0.1, gap_in = 0.5e-3, gap_out = 0.25e-3; /* m */
	const double land = 0.05;                                     /* m; both alike */
	const double viscosity = 870 * 2e-4, speed = 10;              /* Pa.s, m/s */
	const double book_flow = 0.0001389, book_load = 4640;         /* m3/s, N */

	vane_error error;
	const double flow =
		vane_slot_step_flow(width, gap_in, land, gap_out, land, 0, viscosity, speed, NULL);
	const double load = vane_slot_step_load(width, gap_in, land, gap_out, land, 0, viscosity,
						speed, &error);
	printf("Massey and Ward-Smith, Mechanics of Fluids, Example 6.7, flow: "
	       "book %.7f m3/s, here %.9f m3/s, difference %.1g\n",
	       book_flow, flow, flow - book_flow);
	printf("Massey and Ward-Smith, Mechanics of Fluids, Example 6.7, load: "
	       "book %.0f N, here %.2f N, difference %.1g\n",
	       book_load, load, load - book_load);
	return error.code;
}
