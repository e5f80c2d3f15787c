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

/** Metal of clamped parts. The numbers are never changed or used again. */
enum vane_joint_metal {
	VANE_JOINT_STEEL = 1,     /**< Steel. */
	VANE_JOINT_ALUMINIUM = 2, /**< Aluminium. */
	VANE_JOINT_COPPER = 3,    /**< Copper. */
	VANE_JOINT_IRON = 4       /**< Grey cast iron. */
};

/** Elastic numbers of clamped parts. */
typedef struct vane_joint_plate {
	double modulus;     /**< Modulus of elasticity [Pa; > 0]. */
	double poisson;     /**< Poisson's ratio [1; 0 < x < 0.5]. */
	double coefficient; /**< A of vane_joint_wileman_stiffness() [1; > 0]. */
	double exponent;    /**< B of vane_joint_wileman_stiffness() [1; > 0]. */
} vane_joint_plate;

/** One of the parts that a bolt clamps. */
typedef struct vane_joint_layer {
	double thickness; /**< Thickness [m; > 0]. */
	double modulus;   /**< Modulus of elasticity [Pa; > 0]. */
} vane_joint_layer;

/** How far a joint beds in. */
typedef struct vane_joint_embedding {
	double thread;    /**< Of the engaged thread [m; > 0]. */
	double face;      /**< Of each bearing face [m; > 0]. */
	double inner;     /**< Of each face where parts meet [m; > 0]. */
	double embedding; /**< Of the whole joint [m; > 0]. */
} vane_joint_embedding;

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

/**
 * Stiffness of a bar in tension.
 *
 *     k = A E / L
 *
 * @valid   Elastic, even stress.
 * @source  Definition of the modulus.
 *
 * @param[in] area     Area of the section [m2; > 0].
 * @param[in] length   Length [m; > 0].
 * @param[in] modulus  Modulus of elasticity [Pa; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_bar_stiffness(double area, double length, double modulus,
					 vane_error *error);

/**
 * Stiffness of a bolt, shank and thread in the grip.
 *
 *     k = E / (ld / Ad + lt / At)
 *
 * @valid   Head and engaged thread rigid.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-17). From memory.
 *
 * @param[in] shank_area     Area of the shank [m2; > 0].
 * @param[in] shank_length   Length of shank in the grip [m; >= 0].
 * @param[in] stress_area    Tensile stress area of the thread [m2; > 0].
 * @param[in] thread_length  Length of free thread in the grip [m; > 0].
 * @param[in] modulus        Modulus of elasticity [Pa; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_bolt_stiffness(double shank_area, double shank_length,
					  double stress_area, double thread_length, double modulus,
					  vane_error *error);

/**
 * Stiffness of a bolt with the give of head, engaged thread and nut.
 *
 *     1/k = 4/(pi E) (ch/d + ls/ds^2 + lt/d3^2 + d/(2 d3^2)) + 4 cn/(pi En d)
 *
 * @valid   Head ratio ch 0.5 for a hexagon, 0.4 for a socket head; nut ratio cn 0.4 for a nut,
 *          0.33 for a tapped hole.
 * @source  VDI 2230 part 1:2003, 5.1.1.1. From memory.
 *
 * @param[in] diameter        Nominal diameter [m; > 0].
 * @param[in] root_diameter   Root diameter of the thread [m; > 0].
 * @param[in] shank_diameter  Diameter of the shank [m; > 0].
 * @param[in] shank_length    Length of shank in the grip [m; >= 0].
 * @param[in] thread_length   Length of free thread in the grip [m; >= 0].
 * @param[in] head_ratio      Length that stands for the head, in diameters [1; >= 0].
 * @param[in] nut_ratio       Length that stands for nut or hole, in diameters [1; >= 0].
 * @param[in] modulus         Modulus of elasticity [Pa; > 0].
 * @param[in] nut_modulus     Modulus of elasticity of nut or tapped part [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_bolt_stiffness_vdi(double diameter, double root_diameter,
					      double shank_diameter, double shank_length,
					      double thread_length, double head_ratio,
					      double nut_ratio, double modulus, double nut_modulus,
					      vane_error *error);

/**
 * Stiffness of one layer as a hollow cone that widens from a bearing face.
 *
 *     k = pi E d tan a / ln(((2 t tan a + D - d) (D + d)) / ((2 t tan a + D + d) (D - d)))
 *
 * @valid   Half-angle 25 deg to 33 deg fits steel and iron; the parts reach past the cone. Within
 *          8 ulp: ten roundings follow each other.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-19), (8-20). From memory.
 *
 * @param[in] modulus        Modulus of elasticity [Pa; > 0].
 * @param[in] hole_diameter  Diameter of the hole, or customarily of the bolt [m; > 0].
 * @param[in] face_diameter  Least diameter of the cone [m; > hole_diameter].
 * @param[in] thickness      Thickness of the layer [m; > 0].
 * @param[in] half_angle     Angle of the cone from the axis, customarily 30 deg
 *                           [rad; 0 < x <= 1.5].
 * @param[out] error         What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_frustum_stiffness(double modulus, double hole_diameter,
					     double face_diameter, double thickness,
					     double half_angle, vane_error *error);

/**
 * Stiffness of parts of one material under head and nut of one size: two cones back to back.
 *
 *     k = pi E d tan a / (2 ln(((L tan a + D - d) (D + d)) / ((L tan a + D + d) (D - d))))
 *
 * @valid   As vane_joint_frustum_stiffness(). Within 8 ulp.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-21). From memory.
 *
 * @param[in] modulus        Modulus of elasticity [Pa; > 0].
 * @param[in] hole_diameter  Diameter of the hole, or customarily of the bolt [m; > 0].
 * @param[in] face_diameter  Diameter of the bearing face [m; > hole_diameter].
 * @param[in] length         Grip of the bolt [m; > 0].
 * @param[in] half_angle     Angle of the cone from the axis, customarily 30 deg
 *                           [rad; 0 < x <= 1.5].
 * @param[out] error         What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_grip_stiffness(double modulus, double hole_diameter,
					  double face_diameter, double length, double half_angle,
					  vane_error *error);

/**
 * Stiffness of parts of one material, from a fit to finite elements.
 *
 *     k = A E d exp(B d / L)
 *
 * @valid   Washer faces of 1.5 d, parts that reach past the cone. A and B of a material:
 *          vane_joint_plate_data(); 0.78952 and 0.62914 for any.
 * @source  Wileman, Choudhury and Green, J. Mech. Des. 113 (1991); Shigley, Mechanical
 *          Engineering Design, 9th ed., eq. (8-23). From memory.
 *
 * @param[in] modulus      Modulus of elasticity [Pa; > 0].
 * @param[in] diameter     Nominal diameter [m; > 0].
 * @param[in] length       Grip of the bolt [m; >= 0.5 diameter].
 * @param[in] coefficient  Fitted A [1; > 0].
 * @param[in] exponent     Fitted B [1; 0 <= x <= 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_wileman_stiffness(double modulus, double diameter, double length,
					     double coefficient, double exponent,
					     vane_error *error);

/**
 * Elastic numbers of a metal, and the fit for vane_joint_wileman_stiffness().
 *
 * @valid   Room temperature.
 * @constant Moduli of 207, 71, 119 and 100 GPa [Pa].
 * @source  Shigley, Mechanical Engineering Design, 9th ed., table 8-8. From memory.
 *
 * @param[in] metal   A number of enum vane_joint_metal [1; 1 <= x <= 4].
 * @param[out] out    The numbers.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_plate_data(int32_t metal, vane_joint_plate *out, vane_error *error);

/**
 * Stiffness of the parts of a bolt with a nut, cone and sleeve.
 *
 *     w = 1,   tan a = 0.362 + 0.032 ln(L/(2 dw)) + 0.153 ln(D/dw)
 *     D1 = min(D, dw + w L tan a)
 *     1/k = (2/(w dh tan a) ln((dw + dh) (D1 - dh)/((dw - dh) (D1 + dh)))
 *           + 4/(D^2 - dh^2) (L - (D1 - dw)/(w tan a))) / (pi E)
 *
 * @valid   One material, bolt in the middle. Parts no wider than the face are a sleeve. The
 *          sleeve's term falls away once the cone fits into the parts. Within 8 ulp.
 * @source  VDI 2230 part 1:2003, 5.1.2.1. From memory.
 *
 * @param[in] length          Grip of the bolt [m; 0.01 face_diameter < x < 100 face_diameter].
 * @param[in] face_diameter   Diameter of the bearing face [m; > hole_diameter].
 * @param[in] hole_diameter   Diameter of the hole, or customarily of the bolt [m; > 0].
 * @param[in] outer_diameter  Diameter of the clamped parts [m; > hole_diameter].
 * @param[in] modulus         Modulus of elasticity [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_cone_stiffness(double length, double face_diameter, double hole_diameter,
					  double outer_diameter, double modulus, vane_error *error);

/**
 * Stiffness of the parts of a bolt in a tapped hole, cone and sleeve.
 *
 *     w = 2,   tan a = 0.348 + 0.013 ln(L/dw) + 0.193 ln(D/dw)
 *     D1 = min(D, dw + w L tan a)
 *     1/k = (2/(w dh tan a) ln((dw + dh) (D1 - dh)/((dw - dh) (D1 + dh)))
 *           + 4/(D^2 - dh^2) (L - (D1 - dw)/(w tan a))) / (pi E)
 *
 * @valid   One material, bolt in the middle. Parts no wider than the face are a sleeve. The
 *          sleeve's term falls away once the cone fits into the parts. Within 8 ulp.
 * @source  VDI 2230 part 1:2003, 5.1.2.1. From memory.
 *
 * @param[in] length          Grip of the bolt [m; 0.01 face_diameter < x < 100 face_diameter].
 * @param[in] face_diameter   Diameter of the bearing face [m; > hole_diameter].
 * @param[in] hole_diameter   Diameter of the hole, or customarily of the bolt [m; > 0].
 * @param[in] outer_diameter  Diameter of the clamped parts [m; > hole_diameter].
 * @param[in] modulus         Modulus of elasticity [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_cone_stiffness_tapped(double length, double face_diameter,
						 double hole_diameter, double outer_diameter,
						 double modulus, vane_error *error);

/**
 * Stiffness of a stack of layers between two cones that widen from head and nut until they meet.
 *
 *     1/k = sum of 1/k of the cones' parts, each by vane_joint_frustum_stiffness()
 *
 * @valid   As vane_joint_frustum_stiffness(). In a tapped hole the grip ends half a diameter
 *          deep, with 1.5 diameters for the nut.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., 8-5. From memory.
 *
 * @param[in] layer          Layers from head to nut [length layers].
 * @param[in] layers         Number of layers [1; 1 <= x <= 1000].
 * @param[in] hole_diameter  Diameter of the hole, or customarily of the bolt [m; > 0].
 * @param[in] head_diameter  Bearing face of the head [m; > hole_diameter].
 * @param[in] nut_diameter   Bearing face of the nut [m; > hole_diameter].
 * @param[in] half_angle     Angle of the cone from the axis, customarily 30 deg
 *                           [rad; 0 < x <= 1.5].
 * @param[out] stiffness     Stiffness [N/m; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_stack_stiffness(const vane_joint_layer *layer, int64_t layers,
					    double hole_diameter, double head_diameter,
					    double nut_diameter, double half_angle,
					    double *stiffness, vane_error *error);

/**
 * Stiffness of two springs, one on the other.
 *
 *     k = k1 k2 / (k1 + k2)
 *
 * @valid   Linear springs that carry the same force.
 * @source  Definition.
 *
 * @param[in] first   Stiffness of the first spring [N/m; > 0].
 * @param[in] second  Stiffness of the second spring [N/m; > 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Stiffness [N/m].
 */
VANE_API double vane_joint_stiffness_series(double first, double second, vane_error *error);

/**
 * Part of the load that a closed joint adds to the bolt.
 *
 *     phi = n kb / (kb + kj)
 *
 * @valid   Elastic, load along the bolt.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-24); VDI 2230 part 1:2015,
 *          5.2.2. From memory.
 *
 * @param[in] bolt_stiffness   Stiffness of one bolt [N/m; > 0].
 * @param[in] joint_stiffness  Stiffness of the parts one bolt clamps [N/m; > 0].
 * @param[in] introduction     How far out the load comes in: 1 at the faces of head and nut, 0 at
 *                             the joint [1; 0 <= x <= 1].
 * @param[out] error           What went wrong, or NULL.
 * @return    Load factor [1].
 */
VANE_API double vane_joint_load_factor(double bolt_stiffness, double joint_stiffness,
				       double introduction, vane_error *error);

/**
 * Force that is left between the parts under load.
 *
 *     Fc = max(0, F - (1 - phi) Fa)
 *
 * @valid   Elastic, load along the bolt.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-25). From memory.
 *
 * @param[in] preload      Tension of the bolt without load [N; >= 0].
 * @param[in] load         Force that pulls at one bolt [N; >= 0].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x <= 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Clamp [N].
 */
VANE_API double vane_joint_clamp(double preload, double load, double load_factor,
				 vane_error *error);

/**
 * Tension of the bolt under load.
 *
 *     Fb = max(F + phi Fa, Fa)
 *
 * @valid   Elastic, load along the bolt; once the joint is open the bolt carries the load alone.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-24). From memory.
 *
 * @param[in] preload      Tension of the bolt without load [N; >= 0].
 * @param[in] load         Force that pulls at one bolt [N; >= 0].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x <= 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Tension [N].
 */
VANE_API double vane_joint_bolt_load(double preload, double load, double load_factor,
				     vane_error *error);

/**
 * Load at which the joint opens.
 *
 *     Fa = F / (1 - phi)
 *
 * @valid   Elastic, load along the bolt.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-30). From memory.
 *
 * @param[in] preload      Tension of the bolt without load [N; >= 0].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x < 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Load of one bolt [N].
 */
VANE_API double vane_joint_separation_load(double preload, double load_factor, vane_error *error);

/**
 * Load at which the bolt reaches a given tension, closed joint or open.
 *
 *     Fa = min((Fy - F) / phi, Fy)
 *
 * @valid   Elastic, load along the bolt.
 * @source  Derived on the page of this topic.
 *
 * @param[in] preload      Tension of the bolt without load [N; 0 <= x <= yield_force].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x <= 1].
 * @param[in] yield_force  Tension at which the bolt yields, or its proof load [N; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Load of one bolt [N].
 */
VANE_API double vane_joint_yield_load(double preload, double load_factor, double yield_force,
				      vane_error *error);

/**
 * How many times the load fits between preload and proof load, joint closed.
 *
 *     n = (Fp - F) / (phi Fa)
 *
 * @valid   The joint closed at n times the load: compare vane_joint_separation_safety(). Open, it
 *          is vane_joint_yield_load() over the load.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-29). From memory.
 *
 * @param[in] proof_load   Proof load of the bolt [N; > 0].
 * @param[in] preload      Tension of the bolt without load [N; 0 <= x <= proof_load].
 * @param[in] load         Force that pulls at one bolt [N; > 0].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 < x <= 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Factor [1].
 */
VANE_API double vane_joint_load_safety(double proof_load, double preload, double load,
				       double load_factor, vane_error *error);

/**
 * How many times the load it takes to open the joint.
 *
 *     n = F / ((1 - phi) Fa)
 *
 * @valid   Elastic, load along the bolt.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-30). From memory.
 *
 * @param[in] preload      Tension of the bolt without load [N; >= 0].
 * @param[in] load         Force that pulls at one bolt [N; > 0].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x < 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Factor [1].
 */
VANE_API double vane_joint_separation_safety(double preload, double load, double load_factor,
					     vane_error *error);

/**
 * Proof load over the tension under load, joint closed.
 *
 *     n = Fp / (phi Fa + F)
 *
 * @valid   The joint closed.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-28). From memory.
 *
 * @param[in] proof_load   Proof load of the bolt [N; > 0].
 * @param[in] preload      Tension of the bolt without load [N; > 0].
 * @param[in] load         Force that pulls at one bolt [N; >= 0].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x <= 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Factor [1].
 */
VANE_API double vane_joint_yield_safety(double proof_load, double preload, double load,
					double load_factor, vane_error *error);

/**
 * Greatest preload that must be allowed for so that the least still does its work.
 *
 *     F = alpha (Fk + (1 - phi) Fa + Fz + Ft)
 *
 * @valid   A joint that stays closed.
 * @source  VDI 2230 part 1:2015, eq. (R6). From memory.
 *
 * @param[in] tightening_factor  Ratio of the greatest to the least preload [1; >= 1].
 * @param[in] clamp              Clamp needed under load [N; >= 0].
 * @param[in] load               Force that pulls at one bolt [N; >= 0].
 * @param[in] load_factor        Part of the load that a closed joint adds to the bolt
 *                               [1; 0 <= x <= 1].
 * @param[in] seating_loss       Preload lost as surfaces bed in [N; >= 0].
 * @param[in] thermal_loss       Preload lost to heat [N; >= 0].
 * @param[out] error             What went wrong, or NULL.
 * @return    Preload [N].
 */
VANE_API double vane_joint_assembly_preload(double tightening_factor, double clamp, double load,
					    double load_factor, double seating_loss,
					    double thermal_loss, vane_error *error);

/**
 * Pressure under head or nut.
 *
 *     p = F / (pi/4 (dw^2 - dh^2))
 *
 * @valid   Even over the face.
 * @source  Definition.
 *
 * @param[in] force          Tension of the bolt [N; >= 0].
 * @param[in] face_diameter  Diameter of the bearing face [m; > hole_diameter].
 * @param[in] hole_diameter  Hole, or inner diameter of the face [m; >= 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Pressure [Pa].
 */
VANE_API double vane_joint_face_pressure(double force, double face_diameter, double hole_diameter,
					 vane_error *error);

/**
 * Turn of the nut from snug that makes a preload.
 *
 *     theta = 2 pi F (1/kb + 1/kj) / P
 *
 * @valid   Elastic, faces fully in contact at snug.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., 8-9. From memory.
 *
 * @param[in] preload          Tension of the bolt without load [N; >= 0].
 * @param[in] pitch            Axial distance from thread to thread [m; > 0].
 * @param[in] bolt_stiffness   Stiffness of one bolt [N/m; > 0].
 * @param[in] joint_stiffness  Stiffness of the parts one bolt clamps [N/m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Turn [rad].
 */
VANE_API double vane_joint_turn_angle(double preload, double pitch, double bolt_stiffness,
				      double joint_stiffness, vane_error *error);

/**
 * How far a joint beds in after tightening, from its roughness.
 *
 * @valid   Machined steel parts, no paint, no soft gasket.
 * @constant Limits of 10, 40 and 160 um, the table's depths [m].
 * @source  VDI 2230 part 1:2003, table 5. From memory.
 *
 * @param[in] roughness   Roughness Rz of the faces [m; 0 <= x <= 0.00016].
 * @param[in] sheared     1 if the load is across the bolt, 0 if along it [1; 0 <= x <= 1].
 * @param[in] faces       Bearing faces: 2 for head and nut, 1 for a tapped hole [1; 0 <= x <= 2].
 * @param[in] interfaces  Faces where parts meet each other [1; 0 <= x <= 1000].
 * @param[out] out        The depths.
 * @param[out] error      What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_embedding_depth(double roughness, int32_t sheared, int32_t faces,
					    int32_t interfaces, vane_joint_embedding *out,
					    vane_error *error);

/**
 * Preload lost as surfaces bed in.
 *
 *     Fz = fz / (1/kb + 1/kj)
 *
 * @valid   Elastic.
 * @source  VDI 2230 part 1:2015, 5.4.2.1. From memory.
 *
 * @param[in] embedding        How far the joint beds in, all faces together [m; >= 0].
 * @param[in] bolt_stiffness   Stiffness of one bolt [N/m; > 0].
 * @param[in] joint_stiffness  Stiffness of the parts one bolt clamps [N/m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Preload lost [N].
 */
VANE_API double vane_joint_embedding_loss(double embedding, double bolt_stiffness,
					  double joint_stiffness, vane_error *error);

/**
 * Change of the preload by heat, moduli unchanged.
 *
 *     dF = L (aj Tj - ab Tb) / (1/kb + 1/kj)
 *
 * @valid   Elastic; temperatures even over bolt and parts.
 * @source  VDI 2230 part 1:2015, 5.4.2.3. From memory.
 *
 * @param[in] length           Grip of the bolt [m; > 0].
 * @param[in] bolt_stiffness   Stiffness of one bolt [N/m; > 0].
 * @param[in] joint_stiffness  Stiffness of the parts one bolt clamps [N/m; > 0].
 * @param[in] bolt_expansion   Expansion of the bolt [1/K; >= 0].
 * @param[in] bolt_rise        Rise of the bolt's temperature [K; any].
 * @param[in] joint_expansion  Expansion of the parts [1/K; >= 0].
 * @param[in] joint_rise       Rise of the parts' temperature [K; any].
 * @param[out] error           What went wrong, or NULL.
 * @return    Change of the preload, positive if it grows [N].
 */
VANE_API double vane_joint_thermal_change(double length, double bolt_stiffness,
					  double joint_stiffness, double bolt_expansion,
					  double bolt_rise, double joint_expansion,
					  double joint_rise, vane_error *error);

/**
 * Preload of a hot joint, moduli changed.
 *
 *     F = max(0, (F0 (1/kb + 1/kj) + L (aj Tj - ab Tb)) / (1/(kb rb) + 1/(kj rj)))
 *
 * @valid   Elastic, no creep. Digits are lost where heat takes nearly all the preload: a
 *          difference of rounded terms.
 * @source  VDI 2230 part 1:2015, 5.4.2.3. From memory.
 *
 * @param[in] preload          Tension of the cold bolt [N; >= 0].
 * @param[in] length           Grip of the bolt [m; > 0].
 * @param[in] bolt_stiffness   Stiffness of one bolt [N/m; > 0].
 * @param[in] joint_stiffness  Stiffness of the parts one bolt clamps [N/m; > 0].
 * @param[in] bolt_expansion   Expansion of the bolt [1/K; >= 0].
 * @param[in] bolt_rise        Rise of the bolt's temperature [K; any].
 * @param[in] joint_expansion  Expansion of the parts [1/K; >= 0].
 * @param[in] joint_rise       Rise of the parts' temperature [K; any].
 * @param[in] bolt_ratio       Modulus of the hot bolt over that of the cold [1; > 0].
 * @param[in] joint_ratio      Modulus of the hot parts over that of the cold [1; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Preload, 0 if the bolt goes slack [N].
 */
VANE_API double vane_joint_hot_preload(double preload, double length, double bolt_stiffness,
				       double joint_stiffness, double bolt_expansion,
				       double bolt_rise, double joint_expansion, double joint_rise,
				       double bolt_ratio, double joint_ratio, vane_error *error);

/**
 * Alternating stress of the bolt under a load that comes and goes.
 *
 *     sa = phi (Fmax - Fmin) / (2 At)
 *
 * @valid   The joint closed.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-35). From memory.
 *
 * @param[in] load_low     Least load [N; >= 0].
 * @param[in] load_high    Greatest load [N; >= load_low].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x <= 1].
 * @param[in] stress_area  Tensile stress area [m2; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Alternating stress [Pa].
 */
VANE_API double vane_joint_alternating_stress(double load_low, double load_high, double load_factor,
					      double stress_area, vane_error *error);

/**
 * Mean stress of the bolt under a load that comes and goes.
 *
 *     sm = (phi (Fmax + Fmin) / 2 + F) / At
 *
 * @valid   The joint closed.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-36). From memory.
 *
 * @param[in] preload      Tension of the bolt without load [N; >= 0].
 * @param[in] load_low     Least load [N; >= 0].
 * @param[in] load_high    Greatest load [N; >= load_low].
 * @param[in] load_factor  Part of the load that a closed joint adds to the bolt [1; 0 <= x <= 1].
 * @param[in] stress_area  Tensile stress area [m2; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Mean stress [Pa].
 */
VANE_API double vane_joint_mean_stress(double preload, double load_low, double load_high,
				       double load_factor, double stress_area, vane_error *error);

/**
 * Safety of a bolt against fatigue by Goodman's line, load line from the preload.
 *
 *     n = Se (Su - si) / (Su sa + Se (sm - si))
 *
 * @valid   Notch already in the endurance strength: vane_thread_strength().
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-38). From memory.
 *
 * @param[in] endurance           Fully corrected endurance strength [Pa; > 0].
 * @param[in] tensile             Tensile strength [Pa; > preload_stress].
 * @param[in] preload_stress      Tensile stress without load [Pa; >= 0].
 * @param[in] alternating_stress  Alternating stress [Pa; > 0].
 * @param[in] mean_stress         Mean stress [Pa; >= preload_stress].
 * @param[out] error              What went wrong, or NULL.
 * @return    Factor on the load [1].
 */
VANE_API double vane_joint_goodman(double endurance, double tensile, double preload_stress,
				   double alternating_stress, double mean_stress,
				   vane_error *error);

/**
 * Safety of a bolt against fatigue by Gerber's parabola, repeated load.
 *
 *     n = (Su sqrt(Su^2 + 4 Se (Se + si)) - Su^2 - 2 si Se) / (2 sa Se)
 *
 * @valid   Load falls to zero each time. Notch already in the endurance strength. Within 6 ulp:
 *          ten roundings follow each other.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-40). From memory.
 *
 * @param[in] endurance           Fully corrected endurance strength [Pa; > 0].
 * @param[in] tensile             Tensile strength [Pa; > preload_stress].
 * @param[in] preload_stress      Tensile stress without load [Pa; >= 0].
 * @param[in] alternating_stress  Alternating stress [Pa; > 0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Factor on the load [1].
 */
VANE_API double vane_joint_gerber(double endurance, double tensile, double preload_stress,
				  double alternating_stress, vane_error *error);

/**
 * Safety of a bolt against fatigue by the ASME ellipse, repeated load.
 *
 *     n = Se (Sp sqrt(Sp^2 + Se^2 - si^2) - si Se) / (sa (Sp^2 + Se^2))
 *
 * @valid   Load falls to zero each time. Notch already in the endurance strength. Within 6 ulp:
 *          ten roundings follow each other.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-41). From memory.
 *
 * @param[in] endurance           Fully corrected endurance strength [Pa; > 0].
 * @param[in] proof_stress        Proof stress [Pa; > preload_stress].
 * @param[in] preload_stress      Tensile stress without load [Pa; >= 0].
 * @param[in] alternating_stress  Alternating stress [Pa; > 0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Factor on the load [1].
 */
VANE_API double vane_joint_elliptic(double endurance, double proof_stress, double preload_stress,
				    double alternating_stress, vane_error *error);

/**
 * Order in which to tighten bolts on a circle: crosswise.
 *
 * The first bolt has the number 1 and numbers run round the circle. An even number goes in pairs of
 * opposite bolts.
 *
 *     order(n) = k, k + n/2 for each k of order(n/2), n even
 *     order(n) = steps of (n - 1)/2 round the circle, n odd
 *
 * @valid   The parts' own documentation comes first.
 * @source  Common practice, no source.
 *
 * @param[in] bolts   Number of bolts [1; 1 <= x <= 1000].
 * @param[out] order  Numbers of the bolts, first to last [1; >= 1; length bolts].
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_circle_order(int32_t bolts, int32_t *order, vane_error *error);

/**
 * Order in which to tighten bolts round a rectangle: from the middle outward, crosswise.
 *
 * Bolt 1 is a corner and numbers run round the edge. The edge has `columns` bolts, the next one
 * bolts/2 - columns + 2, each with both its corners. The pair of opposite bolts
 * nearest to the middle comes first; of equally near pairs that with the lower number.
 * Distances are counted in spacings.
 *
 * @valid   Spacing even and alike along both edges. An odd number of bolts gives
 *          VANE_NO_SOLUTION. The parts' own documentation comes first.
 * @source  Common practice, no source.
 *
 * @param[in] columns  Bolts along the edge from bolt 1 on, both corners included
 *                     [1; 2 <= x <= 0.5 bolts].
 * @param[in] bolts    Number of bolts, even [1; 4 <= x <= 1000].
 * @param[out] order   Numbers of the bolts, first to last [1; >= 1; length bolts].
 * @param[out] error   What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_rectangle_order(int32_t columns, int32_t bolts, int32_t *order,
					    vane_error *error);

/**
 * Fractions of the torque to tighten to, pass by pass.
 *
 *     fraction = k / (n - 1) for pass k, and 1 for pass n
 *
 * @valid   Crosswise at every pass but the last, which goes once round from bolt to bolt. The
 *          parts' own documentation comes first.
 * @source  Common practice, no source.
 *
 * @param[in] passes     Number of passes [1; 3 <= x <= 20].
 * @param[out] fraction  Torque of each pass over the whole torque [1; 0 < x <= 1; length passes].
 * @param[out] error     What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_joint_passes(int32_t passes, double *fraction, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
