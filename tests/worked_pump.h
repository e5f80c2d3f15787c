/* An invented pump whose every figure was worked by an independent program before the library was
 * written; the checks on it print the figures that program gave. */
#ifndef VANE_TESTS_WORKED_PUMP_H
#define VANE_TESTS_WORKED_PUMP_H

#include "vane/parts.h"

#define DEGREE (3.14159265358979323846 / 180)

static inline vane_parts worked_pump(void)
{
	vane_parts p;
	vane_parts_default(&p);
	p.ring.large_radius = 33.0e-3;
	p.ring.small_radius = 28.6e-3;
	p.ring.width = 24.000e-3;
	p.rotor_radius = 28.3e-3;
	p.rotor_width = 23.960e-3;
	p.slot_width = 1.825e-3;
	p.vane_width = 23.965e-3;
	p.vane_thickness = 1.800e-3;
	p.vane_height = 11e-3;
	p.tip_radius = 1.2e-3;
	p.plate_bore = 11.5e-3;
	p.groove_inner = 15.5e-3;
	p.groove_outer = 18.5e-3;
	p.inlet_open = 16.5 * DEGREE;
	p.inlet_close = 73 * DEGREE;
	p.outlet_open = 107 * DEGREE;
	p.outlet_close = 163.5 * DEGREE;
	p.notch = 6 * DEGREE;
	p.shaft_radius = 11.44e-3;
	p.shaft_gap = 60e-6;
	p.shaft_length = 18e-3;
	p.vanes = 12;
	return p;
}

#endif
