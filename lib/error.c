#include "vane/error.h"

#include <stddef.h>

static const struct {
	const char *name, *text;
} statuses[] = {
	[VANE_OK] = {"ok", "The call succeeded."},
	[VANE_INVALID_ARGUMENT] = {"invalid argument",
				   "A parameter is outside its documented range."},
	[VANE_NO_SOLUTION] = {"no solution",
			      "No value satisfies the equation, or an iteration did not settle."},
	[VANE_NOT_IDENTIFIABLE] = {"not identifiable",
				   "These data cannot determine what was asked."},
	[VANE_NO_MEMORY] = {"no memory", "Working memory could not be had."},
	[VANE_OUT_OF_RANGE] = {"out of range", "The result is too large for a double."},
};

static const struct {
	int32_t bit;
	const char *text;
} cautions[] = {
	{VANE_CAUTION_NOT_LAMINAR, "A leakage slot's Reynolds number is above the laminar limit: "
				   "its flow is an upper bound."},
	{VANE_CAUTION_INERTIA,
	 "Inertia takes more than 1 % of a slot's pressure drop: its flow is an upper bound."},
	{VANE_CAUTION_HEATING,
	 "Oil warms in a slot faster than the walls cool it: slip may be higher than computed."},
	{VANE_CAUTION_EDGE_CONTACT,
	 "The ring touches the vane outside its rounded tip: expect edge wear."},
	{VANE_CAUTION_LIFT_OFF, "Somewhere on the ring the computed contact force of the vane is "
				"not positive: the vane may lift."},
	{VANE_CAUTION_SHORT_DWELL, "A dwell of the ring is shorter than the land it has to seal: "
				   "displacement is approximate."},
	{VANE_CAUTION_CROSS_PORT,
	 "One chamber can see inlet and outlet at once: slip is larger than computed."},
	{VANE_CAUTION_THIN_OIL,
	 "Oil viscosity is below 10 mm2/s: films may not separate the parts."},
	{VANE_CAUTION_THICK_OIL, "Oil viscosity is above 860 mm2/s: the pump may not fill."},
	{VANE_CAUTION_ILL_CONDITIONED, "The fit leans on nearly equal readings: its coefficients "
				       "are not to be trusted one by one."},
	{VANE_CAUTION_CURVATURE,
	 "The readings bend away from the fitted straight line: its intercept is biased."},
	{VANE_CAUTION_NO_FLOW, "Slip takes all the flow at this duty: nothing is delivered."},
};

const char *vane_status_name(int32_t code)
{
	if (code < 0 || (size_t)code >= sizeof statuses / sizeof statuses[0])
		return "unknown status";
	return statuses[code].name;
}

const char *vane_status_text(int32_t code)
{
	if (code < 0 || (size_t)code >= sizeof statuses / sizeof statuses[0])
		return "This number is not a status of libvane; treat it as a failure.";
	return statuses[code].text;
}

const char *vane_caution_text(int32_t caution)
{
	for (size_t i = 0; i < sizeof cautions / sizeof cautions[0]; i++)
		if (cautions[i].bit == caution)
			return cautions[i].text;
	return "This number is not one caution bit of libvane.";
}

const char *vane_version(void)
{
	return VANE_VERSION;
}
