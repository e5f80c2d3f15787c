/**
 * @file contact.h
 * Two curved bodies pressed together: where they touch, and the stress there.
 */
#ifndef VANE_CONTACT_H
#define VANE_CONTACT_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Relative principal curvatures of two bodies where they touch. */
typedef struct vane_contact_shape {
	double curvature_low;  /**< Lesser relative curvature [1/m; > 0]. */
	double curvature_high; /**< Greater relative curvature [1/m; >= curvature_low]. */
} vane_contact_shape;

/** A contact on an ellipse. */
typedef struct vane_contact_ellipse {
	double semi_major;   /**< Longer semi-axis, along the lesser curvature [m; >= 0]. */
	double semi_minor;   /**< Shorter semi-axis [m; >= 0]. */
	double pressure;     /**< Greatest pressure, in the middle [Pa; >= 0]. */
	double approach;     /**< Movement of distant points towards each other [m; >= 0]. */
	double shear;        /**< Greatest shear stress below the middle [Pa; >= 0]. */
	double shear_depth;  /**< Depth of that stress [m; >= 0]. */
	double stress_major; /**< Stress along the longer axis in the middle of the surface, tension
				  positive [Pa; <= 0]. */
	double stress_minor; /**< Stress along the shorter axis there [Pa; <= 0]. */
} vane_contact_ellipse;

/** Principal stresses below the middle of a contact, tension positive. */
typedef struct vane_contact_stress {
	double major;  /**< Along the longer axis [Pa; any]. */
	double minor;  /**< Along the shorter axis [Pa; any]. */
	double normal; /**< Along the normal [Pa; <= 0]. */
	double shear;  /**< Half the difference of greatest and least [Pa; >= 0]. */
} vane_contact_stress;

/**
 * Elastic modulus of two bodies in contact.
 *
 *     1/E' = (1 - nu_1^2)/E_1 + (1 - nu_2^2)/E_2
 *
 * @valid   Elastic, isotropic bodies.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.2) (number from memory).
 *
 * @param[in]  modulus_1  Modulus of elasticity of one body [Pa; > 0].
 * @param[in]  poisson_1  Poisson's ratio of one body [1; 0 <= x <= 0.5].
 * @param[in]  modulus_2  Modulus of elasticity of the other [Pa; > 0].
 * @param[in]  poisson_2  Poisson's ratio of the other [1; 0 <= x <= 0.5].
 * @param[out] error      What went wrong, or NULL.
 * @return    Contact modulus [Pa].
 */
VANE_API double vane_contact_modulus(double modulus_1, double poisson_1, double modulus_2,
				     double poisson_2, vane_error *error);

/**
 * Relative curvature of two convex bodies.
 *
 *     k = 1/r_1 + 1/r_2
 *
 * The relative radius is 1/k; against a flat the curvature is 1/r.
 *
 * @valid   Curvature small over the contact.
 * @source  Definition.
 *
 * @param[in]  radius_1  Radius of one body [m; > 0].
 * @param[in]  radius_2  Radius of the other [m; > 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Relative curvature [1/m].
 */
VANE_API double vane_contact_curvature(double radius_1, double radius_2, vane_error *error);

/**
 * Relative curvature of a convex body in a hollow.
 *
 *     k = (r_h - r)/(r_h r)
 *
 * @valid   Contact small against the difference of the radii.
 * @source  Definition.
 *
 * @param[in]  radius         Radius of the body inside [m; > 0].
 * @param[in]  hollow_radius  Radius of the hollow [m; > radius].
 * @param[out] error          What went wrong, or NULL.
 * @return    Relative curvature [1/m].
 */
VANE_API double vane_contact_curvature_hollow(double radius, double hollow_radius,
					      vane_error *error);

/**
 * Half-width of a line contact.
 *
 *     a = sqrt(4 w/(pi k E'))
 *
 * @valid   Smooth elastic half-spaces, strip narrow against the radii, plane strain, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.43) (number from memory).
 *
 * @param[in]  line_load        Force by length of the line [N/m; >= 0].
 * @param[in]  curvature        Relative curvature, see vane_contact_curvature() [1/m; > 0].
 * @param[in]  contact_modulus  See vane_contact_modulus() [Pa; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Half the width of the strip [m].
 */
VANE_API double vane_contact_line_half_width(double line_load, double curvature,
					     double contact_modulus, vane_error *error);

/**
 * Greatest pressure of a line contact.
 *
 *     p = sqrt(w k E'/pi)
 *
 * @valid   Smooth elastic half-spaces, strip narrow against the radii, plane strain, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.45) (number from memory).
 *
 * @param[in]  line_load        Force by length of the line [N/m; >= 0].
 * @param[in]  curvature        Relative curvature, see vane_contact_curvature() [1/m; > 0].
 * @param[in]  contact_modulus  See vane_contact_modulus() [Pa; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Greatest pressure [Pa].
 */
VANE_API double vane_contact_line_pressure(double line_load, double curvature,
					   double contact_modulus, vane_error *error);

/**
 * Shear stress below the middle of a line contact.
 *
 *     t = p z (1 - z/sqrt(a^2 + z^2))/a
 *
 * @valid   Smooth elastic half-spaces, strip narrow against the radii, plane strain, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.46) (number from memory).
 *
 * @param[in]  pressure    Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  half_width  Half the width of the strip [m; > 0].
 * @param[in]  depth       Depth below the middle of the contact [m; >= 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Greatest shear stress in the plane of the section [Pa].
 */
VANE_API double vane_contact_line_shear(double pressure, double half_width, double depth,
					vane_error *error);

/**
 * Greatest shear stress below a line contact.
 *
 *     t = g^(5/2) p = 0.3002831 p    g = (sqrt(5) - 1)/2
 *
 * @valid   Smooth elastic half-spaces, strip narrow against the radii, plane strain, no friction;
 *          Poisson's ratio at least 0.25, for below that the stress along the strip makes more.
 * @source  Derived on the page of this topic; Johnson, Contact Mechanics (1985), sec. 4.2(c).
 *
 * @param[in]  pressure  Greatest pressure of the contact [Pa; >= 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Greatest shear stress [Pa].
 */
VANE_API double vane_contact_line_shear_greatest(double pressure, vane_error *error);

/**
 * Depth of the greatest shear stress below a line contact.
 *
 *     z = sqrt(g) a = 0.7861514 a    g = (sqrt(5) - 1)/2
 *
 * @valid   Smooth elastic half-spaces, strip narrow against the radii, plane strain, no friction;
 *          Poisson's ratio at least 0.25, for below that the stress along the strip makes more.
 * @source  Derived on the page of this topic; Johnson, Contact Mechanics (1985), sec. 4.2(c).
 *
 * @param[in]  half_width  Half the width of the strip [m; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Depth [m].
 */
VANE_API double vane_contact_line_shear_depth(double half_width, vane_error *error);

/**
 * Greatest compressive stress of a line contact that slides.
 *
 *     s = k p    k = 1, 1.09, 1.19, 1.40 at friction 0, 1/12, 1/6, 1/3
 *
 * @valid   Line contact, Poisson's ratio 0.25, straight lines between friction 0, 1/12, 1/6 and
 *          1/3.
 * @source  Smith and Liu, J. Appl. Mech. 20 (1953) 157, as tabled in Boresi and Schmidt, Advanced
 *          Mechanics of Materials, 6th ed., Table 17.1.
 *
 * @param[in]  pressure  Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  friction  Coefficient of friction, full sliding [1; 0 <= x <= 0.33333333333333333].
 * @param[out] error     What went wrong, or NULL.
 * @return    Greatest compressive stress [Pa].
 */
VANE_API double vane_contact_sliding_stress(double pressure, double friction, vane_error *error);

/**
 * Greatest shear stress of a line contact that slides.
 *
 *     t = k p    k = 0.300, 0.308, 0.339, 0.435 at friction 0, 1/12, 1/6, 1/3
 *
 * @valid   Line contact, Poisson's ratio 0.25, straight lines between friction 0, 1/12, 1/6 and
 *          1/3.
 * @source  Smith and Liu, J. Appl. Mech. 20 (1953) 157, as tabled in Boresi and Schmidt, Advanced
 *          Mechanics of Materials, 6th ed., Table 17.1.
 *
 * @param[in]  pressure  Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  friction  Coefficient of friction, full sliding [1; 0 <= x <= 0.33333333333333333].
 * @param[out] error     What went wrong, or NULL.
 * @return    Greatest shear stress [Pa].
 */
VANE_API double vane_contact_sliding_shear(double pressure, double friction, vane_error *error);

/**
 * Greatest octahedral shear stress of a line contact that slides.
 *
 *     t = k p    k = 0.272, 0.265, 0.277, 0.368 at friction 0, 1/12, 1/6, 1/3
 *
 * @valid   Line contact, Poisson's ratio 0.25, straight lines between friction 0, 1/12, 1/6 and
 *          1/3.
 * @source  Smith and Liu, J. Appl. Mech. 20 (1953) 157, as tabled in Boresi and Schmidt, Advanced
 *          Mechanics of Materials, 6th ed., Table 17.1.
 *
 * @param[in]  pressure  Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  friction  Coefficient of friction, full sliding [1; 0 <= x <= 0.33333333333333333].
 * @param[out] error     What went wrong, or NULL.
 * @return    Greatest octahedral shear stress [Pa].
 */
VANE_API double vane_contact_sliding_octahedral(double pressure, double friction,
						vane_error *error);

/**
 * Radius of the circle of contact of two spheres.
 *
 *     a = (3 F/(4 k E'))^(1/3)
 *
 * @valid   Smooth elastic half-spaces, contact small against the radii, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.22) (number from memory).
 *
 * @param[in]  force            Force that presses the bodies together [N; >= 0].
 * @param[in]  curvature        Relative curvature, see vane_contact_curvature() [1/m; > 0].
 * @param[in]  contact_modulus  See vane_contact_modulus() [Pa; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Radius of the circle [m].
 */
VANE_API double vane_contact_sphere_radius(double force, double curvature, double contact_modulus,
					   vane_error *error);

/**
 * Greatest pressure between two spheres.
 *
 *     p = (6 F k^2 E'^2/pi^3)^(1/3)
 *
 * @valid   Smooth elastic half-spaces, contact small against the radii, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.24) (number from memory).
 *
 * @param[in]  force            Force that presses the bodies together [N; >= 0].
 * @param[in]  curvature        Relative curvature, see vane_contact_curvature() [1/m; > 0].
 * @param[in]  contact_modulus  See vane_contact_modulus() [Pa; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Greatest pressure [Pa].
 */
VANE_API double vane_contact_sphere_pressure(double force, double curvature, double contact_modulus,
					     vane_error *error);

/**
 * Approach of two spheres.
 *
 *     d = (9 F^2 k/(16 E'^2))^(1/3)
 *
 * @valid   Smooth elastic half-spaces, contact small against the radii, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.23) (number from memory).
 *
 * @param[in]  force            Force that presses the bodies together [N; >= 0].
 * @param[in]  curvature        Relative curvature, see vane_contact_curvature() [1/m; > 0].
 * @param[in]  contact_modulus  See vane_contact_modulus() [Pa; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Movement of distant points towards each other [m].
 */
VANE_API double vane_contact_sphere_approach(double force, double curvature, double contact_modulus,
					     vane_error *error);

/**
 * Greatest tensile stress, radial at the edge of the circle of contact.
 *
 *     s = (1 - 2 nu) p/3
 *
 * @valid   Smooth elastic half-spaces, contact small against the radii, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.28) (number from memory).
 *
 * @param[in]  pressure  Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  poisson   Poisson's ratio of the body [1; 0 <= x <= 0.5].
 * @param[out] error     What went wrong, or NULL.
 * @return    Tensile stress [Pa].
 */
VANE_API double vane_contact_sphere_tension(double pressure, double poisson, vane_error *error);

/**
 * Shear stress below the middle of a circle of contact.
 *
 *     t = |s_z - s_r|/2    s_z = -p/(1 + (z/a)^2)
 *     s_r = -p (1 + nu) (1 - (z/a) atan(a/z)) + p/(2 (1 + (z/a)^2))
 *
 * @valid   Smooth elastic half-spaces, contact small against the radii, no friction.
 * @source  Johnson, Contact Mechanics (1985), eq. (3.45) (number from memory).
 *
 * @param[in]  pressure        Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  contact_radius  Radius of the circle of contact [m; > 0].
 * @param[in]  depth           Depth below the middle of the contact [m; >= 0].
 * @param[in]  poisson         Poisson's ratio of the body [1; 0 <= x <= 0.5].
 * @param[out] error           What went wrong, or NULL.
 * @return    Greatest shear stress [Pa].
 */
VANE_API double vane_contact_sphere_shear(double pressure, double contact_radius, double depth,
					  double poisson, vane_error *error);

/**
 * Relative principal curvatures of two bodies from their own.
 *
 *     low + high = k_11 + k_12 + k_21 + k_22
 *     high - low = sqrt(d_1^2 + d_2^2 + 2 d_1 d_2 cos(2 angle))    d = k_1 - k_2
 *
 * A cylinder has one curvature of 0; a hollow is negative. What is left must be convex both ways:
 * VANE_NO_SOLUTION for bodies that touch along a line or conform, or that would overlap.
 *
 * @valid   Curvature small over the contact. Digits are lost where curvatures cancel.
 * @source  Johnson, Contact Mechanics (1985), eq. (4.4) and app. 2 (numbers from memory).
 *
 * @param[in]  first_1   Curvature of the first body in one principal plane [1/m; any].
 * @param[in]  second_1  Curvature of the first body in the other [1/m; any].
 * @param[in]  first_2   Curvature of the second body in one principal plane [1/m; any].
 * @param[in]  second_2  Curvature of the second body in the other [1/m; any].
 * @param[in]  angle     Between the first planes of the two [rad; any].
 * @param[out] out       Relative curvatures.
 * @param[out] error     What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_contact_relative(double first_1, double second_1, double first_2,
				       double second_2, double angle, vane_contact_shape *out,
				       vane_error *error);

/**
 * Contact of two bodies on an ellipse.
 *
 *     low/high = R_D(0, k^2, 1)/R_D(0, 1, k^2)    k = b/a
 *     a^3 = 3 F E(k)/(pi k^2 (low + high) E')    p = 3 F/(2 pi a b)    d = p b K(k)/E'
 *
 * Without a force every output is 0. The greatest shear is looked for along the normal through the
 * middle.
 *
 * @valid   As vane_contact_sphere_pressure(). A ratio of the curvatures above 1e12 is a line:
 *          VANE_NO_SOLUTION.
 * @source  Johnson, Contact Mechanics (1985), sec. 4.2(a), eq. (4.24)-(4.28) (numbers from memory);
 *          elliptic integrals in Carlson's form, NIST Handbook of Mathematical Functions, 19.25;
 *          stresses derived on the page of this topic.
 *
 * @param[in]  force            Force that presses the bodies together [N; >= 0].
 * @param[in]  shape            Relative curvatures.
 * @param[in]  contact_modulus  See vane_contact_modulus() [Pa; > 0].
 * @param[in]  poisson          Poisson's ratio of the body looked into [1; 0 <= x <= 0.5].
 * @param[out] out              The contact.
 * @param[out] error            What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_contact_point(double force, const vane_contact_shape *shape,
				    double contact_modulus, double poisson,
				    vane_contact_ellipse *out, vane_error *error);

/**
 * Stresses below the middle of a contact on an ellipse.
 *
 *     s_z = -p a b/sqrt((a^2 + z^2) (b^2 + z^2))
 *
 * Those along the axes are integrals of Carlson's form R_D; see the page of this topic.
 *
 * @valid   As vane_contact_sphere_pressure(). A ratio of the axes above 1e12 is a line:
 *          VANE_NO_SOLUTION.
 * @source  Derived on the page of this topic from Love's potentials.
 *
 * @param[in]  pressure    Greatest pressure of the contact [Pa; >= 0].
 * @param[in]  semi_minor  Shorter semi-axis [m; > 0].
 * @param[in]  semi_major  Longer semi-axis [m; >= semi_minor].
 * @param[in]  depth       Depth below the middle of the contact [m; >= 0].
 * @param[in]  poisson     Poisson's ratio of the body [1; 0 <= x <= 0.5].
 * @param[out] out         The stresses.
 * @param[out] error       What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_contact_stresses(double pressure, double semi_minor, double semi_major,
				       double depth, double poisson, vane_contact_stress *out,
				       vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
