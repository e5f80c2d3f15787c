/**
 * @file clearance.h
 * Side clearance from measured widths: uncertainty, proof, decision.
 *
 * A side clearance is the difference of two widths that agree to a few parts
 * in ten thousand, so the uncertainty of the two measurements is what decides.
 * What one instrument gets wrong the same way on both parts cancels in the
 * difference: measure all the parts with the same instrument on the same day.
 */
#ifndef VANE_CLEARANCE_H
#define VANE_CLEARANCE_H

#include "vane/error.h"
#include "vane/measure.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What to do with a part. The numbers are never changed. */
enum vane_action {
	VANE_ACTION_REUSE = 1,  /**< Assemble it as it is. */
	VANE_ACTION_MATCH = 2,  /**< Sound in itself: pair it with another part, or lap. */
	VANE_ACTION_REPLACE = 3 /**< Proven narrower than the part may be. */
};

/** An instrument for widths, as its certificate and the shop describe it. */
typedef struct vane_instrument {
	double error_limit;       /**< Greatest permissible error; rectangular [m; >= 0]. */
	double repeatability;     /**< Standard deviation of one reading [m; >= 0]. */
	double resolution;        /**< One full step of the display; rectangular [m; >= 0]. */
	double temperature_range; /**< Half range of the part about 20 degC; rectangular [K; >= 0]. */
	double expansion;         /**< Linear expansion coefficient of the part [1/K; >= 0]. */
} vane_instrument;

/** A width measured with several readings. */
typedef struct vane_width {
	double mean;        /**< Mean of the readings [m; > 0]. */
	double uncertainty; /**< Combined standard uncertainty of the mean [m; >= 0]. */
	double systematic;  /**< The part of it common to all widths from this instrument [m; 0 <= x <= uncertainty]. */
	double spread;      /**< Standard deviation of the readings; 0 for a single one [m; >= 0]. */
	double least;       /**< Least reading [m; > 0]. */
	double greatest;    /**< Greatest reading [m; > 0]. */
} vane_width;

/** A clearance between two measured widths. */
typedef struct vane_gap {
	double total;       /**< Outer width less inner width, both sides together [m; any]. */
	double per_side;    /**< Half the total [m; any]. */
	double uncertainty; /**< Standard uncertainty of the total [m; >= 0]. */
	double correlation; /**< Correlation coefficient of the two widths [1; 0 <= x <= 1]. */
} vane_gap;

/** Limits that a ring, its rotor and its vanes are judged by. */
typedef struct vane_width_limits {
	double ring_rotor_low;  /**< Least total clearance, ring to rotor [m; any]. */
	double ring_rotor_high; /**< Greatest total clearance, ring to rotor [m; > ring_rotor_low]. */
	double ring_vane_low;   /**< Least total clearance, ring to vanes [m; any]. */
	double ring_vane_high;  /**< Greatest total clearance, ring to vanes [m; > ring_vane_low]. */
	double ring_least;      /**< Narrowest usable ring, or 0 if not known [m; >= 0]. */
	double rotor_least;     /**< Narrowest usable rotor, or 0 if not known [m; >= 0]. */
	double vane_least;      /**< Narrowest usable vane, or 0 if not known [m; >= 0]. */
	double coverage;        /**< Guard band in standard uncertainties [1; >= 0]. */
} vane_width_limits;

/** What the three widths of a cartridge call for. */
typedef struct vane_decision {
	vane_gap ring_rotor;           /**< Clearance between ring and rotor. */
	vane_gap ring_vane;            /**< Clearance between ring and vanes. */
	double ring_rotor_probability; /**< Probability that it is within its limits [1; 0 <= x <= 1]. */
	double ring_vane_probability;  /**< Probability that it is within its limits [1; 0 <= x <= 1]. */
	int32_t ring_rotor_verdict;    /**< A number of enum vane_verdict [1; 1 <= x <= 3]. */
	int32_t ring_vane_verdict;     /**< A number of enum vane_verdict [1; 1 <= x <= 3]. */
	int32_t ring;                  /**< A number of enum vane_action [1; 1 <= x <= 3]. */
	int32_t rotor;                 /**< A number of enum vane_action [1; 1 <= x <= 3]. */
	int32_t vane;                  /**< A number of enum vane_action [1; 1 <= x <= 3]. */
} vane_decision;

/**
 * Width of a part and its uncertainty from several readings.
 *
 *     u^2 = max(s_r, s)^2/m + a^2/3 + d^2/12 + (w alpha dT)^2/3
 *
 * s_r is the stated repeatability, s the standard deviation of the m readings,
 * a the error limit, d the resolution. The larger of s_r and s is taken: with
 * few readings s is a poor estimate, and the stated value rests on many; but
 * readings around a worn part also scatter with its shape, which the stated
 * value does not know. Only this term falls with the number of readings. The
 * systematic part is a/sqrt(3).
 *
 * @valid   Readings independent; the error limit wholly systematic. Wear that
 *          is local shows in `least` and `greatest`, not in the mean.
 * @source  JCGM 100:2008 (GUM), 4.2.3, 4.3.7, 5.1.2; taking the larger of the
 *          two standard deviations is this library's choice.
 *
 * @param[in] reading     Widths read [m; > 0; length readings].
 * @param[in] readings    Number of readings [1; 1 <= x <= 100000].
 * @param[in] instrument  The instrument they were read with.
 * @param[out] out        The width.
 * @param[out] error      What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_clearance_width(const double *reading, int64_t readings,
				      const vane_instrument *instrument, vane_width *out,
				      vane_error *error);

/**
 * Clearance between two measured widths.
 *
 *     c = w_o - w_i
 *     u^2 = u_o^2 + u_i^2 - 2 s_o s_i    r = s_o s_i/(u_o u_i)
 *
 * s is the systematic part of each; with two instruments r = 0 and the last
 * term is absent. A negative clearance is an interference, and is reported.
 *
 * @valid   One instrument errs alike on two nearly equal widths.
 * @source  JCGM 100:2008 (GUM), eq. (16) and F.1.2.3.
 *
 * @param[in] outer            Width of the outer part, the ring.
 * @param[in] inner            Width of the inner part, rotor or vane.
 * @param[in] same_instrument  1 if one instrument measured both, 0 if not [1; 0 <= x <= 1].
 * @param[out] out             The clearance.
 * @param[out] error           What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_clearance_between(const vane_width *outer, const vane_width *inner,
					int32_t same_instrument, vane_gap *out, vane_error *error);

/**
 * Clearance when the two parts have warmed, perhaps unequally.
 *
 *     c = w_o (1 + alpha_o dT_o) - w_i (1 + alpha_i dT_i)
 *
 * A rotor that warms faster than its ring loses more clearance than the steady
 * difference of the two materials takes: judge by the transient. A result of
 * zero or less means that the parts seize.
 *
 * @valid   Each part at one temperature; expansion coefficients constant.
 * @source  Definition of the coefficient of linear expansion.
 *
 * @param[in] outer            Width of the outer part, cold [m; > 0].
 * @param[in] inner            Width of the inner part, cold [m; > 0].
 * @param[in] outer_expansion  Its linear expansion coefficient [1/K; >= 0].
 * @param[in] inner_expansion  Its linear expansion coefficient [1/K; >= 0].
 * @param[in] outer_rise       Its temperature less that of measurement [K; any].
 * @param[in] inner_rise       Its temperature less that of measurement [K; any].
 * @param[out] error           What went wrong, or NULL.
 * @return    Total clearance, both sides together [m].
 */
VANE_API double vane_clearance_thermal(double outer, double inner, double outer_expansion,
				       double inner_expansion, double outer_rise, double inner_rise,
				       vane_error *error);

/**
 * Fills in the limits of the trade, for want of the parts' own documentation.
 *
 *     ring_rotor: 0 ... 12.7 um    ring_vane: 0 ... 12.7 um    coverage: 1.645
 *
 * 12.7 um is 0.0005 in. The least widths are 0, not known. A limit from the
 * parts' own documentation always takes precedence.
 *
 * @source  Common practice, no source (limits); ISO 14253-1:2017 (coverage), from memory.
 *
 * @param[out] limits  The record to fill; NULL is ignored.
 */
VANE_API void vane_width_limits_default(vane_width_limits *limits);

/**
 * Whether ring, rotor and vanes go back, need another partner, or are scrap.
 *
 * A part proven narrower than its least width (by the guard band) is replaced.
 * Otherwise rotor or vanes are reused if their clearance to the ring conforms
 * and the ring stays, and matched if not. The ring is reused if either clearance
 * conforms, since the other part is then the odd one; if neither does, it is
 * matched. A clearance that is not proven counts as one that does not conform:
 * measure again, better, before anything is lapped. Which of the two parts of a
 * pair has worn, widths alone cannot say unless the least widths are known.
 *
 * @valid   Side clearance only: says nothing of the ring's track, of vane tips
 *          and slots, of plates, cracks or bearings.
 * @source  ISO 14253-1:2017, from memory (verdicts); common practice, no source (actions).
 *
 * @param[in] ring             Width of the ring.
 * @param[in] rotor            Width of the rotor.
 * @param[in] vane             Width of the vanes; for a set, of the narrowest.
 * @param[in] same_instrument  1 if one instrument measured all, 0 if not [1; 0 <= x <= 1].
 * @param[in] limits           What they are judged by.
 * @param[out] out             Clearances, verdicts and actions.
 * @param[out] error           What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_clearance_decide(const vane_width *ring, const vane_width *rotor,
				       const vane_width *vane, int32_t same_instrument,
				       const vane_width_limits *limits, vane_decision *out,
				       vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
