/**
 * @file units.h
 * Shop units to and from the SI units of every other function.
 *
 * Each name says what comes out and what goes in: vane_units_m_from_in() gives
 * metres from inches. A displacement per revolution converts as a volume does.
 */
#ifndef VANE_UNITS_H
#define VANE_UNITS_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Length in metre from millimetre.
 *
 *     m = mm / 1000
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [mm; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [m].
 */
VANE_API double vane_units_m_from_mm(double length, vane_error *error);

/**
 * Length in millimetre from metre.
 *
 *     mm = 1000 m
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [m; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [mm].
 */
VANE_API double vane_units_mm_from_m(double length, vane_error *error);

/**
 * Length in metre from micrometre.
 *
 *     m = um / 1e6
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [um; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [m].
 */
VANE_API double vane_units_m_from_um(double length, vane_error *error);

/**
 * Length in micrometre from metre.
 *
 *     um = 1e6 m
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [m; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [um].
 */
VANE_API double vane_units_um_from_m(double length, vane_error *error);

/**
 * Length in metre from inch.
 *
 *     m = 0.0254 in
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [[in_i]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [m].
 */
VANE_API double vane_units_m_from_in(double length, vane_error *error);

/**
 * Length in inch from metre.
 *
 *     in = m / 0.0254
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [m; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [[in_i]].
 */
VANE_API double vane_units_in_from_m(double length, vane_error *error);

/**
 * Length in metre from thousandth of an inch.
 *
 *     m = 0.0000254 thou
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [[mil_i]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [m].
 */
VANE_API double vane_units_m_from_thou(double length, vane_error *error);

/**
 * Length in thousandth of an inch from metre.
 *
 *     thou = m / 0.0000254
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] length  Length to convert [m; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Length [[mil_i]].
 */
VANE_API double vane_units_thou_from_m(double length, vane_error *error);

/**
 * Pressure in pascal from bar.
 *
 *     Pa = 1e5 bar
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [bar; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [Pa].
 */
VANE_API double vane_units_pa_from_bar(double pressure, vane_error *error);

/**
 * Pressure in bar from pascal.
 *
 *     bar = Pa / 1e5
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [bar].
 */
VANE_API double vane_units_bar_from_pa(double pressure, vane_error *error);

/**
 * Pressure in pascal from pound-force per square inch.
 *
 *     Pa = 4.4482216152605 / 0.0254^2 psi
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [[psi]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [Pa].
 */
VANE_API double vane_units_pa_from_psi(double pressure, vane_error *error);

/**
 * Pressure in pound-force per square inch from pascal.
 *
 *     psi = Pa * 0.0254^2 / 4.4482216152605
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [[psi]].
 */
VANE_API double vane_units_psi_from_pa(double pressure, vane_error *error);

/**
 * Pressure in pascal from megapascal (also N/mm2).
 *
 *     Pa = 1e6 MPa
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [MPa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [Pa].
 */
VANE_API double vane_units_pa_from_mpa(double pressure, vane_error *error);

/**
 * Pressure in megapascal (also N/mm2) from pascal.
 *
 *     MPa = Pa / 1e6
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [MPa].
 */
VANE_API double vane_units_mpa_from_pa(double pressure, vane_error *error);

/**
 * Pressure in pascal from kilopascal.
 *
 *     Pa = 1000 kPa
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [kPa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [Pa].
 */
VANE_API double vane_units_pa_from_kpa(double pressure, vane_error *error);

/**
 * Pressure in kilopascal from pascal.
 *
 *     kPa = Pa / 1000
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] pressure  Pressure to convert [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Pressure [kPa].
 */
VANE_API double vane_units_kpa_from_pa(double pressure, vane_error *error);

/**
 * Stress in pascal from thousand pounds-force per square inch.
 *
 *     Pa = 4448.2216152605 / 0.0254^2 ksi
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] stress  Stress to convert [10*3.[psi]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Stress [Pa].
 */
VANE_API double vane_units_pa_from_ksi(double stress, vane_error *error);

/**
 * Stress in thousand pounds-force per square inch from pascal.
 *
 *     ksi = Pa * 0.0254^2 / 4448.2216152605
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] stress  Stress to convert [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Stress [10*3.[psi]].
 */
VANE_API double vane_units_ksi_from_pa(double stress, vane_error *error);

/**
 * Kinematic viscosity in square metre per second from centistokes (mm2/s).
 *
 *     m2/s = cSt / 1e6
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity to convert [mm2/s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [m2/s].
 */
VANE_API double vane_units_m2_per_s_from_cst(double kinematic_viscosity, vane_error *error);

/**
 * Kinematic viscosity in centistokes (mm2/s) from square metre per second.
 *
 *     cSt = 1e6 m2/s
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] kinematic_viscosity  Kinematic viscosity to convert [m2/s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Kinematic viscosity [mm2/s].
 */
VANE_API double vane_units_cst_from_m2_per_s(double kinematic_viscosity, vane_error *error);

/**
 * Dynamic viscosity in pascal second from centipoise (mPa.s).
 *
 *     Pa.s = cP / 1000
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] viscosity  Dynamic viscosity to convert [mPa.s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Dynamic viscosity [Pa.s].
 */
VANE_API double vane_units_pa_s_from_cp(double viscosity, vane_error *error);

/**
 * Dynamic viscosity in centipoise (mPa.s) from pascal second.
 *
 *     cP = 1000 Pa.s
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] viscosity  Dynamic viscosity to convert [Pa.s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Dynamic viscosity [mPa.s].
 */
VANE_API double vane_units_cp_from_pa_s(double viscosity, vane_error *error);

/**
 * Volume flow in cubic metre per second from litre per minute.
 *
 *     m3/s = (L/min) / 60000
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] flow  Volume flow to convert [L/min; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume flow [m3/s].
 */
VANE_API double vane_units_m3_per_s_from_l_per_min(double flow, vane_error *error);

/**
 * Volume flow in litre per minute from cubic metre per second.
 *
 *     L/min = 60000 (m3/s)
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] flow  Volume flow to convert [m3/s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume flow [L/min].
 */
VANE_API double vane_units_l_per_min_from_m3_per_s(double flow, vane_error *error);

/**
 * Volume flow in cubic metre per second from US gallon per minute.
 *
 *     m3/s = 231 * 0.0254^3 / 60 (gal/min)
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] flow  Volume flow to convert [[gal_us]/min; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume flow [m3/s].
 */
VANE_API double vane_units_m3_per_s_from_us_gal_per_min(double flow, vane_error *error);

/**
 * Volume flow in US gallon per minute from cubic metre per second.
 *
 *     gal/min = 60 (m3/s) / (231 * 0.0254^3)
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] flow  Volume flow to convert [m3/s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume flow [[gal_us]/min].
 */
VANE_API double vane_units_us_gal_per_min_from_m3_per_s(double flow, vane_error *error);

/**
 * Volume, or displacement per revolution in cubic metre from cubic centimetre.
 *
 *     m3 = cm3 / 1e6
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] volume  Volume, or displacement per revolution to convert [cm3; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume, or displacement per revolution [m3].
 */
VANE_API double vane_units_m3_from_cm3(double volume, vane_error *error);

/**
 * Volume, or displacement per revolution in cubic centimetre from cubic metre.
 *
 *     cm3 = 1e6 m3
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] volume  Volume, or displacement per revolution to convert [m3; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume, or displacement per revolution [cm3].
 */
VANE_API double vane_units_cm3_from_m3(double volume, vane_error *error);

/**
 * Volume, or displacement per revolution in cubic metre from cubic inch.
 *
 *     m3 = 0.0254^3 in3
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] volume  Volume, or displacement per revolution to convert [[cin_i]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume, or displacement per revolution [m3].
 */
VANE_API double vane_units_m3_from_in3(double volume, vane_error *error);

/**
 * Volume, or displacement per revolution in cubic inch from cubic metre.
 *
 *     in3 = m3 / 0.0254^3
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] volume  Volume, or displacement per revolution to convert [m3; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume, or displacement per revolution [[cin_i]].
 */
VANE_API double vane_units_in3_from_m3(double volume, vane_error *error);

/**
 * Torque in newton metre from pound-force foot.
 *
 *     N.m = 4.4482216152605 * 0.3048 lbf.ft
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] torque  Torque to convert [[lbf_av].[ft_i]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Torque [N.m].
 */
VANE_API double vane_units_n_m_from_lbf_ft(double torque, vane_error *error);

/**
 * Torque in pound-force foot from newton metre.
 *
 *     lbf.ft = N.m / (4.4482216152605 * 0.3048)
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] torque  Torque to convert [N.m; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Torque [[lbf_av].[ft_i]].
 */
VANE_API double vane_units_lbf_ft_from_n_m(double torque, vane_error *error);

/**
 * Torque in newton metre from pound-force inch.
 *
 *     N.m = 4.4482216152605 * 0.0254 lbf.in
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] torque  Torque to convert [[lbf_av].[in_i]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Torque [N.m].
 */
VANE_API double vane_units_n_m_from_lbf_in(double torque, vane_error *error);

/**
 * Torque in pound-force inch from newton metre.
 *
 *     lbf.in = N.m / (4.4482216152605 * 0.0254)
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] torque  Torque to convert [N.m; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Torque [[lbf_av].[in_i]].
 */
VANE_API double vane_units_lbf_in_from_n_m(double torque, vane_error *error);

/**
 * Force in newton from pound-force.
 *
 *     N = 4.4482216152605 lbf
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] force  Force to convert [[lbf_av]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Force [N].
 */
VANE_API double vane_units_n_from_lbf(double force, vane_error *error);

/**
 * Force in pound-force from newton.
 *
 *     lbf = N / 4.4482216152605
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] force  Force to convert [N; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Force [[lbf_av]].
 */
VANE_API double vane_units_lbf_from_n(double force, vane_error *error);

/**
 * Power in watt from horsepower of 550 ft.lbf/s.
 *
 *     W = 550 * 0.3048 * 4.4482216152605 hp
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] power  Power to convert [[HP]; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Power [W].
 */
VANE_API double vane_units_w_from_hp(double power, vane_error *error);

/**
 * Power in horsepower of 550 ft.lbf/s from watt.
 *
 *     hp = W / (550 * 0.3048 * 4.4482216152605)
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] power  Power to convert [W; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Power [[HP]].
 */
VANE_API double vane_units_hp_from_w(double power, vane_error *error);

/**
 * Power in watt from kilowatt.
 *
 *     W = 1000 kW
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] power  Power to convert [kW; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Power [W].
 */
VANE_API double vane_units_w_from_kw(double power, vane_error *error);

/**
 * Power in kilowatt from watt.
 *
 *     kW = W / 1000
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] power  Power to convert [W; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Power [kW].
 */
VANE_API double vane_units_kw_from_w(double power, vane_error *error);

/**
 * Temperature in kelvin from degree Celsius.
 *
 *     K = degC + 273.15
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] temperature  Temperature to convert [Cel; >= -273.15].
 * @param[out] error  What went wrong, or NULL.
 * @return    Temperature [K].
 */
VANE_API double vane_units_k_from_degc(double temperature, vane_error *error);

/**
 * Temperature in degree Celsius from kelvin.
 *
 *     degC = K - 273.15
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] temperature  Temperature to convert [K; >= 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Temperature [Cel].
 */
VANE_API double vane_units_degc_from_k(double temperature, vane_error *error);

/**
 * Temperature in kelvin from degree Fahrenheit.
 *
 *     K = (degF + 459.67) / 1.8
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] temperature  Temperature to convert [[degF]; >= -459.67].
 * @param[out] error  What went wrong, or NULL.
 * @return    Temperature [K].
 */
VANE_API double vane_units_k_from_degf(double temperature, vane_error *error);

/**
 * Temperature in degree Fahrenheit from kelvin.
 *
 *     degF = 1.8 K - 459.67
 *
 * @valid   Everywhere.
 * @source  NIST SP 811 (2008), App. B.8; exact by definition.
 *
 * @param[in] temperature  Temperature to convert [K; >= 0].
 * @param[out] error  What went wrong, or NULL.
 * @return    Temperature [[degF]].
 */
VANE_API double vane_units_degf_from_k(double temperature, vane_error *error);

/**
 * Rotational speed in revolution per second from revolution per minute.
 *
 *     rev/s = (r/min) / 60
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] speed  Rotational speed to convert [1/min; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Rotational speed [1/s].
 */
VANE_API double vane_units_rev_per_s_from_rev_per_min(double speed, vane_error *error);

/**
 * Rotational speed in revolution per minute from revolution per second.
 *
 *     r/min = 60 rev/s
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] speed  Rotational speed to convert [1/s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Rotational speed [1/min].
 */
VANE_API double vane_units_rev_per_min_from_rev_per_s(double speed, vane_error *error);

/**
 * Angle in radian from degree.
 *
 *     rad = pi / 180 deg
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] angle  Angle to convert [deg; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Angle [rad].
 */
VANE_API double vane_units_rad_from_deg(double angle, vane_error *error);

/**
 * Angle in degree from radian.
 *
 *     deg = 180 / pi rad
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] angle  Angle to convert [rad; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Angle [deg].
 */
VANE_API double vane_units_deg_from_rad(double angle, vane_error *error);

/**
 * Time in second from minute.
 *
 *     s = 60 min
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] time  Time to convert [min; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Time [s].
 */
VANE_API double vane_units_s_from_min(double time, vane_error *error);

/**
 * Time in minute from second.
 *
 *     min = s / 60
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] time  Time to convert [s; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Time [min].
 */
VANE_API double vane_units_min_from_s(double time, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
