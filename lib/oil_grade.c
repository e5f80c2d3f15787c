#include "oil.h"

#include "check.h"

#include <stddef.h>

/* ISO 3448: the number of a grade is its midpoint, but rounded below 10. */
static const struct {
	double grade, midpoint;
} table[] = {
	{2, 2.2},   {3, 3.2},   {5, 4.6},     {7, 6.8},     {10, 10},     {15, 15},     {22, 22},
	{32, 32},   {46, 46},   {68, 68},     {100, 100},   {150, 150},   {220, 220},   {320, 320},
	{460, 460}, {680, 680}, {1000, 1000}, {1500, 1500}, {2200, 2200}, {3200, 3200},
};

enum { GRADES = sizeof table / sizeof *table };

/* In mm2/s; NaN where there is no such grade. */
static double midpoint(double grade, vane_error *error)
{
	vn_begin(error);
	for (size_t i = 0; i < GRADES; i++)
		if (table[i].grade == grade)
			return table[i].midpoint;
	vn_fail(VANE_INVALID_ARGUMENT, "grade", grade,
		"grade must be a number of ISO 3448: 2, 3, 5, 7, 10, 15, 22, 32, 46, 68 and so on "
		"to 3200.",
		error);
	return NAN;
}

double vane_oil_grade_viscosity(double grade, vane_error *error)
{
	return vn_oil_from_mm2_per_s(midpoint(grade, error));
}

double vane_oil_grade_minimum(double grade, vane_error *error)
{
	return midpoint(grade, error) * 9 / 1e7 * VN_SQUARE_METRE_PER_SECOND;
}

double vane_oil_grade_maximum(double grade, vane_error *error)
{
	return midpoint(grade, error) * 11 / 1e7 * VN_SQUARE_METRE_PER_SECOND;
}

double vane_oil_grade_nearest(double viscosity_40, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(viscosity_40, 0, "viscosity_40", "m2/s", error))
		return NAN;
	size_t i = 0;
	/* Half way in logarithms is the geometric mean. */
	while (i + 1 < GRADES && viscosity_40 > vn_oil_from_mm2_per_s(sqrt(table[i].midpoint *
									   table[i + 1].midpoint)))
		i++;
	return table[i].grade;
}
