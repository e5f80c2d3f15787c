#include "fit.h"

#include "check.h"

#include <gsl/gsl_blas.h>
#include <gsl/gsl_sort.h>
#include <gsl/gsl_statistics.h>
#include <math.h>

/* Of the normal distribution: half of all lies within this many standard deviations. */
static const double middle_half = 0.6745;
/* A scale below this part of the spread of y is rounding, not scatter; GSL's own limit. */
static const double least_scale = 1e-6;

typedef struct robust {
	const double *x, *y;
	const vane_fit_options *options;
	const gsl_multifit_robust_type *type;
	vn_factors f; /* Of all readings alike. */
} robust;

/* GSL tells of weights that do not settle through the handler that aborts the host. They must not
 * get that far, so the function that weighs, which GSL takes from its caller, ends the fit itself.
 * GSL hands it no more than the vector to fill: hence the count behind the vector. */
typedef struct counted {
	gsl_vector vector;
	const gsl_multifit_robust_type *type;
	int32_t left;
} counted;

static int weigh(const gsl_vector *r, gsl_vector *weights)
{
	counted *const c = (counted *)weights;
	return c->left-- > 0 ? c->type->wfun(r, weights) : GSL_EMAXITER;
}

/* The fit itself, of columns of length 1. */
static int settle(const robust *r, gsl_multifit_robust_workspace *w, double *coefficient)
{
	const size_t p = (size_t)r->f.columns, n = (size_t)r->f.rows;
	double square[VN_FIT_MOST * VN_FIT_MOST];
	gsl_matrix_const_view x = gsl_matrix_const_view_array(r->f.matrix, n, p);
	gsl_vector_const_view y = gsl_vector_const_view_array(r->y, n);
	gsl_vector_view b = gsl_vector_view_array(coefficient, p);
	gsl_matrix_view covariance = gsl_matrix_view_array(square, p, p);
	gsl_vector *const weights = w->weights, *const psi = w->psi;
	counted one = {*weights, r->type, r->options->iterations}, other = {*psi, r->type, 1};
	w->weights = &one.vector;
	w->psi = &other.vector;
	gsl_multifit_robust_maxiter((size_t)r->options->iterations + 1, w);
	const int status =
		gsl_multifit_robust(&x.matrix, &y.vector, &b.vector, &covariance.matrix, w);
	w->weights = weights;
	w->psi = psi;
	for (size_t j = 0; j < p; j++)
		coefficient[j] /= r->f.scale[j];
	return status;
}

/* Scale of all but the p - 1 least of the residuals as if no reading had a hold on the fit. */
static double measure(const robust *r, double *residual, gsl_multifit_robust_workspace *w)
{
	const size_t n = w->n, p = w->p;
	double *const sorted = w->workn->data;
	for (size_t i = 0; i < n; i++)
		sorted[i] = fabs(residual[i]) * gsl_vector_get(w->resfac, i);
	gsl_sort(sorted, 1, n);
	const double scale =
		gsl_stats_median_from_sorted_data(sorted + p - 1, 1, n - p + 1) / middle_half;
	const double least = least_scale * gsl_stats_sd(r->y, 1, n);
	return fmax(scale, least > 0 ? least : 1);
}

/* Weights, and standard deviation after Street and others, eq. (3) and (5), weighed with that of
 * ordinary least squares, after DuMouchel and O'Brien. GSL's own, in its statistics, takes the
 * scale from residuals that are not adjusted, and has none where all of them are 0. */
static double deviation(const robust *r, double scale, const double *residual,
			gsl_multifit_robust_workspace *w)
{
	const double n = (double)w->n, p = (double)w->p, unit = scale * w->tune;
	double mean = 0, square = 0;
	for (size_t i = 0; i < w->n; i++)
		gsl_vector_set(w->workn, i, residual[i] * gsl_vector_get(w->resfac, i) / unit);
	r->type->wfun(w->workn, w->weights);
	r->type->psi_deriv(w->workn, w->dpsi);
	for (size_t i = 0; i < w->n; i++) {
		const double factor = gsl_vector_get(w->resfac, i);
		const double psi =
			gsl_vector_get(w->workn, i) * gsl_vector_get(w->weights, i) / factor;
		mean += gsl_vector_get(w->dpsi, i) / n;
		square += psi * psi / (n - p);
	}
	/* Without any slope left the readings say nothing of a scatter. */
	if (!(mean > 0))
		return NAN;
	const double lambda = 1 + p / n * (1 - mean) / mean, plain = w->stats.sigma_ols;
	const double own = lambda * sqrt(square) * unit / mean;
	return fmax(own, sqrt((plain * plain * p * p + own * own * n) / (p * p + n)));
}

static int32_t fit(robust *r, gsl_multifit_robust_workspace *w, const vn_outputs *o,
		   vane_error *error)
{
	const int32_t p = r->f.columns;
	const int64_t n = r->f.rows;
	double b[VN_FIT_MOST] = {0}, *const residual = r->f.vectors, sum = 0;
	for (int64_t i = 0; i < n * p; i++)
		r->f.matrix[i] = r->x[i];
	for (int64_t i = 0; i < n; i++)
		r->f.right[i] = r->y[i];
	const double total = vn_fit_total(r->y, NULL, n, true);
	if (!isfinite(total) || !isfinite(vn_fit_total(r->y, NULL, n, false)) ||
	    !vn_factor(&r->f, r->options->rank_tolerance))
		return vn_fit_large(error);
	if (r->f.rank < p)
		return vn_fit_dependent(r->f.condition, error);
	const int status = settle(r, w, b);
	if (status == GSL_EMAXITER)
		return vn_fit_refuse(VANE_NO_SOLUTION, "readings", (double)r->options->iterations,
				     "The weights did not settle in the iterations allowed, the "
				     "value.",
				     error);
	if (status != GSL_SUCCESS)
		return vn_fit_large(error);
	/* The readings that have kept a weight must tell the coefficients apart by themselves. */
	if ((int32_t)gsl_multifit_linear_rank(r->options->rank_tolerance, w->multifit_p) < p)
		return vn_fit_dependent(1 / gsl_multifit_linear_rcond(w->multifit_p), error);
	for (int64_t i = 0; i < n; i++) {
		residual[i] = r->y[i];
		for (int32_t j = 0; j < p; j++)
			residual[i] -= r->x[i * p + j] * b[j];
	}
	const double scale = measure(r, residual, w);
	const double sigma = deviation(r, scale, residual, w);
	for (int64_t i = 0; i < n; i++)
		sum += gsl_vector_get(w->weights, (size_t)i) * residual[i] * residual[i];
	const vn_found found = {
		.factors = &r->f,
		.coefficient = b,
		.residual = residual,
		.weight = w->weights->data,
		.freedom = (double)(n - p),
		.square_sum = sum,
		.total = total,
		.sigma = sigma,
		.scatter = sigma,
		.scale = scale,
		.iterations = (int32_t)w->stats.numit,
	};
	return vn_fit_report(&found, o, error);
}

static int32_t run(robust *r, const vn_outputs *o, vane_error *error)
{
	gsl_multifit_robust_type ending = *r->type;
	ending.wfun = weigh;
	const size_t n = (size_t)r->f.rows, p = (size_t)r->f.columns;
	if (!vn_room(n * (p + 7) + 3 * p * (p + 2)))
		return vn_fit_memory(error);
	gsl_multifit_robust_workspace *const w = gsl_multifit_robust_alloc(&ending, n, p);
	const int32_t status = w ? fit(r, w, o, error) : vn_fit_memory(error);
	gsl_multifit_robust_free(w);
	return status;
}

int32_t vane_fit_robust(const double *x, int64_t elements, const double *y, int64_t readings,
			const vane_fit_options *options, double *coefficient,
			double *coefficient_uncertainty, double *correlation,
			vane_fit_reading *reading, vane_fit_summary *out, vane_error *error)
{
	vn_begin(error);
	const vn_outputs o = {coefficient, coefficient_uncertainty, correlation, reading, out,
			      readings};
	if (!vn_outputs_clear(&o, error) || !vn_fit_options_ok(options, error) ||
	    !vn_pointer(x, "x", error) || !vn_pointer(y, "y", error))
		return VANE_INVALID_ARGUMENT;
	const int32_t p = vn_fit_columns(elements, readings, error);
	if (p < 1 || !vn_fit_array_ok(x, elements, "x", error) ||
	    !vn_fit_array_ok(y, readings, "y", error))
		return VANE_INVALID_ARGUMENT;
	if (readings < p + 1)
		return vn_fit_few(readings, error);
	robust r = {
		.x = x,
		.y = y,
		.options = options,
		.type = options->weight == VANE_FIT_HUBER ? gsl_multifit_robust_huber
							  : gsl_multifit_robust_bisquare,
	};
	const int32_t status =
		vn_factors_open(&r.f, readings, p, 1) ? run(&r, &o, error) : vn_fit_memory(error);
	vn_factors_close(&r.f);
	if (status != VANE_OK)
		vn_outputs_clear(&o, NULL);
	return status;
}
