/**
 * @file parts.h
 * The parts of a balanced vane pump that decide displacement and slip, as
 * measured: one record that displacement, slip, tip, shaft and pump all read.
 */
#ifndef VANE_PARTS_H
#define VANE_PARTS_H

#include "vane/ring.h"

#ifdef __cplusplus
extern "C" {
#endif

/** What feeds the chambers under the vanes. */
enum vane_parts_roots {
	VANE_ROOTS_ZONE = 1,  /**< The zone the vane is in: its root pumps too (convention A). */
	VANE_ROOTS_OUTLET = 2 /**< The outlet, all the way round (convention B). */
};

/**
 * Ring, rotor, vanes, ports, shaft and friction of one pump. Port angles run in the direction of
 * rotation from the same zero as ring.phase and are the same for both lobes.
 */
typedef struct vane_parts {
	vane_ring ring;            /**< Cam ring. */
	double rotor_radius;       /**< Radius of the rotor [m; groove_outer < x <= ring.small_radius]. */
	double rotor_width;        /**< Width of the rotor [m; 0 < x <= ring.width]. */
	double slot_width;         /**< Width of a vane slot; that of all slots less than 2 pi groove_outer [m; >= vane_thickness]. */
	double vane_width;         /**< Width of a vane, along the axis [m; 0 < x <= ring.width]. */
	double vane_thickness;     /**< Thickness of a vane [m; > 0]. */
	double vane_height;        /**< Height of a vane, root to crown, greater than ring.large_radius - rotor_radius; slot_width times vanes less than 2 pi (ring.small_radius - vane_height) [m; > 0]. */
	double vane_density;       /**< Density of the vanes [kg/m3; > 0]. */
	double tip_radius;         /**< Radius of the rounded tip, at least half the thickness [m; 0 < x < ring.small_radius]. */
	double tip_film;           /**< Oil film between tip and ring [m; >= 0]. */
	double plate_bore;         /**< Radius of the plates' bore [m; > 0]. */
	double groove_inner;       /**< Inner radius of the under-vane groove [m; > plate_bore]. */
	double groove_outer;       /**< Outer radius of the under-vane groove [m; > groove_inner]. */
	double inlet_open;         /**< Angle where the inlet port begins [rad; >= 0]. */
	double inlet_close;        /**< Angle where the inlet port ends [rad; > inlet_open]. */
	double outlet_open;        /**< Angle where the outlet port begins, notch left out [rad; > inlet_close]. */
	double outlet_close;       /**< Angle where the outlet port ends, at most pi + inlet_open [rad; > outlet_open]. */
	double notch;              /**< Angle by which a relief notch leads the outlet port, at most outlet_open - inlet_close [rad; >= 0]. */
	double shaft_radius;       /**< Radius of the shaft in the plates' bore [m; > 0]. */
	double shaft_gap;          /**< Radial gap between shaft and bore [m; >= 0]. */
	double shaft_length;       /**< Length of that gap [m; > 0]. */
	double shaft_eccentricity; /**< Eccentricity of the shaft over the gap [1; 0 <= x <= 0.9999]. */
	double rotor_offset;       /**< Axial offset of the rotor over its gap per side [1; 0 <= x <= 1]. */
	double vane_offset;        /**< Offset of a vane in its slot, 1 = against one wall [1; 0 <= x <= 1]. */
	double tip_friction;       /**< Coefficient of friction of tip on ring [1; 0 <= x <= 0.9999]. */
	double slot_friction;      /**< Coefficient of friction of vane in slot [1; 0 <= x <= 0.9999]. */
	double seal_friction;      /**< Friction of the shaft seal per length of its lip [N/m; >= 0]. */
	int32_t vanes;             /**< Number of vanes, even [1; 4 <= x <= 64]. */
	int32_t roots;             /**< What feeds the under-vane chambers, enum vane_parts_roots [1; 1 <= x <= 2]. */
} vane_parts;

/** Clearances that follow from the widths. */
typedef struct vane_parts_gaps {
	double face; /**< Rotor to plate, per side [m; >= 0]. */
	double end;  /**< Vane end to plate, per side [m; >= 0]. */
	double slot; /**< Vane in its slot, both flanks together [m; >= 0]. */
} vane_parts_gaps;

/**
 * Fills what a shop seldom measures with usual values; everything measured stays zero and must be
 * set.
 *
 * Steel vanes of 7800 kg/m3, tip film 1 um, shaft eccentricity 0.5, rotor centred, vane against
 * one slot wall, friction 0.06 at the tip and 0.10 in the slot, 150 N/m at the seal, roots fed
 * from the outlet.
 *
 * @source  Common practice, no source; friction range 0.02 to 0.12: Inaguma 2014 (from memory).
 *
 * @param[out] parts  The record to fill.
 */
VANE_API void vane_parts_default(vane_parts *parts);

/**
 * Clearances per side from the measured widths; checks every field of the record on the way.
 *
 *     face = (ring.width - rotor_width)/2
 *     end  = (ring.width - vane_width)/2
 *     slot = slot_width - vane_thickness
 *
 * @valid   Rigid parts at one temperature.
 * @source  Definition.
 *
 * @param[in]  parts  The parts.
 * @param[out] out    The clearances.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_parts_gaps_of(const vane_parts *parts, vane_parts_gaps *out,
				    vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
