/**
 * @file measure.h
 * Uncertainty of measurement: from readings and limits to a proof.
 *
 * Values here are in whatever unit the caller measures in; all that belong to
 * one quantity are in the same unit, and a number so described is written [1].
 */
#ifndef VANE_MEASURE_H
#define VANE_MEASURE_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What a measured value proves about its limits. The numbers are never changed. */
enum vane_verdict {
	VANE_VERDICT_CONFORMS = 1,   /**< Inside the limits by at least the guard band. */
	VANE_VERDICT_NOT_PROVEN = 2, /**< Too near a limit for this uncertainty: neither is proven. */
	VANE_VERDICT_FAILS = 3       /**< Outside a limit by more than the guard band. */
};

/** A quantity read several times: evaluation of type A. */
typedef struct vane_sample {
	double mean;               /**< Mean of the readings, in their unit [1; any]. */
	double spread;             /**< Standard deviation of one reading, in their unit [1; >= 0]. */
	double uncertainty;        /**< Standard uncertainty of the mean, in their unit [1; >= 0]. */
	double degrees_of_freedom; /**< Readings less one [1; >= 1]. */
	double least;              /**< Least reading, in their unit [1; any]. */
	double greatest;           /**< Greatest reading, in their unit [1; any]. */
} vane_sample;

/** A quantity that a result depends on. */
typedef struct vane_source {
	double uncertainty;        /**< Standard uncertainty, in the quantity's unit [1; >= 0]. */
	double sensitivity;        /**< Change of the result with the quantity [1; any]. */
	double degrees_of_freedom; /**< 1e30 for an uncertainty that is itself certain [1; >= 1]. */
} vane_source;

/** The uncertainty of a result. */
typedef struct vane_combined {
	double uncertainty;        /**< Combined standard uncertainty, in the result's unit [1; >= 0]. */
	double degrees_of_freedom; /**< Effective degrees of freedom [1; >= 1]. */
	double coverage;           /**< Coverage factor for the probability asked for [1; > 0]. */
	double expanded;           /**< Expanded uncertainty, in the result's unit [1; >= 0]. */
} vane_combined;

/**
 * Mean, standard deviation and standard uncertainty of readings of one quantity.
 *
 *     u = s/sqrt(n)    s^2 = sum((reading - mean)^2)/(n - 1)
 *
 * @valid   Independent readings of a quantity that does not drift.
 * @source  JCGM 100:2008 (GUM), 4.2.1 to 4.2.3.
 *
 * @param[in] reading   The readings [any; any; length readings].
 * @param[in] readings  Number of readings [1; 2 <= x <= 1000000].
 * @param[out] out      What they come to.
 * @param[out] error    What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_measure_sample(const double *reading, int64_t readings, vane_sample *out,
				     vane_error *error);

/**
 * Correlation coefficient of two quantities read together.
 *
 *     r = sum((a - mean a)(b - mean b))/((n - 1) s_a s_b)
 *
 * It is also that of the two means.
 *
 * @valid   Readings taken in pairs, each pair independent of the others. Quantities that do not
 *          vary have no correlation: VANE_NOT_IDENTIFIABLE.
 * @source  JCGM 100:2008 (GUM), 5.2.2 and 5.2.3.
 *
 * @param[in] first         Readings of one quantity [any; any; length readings].
 * @param[in] second        Readings of the other [any; any; length readings].
 * @param[in] readings      Number of pairs [1; 2 <= x <= 1000000].
 * @param[out] correlation  Correlation coefficient [1; -1 <= x <= 1].
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_measure_correlation(const double *first, const double *second,
					  int64_t readings, double *correlation, vane_error *error);

/**
 * Standard uncertainty of a value known only to lie between two limits.
 *
 *     u = a/sqrt(3)
 *
 * @valid   Every value between the limits equally likely: a permissible error, or half a step of
 *          a display.
 * @source  JCGM 100:2008 (GUM), 4.3.7.
 *
 * @param[in] half_range  Half the distance between the limits [1; >= 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Standard uncertainty, in the unit of half_range [1].
 */
VANE_API double vane_measure_rectangular(double half_range, vane_error *error);

/**
 * Standard uncertainty of a value likelier in the middle than at its limits.
 *
 *     u = a/sqrt(6)
 *
 * @valid   Density falls straight to 0 at both limits: the sum of two equal rectangular ones.
 * @source  JCGM 100:2008 (GUM), 4.3.9, eq. (9b).
 *
 * @param[in] half_range  Half the distance between the limits [1; >= 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Standard uncertainty, in the unit of half_range [1].
 */
VANE_API double vane_measure_triangular(double half_range, vane_error *error);

/**
 * Standard uncertainty of a value with a flat top and falling sides.
 *
 *     u = a sqrt((1 + ratio^2)/6)
 *
 * @valid   Density is a symmetric trapezoid: ratio 1 is rectangular, 0 triangular.
 * @source  JCGM 100:2008 (GUM), 4.3.9, eq. (9a).
 *
 * @param[in] half_range  Half the distance between the limits [1; >= 0].
 * @param[in] ratio       Width of the top by the distance between the limits [1; 0 <= x <= 1].
 * @param[out] error      What went wrong, or NULL.
 * @return    Standard uncertainty, in the unit of half_range [1].
 */
VANE_API double vane_measure_trapezoid(double half_range, double ratio, vane_error *error);

/**
 * Standard uncertainty of a value that swings like a sine between two limits.
 *
 *     u = a/sqrt(2)
 *
 * @valid   Read at a random moment of the swing: the temperature of a room under control.
 * @source  JCGM 100:2008 (GUM), H.1.3.4; JCGM 101:2008, 6.4.6.
 *
 * @param[in] half_range  Half the distance between the limits [1; >= 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Standard uncertainty, in the unit of half_range [1].
 */
VANE_API double vane_measure_u_shaped(double half_range, vane_error *error);

/**
 * Standard uncertainty from an expanded one, as a certificate gives it.
 *
 *     u = U/k
 *
 * @valid   Always.
 * @source  JCGM 100:2008 (GUM), 4.3.3.
 *
 * @param[in] expanded  Expanded uncertainty U [1; >= 0].
 * @param[in] coverage  Its coverage factor k [1; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Standard uncertainty, in the unit of expanded [1].
 */
VANE_API double vane_measure_from_expanded(double expanded, double coverage, vane_error *error);

/**
 * Expanded uncertainty.
 *
 *     U = k u
 *
 * @valid   Always.
 * @source  JCGM 100:2008 (GUM), 6.2.1.
 *
 * @param[in] uncertainty  Standard uncertainty u [1; >= 0].
 * @param[in] coverage     Coverage factor k [1; > 0].
 * @param[out] error       What went wrong, or NULL.
 * @return    Expanded uncertainty, in the unit of uncertainty [1].
 */
VANE_API double vane_measure_expanded(double uncertainty, double coverage, vane_error *error);

/**
 * Degrees of freedom of an uncertainty that is itself only judged.
 *
 *     nu = 1/(2 doubt^2)
 *
 * @valid   The doubt is small: at 0.5 two degrees of freedom are left. The range keeps the result
 *          between 1 and 1e30.
 * @source  JCGM 100:2008 (GUM), G.4.2, eq. (G.3).
 *
 * @param[in] doubt   Standard uncertainty of the uncertainty, by its size [1; 1e-15 <= x <= 0.7].
 * @param[out] error  What went wrong, or NULL.
 * @return    Degrees of freedom [1].
 */
VANE_API double vane_measure_freedom(double doubt, vane_error *error);

/**
 * Quantile of the normal distribution.
 *
 *     Phi(z) = probability
 *
 * @valid   Within 1e-14 of itself from a probability of 1e-300 on, where 1 - probability is not
 *          rounded already.
 * @source  Definition.
 *
 * @param[in] probability  Probability of a value below the quantile [1; 0 < x < 1].
 * @param[out] error       What went wrong, or NULL.
 * @return    Quantile, in standard deviations from the mean [1].
 */
VANE_API double vane_measure_normal_quantile(double probability, vane_error *error);

/**
 * Quantile of Student's t distribution.
 *
 * @valid   Within 1e-12 of itself from a probability of 1e-300 on, where 1 - probability is not
 *          rounded already.
 * @source  Definition; Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1, and
 *          26.7.5 for many degrees of freedom.
 *
 * @param[in] probability         Probability of a value below the quantile [1; 0 < x < 1].
 * @param[in] degrees_of_freedom  Degrees of freedom, whole or not [1; >= 1].
 * @param[out] error              What went wrong, or NULL.
 * @return    Quantile [1].
 */
VANE_API double vane_measure_student_quantile(double probability, double degrees_of_freedom,
					      vane_error *error);

/**
 * Coverage factor for an interval, from Student's t.
 *
 *     P(-k < t < k) = probability
 *
 * For infinite degrees of freedom give 1e30, which is the normal distribution.
 *
 * @valid   As vane_measure_student_quantile(). The GUM cuts the degrees of freedom down to a whole
 *          number first; here they are taken as they are.
 * @source  JCGM 100:2008 (GUM), G.3 and Table G.2.
 *
 * @param[in] probability         Probability of the interval [1; 0 < x < 1].
 * @param[in] degrees_of_freedom  Degrees of freedom, whole or not [1; >= 1].
 * @param[out] error              What went wrong, or NULL.
 * @return    Coverage factor k [1].
 */
VANE_API double vane_measure_coverage(double probability, double degrees_of_freedom,
				      vane_error *error);

/**
 * Fills in a source of uncertainty that is itself certain and acts at full size.
 *
 *     sensitivity: 1    degrees_of_freedom: 1e30    uncertainty: 0
 *
 * @source  Definition.
 *
 * @param[out] source  The record to fill; NULL is ignored.
 */
VANE_API void vane_source_default(vane_source *source);

/**
 * Uncertainty of a result from those of the quantities it depends on.
 *
 *     u^2 = sum_i sum_j c_i u_i r_ij c_j u_j
 *     nu = u^4/sum_i((c_i u_i)^4/nu_i)    U = t(probability, nu) u
 *
 * The share of a source is c_i u_i sum_j(r_ij c_j u_j)/u^2; all shares add up to 1, and one of a
 * source that cancels others is negative. Where sources are correlated the formula for nu does not
 * hold, and the least nu_i among those that count is taken.
 *
 * @valid   The result nearly a straight line in each quantity within its uncertainty; terms of
 *          second order can be given as sources of their own. A correlation matrix that no
 *          quantities can have is refused.
 * @source  JCGM 100:2008 (GUM), eq. (13), (16) and (G.2b); the degrees of freedom of correlated
 *          sources are this library's choice.
 *
 * @param[in] source       The quantities [length sources].
 * @param[in] sources      Number of quantities [1; 1 <= x <= 64].
 * @param[in] correlation  Correlation matrix, row by row, one that quantities can have
 *                         [1; -1 <= x <= 1; length elements].
 * @param[in] elements     Elements of the matrix: sources^2, or 0 for none [1; 0 <= x <= 4096].
 * @param[in] probability  Probability that the expanded uncertainty covers [1; 0 < x < 1].
 * @param[out] out         The uncertainty.
 * @param[out] share       Share of each source in the variance [1; any; length sources or NULL].
 * @param[out] error       What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_measure_combine(const vane_source *source, int64_t sources,
				      const double *correlation, int64_t elements,
				      double probability, vane_combined *out, double *share,
				      vane_error *error);

/**
 * Probability that a measured quantity is within its limits.
 *
 *     P = Phi((high - value)/u) - Phi((low - value)/u)
 *
 * @valid   The error of the measurement is normally distributed, and nothing
 *          else is known of the quantity beforehand. Within 1e-12 of itself down to 1e-290: in the
 *          tail what a quotient is rounded by counts as often as its square.
 * @source  JCGM 106:2012, 7.4.
 *
 * @param[in] value        Measured value [1; any].
 * @param[in] uncertainty  Its standard uncertainty, in the unit of value [1; >= 0].
 * @param[in] low          Lower limit, in the unit of value [1; any].
 * @param[in] high         Upper limit, in the unit of value [1; > low].
 * @param[out] error       What went wrong, or NULL.
 * @return    Probability [1].
 */
VANE_API double vane_measure_probability(double value, double uncertainty, double low, double high,
					 vane_error *error);

/**
 * Probability that a measured quantity is not above its only limit.
 *
 *     P = Phi((high - value)/u)
 *
 * @valid   As vane_measure_probability().
 * @source  JCGM 106:2012, 7.3.
 *
 * @param[in] value        Measured value [1; any].
 * @param[in] uncertainty  Its standard uncertainty, in the unit of value [1; >= 0].
 * @param[in] high         Upper limit, in the unit of value [1; any].
 * @param[out] error       What went wrong, or NULL.
 * @return    Probability [1].
 */
VANE_API double vane_measure_probability_most(double value, double uncertainty, double high,
					      vane_error *error);

/**
 * Probability that a measured quantity is not below its only limit.
 *
 *     P = Phi((value - low)/u)
 *
 * @valid   As vane_measure_probability().
 * @source  JCGM 106:2012, 7.3.
 *
 * @param[in] value        Measured value [1; any].
 * @param[in] uncertainty  Its standard uncertainty, in the unit of value [1; >= 0].
 * @param[in] low          Lower limit, in the unit of value [1; any].
 * @param[out] error       What went wrong, or NULL.
 * @return    Probability [1].
 */
VANE_API double vane_measure_probability_least(double value, double uncertainty, double low,
					       vane_error *error);

/**
 * Whether a measured value proves that its limits are kept, or broken.
 *
 *     conforms:  low + k u <= value <= high - k u
 *     fails:     value < low - k u  or  value > high + k u
 *
 * Anything else is not proven. Where 2 k u exceeds high - low nothing can be
 * proven to conform. k = 1.645 proves either with 95 % at one limit; k = 2 is
 * older practice.
 *
 * @valid   As vane_measure_probability(); limits further apart than 2 k u.
 * @source  ISO 14253-1:2017 (k = 1.645) and 1998/2013 (k = 2), from memory.
 *
 * @param[in] value         Measured value [1; any].
 * @param[in] uncertainty   Its standard uncertainty, in the unit of value [1; >= 0].
 * @param[in] low           Lower limit, in the unit of value [1; any].
 * @param[in] high          Upper limit, in the unit of value [1; > low].
 * @param[in] coverage      Guard band k in standard uncertainties [1; >= 0].
 * @param[out] verdict      A number of enum vane_verdict [1; any].
 * @param[out] probability  Probability that the limits are kept [1; 0 <= x <= 1].
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_measure_verdict(double value, double uncertainty, double low, double high,
				      double coverage, int32_t *verdict, double *probability,
				      vane_error *error);

/**
 * Whether a measured value proves that its only limit, an upper one, is kept, or broken.
 *
 *     conforms:  value <= high - k u    fails:  value > high + k u
 *
 * @valid   As vane_measure_probability().
 * @source  ISO 14253-1:2017 (k = 1.645) and 1998/2013 (k = 2), from memory.
 *
 * @param[in] value         Measured value [1; any].
 * @param[in] uncertainty   Its standard uncertainty, in the unit of value [1; >= 0].
 * @param[in] high          Upper limit, in the unit of value [1; any].
 * @param[in] coverage      Guard band k in standard uncertainties [1; >= 0].
 * @param[out] verdict      A number of enum vane_verdict [1; any].
 * @param[out] probability  Probability that the limit is kept [1; 0 <= x <= 1].
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_measure_verdict_most(double value, double uncertainty, double high,
					   double coverage, int32_t *verdict, double *probability,
					   vane_error *error);

/**
 * Whether a measured value proves that its only limit, a lower one, is kept, or broken.
 *
 *     conforms:  value >= low + k u    fails:  value < low - k u
 *
 * @valid   As vane_measure_probability().
 * @source  ISO 14253-1:2017 (k = 1.645) and 1998/2013 (k = 2), from memory.
 *
 * @param[in] value         Measured value [1; any].
 * @param[in] uncertainty   Its standard uncertainty, in the unit of value [1; >= 0].
 * @param[in] low           Lower limit, in the unit of value [1; any].
 * @param[in] coverage      Guard band k in standard uncertainties [1; >= 0].
 * @param[out] verdict      A number of enum vane_verdict [1; any].
 * @param[out] probability  Probability that the limit is kept [1; 0 <= x <= 1].
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_measure_verdict_least(double value, double uncertainty, double low,
					    double coverage, int32_t *verdict, double *probability,
					    vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
