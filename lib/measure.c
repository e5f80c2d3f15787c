#include "vane/measure.h"

#include "check.h"

#include <float.h>
#include <math.h>
#include <stddef.h>

enum { MOST_READINGS = 1000000, MOST_SOURCES = 64 };

/* How far a correlation matrix with rounded elements may be off. */
static const double matrix_tolerance = 1e-9;
/* What rounding alone leaves of a pivot that should be 0. */
static const double pivot_rounding = 1e-14;
static const double certain = 1e30;

static int32_t refuse(int32_t code, const char *name, const char *text, vane_error *error)
{
	vn_fail(code, name, 0, text, error);
	return code;
}

static bool readings_ok(const double *reading, int64_t readings, const char *name,
			vane_error *error)
{
	for (int64_t i = 0; i < readings; i++) {
		if (!vn_finite(reading[i], name, "", error)) {
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

/* Deviations from the first reading are exact or nearly so, the sum is not; and a mean of the
 * deviations from the mean takes up what the first one was rounded by. */
static double mean_of(const double *reading, int64_t readings)
{
	double mean = reading[0];
	for (int pass = 0; pass < 3; pass++) {
		double sum = 0;
		for (int64_t i = 0; i < readings; i++)
			sum += (reading[i] - mean) / (double)readings;
		mean += sum;
	}
	return mean;
}

static double farthest(const double *reading, int64_t readings, double mean)
{
	double most = 0;
	for (int64_t i = 0; i < readings; i++)
		most = fmax(most, fabs(reading[i] - mean));
	return most;
}

/* In units of the greatest deviation, so that no square overflows or vanishes. */
static double spread_of(const double *reading, int64_t readings, double mean)
{
	const double size = farthest(reading, readings, mean);
	if (!(size > 0))
		return 0;
	double square = 0, sum = 0;
	for (int64_t i = 0; i < readings; i++) {
		const double deviation = (reading[i] - mean) / size;
		square += deviation * deviation;
		sum += deviation;
	}
	square -= sum * sum / (double)readings;
	return size * sqrt(square / (double)(readings - 1));
}

static void sample_nothing(vane_sample *out)
{
	*out = (vane_sample){NAN, NAN, NAN, NAN, NAN, NAN};
}

int32_t vane_measure_sample(const double *reading, int64_t readings, vane_sample *out,
			    vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(out, "out", error))
		return VANE_INVALID_ARGUMENT;
	sample_nothing(out);
	if (!vn_count(readings, 2, MOST_READINGS, "readings", error) ||
	    !vn_pointer(reading, "reading", error) ||
	    !readings_ok(reading, readings, "reading", error))
		return VANE_INVALID_ARGUMENT;
	vane_sample sample = {.mean = mean_of(reading, readings)};
	sample.spread = spread_of(reading, readings, sample.mean);
	sample.uncertainty = sample.spread / sqrt((double)readings);
	sample.degrees_of_freedom = (double)(readings - 1);
	sample.least = sample.greatest = reading[0];
	for (int64_t i = 1; i < readings; i++) {
		sample.least = fmin(sample.least, reading[i]);
		sample.greatest = fmax(sample.greatest, reading[i]);
	}
	if (!isfinite(vn_result(sample.mean, error)) || !isfinite(vn_result(sample.spread, error)))
		return VANE_OUT_OF_RANGE;
	*out = sample;
	return VANE_OK;
}

int32_t vane_measure_correlation(const double *first, const double *second, int64_t readings,
				 double *correlation, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(correlation, "correlation", error))
		return VANE_INVALID_ARGUMENT;
	*correlation = NAN;
	if (!vn_count(readings, 2, MOST_READINGS, "readings", error) ||
	    !vn_pointer(first, "first", error) || !vn_pointer(second, "second", error) ||
	    !readings_ok(first, readings, "first", error) ||
	    !readings_ok(second, readings, "second", error))
		return VANE_INVALID_ARGUMENT;
	const double mean_a = mean_of(first, readings), mean_b = mean_of(second, readings);
	const double size_a = farthest(first, readings, mean_a);
	const double size_b = farthest(second, readings, mean_b);
	if (!isfinite(vn_result(mean_a + size_a, error)) ||
	    !isfinite(vn_result(mean_b + size_b, error)))
		return VANE_OUT_OF_RANGE;
	double product = 0, square_a = 0, square_b = 0;
	for (int64_t i = 0; i < readings && size_a > 0 && size_b > 0; i++) {
		const double a = (first[i] - mean_a) / size_a, b = (second[i] - mean_b) / size_b;
		product += a * b;
		square_a += a * a;
		square_b += b * b;
	}
	if (!(square_a > 0 && square_b > 0))
		return refuse(VANE_NOT_IDENTIFIABLE, "readings",
			      "A quantity that does not vary has no correlation.", error);
	*correlation = fmax(-1, fmin(1, product / sqrt(square_a) / sqrt(square_b)));
	return VANE_OK;
}

static double part(double half_range, double of, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(half_range, 0, "half_range", "", error))
		return NAN;
	return half_range / of;
}

double vane_measure_rectangular(double half_range, vane_error *error)
{
	return part(half_range, 1.73205080756887729353, error);
}

double vane_measure_triangular(double half_range, vane_error *error)
{
	return part(half_range, 2.44948974278317809820, error);
}

double vane_measure_u_shaped(double half_range, vane_error *error)
{
	return part(half_range, 1.41421356237309504880, error);
}

double vane_measure_trapezoid(double half_range, double ratio, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(half_range, 0, "half_range", "", error) ||
	    !vn_between(ratio, 0, 1, "ratio", "", error))
		return NAN;
	return half_range * sqrt((1 + ratio * ratio) / 6);
}

double vane_measure_from_expanded(double expanded, double coverage, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(expanded, 0, "expanded", "", error) ||
	    !vn_above(coverage, 0, "coverage", "", error))
		return NAN;
	return vn_result(expanded / coverage, error);
}

double vane_measure_expanded(double uncertainty, double coverage, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(uncertainty, 0, "uncertainty", "", error) ||
	    !vn_above(coverage, 0, "coverage", "", error))
		return NAN;
	return vn_result(coverage * uncertainty, error);
}

double vane_measure_freedom(double doubt, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(doubt, 1e-15, 0.7, "doubt", "", error))
		return NAN;
	return 0.5 / (doubt * doubt);
}

void vane_source_default(vane_source *source)
{
	if (source)
		*source = (vane_source){.sensitivity = 1, .degrees_of_freedom = certain};
}

static bool sources_ok(const vane_source *source, int64_t sources, vane_error *error)
{
	for (int64_t i = 0; i < sources; i++) {
		if (!vn_least(source[i].uncertainty, 0, "uncertainty", "", error) ||
		    !vn_finite(source[i].sensitivity, "sensitivity", "", error) ||
		    !vn_least(source[i].degrees_of_freedom, 1, "degrees_of_freedom", "", error)) {
			vn_within("source", error);
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

static bool matrix_ok(const double *r, int64_t n, vane_error *error)
{
	for (int64_t i = 0; i < n * n; i++) {
		if (!vn_between(r[i], -1, 1, "correlation", "", error)) {
			vn_at(i, error);
			return false;
		}
	}
	for (int64_t i = 0; i < n * n; i++) {
		const char *wrong = NULL;
		if (fabs(r[i] - r[i % n * n + i / n]) > matrix_tolerance)
			wrong = "correlation must be symmetric.";
		else if (i % n == i / n && fabs(r[i] - 1) > matrix_tolerance)
			wrong = "correlation must have 1 on its diagonal.";
		if (wrong) {
			vn_fail(VANE_INVALID_ARGUMENT, "correlation", r[i], wrong, error);
			vn_at(i, error);
			return false;
		}
	}
	return true;
}

/* Cholesky of a matrix that may lack rank, in place, lower triangle. Returns the element at which
 * it turns out to be that of no quantities, or -1. */
static int64_t factor(double *r, int64_t n)
{
	for (int64_t k = 0; k < n; k++) {
		double pivot = r[k * n + k];
		for (int64_t j = 0; j < k; j++)
			pivot -= r[k * n + j] * r[k * n + j];
		if (pivot < -matrix_tolerance)
			return k * n + k;
		const double root = pivot > pivot_rounding ? sqrt(pivot) : 0;
		r[k * n + k] = root;
		for (int64_t i = k + 1; i < n; i++) {
			double rest = r[i * n + k];
			for (int64_t j = 0; j < k; j++)
				rest -= r[i * n + j] * r[k * n + j];
			/* No less than what a pivot within the tolerance may leave. */
			if (!(root > 0) && fabs(rest) > sqrt(2 * matrix_tolerance))
				return i * n + k;
			r[i * n + k] = root > 0 ? rest / root : 0;
		}
	}
	return -1;
}

/* w = L^T z, so that a variance is a sum of squares and nothing cancels in it. */
static void gather(const double *lower, const double *z, int64_t n, double *w)
{
	for (int64_t j = 0; j < n; j++) {
		w[j] = 0;
		for (int64_t i = j; i < n; i++)
			w[j] += lower[i * n + j] * z[i];
	}
}

static bool independent(const double *r, const double *z, int64_t n)
{
	for (int64_t i = 0; i < n; i++)
		for (int64_t j = 0; j < i; j++)
			if (r[i * n + j] != 0 && z[i] != 0 && z[j] != 0)
				return false;
	return true;
}

/* z in units of the greatest; u their combination. */
static double effective(const vane_source *source, const double *z, int64_t n, double u, bool alone)
{
	double sum = 0, least = certain;
	for (int64_t i = 0; i < n; i++) {
		if (z[i] == 0)
			continue;
		const double nu = source[i].degrees_of_freedom, share = z[i] / u;
		least = fmin(least, nu);
		sum += share * share * share * share / nu;
	}
	return alone && sum > 0 ? fmin(fmax(1, 1 / sum), DBL_MAX) : least;
}

static int32_t combine(const vane_source *source, int64_t n, double *matrix, double probability,
		       vane_combined *out, double *share, vane_error *error)
{
	double z[MOST_SOURCES], w[MOST_SOURCES], greatest = 0, square = 0;
	for (int64_t i = 0; i < n; i++) {
		z[i] = source[i].sensitivity * source[i].uncertainty;
		greatest = fmax(greatest, fabs(z[i]));
	}
	for (int64_t i = 0; i < n && greatest > 0; i++)
		z[i] /= greatest;
	const bool alone = independent(matrix, z, n);
	const int64_t at = factor(matrix, n);
	if (at >= 0) {
		vn_fail(VANE_INVALID_ARGUMENT, "correlation", 0,
			"correlation must be one that quantities can have: no combination of them "
			"may have a negative variance.",
			error);
		vn_at(at, error);
		return VANE_INVALID_ARGUMENT;
	}
	gather(matrix, z, n, w);
	for (int64_t i = 0; i < n; i++)
		square += w[i] * w[i];
	const double u = sqrt(square);
	vane_combined result = {.uncertainty = greatest * u};
	result.degrees_of_freedom = u > 0 ? effective(source, z, n, u, alone) : certain;
	vane_error local;
	vane_error *const why = error ? error : &local;
	result.coverage = vane_measure_coverage(probability, result.degrees_of_freedom, why);
	if (why->code != VANE_OK)
		return why->code;
	result.expanded = result.coverage * result.uncertainty;
	if (!isfinite(vn_result(result.expanded, error)))
		return VANE_OUT_OF_RANGE;
	*out = result;
	for (int64_t i = 0; share && i < n; i++) {
		double sum = 0;
		for (int64_t j = 0; j <= i; j++)
			sum += matrix[i * n + j] * w[j];
		share[i] = u > 0 ? z[i] / u * (sum / u) : 0;
	}
	return VANE_OK;
}

int32_t vane_measure_combine(const vane_source *source, int64_t sources, const double *correlation,
			     int64_t elements, double probability, vane_combined *out,
			     double *share, vane_error *error)
{
	vn_begin(error);
	const bool count_ok = sources >= 1 && sources <= MOST_SOURCES;
	if (out)
		*out = (vane_combined){NAN, NAN, NAN, NAN};
	for (int64_t i = 0; share && count_ok && i < sources; i++)
		share[i] = NAN;
	if (!vn_pointer(out, "out", error) || !vn_pointer(source, "source", error) ||
	    !vn_count(sources, 1, MOST_SOURCES, "sources", error) ||
	    !vn_count(elements, 0, MOST_SOURCES * MOST_SOURCES, "elements", error))
		return VANE_INVALID_ARGUMENT;
	if (elements > 0 && elements != sources * sources) {
		vn_fail(VANE_INVALID_ARGUMENT, "elements", (double)elements,
			"elements must be the square of sources, or 0.", error);
		return VANE_INVALID_ARGUMENT;
	}
	if (!sources_ok(source, sources, error) ||
	    (elements > 0 && (!vn_pointer(correlation, "correlation", error) ||
			      !matrix_ok(correlation, sources, error))))
		return VANE_INVALID_ARGUMENT;
	if (!(probability > 0 && probability < 1)) {
		vn_refuse_between(probability, 0, 1, "probability", "", error);
		return VANE_INVALID_ARGUMENT;
	}
	double matrix[MOST_SOURCES * MOST_SOURCES];
	for (int64_t i = 0; i < sources * sources; i++)
		matrix[i] = elements > 0 ? correlation[i] : i % sources == i / sources;
	return combine(source, sources, matrix, probability, out, share, error);
}
