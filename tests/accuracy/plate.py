"""Plates, cylinders and springs, as vane/plate.h prints them."""


def stiffness(thickness, modulus, poisson):
    return modulus * thickness**3 / (12 * (1 - poisson**2))


def clamped_deflection(pressure, radius, thickness, modulus, poisson):
    return 3 * (1 - poisson**2) * pressure * radius**4 / (16 * modulus * thickness**3)


def clamped_edge_stress(pressure, radius, thickness):
    return 3 * pressure * radius**2 / (4 * thickness**2)


@within(5, "eight roundings follow each other")
def clamped_centre_stress(pressure, radius, thickness, poisson):
    return 3 * (1 + poisson) * pressure * radius**2 / (8 * thickness**2)


def supported_deflection(pressure, radius, thickness, modulus, poisson):
    stiff = 16 * modulus * thickness**3
    return 3 * (1 - poisson) * (5 + poisson) * pressure * radius**4 / stiff


def supported_stress(pressure, radius, thickness, poisson):
    return 3 * (3 + poisson) * pressure * radius**2 / (8 * thickness**2)


def clamped_force_deflection(force, radius, thickness, modulus, poisson):
    return 3 * (1 - poisson**2) * force * radius**2 / (4 * pi * modulus * thickness**3)


def supported_force_deflection(force, radius, thickness, modulus, poisson):
    stiff = 4 * pi * modulus * thickness**3
    return 3 * (1 - poisson) * (3 + poisson) * force * radius**2 / stiff


@conditioned("pressures of opposite signs that nearly cancel")
def cylinder_radial_stress(inner_radius, outer_radius, inner_pressure, outer_pressure, radius):
    a, b, r = inner_radius**2, outer_radius**2, radius**2
    return -(inner_pressure * a * (b - r) + outer_pressure * b * (r - a)) / (r * (b - a))


@conditioned("terms that nearly cancel")
def cylinder_tangential_stress(inner_radius, outer_radius, inner_pressure, outer_pressure, radius):
    a, b, r = inner_radius**2, outer_radius**2, radius**2
    return (inner_pressure - outer_pressure) * a * (b + r) / (r * (b - a)) - outer_pressure


@conditioned("terms that nearly cancel")
def cylinder_axial_stress(inner_radius, outer_radius, inner_pressure, outer_pressure):
    a, b = inner_radius**2, outer_radius**2
    return (inner_pressure * a - outer_pressure * b) / (b - a)


@within(6, "ten roundings follow each other")
def cylinder_shear_stress(inner_radius, outer_radius, inner_pressure, outer_pressure, radius):
    a, b, r = inner_radius**2, outer_radius**2, radius**2
    return (inner_pressure - outer_pressure) * a * b / (r * (b - a))


@conditioned("terms that nearly cancel", 8)
def cylinder_displacement(
    inner_radius, outer_radius, inner_pressure, outer_pressure, radius, axial_stress, modulus,
    poisson,
):
    a, b = inner_radius**2, outer_radius**2
    even = (1 - poisson) * (inner_pressure * a - outer_pressure * b) * radius
    uneven = (1 + poisson) * (inner_pressure - outer_pressure) * a * b / radius
    return (even + uneven) / (modulus * (b - a)) - poisson * axial_stress * radius / modulus


def cylinder_inner_pressure(inner_radius, outer_radius, stress):
    a, b = inner_radius**2, outer_radius**2
    return stress * (b - a) / (b + a)


def cylinder_outer_pressure(inner_radius, outer_radius, stress):
    a, b = inner_radius**2, outer_radius**2
    return stress * (b - a) / (2 * b)


@within(8, "a score of roundings")
def press_pressure(
    interference, bore_radius, contact_radius, hub_radius, shaft_modulus, shaft_poisson,
    hub_modulus, hub_poisson,
):
    b, r, c = bore_radius**2, contact_radius**2, hub_radius**2
    hub = ((c + r) / (c - r) + hub_poisson) / hub_modulus
    shaft = ((r + b) / (r - b) - shaft_poisson) / shaft_modulus
    return interference / (contact_radius * (hub + shaft))


def press_force(pressure, radius, length, friction):
    return 2 * pi * radius * length * friction * pressure


def press_torque(pressure, radius, length, friction):
    return 2 * pi * radius**2 * length * friction * pressure


def spring_rate(wire_diameter, coil_diameter, coils, shear_modulus):
    return shear_modulus * wire_diameter**4 / (8 * coil_diameter**3 * coils)


def spring_coils(wire_diameter, coil_diameter, rate, shear_modulus):
    return shear_modulus * wire_diameter**4 / (8 * coil_diameter**3 * rate)


def _wire(force, wire_diameter, coil_diameter):
    return 8 * force * coil_diameter / (pi * wire_diameter**3)


@within(8, "a dozen roundings follow each other")
def spring_stress(force, wire_diameter, coil_diameter):
    c = coil_diameter / wire_diameter
    curve = (4 * c - 1) / (4 * c - 4) + 0.615 / c
    return curve * _wire(force, wire_diameter, coil_diameter)


@within(8, "a dozen roundings follow each other")
def spring_stress_bergstrasser(force, wire_diameter, coil_diameter):
    c = coil_diameter / wire_diameter
    return (4 * c + 2) / (4 * c - 3) * _wire(force, wire_diameter, coil_diameter)


@conditioned("a length that the ends nearly take")
def spring_pitch(free_length, wire_diameter, dead_wires, pitches):
    return (free_length - dead_wires * wire_diameter) / pitches


def spring_stable_length(mean_diameter, end_factor, shear_modulus, modulus):
    ratio = 2 * (modulus - shear_modulus) / (2 * shear_modulus + modulus)
    return pi * mean_diameter / end_factor * sqrt(ratio)


@within(8, "a dozen roundings follow each other")
def wave_rate(width, mean_diameter, thickness, waves, turns, modulus):
    stiff = modulus * width * thickness**3 * waves**4 * (mean_diameter + width)
    return stiff / (2.4 * mean_diameter**3 * (mean_diameter - width) * turns)


def wave_stress(force, width, mean_diameter, thickness, waves):
    return 3 * pi * force * mean_diameter / (4 * width * thickness**2 * waves**2)


def _disc(outer_diameter, inner_diameter, thickness, modulus, poisson):
    d = outer_diameter / inner_diameter
    k = ((d - 1) / d) ** 2 / (pi * ((d + 1) / (d - 1) - 2 / log(d)))
    return 4 * modulus / (1 - poisson**2) * thickness**3 / (k * outer_diameter**2)


@digits(70)
@conditioned("a bracket that cancels; a continued fraction", 12)
def disc_force(
    outer_diameter, inner_diameter, thickness, cone_height, deflection, modulus, poisson
):
    h, s = cone_height / thickness, deflection / thickness
    stiff = _disc(outer_diameter, inner_diameter, thickness, modulus, poisson)
    return stiff * thickness * s * ((h - s) * (h - s / 2) + 1)


@digits(70)
@conditioned("a bracket that cancels; a continued fraction", 12)
def disc_rate(
    outer_diameter, inner_diameter, thickness, cone_height, deflection, modulus, poisson
):
    h, s = cone_height / thickness, deflection / thickness
    stiff = _disc(outer_diameter, inner_diameter, thickness, modulus, poisson)
    return stiff * (h**2 - 3 * h * s + 1.5 * s**2 + 1)
