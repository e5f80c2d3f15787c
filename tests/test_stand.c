#include "row.h"
#include "vane/stand.h"

#include <string.h>

/* Exact by definition: NIST SP 811. */
static const double inch3 = 0.0254 * 0.0254 * 0.0254;
static const double gallon = 231 * 0.0254 * 0.0254 * 0.0254;
static const double psi = 6894.757293168361;
static const double pound_inch = 0.1129848290276167;

static double vol(double q, double n, double v)
{
	return vane_stand_volumetric_efficiency(q, n, v, NULL);
}

static double mech(double v, double dp, double t)
{
	return vane_stand_mechanical_efficiency(v, dp, t, NULL);
}

static double overall(double q, double dp, double t, double n)
{
	return vane_stand_overall_efficiency(q, dp, t, n, NULL);
}

START_TEST(efficiencies)
{
	const double n = 1000.0 / 60;
	/* P-18 starts from efficiencies: a torque that gives 87 % at 94 % volumetric. */
	const double q = 0.94 * 1e-4 * 25, t = q * 1e7 / (6.283185307179586 * 25 * 0.87);
	const row rows[] = {
		/* The book rounds the theoretical flow to 21.6 gpm on the way. */
		{"Esposito, 5th ed., Example 5-8: overall [%]",
		 100 * overall(20 * gallon / 60, 1000 * psi, 900 * pound_inch, n), 81.6, 0.2},
		{"Esposito, 5th ed., Example 5-8: theoretical torque [lbf.in]",
		 900 * mech(5 * inch3, 1000 * psi, 900 * pound_inch), 793, 4},
		{"Esposito, 5th ed., Example 5-8, from memory: volumetric [%]",
		 100 * vol(20 * gallon / 60, n, 5 * inch3), 92.4, 0.3},
		{"Esposito, 5th ed., Example 5-9, from memory: overall [%]",
		 100 * overall(0.0015, 70e5, 120, n), 83.6, 0.15},
		{"Esposito, 5th ed., Example 5-9, from memory: theoretical torque [N.m]",
		 120 * mech(100e-6, 70e5, 120), 112, 0.8},
		{"Sullivan, 4th ed., Example 7.2: volumetric [%]",
		 100 * vol(52 * gallon / 60, 3300.0 / 60, 3.75 * inch3), 97.067, 0.0006},
		{"Sullivan, 4th ed., Example 7.3: mechanical [%]", 100 * mech(1e-4, 1e7, t), 92.55,
		 0.006},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(vol(0.0015, n, 100e-6) * mech(100e-6, 70e5, 120), overall(0.0015, 70e5, 120, n),
		   1e-14);
	ck_assert(vol(0, 1, 1) == 0 && mech(1, 0, 1) == 0 && overall(1, 0, 1, 1) == 0);
}
END_TEST

START_TEST(speed_correction)
{
	/* Independent prototype: 1476 to 1500 rpm, 36.309949 cm3. Its proportional
	 * correction is 51.110642 L/min, so the flow was 1476/1500 of that. */
	const double litre_minute = 1e-3 / 60, flow = 51.110642 * 1476 / 1500 * litre_minute;
	const row rows[] = {
		{"prototype: additive correction [L/min]",
		 vane_stand_speed_corrected(flow, 36.309949e-6, 1476.0 / 60, 25, NULL) /
			 litre_minute,
		 51.164311, 1.5e-6}, /* Two printed values go in. */
	};
	ROWS_CHECK(rows);
	ck_assert(vane_stand_speed_corrected(flow, 1e-5, 25, 25, NULL) == flow);
}
END_TEST

static vane_reading at(double speed, double dp, double flow)
{
	return (vane_reading){.speed = speed,
			      .pressure = dp + 2e4,
			      .inlet_pressure = 2e4,
			      .temperature = 313.15,
			      .flow = flow};
}

START_TEST(norris)
{
	/* NIST StRD, Norris (linear, 36 observations), data and certified values
	 * from memory; at 1 1/s, V is the intercept and the slope is -B1. */
	static const double y[36] = {0.1,   338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1,
				     778.9, 559.2, 0.3,   0.1,   778.1, 668.8, 339.3, 448.9, 10.8,
				     557.7, 228.3, 998.0, 888.8, 119.6, 0.3,   0.6,   557.6, 339.3,
				     888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
	static const double x[36] = {0.2,   337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6,
				     777.0, 558.2, 0.4,   0.6,   775.5, 666.9, 338.0, 447.5, 11.6,
				     556.0, 228.1, 995.8, 887.6, 120.2, 0.3,   0.3,   556.8, 339.1,
				     887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
	vane_reading reading[36];
	for (int i = 0; i < 36; i++) {
		reading[i] = at(1, 0, y[i]);
		reading[i].inlet_pressure = 0;
		reading[i].pressure = x[i];
	}
	vane_derived d;
	vane_error e;
	ck_assert_int_eq(vane_stand_displacement(reading, 36, &d, &e), VANE_OK);
	ck_assert_int_eq(e.code, VANE_OK);
	/* Certified digits, less what the conditioning takes. */
	const row rows[] = {
		{"NIST StRD Norris B0", d.displacement, -0.262323073774029, 3e-12},
		{"NIST StRD Norris u(B0)", d.uncertainty, 0.232818234301152, 3e-13},
		{"NIST StRD Norris B1", -d.slope, 1.00211681802045, 1e-14},
		{"NIST StRD Norris u(B1)", d.slope_uncertainty, 0.429796848199937e-3, 1e-15},
		{"NIST StRD Norris residual", d.residual, 0.884796396144373, 1e-12},
	};
	ROWS_CHECK(rows);
	ck_assert_int_eq(d.degrees_of_freedom, 34);
	ck_assert_int_eq(d.method, VANE_DERIVED_INTERCEPT);
	ck_assert_int_eq(d.caution, 0);
}
END_TEST

static double law(double speed, double dp, double orifice, double carried)
{
	return 36e-6 * speed - 2.4e-12 * dp - orifice * sqrt(2 * dp / 860) - carried * speed * dp;
}

START_TEST(intercept_with_unsteady_speed)
{
	/* An exact line, though no two readings have the same speed. */
	vane_reading reading[6];
	for (int i = 0; i < 6; i++) {
		const double n = 25 + 0.1 * (i % 3), dp = 2e6 * (i + 1);
		reading[i] = at(n, dp, law(n, dp, 0, 0));
	}
	vane_derived d;
	ck_assert_int_eq(vane_stand_displacement(reading, 6, &d, NULL), VANE_OK);
	CHECK_NEAR(d.displacement, 36e-6, 1e-12);
	CHECK_NEAR(d.slope, 2.4e-12, 1e-10);
	ck_assert_int_eq(d.caution, 0);
	ck_assert_int_eq(d.levels, 0);
}
END_TEST

START_TEST(two_step_sees_past_the_bend)
{
	vane_reading reading[25];
	for (int i = 0; i < 25; i++) {
		const double n = 10 + 5 * (i % 5), dp = 3e6 * (i / 5 + 1);
		reading[i] = at(n, dp, law(n, dp, 3e-7, 1e-14));
	}
	vane_derived two, one;
	ck_assert_int_eq(vane_stand_displacement(reading, 25, &two, NULL), VANE_OK);
	ck_assert_int_eq(two.method, VANE_DERIVED_TWO_STEP);
	ck_assert_int_eq(two.levels, 5);
	ck_assert_int_eq(two.degrees_of_freedom, 3);
	ck_assert_int_eq(two.caution, 0);
	CHECK_NEAR(two.displacement, 36e-6, 1e-11);
	ck_assert(two.residual < 1e-15 && two.uncertainty < 1e-15);
	/* Slip at the mean speed, as a line: between its secants. */
	ck_assert(two.slope > 2.4e-12 + 2e-13 + 3e-7 * sqrt(2 / 860.0 / 15e6));
	ck_assert(two.slope < 2.4e-12 + 2e-13 + 3e-7 * sqrt(2 / 860.0 / 3e6));

	/* At one speed the bend biases the intercept low, and shows. */
	vane_reading same[5];
	for (int i = 0; i < 5; i++)
		same[i] = reading[5 * i + 4];
	ck_assert_int_eq(vane_stand_displacement(same, 5, &one, NULL), VANE_OK);
	ck_assert_int_eq(one.method, VANE_DERIVED_INTERCEPT);
	ck_assert_int_eq(one.caution, VANE_CAUTION_CURVATURE);
	ck_assert(one.displacement < 36e-6 * 0.995);
	/* Too few to see it. */
	ck_assert_int_eq(vane_stand_displacement(same, 4, &one, NULL), VANE_OK);
	ck_assert_int_eq(one.caution, 0);
}
END_TEST

START_TEST(levels_are_found)
{
	vane_reading reading[12];
	for (int i = 0; i < 12; i++) {
		const double n = i % 2 ? 20 : 30, dp = 2e6 * (i / 2 + 1);
		reading[i] = at(n, dp, law(n, dp, 0, 0));
	}
	vane_derived d;
	/* Two levels are too few for the two steps. */
	ck_assert_int_eq(vane_stand_displacement(reading, 4, &d, NULL), VANE_OK);
	ck_assert_int_eq(d.method, VANE_DERIVED_INTERCEPT);
	ck_assert_int_eq(vane_stand_displacement(reading, 6, &d, NULL), VANE_OK);
	ck_assert_int_eq(d.levels, 3);
	/* Order does not matter, and a level with one speed is left out. */
	const vane_reading swap = reading[0];
	reading[0] = reading[11];
	reading[11] = swap;
	reading[4].speed = reading[5].speed;
	reading[4].flow = reading[5].flow;
	ck_assert_int_eq(vane_stand_displacement(reading, 12, &d, NULL), VANE_OK);
	ck_assert_int_eq(d.levels, 5);
	CHECK_NEAR(d.displacement, 36e-6, 1e-12);
	CHECK_NEAR(d.slope, 2.4e-12, 1e-9);
}
END_TEST

START_TEST(displacement_refused)
{
	vane_reading reading[5];
	for (int i = 0; i < 5; i++)
		reading[i] = at(20 + i, 5e6, law(20 + i, 5e6, 0, 0));
	vane_derived d;
	vane_error e;
	ck_assert_int_eq(vane_stand_displacement(reading, 5, &d, &e), VANE_NOT_IDENTIFIABLE);
	ck_assert(strstr(e.text, "one pressure") != NULL);
	ck_assert(isnan(d.displacement) && isnan(d.residual) && d.method == 0);
	ck_assert_int_eq(vane_stand_displacement(reading, 2, &d, &e), VANE_NOT_IDENTIFIABLE);
	ck_assert_int_eq(vane_stand_displacement(reading, 0, &d, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "readings");
	ck_assert_int_eq(vane_stand_displacement(NULL, 5, &d, &e), VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_stand_displacement(reading, 5, NULL, &e), VANE_INVALID_ARGUMENT);
	reading[3].flow = NAN;
	ck_assert_int_eq(vane_stand_displacement(reading, 5, &d, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "reading.flow");
	ck_assert_int_eq(e.index, 3);
	reading[3] = at(25, 1e6, 1e-3);
	reading[3].pressure = 0;
	ck_assert_int_eq(vane_stand_displacement(reading, 5, &d, &e), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "reading.pressure");
	reading[3].pressure = 1e308;
	reading[3].inlet_pressure = -1e308;
	ck_assert_int_eq(vane_stand_displacement(reading, 5, &d, &e), VANE_OUT_OF_RANGE);
	ck_assert(isnan(d.displacement));
	for (int i = 0; i < 5; i++)
		reading[i] = at(1e300, 1e6 * (i + 1), 1e308);
	ck_assert_int_ne(vane_stand_displacement(reading, 5, &d, &e), VANE_OK);
	ck_assert(isnan(d.displacement) && isnan(d.slope));
	for (int i = 0; i < 5; i++)
		reading[i] = at(25, 0, 1e-3);
	ck_assert_int_eq(vane_stand_displacement(reading, 5, &d, NULL), VANE_NOT_IDENTIFIABLE);
}
END_TEST

/* VG 46: 46.0 and 6.8 mm2/s at 40 and 100 degC, 860 kg/m3. */
static vane_oil oil_46(void)
{
	vane_oil oil;
	vane_oil_default(&oil);
	oil.temperature_1 = 313.15;
	oil.viscosity_1 = 46e-6;
	oil.temperature_2 = 373.15;
	oil.viscosity_2 = 6.8e-6;
	oil.density = 860;
	oil.thermal_expansion = 0;
	oil.pressure_viscosity = 0;
	return oil;
}

static const double true_value[4] = {36e-6, 4.2e-14, 3e-7, 2e-14};

static double column(const vane_oil *oil, const vane_reading *r, int i)
{
	vane_oil_state state;
	ck_assert_int_eq(vane_oil_at(oil, r->temperature, &state, NULL), VANE_OK);
	const double dp = r->pressure - r->inlet_pressure;
	const double columns[4] = {r->speed, -dp / state.viscosity, -sqrt(2 * dp / state.density),
				   -r->speed * dp};
	return columns[i];
}

/* Every pressure at every speed and temperature. */
static int plan(const vane_oil *oil, int temperatures, int speeds, vane_reading *reading)
{
	static const double temperature[] = {313.15, 338.15}, speed[] = {20, 30};
	static const double dp[] = {2e6, 5e6, 8e6, 11e6, 14e6, 16e6};
	int n = 0;
	for (int t = 0; t < temperatures; t++) {
		for (int s = 0; s < speeds; s++) {
			for (int p = 0; p < 6; p++) {
				vane_reading *r = &reading[n++];
				*r = (vane_reading){.speed = speed[s],
						    .pressure = dp[p],
						    .temperature = temperature[t]};
				for (int i = 0; i < 4; i++)
					r->flow += true_value[i] * column(oil, r, i);
			}
		}
	}
	return n;
}

static const int32_t all = VANE_SLIP_LAMINAR | VANE_SLIP_ORIFICE | VANE_SLIP_COMPRESSIBILITY;

START_TEST(slip_recovered)
{
	const vane_oil oil = oil_46();
	vane_reading reading[24];
	const int n = plan(&oil, 2, 2, reading);
	vane_slip_fit f;
	double correlation[16];
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, all, &f, correlation, NULL),
			 VANE_OK);
	CHECK_NEAR(f.displacement, true_value[0], 1e-12);
	CHECK_NEAR(f.laminar, true_value[1], 1e-9);
	CHECK_NEAR(f.orifice, true_value[2], 1e-9);
	CHECK_NEAR(f.compressibility, true_value[3], 1e-9);
	ck_assert(f.residual < 1e-15);
	ck_assert_int_eq(f.caution, 0);
	ck_assert_int_eq(f.terms, all);
	ck_assert_int_eq(f.degrees_of_freedom, 20);
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, all, &f, NULL, NULL), VANE_OK);

	/* A law without the orifice, fitted without it. */
	for (int i = 0; i < n; i++)
		reading[i].flow -= true_value[2] * column(&oil, &reading[i], 2);
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, 5, &f, correlation, NULL), VANE_OK);
	CHECK_NEAR(f.laminar, true_value[1], 1e-9);
	CHECK_NEAR(f.compressibility, true_value[3], 1e-9);
	ck_assert(f.orifice == 0 && f.orifice_uncertainty == 0);
	for (int i = 0; i < 4; i++)
		ck_assert(correlation[8 + i] == 0 && correlation[4 * i + 2] == 0);
	ck_assert(correlation[15] == 1);
}
END_TEST

START_TEST(slip_correlation)
{
	/* NumPy 1.x/2.x, double: X of the columns scaled to length 1,
	 * b = linalg.lstsq(X, y), C = inv(X'X) r'r/(24 - 4), unscaled; the flows
	 * of slip_recovered plus ((7 i mod 24) - 11.5) 1e-7 m3/s; Walther's law
	 * through 46.0 and 6.8 mm2/s, 860 kg/m3. */
	static const double b[4] = {3.598963899535e-05, 4.152709989989e-14, 3.004166276143e-07,
				    1.948523839001e-14};
	static const double c[16] = {
		3.179938654438e-16,  -3.276657435810e-24, 6.911004076549e-17,  -3.933145065485e-24,
		-3.276657435810e-24, 4.582138586923e-31,  -1.423198199361e-24, -3.357518056156e-31,
		6.911004076549e-17,  -1.423198199361e-24, 3.001756744550e-17,  -7.510886109856e-24,
		-3.933145065485e-24, -3.357518056156e-31, -7.510886109856e-24, 4.535744093960e-30,
	};
	const vane_oil oil = oil_46();
	vane_reading reading[24];
	const int n = plan(&oil, 2, 2, reading);
	for (int i = 0; i < n; i++)
		reading[i].flow += ((7 * i) % 24 - 11.5) * 1e-7;
	vane_slip_fit f;
	double correlation[16];
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, all, &f, correlation, NULL),
			 VANE_OK);
	const double got[4] = {f.displacement, f.laminar, f.orifice, f.compressibility};
	const double u[4] = {f.displacement_uncertainty, f.laminar_uncertainty,
			     f.orifice_uncertainty, f.compressibility_uncertainty};
	for (int i = 0; i < 4; i++) {
		CHECK_NEAR(got[i], b[i], 1e-9);
		CHECK_NEAR(u[i], sqrt(c[5 * i]), 1e-9);
		ck_assert(fabs(got[i] - true_value[i]) < 3 * u[i]);
	}
	for (int i = 0; i < 16; i++)
		CHECK_NEAR(correlation[i], c[i] / sqrt(c[5 * (i / 4)] * c[5 * (i % 4)]), 1e-9);
	for (int i = 0; i < 4; i++)
		ck_assert(correlation[5 * i] == 1);
	CHECK_NEAR(f.residual, 7.303550106570362e-07, 1e-9);
	CHECK_NEAR(f.condition, 12.346711621312334, 1e-9);
	ck_assert_int_eq(f.caution, 0);

	/* More noise: no coefficient to be used. */
	for (int i = 0; i < n; i++)
		reading[i].flow += ((7 * i) % 24 - 11.5) * 1e-6;
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, all, &f, NULL, NULL), VANE_OK);
	ck_assert_int_eq(f.caution, VANE_CAUTION_ILL_CONDITIONED);
}
END_TEST

START_TEST(slip_plans)
{
	const vane_oil oil = oil_46();
	vane_reading reading[24];
	vane_slip_fit f;
	vane_error e;
	double correlation[16];
	/* One temperature, two speeds: the condition number alone is above 30. */
	int n = plan(&oil, 1, 2, reading);
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, all, &f, NULL, NULL), VANE_OK);
	ck_assert(f.condition > 30 && f.condition < 60);
	ck_assert_int_eq(f.caution, VANE_CAUTION_ILL_CONDITIONED);
	/* One temperature, one speed: laminar slip and compression are one column. */
	n = plan(&oil, 1, 1, reading);
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, all, &f, correlation, &e),
			 VANE_NOT_IDENTIFIABLE);
	ck_assert(strstr(e.text, "speed") != NULL);
	ck_assert(isnan(f.displacement) && isnan(f.condition) && f.terms == 0);
	ck_assert(isnan(correlation[0]) && isnan(correlation[15]));
	/* The same plan does for the displacement and one slip. */
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, 1, &f, NULL, &e), VANE_OK);
	ck_assert_int_eq(f.degrees_of_freedom, 4);
	/* Too few; and one reading many times over. */
	ck_assert_int_eq(vane_stand_slip_fit(reading, 4, &oil, all, &f, NULL, &e),
			 VANE_NOT_IDENTIFIABLE);
	ck_assert(strstr(e.text, "one reading more") != NULL);
	for (int i = 1; i < 24; i++)
		reading[i] = reading[0];
	for (int32_t terms = 1; terms < 8; terms++)
		ck_assert_int_eq(vane_stand_slip_fit(reading, 24, &oil, terms, &f, NULL, &e),
				 VANE_NOT_IDENTIFIABLE);
	ck_assert_int_eq(vane_stand_slip_fit(reading, 24, &oil, 0, &f, NULL, &e), VANE_OK);
	CHECK_NEAR(f.displacement, reading[0].flow / reading[0].speed, 1e-14);
	ck_assert(f.laminar == 0);
	/* No pressure at all. */
	for (int i = 0; i < 24; i++)
		reading[i] = at(20, 0, 1e-3);
	ck_assert_int_eq(vane_stand_slip_fit(reading, 24, &oil, 1, &f, NULL, &e),
			 VANE_NOT_IDENTIFIABLE);
	ck_assert(strstr(e.text, "pressures") != NULL);
}
END_TEST

START_TEST(rejections)
{
	vane_error e;
	CHECK_REJECTS(vane_stand_volumetric_efficiency(-1, 1, 1, &e), e, "flow");
	CHECK_REJECTS(vane_stand_volumetric_efficiency(1, 0, 1, &e), e, "speed");
	CHECK_REJECTS(vane_stand_volumetric_efficiency(1, 1, NAN, &e), e, "displacement");
	CHECK_REJECTS(vane_stand_mechanical_efficiency(0, 1, 1, &e), e, "displacement");
	CHECK_REJECTS(vane_stand_mechanical_efficiency(1, -1, 1, &e), e, "dp");
	CHECK_REJECTS(vane_stand_mechanical_efficiency(1, 1, INFINITY, &e), e, "torque");
	CHECK_REJECTS(vane_stand_overall_efficiency(NAN, 1, 1, 1, &e), e, "flow");
	CHECK_REJECTS(vane_stand_overall_efficiency(1, NAN, 1, 1, &e), e, "dp");
	CHECK_REJECTS(vane_stand_overall_efficiency(1, 1, 0, 1, &e), e, "torque");
	CHECK_REJECTS(vane_stand_overall_efficiency(1, 1, 1, -1, &e), e, "speed");
	CHECK_REJECTS(vane_stand_speed_corrected(-1, 1, 1, 1, &e), e, "flow");
	CHECK_REJECTS(vane_stand_speed_corrected(1, 0, 1, 1, &e), e, "displacement");
	CHECK_REJECTS(vane_stand_speed_corrected(1, 1, 0, 1, &e), e, "speed");
	CHECK_REJECTS(vane_stand_speed_corrected(1, 1, 1, NAN, &e), e, "nominal_speed");

	const vane_oil oil = oil_46();
	vane_reading reading[24];
	vane_slip_fit f;
	const int n = plan(&oil, 2, 2, reading);
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, 8, &f, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "terms");
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, NULL, 7, &f, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, 7, NULL, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_stand_slip_fit(reading, 200000, &oil, 7, &f, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	reading[5].temperature = NAN;
	ck_assert_int_eq(vane_stand_slip_fit(reading, n, &oil, 7, &f, NULL, &e),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(e.name, "reading.temperature");
	ck_assert_int_eq(e.index, 5);
	reading[5].temperature = 313.15;
	reading[5].pressure = 1e308;
	reading[5].inlet_pressure = -1e308;
	ck_assert_int_ne(vane_stand_slip_fit(reading, n, &oil, 7, &f, NULL, &e), VANE_OK);
	ck_assert(isnan(f.displacement) && f.degrees_of_freedom == 0);
	reading[5].inlet_pressure = 0;
	ck_assert_int_ne(vane_stand_slip_fit(reading, n, &oil, 7, &f, NULL, NULL), VANE_OK);
	ck_assert(isnan(f.orifice));
}
END_TEST

SUITE("stand", efficiencies, speed_correction, norris, intercept_with_unsteady_speed,
      two_step_sees_past_the_bend, levels_are_found, displacement_refused, slip_recovered,
      slip_correlation, slip_plans, rejections)
