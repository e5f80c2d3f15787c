"""Rolling bearings: ISO 281, as vane/bearing.h prints it."""

GROOVE = table("bearing.c", "groove")
SURE = table("bearing.c", "sure")


def _between(x, rows, column):
    for low, high in zip(rows, rows[1:]):
        if x <= high[0]:
            part = (x - low[0]) / (high[0] - low[0])
            return low[column] + part * (high[column] - low[column])
    return rows[-1][column]


@conditioned("a power")
def life(rating, load, exponent):
    return 10**6 * (rating / load) ** exponent


@conditioned("a power")
def rating(load, life, exponent):
    return load * (life / 10**6) ** (1 / exponent)


def life_time(life, speed):
    return life / speed


@conditioned("a power")
def speed_factor(speed, exponent):
    return (100 / mpf(180) / speed) ** (1 / exponent)


def speed_product(pitch_diameter, speed):
    return pitch_diameter * speed


def equivalent_load(radial_force, axial_force, radial_factor, axial_factor, rotation_factor):
    return radial_factor * rotation_factor * radial_force + axial_factor * axial_force


def groove_load(radial_force, axial_force, static_rating, geometry_factor):
    thrust = geometry_factor * axial_force / static_rating
    thrust = min(max(thrust, GROOVE[0][0]), GROOVE[-1][0])
    if axial_force <= _between(thrust, GROOVE, 1) * radial_force:
        return radial_force
    return 0.56 * radial_force + _between(thrust, GROOVE, 2) * axial_force


@conditioned("a reliability near 1: 1 - R")
def reliability_factor(reliability):
    if reliability <= SURE[0][0]:
        return mpf(1)
    spread = [((log(r) / log(0.9)) ** (2 / mpf(3)), a) for r, a in SURE]
    x = (log(reliability) / log(0.9)) ** (2 / mpf(3))
    return _between(x, spread[::-1], 1)


@conditioned("a power; a reliability near 1")
def weibull_life(reliability, slope):
    return (log(reliability) / log(0.9)) ** (1 / slope)


@conditioned("exponential of a power")
def weibull_reliability(life_ratio, slope):
    return exp(log(0.9) * life_ratio**slope)


@digits(120)
@conditioned("a power; a reliability near 1")
def weibull3_life(reliability, least_life, characteristic_life, slope):
    spread = characteristic_life - least_life
    return least_life + spread * (-log(reliability)) ** (1 / slope)


@digits(120)
@conditioned("exponential of a power")
def weibull3_reliability(life_ratio, least_life, characteristic_life, slope):
    if life_ratio <= least_life:
        return mpf(1)
    over = (life_ratio - least_life) / (characteristic_life - least_life)
    return exp(-(over**slope))


def modified_life(life, reliability_factor, life_factor):
    return life * reliability_factor * life_factor


def _viscosity_part(ratio, rows):
    k = min(ratio, mpf(4))
    c, d = rows[0] if k < 0.4 else rows[1] if k < 1 else rows[2]
    return c / k**d


def _life_factor(bracket, power):
    return mpf(50) if bracket <= 0 else min(bracket**power / 10, mpf(50))


@conditioned("a power of -9.3 near its pole; constants that cancel at 0.1", 64, 20)
def life_factor_ball(viscosity_ratio, contamination, fatigue_limit, load):
    rows = ((2.2649, 0.054381), (1.9987, 0.19087), (1.9987, 0.071739))
    thin = 2.5671 - _viscosity_part(viscosity_ratio, rows)
    clean = contamination * fatigue_limit / load
    return _life_factor(1 - thin**0.83 * cbrt(clean), -9.3)


@conditioned("a power of -9.185 near its pole; constants that cancel at 0.1", 64, 20)
def life_factor_roller(viscosity_ratio, contamination, fatigue_limit, load):
    rows = ((1.3993, 0.054381), (1.2348, 0.19087), (1.2348, 0.071739))
    thin = 1.5859 - _viscosity_part(viscosity_ratio, rows)
    clean = contamination * fatigue_limit / load
    return _life_factor(1 - thin * clean**0.4, -9.185)


@within(8, "a power and a root")
def reference_viscosity(speed, pitch_diameter):
    n, wide = 60 * speed, 1000 * pitch_diameter
    if n < 1000:
        return 45000 * n**-0.83 / sqrt(wide) / 10**6
    return 4500 / sqrt(n) / sqrt(wide) / 10**6
