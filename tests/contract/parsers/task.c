/* One and the same task in every language: a formula, a rejection, a procedure
 * that takes one record and fills another. Numbers are printed as their bits,
 * so that no language's way of printing a number is compared. */
#include <vane.h>

#include <inttypes.h>
#include <stdio.h>
#include <string.h>

static uint64_t bits(double x)
{
	uint64_t n;
	memcpy(&n, &x, sizeof n);
	return n;
}

int main(void)
{
	vane_error error;
	const double flow = vane_slot_flow(0.024, 20e-6, 0.008, 15e6, 0.028, 1.5, &error);
	printf("flow %016" PRIx64 " %d\n", bits(flow), error.code == VANE_OK);

	const double refused = vane_slot_flow(0.024, -1, 0.008, 15e6, 0.028, 1.5, &error);
	printf("refused %d %d %s: %s\n", refused != refused, error.code == VANE_INVALID_ARGUMENT,
	       error.name, error.text);

	vane_oil oil;
	vane_oil_state state;
	int32_t status = vane_oil_from_grade(46, 100, &oil, &error);
	status += vane_oil_at(&oil, 323.15, &state, &error);
	printf("oil %d %016" PRIx64 " %016" PRIx64 "\n", (int)status, bits(state.viscosity),
	       bits(state.viscosity_temperature));

	printf("version %s\n", vane_version());
	return 0;
}
