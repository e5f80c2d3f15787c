/**
 * @file slot.h
 * Leakage through the clearances of a pump: slots, faces, shafts, vanes, tips.
 *
 * Oil is incompressible and of one viscosity in each formula, unless it says otherwise. The
 * conductance of a path is its flow at a pressure drop and a viscosity of one, walls at rest.
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
 *          and vane_slot_inertia(). Where the two shares nearly cancel, the error is an ulp or so
 *          of the larger one, here and wherever a formula adds pressure and drag.
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
 *          Only flow that crosses the rim beyond delta counts.
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
 * @valid   Laminar, no cavitation, parabola for the circles: h0 and s << R'. Within 8 ulp.
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

/**
 * Speed of the oil at a height in a slot between two parallel plates, one of them sliding.
 *
 *     u = dp y (h - y) / (2 mu L) + U y / h
 *
 * @valid   As for vane_slot_flow(). Where the shares nearly cancel, within some ulp of the larger
 *          one.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2 (from memory).
 *
 * @param[in] gap         Distance between the walls [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[in] height      Distance from the wall at rest [m; 0 <= x <= gap].
 * @param[out] error      What went wrong, or NULL.
 * @return    Speed of the oil, positive downstream [m/s].
 */
VANE_API double vane_slot_velocity(double gap, double length, double dp, double viscosity,
				   double wall_speed, double height, vane_error *error);

/**
 * Shear stress at a height in a slot between two parallel plates, one of them sliding.
 *
 *     tau = mu du/dy = dp (h / 2 - y) / L + mu U / h
 *
 * @valid   As for vane_slot_flow(). Where the shares nearly cancel, within some ulp of the larger
 *          one.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2 (from memory).
 *
 * @param[in] gap         Distance between the walls [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[in] height      Distance from the wall at rest [m; 0 <= x <= gap].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear stress, positive where the speed rises with the height [Pa].
 */
VANE_API double vane_slot_shear(double gap, double length, double dp, double viscosity,
				double wall_speed, double height, vane_error *error);

/**
 * Force of the oil on the wall at rest of a slot between two parallel plates.
 *
 *     F = w (h dp / 2 + mu U L / h)
 *
 * @valid   As for vane_slot_flow(). Where the shares nearly cancel, within some ulp of the larger
 *          one.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2, wall shear times area (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap         Distance between the walls [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Force of the oil on the wall at rest, positive downstream [N].
 */
VANE_API double vane_slot_still_wall_force(double width, double gap, double length, double dp,
					   double viscosity, double wall_speed, vane_error *error);

/**
 * Force of the oil on the sliding wall of a slot between two parallel plates.
 *
 *     F = w (h dp / 2 - mu U L / h)
 *
 * @valid   As for vane_slot_flow(). Where the shares nearly cancel, within some ulp of the larger
 *          one.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2, wall shear times area (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap         Distance between the walls [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Force of the oil on the sliding wall, positive downstream [N].
 */
VANE_API double vane_slot_sliding_wall_force(double width, double gap, double length, double dp,
					     double viscosity, double wall_speed,
					     vane_error *error);

/**
 * Pressure at a radius between two flat discs, or in a sector of them.
 *
 *     p = (p_i ln(r_o / r) + p_o ln(r / r_i)) / ln(r_o / r_i)
 *
 * @valid   As for vane_slot_disc_flow(). Where the two shares nearly cancel, the error is an ulp or
 *          so of the larger one.
 * @source  Massey and Ward-Smith, Mechanics of Fluids, sec. 6.5 (from memory).
 *
 * @param[in] inner_radius    Radius of the inner edge [m; > 0].
 * @param[in] outer_radius    Radius of the outer edge [m; > inner_radius].
 * @param[in] inner_pressure  Gauge pressure at the inner edge [Pa; any].
 * @param[in] outer_pressure  Gauge pressure at the outer edge [Pa; any].
 * @param[in] radius          Radius asked for [m; inner_radius <= x <= outer_radius].
 * @param[out] error          What went wrong, or NULL.
 * @return    Gauge pressure there [Pa].
 */
VANE_API double vane_slot_disc_pressure(double inner_radius, double outer_radius,
					double inner_pressure, double outer_pressure, double radius,
					vane_error *error);

/**
 * Force of the pressure between two flat discs, or in a sector of them.
 *
 *     F = Theta / 2 (p_o r_o^2 - p_i r_i^2 + (p_i - p_o) (r_o^2 - r_i^2) / (2 ln(r_o / r_i)))
 *
 * @valid   As for vane_slot_disc_flow(); what stands inside the inner edge is not counted. Where
 *          the two pressures have opposite signs and their shares nearly cancel, the error is an
 *          ulp or so of the larger share.
 * @source  Integral of vane_slot_disc_pressure() over the area; Massey and Ward-Smith, Mechanics of
 *          Fluids, sec. 6.5 (from memory).
 *
 * @param[in] inner_radius    Radius of the inner edge [m; > 0].
 * @param[in] outer_radius    Radius of the outer edge [m; > inner_radius].
 * @param[in] angle           Angle of the sector [rad; 0 < x <= 6.283185307179586].
 * @param[in] inner_pressure  Gauge pressure at the inner edge [Pa; any].
 * @param[in] outer_pressure  Gauge pressure at the outer edge [Pa; any].
 * @param[out] error          What went wrong, or NULL.
 * @return    Force that pushes the walls apart [N].
 */
VANE_API double vane_slot_disc_force(double inner_radius, double outer_radius, double angle,
				     double inner_pressure, double outer_pressure,
				     vane_error *error);

/**
 * Torque to turn one of two flat discs, or the film over a sector of it.
 *
 *     T = Theta mu 2 pi n (r_o^4 - r_i^4) / (4 h)
 *
 * @valid   Laminar, no inertia, h << r_i. Within 8 ulp.
 * @source  Fox and McDonald, Introduction to Fluid Mechanics, ch. 2, parallel-disc viscometer (from
 *          memory).
 *
 * @param[in] gap           Distance between the walls [m; > 0].
 * @param[in] inner_radius  Radius of the inner edge [m; > 0].
 * @param[in] outer_radius  Radius of the outer edge [m; > inner_radius].
 * @param[in] angle         Angle of the sector [rad; 0 < x <= 6.283185307179586].
 * @param[in] viscosity     Dynamic viscosity [Pa.s; > 0].
 * @param[in] speed         Rotational speed of one disc past the other [1/s; any].
 * @param[out] error        What went wrong, or NULL.
 * @return    Torque that turns the disc, of the sign of its speed [N.m].
 */
VANE_API double vane_slot_disc_torque(double gap, double inner_radius, double outer_radius,
				      double angle, double viscosity, double speed,
				      vane_error *error);

/**
 * Flow that a sliding wall drags through a slot whose gap changes linearly along the flow.
 *
 *     q = w U h1 h2 / (h1 + h2)
 *
 * @valid   As for vane_slot_taper_flow(), to which it adds; no cavitation.
 * @source  Hamrock, Fundamentals of Fluid Film Lubrication, fixed-incline slider (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; >= 0].
 * @param[in] gap_out     Distance between the walls downstream [m; >= 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_taper_drag_flow(double width, double gap_in, double gap_out,
					  double wall_speed, vane_error *error);

/**
 * Pressure along a slot whose gap changes linearly, one wall sliding.
 *
 *     p = dp (L - x) (h + h2) h1^2 / (L (h1 + h2) h^2)
 *         + 6 mu U x (L - x) (h1 - h2) / (L (h1 + h2) h^2)
 *     h = h1 + (h2 - h1) x / L
 *
 * @valid   As for vane_slot_taper_flow(); no cavitation. Within 8 ulp. Where the shares nearly
 *          cancel, within some ulp of the larger one.
 * @source  Hamrock, Fundamentals of Fluid Film Lubrication, fixed-incline slider (from memory).
 *
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[in] position    Distance from the upstream end [m; 0 <= x <= length].
 * @param[out] error      What went wrong, or NULL.
 * @return    Pressure above that at the downstream end [Pa].
 */
VANE_API double vane_slot_taper_pressure(double gap_in, double gap_out, double length, double dp,
					 double viscosity, double wall_speed, double position,
					 vane_error *error);

/**
 * Force of the pressure in a slot whose gap changes linearly, one wall sliding.
 *
 *     W = w L dp h1 / (h1 + h2) + 12 mu U w L^2 z (A - 1) / (z^2 (h1 + h2)^2)
 *     z = (h1 - h2) / (h1 + h2), A = atanh(z) / z
 *
 * @valid   As for vane_slot_taper_pressure(). Within 16 ulp. Where the shares nearly cancel, within
 *          some ulp of the larger one.
 * @source  Rayleigh (1918); Hamrock, Fundamentals of Fluid Film Lubrication, fixed-incline slider
 *          (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Force that pushes the walls apart, over the downstream pressure [N].
 */
VANE_API double vane_slot_taper_load(double width, double gap_in, double gap_out, double length,
				     double dp, double viscosity, double wall_speed,
				     vane_error *error);

/**
 * Shear force on the wall at rest of a slot whose gap changes linearly.
 *
 *     F = w (dp h1 h2 / (h1 + h2) + mu U L (6 - 4 A) / (h1 + h2))
 *     z = (h1 - h2) / (h1 + h2), A = atanh(z) / z
 *
 * @valid   As for vane_slot_taper_pressure(); leaves out what the pressure does on an inclined
 *          wall. Within 16 ulp. Where the shares nearly cancel, within some ulp of the larger one,
 *          and near A = 1.5.
 * @source  Hamrock, Fundamentals of Fluid Film Lubrication, fixed-incline slider (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear force of the oil on the wall at rest, positive downstream [N].
 */
VANE_API double vane_slot_taper_still_force(double width, double gap_in, double gap_out,
					    double length, double dp, double viscosity,
					    double wall_speed, vane_error *error);

/**
 * Shear force on the sliding wall of a slot whose gap changes linearly.
 *
 *     F = w (dp h1 h2 / (h1 + h2) - mu U L (8 A - 6) / (h1 + h2))
 *     z = (h1 - h2) / (h1 + h2), A = atanh(z) / z
 *
 * @valid   As for vane_slot_taper_pressure(); leaves out what the pressure does on an inclined
 *          wall. Within 16 ulp. Where the shares nearly cancel, within some ulp of the larger one.
 * @source  Hamrock, Fundamentals of Fluid Film Lubrication, fixed-incline slider (from memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length      Extent of the slot along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear force of the oil on the sliding wall, positive downstream [N].
 */
VANE_API double vane_slot_taper_sliding_force(double width, double gap_in, double gap_out,
					      double length, double dp, double viscosity,
					      double wall_speed, vane_error *error);

/**
 * Flow through two parallel slots in line, of different gaps, one wall sliding past both.
 *
 *     q = w dp / (12 mu I_3) + w U I_2 / (2 I_3)
 *     I_n = L1 / h1^n + L2 / h2^n
 *
 * @valid   As for vane_slot_flow(), no loss at the step. Within 8 ulp. Where the shares nearly
 *          cancel, within some ulp of the larger one.
 * @source  Rayleigh (1918); Hamrock, Fundamentals of Fluid Film Lubrication, step slider (from
 *          memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; >= 0].
 * @param[in] length_in   Extent of the upstream gap along the flow [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; >= 0].
 * @param[in] length_out  Extent of the downstream gap along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_step_flow(double width, double gap_in, double length_in, double gap_out,
				    double length_out, double dp, double viscosity,
				    double wall_speed, vane_error *error);

/**
 * Pressure at the step between two parallel slots in line, one wall sliding past both.
 *
 *     p = (dp L2 h1^3 + 6 mu U L1 L2 (h1 - h2)) / (L1 h2^3 + L2 h1^3)
 *
 * @valid   As for vane_slot_step_flow(); no cavitation. The pressure is linear on both sides.
 *          Within 8 ulp. Where the shares nearly cancel, within some ulp of the larger one.
 * @source  Rayleigh (1918); Hamrock, Fundamentals of Fluid Film Lubrication, step slider (from
 *          memory).
 *
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] length_in   Extent of the upstream gap along the flow [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length_out  Extent of the downstream gap along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Pressure above that at the downstream end [Pa].
 */
VANE_API double vane_slot_step_pressure(double gap_in, double length_in, double gap_out,
					double length_out, double dp, double viscosity,
					double wall_speed, vane_error *error);

/**
 * Force of the pressure in two parallel slots in line, one wall sliding past both.
 *
 *     W = w (dp L1 + p_step (L1 + L2)) / 2
 *
 * @valid   As for vane_slot_step_pressure(). Within 8 ulp. Where the shares nearly cancel, within
 *          some ulp of the larger one.
 * @source  Rayleigh (1918); Hamrock, Fundamentals of Fluid Film Lubrication, step slider (from
 *          memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] length_in   Extent of the upstream gap along the flow [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length_out  Extent of the downstream gap along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Force that pushes the walls apart, over the downstream pressure [N].
 */
VANE_API double vane_slot_step_load(double width, double gap_in, double length_in, double gap_out,
				    double length_out, double dp, double viscosity,
				    double wall_speed, vane_error *error);

/**
 * Shear force on the wall at rest of two parallel slots in line.
 *
 *     F = w ((h1 (dp - p_step) + h2 p_step) / 2 + mu U I_1)
 *     I_n = L1 / h1^n + L2 / h2^n
 *
 * @valid   As for vane_slot_step_pressure(); leaves out the pressure on the face of the step.
 *          Within 8 ulp. Where the shares nearly cancel, within some ulp of the larger one.
 * @source  Rayleigh (1918); Hamrock, Fundamentals of Fluid Film Lubrication, step slider (from
 *          memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] length_in   Extent of the upstream gap along the flow [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length_out  Extent of the downstream gap along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear force of the oil on the wall at rest, positive downstream [N].
 */
VANE_API double vane_slot_step_still_force(double width, double gap_in, double length_in,
					   double gap_out, double length_out, double dp,
					   double viscosity, double wall_speed, vane_error *error);

/**
 * Shear force on the sliding wall of two parallel slots in line.
 *
 *     F = w ((h1 (dp - p_step) + h2 p_step) / 2 - mu U I_1)
 *     I_n = L1 / h1^n + L2 / h2^n
 *
 * @valid   As for vane_slot_step_pressure(); leaves out the pressure on the face of the step.
 *          Within 8 ulp. Where the shares nearly cancel, within some ulp of the larger one.
 * @source  Rayleigh (1918); Hamrock, Fundamentals of Fluid Film Lubrication, step slider (from
 *          memory).
 *
 * @param[in] width       Extent of the slot across the flow [m; > 0].
 * @param[in] gap_in      Distance between the walls upstream [m; > 0].
 * @param[in] length_in   Extent of the upstream gap along the flow [m; > 0].
 * @param[in] gap_out     Distance between the walls downstream [m; > 0].
 * @param[in] length_out  Extent of the downstream gap along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the sliding wall, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear force of the oil on the sliding wall, positive downstream [N].
 */
VANE_API double vane_slot_step_sliding_force(double width, double gap_in, double length_in,
					     double gap_out, double length_out, double dp,
					     double viscosity, double wall_speed,
					     vane_error *error);

/**
 * Integral over a rounded tip that governs the oil its wall drags along.
 *
 *     I2 = a / h0^2 (phi + sin(phi) cos(phi)), a = sqrt(2 R' h0), phi = atan(s / a)
 *
 * @valid   As for vane_slot_tip_flow(). Within 8 ulp.
 * @source  Definition: integral of the Reynolds equation for a parabolic gap.
 *
 * @param[in] film        Smallest distance between tip and ring [m; > 0].
 * @param[in] radius      Equivalent radius, see vane_slot_tip_radius() [m; > 0].
 * @param[in] half_width  Half the extent of the tip along the flow [m; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Integral of dx / h^2 [1/m].
 */
VANE_API double vane_slot_tip_integral_2(double film, double radius, double half_width,
					 vane_error *error);

/**
 * Integral over a rounded tip that governs the oil pressure drives.
 *
 *     I3 = a / (4 h0^3) (3 phi + 3 sin(phi) cos(phi) + 2 sin(phi) cos(phi)^3)
 *     a = sqrt(2 R' h0), phi = atan(s / a)
 *
 * @valid   As for vane_slot_tip_flow(). Within 8 ulp.
 * @source  Definition: integral of the Reynolds equation for a parabolic gap.
 *
 * @param[in] film        Smallest distance between tip and ring [m; > 0].
 * @param[in] radius      Equivalent radius, see vane_slot_tip_radius() [m; > 0].
 * @param[in] half_width  Half the extent of the tip along the flow [m; > 0].
 * @param[out] error      What went wrong, or NULL.
 * @return    Integral of dx / h^3 [1/m2].
 */
VANE_API double vane_slot_tip_integral_3(double film, double radius, double half_width,
					 vane_error *error);

/**
 * Shear force of the oil on a rounded vane tip.
 *
 *     F = w (dp I2 / (2 I3) + mu U (3 I2^2 / I3 - 2 I1))
 *     I1 = 2 a phi / h0; a, phi, I2, I3 as in vane_slot_tip_flow()
 *
 * @valid   As for vane_slot_tip_flow(); leaves out what the pressure does on the curved tip. Within
 *          16 ulp. Where the shares nearly cancel, within some ulp of the larger one.
 * @source  Definition: integral of the Reynolds equation for a parabolic gap.
 *
 * @param[in] width       Width of the vane along the shaft axis [m; > 0].
 * @param[in] film        Smallest distance between tip and ring [m; > 0].
 * @param[in] radius      Equivalent radius, see vane_slot_tip_radius() [m; > 0].
 * @param[in] half_width  Half the extent of the tip along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the ring past the vane, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear force of the oil on the vane tip, positive downstream [N].
 */
VANE_API double vane_slot_tip_still_force(double width, double film, double radius,
					  double half_width, double dp, double viscosity,
					  double wall_speed, vane_error *error);

/**
 * Shear force of the film under a rounded vane tip on the ring.
 *
 *     F = w (dp I2 / (2 I3) - mu U (4 I1 - 3 I2^2 / I3))
 *     I1 = 2 a phi / h0; a, phi, I2, I3 as in vane_slot_tip_flow()
 *
 * @valid   As for vane_slot_tip_flow(). Within 16 ulp. Where the shares nearly cancel, within some
 *          ulp of the larger one.
 * @source  Definition: integral of the Reynolds equation for a parabolic gap.
 *
 * @param[in] width       Width of the vane along the shaft axis [m; > 0].
 * @param[in] film        Smallest distance between tip and ring [m; > 0].
 * @param[in] radius      Equivalent radius, see vane_slot_tip_radius() [m; > 0].
 * @param[in] half_width  Half the extent of the tip along the flow [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Speed of the ring past the vane, positive downstream [m/s; any].
 * @param[out] error      What went wrong, or NULL.
 * @return    Shear force of the oil on the ring, positive downstream [N].
 */
VANE_API double vane_slot_tip_sliding_force(double width, double film, double radius,
					    double half_width, double dp, double viscosity,
					    double wall_speed, vane_error *error);

/**
 * Axial flow between two cylinders of any ratio of diameters, which may be off centre.
 *
 *     q = pi dp / (8 mu L) (a^4 - b^4 - 4 c^2 M^2 / delta - 8 c^2 M^2 S)
 *         + pi U b (g + a (sinh(delta) / delta - 1))
 *     S = Sum_n=1,2,3... n exp(-n (alpha + beta)) / sinh(n delta)
 *     b = d / 2 = M / sinh(beta), a = b + g = M / sinh(alpha), c = eps g, delta = beta - alpha
 *     eps = 0: q = pi dp / (8 mu L) (a^4 - b^4 - (a^2 - b^2)^2 / ln(a / b))
 *
 * Thin gaps: vane_slot_annulus_flow() on the mean diameter.
 *
 * @valid   Laminar, fully developed, axes parallel. Summed in a form without cancellation, see the
 *          page of this topic; within 16 ulp. Where the shares nearly cancel, within some ulp of
 *          the larger one.
 * @source  Piercy, Hooper and Winny, Philosophical Magazine 15 (1933) 647; White, Viscous Fluid
 *          Flow, 3rd ed., eq. (3-51) and (3-52) (from memory).
 *
 * @param[in] diameter      Diameter of the inner cylinder [m; > 0].
 * @param[in] gap           Radial clearance when centred [m; >= 0].
 * @param[in] length        Length of the clearance along the axis [m; > 0].
 * @param[in] eccentricity  Offset of the axes over the radial gap [1; 0 <= x <= 1].
 * @param[in] dp            Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity     Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed    Axial speed of the inner cylinder, positive downstream [m/s; any].
 * @param[out] error        What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_annulus_exact_flow(double diameter, double gap, double length,
					     double eccentricity, double dp, double viscosity,
					     double wall_speed, vane_error *error);

/**
 * Speed of the oil between two concentric cylinders of any ratio of diameters.
 *
 *     u = dp / (4 mu L) (a^2 - r^2 - (a^2 - b^2) ln(a / r) / ln(a / b)) + U ln(a / r) / ln(a / b)
 *     b = d / 2, a = b + g, r = b + y
 *
 * @valid   Laminar, fully developed. Within 8 ulp of the greatest speed.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-3.3 (from memory).
 *
 * @param[in] diameter    Diameter of the inner cylinder [m; > 0].
 * @param[in] gap         Radial clearance when centred [m; > 0].
 * @param[in] length      Length of the clearance along the axis [m; > 0].
 * @param[in] dp          Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed  Axial speed of the inner cylinder, positive downstream [m/s; any].
 * @param[in] height      Distance from the inner cylinder [m; 0 <= x <= gap].
 * @param[out] error      What went wrong, or NULL.
 * @return    Speed of the oil, positive downstream [m/s].
 */
VANE_API double vane_slot_annulus_velocity(double diameter, double gap, double length, double dp,
					   double viscosity, double wall_speed, double height,
					   vane_error *error);

/**
 * Friction constant of the concentric annulus, on the hydraulic diameter.
 *
 *     f Re = 64 (1 - r)^2 / (1 + r^2 - (1 - r^2) / ln(1 / r))
 *
 * @valid   Laminar, fully developed. 64 for the pipe, 96 for the thin gap. Within 8 ulp.
 * @source  White, Fluid Mechanics, 4th ed., Table 6.3 and sec. 6.6.
 *
 * @param[in] ratio  Inner over outer diameter [1; 0 <= x <= 1].
 * @param[out] error  What went wrong, or NULL.
 * @return    Darcy friction factor times Reynolds number [1].
 */
VANE_API double vane_slot_annulus_friction(double ratio, vane_error *error);

/**
 * Mean Reynolds number of an annulus of any ratio of diameters.
 *
 *     Re = 2 |q| / (pi (d + g) nu)
 *
 * @valid   As for vane_slot_annulus_exact_flow(); laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.6 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] diameter             Diameter of the inner cylinder [m; > 0].
 * @param[in] gap                  Radial clearance when centred [m; >= 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number on twice the gap, mean around the annulus [1].
 */
VANE_API double vane_slot_annulus_exact_reynolds(double flow, double diameter, double gap,
						 double kinematic_viscosity, vane_error *error);

/**
 * Axial shear force on the inner of two cylinders, which may be off centre.
 *
 *     F = pi dp b (g + a (sinh(delta) / delta - 1)) - 2 pi mu U L / delta
 *     b = d / 2, a = b + g; delta as in vane_slot_annulus_exact_flow()
 *
 * @valid   As for vane_slot_annulus_exact_flow(); leaves out the pressure on the ends. Within 16
 *          ulp. Where the shares nearly cancel, within some ulp of the larger one.
 * @source  Derived on the page of this topic; Piercy, Hooper and Winny, Philosophical Magazine 15
 *          (1933) 647; White, Viscous Fluid Flow, 3rd ed., eq. (3-51) and (3-52) (from memory).
 *
 * @param[in] diameter      Diameter of the inner cylinder [m; > 0].
 * @param[in] gap           Radial clearance when centred [m; > 0].
 * @param[in] length        Length of the clearance along the axis [m; > 0].
 * @param[in] eccentricity  Offset of the axes over the radial gap [1; 0 <= x < 1].
 * @param[in] dp            Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity     Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed    Axial speed of the inner cylinder, positive downstream [m/s; any].
 * @param[out] error        What went wrong, or NULL.
 * @return    Axial force of the oil on the inner cylinder, positive downstream [N].
 */
VANE_API double vane_slot_annulus_inner_force(double diameter, double gap, double length,
					      double eccentricity, double dp, double viscosity,
					      double wall_speed, vane_error *error);

/**
 * Axial shear force on the outer of two cylinders, which may be off centre.
 *
 *     F = pi dp a (g - b (sinh(delta) / delta - 1)) + 2 pi mu U L / delta
 *     b = d / 2, a = b + g; delta as in vane_slot_annulus_exact_flow()
 *
 * @valid   As for vane_slot_annulus_inner_force().
 * @source  Derived on the page of this topic; Piercy, Hooper and Winny, Philosophical Magazine 15
 *          (1933) 647; White, Viscous Fluid Flow, 3rd ed., eq. (3-51) and (3-52) (from memory).
 *
 * @param[in] diameter      Diameter of the inner cylinder [m; > 0].
 * @param[in] gap           Radial clearance when centred [m; > 0].
 * @param[in] length        Length of the clearance along the axis [m; > 0].
 * @param[in] eccentricity  Offset of the axes over the radial gap [1; 0 <= x < 1].
 * @param[in] dp            Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity     Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed    Axial speed of the inner cylinder, positive downstream [m/s; any].
 * @param[out] error        What went wrong, or NULL.
 * @return    Axial force of the oil on the outer cylinder, positive downstream [N].
 */
VANE_API double vane_slot_annulus_outer_force(double diameter, double gap, double length,
					      double eccentricity, double dp, double viscosity,
					      double wall_speed, vane_error *error);

/**
 * Torque to turn one of two concentric cylinders of any ratio of diameters.
 *
 *     T = 4 pi mu L 2 pi n a^2 b^2 / (a^2 - b^2), b = d / 2, a = b + g
 *
 * @valid   Laminar, without vortices: see vane_slot_taylor(); ends not counted. Within 8 ulp.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2.3 (from memory).
 *
 * @param[in] diameter   Diameter of the inner cylinder [m; > 0].
 * @param[in] gap        Radial clearance when centred [m; > 0].
 * @param[in] length     Length of the clearance along the axis [m; > 0].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[in] speed      Rotational speed of one cylinder past the other [1/s; any].
 * @param[out] error     What went wrong, or NULL.
 * @return    Torque that turns the cylinder, of the sign of its speed [N.m].
 */
VANE_API double vane_slot_annulus_torque(double diameter, double gap, double length,
					 double viscosity, double speed, vane_error *error);

/**
 * Torque to turn a shaft in a concentric bearing of thin clearance.
 *
 *     T = pi mu L 2 pi n d^3 / (4 c)
 *
 * @valid   Laminar, c << d, no load.
 * @source  Petroff (1883); Shigley, Mechanical Engineering Design, sec. 12-3 (from memory).
 *
 * @param[in] diameter   Diameter of the inner cylinder [m; > 0].
 * @param[in] gap        Radial clearance when centred [m; > 0].
 * @param[in] length     Length of the clearance along the axis [m; > 0].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[in] speed      Rotational speed of one cylinder past the other [1/s; any].
 * @param[out] error     What went wrong, or NULL.
 * @return    Torque that turns the shaft, of the sign of its speed [N.m].
 */
VANE_API double vane_slot_petroff_torque(double diameter, double gap, double length,
					 double viscosity, double speed, vane_error *error);

/**
 * Taylor number of a thin annulus whose inner cylinder turns.
 *
 *     Ta = pi d |n| c / nu sqrt(2 c / d)
 *
 * @valid   c << d, centred. Vortices appear above about 41.2 by Taylor's reckoning, 41.3 by later
 *          ones.
 * @source  Taylor, Philosophical Transactions A 223 (1923) 289; Schlichting, Boundary-Layer Theory
 *          (from memory).
 *
 * @param[in] gap                  Distance between the walls [m; > 0].
 * @param[in] diameter             Diameter of the inner cylinder [m; > 0].
 * @param[in] speed                Rotational speed of the inner cylinder [1/s; any].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Taylor number [1].
 */
VANE_API double vane_slot_taylor(double gap, double diameter, double speed,
				 double kinematic_viscosity, vane_error *error);

/**
 * Part of the flow of a wide slot that is left by the side walls of a rectangular duct.
 *
 *     F = 1 - 192 r / pi^5 Sum_n=1,3,5... tanh(n pi / (2 r)) / n^5
 *
 * @valid   Laminar, fully developed, walls at rest. Five terms of the difference to r = 0 are
 *          summed; the rest is below 1e-20.
 * @source  White, Viscous Fluid Flow, 3rd ed., eq. (3-48) (from memory).
 *
 * @param[in] ratio  Shorter over longer side [1; 0 <= x <= 1].
 * @param[out] error  What went wrong, or NULL.
 * @return    Flow over that of vane_slot_flow() [1].
 */
VANE_API double vane_slot_duct_factor(double ratio, vane_error *error);

/**
 * Flow through a rectangular duct, side walls counted.
 *
 *     q = b h^3 dp / (12 mu L) F(h / b), h the shorter of width and gap, b the longer
 *
 * @valid   As for vane_slot_duct_factor().
 * @source  White, Viscous Fluid Flow, 3rd ed., eq. (3-48) (from memory).
 *
 * @param[in] width      Extent of the slot across the flow [m; > 0].
 * @param[in] gap        Distance between the walls [m; > 0].
 * @param[in] length     Extent of the slot along the flow [m; > 0].
 * @param[in] dp         Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_duct_flow(double width, double gap, double length, double dp,
				    double viscosity, vane_error *error);

/**
 * Friction constant of the rectangular duct, on the hydraulic diameter.
 *
 *     f Re = 96 / ((1 + r)^2 F(r)), F = vane_slot_duct_factor()
 *
 * @valid   Laminar, fully developed. At r = 0.75 the table prints 57.89; the series gives 57.90.
 * @source  White, Fluid Mechanics, 4th ed., Table 6.4 and sec. 6.6.
 *
 * @param[in] ratio  Shorter over longer side [1; 0 <= x <= 1].
 * @param[out] error  What went wrong, or NULL.
 * @return    Darcy friction factor times Reynolds number [1].
 */
VANE_API double vane_slot_duct_friction(double ratio, vane_error *error);

/**
 * Reynolds number of a rectangular duct.
 *
 *     Re = 2 |q| / ((w + h) nu)
 *
 * @valid   Laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.6 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] width                Extent of the slot across the flow [m; > 0].
 * @param[in] gap                  Distance between the walls [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number on the hydraulic diameter [1].
 */
VANE_API double vane_slot_duct_reynolds(double flow, double width, double gap,
					double kinematic_viscosity, vane_error *error);

/**
 * Mean shear stress on the four walls of a rectangular duct.
 *
 *     tau = dp w h / (2 (w + h) L)
 *
 * @valid   Fully developed flow, laminar or turbulent.
 * @source  Definition: balance of forces.
 *
 * @param[in] width   Extent of the slot across the flow [m; > 0].
 * @param[in] gap     Distance between the walls [m; > 0].
 * @param[in] length  Extent of the slot along the flow [m; > 0].
 * @param[in] dp      Upstream minus downstream pressure [Pa; any].
 * @param[out] error  What went wrong, or NULL.
 * @return    Mean shear stress, positive where it drags the walls downstream [Pa].
 */
VANE_API double vane_slot_duct_wall_shear(double width, double gap, double length, double dp,
					  vane_error *error);

/**
 * Flow through a circular pipe.
 *
 *     q = pi d^4 dp / (128 mu L)
 *
 * @valid   Laminar, fully developed.
 * @source  Hagen and Poiseuille; White, Fluid Mechanics, 4th ed., sec. 6.4 (from memory).
 *
 * @param[in] diameter   Inside diameter of the pipe [m; > 0].
 * @param[in] length     Length of the pipe [m; > 0].
 * @param[in] dp         Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[out] error     What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_pipe_flow(double diameter, double length, double dp, double viscosity,
				    vane_error *error);

/**
 * Speed of the oil at a radius in a circular pipe.
 *
 *     u = dp (d^2 / 4 - r^2) / (4 mu L)
 *
 * @valid   Laminar, fully developed.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.4 (from memory).
 *
 * @param[in] diameter   Inside diameter of the pipe [m; > 0].
 * @param[in] length     Length of the pipe [m; > 0].
 * @param[in] dp         Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity  Dynamic viscosity [Pa.s; > 0].
 * @param[in] radius     Distance from the axis [m; 0 <= x <= 0.5 diameter].
 * @param[out] error     What went wrong, or NULL.
 * @return    Speed of the oil, positive downstream [m/s].
 */
VANE_API double vane_slot_pipe_velocity(double diameter, double length, double dp, double viscosity,
					double radius, vane_error *error);

/**
 * Shear stress on the wall of a circular pipe.
 *
 *     tau = dp d / (4 L)
 *
 * @valid   Fully developed flow, laminar or turbulent.
 * @source  Definition: balance of forces.
 *
 * @param[in] diameter  Inside diameter of the pipe [m; > 0].
 * @param[in] length    Length of the pipe [m; > 0].
 * @param[in] dp        Upstream minus downstream pressure [Pa; any].
 * @param[out] error    What went wrong, or NULL.
 * @return    Shear stress, positive where it drags the wall downstream [Pa].
 */
VANE_API double vane_slot_pipe_wall_shear(double diameter, double length, double dp,
					  vane_error *error);

/**
 * Reynolds number of a circular pipe.
 *
 *     Re = V d / nu = 4 |q| / (pi d nu)
 *
 * @valid   Laminar below about 2000.
 * @source  White, Fluid Mechanics, 4th ed., sec. 6.1 (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] diameter             Inside diameter of the pipe [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Reynolds number on the diameter [1].
 */
VANE_API double vane_slot_pipe_reynolds(double flow, double diameter, double kinematic_viscosity,
					vane_error *error);

/**
 * Pressure drop of a circular pipe by inertia over its drop by friction.
 *
 *     ratio = K |q| / (16 pi nu L), K = 1 + 1.25
 *
 * @valid   As for vane_slot_inertia(); handbooks give 1.2 to 1.33 for the second part of K.
 * @source  Shah and London, Laminar Flow Forced Convection in Ducts (1978), ch. V (from memory).
 *
 * @param[in] flow                 Volume flow, of either sign [m3/s; any].
 * @param[in] length               Length of the pipe [m; > 0].
 * @param[in] kinematic_viscosity  Kinematic viscosity [m2/s; > 0].
 * @param[out] error               What went wrong, or NULL.
 * @return    Inertial over viscous pressure drop [1].
 */
VANE_API double vane_slot_pipe_inertia(double flow, double length, double kinematic_viscosity,
				       vane_error *error);

/**
 * Length in which laminar flow develops in a circular pipe.
 *
 *     L_e = 0.056 d Re
 *
 * @valid   Re above about 100, even speed at the entry.
 * @source  Shah and London, Laminar Flow Forced Convection in Ducts (1978), ch. V (from memory).
 *
 * @param[in] diameter  Inside diameter of the pipe [m; > 0].
 * @param[in] reynolds  Reynolds number on the diameter [1; >= 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Length from the entry to 99 % of the developed speed at the axis [m].
 */
VANE_API double vane_slot_pipe_entry_length(double diameter, double reynolds, vane_error *error);

/**
 * Length in which laminar flow develops between parallel plates.
 *
 *     L_e = 0.011 (2 h) Re
 *
 * @valid   Re above about 100, even speed at the entry; also for a thin annulus.
 * @source  Shah and London, Laminar Flow Forced Convection in Ducts (1978), ch. VI (from memory).
 *
 * @param[in] gap       Distance between the walls [m; > 0].
 * @param[in] reynolds  Reynolds number on twice the gap, see vane_slot_reynolds() [1; >= 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    Length from the entry to 99 % of the developed speed midway [m].
 */
VANE_API double vane_slot_entry_length(double gap, double reynolds, vane_error *error);

/**
 * Flow through a path with friction and inertia both.
 *
 *     q = 2 dp / (B + sqrt(B^2 + 4 a |dp|)), a = K rho / (2 A^2), B = mu / G
 *     that is |dp| = mu |q| / G + K rho (q / A)^2 / 2
 *
 * @valid   Laminar, exit head lost. G is the flow of any formula here at dp = 1, viscosity = 1,
 *          walls at rest. K = 1 + 0.674 for a slot, 1 + 1.25 for a pipe.
 * @source  Shah and London, Laminar Flow Forced Convection in Ducts (1978), ch. VI for K (from
 *          memory); root of the quadratic.
 *
 * @param[in] conductance       Flow at a pressure drop and a viscosity of one [m3; > 0].
 * @param[in] area              Area across the flow [m2; > 0].
 * @param[in] dp                Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity         Dynamic viscosity [Pa.s; > 0].
 * @param[in] density           Density [kg/m3; > 0].
 * @param[in] loss_coefficient  Velocity heads lost to inertia, 1.674 for a slot [1; >= 0].
 * @param[out] error            What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_inertial_flow(double conductance, double area, double dp,
					double viscosity, double density, double loss_coefficient,
					vane_error *error);

/**
 * Conductance of two leakage paths, one after the other.
 *
 *     1 / G = 1 / G1 + 1 / G2
 *
 * @valid   Friction only, walls at rest, one viscosity.
 * @source  Definition.
 *
 * @param[in] conductance        Flow at a pressure drop and a viscosity of one [m3; >= 0].
 * @param[in] other_conductance  The same of the path that follows [m3; >= 0].
 * @param[out] error             What went wrong, or NULL.
 * @return    Conductance of both [m3].
 */
VANE_API double vane_slot_in_series(double conductance, double other_conductance,
				    vane_error *error);

/**
 * Conductance of two leakage paths side by side.
 *
 *     G = G1 + G2
 *
 * @valid   Friction only, walls at rest, one viscosity.
 * @source  Definition.
 *
 * @param[in] conductance        Flow at a pressure drop and a viscosity of one [m3; >= 0].
 * @param[in] other_conductance  The same of the path beside it [m3; >= 0].
 * @param[out] error             What went wrong, or NULL.
 * @return    Conductance of both [m3].
 */
VANE_API double vane_slot_in_parallel(double conductance, double other_conductance,
				      vane_error *error);

/**
 * Flow through a short opening at high Reynolds number.
 *
 *     q = C_d A sqrt(2 |dp| / rho), of the sign of dp
 *
 * @valid   Turbulent, incompressible, no cavitation; see vane_slot_orifice_flow() near zero.
 * @source  Merritt, Hydraulic Control Systems (1967), ch. 3 (from memory).
 *
 * @param[in] area                   Area of the opening [m2; > 0].
 * @param[in] dp                     Upstream minus downstream pressure [Pa; any].
 * @param[in] density                Density [kg/m3; > 0].
 * @param[in] discharge_coefficient  Turbulent discharge coefficient [1; 0 < x <= 1].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Volume flow, positive downstream [m3/s].
 */
VANE_API double vane_slot_sharp_orifice_flow(double area, double dp, double density,
					     double discharge_coefficient, vane_error *error);

/**
 * Discharge coefficient of a short opening, from what was measured.
 *
 *     C_d = |q| / (A sqrt(2 dp / rho))
 *
 * @valid   As for vane_slot_sharp_orifice_flow(). Over 1 the measurement is wrong or the opening is
 *          no orifice.
 * @source  Sullivan, Fluid Power, 4th ed., Example 5.4.
 *
 * @param[in] area     Area of the opening [m2; > 0].
 * @param[in] flow     Volume flow, of either sign [m3/s; any].
 * @param[in] dp       Upstream minus downstream pressure [Pa; > 0].
 * @param[in] density  Density [kg/m3; > 0].
 * @param[out] error   What went wrong, or NULL.
 * @return    Discharge coefficient [1].
 */
VANE_API double vane_slot_discharge_coefficient(double area, double flow, double dp, double density,
						vane_error *error);

/**
 * Contraction of the jet from a sharp slot across a channel.
 *
 *     r = m + 2 / pi (1 - m^2) atan(m), C_c = m / r; at r = 0, C_c = pi / (pi + 2)
 *
 * @valid   Plane flow without friction, wall of the slot square to the channel. As r nears 1 its
 *          error grows to about 1e-8, for there C_c has a vertical tangent.
 * @source  von Mises (1917); Merritt, Hydraulic Control Systems (1967), ch. 3 (from memory).
 *
 * @param[in] ratio  Width of the opening over that of the channel [1; 0 <= x <= 1].
 * @param[out] error  What went wrong, or NULL.
 * @return    Width of the jet over that of the opening [1].
 */
VANE_API double vane_slot_contraction(double ratio, vane_error *error);

/**
 * Constant viscosity that gives the flow of an oil that thickens with pressure.
 *
 *     mu = mu_0 alpha (p_1 - p_2) / (exp(-alpha p_2) - exp(-alpha p_1))
 *
 * @valid   Friction only, walls at rest, one temperature; then exact for every path whose gap does
 *          not depend on pressure, because the integral of dp / mu obeys the equation that p obeys
 *          at constant viscosity. Conditioned by alpha p: an ulp of that product moves the result
 *          by alpha p ulp.
 * @source  Kirchhoff's transformation with the law of Barus (1893).
 *
 * @param[in] viscosity           Dynamic viscosity at zero gauge pressure [Pa.s; > 0].
 * @param[in] pressure_viscosity  Pressure-viscosity coefficient of Barus [1/Pa; >= 0].
 * @param[in] inlet_pressure      Gauge pressure at one end [Pa; any].
 * @param[in] outlet_pressure     Gauge pressure at the other end [Pa; any].
 * @param[out] error              What went wrong, or NULL.
 * @return    Dynamic viscosity to use in a flow formula [Pa.s].
 */
VANE_API double vane_slot_barus_viscosity(double viscosity, double pressure_viscosity,
					  double inlet_pressure, double outlet_pressure,
					  vane_error *error);

/**
 * Flow of oil kept at its entry temperature, over the flow at its entry viscosity throughout.
 *
 *     F = (exp(alpha dp) - 1) / (alpha dp)
 *
 * @valid   Graetz number below 1; otherwise as for vane_slot_barus_viscosity(). Conditioned by
 *          alpha dp.
 * @source  Mean of 1/mu over pressure with the law of Barus.
 *
 * @param[in] dp                  Pressure at the entry minus pressure at the exit [Pa; >= 0].
 * @param[in] pressure_viscosity  Pressure-viscosity coefficient of Barus [1/Pa; >= 0].
 * @param[out] error              What went wrong, or NULL.
 * @return    Factor on flow [1].
 */
VANE_API double vane_slot_isothermal_factor(double dp, double pressure_viscosity,
					    vane_error *error);

/**
 * Flow of oil that keeps the heat it makes, over the flow at its entry viscosity throughout.
 *
 *     F = (exp(kappa dp) - 1) / (kappa dp), kappa = alpha + beta / (rho c)
 *
 * @valid   Graetz number above 10; walls at rest; viscosity exponential in pressure and
 *          temperature. Conditioned by kappa dp.
 * @source  Derived on the page of this topic.
 *
 * @param[in] dp                     Pressure at the entry minus pressure at the exit [Pa; >= 0].
 * @param[in] pressure_viscosity     Pressure-viscosity coefficient of Barus [1/Pa; >= 0].
 * @param[in] viscosity_temperature  Relative fall of viscosity per kelvin [1/K; >= 0].
 * @param[in] density                Density [kg/m3; > 0].
 * @param[in] specific_heat          Specific heat capacity [J/(kg.K); > 0].
 * @param[out] error                 What went wrong, or NULL.
 * @return    Factor on flow [1].
 */
VANE_API double vane_slot_adiabatic_factor(double dp, double pressure_viscosity,
					   double viscosity_temperature, double density,
					   double specific_heat, vane_error *error);

/**
 * Temperature rise of oil that is throttled and keeps its heat.
 *
 *     dT = dp / (rho c)
 *
 * @valid   Graetz number above 10; thermal expansion left out.
 * @source  Merritt, Hydraulic Control Systems (1967), ch. 2 (from memory).
 *
 * @param[in] dp             Pressure at the entry minus pressure at the exit [Pa; >= 0].
 * @param[in] density        Density [kg/m3; > 0].
 * @param[in] specific_heat  Specific heat capacity [J/(kg.K); > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Temperature of the oil at the exit over that at the entry [K].
 */
VANE_API double vane_slot_temperature_rise(double dp, double density, double specific_heat,
					   vane_error *error);

/**
 * Temperature rise of a flow that takes up the friction of a sliding wall.
 *
 *     dT = P / (rho c q)
 *
 * @valid   No heat through the walls.
 * @source  Definition: balance of heat.
 *
 * @param[in] power          Mechanical power that the oil takes up [W; >= 0].
 * @param[in] flow           Volume flow that carries the heat away [m3/s; > 0].
 * @param[in] density        Density [kg/m3; > 0].
 * @param[in] specific_heat  Specific heat capacity [J/(kg.K); > 0].
 * @param[out] error         What went wrong, or NULL.
 * @return    Temperature of the oil leaving over that entering [K].
 */
VANE_API double vane_slot_friction_temperature_rise(double power, double flow, double density,
						    double specific_heat, vane_error *error);

/**
 * Temperature midway between two walls, one sliding, that carry the heat away.
 *
 *     dT = mu U^2 / (8 k)
 *
 * @valid   Graetz number below 1, both walls equally warm, no pressure gradient, constant
 *          viscosity.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-2.1 (from memory).
 *
 * @param[in] viscosity             Dynamic viscosity [Pa.s; > 0].
 * @param[in] wall_speed            Speed of the sliding wall, positive downstream [m/s; any].
 * @param[in] thermal_conductivity  Thermal conductivity of the oil [W/(m.K); > 0].
 * @param[out] error                What went wrong, or NULL.
 * @return    Greatest temperature in the film over that of the walls [K].
 */
VANE_API double vane_slot_couette_temperature_rise(double viscosity, double wall_speed,
						   double thermal_conductivity, vane_error *error);

/**
 * Temperature midway between two walls at rest that carry the heat away.
 *
 *     dT = (dp / L)^2 h^4 / (192 mu k)
 *
 * @valid   Graetz number below 1, both walls equally warm, constant viscosity. Within 8 ulp.
 * @source  White, Viscous Fluid Flow, 3rd ed., sec. 3-3 (from memory).
 *
 * @param[in] gap                   Distance between the walls [m; > 0].
 * @param[in] length                Extent of the slot along the flow [m; > 0].
 * @param[in] dp                    Upstream minus downstream pressure [Pa; any].
 * @param[in] viscosity             Dynamic viscosity [Pa.s; > 0].
 * @param[in] thermal_conductivity  Thermal conductivity of the oil [W/(m.K); > 0].
 * @param[out] error                What went wrong, or NULL.
 * @return    Greatest temperature in the film over that of the walls [K].
 */
VANE_API double vane_slot_poiseuille_temperature_rise(double gap, double length, double dp,
						      double viscosity, double thermal_conductivity,
						      vane_error *error);

/** What becomes of the heat that a slot makes. */
enum vane_slot_regime {
	VANE_SLOT_ISOTHERMAL = 0, /**< Graetz number below 1: the walls take it. */
	VANE_SLOT_BETWEEN = 1,    /**< Graetz number from 1 to 10: walls and oil share it. */
	VANE_SLOT_ADIABATIC = 2   /**< Graetz number above 10: the oil keeps it. */
};

/** A film that may warm. */
typedef struct vane_slot_film {
	double graetz;                /**< Graetz number, see vane_slot_graetz() [1; >= 0]. */
	double dp;                    /**< Pressure at the entry minus pressure at the exit [Pa; >= 0]. */
	double pressure_viscosity;    /**< Pressure-viscosity coefficient of Barus [1/Pa; >= 0]. */
	double viscosity_temperature; /**< Relative fall of viscosity per kelvin [1/K; >= 0]. */
	double density;               /**< Density [kg/m3; > 0]. */
	double specific_heat;         /**< Specific heat capacity [J/(kg.K); > 0]. */
} vane_slot_film;

/** How much a film leaks for its pressure and its heat. */
typedef struct vane_slot_heat {
	double isothermal_factor; /**< Factor on flow if the walls take the heat [1; >= 1]. */
	double adiabatic_factor;  /**< Factor on flow if the oil keeps it [1; >= 1]. */
	double least_factor;      /**< Least factor that the regime leaves open [1; >= 1]. */
	double greatest_factor;   /**< Greatest factor that the regime leaves open [1; >= 1]. */
	double temperature_rise;  /**< Temperature rise if the oil keeps the heat [K; >= 0]. */
	int32_t regime;           /**< Number of enum vane_slot_regime [1; >= 0]. */
	int32_t reserved;         /**< 0 [1; 0]. */
} vane_slot_heat;

/**
 * Decides by the Graetz number whether a film is isothermal or adiabatic, and gives the factors.
 *
 * All factors are flows over the flow at the viscosity of the entering oil. Where neither limit
 * holds, least and greatest factor are those of both limits.
 *
 * @valid   As vane_slot_isothermal_factor() and vane_slot_adiabatic_factor(). The limits 1 and 10
 *          are common practice, no source.
 * @source  Derived on the page of this topic.
 *
 * @param[in]  film   The film.
 * @param[out] out    Factors, regime and temperature rise.
 * @param[out] error  What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_slot_heating(const vane_slot_film *film, vane_slot_heat *out,
				   vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
