#include "row.h"
#include "vane/plate.h"

#include <string.h>

static const double inch = 0.0254, psi = 6894.757293168361;

/* Roark's coefficients: outer radius, pressure and stiffness all 1, zone the whole plate. */
static vane_plate unit_plate(double b, int32_t inner, int32_t outer)
{
	const double nu = 0.3;
	return (vane_plate){.inner_radius = b,
			    .outer_radius = 1,
			    .thickness = 1,
			    .modulus = 12 * (1 - nu * nu),
			    .poisson = nu,
			    .pressure = 1,
			    .zone_inner = b,
			    .zone_outer = 1,
			    .force_radius = 1,
			    .inner_edge = inner,
			    .outer_edge = outer};
}

static vane_plate_peaks peaks_of(vane_plate plate)
{
	vane_plate_peaks out;
	ck_assert_int_eq(vane_plate_run(&plate, &out, NULL), VANE_OK);
	return out;
}

static vane_plate_state state_of(vane_plate plate, double radius)
{
	vane_plate_state out;
	ck_assert_int_eq(vane_plate_at(&plate, radius, &out, NULL), VANE_OK);
	return out;
}

enum { FREE = VANE_PLATE_FREE, GUIDED, SUPPORTED, CLAMPED };

static double deflection(double b, int32_t inner, int32_t outer)
{
	return peaks_of(unit_plate(b, inner, outer)).deflection;
}

/* The greatest radial moment; its sign is that of Roark's moment. */
static double moment(double b, int32_t inner, int32_t outer)
{
	return fabs(peaks_of(unit_plate(b, inner, outer)).radial_stress) / 6;
}

START_TEST(annulus_published)
{
	const double half = 0.6e-4, looser = 0.8e-4, m = 1.1e-4;
	const row rows[] = {
		{"R-2b-.3 Roark 7th Table 11.2 case 2b: K_y, b/a 0.3",
		 deflection(0.3, GUIDED, SUPPORTED), 0.0314, half},
		{"R-2b-.5 Roark 7th Table 11.2 case 2b: K_y, b/a 0.5",
		 deflection(0.5, GUIDED, SUPPORTED), 0.0103, half},
		{"R-2b-.7 Roark 7th Table 11.2 case 2b: K_y, b/a 0.7",
		 deflection(0.7, GUIDED, SUPPORTED), 0.0015, half},
		{"R-2e-.5 Roark 7th Table 11.2 case 2e: K_y, b/a 0.5",
		 deflection(0.5, FREE, CLAMPED), 0.0053, half},
		{"R-2bM-.1 Roark 7th Table 11.2 case 2b: K_M, b/a 0.1",
		 moment(0.1, GUIDED, SUPPORTED), 0.3003, m},
		{"R-2bM-.3 Roark 7th Table 11.2 case 2b: K_M, b/a 0.3",
		 moment(0.3, GUIDED, SUPPORTED), 0.2185, m},
		{"R-2bM-.7 Roark 7th Table 11.2 case 2b: K_M, b/a 0.7",
		 moment(0.7, GUIDED, SUPPORTED), 0.0456, m},
		{"R-2eM-.1 Roark 7th Table 11.2 case 2e: K_M, b/a 0.1", moment(0.1, FREE, CLAMPED),
		 0.1246, m},
		{"R-2eM-.3 Roark 7th Table 11.2 case 2e: K_M, b/a 0.3", moment(0.3, FREE, CLAMPED),
		 0.1135, m},
		{"R-2eM-.5 Roark 7th Table 11.2 case 2e: K_M, b/a 0.5", moment(0.5, FREE, CLAMPED),
		 0.08, m},
		{"R-2eM-.7 Roark 7th Table 11.2 case 2e: K_M, b/a 0.7", moment(0.7, FREE, CLAMPED),
		 0.0361, m},
		{"R-2c-.1 Roark 7th Table 11.2 case 2c: K_y, b/a 0.1",
		 deflection(0.1, SUPPORTED, SUPPORTED), 0.006, looser},
		{"R-2c-.3 Roark 7th Table 11.2 case 2c: K_y, b/a 0.3",
		 deflection(0.3, SUPPORTED, SUPPORTED), 0.0029, looser},
		{"R-2c-.5 Roark 7th Table 11.2 case 2c: K_y, b/a 0.5",
		 deflection(0.5, SUPPORTED, SUPPORTED), 0.0008, looser},
		{"R-2d-.1 Roark 7th Table 11.2 case 2d: K_y, b/a 0.1",
		 deflection(0.1, CLAMPED, SUPPORTED), 0.004, looser},
		{"R-2d-.3 Roark 7th Table 11.2 case 2d: K_y, b/a 0.3",
		 deflection(0.3, CLAMPED, SUPPORTED), 0.0014, looser},
		{"R-2d-.5 Roark 7th Table 11.2 case 2d: K_y, b/a 0.5",
		 deflection(0.5, CLAMPED, SUPPORTED), 0.0004, looser},
		{"R-2dM-.1 Roark 7th Table 11.2 case 2d: K_M inside, b/a 0.1",
		 -state_of(unit_plate(0.1, CLAMPED, SUPPORTED), 0.1).radial_moment, 0.2459, m},
		{"R-2dM-.3 Roark 7th Table 11.2 case 2d: K_M inside, b/a 0.3",
		 -state_of(unit_plate(0.3, CLAMPED, SUPPORTED), 0.3).radial_moment, 0.0939, m},
		{"R-2dM-.5 Roark 7th Table 11.2 case 2d: K_M inside, b/a 0.5",
		 -state_of(unit_plate(0.5, CLAMPED, SUPPORTED), 0.5).radial_moment, 0.0393, m},
		{"R-2dM-.7 Roark 7th Table 11.2 case 2d: K_M inside, b/a 0.7",
		 -state_of(unit_plate(0.7, CLAMPED, SUPPORTED), 0.7).radial_moment, 0.01257, m},
		{"R-2dQ-.1 Roark 7th Table 11.2 case 2d: K_Q inside, b/a 0.1",
		 state_of(unit_plate(0.1, CLAMPED, SUPPORTED), 0.1).shear, 2.1375, m},
		{"R-2dQ-.3 Roark 7th Table 11.2 case 2d: K_Q inside, b/a 0.3",
		 peaks_of(unit_plate(0.3, CLAMPED, SUPPORTED)).inner_reaction, 0.7533, m},
		{"R-2dQ-.5 Roark 7th Table 11.2 case 2d: K_Q inside, b/a 0.5",
		 state_of(unit_plate(0.5, CLAMPED, SUPPORTED), 0.5).shear, 0.4096, m},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* Modulus 1 as in the coefficients of Timoshenko. */
static vane_plate_peaks timoshenko(double ratio)
{
	vane_plate plate = unit_plate(1 / ratio, FREE, SUPPORTED);
	plate.modulus = 1;
	return peaks_of(plate);
}

START_TEST(plate_published)
{
	const vane_plate_peaks c125 = timoshenko(1.25), c2 = timoshenko(2), c3 = timoshenko(3),
			       c5 = timoshenko(5);
	vane_plate solid = unit_plate(0, FREE, SUPPORTED);
	solid.modulus = 1;
	const vane_plate_peaks disc = peaks_of(solid);
	/* Any unit will do: a 33, b 11.5, t 12 mm, 1 MPa, 210 GPa. */
	const vane_plate pump = {.inner_radius = 11.5e-3,
				 .outer_radius = 33e-3,
				 .thickness = 12e-3,
				 .modulus = 210e9,
				 .poisson = 0.3,
				 .pressure = 1e6,
				 .zone_inner = 11.5e-3,
				 .zone_outer = 33e-3,
				 .force_radius = 33e-3,
				 .inner_edge = FREE,
				 .outer_edge = SUPPORTED};
	const row rows[] = {
		{"R-C3-1.25 Carvill p. 55 case 3: stress, a/b 1.25", c125.tangential_stress, 0.592,
		 0.006},
		{"R-C3-1.25 Carvill p. 55 case 3: deflection, a/b 1.25", c125.deflection, 0.184,
		 0.0011},
		/* Carvill prints 0.664, which the equation of the plate does not give. */
		{"R-C3-2y plate theory (Carvill p. 55 prints 0.664): deflection, a/b 2",
		 c2.deflection, 0.6818636, 5e-8},
		{"R-C3-3 Carvill p. 55 case 3: stress, a/b 3", c3.tangential_stress, 1.88, 0.006},
		{"R-C3-3 Carvill p. 55 case 3: deflection, a/b 3", c3.deflection, 0.824, 0.0011},
		{"R-C3-5 Carvill p. 55 case 3: stress, a/b 5", c5.tangential_stress, 2.19, 0.006},
		{"R-C3-5 Carvill p. 55 case 3: deflection, a/b 5", c5.deflection, 0.813, 0.0011},
		{"R-10a Roark 7th sec. 11.7: stress", disc.radial_stress, 1.24, 0.003},
		{"R-10a Roark 7th sec. 11.7: deflection", disc.deflection, 0.695, 0.0012},
		{"R-10a Roark 7th sec. 11.7: stress, formula",
		 vane_plate_supported_stress(1, 1, 1, 0.3, NULL), 1.24, 0.003},
		{"R-10a Roark 7th sec. 11.7: deflection, formula",
		 vane_plate_supported_deflection(1, 1, 1, 1, 0.3, NULL), 0.695, 0.0012},
		{"R-B133 Boresi 6th Example 13.3: pressure at yield [MPa]",
		 315 / vane_plate_clamped_edge_stress(1, 0.1, 0.01, NULL), 4.2, 0.005},
		{"R-B133 Boresi 6th Example 13.3: deflection [mm]",
		 vane_plate_clamped_deflection(4.2e6, 0.1, 0.01, 200e9, 0.29, NULL) * 1e3, 0.36,
		 0.005},
		{"shooting with DOP853, independent: bore of a pump's plate [um]",
		 peaks_of(pump).deflection * 1e6, 2.672777, 5e-7},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(formulas_meet_the_solution)
{
	vane_plate p;
	vane_plate_default(&p);
	p.pressure = 2e6;
	const double a = p.outer_radius, t = p.thickness, e = p.modulus, nu = p.poisson;
	CHECK_NEAR(peaks_of(p).deflection, vane_plate_supported_deflection(2e6, a, t, e, nu, NULL),
		   1e-14);
	p.outer_edge = CLAMPED;
	CHECK_NEAR(peaks_of(p).deflection, vane_plate_clamped_deflection(2e6, a, t, e, nu, NULL),
		   1e-14);
	CHECK_NEAR(-state_of(p, a).radial_stress, vane_plate_clamped_edge_stress(2e6, a, t, NULL),
		   1e-14);
	CHECK_NEAR(state_of(p, 0).tangential_stress,
		   vane_plate_clamped_centre_stress(2e6, a, t, nu, NULL), 1e-14);
	CHECK_NEAR(state_of(p, 0).radial_moment, (1 + nu) * 2e6 * a * a / 16, 1e-14);
	CHECK_NEAR(vane_plate_stiffness(t, e, nu, NULL),
		   2e6 * a * a * a * a / 64 / peaks_of(p).deflection, 1e-14);
	/* A force on a small circle, at a point in the end. */
	p.pressure = 0;
	p.force = 1000;
	p.force_radius = 1e-10;
	CHECK_NEAR(peaks_of(p).deflection,
		   vane_plate_clamped_force_deflection(1000, a, t, e, nu, NULL), 1e-13);
	p.outer_edge = SUPPORTED;
	CHECK_NEAR(peaks_of(p).deflection,
		   vane_plate_supported_force_deflection(1000, a, t, e, nu, NULL), 1e-13);
}
END_TEST

static const int32_t carried[][2] = {
	{FREE, SUPPORTED}, {FREE, CLAMPED},     {GUIDED, SUPPORTED},    {GUIDED, CLAMPED},
	{SUPPORTED, FREE}, {SUPPORTED, GUIDED}, {SUPPORTED, SUPPORTED}, {SUPPORTED, CLAMPED},
	{CLAMPED, FREE},   {CLAMPED, GUIDED},   {CLAMPED, SUPPORTED},   {CLAMPED, CLAMPED},
};
enum { CARRIED = sizeof carried / sizeof *carried };

START_TEST(edges_hold)
{
	for (int i = 0; i < CARRIED; i++)
		for (double b = 0.02; b < 1; b += 0.163) {
			vane_plate p = unit_plate(b, carried[i][0], carried[i][1]);
			p.zone_inner = b + 0.2 * (1 - b);
			p.zone_outer = b + 0.7 * (1 - b);
			p.force = 0.4;
			p.force_radius = b + 0.45 * (1 - b);
			const vane_plate_peaks peaks = peaks_of(p);
			for (int side = 0; side < 2; side++) {
				const vane_plate_state s = state_of(p, side ? 1 : b);
				const int32_t edge = carried[i][side];
				const double most = fabs(peaks.deflection);
				const double tight = 1e-12;
				if (edge >= SUPPORTED)
					ck_assert(fabs(s.deflection) <= tight * most);
				else
					ck_assert(fabs(s.shear) <= tight);
				if (edge == GUIDED || edge == CLAMPED)
					ck_assert(fabs(s.slope) <= tight * most / (1 - b));
				else
					ck_assert(fabs(s.radial_stress) <=
						  tight * fabs(peaks.radial_stress));
			}
			/* The supports carry the load, whatever the plate does. */
			const double load = 3.14159265358979323846 * (p.zone_outer - p.zone_inner) *
						    (p.zone_outer + p.zone_inner) +
					    p.force;
			CHECK_NEAR(2 * 3.14159265358979323846 *
					   (peaks.inner_reaction * b + peaks.outer_reaction),
				   load, 1e-12);
			/* Nothing between the edges is greater than what is reported. */
			for (int k = 0; k <= 100; k++) {
				const vane_plate_state s =
					state_of(p, fmin(b + (1 - b) * k / 100, 1));
				ck_assert(fabs(s.deflection) <=
					  fabs(peaks.deflection) * (1 + 1e-12));
				ck_assert(fabs(s.radial_stress) <=
					  fabs(peaks.radial_stress) * (1 + 1e-12));
				ck_assert(fabs(s.tangential_stress) <=
					  fabs(peaks.tangential_stress) * (1 + 1e-12));
			}
			/* Inside, what is greatest is level. */
			if (peaks.deflection_radius > b && peaks.deflection_radius < 1)
				ck_assert(fabs(state_of(p, peaks.deflection_radius).slope) <=
					  1e-12 * fabs(peaks.deflection) / (1 - b));
			CHECK_NEAR(state_of(p, peaks.deflection_radius).deflection,
				   peaks.deflection, 1e-13);
			CHECK_NEAR(state_of(p, peaks.radial_radius).radial_stress,
				   peaks.radial_stress, 1e-13);
			CHECK_NEAR(state_of(p, peaks.tangential_radius).tangential_stress,
				   peaks.tangential_stress, 1e-13);
		}
}
END_TEST

START_TEST(loads_add_up)
{
	/* Two zones make the whole, and a narrow zone is a force on a circle. */
	for (int i = 0; i < CARRIED; i++) {
		vane_plate p = unit_plate(0.25, carried[i][0], carried[i][1]);
		const double whole = state_of(p, 0.6).radial_moment;
		p.zone_outer = 0.5;
		const double inner = state_of(p, 0.6).radial_moment;
		p.zone_inner = 0.5;
		p.zone_outer = 1;
		CHECK_NEAR(inner + state_of(p, 0.6).radial_moment, whole, 1e-12);
		p.zone_inner = 0.4 - 1e-4;
		p.zone_outer = 0.4 + 1e-4;
		const double narrow = state_of(p, 0.6).deflection;
		p.pressure = 0;
		p.force = 2 * 3.14159265358979323846 * 0.4 * 2e-4;
		p.force_radius = 0.4;
		CHECK_NEAR(state_of(p, 0.6).deflection, narrow, 1e-6);
	}
	/* A ring as narrow as a hair is a beam: clamped at both edges, q l^4/384. */
	const double b = 1 - 1e-5;
	vane_plate p = unit_plate(b, CLAMPED, CLAMPED);
	CHECK_NEAR(peaks_of(p).deflection, pow(1 - b, 4) / 384, 1e-4);
	p = unit_plate(b, CLAMPED, FREE);
	CHECK_NEAR(peaks_of(p).deflection, pow(1 - b, 4) / 8, 1e-4);
}
END_TEST

START_TEST(cylinder_published)
{
	const double u8 = 0.0254 * 0.001;
	const double fit = vane_plate_press_pressure(u8, 0, 0.5 * inch, inch, 30e6 * psi, 0.3,
						     30e6 * psi, 0.3, NULL);
	const row rows[] = {
		{"L-B111-10 Boresi Example 11.1: radial inside [MPa]",
		 vane_plate_cylinder_radial_stress(0.01, 0.05, 300, 0, 0.01, NULL), -300, 0.01},
		{"L-B111-10 Boresi Example 11.1: tangential inside [MPa]",
		 vane_plate_cylinder_tangential_stress(0.01, 0.05, 300, 0, 0.01, NULL), 325, 0.01},
		{"L-B111-50 Boresi Example 11.1: radial outside [MPa]",
		 vane_plate_cylinder_radial_stress(0.01, 0.05, 300, 0, 0.05, NULL), 0, 0.01},
		{"L-B111-50 Boresi Example 11.1: tangential outside [MPa]",
		 vane_plate_cylinder_tangential_stress(0.01, 0.05, 300, 0, 0.05, NULL), 25, 0.01},
		{"L-B112 Boresi Example 11.2: tangential [MPa]",
		 vane_plate_cylinder_tangential_stress(0.1, 0.4, 150, 0, 0.1, NULL), 170, 0.01},
		{"L-B112 Boresi Example 11.2: axial [MPa]",
		 vane_plate_cylinder_axial_stress(0.1, 0.4, 150, 0, NULL), 10, 0.01},
		{"L-B112 Boresi Example 11.2: shear [MPa]",
		 vane_plate_cylinder_shear_stress(0.1, 0.4, 150, 0, 0.1, NULL), 160, 0.01},
		{"L-B112 Boresi Example 11.2: displacement [mm]",
		 vane_plate_cylinder_displacement(0.1, 0.4, 150e6, 0, 0.1, 10e6, 72e9, 0.33, NULL) *
			 1e3,
		 0.3003, 0.0006},
		{"L-U81 Ugural and Fenster Example 8.1: inside [MPa]",
		 vane_plate_cylinder_inner_pressure(0.15, 0.2, 250, NULL), 70, 0.01},
		{"L-U81 Ugural and Fenster Example 8.1: outside [MPa]",
		 vane_plate_cylinder_outer_pressure(0.15, 0.2, 250, NULL), 54.6875, 0.001},
		{"L-S368 Shigley 8th solution 3-68: pressure [psi]", fit / psi, 22500, 10},
		{"L-S368 Shigley 8th solution 3-68: tangential in the hub [psi]",
		 vane_plate_cylinder_tangential_stress(0.5, 1, fit / psi, 0, 0.5, NULL), 37500, 20},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(cylinder_limits)
{
	/* The same pressure on both sides: nowhere any shear. */
	CHECK_NEAR(vane_plate_cylinder_radial_stress(0.1, 0.2, 5e6, 5e6, 0.13, NULL), -5e6, 1e-15);
	CHECK_NEAR(vane_plate_cylinder_tangential_stress(0.1, 0.2, 5e6, 5e6, 0.13, NULL), -5e6,
		   1e-15);
	ck_assert(vane_plate_cylinder_shear_stress(0.1, 0.2, 5e6, 5e6, 0.13, NULL) == 0);
	/* A thin wall: p r/t. */
	CHECK_NEAR(vane_plate_cylinder_tangential_stress(1, 1 + 1e-9, 1, 0, 1, NULL), 1e9, 1e-7);
	/* The stresses are those that the displacement makes. */
	const double r = 0.15, h = 1e-5, e = 2e11, nu = 0.3;
	const double out =
		vane_plate_cylinder_displacement(0.1, 0.2, 5e7, 2e7, r + h, 3e6, e, nu, NULL);
	const double in =
		vane_plate_cylinder_displacement(0.1, 0.2, 5e7, 2e7, r - h, 3e6, e, nu, NULL);
	const double radial = vane_plate_cylinder_radial_stress(0.1, 0.2, 5e7, 2e7, r, NULL);
	const double around = vane_plate_cylinder_tangential_stress(0.1, 0.2, 5e7, 2e7, r, NULL);
	CHECK_NEAR((out - in) / (2 * h), (radial - nu * (around + 3e6)) / e, 1e-6);
	CHECK_NEAR(vane_plate_cylinder_shear_stress(0.1, 0.2, 5e7, 2e7, r, NULL),
		   (around - radial) / 2, 1e-14);
	/* Shaft and hub, pressed, fill the interference. */
	const double p =
		vane_plate_press_pressure(1e-5, 0.005, 0.01, 0.02, 2e11, 0.3, 1e11, 0.33, NULL);
	const double hub =
		vane_plate_cylinder_displacement(0.01, 0.02, p, 0, 0.01, 0, 1e11, 0.33, NULL);
	const double shaft =
		vane_plate_cylinder_displacement(0.005, 0.01, 0, p, 0.01, 0, 2e11, 0.3, NULL);
	CHECK_NEAR(hub - shaft, 1e-5, 1e-13);
	CHECK_NEAR(vane_plate_press_torque(p, 0.01, 0.03, 0.12, NULL),
		   vane_plate_press_force(p, 0.01, 0.03, 0.12, NULL) * 0.01, 1e-15);
	CHECK_NEAR(vane_plate_press_force(1e6, 0.01, 0.03, 0.1, NULL), 188.49555921538759, 1e-15);
}
END_TEST

START_TEST(spring_published)
{
	const double lbf = 4.4482216152605;
	const double coils = vane_plate_spring_coils(0.105 * inch, 0.62 * inch,
						     35 * lbf / (0.5 * inch), 11.85e6 * psi, NULL);
	const row rows[] = {
		{"SP-117 Shigley solution 1-17(d): rate [N/m]",
		 vane_plate_spring_rate(1.6e-3, 19.2e-3, 32, 79.3e9, NULL), 286.8, 0.1},
		{"SP-W82 Wentzell Example 8.2: active coils", coils, 10.79, 0.006},
		/* Wentzell divides by all coils, two more than the active ones. */
		{"SP-W82 Wentzell Example 8.2: pitch [in]",
		 vane_plate_spring_pitch(2 * inch, 0.105 * inch, 2, coils + 2, NULL) / inch, 0.14,
		 0.005},
		{"SP-W82 Wentzell Example 8.2: rate [lb/in]",
		 vane_plate_spring_rate(0.105 * inch, 0.62 * inch, coils, 11.85e6 * psi, NULL) *
			 inch / lbf,
		 70, 0.01},
		{"DIN 2093 series A, 50 mm, at 0.75 h (from memory) [kN]",
		 vane_plate_disc_force(50e-3, 25.4e-3, 3e-3, 1.1e-3, 0.825e-3, 206e9, 0.3, NULL) /
			 1e3,
		 12.0, 0.05},
		/* mpmath, 30 digits, the formulas as printed. */
		{"Wahl, C 12, independent: K",
		 vane_plate_spring_stress(3.14159265358979323846 / 8, 1, 12, NULL) / 12,
		 1.1194318181818182, 1e-15},
		{"Bergstraesser, C 12, independent: K",
		 vane_plate_spring_stress_bergstrasser(3.14159265358979323846 / 8, 1, 12, NULL) /
			 12,
		 1.1111111111111112, 1e-15},
		{"Shigley 8th eq. (10-13): stable length of steel over D/c (from memory)",
		 vane_plate_spring_stable_length(1, 1, 79.3e9, 207e9, NULL), 2.63, 0.005},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(springs_work)
{
	/* The work of the moments of a wave, guided at crest and trough, is that of the force. */
	const double e = 2e11, d = 0.05, b = 1e-6 * 0.05, t = 1e-3, n = 4,
		     pi = 3.14159265358979323846;
	const double span = pi * d / (2 * n), share = 1 / (2 * n);
	const double bend = share * span * span * span / (12 * e * b * t * t * t / 12);
	CHECK_NEAR(vane_plate_wave_rate(b, d, t, n, 1, e, NULL), pi * pi * pi / 16 / 2.4 / bend,
		   1e-5);
	CHECK_NEAR(vane_plate_wave_stress(1, b, d, t, n, NULL), share * span / 2 * 6 / (b * t * t),
		   1e-14);
	CHECK_NEAR(vane_plate_wave_rate(b, d, t, n, 3, e, NULL) * 3,
		   vane_plate_wave_rate(b, d, t, n, 1, e, NULL), 1e-15);
	/* The rate of a disc spring is the slope of its force. */
	const vane_plate_disc disc = {0.05, 0.0254, 0.003, 0.0011, 206e9, 0.3};
	for (double s = 0; s < 3e-3; s += 3e-4) {
		vane_plate_disc_state low, here, high;
		const double h = 1e-7;
		ck_assert_int_eq(vane_plate_disc_run(&disc, s, &low, NULL), VANE_OK);
		ck_assert_int_eq(vane_plate_disc_run(&disc, s + h, &here, NULL), VANE_OK);
		ck_assert_int_eq(vane_plate_disc_run(&disc, s + 2 * h, &high, NULL), VANE_OK);
		CHECK_NEAR((high.force - low.force) / (2 * h), here.rate, 1e-7);
		CHECK_NEAR(
			here.force,
			vane_plate_disc_force(0.05, 0.0254, 0.003, 0.0011, s + h, 206e9, 0.3, NULL),
			1e-14);
		CHECK_NEAR(
			here.rate,
			vane_plate_disc_rate(0.05, 0.0254, 0.003, 0.0011, s + h, 206e9, 0.3, NULL),
			1e-13);
	}
	/* mpmath, 30 digits, the formulas of the standard as printed. */
	vane_plate_disc_state s;
	ck_assert_int_eq(vane_plate_disc_run(&disc, 0.825e-3, &s, NULL), VANE_OK);
	CHECK_NEAR(s.force, 11976.450390550943, 1e-14);
	CHECK_NEAR(s.stress_top, -1244595700.8243504, 1e-14);
	CHECK_NEAR(s.stress_one, -2141950307.9370453, 1e-14);
	CHECK_NEAR(s.stress_two, 1417602063.1718917, 1e-14);
	CHECK_NEAR(s.stress_three, 1134533069.961253, 1e-14);
	CHECK_NEAR(s.stress_four, -673719534.56208683, 1e-14);
	CHECK_NEAR(vane_plate_disc_force(1.25, 1, 1e-2, 0.005, 0.002, 1, 0.3, NULL),
		   1.8391172855687516e-8, 6e-16);
	/* A narrow disc, where the printed constant K cancels to nothing. */
	CHECK_NEAR(vane_plate_disc_force(1.00001, 1, 1e-6, 0, 1e-7, 1, 0.3, NULL),
		   2.3130291798050943e-20, 1e-14);
}
END_TEST

START_TEST(rejects)
{
	vane_error error;
	vane_plate_state state;
	vane_plate_peaks peaks;
	vane_plate p = unit_plate(0.2, FREE, SUPPORTED);
	ck_assert_int_eq(vane_plate_at(NULL, 0.5, &state, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "plate");
	ck_assert(isnan(state.deflection) && isnan(state.tangential_stress));
	ck_assert_int_eq(vane_plate_at(&p, 0.5, NULL, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
	ck_assert_int_eq(vane_plate_at(&p, 0.1, &state, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "radius");
	ck_assert_int_eq(vane_plate_run(&p, NULL, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
	p.outer_edge = GUIDED;
	ck_assert_int_eq(vane_plate_run(&p, &peaks, &error), VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "plate.outer_edge");
	ck_assert(isnan(peaks.deflection) && isnan(peaks.outer_reaction));
	p = unit_plate(0, FREE, SUPPORTED);
	p.force = 1;
	p.force_radius = 0;
	ck_assert_int_eq(vane_plate_run(&p, &peaks, &error), VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "plate.force_radius");
#define REJECTS_FIELD(field, bad)                                                                  \
	do {                                                                                       \
		vane_plate q = unit_plate(0.2, FREE, SUPPORTED);                                   \
		q.field = bad;                                                                     \
		ck_assert_int_eq(vane_plate_run(&q, &peaks, &error), VANE_INVALID_ARGUMENT);       \
		ck_assert_str_eq(error.name, "plate." #field);                                     \
		ck_assert(isnan(peaks.deflection));                                                \
	} while (0)
	REJECTS_FIELD(inner_radius, -1);
	REJECTS_FIELD(outer_radius, 0.2);
	REJECTS_FIELD(thickness, 0);
	REJECTS_FIELD(modulus, NAN);
	REJECTS_FIELD(poisson, 0.51);
	REJECTS_FIELD(pressure, INFINITY);
	REJECTS_FIELD(zone_inner, 0.1);
	REJECTS_FIELD(zone_outer, 0.1);
	REJECTS_FIELD(zone_outer, 1.1);
	REJECTS_FIELD(force, NAN);
	REJECTS_FIELD(force_radius, 1.1);
	REJECTS_FIELD(inner_edge, 0);
	REJECTS_FIELD(outer_edge, 5);
	CHECK_REJECTS(vane_plate_stiffness(0, 1, 0.3, &error), error, "thickness");
	CHECK_REJECTS(vane_plate_clamped_deflection(NAN, 1, 1, 1, 0.3, &error), error, "pressure");
	CHECK_REJECTS(vane_plate_supported_stress(1, 0, 1, 0.3, &error), error, "radius");
	CHECK_REJECTS(vane_plate_clamped_force_deflection(1, 1, 1, 0, 0.3, &error), error,
		      "modulus");
	CHECK_REJECTS(vane_plate_cylinder_radial_stress(1, 1, 1, 1, 1, &error), error,
		      "outer_radius");
	CHECK_REJECTS(vane_plate_cylinder_tangential_stress(1, 2, 1, 1, 2.1, &error), error,
		      "radius");
	CHECK_REJECTS(vane_plate_cylinder_displacement(1, 2, 1, 1, 2, NAN, 1, 0.3, &error), error,
		      "axial_stress");
	CHECK_REJECTS(vane_plate_press_pressure(-1, 0, 1, 2, 1, 0.3, 1, 0.3, &error), error,
		      "interference");
	CHECK_REJECTS(vane_plate_press_torque(1, 1, 1, -0.1, &error), error, "friction");
	CHECK_REJECTS(vane_plate_spring_rate(1, 1, 1, 1, &error), error, "coil_diameter");
	CHECK_REJECTS(vane_plate_spring_coils(1, 2, 0, 1, &error), error, "rate");
	CHECK_REJECTS(vane_plate_spring_stress(NAN, 1, 2, &error), error, "force");
	CHECK_REJECTS(vane_plate_spring_pitch(1, 1, -1, 1, &error), error, "dead_wires");
	CHECK_REJECTS(vane_plate_spring_stable_length(1, 1, 2, 1, &error), error, "modulus");
	CHECK_REJECTS(vane_plate_wave_rate(1, 2, 1, 1, 1, 1, &error), error, "waves");
	CHECK_REJECTS(vane_plate_disc_force(1, 1, 1, 1, 1, 1, 0.3, &error), error,
		      "outer_diameter");
	const vane_plate_disc disc = {0.05, 0.0254, 0.003, -1, 206e9, 0.3};
	vane_plate_disc_state s;
	ck_assert_int_eq(vane_plate_disc_run(&disc, 0, &s, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "disc.cone_height");
	ck_assert(isnan(s.force) && isnan(s.stress_four));
}
END_TEST

SUITE("plate", annulus_published, plate_published, formulas_meet_the_solution, edges_hold,
      loads_add_up, cylinder_published, cylinder_limits, spring_published, springs_work, rejects)
