/**
 * @file fit.h
 * Least squares: lines, polynomials, curves; with what the readings can bear.
 *
 * x and y are in whatever units they were read in, and the coefficients in the
 * units that follow. What is marked [1] and said to be in the unit of y is in it.
 * A fit that the readings do not determine is refused, not returned.
 */
#ifndef VANE_FIT_H
#define VANE_FIT_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** The greatest number of coefficients of a fit. The number is never changed. */
enum vane_fit_size {
	VANE_FIT_COEFFICIENTS = 16 /**< Room that arrays of coefficients must have. */
};

/** How a robust fit weighs a reading that is r standard deviations off. The numbers are never
 * changed. */
enum vane_fit_weight {
	VANE_FIT_BISQUARE = 1, /**< (1 - (r/c)^2)^2 up to c, and 0 beyond; c = 4.685. */
	VANE_FIT_HUBER = 2     /**< 1 up to c, and c/r beyond; c = 1.345. */
};

/** Curves y of x with coefficients b1, b2... The numbers are never changed. */
enum vane_fit_model {
	VANE_FIT_SATURATION = 1,      /**< b1 (1 - exp(-b2 x)): approach to a steady value. */
	VANE_FIT_DECAY = 2,           /**< b1 exp(-b2 x) + b3: cooling, leak-down. */
	VANE_FIT_TWO_DECAYS = 3,      /**< b1 + b2 exp(-b4 x) + b3 exp(-b5 x). */
	VANE_FIT_POWER = 4,           /**< b1 x^b2, for x > 0: slip against pressure. */
	VANE_FIT_POWER_OFFSET = 5,    /**< b1 + b2 x^b3, for x > 0: loss with a constant part. */
	VANE_FIT_VOGEL = 6,           /**< b1 exp(b2/(x + b3)): viscosity against temperature. */
	VANE_FIT_HYPERBOLA = 7,       /**< b1 b2 x/(1 + b2 x). */
	VANE_FIT_DECAY_RATIO = 8,     /**< exp(-b1 x)/(b2 + b3 x). */
	VANE_FIT_QUADRATIC_RATIO = 9, /**< b1 (x^2 + b2 x)/(x^2 + b3 x + b4). */
	VANE_FIT_CUBIC_RATIO =
		10,             /**< (b1 + b2 x + b3 x^2 + b4 x^3)/(1 + b5 x + b6 x^2 + b7 x^3). */
	VANE_FIT_LOGISTIC = 11, /**< b1/(1 + exp(b2 - b3 x)). */
	VANE_FIT_STRIBECK = 12  /**< b1 + b2 exp(-b3 x) + b4 x: friction against speed. */
};

/** How a fit is made. */
typedef struct vane_fit_options {
	double rank_tolerance; /**< Part of the greatest singular value that counts as none [1; 0 <= x <= 1]. */
	double ridge;          /**< Ridge parameter, columns of length 1; 0 for none [1; >= 0]. */
	int32_t known;         /**< 1 if the uncertainties of y are known, 0 if only their ratios are [1; 0 <= x <= 1]. */
	int32_t weight;        /**< A number of enum vane_fit_weight, for a robust fit [1; 1 <= x <= 2]. */
	int32_t iterations;    /**< Most iterations of a robust fit or a curve [1; 1 <= x <= 100000]. */
} vane_fit_options;

/** How well a fit is determined, and how well it describes the readings. */
typedef struct vane_fit_summary {
	double residual;           /**< Standard deviation of a reading of weight 1, in the unit of y, or by its uncertainty [1; >= 0]. */
	double square_sum;         /**< Weighted sum of the squared residuals [1; >= 0]. */
	double r_squared;          /**< Part of the variation that the fit describes [1; <= 1]. */
	double condition;          /**< Condition number, columns of length 1 [1; >= 1]. */
	double degrees_of_freedom; /**< Readings less coefficients; more with a ridge [1; >= 0]. */
	int64_t outliers;          /**< Readings more than 3 standard deviations off [1; >= 0]. */
	int32_t coefficients;      /**< Number of coefficients [1; >= 1]. */
	int32_t rank;              /**< How many the readings determine [1; >= 1]. */
	int32_t iterations;        /**< Iterations made; 0 for a fit that needs none [1; >= 0]. */
	int32_t caution;           /**< Set of enum vane_caution [1; any]. */
} vane_fit_summary;

/** What one reading does to a fit. */
typedef struct vane_fit_reading {
	double residual;     /**< Reading less fit, in the unit of y [1; any]. */
	double standardized; /**< Residual by its own standard deviation [1; any]. */
	double leverage;     /**< How far the reading draws the fit to itself [1; 0 <= x <= 1]. */
	double distance;     /**< Cook's distance: how far the fit would move without it [1; >= 0]. */
	double weight;       /**< What a robust fit made of it; otherwise 1 [1; 0 <= x <= 1]. */
} vane_fit_reading;

/**
 * Fills in the usual way to make a fit.
 *
 *     rank_tolerance: 1e-10   ridge: 0   known: 0   weight: bisquare   iterations: 2000
 *
 * @source  Definition.
 *
 * @param[out] options  The record to fill; NULL is ignored.
 */
VANE_API void vane_fit_options_default(vane_fit_options *options);

/**
 * Linear least squares.
 *
 *     sum(((y_i - sum_j x_ij b_j)/u_i)^2) + ridge^2 sum((l_j b_j)^2) = least
 *     cov b = s^2 (A'A + ridge^2 L^2)^-1 A'A (A'A + ridge^2 L^2)^-1
 *
 * A has the rows x_i/u_i, l_j is the length of its column j, and L has the l_j on its diagonal. s^2
 * is the sum of the squares by the degrees of freedom, n - sum(s_k^2/(s_k^2 + ridge^2)) over the
 * singular values of A with its columns of length 1; with known uncertainties it is 1. R^2 is about
 * the mean if a column of x is constant, about 0 if none is. Cook's distance and the standardized
 * residual are 0 where the leverage is 1.
 *
 * A condition number above 30 sets VANE_CAUTION_ILL_CONDITIONED. One above 1/rank_tolerance, and
 * too few readings, are VANE_NOT_IDENTIFIABLE; the error's value is then the condition number or
 * the number of readings. A rank_tolerance below 2^-52 counts as that. A ridge lifts the first
 * refusal; it also biases every coefficient towards 0, the constant among them, and its
 * uncertainties do not show that. Residuals by their uncertainties of which the squares are too
 * great or too small for a double, some 1e154 or 1e-154, are VANE_OUT_OF_RANGE in every fit.
 *
 * @valid   Independent errors in y, none in x.
 * @source  Golub and Van Loan, Matrix Computations, 4th ed., 5.3 and 6.1.4; Cook, Detection of
 *          influential observation in linear regression, Technometrics 19 (1977), 15-18; Belsley,
 *          Kuh and Welsch, Regression Diagnostics (1980), ch. 3 (condition 30). From memory.
 *
 * @param[in] x             Readings by columns, row by row [any; any; length elements].
 * @param[in] elements      Elements of x, a multiple of readings by the number of columns
 *                          [1; readings <= x <= 16 readings].
 * @param[in] y             What is to be described [any; any; length readings].
 * @param[in] uncertainty   Standard uncertainty of each y, in its unit [1; > 0; length weights].
 * @param[in] weights       readings, or 0 for equal uncertainties of 1 [1; 0 <= x <= readings].
 * @param[in] readings      Number of readings [1; 1 <= x <= 1000000].
 * @param[in] options       How the fit is made.
 * @param[out] coefficient              One for each column, then 0 [any; any; length 16].
 * @param[out] coefficient_uncertainty  Standard uncertainty of each, then 0 [any; any; length 16].
 * @param[out] correlation  Of coefficients i and j at 16 i + j, then 0 [1; -1 <= x <= 1; length 256 or NULL].
 * @param[out] reading      What each reading does [length readings or NULL].
 * @param[out] out          How well the fit is determined.
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_fit_linear(const double *x, int64_t elements, const double *y,
				 const double *uncertainty, int64_t weights, int64_t readings,
				 const vane_fit_options *options, double *coefficient,
				 double *coefficient_uncertainty, double *correlation,
				 vane_fit_reading *reading, vane_fit_summary *out,
				 vane_error *error);

/**
 * Polynomial by least squares.
 *
 *     y = b_0 + b_1 x + b_2 x^2 + ...
 *
 * Solved in Chebyshev polynomials over the range of x, then written out in powers of x. The
 * condition number is that of the Chebyshev columns, which is what limits the digits. Away from
 * x = 0 the powers nearly cancel, and a coefficient by itself says little.
 *
 * @valid   As vane_fit_linear(); degree + 1 different x or more. The ridge is not used.
 * @source  Forsythe, Generation and use of orthogonal polynomials, SIAM J. 5 (1957), 74-88, for
 *          the change of basis, from memory; otherwise as vane_fit_linear().
 *
 * @param[in] x             Abscissa of each reading [any; any; length readings].
 * @param[in] y             What is to be described [any; any; length readings].
 * @param[in] uncertainty   Standard uncertainty of each y, in its unit [1; > 0; length weights].
 * @param[in] weights       readings, or 0 for equal uncertainties of 1 [1; 0 <= x <= readings].
 * @param[in] readings      Number of readings [1; 1 <= x <= 1000000].
 * @param[in] degree        Degree of the polynomial [1; 0 <= x <= 15].
 * @param[in] options       How the fit is made.
 * @param[out] coefficient              That of x^i at i, then 0 [any; any; length 16].
 * @param[out] coefficient_uncertainty  Standard uncertainty of each, then 0 [any; any; length 16].
 * @param[out] reading      What each reading does [length readings or NULL].
 * @param[out] out          How well the fit is determined.
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_fit_polynomial(const double *x, const double *y, const double *uncertainty,
				     int64_t weights, int64_t readings, int32_t degree,
				     const vane_fit_options *options, double *coefficient,
				     double *coefficient_uncertainty, vane_fit_reading *reading,
				     vane_fit_summary *out, vane_error *error);

/**
 * Linear fit that a few wild readings do not draw aside.
 *
 *     sum(rho((y_i - sum_j x_ij b_j)/(s sqrt(1 - h_i)))) = least
 *
 * Weighted least squares, the weights from the residuals of the fit before, until the coefficients
 * stay the same to 1.5e-8 of their size. h_i is the leverage of ordinary least squares, and s the
 * median of the absolute r_i/sqrt(1 - h_i) but the p - 1 least, by 0.6745, or 1e-6 of the standard
 * deviation of y if that is more. `residual` is the standard deviation of Street and others,
 * weighed with that of ordinary least squares. The reading's residual, weight, and standardized
 * residual, which is by s, show the outliers; its leverage is h_i. The options' ridge and known are
 * not used. Weights that leave too few readings to tell the coefficients apart are
 * VANE_NOT_IDENTIFIABLE, and weights that do not settle VANE_NO_SOLUTION.
 *
 * @valid   As vane_fit_linear(); fewer than half of the readings wild, and none wild in x.
 * @source  Huber, Robust Statistics (1981), ch. 7; Street, Carroll and Ruppert, A note on computing
 *          robust regression estimates via iteratively reweighted least squares, The American
 *          Statistician 42 (1988), 152-154; DuMouchel and O'Brien, Integrating a robust option into
 *          a multiple regression computing environment (1989). From memory.
 *
 * @param[in] x             Readings by columns, row by row [any; any; length elements].
 * @param[in] elements      Elements of x, a multiple of readings by the number of columns
 *                          [1; readings <= x <= 16 readings].
 * @param[in] y             What is to be described [any; any; length readings].
 * @param[in] readings      Number of readings [1; 1 <= x <= 1000000].
 * @param[in] options       How the fit is made.
 * @param[out] coefficient              One for each column, then 0 [any; any; length 16].
 * @param[out] coefficient_uncertainty  Standard uncertainty of each, then 0 [any; any; length 16].
 * @param[out] correlation  Of coefficients i and j at 16 i + j, then 0 [1; -1 <= x <= 1; length 256 or NULL].
 * @param[out] reading      What each reading does [length readings or NULL].
 * @param[out] out          How well the fit is determined.
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_fit_robust(const double *x, int64_t elements, const double *y,
				 int64_t readings, const vane_fit_options *options,
				 double *coefficient, double *coefficient_uncertainty,
				 double *correlation, vane_fit_reading *reading,
				 vane_fit_summary *out, vane_error *error);

/**
 * Curve through readings by non-linear least squares.
 *
 *     sum(((y_i - f(x_i; b))/u_i)^2) = least
 *
 * Levenberg-Marquardt with geodesic acceleration in a trust region from the start values, with the
 * derivatives of the model, until a step is below 1e-12 of every coefficient; then plain steps as
 * long as each lessens the relative offset, the part of the residuals that a step could still take
 * away. It has settled with an offset of 1e-6 or less, and stops at 1e-10; otherwise, or beyond the
 * iterations, VANE_NO_SOLUTION. Residuals and slopes by their uncertainties must be below 1e140.
 *
 * Where it settles is a least sum among its neighbours, not of all: try other start values.
 * Coefficients that cannot be told apart there are VANE_NOT_IDENTIFIABLE, with the condition number
 * in the error. The uncertainties are those of the straight fit that touches the curve. R^2 is
 * about the mean. The options' ridge is not used.
 *
 * @valid   Independent errors in y, none in x; uncertainties while the curve is nearly straight in
 *          the coefficients over them.
 * @source  Marquardt, An algorithm for least-squares estimation of nonlinear parameters, J. SIAM 11
 *          (1963), 431-441; Transtrum, Machta and Sethna, Geometry of nonlinear least squares,
 *          Phys. Rev. E 83 (2011) 036701; Bates and Watts, Nonlinear Regression Analysis and Its
 *          Applications (1988), 2.2.3 (relative offset). From memory.
 *
 * @param[in] model         A number of enum vane_fit_model [1; 1 <= x <= 12].
 * @param[in] x             Abscissa of each reading, above 0 for a power
 *                          [any; any; length readings].
 * @param[in] y             What is to be described [any; any; length readings].
 * @param[in] uncertainty   Standard uncertainty of each y, in its unit [1; > 0; length weights].
 * @param[in] weights       readings, or 0 for equal uncertainties of 1 [1; 0 <= x <= readings].
 * @param[in] readings      Number of readings [1; 1 <= x <= 1000000].
 * @param[in] start         Where to begin: b1, b2... [any; any; length coefficients].
 * @param[in] coefficients  Number of them, as many as the model has [1; 2 <= x <= 7].
 * @param[in] options       How the fit is made.
 * @param[out] coefficient              b1, b2..., then 0 [any; any; length 16].
 * @param[out] coefficient_uncertainty  Standard uncertainty of each, then 0 [any; any; length 16].
 * @param[out] correlation  Of coefficients i and j at 16 i + j, then 0 [1; -1 <= x <= 1; length 256 or NULL].
 * @param[out] reading      What each reading does [length readings or NULL].
 * @param[out] out          How well the fit is determined.
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_fit_curve(int32_t model, const double *x, const double *y,
				const double *uncertainty, int64_t weights, int64_t readings,
				const double *start,
				int64_t coefficients, const vane_fit_options *options,
				double *coefficient, double *coefficient_uncertainty,
				double *correlation, vane_fit_reading *reading,
				vane_fit_summary *out, vane_error *error);

/**
 * A curve at given places.
 *
 * @valid   Where the model has a value: VANE_OUT_OF_RANGE at a pole, with the place in the error.
 * @source  Definition.
 *
 * @param[in] model         A number of enum vane_fit_model [1; 1 <= x <= 12].
 * @param[in] coefficient   b1, b2... [any; any; length coefficients].
 * @param[in] coefficients  Number of them, as many as the model has [1; 2 <= x <= 7].
 * @param[in] x             Abscissas, above 0 for a power [any; any; length readings].
 * @param[in] readings      Number of places [1; 1 <= x <= 1000000].
 * @param[out] y            The curve there [any; any; length readings].
 * @param[out] error        What went wrong, or NULL.
 * @return    VANE_OK or a number of enum vane_status.
 */
VANE_API int32_t vane_fit_curve_at(int32_t model, const double *coefficient, int64_t coefficients,
				   const double *x, int64_t readings, double *y, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
