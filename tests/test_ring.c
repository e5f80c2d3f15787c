#include "row.h"

#include "worked_pump.h"

#include <string.h>

#define PI 3.14159265358979323846

static double greatest(int32_t law, int which)
{
	double most = 0;
	for (int i = 0; i <= 100000; i++) {
		vane_ring_lift l;
		ck_assert_int_eq(vane_ring_law_at(law, i / 100000.0, &l, NULL), VANE_OK);
		const double d[] = {l.velocity, l.acceleration, l.jerk};
		most = fmax(most, fabs(d[which]));
	}
	return most;
}

START_TEST(peak_factors)
{
	const row rows[] = {
		{"V-C1 Norton, Cam Design and Manufacturing Handbook, harmonic Cv (from memory)",
		 greatest(2, 0), 1.570796, 1e-6},
		{"V-C1 harmonic Ca (Norton prints 4.945, a misprint)", greatest(2, 1), 4.934802,
		 1e-6},
		{"V-C1 harmonic Cj", greatest(2, 2), 15.50314, 1e-5},
		{"V-C2 Norton, cycloidal Cv (from memory)", greatest(3, 0), 2, 1e-9},
		{"V-C2 cycloidal Ca", greatest(3, 1), 6.283185, 1e-6},
		{"V-C2 cycloidal Cj", greatest(3, 2), 39.47842, 1e-5},
		{"V-C3 Norton, 3-4-5 Cv (from memory)", greatest(4, 0), 1.875, 1e-9},
		{"V-C3 3-4-5 Ca = 10/sqrt 3 (Norton prints 5.777)", greatest(4, 1), 5.773503, 1e-6},
		{"V-C3 3-4-5 Cj", greatest(4, 2), 60, 1e-9},
		{"V-C4 Norton, 4-5-6-7 Cv (from memory)", greatest(5, 0), 2.1875, 1e-9},
		{"V-C4 4-5-6-7 Ca = 84 sqrt 5/25 (Norton prints 7.526)", greatest(5, 1), 7.513188,
		 1e-6},
		{"V-C4 4-5-6-7 Cj = 52.5 in the middle", greatest(5, 2), 52.5, 1e-9},
		{"V-C5 Rothbart, Cam Design Handbook (2004) eqs. 2.17-2.19, Cv", greatest(1, 0), 2,
		 1e-12},
		{"V-C5 Rothbart, Ca", greatest(1, 1), 4, 1e-12},
		{"V-C6 Norton, modified trapezoid Cv (from memory)", greatest(6, 0), 2, 1e-9},
		{"V-C6 modified trapezoid Ca", greatest(6, 1), 4.888124, 1e-6},
		{"V-C6 modified trapezoid Cj", greatest(6, 2), 61.42597, 1e-5},
		{"V-C7 Norton, modified sine Cv (from memory)", greatest(7, 0), 1.759603, 1e-6},
		{"V-C7 modified sine Ca", greatest(7, 1), 5.527957, 1e-6},
		{"V-C7 modified sine Cj", greatest(7, 2), 69.46636, 1e-5},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(derivatives_are_those_of_the_lift)
{
	const double h = 1e-5;
	for (int32_t law = 1; law <= 7; law++)
		for (int i = 1; i < 50; i++) {
			const double u = i / 50.0 + 0.003;
			vane_ring_lift a, b, c;
			vane_ring_law_at(law, u - h, &a, NULL);
			vane_ring_law_at(law, u, &b, NULL);
			vane_ring_law_at(law, u + h, &c, NULL);
			ck_assert(fabs((c.lift - a.lift) / (2 * h) - b.velocity) < 1e-7);
			ck_assert(fabs((c.velocity - a.velocity) / (2 * h) - b.acceleration) <
				  1e-6);
			ck_assert(fabs((c.acceleration - a.acceleration) / (2 * h) - b.jerk) <
				  1e-5);
		}
}
END_TEST

START_TEST(laws_are_odd_about_their_middle_and_meet_the_dwells)
{
	for (int32_t law = 1; law <= 7; law++) {
		vane_ring_lift a, b;
		vane_ring_law_at(law, 0, &a, NULL);
		vane_ring_law_at(law, 1, &b, NULL);
		ck_assert(a.lift == 0 && fabs(b.lift - 1) < 1e-15);
		ck_assert(a.velocity == 0 && fabs(b.velocity) < 1e-15);
		for (double u = 0; u < 0.5; u += 0.01) {
			vane_ring_law_at(law, u, &a, NULL);
			vane_ring_law_at(law, 1 - u, &b, NULL);
			ck_assert(fabs(1 - b.lift - a.lift) < 1e-14);
			ck_assert(fabs(a.velocity - b.velocity) < 1e-12);
			ck_assert(fabs(a.acceleration + b.acceleration) < 1e-10);
		}
	}
}
END_TEST

/* Near the start the lift is tiny; its leading term is known. */
START_TEST(small_lifts_keep_their_digits)
{
	const double u = 1e-5, leading[] = {2 * u * u,
					    PI * PI / 4 * u * u,
					    2 * PI * PI / 3 * u * u * u,
					    10 * u * u * u,
					    35 * u * u * u * u,
					    16 * PI * PI / (3 * (PI + 2)) * u * u * u,
					    8 * PI * PI * PI / (3 * (PI + 4)) * u * u * u};
	for (int32_t law = 1; law <= 7; law++) {
		vane_ring_lift l;
		vane_ring_law_at(law, u, &l, NULL);
		CHECK_NEAR(l.lift, leading[law - 1], 5e-5);
	}
	vane_ring_lift l;
	/* (2 pi u - sin 2 pi u)/(2 pi) at the double nearest 1e-5, mpmath */
	vane_ring_law_at(3, u, &l, NULL);
	CHECK_NEAR(l.lift, 6.57973626609412e-15, 1e-14);
}
END_TEST

START_TEST(worked_ring)
{
	const double slope[] = {9.003622, 7.071429, 9.003622, 8.440896,
				9.847712, 9.003622, 7.921402};
	const double second[] = {18.423913, 22.729592, 28.940215, 26.592628,
				 34.605582, 22.514592, 25.461650};
	for (int32_t law = 1; law <= 7; law++) {
		vane_ring ring = worked_pump().ring;
		ring.law = law;
		double most_slope = 0, most_second = 0;
		for (int i = 0; i <= 180000; i++) {
			vane_ring_point p;
			ck_assert_int_eq(vane_ring_at(&ring, i * DEGREE / 1000, &p, NULL), VANE_OK);
			most_slope = fmax(most_slope, fabs(p.slope));
			most_second = fmax(most_second, fabs(p.second));
		}
		const row rows[] = {
			{"worked pump, greatest slope, mm/rad", most_slope * 1e3, slope[law - 1],
			 1e-6},
			{"worked pump, greatest second derivative, mm/rad2", most_second * 1e3,
			 second[law - 1], 1e-6},
		};
		ROWS_CHECK(rows);
	}
	const vane_ring ring = worked_pump().ring;
	vane_ring_point a, b, c;
	vane_ring_at(&ring, 30 * DEGREE, &a, NULL);
	vane_ring_at(&ring, 45 * DEGREE, &b, NULL);
	vane_ring_at(&ring, 60 * DEGREE, &c, NULL);
	const row rows[] = {
		{"worked pump, crown radius at 30 deg, mm", a.radius * 1e3, 28.976574, 5e-7},
		{"worked pump, crown radius at 45 deg, mm", b.radius * 1e3, 30.8, 5e-7},
		{"worked pump, crown radius at 60 deg, mm", c.radius * 1e3, 32.623426, 5e-7},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(turned_over_is_the_mirror)
{
	vane_ring ring = worked_pump().ring, turned, twice;
	ring.rise = 60 * DEGREE;
	ring.fall = 52 * DEGREE;
	ring.phase = 0.1;
	ck_assert_int_eq(vane_ring_turned(&ring, &turned, NULL), VANE_OK);
	for (int i = -720; i <= 720; i++) {
		vane_ring_point a, b;
		vane_ring_at(&turned, i * DEGREE / 2, &a, NULL);
		vane_ring_at(&ring, PI / 2 - i * DEGREE / 2, &b, NULL);
		ck_assert(fabs(a.radius - b.radius) < 1e-16);
		ck_assert(fabs(a.slope + b.slope) < 1e-15);
		ck_assert(fabs(a.second - b.second) < 1e-13);
	}
	vane_ring_turned(&turned, &twice, NULL);
	ck_assert(twice.rise == ring.rise && fabs(twice.phase - ring.phase) < 1e-15);
	/* A quarter turn alone is not the same thing for this ring: 0.649 mm off. */
	double worst = 0;
	ring.phase = 0;
	vane_ring_turned(&ring, &turned, NULL);
	for (int i = 0; i < 36000; i++) {
		vane_ring_point a, b;
		vane_ring_at(&turned, i * DEGREE / 100, &a, NULL);
		vane_ring_at(&ring, PI / 2 + i * DEGREE / 100, &b, NULL);
		worst = fmax(worst, fabs(a.radius - b.radius));
	}
	const row rows[] = {
		{"60/52 degree ring indexed instead of turned, mm", worst * 1e3, 0.649, 5e-4}};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(rejects)
{
	const vane_ring good = worked_pump().ring;
	vane_ring_point p;
	vane_error error;
	const struct {
		size_t offset;
		const char *name;
		double value;
	} cases[] = {
		{offsetof(vane_ring, large_radius), "ring.large_radius", 0.01},
		{offsetof(vane_ring, small_radius), "ring.small_radius", 0},
		{offsetof(vane_ring, width), "ring.width", -1},
		{offsetof(vane_ring, small_dwell), "ring.small_dwell", -0.1},
		{offsetof(vane_ring, rise), "ring.rise", 0},
		{offsetof(vane_ring, large_dwell), "ring.large_dwell", INFINITY},
		{offsetof(vane_ring, fall), "ring.fall", 1},
		{offsetof(vane_ring, phase), "ring.phase", NAN},
	};
	for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
		for (int nan = 0; nan < 2; nan++) {
			vane_ring bad = good;
			const double value = nan ? NAN : cases[i].value;
			memcpy((char *)&bad + cases[i].offset, &value, sizeof value);
			ck_assert_int_eq(vane_ring_at(&bad, 0, &p, &error), VANE_INVALID_ARGUMENT);
			ck_assert_str_eq(error.name, cases[i].name);
			ck_assert_msg(strstr(error.text, cases[i].name) != NULL, "%s", error.text);
			ck_assert(isnan(p.radius) && isnan(p.slope) && isnan(p.second) &&
				  isnan(p.third));
		}
	vane_ring bad = good;
	bad.phase = 1e15;
	ck_assert_int_eq(vane_ring_at(&bad, 0, &p, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "ring.phase");
	bad = good;
	bad.reserved = 7;
	ck_assert_int_eq(vane_ring_at(&bad, 0, &p, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "ring.reserved");
	bad = good;
	bad.law = 8;
	ck_assert_int_eq(vane_ring_at(&bad, 0, &p, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "ring.law");
	ck_assert_int_eq(vane_ring_at(&good, INFINITY, &p, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "angle");
	ck_assert_int_eq(vane_ring_at(NULL, 0, &p, &error), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_ring_at(&good, 0, NULL, &error), VANE_INVALID_ARGUMENT);
	vane_ring_lift l;
	ck_assert_int_eq(vane_ring_law_at(4, 1.0000001, &l, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "fraction");
	ck_assert(isnan(l.lift));
	ck_assert_int_eq(vane_ring_at(&good, 1e300, &p, &error), VANE_OK);
	ck_assert(p.radius >= good.small_radius && p.radius <= good.large_radius);
}
END_TEST

SUITE("ring", peak_factors, derivatives_are_those_of_the_lift,
      laws_are_odd_about_their_middle_and_meet_the_dwells, small_lifts_keep_their_digits,
      worked_ring, turned_over_is_the_mirror, rejects)
