/**
 * @file plate.h
 * Round machine parts that oil and springs press on: plates, cylinders, springs.
 */
#ifndef VANE_PLATE_H
#define VANE_PLATE_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How an edge of a round plate is held. The numbers are never changed. */
enum vane_plate_edge {
	VANE_PLATE_FREE = 1,      /**< Free to move and to turn. */
	VANE_PLATE_GUIDED = 2,    /**< Free to move, cannot turn. */
	VANE_PLATE_SUPPORTED = 3, /**< Cannot move, free to turn. */
	VANE_PLATE_CLAMPED = 4    /**< Can neither move nor turn. */
};

/** A flat round plate, with or without a hole, and what presses on it. */
typedef struct vane_plate {
	double inner_radius; /**< Radius of the hole, 0 for none [m; >= 0]. */
	double outer_radius; /**< Radius of the outer edge [m; > inner_radius]. */
	double thickness;    /**< Thickness of the plate [m; > 0]. */
	double modulus;      /**< Modulus of elasticity [Pa; > 0]. */
	double poisson;      /**< Poisson's ratio [1; 0 <= x <= 0.5]. */
	double pressure;     /**< Pressure on the ring zone [Pa; any]. */
	double zone_inner;   /**< Inner radius of the zone [m; inner_radius <= x <= outer_radius]. */
	double zone_outer;   /**< Outer radius of the zone [m; zone_inner <= x <= outer_radius]. */
	double force;        /**< Force spread evenly over a circle, positive as pressure [N; any]. */
	double force_radius; /**< Radius of that circle [m; inner_radius <= x <= outer_radius]. */
	int32_t inner_edge;  /**< Number of enum vane_plate_edge, idle without a hole [1; 1 <= x <= 4]. */
	int32_t outer_edge;  /**< Number of enum vane_plate_edge [1; 1 <= x <= 4]. */
} vane_plate;

/** Bending of a plate at one radius. Stresses are those of the face away from the pressure. */
typedef struct vane_plate_state {
	double deflection;        /**< Movement, positive as the pressure pushes [m; any]. */
	double slope;             /**< Growth of the deflection with radius [1; any]. */
	double radial_moment;     /**< Radial bending moment per length [N; any]. */
	double tangential_moment; /**< Tangential bending moment per length [N; any]. */
	double shear;             /**< Force per length of circle on the part outside it, positive against
				       the pressure [N/m; any]. */
	double radial_stress;     /**< Radial stress, tension positive [Pa; any]. */
	double tangential_stress; /**< Tangential stress, tension positive [Pa; any]. */
} vane_plate_state;

/** What is greatest in size over a plate, with its sign, and where. */
typedef struct vane_plate_peaks {
	double deflection;        /**< Deflection, positive as the pressure pushes [m; any]. */
	double deflection_radius; /**< Radius where it is [m; >= 0]. */
	double radial_stress;     /**< Radial stress of the face away from the pressure [Pa; any]. */
	double radial_radius;     /**< Radius where it is [m; >= 0]. */
	double tangential_stress; /**< Tangential stress of the same face [Pa; any]. */
	double tangential_radius; /**< Radius where it is [m; >= 0]. */
	double inner_reaction;    /**< Force per length from the inner edge's support, positive against
				       the pressure [N/m; any]. */
	double outer_reaction;    /**< Force per length from the outer edge's support, positive against
				       the pressure [N/m; any]. */
} vane_plate_peaks;

/** A disc spring. */
typedef struct vane_plate_disc {
	double outer_diameter; /**< Outer diameter [m; > inner_diameter]. */
	double inner_diameter; /**< Inner diameter [m; > 0]. */
	double thickness;      /**< Thickness of the sheet [m; > 0]. */
	double cone_height;    /**< Height of the cone without load, less thickness [m; >= 0]. */
	double modulus;        /**< Modulus of elasticity [Pa; > 0]. */
	double poisson;        /**< Poisson's ratio [1; 0 <= x <= 0.5]. */
} vane_plate_disc;

/** A disc spring at one deflection. Tension is positive. */
typedef struct vane_plate_disc_state {
	double force;        /**< Force of the spring [N; any]. */
	double rate;         /**< Growth of the force with the deflection [N/m; any]. */
	double stress_top;   /**< At the middle of the upper face, OM [Pa; any]. */
	double stress_one;   /**< At the inner edge above, I [Pa; any]. */
	double stress_two;   /**< At the inner edge below, II [Pa; any]. */
	double stress_three; /**< At the outer edge below, III [Pa; any]. */
	double stress_four;  /**< At the outer edge above, IV [Pa; any]. */
} vane_plate_disc_state;

/**
 * Steel disc without a hole, all of it under a pressure of 0.
 *
 * Thickness 10 mm, outer radius 100 mm, modulus 206 GPa, Poisson's ratio 0.3, simply supported.
 *
 * @source  Common practice, no source.
 *
 * @param[out] plate  The plate.
 */
VANE_API void vane_plate_default(vane_plate *plate);

/**
 * Bending of a round plate at one radius.
 *
 *     D d/dr[(1/r) d(r dw/dr)/dr] = -Q    d(r Q)/dr = -q r
 *
 * The equation is solved exactly; every pair of edges that can carry the load is taken.
 *
 * @valid   Thin elastic plate: thickness below a quarter of the width, deflection below half the
 *          thickness; shear adds to the deflection otherwise. A zone narrower than a hundredth of
 *          its radius loses as many digits as it is narrower.
 * @source  Young and Budynas, Roark's Formulas for Stress and Strain, 7th ed., Table 11.2, general
 *          plate functions (from memory); derived on the page of this topic.
 *
 * @param[in]  plate   The plate and its load.
 * @param[in]  radius  Radius to look at [m; plate.inner_radius <= x <= plate.outer_radius].
 * @param[out] out     Bending there.
 * @param[out] error   What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_plate_at(const vane_plate *plate, double radius, vane_plate_state *out,
			       vane_error *error);

/**
 * Greatest deflection and stresses of a round plate, and what its supports carry.
 *
 *     dw/dr = 0    dM_r/dr = 0    dM_t/dr = 0, or an edge, or the edge of a load
 *
 * @valid   As vane_plate_at(). Of equals, one is given.
 * @source  As vane_plate_at().
 *
 * @param[in]  plate  The plate and its load.
 * @param[out] out    What is greatest, and where.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_plate_run(const vane_plate *plate, vane_plate_peaks *out, vane_error *error);

/**
 * Bending stiffness of a plate.
 *
 *     D = E t^3/(12 (1 - nu^2))
 *
 * @valid   Thin elastic plate.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., eq. (3) (from
 *          memory).
 *
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  modulus    Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Bending stiffness [N.m].
 */
VANE_API double vane_plate_stiffness(double thickness, double modulus, double poisson,
				     vane_error *error);

/**
 * Deflection at the centre of a clamped disc under uniform pressure.
 *
 *     w = 3 (1 - nu^2) p a^4/(16 E t^3)
 *
 * @valid   Thin elastic plate without a hole.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., eq. (62) (from
 *          memory).
 *
 * @param[in]  pressure   Pressure on the face [Pa; any].
 * @param[in]  radius     Radius of the clamped edge [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  modulus    Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Deflection, positive as the pressure pushes [m].
 */
VANE_API double vane_plate_clamped_deflection(double pressure, double radius, double thickness,
					      double modulus, double poisson, vane_error *error);

/**
 * Radial stress at the edge of a clamped disc under uniform pressure.
 *
 *     s = 3 p a^2/(4 t^2)
 *
 * It is the greatest of the plate: tension on the face under pressure, compression on the other.
 *
 * @valid   Thin elastic plate without a hole.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 16 (from
 *          memory).
 *
 * @param[in]  pressure   Pressure on the face [Pa; any].
 * @param[in]  radius     Radius of the clamped edge [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Stress of the face under pressure, tension positive [Pa].
 */
VANE_API double vane_plate_clamped_edge_stress(double pressure, double radius, double thickness,
					       vane_error *error);

/**
 * Stress at the centre of a clamped disc under uniform pressure.
 *
 *     s = 3 (1 + nu) p a^2/(8 t^2)
 *
 * @valid   Thin elastic plate without a hole.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 16 (from
 *          memory).
 *
 * @param[in]  pressure   Pressure on the face [Pa; any].
 * @param[in]  radius     Radius of the clamped edge [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Stress of the face away from the pressure, tension positive [Pa].
 */
VANE_API double vane_plate_clamped_centre_stress(double pressure, double radius, double thickness,
						 double poisson, vane_error *error);

/**
 * Deflection at the centre of a simply supported disc under uniform pressure.
 *
 *     w = 3 (1 - nu) (5 + nu) p a^4/(16 E t^3)
 *
 * @valid   Thin elastic plate without a hole.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., eq. (68) (from
 *          memory).
 *
 * @param[in]  pressure   Pressure on the face [Pa; any].
 * @param[in]  radius     Radius of the support [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  modulus    Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Deflection, positive as the pressure pushes [m].
 */
VANE_API double vane_plate_supported_deflection(double pressure, double radius, double thickness,
						double modulus, double poisson, vane_error *error);

/**
 * Stress at the centre of a simply supported disc under uniform pressure.
 *
 *     s = 3 (3 + nu) p a^2/(8 t^2)
 *
 * @valid   Thin elastic plate without a hole.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 16 (from
 *          memory).
 *
 * @param[in]  pressure   Pressure on the face [Pa; any].
 * @param[in]  radius     Radius of the support [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Stress of the face away from the pressure, tension positive [Pa].
 */
VANE_API double vane_plate_supported_stress(double pressure, double radius, double thickness,
					    double poisson, vane_error *error);

/**
 * Deflection at the centre of a clamped disc under a force there.
 *
 *     w = 3 (1 - nu^2) F a^2/(4 pi E t^3)
 *
 * @valid   Thin elastic plate without a hole; the force acts at a point.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 19 (from
 *          memory).
 *
 * @param[in]  force      Force at the centre [N; any].
 * @param[in]  radius     Radius of the clamped edge [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  modulus    Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Deflection, positive as the force pushes [m].
 */
VANE_API double vane_plate_clamped_force_deflection(double force, double radius, double thickness,
						    double modulus, double poisson,
						    vane_error *error);

/**
 * Deflection at the centre of a simply supported disc under a force there.
 *
 *     w = 3 (1 - nu) (3 + nu) F a^2/(4 pi E t^3)
 *
 * @valid   Thin elastic plate without a hole; the force acts at a point.
 * @source  Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 19 (from
 *          memory).
 *
 * @param[in]  force      Force at the centre [N; any].
 * @param[in]  radius     Radius of the support [m; > 0].
 * @param[in]  thickness  Thickness of the plate [m; > 0].
 * @param[in]  modulus    Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson    Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Deflection, positive as the force pushes [m].
 */
VANE_API double vane_plate_supported_force_deflection(double force, double radius, double thickness,
						      double modulus, double poisson,
						      vane_error *error);

/**
 * Radial stress in a thick cylinder.
 *
 *     s = -(p_i a^2 (b^2 - r^2) + p_o b^2 (r^2 - a^2))/(r^2 (b^2 - a^2))
 *
 * @valid   Elastic, away from the ends.
 * @source  Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., sec. 11.3, eq. (11.20)
 *          (number from memory).
 *
 * @param[in]  inner_radius    Radius of the bore [m; > 0].
 * @param[in]  outer_radius    Radius of the outside [m; > inner_radius].
 * @param[in]  inner_pressure  Pressure in the bore [Pa; any].
 * @param[in]  outer_pressure  Pressure round the outside [Pa; any].
 * @param[in]  radius          Radius to look at [m; inner_radius <= x <= outer_radius].
 * @param[out] error           What went wrong, or NULL.
 * @return    Radial stress, tension positive [Pa].
 */
VANE_API double vane_plate_cylinder_radial_stress(double inner_radius, double outer_radius,
						  double inner_pressure, double outer_pressure,
						  double radius, vane_error *error);

/**
 * Tangential stress in a thick cylinder.
 *
 *     s = (p_i - p_o) a^2 (b^2 + r^2)/(r^2 (b^2 - a^2)) - p_o
 *
 * @valid   Elastic, away from the ends.
 * @source  Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., sec. 11.3, eq. (11.21)
 *          (number from memory).
 *
 * @param[in]  inner_radius    Radius of the bore [m; > 0].
 * @param[in]  outer_radius    Radius of the outside [m; > inner_radius].
 * @param[in]  inner_pressure  Pressure in the bore [Pa; any].
 * @param[in]  outer_pressure  Pressure round the outside [Pa; any].
 * @param[in]  radius          Radius to look at [m; inner_radius <= x <= outer_radius].
 * @param[out] error           What went wrong, or NULL.
 * @return    Tangential stress, tension positive [Pa].
 */
VANE_API double vane_plate_cylinder_tangential_stress(double inner_radius, double outer_radius,
						      double inner_pressure, double outer_pressure,
						      double radius, vane_error *error);

/**
 * Axial stress in a thick cylinder with closed ends.
 *
 *     s = (p_i a^2 - p_o b^2)/(b^2 - a^2)
 *
 * With open ends it is 0.
 *
 * @valid   Elastic, away from the ends.
 * @source  Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., sec. 11.3, eq. (11.22)
 *          (number from memory).
 *
 * @param[in]  inner_radius    Radius of the bore [m; > 0].
 * @param[in]  outer_radius    Radius of the outside [m; > inner_radius].
 * @param[in]  inner_pressure  Pressure in the bore [Pa; any].
 * @param[in]  outer_pressure  Pressure round the outside [Pa; any].
 * @param[out] error           What went wrong, or NULL.
 * @return    Axial stress, tension positive [Pa].
 */
VANE_API double vane_plate_cylinder_axial_stress(double inner_radius, double outer_radius,
						 double inner_pressure, double outer_pressure,
						 vane_error *error);

/**
 * Shear stress in a thick cylinder, half the tangential less the radial stress.
 *
 *     t = (p_i - p_o) a^2 b^2/(r^2 (b^2 - a^2))
 *
 * It is the greatest shear wherever the axial stress is between the other two.
 *
 * @valid   Elastic, away from the ends.
 * @source  Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., sec. 11.3.
 *
 * @param[in]  inner_radius    Radius of the bore [m; > 0].
 * @param[in]  outer_radius    Radius of the outside [m; > inner_radius].
 * @param[in]  inner_pressure  Pressure in the bore [Pa; any].
 * @param[in]  outer_pressure  Pressure round the outside [Pa; any].
 * @param[in]  radius          Radius to look at [m; inner_radius <= x <= outer_radius].
 * @param[out] error           What went wrong, or NULL.
 * @return    Shear stress, of the sign of inner less outer pressure [Pa].
 */
VANE_API double vane_plate_cylinder_shear_stress(double inner_radius, double outer_radius,
						 double inner_pressure, double outer_pressure,
						 double radius, vane_error *error);

/**
 * Radial displacement in a thick cylinder.
 *
 *     u = ((1 - nu) (p_i a^2 - p_o b^2) r + (1 + nu) (p_i - p_o) a^2 b^2/r)/(E (b^2 - a^2))
 *         - nu s_z r/E
 *
 * @valid   Elastic, away from the ends.
 * @source  Boresi and Schmidt, Advanced Mechanics of Materials, 6th ed., sec. 11.3, eq. (11.24)
 *          (number from memory).
 *
 * @param[in]  inner_radius    Radius of the bore [m; > 0].
 * @param[in]  outer_radius    Radius of the outside [m; > inner_radius].
 * @param[in]  inner_pressure  Pressure in the bore [Pa; any].
 * @param[in]  outer_pressure  Pressure round the outside [Pa; any].
 * @param[in]  radius          Radius to look at [m; inner_radius <= x <= outer_radius].
 * @param[in]  axial_stress    Stress along the axis, see vane_plate_cylinder_axial_stress() [Pa;
 *                             any].
 * @param[in]  modulus         Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson         Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error           What went wrong, or NULL.
 * @return    Displacement, positive outwards [m].
 */
VANE_API double vane_plate_cylinder_displacement(double inner_radius, double outer_radius,
						 double inner_pressure, double outer_pressure,
						 double radius, double axial_stress, double modulus,
						 double poisson, vane_error *error);

/**
 * Pressure in a thick cylinder that brings its bore to a tangential stress.
 *
 *     p = s (b^2 - a^2)/(b^2 + a^2)
 *
 * @valid   Elastic; no pressure outside.
 * @source  Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.1.
 *
 * @param[in]  inner_radius  Radius of the bore [m; > 0].
 * @param[in]  outer_radius  Radius of the outside [m; > inner_radius].
 * @param[in]  stress        Tangential stress allowed [Pa; >= 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Pressure in the bore [Pa].
 */
VANE_API double vane_plate_cylinder_inner_pressure(double inner_radius, double outer_radius,
						   double stress, vane_error *error);

/**
 * Pressure round a thick cylinder that brings its bore to a tangential compression.
 *
 *     p = s (b^2 - a^2)/(2 b^2)
 *
 * @valid   Elastic; no pressure inside.
 * @source  Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.1.
 *
 * @param[in]  inner_radius  Radius of the bore [m; > 0].
 * @param[in]  outer_radius  Radius of the outside [m; > inner_radius].
 * @param[in]  stress        Tangential stress allowed [Pa; >= 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Pressure round the outside [Pa].
 */
VANE_API double vane_plate_cylinder_outer_pressure(double inner_radius, double outer_radius,
						   double stress, vane_error *error);

/**
 * Pressure in a press fit.
 *
 *     p = d/(R (((c^2 + R^2)/(c^2 - R^2) + nu_h)/E_h + ((R^2 + b^2)/(R^2 - b^2) - nu_s)/E_s))
 *
 * @valid   Elastic; shaft and hub equally long; no axial stress.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (3-56)
 *          (number from memory).
 *
 * @param[in]  interference    Interference on the radius, half of that on the diameter [m; >= 0].
 * @param[in]  bore_radius     Radius of the bore of the shaft, 0 for none [m; >= 0].
 * @param[in]  contact_radius  Radius of the joint [m; > bore_radius].
 * @param[in]  hub_radius      Radius of the outside of the hub [m; > contact_radius].
 * @param[in]  shaft_modulus   Modulus of elasticity of the shaft [Pa; > 0].
 * @param[in]  shaft_poisson   Poisson's ratio of the shaft [1; 0 <= x <= 0.5].
 * @param[in]  hub_modulus     Modulus of elasticity of the hub [Pa; > 0].
 * @param[in]  hub_poisson     Poisson's ratio of the hub [1; 0 <= x <= 0.5].
 * @param[out] error           What went wrong, or NULL.
 * @return    Pressure in the joint [Pa].
 */
VANE_API double vane_plate_press_pressure(double interference, double bore_radius,
					  double contact_radius, double hub_radius,
					  double shaft_modulus, double shaft_poisson,
					  double hub_modulus, double hub_poisson,
					  vane_error *error);

/**
 * Axial force that a press fit holds by friction.
 *
 *     F = 2 pi R L f p
 *
 * @valid   Even pressure over the joint.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., sec. 7-8 (from
 *          memory).
 *
 * @param[in]  pressure  Pressure in the joint [Pa; >= 0].
 * @param[in]  radius    Radius of the joint [m; > 0].
 * @param[in]  length    Length of the joint [m; > 0].
 * @param[in]  friction  Coefficient of friction [1; >= 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Axial force [N].
 */
VANE_API double vane_plate_press_force(double pressure, double radius, double length,
				       double friction, vane_error *error);

/**
 * Torque that a press fit holds by friction.
 *
 *     T = 2 pi R^2 L f p
 *
 * @valid   Even pressure over the joint.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., sec. 7-8 (from
 *          memory).
 *
 * @param[in]  pressure  Pressure in the joint [Pa; >= 0].
 * @param[in]  radius    Radius of the joint [m; > 0].
 * @param[in]  length    Length of the joint [m; > 0].
 * @param[in]  friction  Coefficient of friction [1; >= 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Torque [N.m].
 */
VANE_API double vane_plate_press_torque(double pressure, double radius, double length,
					double friction, vane_error *error);

/**
 * Rate of a helical spring of round wire.
 *
 *     k = G d^4/(8 D^3 N)
 *
 * @valid   Small pitch angle; spring index D/d above 4.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (10-9).
 *
 * @param[in]  wire_diameter  Diameter of the wire [m; > 0].
 * @param[in]  coil_diameter  Mean diameter of the coils [m; > wire_diameter].
 * @param[in]  coils          Active coils [1; > 0].
 * @param[in]  shear_modulus  Shear modulus [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Force by deflection [N/m].
 */
VANE_API double vane_plate_spring_rate(double wire_diameter, double coil_diameter, double coils,
				       double shear_modulus, vane_error *error);

/**
 * Active coils that give a helical spring its rate.
 *
 *     N = G d^4/(8 D^3 k)
 *
 * @valid   Small pitch angle; spring index D/d above 4.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (10-9).
 *
 * @param[in]  wire_diameter  Diameter of the wire [m; > 0].
 * @param[in]  coil_diameter  Mean diameter of the coils [m; > wire_diameter].
 * @param[in]  rate           Force by deflection [N/m; > 0].
 * @param[in]  shear_modulus  Shear modulus [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Active coils [1].
 */
VANE_API double vane_plate_spring_coils(double wire_diameter, double coil_diameter, double rate,
					double shear_modulus, vane_error *error);

/**
 * Greatest shear stress in a helical spring of round wire, by Wahl.
 *
 *     t = K 8 F D/(pi d^3)    K = (4 C - 1)/(4 C - 4) + 0.615/C    C = D/d
 *
 * @valid   Spring index C above about 3; the curve factor holds for alternating loads.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., sec. 10-1.
 *
 * @param[in]  force          Force on the spring [N; any].
 * @param[in]  wire_diameter  Diameter of the wire [m; > 0].
 * @param[in]  coil_diameter  Mean diameter of the coils [m; > wire_diameter].
 * @param[out] error          What went wrong, or NULL.
 * @return    Shear stress, of the sign of the force [Pa].
 */
VANE_API double vane_plate_spring_stress(double force, double wire_diameter, double coil_diameter,
					 vane_error *error);

/**
 * Greatest shear stress in a helical spring of round wire, by Bergstraesser.
 *
 *     t = K 8 F D/(pi d^3)    K = (4 C + 2)/(4 C - 3)    C = D/d
 *
 * @valid   Spring index C above about 3.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (10-5),
 *          (10-7).
 *
 * @param[in]  force          Force on the spring [N; any].
 * @param[in]  wire_diameter  Diameter of the wire [m; > 0].
 * @param[in]  coil_diameter  Mean diameter of the coils [m; > wire_diameter].
 * @param[out] error          What went wrong, or NULL.
 * @return    Shear stress, of the sign of the force [Pa].
 */
VANE_API double vane_plate_spring_stress_bergstrasser(double force, double wire_diameter,
						      double coil_diameter, vane_error *error);

/**
 * Pitch of a helical compression spring without load.
 *
 *     p = (L - k d)/N
 *
 * Books differ in N: active coils with ground ends in one, all coils in another.
 *
 * @valid   Even pitch. A negative pitch is a spring that cannot be wound.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., Table 10-1
 *          (from memory).
 *
 * @param[in]  free_length    Length without load [m; > 0].
 * @param[in]  wire_diameter  Diameter of the wire [m; > 0].
 * @param[in]  dead_wires     Wire diameters that the ends take: 2 ground, 3 closed only, 1 open,
 *                            0 open and ground [1; >= 0].
 * @param[in]  pitches        Pitches along the free length [1; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Pitch [m].
 */
VANE_API double vane_plate_spring_pitch(double free_length, double wire_diameter, double dead_wires,
					double pitches, vane_error *error);

/**
 * Free length below which a helical compression spring cannot buckle.
 *
 *     L = (pi D/c) sqrt(2 (E - G)/(2 G + E))
 *
 * @valid   Ends flat, ground and square, or as the factor says.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., eq. (10-12)
 *          (number from memory).
 *
 * @param[in]  mean_diameter  Mean diameter of the coils [m; > 0].
 * @param[in]  end_factor     0.5 for two flat ends, 0.707 one flat and one hinged, 1 both hinged,
 *                            2 one free [1; > 0].
 * @param[in]  shear_modulus  Shear modulus [Pa; > 0].
 * @param[in]  modulus        Modulus of elasticity [Pa; > shear_modulus].
 * @param[out] error          What went wrong, or NULL.
 * @return    Free length [m].
 */
VANE_API double vane_plate_spring_stable_length(double mean_diameter, double end_factor,
						double shear_modulus, double modulus,
						vane_error *error);

/**
 * Rate of a wave spring, one ring or more of them crest to crest.
 *
 *     k = E b t^3 n^4 (D + b)/(2.4 D^3 (D - b) Z)
 *
 * @valid   Small deflection; ring much wider than thick.
 * @source  Handbook formula of the spring trade for wave washers (from memory); see the page of
 *          this topic for a beam that gives 1.94 instead of 2.4.
 *
 * @param[in]  width          Radial width of the sheet [m; > 0].
 * @param[in]  mean_diameter  Mean diameter of the ring [m; > width].
 * @param[in]  thickness      Thickness of the sheet [m; > 0].
 * @param[in]  waves          Waves round a turn [1; >= 2].
 * @param[in]  turns          Turns that stand crest to crest [1; >= 1].
 * @param[in]  modulus        Modulus of elasticity [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Force by deflection [N/m].
 */
VANE_API double vane_plate_wave_rate(double width, double mean_diameter, double thickness,
				     double waves, double turns, double modulus, vane_error *error);

/**
 * Greatest bending stress of a wave spring.
 *
 *     s = 3 pi F D/(4 b t^2 n^2)
 *
 * @valid   Small deflection; the ring taken as straight beams from crest to trough.
 * @source  Derived on the page of this topic.
 *
 * @param[in]  force          Force on the spring [N; any].
 * @param[in]  width          Radial width of the sheet [m; > 0].
 * @param[in]  mean_diameter  Mean diameter of the ring [m; > width].
 * @param[in]  thickness      Thickness of the sheet [m; > 0].
 * @param[in]  waves          Waves round a turn [1; >= 2].
 * @param[out] error          What went wrong, or NULL.
 * @return    Bending stress, of the sign of the force [Pa].
 */
VANE_API double vane_plate_wave_stress(double force, double width, double mean_diameter,
				       double thickness, double waves, vane_error *error);

/**
 * Force of a disc spring.
 *
 *     F = 4 E/(1 - nu^2) t^4/(K De^2) (s/t) ((h/t - s/t) (h/t - s/(2 t)) + 1)
 *         K = ((d - 1)/d)^2/(pi ((d + 1)/(d - 1) - 2/ln d))    d = De/Di
 *
 * Negative where the spring has snapped through.
 *
 * @valid   Sheet thin against its width; no contact flats.
 * @source  Almen and Laszlo, Trans. ASME 58 (1936) 305; DIN EN 16984 (both from memory).
 *
 * @param[in]  outer_diameter  Outer diameter [m; > inner_diameter].
 * @param[in]  inner_diameter  Inner diameter [m; > 0].
 * @param[in]  thickness       Thickness of the sheet [m; > 0].
 * @param[in]  cone_height     Height of the cone without load, less thickness [m; >= 0].
 * @param[in]  deflection      Deflection from the free height [m; >= 0].
 * @param[in]  modulus         Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson         Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error           What went wrong, or NULL.
 * @return    Force [N].
 */
VANE_API double vane_plate_disc_force(double outer_diameter, double inner_diameter,
				      double thickness, double cone_height, double deflection,
				      double modulus, double poisson, vane_error *error);

/**
 * Rate of a disc spring at a deflection.
 *
 *     k = 4 E/(1 - nu^2) t^3/(K De^2) ((h/t)^2 - 3 (h/t) (s/t) + 1.5 (s/t)^2 + 1)
 *
 * K as in vane_plate_disc_force().
 *
 * @valid   As vane_plate_disc_force().
 * @source  Derivative of vane_plate_disc_force().
 *
 * @param[in]  outer_diameter  Outer diameter [m; > inner_diameter].
 * @param[in]  inner_diameter  Inner diameter [m; > 0].
 * @param[in]  thickness       Thickness of the sheet [m; > 0].
 * @param[in]  cone_height     Height of the cone without load, less thickness [m; >= 0].
 * @param[in]  deflection      Deflection from the free height [m; >= 0].
 * @param[in]  modulus         Modulus of elasticity [Pa; > 0].
 * @param[in]  poisson         Poisson's ratio [1; 0 <= x <= 0.5].
 * @param[out] error           What went wrong, or NULL.
 * @return    Growth of the force with the deflection [N/m].
 */
VANE_API double vane_plate_disc_rate(double outer_diameter, double inner_diameter, double thickness,
				     double cone_height, double deflection, double modulus,
				     double poisson, vane_error *error);

/**
 * Force, rate and stresses of a disc spring.
 *
 *     s = -4 E/(1 - nu^2) t^2/(K De^2) (s/t) (...)
 *
 * The bracket is 3/pi for OM, K2 (h/t - s/(2 t)) + K3 for I, the same with -K3 for II and of
 * opposite sign; for III and IV it is ((K2 - 2 K3) (h/t - s/(2 t)) -+ K3)/d, with
 * K2 = (6/pi) ((d - 1)/ln d - 1)/ln d and K3 = (3/pi) (d - 1)/ln d.
 *
 * @valid   As vane_plate_disc_force(). I and IV are on the convex face.
 * @source  Almen and Laszlo, Trans. ASME 58 (1936) 305; DIN EN 16984 (both from memory).
 *
 * @param[in]  disc        The spring.
 * @param[in]  deflection  Deflection from the free height [m; >= 0].
 * @param[out] out         Force, rate and stresses.
 * @param[out] error       What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_plate_disc_run(const vane_plate_disc *disc, double deflection,
				     vane_plate_disc_state *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
