#include "quantity.h"

#include "vane/units.h"

#include <stdio.h>
#include <string.h>

static double as_it_is(double value, vane_error *error)
{
	(void)error;
	return value;
}

static double from_kilo(double value, vane_error *error)
{
	(void)error;
	return 1e3 * value;
}

static double from_per_mm(double value, vane_error *error)
{
	(void)error;
	return 1e3 * value;
}

static double from_kilo_per_mm(double value, vane_error *error)
{
	(void)error;
	return 1e6 * value;
}

static double from_per_inch_count(double value, vane_error *error)
{
	return vane_units_m_from_in(1.0 / value, error);
}

static double from_fahrenheit_degrees(double value, vane_error *error)
{
	(void)error;
	return value / 1.8;
}

static double from_force_per_inch(double value, vane_error *error)
{
	return vane_units_n_from_lbf(value, error) / vane_units_m_from_in(1.0, error);
}

static double from_per_fahrenheit_degree(double value, vane_error *error)
{
	(void)error;
	return 1.8 * value;
}

/* The second spelling of some is for the head of a column, where no slash or dot is wanted. */
static const struct {
	enum quantity quantity;
	const char *name;
	double (*convert)(double, vane_error *);
} units[] = {
	{LENGTH, "mm", vane_units_m_from_mm},
	{LENGTH, "um", vane_units_m_from_um},
	{LENGTH, "in", vane_units_m_from_in},
	{LENGTH, "thou", vane_units_m_from_thou},
	{LENGTH, "m", as_it_is},
	{ANGLE, "deg", vane_units_rad_from_deg},
	{ANGLE, "rad", as_it_is},
	{PRESSURE, "bar", vane_units_pa_from_bar},
	{PRESSURE, "MPa", vane_units_pa_from_mpa},
	{PRESSURE, "kPa", vane_units_pa_from_kpa},
	{PRESSURE, "psi", vane_units_pa_from_psi},
	{SPEED, "r/min", vane_units_rev_per_s_from_rev_per_min},
	{SPEED, "rpm", vane_units_rev_per_s_from_rev_per_min},
	{TEMPERATURE, "degC", vane_units_k_from_degc},
	{TEMPERATURE, "C", vane_units_k_from_degc},
	{TEMPERATURE, "degF", vane_units_k_from_degf},
	{TEMPERATURE, "F", vane_units_k_from_degf},
	{TEMPERATURE, "K", as_it_is},
	{TEMPERATURE_DIFFERENCE, "K", as_it_is},
	{TEMPERATURE_DIFFERENCE, "degC", as_it_is},
	{TEMPERATURE_DIFFERENCE, "degF", from_fahrenheit_degrees},
	{FLOW, "L_min", vane_units_m3_per_s_from_l_per_min},
	{FLOW, "gal_min", vane_units_m3_per_s_from_us_gal_per_min},
	{TORQUE, "N.m", as_it_is},
	{TORQUE, "Nm", as_it_is},
	{TORQUE, "lbf.ft", vane_units_n_m_from_lbf_ft},
	{TORQUE, "lbf_ft", vane_units_n_m_from_lbf_ft},
	{TORQUE, "lbf.in", vane_units_n_m_from_lbf_in},
	{TORQUE, "lbf_in", vane_units_n_m_from_lbf_in},
	{FORCE, "N", as_it_is},
	{FORCE, "kN", from_kilo},
	{FORCE, "lbf", vane_units_n_from_lbf},
	{FORCE_PER_LENGTH, "N/m", as_it_is},
	{FORCE_PER_LENGTH, "lbf/in", from_force_per_inch},
	{STIFFNESS, "N/m", as_it_is},
	{STIFFNESS, "N/mm", from_per_mm},
	{STIFFNESS, "kN/mm", from_kilo_per_mm},
	{STIFFNESS, "lbf/in", from_force_per_inch},
	{EXPANSION, "1/K", as_it_is},
	{EXPANSION, "1/degF", from_per_fahrenheit_degree},
	{PITCH, "mm", vane_units_m_from_mm},
	{PITCH, "in", vane_units_m_from_in},
	{PITCH, "threads/in", from_per_inch_count},
};

enum { UNITS = sizeof units / sizeof units[0] };

int quantity_convert(enum quantity quantity, const char *unit, double value, double *si)
{
	for (size_t i = 0; i < UNITS; i++) {
		if (units[i].quantity == quantity && strcmp(units[i].name, unit) == 0) {
			*si = units[i].convert(value, NULL);
			return 0;
		}
	}
	return -1;
}

void quantity_units(enum quantity quantity, char *text, size_t size)
{
	text[0] = '\0';
	for (size_t i = 0; i < UNITS; i++) {
		size_t used = strlen(text);

		if (units[i].quantity == quantity)
			(void)snprintf(text + used, size - used, "%s%s", used > 0 ? ", " : "",
				       units[i].name);
	}
}
