#include "fit.h"

#include "check.h"

#include <float.h>
#include <gsl/gsl_cblas.h>
#include <math.h>
#include <stdlib.h>

/* GSL drops what lies below this part of the greatest singular value. */
static const double least_tolerance = DBL_EPSILON;
/* In a column of length 1 less than this is nothing: far below what rounding does to it. */
static const double nothing = 1e-30;

/* GSL allocates its workspaces itself, and reports that it could not through the handler that
 * aborts the host. So malloc is asked for as much first, and where that fails GSL is not entered.
 * With 1e6 rows of 16 columns at most, all of it stays below 1e8 numbers. */
bool vn_room(size_t numbers)
{
	/* More for the heads of GSL's vectors and matrices. A compiler may leave out an allocation
	 * that nothing uses, and take it for granted, but for the volatile. */
	void *volatile memory = malloc((numbers + 1000) * sizeof(double));
	const bool had = memory != NULL;
	free(memory);
	return had;
}

bool vn_factors_open(vn_factors *f, int64_t n, int32_t p, int32_t vectors)
{
	const size_t rows = (size_t)(n + p), columns = (size_t)p;
	*f = (vn_factors){.rows = n, .columns = p};
	f->matrix = malloc(rows * (columns + 1 + (size_t)vectors) * sizeof *f->matrix);
	if (!f->matrix || !vn_room(rows * (columns + 1) + 2 * columns * (columns + 2)))
		return false;
	f->right = f->matrix + (n + p) * p;
	f->vectors = f->right + n + p;
	f->work = gsl_multifit_linear_alloc(rows, columns);
	return f->work != NULL;
}

void vn_factors_close(vn_factors *f)
{
	gsl_multifit_linear_free(f->work);
	free(f->matrix);
}

/* Columns of length 1, so that neither the rank nor the condition number
 * depends on the units of the coefficients; GSL's own balancing is to powers
 * of 2 only. */
static bool scale(vn_factors *f)
{
	const int64_t n = f->rows;
	const int32_t p = f->columns;
	for (int32_t j = 0; j < p; j++) {
		double *const column = f->matrix + j;
		const double length = cblas_dnrm2((int)n, column, p);
		if (!isfinite(length))
			return false;
		f->scale[j] = length > 0 ? length : 1;
		for (int64_t i = 0; i < n; i++) {
			const double x = column[i * p];
			column[i * p] = fabs(x) > nothing * f->scale[j] ? x / f->scale[j] : 0;
		}
	}
	return isfinite(cblas_dnrm2((int)n, f->right, 1));
}

/* Rows below the matrix that hold every singular value above nothing. GSL's do not settle where
 * they drown in denormal numbers, and it says so through its handler. */
static void hold(vn_factors *f)
{
	for (int32_t i = 0; i < f->columns; i++) {
		double *const row = f->matrix + (f->rows + i) * f->columns;
		for (int32_t j = 0; j < f->columns; j++)
			row[j] = i == j ? nothing : 0;
		f->right[f->rows + i] = 0;
	}
}

static gsl_matrix_view held(const vn_factors *f)
{
	return gsl_matrix_view_array(f->matrix, (size_t)(f->rows + f->columns), (size_t)f->columns);
}

bool vn_factor(vn_factors *f, double tolerance)
{
	if (!scale(f))
		return false;
	hold(f);
	const gsl_matrix_view a = held(f);
	if (gsl_multifit_linear_svd(&a.matrix, f->work) != GSL_SUCCESS)
		return false;
	/* The greatest is 1 or more but where all columns are 0. */
	const bool any = gsl_vector_get(f->work->S, 0) > 0.5;
	const size_t rank = gsl_multifit_linear_rank(fmax(tolerance, least_tolerance), f->work);
	f->rank = any ? (int32_t)rank : 0;
	f->condition = any ? 1 / gsl_multifit_linear_rcond(f->work) : INFINITY;
	return true;
}

bool vn_solve(const vn_factors *f, double ridge, double *coefficient)
{
	const gsl_matrix_view a = held(f);
	gsl_vector_const_view y = gsl_vector_const_view_array(f->right, a.matrix.size1);
	gsl_vector_view c = gsl_vector_view_array(coefficient, a.matrix.size2);
	double residual, size;
	if (gsl_multifit_linear_solve(ridge, &a.matrix, &y.vector, &c.vector, &residual, &size,
				      f->work) != GSL_SUCCESS)
		return false;
	for (int32_t j = 0; j < f->columns; j++)
		coefficient[j] /= f->scale[j];
	return true;
}
