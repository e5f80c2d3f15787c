#include "row.h"

#include "vane/units.h"

#include <string.h>

static vane_error error;

START_TEST(test_published)
{
	const double newton_metre = vane_units_n_m_from_lbf_in(1, NULL);
	const double turn =
		2 * 3.14159265358979323846 * vane_units_rev_per_s_from_rev_per_min(1, NULL);
	const row rows[] = {
		{"NIST SP 811 (2008) B.8, from memory", vane_units_m_from_in(1, NULL), 2.54e-2,
		 1e-17},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_m_from_thou(1, NULL), 2.54e-5,
		 1e-20},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_pa_from_psi(1, NULL), 6.894757e3,
		 5e-4},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_pa_from_ksi(1, NULL), 6.894757e6,
		 0.5},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_n_from_lbf(1, NULL), 4.448222,
		 5e-7},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_n_m_from_lbf_ft(1, NULL),
		 1.355818, 5e-7},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_n_m_from_lbf_in(1, NULL),
		 1.129848e-1, 5e-8},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_w_from_hp(1, NULL), 7.456999e2,
		 5e-5},
		{"NIST SP 811 (2008) B.8, from memory",
		 vane_units_m3_per_s_from_us_gal_per_min(1, NULL), 6.309020e-5, 5e-12},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_m3_from_in3(1, NULL),
		 1.638706e-5, 5e-12},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_pa_s_from_cp(1, NULL), 1e-3,
		 1e-18},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_m2_per_s_from_cst(1, NULL), 1e-6,
		 1e-21},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_pa_from_bar(1, NULL), 1e5, 0},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_m3_per_s_from_l_per_min(1, NULL),
		 1.666667e-5, 5e-12},
		{"NIST SP 811 (2008) B.8, from memory", vane_units_rad_from_deg(1, NULL),
		 1.745329e-2, 5e-9},
		{"P-01 definition, from memory",
		 1 / vane_units_hp_from_w(vane_units_pa_from_psi(1, NULL) *
						  vane_units_m3_per_s_from_us_gal_per_min(1, NULL),
					  NULL),
		 1714.29, 0.005},
		{"P-02 definition, from memory",
		 1 / vane_units_hp_from_w(newton_metre * turn, NULL), 63025.36, 0.005},
		{"P-03 definition, from memory", 1 / vane_units_kw_from_w(turn, NULL), 9549.297,
		 5e-4},
		{"P-04 definition, from memory",
		 vane_units_kw_from_w(vane_units_pa_from_bar(1, NULL) *
					      vane_units_m3_per_s_from_l_per_min(600, NULL),
				      NULL),
		 1, 1e-12},
		{"P-HP definition, from memory", vane_units_w_from_hp(1, NULL), 745.6999, 5e-5},
		{"ice point", vane_units_k_from_degf(32, NULL), 273.15, 1e-12},
		{"steam point", vane_units_degf_from_k(373.15, NULL), 212, 1e-12},
		{"absolute zero", vane_units_k_from_degf(-459.67, NULL), 0, 0},
	};
	ROWS_CHECK(rows);
}
END_TEST

START_TEST(test_round_trips_and_rejections)
{
	static const struct {
		double (*in)(double, vane_error *), (*out)(double, vane_error *);
		const char *quantity;
	} pairs[] = {
		{vane_units_m_from_mm, vane_units_mm_from_m, "length"},
		{vane_units_m_from_um, vane_units_um_from_m, "length"},
		{vane_units_m_from_in, vane_units_in_from_m, "length"},
		{vane_units_m_from_thou, vane_units_thou_from_m, "length"},
		{vane_units_pa_from_bar, vane_units_bar_from_pa, "pressure"},
		{vane_units_pa_from_psi, vane_units_psi_from_pa, "pressure"},
		{vane_units_pa_from_mpa, vane_units_mpa_from_pa, "pressure"},
		{vane_units_pa_from_kpa, vane_units_kpa_from_pa, "pressure"},
		{vane_units_pa_from_ksi, vane_units_ksi_from_pa, "stress"},
		{vane_units_m2_per_s_from_cst, vane_units_cst_from_m2_per_s, "kinematic_viscosity"},
		{vane_units_pa_s_from_cp, vane_units_cp_from_pa_s, "viscosity"},
		{vane_units_m3_per_s_from_l_per_min, vane_units_l_per_min_from_m3_per_s, "flow"},
		{vane_units_m3_per_s_from_us_gal_per_min, vane_units_us_gal_per_min_from_m3_per_s,
		 "flow"},
		{vane_units_m3_from_cm3, vane_units_cm3_from_m3, "volume"},
		{vane_units_m3_from_in3, vane_units_in3_from_m3, "volume"},
		{vane_units_n_m_from_lbf_ft, vane_units_lbf_ft_from_n_m, "torque"},
		{vane_units_n_m_from_lbf_in, vane_units_lbf_in_from_n_m, "torque"},
		{vane_units_n_from_lbf, vane_units_lbf_from_n, "force"},
		{vane_units_w_from_hp, vane_units_hp_from_w, "power"},
		{vane_units_w_from_kw, vane_units_kw_from_w, "power"},
		{vane_units_k_from_degc, vane_units_degc_from_k, "temperature"},
		{vane_units_k_from_degf, vane_units_degf_from_k, "temperature"},
		{vane_units_rev_per_s_from_rev_per_min, vane_units_rev_per_min_from_rev_per_s,
		 "speed"},
		{vane_units_rad_from_deg, vane_units_deg_from_rad, "angle"},
		{vane_units_s_from_min, vane_units_min_from_s, "time"},
	};
	for (size_t i = 0; i < sizeof pairs / sizeof *pairs; i++) {
		CHECK_NEAR(pairs[i].out(pairs[i].in(37.5, &error), NULL), 37.5, 1e-14);
		ck_assert_int_eq(error.code, VANE_OK);
		CHECK_REJECTS(pairs[i].in(NAN, &error), error, pairs[i].quantity);
		CHECK_REJECTS(pairs[i].out(INFINITY, &error), error, pairs[i].quantity);
		ck_assert(isnan(pairs[i].in(NAN, NULL)));
	}
	CHECK_REJECTS(vane_units_k_from_degc(-273.16, &error), error, "temperature");
	CHECK_REJECTS(vane_units_k_from_degf(-459.68, &error), error, "temperature");
	CHECK_REJECTS(vane_units_degc_from_k(-0.01, &error), error, "temperature");
	CHECK_REJECTS(vane_units_degf_from_k(-0.01, &error), error, "temperature");
	ck_assert(isnan(vane_units_mm_from_m(1e308, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

SUITE("units", test_published, test_round_trips_and_rejections)
