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
	VANE_THREAD_8_8 = 1,      /**< ISO 898-1 class 8.8, M1.6 to M39. */
	VANE_THREAD_10_9 = 2,     /**< ISO 898-1 class 10.9, M1.6 to M39. */
	VANE_THREAD_12_9 = 3,     /**< ISO 898-1 class 12.9, M1.6 to M39. */
	VANE_THREAD_SAE_2 = 4,    /**< SAE J429 grade 2, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_5 = 5,    /**< SAE J429 grade 5, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_8 = 6,    /**< SAE J429 grade 8, 1/4 in to 1-1/2 in. */
	VANE_THREAD_4_6 = 7,      /**< ISO 898-1 class 4.6, M1.6 to M39. */
	VANE_THREAD_4_8 = 8,      /**< ISO 898-1 class 4.8, M1.6 to M39. */
	VANE_THREAD_5_6 = 9,      /**< ISO 898-1 class 5.6, M1.6 to M39. */
	VANE_THREAD_5_8 = 10,     /**< ISO 898-1 class 5.8, M1.6 to M39. */
	VANE_THREAD_6_8 = 11,     /**< ISO 898-1 class 6.8, M1.6 to M39. */
	VANE_THREAD_9_8 = 12,     /**< ISO 898-1 class 9.8, M1.6 to M16. */
	VANE_THREAD_SAE_1 = 13,   /**< SAE J429 grade 1, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_4 = 14,   /**< SAE J429 grade 4, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_5_2 = 15, /**< SAE J429 grade 5.2, 1/4 in to 1 in. */
	VANE_THREAD_SAE_7 = 16,   /**< SAE J429 grade 7, 1/4 in to 1-1/2 in. */
	VANE_THREAD_SAE_8_2 = 17, /**< SAE J429 grade 8.2, 1/4 in to 1 in. */
	VANE_THREAD_A307 = 18,    /**< ASTM A307, 1/4 in to 1-1/2 in. */
	VANE_THREAD_A325 = 19,    /**< ASTM A325, 1/2 in to 1-1/2 in. */
	VANE_THREAD_A354_BC = 20, /**< ASTM A354 grade BC, 1/4 in to 2-1/2 in. */
	VANE_THREAD_A354_BD = 21, /**< ASTM A354 grade BD, 1/4 in to 2-1/2 in. */
	VANE_THREAD_A449 = 22,    /**< ASTM A449, 1/4 in to 3 in. */
	VANE_THREAD_A490 = 23,    /**< ASTM A490, 1/2 in to 1-1/2 in. */
	VANE_THREAD_A193_B7 = 24, /**< ASTM A193 grade B7, 1/4 in to 2-1/2 in; no proof stress is
	                               specified, the yield strength stands in its place. */
	VANE_THREAD_A574 = 25     /**< ASTM A574 socket head cap screws, 1/4 in to 1-1/2 in. */
};

/** Series of standard sizes. The numbers are never changed or used again. */
enum vane_thread_series {
	VANE_THREAD_COARSE = 1, /**< ISO 262, coarse pitch, M1 to M64. */
	VANE_THREAD_FINE = 2,   /**< ISO 262, first column of fine pitches, M8 to M64. */
	VANE_THREAD_FINER = 3,  /**< ISO 262, second column of fine pitches, M10 to M22. */
	VANE_THREAD_UNC = 4,    /**< Unified coarse, number 1 to 4 in. */
	VANE_THREAD_UNF = 5,    /**< Unified fine, number 0 to 1-1/2 in. */
	VANE_THREAD_UNEF = 6,   /**< Unified extra fine, number 12 to 1-11/16 in. */
	VANE_THREAD_8_UN = 7,   /**< Eight threads an inch, 1 in to 4 in. */
	VANE_THREAD_12_UN = 8,  /**< Twelve threads an inch, 9/16 in to 4 in. */
	VANE_THREAD_16_UN = 9   /**< Sixteen threads an inch, 3/8 in to 4 in. */
};

/** How a bolt is tightened. The numbers are never changed or used again. */
enum vane_thread_tightening {
	VANE_THREAD_BY_YIELD = 1,      /**< To the yield point, by the wrench's own record. */
	VANE_THREAD_BY_ANGLE = 2,      /**< By angle, into the plastic range. */
	VANE_THREAD_BY_HYDRAULICS = 3, /**< By a hydraulic tensioner. */
	VANE_THREAD_BY_TRIAL = 4,      /**< Torque wrench, torque found by trials on the part. */
	VANE_THREAD_BY_ESTIMATE = 5,   /**< Torque wrench, torque from an estimated friction. */
	VANE_THREAD_BY_IMPACT = 6      /**< Impact wrench, or by hand without measurement. */
};

/** Condition of a bolt's surface. The numbers are never changed or used again. */
enum vane_thread_finish {
	VANE_THREAD_BLACK = 1,      /**< Not plated, black. */
	VANE_THREAD_ZINC = 2,       /**< Zinc plated. */
	VANE_THREAD_LUBRICATED = 3, /**< Lubricated. */
	VANE_THREAD_CADMIUM = 4,    /**< Cadmium plated. */
	VANE_THREAD_ANTI_SEIZE = 5, /**< With anti-seize paste. */
	VANE_THREAD_LOW_GRIP = 6    /**< Low-friction paste with its special nuts. */
};

/** Minimum strengths of one class in one range of diameters. */
typedef struct vane_thread_class {
	double proof;     /**< Stress that leaves no permanent stretch [Pa; > 0]. */
	double yield;     /**< Yield strength or 0.2 % proof strength [Pa; > 0]. */
	double tensile;   /**< Tensile strength [Pa; > 0]. */
	double endurance; /**< Fully corrected endurance strength of rolled thread under a repeated
	                       axial load, 0 where none is tabulated [Pa; >= 0]. */
} vane_thread_class;

/** One standard thread, basic dimensions. */
typedef struct vane_thread_size {
	double diameter;       /**< Nominal (major) diameter [m; > 0]. */
	double pitch;          /**< Axial distance from thread to thread [m; > 0]. */
	double pitch_diameter; /**< Pitch diameter [m; > 0]. */
	double minor_diameter; /**< Minor diameter of the basic profile [m; > 0]. */
	double root_diameter;  /**< Root diameter of the external thread [m; > 0]. */
	double stress_area;    /**< Tensile stress area [m2; > 0]. */
} vane_thread_size;

/** Where a tightening torque goes. */
typedef struct vane_thread_parts {
	double pitch;      /**< Part that stretches the bolt [N.m; >= 0]. */
	double thread;     /**< Part that thread friction takes [N.m; >= 0]. */
	double bearing;    /**< Part that friction under the turning face takes [N.m; >= 0]. */
	double shank;      /**< Torque in the shank: pitch and thread [N.m; >= 0]. */
	double torque;     /**< Tightening torque: all three [N.m; >= 0]. */
	double loosening;  /**< Torque that turns it back: both frictions less the pitch's part;
	                        negative if the thread does not hold by itself [N.m; any]. */
	double efficiency; /**< The pitch's part of the torque [1; 0 <= x <= 1]. */
} vane_thread_parts;

/** Spread of the preload that a way of tightening leaves, both ends of what is usual. */
typedef struct vane_thread_accuracy {
	double factor_low;   /**< Least usual ratio of greatest to least preload [1; >= 1]. */
	double factor_high;  /**< Greatest usual ratio of greatest to least preload [1; >= 1]. */
	double scatter_low;  /**< Least usual fraction to either side [1; 0 <= x <= 1]. */
	double scatter_high; /**< Greatest usual fraction to either side [1; 0 <= x <= 1]. */
} vane_thread_accuracy;

/** Preloads measured on bolts that were tightened alike. */
typedef struct vane_thread_sample {
	double mean;      /**< Mean [N; > 0]. */
	double deviation; /**< Standard deviation of the sample [N; >= 0]. */
	double least;     /**< Least preload [N; > 0]. */
	double greatest;  /**< Greatest preload [N; > 0]. */
	double factor;    /**< Tightening factor: greatest over least [1; >= 1]. */
	double scatter;   /**< Fraction to either side that gives this factor [1; 0 <= x <= 1]. */
} vane_thread_sample;

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
 * Root diameter of the unified external thread.
 *
 *     dr = d - 3 sqrt(3) P / 4
 *
 * @valid   Unified profile, root as deep as the standard allows. The metric root is shallower:
 *          vane_thread_root_diameter().
 * @source  Shigley, Mechanical Engineering Design, 9th ed., table 8-2, note (d - 1.299038 p).
 *          From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 1.29904 pitch].
 * @param[in] pitch     Axial distance from thread to thread [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Root diameter [m].
 */
VANE_API double vane_thread_root_diameter_unified(double diameter, double pitch, vane_error *error);

/**
 * Tensile stress area of a unified thread of steel above 100 000 psi tensile strength.
 *
 *     As = pi (E / 2 - 3 sqrt(3) P / 32)^2
 *
 * @valid   With the basic pitch diameter it is vane_thread_stress_area_unified(); with the least
 *          one allowed it is a little smaller.
 * @source  ASME B1.1, appendix B, As = pi (Es min / 2 - 0.16238 / n)^2 with P = 1/n. From memory.
 *
 * @param[in] pitch_diameter  Least pitch diameter of the external thread [m; > 0.32476 pitch].
 * @param[in] pitch           Axial distance from thread to thread [m; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Stress area [m2].
 */
VANE_API double vane_thread_stress_area_strong(double pitch_diameter, double pitch,
					       vane_error *error);

/**
 * Area of a round section, such as the shank or the root.
 *
 *     A = pi d^2 / 4
 *
 * @valid   Solid round sections.
 * @source  Definition.
 *
 * @param[in] diameter  Diameter [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Area [m2].
 */
VANE_API double vane_thread_area(double diameter, vane_error *error);

/**
 * Slope of the thread at its pitch diameter.
 *
 *     phi = atan(P / (pi d2))
 *
 * @valid   One start.
 * @source  Definition.
 *
 * @param[in] pitch           Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter  Pitch diameter of the thread [m; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Lead angle [rad].
 */
VANE_API double vane_thread_lead_angle(double pitch, double pitch_diameter, vane_error *error);

/**
 * Mean diameter of a ring-shaped turning face.
 *
 *     Db = (dw + dh) / 2
 *
 * @valid   Pressure even over the width of the face, and the face narrow.
 * @source  VDI 2230 part 1:2015, DKm. From memory.
 *
 * @param[in] face_diameter  Outer diameter of the bearing face [m; > hole_diameter].
 * @param[in] hole_diameter  Hole, or inner diameter of the face [m; >= 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Mean diameter [m].
 */
VANE_API double vane_thread_bearing_diameter(double face_diameter, double hole_diameter,
					     vane_error *error);

/**
 * Length of thread on a metric bolt.
 *
 *     b = 2 d + 6 mm    up to a length of 125 mm
 *     b = 2 d + 12 mm   up to 200 mm
 *     b = 2 d + 25 mm   above
 *
 * @valid   Bolts long enough to have a shank; a shorter one is threaded to the head.
 * @constant Allowances of 6 mm, 12 mm and 25 mm, limits of 125 mm and 200 mm [m].
 * @source  ISO 888:2012. From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 0].
 * @param[in] length    Length of the bolt under its head [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Length of thread [m].
 */
VANE_API double vane_thread_length(double diameter, double length, vane_error *error);

/**
 * Length of thread on an inch bolt.
 *
 *     b = 2 d + 1/4 in   up to a length of 6 in
 *     b = 2 d + 1/2 in   above
 *
 * @valid   Bolts long enough to have a shank; a shorter one is threaded to the head.
 * @constant Allowances of 1/4 in and 1/2 in, limit of 6 in [m].
 * @source  ASME B18.2.1; Shigley, Mechanical Engineering Design, 9th ed., table 8-7. From memory.
 *
 * @param[in] diameter  Nominal (major) diameter [m; > 0].
 * @param[in] length    Length of the bolt under its head [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Length of thread [m].
 */
VANE_API double vane_thread_length_inch(double diameter, double length, vane_error *error);

/**
 * Standard thread of a series whose nominal diameter is nearest to a measured one.
 *
 * @valid   Within 3 % of a nominal diameter of the series, else VANE_NO_SOLUTION; crests of a
 *          real bolt lie a little under the nominal. Measure the pitch too: series overlap.
 * @constant The tables' diameters and pitches [m].
 * @source  ISO 262:1998, table 1 and ISO 724:1993; ASME B1.1-2003, table 1 (of the constant-pitch
 *          series the common sizes). From memory.
 *
 * @param[in] series    A number of enum vane_thread_series [1; 1 <= x <= 9].
 * @param[in] diameter  Nominal or measured diameter over the crests [m; 0.00097 <= x <= 0.1046].
 * @param[out] out      The thread.
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_find(int32_t series, double diameter, vane_thread_size *out,
				  vane_error *error);

/**
 * Torque that tightens a bolt to a preload, from pitch and friction.
 *
 *     T = F (P / (2 pi) + mu_t d2 / (2 cos 30 deg) + mu_b D_b / 2)
 *
 * With a bearing friction of 0 it is the torque the shank carries.
 *
 * @valid   60 degree thread, small lead angle; leaves out the product of lead angle and
 *          friction, under 2 % of the thread's share up to a friction of 0.15.
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
 * Torque that tightens a bolt to a preload, with the product of lead and friction kept.
 *
 *     T = F (d2/2 (tan phi + f) / (1 - f tan phi) + mu_b D_b / 2)
 *     tan phi = P / (pi d2),   f = mu_t / cos 30 deg
 *
 * @valid   60 degree thread.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-26); VDI 2230 part 1:2015,
 *          tan(phi + rho'). From memory.
 *
 * @param[in] preload           Tension of the bolt [N; >= 0].
 * @param[in] pitch             Axial distance from thread to thread
 *                              [m; 0 < x <= 0.5 pitch_diameter].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; 0 <= x <= 1].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; 0 <= x <= 1].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Tightening torque [N.m].
 */
VANE_API double vane_thread_torque_exact(double preload, double pitch, double pitch_diameter,
					 double thread_friction, double bearing_friction,
					 double bearing_diameter, vane_error *error);

/**
 * Preload that a tightening torque leaves, with the product of lead and friction kept.
 *
 *     F = T / (d2/2 (tan phi + f) / (1 - f tan phi) + mu_b D_b / 2)
 *
 * @valid   As vane_thread_torque_exact().
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-26); VDI 2230 part 1:2015,
 *          tan(phi + rho'). From memory.
 *
 * @param[in] torque            Tightening torque [N.m; >= 0].
 * @param[in] pitch             Axial distance from thread to thread
 *                              [m; 0 < x <= 0.5 pitch_diameter].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; 0 <= x <= 1].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; 0 <= x <= 1].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Preload [N].
 */
VANE_API double vane_thread_preload_exact(double torque, double pitch, double pitch_diameter,
					  double thread_friction, double bearing_friction,
					  double bearing_diameter, vane_error *error);

/**
 * Lumped factor that stands for a pair of frictions.
 *
 *     K = (d2/2 (tan phi + f) / (1 - f tan phi) + mu_b D_b / 2) / d
 *
 * @valid   As vane_thread_torque_exact().
 * @source  Shigley, Mechanical Engineering Design, 9th ed., eq. (8-26), (8-27).
 *
 * @param[in] diameter          Nominal diameter [m; > 0].
 * @param[in] pitch             Axial distance from thread to thread
 *                              [m; 0 < x <= 0.5 pitch_diameter].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; 0 <= x <= 1].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; 0 <= x <= 1].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Nut factor [1].
 */
VANE_API double vane_thread_nut_factor(double diameter, double pitch, double pitch_diameter,
				       double thread_friction, double bearing_friction,
				       double bearing_diameter, vane_error *error);

/**
 * Customary nut factor of a surface.
 *
 * @valid   A starting point; the same surface gives 0.7 to 1.3 of it.
 * @source  Shigley, Mechanical Engineering Design, 9th ed., table 8-15.
 *
 * @param[in] finish       A number of enum vane_thread_finish [1; 1 <= x <= 6].
 * @param[out] nut_factor  Lumped factor K [1; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_finish_factor(int32_t finish, double *nut_factor, vane_error *error);

/**
 * Where the torque of vane_thread_torque() goes.
 *
 *     T = F P / (2 pi) + F mu_t d2 / (2 cos 30 deg) + F mu_b D_b / 2
 *
 * @valid   As vane_thread_torque().
 * @source  Motosh, J. Eng. Ind. 98 (1976); ISO 16047:2005. From memory.
 *
 * @param[in] preload           Tension of the bolt [N; > 0].
 * @param[in] pitch             Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; >= 0].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; >= 0].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] out              The parts.
 * @param[out] error            What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_torque_parts(double preload, double pitch, double pitch_diameter,
					  double thread_friction, double bearing_friction,
					  double bearing_diameter, vane_thread_parts *out,
					  vane_error *error);

/**
 * How much longer a bar gets under an even stress.
 *
 *     x = sigma L / E
 *
 * @valid   Elastic.
 * @source  Definition of the modulus.
 *
 * @param[in] stress   Tensile stress [Pa; >= 0].
 * @param[in] length   Length under the stress [m; > 0].
 * @param[in] modulus  Modulus of elasticity [Pa; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Stretch [m].
 */
VANE_API double vane_thread_stretch(double stress, double length, double modulus,
				    vane_error *error);

/**
 * Turn of the nut from snug that stretches bolt and parts together by a length.
 *
 *     theta = 2 pi x / P
 *
 * @valid   Parts in contact when the turning begins.
 * @source  Definition.
 *
 * @param[in] stretch  Stretch of the bolt and squeeze of the parts together [m; >= 0].
 * @param[in] pitch    Axial distance from thread to thread [m; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Turn [rad].
 */
VANE_API double vane_thread_turn_angle(double stretch, double pitch, vane_error *error);

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
 * Preload at which tension and torsion while tightening use a given part of the yield strength.
 *
 *     F = pi d0^2 / 4 nu Rp / (sigma_v / sigma)
 *     sigma_v / sigma = sqrt(1 + 3 (3/2 d2/d0 (tan phi + f) / (1 - f tan phi))^2)
 *
 * @valid   Torsion fully plastic across the section (section modulus pi d0^3/12), solid shank no
 *          thinner than d0. Within 8 ulp: a dozen roundings follow each other.
 * @source  VDI 2230 part 1:2015, 5.4.3 and table A1. From memory.
 *
 * @param[in] utilization      Fraction of the yield strength to use, customarily 0.9
 *                             [1; 0 < x <= 1].
 * @param[in] yield_stress     Yield strength or 0.2 % proof strength [Pa; > 0].
 * @param[in] pitch            Axial distance from thread to thread
 *                             [m; 0 < x <= 0.5 pitch_diameter].
 * @param[in] pitch_diameter   Pitch diameter of the thread [m; >= stress_diameter].
 * @param[in] stress_diameter  Diameter of the bar that breaks at the same load [m; > 0].
 * @param[in] thread_friction  Coefficient of friction in the thread [1; 0 <= x <= 1].
 * @param[out] error           What went wrong, or NULL.
 * @return    Preload [N].
 */
VANE_API double vane_thread_preload_utilization(double utilization, double yield_stress,
						double pitch, double pitch_diameter,
						double stress_diameter, double thread_friction,
						vane_error *error);

/**
 * Part of the yield strength that tension and torsion use while tightening.
 *
 *     nu = F (sigma_v / sigma) / (pi d0^2 / 4 Rp)
 *     sigma_v / sigma = sqrt(1 + 3 (3/2 d2/d0 (tan phi + f) / (1 - f tan phi))^2)
 *
 * @valid   As vane_thread_preload_utilization(); above 1 the bolt yields. Within 8 ulp.
 * @source  VDI 2230 part 1:2015, 5.4.3. From memory.
 *
 * @param[in] preload          Tension of the bolt [N; >= 0].
 * @param[in] yield_stress     Yield strength or 0.2 % proof strength [Pa; > 0].
 * @param[in] pitch            Axial distance from thread to thread
 *                             [m; 0 < x <= 0.5 pitch_diameter].
 * @param[in] pitch_diameter   Pitch diameter of the thread [m; >= stress_diameter].
 * @param[in] stress_diameter  Diameter of the bar that breaks at the same load [m; > 0].
 * @param[in] thread_friction  Coefficient of friction in the thread [1; 0 <= x <= 1].
 * @param[out] error           What went wrong, or NULL.
 * @return    Utilization [1].
 */
VANE_API double vane_thread_utilization(double preload, double yield_stress, double pitch,
					double pitch_diameter, double stress_diameter,
					double thread_friction, vane_error *error);

/**
 * Least preload, at low torque and high friction.
 *
 *     F = T (1 - s) / (P / (2 pi) + (1 + f) (mu_t d2 / (2 cos 30 deg) + mu_b D_b / 2))
 *
 * @valid   As vane_thread_torque(); both ends met at once.
 * @source  Motosh, J. Eng. Ind. 98 (1976), at the ends of the scatter.
 *
 * @param[in] torque            Tightening torque [N.m; >= 0].
 * @param[in] torque_scatter    Torque is off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[in] friction_scatter  Frictions are off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[in] pitch             Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; >= 0].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; >= 0].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Least preload [N].
 */
VANE_API double vane_thread_preload_low(double torque, double torque_scatter,
					double friction_scatter, double pitch,
					double pitch_diameter, double thread_friction,
					double bearing_friction, double bearing_diameter,
					vane_error *error);

/**
 * Greatest preload, at high torque and low friction.
 *
 *     F = T (1 + s) / (P / (2 pi) + (1 - f) (mu_t d2 / (2 cos 30 deg) + mu_b D_b / 2))
 *
 * @valid   As vane_thread_torque(); both ends met at once.
 * @source  Motosh, J. Eng. Ind. 98 (1976), at the ends of the scatter.
 *
 * @param[in] torque            Tightening torque [N.m; >= 0].
 * @param[in] torque_scatter    Torque is off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[in] friction_scatter  Frictions are off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[in] pitch             Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter    Pitch diameter of the thread [m; > 0].
 * @param[in] thread_friction   Coefficient of friction in the thread [1; >= 0].
 * @param[in] bearing_friction  Coefficient of friction under the turning face [1; >= 0].
 * @param[in] bearing_diameter  Mean diameter of the turning face [m; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Greatest preload [N].
 */
VANE_API double vane_thread_preload_high(double torque, double torque_scatter,
					 double friction_scatter, double pitch,
					 double pitch_diameter, double thread_friction,
					 double bearing_friction, double bearing_diameter,
					 vane_error *error);

/**
 * Scatter of the preload when torque and friction are off by chance, not both the worst way.
 *
 *     sF = sqrt(s^2 + (w f)^2),   w = 1 - efficiency
 *
 * @valid   Small scatters, independent of each other; thread and bearing friction off together.
 * @source  JCGM 100:2008 (GUM), eq. (10), applied to vane_thread_preload().
 *
 * @param[in] torque_scatter    Torque is off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[in] friction_scatter  Frictions are off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[in] efficiency        The pitch's part of the torque [1; 0 <= x <= 1].
 * @param[out] error            What went wrong, or NULL.
 * @return    Relative scatter of the preload [1].
 */
VANE_API double vane_thread_scatter(double torque_scatter, double friction_scatter,
				    double efficiency, vane_error *error);

/**
 * Ratio of the greatest to the least preload.
 *
 *     alpha = (1 + s) / (1 - s)
 *
 * @valid   Scatter even to both sides.
 * @source  VDI 2230 part 1:2015, table A8. From memory.
 *
 * @param[in] scatter  Preload is off by up to this fraction [1; 0 <= x <= 0.99].
 * @param[out] error   What went wrong, or NULL.
 * @return    Tightening factor [1].
 */
VANE_API double vane_thread_tightening_factor(double scatter, vane_error *error);

/**
 * Scatter of the preload that a tightening factor stands for.
 *
 *     s = (alpha - 1) / (alpha + 1)
 *
 * @valid   Scatter even to both sides.
 * @source  VDI 2230 part 1:2015, table A8. From memory.
 *
 * @param[in] tightening_factor  Ratio of the greatest to the least preload [1; >= 1].
 * @param[out] error             What went wrong, or NULL.
 * @return    Scatter to either side [1].
 */
VANE_API double vane_thread_factor_scatter(double tightening_factor, vane_error *error);

/**
 * Usual spread of the preload for a way of tightening.
 *
 * @valid   Calibrated tool, practised hand; what friction does to a preload is in it.
 * @source  VDI 2230 part 1:2003, table A8; for an estimated friction the edition of 1986, which
 *          the later ones widen to 2.5. From memory.
 *
 * @param[in] tightening  A number of enum vane_thread_tightening [1; 1 <= x <= 6].
 * @param[out] out        The spread.
 * @param[out] error      What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_tightening_accuracy(int32_t tightening, vane_thread_accuracy *out,
						 vane_error *error);

/**
 * Spread of measured preloads.
 *
 *     alpha = max F / min F
 *
 * @valid   The factor grows with the number of readings.
 * @source  Mean and standard deviation by definition; VDI 2230 part 1:2015, alpha_A. From memory.
 *
 * @param[in] preload   Preloads of bolts tightened alike [N; > 0; length readings].
 * @param[in] readings  Number of bolts [1; 2 <= x <= 100000].
 * @param[out] out      The spread.
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_preload_sample(const double *preload, int64_t readings,
					    vane_thread_sample *out, vane_error *error);

/**
 * Area that shears when the bolt's thread strips.
 *
 *     A = pi L D1 / P (P / 2 + (d2 - D1) / sqrt(3))
 *
 * @valid   60 degree thread, load even along it. Basic diameters give the area without
 *          tolerances.
 * @source  FED-STD-H28/2B; ASME B1.1, appendix B. From memory.
 *
 * @param[in] length          Length of engaged thread [m; > 0].
 * @param[in] pitch           Axial distance from thread to thread [m; > 0].
 * @param[in] minor_diameter  Greatest minor diameter of the internal thread [m; > 0].
 * @param[in] pitch_diameter  Least pitch diameter of the external thread [m; >= minor_diameter].
 * @param[out] error          What went wrong, or NULL.
 * @return    Shear area [m2].
 */
VANE_API double vane_thread_shear_area_external(double length, double pitch, double minor_diameter,
						double pitch_diameter, vane_error *error);

/**
 * Area that shears when the thread of the nut or hole strips.
 *
 *     A = pi L d / P (P / 2 + (d - D2) / sqrt(3))
 *
 * @valid   60 degree thread, load even along it. Basic diameters give the area without
 *          tolerances.
 * @source  FED-STD-H28/2B; ASME B1.1, appendix B. From memory.
 *
 * @param[in] length          Length of engaged thread [m; > 0].
 * @param[in] pitch           Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter  Greatest pitch diameter of the internal thread [m; > 0].
 * @param[in] diameter        Least major diameter of the external thread [m; >= pitch_diameter].
 * @param[out] error          What went wrong, or NULL.
 * @return    Shear area [m2].
 */
VANE_API double vane_thread_shear_area_internal(double length, double pitch, double pitch_diameter,
						double diameter, vane_error *error);

/**
 * Force that strips a thread.
 *
 *     F = A tau
 *
 * @valid   Shear strength is customarily 0.58 to 0.7 of the tensile strength of steel.
 * @source  Definition.
 *
 * @param[in] shear_area      Shear area of the thread [m2; > 0].
 * @param[in] shear_strength  Shear strength of the thread that strips [Pa; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Stripping force [N].
 */
VANE_API double vane_thread_strip_force(double shear_area, double shear_strength,
					vane_error *error);

/**
 * Length of engagement at which the bolt's thread just carries a force.
 *
 *     L = F P / (tau pi D1 (P / 2 + (d2 - D1) / sqrt(3)))
 *
 * @valid   As vane_thread_shear_area_external(); add a pitch for the chamfered ends.
 * @source  FED-STD-H28/2B; ASME B1.1, appendix B. From memory.
 *
 * @param[in] force           Force to carry, customarily what breaks the bolt [N; >= 0].
 * @param[in] shear_strength  Shear strength of the thread that strips [Pa; > 0].
 * @param[in] pitch           Axial distance from thread to thread [m; > 0].
 * @param[in] minor_diameter  Greatest minor diameter of the internal thread [m; > 0].
 * @param[in] pitch_diameter  Least pitch diameter of the external thread [m; >= minor_diameter].
 * @param[out] error          What went wrong, or NULL.
 * @return    Length of engagement [m].
 */
VANE_API double vane_thread_engagement_external(double force, double shear_strength, double pitch,
						double minor_diameter, double pitch_diameter,
						vane_error *error);

/**
 * Length of engagement at which the thread of the nut or hole just carries a force.
 *
 *     L = F P / (tau pi d (P / 2 + (d - D2) / sqrt(3)))
 *
 * @valid   As vane_thread_shear_area_internal(); add a pitch for the chamfered ends.
 * @source  FED-STD-H28/2B; ASME B1.1, appendix B. From memory.
 *
 * @param[in] force           Force to carry, customarily what breaks the bolt [N; >= 0].
 * @param[in] shear_strength  Shear strength of the thread that strips [Pa; > 0].
 * @param[in] pitch           Axial distance from thread to thread [m; > 0].
 * @param[in] pitch_diameter  Greatest pitch diameter of the internal thread [m; > 0].
 * @param[in] diameter        Least major diameter of the external thread [m; >= pitch_diameter].
 * @param[out] error          What went wrong, or NULL.
 * @return    Length of engagement [m].
 */
VANE_API double vane_thread_engagement_internal(double force, double shear_strength, double pitch,
						double pitch_diameter, double diameter,
						vane_error *error);

/**
 * Part of the stripping strength left as the nut widens, C1.
 *
 *     C1 = 3.8 s/d - (s/d)^2 - 2.61   up to s/d = 1.9
 *     C1 = 1                           above
 *
 * @valid   Steel hexagon nuts, s/d 1.4 or more.
 * @source  Alexander, SAE paper 770420 (1977); VDI 2230 part 1:2015. From memory.
 *
 * @param[in] width     Width across flats s, or outer diameter around the hole
 *                      [m; > 1.375 diameter].
 * @param[in] diameter  Nominal diameter [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Factor C1 [1].
 */
VANE_API double vane_thread_nut_dilation(double width, double diameter, vane_error *error);

/**
 * Part of the stripping strength left to the bolt's thread as its flanks bend, C2.
 *
 *     C2 = 5.594 - 13.682 R + 14.107 R^2 - 6.057 R^3 + 0.9353 R^4   from 1 to 2.2
 *     C2 = 0.897                                                     below 1
 *
 * @valid   As printed the two pieces meet at R = 1 to 0.0003.
 * @source  Alexander, SAE paper 770420 (1977); VDI 2230 part 1:2015. From memory.
 *
 * @param[in] strength_ratio  Stripping force of the internal thread over that of the external,
 *                            both without factors [1; 0 < x <= 2.2].
 * @param[out] error          What went wrong, or NULL.
 * @return    Factor C2 [1].
 */
VANE_API double vane_thread_bolt_bending(double strength_ratio, vane_error *error);

/**
 * Part of the stripping strength left to the thread of the nut or hole as its flanks bend, C3.
 *
 *     C3 = 0.728 + 1.769 R - 2.896 R^2 + 1.296 R^3   from 0.4 to 1
 *     C3 = 0.897                                      above 1
 *
 * @valid   As printed the two pieces meet at R = 1.
 * @source  Alexander, SAE paper 770420 (1977); VDI 2230 part 1:2015. From memory.
 *
 * @param[in] strength_ratio  Stripping force of the internal thread over that of the external,
 *                            both without factors [1; >= 0.4].
 * @param[out] error          What went wrong, or NULL.
 * @return    Factor C3 [1].
 */
VANE_API double vane_thread_nut_bending(double strength_ratio, vane_error *error);

/**
 * Minimum strengths of a bolt of a known class and diameter.
 *
 * @valid   Each grade only for the diameters its enumerator names, others give
 *          VANE_NO_SOLUTION. Class 8.8 changes above 16 mm; SAE grade 2 above 3/4 in; grade 5,
 *          A325 and A449 above 1 in, A449 again above 1-1/2 in; A574 above 1/2 in.
 * @constant The table's diameters [m].
 * @constant The table's strengths [Pa].
 * @source  ISO 898-1:2013, tables 3 and 4, from memory; SAE J429 and ASTM as Shigley and
 *          Mischke, Mechanical Engineering Design, 5th ed., p. 341; ASTM A574 from memory;
 *          endurance: Shigley, 9th ed., table 8-17, from memory.
 *
 * @param[in] grade     A number of enum vane_thread_grade [1; 1 <= x <= 25].
 * @param[in] diameter  Nominal diameter [m; 0.0016 <= x <= 0.0762].
 * @param[out] out      The strengths.
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_thread_strength(int32_t grade, double diameter, vane_thread_class *out,
				      vane_error *error);

/**
 * Stress amplitude that a bolt bears for ever, thread rolled before heat treatment.
 *
 *     sigma = 0.85 (150 mm / d + 45) MPa
 *
 * @valid   Classes 8.8 to 12.9, 2 000 000 cycles and more, on the stress area; preload from 0.2
 *          to 0.8 of the yield load.
 * @constant Diameter of 150 mm [m].
 * @constant Strength of 45 MPa, and 1 MPa [Pa].
 * @source  VDI 2230 part 1:2003, eq. (5.5/20), sigma_ASV. From memory.
 *
 * @param[in] diameter  Nominal diameter [m; 0.004 <= x <= 0.04].
 * @param[out] error    What went wrong, or NULL.
 * @return    Stress amplitude [Pa].
 */
VANE_API double vane_thread_endurance_rolled(double diameter, vane_error *error);

/**
 * Stress amplitude that a bolt bears for ever, thread rolled after heat treatment.
 *
 *     sigma = (2 - F / F02) 0.85 (150 mm / d + 45) MPa
 *
 * @valid   As vane_thread_endurance_rolled().
 * @constant Diameter of 150 mm [m].
 * @constant Strength of 45 MPa, and 1 MPa [Pa].
 * @source  VDI 2230 part 1:2003, eq. (5.5/21), sigma_ASG. From memory.
 *
 * @param[in] diameter          Nominal diameter [m; 0.004 <= x <= 0.04].
 * @param[in] preload_fraction  Mean tension over the load that yields the bolt [1; 0 <= x <= 1].
 * @param[out] error            What went wrong, or NULL.
 * @return    Stress amplitude [Pa].
 */
VANE_API double vane_thread_endurance_rolled_after(double diameter, double preload_fraction,
						   vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
