#include "fit.h"

#include "check.h"

#include <gsl/gsl_blas.h>
#include <gsl/gsl_linalg.h>
#include <math.h>
#include <stdlib.h>

typedef struct working {
	double *matrix;
	double *right;
	double scale[VN_FIT_MOST];
} working;

static int32_t refuse(int32_t code, const char *text, vane_error *error)
{
	vn_fail(code, "readings", 0, text, error);
	return code;
}

/* Columns of length 1, so that neither the rank nor the condition number
 * depends on the units of the coefficients. */
static bool load(const double *x, const double *y, int64_t n, int32_t p, working *w)
{
	for (int64_t i = 0; i < n; i++) {
		w->right[i] = y[i];
		for (int32_t j = 0; j < p; j++)
			w->matrix[i * p + j] = x[i * p + j];
	}
	gsl_matrix_view a = gsl_matrix_view_array(w->matrix, (size_t)n, (size_t)p);
	for (int32_t j = 0; j < p; j++) {
		gsl_vector_view column = gsl_matrix_column(&a.matrix, (size_t)j);
		const double length = gsl_blas_dnrm2(&column.vector);
		if (!isfinite(length))
			return false;
		w->scale[j] = length > 0 ? length : 1;
		for (int64_t i = 0; i < n; i++)
			w->matrix[i * p + j] /= w->scale[j];
	}
	gsl_vector_view b = gsl_vector_view_array(w->right, (size_t)n);
	return isfinite(gsl_blas_dnrm2(&b.vector));
}

/* Reduces to the triangle first: the rest then does not grow with n. */
static bool triangle(working *w, int64_t n, int32_t p)
{
	double tau[VN_FIT_MOST];
	gsl_matrix_view a = gsl_matrix_view_array(w->matrix, (size_t)n, (size_t)p);
	gsl_vector_view b = gsl_vector_view_array(w->right, (size_t)n);
	gsl_vector_view t = gsl_vector_view_array(tau, (size_t)p);
	gsl_linalg_QR_decomp(&a.matrix, &t.vector);
	gsl_linalg_QR_QTvec(&a.matrix, &t.vector, &b.vector);
	for (int32_t i = 0; i < p; i++) {
		bool finite = isfinite(w->right[i]);
		for (int32_t j = 0; j < p; j++) {
			if (j < i)
				w->matrix[i * p + j] = 0;
			finite = finite && isfinite(w->matrix[i * p + j]);
		}
		if (!finite)
			return false;
	}
	return true;
}

static void solve(working *w, int32_t p, double tolerance, vn_fit *out)
{
	double v[VN_FIT_MOST * VN_FIT_MOST], s[VN_FIT_MOST], z[VN_FIT_MOST];
	gsl_matrix_view u = gsl_matrix_view_array(w->matrix, (size_t)p, (size_t)p);
	gsl_matrix_view vm = gsl_matrix_view_array(v, (size_t)p, (size_t)p);
	gsl_vector_view sv = gsl_vector_view_array(s, (size_t)p);
	gsl_linalg_SV_decomp_jacobi(&u.matrix, &vm.matrix, &sv.vector);

	out->rank = 0;
	for (int32_t k = 0; k < p; k++)
		out->rank += s[k] > tolerance * s[0];
	out->condition = s[0] / s[p - 1];
	if (out->rank < p)
		return;
	for (int32_t k = 0; k < p; k++) {
		z[k] = 0;
		for (int32_t i = 0; i < p; i++)
			z[k] += w->matrix[i * p + k] * w->right[i];
		z[k] /= s[k];
	}
	for (int32_t i = 0; i < p; i++) {
		double sum = 0;
		for (int32_t k = 0; k < p; k++)
			sum += v[i * p + k] * z[k];
		out->coefficient[i] = sum / w->scale[i];
		for (int32_t j = 0; j < p; j++) {
			double c = 0;
			for (int32_t k = 0; k < p; k++)
				c += v[i * p + k] / s[k] * (v[j * p + k] / s[k]);
			out->correlation[i * p + j] = c;
		}
	}
}

/* From the residuals themselves: the sum left over by the reduction would lose
 * the digits that small residuals need. */
static bool finish(const double *x, const double *y, int64_t n, int32_t p, const working *w,
		   vn_fit *out)
{
	double sum = 0;
	for (int64_t i = 0; i < n; i++) {
		double residual = y[i];
		for (int32_t j = 0; j < p; j++)
			residual -= x[i * p + j] * out->coefficient[j];
		sum += residual * residual;
	}
	out->square_sum = sum;
	out->freedom = n - p;
	const double sigma = out->freedom > 0 ? sqrt(sum / (double)out->freedom) : 0;
	bool finite = isfinite(sum);
	double root[VN_FIT_MOST];
	for (int32_t i = 0; i < p; i++) {
		root[i] = sqrt(out->correlation[i * p + i]);
		out->uncertainty[i] = sigma / w->scale[i] * root[i];
		finite = finite && isfinite(out->coefficient[i]) && isfinite(out->uncertainty[i]);
	}
	for (int32_t i = 0; i < p; i++)
		for (int32_t j = 0; j < p; j++) {
			double *const r = &out->correlation[i * p + j];
			*r = i == j ? 1 : *r / root[i] / root[j];
			/* Of a NaN the bounds below would make a 1. */
			finite = finite && isfinite(*r);
			/* Rounding must not carry it past 1. */
			*r = fmax(-1, fmin(1, *r));
		}
	return finite;
}

static int32_t fit(const double *x, const double *y, int64_t n, int32_t p, double tolerance,
		   working *w, vn_fit *out, vane_error *error)
{
	static const char *const large = "The readings are too large or too unlike for a fit.";
	if (!load(x, y, n, p, w) || !triangle(w, n, p))
		return refuse(VANE_OUT_OF_RANGE, large, error);
	solve(w, p, tolerance, out);
	if (out->rank < p)
		return refuse(VANE_NOT_IDENTIFIABLE,
			      "The readings do not vary enough to tell the coefficients apart.",
			      error);
	if (!finish(x, y, n, p, w, out))
		return refuse(VANE_OUT_OF_RANGE, large, error);
	return VANE_OK;
}

int32_t vn_fit_linear(const double *x, const double *y, int64_t n, int32_t p, double tolerance,
		      vn_fit *out, vane_error *error)
{
	*out = (vn_fit){.condition = NAN, .columns = p};
	if (!vn_count(p, 1, VN_FIT_MOST, "columns", error) ||
	    !vn_count(n, 0, VN_FIT_MOST_READINGS, "readings", error))
		return VANE_INVALID_ARGUMENT;
	if (n < p)
		return refuse(VANE_NOT_IDENTIFIABLE, "Fewer readings than coefficients.", error);
	double *memory = malloc((size_t)n * (size_t)(p + 1) * sizeof *memory);
	if (!memory)
		return refuse(VANE_NO_MEMORY, "Working memory for the fit could not be had.",
			      error);
	working w = {.matrix = memory, .right = memory + n * p};
	const int32_t status = fit(x, y, n, p, tolerance, &w, out, error);
	free(memory);
	return status;
}
