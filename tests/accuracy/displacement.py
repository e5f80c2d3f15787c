"""Displacement in closed form, as vane/displacement.h prints it."""


def roots_zone(large_radius, small_radius, width):
    return 2 * pi * width * (large_radius**2 - small_radius**2)


@conditioned("ring and vanes that nearly cancel")
def roots_outlet(large_radius, small_radius, width, vane_thickness, vanes):
    taken = 2 * vanes * width * vane_thickness * (large_radius - small_radius)
    return 2 * pi * width * (large_radius**2 - small_radius**2) - taken


def eccentric(ring_radius, eccentricity, width, vanes):
    u = eccentricity * sin(pi / vanes)
    root = sqrt(ring_radius**2 - u**2)
    return 2 * vanes * width * (u * root + ring_radius**2 * asin(u / ring_radius))


def eccentric_roots(eccentricity, width, vane_thickness, vanes):
    return 2 * vanes * width * vane_thickness * eccentricity


def textbook(ring_diameter, rotor_diameter, eccentricity, width):
    return pi / 2 * (ring_diameter + rotor_diameter) * eccentricity * width
