#include "vane/bearing.h"
#include "check.h"
#include "dimension.h"
#include "twofold.h"

#include <math.h>

/* ln(1/0.9): what the basic rating life is defined by. */
static const vn_two tenth = {0.10536051565782630123, 5.983685785249026e-18};

static bool life_ok(double life, vane_error *error)
{
	return vn_above(life, 0, "life", "", error);
}

static bool load_ok(double load, vane_error *error)
{
	return vn_above(load, 0, "load", "N", error);
}

static bool exponent_ok(double exponent, vane_error *error)
{
	return vn_between(exponent, 1, 4, "exponent", "", error);
}

/* base^power, with what both left out by rounding. */
static double power_of(vn_two base, vn_two power)
{
	const double plain = pow(base.high, power.high);
	if (!(base.low != 0 || power.low != 0) || !(base.high > 0) || !isfinite(base.low))
		return plain;
	return plain + plain * (power.low * log(base.high) + power.high * (base.low / base.high));
}

double vane_bearing_life(double rating, double load, double exponent, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(rating, 0, "rating", "N", error) || !load_ok(load, error) ||
	    !exponent_ok(exponent, error))
		return NAN;
	return vn_result(1e6 * power_of(vn_two_ratio(rating, load), vn_two_of(exponent)), error);
}

double vane_bearing_rating(double load, double life, double exponent, vane_error *error)
{
	vn_begin(error);
	if (!load_ok(load, error) || !life_ok(life, error) || !exponent_ok(exponent, error))
		return NAN;
	return vn_result(load * power_of(vn_two_ratio(life, 1e6), vn_two_ratio(1, exponent)),
			 error);
}

double vane_bearing_life_time(double life, double speed, vane_error *error)
{
	vn_begin(error);
	if (!life_ok(life, error) || !vn_above(speed, 0, "speed", "1/s", error))
		return NAN;
	return vn_result(life / speed, error);
}

double vane_bearing_speed_factor(double speed, double exponent, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(speed, 0, "speed", "1/s", error) || !exponent_ok(exponent, error))
		return NAN;
	const vn_two ratio = vn_two_over(vn_two_ratio(5, 9), vn_two_of(speed * VN_SECOND));
	return vn_result(power_of(ratio, vn_two_ratio(1, exponent)), error);
}

double vane_bearing_speed_product(double pitch_diameter, double speed, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(pitch_diameter, 0, "pitch_diameter", "m", error) ||
	    !vn_above(speed, 0, "speed", "1/s", error))
		return NAN;
	return vn_result(pitch_diameter * speed, error);
}

static bool forces_ok(double radial_force, double axial_force, vane_error *error)
{
	return vn_least(radial_force, 0, "radial_force", "N", error) &&
	       vn_least(axial_force, 0, "axial_force", "N", error);
}

double vane_bearing_equivalent_load(double radial_force, double axial_force, double radial_factor,
				    double axial_factor, double rotation_factor, vane_error *error)
{
	vn_begin(error);
	if (!forces_ok(radial_force, axial_force, error) ||
	    !vn_least(radial_factor, 0, "radial_factor", "", error) ||
	    !vn_least(axial_factor, 0, "axial_factor", "", error) ||
	    !vn_above(rotation_factor, 0, "rotation_factor", "", error))
		return NAN;
	return vn_result(
		radial_factor * rotation_factor * radial_force + axial_factor * axial_force, error);
}

/* ISO 281:2007, Table 3, deep groove ball bearings, X = 0.56 (from memory). */
static const struct {
	double thrust, limit, axial_factor;
} groove[] = {
	{0.172, 0.19, 2.30}, {0.345, 0.22, 1.99}, {0.689, 0.26, 1.71},
	{1.03, 0.28, 1.55},  {1.38, 0.30, 1.45},  {2.07, 0.34, 1.31},
	{3.45, 0.38, 1.15},  {5.17, 0.42, 1.04},  {6.89, 0.44, 1.00},
};
enum { GROOVES = sizeof groove / sizeof *groove };

double vane_bearing_groove_load(double radial_force, double axial_force, double static_rating,
				double geometry_factor, vane_error *error)
{
	vn_begin(error);
	if (!forces_ok(radial_force, axial_force, error) ||
	    !vn_above(static_rating, 0, "static_rating", "N", error) ||
	    !vn_above(geometry_factor, 0, "geometry_factor", "", error))
		return NAN;
	const double thrust =
		fmin(fmax(geometry_factor * (axial_force / static_rating), groove[0].thrust),
		     groove[GROOVES - 1].thrust);
	int i = 1;
	while (i < GROOVES - 1 && thrust > groove[i].thrust)
		i++;
	const double part =
		(thrust - groove[i - 1].thrust) / (groove[i].thrust - groove[i - 1].thrust);
	const double limit = groove[i - 1].limit * (1 - part) + groove[i].limit * part;
	const double factor =
		groove[i - 1].axial_factor * (1 - part) + groove[i].axial_factor * part;
	if (axial_force <= limit * radial_force)
		return radial_force;
	return vn_result(0.56 * radial_force + factor * axial_force, error);
}

/* ISO 281:2007, Table 12 (from memory). */
static const struct {
	double reliability, factor;
} sure[] = {
	{0.90, 1},      {0.95, 0.64},    {0.96, 0.55},    {0.97, 0.47},    {0.98, 0.37},
	{0.99, 0.25},   {0.992, 0.22},   {0.994, 0.19},   {0.996, 0.16},   {0.998, 0.12},
	{0.999, 0.093}, {0.9992, 0.087}, {0.9994, 0.080}, {0.9995, 0.077},
};
enum { SURE = sizeof sure / sizeof *sure };

static double spread(double reliability)
{
	return pow(-log(reliability) / tenth.high, 2.0 / 3);
}

double vane_bearing_reliability_factor(double reliability, vane_error *error)
{
	vn_begin(error);
	if (!vn_between(reliability, sure[0].reliability, sure[SURE - 1].reliability, "reliability",
			"", error))
		return NAN;
	int i = 1;
	while (i < SURE - 1 && reliability > sure[i].reliability)
		i++;
	const double from = spread(sure[i - 1].reliability), to = spread(sure[i].reliability);
	const double part = (spread(reliability) - from) / (to - from);
	return sure[i - 1].factor * (1 - part) + sure[i].factor * part;
}

static bool reliability_ok(double reliability, vane_error *error)
{
	if (reliability > 0 && reliability < 1)
		return true;
	return vn_fail(VANE_INVALID_ARGUMENT, "reliability", reliability,
		       "reliability must be greater than 0 and less than 1.", error);
}

static bool slope_ok(double slope, vane_error *error)
{
	return vn_between(slope, 0.5, 5, "slope", "", error);
}

static bool lives_ok(double least_life, double characteristic_life, double slope, vane_error *error)
{
	return vn_least(least_life, 0, "least_life", "", error) &&
	       vn_above(characteristic_life, least_life, "characteristic_life", "", error) &&
	       slope_ok(slope, error);
}

double vane_bearing_weibull_life(double reliability, double slope, vane_error *error)
{
	vn_begin(error);
	if (!reliability_ok(reliability, error) || !slope_ok(slope, error))
		return NAN;
	const vn_two ratio = vn_two_over(vn_two_of(-log(reliability)), tenth);
	return vn_result(power_of(ratio, vn_two_ratio(1, slope)), error);
}

double vane_bearing_weibull_reliability(double life_ratio, double slope, vane_error *error)
{
	vn_begin(error);
	if (!vn_least(life_ratio, 0, "life_ratio", "", error) || !slope_ok(slope, error))
		return NAN;
	return exp(-tenth.high * pow(life_ratio, slope));
}

double vane_bearing_weibull3_life(double reliability, double least_life, double characteristic_life,
				  double slope, vane_error *error)
{
	vn_begin(error);
	if (!reliability_ok(reliability, error) ||
	    !lives_ok(least_life, characteristic_life, slope, error))
		return NAN;
	const double part = power_of(vn_two_of(-log(reliability)), vn_two_ratio(1, slope));
	const vn_two more = vn_two_scaled(vn_two_sum(characteristic_life, -least_life), part);
	return vn_result(vn_two_round(vn_two_plus(more, vn_two_of(least_life))), error);
}

double vane_bearing_weibull3_reliability(double life_ratio, double least_life,
					 double characteristic_life, double slope,
					 vane_error *error)
{
	vn_begin(error);
	if (!vn_least(life_ratio, 0, "life_ratio", "", error) ||
	    !lives_ok(least_life, characteristic_life, slope, error))
		return NAN;
	if (life_ratio <= least_life)
		return 1;
	return exp(-pow((life_ratio - least_life) / (characteristic_life - least_life), slope));
}

double vane_bearing_modified_life(double life, double reliability_factor, double life_factor,
				  vane_error *error)
{
	vn_begin(error);
	if (!life_ok(life, error) ||
	    !vn_above(reliability_factor, 0, "reliability_factor", "", error) ||
	    !vn_above(life_factor, 0, "life_factor", "", error))
		return NAN;
	return vn_result(reliability_factor * life_factor * life, error);
}

/* c/kappa^d of ISO 281:2007, eq. (31) to (36): `thin` for oil thinner than 0.4
 * of the reference viscosity, else `thick`. */
static double starved(double kappa, double thin, double thick)
{
	if (kappa < 0.4)
		return thin / pow(kappa, 0.054381);
	return thick / pow(fmin(kappa, 4), kappa < 1 ? 0.19087 : 0.071739);
}

/* 0.1 rest^power, at most 50. */
static double limited(double rest, double power)
{
	const double most = 50;
	return rest > 0 ? fmin(0.1 * pow(rest, power), most) : most;
}

/* e_C C_u/P; the quotient alone may be infinite. */
static double clean(double contamination, double fatigue_limit, double load)
{
	return contamination > 0 ? contamination * (fatigue_limit / load) : 0;
}

static bool oil_ok(double viscosity_ratio, double contamination, double fatigue_limit, double load,
		   vane_error *error)
{
	return vn_least(viscosity_ratio, 0.1, "viscosity_ratio", "", error) &&
	       vn_between(contamination, 0, 1, "contamination", "", error) &&
	       vn_above(fatigue_limit, 0, "fatigue_limit", "N", error) && load_ok(load, error);
}

double vane_bearing_life_factor_ball(double viscosity_ratio, double contamination,
				     double fatigue_limit, double load, vane_error *error)
{
	vn_begin(error);
	if (!oil_ok(viscosity_ratio, contamination, fatigue_limit, load, error))
		return NAN;
	const double film = pow(2.5671 - starved(viscosity_ratio, 2.2649, 1.9987), 0.83);
	return limited(1 - film * cbrt(clean(contamination, fatigue_limit, load)), -9.3);
}

double vane_bearing_life_factor_roller(double viscosity_ratio, double contamination,
				       double fatigue_limit, double load, vane_error *error)
{
	vn_begin(error);
	if (!oil_ok(viscosity_ratio, contamination, fatigue_limit, load, error))
		return NAN;
	const double film = 1.5859 - starved(viscosity_ratio, 1.3993, 1.2348);
	return limited(1 - film * pow(clean(contamination, fatigue_limit, load), 0.4), -9.185);
}

double vane_bearing_reference_viscosity(double speed, double pitch_diameter, vane_error *error)
{
	vn_begin(error);
	if (!vn_above(speed, 0, "speed", "1/s", error) ||
	    !vn_above(pitch_diameter, 0, "pitch_diameter", "m", error))
		return NAN;
	/* 45000 and 4500 mm2/s, with r/min and mm worked in. */
	const double slow = 0.000047571514280563985884, fast = 0.000018371173070873835736;
	const double n = speed * VN_SECOND, d = pitch_diameter / VN_METRE;
	const double law = n < 1000.0 / 60 ? slow * pow(n, -0.83) : fast / sqrt(n);
	return vn_result(law / sqrt(d) * VN_SQUARE_METRE_PER_SECOND, error);
}

/* ISO 281:2007, annex A.4, circulating oil with a filter (from memory). */
static const struct {
	double grown, lost;
} filtered[] = {{0.0864, 0.5663}, {0.0432, 0.9987}, {0.0288, 1.6329}, {0.0216, 2.3362}};

int32_t vane_bearing_contamination(int32_t cleanliness, double viscosity_ratio,
				   double pitch_diameter, double *contamination, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(contamination, "contamination", error))
		return VANE_INVALID_ARGUMENT;
	*contamination = NAN;
	if (!vn_count(cleanliness, VANE_BEARING_13_10, VANE_BEARING_19_16, "cleanliness", error) ||
	    !vn_least(viscosity_ratio, 0.1, "viscosity_ratio", "", error) ||
	    !vn_above(pitch_diameter, 0, "pitch_diameter", "m", error))
		return VANE_INVALID_ARGUMENT;
	const int i = cleanliness - VANE_BEARING_13_10;
	const double d = 1000 * (pitch_diameter / VN_METRE);
	const double size =
		fmin(1, filtered[i].grown * pow(fmin(viscosity_ratio, 4), 0.68) * pow(d, 0.55));
	*contamination = fmax(0, size * (1 - filtered[i].lost / cbrt(d)));
	return VANE_OK;
}

static bool stages_ok(const double *x, int64_t stages, bool positive, const char *name,
		      const char *unit, vane_error *error)
{
	for (int64_t i = 0; i < stages; i++)
		if (positive ? !vn_above(x[i], 0, name, unit, error)
			     : !vn_least(x[i], 0, name, unit, error)) {
			vn_at(i, error);
			return false;
		}
	return true;
}

int32_t vane_bearing_mean_load(const double *load, const double *revolutions, int64_t stages,
			       double exponent, double *mean, vane_error *error)
{
	vn_begin(error);
	if (!vn_pointer(mean, "mean", error))
		return VANE_INVALID_ARGUMENT;
	*mean = NAN;
	if (!vn_count(stages, 1, 1000000, "stages", error) || !vn_pointer(load, "load", error) ||
	    !vn_pointer(revolutions, "revolutions", error) ||
	    !stages_ok(load, stages, false, "load", "N", error) ||
	    !stages_ok(revolutions, stages, true, "revolutions", "", error) ||
	    !exponent_ok(exponent, error))
		return VANE_INVALID_ARGUMENT;
	/* By the greatest of each, so that no power overflows. */
	double most_load = 0, most_turns = 0;
	for (int64_t i = 0; i < stages; i++) {
		most_load = fmax(most_load, load[i]);
		most_turns = fmax(most_turns, revolutions[i]);
	}
	double damage = 0, turns = 0;
	for (int64_t i = 0; i < stages; i++) {
		const double part = revolutions[i] / most_turns;
		turns += part;
		if (load[i] > 0)
			damage += part * pow(load[i] / most_load, exponent);
	}
	*mean = most_load * pow(damage / turns, 1 / exponent);
	return VANE_OK;
}
