/* What the formulas for shapes, forces, openings and heat tend to, and how they hang together. */
#include "row.h"
#include "vane/slot.h"

#include <string.h>

static const double PI = 3.14159265358979323846;

/* Simpson's weight over n intervals of [0, 1]. */
static double weight(int i, int n)
{
	return (i == 0 || i == n ? 1 : i % 2 ? 4 : 2) / (3.0 * n);
}

START_TEST(exact_annulus)
{
	const double d = 0.02, length = 0.1, dp = 2e6, mu = 0.03, speed = 0.4;
	for (double eps = 0; eps <= 1; eps += 0.25) {
		/* Thin: the plain formula on the mean diameter, however thin. */
		for (double gap = 1e-6; gap > 1e-14; gap /= 30)
			CHECK_NEAR(vane_slot_annulus_exact_flow(d, gap, length, eps, dp, mu, speed,
								NULL),
				   vane_slot_annulus_flow(d + gap, gap, length, eps, dp, mu, speed,
							  NULL),
				   4 * gap / d);
		/* Both branches meet where the gap is 1e-9 of the mean diameter. */
		CHECK_NEAR(vane_slot_annulus_exact_flow(1 - 1.0001e-9, 1.0001e-9, 1, eps, 1, 1, 0,
							NULL),
			   vane_slot_annulus_flow(1, 1.0001e-9, 1, eps, 1, 1, 0, NULL), 4e-15);
	}
	/* Unrolled, it is a slot between plates. */
	CHECK_NEAR(vane_slot_annulus_exact_flow(d, 1e-9, length, 0, dp, mu, speed, NULL),
		   vane_slot_flow(PI * d, 1e-9, length, dp, mu, speed, NULL), 2e-7);
	/* Without an inner cylinder, a pipe: the approach is logarithmic. */
	CHECK_NEAR(vane_slot_annulus_exact_flow(1e-140, 0.01, length, 0, dp, mu, 0, NULL),
		   vane_slot_pipe_flow(0.02, length, dp, mu, NULL), 0.004);
	/* No offset is the limit of a small one, contact of a large one. */
	const double gap[] = {1e-5, 1e-3, 0.01, 1};
	for (int i = 0; i < 4; i++) {
		CHECK_NEAR(
			vane_slot_annulus_exact_flow(d, gap[i], length, 1e-9, dp, mu, speed, NULL),
			vane_slot_annulus_exact_flow(d, gap[i], length, 0, dp, mu, speed, NULL),
			1e-14);
		CHECK_NEAR(vane_slot_annulus_exact_flow(d, gap[i], length, 1 - 1e-13, dp, mu, speed,
							NULL),
			   vane_slot_annulus_exact_flow(d, gap[i], length, 1, dp, mu, speed, NULL),
			   1e-11);
		/* The two walls share the force of the pressure. */
		for (double eps = 0; eps < 1; eps += 0.3) {
			const double inner = vane_slot_annulus_inner_force(d, gap[i], length, eps,
									   dp, mu, speed, NULL);
			const double outer = vane_slot_annulus_outer_force(d, gap[i], length, eps,
									   dp, mu, speed, NULL);
			CHECK_NEAR(inner + outer, PI * gap[i] * (d + gap[i]) * dp, 1e-14);
			/* Reciprocity: what drags the oil is dragged by it. */
			const double driven = vane_slot_annulus_inner_force(d, gap[i], length, eps,
									    dp, mu, 0, NULL);
			const double dragged = vane_slot_annulus_exact_flow(d, gap[i], length, eps,
									    0, mu, speed, NULL);
			CHECK_NEAR(driven / dp, dragged / speed, 1e-14);
		}
	}
	/* Centred, the flow rises with the offset. */
	double last = 0;
	for (double eps = 0; eps <= 1; eps += 1.0 / 64) {
		const double q = vane_slot_annulus_exact_flow(1, 0.5, 1, eps, 1, 1, 0, NULL);
		ck_assert(q > last);
		last = q;
	}
	ck_assert(vane_slot_annulus_exact_flow(1, 0, 1, 0.5, 1, 1, 1, NULL) == 0);
	/* A thin one drags as plates do. */
	CHECK_NEAR(vane_slot_annulus_inner_force(1, 1e-9, 0.3, 0, dp, mu, speed, NULL),
		   vane_slot_sliding_wall_force(PI, 1e-9, 0.3, dp, mu, speed, NULL), 1e-8);
	CHECK_NEAR(vane_slot_annulus_outer_force(1, 1e-9, 0.3, 0, dp, mu, speed, NULL),
		   vane_slot_still_wall_force(PI, 1e-9, 0.3, dp, mu, speed, NULL), 1e-8);
	/* The speeds add up to the flow, and stand still where the walls do. */
	for (double h = 1e-5; h < 1; h *= 30) {
		double q = 0;
		const int n = 2000;
		for (int i = 0; i <= n; i++) {
			const double y = h * ((double)i / n);
			q += weight(i, n) * h * 2 * PI * (d / 2 + y) *
			     vane_slot_annulus_velocity(d, h, length, dp, mu, speed, y, NULL);
		}
		CHECK_NEAR(q, vane_slot_annulus_exact_flow(d, h, length, 0, dp, mu, speed, NULL),
			   1e-8);
		CHECK_NEAR(vane_slot_annulus_velocity(d, h, length, dp, mu, speed, 0, NULL), speed,
			   1e-15);
		ck_assert(vane_slot_annulus_velocity(d, h, length, dp, mu, speed, h, NULL) == 0);
	}
	CHECK_NEAR(vane_slot_annulus_velocity(1, 1e-9, length, dp, mu, speed, 2e-10, NULL),
		   vane_slot_velocity(1e-9, length, dp, mu, speed, 8e-10, NULL), 1e-8);
	/* Friction constants: pipe, thin, and that of the flow itself. */
	ck_assert(vane_slot_annulus_friction(0, NULL) == 64);
	ck_assert(vane_slot_annulus_friction(1, NULL) == 96);
	CHECK_NEAR(vane_slot_annulus_friction(1 - 1e-9, NULL), 96, 1e-15);
	for (double r = 0.1; r < 1; r += 0.2) {
		const double q = vane_slot_annulus_exact_flow(2 * r, 1 - r, 1, 0, 1, 1, 0, NULL);
		const double mean = q / (PI * (1 - r * r));
		CHECK_NEAR(vane_slot_annulus_friction(r, NULL), 2 * pow(2 * (1 - r), 2) / mean,
			   1e-13);
		CHECK_NEAR(vane_slot_annulus_exact_reynolds(q, 2 * r, 1 - r, 0.1, NULL),
			   mean * 2 * (1 - r) / 0.1, 1e-14);
	}
}
END_TEST

START_TEST(rotation)
{
	const double d = 0.05, length = 0.08, mu = 0.03, n = 25;
	CHECK_NEAR(vane_slot_annulus_torque(d, 1e-12, length, mu, n, NULL),
		   vane_slot_petroff_torque(d, 1e-12, length, mu, n, NULL), 1e-9);
	CHECK_NEAR(vane_slot_petroff_torque(d, 5e-5, length, mu, n, NULL),
		   d / 2 * vane_slot_shear_force(PI * d, length, 5e-5, mu, PI * d * n, NULL),
		   1e-14);
	/* A far wall: 4 pi mu L omega r^2. */
	CHECK_NEAR(vane_slot_annulus_torque(d, 1e9, length, mu, n, NULL),
		   4 * PI * mu * length * 2 * PI * n * d * d / 4, 1e-9);
	/* A narrow ring of a disc is a strip. */
	CHECK_NEAR(
		vane_slot_disc_torque(1e-5, 0.05, 0.05 + 1e-9, 0.7, mu, n, NULL),
		0.05 * vane_slot_shear_force(1e-9, 0.7 * 0.05, 1e-5, mu, 2 * PI * n * 0.05, NULL),
		1e-6);
	CHECK_NEAR(vane_slot_disc_torque(1e-5, 1e-9, 0.05, 2 * PI, mu, n, NULL),
		   PI * mu * 2 * PI * n * pow(0.05, 4) / (2 * 1e-5), 1e-14);
	CHECK_NEAR(vane_slot_taylor(1e-4, 0.02, -n, 3e-5, NULL),
		   PI * 0.02 * n * 1e-4 / 3e-5 * sqrt(1e-4 / 0.01), 1e-14);
}
END_TEST

START_TEST(plates_and_discs)
{
	const double h = 2e-5, length = 0.03, dp = 3e5, mu = 0.04, u = -1.5;
	const int n = 20;
	double mean = 0;
	for (int i = 0; i <= n; i++)
		mean += weight(i, n) *
			vane_slot_velocity(h, length, dp, mu, u, h * ((double)i / n), NULL);
	CHECK_NEAR(mean * h, vane_slot_flow(1, h, length, dp, mu, u, NULL), 1e-12);
	ck_assert(vane_slot_velocity(h, length, dp, mu, u, 0, NULL) == 0);
	CHECK_NEAR(vane_slot_velocity(h, length, dp, mu, u, h, NULL), u, 1e-15);
	CHECK_NEAR(vane_slot_still_wall_force(0.2, h, length, dp, mu, u, NULL),
		   0.2 * length * vane_slot_shear(h, length, dp, mu, u, 0, NULL), 1e-14);
	CHECK_NEAR(vane_slot_sliding_wall_force(0.2, h, length, dp, mu, u, NULL),
		   -0.2 * length * vane_slot_shear(h, length, dp, mu, u, h, NULL), 1e-14);
	CHECK_NEAR(vane_slot_sliding_wall_force(0.2, h, length, 0, mu, u, NULL),
		   -vane_slot_shear_force(0.2, length, h, mu, u, NULL), 1e-15);

	const double inner = 0.01, outer = 0.06;
	CHECK_NEAR(vane_slot_disc_pressure(inner, outer, 5e5, 2e5, inner, NULL), 5e5, 1e-15);
	CHECK_NEAR(vane_slot_disc_pressure(inner, outer, 5e5, 2e5, outer, NULL), 2e5, 1e-15);
	CHECK_NEAR(vane_slot_disc_pressure(inner, outer, 5e5, 2e5, sqrt(inner * outer), NULL),
		   3.5e5, 1e-14);
	CHECK_NEAR(vane_slot_disc_force(inner, outer, 2, 4e5, 4e5, NULL),
		   4e5 * (outer * outer - inner * inner), 1e-14);
	double force = 0;
	const int fine = 4000;
	for (int i = 0; i <= fine; i++) {
		const double r = inner + (outer - inner) * i / fine;
		force += weight(i, fine) * (outer - inner) * 2 * r *
			 vane_slot_disc_pressure(inner, outer, 5e5, -2e5, fmin(r, outer), NULL);
	}
	CHECK_NEAR(vane_slot_disc_force(inner, outer, 2, 5e5, -2e5, NULL), force, 1e-10);
	/* A hydrostatic pad, pocket included: pi p (r_o^2 - r_i^2) / (2 ln(r_o / r_i)). */
	CHECK_NEAR(vane_slot_disc_force(inner, outer, 2 * PI, 1, 0, NULL) + PI * inner * inner,
		   PI * (outer * outer - inner * inner) / (2 * log(outer / inner)), 1e-14);
	ck_assert(isfinite(vane_slot_disc_force(1e-300, 1e150, 1, 1, 1, NULL)));
}
END_TEST

START_TEST(tapers)
{
	const double w = 0.02, length = 0.01, dp = 2e5, mu = 0.05, u = 3, h = 2e-5;
	const double gap[][2] = {{3e-5, 1e-5}, {1e-5, 3e-5}, {2e-5, 2.0001e-5}, {9e-4, 1e-5}};
	for (int i = 0; i < 4; i++) {
		const double in = gap[i][0], out = gap[i][1];
		double load = 0;
		const int n = 20000;
		for (int k = 0; k <= n; k++)
			load += weight(k, n) * vane_slot_taper_pressure(in, out, length, dp, mu, u,
									length * ((double)k / n),
									NULL);
		CHECK_NEAR(vane_slot_taper_load(w, in, out, length, dp, mu, u, NULL),
			   w * length * load, 1e-10);
		/* All forces on the oil along the flow balance: pressure on the inclined wall. */
		const double still =
			vane_slot_taper_still_force(w, in, out, length, dp, mu, u, NULL);
		const double sliding =
			vane_slot_taper_sliding_force(w, in, out, length, dp, mu, u, NULL);
		const double wall = (in - out) * w * load;
		CHECK_NEAR(still + sliding + wall, w * in * dp, 1e-8);
		/* Turned round. */
		CHECK_NEAR(vane_slot_taper_load(w, in, out, length, 0, mu, u, NULL),
			   vane_slot_taper_load(w, out, in, length, 0, mu, -u, NULL), 1e-15);
		CHECK_NEAR(vane_slot_taper_drag_flow(w, in, out, u, NULL),
			   vane_slot_taper_drag_flow(w, out, in, u, NULL), 1e-15);
		ck_assert(vane_slot_taper_pressure(in, out, length, dp, mu, u, length, NULL) == 0);
		CHECK_NEAR(vane_slot_taper_pressure(in, out, length, dp, mu, u, 0, NULL), dp,
			   1e-15);
	}
	/* Without a slope, plates. */
	CHECK_NEAR(vane_slot_taper_flow(w, h, h, length, dp, mu, NULL) +
			   vane_slot_taper_drag_flow(w, h, h, u, NULL),
		   vane_slot_flow(w, h, length, dp, mu, u, NULL), 1e-14);
	CHECK_NEAR(vane_slot_taper_still_force(w, h, h, length, dp, mu, u, NULL),
		   vane_slot_still_wall_force(w, h, length, dp, mu, u, NULL), 1e-14);
	CHECK_NEAR(vane_slot_taper_sliding_force(w, h, h, length, dp, mu, u, NULL),
		   vane_slot_sliding_wall_force(w, h, length, dp, mu, u, NULL), 1e-14);
	CHECK_NEAR(vane_slot_taper_load(w, h, h, length, dp, mu, u, NULL), w * length * dp / 2,
		   1e-15);
	CHECK_NEAR(vane_slot_taper_pressure(h, h, length, dp, mu, u, length / 4, NULL), dp * 0.75,
		   1e-15);
	/* The two ways of the slider's integral meet at w = 0.6, h1 / h2 = 16. */
	CHECK_NEAR(vane_slot_taper_load(w, 16.000001 * h, h, length, 0, mu, u, NULL),
		   vane_slot_taper_load(w, 15.999999 * h, h, length, 0, mu, u, NULL), 1e-6);
	ck_assert(vane_slot_taper_drag_flow(w, 0, 0, u, NULL) == 0);
	ck_assert(vane_slot_taper_drag_flow(w, 0, h, u, NULL) == 0);
}
END_TEST

START_TEST(steps)
{
	const double w = 0.02, l1 = 0.01, l2 = 0.003, dp = 2e5, mu = 0.05, u = 3, h = 2e-5;
	/* Equal gaps: one slot as long as both. */
	CHECK_NEAR(vane_slot_step_flow(w, h, l1, h, l2, dp, mu, u, NULL),
		   vane_slot_flow(w, h, l1 + l2, dp, mu, u, NULL), 1e-15);
	CHECK_NEAR(vane_slot_step_pressure(h, l1, h, l2, dp, mu, u, NULL), dp * l2 / (l1 + l2),
		   1e-15);
	CHECK_NEAR(vane_slot_step_load(w, h, l1, h, l2, dp, mu, u, NULL), w * (l1 + l2) * dp / 2,
		   1e-15);
	CHECK_NEAR(vane_slot_step_still_force(w, h, l1, h, l2, dp, mu, u, NULL),
		   vane_slot_still_wall_force(w, h, l1 + l2, dp, mu, u, NULL), 1e-14);
	CHECK_NEAR(vane_slot_step_sliding_force(w, h, l1, h, l2, dp, mu, u, NULL),
		   vane_slot_sliding_wall_force(w, h, l1 + l2, dp, mu, u, NULL), 1e-14);
	const double in[] = {1e-5, 5e-5}, out = 3e-5;
	for (int i = 0; i < 2; i++) {
		const double p = vane_slot_step_pressure(in[i], l1, out, l2, dp, mu, u, NULL);
		const double q = vane_slot_step_flow(w, in[i], l1, out, l2, dp, mu, u, NULL);
		/* The same flow passes both lands. */
		CHECK_NEAR(vane_slot_flow(w, in[i], l1, dp - p, mu, u, NULL), q, 1e-12);
		CHECK_NEAR(vane_slot_flow(w, out, l2, p, mu, u, NULL), q, 1e-12);
		CHECK_NEAR(vane_slot_step_load(w, in[i], l1, out, l2, dp, mu, u, NULL),
			   w * ((dp + p) / 2 * l1 + p / 2 * l2), 1e-14);
		/* With the pressure on the step's face, all forces along the flow balance. */
		CHECK_NEAR(vane_slot_step_still_force(w, in[i], l1, out, l2, dp, mu, u, NULL) +
				   vane_slot_step_sliding_force(w, in[i], l1, out, l2, dp, mu, u,
								NULL) +
				   w * p * (in[i] - out),
			   w * in[i] * dp, 1e-9);
		CHECK_NEAR(vane_slot_step_still_force(w, in[i], l1, out, l2, dp, mu, u, NULL),
			   vane_slot_still_wall_force(w, in[i], l1, dp - p, mu, u, NULL) +
				   vane_slot_still_wall_force(w, out, l2, p, mu, u, NULL),
			   1e-13);
		/* At rest, two conductances in series. */
		CHECK_NEAR(vane_slot_step_flow(w, in[i], l1, out, l2, 1, 1, 0, NULL),
			   vane_slot_in_series(vane_slot_flow(w, in[i], l1, 1, 1, 0, NULL),
					       vane_slot_flow(w, out, l2, 1, 1, 0, NULL), NULL),
			   1e-14);
	}
	ck_assert(vane_slot_step_flow(w, 0, l1, h, l2, dp, mu, u, NULL) == 0);
	ck_assert(vane_slot_step_flow(w, h, l1, 0, l2, dp, mu, u, NULL) == 0);
	ck_assert(vane_slot_step_flow(w, 0, l1, 0, l2, dp, mu, u, NULL) == 0);
}
END_TEST

START_TEST(tips)
{
	const double w = 0.02, film = 2e-6, r = 1.2e-3, dp = 4e6, mu = 0.03, u = 5;
	for (double half = 1e-6; half < 2e-3; half *= 3) {
		const double two = vane_slot_tip_integral_2(film, r, half, NULL);
		const double three = vane_slot_tip_integral_3(film, r, half, NULL);
		CHECK_NEAR(vane_slot_tip_flow(w, film, r, half, dp, mu, u, NULL),
			   w * dp / (12 * mu * three) + w * u / 2 * two / three, 1e-14);
		/* By quadrature: shear mu U / h -+ h p' / 2, p' = 6 mu U / h^2 - 12 mu q / h^3. */
		const double a = sqrt(2 * r * film), end = atan(half / a);
		const double q = dp / (12 * mu * three) + u / 2 * two / three;
		double still = 0, sliding = 0;
		const int n = 2000;
		for (int i = 0; i <= n; i++) {
			const double x = a * tan(end * (2.0 * i / n - 1));
			const double h = film + x * x / (2 * r), dx = a + x * x / a;
			const double press =
				h / 2 * (6 * mu * u / (h * h) - 12 * mu * q / pow(h, 3));
			still += weight(i, n) * 2 * end * dx * (mu * u / h - press);
			sliding -= weight(i, n) * 2 * end * dx * (mu * u / h + press);
		}
		CHECK_NEAR(vane_slot_tip_still_force(w, film, r, half, dp, mu, u, NULL), w * still,
			   1e-9);
		CHECK_NEAR(vane_slot_tip_sliding_force(w, film, r, half, dp, mu, u, NULL),
			   w * sliding, 1e-9);
	}
	CHECK_NEAR(vane_slot_tip_still_force(w, film, 1e12, 1e-4, dp, mu, u, NULL),
		   vane_slot_still_wall_force(w, film, 2e-4, dp, mu, u, NULL), 1e-9);
	CHECK_NEAR(vane_slot_tip_sliding_force(w, film, 1e12, 1e-4, dp, mu, u, NULL),
		   vane_slot_sliding_wall_force(w, film, 2e-4, dp, mu, u, NULL), 1e-9);
}
END_TEST

START_TEST(ducts_and_pipes)
{
	ck_assert(vane_slot_duct_factor(0, NULL) == 1);
	ck_assert(vane_slot_duct_friction(0, NULL) == 96);
	/* Far walls: their share is 0.63 of the ratio. */
	CHECK_NEAR(1 - vane_slot_duct_factor(0x1p-20, NULL), 0x1p-20 * 0.6302488762838669, 1e-9);
	CHECK_NEAR(vane_slot_duct_flow(1, 1e-12, 0.1, 1e5, 0.03, NULL),
		   vane_slot_flow(1, 1e-12, 0.1, 1e5, 0.03, 0, NULL), 1e-12);
	CHECK_NEAR(vane_slot_duct_flow(0.3, 0.2, 0.1, 1e5, 0.03, NULL),
		   vane_slot_duct_flow(0.2, 0.3, 0.1, 1e5, 0.03, NULL), 0);
	/* Square, White's series at 40 digits by mpmath. */
	CHECK_NEAR(vane_slot_duct_factor(1, NULL), 0.42173104486546115, 3e-16);
	const double q = vane_slot_duct_flow(0.3, 0.2, 1, 1, 1, NULL), wet = 2 * 0.06 / 0.5;
	CHECK_NEAR(vane_slot_duct_friction(0.2 / 0.3, NULL), 2 * wet * wet * 0.06 / q, 1e-14);
	CHECK_NEAR(vane_slot_duct_reynolds(-q, 0.3, 0.2, 0.5, NULL), q / 0.06 * wet / 0.5, 1e-14);
	CHECK_NEAR(vane_slot_duct_wall_shear(0.3, 0.2, 4, 1e3, NULL), 1e3 * wet / 16, 1e-14);
	const double d = 0.01, dp = 1e4, mu = 0.03, slip = 1e-7;
	CHECK_NEAR(vane_slot_pipe_wall_shear(d, 2, dp, NULL),
		   mu * vane_slot_pipe_velocity(d, 2, dp, mu, d / 2 - slip, NULL) / slip, 1e-4);
	ck_assert(vane_slot_pipe_velocity(d, 2, dp, mu, d / 2, NULL) == 0);
	/* f Re = 64: K Re d / (64 L) is K |q| / (16 pi nu L). */
	const double re = vane_slot_pipe_reynolds(1e-4, d, 3e-5, NULL);
	CHECK_NEAR(vane_slot_pipe_inertia(-1e-4, 2, 3e-5, NULL), 2.25 * re * d / (64 * 2), 1e-14);
	/* A slot's entry in terms of its own Reynolds number. */
	CHECK_NEAR(vane_slot_entry_length(1e-4, 500, NULL), 0.011 * 2e-4 * 500, 1e-15);
	CHECK_NEAR(vane_slot_pipe_entry_length(d, 500, NULL), 0.056 * d * 500, 1e-15);
}
END_TEST

START_TEST(networks_and_openings)
{
	const double g = 3e-17, area = 4e-7, dp = 5e6, mu = 0.03, rho = 860;
	CHECK_NEAR(vane_slot_inertial_flow(g, area, -dp, mu, rho, 0, NULL), -g * dp / mu, 1e-15);
	/* Without friction to speak of, a loss of K heads. */
	CHECK_NEAR(vane_slot_inertial_flow(1, area, dp, 1e-9, rho, 2, NULL),
		   vane_slot_sharp_orifice_flow(area, dp, rho, 1 / sqrt(2), NULL), 1e-12);
	/* It satisfies its own balance. */
	const double q = vane_slot_inertial_flow(3e-14, area, dp, mu, rho, 1.674, NULL);
	CHECK_NEAR(mu * q / 3e-14 + 1.674 * rho / 2 * q * q / area / area, dp, 1e-14);
	CHECK_NEAR(vane_slot_inertial_flow(3e-14, area, -dp, mu, rho, 1.674, NULL), -q, 0);
	ck_assert(vane_slot_inertial_flow(g, area, 0, mu, rho, 1, NULL) == 0);

	CHECK_NEAR(vane_slot_in_series(2, 2, NULL), 1, 0);
	CHECK_NEAR(vane_slot_in_series(3, 6, NULL), 2, 1e-15);
	ck_assert(vane_slot_in_series(0, 3, NULL) == 0 && vane_slot_in_series(0, 0, NULL) == 0);
	CHECK_NEAR(vane_slot_in_series(1e300, 1e300, NULL), 5e299, 0);
	CHECK_NEAR(vane_slot_in_parallel(3, 6, NULL), 9, 0);

	/* The smooth orifice joins the plain one. */
	CHECK_NEAR(vane_slot_sharp_orifice_flow(1e-6, -1e9, 860, 0.6, NULL),
		   vane_slot_orifice_flow(1e-6, -1e9, 860, 1e-9, 0.6, NULL), 1e-12);
	ck_assert(vane_slot_sharp_orifice_flow(1e-6, 0, 860, 0.6, NULL) == 0);
	CHECK_NEAR(vane_slot_discharge_coefficient(
			   1e-6, vane_slot_sharp_orifice_flow(1e-6, -dp, rho, 0.6, NULL), dp, rho,
			   NULL),
		   0.6, 1e-15);
	double last = vane_slot_contraction(0, NULL);
	CHECK_NEAR(last, PI / (PI + 2), 1e-15);
	for (double r = 1.0 / 64; r <= 1; r += 1.0 / 64) {
		const double jet = vane_slot_contraction(r, NULL), m = jet * r;
		ck_assert(jet > last);
		CHECK_NEAR(m + 2 / PI * (1 - m * m) * atan(m), r, 1e-14);
		last = jet;
	}
	ck_assert(last == 1);
}
END_TEST

START_TEST(warming)
{
	const double dp = 15e6, alpha = 2e-8, mu = 0.03;
	/* Constant viscosity is the limit of all. */
	CHECK_NEAR(vane_slot_barus_viscosity(mu, 0, dp, -dp, NULL), mu, 0);
	CHECK_NEAR(vane_slot_barus_viscosity(mu, 1e-20, dp, 0, NULL), mu, 1e-12);
	CHECK_NEAR(vane_slot_barus_viscosity(mu, alpha, dp, dp, NULL), mu * exp(alpha * dp), 1e-15);
	CHECK_NEAR(vane_slot_barus_viscosity(mu, alpha, 0, dp, NULL),
		   vane_slot_barus_viscosity(mu, alpha, dp, 0, NULL), 0);
	ck_assert(vane_slot_isothermal_factor(dp, 0, NULL) == 1);
	ck_assert(vane_slot_isothermal_factor(0, alpha, NULL) == 1);
	ck_assert(vane_slot_adiabatic_factor(dp, 0, 0, 860, 1950, NULL) == 1);
	/* The same flow, seen from the entry. */
	CHECK_NEAR(vane_slot_isothermal_factor(dp, alpha, NULL),
		   mu * exp(alpha * dp) / vane_slot_barus_viscosity(mu, alpha, dp, 0, NULL), 1e-14);
	CHECK_NEAR(vane_slot_adiabatic_factor(dp, alpha, 0, 860, 1950, NULL),
		   vane_slot_isothermal_factor(dp, alpha, NULL), 1e-15);
	/* Throttling is friction of its own power. */
	CHECK_NEAR(vane_slot_friction_temperature_rise(dp * 1e-5, 1e-5, 860, 1950, NULL),
		   vane_slot_temperature_rise(dp, 860, 1950, NULL), 1e-15);
	/* White, Brinkman number 8: mu U^2 = 8 k dT. */
	CHECK_NEAR(vane_slot_couette_temperature_rise(0.1, -8, 0.8, NULL), 1, 1e-15);
	/* Plates: k T'' = -tau^2 / mu integrated twice, Simpson. */
	const double h = 2e-5, k = 0.13;
	double rise = 0;
	for (int i = 0; i <= 200; i++) {
		const double y = h / 2 * i / 200;
		const double tau = vane_slot_shear(h, 0.01, 1e6, mu, 0, y, NULL);
		rise += weight(i, 200) * h / 2 * tau * tau / mu * y / k;
	}
	CHECK_NEAR(vane_slot_poiseuille_temperature_rise(h, 0.01, 1e6, mu, k, NULL), rise, 1e-9);
}
END_TEST

START_TEST(regimes)
{
	vane_slot_film film = {0.5, 15e6, 2e-8, 0.034, 860, 1950};
	vane_slot_heat heat;
	vane_error error;
	const struct {
		double graetz;
		int32_t regime;
	} known[] = {{0, VANE_SLOT_ISOTHERMAL},     {0.999, VANE_SLOT_ISOTHERMAL},
		     {1, VANE_SLOT_BETWEEN},        {10, VANE_SLOT_BETWEEN},
		     {10.001, VANE_SLOT_ADIABATIC}, {16.435, VANE_SLOT_ADIABATIC}};
	for (size_t i = 0; i < sizeof known / sizeof *known; i++) {
		film.graetz = known[i].graetz;
		ck_assert_int_eq(vane_slot_heating(&film, &heat, &error), VANE_OK);
		ck_assert_int_eq(error.code, VANE_OK);
		ck_assert_int_eq(heat.regime, known[i].regime);
		const double cool = vane_slot_isothermal_factor(15e6, 2e-8, NULL);
		const double warm = vane_slot_adiabatic_factor(15e6, 2e-8, 0.034, 860, 1950, NULL);
		ck_assert(heat.isothermal_factor == cool && heat.adiabatic_factor == warm);
		ck_assert(heat.least_factor ==
			  (known[i].regime == VANE_SLOT_ADIABATIC ? warm : cool));
		ck_assert(heat.greatest_factor ==
			  (known[i].regime == VANE_SLOT_ISOTHERMAL ? cool : warm));
		CHECK_NEAR(heat.temperature_rise, 15e6 / 860 / 1950, 1e-15);
	}
	ck_assert_int_eq(vane_slot_heating(&film, &heat, NULL), VANE_OK);
	ck_assert_int_eq(vane_slot_heating(&film, NULL, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
	ck_assert_int_eq(vane_slot_heating(NULL, &heat, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "film");
	ck_assert(isnan(heat.least_factor) && heat.regime == 0);
	const char *const name[] = {"film.graetz",
				    "film.dp",
				    "film.pressure_viscosity",
				    "film.viscosity_temperature",
				    "film.density",
				    "film.specific_heat"};
	const vane_slot_film good = film;
	double *const field[] = {&film.graetz,
				 &film.dp,
				 &film.pressure_viscosity,
				 &film.viscosity_temperature,
				 &film.density,
				 &film.specific_heat};
	for (int i = 0; i < 6; i++) {
		const double bad[] = {-1e-300, NAN, INFINITY, -INFINITY};
		for (int k = 0; k < 4; k++) {
			*field[i] = bad[k];
			ck_assert_int_eq(vane_slot_heating(&film, &heat, &error),
					 VANE_INVALID_ARGUMENT);
			ck_assert_str_eq(error.name, name[i]);
			ck_assert(isnan(heat.isothermal_factor) && isnan(heat.adiabatic_factor) &&
				  isnan(heat.least_factor) && isnan(heat.greatest_factor) &&
				  isnan(heat.temperature_rise) && heat.regime == 0);
		}
		film = good;
	}
	film.dp = 1e300;
	ck_assert_int_eq(vane_slot_heating(&film, &heat, &error), VANE_OUT_OF_RANGE);
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(heat.adiabatic_factor) && isnan(heat.temperature_rise));
}
END_TEST

START_TEST(overflow)
{
	vane_error error;
	ck_assert(isnan(vane_slot_pipe_flow(1e200, 1, 1, 1, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_slot_annulus_exact_flow(1, 1e150, 1, 0.3, 1, 1, 0, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_slot_isothermal_factor(1e12, 1, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_slot_in_parallel(1.5e308, 1.5e308, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

SUITE("slot_limits", exact_annulus, rotation, plates_and_discs, tapers, steps, tips,
      ducts_and_pipes, networks_and_openings, warming, regimes, overflow)
