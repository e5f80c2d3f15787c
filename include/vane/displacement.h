/**
 * @file displacement.h
 * Displacement per revolution, by name of its convention, and the volume of one chamber.
 */
#ifndef VANE_DISPLACEMENT_H
#define VANE_DISPLACEMENT_H

#include "vane/parts.h"

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Displacement of a balanced pump whose under-vane chambers pump with the zone (convention A).
 *
 *     D_A = 2 pi b (R^2 - r^2)
 *
 * @valid   Two lobes; the vanes seal on true dwells. Independent of thickness, number, tip radius
 *          and cant of the vanes.
 * @source  Derived on the page of this topic by a control volume over an outlet zone; the limit
 *          of no vane thickness: Ivantysyn and Ivantysynova, Hydrostatic Pumps and Motors (from
 *          memory).
 *
 * @param[in]  large_radius  Radius of the large dwell [m; > small_radius].
 * @param[in]  small_radius  Radius of the small dwell [m; > 0].
 * @param[in]  width         Width of the ring [m; > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Displacement per revolution, convention A [m3].
 */
VANE_API double vane_displacement_roots_zone(double large_radius, double small_radius, double width,
					     vane_error *error);

/**
 * Displacement of a balanced pump whose under-vane chambers stay at the outlet (convention B).
 *
 *     D_B = 2 pi b (R^2 - r^2) - 2 z b t (R - r)
 *
 * @valid   Two lobes; radial vanes that seal on true dwells.
 * @source  Derived on the page of this topic by a control volume over an outlet zone.
 *
 * @param[in]  large_radius    Radius of the large dwell [m; > small_radius].
 * @param[in]  small_radius    Radius of the small dwell [m; > 0].
 * @param[in]  width           Width of the ring [m; > 0].
 * @param[in]  vane_thickness  Thickness of a vane [m; >= 0].
 * @param[in]  vanes           Number of vanes, times vane_thickness less than
 *                             pi (large_radius + small_radius) [1; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Displacement per revolution, convention B [m3].
 */
VANE_API double vane_displacement_roots_outlet(double large_radius, double small_radius,
					       double width, double vane_thickness, double vanes,
					       vane_error *error);

/**
 * Displacement of a pump with one lobe: a circular ring set eccentric to the rotor, thin vanes.
 *
 *     D = 2 z b [ u sqrt(Rc^2 - u^2) + Rc^2 asin(u/Rc) ],  u = e sin(pi/z)
 *
 * @valid   Thin vanes, or roots that pump with the zone. For many vanes it tends to 4 pi b e Rc.
 *          The textbook form (pi/2)(Dc + Dr) e L counts the crescent once a turn and is smaller.
 * @source  Derived by integrating the chamber volume; limit: Ivantysyn and Ivantysynova,
 *          Hydrostatic Pumps and Motors (from memory).
 *
 * @param[in]  ring_radius   Radius of the circular ring [m; > 0].
 * @param[in]  eccentricity  Distance of its centre from the rotor's [m; 0 <= x < ring_radius].
 * @param[in]  width         Width of the ring [m; > 0].
 * @param[in]  vanes         Number of vanes [1; >= 2].
 * @param[out] error         What went wrong, or NULL.
 * @return    Displacement per revolution, thin vanes [m3].
 */
VANE_API double vane_displacement_eccentric(double ring_radius, double eccentricity, double width,
					    double vanes, vane_error *error);

/**
 * What the roots of an eccentric pump take from its displacement when they do not pump.
 *
 *     D = 2 z b t e
 *
 * @valid   Radial vanes; stroke twice the eccentricity.
 * @source  Derived on the page of this topic.
 *
 * @param[in]  eccentricity    Distance of the ring's centre from the rotor's [m; >= 0].
 * @param[in]  width           Width of the ring [m; > 0].
 * @param[in]  vane_thickness  Thickness of a vane [m; >= 0].
 * @param[in]  vanes           Number of vanes [1; >= 2].
 * @param[out] error           What went wrong, or NULL.
 * @return    Displacement to subtract [m3].
 */
VANE_API double vane_displacement_eccentric_roots(double eccentricity, double width,
						  double vane_thickness, double vanes,
						  vane_error *error);

/**
 * Displacement of an eccentric pump as an elementary textbook prints it.
 *
 *     D = (pi/2)(Dc + Dr) e L
 *
 * @valid   For reproducing the book only: it counts the crescent between rotor and ring once a
 *          turn and is about 2.4 times smaller than the true displacement of common proportions.
 * @source  Esposito, Fluid Power with Applications, 5th ed., sec. 5.5, examples 5-3 and 5-4.
 *
 * @param[in]  ring_diameter   Diameter of the ring [m; > 0].
 * @param[in]  rotor_diameter  Diameter of the rotor [m; > 0].
 * @param[in]  eccentricity    Distance of their centres [m; >= 0].
 * @param[in]  width           Width of the rotor [m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    The textbook's displacement [m3].
 */
VANE_API double vane_displacement_textbook(double ring_diameter, double rotor_diameter,
					   double eccentricity, double width, vane_error *error);

/** Where a rounded tip touches the ring. */
typedef struct vane_tip_contact {
	double normal;      /**< Angle of the common normal to the radius [rad; any]. */
	double offset;      /**< Distance of the contact from the vane's middle plane, + leading [m; any]. */
	double height;      /**< Distance of the contact from the axis along the vane [m; > 0]. */
	double radius;      /**< Distance of the contact from the axis [m; > 0]. */
	double angle;       /**< Angle of the contact [rad; any]. */
	double ring_radius; /**< Radius of curvature of the ring there, negative if convex [m; any]. */
} vane_tip_contact;

/**
 * Contact of a radial vane's rounded tip with the ring.
 *
 *     psi = atan2(s', s),  s = l - R_t;  x_c = -R_t sin psi,  y_c = s + R_t cos psi
 *
 * @valid   The ring is the outward offset of the tip centre's path, without undercut.
 * @source  Differential geometry of parallel curves: do Carmo, Differential Geometry of Curves
 *          and Surfaces, sec. 1-7 (from memory).
 *
 * @param[in]  parts  The pump's parts.
 * @param[in]  angle  Angle of the vane [rad; any].
 * @param[out] out    The contact.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_displacement_contact(const vane_parts *parts, double angle,
					   vane_tip_contact *out, vane_error *error);

/** Displacement in both conventions, and the volumes of one chamber. */
typedef struct vane_displacement {
	double roots_zone;   /**< Displacement if the roots pump with the zone, convention A [m3; > 0]. */
	double roots_outlet; /**< Displacement if the roots stay at the outlet, convention B [m3; > 0]. */
	double selected;     /**< The one that parts.roots selects [m3; > 0]. */
	double greatest;     /**< Greatest volume of one chamber [m3; > 0]. */
	double least;        /**< Least volume of one chamber [m3; > 0]. */
	int32_t roots;       /**< Convention of the selected one, enum vane_parts_roots [1; 1 <= x <= 2]. */
	int32_t caution;     /**< Set of enum vane_caution [1; >= 0]. */
} vane_displacement;

/**
 * Displacement of a pump from its parts.
 *
 * The volumes are those of the chamber between two neighbouring vanes with the space from rotor
 * to ring; on true dwells 2 z (greatest - least) equals the displacement of convention B.
 *
 * @valid   Balanced ring, radial vanes. A dwell shorter than the land it seals raises a caution.
 * @source  Derived on the page of this topic.
 *
 * @param[in]  parts  The pump's parts.
 * @param[out] out    Displacements and volumes.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_displacement_run(const vane_parts *parts, vane_displacement *out,
				       vane_error *error);

/**
 * Volume of the chamber between two neighbouring vanes.
 *
 * @valid   Radial vanes that touch the ring.
 * @source  Derived on the page of this topic; area by Green's theorem.
 *
 * @param[in]  parts   The pump's parts.
 * @param[in]  angle   Angle of the chamber's middle [rad; any].
 * @param[out] volume  Volume [m3; > 0].
 * @param[out] rate    Change of the volume by angle [m3/rad; any].
 * @param[out] error   What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_displacement_chamber(const vane_parts *parts, double angle, double *volume,
					   double *rate, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
