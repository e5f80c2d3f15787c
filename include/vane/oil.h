/**
 * @file oil.h
 * Hydraulic oil: viscosity, density and what temperature, pressure and air do to them.
 */
#ifndef VANE_OIL_H
#define VANE_OIL_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** An oil, as its data sheet describes it. */
typedef struct vane_oil {
	double temperature_1;         /**< Temperature of the first viscosity [K; > 0]. */
	double viscosity_1;           /**< Kinematic viscosity there [m2/s; > 3e-7]. */
	double temperature_2;         /**< Temperature of the second viscosity, not the first [K; > 0]. */
	double viscosity_2;           /**< Kinematic viscosity there, not higher if hotter [m2/s; > 3e-7]. */
	double density;               /**< Density at the reference temperature [kg/m3; > 0]. */
	double reference_temperature; /**< Temperature of the density [K; > 0]. */
	double thermal_expansion;     /**< Volumetric thermal expansion coefficient [1/K; >= 0]. */
	double bulk_modulus;          /**< Bulk modulus of the oil without air [Pa; > 0]. */
	double pressure_viscosity;    /**< Pressure-viscosity coefficient of Barus [1/Pa; >= 0]. */
	double specific_heat;         /**< Specific heat capacity [J/(kg.K); > 0]. */
} vane_oil;

/** An oil at one temperature and zero gauge pressure. */
typedef struct vane_oil_state {
	double temperature;           /**< Temperature [K; > 0]. */
	double viscosity;             /**< Dynamic viscosity [Pa.s; > 0]. */
	double kinematic_viscosity;   /**< Kinematic viscosity [m2/s; > 3e-7]. */
	double density;               /**< Density [kg/m3; > 0]. */
	double bulk_modulus;          /**< Bulk modulus of the oil without air [Pa; > 0]. */
	double pressure_viscosity;    /**< Pressure-viscosity coefficient of Barus [1/Pa; >= 0]. */
	double specific_heat;         /**< Specific heat capacity [J/(kg.K); > 0]. */
	double viscosity_temperature; /**< Relative fall of dynamic viscosity per kelvin [1/K; >= 0]. */
} vane_oil_state;

/** What is taken to fall in a straight line over the logarithm of temperature. */
enum vane_oil_law {
	VANE_OIL_WALTHER = 0, /**< log log(nu + 0.7), the short form. */
	VANE_OIL_D341 = 1     /**< log log(Z) of ASTM D341, thin oils included. */
};

/** Viscosity over temperature: a straight line, and two points on it. */
typedef struct vane_oil_line {
	double intercept;          /**< Constant A, base 10, mm2/s and K [1; any]. */
	double slope;              /**< Constant B [1; >= 0]. */
	double temperature_1;      /**< Temperature of the coldest reading [K; > 0]. */
	double viscosity_1;        /**< Kinematic viscosity of the line there [m2/s; > 0]. */
	double temperature_2;      /**< Temperature of the hottest reading [K; > 0]. */
	double viscosity_2;        /**< Kinematic viscosity of the line there [m2/s; > 0]. */
	double scatter;            /**< Root mean square of the relative deviations [1; >= 0]. */
	double greatest_deviation; /**< Greatest relative deviation, without its sign [1; >= 0]. */
	int64_t worst;             /**< Index of the reading that has it, from 0 [1; >= 0]. */
} vane_oil_line;

/** Air in an oil. */
typedef struct vane_oil_air {
	double fraction;            /**< Free air over oil and air, by volume [1; 0 <= x <= 0.999]. */
	double absolute_pressure;   /**< Absolute pressure of that fraction [Pa; > 0]. */
	double polytropic_exponent; /**< Polytropic exponent of the air [1; 1 <= x <= 2]. */
	double dissolving_from;     /**< Absolute pressure below which all air is free [Pa; >= 0]. */
	double dissolved_at;        /**< Above which none is; if not greater, none dissolves [Pa; >= 0]. */
} vane_oil_air;

/** Oil and air at one pressure. */
typedef struct vane_oil_mixture {
	double volume;       /**< Volume relative to that at the reference pressure [1; > 0]. */
	double density;      /**< Density of oil and air together [kg/m3; > 0]. */
	double bulk_modulus; /**< Effective bulk modulus [Pa; > 0]. */
	double gas_fraction; /**< Volume of free air over that of oil and air [1; 0 <= x <= 1]. */
} vane_oil_mixture;

/**
 * Fills in a mineral hydraulic oil of grade ISO VG 46.
 *
 * 46 and 6.8 mm2/s at 313.15 and 373.15 K, 870 kg/m3 at 288.15 K, expansion
 * 6.5e-4 1/K, bulk modulus 1.6 GPa, pressure-viscosity coefficient 20 1/GPa,
 * specific heat 1950 J/(kg.K).
 *
 * @valid   A stand-in until the oil's own data sheet is at hand.
 * @source  Typical handbook values, from memory.
 *
 * @param[out] oil  Oil to fill; NULL is ignored.
 */
VANE_API void vane_oil_default(vane_oil *oil);

/**
 * Midpoint kinematic viscosity at 40 degC of an ISO viscosity grade.
 *
 *     nu = grade in mm2/s, but 2.2, 3.2, 4.6, 6.8 for VG 2, 3, 5, 7
 *
 * @valid   The twenty grades; an oil of the grade lies within 10 % of the midpoint.
 * @constant Grade number times 1 mm2/s [m2/s].
 * @source  ISO 3448:1992, Table 1; VG 2 to 7, 2200 and 3200 from memory.
 *
 * @param[in] grade   Grade number of ISO 3448: 2, 3, 5, 7, 10, 15, 22, 32, 46, 68 and so
 *                    on [1; 2 <= x <= 3200].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_grade_viscosity(double grade, vane_error *error);

/**
 * Least kinematic viscosity at 40 degC of an ISO viscosity grade.
 *
 *     nu = 0.9 vane_oil_grade_viscosity(grade)
 *
 * @valid   The twenty grades. Tables that round the limits of VG 2 to 7 to one decimal differ.
 * @constant Grade number times 1 mm2/s [m2/s].
 * @source  ISO 3448:1992, Table 1; VG 2 to 7, 2200 and 3200 from memory.
 *
 * @param[in] grade   Grade number of ISO 3448: 2, 3, 5, 7, 10, 15, 22, 32, 46, 68 and so
 *                    on [1; 2 <= x <= 3200].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_grade_minimum(double grade, vane_error *error);

/**
 * Greatest kinematic viscosity at 40 degC of an ISO viscosity grade.
 *
 *     nu = 1.1 vane_oil_grade_viscosity(grade)
 *
 * @valid   The twenty grades. Tables that round the limits of VG 2 to 7 to one decimal differ.
 * @constant Grade number times 1 mm2/s [m2/s].
 * @source  ISO 3448:1992, Table 1; VG 2 to 7, 2200 and 3200 from memory.
 *
 * @param[in] grade   Grade number of ISO 3448: 2, 3, 5, 7, 10, 15, 22, 32, 46, 68 and so
 *                    on [1; 2 <= x <= 3200].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_grade_maximum(double grade, vane_error *error);

/**
 * ISO viscosity grade whose midpoint is nearest, as a ratio.
 *
 * @valid   Any viscosity has a nearest grade. It is an oil of that grade only within the limits:
 *          between the grades lie viscosities of none.
 * @constant Grade number times 1 mm2/s [m2/s].
 * @source  ISO 3448:1992, Table 1; VG 2 to 7, 2200 and 3200 from memory.
 *
 * @param[in] viscosity_40  Kinematic viscosity at 40 degC [m2/s; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Grade number [1].
 */
VANE_API double vane_oil_grade_nearest(double viscosity_40, vane_error *error);

/**
 * Oil of an ISO viscosity grade and a viscosity index; the rest as vane_oil_default().
 *
 * @valid   Grades whose viscosity at 100 degC is at least 2 mm2/s: VG 2 to 5 have no usual index.
 * @constant Grade number times 1 mm2/s [m2/s].
 * @constant Density of the default oil [kg/m3].
 * @constant Temperatures of the default oil [K].
 * @constant Bulk modulus of the default oil [Pa].
 * @source  ISO 3448:1992, Table 1; ASTM D2270.
 *
 * @param[in] grade   Grade number of ISO 3448 [1; 2 <= x <= 3200].
 * @param[in] viscosity_index   Viscosity index [1; any].
 * @param[out] oil    Oil to fill.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status.
 */
VANE_API int32_t vane_oil_from_grade(double grade, double viscosity_index, vane_oil *oil,
				     vane_error *error);

/**
 * State of an oil at one temperature and zero gauge pressure.
 *
 *     mu = nu rho,   viscosity_temperature = -d ln(mu) / dT
 *
 * @valid   As vane_oil_walther() and vane_oil_density().
 * @constant Offset of viscosity, 0.7 mm2/s [m2/s].
 * @source  ASTM D341, from memory; the slope is its derivative.
 *
 * @param[in] oil     Oil.
 * @param[in] temperature   Temperature [K; > 0].
 * @param[out] state  State of the oil.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status.
 */
VANE_API int32_t vane_oil_at(const vane_oil *oil, double temperature, vane_oil_state *state,
			     vane_error *error);

/**
 * Kinematic viscosity at a temperature, from two known points.
 *
 *     log log(nu + 0.7) = A - B log(T)     nu in mm2/s, T in K
 *
 * @valid   Short form: 2 mm2/s and above; at 1 mm2/s the full law differs by 2 %.
 *          The form ends at 0.3 mm2/s. Equal viscosities give a constant. Steep: the
 *          relative error of T is multiplied by B ln(nu + 0.7), about 15.
 * @constant Offset of viscosity, 0.7 mm2/s [m2/s].
 * @source  ASTM D341 (Walther), short form, from memory.
 *
 * @param[in] temperature     Temperature [K; > 0].
 * @param[in] temperature_1   Temperature of the first point [K; > 0].
 * @param[in] viscosity_1     Kinematic viscosity of the first point [m2/s; > 3e-7].
 * @param[in] temperature_2   Temperature of the second point, not the first [K; > 0].
 * @param[in] viscosity_2     Kinematic viscosity of the second point, not higher if
 *                            hotter [m2/s; > 3e-7].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_walther(double temperature, double temperature_1, double viscosity_1,
				 double temperature_2, double viscosity_2, vane_error *error);

/**
 * Temperature at which an oil has a kinematic viscosity, from two known points.
 *
 *     vane_oil_walther(T, ...) = nu
 *
 * @valid   As vane_oil_walther(); two points of one viscosity tell no temperature.
 * @constant Offset of viscosity, 0.7 mm2/s [m2/s].
 * @source  ASTM D341 (Walther), short form, from memory; solved for T.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 3e-7].
 * @param[in] temperature_1        Temperature of the first point [K; > 0].
 * @param[in] viscosity_1          Kinematic viscosity of the first point [m2/s; > 3e-7].
 * @param[in] temperature_2        Temperature of the second point, not the first [K; > 0].
 * @param[in] viscosity_2   Kinematic viscosity of the second point, not higher if
 *                            hotter [m2/s; > 3e-7].
 * @param[out] error               What went wrong, or NULL.
 * @return    Temperature [K].
 */
VANE_API double vane_oil_walther_temperature(double kinematic_viscosity, double temperature_1,
					     double viscosity_1, double temperature_2,
					     double viscosity_2, vane_error *error);

/**
 * Kinematic viscosity at a temperature, from the two constants of the line.
 *
 *     log log(nu + 0.7) = A - B log(T)     nu in mm2/s, T in K, logarithms to base 10
 *
 * @valid   As vane_oil_walther(). The constants cancel: 4 digits of them give 2 of the viscosity.
 * @constant Offset of viscosity, 0.7 mm2/s [m2/s].
 * @constant Temperature of 1 K [K].
 * @source  ASTM D341, from memory.
 *
 * @param[in] temperature  Temperature [K; > 0].
 * @param[in] intercept    Constant A [1; any].
 * @param[in] slope        Constant B [1; >= 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_walther_line(double temperature, double intercept, double slope,
				      vane_error *error);

/**
 * Kinematic viscosity at a temperature, from two known points, thin oils included.
 *
 *     log log(Z) = A - B log(T),   Z = vane_oil_d341_z(nu),   T in K
 *
 * @valid   0.21 mm2/s and above; Z is inverted exactly, so that the two points lie on the line.
 *          Steep: the relative error of T is multiplied by B ln(Z), about 15.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D341, eq. (1) and (2), from memory.
 *
 * @param[in] temperature    Temperature [K; > 0].
 * @param[in] temperature_1  Temperature of the first point [K; > 0].
 * @param[in] viscosity_1    Kinematic viscosity of the first point [m2/s; >= 2.1e-7].
 * @param[in] temperature_2  Temperature of the second point, not the first [K; > 0].
 * @param[in] viscosity_2   Kinematic viscosity of the second point, not higher if
 *                            hotter [m2/s; >= 2.1e-7].
 * @param[out] error         What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_d341(double temperature, double temperature_1, double viscosity_1,
			      double temperature_2, double viscosity_2, vane_error *error);

/**
 * Temperature at which an oil has a kinematic viscosity, thin oils included.
 *
 *     vane_oil_d341(T, ...) = nu
 *
 * @valid   As vane_oil_d341(); two points of one viscosity tell no temperature.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D341, eq. (1) and (2), from memory; solved for T.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; >= 2.1e-7].
 * @param[in] temperature_1        Temperature of the first point [K; > 0].
 * @param[in] viscosity_1          Kinematic viscosity of the first point [m2/s; >= 2.1e-7].
 * @param[in] temperature_2        Temperature of the second point, not the first [K; > 0].
 * @param[in] viscosity_2   Kinematic viscosity of the second point, not higher if
 *                            hotter [m2/s; >= 2.1e-7].
 * @param[out] error               What went wrong, or NULL.
 * @return    Temperature [K].
 */
VANE_API double vane_oil_d341_temperature(double kinematic_viscosity, double temperature_1,
					  double viscosity_1, double temperature_2,
					  double viscosity_2, vane_error *error);

/**
 * The number whose double logarithm falls in a straight line over that of temperature.
 *
 *     Z = nu + 0.7 + exp(-1.47 - 1.84 nu - 0.51 nu^2)     nu in mm2/s
 *
 * @valid   0.21 to 2e7 mm2/s.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D341, eq. (2), from memory.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; >= 2.1e-7].
 * @param[out] error               What went wrong, or NULL.
 * @return    Z [1].
 */
VANE_API double vane_oil_d341_z(double kinematic_viscosity, vane_error *error);

/**
 * The same number by the long form of the annex.
 *
 *     Z = nu + 0.7 + C - D + E - F + G - H     nu in mm2/s
 *     C = exp(-1.14883 - 2.65868 nu),   D = exp(-0.0038138 - 12.5645 nu)
 *     E = exp(5.46491 - 37.6289 nu),    F = exp(13.0458 - 74.6851 nu)
 *     G = exp(37.4619 - 192.643 nu),    H = exp(80.4945 - 400.468 nu)
 *
 * @valid   0.21 to 2e7 mm2/s; within 0.5 % of vane_oil_d341_z().
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D341, Appendix X1, from memory.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; >= 2.1e-7].
 * @param[out] error               What went wrong, or NULL.
 * @return    Z [1].
 */
VANE_API double vane_oil_d341_z_long(double kinematic_viscosity, vane_error *error);

/**
 * Kinematic viscosity of a number Z, as the standard prints it.
 *
 *     nu = q - exp(-0.7487 - 3.295 q + 0.6119 q^2 - 0.3193 q^3),   q = Z - 0.7     nu in mm2/s
 *
 * @valid   0.21 to 2e7 mm2/s. A fit: it misses the inverse of eq. (2) by up to 0.03 %, which
 *          vane_oil_d341() does not.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D341, eq. (3), from memory.
 *
 * @param[in] z       Number Z [1; >= 1.06].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_d341_viscosity(double z, vane_error *error);

/**
 * Line of viscosity over temperature through two or more readings.
 *
 *     log log(Z) = A - B log(T)     Z = nu + 0.7 or vane_oil_d341_z(nu); nu in mm2/s, T in K
 *
 * @valid   Readings at two temperatures at least; all have the same weight in log log(Z). The
 *          points at the coldest and the hottest reading are those of the line and may serve in a
 *          vane_oil.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @constant Temperature of 1 K [K].
 * @source  ASTM D341, from memory; least squares of the law as it is written.
 *
 * @param[in] temperature          Temperatures [K; > 0; length readings].
 * @param[in] kinematic_viscosity  Kinematic viscosities [m2/s; > 3e-7; length readings].
 * @param[in] readings             Number of readings [1; 2 <= x <= 1000000].
 * @param[in] law                  A number of enum vane_oil_law [1; 0 <= x <= 1].
 * @param[out] line                The line.
 * @param[out] deviation           Reading over line, less 1 [1; > -1; length readings or NULL].
 * @param[out] error               What went wrong, or NULL.
 * @return    A number of enum vane_status.
 */
VANE_API int32_t vane_oil_fit(const double *temperature, const double *kinematic_viscosity,
			      int64_t readings, int32_t law, vane_oil_line *line,
			      double *deviation, vane_error *error);

/**
 * Kinematic viscosity of a blend of two oils.
 *
 *     log log(Z) = x log log(Z_1) + (1 - x) log log(Z_2),   Z = vane_oil_d341_z(nu)
 *
 * @valid   Base oils that dissolve in each other, both at one temperature; shares by volume or by
 *          mass, as the data were. Thickeners do not follow it. Steep like its law: within 32 ulp.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D7152, from memory.
 *
 * @param[in] fraction               Share of the first oil [1; 0 <= x <= 1].
 * @param[in] kinematic_viscosity_1  Kinematic viscosity of the first oil [m2/s; >= 2.1e-7].
 * @param[in] kinematic_viscosity_2  Kinematic viscosity of the second oil [m2/s; >= 2.1e-7].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_blend(double fraction, double kinematic_viscosity_1,
			       double kinematic_viscosity_2, vane_error *error);

/**
 * Share of the first of two oils that gives a wanted viscosity.
 *
 *     vane_oil_blend(x, nu_1, nu_2) = nu
 *
 * @valid   As vane_oil_blend(); no solution unless the wanted viscosity lies between two that
 *          differ.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D7152, from memory; solved for x.
 *
 * @param[in] kinematic_viscosity    Kinematic viscosity of the blend [m2/s; >= 2.1e-7].
 * @param[in] kinematic_viscosity_1  Kinematic viscosity of the first oil [m2/s; >= 2.1e-7].
 * @param[in] kinematic_viscosity_2  Kinematic viscosity of the second oil [m2/s; >= 2.1e-7].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Share of the first oil [1].
 */
VANE_API double vane_oil_blend_fraction(double kinematic_viscosity, double kinematic_viscosity_1,
					double kinematic_viscosity_2, vane_error *error);

/**
 * Density at a temperature, for a constant coefficient of expansion.
 *
 *     rho = rho_0 exp(-beta (T - T_0))
 *
 * @valid   Some tens of kelvin about the reference temperature.
 * @source  Definition.
 *
 * @param[in] temperature   Temperature [K; > 0].
 * @param[in] density       Density at the reference temperature [kg/m3; > 0].
 * @param[in] reference_temperature   Reference temperature [K; > 0].
 * @param[in] thermal_expansion   Volumetric thermal expansion coefficient [1/K; >= 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Density [kg/m3].
 */
VANE_API double vane_oil_density(double temperature, double density, double reference_temperature,
				 double thermal_expansion, vane_error *error);

/**
 * Thermal expansion at 15 degC of a lubricating oil.
 *
 *     alpha = K1 / rho_15,   K1 = 0.6278 kg/(m3.K)
 *
 * @valid   Mineral lubricating oils, 800 to 1164 kg/m3.
 * @constant K1 of the group, 0.6278 kg/(m3.K) [kg/(m3.K)].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Table 54D, lubricating oils, from memory.
 *
 * @param[in] density_15  Density at 15 degC [kg/m3; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volumetric thermal expansion coefficient [1/K].
 */
VANE_API double vane_oil_lubricant_expansion(double density_15, vane_error *error);

/**
 * Density of a lubricating oil at a temperature.
 *
 *     rho = rho_15 exp(-x (1 + 0.8 x)),   x = vane_oil_lubricant_expansion(rho_15) (T - 288.15 K)
 *
 * @valid   Mineral lubricating oils, -20 to 150 degC.
 * @constant Temperature of 15 degC [K].
 * @constant K1 of the group, 0.6278 kg/(m3.K) [kg/(m3.K)].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Table 54D, lubricating oils, from memory.
 *
 * @param[in] temperature  Temperature [K; > 0].
 * @param[in] density_15   Density at 15 degC [kg/m3; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Density [kg/m3].
 */
VANE_API double vane_oil_lubricant_density(double temperature, double density_15,
					   vane_error *error);

/**
 * Density at 15 degC of a lubricating oil from that at a temperature.
 *
 *     vane_oil_lubricant_density(T, rho_15) = rho
 *
 * @valid   Mineral lubricating oils, -20 to 150 degC. A reading of a glass hydrometer wants
 *          vane_oil_hydrometer_factor() first.
 * @constant Temperature of 15 degC [K].
 * @constant K1 of the group, 0.6278 kg/(m3.K) [kg/(m3.K)].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Table 53D, lubricating oils, from memory; solved
 *          by bisection.
 *
 * @param[in] temperature  Temperature [K; > 0].
 * @param[in] density      Density at the temperature [kg/m3; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Density at 15 degC [kg/m3].
 */
VANE_API double vane_oil_lubricant_density_15(double temperature, double density,
					      vane_error *error);

/**
 * Thermal expansion at 15 degC of a group of petroleum products.
 *
 *     alpha = K0 / rho_15^2 + K1 / rho_15 + K2
 *
 * @valid   Each group in its own range of density, about 0 to 150 degC. K0, K1, K2: lubricating
 *          oils 0, 0.6278, 0; crude oils 613.9723, 0, 0; gasolines 346.4228, 0.4388, 0; jet fuels
 *          594.5418, 0, 0; between these two 2680.3206, 0, -0.00336312; fuel oils 186.9696,
 *          0.4862, 0. Gasolines, jet fuels and what lies between from memory.
 * @constant Greatest K0, 3000 kg2/(m6.K) [kg2/(m6.K)].
 * @constant Greatest K1, 2 kg/(m3.K) [kg/(m3.K)].
 * @constant Greatest K2, 0.01 1/K [1/K].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Tables 54A, 54B and 54D.
 *
 * @param[in] density_15  Density at 15 degC [kg/m3; > 0].
 * @param[in] k0          Constant K0 of the group [kg2/(m6.K); 0 <= x <= 3000].
 * @param[in] k1          Constant K1 of the group [kg/(m3.K); 0 <= x <= 2].
 * @param[in] k2          Constant K2 of the group [1/K; -0.01 <= x <= 0.01].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volumetric thermal expansion coefficient [1/K].
 */
VANE_API double vane_oil_api_expansion(double density_15, double k0, double k1, double k2,
				       vane_error *error);

/**
 * Density at a temperature of a group of petroleum products.
 *
 *     rho = rho_15 exp(-x (1 + 0.8 x)),   x = vane_oil_api_expansion(rho_15, ...) (T - 288.15 K)
 *
 * @valid   Each group in its own range of density, about 0 to 150 degC. K0, K1, K2: lubricating
 *          oils 0, 0.6278, 0; crude oils 613.9723, 0, 0; gasolines 346.4228, 0.4388, 0; jet fuels
 *          594.5418, 0, 0; between these two 2680.3206, 0, -0.00336312; fuel oils 186.9696,
 *          0.4862, 0. Gasolines, jet fuels and what lies between from memory.
 * @constant Temperature of 15 degC [K].
 * @constant Greatest K0, 3000 kg2/(m6.K) [kg2/(m6.K)].
 * @constant Greatest K1, 2 kg/(m3.K) [kg/(m3.K)].
 * @constant Greatest K2, 0.01 1/K [1/K].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Tables 54A, 54B and 54D.
 *
 * @param[in] temperature  Temperature [K; > 0].
 * @param[in] density_15   Density at 15 degC [kg/m3; > 0].
 * @param[in] k0           Constant K0 of the group [kg2/(m6.K); 0 <= x <= 3000].
 * @param[in] k1           Constant K1 of the group [kg/(m3.K); 0 <= x <= 2].
 * @param[in] k2           Constant K2 of the group [1/K; -0.01 <= x <= 0.01].
 * @param[out] error       What went wrong, or NULL.
 * @return    Density [kg/m3].
 */
VANE_API double vane_oil_api_density(double temperature, double density_15, double k0, double k1,
				     double k2, vane_error *error);

/**
 * Density at 15 degC of a group of petroleum products from that at a temperature.
 *
 *     vane_oil_api_density(T, rho_15, ...) = rho
 *
 * @valid   Each group in its own range of density, about 0 to 150 degC. K0, K1, K2: lubricating
 *          oils 0, 0.6278, 0; crude oils 613.9723, 0, 0; gasolines 346.4228, 0.4388, 0; jet fuels
 *          594.5418, 0, 0; between these two 2680.3206, 0, -0.00336312; fuel oils 186.9696,
 *          0.4862, 0. Gasolines, jet fuels and what lies between from memory. A reading of a
 *          glass hydrometer wants vane_oil_hydrometer_factor() first.
 * @constant Temperature of 15 degC [K].
 * @constant Greatest K0, 3000 kg2/(m6.K) [kg2/(m6.K)].
 * @constant Greatest K1, 2 kg/(m3.K) [kg/(m3.K)].
 * @constant Greatest K2, 0.01 1/K [1/K].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Tables 53A, 53B and 53D; solved by bisection.
 *
 * @param[in] temperature  Temperature [K; > 0].
 * @param[in] density      Density at the temperature [kg/m3; > 0].
 * @param[in] k0           Constant K0 of the group [kg2/(m6.K); 0 <= x <= 3000].
 * @param[in] k1           Constant K1 of the group [kg/(m3.K); 0 <= x <= 2].
 * @param[in] k2           Constant K2 of the group [1/K; -0.01 <= x <= 0.01].
 * @param[out] error       What went wrong, or NULL.
 * @return    Density at 15 degC [kg/m3].
 */
VANE_API double vane_oil_api_density_15(double temperature, double density, double k0, double k1,
					double k2, vane_error *error);

/**
 * Volume at the reference temperature over volume at another.
 *
 *     VCF = exp(-x (1 + 0.8 x)),   x = alpha (T - T_0)
 *
 * @valid   T_0 of 15 degC or 60 degF, alpha that at T_0; not rounded.
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Tables 6C, 24C, 54C.
 *
 * @param[in] temperature            Temperature [K; > 0].
 * @param[in] reference_temperature  Reference temperature [K; > 0].
 * @param[in] thermal_expansion      Volumetric thermal expansion coefficient there [1/K; >= 0].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Volume correction factor [1].
 */
VANE_API double vane_oil_volume_correction(double temperature, double reference_temperature,
					   double thermal_expansion, vane_error *error);

/**
 * Density over the reading of a glass hydrometer that was calibrated at 15 degC.
 *
 *     HYC = 1 - 2.3e-5 t - 2e-8 t^2     t in K above 15 degC
 *
 * @valid   Soda-lime glass, -20 to 150 degC.
 * @constant Temperature of 15 degC [K].
 * @source  API MPMS 11.1:1980 (ASTM D1250-80), Table 53A.
 *
 * @param[in] temperature  Temperature [K; 200 <= x <= 500].
 * @param[out] error       What went wrong, or NULL.
 * @return    Factor on the reading [1].
 */
VANE_API double vane_oil_hydrometer_factor(double temperature, vane_error *error);

/**
 * Density under pressure at one temperature.
 *
 *     rho = rho_0 (1 + m p / K_0)^(1/m),   rho_0 exp(p / K_0) for m = 0
 *
 * @valid   Isothermal with isothermal K_0, adiabatic with adiabatic; m is 8 to 12 for mineral
 *          oil.
 * @source  Murnaghan, Proceedings of the National Academy of Sciences 30 (1944), from memory;
 *          integral of vane_oil_modulus() over pressure.
 *
 * @param[in] pressure       Gauge pressure [Pa; any].
 * @param[in] density        Density at zero gauge pressure [kg/m3; > 0].
 * @param[in] bulk_modulus   Tangent bulk modulus at zero gauge pressure [Pa; > 0].
 * @param[in] modulus_slope  Rise m of the modulus with pressure [1; >= 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Density [kg/m3].
 */
VANE_API double vane_oil_pressure_density(double pressure, double density, double bulk_modulus,
					  double modulus_slope, vane_error *error);

/**
 * Specific heat capacity of a petroleum oil.
 *
 *     c = (1685 + 3.39 t) / sqrt(rho_15 / 999)     J/(kg.K), t in degC, rho_15 in kg/m3
 *
 * @valid   0 to 200 degC, within 4 %.
 * @constant Density of water, 999 kg/m3 [kg/m3].
 * @constant Temperature of 0 degC, and a kelvin [K].
 * @constant Specific heat of 1685 J/(kg.K) [J/(kg.K)].
 * @source  Cragoe, NBS Miscellaneous Publication 97 (1929), from memory.
 *
 * @param[in] temperature  Temperature [K; > 0].
 * @param[in] density_15   Density at 15 degC [kg/m3; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Specific heat capacity [J/(kg.K)].
 */
VANE_API double vane_oil_specific_heat(double temperature, double density_15, vane_error *error);

/**
 * Thermal conductivity of a petroleum oil.
 *
 *     k = 0.1172 (1 - 0.00054 t) / (rho_15 / 999)     W/(m.K), t in degC, rho_15 in kg/m3
 *
 * @valid   0 to 200 degC, within 10 %.
 * @constant Density of water, 999 kg/m3 [kg/m3].
 * @constant Temperature of 0 degC, and a kelvin [K].
 * @constant Conductivity of 0.1172 W/(m.K) [W/(m.K)].
 * @source  Cragoe, NBS Miscellaneous Publication 97 (1929), from memory.
 *
 * @param[in] temperature  Temperature [K; 0 < x <= 1000].
 * @param[in] density_15   Density at 15 degC [kg/m3; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Thermal conductivity [W/(m.K)].
 */
VANE_API double vane_oil_conductivity(double temperature, double density_15, vane_error *error);

/**
 * Dynamic viscosity from kinematic viscosity.
 *
 *     mu = nu rho
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] kinematic_viscosity   Kinematic viscosity [m2/s; > 0].
 * @param[in] density   Density at the same temperature [kg/m3; > 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Dynamic viscosity [Pa.s].
 */
VANE_API double vane_oil_dynamic_viscosity(double kinematic_viscosity, double density,
					   vane_error *error);

/**
 * Dynamic viscosity under pressure.
 *
 *     mu = mu_0 exp(alpha p)
 *
 * @valid   Up to about 100 MPa.
 * @source  Barus, American Journal of Science 45 (1893), from memory.
 *
 * @param[in] viscosity   Dynamic viscosity at zero gauge pressure [Pa.s; > 0].
 * @param[in] pressure_viscosity   Pressure-viscosity coefficient [1/Pa; >= 0].
 * @param[in] pressure   Gauge pressure [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Dynamic viscosity [Pa.s].
 */
VANE_API double vane_oil_barus(double viscosity, double pressure_viscosity, double pressure,
			       vane_error *error);

/**
 * Mean fluidity along an isothermal leakage path, relative to zero pressure.
 *
 *     F = (exp(-alpha p_1) - exp(-alpha p_2)) / (alpha (p_2 - p_1))
 *
 * @valid   Laminar flow in a fixed gap at one temperature; laminar slot flow at
 *          zero-pressure viscosity times F is exact.
 * @source  Mean of 1/mu over pressure with the law of Barus.
 *
 * @param[in] pressure_viscosity   Pressure-viscosity coefficient [1/Pa; >= 0].
 * @param[in] inlet_pressure    Gauge pressure at one end [Pa; any].
 * @param[in] outlet_pressure   Gauge pressure at the other end [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Factor on flow [1].
 */
VANE_API double vane_oil_barus_factor(double pressure_viscosity, double inlet_pressure,
				      double outlet_pressure, vane_error *error);

/**
 * Dynamic viscosity under pressure at another temperature.
 *
 *     ln(mu) + 9.67 = (ln(mu_0) + 9.67) (1 + 5.1e-9 p)^Z ((T - 138) / (T_0 - 138))^-S     SI
 *
 * @valid   Up to about 1 GPa; T = T_0 leaves pressure alone. An error grows with ln(mu / 6.31e-5
 *          Pa.s).
 * @constant A viscosity of 1 Pa.s [Pa.s].
 * @constant The law's pressure, 1 / 5.1e-9 Pa [Pa].
 * @constant The law's zero of temperature, 138 K [K].
 * @source  Roelands (1966); Houpert; Hamrock, Fundamentals of Fluid Film Lubrication; from
 *          memory.
 *
 * @param[in] viscosity              Dynamic viscosity at zero gauge pressure [Pa.s; > 6.32e-5].
 * @param[in] pressure               Gauge pressure [Pa; > -1.96e8].
 * @param[in] temperature            Temperature [K; > 138].
 * @param[in] reference_temperature  Temperature of that viscosity [K; > 138].
 * @param[in] pressure_index         Index Z, about 0.6 [1; >= 0].
 * @param[in] temperature_slope      Slope S, about 1.1 [1; >= 0].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Dynamic viscosity [Pa.s].
 */
VANE_API double vane_oil_roelands(double viscosity, double pressure, double temperature,
				  double reference_temperature, double pressure_index,
				  double temperature_slope, vane_error *error);

/**
 * Index of Roelands that has the slope of Barus at zero pressure.
 *
 *     Z = alpha / (5.1e-9 (ln(mu_0) + 9.67))     SI
 *
 * @valid   As vane_oil_roelands().
 * @constant A viscosity of 1 Pa.s [Pa.s].
 * @constant The law's pressure, 1 / 5.1e-9 Pa [Pa].
 * @source  Roelands (1966); Houpert; Hamrock, Fundamentals of Fluid Film Lubrication; from
 *          memory.
 *
 * @param[in] viscosity           Dynamic viscosity at zero gauge pressure [Pa.s; > 6.32e-5].
 * @param[in] pressure_viscosity  Pressure-viscosity coefficient [1/Pa; >= 0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Index Z [1].
 */
VANE_API double vane_oil_roelands_index(double viscosity, double pressure_viscosity,
					vane_error *error);

/**
 * Pressure-viscosity coefficient at zero pressure, from the index of Roelands.
 *
 *     alpha = 5.1e-9 (ln(mu_0) + 9.67) Z     SI
 *
 * @valid   As vane_oil_roelands().
 * @constant A viscosity of 1 Pa.s [Pa.s].
 * @constant The law's pressure, 1 / 5.1e-9 Pa [Pa].
 * @source  Roelands (1966); Houpert; Hamrock, Fundamentals of Fluid Film Lubrication; from
 *          memory.
 *
 * @param[in] viscosity       Dynamic viscosity at zero gauge pressure [Pa.s; > 6.32e-5].
 * @param[in] pressure_index  Index Z, about 0.6 [1; >= 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Pressure-viscosity coefficient [1/Pa].
 */
VANE_API double vane_oil_roelands_coefficient(double viscosity, double pressure_index,
					      vane_error *error);

/**
 * Slope of Roelands between two temperatures at zero pressure.
 *
 *     S = -ln((ln(mu_2) + 9.67) / (ln(mu_1) + 9.67)) / ln((T_2 - 138) / (T_1 - 138))     SI
 *
 * @valid   As vane_oil_roelands().
 * @constant A viscosity of 1 Pa.s [Pa.s].
 * @constant The law's zero of temperature, 138 K [K].
 * @source  Roelands (1966); Houpert; Hamrock, Fundamentals of Fluid Film Lubrication; from
 *          memory.
 *
 * @param[in] temperature_1  Temperature of the first point [K; > 138].
 * @param[in] viscosity_1    Dynamic viscosity there [Pa.s; > 6.32e-5].
 * @param[in] temperature_2  Temperature of the second point, not the first [K; > 138].
 * @param[in] viscosity_2    Dynamic viscosity there, not higher if hotter [Pa.s; > 6.32e-5].
 * @param[out] error         What went wrong, or NULL.
 * @return    Slope S [1].
 */
VANE_API double vane_oil_roelands_slope(double temperature_1, double viscosity_1,
					double temperature_2, double viscosity_2,
					vane_error *error);

/**
 * Change of volume under a rise of pressure.
 *
 *     dV = -V dp / K
 *
 * @valid   Rises small against the modulus; with the secant modulus, exact.
 * @source  Definition.
 *
 * @param[in] volume        Volume before [m3; > 0].
 * @param[in] dp            Rise of pressure [Pa; any].
 * @param[in] bulk_modulus  Bulk modulus [Pa; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Change of volume, negative when compressed [m3].
 */
VANE_API double vane_oil_volume_change(double volume, double dp, double bulk_modulus,
				       vane_error *error);

/**
 * Bulk modulus from the change of a volume under a rise of pressure.
 *
 *     K = -V dp / dV
 *
 * @valid   The secant modulus if the volume before is that at zero gauge pressure.
 * @source  Definition.
 *
 * @param[in] volume         Volume before [m3; > 0].
 * @param[in] volume_change  Change of volume [m3; < 0].
 * @param[in] dp             Rise of pressure [Pa; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Bulk modulus [Pa].
 */
VANE_API double vane_oil_measured_modulus(double volume, double volume_change, double dp,
					  vane_error *error);

/**
 * Tangent bulk modulus at a pressure and temperature.
 *
 *     K = K_0 exp(-c (T - T_0)) + m p
 *
 * @valid   m is 8 to 12 and c about 0.005 1/K for mineral oil.
 * @source  A straight line over pressure and one of log K over temperature, as Klaus and O'Brien,
 *          Journal of Basic Engineering 86 (1964) found; from memory.
 *
 * @param[in] pressure               Gauge pressure [Pa; any].
 * @param[in] temperature            Temperature [K; > 0].
 * @param[in] bulk_modulus   Tangent bulk modulus at zero gauge pressure and the reference
 *          temperature [Pa; > 0].
 * @param[in] modulus_slope          Rise m of the modulus with pressure [1; >= 0].
 * @param[in] reference_temperature  Reference temperature [K; > 0].
 * @param[in] modulus_temperature    Relative fall c of the modulus per kelvin [1/K; >= 0].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Tangent bulk modulus [Pa].
 */
VANE_API double vane_oil_modulus(double pressure, double temperature, double bulk_modulus,
				 double modulus_slope, double reference_temperature,
				 double modulus_temperature, vane_error *error);

/**
 * Secant bulk modulus from zero gauge pressure to a pressure.
 *
 *     K_s = p / (1 - rho_0 / rho),   rho as vane_oil_pressure_density()
 *
 * @valid   As vane_oil_pressure_density(); at zero pressure the tangent modulus.
 * @source  Definition (ISO 6073).
 *
 * @param[in] pressure       Gauge pressure [Pa; any].
 * @param[in] bulk_modulus   Tangent bulk modulus at zero gauge pressure [Pa; > 0].
 * @param[in] modulus_slope  Rise m of the tangent modulus with pressure [1; >= 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Secant bulk modulus [Pa].
 */
VANE_API double vane_oil_secant_modulus(double pressure, double bulk_modulus, double modulus_slope,
					vane_error *error);

/**
 * Tangent bulk modulus from the secant modulus, and its slope, at a pressure.
 *
 *     K = K_s (K_s - p) / (K_s - p dK_s/dp)
 *
 * @valid   Both isothermal or both adiabatic.
 * @source  Derivative of the volume 1 - p / K_s.
 *
 * @param[in] pressure        Gauge pressure [Pa; < secant_modulus].
 * @param[in] secant_modulus  Secant bulk modulus there [Pa; > 0].
 * @param[in] secant_slope    Rise of the secant modulus with pressure [1; any].
 * @param[out] error          What went wrong, or NULL.
 * @return    Tangent bulk modulus [Pa].
 */
VANE_API double vane_oil_tangent_modulus(double pressure, double secant_modulus,
					 double secant_slope, vane_error *error);

/**
 * Adiabatic tangent bulk modulus from the isothermal one.
 *
 *     1 / K_s = 1 / K_t - beta^2 T / (rho c)
 *
 * @valid   Properties at that state; no oil has so great an expansion that nothing is left.
 * @source  Thermodynamics: c_p - c_v = beta^2 T K_t / rho, K_s / K_t = c_p / c_v.
 *
 * @param[in] isothermal_modulus  Isothermal tangent bulk modulus [Pa; > 0].
 * @param[in] temperature         Temperature [K; > 0].
 * @param[in] density             Density [kg/m3; > 0].
 * @param[in] thermal_expansion   Volumetric thermal expansion coefficient [1/K; >= 0].
 * @param[in] specific_heat       Specific heat capacity at constant pressure [J/(kg.K); > 0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Adiabatic tangent bulk modulus [Pa].
 */
VANE_API double vane_oil_adiabatic_modulus(double isothermal_modulus, double temperature,
					   double density, double thermal_expansion,
					   double specific_heat, vane_error *error);

/**
 * Isothermal tangent bulk modulus from the adiabatic one.
 *
 *     1 / K_t = 1 / K_s + beta^2 T / (rho c)
 *
 * @valid   Properties at that state.
 * @source  Thermodynamics, as vane_oil_adiabatic_modulus().
 *
 * @param[in] adiabatic_modulus  Adiabatic tangent bulk modulus [Pa; > 0].
 * @param[in] temperature        Temperature [K; > 0].
 * @param[in] density            Density [kg/m3; > 0].
 * @param[in] thermal_expansion  Volumetric thermal expansion coefficient [1/K; >= 0].
 * @param[in] specific_heat      Specific heat capacity at constant pressure [J/(kg.K); > 0].
 * @param[out] error             What went wrong, or NULL.
 * @return    Isothermal tangent bulk modulus [Pa].
 */
VANE_API double vane_oil_isothermal_modulus(double adiabatic_modulus, double temperature,
					    double density, double thermal_expansion,
					    double specific_heat, vane_error *error);

/**
 * Speed of sound.
 *
 *     a = sqrt(K / rho)
 *
 * @valid   Adiabatic tangent modulus; a hose or a thin pipe slows the wave.
 * @source  Newton and Laplace.
 *
 * @param[in] bulk_modulus  Adiabatic tangent bulk modulus [Pa; > 0].
 * @param[in] density       Density [kg/m3; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Speed of sound [m/s].
 */
VANE_API double vane_oil_sound_speed(double bulk_modulus, double density, vane_error *error);

/**
 * Fills in the air of an oil from a tank under the open sky.
 *
 * 0.5 % free air at 101325 Pa, polytropic exponent 1.2, none of it dissolving.
 *
 * @valid   A stand-in: what a tank leaves in the oil is a matter of its size and baffles.
 * @source  Typical handbook values, from memory.
 *
 * @param[out] air  Air to fill; NULL is ignored.
 */
VANE_API void vane_oil_air_default(vane_oil_air *air);

/**
 * Volume of oil with free air, relative to that at the reference pressure.
 *
 *     v = (1 - a) exp(-(p - p_0) / K) + a (p_0 / p)^(1/n)
 *
 * @valid   Air that does not dissolve, oil of constant modulus; smooth at every pressure, with no
 *          switch at saturation. Powers and exponentials lose digits in proportion to their
 *          exponents.
 * @source  Gholizadeh, Burton and Schoenau, International Journal of Fluid Power 13 (2012), and
 *          Cho, Lee and Oh (2000), from memory.
 *
 * @param[in] absolute_pressure            Absolute pressure [Pa; > 0].
 * @param[in] bulk_modulus                 Bulk modulus of the oil without air [Pa; > 0].
 * @param[in] air_fraction   Volume of free air over that of oil and air at the reference pressure
 *          [1; 0 <= x <= 0.999].
 * @param[in] reference_absolute_pressure  Absolute pressure of that fraction [Pa; > 0].
 * @param[in] polytropic_exponent          1 isothermal to 1.4 adiabatic [1; 1 <= x <= 2].
 * @param[out] error                       What went wrong, or NULL.
 * @return    Relative volume [1].
 */
VANE_API double vane_oil_aerated_volume(double absolute_pressure, double bulk_modulus,
					double air_fraction, double reference_absolute_pressure,
					double polytropic_exponent, vane_error *error);

/**
 * Density of oil with free air.
 *
 *     rho = rho_0 / v,   v = vane_oil_aerated_volume(...)
 *
 * @valid   Air that does not dissolve, oil of constant modulus; smooth at every pressure, with no
 *          switch at saturation. Powers and exponentials lose digits in proportion to their
 *          exponents.
 * @source  Gholizadeh, Burton and Schoenau, International Journal of Fluid Power 13 (2012), and
 *          Cho, Lee and Oh (2000), from memory.
 *
 * @param[in] absolute_pressure            Absolute pressure [Pa; > 0].
 * @param[in] bulk_modulus                 Bulk modulus of the oil without air [Pa; > 0].
 * @param[in] air_fraction   Volume of free air over that of oil and air at the reference pressure
 *          [1; 0 <= x <= 0.999].
 * @param[in] reference_absolute_pressure  Absolute pressure of that fraction [Pa; > 0].
 * @param[in] polytropic_exponent          1 isothermal to 1.4 adiabatic [1; 1 <= x <= 2].
 * @param[in] density   Density of oil and air together at the reference pressure [kg/m3; > 0].
 * @param[out] error                       What went wrong, or NULL.
 * @return    Density [kg/m3].
 */
VANE_API double vane_oil_aerated_density(double absolute_pressure, double bulk_modulus,
					 double air_fraction, double reference_absolute_pressure,
					 double polytropic_exponent, double density,
					 vane_error *error);

/**
 * Effective bulk modulus of oil with free air.
 *
 *     K_e = -v / (dv/dp)
 *         = v / ((1 - a) exp(-(p - p_0) / K) / K + a / (n p) (p_0 / p)^(1/n))
 *
 * @valid   Air that does not dissolve, oil of constant modulus; smooth at every pressure, with no
 *          switch at saturation. Powers and exponentials lose digits in proportion to their
 *          exponents.
 * @source  Gholizadeh, Burton and Schoenau, International Journal of Fluid Power 13 (2012), and
 *          Cho, Lee and Oh (2000), from memory; the derivative of vane_oil_aerated_volume(), so
 *          that density and modulus conserve mass.
 *
 * @param[in] absolute_pressure            Absolute pressure [Pa; > 0].
 * @param[in] bulk_modulus                 Bulk modulus of the oil without air [Pa; > 0].
 * @param[in] air_fraction   Volume of free air over that of oil and air at the reference pressure
 *          [1; 0 <= x <= 0.999].
 * @param[in] reference_absolute_pressure  Absolute pressure of that fraction [Pa; > 0].
 * @param[in] polytropic_exponent          1 isothermal to 1.4 adiabatic [1; 1 <= x <= 2].
 * @param[out] error                       What went wrong, or NULL.
 * @return    Effective bulk modulus [Pa].
 */
VANE_API double vane_oil_aerated_modulus(double absolute_pressure, double bulk_modulus,
					 double air_fraction, double reference_absolute_pressure,
					 double polytropic_exponent, vane_error *error);

/**
 * Volume of free air over that of oil and air, at a pressure.
 *
 *     phi = a (p_0 / p)^(1/n) / v,   v = vane_oil_aerated_volume(...)
 *
 * @valid   Air that does not dissolve, oil of constant modulus; smooth at every pressure, with no
 *          switch at saturation. Powers and exponentials lose digits in proportion to their
 *          exponents.
 * @source  Gholizadeh, Burton and Schoenau, International Journal of Fluid Power 13 (2012), and
 *          Cho, Lee and Oh (2000), from memory.
 *
 * @param[in] absolute_pressure            Absolute pressure [Pa; > 0].
 * @param[in] bulk_modulus                 Bulk modulus of the oil without air [Pa; > 0].
 * @param[in] air_fraction   Volume of free air over that of oil and air at the reference pressure
 *          [1; 0 <= x <= 0.999].
 * @param[in] reference_absolute_pressure  Absolute pressure of that fraction [Pa; > 0].
 * @param[in] polytropic_exponent          1 isothermal to 1.4 adiabatic [1; 1 <= x <= 2].
 * @param[out] error                       What went wrong, or NULL.
 * @return    Volume fraction of free air [1].
 */
VANE_API double vane_oil_aerated_gas_fraction(double absolute_pressure, double bulk_modulus,
					      double air_fraction,
					      double reference_absolute_pressure,
					      double polytropic_exponent, vane_error *error);

/**
 * Effective bulk modulus from the fraction of free air at the pressure itself.
 *
 *     1 / K_e = phi / (n p) + (1 - phi) / K
 *
 * @valid   Free air spread evenly; K of the oil at that pressure.
 * @source  Rabie, Fluid Power Engineering (2009), eq. (2.55) to (2.57).
 *
 * @param[in] absolute_pressure    Absolute pressure [Pa; > 0].
 * @param[in] bulk_modulus         Bulk modulus of the oil without air [Pa; > 0].
 * @param[in] gas_fraction   Volume of free air over that of oil and air, at that pressure [1; 0
 *          <= x <= 1].
 * @param[in] polytropic_exponent  1 isothermal to 1.4 adiabatic [1; 1 <= x <= 2].
 * @param[out] error               What went wrong, or NULL.
 * @return    Effective bulk modulus [Pa].
 */
VANE_API double vane_oil_effective_modulus(double absolute_pressure, double bulk_modulus,
					   double gas_fraction, double polytropic_exponent,
					   vane_error *error);

/**
 * Share of the air that has not dissolved, smooth at both ends.
 *
 *     theta = 1 - (10 x^3 - 15 x^4 + 6 x^5),   x = (p - p_lo) / (p_hi - p_lo), kept within 0 and 1
 *
 * @valid   A smooth stand-in for Henry's law and its delay: air needs seconds to dissolve.
 * @source  Our choice; the quintic has no jump in slope or curvature.
 *
 * @param[in] absolute_pressure  Absolute pressure [Pa; > 0].
 * @param[in] dissolving_from    Absolute pressure below which all air is free [Pa; >= 0].
 * @param[in] dissolved_at       Absolute pressure above which none is [Pa; > dissolving_from].
 * @param[out] error             What went wrong, or NULL.
 * @return    Share of free air [1].
 */
VANE_API double vane_oil_free_air(double absolute_pressure, double dissolving_from,
				  double dissolved_at, vane_error *error);

/**
 * State of oil with air, part of which may dissolve, at one pressure.
 *
 *     v = (1 - a) exp(-(p - p_0) / K) + theta a (p_0 / p)^(1/n),   theta = vane_oil_free_air(...)
 *     rho = rho_0 / v,   K_e = -v / (dv/dp)
 *
 * @valid   As vane_oil_aerated_volume(); the volume is 1 at the reference pressure only if none
 *          has dissolved there.
 * @source  Gholizadeh, Burton and Schoenau, International Journal of Fluid Power 13 (2012), and
 *          Cho, Lee and Oh (2000), from memory; dissolution as vane_oil_free_air().
 *
 * @param[in] air                The air.
 * @param[in] absolute_pressure  Absolute pressure [Pa; > 0].
 * @param[in] density   Density at the reference pressure of oil and air, all of it free [kg/m3; >
 *          0].
 * @param[in] bulk_modulus       Bulk modulus of the oil without air [Pa; > 0].
 * @param[out] mixture           State of oil and air.
 * @param[out] error             What went wrong, or NULL.
 * @return    A number of enum vane_status.
 */
VANE_API int32_t vane_oil_mixture_at(const vane_oil_air *air, double absolute_pressure,
				     double density, double bulk_modulus,
				     vane_oil_mixture *mixture, vane_error *error);

/**
 * Bunsen coefficient: volume of gas at 0 degC and one atmosphere which a volume of oil dissolves
 * at one atmosphere.
 *
 *     B = 273.15 / T  7.70 L (980 - rho_15) / 1000
 *     L = 0.300 exp(0.639 (700 - T) / T  ln(3.333 L_0))     T in K, rho_15 in kg/m3
 *
 * @valid   Petroleum liquids without additives, -45 to 150 degC; L_0 is 0.098 for air, 0.069 for
 *          nitrogen. About 0.09 for air in mineral oil at 20 degC.
 * @constant Temperatures of 700 K and 273.15 K [K].
 * @constant Densities of 980 and 1000 kg/m3 [kg/m3].
 * @source  ASTM D2779, from memory.
 *
 * @param[in] temperature  Temperature [K; 228 <= x <= 423].
 * @param[in] density_15   Density at 15 degC [kg/m3; 700 <= x <= 970].
 * @param[in] ostwald      Ostwald coefficient L_0 of the gas at 0 degC [1; 0.001 <= x <= 10].
 * @param[out] error       What went wrong, or NULL.
 * @return    Bunsen coefficient [1].
 */
VANE_API double vane_oil_bunsen(double temperature, double density_15, double ostwald,
				vane_error *error);

/**
 * Volume of dissolved air, at 0 degC and one atmosphere, per volume of oil in equilibrium.
 *
 *     b = B p / 101325 Pa
 *
 * @valid   Equilibrium with air at that pressure; dissolved air adds next to nothing to the
 *          volume.
 * @constant Normal atmosphere, 101325 Pa [Pa].
 * @source  Henry's law.
 *
 * @param[in] bunsen_coefficient  Bunsen coefficient [1; > 0].
 * @param[in] absolute_pressure   Absolute pressure [Pa; > 0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Dissolved volume per volume of oil [1].
 */
VANE_API double vane_oil_dissolved_air(double bunsen_coefficient, double absolute_pressure,
				       vane_error *error);

/**
 * Absolute pressure at which oil just holds an amount of dissolved air.
 *
 *     p = b 101325 Pa / B
 *
 * @valid   Equilibrium.
 * @constant Normal atmosphere, 101325 Pa [Pa].
 * @source  Henry's law.
 *
 * @param[in] bunsen_coefficient  Bunsen coefficient [1; > 0].
 * @param[in] dissolved_air   Volume of air at 0 degC and one atmosphere per volume of oil [1; >=
 *          0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Absolute pressure [Pa].
 */
VANE_API double vane_oil_saturation_pressure(double bunsen_coefficient, double dissolved_air,
					     vane_error *error);

/**
 * Viscosity index, not rounded.
 *
 *     VI = 100 (L - U) / (L - H)                              U >= H
 *     VI = 100 + (10^N - 1) / 0.00715,  N = log(H/U) / log(Y)  U < H
 *
 * @valid   2 mm2/s and above at 100 degC; above 70 mm2/s L and H are quadratics. L - U and
 *          L - H cancel by a digit or two.
 * @constant The table's viscosities [m2/s].
 * @source  ASTM D2270, procedures A and B, Table 1; the quadratics from memory.
 *
 * @param[in] viscosity_40    Kinematic viscosity at 40 degC [m2/s; > viscosity_100].
 * @param[in] viscosity_100   Kinematic viscosity at 100 degC [m2/s; >= 2e-6].
 * @param[out] error  What went wrong, or NULL.
 * @return    Viscosity index [1].
 */
VANE_API double vane_oil_index(double viscosity_40, double viscosity_100, vane_error *error);

/**
 * Kinematic viscosity at 100 degC from that at 40 degC and the viscosity index.
 *
 *     vane_oil_index(viscosity_40, viscosity_100) = index
 *
 * @valid   2 mm2/s and above at 100 degC; else there is no solution. Near 70 mm2/s, where
 *          table and quadratics do not quite meet, the table's solution is given.
 * @constant The table's viscosities [m2/s].
 * @source  ASTM D2270, solved by bisection.
 *
 * @param[in] viscosity_40   Kinematic viscosity at 40 degC [m2/s; > 2e-6].
 * @param[in] index   Viscosity index [1; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity at 100 degC [m2/s].
 */
VANE_API double vane_oil_viscosity_100(double viscosity_40, double index, vane_error *error);

/**
 * Kinematic viscosity at 40 degC of the oil of index 0, by that at 100 degC.
 *
 * @valid   2 mm2/s and above: to 70 mm2/s the table, linear between its rows; above, L = 0.8353
 *          Y^2 + 14.67 Y - 216.
 * @constant The table's viscosities [m2/s].
 * @source  ASTM D2270, Table 1; the quadratics from memory.
 *
 * @param[in] viscosity_100  Kinematic viscosity at 100 degC [m2/s; >= 2e-6].
 * @param[out] error         What went wrong, or NULL.
 * @return    Viscosity L [m2/s].
 */
VANE_API double vane_oil_index_l(double viscosity_100, vane_error *error);

/**
 * Kinematic viscosity at 40 degC of the oil of index 100, by that at 100 degC.
 *
 * @valid   2 mm2/s and above: to 70 mm2/s the table, linear between its rows; above, H = 0.1684
 *          Y^2 + 11.85 Y - 97.
 * @constant The table's viscosities [m2/s].
 * @source  ASTM D2270, Table 1; the quadratics from memory.
 *
 * @param[in] viscosity_100  Kinematic viscosity at 100 degC [m2/s; >= 2e-6].
 * @param[out] error         What went wrong, or NULL.
 * @return    Viscosity H [m2/s].
 */
VANE_API double vane_oil_index_h(double viscosity_100, vane_error *error);

/**
 * Viscosity index by procedure A, from the two reference oils.
 *
 *     VI = 100 (L - U) / (L - H)
 *
 * @valid   Up to an index of 100; holds in any unit of viscosity.
 * @source  ASTM D2270, procedure A.
 *
 * @param[in] viscosity_40  Kinematic viscosity U at 40 degC [m2/s; > 0].
 * @param[in] l             Viscosity L at 40 degC of the oil of index 0 [m2/s; > h].
 * @param[in] h             Viscosity H at 40 degC of the oil of index 100 [m2/s; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Viscosity index [1].
 */
VANE_API double vane_oil_index_a(double viscosity_40, double l, double h, vane_error *error);

/**
 * Viscosity of an oil of known index, from the two reference oils.
 *
 *     U = L - VI (L - H) / 100
 *
 * @valid   Up to an index of 100; holds in any unit of viscosity and at any temperature of
 *          definition.
 * @source  ASTM D2270, procedure A, solved for U.
 *
 * @param[in] index   Viscosity index [1; any].
 * @param[in] l       Viscosity L at 40 degC of the oil of index 0 [m2/s; > h].
 * @param[in] h       Viscosity H at 40 degC of the oil of index 100 [m2/s; > 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity U [m2/s].
 */
VANE_API double vane_oil_index_a_viscosity(double index, double l, double h, vane_error *error);

/**
 * Exponent of procedure B.
 *
 *     N = log(H / U) / log(Y)     Y in mm2/s
 *
 * @valid   An index of 100 and above.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D2270, procedure B.
 *
 * @param[in] viscosity_40   Kinematic viscosity U at 40 degC [m2/s; 0 < x <= h].
 * @param[in] viscosity_100  Kinematic viscosity at 100 degC [m2/s; >= 2e-6].
 * @param[in] h              Viscosity H at 40 degC of the oil of index 100 [m2/s; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Exponent N [1].
 */
VANE_API double vane_oil_index_exponent(double viscosity_40, double viscosity_100, double h,
					vane_error *error);

/**
 * Viscosity index by procedure B, from the reference oil.
 *
 *     VI = 100 + (10^N - 1) / 0.00715,   N = vane_oil_index_exponent(U, Y, H)
 *
 * @valid   An index of 100 and above. The power of ten magnifies errors N ln(10) times.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @source  ASTM D2270, procedure B.
 *
 * @param[in] viscosity_40   Kinematic viscosity U at 40 degC [m2/s; 0 < x <= h].
 * @param[in] viscosity_100  Kinematic viscosity at 100 degC [m2/s; >= 2e-6].
 * @param[in] h              Viscosity H at 40 degC of the oil of index 100 [m2/s; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Viscosity index [1].
 */
VANE_API double vane_oil_index_b(double viscosity_40, double viscosity_100, double h,
				 vane_error *error);

/**
 * Kinematic viscosity at 40 degC from that at 100 degC and the viscosity index.
 *
 *     vane_oil_index(viscosity_40, viscosity_100) = index
 *
 * @valid   2 mm2/s and above at 100 degC; no solution where the oil would not thin.
 * @constant The table's viscosities [m2/s].
 * @source  ASTM D2270, procedures A and B, solved for U.
 *
 * @param[in] viscosity_100  Kinematic viscosity at 100 degC [m2/s; >= 2e-6].
 * @param[in] index          Viscosity index [1; any].
 * @param[out] error         What went wrong, or NULL.
 * @return    Kinematic viscosity at 40 degC [m2/s].
 */
VANE_API double vane_oil_viscosity_40(double viscosity_100, double index, vane_error *error);

/**
 * Saybolt Universal seconds of a kinematic viscosity.
 *
 *     U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) /
 *         ((3930.2 + 262.7 nu + 23.97 nu^2 + 1.646 nu^3) 1e-5))     nu in mm2/s, t in degF
 *
 * @valid   1.81 mm2/s and above, which is 32 s.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @constant Time of 1 s [s].
 * @constant The zero and the degree of Fahrenheit [K].
 * @source  ASTM D2161, general equation.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity at that temperature [m2/s; >= 1.8e-6].
 * @param[in] temperature          Temperature [K; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Saybolt Universal viscosity [s].
 */
VANE_API double vane_oil_saybolt(double kinematic_viscosity, double temperature, vane_error *error);

/**
 * Kinematic viscosity of Saybolt Universal seconds.
 *
 *     vane_oil_saybolt(nu, T) = U
 *
 * @valid   32 s and above.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @constant Time of 1 s [s].
 * @constant The zero and the degree of Fahrenheit [K].
 * @source  ASTM D2161, general equation, solved by bisection.
 *
 * @param[in] saybolt      Saybolt Universal viscosity [s; >= 31].
 * @param[in] temperature  Temperature [K; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_saybolt_viscosity(double saybolt, double temperature, vane_error *error);

/**
 * Kinematic viscosity of Saybolt Universal seconds by an old rule of handbooks.
 *
 *     nu = 0.226 t - 195 / t     t <= 100 s
 *     nu = 0.220 t - 135 / t     t > 100 s, nu in mm2/s
 *
 * @valid   Up to 2 % off ASTM D2161 from 50 s, 38 % at 32 s.
 * @constant Viscosity of 1 mm2/s [m2/s].
 * @constant Time of 1 s [s].
 * @source  Esposito, Fluid Power with Applications, ch. 2; the part up to 100 s from memory.
 *
 * @param[in] saybolt  Saybolt Universal viscosity [s; >= 32].
 * @param[out] error   What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_saybolt_handbook(double saybolt, vane_error *error);

/**
 * Kinematic viscosity by a capillary viscometer.
 *
 *     nu = C t
 *
 * @valid   A capillary with a stated constant and no kinetic-energy correction.
 * @source  ASTM D445; Esposito, Fluid Power with Applications, ch. 2.
 *
 * @param[in] constant  The capillary's constant [m2/s2; > 0].
 * @param[in] time      Time of efflux [s; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_oil_capillary_viscosity(double constant, double time, vane_error *error);

/**
 * Dynamic viscosity by the force on a plate that slides over a film.
 *
 *     mu = F h / (A U)
 *
 * @valid   A linear velocity profile.
 * @source  Definition.
 *
 * @param[in] force       Force on the plate [N; > 0].
 * @param[in] gap         Thickness of the film [m; > 0].
 * @param[in] area        Area of the plate [m2; > 0].
 * @param[in] wall_speed  Speed of the plate [m/s; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Dynamic viscosity [Pa.s].
 */
VANE_API double vane_oil_plate_viscosity(double force, double gap, double area, double wall_speed,
					 vane_error *error);

/**
 * Dynamic viscosity of water, on which the calibration of viscometers rests.
 *
 *     mu = 1 uPa.s  100 sqrt(T/T_c) / sum_i H_i (T_c/T)^i
 *          exp(r sum_ij H_ij (T_c/T - 1)^i (r - 1)^j),   r = rho/rho_c
 *     T_c = 647.096 K,   rho_c = 322 kg/m3
 *
 * @valid   Without the enhancement close to the critical point (mu_2 = 1).
 * @constant Reference viscosity, 1 uPa.s [Pa.s].
 * @constant Critical temperature of water [K].
 * @constant Critical density of water [kg/m3].
 * @source  IAPWS R12-08, eq. (10) to (12), Tables 1 and 2.
 *
 * @param[in] temperature  Temperature [K; 273.15 <= x <= 1173.15].
 * @param[in] density      Density of the water [kg/m3; 0 < x <= 1300].
 * @param[out] error       What went wrong, or NULL.
 * @return    Dynamic viscosity [Pa.s].
 */
VANE_API double vane_oil_water_viscosity(double temperature, double density, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
