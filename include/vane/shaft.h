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
 * Shear stress at the outside of a twisted shaft.
 *
 *     t = 16 T D/(pi (D^4 - d^4))
 *
 * @valid   Elastic round shaft, away from steps and keyways.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (3-37)
 *          (from memory).
 *
 * @param[in]  torque         Torque [N.m; any].
 * @param[in]  diameter       Diameter of the shaft [m; > bore_diameter].
 * @param[in]  bore_diameter  Diameter of the bore, 0 for none [m; >= 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Shear stress, of the sign of the torque [Pa].
 */
VANE_API double vane_shaft_torsion_stress(double torque, double diameter, double bore_diameter,
					  vane_error *error);

/**
 * Diameter of a solid shaft that a torque brings to a shear stress.
 *
 *     D = (16 T/(pi t))^(1/3)
 *
 * @valid   Elastic round shaft, away from steps and keyways.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (3-37)
 *          (from memory).
 *
 * @param[in]  torque  Greatest torque [N.m; >= 0].
 * @param[in]  stress  Shear stress allowed [Pa; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Diameter [m].
 */
VANE_API double vane_shaft_torsion_diameter(double torque, double stress, vane_error *error);

/**
 * Angle by which a torque twists a shaft.
 *
 *     phi = 32 T L/(pi G (D^4 - d^4))
 *
 * @valid   Elastic round shaft, away from steps and keyways.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (3-35)
 *          (from memory).
 *
 * @param[in]  torque         Torque [N.m; any].
 * @param[in]  length         Length that twists [m; > 0].
 * @param[in]  diameter       Diameter of the shaft [m; > bore_diameter].
 * @param[in]  bore_diameter  Diameter of the bore, 0 for none [m; >= 0].
 * @param[in]  shear_modulus  Shear modulus [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Angle, of the sign of the torque [rad].
 */
VANE_API double vane_shaft_twist(double torque, double length, double diameter,
				 double bore_diameter, double shear_modulus, vane_error *error);

/**
 * Stress at the outside of a bent shaft.
 *
 *     s = 32 M D/(pi (D^4 - d^4))
 *
 * @valid   Elastic round shaft, away from steps and keyways.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (3-24)
 *          (from memory).
 *
 * @param[in]  bending_moment  Bending moment [N.m; any].
 * @param[in]  diameter        Diameter of the shaft [m; > bore_diameter].
 * @param[in]  bore_diameter   Diameter of the bore, 0 for none [m; >= 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Bending stress, of the sign of the moment [Pa].
 */
VANE_API double vane_shaft_bending_stress(double bending_moment, double diameter,
					  double bore_diameter, vane_error *error);

/**
 * Equivalent stress of bending and torsion.
 *
 *     s = sqrt(s_b^2 + 3 t^2)
 *
 * @valid   Ductile material.
 * @source  von Mises (1913).
 *
 * @param[in]  bending_stress  Bending stress [Pa; any].
 * @param[in]  torsion_stress  Torsional shear stress [Pa; any].
 * @param[out] error           What went wrong, or NULL.
 * @return    Equivalent stress [Pa].
 */
VANE_API double vane_shaft_von_mises(double bending_stress, double torsion_stress,
				     vane_error *error);

/**
 * Shear stress in a key.
 *
 *     t = 2 T/(D b L)
 *
 * @valid   Even over the section; the force acts at the surface of the shaft.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., sec. 7-7.
 *
 * @param[in]  torque      Torque [N.m; any].
 * @param[in]  diameter    Diameter of the shaft [m; > 0].
 * @param[in]  key_width   Width of the key [m; > 0].
 * @param[in]  key_length  Length of the key that carries [m; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Shear stress, of the sign of the torque [Pa].
 */
VANE_API double vane_shaft_key_shear(double torque, double diameter, double key_width,
				     double key_length, vane_error *error);

/**
 * Pressure on the side of a key.
 *
 *     p = 2 T/(D h L)
 *
 * @valid   Even over the side; the force acts at the surface of the shaft.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., sec. 7-7.
 *
 * @param[in]  torque      Torque [N.m; any].
 * @param[in]  diameter    Diameter of the shaft [m; > 0].
 * @param[in]  key_depth   Depth of the key in the part looked at, about half its height [m; > 0].
 * @param[in]  key_length  Length of the key that carries [m; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Pressure, of the sign of the torque [Pa].
 */
VANE_API double vane_shaft_key_bearing(double torque, double diameter, double key_depth,
				       double key_length, vane_error *error);

/**
 * Shear stress in the teeth of a spline.
 *
 *     t = 2 T/(D z b L k)
 *
 * @valid   Even over the section at the pitch circle.
 * @source  Oberg et al., Machinery's Handbook, Involute splines (from memory).
 *
 * @param[in]  torque           Torque [N.m; any].
 * @param[in]  pitch_diameter   Pitch diameter of the spline [m; > 0].
 * @param[in]  tooth_thickness  Thickness of a tooth at the pitch circle [m; > 0].
 * @param[in]  spline_length    Length of the teeth in contact [m; > 0].
 * @param[in]  teeth            Number of teeth [1; >= 1].
 * @param[in]  share            Part of the teeth that carry: 1 if perfect, customarily 0.5 [1; 0
 *                              < x <= 1].
 * @param[out] error            What went wrong, or NULL.
 * @return    Shear stress, of the sign of the torque [Pa].
 */
VANE_API double vane_shaft_spline_shear(double torque, double pitch_diameter,
					double tooth_thickness, double spline_length, double teeth,
					double share, vane_error *error);

/**
 * Pressure on the flanks of a spline.
 *
 *     p = 2 T/(D z h L k)
 *
 * @valid   Even over the flanks.
 * @source  Oberg et al., Machinery's Handbook, Involute splines (from memory).
 *
 * @param[in]  torque         Torque [N.m; any].
 * @param[in]  mean_diameter  Mean diameter of the flanks [m; > 0].
 * @param[in]  tooth_height   Height of flank in contact [m; > 0].
 * @param[in]  spline_length  Length of the teeth in contact [m; > 0].
 * @param[in]  teeth          Number of teeth [1; >= 1].
 * @param[in]  share          Part of the teeth that carry: 1 if perfect, customarily 0.5 [1; 0 <
 *                            x <= 1].
 * @param[out] error          What went wrong, or NULL.
 * @return    Pressure, of the sign of the torque [Pa].
 */
VANE_API double vane_shaft_spline_bearing(double torque, double mean_diameter, double tooth_height,
					  double spline_length, double teeth, double share,
					  vane_error *error);

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
