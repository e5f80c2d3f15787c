/**
 * @file array.h
 * Every formula over arrays, through one door.
 */
#ifndef VANE_ARRAY_H
#define VANE_ARRAY_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Evaluates a formula for each element of arrays.
 *
 *     out[i] = formula(argument[0][i * stride[0]], argument[1][i * stride[1]], ...)
 *
 * A formula is a function of this library that returns double and takes doubles and a vane_error.
 * Each value has the same bits as that function gives. An element that it refuses is NaN, and the
 * others are computed all the same; the status and the error are those of the first such element,
 * which error->index numbers. Where nothing could be computed, every element of out is NaN and
 * error->index is -1; where n is itself refused, out is left alone.
 *
 * @valid   The arrays hold every element that n and the strides reach. A stride times n - 1 is
 *          between -9007199254740992 and 9007199254740992. out does not overlap an argument,
 *          except that it may be the array of one whose stride is 1 or 0.
 * @source  Definition.
 *
 * @param[in] formula   Name of the formula in C, such as "vane_slot_flow".
 * @param[in] n         Number of elements [1; 0 <= x <= 9007199254740992].
 * @param[in] argument  First value of each parameter [any; any; length arity of the formula].
 * @param[in] stride    Doubles to the next value; 0 repeats [1; any; length arity of the formula].
 * @param[out] out      Results, side by side [any; any; length n].
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_array_run(const char *formula, int64_t n, const double *const *argument,
				const int64_t *stride, double *out, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
