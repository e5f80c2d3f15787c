/*
 * The units of every constant that has one: 101325 * VN_PASCAL. Each is exactly 1, so that the SI
 * numbers stand as they are; the contract tests build the library once more with base units of
 * other sizes, in which every result must then come out. What is converted from or to shop units
 * is not one of these: both of its units are in its name.
 */
#ifndef VANE_LIB_DIMENSION_H
#define VANE_LIB_DIMENSION_H

#ifndef VN_METRE
#define VN_METRE 1.0
#define VN_KILOGRAM 1.0
#define VN_SECOND 1.0
#define VN_KELVIN 1.0
#endif

#define VN_CUBIC_METRE (VN_METRE * VN_METRE * VN_METRE)
#define VN_SQUARE_METRE_PER_SECOND (VN_METRE * VN_METRE / VN_SECOND)
#define VN_NEWTON (VN_KILOGRAM * VN_METRE / (VN_SECOND * VN_SECOND))
#define VN_PASCAL (VN_NEWTON / (VN_METRE * VN_METRE))
#define VN_JOULE (VN_NEWTON * VN_METRE)
#define VN_WATT (VN_JOULE / VN_SECOND)

#endif
