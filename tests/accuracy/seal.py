"""O-rings and their glands, as vane/seal.h prints them."""


def diameter_tolerance(inner_diameter):
    return (0.009 * (inner_diameter * 1000) ** 0.95 + 0.11) / 1000


def section_tolerance(section):
    steps = ((0.00225, 8e-5), (0.00315, 9e-5), (0.0045, 1e-4), (0.0063, 13e-5), (0.0084, 15e-5))
    return next(t for limit, t in steps if float(section) <= float(limit))


def stretch(inner_diameter, groove_diameter):
    return (groove_diameter - inner_diameter) / inner_diameter


def _section(inner_diameter, section, groove_diameter):
    """w' by Newton from above."""
    volume = section**2 * (inner_diameter + section)
    x = min(cbrt(volume), sqrt(volume / groove_diameter))
    for _ in range(200):
        step = (x**2 * (groove_diameter + x) - volume) / (x * (2 * groove_diameter + 3 * x))
        x -= step
        if abs(step) < x * mpf(10) ** -38:
            return x
    raise ValueError("no root")


def stretched_section(inner_diameter, section, groove_diameter):
    return _section(inner_diameter, section, groove_diameter)


def squeeze(section, gland_depth):
    return (section - gland_depth) / section


@conditioned("a section that just fills the gland", 8)
def squeeze_stretched(inner_diameter, section, groove_diameter, gland_depth):
    stretched = _section(inner_diameter, section, groove_diameter)
    return (stretched - gland_depth) / stretched


def gland_depth(section, squeeze):
    return section * (1 - squeeze)


@conditioned("a ring that nearly fills the bore")
def piston_groove(bore_diameter, section, squeeze):
    return bore_diameter - 2 * section * (1 - squeeze)


def rod_groove(rod_diameter, section, squeeze):
    return rod_diameter + 2 * section * (1 - squeeze)


def groove_width_rule(section):
    return 1.4 * section


def groove_width(section, gland_depth, fill):
    return pi * section**2 / (4 * gland_depth * fill)


def fill(section, groove_width, gland_depth):
    return pi * section**2 / (4 * groove_width * gland_depth)


@conditioned("a cube; a cooling that leaves next to nothing", 8)
def hot_fill(fill, swell, expansion, gland_expansion, temperature_rise):
    rubber, gland = 1 + expansion * temperature_rise, 1 + gland_expansion * temperature_rise
    return fill * (1 + swell) * (rubber / gland) ** 3


@conditioned("a cooling that leaves next to nothing", 6)
def hot_section(section, swell, expansion, temperature_rise):
    return section * cbrt(1 + swell) * (1 + expansion * temperature_rise)


def gap(bore_diameter, piston_diameter, eccentricity, breathing):
    return (bore_diameter - piston_diameter) * (1 + eccentricity) / 2 + breathing


def cover_gap(initial_gap, load, separation_load, bolt_stiffness):
    return initial_gap + max(mpf(0), load - separation_load) / bolt_stiffness


def gap_limit(pressure, section, hardness):
    pressures = (3.5e6, 7e6, 10.5e6, 14e6, 17.5e6, 21e6, 35e6)
    soft = ((8, 9, 10, 13, 15), (5, 7, 8, 9, 10), (3, 4, 5, 7, 8))
    hard = (
        (13, 15, 20, 23, 25), (10, 13, 15, 18, 20), (7, 9, 10, 13, 15), (5, 7, 8, 9, 10),
        (4, 5, 7, 8, 9), (3, 4, 5, 7, 8), (2, 3, 3, 4, 4),
    )
    rows = hard if hardness >= 90 else soft
    row = sum(pressure > p for p in pressures)
    column = sum(float(section) > float(s) for s in (0.002, 0.003, 0.005, 0.007))
    return mpf(rows[row][column]) / 10**5 if row < len(rows) else mpf(0)


@within(6, "eight to ten roundings follow each other")
def modulus(hardness):
    return 0.0981 * (56 + 7.62336 * hardness) / (0.137505 * (254 - 2.54 * hardness)) * 10**6


@conditioned("powers")
def line_force(section, squeeze, modulus):
    return modulus * section * (1.25 * squeeze**1.5 + 50 * squeeze**6)


def contact_width(section, line_force, modulus):
    return sqrt(6 * section * line_force / (pi * modulus))


def contact_stress(section, line_force, modulus):
    return sqrt(8 * line_force * modulus / (3 * pi * section))
