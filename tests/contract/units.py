"""Holds every documented unit to the numbers.

A formula that is right in SI is right in any coherent units. So metre, kilogram,
second and kelvin are made longer or shorter at random, every input is written in
the new units as its documentation says, and every output must come out in them:
a wrong unit, and a constant with a dimension that no one documented, shows as a
factor that was not promised. Documented constants hold back the units they need.
Conversions are held to the definitions of UCUM instead.

    python3 units.py [--seed N] [--draws N] [PATTERN...]

Exit status 1 and one sentence for each breach.
"""

import argparse
import math
import re
import sys
from fractions import Fraction

import draw

# Half of the draws use powers of two, which cost no digit by themselves: what is
# left is what roots, powers and logarithms of the scaled numbers round.
EXACT, GENERAL = 1e-12, 1e-9
# Of a conversion: a constant worked out in doubles, and one product.
CONVERSION = 1e-15
# An output that jumps by this much when the inputs move in their last bit has no
# nine digits to compare. It may be so now and then, not as a rule.
RESTLESS, SELDOM = 1e-11, 0.05

BASE = ("m", "kg", "s", "K")
PI = Fraction("3.14159265358979323846264338327950288419716939937510")
INCH, POUND = Fraction("0.0254"), Fraction("0.45359237") * Fraction("9.80665")
HORSEPOWER = 550 * 12 * INCH * POUND
LENGTH, MASS, TIME, KELVIN = (tuple(int(i == j) for j in range(4)) for i in range(4))
FORCE, PRESSURE, WORK, POWER, VOLUME = (
    (1, 1, -2, 0), (-1, 1, -2, 0), (2, 1, -2, 0), (2, 1, -3, 0), (3, 0, 0, 0),
)
PLAIN = (0, 0, 0, 0)
PREFIXES = {"M": Fraction(10**6), "k": Fraction(1000), "c": Fraction(1, 100),
            "m": Fraction(1, 1000), "u": Fraction(1, 10**6)}
# The Unified Code for Units of Measure, as far as this library writes it.
METRIC = {
    "m": (1, LENGTH), "g": (Fraction(1, 1000), MASS), "s": (1, TIME), "K": (1, KELVIN),
    "Pa": (1, PRESSURE), "N": (1, FORCE), "J": (1, WORK), "W": (1, POWER),
    "Hz": (1, (0, 0, -1, 0)), "L": (Fraction(1, 1000), VOLUME), "bar": (10**5, PRESSURE),
    "rad": (1, PLAIN),
}
OTHER = {
    "min": (60, TIME), "h": (3600, TIME), "deg": (PI / 180, PLAIN), "10*3": (1000, PLAIN),
    "Cel": (1, KELVIN), "[degF]": (Fraction(5, 9), KELVIN),
    "[in_i]": (INCH, LENGTH), "[ft_i]": (12 * INCH, LENGTH), "[mil_i]": (INCH / 1000, LENGTH),
    "[cin_i]": (INCH**3, VOLUME), "[gal_us]": (231 * INCH**3, VOLUME),
    "[lbf_av]": (POUND, FORCE), "[psi]": (POUND / INCH**2, PRESSURE),
    "[HP]": (HORSEPOWER, POWER),
}
# Zero of the scale, in its own degrees.
ZERO = {"Cel": Fraction("-273.15"), "[degF]": Fraction("-459.67")}
TOKEN = re.compile(r"10\*3|\[\w+\]|[A-Za-z]+|\d+|[./()]")


def parse(unit):
    """(factor to SI, powers of the base units) of a UCUM code, or None if it is no product."""
    tokens = TOKEN.findall(unit)
    if "".join(tokens) != unit:
        raise ValueError(f"'{unit}' does not read as a unit")
    found = product(tokens)
    if tokens:
        raise ValueError(f"'{unit}' has a parenthesis too many")
    return found


def product(tokens):
    factor, powers, sign = Fraction(1), PLAIN, 1
    while tokens and tokens[0] != ")":
        token = tokens.pop(0)
        if token == "(":
            by, of = product(tokens)
            tokens.pop(0)
        elif token in "./":
            sign = 1 if token == "." else -1
            continue
        else:
            by, of = atom(token)
            if tokens and tokens[0].isdigit():
                power = int(tokens.pop(0))
                by, of = by**power, tuple(power * x for x in of)
        factor *= by**sign
        powers = tuple(x + sign * y for x, y in zip(powers, of))
    return factor, powers


def atom(token):
    if token.isdigit():
        return Fraction(token), PLAIN
    known = OTHER.get(token) or METRIC.get(token)
    if known is None and token[0] in PREFIXES and token[1:] in METRIC:
        factor, powers = METRIC[token[1:]]
        known = PREFIXES[token[0]] * factor, powers
    if known is None:
        raise ValueError(f"'{token}' is no unit that UCUM defines by a product")
    return Fraction(known[0]), known[1]


def free_directions(constants):
    """Integer exponents, each set of which leaves the units of all constants as they are.

    Whole numbers, so that powers of two stay powers of two.
    """
    rows = [[Fraction(x) for x in parse(c)[1]] for c in constants]
    pivots = []
    for column in range(4):
        at = next((r for r in rows[len(pivots):] if r[column]), None)
        if at is None:
            continue
        rows.remove(at)
        rows.insert(len(pivots), at)
        at[:] = [x / at[column] for x in at]
        for row in rows:
            if row is not at:
                row[:] = [x - row[column] * y for x, y in zip(row, at)]
        pivots.append(column)
    found = []
    for free in set(range(4)) - set(pivots):
        vector = [Fraction(int(i == free)) for i in range(4)]
        for row, pivot in zip(rows, pivots):
            vector[pivot] = -row[free]
        scale = math.lcm(*(x.denominator for x in vector))
        found.append([int(x * scale) for x in vector])
    return found


def base_factors(directions, exact, rng):
    """Factors of the four base units, 0.1 to 10 each, along the free directions."""
    logs = [0.0] * 4
    for vector in directions:
        amount = rng.choice((-1, 1)) * rng.randint(1, 3)
        if not exact:
            amount = rng.uniform(-1, 1) * math.log(10) / max(map(abs, vector))
        logs = [x + amount * y for x, y in zip(logs, vector)]
    return [2.0**x for x in logs] if exact else [math.exp(x) for x in logs]


def factor(unit, base):
    """By how much a number grows when the base units of its unit shrink."""
    if unit in (None, "1"):
        return 1.0
    grown, powers = 1.0, parse(unit)[1]
    for by, power in zip(base, powers):
        grown *= by**power
    return grown


class Report:
    def __init__(self):
        self.sentences, self.known = [], set()
        self.functions = self.draws = self.compared = self.excused = 0
        self.worst = dict.fromkeys(("powers of two", "any factors", "conversions"), (0.0, ""))

    def breach(self, key, sentence):
        if key not in self.known:
            self.known.add(key)
            self.sentences.append(sentence)

    def deviation(self, kind, x, where):
        self.worst[kind] = max(self.worst[kind], (x, where))


def off(got, want):
    """Deviation relative to what is wanted; NaN is infinitely far."""
    if got == want:
        return 0.0
    x = abs(got - want) / abs(want) if want else math.inf
    return x if x == x else math.inf


def restless(call, want, rng):
    """The outputs that move with the last bits of the inputs."""
    values, found = dict(call.values), set()
    for _ in range(12):
        for leaf in call.inner.values():
            if leaf.code == "d":
                x = values[leaf.key]
                call.set(leaf, x * (1 + rng.choice((-2, -1, 0, 1, 2)) * 2.0**-52))
        again = call.run().outputs
        found |= {key for key, x in want.items() if off(again[key], x) > RESTLESS}
    return found


def scaled(call, base):
    values = dict(call.values)
    for leaf in call.inner.values():
        if leaf.code == "d":
            values[leaf.key] *= factor(leaf.item["unit"], base)
    return draw.Call(call.function, values, call.null)


def limits_covered(function, directions, report):
    """A limit with a dimension is a dimensional constant, and must be documented as one."""
    for flat in function.flats.values():
        for fields, item, _, code, owner in flat:
            limits = item.get("range") or {}
            for side in ("low", "high"):
                x = limits.get(side)
                if not isinstance(x, float) or x == 0 or item["unit"] in (None, "1"):
                    continue
                powers = parse(item["unit"])[1]
                if any(sum(a * b for a, b in zip(powers, v)) for v in directions):
                    name = ".".join((owner, *fields[-1:]))
                    report.breach(
                        (function.name, name),
                        f"{function.name}(): the range '{limits['text']}' of {name} holds a "
                        f"constant in {item['unit']}, but no @constant has that unit.",
                    )


def check(function, seed, draws, report):
    constants = [c["unit"] for c in function.manifest["constants"]]
    directions = free_directions(constants)
    limits_covered(function, directions, report)
    if not directions:
        return False
    rng = draw.generator(seed, function)
    jumps = {}
    for i in range(draws):
        found = function.accepted(rng)
        if found is None:
            break
        call, plain = found
        exact = i % 2 == 0
        base = base_factors(directions, exact, rng)
        other = scaled(call, base)
        outcome = other.run()
        said = ", ".join(f"{n} x {x:.6g}" for n, x in zip(BASE, base))
        if outcome.code != draw.OK:
            report.breach(
                (function.name,),
                f"{function.name}(): what it takes in SI it refuses in other units ({said}; "
                f"seed {seed}, draw {i}): {outcome.text}",
            )
            continue
        moving = None
        for leaf in other.outs:
            if leaf.key not in outcome.outputs:
                continue
            unit, named = leaf.item["unit"], leaf._replace(index=None)
            grown = factor(unit, base) if leaf.code == "d" else 1.0
            before, after = plain.outputs[leaf.key], outcome.outputs[leaf.key]
            x = off(after, before * grown)
            report.compared += 1
            if x <= (0 if leaf.code != "d" else EXACT if exact else GENERAL):
                kind = "powers of two" if exact else "any factors"
                report.deviation(kind, x, f"{function.name}() {named}")
                continue
            if (function.name, str(named)) in report.known:
                continue
            if not exact and moving is None:
                moving = restless(other, outcome.outputs, rng)
            if not exact and leaf.key in moving:
                jumps[str(named)] = jumps.get(str(named), 0) + 1
                report.excused += 1
                continue
            ratio = f"{after / before:.12g}" if before else f"from 0 to {after:g}"
            report.breach(
                (function.name, str(named)),
                f"{function.name}(): with {said}, output {leaf} [{unit}] changed by a factor of "
                f"{ratio}; its unit promises {grown:.12g} "
                f"(seed {seed}, draw {i}, from {before!r} to {after!r}).",
            )
    report.functions += 1
    report.draws += function.kept
    for name, times in jumps.items():
        if times > SELDOM * draws:
            report.breach(
                (function.name, name),
                f"{function.name}(): output {name} hangs on the last bits of the inputs in "
                f"{times} of {draws} draws, too often to compare it.",
            )
    return True


def convert(function, seed, draws, report):
    """A conversion against the exact ratio of the units; False if UCUM gives no ratio."""
    given, back = function.manifest["params"][0]["unit"], function.manifest["returns"]["unit"]
    try:
        (to_si, powers), (from_si, others) = parse(given), parse(back)
    except ValueError:
        return False
    if powers != others or len(function.params) != 1:
        report.breach(
            (function.name,), f"{function.name}(): [{given}] and [{back}] are not of one kind."
        )
        return True
    rng = draw.generator(seed, function)
    for i in range(draws):
        found = function.accepted(rng)
        if found is None:
            break
        call, outcome = found
        (x,), (got,) = call.values.values(), outcome.outputs.values()
        absolute = (Fraction(x) - ZERO.get(given, 0)) * to_si / from_si
        want = absolute + ZERO.get(back, 0)
        # The way over a zero costs the digits of the zero.
        size = max(abs(want), -ZERO.get(given, 0) * to_si / from_si, -ZERO.get(back, 0))
        error = float(abs(Fraction(got) - want) / size) if size else float(got != 0)
        report.compared += 1
        report.deviation("conversions", error, function.name)
        if error > CONVERSION:
            report.breach(
                (function.name,),
                f"{function.name}(): {x!r} [{given}] became {got!r} [{back}], but is "
                f"{float(want)!r} by the definitions of UCUM (seed {seed}, draw {i}).",
            )
    report.functions += 1
    report.draws += function.kept
    return True


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--draws", type=int, default=200)
    options.add_argument("patterns", nargs="*", help="names of functions or topics, with * and ?")
    options = options.parse_args()
    interface = draw.Interface()
    functions, left = interface.functions(options.patterns)
    report, pinned, curved = Report(), [], []
    print(f"seed {options.seed}, {options.draws} draws of each function")
    for function in functions:
        if function.manifest["topic"] == "units":
            if not convert(function, options.seed, options.draws, report):
                curved.append(function.name)
        elif not check(function, options.seed, options.draws, report):
            pinned.append(function.name)
        if function.tried and function.starved():
            report.breach((function.name, "share"), function.starved())
    for words, names in (
        ("no base unit is free, for their constants hold all four", pinned),
        ("no product of units defines the conversion", curved),
        ("pointers to pointers or text go in", left),
    ):
        if names:
            print(f"not tested, {words}: {', '.join(names)}")
    for kind, (x, where) in report.worst.items():
        print(f"worst deviation, {kind}: {x:.2g} {where}")
    print("\n".join(report.sentences), end="\n" if report.sentences else "")
    print(
        f"{report.functions} functions, {report.draws} draws, {report.compared} outputs compared, "
        f"{report.excused} too ill-conditioned to compare: {len(report.sentences)} breaches"
    )
    return 1 if report.sentences or not report.compared else 0


if __name__ == "__main__":
    sys.exit(main())
