#include "fit.h"

#include "check.h"

#include <gsl/gsl_blas.h>
#include <gsl/gsl_multifit_nlinear.h>
#include <math.h>

/* Of a step, by the coefficients: where the trust region may stop. */
static const double step_tolerance = 1e-12;
/* Relative offsets: good enough where rounding stops it, and settled. */
static const double stuck = 1e-6, settled = 1e-10;
/* Of a sum of squares, many times over. */
static const double rounding = 1e-9;
/* Above it squares and products are not finite, and slopes that are all 0, or come to NaN, end in
 * GSL's handler. */
static const double largest = 1e140, least_slope = 1e-140;
/* Counts as a residual where the model has none: farther off than any sum of those it may have, so
 * that a step there is taken back. */
static const double beyond = 1e150;

typedef struct curve {
	const double *x, *y, *uncertainty;
	const vane_fit_options *options;
	vn_factors f; /* Of the slopes. */
	int64_t n;
	int32_t model, p;
} curve;

static double uncertainty(const curve *c, int64_t i)
{
	return c->uncertainty ? c->uncertainty[i] : 1;
}

/* Residuals by their uncertainties, for GSL's weights 1/u^2 would overflow where u does not. */
static int residuals(const gsl_vector *b, void *of, gsl_vector *out)
{
	const curve *const c = of;
	double slope[VN_FIT_MOST];
	for (int64_t i = 0; i < c->n; i++) {
		const double r =
			(vn_model(c->model, b->data, c->x[i], slope) - c->y[i]) / uncertainty(c, i);
		gsl_vector_set(out, (size_t)i, fabs(r) < largest ? r : beyond);
	}
	return GSL_SUCCESS;
}

static int slopes(const gsl_vector *b, void *of, gsl_matrix *out)
{
	const curve *const c = of;
	double greatest = 0;
	for (int64_t i = 0; i < c->n; i++) {
		double *const row = gsl_matrix_ptr(out, (size_t)i, 0);
		vn_model(c->model, b->data, c->x[i], row);
		for (int32_t j = 0; j < c->p; j++) {
			row[j] /= uncertainty(c, i);
			if (!(fabs(row[j]) < largest))
				return GSL_EBADFUNC;
			greatest = fmax(greatest, fabs(row[j]));
		}
	}
	return greatest > least_slope ? GSL_SUCCESS : GSL_ESING;
}

/* Takes apart the slopes where b is. Returns the relative offset there: the part of the residuals
 * that lies along the slopes by the part that does not, each by its degrees of freedom. */
static double offset(curve *c, const double *b, double *sum)
{
	double *const residual = c->f.vectors, *const right = c->f.right;
	double slope[VN_FIT_MOST], off[VN_FIT_MOST];
	for (int64_t i = 0; i < c->n; i++) {
		residual[i] = c->y[i] - vn_model(c->model, b, c->x[i], slope);
		right[i] = residual[i] / uncertainty(c, i);
	}
	gsl_vector_const_view at = gsl_vector_const_view_array(b, (size_t)c->p);
	gsl_vector_const_view r = gsl_vector_const_view_array(right, (size_t)c->n);
	gsl_matrix_view j = gsl_matrix_view_array(c->f.matrix, (size_t)c->n, (size_t)c->p);
	gsl_vector_view along = gsl_vector_view_array(off, (size_t)c->p);
	gsl_blas_ddot(&r.vector, &r.vector, sum);
	if (!(*sum < largest * largest) || slopes(&at.vector, c, &j.matrix) == GSL_EBADFUNC ||
	    !vn_factor(&c->f, c->options->rank_tolerance))
		return INFINITY;
	/* Residuals that are rounding have nothing left along or across. */
	if (!(*sum > 1e-26 * vn_fit_total(c->y, c->uncertainty, c->n, false)))
		return 0;
	gsl_matrix_const_view u =
		gsl_matrix_const_submatrix(c->f.work->A, 0, 0, (size_t)c->n, (size_t)c->p);
	double part;
	gsl_blas_dgemv(CblasTrans, 1, &u.matrix, &r.vector, 0, &along.vector);
	gsl_blas_ddot(&along.vector, &along.vector, &part);
	const double across = fmax(*sum - part, 1e-30 * *sum);
	return sqrt(part / c->p / (across / (double)(c->n > c->p ? c->n - c->p : 1)));
}

/* Plain steps on the tangent by GSL's linear least squares, as long as each lessens the offset: the
 * trust region ends where the sum is flat to rounding, long before the coefficients are. */
static bool polish(curve *c, double *b, double *sum)
{
	double before[VN_FIT_MOST], change[VN_FIT_MOST];
	double off = offset(c, b, sum);
	const double most = *sum * (1 + rounding);
	while (off > settled && isfinite(off) && c->f.rank == c->p && vn_solve(&c->f, 0, change)) {
		for (int32_t j = 0; j < c->p; j++) {
			before[j] = b[j];
			b[j] += change[j];
		}
		const double next = offset(c, b, sum);
		if (next < 0.9 * off && *sum <= most) {
			off = next;
			continue;
		}
		for (int32_t j = 0; j < c->p; j++)
			b[j] = before[j];
		off = offset(c, b, sum);
		break;
	}
	return off <= stuck;
}

/* GSL's trust region, Levenberg-Marquardt with geodesic acceleration. Returns whether it ended
 * within the iterations. The loop is that of gsl_multifit_nlinear_driver(), which goes on after a
 * step to where the slopes fail, with what is left of them. */
static bool descend(curve *c, double *b, gsl_multifit_nlinear_workspace *w, int32_t *iterations)
{
	gsl_multifit_nlinear_fdf fdf = {
		.f = residuals,
		.df = slopes,
		.n = (size_t)c->n,
		.p = (size_t)c->p,
		.params = c,
	};
	gsl_vector_view at = gsl_vector_view_array(b, (size_t)c->p);
	int why = 0;
	bool ended = false;
	if (gsl_multifit_nlinear_init(&at.vector, &fdf, w) != GSL_SUCCESS)
		return true;
	for (*iterations = 0; !ended && *iterations < c->options->iterations; (*iterations)++) {
		const int status = gsl_multifit_nlinear_iterate(w);
		/* After steps that led nowhere it begins again with its first damping. */
		const bool goes_on =
			status == GSL_SUCCESS || (status == GSL_ENOPROG && *iterations > 0);
		/* GSL's tolerance of the gradient hangs on the units of y, hence none. */
		ended = !goes_on ||
			gsl_multifit_nlinear_test(step_tolerance, 0, 0, &why, w) == GSL_SUCCESS;
	}
	gsl_vector_memcpy(&at.vector, gsl_multifit_nlinear_position(w));
	return ended;
}

static int32_t fit(curve *c, const double *start, gsl_multifit_nlinear_workspace *w,
		   const vn_outputs *o, vane_error *error)
{
	double b[VN_FIT_MOST] = {0}, sum = 0;
	int32_t iterations = 0;
	for (int32_t j = 0; j < c->p; j++)
		b[j] = start[j];
	if (!isfinite(offset(c, b, &sum)))
		return vn_fit_refuse(VANE_OUT_OF_RANGE, "start", 0,
				     "The model has no value at these coefficients, or is too "
				     "large.",
				     error);
	const bool ended = descend(c, b, w, &iterations);
	const bool still = polish(c, b, &sum);
	if (c->f.rank < c->p)
		return vn_fit_refuse(VANE_NOT_IDENTIFIABLE, "x", c->f.condition,
				     "Where the curve came to rest its coefficients cannot be told "
				     "apart: begin elsewhere, or take fewer; the value is the "
				     "condition number.",
				     error);
	if (!ended || !still)
		return vn_fit_refuse(VANE_NO_SOLUTION, "start", sum,
				     "The curve did not settle: begin nearer, or take another "
				     "model; the value is the sum of squares reached.",
				     error);
	const double freedom = (double)(c->n - c->p);
	const double sigma = freedom > 0 ? sqrt(sum / freedom) : 0;
	const double scatter = c->options->known ? 1 : sigma;
	const vn_found found = {
		.factors = &c->f,
		.coefficient = b,
		.residual = c->f.vectors,
		.uncertainty = c->uncertainty,
		.freedom = freedom,
		.square_sum = sum,
		.total = vn_fit_total(c->y, c->uncertainty, c->n, true),
		.sigma = sigma,
		.scatter = scatter,
		.scale = scatter,
		.iterations = iterations,
	};
	return vn_fit_report(&found, o, error);
}

static int32_t run(curve *c, const double *start, const vn_outputs *o, vane_error *error)
{
	const size_t n = (size_t)c->n, p = (size_t)c->p;
	gsl_multifit_nlinear_parameters parameters = gsl_multifit_nlinear_default_parameters();
	/* Scaled after More by default: of GSL's methods that do not hang on the units of the
	 * coefficients the one that reaches every certified set of the tests. */
	parameters.trs = gsl_multifit_nlinear_trs_lmaccel;
	if (!vn_room(n * (2 * p + 10) + 8 * p * (p + 4)))
		return vn_fit_memory(error);
	gsl_multifit_nlinear_workspace *const w =
		gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &parameters, n, p);
	const int32_t status = w ? fit(c, start, w, o, error) : vn_fit_memory(error);
	gsl_multifit_nlinear_free(w);
	return status;
}

int32_t vane_fit_curve(int32_t model, const double *x, const double *y, const double *uncertainty,
		       int64_t weights, int64_t readings, const double *start, int64_t coefficients,
		       const vane_fit_options *options, double *coefficient,
		       double *coefficient_uncertainty, double *correlation,
		       vane_fit_reading *reading, vane_fit_summary *out, vane_error *error)
{
	vn_begin(error);
	const vn_outputs o = {coefficient, coefficient_uncertainty, correlation, reading, out,
			      readings};
	if (!vn_outputs_clear(&o, error) || !vn_fit_options_ok(options, error) ||
	    !vn_model_ok(model, coefficients, x, readings, error) ||
	    !vn_fit_array_ok(y, readings, "y", error) ||
	    !vn_fit_uncertainty_ok(uncertainty, weights, readings, error) ||
	    !vn_fit_array_ok(start, coefficients, "start", error))
		return VANE_INVALID_ARGUMENT;
	const int32_t p = (int32_t)coefficients;
	if (readings < p + (options->known ? 0 : 1))
		return vn_fit_few(readings, error);
	curve c = {
		.x = x,
		.y = y,
		.uncertainty = weights > 0 ? uncertainty : NULL,
		.options = options,
		.n = readings,
		.model = model,
		.p = p,
	};
	const int32_t status = vn_factors_open(&c.f, readings, p, 1) ? run(&c, start, &o, error)
								     : vn_fit_memory(error);
	vn_factors_close(&c.f);
	if (status != VANE_OK)
		vn_outputs_clear(&o, NULL);
	return status;
}

int32_t vane_fit_curve_at(int32_t model, const double *coefficient, int64_t coefficients,
			  const double *x, int64_t readings, double *y, vane_error *error)
{
	vn_begin(error);
	const bool counted = readings >= 1 && readings <= VN_FIT_MOST_READINGS;
	for (int64_t i = 0; y && counted && i < readings; i++)
		y[i] = NAN;
	if (!vn_count(readings, 1, VN_FIT_MOST_READINGS, "readings", error) ||
	    !vn_pointer(y, "y", error) || !vn_model_ok(model, coefficients, x, readings, error) ||
	    !vn_fit_array_ok(coefficient, coefficients, "coefficient", error))
		return VANE_INVALID_ARGUMENT;
	for (int64_t i = 0; i < readings; i++) {
		double slope[VN_FIT_MOST];
		y[i] = vn_model(model, coefficient, x[i], slope);
		if (isfinite(y[i]))
			continue;
		for (int64_t j = 0; j < readings; j++)
			y[j] = NAN;
		vn_refuse_result(NAN, error);
		vn_at(i, error);
		return VANE_OUT_OF_RANGE;
	}
	return VANE_OK;
}
