#include "fit.h"

#include "check.h"

#include <math.h>

/* Less than this a ridge leaves by rounding. */
static const double no_freedom = 1e-9;

/* Where the columns come from: the caller's matrix, or the Chebyshev polynomials of x. */
typedef struct columns {
	const double *x;
	double middle, half; /* Of the range of x; half 0 for the caller's matrix. */
	int32_t count;
} columns;

typedef struct data {
	columns columns;
	const double *y, *uncertainty;
	int64_t n;
	const vane_fit_options *options;
	double ridge;
	bool about_mean;
} data;

static void row(const columns *c, int64_t i, double *out)
{
	if (!(c->half > 0)) {
		for (int32_t j = 0; j < c->count; j++)
			out[j] = c->x[i * c->count + j];
		return;
	}
	const double t = (c->x[i] - c->middle) / c->half;
	out[0] = 1;
	if (c->count > 1)
		out[1] = t;
	for (int32_t j = 2; j < c->count; j++)
		out[j] = 2 * t * out[j - 1] - out[j - 2];
}

static void load(const data *d, vn_factors *f)
{
	for (int64_t i = 0; i < d->n; i++) {
		const double u = d->uncertainty ? d->uncertainty[i] : 1;
		double *const to = f->matrix + i * f->columns;
		row(&d->columns, i, to);
		for (int32_t j = 0; j < f->columns; j++)
			to[j] /= u;
		f->right[i] = d->y[i] / u;
	}
}

/* Weighted sum of squares of the residuals. */
static double residuals(const data *d, const double *coefficient, double *out)
{
	double sum = 0;
	for (int64_t i = 0; i < d->n; i++) {
		double x[VN_FIT_MOST];
		row(&d->columns, i, x);
		out[i] = d->y[i];
		for (int32_t j = 0; j < d->columns.count; j++)
			out[i] -= x[j] * coefficient[j];
		const double r = out[i] / (d->uncertainty ? d->uncertainty[i] : 1);
		sum += r * r;
	}
	return sum;
}

/* basis[i][k]: what the Chebyshev polynomial k has of x^i. */
static void powers(const columns *c, vn_basis basis)
{
	const double a = 1 / c->half, b = -c->middle / c->half;
	for (int32_t i = 0; i < c->count; i++)
		for (int32_t k = 0; k < c->count; k++)
			basis[i][k] = 0;
	basis[0][0] = 1;
	for (int32_t k = 1; k < c->count; k++)
		for (int32_t i = 0; i <= k; i++) {
			const double twice = k > 1 ? 2 : 1;
			basis[i][k] = twice * b * basis[i][k - 1] - (k > 1 ? basis[i][k - 2] : 0);
			if (i > 0)
				basis[i][k] += twice * a * basis[i - 1][k - 1];
		}
}

static int32_t solve(const data *d, vn_factors *f, const vn_outputs *o, vane_error *error)
{
	double coefficient[VN_FIT_MOST];
	load(d, f);
	if (!vn_factor(f, d->options->rank_tolerance))
		return vn_fit_large(error);
	const bool dependent = f->rank < f->columns && !(d->ridge > 0);
	if (dependent || f->rank < 1)
		return vn_fit_dependent(f->condition, error);
	if (!vn_solve(f, d->ridge, coefficient))
		return vn_fit_large(error);
	vn_basis basis;
	if (d->columns.half > 0)
		powers(&d->columns, basis);
	const double sum = residuals(d, coefficient, f->vectors);
	const double freedom = vn_freedom(f, d->ridge);
	const double sigma = freedom > no_freedom ? sqrt(sum / freedom) : 0;
	const double scatter = d->options->known ? 1 : sigma;
	const vn_found found = {
		.factors = f,
		.basis = d->columns.half > 0 ? (const vn_basis *)&basis : NULL,
		.coefficient = coefficient,
		.residual = f->vectors,
		.uncertainty = d->uncertainty,
		.ridge = d->ridge,
		.freedom = freedom,
		.square_sum = sum,
		.total = vn_fit_total(d->y, d->uncertainty, d->n, d->about_mean),
		.sigma = sigma,
		.scatter = scatter,
		.scale = scatter,
	};
	return vn_fit_report(&found, o, error);
}

static int32_t run(const data *d, const vn_outputs *o, vane_error *error)
{
	const int32_t p = d->columns.count;
	if (d->n < p + (d->options->known ? 0 : 1))
		return vn_fit_few(d->n, error);
	vn_factors f;
	const int32_t status =
		vn_factors_open(&f, d->n, p, 1) ? solve(d, &f, o, error) : vn_fit_memory(error);
	vn_factors_close(&f);
	if (status != VANE_OK)
		vn_outputs_clear(o, NULL);
	return status;
}

static bool constant_column(const double *x, int64_t n, int32_t p)
{
	for (int32_t j = 0; j < p; j++) {
		int64_t i = 1;
		while (i < n && x[i * p + j] == x[j])
			i++;
		if (i == n && x[j] != 0)
			return true;
	}
	return false;
}

int32_t vane_fit_linear(const double *x, int64_t elements, const double *y,
			const double *uncertainty, int64_t weights, int64_t readings,
			const vane_fit_options *options, double *coefficient,
			double *coefficient_uncertainty, double *correlation,
			vane_fit_reading *reading, vane_fit_summary *out, vane_error *error)
{
	vn_begin(error);
	const vn_outputs o = {coefficient, coefficient_uncertainty, correlation, reading, out,
			      readings};
	if (!vn_outputs_clear(&o, error) || !vn_fit_options_ok(options, error) ||
	    !vn_count(weights, 0, readings, "weights", error) || !vn_pointer(x, "x", error) ||
	    !vn_pointer(y, "y", error))
		return VANE_INVALID_ARGUMENT;
	const int32_t p = vn_fit_columns(elements, readings, error);
	if (p < 1 || !vn_fit_array_ok(x, elements, "x", error) ||
	    !vn_fit_array_ok(y, readings, "y", error) ||
	    !vn_fit_uncertainty_ok(uncertainty, weights, readings, error))
		return VANE_INVALID_ARGUMENT;
	const data d = {
		.columns = {.x = x, .count = p},
		.y = y,
		.uncertainty = weights > 0 ? uncertainty : NULL,
		.n = readings,
		.options = options,
		.ridge = options->ridge,
		.about_mean = constant_column(x, readings, p),
	};
	return run(&d, &o, error);
}

int32_t vn_fit_linear(const double *x, const double *y, int64_t n, int32_t p, double tolerance,
		      vn_fit *out, vane_error *error)
{
	const vane_fit_options options = {
		.rank_tolerance = tolerance,
		.known = n == p,
		.weight = VANE_FIT_BISQUARE,
		.iterations = 1,
	};
	vane_fit_summary summary;
	double correlation[VN_FIT_MOST * VN_FIT_MOST];
	const int32_t status =
		vane_fit_linear(x, n * p, y, NULL, 0, n, &options, out->coefficient,
				out->uncertainty, correlation, NULL, &summary, error);
	if (n < p || status == VANE_NOT_IDENTIFIABLE)
		return vn_fit_refuse(VANE_NOT_IDENTIFIABLE, "readings", 0,
				     "The readings are too few or too alike to tell the "
				     "coefficients apart.",
				     error);
	if (status == VANE_INVALID_ARGUMENT)
		return vn_fit_large(error);
	out->square_sum = summary.square_sum;
	out->condition = summary.condition;
	out->freedom = n - p;
	out->columns = p;
	for (int32_t i = 0; i < p; i++) {
		out->uncertainty[i] *= n > p;
		for (int32_t j = 0; j < p; j++)
			out->correlation[i * p + j] = correlation[i * VN_FIT_MOST + j];
	}
	return status;
}

int32_t vane_fit_polynomial(const double *x, const double *y, const double *uncertainty,
			    int64_t weights, int64_t readings, int32_t degree,
			    const vane_fit_options *options, double *coefficient,
			    double *coefficient_uncertainty, vane_fit_reading *reading,
			    vane_fit_summary *out, vane_error *error)
{
	vn_begin(error);
	const vn_outputs o = {coefficient, coefficient_uncertainty, NULL, reading, out, readings};
	if (!vn_outputs_clear(&o, error) || !vn_fit_options_ok(options, error) ||
	    !vn_count(degree, 0, VN_FIT_MOST - 1, "degree", error) ||
	    !vn_fit_array_ok(x, readings, "x", error) ||
	    !vn_fit_array_ok(y, readings, "y", error) ||
	    !vn_fit_uncertainty_ok(uncertainty, weights, readings, error))
		return VANE_INVALID_ARGUMENT;
	double low = x[0], high = x[0];
	for (int64_t i = 1; i < readings; i++) {
		low = fmin(low, x[i]);
		high = fmax(high, x[i]);
	}
	const double half = 0.5 * high - 0.5 * low;
	if (!(half > 0) && degree > 0)
		return vn_fit_dependent(INFINITY, error);
	/* The last coefficient must not vanish. */
	if (half > 0 && !isnormal(pow(half, -degree)))
		return vn_fit_large(error);
	const data d = {
		.columns = {.x = x,
			    .middle = 0.5 * low + 0.5 * high,
			    .half = half > 0 ? half : 1,
			    .count = degree + 1},
		.y = y,
		.uncertainty = weights > 0 ? uncertainty : NULL,
		.n = readings,
		.options = options,
		.about_mean = true,
	};
	return run(&d, &o, error);
}
