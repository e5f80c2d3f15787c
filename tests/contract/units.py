"""Holds every documented unit to the numbers.

A formula that is right in SI is right in any coherent units. So metre, kilogram,
second and kelvin are made longer or shorter at random, every input is written in
the new units as its documentation says, and every output must come out in them:

- of a build whose constants are written in the new units too (lib/dimension.h,
  scaled.h), for every function and for the records' defaults;
- of the library itself, as far as the function's documented constants leave the
  units free: a constant that no one documented shows;
- and of the library itself it must not come out in units that change a documented
  constant alone: one that is not there shows.

Conversions are held to the definitions of UCUM instead.

    python3 units.py [--seed N] [--draws N] [PATTERN...]

VANE_SCALED_LIBRARY names the other build; without it CC, or else gcc, cc or clang,
compiles one. Exit status 1 and one sentence for each breach; 77 if no breach was
found, but no compiler either.
"""

import argparse
import contextlib
import ctypes
import math
import os
import pathlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile
from fractions import Fraction

import draw

# Half of the draws use powers of two, which cost no digit by themselves: what is
# left is what roots, powers and logarithms of the scaled numbers round.
EXACT, GENERAL = 1e-12, 1e-9
# Of a conversion: a constant worked out in doubles, and one product.
CONVERSION = 1e-15
# A constant that is in its place is off by whole factors.
CHANGED = 1e-6
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


POWERS = {}


def factor(unit, base):
    """By how much a number grows when the base units of its unit shrink."""
    if unit in (None, "1"):
        return 1.0
    if unit not in POWERS:
        POWERS[unit] = parse(unit)[1]
    grown, powers = 1.0, POWERS[unit]
    for by, power in zip(base, powers):
        grown *= by**power
    return grown


class Report:
    def __init__(self):
        self.sentences, self.known = [], set()
        self.functions = self.draws = self.compared = self.excused = self.constants = 0
        self.worst = dict.fromkeys(("powers of two", "any factors", "conversions"), (0.0, ""))

    def breach(self, key, sentence):
        if key not in self.known:
            self.known.add(key)
            self.sentences.append(sentence)

    def deviation(self, kind, x, where):
        self.worst[kind] = max(self.worst[kind], (x, where))


class Build:
    """The library as it is shipped, or the one whose base units are variables."""

    def __init__(self, interface, words, variable=False):
        self.interface, self.words = interface, words
        self.functions = {f.name: f for f in interface.functions()[0]}
        self.bases = variable and [
            ctypes.c_double.in_dll(interface.library, f"vane_scaled_{name}")
            for name in ("metre", "kilogram", "second", "kelvin")
        ]

    @contextlib.contextmanager
    def sized(self, base):
        """Its base units smaller by these factors, so that its numbers are greater."""
        for variable, x in zip(self.bases or (), base):
            variable.value = x
        try:
            yield
        finally:
            for variable in self.bases or ():
                variable.value = 1.0

    def scaled(self, call, base):
        """The call with every input written in the new units."""
        values = dict(call.values)
        for leaf in call.inner.values():
            if leaf.code == "d":
                values[leaf.key] *= factor(leaf.item["unit"], base)
        return draw.Call(self.functions[call.function.name], values, call.null)


def compile_scaled(work):
    """The library with variable base units, compiled from the sources; None without a compiler."""
    here = pathlib.Path(__file__).resolve().parent
    source = here.parents[1]
    wanted = os.environ.get("CC", "").split() or next(
        ([c] for c in ("gcc", "cc", "clang") if shutil.which(c)), []
    )
    if not wanted or not shutil.which(wanted[0]):
        return None
    found = ["-lgsl", "-lgslcblas"]
    if shutil.which("pkg-config"):
        asked = subprocess.run(
            ["pkg-config", "--cflags", "--libs", "gsl"], capture_output=True, text=True
        )
        found = asked.stdout.split() or found
    library, headers = f"{work}/libscaled.so", sorted(source.glob("include/vane/*.h"))
    table = [sys.executable, source / "lib" / "array_table.py", f"{work}/array_table.h", *headers]
    subprocess.run(table, check=True)
    subprocess.run(
        [
            *wanted, "-std=c11", "-O1", "-ffp-contract=off", "-fPIC", "-shared",
            '-DVANE_VERSION="0"', "-include", here / "scaled.h",
            f"-I{source / 'include'}", f"-I{source / 'lib'}", f"-I{work}",
            here / "scaled.c", *sorted(source.glob("lib/*.c")), "-o", library, *found, "-lm",
        ],
        check=True,
    )
    return library


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


def on_limit(call):
    """Whether a number stands on a limit with a dimension, where rounding would put it outside."""
    return any(
        x != 0 and x == call.values[leaf.key] and leaf.item["unit"] not in (None, "1")
        for leaf in call.inner.values()
        for x in (call.function.limit(leaf, side, call.values) for side in ("low", "high"))
        if x is not None
    )


def compare(build, found, base, exact, where, jumps, rng, report):
    """Whether the outputs of a call come out in other base units as their units promise."""
    call, plain = found
    function = call.function
    said = ", ".join(f"{n} x {x:.6g}" for n, x in zip(BASE, base))
    with build.sized(base):
        other = build.scaled(call, base)
        outcome = other.run()
        if outcome.code != draw.OK:
            report.breach(
                (function.name,),
                f"{function.name}(): what it takes in SI {build.words} refuses in other units "
                f"({said}; {where}): {outcome.text}",
            )
            return
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
                f"{function.name}(): with {said}, output {leaf} [{unit}] of {build.words} changed "
                f"by a factor of {ratio}; its unit promises {grown:.12g} "
                f"({where}, from {before!r} to {after!r}).",
            )


def alone(unit, others):
    """Directions that change one constant's unit and, if any does, none of the others'."""
    powers = parse(unit)[1]
    for held in ([x for x in others if x != unit], []):
        found = [
            v for v in free_directions(held) if sum(a * b for a, b in zip(powers, v))
        ]
        if found:
            return found[:1]
    return []


def holds(build, found, directions, rng):
    """Whether the library's own constants show, when inputs are written in other units."""
    call, plain = found
    base = base_factors(directions, True, rng)
    other = build.scaled(call, base)
    outcome = other.run()
    return outcome.code != draw.OK or any(
        off(outcome.outputs[leaf.key], plain.outputs[leaf.key] * factor(leaf.item["unit"], base))
        > CHANGED
        for leaf in other.outs
        if leaf.key in outcome.outputs
    )


def check(function, seed, draws, shipped, variable, report):
    constants = sorted({c["unit"] for c in function.manifest["constants"]})
    directions = free_directions(constants)
    limits_covered(function, directions, report)
    wanted = {unit: alone(unit, constants) for unit in constants if parse(unit)[1] != PLAIN}
    for unit in set(constants) - set(wanted):
        report.breach((function.name, unit), f"{function.name}(): [{unit}] has no dimension.")
    rng = draw.generator(seed, function)
    jumps = {}
    for i in range(draws):
        found = function.accepted(rng)
        if found is None:
            break
        exact = i % 2 == 0 or on_limit(found[0])
        where = f"seed {seed}, draw {i}"
        if variable:
            base = base_factors(free_directions([]), exact, rng)
            compare(variable, found, base, exact, where, jumps, rng, report)
        # Of a function without constants the other build is the same one: now and then will do.
        if directions and (constants or not variable or i % 8 < 2):
            base = base_factors(directions, exact, rng)
            compare(shipped, found, base, exact, where, jumps, rng, report)
        for unit in list(wanted):
            if holds(shipped, found, wanted[unit], rng):
                del wanted[unit]
                report.constants += 1
    for unit in wanted:
        report.breach(
            (function.name, unit),
            f"{function.name}(): the documented constant in {unit} is not needed: results scale "
            "as if it were not there.",
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


def check_defaults(function, seed, draws, shipped, variable, report):
    """The defaults of a record, which are constants all, in other base units."""
    name, (param,) = function["name"], function["params"]
    kind = param["type"].rstrip(" *")
    size = shipped.interface.records[kind]["size"]
    leaves = shipped.interface.flat(kind, param, name)
    rng = draw.random.Random(f"{seed} {name}")

    def filled(build):
        buffer = ctypes.create_string_buffer(size)
        c = getattr(build.interface.library, name)
        c.restype, c.argtypes = None, [ctypes.c_void_p]
        c(ctypes.addressof(buffer))
        return [struct.unpack_from(code, buffer, at)[0] for _, _, at, code, _ in leaves]

    plain = filled(shipped)
    for i in range(draws):
        exact = i % 2 == 0
        base = base_factors(free_directions([]), exact, rng)
        with variable.sized(base):
            again = filled(variable)
        for (fields, item, _, code, _), before, after in zip(leaves, plain, again):
            grown = factor(item["unit"], base) if code == "d" else 1
            report.compared += 1
            if off(after, before * grown) > (EXACT if exact else GENERAL):
                report.breach(
                    (name, fields),
                    f"{name}(): {'.'.join(fields)} [{item['unit']}] changed from {before!r} to "
                    f"{after!r}; its unit promises a factor of {grown:.12g} (seed {seed}).",
                )
    report.functions += 1


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


def run(options, shipped, variable):
    functions, left = shipped.interface.functions(options.patterns)
    report, curved = Report(), []
    print(f"seed {options.seed}, {options.draws} draws of each function")
    for function in functions:
        if function.manifest["topic"] == "units":
            if not convert(function, options.seed, options.draws, report):
                curved.append(function.name)
        else:
            check(function, options.seed, options.draws, shipped, variable, report)
        if function.starved():
            report.breach((function.name, "share"), function.starved())
    for function in shipped.interface.manifest["functions"]:
        if function["kind"] == "defaults" and variable and not options.patterns:
            check_defaults(function, options.seed, 20, shipped, variable, report)
    line, nameless = draw.undrawn(left)
    print(line, end="\n" if line else "")
    for sentence in nameless:
        report.breach(sentence, sentence)
    for name in curved:
        report.breach((name,), f"{name}(): UCUM defines no product of units that it converts by.")
    for kind, (x, where) in report.worst.items():
        print(f"worst deviation, {kind}: {x:.2g} {where}")
    print("\n".join(report.sentences), end="\n" if report.sentences else "")
    print(
        f"{report.functions} functions, {report.draws} draws, {report.compared} outputs compared, "
        f"{report.excused} too ill-conditioned to compare, {report.constants} documented constants "
        f"found: {len(report.sentences)} breaches"
    )
    if report.sentences or not report.compared:
        return 1
    if not variable:
        print("SKIPPED: no compiler, so no build with other base units.", file=sys.stderr)
        return 77
    return 0


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--draws", type=int, default=160)
    options.add_argument("patterns", nargs="*", help="names of functions or topics, with * and ?")
    options = options.parse_args()
    shipped = Build(draw.Interface(), "the library")
    with tempfile.TemporaryDirectory() as work:
        library = os.environ.get("VANE_SCALED_LIBRARY") or compile_scaled(work)
        variable = library and Build(
            draw.Interface(library), "the build with other base units", variable=True
        )
        return run(options, shipped, variable)


if __name__ == "__main__":
    sys.exit(main())
