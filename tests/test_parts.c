#include "row.h"

#include "worked_pump.h"

#include <string.h>

START_TEST(worked_gaps)
{
	const vane_parts p = worked_pump();
	vane_parts_gaps g;
	ck_assert_int_eq(vane_parts_gaps_of(&p, &g, NULL), VANE_OK);
	const row rows[] = {
		{"worked pump, rotor face per side, um", g.face * 1e6, 20.0, 1e-9},
		{"worked pump, vane end per side, um", g.end * 1e6, 17.5, 1e-9},
		{"worked pump, slot, both flanks, um", g.slot * 1e6, 25, 1e-9},
	};
	ROWS_CHECK(rows);
}
END_TEST

/* Every field, with NaN and with a value outside its range, is refused by name. */
START_TEST(rejects_every_field)
{
#define FIELD(name, value)                                                                         \
	{                                                                                          \
		offsetof(vane_parts, name), "parts." #name, value                                  \
	}
	static const struct {
		size_t offset;
		const char *name;
		double value;
	} cases[] = {
		FIELD(ring.large_radius, 0),
		FIELD(ring.small_radius, -1),
		FIELD(ring.width, 0),
		FIELD(ring.small_dwell, -1),
		FIELD(ring.rise, 0),
		FIELD(ring.large_dwell, -1),
		FIELD(ring.fall, 0.5),
		FIELD(ring.phase, INFINITY),
		FIELD(rotor_radius, 0.018),
		FIELD(rotor_width, 0.0241),
		FIELD(slot_width, 0.0017),
		FIELD(vane_width, 0.0241),
		FIELD(vane_thickness, 0),
		FIELD(vane_height, 0.004),
		FIELD(vane_density, 0),
		FIELD(tip_radius, 0.0005),
		FIELD(tip_film, -1e-9),
		FIELD(plate_bore, 0),
		FIELD(groove_inner, 0.011),
		FIELD(groove_outer, 0.015),
		FIELD(inlet_open, -0.1),
		FIELD(inlet_close, 0.1),
		FIELD(outlet_open, 1.0),
		FIELD(outlet_close, 4),
		FIELD(notch, 0.7),
		FIELD(shaft_radius, 0),
		FIELD(shaft_gap, -1e-6),
		FIELD(shaft_length, 0),
		FIELD(shaft_eccentricity, 1),
		FIELD(rotor_offset, 1.1),
		FIELD(vane_offset, -0.1),
		FIELD(tip_friction, 1),
		FIELD(slot_friction, -0.1),
		FIELD(seal_friction, -1),
	};
#undef FIELD
	for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
		for (int nan = 0; nan < 2; nan++) {
			vane_parts bad = worked_pump();
			const double value = nan ? NAN : cases[i].value;
			memcpy((char *)&bad + cases[i].offset, &value, sizeof value);
			vane_parts_gaps g;
			vane_error error;
			ck_assert_int_eq(vane_parts_gaps_of(&bad, &g, &error),
					 VANE_INVALID_ARGUMENT);
			ck_assert_msg(strcmp(error.name, cases[i].name) == 0, "%s for %s %g",
				      error.name, cases[i].name, value);
			ck_assert_msg(strstr(error.text, cases[i].name) != NULL, "%s", error.text);
			ck_assert(isnan(g.face) && isnan(g.end) && isnan(g.slot));
		}
	for (int32_t vanes = 3; vanes <= 11; vanes += 2) {
		vane_parts bad = worked_pump();
		bad.vanes = vanes;
		vane_parts_gaps g;
		vane_error error;
		ck_assert_int_eq(vane_parts_gaps_of(&bad, &g, &error), VANE_INVALID_ARGUMENT);
		ck_assert_str_eq(error.name, "parts.vanes");
	}
	vane_error error;
	vane_parts_gaps g;
	ck_assert_int_eq(vane_parts_gaps_of(NULL, &g, &error), VANE_INVALID_ARGUMENT);
	ck_assert_str_eq(error.name, "parts");
}
END_TEST

SUITE("parts", worked_gaps, rejects_every_field)
