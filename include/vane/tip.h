/**
 * @file tip.h
 * Forces on one vane: contact with the ring, friction, lift-off.
 */
#ifndef VANE_TIP_H
#define VANE_TIP_H

#include "vane/displacement.h"

#ifdef __cplusplus
extern "C" {
#endif

/** Forces on one vane at one angle. */
typedef struct vane_tip_force {
	double contact;       /**< Normal force between tip and ring [N; any]. */
	double slot_mouth;    /**< Reaction of the slot at the rotor's rim, + leading [N; any]. */
	double slot_root;     /**< Reaction of the slot at the vane's root, + leading [N; any]. */
	double slot_friction; /**< Friction in the slot, along the vane [N; >= 0]. */
	double sliding;       /**< Sliding distance of the tip on the ring per angle [m/rad; any]. */
} vane_tip_force;

/** A revolution of one vane, and what all vanes cost together. */
typedef struct vane_tip_revolution {
	double tip_torque;       /**< Mean torque of tip friction, all vanes [N.m; >= 0]. */
	double slot_torque;      /**< Mean torque of slot friction, all vanes [N.m; >= 0]. */
	double greatest_contact; /**< Greatest contact force of one vane [N; any]. */
	double least_contact;    /**< Least contact force of one vane [N; any]. */
	double least_angle;      /**< Angle of the least contact force [rad; any]. */
	int32_t caution;         /**< Set of enum vane_caution [1; >= 0]. */
	int32_t reserved;        /**< 0 [1; 0]. */
} vane_tip_revolution;

/**
 * Forces on a radial vane at an angle, from pressures, inertia, contact and slot.
 *
 * @valid   Rigid vane, Coulomb friction, pressures constant in each zone; pressure falls
 *          linearly along the slot's flanks; roots at outlet pressure, or at the zone's.
 * @source  Derived on the page of this topic from Newton's law in the rotor's frame.
 *
 * @param[in]  parts  The pump's parts.
 * @param[in]  dp     Outlet pressure less inlet pressure [Pa; >= 0].
 * @param[in]  speed  Rotational speed [1/s; >= 0].
 * @param[in]  angle  Angle of the vane from the middle of the small dwell [rad; any].
 * @param[out] out    The forces.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_tip_at(const vane_parts *parts, double dp, double speed, double angle,
			     vane_tip_force *out, vane_error *error);

/**
 * Mean friction torque and extreme contact forces over a revolution.
 *
 * @valid   As vane_tip_at().
 * @source  Derived on the page of this topic.
 *
 * @param[in]  parts  The pump's parts.
 * @param[in]  dp     Outlet pressure less inlet pressure [Pa; >= 0].
 * @param[in]  speed  Rotational speed [1/s; >= 0].
 * @param[out] out    Torques and extremes.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_tip_run(const vane_parts *parts, double dp, double speed,
			      vane_tip_revolution *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
