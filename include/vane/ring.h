/**
 * @file ring.h
 * The cam ring: laws of motion of its transitions, its radius at any angle,
 * and what becomes of it when it is turned over.
 *
 * Angles run in the direction of rotation. A balanced ring has two equal
 * lobes, so everything repeats after half a turn; a lobe is small dwell, rise,
 * large dwell, fall.
 */
#ifndef VANE_RING_H
#define VANE_RING_H

#include "vane/error.h"

#ifdef __cplusplus
extern "C" {
#endif

/** Law of motion of a transition between two dwells. */
enum vane_ring_law {
	VANE_RING_CONSTANT_ACCELERATION = 1, /**< Two parabolas; acceleration jumps. */
	VANE_RING_SIMPLE_HARMONIC = 2,       /**< Half a cosine; acceleration jumps at the ends. */
	VANE_RING_CYCLOIDAL = 3,             /**< Sine of acceleration. */
	VANE_RING_POLYNOMIAL_345 = 4,        /**< Polynomial of degree 5, finite jerk. */
	VANE_RING_POLYNOMIAL_4567 = 5,       /**< Polynomial of degree 7, continuous jerk. */
	VANE_RING_MODIFIED_TRAPEZOID = 6,    /**< Trapezoid of acceleration, corners of sine. */
	VANE_RING_MODIFIED_SINE = 7          /**< Sine of acceleration, slower in the middle. */
};

/** Fraction of the lift and its derivatives with respect to the fraction of the transition. */
typedef struct vane_ring_lift {
	double lift;         /**< Lift fraction f(u) [1; 0 <= x <= 1]. */
	double velocity;     /**< First derivative f'(u) [1; any]. */
	double acceleration; /**< Second derivative f''(u) [1; any]. */
	double jerk;         /**< Third derivative f'''(u), impulses left out [1; any]. */
} vane_ring_lift;

/**
 * Lift fraction of a transition law with its exact derivatives.
 *
 *     constant acceleration  2u^2, then 1 - 2(1-u)^2
 *     simple harmonic        (1 - cos(pi u))/2
 *     cycloidal              u - sin(2 pi u)/(2 pi)
 *     3-4-5                  10u^3 - 15u^4 + 6u^5
 *     4-5-6-7                35u^4 - 84u^5 + 70u^6 - 20u^7
 *     modified trapezoid     f'' = A sin(4 pi u) to 1/8, A to 3/8, A cos(4 pi (u - 3/8)) to 1/2;
 *                            A = 8 pi/(pi + 2)
 *     modified sine          f'' = A sin(4 pi u) to 1/8, A cos(4 pi (u - 1/8)/3) to 1/2;
 *                            A = 4 pi^2/(pi + 4)
 *     of both, f(u) = 1 - f(1 - u) beyond the middle
 *
 * @valid   Exact. Where a derivative jumps, the value after the jump is given;
 *          at u = 1 the value before it.
 * @source  Norton, Cam Design and Manufacturing Handbook, table of peak factors (from memory);
 *          Rothbart, Cam Design Handbook (2004), eqs. 2.17-2.19 for constant acceleration.
 *
 * @param[in]  law       A number of enum vane_ring_law [1; 1 <= x <= 7].
 * @param[in]  fraction  Fraction u of the transition's angle [1; 0 <= x <= 1].
 * @param[out] out       The lift fraction and its derivatives.
 * @param[out] error     What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_ring_law_at(int32_t law, double fraction, vane_ring_lift *out,
				  vane_error *error);

/** A balanced cam ring of two equal lobes, described by the path of the vane's crown. */
typedef struct vane_ring {
	double large_radius; /**< Radius of the large dwell [m; > small_radius]. */
	double small_radius; /**< Radius of the small dwell [m; > 0]. */
	double width;        /**< Axial width [m; > 0]. */
	double small_dwell;  /**< Angle of the small dwell [rad; >= 0]. */
	double rise;         /**< Angle of the rise, small to large [rad; > 0]. */
	double large_dwell;  /**< Angle of the large dwell [rad; >= 0]. */
	double fall;         /**< Angle of the fall; the four angles add up to pi [rad; > 0]. */
	double phase;        /**< Angle of the middle of a small dwell [rad; -6.283185307179586 <= x <= 6.283185307179586]. */
	int32_t law;         /**< Law of both transitions, enum vane_ring_law [1; 1 <= x <= 7]. */
	int32_t reserved;    /**< Must be 0 [1; 0]. */
} vane_ring;

/** Radius of the vane's crown at an angle, with its derivatives by angle. */
typedef struct vane_ring_point {
	double radius; /**< Distance of the crown from the axis [m; > 0]. */
	double slope;  /**< First derivative by angle [m/rad; any]. */
	double second; /**< Second derivative by angle [m/rad2; any]. */
	double third;  /**< Third derivative by angle, impulses left out [m/rad3; any]. */
} vane_ring_point;

/**
 * Fills a ring of two equal lobes with 34 degree dwells and 3-4-5 transitions of 56 degrees;
 * radii and width stay zero and must be set.
 *
 * @source  Definition.
 *
 * @param[out] ring  The record to fill.
 */
VANE_API void vane_ring_default(vane_ring *ring);

/**
 * Radius of the vane's crown and its derivatives at an angle.
 *
 *     l(theta) = r + (R - r) f(u),  u = (theta - start)/angle;  on the fall 1 - f
 *
 * @valid   The law is that of the vane's motion. A ring ground to the same law differs from it
 *          by up to the tip radius times 1 - cos of the contact angle.
 * @source  Norton, Cam Design and Manufacturing Handbook, ch. 8 (from memory).
 *
 * @param[in]  ring   The ring.
 * @param[in]  angle  Angle in the direction of rotation [rad; any].
 * @param[out] out    Radius and derivatives.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_ring_at(const vane_ring *ring, double angle, vane_ring_point *out,
			      vane_error *error);

/**
 * The ring turned over, face for face, about the axis 45 degrees from its dwells.
 *
 *     l_turned(theta) = l(pi/2 - theta)
 *
 * Turning the ring over is how a pump with fixed ports is given the other rotation: the lobes
 * move by a quarter turn, and what was the fall in one direction is the rise in the other.
 *
 * @valid   Exact, also for unequal rise and fall. Canted rotors, bevelled vanes and plates with
 *          notches at one end must be turned or exchanged as well.
 * @source  Definition (mirror of a plane curve).
 *
 * @param[in]  ring   The ring as it lies.
 * @param[out] out    The ring turned over; may be the same record.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_ring_turned(const vane_ring *ring, vane_ring *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
