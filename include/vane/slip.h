/**
 * @file slip.h
 * Slip: the oil that finds its way back from outlet to inlet, by path.
 */
#ifndef VANE_SLIP_H
#define VANE_SLIP_H

#include "vane/parts.h"

#ifdef __cplusplus
extern "C" {
#endif

/** State that drives the slip. */
typedef struct vane_slip_state {
	double outlet_pressure;     /**< Outlet pressure, gauge [Pa; >= inlet_pressure]. */
	double inlet_pressure;      /**< Inlet pressure, gauge [Pa; any]. */
	double case_pressure;       /**< Pressure around the shaft, gauge [Pa; any]. */
	double speed;               /**< Rotational speed [1/s; >= 0]. */
	double viscosity;           /**< Dynamic viscosity at zero gauge pressure [Pa.s; > 0]. */
	double density;             /**< Density of the oil [kg/m3; > 0]. */
	double pressure_viscosity;  /**< Barus coefficient [1/Pa; >= 0]. */
	double thermal_diffusivity; /**< Thermal diffusivity of the oil [m2/s; > 0]. */
} vane_slip_state;

/** Slip by path. The drag parts follow speed, the others pressure. */
typedef struct vane_slip {
	double face_inner;        /**< Under-vane groove to shaft, both faces, in series with the shaft gap [m3/s; any]. */
	double face_outer;        /**< Under-vane groove over the rotor faces to the inlet sectors [m3/s; any]. */
	double face_edge;         /**< Outlet to inlet chamber over the rotor faces round a sealing vane [m3/s; any]. */
	double vane_end;          /**< Outlet to inlet chamber past the ends of a sealing vane [m3/s; any]. */
	double vane_end_root;     /**< Root to inlet chambers past the vane ends in the slots [m3/s; any]. */
	double tip;               /**< Past the tips of sealing vanes, by pressure [m3/s; any]. */
	double slot;              /**< Root to inlet chambers between vane and slot [m3/s; any]. */
	double tip_drag;          /**< Dragged past the tips, large land less small land [m3/s; any]. */
	double vane_end_drag;     /**< Dragged past the vane ends, large land less small land [m3/s; any]. */
	double total;             /**< Sum of all paths [m3/s; any]. */
	double greatest_reynolds; /**< Greatest Reynolds number of a path [1; >= 0]. */
	double greatest_inertia;  /**< Greatest ratio of inertial to viscous pressure drop [1; >= 0]. */
	double greatest_graetz;   /**< Greatest Graetz number of a path [1; >= 0]. */
	int32_t caution;          /**< Set of enum vane_caution [1; >= 0]. */
	int32_t roots;            /**< Under-vane convention the paths were reckoned by [1; 1 <= x <= 2]. */
} vane_slip;

/**
 * Slip by path, averaged over a revolution.
 *
 * @valid   Laminar films of uniform gap between rigid, parallel parts; chambers between the
 *          sealing vanes at the mean of inlet and outlet pressure, which the transient chamber
 *          model confirms to 2 % of the slip.
 * @source  White, Fluid Mechanics, 8th ed., sec. 4.10 for the films (from memory); the averaging
 *          and the edge term are derived on the page of this topic.
 *
 * @param[in]  parts  The pump's parts.
 * @param[in]  state  Pressures, speed and oil.
 * @param[out] out    Slip by path.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_slip_run(const vane_parts *parts, const vane_slip_state *state,
			       vane_slip *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
