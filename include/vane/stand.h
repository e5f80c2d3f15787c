/**
 * @file stand.h
 * What test-stand readings say about a pump: efficiencies, displacement, slip.
 */
#ifndef VANE_STAND_H
#define VANE_STAND_H

#include "vane/error.h"
#include "vane/oil.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How a displacement was derived. The numbers are never changed. */
enum vane_derived_method {
	VANE_DERIVED_INTERCEPT = 1, /**< Flow against pressure, carried to zero pressure. */
	VANE_DERIVED_TWO_STEP =
		2 /**< Flow against speed at each pressure, then to zero pressure. */
};

/** Terms of the slip law besides the displacement. Bits of a set. */
enum vane_slip_term {
	VANE_SLIP_LAMINAR = 1,        /**< Flat clearances: slip goes with 1/viscosity. */
	VANE_SLIP_ORIFICE = 2,        /**< Sharp edges and cuts: slip goes with the root of pressure. */
	VANE_SLIP_COMPRESSIBILITY = 4 /**< Oil compressed and carried over: goes with speed. */
};

/** One steady reading on the test stand. */
typedef struct vane_reading {
	double speed;          /**< Shaft speed [1/s; > 0]. */
	double pressure;       /**< Outlet pressure, gauge [Pa; >= inlet_pressure]. */
	double inlet_pressure; /**< Inlet pressure, gauge [Pa; any]. */
	double temperature;    /**< Oil temperature at the inlet [K; > 0]. */
	double flow;           /**< Delivered flow at inlet conditions [m3/s; >= 0]. */
	double torque;         /**< Shaft torque, or 0 if not measured [N.m; >= 0]. */
} vane_reading;

/** Derived displacement. */
typedef struct vane_derived {
	double displacement;        /**< Volume per revolution at zero pressure difference [m3; any]. */
	double uncertainty;         /**< Its standard uncertainty, from scatter [m3; >= 0]. */
	double slope;               /**< Slip per pressure difference at the mean speed [m3/(s.Pa); any]. */
	double slope_uncertainty;   /**< Its standard uncertainty, from scatter [m3/(s.Pa); >= 0]. */
	double residual;            /**< Standard deviation about the line, per revolution [m3; >= 0]. */
	int32_t method;             /**< A number of enum vane_derived_method [1; 1 <= x <= 2]. */
	int32_t levels;             /**< Pressure levels used by the two-step method, else 0 [1; >= 0]. */
	int32_t degrees_of_freedom; /**< Of the final regression [1; >= 0]. */
	int32_t caution;            /**< Set of enum vane_caution [1; >= 0]. */
} vane_derived;

/** Coefficients of the slip law; 0 for a term left out. */
typedef struct vane_slip_fit {
	double displacement;                /**< V, displacement [m3; any]. */
	double laminar;                     /**< C_L, laminar slip coefficient [m3; any]. */
	double orifice;                     /**< C_T, orifice slip coefficient, an area [m2; any]. */
	double compressibility;             /**< C_c, volume lost per pressure [m3/Pa; any]. */
	double displacement_uncertainty;    /**< Standard uncertainty of V [m3; >= 0]. */
	double laminar_uncertainty;         /**< Standard uncertainty of C_L [m3; >= 0]. */
	double orifice_uncertainty;         /**< Standard uncertainty of C_T [m2; >= 0]. */
	double compressibility_uncertainty; /**< Standard uncertainty of C_c [m3/Pa; >= 0]. */
	double residual;                    /**< Standard deviation of flow about it [m3/s; >= 0]. */
	double condition;                   /**< Condition number, columns scaled to length 1 [1; >= 1]. */
	int32_t terms;                      /**< Set of enum vane_slip_term that was fitted [1; 0 <= x <= 7]. */
	int32_t degrees_of_freedom;         /**< Readings less coefficients [1; > 0]. */
	int32_t caution;                    /**< Set of enum vane_caution [1; >= 0]. */
} vane_slip_fit;

/**
 * Volumetric efficiency of a pump.
 *
 *     eta_v = q/(n V)
 *
 * @valid   Flow and displacement on the same basis, inlet or outlet.
 * @source  ISO 4391:1983, from memory.
 *
 * @param[in] flow          Delivered flow [m3/s; >= 0].
 * @param[in] speed         Shaft speed [1/s; > 0].
 * @param[in] displacement  Derived displacement per revolution [m3; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Efficiency; above 1 the readings or the displacement are wrong [1].
 */
VANE_API double vane_stand_volumetric_efficiency(double flow, double speed, double displacement,
						 vane_error *error);

/**
 * Hydraulic-mechanical efficiency of a pump.
 *
 *     eta_hm = V dp/(2 pi T)
 *
 * @valid   Steady reading; the work of compressing the oil is left out.
 * @source  ISO 4391:1983, from memory.
 *
 * @param[in] displacement  Derived displacement per revolution [m3; > 0].
 * @param[in] dp            Outlet pressure less inlet pressure [Pa; >= 0].
 * @param[in] torque        Shaft torque [N.m; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Efficiency; above 1 the readings or the displacement are wrong [1].
 */
VANE_API double vane_stand_mechanical_efficiency(double displacement, double dp, double torque,
						 vane_error *error);

/**
 * Overall efficiency of a pump.
 *
 *     eta_t = q dp/(2 pi n T)
 *
 * @valid   The work of compressing the oil is left out.
 * @source  ISO 4391:1983, from memory.
 *
 * @param[in] flow    Delivered flow [m3/s; >= 0].
 * @param[in] dp      Outlet pressure less inlet pressure [Pa; >= 0].
 * @param[in] torque  Shaft torque [N.m; > 0].
 * @param[in] speed   Shaft speed [1/s; > 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Efficiency; above 1 the readings are wrong [1].
 */
VANE_API double vane_stand_overall_efficiency(double flow, double dp, double torque, double speed,
					      vane_error *error);

/**
 * Flow that the pump would have delivered at the nominal speed.
 *
 *     q_nom = q + V (n_nom - n)
 *
 * Slip hardly changes with speed, so it must not be scaled: the proportional
 * correction q n_nom/n does.
 *
 * @valid   Small differences of speed at the same pressure and temperature.
 * @source  Definition; q = V n - slip with the slip held.
 *
 * @param[in] flow           Delivered flow [m3/s; >= 0].
 * @param[in] displacement   Derived displacement per revolution [m3; > 0].
 * @param[in] speed          Speed it was measured at [1/s; > 0].
 * @param[in] nominal_speed  Speed it is wanted for [1/s; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Corrected flow [m3/s].
 */
VANE_API double vane_stand_speed_corrected(double flow, double displacement, double speed,
					   double nominal_speed, vane_error *error);

/**
 * Displacement of a pump from flows at several pressures.
 *
 *     intercept:  q = V n - K dp, least squares over all readings
 *     two-step:   V_j = slope of q against n at pressure level j,
 *                 V_j = V - k dp_j, least squares over the levels
 *
 * The intercept corrects each flow for its own speed with the V that it finds.
 * The two-step method is taken when at least three pressure levels have at
 * least two speeds each, because a slip that bends with pressure but not with
 * speed then cancels. Readings are of one level if their pressure differences
 * lie within 2 % of the greatest one above the level's lowest; a level has two
 * speeds if they spread over 10 % of their mean. Levels with fewer are not
 * used. The slope is then that of slip through the origin, over those levels.
 *
 * VANE_CAUTION_CURVATURE is set for the intercept if a term in the root or in the
 * square of pressure, added to the line, exceeds twice its standard uncertainty
 * and takes up more than a 1e-9 part of the flow; at least five readings are
 * needed to see it. Then V is biased, typically low.
 *
 * @valid   One oil at one temperature; steady readings. The standards ask for
 *          five pressures, and for two-step five speeds as well.
 * @source  ISO 8426-1:2025 (two-step), ISO 8426-2:2025 (intercept), from memory.
 *
 * @param[in] reading   Readings [length readings].
 * @param[in] readings  Number of readings [1; 1 <= x <= 100000].
 * @param[out] out      The displacement.
 * @param[out] error    What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status; VANE_NOT_IDENTIFIABLE if there are
 *            fewer than three readings or only one pressure.
 */
VANE_API int32_t vane_stand_displacement(const vane_reading *reading, int64_t readings,
					 vane_derived *out, vane_error *error);

/**
 * Splits the slip of a pump into laminar, orifice and compression losses.
 *
 *     q = V n - C_L dPsi - C_T sqrt(2 dp/rho) - C_c n dp
 *
 * dPsi is the integral of dp/viscosity from inlet to outlet. The columns are
 * scaled to length 1 and solved through a singular value decomposition; a
 * singular value below 1e-6 of the greatest counts as a loss of rank, for no
 * reading carries that many digits. Laminar and orifice slip are told apart by
 * two viscosities 2:1 or more, and pressures over 4:1; compression and
 * displacement by two speeds 1.5:1 or more.
 *
 * VANE_CAUTION_ILL_CONDITIONED is set if the condition number exceeds 30 or a
 * coefficient's uncertainty half its value: then do not use the coefficients.
 * A negative coefficient is reported as found; no loss can be negative.
 *
 * @valid   Steady readings at the temperature of the oil in the clearances; all flows
 *          equally uncertain.
 * @constant Offset of viscosity, 0.7 mm2/s [m2/s].
 * @source  Definition of the law; JCGM 100:2008 (GUM), H.3 (uncertainty of a least-squares fit).
 *
 * @param[in] reading      Readings [length readings].
 * @param[in] readings     Number of readings [1; 1 <= x <= 100000].
 * @param[in] oil          The oil.
 * @param[in] terms        Set of enum vane_slip_term, V always besides [1; 0 <= x <= 7].
 * @param[out] out         Coefficients and their uncertainties.
 * @param[out] correlation  Correlation of V, C_L, C_T, C_c in rows of 4, 0 for a term left
 *                          out [1; -1 <= x <= 1; length 16 or NULL].
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status; VANE_NOT_IDENTIFIABLE with a sentence
 *            that names the readings wanting.
 */
VANE_API int32_t vane_stand_slip_fit(const vane_reading *reading, int64_t readings,
				     const vane_oil *oil, int32_t terms, vane_slip_fit *out,
				     double *correlation, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
