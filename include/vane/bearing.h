/**
 * @file bearing.h
 * How long a rolling bearing lives under its load, speed, oil and dirt.
 */
#ifndef VANE_BEARING_H
#define VANE_BEARING_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How clean the oil of a bearing is kept by the filter in its circuit. The
 * numbers are never changed. */
enum vane_bearing_cleanliness {
	VANE_BEARING_13_10 = 1, /**< ISO 4406 -/13/10, filter of 200 at 12 um. */
	VANE_BEARING_15_12 = 2, /**< ISO 4406 -/15/12, filter of 200 at 12 um. */
	VANE_BEARING_17_14 = 3, /**< ISO 4406 -/17/14, filter of 75 at 25 um. */
	VANE_BEARING_19_16 = 4  /**< ISO 4406 -/19/16, filter of 75 at 40 um. */
};

/**
 * Basic rating life in revolutions, which 90 % of the bearings outlive.
 *
 *     L = 1e6 (C/P)^p
 *
 * Over the speed it is the life in seconds.
 *
 * @valid   Load at most half the rating; lubricated, clean, aligned.
 * @source  ISO 281:2007, sec. 5.3 and 7.3 (numbers from memory).
 *
 * @param[in]  rating    Basic dynamic load rating [N; > 0].
 * @param[in]  load      Equivalent dynamic load [N; > 0].
 * @param[in]  exponent  3 for balls, 10/3 for rollers [1; 1 <= x <= 4].
 * @param[out] error     What went wrong, or NULL.
 * @return    Life in revolutions [1].
 */
VANE_API double vane_bearing_life(double rating, double load, double exponent, vane_error *error);

/**
 * Basic dynamic load rating that a load and a life ask for.
 *
 *     C = P (L/1e6)^(1/p)
 *
 * For another reliability than 90 % divide the life by the factor of the reliability first.
 *
 * @valid   As vane_bearing_life().
 * @source  ISO 281:2007, sec. 5.3 and 7.3 (numbers from memory).
 *
 * @param[in]  load      Equivalent dynamic load [N; > 0].
 * @param[in]  life      Life in revolutions [1; > 0].
 * @param[in]  exponent  3 for balls, 10/3 for rollers [1; 1 <= x <= 4].
 * @param[out] error     What went wrong, or NULL.
 * @return    Basic dynamic load rating [N].
 */
VANE_API double vane_bearing_rating(double load, double life, double exponent, vane_error *error);

/**
 * Time that a life lasts at a speed.
 *
 *     t = L/n
 *
 * @valid   Constant speed.
 * @source  Definition.
 *
 * @param[in]  life   Life in revolutions [1; > 0].
 * @param[in]  speed  Rotational speed [1/s; > 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Time [s].
 */
VANE_API double vane_bearing_life_time(double life, double speed, vane_error *error);

/**
 * Speed factor of the catalogues.
 *
 *     f = (n_0/n)^(1/p)    n_0 = 100/3 r/min
 *
 * A bearing that carries the load f C lives 500 h.
 *
 * @valid   As vane_bearing_life().
 * @constant Speed at which a million revolutions take 500 h, 100/3 r/min [1/s].
 * @source  Common practice of bearing catalogues, from the definition of the basic rating life.
 *
 * @param[in]  speed     Rotational speed [1/s; > 0].
 * @param[in]  exponent  3 for balls, 10/3 for rollers [1; 1 <= x <= 4].
 * @param[out] error     What went wrong, or NULL.
 * @return    Speed factor [1].
 */
VANE_API double vane_bearing_speed_factor(double speed, double exponent, vane_error *error);

/**
 * Speed times mean diameter, by which catalogues limit the speed.
 *
 *     v = n D
 *
 * Catalogues write it in mm r/min: 60000 times as many.
 *
 * @valid   Limits are those of the bearing, its cage and its lubricant.
 * @source  Common practice of bearing catalogues.
 *
 * @param[in]  pitch_diameter  Mean of bore and outside diameter, or of the pitch circle [m; > 0].
 * @param[in]  speed           Rotational speed [1/s; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Product [m/s].
 */
VANE_API double vane_bearing_speed_product(double pitch_diameter, double speed, vane_error *error);

/**
 * Equivalent dynamic load of a combined load.
 *
 *     P = X V F_r + Y F_a
 *
 * @valid   X and Y are those of the bearing; V is 1 in today's standard.
 * @source  ISO 281:2007, sec. 5.2 (number from memory).
 *
 * @param[in]  radial_force     Radial force [N; >= 0].
 * @param[in]  axial_force      Axial force [N; >= 0].
 * @param[in]  radial_factor    Factor X of the bearing [1; >= 0].
 * @param[in]  axial_factor     Factor Y of the bearing [1; >= 0].
 * @param[in]  rotation_factor  1, or customarily 1.2 where the outer ring turns [1; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Equivalent dynamic load [N].
 */
VANE_API double vane_bearing_equivalent_load(double radial_force, double axial_force,
					     double radial_factor, double axial_factor,
					     double rotation_factor, vane_error *error);

/**
 * Equivalent dynamic load of a deep groove ball bearing.
 *
 *     P = F_r, or 0.56 F_r + Y F_a for F_a/F_r > e
 *
 * e and Y fall between those of the table in a straight line over f0 F_a/C0; outside, the nearest
 * row holds.
 *
 * @valid   Single row, normal clearance.
 * @source  ISO 281:2007, Table 3 (from memory).
 *
 * @param[in]  radial_force     Radial force [N; >= 0].
 * @param[in]  axial_force      Axial force [N; >= 0].
 * @param[in]  static_rating    Basic static load rating [N; > 0].
 * @param[in]  geometry_factor  Factor f0 of the bearing [1; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Equivalent dynamic load [N].
 */
VANE_API double vane_bearing_groove_load(double radial_force, double axial_force,
					 double static_rating, double geometry_factor,
					 vane_error *error);

/**
 * Life for a reliability over the basic rating life, a1.
 *
 *     a = 1, 0.64, 0.55, 0.47, 0.37, 0.25 at 90, 95, 96, 97, 98, 99 %
 *
 * Between the rows of the table, up to 99.95 %, it runs straight over (ln(1/R)/ln(1/0.9))^(2/3).
 *
 * @valid   Life at least 0.05 of the basic rating life.
 * @source  ISO 281:2007, Table 12 (from memory).
 *
 * @param[in]  reliability  Part of the bearings that live longer [1; 0.9 <= x <= 0.9995].
 * @param[out] error        What went wrong, or NULL.
 * @return    Factor a1 [1].
 */
VANE_API double vane_bearing_reliability_factor(double reliability, vane_error *error);

/**
 * Life for a reliability over the basic rating life, by Weibull's two parameters.
 *
 *     a = (ln(1/R)/ln(1/0.9))^(1/b)
 *
 * @valid   Too short above a reliability of 95 %; see vane_bearing_reliability_factor().
 * @source  Weibull (1951); Jindal, Machine Design, Example 18-7, with a slope of 1.17.
 *
 * @param[in]  reliability  Part of the bearings that live longer [1; 0 < x < 1].
 * @param[in]  slope        Slope of the distribution [1; 0.5 <= x <= 5].
 * @param[out] error        What went wrong, or NULL.
 * @return    Life over the basic rating life [1].
 */
VANE_API double vane_bearing_weibull_life(double reliability, double slope, vane_error *error);

/**
 * Reliability for a life over the basic rating life, by Weibull's two parameters.
 *
 *     R = exp(-ln(1/0.9) a^b)
 *
 * @valid   As vane_bearing_weibull_life(). The exponential magnifies the rounding of
 *          its argument: within 8 ulp down to a reliability of 0.1, ever more below.
 * @source  As vane_bearing_weibull_life().
 *
 * @param[in]  life_ratio  Life over the basic rating life [1; >= 0].
 * @param[in]  slope       Slope of the distribution [1; 0.5 <= x <= 5].
 * @param[out] error       What went wrong, or NULL.
 * @return    Part of the bearings that live longer [1].
 */
VANE_API double vane_bearing_weibull_reliability(double life_ratio, double slope,
						 vane_error *error);

/**
 * Life for a reliability over the basic rating life, by Weibull's three parameters.
 *
 *     a = x_0 + (x_c - x_0) ln(1/R)^(1/b)
 *
 * @valid   The parameters are the maker's; books use 0.02, 4.459 and 1.483.
 * @source  Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8th ed., sec. 11-4.
 *
 * @param[in]  reliability          Part of the bearings that live longer [1; 0 < x < 1].
 * @param[in]  least_life           Least life over the basic rating life [1; >= 0].
 * @param[in]  characteristic_life  Life that a part of 1/e outlives, over the basic rating life
 *                                  [1; > least_life].
 * @param[in]  slope                Slope of the distribution [1; 0.5 <= x <= 5].
 * @param[out] error                What went wrong, or NULL.
 * @return    Life over the basic rating life [1].
 */
VANE_API double vane_bearing_weibull3_life(double reliability, double least_life,
					   double characteristic_life, double slope,
					   vane_error *error);

/**
 * Reliability for a life over the basic rating life, by Weibull's three parameters.
 *
 *     R = exp(-((a - x_0)/(x_c - x_0))^b)
 *
 * It is 1 up to the least life.
 *
 * @valid   As vane_bearing_weibull3_life(). The exponential magnifies the rounding of
 *          its argument: within 8 ulp down to a reliability of 0.1, ever more below.
 * @source  As vane_bearing_weibull3_life().
 *
 * @param[in]  life_ratio           Life over the basic rating life [1; >= 0].
 * @param[in]  least_life           Least life over the basic rating life [1; >= 0].
 * @param[in]  characteristic_life  Life that a part of 1/e outlives, over the basic rating life
 *                                  [1; > least_life].
 * @param[in]  slope                Slope of the distribution [1; 0.5 <= x <= 5].
 * @param[out] error                What went wrong, or NULL.
 * @return    Part of the bearings that live longer [1].
 */
VANE_API double vane_bearing_weibull3_reliability(double life_ratio, double least_life,
						  double characteristic_life, double slope,
						  vane_error *error);

/**
 * Modified rating life.
 *
 *     L = a_1 a_ISO L_10
 *
 * @valid   As its factors.
 * @source  ISO 281:2007, sec. 9.3 (number from memory).
 *
 * @param[in]  life                Life in revolutions [1; > 0].
 * @param[in]  reliability_factor  Factor a1 [1; > 0].
 * @param[in]  life_factor         Factor aISO [1; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Life in revolutions [1].
 */
VANE_API double vane_bearing_modified_life(double life, double reliability_factor,
					   double life_factor, vane_error *error);

/**
 * Life modification factor of a radial ball bearing, aISO.
 *
 *     a = 0.1 (1 - (2.5671 - c/kappa^d)^0.83 (e_C C_u/P)^(1/3))^-9.3
 *
 * c and d are 2.2649 and 0.054381 up to a viscosity ratio of 0.4, 1.9987 and 0.19087 up to 1,
 * 1.9987 and 0.071739 up to 4, above which 4 is taken. At most 50. For a thrust bearing give
 * three times its load.
 *
 * @valid   Mineral oil without effective additives. The power, and a bracket that nearly vanishes at
 *          a ratio of 0.1, magnify the rounding of the constants: within 1000 ulp.
 * @source  ISO 281:2007, eq. (31) to (33) (numbers from memory).
 *
 * @param[in]  viscosity_ratio  Viscosity of the oil over the reference viscosity [1; >= 0.1].
 * @param[in]  contamination    Factor eC, 1 for perfectly clean oil [1; 0 <= x <= 1].
 * @param[in]  fatigue_limit    Fatigue load limit [N; > 0].
 * @param[in]  load             Equivalent dynamic load [N; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Factor aISO [1].
 */
VANE_API double vane_bearing_life_factor_ball(double viscosity_ratio, double contamination,
					      double fatigue_limit, double load, vane_error *error);

/**
 * Life modification factor of a radial roller bearing, aISO.
 *
 *     a = 0.1 (1 - (1.5859 - c/kappa^d) (e_C C_u/P)^0.4)^-9.185
 *
 * c and d are 1.3993 and 0.054381 up to a viscosity ratio of 0.4, 1.2348 and 0.19087 up to 1,
 * 1.2348 and 0.071739 up to 4, above which 4 is taken. At most 50. For a thrust bearing give 2.5
 * times its load.
 *
 * @valid   Mineral oil without effective additives. The power, and a bracket that nearly vanishes at
 *          a ratio of 0.1, magnify the rounding of the constants: within 1000 ulp.
 * @source  ISO 281:2007, eq. (34) to (36) (numbers from memory).
 *
 * @param[in]  viscosity_ratio  Viscosity of the oil over the reference viscosity [1; >= 0.1].
 * @param[in]  contamination    Factor eC, 1 for perfectly clean oil [1; 0 <= x <= 1].
 * @param[in]  fatigue_limit    Fatigue load limit [N; > 0].
 * @param[in]  load             Equivalent dynamic load [N; > 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Factor aISO [1].
 */
VANE_API double vane_bearing_life_factor_roller(double viscosity_ratio, double contamination,
						double fatigue_limit, double load,
						vane_error *error);

/**
 * Kinematic viscosity that a rolling bearing needs at its running temperature.
 *
 *     nu = 45000 n^-0.83 D^-0.5 below 1000 r/min, 4500 n^-0.5 D^-0.5 from there
 *     nu in mm2/s, n in r/min, D in mm
 *
 * The law steps down by 2 % at 1000 r/min.
 *
 * @valid   Mineral oil.
 * @constant Viscosity in the law, 1 mm2/s [m2/s].
 * @constant Speed in the law, 1 r/min and 1000 r/min [1/s].
 * @constant Diameter in the law, 1 mm [m].
 * @source  ISO 281:2007, eq. (29) and (30) (numbers from memory).
 *
 * @param[in]  speed           Rotational speed [1/s; > 0].
 * @param[in]  pitch_diameter  Mean of bore and outside diameter, or of the pitch circle [m; > 0].
 * @param[out] error           What went wrong, or NULL.
 * @return    Reference kinematic viscosity [m2/s].
 */
VANE_API double vane_bearing_reference_viscosity(double speed, double pitch_diameter,
						 vane_error *error);

/**
 * Contamination factor of a bearing in an oil circuit with a filter, eC.
 *
 *     e = a (1 - c/D^(1/3))    a = k kappa^0.68 D^0.55 <= 1    D in mm
 *
 * k and c are 0.0864 and 0.5663 for -/13/10, 0.0432 and 0.9987 for -/15/12, 0.0288 and 1.6329 for
 * -/17/14, 0.0216 and 2.3362 for -/19/16. Never below 0; a viscosity ratio above 4 counts as 4.
 *
 * @valid   Circulating oil, filtered before it reaches the bearing; hard particles.
 * @constant Diameter in the law, 1 mm [m].
 * @source  ISO 281:2007, annex A.4 (from memory).
 *
 * @param[in]  cleanliness      Number of enum vane_bearing_cleanliness [1; 1 <= x <= 4].
 * @param[in]  viscosity_ratio  Viscosity of the oil over the reference viscosity [1; >= 0.1].
 * @param[in]  pitch_diameter   Mean of bore and outside diameter, or of the pitch circle [m; > 0].
 * @param[out] contamination    Factor eC [1; 0 <= x <= 1].
 * @param[out] error            What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_bearing_contamination(int32_t cleanliness, double viscosity_ratio,
					    double pitch_diameter, double *contamination,
					    vane_error *error);

/**
 * Constant load that wears a bearing as a varying one does.
 *
 *     P = (sum(N P_i^p)/sum(N))^(1/p)
 *
 * @valid   Damage adds up linearly.
 * @source  Palmgren (1924), Miner (1945); Jindal, Machine Design, Example 18-9.
 *
 * @param[in]  load         Equivalent dynamic load of each stage [N; >= 0; length stages].
 * @param[in]  revolutions  Revolutions of each stage, or its part of them [1; > 0; length stages].
 * @param[in]  stages       Number of stages [1; 1 <= x <= 1000000].
 * @param[in]  exponent     3 for balls, 10/3 for rollers [1; 1 <= x <= 4].
 * @param[out] mean         Mean load [N; >= 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_bearing_mean_load(const double *load, const double *revolutions,
					int64_t stages, double exponent, double *mean,
					vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
