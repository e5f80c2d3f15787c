/**
 * @file seal.h
 * O-rings: sizes, the ring behind a measurement, and how it lies in its gland.
 *
 * A seal that leaves its gland under pressure lets oil out at a speed that cuts skin. These are
 * textbook numbers; local codes, the parts' own documentation and licensed practice come before
 * them.
 */
#ifndef VANE_SEAL_H
#define VANE_SEAL_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Class of tolerances of an O-ring. The numbers are never changed or used again. */
enum vane_seal_class {
	VANE_SEAL_CLASS_A = 1, /**< The tolerances of AS568, class A of ISO 3601-1. */
	VANE_SEAL_CLASS_B = 2  /**< Class B of ISO 3601-1, general industry. */
};

/** What a gland is for. The numbers are never changed or used again. */
enum vane_seal_use {
	VANE_SEAL_STATIC_RADIAL = 1, /**< Squeezed between two cylinders that do not move. */
	VANE_SEAL_STATIC_FACE = 2,   /**< Squeezed between two flat faces. */
	VANE_SEAL_DYNAMIC = 3        /**< On a rod or piston that moves to and fro. */
};

/** One standard O-ring. */
typedef struct vane_seal_size {
	double inner_diameter;    /**< Inside diameter of the free ring [m; > 0]. */
	double section;           /**< Diameter of its section [m; > 0]. */
	double outer_diameter;    /**< Outside diameter of the free ring [m; > 0]. */
	double inner_tolerance;   /**< Inside diameter, to either side [m; > 0]. */
	double section_tolerance; /**< Section, to either side [m; > 0]. */
	int32_t dash;             /**< Dash number, 214 for -214 [1; 1 <= x <= 932]. */
	int32_t tolerances;       /**< Class, enum vane_seal_class [1; 1 <= x <= 2]. */
} vane_seal_size;

/** A standard O-ring that a measured one may be. */
typedef struct vane_seal_candidate {
	vane_seal_size size;   /**< The standard ring. */
	double diameter_error; /**< Measured inside diameter less the standard one [m; any]. */
	double section_error;  /**< Measured section less the standard one [m; any]. */
	double distance;       /**< How far off, both together, in standard deviations [1; >= 0]. */
	double probability;    /**< Share among all standard rings, each as likely as the next before
	                         the measurement [1; 0 <= x <= 1]. */
} vane_seal_candidate;

/** What glands are usually made for. */
typedef struct vane_seal_guide {
	double squeeze_low;  /**< Least usual squeeze [1; 0 <= x <= 1]. */
	double squeeze_high; /**< Greatest usual squeeze [1; 0 <= x <= 1]. */
	double fill_usual;   /**< Usual fill of the gland [1; 0 <= x <= 1]. */
	double fill_high;    /**< Greatest usual fill, oil-swollen and hot [1; 0 <= x <= 1]. */
	double stretch_low;  /**< Least usual stretch of the inside diameter [1; 0 <= x <= 1]. */
	double stretch_high; /**< Greatest usual stretch of the inside diameter [1; 0 <= x <= 1]. */
} vane_seal_guide;

/** Whether a gap keeps an O-ring in its gland. */
typedef struct vane_seal_extrusion {
	double limit;     /**< Widest usual radial gap; 0 if none is without a back-up ring [m; >= 0]. */
	double margin;    /**< Limit less gap [m; any]. */
	int32_t back_up;  /**< 1 if a back-up ring is called for, 0 if not [1; 0 <= x <= 1]. */
	int32_t reserved; /**< Always 0 [1; 0]. */
} vane_seal_extrusion;

/**
 * Standard O-ring of a dash number.
 *
 * The table holds -001 to -050, -102 to -178, -201 to -284, -309 to -395, -425 to -475, and -901
 * to -932 for the bosses of straight-thread fittings. A number that is not in the series has no
 * solution.
 *
 * @valid   New rings as moulded, at 20 degC.
 * @constant The table's dimensions [m].
 * @source  SAE AS568 (ISO 3601-1, inch sizes), from memory; tolerances of class B by
 *          vane_seal_diameter_tolerance() and vane_seal_section_tolerance().
 *
 * @param[in] dash        Dash number, 214 for -214 [1; 1 <= x <= 932].
 * @param[in] tolerances  A number of enum vane_seal_class [1; 1 <= x <= 2].
 * @param[out] out        The ring.
 * @param[out] error      What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_seal_find(int32_t dash, int32_t tolerances, vane_seal_size *out,
				vane_error *error);

/**
 * Standard O-rings that a measured one may be, best first.
 *
 *     z_d = (d - d_i)/sqrt(u_d^2 + T_d^2/3),  z_w likewise,  distance = sqrt(z_d^2 + z_w^2)
 *     p_i = q_i/sum(q),  q_i = exp(-distance^2/2)/(s_d s_w)
 *
 * T is a ring's tolerance, taken as rectangular; s the root below each z. The list always has
 * the length asked for, so it shows the near misses too: look at their distances.
 * `matches` counts the rings of the whole table that lie within the coverage.
 *
 * @valid   One of the standard rings, not swollen, shrunk, stretched or set; a worn ring needs an
 *          uncertainty that covers what it may have changed by. If no distance is small, the
 *          ring is none of these sizes, whatever the probabilities say.
 * @constant The table's dimensions [m].
 * @source  JCGM 100:2008 (GUM), 4.3.7 (rectangular tolerance); Bayes' theorem with equal priors;
 *          sizes as vane_seal_find().
 *
 * @param[in] inner_diameter        Measured inside diameter [m; 0 < x <= 10].
 * @param[in] section               Measured diameter of the section [m; 0 < x <= 1].
 * @param[in] diameter_uncertainty  Standard uncertainty of the inside diameter [m; >= 0].
 * @param[in] section_uncertainty   Standard uncertainty of the section [m; >= 0].
 * @param[in] tolerances            A number of enum vane_seal_class [1; 1 <= x <= 2].
 * @param[in] coverage              Greatest distance of a match [1; >= 0].
 * @param[out] candidate            The rings, best first [length candidates].
 * @param[in] candidates            How many to list [1; 1 <= x <= 369].
 * @param[out] matches              Rings within the coverage [1; >= 0].
 * @param[out] error                What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_seal_identify(double inner_diameter, double section,
				    double diameter_uncertainty, double section_uncertainty,
				    int32_t tolerances, double coverage,
				    vane_seal_candidate *candidate, int64_t candidates,
				    int64_t *matches, vane_error *error);

/**
 * Tolerance of the inside diameter, class B.
 *
 *     T = 0.009 mm (d/mm)^0.95 + 0.11 mm
 *
 * @valid   Rings for general industry; the standard rounds to 0.01 mm.
 * @constant 1 mm, 0.009 mm and 0.11 mm of the law [m].
 * @source  ISO 3601-1:2012, class B, from memory.
 *
 * @param[in] inner_diameter  Inside diameter of the ring [m; > 0].
 * @param[out] error          What went wrong, or NULL.
 * @return    Tolerance to either side [m].
 */
VANE_API double vane_seal_diameter_tolerance(double inner_diameter, vane_error *error);

/**
 * Tolerance of the section, class B.
 *
 *     to 2.25 mm: 0.08 mm, 3.15: 0.09, 4.5: 0.10, 6.3: 0.13, 8.4: 0.15
 *
 * @valid   Rings for general industry.
 * @constant The limits and tolerances of the table [m].
 * @source  ISO 3601-1:2012, class B, from memory.
 *
 * @param[in] section  Diameter of the section [m; 0.0008 <= x <= 0.0084].
 * @param[out] error   What went wrong, or NULL.
 * @return    Tolerance to either side [m].
 */
VANE_API double vane_seal_section_tolerance(double section, vane_error *error);

/**
 * Usual squeeze, fill and stretch of a gland.
 *
 * Squeeze 10 % to 30 % between cylinders at rest, 15 % to 35 % between faces, 8 % to 20 % in
 * motion; fill 75 %, at most 85 %; stretch 1 % to 5 %.
 *
 * @valid   Solid rings of rubber, before their own and the gland's tolerances.
 * @source  ISO 3601-2 and handbooks, from memory.
 *
 * @param[in] use     A number of enum vane_seal_use [1; 1 <= x <= 3].
 * @param[out] out    What is usual.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_seal_usual(int32_t use, vane_seal_guide *out, vane_error *error);

/**
 * Stretch of an O-ring's inside diameter over a groove.
 *
 *     s = (D_g - d)/d
 *
 * @valid   Negative where the ring lies loose.
 * @source  Definition.
 *
 * @param[in] inner_diameter   Inside diameter of the free ring [m; > 0].
 * @param[in] groove_diameter  Diameter that the inside of the ring takes up [m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Fraction of the inside diameter [1].
 */
VANE_API double vane_seal_stretch(double inner_diameter, double groove_diameter,
				  vane_error *error);

/**
 * Section of an O-ring that is stretched over a groove.
 *
 *     w'^2 (D_g + w') = w^2 (d + w)
 *
 * The volume of the rubber stays the same. For thin rings w' = w sqrt(d/D_g).
 *
 * @valid   The section stays round; it flattens a little, and looks thinner by that.
 * @source  Derived on the page of this topic; volume of a torus by Pappus's theorem.
 *
 * @param[in] inner_diameter   Inside diameter of the free ring [m; > 0].
 * @param[in] section          Diameter of its section [m; > 0].
 * @param[in] groove_diameter  Diameter that the inside of the ring takes up [m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Diameter of the section when stretched [m].
 */
VANE_API double vane_seal_stretched_section(double inner_diameter, double section,
					    double groove_diameter, vane_error *error);

/**
 * Squeeze of an O-ring in its gland.
 *
 *     c = (w - h)/w
 *
 * @valid   Negative where the gland is deeper than the section: no contact.
 * @source  Definition.
 *
 * @param[in] section      Diameter of the section as it lies in the gland [m; > 0].
 * @param[in] gland_depth  Bottom of the groove to the opposite wall, gap included [m; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Fraction of the section [1].
 */
VANE_API double vane_seal_squeeze(double section, double gland_depth, vane_error *error);

/**
 * Squeeze of an O-ring that is stretched over its groove as well.
 *
 *     c = (w' - h)/w',  w' of vane_seal_stretched_section()
 *
 * @valid   As both. Where the squeeze is nearly zero, the rounding of w' shows in it.
 * @source  Derived on the page of this topic.
 *
 * @param[in] inner_diameter   Inside diameter of the free ring [m; > 0].
 * @param[in] section          Diameter of its section [m; > 0].
 * @param[in] groove_diameter  Diameter that the inside of the ring takes up [m; > 0].
 * @param[in] gland_depth      Bottom of the groove to the opposite wall, gap included [m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Fraction of the stretched section [1].
 */
VANE_API double vane_seal_squeeze_stretched(double inner_diameter, double section,
					    double groove_diameter, double gland_depth,
					    vane_error *error);

/**
 * Depth of gland that gives a squeeze.
 *
 *     h = w (1 - c)
 *
 * @valid   Gap included: the groove itself is shallower by the radial gap.
 * @source  Definition.
 *
 * @param[in] section  Diameter of the section as it lies in the gland [m; > 0].
 * @param[in] squeeze  Fraction of the section [1; 0 <= x < 1].
 * @param[out] error   What went wrong, or NULL.
 * @return    Bottom of the groove to the opposite wall [m].
 */
VANE_API double vane_seal_gland_depth(double section, double squeeze, vane_error *error);

/**
 * Diameter of a groove in a piston, for a squeeze in its bore.
 *
 *     D_g = D - 2 w (1 - c)
 *
 * @valid   Piston in the middle of the bore; stretch of the ring not counted.
 * @source  Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 11.1.
 *
 * @param[in] bore_diameter  Diameter of the bore [m; > 2 section].
 * @param[in] section        Diameter of the section [m; > 0].
 * @param[in] squeeze        Fraction of the section [1; 0 <= x < 1].
 * @param[out] error         What went wrong, or NULL.
 * @return    Diameter of the groove's bottom [m].
 */
VANE_API double vane_seal_piston_groove(double bore_diameter, double section, double squeeze,
					vane_error *error);

/**
 * Diameter of a groove in a bore, for a squeeze on its rod.
 *
 *     D_g = d + 2 w (1 - c)
 *
 * @valid   Rod in the middle of the bore; stretch of the ring not counted.
 * @source  Definition, as vane_seal_piston_groove().
 *
 * @param[in] rod_diameter  Diameter of the rod [m; > 0].
 * @param[in] section       Diameter of the section [m; > 0].
 * @param[in] squeeze       Fraction of the section [1; 0 <= x < 1].
 * @param[out] error        What went wrong, or NULL.
 * @return    Diameter of the groove's bottom [m].
 */
VANE_API double vane_seal_rod_groove(double rod_diameter, double section, double squeeze,
				     vane_error *error);

/**
 * Width of groove by a rule of thumb.
 *
 *     b = 1.4 w
 *
 * @valid   Without a back-up ring.
 * @source  Sullivan, Fluid Power: Theory and Applications, 4th ed., Example 11.1.
 *
 * @param[in] section  Diameter of the section [m; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Width of the groove [m].
 */
VANE_API double vane_seal_groove_width_rule(double section, vane_error *error);

/**
 * Width of groove that an O-ring fills to a fraction.
 *
 *     b = pi w^2/(4 h f)
 *
 * @valid   Rectangular gland.
 * @source  Definition.
 *
 * @param[in] section      Diameter of the section as it lies in the gland [m; > 0].
 * @param[in] gland_depth  Bottom of the groove to the opposite wall, gap included [m; > 0].
 * @param[in] fill         Area of the section over area of the gland [1; 0 < x <= 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Width of the groove [m].
 */
VANE_API double vane_seal_groove_width(double section, double gland_depth, double fill,
				       vane_error *error);

/**
 * Fill of a gland.
 *
 *     f = pi w^2/(4 b h)
 *
 * @valid   Rectangular gland. Above 1 the ring does not fit.
 * @source  Definition.
 *
 * @param[in] section       Diameter of the section as it lies in the gland [m; > 0].
 * @param[in] groove_width  Width of the groove [m; > 0].
 * @param[in] gland_depth   Bottom of the groove to the opposite wall, gap included [m; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Area of the section over area of the gland [1].
 */
VANE_API double vane_seal_fill(double section, double groove_width, double gland_depth,
			       vane_error *error);

/**
 * Fill of a gland when the rubber is swollen and all is hot.
 *
 *     f = f0 (1 + q) [(1 + alpha dT)/(1 + alpha_g dT)]^3
 *
 * Rubber grows about ten times as much as steel, so a gland that is full cold bursts or breaks
 * the ring hot. A cooling below which a part would shrink to nothing has no solution.
 *
 * @valid   Free growth in all directions. Within 8 ulp: a cube and six roundings.
 * @source  Definition of the coefficient of linear expansion.
 *
 * @param[in] fill              Fill, dry and cold [1; > 0].
 * @param[in] swell             Growth of the rubber's volume in the oil [1; > -1].
 * @param[in] expansion         Linear expansion coefficient of the rubber [1/K; >= 0].
 * @param[in] gland_expansion   Linear expansion coefficient of the gland [1/K; >= 0].
 * @param[in] temperature_rise  Temperature less that at assembly [K; any].
 * @param[out] error            What went wrong, or NULL.
 * @return    Volume of the rubber over volume of the gland [1].
 */
VANE_API double vane_seal_hot_fill(double fill, double swell, double expansion,
				   double gland_expansion, double temperature_rise,
				   vane_error *error);

/**
 * Section of an O-ring when the rubber is swollen and hot.
 *
 *     w' = w (1 + q)^(1/3) (1 + alpha dT)
 *
 * A cooling below which the rubber would shrink to nothing has no solution.
 *
 * @valid   Free growth in all directions. Within 6 ulp: the root of the mathematics library.
 * @source  Definition of the coefficient of linear expansion.
 *
 * @param[in] section           Diameter of the section, dry and cold [m; > 0].
 * @param[in] swell             Growth of the rubber's volume in the oil [1; > -1].
 * @param[in] expansion         Linear expansion coefficient of the rubber [1/K; >= 0].
 * @param[in] temperature_rise  Temperature less that at assembly [K; any].
 * @param[out] error            What went wrong, or NULL.
 * @return    Diameter of the section [m].
 */
VANE_API double vane_seal_hot_section(double section, double swell, double expansion,
				      double temperature_rise, vane_error *error);

/**
 * Gap between a piston or rod and its bore through which an O-ring may extrude.
 *
 *     g = (D - d)(1 + e)/2 + b
 *
 * e is 0 with the axes in line and 1 where the parts touch on one side, which is what a part
 * without a guide does under pressure.
 *
 * @valid   Widest place of the circumference, parallel axes.
 * @source  Definition.
 *
 * @param[in] bore_diameter    Diameter of the bore [m; >= piston_diameter].
 * @param[in] piston_diameter  Diameter of the piston or rod [m; > 0].
 * @param[in] eccentricity     Offset of the axes over the radial gap [1; 0 <= x <= 1].
 * @param[in] breathing        Growth of the bore's radius under pressure [m; >= 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Radial gap at its widest [m].
 */
VANE_API double vane_seal_gap(double bore_diameter, double piston_diameter, double eccentricity,
			      double breathing, vane_error *error);

/**
 * Gap under a bolted cover through which an O-ring may extrude.
 *
 *     g = g0 + max(0, F - F_s)/k_b
 *
 * As long as the bolts clamp the joint, the faces touch; beyond the load that separates them
 * the bolts alone stretch.
 *
 * @valid   Stiff cover: what it bends is part of g0.
 * @source  Bolt in series with a separated joint, as vane_joint_separation_load().
 *
 * @param[in] initial_gap      Gap while the joint is clamped [m; >= 0].
 * @param[in] load             Force of the pressure on the bolts [N; >= 0].
 * @param[in] separation_load  Force that separates the joint [N; >= 0].
 * @param[in] bolt_stiffness   Stiffness of all bolts together [N/m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Gap [m].
 */
VANE_API double vane_seal_cover_gap(double initial_gap, double load, double separation_load,
				    double bolt_stiffness, vane_error *error);

/**
 * Widest usual radial gap without a back-up ring.
 *
 * A table in steps of pressure (3.5, 7, 10.5, 14, 17.5, 21, 35 MPa), of section (2, 3, 5, 7 mm and
 * above) and of hardness (70 to below 90; 90 and above); the step on the safe side is taken. It
 * ends at 10.5 MPa for the softer and at 35 MPa for the harder rubber; above, the limit is 0.
 *
 * @valid   Nitrile and fluorocarbon rubber, steady pressure, up to 80 degC. Softer rubber, pulsating
 *          pressure and heat call for less.
 * @constant The pressures of the table [Pa].
 * @constant The sections and gaps of the table [m].
 * @source  Common practice, no source; from memory.
 *
 * @param[in] pressure  Greatest pressure [Pa; >= 0].
 * @param[in] section   Diameter of the section [m; > 0].
 * @param[in] hardness  Hardness, Shore A or IRHD [1; 70 <= x <= 95].
 * @param[out] error    What went wrong, or NULL.
 * @return    Radial gap; 0 if a back-up ring is called for at any gap [m].
 */
VANE_API double vane_seal_gap_limit(double pressure, double section, double hardness,
				    vane_error *error);

/**
 * Whether a gap keeps an O-ring in its gland at a pressure.
 *
 * @valid   As vane_seal_gap_limit().
 * @constant The pressures of the table [Pa].
 * @constant The sections and gaps of the table [m].
 * @source  Common practice, no source; from memory.
 *
 * @param[in] gap       Radial gap at its widest, under pressure [m; >= 0].
 * @param[in] pressure  Greatest pressure [Pa; >= 0].
 * @param[in] section   Diameter of the section [m; > 0].
 * @param[in] hardness  Hardness, Shore A or IRHD [1; 70 <= x <= 95].
 * @param[out] out      Limit and margin.
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_seal_extrusion_check(double gap, double pressure, double section,
					   double hardness, vane_seal_extrusion *out,
					   vane_error *error);

/**
 * Young's modulus of rubber from its hardness.
 *
 *     E = 0.0981 (56 + 7.62336 S)/(0.137505 (254 - 2.54 S)) MPa
 *
 * @valid   S from 20 to 80; a first estimate above.
 * @constant 0.0981 MPa over 0.137505 of the law [Pa].
 * @source  Gent, On the relation between indentation hardness and Young's modulus, Rubber Chem.
 *          Technol. 31 (1958); from memory.
 *
 * @param[in] hardness  Hardness, Shore A or IRHD [1; 20 <= x <= 95].
 * @param[out] error    What went wrong, or NULL.
 * @return    Young's modulus [Pa].
 */
VANE_API double vane_seal_modulus(double hardness, vane_error *error);

/**
 * Force that squeezes an O-ring, for each length of its circumference.
 *
 *     F/l = E w (1.25 c^1.5 + 50 c^6)
 *
 * @valid   Solid round section between smooth flat walls, free to spread; slow.
 * @source  Lindley, Compression characteristics of laterally unrestrained rubber O-rings, J. Inst.
 *          Rubber Ind. 1 (1967); from memory.
 *
 * @param[in] section  Diameter of the section [m; > 0].
 * @param[in] squeeze  Fraction of the section [1; 0 <= x <= 0.5].
 * @param[in] modulus  Young's modulus of the rubber [Pa; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Force over length [N/m].
 */
VANE_API double vane_seal_line_force(double section, double squeeze, double modulus,
				     vane_error *error);

/**
 * Width on which a squeezed O-ring touches its wall.
 *
 *     b = sqrt(6 w q/(pi E))
 *
 * @valid   Small squeeze, incompressible rubber, rigid wall.
 * @source  Hertz's line contact: Johnson, Contact Mechanics (1985), eq. (4.43), with Poisson's
 *          ratio 1/2; from memory.
 *
 * @param[in] section     Diameter of the section [m; > 0].
 * @param[in] line_force  Force over length [N/m; >= 0].
 * @param[in] modulus     Young's modulus of the rubber [Pa; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Width [m].
 */
VANE_API double vane_seal_contact_width(double section, double line_force, double modulus,
					vane_error *error);

/**
 * Greatest stress by which a squeezed O-ring seals before the pressure adds its own.
 *
 *     p0 = sqrt(8 q E/(3 pi w))
 *
 * @valid   As vane_seal_contact_width().
 * @source  Hertz's line contact: Johnson, Contact Mechanics (1985), eq. (4.45), with Poisson's
 *          ratio 1/2; from memory.
 *
 * @param[in] section     Diameter of the section [m; > 0].
 * @param[in] line_force  Force over length [N/m; >= 0].
 * @param[in] modulus     Young's modulus of the rubber [Pa; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Greatest contact stress [Pa].
 */
VANE_API double vane_seal_contact_stress(double section, double line_force, double modulus,
					 vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
