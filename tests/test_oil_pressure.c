/* Oil under pressure and temperature, with air, and its heat; water. */
#include "row.h"

#include "vane/oil.h"

#include <string.h>

static vane_error error;

static double kelvin(double celsius)
{
	return celsius + 273.15;
}

static double fuel_oil_15(double reading, double celsius)
{
	const double t = kelvin(celsius);
	return vane_oil_api_density_15(t, reading * vane_oil_hydrometer_factor(t, NULL), 186.9696,
				       0.4862, 0, NULL);
}

static double crude_oil_15(double reading, double celsius)
{
	const double t = kelvin(celsius);
	return vane_oil_api_density_15(t, reading * vane_oil_hydrometer_factor(t, NULL), 613.9723,
				       0, 0, NULL);
}

START_TEST(test_density)
{
	const row rows[] = {
		/* K1 of the edition of 2004 is per degree Fahrenheit. */
		{"F-RH-01 API MPMS 11.1", 870 * vane_oil_lubricant_expansion(870, NULL),
		 0.34878 * 1.8, 6e-5},
		{"F-RH-02 Table 54A, crude",
		 vane_oil_api_density(kelvin(55), 1050, 613.9723, 0, 0, NULL) / 1050, 0.97758,
		 6e-6},
		{"F-RH-05 Table 24C",
		 vane_oil_volume_correction((30 + 459.67) / 1.8, (60 + 459.67) / 1.8, 650e-6 * 1.8,
					    NULL),
		 1.0194, 6e-5},
		{"F-RH-07 Table 53A, crude", crude_oil_15(779.0, 25), 786.65, 0.006},
		{"F-RH-08 Table 53B, fuel oil", fuel_oil_15(1008.0, 4.5), 1001.19, 0.006},
		{"F-RH-07 reproduced", crude_oil_15(779.0, 25), 786.6469, 6e-5},
		{"F-RH-L870-40 own computation", vane_oil_lubricant_density(kelvin(40), 870, NULL),
		 854.223, 6e-4},
		{"F-RH-L870-40 CTL, own computation",
		 vane_oil_volume_correction(kelvin(40), kelvin(15),
					    vane_oil_lubricant_expansion(870, NULL), NULL),
		 0.981866, 6e-7},
		{"F-RH-L870-60 own computation", vane_oil_lubricant_density(kelvin(60), 870, NULL),
		 841.493, 6e-4},
		{"F-RH-L900-100 own computation",
		 vane_oil_lubricant_density(kelvin(100), 900, NULL), 845.806, 6e-4},
		{"F-RH-02 expansion", vane_oil_api_expansion(1050, 613.9723, 0, 0, NULL),
		 613.9723 / 1050 / 1050, 1e-18},
		/* 2680.3206 / 780^2 - 0.00336312, between gasoline and jet fuel. */
		{"expansion between the groups, own computation",
		 vane_oil_api_expansion(780, 2680.3206, 0, -0.00336312, NULL), 1.04240366863905e-3,
		 5e-16},
		{"Murnaghan, own computation",
		 vane_oil_pressure_density(35e6, 860, 1.6e9, 10, NULL), 877.1824097171, 5e-10},
		{"Cragoe, own computation", vane_oil_specific_heat(kelvin(40), 870, NULL),
		 1950.911892777, 5e-9},
		{"Cragoe, own computation", vane_oil_conductivity(kelvin(40), 870, NULL),
		 0.1316710477241, 5e-13},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(vane_oil_lubricant_density(288.15, 870, NULL), 870, 0);
	CHECK_NEAR(vane_oil_hydrometer_factor(288.15, NULL), 1, 0);
	for (double t = -40; t < 160; t += 23)
		for (double density = 750; density < 1000; density += 61)
			CHECK_NEAR(vane_oil_lubricant_density_15(
					   kelvin(t),
					   vane_oil_lubricant_density(kelvin(t), density, NULL),
					   NULL),
				   density, 4e-16);
	/* Constant modulus, the law that oil with air follows, and the tangent at zero. */
	CHECK_NEAR(vane_oil_pressure_density(35e6, 860, 1.6e9, 0, NULL), 860 * exp(35e6 / 1.6e9),
		   1e-15);
	CHECK_NEAR(vane_oil_pressure_density(35e6, 860, 1.6e9, 1e-20, NULL),
		   860 * exp(35e6 / 1.6e9), 1e-15);
	CHECK_REJECTS(vane_oil_lubricant_expansion(0, &error), error, "density_15");
	CHECK_REJECTS(vane_oil_lubricant_density(0, 870, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_lubricant_density_15(300, -1, &error), error, "density");
	CHECK_REJECTS(vane_oil_api_density(300, 870, 3001, 0, 0, &error), error, "k0");
	CHECK_REJECTS(vane_oil_api_expansion(870, 0, 2.1, 0, &error), error, "k1");
	CHECK_REJECTS(vane_oil_api_density_15(300, 870, 0, 0.6, 0.02, &error), error, "k2");
	CHECK_REJECTS(vane_oil_volume_correction(300, 288, -1e-9, &error), error,
		      "thermal_expansion");
	CHECK_REJECTS(vane_oil_hydrometer_factor(199, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_specific_heat(300, NAN, &error), error, "density_15");
	CHECK_REJECTS(vane_oil_conductivity(1001, 870, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_pressure_density(0, 870, 0, 1, &error), error, "bulk_modulus");
	ck_assert(isnan(vane_oil_pressure_density(-1.6e8, 870, 1.6e9, 10, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_api_density(1e9, 870, 0, 0.6, 0, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

static double roelands(double viscosity, double pressure, double index)
{
	return vane_oil_roelands(viscosity, pressure, 313.15, 313.15, index, 1.1, NULL);
}

static double barus_slope(double viscosity, double coefficient)
{
	const double z = vane_oil_roelands_index(viscosity, coefficient, NULL);
	return log(roelands(viscosity, 1e3, z) / roelands(viscosity, -1e3, z)) / 2e3;
}

START_TEST(test_roelands)
{
	const double at_1 = vane_oil_roelands_coefficient(1, 1, NULL);
	const double per_unit = vane_oil_roelands_coefficient(exp(1), 1, NULL) - at_1;
	const row rows[] = {
		{"F-PV-01 Roelands, from memory: 2000 kgf/cm2", per_unit, 1 / (2000 * 98066.5),
		 5e-12},
		{"F-PV-02 Roelands, from memory: 10^-4.2 Pa.s", at_1 / per_unit, 4.2 * log(10),
		 0.005},
		{"F-PV-03 Houpert, from memory", barus_slope(0.04, 2.2e-8), 2.2e-8, 2.2e-13},
		{"F-PV-04 Barus, from memory", vane_oil_barus(1, 2e-8, 20e6, NULL), 1.49182, 1e-5},
		{"index, own computation", vane_oil_roelands_index(0.04, 2.2e-8, NULL),
		 0.6686781052557, 5e-13},
		{"slope, own computation",
		 vane_oil_roelands_slope(313.15, 0.04, 373.15, 0.006, NULL), 1.182179724963, 5e-12},
		{"pressure and temperature, own computation",
		 vane_oil_roelands(0.04, 1e8, 353.15, 313.15, 0.6, 1.1, NULL), 0.0458699695237,
		 5e-13},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(roelands(0.04, 0, 0.6), 0.04, 0);
	const double s = vane_oil_roelands_slope(313.15, 0.04, 373.15, 0.006, NULL);
	CHECK_NEAR(vane_oil_roelands(0.04, 0, 373.15, 313.15, 0.6, s, NULL), 0.006, 1e-14);
	CHECK_NEAR(vane_oil_roelands_coefficient(0.04, vane_oil_roelands_index(0.04, 2e-8, NULL),
						 NULL),
		   2e-8, 1e-15);
	CHECK_NEAR(vane_oil_roelands_slope(313, 0.04, 373, 0.04, NULL) + 1, 1, 0);
	CHECK_REJECTS(vane_oil_roelands(6e-5, 0, 300, 300, 0.6, 1, &error), error, "viscosity");
	CHECK_REJECTS(vane_oil_roelands(0.04, -1.96e8, 300, 300, 0.6, 1, &error), error,
		      "pressure");
	CHECK_REJECTS(vane_oil_roelands(0.04, 0, 138, 300, 0.6, 1, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_roelands(0.04, 0, 300, 300, 0.6, -1, &error), error,
		      "temperature_slope");
	CHECK_REJECTS(vane_oil_roelands_index(0.04, -1, &error), error, "pressure_viscosity");
	CHECK_REJECTS(vane_oil_roelands_coefficient(0.04, NAN, &error), error, "pressure_index");
	CHECK_REJECTS(vane_oil_roelands_slope(313, 0.04, 313, 0.006, &error), error,
		      "temperature_2");
	CHECK_REJECTS(vane_oil_roelands_slope(313, 0.006, 373, 0.04, &error), error, "viscosity_2");
}
END_TEST

START_TEST(test_modulus)
{
	const row rows[] = {
		{"F-BM-01 Esposito, Example 2-11, in3 and psi",
		 vane_oil_volume_change(10, 1900, 250e3, NULL), -0.076, 5e-4},
		{"F-BM-03 Sullivan, Example 6.2, psi",
		 -vane_oil_volume_change(1, 1000, 350e3, NULL), 0.0029, 5e-5},
		{"F-BM-01 the other way", vane_oil_measured_modulus(10, -0.076, 1900, NULL), 250e3,
		 1e-9},
		{"tangent, own computation",
		 vane_oil_modulus(35e6, 333.15, 1.6e9, 10, 313.15, 0.005, NULL), 1797739868.858,
		 5e-4},
		{"secant, own computation", vane_oil_secant_modulus(35e6, 1.6e9, 10, NULL),
		 1786791541.213, 5e-4},
		{"tangent from secant, own computation",
		 vane_oil_tangent_modulus(35e6, 1.8e9, 5.2, NULL), 1963535228.677, 5e-4},
		{"adiabatic, own computation",
		 vane_oil_adiabatic_modulus(1.4e9, 313.15, 860, 6.5e-4, 1950, NULL), 1573833235.985,
		 5e-4},
		{"sound, own computation", vane_oil_sound_speed(1.6e9, 860, NULL), 1363.988678941,
		 5e-10},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(vane_oil_secant_modulus(0, 1.6e9, 10, NULL), 1.6e9, 0);
	CHECK_NEAR(vane_oil_secant_modulus(1e-3, 1.6e9, 10, NULL), 1.6e9, 1e-11);
	CHECK_NEAR(vane_oil_isothermal_modulus(
			   vane_oil_adiabatic_modulus(1.4e9, 313.15, 860, 6.5e-4, 1950, NULL),
			   313.15, 860, 6.5e-4, 1950, NULL),
		   1.4e9, 1e-15);
	for (double p = 1e6; p < 1e9; p *= 3) {
		const double h = p * 1e-4;
		const double secant = vane_oil_secant_modulus(p, 1.6e9, 10, NULL);
		const double rise = vane_oil_secant_modulus(p + h, 1.6e9, 10, NULL) -
				    vane_oil_secant_modulus(p - h, 1.6e9, 10, NULL);
		/* Secant, slope, tangent, density: one law. */
		CHECK_NEAR(vane_oil_tangent_modulus(p, secant, rise / (2 * h), NULL),
			   1.6e9 + 10 * p, 1e-8);
		CHECK_NEAR(860 / (1 - p / secant),
			   vane_oil_pressure_density(p, 860, 1.6e9, 10, NULL), 1e-15);
	}
	CHECK_REJECTS(vane_oil_volume_change(0, 1, 1, &error), error, "volume");
	CHECK_REJECTS(vane_oil_measured_modulus(1, 0, 1, &error), error, "volume_change");
	CHECK_REJECTS(vane_oil_measured_modulus(1, -1, 0, &error), error, "dp");
	CHECK_REJECTS(vane_oil_modulus(0, 300, 1e9, -1, 300, 0, &error), error, "modulus_slope");
	CHECK_REJECTS(vane_oil_secant_modulus(INFINITY, 1e9, 1, &error), error, "pressure");
	CHECK_REJECTS(vane_oil_tangent_modulus(2e9, 1e9, 1, &error), error, "pressure");
	CHECK_REJECTS(vane_oil_adiabatic_modulus(1e9, 300, 860, -1, 1950, &error), error,
		      "thermal_expansion");
	CHECK_REJECTS(vane_oil_isothermal_modulus(1e9, 300, 860, 0, 0, &error), error,
		      "specific_heat");
	CHECK_REJECTS(vane_oil_sound_speed(1e9, 0, &error), error, "density");
	ck_assert(isnan(vane_oil_modulus(-2e8, 300, 1e9, 10, 300, 0, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_tangent_modulus(1e8, 1e9, 10, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
	ck_assert(isnan(vane_oil_adiabatic_modulus(1e9, 300, 860, 1, 1950, &error)));
	ck_assert_int_eq(error.code, VANE_NO_SOLUTION);
}
END_TEST

static double volume(double p)
{
	return vane_oil_aerated_volume(p, 1.6e9, 0.005, 101325, 1.2, NULL);
}

static double modulus(double p)
{
	return vane_oil_aerated_modulus(p, 1.6e9, 0.005, 101325, 1.2, NULL);
}

START_TEST(test_air)
{
	const row rows[] = {
		{"20 kPa, independent prototype", volume(2e4), 1.014379551, 5e-10},
		{"100 kPa, independent prototype", volume(1e5), 1.000055972, 5e-10},
		{"1 MPa, independent prototype", volume(1e6), 0.995183288, 5e-10},
		{"5 MPa, independent prototype", volume(5e6), 0.992152351, 6e-10},
		{"15.1 MPa, independent prototype", volume(1.51e7), 0.985793534, 5e-10},
		{"20 kPa, independent prototype", modulus(2e4), 1.258542e6, 0.5},
		{"100 kPa, independent prototype", modulus(1e5), 2.339416e7, 5},
		{"1 MPa, independent prototype", modulus(1e6), 8.026615e8, 50},
		{"5 MPa, independent prototype", modulus(5e6), 1.520968e9, 500},
		{"15.1 MPa, independent prototype", modulus(1.51e7), 1.589128e9, 500},
		{"20 kPa, own computation",
		 vane_oil_aerated_gas_fraction(2e4, 1.6e9, 0.005, 101325, 1.2, NULL),
		 0.01905497423096, 5e-14},
		{"F-BM-04 Rabie, eq. (2.56)",
		 vane_oil_effective_modulus(35e5, 1.4e9, 0.01, 1.4, NULL), 363.9064e6, 50},
		{"F-BM-05 Merritt, ch. 2, from memory, psi",
		 vane_oil_effective_modulus(500, 220e3, 0.01, 1.4, NULL), 53000, 300},
		{"F-BM-06 air in mineral oil, from memory",
		 vane_oil_bunsen(293.15, 870, 0.098, NULL), 0.09, 0.01},
		{"ASTM D2779, own computation", vane_oil_bunsen(293.15, 870, 0.098, NULL),
		 0.08777405598155, 5e-14},
		{"free air, own computation", vane_oil_free_air(1e6, 1e5, 3e6, NULL),
		 0.8229670604996, 5e-13},
		{"Henry", vane_oil_dissolved_air(0.09, 2 * 101325, NULL), 0.18, 1e-16},
		{"Henry", vane_oil_saturation_pressure(0.09, 0.18, NULL), 2 * 101325, 1e-9},
	};
	ROWS_CHECK(rows);
	CHECK_NEAR(volume(101325), 1, 0);
	CHECK_NEAR(vane_oil_aerated_density(5e6, 1.6e9, 0.005, 101325, 1.2, 855, NULL),
		   855 / volume(5e6), 1e-15);
	CHECK_NEAR(vane_oil_aerated_modulus(5e6, 1.6e9, 0, 101325, 1.2, NULL), 1.6e9, 1e-15);
	CHECK_NEAR(vane_oil_aerated_gas_fraction(101325, 1.6e9, 0.03, 101325, 1.2, NULL), 0.03,
		   1e-15);
	/* Far below saturation only the gas gives way, far above only the oil. */
	CHECK_NEAR(modulus(1e-30), 1.2e-30, 1e-12);
	CHECK_NEAR(modulus(1e12), 1.2e12, 1e-12);
	for (double p = 1e3; p < 1e9; p *= 1.7) {
		const double h = 1e-5 * p;
		CHECK_NEAR(modulus(p), -volume(p) * 2 * h / (volume(p + h) - volume(p - h)), 1e-6);
		CHECK_NEAR(modulus(p),
			   vane_oil_effective_modulus(p, 1.6e9,
						      vane_oil_aerated_gas_fraction(
							      p, 1.6e9, 0.005, 101325, 1.2, NULL),
						      1.2, NULL),
			   1e-14);
	}
	CHECK_REJECTS(vane_oil_aerated_volume(0, 1e9, 0, 1e5, 1, &error), error,
		      "absolute_pressure");
	CHECK_REJECTS(vane_oil_aerated_volume(1e5, 0, 0, 1e5, 1, &error), error, "bulk_modulus");
	CHECK_REJECTS(vane_oil_aerated_modulus(1e5, 1e9, 1, 1e5, 1, &error), error, "air_fraction");
	CHECK_REJECTS(vane_oil_aerated_density(1e5, 1e9, 0, 0, 1, 870, &error), error,
		      "reference_absolute_pressure");
	CHECK_REJECTS(vane_oil_aerated_density(1e5, 1e9, 0, 1e5, 1, 0, &error), error, "density");
	CHECK_REJECTS(vane_oil_aerated_gas_fraction(1e5, 1e9, 0, 1e5, 0.9, &error), error,
		      "polytropic_exponent");
	CHECK_REJECTS(vane_oil_effective_modulus(1e5, 1e9, 1.1, 1, &error), error, "gas_fraction");
	CHECK_REJECTS(vane_oil_free_air(1e5, 1e6, 1e6, &error), error, "dissolved_at");
	CHECK_REJECTS(vane_oil_bunsen(500, 870, 0.1, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_dissolved_air(0, 1e5, &error), error, "bunsen_coefficient");
	CHECK_REJECTS(vane_oil_saturation_pressure(0.1, -1, &error), error, "dissolved_air");
	ck_assert(isnan(vane_oil_aerated_volume(1e-320, 1.6e9, 0.5, 1e5, 1, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

START_TEST(test_mixture)
{
	vane_oil_air air;
	vane_oil_mixture mixture, below, above;
	vane_oil_air_default(&air);
	ck_assert_int_eq(vane_oil_mixture_at(&air, 1e6, 855, 1.6e9, &mixture, &error), VANE_OK);
	CHECK_NEAR(mixture.volume, volume(1e6), 0);
	CHECK_NEAR(mixture.bulk_modulus, modulus(1e6), 0);
	CHECK_NEAR(mixture.density, 855 / volume(1e6), 1e-15);

	air.dissolving_from = 1e5;
	air.dissolved_at = 3e6;
	ck_assert_int_eq(vane_oil_mixture_at(&air, 1e6, 855, 1.6e9, &mixture, &error), VANE_OK);
	const row rows[] = {
		{"dissolving, own computation", mixture.volume, 0.9950519301955, 5e-13},
		{"dissolving, own computation", mixture.bulk_modulus, 671419432.3187, 5e-3},
		{"dissolving, own computation", mixture.density, 859.2516370799, 5e-10},
	};
	ROWS_CHECK(rows);
	for (double p = 2e4; p < 2e7; p *= 1.3) {
		const double h = 1e-5 * p;
		vane_oil_mixture_at(&air, p, 855, 1.6e9, &mixture, NULL);
		vane_oil_mixture_at(&air, p - h, 855, 1.6e9, &below, NULL);
		vane_oil_mixture_at(&air, p + h, 855, 1.6e9, &above, NULL);
		CHECK_NEAR(mixture.bulk_modulus,
			   mixture.density * 2 * h / (above.density - below.density), 2e-6);
		ck_assert(p < 3e6 || mixture.gas_fraction == 0);
	}
	CHECK_NEAR(mixture.bulk_modulus, 1.6e9, 1e-15);

	air.fraction = 1;
	ck_assert_int_eq(vane_oil_mixture_at(&air, 1e6, 855, 1.6e9, &mixture, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "air.fraction");
	ck_assert(isnan(mixture.volume) && isnan(mixture.density) && isnan(mixture.bulk_modulus) &&
		  isnan(mixture.gas_fraction));
	ck_assert_int_eq(vane_oil_mixture_at(NULL, 1e6, 855, 1.6e9, &mixture, NULL),
			 VANE_INVALID_ARGUMENT);
	ck_assert_int_eq(vane_oil_mixture_at(&air, 1e6, 855, 1.6e9, NULL, NULL),
			 VANE_INVALID_ARGUMENT);
	vane_oil_air_default(NULL);
}
END_TEST

static double water(double temperature, double density)
{
	return 1e6 * vane_oil_water_viscosity(temperature, density, NULL);
}

START_TEST(test_water)
{
	const row rows[] = {
		{"F-W-03 IAPWS R12-08 Table 4", water(373.15, 1000), 307.8836, 5e-5},
		{"F-W-04 IAPWS R12-08 Table 4", water(433.15, 1), 14.53832, 5e-6},
		{"F-W-08 IAPWS R12-08 Table 4", water(1173.15, 400), 64.15461, 5e-6},
		{"F-W-09 ISO/TR 3666, mPa.s", water(293.15, 998.2071) / 1e3, 1.0016, 5e-5},
		{"F-W-09 ISO/TR 3666, mm2/s", water(293.15, 998.2071) / 998.2071, 1.0034, 5e-5},
		{"F-W-t0 handbooks, from memory", water(273.15, 999.84) / 1e3, 1.792, 6e-4},
		{"F-W-t10 handbooks, from memory", water(283.15, 999.703) / 1e3, 1.306, 6e-4},
		{"F-W-t25 handbooks, from memory", water(298.15, 997.047) / 1e3, 0.89, 6e-4},
		{"F-W-t40 handbooks, from memory", water(313.15, 992.215) / 1e3, 0.6526, 6e-4},
		{"F-W-t60 handbooks, from memory", water(333.15, 983.196) / 1e3, 0.466, 6e-4},
		{"F-W-t100 handbooks, from memory", water(373.15, 958.35) / 1e3, 0.2816, 6e-4},
	};
	ROWS_CHECK(rows);
	CHECK_REJECTS(vane_oil_water_viscosity(273, 1000, &error), error, "temperature");
	CHECK_REJECTS(vane_oil_water_viscosity(300, 0, &error), error, "density");
	CHECK_REJECTS(vane_oil_water_viscosity(300, 1301, &error), error, "density");
}
END_TEST

SUITE("oil_pressure", test_density, test_roelands, test_modulus, test_air, test_mixture, test_water)
