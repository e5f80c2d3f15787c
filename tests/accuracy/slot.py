"""Slots: the laws of the handbooks, as vane/slot.h names and prints them."""


@conditioned("pressure and drag that nearly cancel")
def flow(width, gap, length, dp, viscosity, wall_speed):
    return width * gap**3 * dp / (12 * viscosity * length) + width * gap * wall_speed / 2


@within(6, "eight to ten roundings follow each other")
def disc_flow(gap, inner_radius, outer_radius, angle, dp, viscosity):
    return angle * gap**3 * dp / (12 * viscosity * log(outer_radius / inner_radius))


@at_most(1000)
def edge_factor(vane_angle, log_ratio):
    x = pi * vane_angle / log_ratio
    return (pi**2 / 6 - polylog(2, exp(-x))) / (pi * x)


@at_most(1000)
@within(6, "eight to ten roundings follow each other")
def edge_flow(gap, vane_angle, log_ratio, dp, viscosity):
    return gap**3 * dp / (12 * viscosity) * edge_factor(vane_angle, log_ratio)


@conditioned("pressure and drag that nearly cancel")
def annulus_flow(diameter, gap, length, eccentricity, dp, viscosity, wall_speed):
    thin = pi * diameter * gap**3 * dp / (12 * viscosity * length)
    return thin * (1 + 1.5 * eccentricity**2) + pi * diameter * gap * wall_speed / 2


@within(6, "eight to ten roundings follow each other")
def vane_flow(width, gap, length, offset, dp, viscosity):
    return width * gap**3 * (1 + 3 * offset**2) / 4 * dp / (12 * viscosity * length)


@within(6, "eight to ten roundings follow each other")
def taper_flow(width, gap_in, gap_out, length, dp, viscosity):
    if gap_in == 0 and gap_out == 0:
        return mpf(0)
    mean = 2 * gap_in**2 * gap_out**2 / (gap_in + gap_out)
    return width * mean * dp / (12 * viscosity * length)


def _tip(film, radius, half_width):
    a = sqrt(2 * radius * film)
    phi = atan(half_width / a)
    s, c = sin(phi), cos(phi)
    return (
        2 * a * phi / film,
        a / film**2 * (phi + s * c),
        a / (4 * film**3) * (3 * phi + 3 * s * c + 2 * s * c**3),
    )


@conditioned("pressure and drag that nearly cancel; ten roundings follow each other", 8)
def tip_flow(width, film, radius, half_width, dp, viscosity, wall_speed):
    if film == 0:
        return mpf(0)
    _, i2, i3 = _tip(film, radius, half_width)
    return width * dp / (12 * viscosity * i3) + width * wall_speed / 2 * i2 / i3


@conditioned("radii close together")
def tip_radius(tip_radius, ring_radius):
    return 1 / (1 / tip_radius - 1 / ring_radius)


def reynolds(flow, width, kinematic_viscosity):
    return 2 * abs(flow) / (width * kinematic_viscosity)


def disc_reynolds(flow, inner_radius, angle, kinematic_viscosity):
    return 2 * abs(flow) / (angle * inner_radius * kinematic_viscosity)


def annulus_reynolds(flow, diameter, kinematic_viscosity):
    return 2 * abs(flow) / (pi * diameter * kinematic_viscosity)


def tip_reynolds(flow, width, kinematic_viscosity):
    return 2 * abs(flow) / (width * kinematic_viscosity)


def inertia(flow, width, gap, length, kinematic_viscosity):
    return 1.674 * 2 * abs(flow) / (width * kinematic_viscosity) * gap / (48 * length)


def graetz(flow, width, gap, length, thermal_diffusivity):
    return abs(flow) * gap / (width * thermal_diffusivity * length)


def shear_force(width, length, gap, viscosity, wall_speed):
    return viscosity * wall_speed * width * length / gap


@within(6, "eight to ten roundings follow each other")
def orifice_flow(area, dp, density, kinematic_viscosity, discharge_coefficient):
    wide = sqrt(4 * area / pi)
    turn = density / 2 * (20 * kinematic_viscosity / (discharge_coefficient * wide)) ** 2
    root = sqrt(sqrt(dp**2 + turn**2))
    return discharge_coefficient * area * sqrt(2 / density) * dp / root


@conditioned("pressure and drag that nearly cancel")
def velocity(gap, length, dp, viscosity, wall_speed, height):
    return dp * height * (gap - height) / (2 * viscosity * length) + wall_speed * height / gap


@conditioned("pressure and drag that nearly cancel")
def shear(gap, length, dp, viscosity, wall_speed, height):
    return dp * (gap / 2 - height) / length + viscosity * wall_speed / gap


@conditioned("pressure and drag that nearly cancel")
def still_wall_force(width, gap, length, dp, viscosity, wall_speed):
    return width * (gap * dp / 2 + viscosity * wall_speed * length / gap)


@conditioned("pressure and drag that nearly cancel")
def sliding_wall_force(width, gap, length, dp, viscosity, wall_speed):
    return width * (gap * dp / 2 - viscosity * wall_speed * length / gap)


@conditioned("pressures of opposite signs that nearly cancel")
def disc_pressure(inner_radius, outer_radius, inner_pressure, outer_pressure, radius):
    inner = inner_pressure * log(outer_radius / radius)
    outer = outer_pressure * log(radius / inner_radius)
    return (inner + outer) / log(outer_radius / inner_radius)


@digits(60)
@conditioned("pressures of opposite signs that nearly cancel")
def disc_force(inner_radius, outer_radius, angle, inner_pressure, outer_pressure):
    a, b = inner_radius**2, outer_radius**2
    shared = (inner_pressure - outer_pressure) * (b - a) / (2 * log(outer_radius / inner_radius))
    return angle / 2 * (outer_pressure * b - inner_pressure * a + shared)


@within(8, "a dozen roundings follow each other")
def disc_torque(gap, inner_radius, outer_radius, angle, viscosity, speed):
    ring = outer_radius**4 - inner_radius**4
    return angle * viscosity * 2 * pi * speed * ring / (4 * gap)


def taper_drag_flow(width, gap_in, gap_out, wall_speed):
    if gap_in == 0 and gap_out == 0:
        return mpf(0)
    return width * wall_speed * gap_in * gap_out / (gap_in + gap_out)


@conditioned("pressure and drag that nearly cancel; a dozen roundings", 8)
def taper_pressure(gap_in, gap_out, length, dp, viscosity, wall_speed, position):
    h = gap_in + (gap_out - gap_in) * position / length
    below = length * (gap_in + gap_out) * h**2
    left = length - position
    drag = 6 * viscosity * wall_speed * position * left * (gap_in - gap_out) / below
    return dp * left * (h + gap_out) * gap_in**2 / below + drag


def _wedge(gap_in, gap_out):
    """z and atanh(z) / z."""
    z = (gap_in - gap_out) / (gap_in + gap_out)
    return z, log(gap_in / gap_out) / 2 / z if z else mpf(1)


@digits(80)
@conditioned("pressure and drag that nearly cancel; a continued fraction", 16)
def taper_load(width, gap_in, gap_out, length, dp, viscosity, wall_speed):
    both = gap_in + gap_out
    z, a = _wedge(gap_in, gap_out)
    drag = 12 * viscosity * wall_speed * width * length**2 / both**2
    return width * length * dp * gap_in / both + (drag * (a - 1) / z if z else 0)


@digits(80)
@conditioned("pressure and drag that nearly cancel, or 6 and 4 A", 16, 4)
def taper_still_force(width, gap_in, gap_out, length, dp, viscosity, wall_speed):
    both = gap_in + gap_out
    _, a = _wedge(gap_in, gap_out)
    drag = viscosity * wall_speed * length * (6 - 4 * a) / both
    return width * (dp * gap_in * gap_out / both + drag)


@digits(80)
@conditioned("pressure and drag that nearly cancel; a continued fraction", 16)
def taper_sliding_force(width, gap_in, gap_out, length, dp, viscosity, wall_speed):
    both = gap_in + gap_out
    _, a = _wedge(gap_in, gap_out)
    drag = viscosity * wall_speed * length * (8 * a - 6) / both
    return width * (dp * gap_in * gap_out / both - drag)


def _steps(gap_in, length_in, gap_out, length_out, power):
    return length_in / gap_in**power + length_out / gap_out**power


@conditioned("pressure and drag that nearly cancel; a dozen roundings", 8, 3)
def step_flow(width, gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed):
    if gap_in == 0 or gap_out == 0:
        return mpf(0)
    i2 = _steps(gap_in, length_in, gap_out, length_out, 2)
    i3 = _steps(gap_in, length_in, gap_out, length_out, 3)
    return width * dp / (12 * viscosity * i3) + width * wall_speed * i2 / (2 * i3)


@conditioned("pressure and drag that nearly cancel; a dozen roundings", 8, 3)
def step_pressure(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed):
    drag = 6 * viscosity * wall_speed * length_in * length_out * (gap_in - gap_out)
    below = length_in * gap_out**3 + length_out * gap_in**3
    return (dp * length_out * gap_in**3 + drag) / below


@conditioned("pressure and drag that nearly cancel; a dozen roundings", 8, 3)
def step_load(width, gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed):
    p = step_pressure(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed)
    return width * (dp * length_in + p * (length_in + length_out)) / 2


@conditioned("pressure and drag that nearly cancel; a dozen roundings", 8, 3)
def step_still_force(width, gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed):
    p = step_pressure(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed)
    drag = viscosity * wall_speed * _steps(gap_in, length_in, gap_out, length_out, 1)
    return width * ((gap_in * (dp - p) + gap_out * p) / 2 + drag)


@conditioned("pressure and drag that nearly cancel; a dozen roundings", 8, 3)
def step_sliding_force(width, gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed):
    p = step_pressure(gap_in, length_in, gap_out, length_out, dp, viscosity, wall_speed)
    drag = viscosity * wall_speed * _steps(gap_in, length_in, gap_out, length_out, 1)
    return width * ((gap_in * (dp - p) + gap_out * p) / 2 - drag)


@within(8, "ten roundings follow each other")
def tip_integral_2(film, radius, half_width):
    return _tip(film, radius, half_width)[1]


@within(8, "ten roundings follow each other")
def tip_integral_3(film, radius, half_width):
    return _tip(film, radius, half_width)[2]


@digits(60)
@conditioned("pressure and drag that nearly cancel; a score of roundings", 16)
def tip_still_force(width, film, radius, half_width, dp, viscosity, wall_speed):
    i1, i2, i3 = _tip(film, radius, half_width)
    drag = viscosity * wall_speed * (3 * i2**2 / i3 - 2 * i1)
    return width * (dp * i2 / (2 * i3) + drag)


@digits(60)
@conditioned("pressure and drag that nearly cancel; a score of roundings", 16)
def tip_sliding_force(width, film, radius, half_width, dp, viscosity, wall_speed):
    i1, i2, i3 = _tip(film, radius, half_width)
    drag = viscosity * wall_speed * (4 * i1 - 3 * i2**2 / i3)
    return width * (dp * i2 / (2 * i3) - drag)


def _cylinders(diameter, gap, eccentricity):
    """Bipolar coordinates of both circles, and the scale M; offset above 0, below the gap."""
    b = diameter / 2
    a, c = b + gap, eccentricity * gap
    f = (a**2 - b**2 + c**2) / (2 * c)
    m = sqrt(f**2 - a**2)
    return a, b, c, m, log((f + m) / (f - m)) / 2, log((f - c + m) / (f - c - m)) / 2


def _delta(diameter, gap, eccentricity):
    if eccentricity == 0:
        return log(1 + 2 * gap / diameter)
    *_, alpha, beta = _cylinders(diameter, gap, eccentricity)
    return beta - alpha


def _cylinder_draw(rng):
    ratio = 10 ** rng.uniform(-4, 3)
    diameter = 10 ** rng.uniform(-4, 0)
    offset = rng.choice((0.0, rng.uniform(1e-3, 0.999), rng.uniform(0.05, 0.95)))
    return {"diameter": diameter, "gap": diameter * ratio, "eccentricity": offset}


@digits(110)
@at_most(5000)
@drawn(_cylinder_draw)
@conditioned("pressure and drag that nearly cancel; a series", 16)
def annulus_exact_flow(diameter, gap, length, eccentricity, dp, viscosity, wall_speed):
    if eccentricity == 0:
        b = diameter / 2
        a = b + gap
        d = log(a / b)
        shape = a**4 - b**4 - (a**2 - b**2) ** 2 / d
    else:
        a, b, c, m, alpha, beta = _cylinders(diameter, gap, eccentricity)
        d = beta - alpha
        # Each n exp(-n (alpha + beta)) / sinh(n d) as powers of two numbers.
        total, n, small = mpf(0), 1, mpf(10) ** -75
        part, rest = exp(-(alpha + beta) - d), exp(-2 * d)
        power, fall = part, rest
        while True:
            term = 2 * n * power / (1 - fall)
            total += term
            if term < small * total:
                break
            n, power, fall = n + 1, power * part, fall * rest
        shape = a**4 - b**4 - 4 * c**2 * m**2 / d - 8 * c**2 * m**2 * total
    pressed = pi * dp / (8 * viscosity * length) * shape
    return pressed + pi * wall_speed * b * (gap + a * (sinh(d) / d - 1))


def _greatest_speed(diameter, gap, length, dp, viscosity, wall_speed, height):
    return abs(dp) * gap**2 / (8 * viscosity * length) + abs(wall_speed)


@digits(60)
@against(_greatest_speed)
@within(12, "ulp of the greatest speed: at the walls two terms cancel")
def annulus_velocity(diameter, gap, length, dp, viscosity, wall_speed, height):
    b = diameter / 2
    a, r = b + gap, b + height
    share = log(a / r) / log(a / b)
    pressed = dp / (4 * viscosity * length) * (a**2 - r**2 - (a**2 - b**2) * share)
    return pressed + wall_speed * share


@digits(80)
@within(8, "a series, or a difference that is then divided")
def annulus_friction(ratio):
    if ratio == 0:
        return mpf(64)
    if ratio == 1:
        return mpf(96)
    ring = 1 + ratio**2 + (1 - ratio**2) / log(ratio)
    return 64 * (1 - ratio) ** 2 / ring


def annulus_exact_reynolds(flow, diameter, gap, kinematic_viscosity):
    return 2 * abs(flow) / (pi * (diameter + gap) * kinematic_viscosity)


@digits(80)
@drawn(_cylinder_draw)
@conditioned("pressure and drag that nearly cancel; a score of roundings", 16)
def annulus_inner_force(diameter, gap, length, eccentricity, dp, viscosity, wall_speed):
    b = diameter / 2
    a, d = b + gap, _delta(diameter, gap, eccentricity)
    drag = 2 * pi * viscosity * wall_speed * length / d
    return pi * dp * b * (gap + a * (sinh(d) / d - 1)) - drag


@digits(80)
@drawn(_cylinder_draw)
@conditioned("pressure and drag that nearly cancel; a score of roundings", 16)
def annulus_outer_force(diameter, gap, length, eccentricity, dp, viscosity, wall_speed):
    b = diameter / 2
    a, d = b + gap, _delta(diameter, gap, eccentricity)
    drag = 2 * pi * viscosity * wall_speed * length / d
    return pi * dp * a * (gap - b * (sinh(d) / d - 1)) + drag


@within(8, "a dozen roundings follow each other")
def annulus_torque(diameter, gap, length, viscosity, speed):
    b = diameter / 2
    a = b + gap
    ring = a**2 * b**2 / (a**2 - b**2)
    return 4 * pi * viscosity * length * 2 * pi * speed * ring


@within(6, "eight to ten roundings follow each other")
def petroff_torque(diameter, gap, length, viscosity, speed):
    return pi * viscosity * length * 2 * pi * speed * diameter**3 / (4 * gap)


@within(6, "eight to ten roundings follow each other")
def taylor(gap, diameter, speed, kinematic_viscosity):
    slip = pi * diameter * abs(speed) * gap / kinematic_viscosity
    return slip * sqrt(2 * gap / diameter)


ZETA_5 = 1.03692775514336992633136548645703416805708091950191281197419267790380359


def _side_walls(ratio):
    """1 - 192 r / pi^5 Sum tanh(n pi / (2 r)) / n^5 over odd n; the sum of 1 / n^5 is known."""
    if ratio == 0:
        return mpf(1)
    total = 31 * ZETA_5 / 32
    n = 1
    while True:
        term = 2 / (exp(n * pi / ratio) + 1) / n**5
        total -= term
        if term < mpf(10) ** -75:
            return 1 - 192 * ratio / pi**5 * total
        n += 2


def duct_factor(ratio):
    return _side_walls(ratio)


@within(6, "eight to ten roundings follow each other")
def duct_flow(width, gap, length, dp, viscosity):
    h, b = min(width, gap), max(width, gap)
    return b * h**3 * dp / (12 * viscosity * length) * _side_walls(h / b)


@within(6, "eight to ten roundings follow each other")
def duct_friction(ratio):
    return 96 / ((1 + ratio) ** 2 * _side_walls(ratio))


def duct_reynolds(flow, width, gap, kinematic_viscosity):
    return 2 * abs(flow) / ((width + gap) * kinematic_viscosity)


def duct_wall_shear(width, gap, length, dp):
    return dp * width * gap / (2 * (width + gap) * length)


@within(6, "eight to ten roundings follow each other")
def pipe_flow(diameter, length, dp, viscosity):
    return pi * diameter**4 * dp / (128 * viscosity * length)


@within(6, "eight to ten roundings follow each other")
def pipe_velocity(diameter, length, dp, viscosity, radius):
    return dp * (diameter**2 / 4 - radius**2) / (4 * viscosity * length)


def pipe_wall_shear(diameter, length, dp):
    return dp * diameter / (4 * length)


def pipe_reynolds(flow, diameter, kinematic_viscosity):
    return 4 * abs(flow) / (pi * diameter * kinematic_viscosity)


def pipe_inertia(flow, length, kinematic_viscosity):
    return 2.25 * abs(flow) / (16 * pi * kinematic_viscosity * length)


def pipe_entry_length(diameter, reynolds):
    return 0.056 * diameter * reynolds


def entry_length(gap, reynolds):
    return 0.011 * 2 * gap * reynolds


@digits(60)
@within(6, "eight to ten roundings follow each other")
def inertial_flow(conductance, area, dp, viscosity, density, loss_coefficient):
    a, b = loss_coefficient * density / (2 * area**2), viscosity / conductance
    size = 2 * abs(dp) / (b + sqrt(b**2 + 4 * a * abs(dp)))
    return size if dp > 0 else -size


def in_series(conductance, other_conductance):
    if conductance == 0 or other_conductance == 0:
        return mpf(0)
    return 1 / (1 / conductance + 1 / other_conductance)


def in_parallel(conductance, other_conductance):
    return conductance + other_conductance


@within(6, "eight to ten roundings follow each other")
def sharp_orifice_flow(area, dp, density, discharge_coefficient):
    size = discharge_coefficient * area * sqrt(2 * abs(dp) / density)
    return size if dp > 0 else -size


def discharge_coefficient(area, flow, dp, density):
    return abs(flow) / (area * sqrt(2 * dp / density))


@at_most(2000)
@drawn(lambda rng: {"ratio": rng.choice((0.0, rng.uniform(0, 0.9), 10 ** rng.uniform(-12, -1)))})
@within(16, "a root of an equation; drawn up to 0.9, for at 1 it has a vertical tangent")
def contraction(ratio):
    if ratio == 0:
        return pi / (pi + 2)
    m = ratio * pi / (pi + 2)
    for _ in range(100):
        miss = m + 2 / pi * (1 - m**2) * atan(m) - ratio
        step = miss / (1 + 2 / pi * (1 - 2 * m * atan(m)))
        m -= step
        if abs(step) < abs(m) * mpf(10) ** -38:
            break
    return m / ratio


def _mean(x):
    """(exp(x) - 1) / x."""
    return expm1(x) / x if x else mpf(1)


@conditioned("exponential of a product")
def barus_viscosity(viscosity, pressure_viscosity, inlet_pressure, outlet_pressure):
    at_outlet = exp(pressure_viscosity * outlet_pressure)
    return viscosity * at_outlet / _mean(pressure_viscosity * (outlet_pressure - inlet_pressure))


@conditioned("exponential of a product")
def isothermal_factor(dp, pressure_viscosity):
    return _mean(pressure_viscosity * dp)


@conditioned("exponential of a product")
def adiabatic_factor(dp, pressure_viscosity, viscosity_temperature, density, specific_heat):
    return _mean((pressure_viscosity + viscosity_temperature / (density * specific_heat)) * dp)


def temperature_rise(dp, density, specific_heat):
    return dp / (density * specific_heat)


def friction_temperature_rise(power, flow, density, specific_heat):
    return power / (density * specific_heat * flow)


def couette_temperature_rise(viscosity, wall_speed, thermal_conductivity):
    return viscosity * wall_speed**2 / (8 * thermal_conductivity)


@within(8, "a dozen roundings follow each other")
def poiseuille_temperature_rise(gap, length, dp, viscosity, thermal_conductivity):
    return (dp / length) ** 2 * gap**4 / (192 * viscosity * thermal_conductivity)
