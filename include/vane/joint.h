/**
 * @file joint.h
 * A bolted cover under pressure: preload, clamp, load of the bolts, separation.
 *
 * A cover that lets go throws oil and metal. These are textbook numbers; local
 * codes, the parts' own documentation and licensed practice come before them.
 */
#ifndef VANE_JOINT_H
#define VANE_JOINT_H

#include "vane/error.h"

#ifdef __cplusplus
extern "C" {
#endif

/** A cover, its bolts, and how they were tightened. */
typedef struct vane_joint {
	double diameter;         /**< Nominal diameter of the bolts [m; > 1.22687 pitch]. */
	double pitch;            /**< Axial distance from thread to thread [m; > 0]. */
	double stress_area;      /**< Tensile stress area of one bolt [m2; > 0]. */
	double torque;           /**< Tightening torque of each bolt [N.m; > 0]. */
	double torque_scatter;   /**< Torque is off by up to this fraction [1; 0 <= x <= 0.99]. */
	double thread_friction;  /**< Coefficient of friction in the thread [1; >= 0]. */
	double bearing_friction; /**< Coefficient of friction under the turning face [1; >= 0]. */
	double friction_scatter; /**< Frictions, or the nut factor, are off by at most this
	                               fraction [1; 0 <= x <= 0.99]. */
	double bearing_diameter; /**< Mean diameter of the turning face [m; > 0]. */
	double nut_factor;       /**< Lumped factor K in place of the frictions, or 0 to use the
	                               frictions [1; >= 0]. */
	double proof_stress;     /**< Proof stress of the bolts [Pa; > 0]. */
	double bolt_stiffness;   /**< Stiffness of one bolt [N/m; > 0]. */
	double joint_stiffness;  /**< Stiffness of the parts one bolt clamps [N/m; > 0]. */
	double pressure;         /**< Pressure under the cover [Pa; >= 0]. */
	double pressure_radius;  /**< Radius the pressure reaches, such as the mean of the O-ring
	                               [m; > 0]. */
	double seating_loss;     /**< Preload each bolt loses as surfaces bed in [N; >= 0]. */
	double spring_force;     /**< Whole force of the springs that lift the cover [N; >= 0]. */
	int32_t bolts;           /**< Number of bolts, equally loaded [1; 1 <= x <= 1000]. */
} vane_joint;

/** What holds the cover. Forces are per bolt. */
typedef struct vane_joint_result {
	double preload;                 /**< Tension as tightened [N; > 0]. */
	double preload_low;             /**< Preload at low torque and high friction [N; > 0]. */
	double preload_high;            /**< Preload at high torque and low friction [N; > 0]. */
	double proof_load;              /**< Proof load of one bolt [N; > 0]. */
	double proof_fraction;          /**< Preload over proof load [1; > 0]. */
	double proof_fraction_low;      /**< Low preload over proof load [1; > 0]. */
	double proof_fraction_high;     /**< High preload over proof load [1; > 0]. */
	double load;                    /**< Share of pressure and springs that pulls at one bolt
	                                     [N; >= 0]. */
	double load_factor;             /**< Part of the load a closed joint adds to the bolt
	                                     [1; 0 <= x <= 1]. */
	double clamp;                   /**< Force between the parts after seating [N; >= 0]. */
	double clamp_low;               /**< The same from the low preload [N; >= 0]. */
	double bolt_load;               /**< Tension under load after seating [N; >= 0]. */
	double bolt_load_high;          /**< Tension under load from the high preload, nothing lost
	                                     to seating [N; >= 0]. */
	double separation_pressure;     /**< Pressure that opens the joint, 0 if it is open without
	                                     pressure [Pa; >= 0]. */
	double separation_pressure_low; /**< The same from the low preload [Pa; >= 0]. */
	int32_t separated;              /**< 1 if the low clamp is gone, else 0 [1; 0 <= x <= 1]. */
	int32_t overloaded;             /**< 1 if the high bolt load is above the proof load, else 0
	                                     [1; 0 <= x <= 1]. */
} vane_joint_result;

/**
 * Fills a joint with defaults.
 *
 * Frictions 0.12, their scatter 0, torque scatter 0.25, four bolts; no nut factor, pressure,
 * seating loss or springs. Everything else is 0, which vane_joint_run() rejects: it must be
 * given.
 *
 * @source  Common practice, no source.
 *
 * @param[out] joint  The record to fill; NULL is allowed.
 */
VANE_API void vane_joint_default(vane_joint *joint);

/**
 * Preload, clamp and bolt load of a cover, nominal and at both ends of the scatter.
 *
 *     F   = T / (P / (2 pi) + mu_t d2 / (2 cos 30 deg) + mu_b D_b / 2)   or   T / (K d)
 *     Fa  = (pi r^2 p + Fs) / n
 *     phi = kb / (kb + kj)
 *     Fc  = max(0, F - Fz - (1 - phi) Fa)
 *     Fb  = Fc + Fa
 *     ps  = max(0, (n (F - Fz) / (1 - phi) - Fs) / (pi r^2))
 *
 * The low preload has torque T (1 - s) and friction (or K) times (1 + f), the high one the
 * reverse. Once the joint is open the bolt carries the whole load.
 *
 * @valid   Concentric load, equal bolts, elastic, cold; no prying, bending of the cover,
 *          fatigue, or interaction of bolts tightened one after another.
 * @source  VDI 2230 part 1:2015, load introduced at the outer clamping planes; Shigley,
 *          Mechanical Engineering Design, 9th ed., eq. (8-24), (8-25). From memory.
 *
 * @param[in] joint   The cover and its bolts.
 * @param[out] out    What holds it.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_run(const vane_joint *joint, vane_joint_result *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
