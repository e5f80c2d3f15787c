#include "row.h"

#include "vane/displacement.h"
#include "vane/shaft.h"
#include "vane/stand.h"
#include "worked_pump.h"

#include <string.h>

#define PI 3.14159265358979323846

static const double inch = 0.0254;

START_TEST(published)
{
	const double in3 = inch * inch * inch;
	const row rows[] = {
		{"V-14 balanced pump without vane thickness, R 33, r 30, b 25 mm, cm3 (Ivantysyn "
		 "and "
		 "Ivantysynova, from memory)",
		 vane_displacement_roots_zone(33e-3, 30e-3, 25e-3, NULL) * 1e6, 29.68805, 5e-6},
		{"V-04 Esposito sec. 5.5, greatest eccentricity, in3",
		 vane_displacement_textbook(3 * inch, 2 * inch, 0.5 * inch, 2 * inch, NULL) / in3,
		 7.853982, 1e-6},
		{"V-02 Esposito example 5-4, L",
		 vane_displacement_textbook(75e-3, 50e-3, 8e-3, 50e-3, NULL) * 1e3, 0.0785, 5e-5},
		{"V-01 Esposito example 5-3: 5 in3 back from e = 0.318 in",
		 vane_displacement_textbook(3 * inch, 2 * inch, 0.318 * inch, 2 * inch, NULL) / in3,
		 5, 0.008},
		{"V-03 offset circle, many vanes, L",
		 vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 1e5, NULL) * 1e3, 0.1884956,
		 1e-6},
		{"V-03z5", vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 5, NULL) * 1e3,
		 0.1758724, 1e-7},
		{"V-03z7", vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 7, NULL) * 1e3,
		 0.1819706, 1e-7},
		{"V-03z9", vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 9, NULL) * 1e3,
		 0.1845269, 1e-7},
		{"V-03z10", vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 10, NULL) * 1e3,
		 0.1852758, 1e-7},
		{"V-03z11", vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 11, NULL) * 1e3,
		 0.1858315, 1e-7},
		{"V-03z12", vane_displacement_eccentric(37.5e-3, 8e-3, 50e-3, 12, NULL) * 1e3,
		 0.186255, 1e-7},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* V-06, an examination problem after Esposito ch. 5, from memory: 115 cm3, ring 89, rotor 63.5,
 * width 50.8 mm; 93.15 L/min at 90 % volumetric efficiency; 70 bar, 12.7 kW. */
START_TEST(published_problem)
{
	const double displacement = 115e-6, dp = 70e5, power = 12.7e3, flow = 0.09315 / 60;
	const double eccentricity =
		displacement / vane_displacement_textbook(0.0890, 0.0635, 1, 0.0508, NULL);
	const double speed = flow / (0.90 * displacement);
	const double torque = power / vane_shaft_power(1, speed, NULL);
	const row rows[] = {
		{"V-06 eccentricity, mm", eccentricity * 1e3, 9.45, 5e-3},
		{"V-06 speed, r/min", speed * 60, 900, 0.5},
		{"V-06 torque, N.m", torque, 134.8, 0.05},
		{"V-06 mechanical efficiency",
		 vane_shaft_ideal_torque(displacement, dp, NULL) / torque, 0.9508, 5e-5},
		{"V-06 overall efficiency",
		 vane_stand_overall_efficiency(flow, dp, torque, speed, NULL), 0.8557, 5e-5},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(eccentric_check_values)
{
	const double z[] = {7, 8, 11, 12};
	const double want[] = {22.448096726, 22.628184894, 22.907040248, 22.957271815};
	for (int i = 0; i < 4; i++) {
		const row rows[] = {
			{"eccentric ring Rc 35, e 2.2, b 24 mm, cm3",
			 vane_displacement_eccentric(35e-3, 2.2e-3, 24e-3, z[i], NULL) * 1e6,
			 want[i], 5e-10}};
		ROWS_CHECK(rows);
	}
	CHECK_NEAR(vane_displacement_eccentric(35e-3, 2.2e-3, 24e-3, 1e7, NULL), 23.222652895e-6,
		   1e-10);
	ck_assert(vane_displacement_eccentric(35e-3, 0, 24e-3, 12, NULL) == 0);
	CHECK_NEAR(vane_displacement_eccentric_roots(2.2e-3, 24e-3, 1.8e-3, 12, NULL),
		   12 * 24e-3 * 1.8e-3 * 4.4e-3, 1e-15);
}
END_TEST

START_TEST(worked_displacement)
{
	vane_parts p = worked_pump();
	vane_displacement d;
	ck_assert_int_eq(vane_displacement_run(&p, &d, NULL), VANE_OK);
	const row rows[] = {
		{"worked pump, convention A, cm3", d.roots_zone * 1e6, 40.871869, 5e-7},
		{"worked pump, convention B, cm3", d.roots_outlet * 1e6, 36.309949, 5e-7},
		/* The independent program measured both volumes on polygons and gave 1612.389183 and
	         * 99.474637; the exact area of the least one is 99.4743702351669 mm3 (mpmath, 30
	         * digits), and their difference, which alone enters the displacement, agrees. */
		{"worked pump, least chamber, mpmath, mm3", d.least * 1e9, 99.4743702351669, 1e-9},
		{"worked pump, greatest less least, mm3", (d.greatest - d.least) * 1e9,
		 1612.389183 - 99.474637, 1e-6},
		{"worked pump, 2 z (greatest - least), cm3", 24e6 * (d.greatest - d.least),
		 36.309949, 5e-7},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(d.roots, VANE_ROOTS_OUTLET);
	ck_assert(d.selected == d.roots_outlet);
	p.roots = VANE_ROOTS_ZONE;
	vane_displacement_run(&p, &d, NULL);
	ck_assert(d.selected == d.roots_zone);
	ck_assert_int_eq(d.roots, VANE_ROOTS_ZONE);
}
END_TEST

START_TEST(worked_chamber)
{
	const vane_parts p = worked_pump();
	const double at[] = {30, 45, 60, 75};
	const double rate[] = {1419.820797, 2509.281305, 1468.012492, 195.455492};
	const double volume[] = {295.018112, 846.267493, 1405.855258, 1602.678773};
	double base, zero;
	vane_displacement_chamber(&p, 0, &base, &zero, NULL);
	ck_assert(zero == 0);
	for (int i = 0; i < 4; i++) {
		double v, r;
		ck_assert_int_eq(vane_displacement_chamber(&p, at[i] * DEGREE, &v, &r, NULL),
				 VANE_OK);
		const row rows[] = {
			{"worked pump, chamber rate, mm3/rad", r * 1e9, rate[i], 5e-7},
			/* Above the least volume: see worked_displacement. The program's table is good to
		         * 1e-8 of the greatest volume; rate_is_the_derivative holds ours. */
			{"worked pump, chamber volume above its least, mm3", (v - base) * 1e9,
			 volume[i] - 99.474637, 2e-5},
		};
		ROWS_CHECK(rows);
	}
}
END_TEST

START_TEST(rate_is_the_derivative_of_the_volume)
{
	vane_parts p = worked_pump();
	p.ring.rise = 60 * DEGREE;
	p.ring.fall = 52 * DEGREE;
	p.ring.phase = 0.3;
	for (int32_t law = 1; law <= 5; law++) {
		p.ring.law = law;
		for (int i = -180; i < 180; i++) {
			const double a = (i + 0.37) * DEGREE, h = 1e-4;
			double low, high, rate, ignored;
			vane_displacement_chamber(&p, a - h, &low, &ignored, NULL);
			vane_displacement_chamber(&p, a + h, &high, &ignored, NULL);
			vane_displacement_chamber(&p, a, &ignored, &rate, NULL);
			ck_assert_msg(fabs((high - low) / (2 * h) - rate) < 2e-12,
				      "law %d at %d: %g %g", law, i, (high - low) / (2 * h), rate);
		}
	}
}
END_TEST

/* Simpson's rule on the rate, whose printed digits worked_chamber checks. */
START_TEST(volume_is_the_integral_of_the_rate)
{
	const vane_parts p = worked_pump();
	enum { STEPS = 3600 };
	const double h = 90 * DEGREE / STEPS;
	double base, volume, sum = 0, low, middle, high, ignored;
	vane_displacement_chamber(&p, 0, &base, &low, NULL);
	for (int i = 0; i < STEPS; i++) {
		vane_displacement_chamber(&p, (i + 0.5) * h, &ignored, &middle, NULL);
		vane_displacement_chamber(&p, (i + 1) * h, &volume, &high, NULL);
		sum += h / 6 * (low + 4 * middle + high);
		low = high;
		if (i % 100 == 99)
			ck_assert(fabs(volume - base - sum) < 1e-12 * 1612e-9);
	}
}
END_TEST

START_TEST(worked_contact)
{
	const vane_parts p = worked_pump();
	const double at[] = {30, 45, 60};
	const double radius[] = {28.963085, 30.755756, 32.612794};
	const double angle[] = {29.637556, 44.386936, 59.714746};
	const double offset[] = {-0.183215, -0.329080, -0.162366};
	const double normal[] = {8.782215, 15.916317, 7.776264};
	for (int i = 0; i < 3; i++) {
		vane_tip_contact c;
		ck_assert_int_eq(vane_displacement_contact(&p, at[i] * DEGREE, &c, NULL), VANE_OK);
		const row rows[] = {
			{"worked pump, contact radius, mm", c.radius * 1e3, radius[i], 5e-7},
			{"worked pump, contact angle, deg", c.angle / DEGREE, angle[i], 5e-7},
			{"worked pump, contact offset, mm", c.offset * 1e3, offset[i], 5e-7},
			{"worked pump, normal, deg", c.normal / DEGREE, normal[i], 5e-7},
		};
		ROWS_CHECK(rows);
	}
	vane_tip_contact c;
	vane_displacement_contact(&p, 90 * DEGREE, &c, NULL);
	CHECK_NEAR(c.ring_radius, 33e-3, 1e-14);
	CHECK_NEAR(c.radius, 33e-3, 1e-15);
}
END_TEST

START_TEST(limits)
{
	ck_assert(vane_displacement_roots_outlet(33e-3, 28e-3, 24e-3, 0, 12, NULL) ==
		  vane_displacement_roots_zone(33e-3, 28e-3, 24e-3, NULL));
	/* A sliver of a stroke keeps its digits. */
	CHECK_NEAR(vane_displacement_roots_zone(1 + 1e-9, 1, 1, NULL),
		   2 * PI * ((1 + 1e-9) - 1) * (2 + 1e-9), 1e-15);
	vane_parts p = worked_pump();
	vane_displacement a, b;
	vane_displacement_run(&p, &a, NULL);
	p.tip_radius = 1.5e-3;
	vane_displacement_run(&p, &b, NULL);
	CHECK_NEAR(b.greatest - b.least, a.greatest - a.least, 1e-12);
	p.ring.small_dwell = 32 * DEGREE;
	p.ring.large_dwell = 36 * DEGREE;
	/* Longer than the pitch of 30 degrees, shorter than the small land of 33. */
	ck_assert_int_eq(vane_displacement_run(&p, &b, NULL), VANE_OK);
	ck_assert_int_eq(b.caution & VANE_CAUTION_SHORT_DWELL, VANE_CAUTION_SHORT_DWELL);
}
END_TEST

START_TEST(rejects)
{
	vane_error e;
	CHECK_REJECTS(vane_displacement_roots_zone(1, 2, 1, &e), e, "large_radius");
	CHECK_REJECTS(vane_displacement_roots_zone(1, NAN, 1, &e), e, "small_radius");
	CHECK_REJECTS(vane_displacement_roots_zone(2, 1, -1, &e), e, "width");
	CHECK_REJECTS(vane_displacement_roots_outlet(2, 1, 1, -1, 12, &e), e, "vane_thickness");
	CHECK_REJECTS(vane_displacement_roots_outlet(2, 1, 1, 0, 0, &e), e, "vanes");
	CHECK_REJECTS(vane_displacement_eccentric(0, 0, 1, 8, &e), e, "ring_radius");
	CHECK_REJECTS(vane_displacement_eccentric(1, 1, 1, 8, &e), e, "eccentricity");
	CHECK_REJECTS(vane_displacement_eccentric(1, 0.1, 0, 8, &e), e, "width");
	CHECK_REJECTS(vane_displacement_eccentric(1, 0.1, 1, 1, &e), e, "vanes");
	CHECK_REJECTS(vane_displacement_eccentric_roots(-1, 1, 1, 8, &e), e, "eccentricity");
	CHECK_REJECTS(vane_displacement_textbook(0, 1, 1, 1, &e), e, "ring_diameter");
	CHECK_REJECTS(vane_displacement_textbook(1, INFINITY, 1, 1, &e), e, "rotor_diameter");
	CHECK_REJECTS(vane_displacement_roots_outlet(0.033, 0.0286, 0.024, 0.0018, 500, &e), e,
		      "vanes");
	const vane_parts p = worked_pump();
	double v = 1, r = 1;
	ck_assert_int_eq(vane_displacement_chamber(&p, NAN, &v, &r, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "angle");
	ck_assert(isnan(v) && isnan(r));
	vane_displacement d;
	ck_assert_int_eq(vane_displacement_run(NULL, &d, &e), VANE_INVALID_ARGUMENT);
	ck_assert(isnan(d.selected) && d.roots == 0);
}
END_TEST

/* A steep law and a wide tip: no ring is parallel to that path. */
START_TEST(undercut_is_refused)
{
	vane_parts p = worked_pump();
	p.ring.law = VANE_RING_POLYNOMIAL_4567;
	p.ring.rise = 8 * DEGREE;
	p.ring.small_dwell = 82 * DEGREE;
	vane_displacement d;
	vane_tip_contact c;
	vane_error e;
	ck_assert_int_eq(vane_displacement_run(&p, &d, &e), VANE_NO_SOLUTION);
	ck_assert_str_eq(e.name, "parts.tip_radius");
	ck_assert(isnan(d.selected) && d.roots == 0);
	ck_assert_int_eq(vane_displacement_contact(&p, 42 * DEGREE, &c, &e), VANE_NO_SOLUTION);
	ck_assert(isnan(c.ring_radius) && isnan(c.normal));
}
END_TEST

START_TEST(outputs_are_nan_whatever_failed)
{
	const vane_parts p = worked_pump();
	double rate = 1;
	ck_assert_int_eq(vane_displacement_chamber(&p, 0, NULL, &rate, NULL),
			 VANE_INVALID_ARGUMENT);
	ck_assert(isnan(rate));
	vane_ring ring = p.ring;
	ck_assert_int_eq(vane_ring_turned(NULL, &ring, NULL), VANE_INVALID_ARGUMENT);
	ck_assert(isnan(ring.large_radius) && ring.law == 0);
	vane_parts_default(NULL);
	vane_ring_default(NULL);
}
END_TEST

SUITE("displacement", published, published_problem, eccentric_check_values, worked_displacement,
      worked_chamber, rate_is_the_derivative_of_the_volume, volume_is_the_integral_of_the_rate,
      worked_contact, limits, rejects, undercut_is_refused, outputs_are_nan_whatever_failed)
