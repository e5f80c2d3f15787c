/**
 * @file oil.h
 * Hydraulic oil: viscosity, density and what temperature and pressure do to them.
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
 *     log log(nu + 0.7) = B - A log(T)     nu in mm2/s, T in K
 *
 * @valid   Short form: 2 mm2/s and above; at 1 mm2/s the full law differs by 2 %.
 *          The form ends at 0.3 mm2/s. Equal viscosities give a constant.
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
 * Viscosity index, not rounded.
 *
 *     VI = 100 (L - U) / (L - H)                              U >= H
 *     VI = 100 + (10^N - 1) / 0.00715,  N = log(H/U) / log(Y)  U < H
 *
 * @valid   2 mm2/s and above at 100 degC; above 70 mm2/s L and H are quadratics.
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

#ifdef __cplusplus
}
#endif

#endif
