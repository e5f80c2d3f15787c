/*
 * Included before every source of the library, this makes its base units variables, so that one
 * build has them of any size: units.py sets them. A constant of the library that is not written in
 * them keeps its SI number, and that shows.
 */
#ifndef VANE_TESTS_SCALED_H
#define VANE_TESTS_SCALED_H

extern double vane_scaled_metre, vane_scaled_kilogram, vane_scaled_second, vane_scaled_kelvin;

#define VN_METRE vane_scaled_metre
#define VN_KILOGRAM vane_scaled_kilogram
#define VN_SECOND vane_scaled_second
#define VN_KELVIN vane_scaled_kelvin

#endif
