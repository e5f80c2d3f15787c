/* Jindal, Machine Design, Example 9-5: torque of an M14 bolt by the nut factor. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	const double diameter = 14e-3, area = 115e-6, proof = 650e6; /* m, m2, Pa */
	const double nut_factor = 0.2, utilization = 0.75;
	const double book = 156.97; /* N.m */

	vane_error error;
	const double preload = utilization * vane_thread_proof_load(area, proof, NULL);
	const double here = vane_thread_torque_nut_factor(preload, nut_factor, diameter, &error);
	printf("Jindal, Machine Design, Example 9-5: "
	       "book %.2f N.m, here %.3f N.m, difference %.1g\n",
	       book, here, here - book);
	return error.code;
}
