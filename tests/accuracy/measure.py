"""Uncertainty of measurement: the GUM, as vane/measure.h prints it."""


def rectangular(half_range):
    return half_range / sqrt(3)


def triangular(half_range):
    return half_range / sqrt(6)


def trapezoid(half_range, ratio):
    return half_range * sqrt((1 + ratio**2) / 6)


def u_shaped(half_range):
    return half_range / sqrt(2)


def from_expanded(expanded, coverage):
    return expanded / coverage


def expanded(uncertainty, coverage):
    return coverage * uncertainty


def freedom(doubt):
    return 1 / (2 * doubt**2)


def _normal(z):
    return erfc(-z / sqrt(2)) / 2


def _quantile(probability):
    """By Newton on the logarithm of the smaller tail, which is concave."""
    if probability == mpf(1) / 2:
        return mpf(0)
    tail = min(probability, 1 - probability)
    z = -sqrt(-2 * log(2 * tail))
    for _ in range(200):
        below = _normal(z)
        step = log(below / tail) * below * sqrt(2 * pi) * exp(z**2 / 2)
        z -= step
        if abs(step) < abs(z) * mpf(10) ** -35:
            break
    return z if probability < mpf(1) / 2 else -z


def _probability(rng):
    small = 10 ** rng.uniform(-250, 0) / 2
    return {"probability": rng.choice((rng.random(), small, 1 - 10 ** rng.uniform(-12, 0) / 2))}


@at_most(5000)
@drawn(_probability)
@conditioned("a quantile of the mathematics library, 1e-14 of itself", 50)
def normal_quantile(probability):
    return _quantile(probability)


def _tail(t, nu):
    """P(T > t), t > 0."""
    return mpmath.betainc(nu / 2, mpf(1) / 2, 0, nu / (nu + t**2), regularized=True) / 2


def _student(tail, nu):
    """t > 0 of the upper tail, by bisection on its logarithm, then Newton."""
    if nu == 1:
        return 1 / mpmath.tan(pi * tail)
    if nu == 2:
        return (1 - 2 * tail) / sqrt(2 * tail * (1 - tail))
    guess = mpmath.mpf(max(float(-_quantile(tail)), 1e-3))
    t = guess
    for _ in range(300):
        beyond = _tail(t, nu)
        density = exp(
            mpmath.loggamma((nu + 1) / 2) - mpmath.loggamma(nu / 2)
            - (nu + 1) / 2 * log(1 + t**2 / nu)
        ) / sqrt(nu * pi)
        # In log t the logarithm of the tail is nearly straight.
        step = log(beyond / tail) * beyond / (density * t)
        t *= exp(max(min(step, mpf(3)), mpf(-3)))
        if abs(step) < mpf(10) ** -30:
            return t
    raise ValueError("no root")


def _freedom(rng):
    freedom = rng.choice((1.0, 2.0, float(rng.randint(3, 60)), rng.uniform(1, 300)))
    return {"probability": rng.uniform(0.501, 0.9999), "degrees_of_freedom": freedom}


@at_most(200)
@drawn(_freedom)
@conditioned("a quantile of the mathematics library, 1e-12 of itself", 5000)
def student_quantile(probability, degrees_of_freedom):
    return _student(1 - probability, degrees_of_freedom)


@at_most(200)
@drawn(_freedom)
@conditioned("a quantile of the mathematics library, 1e-12 of itself", 5000)
def coverage(probability, degrees_of_freedom):
    return _student((1 - probability) / 2, degrees_of_freedom)


def _near(rng):
    uncertainty = 10 ** rng.uniform(-6, 2)
    value = rng.uniform(-20, 20) * uncertainty
    low = value + rng.uniform(-8, 8) * uncertainty
    return {
        "value": value, "uncertainty": uncertainty, "low": low,
        "high": low + 10 ** rng.uniform(-6, 2) * uncertainty,
    }


@digits(80)
@drawn(_near)
@conditioned("tails: the square of a quotient", 5000)
def probability(value, uncertainty, low, high):
    if uncertainty == 0:
        return mpf(low <= value <= high)
    return _normal((high - value) / uncertainty) - _normal((low - value) / uncertainty)


@drawn(_near)
@conditioned("tails: the square of a quotient", 5000)
def probability_most(value, uncertainty, high):
    if uncertainty == 0:
        return mpf(value <= high)
    return _normal((high - value) / uncertainty)


@drawn(_near)
@conditioned("tails: the square of a quotient", 5000)
def probability_least(value, uncertainty, low):
    if uncertainty == 0:
        return mpf(low <= value)
    return _normal((value - low) / uncertainty)
