/* An oil of VG 46, from its grade to its viscosity in a hot clearance under pressure. */
#include <stdio.h>
#include <vane.h>

int main(void)
{
	vane_error error;
	vane_oil oil;
	if (vane_oil_from_grade(46, 100, &oil, &error) != VANE_OK)
		return error.code;
	for (int degc = 20; degc <= 80; degc += 20) {
		vane_oil_state state;
		if (vane_oil_at(&oil, degc + 273.15, &state, &error) != VANE_OK)
			return error.code;
		const double thick = vane_oil_barus(state.viscosity, 20e-9, 7e6, &error);
		printf("%d degC: %6.1f mm2/s, %5.1f mPa.s, at 7 MPa %5.1f mPa.s\n", degc,
		       state.kinematic_viscosity * 1e6, state.viscosity * 1e3, thick * 1e3);
	}
	return error.code;
}
