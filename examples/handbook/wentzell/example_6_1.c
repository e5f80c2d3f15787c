/* Wentzell, Machine Design, Example 6.1: torque of a 3/4 in bolt by the nut factor. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double inch = 0.0254, diameter = 0.75 * inch, area = 0.334 * inch * inch; /* m, m2 */
	const double proof = vane_units_pa_from_psi(85000, NULL);
	const double nut_factor = 0.2, utilization = 0.85;
	const double book = 3619.7; /* lbf.in */

	vane_error error;
	const double preload = utilization * vane_thread_proof_load(area, proof, NULL);
	const double torque = vane_thread_torque_nut_factor(preload, nut_factor, diameter, &error);
	const double here = vane_units_lbf_in_from_n_m(torque, NULL);
	printf("Wentzell, Machine Design, Example 6.1: "
	       "book %.1f lbf.in, here %.3f lbf.in, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
