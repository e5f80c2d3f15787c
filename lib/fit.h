/*
 * The one door to GSL's least squares. Everything is checked before GSL sees
 * it, for its error handler aborts the host.
 */
#ifndef VANE_LIB_FIT_H
#define VANE_LIB_FIT_H

#include "vane/fit.h"

#include <gsl/gsl_multifit.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

enum { VN_FIT_MOST = VANE_FIT_COEFFICIENTS, VN_FIT_MOST_READINGS = 1000000 };

typedef struct vn_fit {
	double coefficient[VN_FIT_MOST];
	double uncertainty[VN_FIT_MOST];               /* Standard, all 0 without freedom. */
	double correlation[VN_FIT_MOST * VN_FIT_MOST]; /* Rows of `columns`. */
	double square_sum;                             /* Of the residuals. */
	double condition;                              /* Of the matrix, columns of length 1. */
	int64_t freedom;
	int32_t columns;
} vn_fit;

/* vane_fit_linear() without weights, for the library's own use: as many readings as coefficients
 * will do, and errors are about the "readings". */
int32_t vn_fit_linear(const double *x, const double *y, int64_t n, int32_t p, double tolerance,
		      vn_fit *out, vane_error *error);

/* A matrix and its singular values: what every fit comes down to. */
typedef struct vn_factors {
	gsl_multifit_linear_workspace *work; /* Holds U in A, the values in S, V in Q. */
	double *matrix;                      /* n rows of p; vn_factor() scales the columns. */
	double *right;                       /* The right side, n numbers. */
	double *vectors;                     /* n numbers each, as many as were asked for. */
	double scale[VN_FIT_MOST];           /* Lengths that the columns had. */
	double condition;
	int64_t rows;
	int32_t columns;
	int32_t rank;
} vn_factors;

/* Whether so many numbers can be had, before GSL asks for them. */
bool vn_room(size_t numbers);

/* False without memory; close in either case. n >= p. */
bool vn_factors_open(vn_factors *f, int64_t n, int32_t p, int32_t vectors);
void vn_factors_close(vn_factors *f);

/* Takes the matrix apart, columns of length 1. False where it or the right side is too large. */
bool vn_factor(vn_factors *f, double tolerance);

/* All rank, or a ridge, is needed. */
bool vn_solve(const vn_factors *f, double ridge, double *coefficient);

/* n - sum(s^2/(s^2 + ridge^2)). */
double vn_freedom(const vn_factors *f, double ridge);

/* What every public fit shares. */
typedef struct vn_outputs {
	double *coefficient, *uncertainty, *correlation;
	vane_fit_reading *reading;
	vane_fit_summary *summary;
	int64_t readings;
} vn_outputs;

typedef double vn_basis[VN_FIT_MOST][VN_FIT_MOST];

/* What a fit has found out, for vn_fit_report(). */
typedef struct vn_found {
	const vn_factors *factors;
	const vn_basis *basis; /* The caller's coefficients in those found; NULL if the same. */
	const double *coefficient;
	const double *residual;    /* In the unit of y. */
	const double *uncertainty; /* Of y; NULL for 1. */
	const double *weight;      /* NULL for 1. */
	double ridge;
	double freedom;
	double square_sum, total; /* Weighted, of the residuals and of y. */
	double sigma;             /* Of a reading of uncertainty 1. */
	double scatter;           /* What the coefficients' uncertainties come from. */
	double scale;             /* What residuals are standardized by. */
	int32_t iterations;
} vn_found;

/* Tells the caller; all or, with VANE_OUT_OF_RANGE, nothing that is to be kept. */
int32_t vn_fit_report(const vn_found *f, const vn_outputs *o, vane_error *error);

/* NaN and 0 everywhere; false if one that must be there is not. */
bool vn_outputs_clear(const vn_outputs *o, vane_error *error);

bool vn_fit_options_ok(const vane_fit_options *options, vane_error *error);

/* All finite. */
bool vn_fit_array_ok(const double *x, int64_t n, const char *name, vane_error *error);

/* All > 0, or none. */
bool vn_fit_uncertainty_ok(const double *uncertainty, int64_t weights, int64_t readings,
			   vane_error *error);

/* How many columns `elements` numbers make; 0 if none. */
int32_t vn_fit_columns(int64_t elements, int64_t readings, vane_error *error);

int32_t vn_fit_refuse(int32_t code, const char *name, double value, const char *text,
		      vane_error *error);
int32_t vn_fit_few(int64_t readings, vane_error *error);
int32_t vn_fit_dependent(double condition, vane_error *error);
int32_t vn_fit_large(vane_error *error);
int32_t vn_fit_memory(vane_error *error);

/* Weighted sum of squares about the weighted mean, or about 0. */
double vn_fit_total(const double *y, const double *uncertainty, int64_t n, bool about_mean);

/* The model at x, and its slope in each coefficient. */
double vn_model(int32_t model, const double *b, double x, double *slope);

/* A model of that number with that many coefficients, and x that it takes. */
bool vn_model_ok(int32_t model, int64_t coefficients, const double *x, int64_t n,
		 vane_error *error);

#endif
