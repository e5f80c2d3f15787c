#include "row.h"
#include "vane/clearance.h"

#include <string.h>

static const vane_instrument micrometer = {
	.error_limit = 2e-6,
	.repeatability = 0.7e-6,
	.resolution = 1e-6,
	.temperature_range = 2,
	.expansion = 11.5e-6,
};

static vane_width width(double w)
{
	vane_width out;
	ck_assert_int_eq(vane_clearance_width(&w, 1, &micrometer, &out, NULL), VANE_OK);
	return out;
}

static vane_gap gap(double outer, double inner, int32_t same)
{
	const vane_width o = width(outer), i = width(inner);
	vane_gap out;
	ck_assert_int_eq(vane_clearance_between(&o, &i, same, &out, NULL), VANE_OK);
	return out;
}

START_TEST(micrometer_values)
{
	/* Independent prototype, Python: 24 mm, single readings. */
	const row rows[] = {
		{"prototype: u1 [um]", width(24e-3).uncertainty * 1e6, 1.417122, 5e-7},
		{"prototype: two instruments [um]", gap(24e-3, 24e-3, 0).uncertainty * 1e6,
		 2.004113, 5e-7},
		{"prototype: one instrument [um]", gap(24e-3, 24e-3, 1).uncertainty * 1e6, 1.161810,
		 5e-7},
		{"prototype: correlation", gap(24e-3, 24e-3, 1).correlation, 0.6639, 5e-5},
		{"definition: a/sqrt(3) [um]", width(24e-3).systematic * 1e6, 2 / sqrt(3), 1e-12},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(gap(24e-3, 23.96e-3, 1).total, 40e-6, 1e-9);
	CHECK_NEAR(gap(24e-3, 23.96e-3, 1).per_side, 20e-6, 1e-9);
	ck_assert(gap(24e-3, 24.01e-3, 1).total < 0);
	ck_assert(gap(24e-3, 23.96e-3, 0).correlation == 0);
}
END_TEST

START_TEST(thermal_values)
{
	/* Independent prototype: 24 and 23.96 mm, 40 um at 20 degC, 11.5 and 12.3e-6/K. */
	const row rows[] = {
		{"prototype: both 80 degC [um]",
		 vane_clearance_thermal(24e-3, 23.96e-3, 11.5e-6, 12.3e-6, 60, 60, NULL) * 1e6,
		 38.877520, 5e-7},
		{"prototype: ring 60, rotor 80 degC [um]",
		 vane_clearance_thermal(24e-3, 23.96e-3, 11.5e-6, 12.3e-6, 40, 60, NULL) * 1e6,
		 33.357520, 5e-7},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(vane_clearance_thermal(24e-3, 23.96e-3, 12e-6, 12e-6, 0, 0, NULL),
		   24e-3 - 23.96e-3, 1e-15);
}
END_TEST

START_TEST(several_readings)
{
	/* By hand: 24.000, 24.002, 24.004 mm have the mean 24.002 and s = 2 um. */
	const double reading[] = {24.000e-3, 24.002e-3, 24.004e-3};
	vane_width w;
	ck_assert_int_eq(vane_clearance_width(reading, 3, &micrometer, &w, NULL), VANE_OK);
	const double thermal = 24.002 * 11.5e-3 * 2;
	const row rows[] = {
		{"by hand: mean [mm]", w.mean * 1e3, 24.002, 1e-12},
		{"by hand: spread [um]", w.spread * 1e6, 2, 1e-9},
		{"by hand: u [um]", w.uncertainty * 1e6,
		 sqrt(4.0 / 3 + 4.0 / 3 + 1.0 / 12 + thermal * thermal / 3), 1e-9},
		{"by hand: least [mm]", w.least * 1e3, 24.000, 1e-12},
		{"by hand: greatest [mm]", w.greatest * 1e3, 24.004, 1e-12},
	};
	ROWS_CHECK(rows);
	/* Agreeing readings do not undercut the stated repeatability. */
	const double same[] = {24e-3, 24e-3, 24e-3, 24e-3};
	vane_clearance_width(same, 4, &micrometer, &w, NULL);
	const double one = width(24e-3).uncertainty;
	CHECK_NEAR(w.uncertainty * w.uncertainty, one * one - 0.75 * 0.49e-12, 1e-12);
	ck_assert(w.spread == 0);
}
END_TEST

START_TEST(correlation_without_cancellation)
{
	/* All of u systematic: equal widths then have an exact difference. */
	const vane_width a = {1, 1e-6, 1e-6, 0, 1, 1}, b = {1, 1.25e-6, 1e-6, 0, 1, 1};
	vane_gap g;
	vane_clearance_between(&a, &a, 1, &g, NULL);
	ck_assert(g.uncertainty == 0 && g.correlation == 1);
	vane_clearance_between(&a, &b, 1, &g, NULL);
	CHECK_NEAR(g.uncertainty, 0.75e-6, 1e-12);
}
END_TEST

static vane_decision decision(double ring, double rotor, double vane,
			      const vane_width_limits *limits)
{
	const vane_width a = width(ring), b = width(rotor), c = width(vane);
	vane_decision out;
	ck_assert_int_eq(vane_clearance_decide(&a, &b, &c, 1, limits, &out, NULL), VANE_OK);
	return out;
}

START_TEST(decisions)
{
	vane_width_limits limits;
	vane_width_limits_default(&limits);
	/* NIST SP 811: 1 in = 25.4 mm, so 0.0005 in = 12.7 um. */
	CHECK_NEAR(limits.ring_rotor_high, 0.0005 * 0.0254, 1e-15);
	const double ring = 24e-3;

	vane_decision d = decision(ring, ring - 6e-6, ring - 7e-6, &limits);
	ck_assert_int_eq(d.ring, VANE_ACTION_REUSE);
	ck_assert_int_eq(d.rotor, VANE_ACTION_REUSE);
	ck_assert_int_eq(d.vane, VANE_ACTION_REUSE);
	ck_assert_int_eq(d.ring_rotor_verdict, VANE_VERDICT_CONFORMS);
	ck_assert(d.ring_rotor_probability > 0.99);

	d = decision(ring, ring - 30e-6, ring - 7e-6, &limits);
	ck_assert_int_eq(d.ring, VANE_ACTION_REUSE);
	ck_assert_int_eq(d.rotor, VANE_ACTION_MATCH);
	ck_assert_int_eq(d.vane, VANE_ACTION_REUSE);
	ck_assert_int_eq(d.ring_rotor_verdict, VANE_VERDICT_FAILS);
	ck_assert(d.ring_rotor_probability < 1e-9);

	d = decision(ring, ring - 6e-6, ring - 12.7e-6, &limits);
	ck_assert_int_eq(d.ring_vane_verdict, VANE_VERDICT_NOT_PROVEN);
	ck_assert_int_eq(d.vane, VANE_ACTION_MATCH);
	CHECK_NEAR(d.ring_vane_probability, 0.5, 1e-6);

	d = decision(ring, ring - 30e-6, ring - 30e-6, &limits);
	ck_assert_int_eq(d.ring, VANE_ACTION_MATCH);

	limits.rotor_least = ring - 20e-6;
	d = decision(ring, ring - 30e-6, ring - 7e-6, &limits);
	ck_assert_int_eq(d.rotor, VANE_ACTION_REPLACE);
	limits.ring_least = ring + 10e-6;
	d = decision(ring, ring - 6e-6, ring - 7e-6, &limits);
	ck_assert_int_eq(d.ring, VANE_ACTION_REPLACE);
	ck_assert_int_eq(d.rotor, VANE_ACTION_MATCH);
	ck_assert_int_eq(d.vane, VANE_ACTION_MATCH);
	/* Just below the least width is not yet proven below it. */
	limits.ring_least = ring + 1e-6;
	d = decision(ring, ring - 6e-6, ring - 7e-6, &limits);
	ck_assert_int_eq(d.ring, VANE_ACTION_REUSE);
	vane_width_limits_default(NULL);
}
END_TEST

START_TEST(rejections)
{
	vane_error e;
	CHECK_REJECTS(vane_clearance_thermal(0, 1, 0, 0, 0, 0, &e), e, "outer");
	CHECK_REJECTS(vane_clearance_thermal(1, -1, 0, 0, 0, 0, &e), e, "inner");
	CHECK_REJECTS(vane_clearance_thermal(1, 1, -1, 0, 0, 0, &e), e, "outer_expansion");
	CHECK_REJECTS(vane_clearance_thermal(1, 1, 0, NAN, 0, 0, &e), e, "inner_expansion");
	CHECK_REJECTS(vane_clearance_thermal(1, 1, 0, 0, INFINITY, 0, &e), e, "outer_rise");
	CHECK_REJECTS(vane_clearance_thermal(1, 1, 0, 0, 0, NAN, &e), e, "inner_rise");
	ck_assert(isnan(vane_clearance_thermal(1e308, 1, 1e3, 0, 1e3, 0, &e)));
	ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);

	vane_width w;
	const double bad[] = {24e-3, NAN}, good[] = {24e-3};
	ck_assert_int_eq(vane_clearance_width(bad, 2, &micrometer, &w, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "reading");
	ck_assert_int_eq(e.index, 1);
	ck_assert(isnan(w.mean) && isnan(w.uncertainty) && isnan(w.greatest));
	ck_assert_int_eq(vane_clearance_width(good, 0, &micrometer, &w, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "readings");
	ck_assert_int_eq(vane_clearance_width(good, 1, NULL, &w, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_clearance_width(NULL, 1, &micrometer, &w, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_clearance_width(good, 1, &micrometer, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	vane_instrument broken = micrometer;
	broken.expansion = NAN;
	ck_assert_int_eq(vane_clearance_width(good, 1, &broken, &w, NULL), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_clearance_width(good, 1, &broken, &w, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "instrument.expansion");
	const double huge[] = {1e308, 1e300};
	ck_assert_int_ne(vane_clearance_width(huge, 2, &micrometer, &w, &e), VANE_OK);
	ck_assert(isnan(w.mean));

	vane_gap g;
	vane_width ok = width(24e-3), wrong = ok;
	wrong.systematic = 2 * wrong.uncertainty;
	ck_assert_int_eq(vane_clearance_between(&ok, &wrong, 1, &g, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "inner.systematic");
	ck_assert(isnan(g.total) && isnan(g.correlation));
	ck_assert_int_eq(vane_clearance_between(&ok, &ok, 2, &g, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "same_instrument");
	ck_assert_int_eq(vane_clearance_between(NULL, &ok, 1, &g, &e), VANE_INVALID_ARGUMENT);

	vane_decision d;
	vane_width_limits limits;
	vane_width_limits_default(&limits);
	ck_assert_int_eq(vane_clearance_decide(&ok, &ok, NULL, 1, &limits, &d, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "vane");
	limits.ring_vane_high = limits.ring_vane_low;
	ck_assert_int_eq(vane_clearance_decide(&ok, &ok, &ok, 1, &limits, &d, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "limits.ring_vane_high");
	ck_assert(isnan(d.ring_rotor.total) && d.ring == 0 && d.ring_rotor_verdict == 0);
}
END_TEST

/* One instrument whose only doubt is its own error: the doubt cancels, and a gap is in or out. */
START_TEST(no_doubt_decides)
{
	vane_width_limits limits;
	vane_decision d;
	vane_width_limits_default(&limits);
	const vane_width perfect = {1, 1e-6, 1e-6, 0, 1, 1};
	ck_assert_int_eq(vane_clearance_decide(&perfect, &perfect, &perfect, 1, &limits, &d, NULL),
			 VANE_OK);
	ck_assert(d.ring_rotor.uncertainty == 0 && d.ring_rotor_probability == 1);
	ck_assert_int_eq(d.ring_rotor_verdict, VANE_VERDICT_CONFORMS);
}
END_TEST

/* Either gap alone can be too uncertain for a double. */
START_TEST(each_gap_may_overflow)
{
	vane_width_limits limits;
	vane_decision d;
	vane_error e;
	vane_width_limits_default(&limits);
	const vane_width sound = width(24e-3);
	/* The roots of u - s and u + s: a sum past the greatest double, and 0 times it. */
	const vane_width wide[] = {{24e-3, 1.5e308, 1e308, 0, 24e-3, 24e-3},
				   {24e-3, 1.5e308, 1.5e308, 0, 24e-3, 24e-3}};
	for (int i = 0; i < 2; i++)
		for (int rotor = 0; rotor < 2; rotor++) {
			ck_assert_int_eq(vane_clearance_decide(&sound, rotor ? &wide[i] : &sound,
							       rotor ? &sound : &wide[i], 1,
							       &limits, &d, &e),
					 VANE_OUT_OF_RANGE);
			ck_assert_int_eq(e.code, VANE_OUT_OF_RANGE);
			ck_assert_str_eq(e.name, "result");
			ck_assert(isnan(d.ring_rotor.total) && isnan(d.ring_vane.total));
			ck_assert(d.ring == 0 && d.rotor == 0 && d.vane == 0);
		}
}
END_TEST

SUITE("clearance", micrometer_values, thermal_values, several_readings,
      correlation_without_cancellation, decisions, rejections, no_doubt_decides,
      each_gap_may_overflow)
