/**
 * @file slot.h
 * Leakage through the clearances of a pump: slots, faces, shafts, vanes, tips.
 *
 * Oil is incompressible and of one viscosity in each formula.
 */
#ifndef VANE_SLOT_H
#define VANE_SLOT_H

#include "vane/error.h"

#ifdef __cplusplus
extern "C" {
#endif

/**
 * Flow through a slot between two parallel plates, one of them sliding.
 *
 *     q = w h^3 dp / (12 mu L) + w h U / 2
 *
 * @valid   Laminar, fully developed, constant viscosity, w >> h; see vane_slot_reynolds()
 *          and vane_slot_inertia().
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2 (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap         Distance between the walls [m; >= 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_flow(double width, double gap, double length, double dp, double viscosity,
			       double wall_speed, vane_error *error);

/**
 * Radial flow between two flat discs, or a sector of them, at rest.
 *
 *     q = Theta h^3 dp / (12 mu ln(r_o / r_i))
 *
 * @valid   Laminar, no inertia, h << r_i; the sector has no flow across its sides.
 * @source  Massey and Ward-Smith, Mechanics of Fluids, Example 6.2.
 *
 * @param[in] gap           Distance between the walls [m; >= 0].
 * @param[in] inner_radius  Radius of the inner edge [m; > 0].
 * @param[in] outer_radius  Radius of the outer edge [m; > inner_radius].
 * @param[in] angle         Angle of the sector [rad; 0 < x <= 6.283185307179586].
 * @param[in] dp            Pressure at the inner minus pressure at the outer radius [Pa; any].
 * @param[in] viscosity     Dynamic viscosity [Pa.s; > 0].
 * @param[out] error        What went wrong, or NULL.
 * @return    Volume flow, positive outward [m3/s].
 */
VANE_API double vane_slot_disc_flow(double gap, double inner_radius, double outer_radius,
				    double angle, double dp, double viscosity, vane_error *error);

/**
 * Shape factor of the flow around the end of a pressure step on the rim of an annular film.
 *
 *     F = H / (pi^2 delta) (pi^2 / 6 - Li2(exp(-pi delta / H)))
 *
 * @valid   Inner rim at one pressure; along the outer rim the pressure changes linearly
 *          over delta and is even on both sides. For delta << H, F = (1 - ln(pi delta / H)) / pi.
 * @source  Definition: conformal solution of the strip. Dilogarithm: Abramowitz and Stegun,
 *          Handbook of Mathematical Functions, eq. 27.7 (from memory).
 *
 * @param[in] vane_angle  Angle of the vane at the rim [rad; 0 < x <= 6.283185307179586].
 * @param[in] log_ratio   Natural logarithm of outer to inner radius of the film [1; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Flow over h^3 dp / (12 mu) [1].
 */
VANE_API double vane_slot_edge_factor(double vane_angle, double log_ratio, vane_error *error);

/**
 * Flow through an annular film from one pressure on its rim to the other, around a vane.
 *
 *     q = h^3 dp / (12 mu) F(delta, H)
 *
 * @valid   As for vane_slot_edge_factor(); laminar, one face, one vane.
 * @source  Definition: conformal solution of the strip, see vane_slot_edge_factor().
 *
 * @param[in] gap         Distance between the walls [m; >= 0].
 * @param[in] vane_angle  Angle of the vane at the rim [rad; 0 < x <= 6.283185307179586].
 * @param[in] log_ratio   Natural logarithm of outer to inner radius of the film [1; > 0].
 * @param[in] dp          Pressure on one side of the vane minus the other [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_edge_flow(double gap, double vane_angle, double log_ratio, double dp,
				    double viscosity, vane_error *error);

/**
 * Axial flow through the thin clearance around a shaft, which may be off centre.
 *
 *     q = pi d c^3 (1 + 1.5 eps^2) dp / (12 mu L) + pi d c U / 2
 *
 * @valid   Laminar, c << d, axes parallel; the cylinder slides along its axis.
 * @source  Merritt, Hydraulic Control Systems (1967), ch. 2 (from memory).
 *
 * @param[in] diameter      Diameter of the inner cylinder [m; > 0].
 * @param[in] gap           Radial clearance when centred [m; >= 0].
 * @param[in] length        Length of the clearance along the axis [m; > 0].
 * @param[in] eccentricity  Offset of the axes over the radial gap [1; 0 <= x <= 1].
 * @param[in] dp            Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity     Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed    Axial speed of one cylinder, positive downstream [m/s; any].
 * @param[out] error        What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_annulus_flow(double diameter, double gap, double length,
				       double eccentricity, double dp, double viscosity,
				       double wall_speed, vane_error *error);

/**
 * Flow past both flanks of a vane in its slot.
 *
 *     q = w c^3 (1 + 3 eps^2) / 4 dp / (12 mu L)
 *
 * @valid   Laminar, vane parallel to the slot; against one wall it leaks 4 times as much
 *          as centred.
 * @source  Definition: vane_slot_flow() for the two gaps c (1 + eps) / 2 and c (1 - eps) / 2.
 *
 * @param[in] width      Width of the vane along the shaft axis [m; > 0].
 * @param[in] gap        Total clearance, slot width minus vane thickness [m; >= 0].
 * @param[in] length     Engaged height of the vane in the slot [m; > 0].
 * @param[in] offset     Offset of the vane over half the clearance [1; 0 <= x <= 1].
 * @param[in] dp         Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_vane_flow(double width, double gap, double length, double offset,
				    double dp, double viscosity, vane_error *error);

/**
 * Flow through a slot whose gap changes linearly along the flow, walls at rest.
 *
 *     q = w (2 h1^2 h2^2 / (h1 + h2)) dp / (12 mu L)
 *
 * @valid   Laminar, no inertia, w >> h1 and h2, slope small.
 * @source  Merritt, Hydraulic Control Systems (1967), ch. 2 (from memory).
 *
 * @param[in] width      Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in     Distance between the walls upstream [m; >= 0].
 * @param[in] gap_out    Distance between the walls downstream [m; >= 0].
 * @param[in] length     Extent of the slot along the flow [m; > 0].
 * @param[in] dp         Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_taper_flow(double width, double gap_in, double gap_out, double length,
				     double dp, double viscosity, vane_error *error);

/**
 * Flow between a rounded vane tip and the ring that slides past it.
 *
 *     q = w dp / (12 mu I3) + w U / 2 I2 / I3
 *     I_n = integral of dx / h^n from -s to s, h = h0 + x^2 / (2 R')
 *     I2 = a / h0^2 (phi + sin(phi) cos(phi))
 *     I3 = a / (4 h0^3) (3 phi + 3 sin(phi) cos(phi) + 2 sin(phi) cos(phi)^3)
 *     a = sqrt(2 R' h0), phi = atan(s / a)
 *
 * @valid   Laminar, no cavitation, parabola for the circles: h0 and s << R'.
 * @source  Definition: integrals of the Reynolds equation for a parabolic gap.
 *
 * @param[in] width       Width of the vane along the shaft axis [m; > 0].
 * @param[in] film        Smallest distance between tip and ring [m; >= 0].
 * @param[in] radius      Equivalent radius, see vane_slot_tip_radius() [m; > 0].
 * @param[in] half_width  Half the extent of the tip along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the ring past the vane, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_tip_flow(double width, double film, double radius, double half_width,
				   double dp, double viscosity, double wall_speed,
				   vane_error *error);

/**
 * Equivalent radius of a rounded tip inside a ring.
 *
 *     1 / R' = 1 / R_t - 1 / rho
 *
 * @valid   Convex tip in a concave ring; see vane_slot_tip_flow().
 * @source  Hamrock, Fundamentals of Fluid Film Lubrication, effective radius (from memory).
 *
 * @param[in] tip_radius   Radius to which the vane tip is rounded [m; > 0].
 * @param[in] ring_radius  Radius of the ring where the tip touches it [m; > tip_radius].
 * @param[out] error       What went wrong, or NULL.
 * @return    Radius of the parabola that has the same gap against a flat [m].
 */
VANE_API double vane_slot_tip_radius(double tip_radius, double ring_radius, vane_error *error);

/**
 * Reynolds number of a slot on twice the gap.
 *
 *     Re = 2 U h / nu = 2 |q| / (w nu)
 *
 * @valid   Parallel walls; laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.6 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] width                Extent of the slot across the flow [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number on the hydraulic diameter 2 h [1].
 */
VANE_API double vane_slot_reynolds(double flow, double width, double kinematic_viscosity,
				   vane_error *error);

/**
 * Largest Reynolds number of a radial film on twice the gap, at its inner radius.
 *
 *     Re = 2 |q| / (Theta r_i nu)
 *
 * @valid   As for vane_slot_disc_flow(); laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.6 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] inner_radius         Radius of the inner edge [m; > 0].
 * @param[in] angle                Angle of the sector [rad; 0 < x <= 6.283185307179586].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number at the inner radius [1].
 */
VANE_API double vane_slot_disc_reynolds(double flow, double inner_radius, double angle,
					double kinematic_viscosity, vane_error *error);

/**
 * Mean Reynolds number of a thin annular clearance on twice the gap.
 *
 *     Re = 2 |q| / (pi d nu)
 *
 * @valid   As for vane_slot_annulus_flow(); laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.6 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] diameter             Diameter of the inner cylinder [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number, mean around the annulus [1].
 */
VANE_API double vane_slot_annulus_reynolds(double flow, double diameter, double kinematic_viscosity,
					   vane_error *error);

/**
 * Reynolds number of the film under a vane tip on twice the gap.
 *
 *     Re = 2 |q| / (w nu)
 *
 * @valid   The same at every gap along the film; laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.6 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] width                Width of the vane along the shaft axis [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number [1].
 */
VANE_API double vane_slot_tip_reynolds(double flow, double width, double kinematic_viscosity,
				       vane_error *error);

/**
 * Pressure drop of a slot by inertia over its drop by friction.
 *
 *     ratio = K Re h / (48 L), Re = 2 |q| / (w nu), K = 1 + 0.674
 *
 * @valid   Parallel walls, rounded or sharp entry not told apart, exit head lost.
 *          Ignore inertia below 0.01.
 * @source  Shah and London, Laminar Flow Forced Convection in Ducts (1978), ch. VI (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] width                Extent of the slot across the flow [m; > 0].
 * @param[in] gap                  Distance between the walls [m; > 0].
 * @param[in] length               Extent of the slot along the flow [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Inertial over viscous pressure drop [1].
 */
VANE_API double vane_slot_inertia(double flow, double width, double gap, double length,
				  double kinematic_viscosity, vane_error *error);

/**
 * Graetz number: how far heat made in a slot is carried before the walls take it.
 *
 *     Gz = U h^2 / (a L) = |q| h / (w a L)
 *
 * @valid   Parallel walls. Below 1 the oil keeps the temperature of the walls, above 10 it
 *          warms as if they were insulated (common practice, no source).
 * @source  Shah and London, Laminar Flow Forced Convection in Ducts (1978) (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] width                Extent of the slot across the flow [m; > 0].
 * @param[in] gap                  Distance between the walls [m; > 0].
 * @param[in] length               Extent of the slot along the flow [m; > 0].
 * @param[in] thermal_diffusivity  Thermal diffusivity of the oil [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Graetz number on the gap [1].
 */
VANE_API double vane_slot_graetz(double flow, double width, double gap, double length,
				 double thermal_diffusivity, vane_error *error);

/**
 * Force that drags one wall of a slot past the other.
 *
 *     F = mu U w L / h
 *
 * @valid   Laminar, no pressure gradient.
 * @source  Fox and McDonald, Introduction to Fluid Mechanics, Example 8.2.
 *
 * @param[in] width       Extent of the slot across the motion [m; > 0].
 * @param[in] length      Extent of the slot along the motion [m; > 0].
 * @param[in] gap         Distance between the walls [m; > 0].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Force on the sliding wall, of the sign of its speed [N].
 */
VANE_API double vane_slot_shear_force(double width, double length, double gap, double viscosity,
				      double wall_speed, vane_error *error);

/**
 * Flow through a short opening, such as a cut seal, smooth through zero.
 *
 *     q = C_d A sqrt(2 / rho) dp / (dp^2 + dp_c^2)^(1/4)
 *     dp_c = rho / 2 (20 nu / (C_d D_h))^2, D_h = sqrt(4 A / pi)
 *
 * @valid   Incompressible, no cavitation. Where it turns laminar (Re = 20) is common practice,
 *          no source.
 * @source  Merritt, Hydraulic Control Systems (1967), ch. 3 (orifice equation, from memory);
 *          the smooth join is a definition.
 *
 * @param[in] area                   Area of the opening [m2; > 0].
 * @param[in] dp                     Upstream minus downstream pressure [Pa; any].
 * @param[in] density                Density [kg/m3; > 0].
 * @param[in] kinematic_viscosity    Kinematic viscosity [m2/s; > 0].
 * @param[in] discharge_coefficient  Turbulent discharge coefficient [1; 0 < x <= 1].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_orifice_flow(double area, double dp, double density,
				       double kinematic_viscosity, double discharge_coefficient,
				       vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
