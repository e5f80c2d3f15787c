#include "row.h"

#include "vane.h"

#include <stdio.h>
#include <string.h>

START_TEST(every_integer_has_text)
{
	for (int32_t code = -4096; code <= 4096; code++) {
		ck_assert(vane_status_name(code) && *vane_status_name(code));
		ck_assert(vane_status_text(code) && *vane_status_text(code));
		ck_assert(vane_caution_text(code) && *vane_caution_text(code));
	}
	ck_assert_str_eq(vane_status_name(VANE_INVALID_ARGUMENT), "invalid argument");
	ck_assert_str_eq(vane_status_name(INT32_MAX), vane_status_name(INT32_MIN));
}
END_TEST

START_TEST(known_texts_differ)
{
	for (int32_t a = VANE_OK; a <= VANE_OUT_OF_RANGE; a++) {
		ck_assert_str_ne(vane_status_text(a), vane_status_text(-1));
		for (int32_t b = 0; b < a; b++)
			ck_assert_str_ne(vane_status_text(a), vane_status_text(b));
	}
	for (int32_t bit = VANE_CAUTION_NOT_LAMINAR; bit <= VANE_CAUTION_NO_FLOW; bit *= 2)
		ck_assert_str_ne(vane_caution_text(bit), vane_caution_text(0));
}
END_TEST

START_TEST(success_clears_the_record)
{
	vane_error error;
	memset(&error, 0x55, sizeof error);
	ck_assert(isfinite(vane_slot_flow(1, 1e-5, 1, 1e5, 0.02, 0, &error)));
	ck_assert_int_eq(error.code, VANE_OK);
	ck_assert_int_eq(error.index, -1);
	ck_assert_str_eq(error.name, "");
	ck_assert_str_eq(error.text, "");
}
END_TEST

START_TEST(one_sentence_with_unit_and_range)
{
	vane_error error;
	CHECK_REJECTS(vane_slot_flow(1, -1e-6, 1, 1e5, 0.02, 0, &error), error, "gap");
	ck_assert_str_eq(error.text, "gap must be finite and at least 0 m; it is -1e-06 m.");
	ck_assert(error.value == -1e-6);
	CHECK_REJECTS(vane_slot_flow(1, NAN, 1, 1e5, 0.02, 0, &error), error, "gap");
	ck_assert(isnan(error.value));
	ck_assert(isnan(vane_slot_flow(1, -1, 1, 1e5, 0.02, 0, NULL)));
}
END_TEST

START_TEST(overflow_is_said)
{
	vane_error error;
	ck_assert(isnan(vane_slot_flow(1e300, 1e300, 1, 1e300, 0.02, 0, &error)));
	ck_assert_int_eq(error.code, VANE_OUT_OF_RANGE);
}
END_TEST

/* A value just past its limit must not read as the limit itself. */
START_TEST(value_and_limit_read_apart)
{
	vane_error error;
	vane_ring ring;
	vane_ring_default(&ring);
	ring.small_radius = 28e-3;
	ring.large_radius = 33e-3;
	ring.width = 24e-3;
	ring.phase = nextafter(2 * acos(-1), 7);
	vane_ring_point point;
	ck_assert_int_eq(vane_ring_at(&ring, 0, &point, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.text, "ring.phase must be between -6.283185307179586 and "
				     "6.283185307179586 rad; it is 6.283185307179587 rad.");
	vane_ring_lift lift;
	ck_assert_int_eq(vane_ring_law_at(1, nextafter(1, 2), &lift, &error),
			 VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.text, "fraction must be between 0 and 1; it is 1.0000000000000002.");
	vane_ring_law_at(1, 1.25, &lift, &error);
	ck_assert_str_eq(error.text, "fraction must be between 0 and 1; it is 1.25.");
}
END_TEST

START_TEST(whole_numbers_and_nan_read_plainly)
{
	vane_error error;
	double got;
	ck_assert_int_eq(
		vane_array_run("vane_slot_flow", (1LL << 53) + 1, NULL, NULL, &got, &error),
		VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.text,
			 "n must be between 0 and 9007199254740992; it is 9007199254740993.");
	for (int negative = 0; negative < 2; negative++) {
		vane_slot_flow(1, copysign(NAN, negative ? -1 : 1), 1, 1e5, 0.02, 0, &error);
		ck_assert_str_eq(error.text, "gap must be finite and at least 0 m; it is nan m.");
	}
	vane_slot_flow(1, -INFINITY, 1, 1e5, 0.02, 0, &error);
	ck_assert_str_eq(error.text, "gap must be finite and at least 0 m; it is -inf m.");
}
END_TEST

SUITE("error", every_integer_has_text, known_texts_differ, success_clears_the_record,
      one_sentence_with_unit_and_range, overflow_is_said, value_and_limit_read_apart,
      whole_numbers_and_nan_read_plainly)
