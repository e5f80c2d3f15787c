/*
 * The one door to GSL's least squares. Everything is checked before GSL sees
 * it, for its error handler aborts the host; and memory is the door's own, for
 * GSL reports a failed allocation through that handler.
 */
#ifndef VANE_LIB_FIT_H
#define VANE_LIB_FIT_H

#include "vane/error.h"

#include <stdint.h>

enum { VN_FIT_MOST = 6, VN_FIT_MOST_READINGS = 1000000 };

typedef struct vn_fit {
	double coefficient[VN_FIT_MOST];
	double uncertainty[VN_FIT_MOST];               /* Standard, all 0 without freedom. */
	double correlation[VN_FIT_MOST * VN_FIT_MOST]; /* Rows of `columns`. */
	double square_sum;                             /* Of the residuals. */
	double condition;                              /* Of the matrix, columns of length 1. */
	int64_t freedom;
	int32_t columns;
	int32_t rank;
} vn_fit;

/*
 * Least squares of y on the columns of x, n rows of p numbers. The uncertainties are those of the
 * scatter found. A singular value below `tolerance` of the greatest counts as lost rank. Returns
 * VANE_NOT_IDENTIFIABLE for fewer rows than columns or lost rank (condition and rank then still
 * tell), VANE_OUT_OF_RANGE, VANE_NO_MEMORY.
 */
int32_t vn_fit_linear(const double *x, const double *y, int64_t n, int32_t p, double tolerance,
		      vn_fit *out, vane_error *error);

#endif
