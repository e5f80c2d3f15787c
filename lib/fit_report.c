#include "fit.h"

#include <float.h>
#include <gsl/gsl_cblas.h>
#include <math.h>

/* Standard deviations off that make an outlier. */
static const double wild = 3;
/* Belsley, Kuh and Welsch: from here on two columns all but share what they say. */
static const double ill_conditioned = 30;
/* Stands for infinity where a ridge makes up for a lost column. */
static const double worst = 1e300;

/* 1/s, or with a ridge s/(s^2 + ridge^2). */
static double inverse(const vn_factors *f, int32_t k, double ridge)
{
	const double s = gsl_vector_get(f->work->S, (size_t)k);
	return ridge > 0 ? s / (s * s + ridge * ridge) : 1 / s;
}

/* What the singular value has kept of itself. */
static double kept(const vn_factors *f, int32_t k, double ridge)
{
	return ridge > 0 ? gsl_vector_get(f->work->S, (size_t)k) * inverse(f, k, ridge) : 1;
}

double vn_freedom(const vn_factors *f, double ridge)
{
	double used = 0;
	for (int32_t k = 0; k < f->columns; k++)
		used += kept(f, k, ridge);
	return (double)f->rows - used;
}

/* Square roots of the coefficients' variances, for a variance of 1, and their correlation; taken
 * from U, S and V, for GSL gives a covariance only without a ridge. */
static void spread(const vn_factors *f, double ridge, const vn_basis *basis, double *root,
		   double *correlation)
{
	const int32_t p = f->columns;
	vn_basis part;
	for (int32_t i = 0; i < p; i++)
		for (int32_t k = 0; k < p; k++) {
			part[i][k] = 0;
			for (int32_t j = basis ? 0 : i; j < (basis ? p : i + 1); j++)
				part[i][k] += (basis ? (*basis)[i][j] : 1) / f->scale[j] *
					      gsl_matrix_get(f->work->Q, (size_t)j, (size_t)k) *
					      inverse(f, k, ridge);
		}
	for (int32_t i = 0; i < p; i++)
		root[i] = cblas_dnrm2(p, part[i], 1);
	for (int32_t i = 0; i < p; i++)
		for (int32_t j = 0; correlation && j < p; j++) {
			double r = 0;
			for (int32_t k = 0; k < p; k++)
				r += part[i][k] / root[i] * (part[j][k] / root[j]);
			/* Rounding must not carry it past 1. */
			correlation[i * VN_FIT_MOST + j] = i == j ? 1 : fmax(-1, fmin(1, r));
		}
}

static double leverage(const vn_factors *f, int64_t i, double ridge)
{
	double sum = 0;
	for (int32_t k = 0; k < f->columns; k++) {
		const double u = gsl_matrix_get(f->work->A, (size_t)i, (size_t)k);
		sum += u * u * kept(f, k, ridge);
	}
	return fmin(1, sum);
}

/* Standardized residual and distance from residual and leverage. */
static void judge(vane_fit_reading *r, double own, int32_t p)
{
	/* What rounding leaves of 1 is none. */
	const double free = 1 - r->leverage;
	const bool judged = own > 0 && free > 1e-12;
	r->standardized = judged ? r->residual / (own * sqrt(free)) : 0;
	r->distance =
		judged ? r->standardized * r->standardized * r->leverage / ((double)p * free) : 0;
}

static bool readings(const vn_found *f, const vn_outputs *o)
{
	bool finite = true;
	for (int64_t i = 0; i < f->factors->rows; i++) {
		vane_fit_reading r = {
			.residual = f->residual[i],
			.leverage = leverage(f->factors, i, f->ridge),
			.weight = f->weight ? f->weight[i] : 1,
		};
		judge(&r, f->scale * (f->uncertainty ? f->uncertainty[i] : 1), f->factors->columns);
		finite = finite && isfinite(r.residual) && isfinite(r.distance);
		o->summary->outliers += fabs(r.standardized) > wild;
		if (o->reading)
			o->reading[i] = r;
	}
	return finite;
}

static bool coefficients(const vn_found *f, const vn_outputs *o)
{
	const int32_t p = f->factors->columns;
	bool finite = true;
	for (int32_t i = 0; i < VN_FIT_MOST; i++)
		o->coefficient[i] = o->uncertainty[i] = 0;
	for (int32_t i = 0; o->correlation && i < VN_FIT_MOST * VN_FIT_MOST; i++)
		o->correlation[i] = 0;
	spread(f->factors, f->ridge, f->basis, o->uncertainty, o->correlation);
	for (int32_t i = 0; i < p; i++) {
		/* From the highest down, where the powers of a polynomial cancel least. */
		for (int32_t k = p - 1; f->basis && k >= 0; k--)
			o->coefficient[i] += (*f->basis)[i][k] * f->coefficient[k];
		if (!f->basis)
			o->coefficient[i] = f->coefficient[i];
		o->uncertainty[i] *= f->scatter;
		finite = finite && isfinite(o->coefficient[i]) && isfinite(o->uncertainty[i]);
	}
	return finite;
}

/* 1 - part/whole, where there is a whole. */
static double described(double part, double whole)
{
	return part > 0 && whole > 0 ? 1 - part / whole : part > 0 ? 0 : 1;
}

/* Squares that have sunk among the denormal numbers would tell of no scatter, or of a wrong one. */
static bool sunk(const vn_found *f)
{
	for (int64_t i = 0; f->square_sum < DBL_MIN && i < f->factors->rows; i++)
		if (f->residual[i] != 0 && (!f->weight || f->weight[i] > 0))
			return true;
	return false;
}

int32_t vn_fit_report(const vn_found *f, const vn_outputs *o, vane_error *error)
{
	const double condition = f->factors->condition;
	if (sunk(f))
		return vn_fit_large(error);
	*o->summary = (vane_fit_summary){
		.residual = f->sigma,
		.square_sum = f->square_sum,
		.r_squared = described(f->square_sum, f->total),
		.condition = fmin(fmax(1, condition), worst),
		.degrees_of_freedom = f->freedom,
		.coefficients = f->factors->columns,
		.rank = f->factors->rank,
		.iterations = f->iterations,
		.caution = condition > ill_conditioned ? VANE_CAUTION_ILL_CONDITIONED : 0,
	};
	const bool finite = isfinite(f->sigma) && isfinite(f->square_sum) &&
			    isfinite(o->summary->r_squared) && coefficients(f, o) && readings(f, o);
	return finite ? VANE_OK : vn_fit_large(error);
}
