#include "vane/units.h"

#include "check.h"

#include <math.h>

#define INCH 0.0254
#define FOOT 0.3048
#define POUND_FORCE 4.4482216152605
#define PSI (POUND_FORCE / (INCH * INCH))
#define CUBIC_INCH 1.6387064e-5
#define US_GALLON 3.785411784e-3
#define DEGREE 0.017453292519943295

#define FORMULA(to, from, quantity, unit, expression)                                              \
	double vane_units_##to##_from_##from(double quantity, vane_error *error)                   \
	{                                                                                          \
		vn_begin(error);                                                                   \
		if (!vn_finite(quantity, #quantity, unit, error))                                  \
			return NAN;                                                                \
		return vn_result(quantity expression, error);                                      \
	}

/* Both directions state their own operation: a power of ten divides or
 * multiplies as a whole number, which a double holds exactly. */
#define PAIR(si, shop, quantity, si_unit, shop_unit, to_si, to_shop)                               \
	FORMULA(si, shop, quantity, shop_unit, to_si)                                              \
	FORMULA(shop, si, quantity, si_unit, to_shop)

PAIR(m, mm, length, "m", "mm", / 1e3, *1e3)
PAIR(m, um, length, "m", "um", / 1e6, *1e6)
PAIR(m, in, length, "m", "in", *INCH, / INCH)
PAIR(m, thou, length, "m", "thou", *2.54e-5, / 2.54e-5)

PAIR(pa, bar, pressure, "Pa", "bar", *1e5, / 1e5)
PAIR(pa, psi, pressure, "Pa", "psi", *PSI, / PSI)
PAIR(pa, mpa, pressure, "Pa", "MPa", *1e6, / 1e6)
PAIR(pa, kpa, pressure, "Pa", "kPa", *1e3, / 1e3)
PAIR(pa, ksi, stress, "Pa", "ksi", *(1e3 * PSI), / (1e3 * PSI))

PAIR(m2_per_s, cst, kinematic_viscosity, "m2/s", "cSt", / 1e6, *1e6)
PAIR(pa_s, cp, viscosity, "Pa.s", "cP", / 1e3, *1e3)

PAIR(m3_per_s, l_per_min, flow, "m3/s", "L/min", / 6e4, *6e4)
PAIR(m3_per_s, us_gal_per_min, flow, "m3/s", "gal/min", *(US_GALLON / 60), / (US_GALLON / 60))

PAIR(m3, cm3, volume, "m3", "cm3", / 1e6, *1e6)
PAIR(m3, in3, volume, "m3", "in3", *CUBIC_INCH, / CUBIC_INCH)

PAIR(n_m, lbf_ft, torque, "N.m", "lbf.ft", *(POUND_FORCE *FOOT), / (POUND_FORCE * FOOT))
PAIR(n_m, lbf_in, torque, "N.m", "lbf.in", *(POUND_FORCE *INCH), / (POUND_FORCE * INCH))
PAIR(n, lbf, force, "N", "lbf", *POUND_FORCE, / POUND_FORCE)

PAIR(w, hp, power, "W", "hp", *(550 * FOOT * POUND_FORCE), / (550 * FOOT * POUND_FORCE))
PAIR(w, kw, power, "W", "kW", *1e3, / 1e3)

PAIR(rev_per_s, rev_per_min, speed, "r/s", "r/min", / 60, *60)
PAIR(rad, deg, angle, "rad", "deg", *DEGREE, / DEGREE)
PAIR(s, min, time, "s", "min", *60, / 60)

double vane_units_k_from_degc(double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(temperature, -273.15, "temperature", "degC", error))
		return NAN;
	return vn_result(temperature + 273.15, error);
}

double vane_units_degc_from_k(double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(temperature, 0, "temperature", "K", error))
		return NAN;
	return vn_result(temperature - 273.15, error);
}

double vane_units_k_from_degf(double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(temperature, -459.67, "temperature", "degF", error))
		return NAN;
	return vn_result((temperature + 459.67) / 1.8, error);
}

double vane_units_degf_from_k(double temperature, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(temperature, 0, "temperature", "K", error))
		return NAN;
	return vn_result(temperature * 1.8 - 459.67, error);
}
