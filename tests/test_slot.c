#include "row.h"
#include "vane/slot.h"

#include <string.h>

static const double PI = 3.14159265358979323846;

START_TEST(published)
{
	const double inch = 0.0254, psi = 6894.757293168361;
	const double power_torque =
		vane_slot_shear_force(PI * 3 * inch, 1.25 * inch, 0.00125 * inch,
				      2.01e-4 * 47.88025898, PI * 60 * 3 * inch, NULL) *
		1.5 * inch;
	const double push = vane_slot_annulus_flow(0.05, 2e-4, 0.13, 0, 1.4e6, 0.087, 0, NULL);
	const double drag = vane_slot_annulus_flow(0.05, 2e-4, 0.13, 0, 0, 0.087, 1, NULL);
	const double oil = vane_slot_flow(1, 0.012, 25, 1, 0.105, 0, NULL);
	const double tip3 = vane_slot_tip_flow(12, 1e-5, 3e-3, 1e6, 1, 1, 0, NULL);
	const double tip2 = vane_slot_tip_flow(2, 1e-5, 3e-3, 1e6, 0, 1, 1, NULL);
	const double open =
		vane_slot_orifice_flow(3.14 * inch * inch, 120 * psi, 850, 1e-6, 1, NULL);
	const row rows[] = {
		{"S-03 Fox & McDonald Example 8.2, torque, in lbf", power_torque / 0.1129848290,
		 11.2, 0.05},
		{"S-03 Fox & McDonald Example 8.2, power, hp",
		 power_torque * 120 * PI / 745.6998716, 0.64, 0.003},
		{"S-04 Massey & Ward-Smith Example 6.2",
		 vane_slot_disc_flow(1e-3, 0.01, 0.06, 2 * PI, 15e3, 0.6, NULL), 7.31e-6, 5e-9},
		{"S-05 Massey & Ward-Smith Example 6.3",
		 vane_slot_flow(1, 0.18e-3, 0.12, 12e3, 0.5, 5, NULL), 4.5e-4, 5e-6},
		{"S-06 Massey & Ward-Smith Example 6.4", push / (PI * 0.025 * 0.025 + drag), 0.0065,
		 5e-5},
		{"S-09 Subramanya Example 7.19",
		 60000 * vane_slot_flow(1, 0.12e-3, 0.5, 5 * 9790, 998e-6, 0, NULL), 0.848, 0.0006},
		{"S-10 Subramanya Example 7.21, head loss", 1.4 * 0.012 / oil / (0.92 * 998 * 9.81),
		 34, 0.05},
		{"S-10 Subramanya Example 7.21, wall shear", 1.4 * 0.012 / oil * 0.012 / 50, 73.5,
		 0.05},
		{"S-13 de Nevers Example 6.13, in3/h",
		 3600 / (inch * inch * inch) *
			 vane_slot_annulus_flow(0.25 * inch, 1e-4 * inch, inch, 0, 100 * psi,
						0.6e-3, 0, NULL),
		 0.27, 0.005},
		{"S-O2 Sullivan 4th ed. Example 5.4", 1000 * 231 * inch * inch * inch / 60 / open,
		 0.7, 0.01},
		{"S-P1 parabolic gap, integral of h^-3 (from memory)", 1 / tip3, 2.885737e11, 5e4},
		{"S-P2 parabolic gap, integral of h^-2 (from memory)", tip2 / tip3, 3847649, 0.5},
		{"S-P3 Cambridge Tripos Part II 2004 B2.25 (from memory)",
		 vane_slot_tip_flow(1, 20e-6, 5e-3, 1e6, 1e5, 0.03, 0, NULL), 4.217852e-6, 5e-13},
		{"S-T1 Merritt 1967, taper (from memory)",
		 1 / vane_slot_taper_flow(12, 20e-6, 10e-6, 0.01, 1, 1, NULL), 3.75e12, 3.75e3},
		/* The book replaces the logarithm by a mean; 1.4 % at this ratio. */
		{"S-Q4 Rabie 2009 eq. 2.24 (from memory)",
		 vane_slot_disc_flow(20e-6, 1e-3, 1.5e-3, 2 * PI, 1e6, 0.03, NULL), 3.490659e-7,
		 0.015 * 3.490659e-7},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(thin_annulus_factor)
{
	const double centred = vane_slot_annulus_flow(0.02, 1e-5, 0.1, 0, 1e6, 0.03, 0, NULL);
	const row rows[] = {
		{"S-E-thin Merritt 1967 (from memory), eps 0.5",
		 vane_slot_annulus_flow(0.02, 1e-5, 0.1, 0.5, 1e6, 0.03, 0, NULL) / centred, 1.375,
		 1e-12},
		{"S-E-thin Merritt 1967 (from memory), eps 1",
		 vane_slot_annulus_flow(0.02, 1e-5, 0.1, 1, 1e6, 0.03, 0, NULL) / centred, 2.5,
		 1e-12},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(centred, vane_slot_flow(PI * 0.02, 1e-5, 0.1, 1e6, 0.03, 0, NULL), 1e-15);
}
END_TEST

/* An invented pump, computed beforehand by a separate program. */
START_TEST(worked_pump)
{
	const double mu = 0.02752, dp = 15e6, H = 0.4250911, J = 710.918556;
	const double ER = 0.981240, Er = 0.889890, omega = 157.0796;
	const double RR = vane_slot_tip_radius(1.2e-3, 33e-3, NULL);
	const double Rr = vane_slot_tip_radius(1.2e-3, 28.6e-3, NULL);
	const double I3 = 1 / vane_slot_tip_flow(12, 1e-6, RR, 0.9e-3, 1, 1, 0, NULL);
	const double ratio = vane_slot_tip_flow(2, 1e-6, RR, 0.9e-3, 0, 1, 1, NULL);
	const double tip_drag =
		2 * (vane_slot_tip_flow(0.024, 1e-6, RR, 0.9e-3, 0, mu, omega * 33e-3, NULL) -
		     vane_slot_tip_flow(0.024, 1e-6, Rr, 0.9e-3, 0, mu, omega * 28.6e-3, NULL));
	const double tangential =
		4 * (ER * vane_slot_flow(4.7e-3, 17.5e-6, 1.8e-3, dp, mu, 0, NULL) +
		     Er * vane_slot_flow(0.3e-3, 17.5e-6, 1.8e-3, dp, mu, 0, NULL));
	const row rows[] = {
		{"edge factor, conformal", vane_slot_edge_factor(0.0636150, H, NULL), 0.59498270,
		 5e-7},
		{"equivalent radius, mm", 1e3 * RR, 1.2452830, 5e-8},
		{"I3", I3, 5.879360556e13, 5e4},
		{"I2", ratio * I3, 7.838583627e7, 5e-2},
		{"groove to bore", vane_slot_disc_flow(20e-6, 11.5e-3, 15.5e-3, 2 * PI, 1, 1, NULL),
		 1.403312763e-14, 5e-24},
		{"shaft annulus",
		 vane_slot_annulus_flow(22.88e-3, 60e-6, 18e-3, 0.5, 1, 1, 0, NULL), 9.883450e-14,
		 5e-21},
		{"outer face",
		 2 * 0.8488110 *
			 vane_slot_disc_flow(20e-6, 18.5e-3, 28.3e-3, 3.0368729, dp, mu, NULL),
		 4.406940670e-6, 5e-13},
		{"around the seal vane",
		 4 * (ER + Er) * vane_slot_edge_flow(20e-6, 0.0636150, H, dp, mu, NULL),
		 1.618153532e-6, 3e-12},
		{"vane ends, tangential", tangential, 2.639220600e-6, 3e-12},
		{"vane ends, radial", 2 * vane_slot_flow(1.8e-3, 17.5e-6, 1 / J, dp, mu, 0, NULL),
		 6.230143937e-7, 5e-16},
		{"slot, against one wall",
		 vane_slot_vane_flow(23.965e-3, 25e-6, 1 / J, 1, dp, mu, NULL), 1.209146416e-5,
		 1e-14},
		{"slot, centred, L/min",
		 6e4 * vane_slot_vane_flow(23.965e-3, 25e-6, 1 / J, 0, dp, mu, NULL), 0.181372,
		 5e-7},
		{"tip, pressure part",
		 2 * (ER * vane_slot_tip_flow(0.024, 1e-6, RR, 0.9e-3, dp, mu, 0, NULL) +
		      Er * vane_slot_tip_flow(0.024, 1e-6, Rr, 0.9e-3, dp, mu, 0, NULL)),
		 6.929082162e-8, 1e-13},
		{"tip, drag part", tip_drag, 2.211531199e-8, 5e-14},
		{"orifice, L/min", 6e4 * vane_slot_orifice_flow(0.5e-6, dp, 860, 32e-6, 0.7, NULL),
		 3.922209, 5e-7},
	};
	ROWS_CHECK(rows);

	const double q = vane_slot_flow(1, 17.5e-6, 1.8e-3, dp, mu, 0, NULL);
	const row numbers[] = {
		{"Graetz, vane end", vane_slot_graetz(q, 1, 17.5e-6, 1.8e-3, 8e-8, NULL), 16.435,
		 5e-4},
		{"Reynolds, vane end", vane_slot_reynolds(q, 1, 32e-6, NULL), 8.5, 0.05},
		{"inertia, vane end", vane_slot_inertia(q, 1, 17.5e-6, 1.8e-3, 32e-6, NULL), 2.9e-3,
		 5e-5},
	};
	ROWS_CHECK(numbers);
}
END_TEST

/* Flow with inertia over flow without is 2 / (1 + sqrt(1 + 4 r)), r the ratio
 * at the flow without. */
START_TEST(inertia_ratio)
{
	const double gap[] = {12.5e-6, 60e-6, 100e-6}, want[] = {0.999012, 0.724292, 0.388364};
	for (int i = 0; i < 3; i++) {
		const double q = vane_slot_flow(0.02, gap[i], 5e-3, 15e6, 860 * 1e-5, 0, NULL);
		const double r = vane_slot_inertia(q, 0.02, gap[i], 5e-3, 1e-5, NULL);
		const row one = {"invented slot", 2 / (1 + sqrt(1 + 4 * r)), want[i], 5e-7};
		row_check(&one);
	}
}
END_TEST

/* Against the dilogarithm's defining series, and its expansion at 0. */
START_TEST(edge_limits)
{
	const double delta[] = {1e-12, 1e-9, 1e-4, 0.1, 0.22, 1, 6};
	for (size_t i = 0; i < sizeof delta / sizeof *delta; i++) {
		const double s = PI * delta[i], f = vane_slot_edge_factor(delta[i], 1, NULL);
		if (delta[i] < 1e-3) {
			CHECK_NEAR(f, (1 - log(s) + s / 4) / PI, 1e-9);
			continue;
		}
		double sum = PI * PI / 6;
		for (int k = 400; k > 0; k--)
			sum -= exp(-k * s) / k / k;
		CHECK_NEAR(f, sum / (PI * s), 1e-13);
	}
	/* The two branches meet. */
	CHECK_NEAR(vane_slot_edge_factor(1.0001e-9 / PI, 1, NULL),
		   vane_slot_edge_factor(0.9999e-9 / PI, 1, NULL) - log(1.0001 / 0.9999) / PI,
		   1e-14);
	CHECK_NEAR(vane_slot_edge_factor(6, 1e-6, NULL), 1e-6 / 36, 1e-12);
	ck_assert(isfinite(vane_slot_edge_factor(1e-300, 1e300, NULL)));
}
END_TEST

static double tip_integral(double film, double radius, double half, int power)
{
	/* x = a tan(t) makes the integrand smooth; Simpson. */
	const double a = sqrt(2 * radius * film), end = atan(half / a);
	const int n = 2000;
	double sum = 0;
	for (int i = 0; i <= n; i++) {
		const double x = a * tan(end * i / n), h = film + x * x / (2 * radius);
		const double f = (a + x * x / a) / pow(h, power);
		sum += f * (i == 0 || i == n ? 1 : i % 2 ? 4 : 2);
	}
	return 2 * sum * end / n / 3;
}

START_TEST(tip_quadrature)
{
	const double film[] = {1e-7, 1e-6, 2e-5, 1e-3}, half[] = {1e-6, 5e-5, 9e-4};
	for (int i = 0; i < 4; i++)
		for (int k = 0; k < 3; k++) {
			const double three = tip_integral(film[i], 1.2e-3, half[k], 3);
			const double two = tip_integral(film[i], 1.2e-3, half[k], 2);
			CHECK_NEAR(vane_slot_tip_flow(0.02, film[i], 1.2e-3, half[k], 3e6, 0.03, 0,
						      NULL),
				   0.02 * 3e6 / (12 * 0.03 * three), 1e-11);
			CHECK_NEAR(vane_slot_tip_flow(0.02, film[i], 1.2e-3, half[k], 0, 0.03, 5,
						      NULL),
				   0.02 * 2.5 * two / three, 1e-11);
		}
}
END_TEST

START_TEST(limits)
{
	ck_assert(vane_slot_flow(1, 0, 1, 1e6, 0.03, 3, NULL) == 0);
	ck_assert(vane_slot_disc_flow(0, 1, 2, 1, 1e6, 0.03, NULL) == 0);
	ck_assert(vane_slot_edge_flow(0, 0.1, 0.4, 1e6, 0.03, NULL) == 0);
	ck_assert(vane_slot_annulus_flow(1, 0, 1, 0, 1e6, 0.03, 3, NULL) == 0);
	ck_assert(vane_slot_vane_flow(1, 0, 1, 0, 1e6, 0.03, NULL) == 0);
	ck_assert(vane_slot_taper_flow(1, 0, 0, 1, 1e6, 0.03, NULL) == 0);
	ck_assert(vane_slot_taper_flow(1, 0, 1e-5, 1, 1e6, 0.03, NULL) == 0);
	ck_assert(vane_slot_tip_flow(1, 0, 1e-3, 1e-3, 1e6, 0.03, 3, NULL) == 0);
	ck_assert(vane_slot_orifice_flow(1e-6, 0, 860, 32e-6, 0.7, NULL) == 0);
	/* Couette only. */
	CHECK_NEAR(vane_slot_flow(0.02, 1e-5, 0.01, 0, 0.03, 4, NULL), 0.02 * 1e-5 * 2, 1e-15);
	CHECK_NEAR(vane_slot_annulus_flow(0.02, 1e-5, 0.01, 1, 0, 0.03, 4, NULL),
		   PI * 0.02 * 1e-5 * 2, 1e-15);
	/* A taper of no slope, a tip of no curvature, a short tip: a parallel slot. */
	const double flat = vane_slot_flow(0.02, 1e-5, 2e-3, 1e6, 0.03, 4, NULL);
	const double still = vane_slot_flow(0.02, 1e-5, 2e-3, 1e6, 0.03, 0, NULL);
	CHECK_NEAR(vane_slot_taper_flow(0.02, 1e-5, 1e-5, 2e-3, 1e6, 0.03, NULL), still, 1e-15);
	CHECK_NEAR(vane_slot_tip_flow(0.02, 1e-5, 1e9, 1e-3, 1e6, 0.03, 4, NULL), flat, 1e-9);
	/* Discs whose edges nearly meet: a slot as long as their difference. */
	CHECK_NEAR(vane_slot_disc_flow(1e-5, 1, 1 + 0x1p-30, 0.02, 1e6, 0.03, NULL),
		   vane_slot_flow(0.02, 1e-5, 0x1p-30, 1e6, 0.03, 0, NULL), 1e-9);
	/* The vane's two flanks are two slots. */
	CHECK_NEAR(vane_slot_vane_flow(0.02, 1e-5, 0.01, 0.4, 1e6, 0.03, NULL),
		   vane_slot_flow(0.02, 0.7e-5, 0.01, 1e6, 0.03, 0, NULL) +
			   vane_slot_flow(0.02, 0.3e-5, 0.01, 1e6, 0.03, 0, NULL),
		   1e-14);
	CHECK_NEAR(vane_slot_tip_radius(1.2e-3, 1e9, NULL), 1.2e-3, 1e-11);
	/* Couette share of a long tip moves with 4/3 of the film. */
	CHECK_NEAR(vane_slot_tip_flow(2, 1e-6, 1e-3, 1e9, 0, 1, 1, NULL), 4e-6 / 3, 1e-12);
	/* The law itself, mpmath: it turns at 564.6 Pa here. */
	CHECK_NEAR(vane_slot_orifice_flow(0.5e-6, 1, 860, 32e-6, 0.7, NULL), 7.103254509343905e-10,
		   1e-14);
	CHECK_NEAR(vane_slot_orifice_flow(0.5e-6, 600, 860, 32e-6, 0.7, NULL),
		   3.5281841281753899e-7, 1e-14);
	/* Far above and far below the turn of the orifice. */
	CHECK_NEAR(vane_slot_orifice_flow(1e-6, 1e9, 860, 1e-9, 0.6, NULL),
		   0.6e-6 * sqrt(2e9 / 860), 1e-12);
	CHECK_NEAR(vane_slot_orifice_flow(1e-6, 2, 860, 1, 0.6, NULL),
		   2 * vane_slot_orifice_flow(1e-6, 1, 860, 1, 0.6, NULL), 1e-12);
}
END_TEST

START_TEST(symmetry_and_scaling)
{
	for (double dp = 1; dp < 1e8; dp *= 37) {
		CHECK_NEAR(vane_slot_flow(0.1, 1e-5, 0.2, -dp, 0.03, -2, NULL),
			   -vane_slot_flow(0.1, 1e-5, 0.2, dp, 0.03, 2, NULL), 0);
		CHECK_NEAR(vane_slot_disc_flow(1e-5, 0.1, 0.2, 2, -dp, 0.03, NULL),
			   -vane_slot_disc_flow(1e-5, 0.1, 0.2, 2, dp, 0.03, NULL), 0);
		CHECK_NEAR(vane_slot_edge_flow(1e-5, 0.1, 0.2, -dp, 0.03, NULL),
			   -vane_slot_edge_flow(1e-5, 0.1, 0.2, dp, 0.03, NULL), 0);
		CHECK_NEAR(vane_slot_annulus_flow(0.1, 1e-5, 0.2, 0.3, -dp, 0.03, -2, NULL),
			   -vane_slot_annulus_flow(0.1, 1e-5, 0.2, 0.3, dp, 0.03, 2, NULL), 0);
		CHECK_NEAR(vane_slot_vane_flow(0.1, 1e-5, 0.2, 0.3, -dp, 0.03, NULL),
			   -vane_slot_vane_flow(0.1, 1e-5, 0.2, 0.3, dp, 0.03, NULL), 0);
		CHECK_NEAR(vane_slot_taper_flow(0.1, 1e-5, 2e-5, 0.2, -dp, 0.03, NULL),
			   -vane_slot_taper_flow(0.1, 2e-5, 1e-5, 0.2, dp, 0.03, NULL), 0);
		CHECK_NEAR(vane_slot_tip_flow(0.1, 1e-5, 1e-3, 1e-3, -dp, 0.03, -2, NULL),
			   -vane_slot_tip_flow(0.1, 1e-5, 1e-3, 1e-3, dp, 0.03, 2, NULL), 0);
		CHECK_NEAR(vane_slot_orifice_flow(1e-6, -dp, 860, 32e-6, 0.7, NULL),
			   -vane_slot_orifice_flow(1e-6, dp, 860, 32e-6, 0.7, NULL), 0);
	}
	CHECK_NEAR(vane_slot_flow(0.1, 2e-5, 0.2, 1e6, 0.03, 0, NULL),
		   8 * vane_slot_flow(0.1, 1e-5, 0.2, 1e6, 0.03, 0, NULL), 1e-15);
	/* A lifted vane leaks with the power 2.5 of its film. */
	CHECK_NEAR(vane_slot_tip_flow(0.1, 4e-6, 1e-3, 1e6, 1e6, 0.03, 0, NULL),
		   32 * vane_slot_tip_flow(0.1, 1e-6, 1e-3, 1e6, 1e6, 0.03, 0, NULL), 1e-12);
	CHECK_NEAR(vane_slot_reynolds(-3e-6, 0.1, 3e-5, NULL), 2, 1e-14);
	CHECK_NEAR(vane_slot_tip_reynolds(-3e-6, 0.1, 3e-5, NULL), 2, 1e-14);
	CHECK_NEAR(vane_slot_disc_reynolds(-3e-6, 0.1, 2, 3e-5, NULL), 1, 1e-14);
	CHECK_NEAR(vane_slot_annulus_reynolds(-3e-6, 0.1, 3e-5, NULL), 2 / PI, 1e-14);
	CHECK_NEAR(vane_slot_shear_force(0.1, 0.2, 1e-5, 0.03, -4, NULL), -240, 1e-14);
}
END_TEST

enum { MOST = 7 };

typedef struct formula {
	const char *title;
	double (*run)(const double x[MOST], vane_error *error);
	int count;
	struct {
		const char *name;
		double good, bad[3];
	} argument[MOST];
} formula;

#define ABOVE                                                                                      \
	{                                                                                          \
		-1, 0, -1e-300                                                                     \
	}
#define LEAST                                                                                      \
	{                                                                                          \
		-1, -1e-300, -1e300                                                                \
	}
#define ANY                                                                                        \
	{                                                                                          \
		NAN, INFINITY, -INFINITY                                                           \
	}
#define UNIT                                                                                       \
	{                                                                                          \
		-1e-300, 1.0000001, -1                                                             \
	}
#define TURN                                                                                       \
	{                                                                                          \
		0, 6.2831854, -1                                                                   \
	}

#define RUN(name, ...)                                                                             \
	static double run_##name(const double x[MOST], vane_error *e)                              \
	{                                                                                          \
		return vane_slot_##name(__VA_ARGS__, e);                                           \
	}

RUN(flow, x[0], x[1], x[2], x[3], x[4], x[5])
RUN(disc_flow, x[0], x[1], x[2], x[3], x[4], x[5])
RUN(edge_factor, x[0], x[1])
RUN(edge_flow, x[0], x[1], x[2], x[3], x[4])
RUN(annulus_flow, x[0], x[1], x[2], x[3], x[4], x[5], x[6])
RUN(vane_flow, x[0], x[1], x[2], x[3], x[4], x[5])
RUN(taper_flow, x[0], x[1], x[2], x[3], x[4], x[5])
RUN(tip_flow, x[0], x[1], x[2], x[3], x[4], x[5], x[6])
RUN(tip_radius, x[0], x[1])
RUN(reynolds, x[0], x[1], x[2])
RUN(disc_reynolds, x[0], x[1], x[2], x[3])
RUN(annulus_reynolds, x[0], x[1], x[2])
RUN(tip_reynolds, x[0], x[1], x[2])
RUN(inertia, x[0], x[1], x[2], x[3], x[4])
RUN(graetz, x[0], x[1], x[2], x[3], x[4])
RUN(shear_force, x[0], x[1], x[2], x[3], x[4])
RUN(orifice_flow, x[0], x[1], x[2], x[3], x[4])

#define WIDTH                                                                                      \
	{                                                                                          \
		"width", 0.1, ABOVE                                                                \
	}
#define GAP                                                                                        \
	{                                                                                          \
		"gap", 1e-5, LEAST                                                                 \
	}
#define OPEN_GAP                                                                                   \
	{                                                                                          \
		"gap", 1e-5, ABOVE                                                                 \
	}
#define LENGTH                                                                                     \
	{                                                                                          \
		"length", 0.2, ABOVE                                                               \
	}
#define DP                                                                                         \
	{                                                                                          \
		"dp", 1e6, ANY                                                                     \
	}
#define VISCOSITY                                                                                  \
	{                                                                                          \
		"viscosity", 0.03, ABOVE                                                           \
	}
#define KINEMATIC                                                                                  \
	{                                                                                          \
		"kinematic_viscosity", 3e-5, ABOVE                                                 \
	}
#define SPEED                                                                                      \
	{                                                                                          \
		"wall_speed", 2, ANY                                                               \
	}
#define FLOW                                                                                       \
	{                                                                                          \
		"flow", 1e-5, ANY                                                                  \
	}
#define EDGE                                                                                       \
	{"vane_angle", 0.06, TURN},                                                                \
	{                                                                                          \
		"log_ratio", 0.4, ABOVE                                                            \
	}

static const formula formulas[] = {
	{"flow", run_flow, 6, {WIDTH, GAP, LENGTH, DP, VISCOSITY, SPEED}},
	{"disc_flow",
	 run_disc_flow,
	 6,
	 {GAP,
	  {"inner_radius", 0.1, ABOVE},
	  {"outer_radius", 0.2, {0.1, 0.05, -1}},
	  {"angle", 2, TURN},
	  DP,
	  VISCOSITY}},
	{"edge_factor", run_edge_factor, 2, {EDGE}},
	{"edge_flow", run_edge_flow, 5, {GAP, EDGE, DP, VISCOSITY}},
	{"annulus_flow",
	 run_annulus_flow,
	 7,
	 {{"diameter", 0.1, ABOVE},
	  GAP,
	  LENGTH,
	  {"eccentricity", 0.5, UNIT},
	  DP,
	  VISCOSITY,
	  SPEED}},
	{"vane_flow", run_vane_flow, 6, {WIDTH, GAP, LENGTH, {"offset", 0.5, UNIT}, DP, VISCOSITY}},
	{"taper_flow",
	 run_taper_flow,
	 6,
	 {WIDTH, {"gap_in", 1e-5, LEAST}, {"gap_out", 2e-5, LEAST}, LENGTH, DP, VISCOSITY}},
	{"tip_flow",
	 run_tip_flow,
	 7,
	 {WIDTH,
	  {"film", 1e-6, LEAST},
	  {"radius", 1e-3, ABOVE},
	  {"half_width", 1e-3, ABOVE},
	  DP,
	  VISCOSITY,
	  SPEED}},
	{"tip_radius",
	 run_tip_radius,
	 2,
	 {{"tip_radius", 1e-3, ABOVE}, {"ring_radius", 0.03, {1e-3, 5e-4, -1}}}},
	{"reynolds", run_reynolds, 3, {FLOW, WIDTH, KINEMATIC}},
	{"disc_reynolds",
	 run_disc_reynolds,
	 4,
	 {FLOW, {"inner_radius", 0.1, ABOVE}, {"angle", 2, TURN}, KINEMATIC}},
	{"annulus_reynolds", run_annulus_reynolds, 3, {FLOW, {"diameter", 0.1, ABOVE}, KINEMATIC}},
	{"tip_reynolds", run_tip_reynolds, 3, {FLOW, WIDTH, KINEMATIC}},
	{"inertia", run_inertia, 5, {FLOW, WIDTH, OPEN_GAP, LENGTH, KINEMATIC}},
	{"graetz",
	 run_graetz,
	 5,
	 {FLOW, WIDTH, OPEN_GAP, LENGTH, {"thermal_diffusivity", 8e-8, ABOVE}}},
	{"shear_force", run_shear_force, 5, {WIDTH, LENGTH, OPEN_GAP, VISCOSITY, SPEED}},
	{"orifice_flow",
	 run_orifice_flow,
	 5,
	 {{"area", 1e-6, ABOVE},
	  DP,
	  {"density", 860, ABOVE},
	  KINEMATIC,
	  {"discharge_coefficient", 0.7, {0, 1.0000001, -1}}}},
};

START_TEST(rejections)
{
	for (size_t f = 0; f < sizeof formulas / sizeof *formulas; f++) {
		const formula *one = &formulas[f];
		double x[MOST] = {0};
		vane_error error;
		for (int i = 0; i < one->count; i++)
			x[i] = one->argument[i].good;
		ck_assert_msg(isfinite(one->run(x, &error)) && error.code == VANE_OK, "%s",
			      one->title);
		ck_assert(isfinite(one->run(x, NULL)));
		for (int i = 0; i < one->count; i++) {
			const double bad[] = {one->argument[i].bad[0],
					      one->argument[i].bad[1],
					      one->argument[i].bad[2],
					      NAN,
					      INFINITY,
					      -INFINITY};
			for (int k = 0; k < 6; k++) {
				x[i] = bad[k];
				CHECK_REJECTS(one->run(x, &error), error, one->argument[i].name);
				ck_assert(isnan(one->run(x, NULL)));
			}
			x[i] = one->argument[i].good;
		}
	}
}
END_TEST

START_TEST(overflow)
{
	vane_error error;
	ck_assert(isnan(vane_slot_flow(1, 1e200, 1, 1, 1, 0, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_slot_flow(1, 1e200, 1, 0, 1, 0, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_slot_tip_flow(1, 1e300, 1, 1, 1, 1, 1, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(isnan(vane_slot_reynolds(1e300, 1e-300, 1, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
	ck_assert(vane_slot_disc_flow(1, 1e-300, 1e300, 1, 12, 1, NULL) > 1e-4);
}
END_TEST

SUITE("slot", published, thin_annulus_factor, worked_pump, inertia_ratio, edge_limits,
      tip_quadrature, limits, symmetry_and_scaling, rejections, overflow)
