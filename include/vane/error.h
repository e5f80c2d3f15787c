/**
 * @file error.h
 * The error record, the cautions, the version.
 *
 * A formula returns its one number; on bad input it returns NaN. A procedure
 * fills a record and returns a status; on failure every floating-point output
 * is NaN and every integer output 0. Either way the error record, if the
 * caller passed one, says what happened. It is written by every call: a call
 * that succeeds leaves the code VANE_OK in it. There is no other report: errno
 * says nothing, though the mathematical library may leave ERANGE in it.
 */
#ifndef VANE_ERROR_H
#define VANE_ERROR_H

#include <stdint.h>

#if defined(__GNUC__) || defined(__clang__)
#define VANE_API __attribute__((visibility("default")))
#else
#define VANE_API
#endif

#ifdef __cplusplus
extern "C" {
#endif

/** Status of a call. The numbers are never changed or used again. */
enum vane_status {
	VANE_OK = 0,               /**< The call succeeded. */
	VANE_INVALID_ARGUMENT = 1, /**< A parameter is outside its documented range. */
	VANE_NO_SOLUTION = 2,      /**< No value satisfies the equation, or an iteration did not settle. */
	VANE_NOT_IDENTIFIABLE = 3, /**< These data cannot determine what was asked. */
	VANE_NO_MEMORY = 4,        /**< Working memory could not be had. */
	VANE_OUT_OF_RANGE = 5      /**< The result is too large for a double. */
};

/** A result that was computed, yet is not to be trusted blindly. Bits of a set. */
enum vane_caution {
	VANE_CAUTION_NOT_LAMINAR = 1,       /**< A slot is above the laminar limit. */
	VANE_CAUTION_INERTIA = 2,           /**< Inertia takes over 1 % of a slot's drop. */
	VANE_CAUTION_HEATING = 4,           /**< Oil warms in a slot faster than walls cool it. */
	VANE_CAUTION_EDGE_CONTACT = 8,      /**< The ring touches the vane beside its tip. */
	VANE_CAUTION_LIFT_OFF = 16,         /**< Somewhere the vane does not press on the ring. */
	VANE_CAUTION_SHORT_DWELL = 32,      /**< A dwell is shorter than the land it seals. */
	VANE_CAUTION_CROSS_PORT = 64,       /**< A chamber sees inlet and outlet at once. */
	VANE_CAUTION_THIN_OIL = 128,        /**< Viscosity is below 10 mm2/s. */
	VANE_CAUTION_THICK_OIL = 256,       /**< Viscosity is above 860 mm2/s. */
	VANE_CAUTION_ILL_CONDITIONED = 512, /**< A fit leans on nearly equal readings. */
	VANE_CAUTION_CURVATURE = 1024,      /**< Readings bend away from the fitted line. */
	VANE_CAUTION_NO_FLOW = 2048         /**< Slip takes all the flow at this duty. */
};

/** What went wrong, for the caller to show or to test. */
typedef struct vane_error {
	double value;   /**< The offending value, in the unit the text names [1; any]. */
	int64_t index;  /**< Element of the array at fault, or -1 [1; >= -1]. */
	int32_t code;   /**< A number of enum vane_status [1; any]. */
	char name[48];  /**< The parameter, as documented. */
	char text[160]; /**< One sentence with the unit and the accepted range. */
} vane_error;

/**
 * Name of a status code.
 *
 * @source  Definition.
 *
 * @param[in] code  Any integer [1; any].
 * @return    Static text such as "invalid argument"; never NULL.
 */
VANE_API const char *vane_status_name(int32_t code);

/**
 * Sentence that explains a status code.
 *
 * @source  Definition.
 *
 * @param[in] code  Any integer [1; any].
 * @return    Static text; never NULL.
 */
VANE_API const char *vane_status_text(int32_t code);

/**
 * Sentence that explains one caution bit.
 *
 * @source  Definition.
 *
 * @param[in] caution  One bit of enum vane_caution [1; any].
 * @return    Static text; for anything but one known bit, text that says so.
 */
VANE_API const char *vane_caution_text(int32_t caution);

/**
 * Version of the library that is running.
 *
 * @source  Definition.
 *
 * @return    Static text such as "0.1.0".
 */
VANE_API const char *vane_version(void);

#ifdef __cplusplus
}
#endif

#endif
