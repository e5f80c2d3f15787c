#include "row.h"
#include "vane/contact.h"

#include <string.h>

static const double steel = 1.1e11;

static vane_contact_ellipse point(double force, double low, double high, double poisson)
{
	const vane_contact_shape shape = {low, high};
	vane_contact_ellipse out;
	ck_assert_int_eq(vane_contact_point(force, &shape, steel, poisson, &out, NULL), VANE_OK);
	return out;
}

START_TEST(published)
{
	const double third = 1.0 / 3;
	const vane_contact_ellipse sphere = point(1000, 50, 50, 0.3);
	const row rows[] = {
		{"H-01 Johnson sec. 4.2(c) (from memory): greatest shear",
		 vane_contact_line_shear_greatest(1, NULL), 0.3003, 1e-4},
		{"H-01 Johnson sec. 4.2(c) (from memory): depth",
		 vane_contact_line_shear_depth(1, NULL), 0.786, 6e-4},
		{"H-02 Smith and Liu, Boresi table: compression, friction 0",
		 vane_contact_sliding_stress(1, 0, NULL), 1, 1e-15},
		{"H-02 Smith and Liu, Boresi table: compression, friction 1/12",
		 vane_contact_sliding_stress(1, 1.0 / 12, NULL), 1.09, 1e-15},
		{"H-02 Smith and Liu, Boresi table: compression, friction 1/6",
		 vane_contact_sliding_stress(1, 1.0 / 6, NULL), 1.19, 1e-15},
		{"H-02 Smith and Liu, Boresi table: compression, friction 1/3",
		 vane_contact_sliding_stress(1, third, NULL), 1.40, 1e-15},
		{"H-02 Smith and Liu, Boresi table: shear, friction 0",
		 vane_contact_sliding_shear(1, 0, NULL), 0.300, 1e-15},
		{"H-02 Smith and Liu, Boresi table: shear, friction 1/12",
		 vane_contact_sliding_shear(1, 1.0 / 12, NULL), 0.308, 1e-15},
		{"H-02 Smith and Liu, Boresi table: shear, friction 1/6",
		 vane_contact_sliding_shear(1, 1.0 / 6, NULL), 0.339, 1e-15},
		{"H-02 Smith and Liu, Boresi table: shear, friction 1/3",
		 vane_contact_sliding_shear(1, third, NULL), 0.435, 1e-15},
		{"H-02 Smith and Liu, Boresi table: octahedral, friction 0",
		 vane_contact_sliding_octahedral(1, 0, NULL), 0.272, 1e-15},
		{"H-02 Smith and Liu, Boresi table: octahedral, friction 1/12",
		 vane_contact_sliding_octahedral(1, 1.0 / 12, NULL), 0.265, 1e-15},
		{"H-02 Smith and Liu, Boresi table: octahedral, friction 1/6",
		 vane_contact_sliding_octahedral(1, 1.0 / 6, NULL), 0.277, 1e-15},
		{"H-02 Smith and Liu, Boresi table: octahedral, friction 1/3",
		 vane_contact_sliding_octahedral(1, third, NULL), 0.368, 1e-15},
		{"Johnson sec. 3.4 (from memory): sphere, shear, nu 0.3",
		 sphere.shear / sphere.pressure, 0.31, 0.005},
		{"Johnson sec. 3.4 (from memory): sphere, depth, nu 0.3",
		 sphere.shear_depth / sphere.semi_major, 0.48, 0.005},
		{"mpmath, independent: sphere, shear, nu 0.3", sphere.shear / sphere.pressure,
		 0.31002050195452142, 1e-15},
		{"mpmath, independent: sphere, depth, nu 0.3",
		 sphere.shear_depth / sphere.semi_major, 0.48086448529289541, 2e-15},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(ellipse_is_exact)
{
	/* mpmath, 30 digits, by Legendre's integrals: force 1000, modulus 1.1e11. */
	static const struct {
		double low, high, major, minor, pressure, approach;
	} sure[] = {
		{10, 50, 0.0011063664965486985, 0.00038280179729202088, 1127375006.3572449,
		 9.7836645236772431e-6},
		{1, 1000, 0.0034191974064729961, 5.0376789967629588e-5, 2771958476.7425634,
		 7.114365935937164e-6},
		{49.9, 50, 0.00051522970812210161, 0.00051454250599591504, 1801022890.1985552,
		 1.3242117982596978e-5},
	};
	for (size_t i = 0; i < sizeof sure / sizeof *sure; i++) {
		const vane_contact_ellipse e = point(1000, sure[i].low, sure[i].high, 0.3);
		CHECK_NEAR(e.semi_major, sure[i].major, 3e-15);
		CHECK_NEAR(e.semi_minor, sure[i].minor, 3e-15);
		CHECK_NEAR(e.pressure, sure[i].pressure, 3e-15);
		CHECK_NEAR(e.approach, sure[i].approach, 3e-15);
		/* The pressures add up to the force. */
		CHECK_NEAR(2 * 3.14159265358979323846 / 3 * e.pressure * e.semi_major *
				   e.semi_minor,
			   1000, 3e-15);
	}
}
END_TEST

START_TEST(spheres_and_lines_are_limits)
{
	const vane_contact_ellipse e = point(250, 40, 40, 0.3);
	CHECK_NEAR(e.semi_major, vane_contact_sphere_radius(250, 40, steel, NULL), 2e-15);
	CHECK_NEAR(e.semi_minor, e.semi_major, 1e-15);
	CHECK_NEAR(e.pressure, vane_contact_sphere_pressure(250, 40, steel, NULL), 2e-15);
	CHECK_NEAR(e.approach, vane_contact_sphere_approach(250, 40, steel, NULL), 2e-15);
	CHECK_NEAR(vane_contact_sphere_shear(e.pressure, e.semi_major, e.shear_depth, 0.3, NULL),
		   e.shear, 1e-14);
	CHECK_NEAR(e.stress_major, -0.8 * e.pressure, 1e-14);
	/* A long ellipse is a line in its middle, of the load that its pressure makes there. */
	const vane_contact_ellipse slim = point(1000, 1e-9, 1000, 0.3);
	CHECK_NEAR(slim.shear, vane_contact_line_shear_greatest(slim.pressure, NULL), 1e-5);
	CHECK_NEAR(slim.shear_depth, vane_contact_line_shear_depth(slim.semi_minor, NULL), 1e-5);
	const double line = 3.14159265358979323846 / 2 * slim.semi_minor * slim.pressure;
	CHECK_NEAR(vane_contact_line_half_width(line, 1000, steel, NULL), slim.semi_minor, 1e-5);
	CHECK_NEAR(vane_contact_line_pressure(line, 1000, steel, NULL), slim.pressure, 1e-5);
	/* Strip: the pressure holds the load. */
	CHECK_NEAR(3.14159265358979323846 / 2 *
			   vane_contact_line_half_width(3e5, 800, steel, NULL) *
			   vane_contact_line_pressure(3e5, 800, steel, NULL),
		   3e5, 1e-15);
	const vane_contact_ellipse none = point(0, 1, 2, 0.3);
	ck_assert(none.pressure == 0 && none.approach == 0 && none.shear_depth == 0);
}
END_TEST

START_TEST(stresses_below)
{
	/* Boussinesq's field integrated over an ellipse of 2 by 1, at 0.5, nu 0.3; mpmath. */
	vane_contact_stress s;
	ck_assert_int_eq(vane_contact_stresses(1, 1, 2, 0.5, 0.3, &s, NULL), VANE_OK);
	CHECK_NEAR(s.major, -0.30849418672, 1e-11);
	CHECK_NEAR(s.minor, -0.233346338477, 1e-11);
	CHECK_NEAR(s.normal, -0.867721831274624688, 1e-15);
	CHECK_NEAR(s.shear, (s.minor - s.normal) / 2, 1e-15);
	/* At the surface only the pressure and Poisson's ratio count. */
	ck_assert_int_eq(vane_contact_stresses(1, 1, 3, 0, 0.25, &s, NULL), VANE_OK);
	CHECK_NEAR(s.major, -0.5 - 0.5 / 4, 1e-14);
	CHECK_NEAR(s.minor, -0.5 - 0.5 * 3 / 4, 1e-14);
	CHECK_NEAR(s.normal, -1, 1e-15);
	/* Far below, those of a force at a point. */
	ck_assert_int_eq(vane_contact_stresses(1, 1, 2, 1e30, 0.3, &s, NULL), VANE_OK);
	CHECK_NEAR(s.normal, -2e-60, 1e-12);
	CHECK_NEAR(s.major, 2 * 0.4 / 6 * 1e-60, 1e-12);
	/* No depth has more shear than the greatest. */
	for (double nu = 0; nu <= 0.5; nu += 0.1)
		for (double low = 1e-3; low <= 1; low *= 2.5) {
			const vane_contact_ellipse e = point(100, low, 1, nu);
			for (double z = 0; z < 5; z += 0.01) {
				ck_assert_int_eq(vane_contact_stresses(
							 e.pressure, e.semi_minor, e.semi_major,
							 z * e.semi_minor, nu, &s, NULL),
						 VANE_OK);
				ck_assert(s.shear <= e.shear * (1 + 1e-12));
			}
		}
	/* The line's own. */
	for (double z = 0; z < 4; z += 0.05)
		ck_assert(vane_contact_line_shear(1, 1, z, NULL) <=
			  vane_contact_line_shear_greatest(1, NULL));
	CHECK_NEAR(vane_contact_line_shear(5, 2, vane_contact_line_shear_depth(2, NULL), NULL),
		   vane_contact_line_shear_greatest(5, NULL), 1e-15);
	CHECK_NEAR(vane_contact_line_shear(1, 1, 1e200, NULL), 0.5e-200, 1e-15);
	CHECK_NEAR(vane_contact_sphere_shear(1, 1, 1e8, 0.3, NULL), (1.5 - 1.3 / 3) / 2 * 1e-16,
		   1e-14);
	ck_assert(vane_contact_sphere_shear(1, 1, 1e200, 0.3, NULL) == 0);
	CHECK_NEAR(vane_contact_sphere_shear(1, 1, 1e-12, 0.5, NULL),
		   1e-12 * 0.75 * 3.14159265358979323846 / 2, 1e-11);
	CHECK_NEAR(vane_contact_sphere_tension(3, 0.3, NULL), 0.4, 1e-15);
}
END_TEST

START_TEST(curvatures)
{
	CHECK_NEAR(vane_contact_curvature(0.01, 0.04, NULL), 125, 1e-15);
	CHECK_NEAR(vane_contact_curvature_hollow(0.01, 0.04, NULL), 75, 1e-15);
	CHECK_NEAR(vane_contact_modulus(210e9, 0.3, 210e9, 0.3, NULL), 210e9 / 1.82, 1e-15);
	vane_contact_shape s;
	/* A ball in a groove. */
	ck_assert_int_eq(vane_contact_relative(100, 100, 20, -96, 0, &s, NULL), VANE_OK);
	CHECK_NEAR(s.curvature_low, 4, 1e-14);
	CHECK_NEAR(s.curvature_high, 120, 1e-14);
	/* Equal cylinders, crossed. */
	ck_assert_int_eq(
		vane_contact_relative(100, 0, 100, 0, 3.14159265358979323846 / 2, &s, NULL),
		VANE_OK);
	CHECK_NEAR(s.curvature_low, 100, 1e-14);
	CHECK_NEAR(s.curvature_high, 100, 1e-14);
	/* At 45 degrees. */
	ck_assert_int_eq(
		vane_contact_relative(100, 0, 100, 0, 3.14159265358979323846 / 4, &s, NULL),
		VANE_OK);
	CHECK_NEAR(s.curvature_low, 100 - sqrt(0.5) * 100, 1e-14);
	vane_error error;
	ck_assert_int_eq(vane_contact_relative(100, 0, 100, 0, 0, &s, &error), VANE_NO_SOLUTION);
	ck_assert(isnan(s.curvature_low));
}
END_TEST

START_TEST(rejects)
{
	vane_error error;
	CHECK_REJECTS(vane_contact_modulus(0, 0.3, 1, 0.3, &error), error, "modulus_1");
	CHECK_REJECTS(vane_contact_modulus(1, 0.3, 1, 0.6, &error), error, "poisson_2");
	CHECK_REJECTS(vane_contact_curvature(1, NAN, &error), error, "radius_2");
	CHECK_REJECTS(vane_contact_curvature_hollow(1, 1, &error), error, "hollow_radius");
	CHECK_REJECTS(vane_contact_line_half_width(-1, 1, 1, &error), error, "line_load");
	CHECK_REJECTS(vane_contact_line_pressure(1, 0, 1, &error), error, "curvature");
	CHECK_REJECTS(vane_contact_line_shear(1, 1, -1, &error), error, "depth");
	CHECK_REJECTS(vane_contact_line_shear_greatest(-1, &error), error, "pressure");
	CHECK_REJECTS(vane_contact_line_shear_depth(0, &error), error, "half_width");
	CHECK_REJECTS(vane_contact_sliding_stress(1, 0.34, &error), error, "friction");
	CHECK_REJECTS(vane_contact_sphere_radius(1, 1, 0, &error), error, "contact_modulus");
	CHECK_REJECTS(vane_contact_sphere_pressure(NAN, 1, 1, &error), error, "force");
	CHECK_REJECTS(vane_contact_sphere_approach(1, INFINITY, 1, &error), error, "curvature");
	CHECK_REJECTS(vane_contact_sphere_tension(1, 0.51, &error), error, "poisson");
	CHECK_REJECTS(vane_contact_sphere_shear(1, 0, 1, 0.3, &error), error, "contact_radius");
	vane_contact_ellipse e;
	vane_contact_shape shape = {2, 1};
	ck_assert_int_eq(vane_contact_point(1, &shape, 1, 0.3, &e, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "shape.curvature_high");
	ck_assert(isnan(e.pressure) && isnan(e.stress_minor));
	shape = (vane_contact_shape){1, 1.1e12};
	ck_assert_int_eq(vane_contact_point(1, &shape, 1, 0.3, &e, &error), VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "shape.curvature_high");
	ck_assert_int_eq(vane_contact_point(1, NULL, 1, 0.3, &e, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "shape");
	ck_assert_int_eq(vane_contact_point(1, &shape, 1, 0.3, NULL, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "out");
	vane_contact_stress s;
	ck_assert_int_eq(vane_contact_stresses(1, 2, 1, 0, 0.3, &s, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "semi_major");
	ck_assert(isnan(s.shear));
	ck_assert_int_eq(vane_contact_stresses(1, 1, 1.1e12, 0, 0.3, &s, &error), VANE_NO_SOLUTION);
	ck_assert_str_eq(error.name, "semi_major");
	vane_contact_shape out;
	ck_assert_int_eq(vane_contact_relative(1, 1, NAN, 1, 0, &out, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "first_2");
}
END_TEST

SUITE("contact", published, ellipse_is_exact, spheres_and_lines_are_limits, stresses_below,
      curvatures, rejects)
