/**
 * @file shaft.h
 * Torque and power at the shaft, by cause; the drive that carries them.
 */
#ifndef VANE_SHAFT_H
#define VANE_SHAFT_H

#include "vane/parts.h"

#ifdef __cplusplus
extern "C" {
#endif

/** Torque by cause. */
typedef struct vane_torque {
	double ideal;      /**< Pressure difference times displacement over 2 pi [N.m; >= 0]. */
	double vane_tip;   /**< Friction of the vane tips on the ring [N.m; >= 0]. */
	double vane_slot;  /**< Friction of the vanes in their slots [N.m; >= 0]. */
	double face;       /**< Drag of the rotor faces [N.m; >= 0]. */
	double vane_end;   /**< Drag of the vane ends [N.m; >= 0]. */
	double shaft_film; /**< Drag in the gap between shaft and bore [N.m; >= 0]. */
	double seal;       /**< Friction of the shaft seal [N.m; >= 0]. */
	double loss;       /**< Sum of all but the ideal torque [N.m; >= 0]. */
	double total;      /**< Torque the shaft takes [N.m; >= 0]. */
} vane_torque;

/**
 * Ideal torque of a displacement.
 *
 *     T = D dp / (2 pi)
 *
 * @valid   Exact by conservation of energy.
 * @source  ISO 4391:1983 (from memory).
 *
 * @param[in]  displacement  Displacement per revolution [m3; >= 0].
 * @param[in]  dp            Pressure difference, outlet less inlet [Pa; any].
 * @param[out] error         What went wrong, or NULL.
 * @return    Torque [N.m].
 */
VANE_API double vane_shaft_ideal_torque(double displacement, double dp, vane_error *error);

/**
 * Power of a torque at a speed.
 *
 *     P = 2 pi n T
 *
 * @valid   Exact.
 * @source  Definition.
 *
 * @param[in]  torque  Torque [N.m; any].
 * @param[in]  speed   Rotational speed [1/s; any].
 * @param[out] error   What went wrong, or NULL.
 * @return    Power [W].
 */
VANE_API double vane_shaft_power(double torque, double speed, vane_error *error);

/**
 * Next rated output of an IEC motor that carries a power with a service factor.
 *
 * @valid   0.06 kW to 250 kW.
 * @constant The rated outputs [W].
 * @source  IEC 60072-1 preferred rated outputs (from memory).
 *
 * @param[in]  power           Power the shaft takes [W; > 0].
 * @param[in]  service_factor  Rating over power at least [1; >= 1].
 * @param[out] error           What went wrong, or NULL.
 * @return    Rated output [W].
 */
VANE_API double vane_shaft_motor_iec(double power, double service_factor, vane_error *error);

/**
 * Next rated output of a NEMA motor that carries a power with a service factor.
 *
 * @valid   0.5 hp to 500 hp.
 * @constant The rated outputs [W].
 * @source  NEMA MG 1, 10.32 (from memory).
 *
 * @param[in]  power           Power the shaft takes [W; > 0].
 * @param[in]  service_factor  Rating over power at least [1; >= 1].
 * @param[out] error           What went wrong, or NULL.
 * @return    Rated output [W].
 */
VANE_API double vane_shaft_motor_nema(double power, double service_factor, vane_error *error);

/**
 * Torque of a pump by cause.
 *
 * @valid   Laminar films, Coulomb friction with the given coefficients, rigid parts.
 * @source  White, Fluid Mechanics, 8th ed., sec. 1.7 for sheared films (from memory); derived on
 *          the page of this topic.
 *
 * @param[in]  parts      The pump's parts.
 * @param[in]  dp         Outlet pressure less inlet pressure [Pa; >= 0].
 * @param[in]  speed      Rotational speed [1/s; > 0].
 * @param[in]  viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[out] out        Torque by cause.
 * @param[out] error      What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_shaft_run(const vane_parts *parts, double dp, double speed, double viscosity,
				vane_torque *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
