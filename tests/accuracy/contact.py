"""Hertz's contacts, as vane/contact.h prints them."""


def modulus(modulus_1, poisson_1, modulus_2, poisson_2):
    return 1 / ((1 - poisson_1**2) / modulus_1 + (1 - poisson_2**2) / modulus_2)


def curvature(radius_1, radius_2):
    return 1 / radius_1 + 1 / radius_2


def curvature_hollow(radius, hollow_radius):
    return (hollow_radius - radius) / (hollow_radius * radius)


def line_half_width(line_load, curvature, contact_modulus):
    return sqrt(4 * line_load / (pi * curvature * contact_modulus))


def line_pressure(line_load, curvature, contact_modulus):
    return sqrt(line_load * curvature * contact_modulus / pi)


@digits(60)
@within(6, "ten roundings follow each other")
def line_shear(pressure, half_width, depth):
    x = depth / half_width
    return pressure * x * (1 - x / sqrt(1 + x**2))


def line_shear_greatest(pressure):
    g = (sqrt(5) - 1) / 2
    return g**2 * sqrt(g) * pressure


def line_shear_depth(half_width):
    return sqrt((sqrt(5) - 1) / 2) * half_width


def _sliding(friction, factors):
    x = min(max(friction, mpf(0)), mpf(1) / 3)
    ends = [mpf(0), 1 / mpf(12), 1 / mpf(6), 1 / mpf(3)]
    for i in range(3):
        if x <= ends[i + 1] or i == 2:
            part = (x - ends[i]) / (ends[i + 1] - ends[i])
            return factors[i] + part * (factors[i + 1] - factors[i])


def sliding_stress(pressure, friction):
    return pressure * _sliding(friction, [1, 1.09, 1.19, 1.40])


def sliding_shear(pressure, friction):
    return pressure * _sliding(friction, [0.300, 0.308, 0.339, 0.435])


def sliding_octahedral(pressure, friction):
    return pressure * _sliding(friction, [0.272, 0.265, 0.277, 0.368])


def sphere_radius(force, curvature, contact_modulus):
    return cbrt(3 * force / (4 * curvature * contact_modulus))


def sphere_pressure(force, curvature, contact_modulus):
    return cbrt(6 * force * curvature**2 * contact_modulus**2 / pi**3)


def sphere_approach(force, curvature, contact_modulus):
    return cbrt(9 * force**2 * curvature / (16 * contact_modulus**2))


def sphere_tension(pressure, poisson):
    return (1 - 2 * poisson) * pressure / 3


@digits(80)
@conditioned("two stresses that nearly cancel", 16)
def sphere_shear(pressure, contact_radius, depth, poisson):
    x = depth / contact_radius
    down = -pressure / (1 + x**2)
    turn = x * atan(1 / x) if x else mpf(0)
    across = -pressure * (1 + poisson) * (1 - turn) + pressure / (2 * (1 + x**2))
    return abs(down - across) / 2
