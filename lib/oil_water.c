#include "oil.h"

#include "check.h"

/* IAPWS R12-08, Table 1: of the gas at zero density. */
static const double dilute[] = {1.67752, 2.20462, 0.6366564, -0.241605};

/* Table 2: rows by (T_c/T - 1), columns by (rho/rho_c - 1). */
static const double dense[6][7] = {
	{5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
	{8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
	{-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
	{-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
	{0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
	{0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4},
};

static double polynomial(const double *coefficient, int n, double x)
{
	double sum = 0;
	for (int i = n - 1; i >= 0; i--)
		sum = sum * x + coefficient[i];
	return sum;
}

double vane_oil_water_viscosity(double temperature, double density, vane_error *error)
{
	const double unit = VN_KILOGRAM / VN_CUBIC_METRE;
	vn_begin(error);
	if (!vn_between(temperature, 273.15 * VN_KELVIN, 1173.15 * VN_KELVIN, "temperature", "K",
			error) ||
	    !vn_between(density, 0, 1300 * unit, "density", "kg/m3", error) ||
	    !vn_above(density, 0, "density", "kg/m3", error))
		return NAN;
	const double inverse = 647.096 * VN_KELVIN / temperature, ratio = density / (322 * unit);
	double rows[6];
	for (int i = 0; i < 6; i++)
		rows[i] = polynomial(dense[i], 7, ratio - 1);
	const double gas = 100 / sqrt(inverse) / polynomial(dilute, 4, inverse);
	return 1e-6 * gas * exp(ratio * polynomial(rows, 6, inverse - 1)) * VN_PASCAL * VN_SECOND;
}
