/**
 * @file pump.h
 * The whole pump in one call: parts, oil and duty in; displacement, slip by path, flow, torque,
 * efficiencies, power, heat and cautions out.
 */
#ifndef VANE_PUMP_H
#define VANE_PUMP_H

#include "vane/oil.h"
#include "vane/parts.h"
#include "vane/shaft.h"
#include "vane/slip.h"

#ifdef __cplusplus
extern "C" {
#endif

/** What the pump is asked to do. */
typedef struct vane_duty {
	double speed;           /**< Rotational speed [1/s; > 0]. */
	double outlet_pressure; /**< Outlet pressure, gauge [Pa; >= inlet_pressure]. */
	double inlet_pressure;  /**< Inlet pressure, gauge [Pa; > -101325]. */
	double case_pressure;   /**< Pressure around the shaft, gauge [Pa; > -101325]. */
	double temperature;     /**< Oil temperature at the inlet [K; > 0]. */
} vane_duty;

/** What the pump does. */
typedef struct vane_performance {
	double displacement;                /**< Displacement by the convention in roots [m3; > 0]. */
	double displacement_a;              /**< Displacement if the roots pump too, convention A [m3; > 0]. */
	double displacement_b;              /**< Displacement if the roots stay at outlet, convention B [m3; > 0]. */
	double ideal_flow;                  /**< Displacement times speed [m3/s; > 0]. */
	vane_slip slip;                     /**< Slip by path. */
	double compressibility_loss;        /**< Flow that compression takes, at outlet pressure [m3/s; >= 0]. */
	double compressibility_inlet;       /**< The same on the inlet basis: dead volume only [m3/s; >= 0]. */
	double outlet_flow;                 /**< Delivered flow, measured at outlet pressure [m3/s; any]. */
	double inlet_flow;                  /**< Delivered flow as a meter at inlet pressure shows it [m3/s; any]. */
	double volumetric_efficiency;       /**< Outlet flow over ideal flow [1; any]. */
	double volumetric_efficiency_inlet; /**< Inlet-basis flow over ideal flow [1; any]. */
	double incompressible_efficiency;   /**< Volumetric efficiency without compression [1; any]. */
	vane_torque torque;                 /**< Torque by cause. */
	double hydromechanical_efficiency;  /**< Ideal torque over shaft torque [1; any]. */
	double overall_efficiency;          /**< Hydraulic power over shaft power [1; any]. */
	double shaft_power;                 /**< Power the shaft takes [W; >= 0]. */
	double hydraulic_power;             /**< Power delivered to the oil at the outlet [W; any]. */
	double heat;                        /**< Power that warms the oil and the pump [W; any]. */
	double viscosity;                   /**< Dynamic viscosity at the inlet temperature [Pa.s; > 0]. */
	double kinematic_viscosity;         /**< Kinematic viscosity at the inlet temperature [m2/s; > 0]. */
	double density;                     /**< Density at the inlet temperature [kg/m3; > 0]. */
	int32_t roots;                      /**< Convention of the displacement, enum vane_parts_roots [1; 1 <= x <= 2]. */
	int32_t caution;                    /**< Set of enum vane_caution [1; >= 0]. */
} vane_performance;

/**
 * Fills a duty of 25 rev/s, 10 MPa, inlet and case at atmosphere, oil at 50 degrees Celsius.
 *
 * @source  Definition.
 *
 * @param[out] duty  The record to fill.
 */
VANE_API void vane_duty_default(vane_duty *duty);

/**
 * Performance of a pump at one duty.
 *
 *     outlet flow = displacement * speed - slip - compressibility loss
 *     shaft power = 2 pi speed * torque
 *
 * @valid   Steady duty; rigid parts; one oil temperature; chambers fill. Slip within 2 % of its
 *          value for the averaging over a pitch.
 * @constant Offset of viscosity and limits of the cautions [m2/s].
 * @constant Standard atmosphere, 101325 Pa [Pa].
 * @constant Thermal conductivity of oil, 0.13 W/(m.K) [W/(m.K)].
 * @source  ISO 4391:1983 for the definitions (from memory); the parts of the calculation cite
 *          theirs.
 *
 * @param[in]  parts  The pump's parts.
 * @param[in]  oil    The oil.
 * @param[in]  duty   The duty.
 * @param[out] out    The performance.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_pump_run(const vane_parts *parts, const vane_oil *oil, const vane_duty *duty,
			       vane_performance *out, vane_error *error);

/**
 * Performance of a pump at each of many duties.
 *
 * Each record has the same bits as vane_pump_run() gives. A duty that it refuses leaves NaN and 0
 * in its record, and the others are computed all the same; the status and the error are those of
 * the first such duty, which error->index numbers. Parts or oil that no duty could make good leave
 * NaN and 0 in every record, and error->index is -1. Where the number of duties is itself refused,
 * out is left alone. No pointer but error may be NULL, even where the number of duties is 0.
 *
 * @valid   As vane_pump_run(). out does not overlap duty.
 * @constant Offset of viscosity and limits of the cautions [m2/s].
 * @constant Standard atmosphere, 101325 Pa [Pa].
 * @constant Thermal conductivity of oil, 0.13 W/(m.K) [W/(m.K)].
 * @source  As vane_pump_run().
 *
 * @param[in]  parts   The pump's parts.
 * @param[in]  oil     The oil.
 * @param[in]  duty    Duties [length duties].
 * @param[in]  duties  Number of duties [1; 0 <= x <= 1000000000].
 * @param[out] out     Performances [length duties].
 * @param[out] error   What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_pump_map(const vane_parts *parts, const vane_oil *oil, const vane_duty *duty,
			       int64_t duties, vane_performance *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
