#include "vane/seal.h"

#include "row.h"

#include <string.h>

#define PI 3.14159265358979323846
#define INCH 0.0254
#define A VANE_SEAL_CLASS_A
#define B VANE_SEAL_CLASS_B

static vane_seal_size ring(int32_t dash, int32_t tolerances)
{
	vane_seal_size size;
	ck_assert_int_eq(vane_seal_find(dash, tolerances, &size, NULL), VANE_OK);
	ck_assert_int_eq(size.dash, dash);
	ck_assert_int_eq(size.tolerances, tolerances);
	return size;
}

/* The table's inch decimals must come back exact but for the conversion. */
START_TEST(dash_numbers)
{
	static const struct {
		const char *source;
		int32_t dash;
		double inner_diameter, section;
	} sizes[] = {
		{"OR-010 SAE AS568, from memory", 10, 0.239, 0.070},
		{"OR-110 SAE AS568, from memory", 110, 0.362, 0.103},
		{"OR-210 SAE AS568, from memory", 210, 0.734, 0.139},
		{"OR-325 SAE AS568, from memory", 325, 1.475, 0.210},
		{"OR-012 SAE AS568, from memory", 12, 0.364, 0.070},
		{"OR-014 SAE AS568, from memory", 14, 0.489, 0.070},
		{"OR-020 SAE AS568, from memory", 20, 0.864, 0.070},
		{"OR-030 SAE AS568, from memory", 30, 1.614, 0.070},
		{"OR-115 SAE AS568, from memory", 115, 0.674, 0.103},
		{"OR-120 SAE AS568, from memory", 120, 0.987, 0.103},
		{"OR-130 SAE AS568, from memory", 130, 1.612, 0.103},
		{"OR-150 SAE AS568, from memory", 150, 2.862, 0.103},
		{"OR-214 SAE AS568, from memory", 214, 0.984, 0.139},
		{"OR-220 SAE AS568, from memory", 220, 1.359, 0.139},
		{"OR-230 SAE AS568, from memory", 230, 2.484, 0.139},
		{"OR-240 SAE AS568, from memory", 240, 3.734, 0.139},
		{"OR-250 SAE AS568, from memory", 250, 4.984, 0.139},
		{"OR-330 SAE AS568, from memory", 330, 2.1, 0.210},
		{"OR-340 SAE AS568, from memory", 340, 3.35, 0.210},
		{"OR-425 SAE AS568, from memory", 425, 4.475, 0.275},
		{"OR-429 US Navy NAVEDTRA 14105, Fluid Power, ch. 7", 429, 4.975, 0.275},
		{"AS568-904, boss of a 1/4 in tube, from memory", 904, 0.351, 0.072},
	};
	for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
		const vane_seal_size size = ring(sizes[i].dash, A);
		const row rows[] = {
			{sizes[i].source, size.inner_diameter / INCH, sizes[i].inner_diameter,
			 1e-12},
			{sizes[i].source, size.section / INCH, sizes[i].section, 1e-12},
		};
		ROWS_CHECK(rows);
	}
	const vane_seal_size s429 = ring(429, A), s010 = ring(10, A), s214 = ring(214, B);
	const row rows[] = {
		{"OR-429 outside diameter, NAVEDTRA 14105, in", s429.outer_diameter / INCH, 5.525,
		 5e-4},
		{"AS568-010 tolerances, in, from memory", s010.inner_tolerance / INCH, 0.005,
		 1e-12},
		{"AS568-010 tolerances, in, from memory", s010.section_tolerance / INCH, 0.003,
		 1e-12},
		{"ISO 3601-1 class B, section 3.53 mm, from memory", s214.section_tolerance * 1e3,
		 0.10, 1e-12},
		/* 0.009 * 24.9936^0.95 + 0.11 */
		{"ISO 3601-1 class B, 24.99 mm, from memory", s214.inner_tolerance * 1e3, 0.30,
		 5e-3},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(series)
{
	/* Count, order and steps of the series; within each the inside diameter rises. */
	int rings = 0, last = 0;
	double diameter = 0, section = 0;
	for (int32_t dash = 1; dash <= 932; dash++) {
		vane_seal_size s;
		vane_error error;
		const int32_t status = vane_seal_find(dash, A, &s, &error);
		if (status != VANE_OK) {
			ck_assert_int_eq(status, VANE_NO_SOLUTION);
			ck_assert_str_eq(error.name, "dash");
			ck_assert(isnan(s.inner_diameter) && s.dash == 0);
			continue;
		}
		rings++;
		if (dash / 100 == last) {
			ck_assert_msg(s.inner_diameter > diameter, "-%d", dash);
			ck_assert_msg(s.section >= section, "-%d", dash);
		}
		ck_assert(s.inner_tolerance > 0 && s.inner_tolerance < 0.15 * s.inner_diameter);
		last = dash / 100;
		diameter = s.inner_diameter;
		section = s.section;
	}
	ck_assert_int_eq(rings, 50 + 77 + 84 + 87 + 51 + 20);
}
END_TEST

START_TEST(tolerances_of_class_b)
{
	const row rows[] = {
		{"0.009 100^0.95 + 0.11 = 0.824895, mpmath",
		 vane_seal_diameter_tolerance(0.1, NULL) * 1e3, 0.8248954112, 1e-9},
		{"section 1.78 mm", vane_seal_section_tolerance(1.78e-3, NULL) * 1e3, 0.08, 1e-12},
		{"section 2.62 mm", vane_seal_section_tolerance(2.62e-3, NULL) * 1e3, 0.09, 1e-12},
		{"section 5.33 mm", vane_seal_section_tolerance(5.33e-3, NULL) * 1e3, 0.13, 1e-12},
		{"section 6.99 mm", vane_seal_section_tolerance(6.99e-3, NULL) * 1e3, 0.15, 1e-12},
	};
	ROWS_CHECK(rows);
	vane_error error;
	CHECK_REJECTS(vane_seal_diameter_tolerance(0, &error), error, "inner_diameter");
	CHECK_REJECTS(vane_seal_section_tolerance(0.0085, &error), error, "section");
	CHECK_REJECTS(vane_seal_section_tolerance(NAN, &error), error, "section");
}
END_TEST

START_TEST(identify)
{
	vane_seal_candidate c[4];
	int64_t matches;
	/* Between -214 and -215; numbers by mpmath from the same table. */
	ck_assert_int_eq(
		vane_seal_identify(0.0261, 0.00353, 0.0005, 0.00005, A, 3, c, 4, &matches, NULL),
		VANE_OK);
	ck_assert_int_eq(c[0].size.dash, 215);
	ck_assert_int_eq(c[1].size.dash, 214);
	const row rows[] = {
		{"-215 distance", c[0].distance, 0.898967491247, 1e-9},
		{"-215 probability", c[0].probability, 0.863616785264, 1e-9},
		{"-214 distance", c[1].distance, 2.1233711045, 1e-9},
		{"-214 probability", c[1].probability, 0.135754483552, 1e-9},
		{"error of the inside diameter", c[0].diameter_error, 0.0261 - 1.046 * INCH, 1e-15},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(matches, 2);
}
END_TEST

START_TEST(every_ring_is_found_from_its_own_size)
{
	for (int32_t dash = 1; dash <= 932; dash++) {
		vane_seal_size s;
		if (vane_seal_find(dash, A, &s, NULL) != VANE_OK)
			continue;
		vane_seal_candidate c[3];
		int64_t matches;
		ck_assert_int_eq(vane_seal_identify(s.inner_diameter, s.section, 2e-5, 1e-5, A, 2,
						    c, 3, &matches, NULL),
				 VANE_OK);
		ck_assert_int_eq(c[0].size.dash, dash);
		ck_assert(c[0].distance == 0);
		ck_assert(c[0].probability > 0.5);
		ck_assert(matches >= 1);
		ck_assert(c[0].probability >= c[1].probability &&
			  c[1].probability >= c[2].probability);
	}
}
END_TEST

START_TEST(the_whole_list_adds_up)
{
	static vane_seal_candidate c[369];
	int64_t matches;
	double sum = 0;
	ck_assert_int_eq(
		vane_seal_identify(0.05, 0.003, 0.01, 0.001, B, 1e9, c, 369, &matches, NULL),
		VANE_OK);
	ck_assert_int_eq(matches, 369);
	for (int i = 0; i < 369; i++) {
		sum += c[i].probability;
		ck_assert(i == 0 || c[i].probability <= c[i - 1].probability);
		ck_assert(c[i].size.tolerances == B);
		for (int k = 0; k < i; k++)
			ck_assert(c[k].size.dash != c[i].size.dash);
	}
	CHECK_NEAR(sum, 1, 1e-13);
	/* A ring unlike any is still listed, and shows by its distance. */
	ck_assert_int_eq(vane_seal_identify(5, 0.5, 0, 0, A, 3, c, 1, &matches, NULL), VANE_OK);
	ck_assert_int_eq(matches, 0);
	ck_assert(c[0].distance > 1000);
}
END_TEST

START_TEST(gland)
{
	const row rows[] = {
		{"OR-S111 Sullivan, Fluid Power, 4th ed., Example 11.1, groove diameter, in",
		 vane_seal_piston_groove(4 * INCH, 0.140 * INCH, 0.2, NULL) / INCH, 3.776, 5e-4},
		{"OR-S111 Sullivan Example 11.1, groove width, in",
		 vane_seal_groove_width_rule(0.140 * INCH, NULL) / INCH, 0.196, 5e-4},
		{"stretch 2 %", vane_seal_stretch(0.050, 0.051, NULL), 0.02, 1e-14},
		{"squeeze 20 %", vane_seal_squeeze(0.005, 0.004, NULL), 0.2, 1e-14},
		{"depth", vane_seal_gland_depth(0.005, 0.2, NULL), 0.004, 1e-17},
		{"rod groove", vane_seal_rod_groove(0.050, 0.005, 0.2, NULL), 0.058, 1e-16},
		{"stretched section, mpmath",
		 vane_seal_stretched_section(0.0250, 0.00353, 0.0265, NULL), 0.003445556659222213,
		 1e-17},
		{"squeeze of it in 2.9 mm, mpmath",
		 vane_seal_squeeze_stretched(0.0250, 0.00353, 0.0265, 0.0029, NULL),
		 0.1583362902368771, 1e-14},
		{"fill: a circle in its square", vane_seal_fill(0.004, 0.004, 0.004, NULL), PI / 4,
		 1e-15},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(vane_seal_fill(0.0035, vane_seal_groove_width(0.0035, 0.0028, 0.75, NULL),
				  0.0028, NULL),
		   0.75, 1e-15);
	/* OR-SQ, ISO 3601-2 and handbooks, from memory. */
	vane_seal_guide g[4];
	for (int32_t use = 1; use <= 3; use++)
		ck_assert_int_eq(vane_seal_usual(use, &g[use], NULL), VANE_OK);
	ck_assert(g[VANE_SEAL_DYNAMIC].squeeze_low == 0.08);
	ck_assert(g[VANE_SEAL_DYNAMIC].squeeze_high == 0.20);
	ck_assert(g[VANE_SEAL_STATIC_RADIAL].squeeze_low == 0.10);
	ck_assert(g[VANE_SEAL_STATIC_RADIAL].squeeze_high == 0.30);
	ck_assert(g[VANE_SEAL_STATIC_FACE].squeeze_low == 0.15);
	ck_assert(g[VANE_SEAL_STATIC_FACE].squeeze_high == 0.35);
	ck_assert(g[1].fill_usual == 0.75 && g[1].fill_high == 0.85);
	ck_assert(g[1].stretch_low == 0.01 && g[1].stretch_high == 0.05);
}
END_TEST

START_TEST(a_stretched_ring_keeps_its_volume)
{
	for (double w = 1e-4; w < 1; w *= 3)
		for (double stretch = 0.3; stretch < 20; stretch *= 1.7) {
			const double d = 0.02, over = d * stretch;
			const double thin = vane_seal_stretched_section(d, w, over, NULL);
			CHECK_NEAR(thin * thin * (over + thin), w * w * (d + w), 1e-14);
		}
	CHECK_NEAR(vane_seal_stretched_section(0.02, 0.003, 0.02, NULL), 0.003, 1e-15);
	/* Thin ring: w sqrt(d/D) to first order in w/d. */
	CHECK_NEAR(vane_seal_stretched_section(10, 1e-6, 11, NULL), 1e-6 * sqrt(10.0 / 11), 1e-7);
}
END_TEST

START_TEST(heat)
{
	const row rows[] = {
		/* 0.75 * 1.05 * ((1 + 1.6e-4*80)/(1 + 1.2e-5*80))^3, mpmath */
		{"fill, 80 K warmer, 5 % swollen",
		 vane_seal_hot_fill(0.75, 0.05, 1.6e-4, 1.2e-5, 80, NULL), 0.8157770294802186,
		 1e-14},
		{"section", vane_seal_hot_section(0.0035, 0.05, 1.6e-4, 80, NULL),
		 0.003602921805637292, 1e-17},
	};
	ROWS_CHECK(rows);
	ck_assert(vane_seal_hot_fill(0.75, 0, 1e-4, 1e-4, 200, NULL) == 0.75);
	vane_error error;
	ck_assert(isnan(vane_seal_hot_section(0.003, 0, 0.01, -200, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "temperature_rise");
	ck_assert(isnan(vane_seal_hot_fill(0.7, 0, 1e-4, 0.01, -200, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
}
END_TEST

START_TEST(extrusion)
{
	const row rows[] = {
		{"in line", vane_seal_gap(0.0501, 0.05, 0, 0, NULL), 5e-5, 1e-16},
		{"touching on one side, bore breathing", vane_seal_gap(0.0501, 0.05, 1, 1e-5, NULL),
		 1.1e-4, 1e-16},
		{"clamped cover", vane_seal_cover_gap(1e-5, 9e4, 1e5, 1e9, NULL), 1e-5, 1e-18},
		{"lifted cover", vane_seal_cover_gap(1e-5, 1.2e5, 1e5, 1e9, NULL), 3e-5, 1e-18},
		{"70, 3.5 MPa, 3.53 mm (common practice)",
		 vane_seal_gap_limit(3.5e6, 3.53e-3, 70, NULL), 1e-4, 1e-18},
		{"70, 10 MPa, 3.53 mm (common practice)",
		 vane_seal_gap_limit(10e6, 3.53e-3, 75, NULL), 5e-5, 1e-18},
		{"90, 21 MPa, 3.53 mm (common practice)",
		 vane_seal_gap_limit(21e6, 3.53e-3, 90, NULL), 5e-5, 1e-18},
		{"90, 35 MPa, 1.78 mm (common practice)",
		 vane_seal_gap_limit(35e6, 1.78e-3, 95, NULL), 2e-5, 1e-18},
		{"70 above 10.5 MPa", vane_seal_gap_limit(10.6e6, 3.53e-3, 89.9, NULL), 0, 0},
		{"90 above 35 MPa", vane_seal_gap_limit(36e6, 3.53e-3, 95, NULL), 0, 0},
	};
	ROWS_CHECK(rows);
	vane_seal_extrusion e;
	ck_assert_int_eq(vane_seal_extrusion_check(4e-5, 10e6, 3.53e-3, 70, &e, NULL), VANE_OK);
	ck_assert(e.back_up == 0 && fabs(e.margin - 1e-5) < 1e-18 && fabs(e.limit - 5e-5) < 1e-18);
	ck_assert_int_eq(vane_seal_extrusion_check(6e-5, 10e6, 3.53e-3, 70, &e, NULL), VANE_OK);
	ck_assert(e.back_up == 1 && e.margin < 0);
	ck_assert_int_eq(vane_seal_extrusion_check(0, 20e6, 3.53e-3, 70, &e, NULL), VANE_OK);
	ck_assert(e.back_up == 1 && e.limit == 0);
	/* More pressure or a softer rubber never allows a wider gap, a thicker ring never less. */
	for (double p = 0; p < 40e6; p += 0.5e6)
		for (double w = 1e-3; w < 9e-3; w += 0.5e-3) {
			const double gap = vane_seal_gap_limit(p, w, 90, NULL);
			ck_assert(vane_seal_gap_limit(p + 0.5e6, w, 90, NULL) <= gap);
			ck_assert(vane_seal_gap_limit(p, w, 70, NULL) <= gap);
			ck_assert(vane_seal_gap_limit(p, w + 0.5e-3, 90, NULL) >= gap);
		}
}
END_TEST

START_TEST(force)
{
	const double f = vane_seal_line_force(0.0035, 0.2, 5e6, NULL);
	const row rows[] = {
		/* 5e6 * 0.0035 * (1.25 * 0.2^1.5 + 50 * 0.2^6), mpmath */
		{"Lindley, 20 %, N/m", f, 2012.559480312316, 1e-9},
		/* 0.0981*(56 + 7.62336*70)/(0.137505*(254 - 2.54*70)), mpmath */
		{"Gent, 70 Shore A, MPa", vane_seal_modulus(70, NULL) * 1e-6, 5.520506781857897,
		 1e-9},
	};
	ROWS_CHECK(rows);
	/* Half an ellipse of stress carries the force: q = pi b p0/4. */
	CHECK_NEAR(PI / 4 * vane_seal_contact_width(0.0035, f, 5e6, NULL) *
			   vane_seal_contact_stress(0.0035, f, 5e6, NULL),
		   f, 1e-14);
	/* No product inside passes what a double holds. */
	CHECK_NEAR(vane_seal_contact_width(1e200, 1e200, 1e200, NULL), sqrt(6 / PI) * 1e100, 1e-14);
	ck_assert(vane_seal_line_force(0.0035, 0, 5e6, NULL) == 0);
}
END_TEST

START_TEST(rejections)
{
	vane_error error;
	CHECK_REJECTS(vane_seal_stretch(0, 1, &error), error, "inner_diameter");
	CHECK_REJECTS(vane_seal_stretch(1, NAN, &error), error, "groove_diameter");
	CHECK_REJECTS(vane_seal_stretched_section(1, -1, 1, &error), error, "section");
	CHECK_REJECTS(vane_seal_squeeze(1, 0, &error), error, "gland_depth");
	CHECK_REJECTS(vane_seal_squeeze_stretched(1, 1, INFINITY, 1, &error), error,
		      "groove_diameter");
	CHECK_REJECTS(vane_seal_gland_depth(1, 1, &error), error, "squeeze");
	CHECK_REJECTS(vane_seal_piston_groove(0.01, 0.005, 0.2, &error), error, "bore_diameter");
	CHECK_REJECTS(vane_seal_rod_groove(0.01, 0.005, -0.1, &error), error, "squeeze");
	CHECK_REJECTS(vane_seal_groove_width(1, 1, 0, &error), error, "fill");
	CHECK_REJECTS(vane_seal_groove_width(1, 1, 1.1, &error), error, "fill");
	CHECK_REJECTS(vane_seal_fill(1, 0, 1, &error), error, "groove_width");
	CHECK_REJECTS(vane_seal_hot_fill(0.7, -1, 0, 0, 0, &error), error, "swell");
	CHECK_REJECTS(vane_seal_hot_section(1, 0, -1e-5, 0, &error), error, "expansion");
	CHECK_REJECTS(vane_seal_gap(0.04, 0.05, 0, 0, &error), error, "bore_diameter");
	CHECK_REJECTS(vane_seal_gap(0.06, 0.05, 2, 0, &error), error, "eccentricity");
	CHECK_REJECTS(vane_seal_cover_gap(0, 1, 1, 0, &error), error, "bolt_stiffness");
	CHECK_REJECTS(vane_seal_gap_limit(1e6, 0.003, 60, &error), error, "hardness");
	CHECK_REJECTS(vane_seal_gap_limit(-1, 0.003, 70, &error), error, "pressure");
	CHECK_REJECTS(vane_seal_modulus(100, &error), error, "hardness");
	CHECK_REJECTS(vane_seal_line_force(0.003, 0.6, 1e6, &error), error, "squeeze");
	CHECK_REJECTS(vane_seal_contact_width(0.003, -1, 1e6, &error), error, "line_force");
	CHECK_REJECTS(vane_seal_contact_stress(0.003, 1, 0, &error), error, "modulus");

	vane_seal_size s;
	ck_assert_int_eq(vane_seal_find(0, A, &s, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "dash");
	ck_assert_int_eq(vane_seal_find(14, 3, &s, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "tolerances");
	ck_assert_int_eq(vane_seal_find(14, A, NULL, &error), VANE_INVALID_ARGUMENT);

	vane_seal_candidate c[2];
	int64_t matches = 7;
	ck_assert_int_eq(vane_seal_identify(-1, 0.003, 0, 0, A, 3, c, 2, &matches, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "inner_diameter");
	ck_assert(matches == 0 && isnan(c[1].distance) && c[1].size.dash == 0);
	ck_assert_int_eq(vane_seal_identify(0.02, 0.003, 0, 0, A, 3, c, 0, &matches, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "candidates");
	ck_assert_int_eq(vane_seal_identify(0.02, 0.003, NAN, 0, A, 3, c, 2, &matches, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "diameter_uncertainty");
	ck_assert_int_eq(vane_seal_identify(0.02, 0.003, 0, 0, A, 3, NULL, 2, &matches, NULL),
			 VANE_INVALID_ARGUMENT);

	vane_seal_extrusion e;
	ck_assert_int_eq(vane_seal_extrusion_check(-1, 1e6, 0.003, 70, &e, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert(isnan(e.limit) && e.back_up == 0);
	ck_assert_int_eq(vane_seal_extrusion_check(0, 1e6, 0.003, 99, &e, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "hardness");
	vane_seal_guide g;
	ck_assert_int_eq(vane_seal_usual(4, &g, &error), VANE_INVALID_ARGUMENT);
	ck_assert(isnan(g.squeeze_low));
}
END_TEST

SUITE("seal", dash_numbers, series, tolerances_of_class_b, identify,
      every_ring_is_found_from_its_own_size, the_whole_list_adds_up, gland,
      a_stretched_ring_keeps_its_volume, heat, extrusion, force, rejections)
