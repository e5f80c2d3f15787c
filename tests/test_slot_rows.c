/* Published values of the slot topic, each with its id, and those of the friction tables. */
#include "row.h"
#include "vane/slot.h"

static const double PI = 3.14159265358979323846;
static const double inch = 0.0254, foot = 0.3048;

/* What a unit of pressure drop drives through a metre of pipe. */
static double pipe_drop(double diameter, double flow, double viscosity)
{
	return flow / vane_slot_pipe_flow(diameter, 1, 1, viscosity, NULL);
}

START_TEST(plates)
{
	/* Mean speed 1.4 m/s gives the drop over 25 m. */
	const double gap = 0.012, length = 25, mu = 0.105;
	const double dp = 1.4 * gap / vane_slot_flow(1, gap, length, 1, mu, 0, NULL);
	const double most = vane_slot_velocity(gap, length, dp, mu, 0, gap / 2, NULL);
	const row rows[] = {
		{"S-10 Subramanya Example 7.21, greatest speed", most, 2.1, 0.005},
		{"S-10 Subramanya Example 7.21, wall shear",
		 vane_slot_shear(gap, length, dp, mu, 0, 0, NULL), 73.5, 0.05},
		{"S-10 Subramanya Example 7.21, shear at 2 mm",
		 vane_slot_shear(gap, length, dp, mu, 0, 0.002, NULL), 49, 0.5},
		{"S-10 Subramanya Example 7.21, speed at 2 mm",
		 vane_slot_velocity(gap, length, dp, mu, 0, 0.002, NULL), 1.167, 0.0006},
		{"S-10 Subramanya Example 7.21, head loss", dp / (0.92 * 998 * 9.81), 34, 0.05},
		{"S-L4 plates, greatest over mean speed (from memory)", most / 1.4, 1.5, 1e-12},
		{"S-13 de Nevers Example 6.13, lbm/h of gasoline, 0.72",
		 3600 / (inch * inch * inch) / 1728 * 62.42 * 0.72 *
			 vane_slot_annulus_flow(0.25 * inch, 1e-4 * inch, inch, 0,
						100 * 6894.757293168361, 0.6e-3, 0, NULL),
		 0.007, 2e-4},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(pipes)
{
	const double water = 12e-6, mu = 0.0045, d = 0.012;
	const double most = vane_slot_pipe_velocity(d, 1, 1, 0.08, 0, NULL);
	const double mean = vane_slot_pipe_flow(d, 1, 1, 0.08, NULL) / (PI / 4 * d * d);
	const row rows[] = {
		{"S-11 Munson Example 6.10(a) (from memory), kPa",
		 pipe_drop(0.004, water, mu) / 1000, 8.59, 0.005},
		{"S-12 Munson Example 6.10(b), kPa",
		 water / vane_slot_annulus_exact_flow(0.002, 0.001, 1, 0, 1, mu, 0, NULL) / 1000,
		 68.2, 0.05},
		{"S-Q1 Massey & Ward-Smith Example 6.1, Re",
		 vane_slot_pipe_reynolds(2.3 * PI / 4 * d * d, d, 0.08 / 830, NULL), 286.3, 0.06},
		{"S-Q1 Massey & Ward-Smith Example 6.1, dp/dx",
		 -pipe_drop(d, 2.3 * PI / 4 * d * d, 0.08), -40889, 1},
		{"S-Q2 Fox & McDonald Example 8.4",
		 vane_slot_pipe_flow(0.5e-3, 1, 1e6, 1, NULL) / 880e-9, 0.00174, 5e-6},
		{"S-Q3 Sullivan 4th ed. Example 4.4",
		 vane_slot_pipe_reynolds(40.83 * foot * PI / 4 * inch * inch, inch,
					 0.05 * inch * inch, NULL),
		 9799, 2},
		{"S-L4 pipe, greatest over mean speed (from memory)", most / mean, 2, 1e-12},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* Mean of the cube of the speed over the cube of its mean. */
static double kinetic_factor(int pipe)
{
	const int n = 4000;
	double cubes = 0, mean = 0;
	for (int i = 0; i <= n; i++) {
		const double x = (double)i / n, weight = (i == 0 || i == n) ? 1 : i % 2 ? 4 : 2;
		const double u = pipe ? vane_slot_pipe_velocity(2, 1, 1, 1, x, NULL)
				      : vane_slot_velocity(1, 1, 1, 1, 0, x, NULL);
		const double part = weight * (pipe ? 2 * x : 1) / 3 / n;
		cubes += part * u * u * u;
		mean += part * u;
	}
	return cubes / (mean * mean * mean);
}

START_TEST(entry_and_inertia)
{
	const double slot = vane_slot_inertia(1, 1, 48, 2, 1, NULL);
	const double tube = vane_slot_pipe_inertia(16 * PI, 1, 1, NULL);
	const row rows[] = {
		{"S-L1 Shah & London 1978, plates (from memory)",
		 vane_slot_entry_length(0.5, 1, NULL), 0.011, 0.0005},
		{"S-L2 Shah & London 1978, plates (from memory)", slot - 1, 0.674, 0.03},
		{"S-L2 Shah & London 1978, pipe (from memory)", tube - 1, 1.25, 0.1},
		{"Shah & London 1978, pipe entry (from memory)",
		 vane_slot_pipe_entry_length(1, 1, NULL), 0.056, 0.0005},
		{"S-L3 kinetic-energy factor, pipe (from memory)", kinetic_factor(1), 2, 1e-9},
		{"S-L3 kinetic-energy factor, plates (from memory)", kinetic_factor(0), 1.542857143,
		 1e-9},
	};
	ROWS_CHECK(rows);
}
END_TEST

static double slider(double ratio)
{
	return vane_slot_taper_load(1, ratio, 1, 1, 0, 1, 1, NULL);
}

static double step(double ratio, double share)
{
	return vane_slot_step_load(1, ratio, share, 1, 1 - share, 0, 1, 1, NULL);
}

/* Where a function of one top is greatest. */
static double best(double (*f)(double x, double other), double other, double low, double high)
{
	for (int i = 0; i < 100; i++) {
		const double third = (high - low) / 3;
		if (f(low + third, other) < f(high - third, other))
			low += third;
		else
			high -= third;
	}
	return (low + high) / 2;
}

static double slider_of(double ratio, double other)
{
	(void)other;
	return slider(ratio);
}

static double step_of(double ratio, double other)
{
	(void)other;
	double low = 0.01, high = 0.99;
	for (int i = 0; i < 60; i++) {
		const double third = (high - low) / 3;
		if (step(ratio, low + third) < step(ratio, high - third))
			low += third;
		else
			high -= third;
	}
	return step(ratio, low);
}

static double share_of(double share, double ratio)
{
	return step(ratio, share);
}

START_TEST(sliders)
{
	const double slope = best(slider_of, 0, 1.1, 5), rise = best(step_of, 0, 1.1, 5);
	const double share = best(share_of, rise, 0.01, 0.99);
	const double mu = 2e-4 * 870;
	const row rows[] = {
		{"S-07 Massey & Ward-Smith Example 6.7, flow",
		 vane_slot_step_flow(0.1, 0.5e-3, 0.05, 0.25e-3, 0.05, 0, mu, 10, NULL), 1.389e-4,
		 5e-8},
		{"S-07 Massey & Ward-Smith Example 6.7, load",
		 vane_slot_step_load(0.1, 0.5e-3, 0.05, 0.25e-3, 0.05, 0, mu, 10, NULL), 4640, 1},
		{"S-T2 Rayleigh 1918 (from memory), ratio", slope, 2.189, 6e-4},
		{"S-T2 Rayleigh 1918 (from memory), load", slider(slope), 0.1602, 6e-5},
		{"S-T3 Rayleigh 1918 (from memory), ratio", rise, 1.866, 6e-4},
		{"S-T3 Rayleigh 1918 (from memory), length", share, 0.7182, 6e-4},
		{"S-T3 Rayleigh 1918 (from memory), load", step(rise, share), 0.2063, 6e-5},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* 57.89 at 0.75 is misprinted: the series gives 57.9028, as does Shah & London's 4 x 14.4757. */
START_TEST(ducts)
{
	static const struct {
		const char *source;
		double ratio, printed, tolerance, computed, factor;
	} known[] = {
		{"White 4th ed. Table 6.4, 0", 0, 96, 0.006, 96, 1},
		{"S-R0.05 White 4th ed. Table 6.4", 0.05, 89.91, 0.006, 89.908052, 0.968488},
		{"White 4th ed. Table 6.4, 0.1", 0.1, 84.68, 0.006, 84.675507, 0.936975},
		{"S-R0.125 White 4th ed. Table 6.4", 0.125, 82.34, 0.006, 82.338576, 0.921219},
		{"White 4th ed. Table 6.4, 1/6", 1.0 / 6, 78.81, 0.006, 78.808806, 0.894959},
		{"S-R0.25 White 4th ed. Table 6.4", 0.25, 72.93, 0.006, 72.931107, 0.842439},
		{"S-R0.4 White 4th ed. Table 6.4", 0.4, 65.47, 0.006, 65.472403, 0.748095},
		{"S-R0.5 White 4th ed. Table 6.4", 0.5, 62.19, 0.006, 62.192225, 0.686045},
		{"S-R0.75 White 4th ed. Table 6.4, misprint", 0.75, 57.89, 0.013, 57.902789,
		 0.541372},
		{"S-R0.75 Shah & London 1978, 4 x 14.4757 (from memory)", 0.75, 57.9028, 2e-4,
		 57.902789, 0.541372},
		{"S-R1 White 4th ed. Table 6.4", 1, 56.91, 0.006, 56.908308, 0.421731},
		{"own computation, 0.01", 0.01, 94.705300, 5e-7, 94.705300, 0.993698},
		{"own computation, 0.02", 0.02, 93.450140, 5e-7, 93.450140, 0.987395},
		{"own computation, 0.03", 0.03, 92.233102, 5e-7, 92.233102, 0.981093},
		{"own computation, 0.15", 0.15, 80.168730, 5e-7, 80.168730, 0.905463},
		{"own computation, 0.2", 0.2, 76.281992, 5e-7, 76.281992, 0.873950},
		{"own computation, 0.3", 0.3, 70.048356, 5e-7, 70.048356, 0.810936},
		{"own computation, 0.6", 0.6, 59.919848, 5e-7, 59.919848, 0.625836},
		{"own computation, 0.8", 0.8, 57.511192, 5e-7, 57.511192, 0.515198},
	};
	for (size_t i = 0; i < sizeof known / sizeof *known; i++) {
		const double got = vane_slot_duct_friction(known[i].ratio, NULL);
		const double factor = vane_slot_duct_factor(known[i].ratio, NULL);
		const row rows[] = {
			{known[i].source, got, known[i].printed, known[i].tolerance},
			{known[i].source, got, known[i].computed, 6e-7},
			{known[i].source, factor, known[i].factor, 6e-7},
		};
		ROWS_CHECK(rows);
	}
}
END_TEST

START_TEST(annuli)
{
	static const struct {
		const char *source;
		double ratio, printed, tolerance, computed, effective;
	} known[] = {
		{"S-A1e-05 White 4th ed. Table 6.3", 1e-5, 70.09, 0.006, 70.086342, 0.913},
		{"S-A0.0001 White 4th ed. Table 6.3", 1e-4, 71.78, 0.006, 71.780689, 0.892},
		{"S-A0.001 White 4th ed. Table 6.3", 1e-3, 74.68, 0.006, 74.683526, 0.857},
		{"S-A0.01 White 4th ed. Table 6.3", 0.01, 80.11, 0.006, 80.112957, 0.799},
		{"S-A0.05 White 4th ed. Table 6.3", 0.05, 86.27, 0.006, 86.269947, 0.742},
		{"S-A0.1 White 4th ed. Table 6.3", 0.1, 89.37, 0.006, 89.371843, 0.716},
		{"S-A0.2 White 4th ed. Table 6.3", 0.2, 92.35, 0.006, 92.352412, 0.693},
		{"S-A0.4 White 4th ed. Table 6.3", 0.4, 94.71, 0.011, 94.713320, 0.676},
		{"S-A0.6 White 4th ed. Table 6.3", 0.6, 95.59, 0.006, 95.588124, 0.670},
		{"S-A0.8 White 4th ed. Table 6.3", 0.8, 95.92, 0.006, 95.920538, 0.667},
		{"White 4th ed. Table 6.3, 1", 1, 96, 0.006, 96, 0.667},
	};
	for (size_t i = 0; i < sizeof known / sizeof *known; i++) {
		const double got = vane_slot_annulus_friction(known[i].ratio, NULL);
		const row rows[] = {
			{known[i].source, got, known[i].printed, known[i].tolerance},
			{known[i].source, got, known[i].computed, 6e-7},
			{known[i].source, 64 / got, known[i].effective, 0.0011},
		};
		ROWS_CHECK(rows);
	}
}
END_TEST

START_TEST(off_centre)
{
	static const struct {
		const char *source;
		double ratio, eccentricity, want;
	} known[] = {
		{"S-E0.5-0.2 Piercy et al. 1933 (from memory)", 0.5, 0.2, 1.056394},
		{"S-E0.5-0.5 Piercy et al. 1933 (from memory)", 0.5, 0.5, 1.347557},
		{"S-E0.5-0.8 Piercy et al. 1933 (from memory)", 0.5, 0.8, 1.866861},
		{"S-E0.9-0.5 Piercy et al. 1933 (from memory)", 0.9, 0.5, 1.374297},
		{"S-E0.9-0.9 Piercy et al. 1933 (from memory)", 0.9, 0.9, 2.211472},
		{"S-E0.99-0.5 Piercy et al. 1933 (from memory)", 0.99, 0.5, 1.374994},
		{"S-E0.99-0.9 Piercy et al. 1933 (from memory)", 0.99, 0.9, 2.214968},
	};
	for (size_t i = 0; i < sizeof known / sizeof *known; i++) {
		const double d = 2 * known[i].ratio, gap = 1 - known[i].ratio;
		const double centred = vane_slot_annulus_exact_flow(d, gap, 1, 0, 1, 1, 0, NULL);
		const row one = {known[i].source,
				 vane_slot_annulus_exact_flow(d, gap, 1, known[i].eccentricity, 1,
							      1, 0, NULL) /
					 centred,
				 known[i].want, 1e-6};
		row_check(&one);
	}
	const row thin = {"S-E-thin Merritt 1967 (from memory), eps 0",
			  vane_slot_annulus_flow(0.02, 1e-5, 0.1, 0, 1e6, 0.03, 0, NULL) /
				  vane_slot_flow(PI * 0.02, 1e-5, 0.1, 1e6, 0.03, 0, NULL),
			  1, 1e-12};
	row_check(&thin);
}
END_TEST

START_TEST(openings)
{
	const double psi = 6894.757293168361, gpm = 231 * inch * inch * inch / 60;
	const row rows[] = {
		{"S-O2 Sullivan 4th ed. Example 5.4",
		 vane_slot_discharge_coefficient(3.14 * inch * inch, 1000 * gpm, 120 * psi, 850,
						 NULL),
		 0.7, 0.01},
		{"S-O3 von Mises, Merritt 1967 ch. 3 (from memory)", vane_slot_contraction(0, NULL),
		 0.611, 5e-4},
		{"S-O3 pi / (pi + 2)", vane_slot_contraction(1e-9, NULL), 0.6110154703, 1e-9},
		{"S-P1 parabolic gap (from memory)",
		 vane_slot_tip_integral_3(1e-5, 3e-3, 1e6, NULL), 2.885737e11, 5e4},
		{"S-P2 parabolic gap (from memory)",
		 vane_slot_tip_integral_2(1e-5, 3e-3, 1e6, NULL), 3847649, 0.5},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* An invented pump, computed beforehand by a separate program. */
START_TEST(worked_pump)
{
	const double dp = 15e6, alpha = 20e-9, beta = 0.034, c = 1950;
	const double density = beta / 2.0274e-8 / c;
	const double adiabatic = vane_slot_adiabatic_factor(dp, alpha, beta, density, c, NULL);
	const row rows[] = {
		{"thickening, 15 MPa", 1 / vane_slot_barus_viscosity(1, alpha, dp, 0, NULL),
		 0.8639392644, 5e-11},
		{"adiabatic", adiabatic, 1.37330150, 5e-6},
		{"adiabatic over the viscosity without pressure", adiabatic * exp(-alpha * dp),
		 1.017367, 5e-6},
		{"temperature rise", vane_slot_temperature_rise(dp, 860, c, NULL), 8.9445, 5e-5},
	};
	ROWS_CHECK(rows);
	const double gap[] = {12.5e-6, 60e-6, 100e-6}, want[] = {0.999012, 0.724292, 0.388364};
	for (int i = 0; i < 3; i++) {
		const double g = vane_slot_flow(0.02, gap[i], 5e-3, 1, 1, 0, NULL), mu = 860e-5;
		const double q =
			vane_slot_inertial_flow(g, 0.02 * gap[i], dp, mu, 860, 1.674, NULL);
		const row one = {"inertia in an invented slot", q / (g * dp / mu), want[i], 5e-7};
		row_check(&one);
		if (i == 2) {
			const row flagged = {"inertia in an invented slot, Re",
					     vane_slot_reynolds(q, 0.02, 1e-5, NULL), 2258, 0.5};
			row_check(&flagged);
		}
	}
}
END_TEST

SUITE("slot_rows", plates, pipes, entry_and_inertia, sliders, ducts, annuli, off_centre, openings,
      worked_pump)
