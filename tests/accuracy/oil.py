"""Oil: ASTM D341, D2270, D2161, D1250 and the laws of the handbooks, as vane/oil.h prints them."""

import bisect

GRADES = {2: 2.2, 3: 3.2, 5: 4.6, 7: 6.8}
MM2 = 10**6


def _some_grade(rng):
    known = (2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200)
    return {"grade": float(rng.choice(known + (3200,)))}


@drawn(_some_grade)
def grade_viscosity(grade):
    return GRADES.get(int(grade), grade) / mpf(MM2)


@drawn(_some_grade)
def grade_minimum(grade):
    return 0.9 * grade_viscosity(grade)


@drawn(_some_grade)
def grade_maximum(grade):
    return 1.1 * grade_viscosity(grade)


def grade_nearest(viscosity_40):
    series = (10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200)
    midpoints = [(mpf(x), n) for n, x in GRADES.items()] + [(mpf(x), x) for x in series]
    return min((abs(log(viscosity_40 * MM2 / x)), n) for x, n in midpoints)[1]


def _two_points(rng):
    """Oils of both kinds, thin and thick, steep and flat."""
    thick = 10 ** rng.uniform(-6, -3)
    cold = {"temperature": rng.uniform(250, 330), "viscosity": thick}
    thin = max(float(thick) * 10 ** float(rng.uniform(-1.2, -0.05)), 5e-7)
    hot = {"temperature": rng.uniform(340, 420), "viscosity": thin}
    points = rng.sample((cold, hot), 2)
    return {f"{name}_{i}": x for i, p in enumerate(points, 1) for name, x in p.items()}


def _two_points_and_temperature(rng):
    return {**_two_points(rng), "temperature": rng.uniform(240, 450)}


def _two_points_and_viscosity(rng):
    return {**_two_points(rng), "kinematic_viscosity": 10 ** rng.uniform(-6.2, -3)}


def _line(x, x1, y1, x2, y2):
    return y1 + (x - x1) * (y2 - y1) / (x2 - x1)


def _double(z):
    return log(log(z))


def _short(viscosity):
    return _double(viscosity * MM2 + 0.7)


@drawn(_two_points_and_temperature)
@conditioned("exponential of an exponential", 16)
def walther(temperature, temperature_1, viscosity_1, temperature_2, viscosity_2):
    y = _line(
        log(temperature), log(temperature_1), _short(viscosity_1), log(temperature_2),
        _short(viscosity_2),
    )
    return (exp(exp(y)) - 0.7) / MM2


@drawn(_two_points_and_viscosity)
@conditioned("two viscosities close together", 16, 20)
def walther_temperature(
    kinematic_viscosity, temperature_1, viscosity_1, temperature_2, viscosity_2
):
    return exp(_line(
        _short(kinematic_viscosity), _short(viscosity_1), log(temperature_1),
        _short(viscosity_2), log(temperature_2),
    ))


@drawn(lambda rng: {
    "temperature": rng.uniform(250, 450), "intercept": rng.uniform(7, 11),
    "slope": rng.uniform(2.7, 4.2),
})
@conditioned("the constants cancel under an exponential of an exponential", 16)
def walther_line(temperature, intercept, slope):
    return (mpf(10) ** (mpf(10) ** (intercept - slope * log10(temperature))) - 0.7) / MM2


def _z(nu):
    return nu + 0.7 + exp(-1.47 - 1.84 * nu - 0.51 * nu**2)


def _z_inverse(z):
    """nu of Z, by Newton from above."""
    nu = z - 0.7
    for _ in range(60):
        bend = exp(-1.47 - 1.84 * nu - 0.51 * nu**2)
        step = (nu + 0.7 + bend - z) / (1 - bend * (1.84 + 1.02 * nu))
        nu -= step
        if abs(step) < nu * mpf(10) ** -38:
            break
    return nu


@drawn(_two_points_and_temperature)
@conditioned("exponential of an exponential", 16)
def d341(temperature, temperature_1, viscosity_1, temperature_2, viscosity_2):
    y = _line(
        log(temperature), log(temperature_1), _double(_z(viscosity_1 * MM2)),
        log(temperature_2), _double(_z(viscosity_2 * MM2)),
    )
    return _z_inverse(exp(exp(y))) / MM2


@drawn(_two_points_and_viscosity)
@conditioned("two viscosities close together", 16, 20)
def d341_temperature(kinematic_viscosity, temperature_1, viscosity_1, temperature_2, viscosity_2):
    return exp(_line(
        _double(_z(kinematic_viscosity * MM2)), _double(_z(viscosity_1 * MM2)),
        log(temperature_1), _double(_z(viscosity_2 * MM2)), log(temperature_2),
    ))


def d341_z(kinematic_viscosity):
    return _z(kinematic_viscosity * MM2)


@conditioned("exponentials that cancel at the thin end")
def d341_z_long(kinematic_viscosity):
    nu = kinematic_viscosity * MM2
    c, d = exp(-1.14883 - 2.65868 * nu), exp(-0.0038138 - 12.5645 * nu)
    e, f = exp(5.46491 - 37.6289 * nu), exp(13.0458 - 74.6851 * nu)
    g, h = exp(37.4619 - 192.643 * nu), exp(80.4945 - 400.468 * nu)
    return nu + 0.7 + c - d + e - f + g - h


@conditioned("a difference at the thin end")
def d341_viscosity(z):
    q = z - 0.7
    return (q - exp(-0.7487 - 3.295 * q + 0.6119 * q**2 - 0.3193 * q**3)) / MM2


@conditioned("exponential of an exponential", 32)
def blend(fraction, kinematic_viscosity_1, kinematic_viscosity_2):
    one, two = (_double(_z(nu * MM2)) for nu in (kinematic_viscosity_1, kinematic_viscosity_2))
    return _z_inverse(exp(exp(fraction * one + (1 - fraction) * two))) / MM2


def _between(rng):
    one, two = 10 ** rng.uniform(-6.5, -2), 10 ** rng.uniform(-6.5, -2)
    return {
        "kinematic_viscosity_1": one, "kinematic_viscosity_2": two,
        "kinematic_viscosity": one ** (part := rng.random()) * two ** (1 - part),
    }


@drawn(_between)
@conditioned("double logarithms that differ by little", 8, 20)
def blend_fraction(kinematic_viscosity, kinematic_viscosity_1, kinematic_viscosity_2):
    one, two = (_double(_z(nu * MM2)) for nu in (kinematic_viscosity_1, kinematic_viscosity_2))
    return (_double(_z(kinematic_viscosity * MM2)) - two) / (one - two)


@conditioned("exponential of a product")
def density(temperature, density, reference_temperature, thermal_expansion):
    return density * exp(-thermal_expansion * (temperature - reference_temperature))


def lubricant_expansion(density_15):
    return 0.6278 / density_15


def _correction(x):
    return exp(-x * (1 + 0.8 * x))


@conditioned("exponential of a square", 4, 3)
def lubricant_density(temperature, density_15):
    return density_15 * _correction(0.6278 / density_15 * (temperature - 288.15))


def _petroleum(rng):
    """Oils and temperatures at which they are liquid."""
    return {
        "density_15": rng.uniform(600, 1200), "density": rng.uniform(600, 1200),
        "temperature": rng.uniform(240, 440), "k0": rng.choice((0.0, rng.uniform(0, 700))),
        "k1": rng.choice((0.0, rng.uniform(0, 0.7))),
        "k2": rng.choice((0.0, rng.uniform(-4e-3, 0))),
    }


def _expansion(density_15, k0, k1, k2):
    return k0 / density_15**2 + k1 / density_15 + k2


def _inverse_density(temperature, density, k0, k1, k2):
    """The density at 15 degC near the one given, by Newton on the logarithm."""
    rise = temperature - 288.15
    y = log(density)
    for _ in range(60):
        at = exp(y)
        x = _expansion(at, k0, k1, k2) * rise
        slope = (-2 * k0 / at**2 - k1 / at) * rise
        step = (y - x * (1 + 0.8 * x) - log(density)) / (1 - slope * (1 + 1.6 * x))
        y -= step
        if abs(step) < mpf(10) ** -38:
            break
    return exp(y)


@drawn(_petroleum)
@conditioned("the root of an equation")
def lubricant_density_15(temperature, density):
    return _inverse_density(temperature, density, 0, 0.6278, 0)


@drawn(_petroleum)
@conditioned("constants of opposite signs that nearly cancel")
def api_expansion(density_15, k0, k1, k2):
    return _expansion(density_15, k0, k1, k2)


@drawn(_petroleum)
@conditioned("exponential of a square")
def api_density(temperature, density_15, k0, k1, k2):
    return density_15 * _correction(_expansion(density_15, k0, k1, k2) * (temperature - 288.15))


@drawn(_petroleum)
@conditioned("the root of an equation", 8)
def api_density_15(temperature, density, k0, k1, k2):
    return _inverse_density(temperature, density, k0, k1, k2)


@conditioned("exponential of a square")
def volume_correction(temperature, reference_temperature, thermal_expansion):
    return _correction(thermal_expansion * (temperature - reference_temperature))


def hydrometer_factor(temperature):
    t = temperature - 288.15
    return 1 - 2.3e-5 * t - 2e-8 * t**2


@digits(60)
@conditioned("a power")
def pressure_density(pressure, density, bulk_modulus, modulus_slope):
    if modulus_slope == 0:
        return density * exp(pressure / bulk_modulus)
    return density * (1 + modulus_slope * pressure / bulk_modulus) ** (1 / modulus_slope)


@conditioned("a temperature at which the line is zero")
def specific_heat(temperature, density_15):
    return (1685 + 3.39 * (temperature - 273.15)) / sqrt(density_15 / 999)


def conductivity(temperature, density_15):
    return 0.1172 * (1 - 0.00054 * (temperature - 273.15)) / (density_15 / 999)


def dynamic_viscosity(kinematic_viscosity, density):
    return kinematic_viscosity * density


@conditioned("exponential of a product")
def barus(viscosity, pressure_viscosity, pressure):
    return viscosity * exp(pressure_viscosity * pressure)


@conditioned("exponential of a product")
def barus_factor(pressure_viscosity, inlet_pressure, outlet_pressure):
    x = pressure_viscosity * (outlet_pressure - inlet_pressure)
    at_inlet = exp(-pressure_viscosity * inlet_pressure)
    return at_inlet * (-expm1(-x) / x if x else 1)


def _roelands(rng):
    return {"temperature": rng.uniform(200, 500), "reference_temperature": rng.uniform(200, 500)}


@drawn(_roelands)
@conditioned("exponential of powers", 8)
def roelands(
    viscosity, pressure, temperature, reference_temperature, pressure_index, temperature_slope
):
    base = log(viscosity) + 9.67
    pressed = (1 + 5.1e-9 * pressure) ** pressure_index
    warmed = ((temperature - 138) / (reference_temperature - 138)) ** -temperature_slope
    return exp(base * pressed * warmed - 9.67)


@conditioned("a viscosity near that of the law")
def roelands_index(viscosity, pressure_viscosity):
    return pressure_viscosity / (5.1e-9 * (log(viscosity) + 9.67))


@conditioned("a viscosity near that of the law")
def roelands_coefficient(viscosity, pressure_index):
    return 5.1e-9 * (log(viscosity) + 9.67) * pressure_index


def _two_temperatures(rng):
    return {
        "temperature_1": 138 + 10 ** rng.uniform(-2, 3),
        "temperature_2": 138 + 10 ** rng.uniform(-2, 3),
    }


@drawn(_two_temperatures)
@conditioned("two points close together", 8)
def roelands_slope(temperature_1, viscosity_1, temperature_2, viscosity_2):
    fall = log((log(viscosity_2) + 9.67) / (log(viscosity_1) + 9.67))
    return -fall / log((temperature_2 - 138) / (temperature_1 - 138))


def volume_change(volume, dp, bulk_modulus):
    return -volume * dp / bulk_modulus


def measured_modulus(volume, volume_change, dp):
    return -volume * dp / volume_change


@conditioned("exponential of a product, and a pressure that nearly cancels it")
def modulus(
    pressure, temperature, bulk_modulus, modulus_slope, reference_temperature, modulus_temperature
):
    base = bulk_modulus * exp(-modulus_temperature * (temperature - reference_temperature))
    return base + modulus_slope * pressure


@digits(60)
@conditioned("a power", 8)
def secant_modulus(pressure, bulk_modulus, modulus_slope):
    if pressure == 0:
        return bulk_modulus
    if modulus_slope == 0:
        return pressure / -expm1(-pressure / bulk_modulus)
    grown = (1 + modulus_slope * pressure / bulk_modulus) ** (-1 / modulus_slope)
    return pressure / (1 - grown)


@conditioned("differences that nearly cancel")
def tangent_modulus(pressure, secant_modulus, secant_slope):
    return secant_modulus * (secant_modulus - pressure) / (secant_modulus - pressure * secant_slope)


def _thermal(rng):
    return {"thermal_expansion": 10 ** rng.uniform(-5, -3), "density": rng.uniform(500, 2000)}


@conditioned("the heat of compression nearly taking all")
def adiabatic_modulus(isothermal_modulus, temperature, density, thermal_expansion, specific_heat):
    heat = thermal_expansion**2 * temperature / (density * specific_heat)
    return 1 / (1 / isothermal_modulus - heat)


adiabatic_modulus = drawn(_thermal)(adiabatic_modulus)


def isothermal_modulus(adiabatic_modulus, temperature, density, thermal_expansion, specific_heat):
    heat = thermal_expansion**2 * temperature / (density * specific_heat)
    return 1 / (1 / adiabatic_modulus + heat)


def sound_speed(bulk_modulus, density):
    return sqrt(bulk_modulus / density)


def _volume(p, k, a, p0, n):
    return (1 - a) * exp(-(p - p0) / k), a * (p0 / p) ** (1 / n)


@conditioned("powers and exponentials")
def aerated_volume(
    absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure, polytropic_exponent
):
    return sum(_volume(
        absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure,
        polytropic_exponent,
    ))


@conditioned("powers and exponentials")
def aerated_density(
    absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure,
    polytropic_exponent, density,
):
    return density / sum(_volume(
        absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure,
        polytropic_exponent,
    ))


@conditioned("powers and exponentials")
def aerated_modulus(
    absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure, polytropic_exponent
):
    liquid, gas = _volume(
        absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure,
        polytropic_exponent,
    )
    soft = liquid / bulk_modulus + gas / (polytropic_exponent * absolute_pressure)
    return (liquid + gas) / soft


@conditioned("powers and exponentials")
def aerated_gas_fraction(
    absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure, polytropic_exponent
):
    liquid, gas = _volume(
        absolute_pressure, bulk_modulus, air_fraction, reference_absolute_pressure,
        polytropic_exponent,
    )
    return gas / (liquid + gas)


def effective_modulus(absolute_pressure, bulk_modulus, gas_fraction, polytropic_exponent):
    soft = gas_fraction / (polytropic_exponent * absolute_pressure)
    return 1 / (soft + (1 - gas_fraction) / bulk_modulus)


def _around(rng):
    low = 10 ** rng.uniform(2, 7)
    high = low * (1 + 10 ** rng.uniform(-3, 3))
    return {
        "dissolving_from": low, "dissolved_at": high,
        "absolute_pressure": low + (high - low) * rng.uniform(-0.1, 1.1),
    }


@drawn(lambda rng: {k: abs(x) for k, x in _around(rng).items()})
@within(12, "seven roundings, of which one is cubed")
def free_air(absolute_pressure, dissolving_from, dissolved_at):
    x = (absolute_pressure - dissolving_from) / (dissolved_at - dissolving_from)
    x = min(max(x, mpf(0)), mpf(1))
    return 1 - (10 * x**3 - 15 * x**4 + 6 * x**5)


@conditioned("a power")
def bunsen(temperature, density_15, ostwald):
    solubility = 0.300 * exp(0.639 * (700 - temperature) / temperature * log(3.333 * ostwald))
    return 273.15 / temperature * 7.70 * solubility * (980 - density_15) / 1000


def dissolved_air(bunsen_coefficient, absolute_pressure):
    return bunsen_coefficient * absolute_pressure / 101325


def saturation_pressure(bunsen_coefficient, dissolved_air):
    return dissolved_air * 101325 / bunsen_coefficient


TABLE = table("oil_index.c", "table")
STEPS = [row[0] for row in TABLE]


def _reference_oil(y, column):
    """L (1) or H (2) in mm2/s."""
    if y > 70:
        if column == 1:
            return 0.8353 * y**2 + 14.67 * y - 216
        return 0.1684 * y**2 + 11.85 * y - 97
    i = min(max(bisect.bisect(STEPS, y), 1), len(STEPS) - 1)
    low, high = TABLE[i - 1], TABLE[i]
    return _line(y, low[0], low[column], high[0], high[column])


def _index(u, y):
    low, high = _reference_oil(y, 1), _reference_oil(y, 2)
    if u >= high:
        return 100 * (low - u) / (low - high)
    return 100 + (mpf(10) ** (log(high / u) / log(y)) - 1) / 0.00715


def _index_draw(rng):
    hot = 10 ** rng.uniform(-5.69, -3)
    return {"viscosity_100": hot, "viscosity_40": hot * rng.uniform(2, 15)}


@drawn(_index_draw)
@conditioned("L - U cancels; power of ten", 32)
def index(viscosity_40, viscosity_100):
    return _index(viscosity_40 * MM2, viscosity_100 * MM2)


@drawn(lambda rng: {"viscosity_40": 10 ** rng.uniform(-5, -3), "index": rng.uniform(-20, 300)})
@conditioned("the root of an equation", 64)
@at_most(2000)
def viscosity_100(viscosity_40, index):
    u = viscosity_40 * MM2
    # The index rises with viscosity at 100 degC, but for the seam at 70 mm2/s.
    low, high = mpf(2), min(u, mpf(70))
    if _index(u, high) < index:
        low, high = high, u
    for _ in range(100):
        y = (low + high) / 2
        if _index(u, y) < index:
            low = y
        else:
            high = y
    return (low + high) / 2 / MM2


def index_l(viscosity_100):
    return _reference_oil(viscosity_100 * MM2, 1) / MM2


def index_h(viscosity_100):
    return _reference_oil(viscosity_100 * MM2, 2) / MM2


@conditioned("L and U or L and H close together")
def index_a(viscosity_40, l, h):
    return 100 * (l - viscosity_40) / (l - h)


@conditioned("terms that nearly cancel")
def index_a_viscosity(index, l, h):
    return l - index * (l - h) / 100


def _exponent_draw(rng):
    h = 10 ** rng.uniform(-5, -3)
    return {
        "h": h, "viscosity_40": h * 10 ** -rng.uniform(0, 1),
        "viscosity_100": 10 ** rng.uniform(-5.6, -4),
    }


@drawn(_exponent_draw)
@conditioned("H and U close together")
def index_exponent(viscosity_40, viscosity_100, h):
    return log(h / viscosity_40) / log(viscosity_100 * MM2)


@drawn(_exponent_draw)
@conditioned("power of ten", 8)
def index_b(viscosity_40, viscosity_100, h):
    exponent = log(h / viscosity_40) / log(viscosity_100 * MM2)
    return 100 + (mpf(10) ** exponent - 1) / 0.00715


@drawn(lambda rng: {
    "viscosity_100": 10 ** rng.uniform(-5.69, -3.5), "index": rng.uniform(-20, 300),
})
@conditioned("terms that nearly cancel; a power", 16)
def viscosity_40(viscosity_100, index):
    y = viscosity_100 * MM2
    low, high = _reference_oil(y, 1), _reference_oil(y, 2)
    if index <= 100:
        return (low - index * (low - high) / 100) / MM2
    return high * y ** -log10(1 + 0.00715 * (index - 100)) / MM2


def _saybolt(nu, temperature):
    t = (temperature - 273.15) * 1.8 + 32
    below = (3930.2 + 262.7 * nu + 23.97 * nu**2 + 1.646 * nu**3) / 10**5
    return (1 + 0.000061 * (t - 100)) * (4.6324 * nu + (1 + 0.03264 * nu) / below)


@conditioned("a temperature at which the factor is zero")
def saybolt(kinematic_viscosity, temperature):
    return _saybolt(kinematic_viscosity * MM2, temperature)


@drawn(lambda rng: {"saybolt": 31 + 10 ** rng.uniform(-1, 5), "temperature": rng.uniform(250, 450)})
@conditioned("the root of an equation", 8, 3)
def saybolt_viscosity(saybolt, temperature):
    nu, step = mpf(saybolt) / 4.6324, mpf(1)
    h = mpf(10) ** -20
    for _ in range(80):
        miss = _saybolt(nu, temperature) - saybolt
        step = miss * h / ((_saybolt(nu + h, temperature) - saybolt) - miss)
        nu = max(nu - step, mpf(1) / 10)
        if abs(step) < nu * mpf(10) ** -30:
            break
    return nu / MM2


@conditioned("a difference")
def saybolt_handbook(saybolt):
    t = saybolt
    return (0.226 * t - 195 / t if t <= 100 else 0.220 * t - 135 / t) / MM2


def capillary_viscosity(constant, time):
    return constant * time


def plate_viscosity(force, gap, area, wall_speed):
    return force * gap / (area * wall_speed)


DENSE = table("oil_water.c", "dense")


@conditioned("exponential of a polynomial of alternating terms", 320)
def water_viscosity(temperature, density):
    t, r = 647.096 / temperature, density / 322
    dilute = (1.67752, 2.20462, 0.6366564, -0.241605)
    gas = 100 / sqrt(t) / sum(h * t**i for i, h in enumerate(dilute))
    dense = sum(
        h * (t - 1) ** i * (r - 1) ** j
        for i, row in enumerate(DENSE) for j, h in enumerate(row) if h
    )
    return gas * exp(r * dense) / 10**6
