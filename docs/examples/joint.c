/* A bolt of a cover: how much of the load it feels, and when the cover lifts. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	const double modulus = 205e9, grip = 0.040;
	const double preload = 30e3, load = 12e3, proof_load = 70e3;
	const double bolt =
		vane_joint_bolt_stiffness(113e-6, 0.022, 84.3e-6, 0.018, modulus, &error);
	const double parts =
		vane_joint_grip_stiffness(modulus, 0.012, 0.018, grip, 0.5235987755982988, &error);
	const double factor = vane_joint_load_factor(bolt, parts, 1, &error);
	printf("bolt %.0f kN/mm, parts %.0f kN/mm: load factor %.3f\n", bolt / 1e6, parts / 1e6,
	       factor);
	printf("bolt under load %.1f kN, clamp left %.1f kN\n",
	       vane_joint_bolt_load(preload, load, factor, &error) / 1e3,
	       vane_joint_clamp(preload, load, factor, &error) / 1e3);
	printf("opens at %.1f kN, reaches the proof load at %.1f kN\n",
	       vane_joint_separation_load(preload, factor, &error) / 1e3,
	       vane_joint_yield_load(preload, factor, proof_load, &error) / 1e3);
	return error.code;
}
