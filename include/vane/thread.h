/**
 * @file thread.h
 * Screw threads of the bolts: geometry, strength, torque and preload.
 *
 * The stored energy of a tightened bolt and the pressure behind a cover can
 * kill. These are textbook numbers; local codes, the parts' own documentation
 * and licensed practice come before them.
 */
#ifndef VANE_THREAD_H
#define VANE_THREAD_H

#include "vane/error.h"

#ifdef __cplusplus
extern "C" {
#endif

/** Strength class or grade of a bolt. The numbers are never changed or used again. */
enum vane_thread_grade {
	VANE_THREAD_8_8 = 1,   /**< ISO 898-1 class 8.8, M1.6 to M39. */
	VANE_THREAD_10_9 = 2,  /**< ISO 898-1 class 10.9, M1.6 to M39. */
	VANE_THREAD_12_9 = 3,  /**< ISO 898-1 class 12.9, M1.6 to M39. */
	VANE_THREAD_SAE_2 = 4, /**< SAE J429 grade 2, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_5 = 5, /**< SAE J429 grade 5, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_8 = 6  /**< SAE J429 grade 8, 1/4 in to 1-1/2 in. */
};

/** Minimum strengths of one class in one range of diameters. */
typedef struct vane_thread_class {
	double proof;   /**< Stress that leaves no permanent stretch [Pa; > 0]. */
	double yield;   /**< Yield strength or 0.2 % proof strength [Pa; > 0]. */
	double tensile; /**< Tensile strength [Pa; > 0]. */
} vane_thread_class;

/**
 * Pitch diameter d2 of a 60 degree metric or unified thread.
 *
 *     d2 = d - 3 sqrt(3) P / 8
 *
 * @valid   Basic profile, no tolerance or coating.
 * @source  ISO 724:1993, basic dimensions; ASME B1.1 has the same profile. From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.22687 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Pitch diameter [m].
 */
VANE_API double vane_thread_pitch_diameter(double diameter, double pitch, vane_error *error);

/**
 * Minor diameter d1 of a 60 degree metric or unified thread, basic profile.
 *
 *     d1 = d - 5 sqrt(3) P / 8
 *
 * @valid   Basic profile, no tolerance or coating.
 * @source  ISO 724:1993, basic dimensions. From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.22687 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Minor diameter [m].
 */
VANE_API double vane_thread_minor_diameter(double diameter, double pitch, vane_error *error);

/**
 * Root diameter d3 of the metric external thread, with its rounded root.
 *
 *     d3 = d - 17 sqrt(3) P / 24
 *
 * @valid   ISO metric profile: a sixth of the triangle's height below d1.
 * @source  ISO 898-1:2013, 9.1.6 (d3 = d1 - H/6). From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.22687 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Root diameter [m].
 */
VANE_API double vane_thread_root_diameter(double diameter, double pitch, vane_error *error);

/**
 * Diameter of the plain bar that breaks at the same load as the metric thread.
 *
 *     d0 = (d2 + d3) / 2 = d - 13 sqrt(3) P / 24
 *
 * @valid   ISO metric profile.
 * @source  ISO 898-1:2013, 9.1.6; VDI 2230 part 1:2015 calls it dS. From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.22687 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Stress diameter [m].
 */
VANE_API double vane_thread_stress_diameter(double diameter, double pitch, vane_error *error);

/**
 * Tensile stress area of a metric thread.
 *
 *     As = pi/4 ((d2 + d3) / 2)^2
 *
 * @valid   ISO metric profile. Tables of the standard round to three digits.
 * @source  ISO 898-1:2013, 9.1.6. From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.22687 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Stress area [m2].
 */
VANE_API double vane_thread_stress_area(double diameter, double pitch, vane_error *error);

/**
 * Tensile stress area of a unified inch thread (UNC, UNF).
 *
 *     As = pi/4 (d - 9 sqrt(3) P / 16)^2
 *
 * @valid   Unified profile; not the metric area, which takes off 0.938194 P where this one
 *          takes off 0.974279 P.
 * @source  ASME B1.1, As = 0.7854 (D - 0.9743/n)^2 with P = 1/n.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.22687 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Stress area [m2].
 */
VANE_API double vane_thread_stress_area_unified(double diameter, double pitch, vane_error *error);

/**
 * Torque that tightens a bolt to a preload, from pitch and friction.
 *
 *     T = F (P / (2 pi) + mu_t d2 / (2 cos 30 deg) + mu_b D_b / 2)
 *
 * With a bearing friction of 0 it is the torque the shank carries.
 *
 * @valid   60 degree thread, small lead angle; leaves out the product of lead angle and
 *          friction, under 1 % of the thread's share up to a friction of 0.15.
 * @source  Motosh, J. Eng. Ind. 98 (1976); ISO 16047:2005; VDI 2230 part 1:2015. From memory.
 *
 * @param[in] preload           Tension of the bolt [N; >= 0].
 * @param[in] pitch             Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; >= 0].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; >= 0].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Tightening torque [N.m].
 */
VANE_API double vane_thread_torque(double preload, double pitch, double pitch_diameter,
				   double thread_friction, double bearing_friction,
				   double bearing_diameter, vane_error *error);

/**
 * Preload that a tightening torque leaves, from pitch and friction.
 *
 *     F = T / (P / (2 pi) + mu_t d2 / (2 cos 30 deg) + mu_b D_b / 2)
 *
 * @valid   As vane_thread_torque(). Friction is seldom known to 20 %: take both ends of it.
 * @source  Motosh, J. Eng. Ind. 98 (1976); ISO 16047:2005; VDI 2230 part 1:2015. From memory.
 *
 * @param[in] torque            Tightening torque [N.m; >= 0].
 * @param[in] pitch             Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; >= 0].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; >= 0].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Preload [N].
 */
VANE_API double vane_thread_preload(double torque, double pitch, double pitch_diameter,
				    double thread_friction, double bearing_friction,
				    double bearing_diameter, vane_error *error);

/**
 * Torque that tightens a bolt to a preload, by one lumped factor.
 *
 *     T = K F d
 *
 * @valid   K near 0.2 for steel as received; it stands for all friction.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-27).
 *
 * @param[in] preload     Tension of the bolt [N; >= 0].
 * @param[in] nut_factor  Lumped factor K [1; > 0].
 * @param[in] diameter    Nominal diameter [m; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Tightening torque [N.m].
 */
VANE_API double vane_thread_torque_nut_factor(double preload, double nut_factor, double diameter,
					      vane_error *error);

/**
 * Preload that a tightening torque leaves, by one lumped factor.
 *
 *     F = T / (K d)
 *
 * @valid   As vane_thread_torque_nut_factor().
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-27).
 *
 * @param[in] torque      Tightening torque [N.m; >= 0].
 * @param[in] nut_factor  Lumped factor K [1; > 0].
 * @param[in] diameter    Nominal diameter [m; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Preload [N].
 */
VANE_API double vane_thread_preload_nut_factor(double torque, double nut_factor, double diameter,
					       vane_error *error);

/**
 * Proof load of a bolt.
 *
 *     Fp = As Sp
 *
 * @valid   Pure tension, without the torsion of tightening.
 * @source  ISO 898-1:2013, table 5. From memory.
 *
 * @param[in] stress_area   Tensile stress area [m2; > 0].
 * @param[in] proof_stress  Proof stress of the class [Pa; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Proof load [N].
 */
VANE_API double vane_thread_proof_load(double stress_area, double proof_stress, vane_error *error);

/**
 * Tensile stress of a bolt.
 *
 *     sigma = F / As
 *
 * @valid   Pure tension, mean over the area.
 * @source  Definition.
 *
 * @param[in] force        Tension of the bolt [N; >= 0].
 * @param[in] stress_area  Tensile stress area [m2; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Tensile stress [Pa].
 */
VANE_API double vane_thread_tensile_stress(double force, double stress_area, vane_error *error);

/**
 * Largest shear stress that the torque in the shank makes while tightening.
 *
 *     tau = 16 T / (pi d0^3)
 *
 * @valid   Round bar, elastic.
 * @source  VDI 2230 part 1:2015, 5.5.2, elastic section modulus. From memory.
 *
 * @param[in] torque    Torque in the shank, without the bearing's share [N.m; >= 0].
 * @param[in] diameter  Diameter of the bar that carries it, such as the stress diameter
 *                      [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Shear stress at the surface [Pa].
 */
VANE_API double vane_thread_shear_stress(double torque, double diameter, vane_error *error);

/**
 * Tension that would strain the material as far as tension and torsion together do.
 *
 *     sigma_v = sqrt(sigma^2 + 3 tau^2)
 *
 * @valid   Ductile bolt. Most of the torsion goes when the wrench comes off.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (5-15). From memory.
 *
 * @param[in] tensile_stress  Tensile stress [Pa; >= 0].
 * @param[in] shear_stress    Shear stress [Pa; >= 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Von Mises stress [Pa].
 */
VANE_API double vane_thread_von_mises(double tensile_stress, double shear_stress,
				      vane_error *error);

/**
 * Minimum strengths of a bolt of a known class and diameter.
 *
 * @valid   ISO 898-1: 1.6 mm to 39 mm, class 8.8 changes above 16 mm. SAE J429: 1/4 in to
 *          1-1/2 in, grade 2 changes above 3/4 in, grade 5 above 1 in.
 * @constant The table's diameters [m].
 * @constant The table's strengths [Pa].
 * @source  ISO 898-1:2013, table 3, from memory; SAE J429 as Shigley and Mischke, Mechanical
 *          Engineering Design, 5th ed., p. 341.
 *
 * @param[in] grade     A number of enum vane_thread_grade [1; 1 <= x <= 6].
 * @param[in] diameter  Nominal diameter; of an SAE grade from 1/4 in to 1-1/2 in
 *                      [m; 0.0016 <= x <= 0.039].
 * @param[out] out      The strengths.
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_strength(int32_t grade, double diameter, vane_thread_class *out,
				      vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
