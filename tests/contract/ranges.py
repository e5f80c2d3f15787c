"""Holds every documented range to the library, from both sides.

From accepted inputs, each number in turn takes hostile values and both sides of
each of its documented limits. What the manifest puts outside must be refused by
name; what it puts inside must give finite results or a documented error. Pointers
are NULL in turn. The calls run in a child process, so that a crash or a hang is
reported with the call that was being made. Each refusal must say the number in the
unit that is documented: of an input that no result depends on, or of rad beside 1,
the sentence is all that tells it.

    python3 ranges.py [--seed N] [--draws N] [PATTERN...]

Exit status 1 and one sentence for each breach.
"""

import argparse
import ctypes
import faulthandler
import math
import mmap
import os
import re
import signal
import sys
import time

import draw
from draw import INVALID_ARGUMENT, OK

PATIENCE = 60  # seconds for one call, sanitized and on a busy machine
TINY, HUGE = 5e-324, sys.float_info.max
HOSTILE = (
    math.nan, math.inf, -math.inf, 0.0, -0.0, TINY, -TINY, HUGE, -HUGE, 1e300, -1e300,
)
EXTREMES = (0.0, TINY, 1e-300, 1e-200, 1e-100, 1e100, 1e200, 1e300, HUGE, -1e200, -HUGE)
TOGETHER = 60
# Longer arrays than this are only refused, not filled.
LONGEST = 100000

ISO_3448 = (
    2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
)
# What rounding may move a rule by, relative to its terms.
SLIGHT = 1e-12

# The units of the conversions, as a shop writes them in the library's sentences.
TRADE = {
    "in": "[in_i]", "thou": "[mil_i]", "psi": "[psi]", "ksi": "10*3.[psi]", "cSt": "mm2/s",
    "cP": "mPa.s", "gal/min": "[gal_us]/min", "in3": "[cin_i]", "lbf": "[lbf_av]",
    "lbf.ft": "[lbf_av].[ft_i]", "lbf.in": "[lbf_av].[in_i]", "hp": "[HP]", "r/s": "1/s",
    "r/min": "1/min", "degC": "Cel", "degF": "[degF]",
}
# The end of every sentence that a check writes: the number, and its unit unless it has none.
IT_IS = re.compile(r"; it is (-?[\d.]+(?:e[-+]\d+)?|-?inf|-?nan)(?: (\S+))?\.$")


def says_unit(text, unit, topic):
    """Whether a sentence gives the unit that is documented, and no other."""
    written = IT_IS.search(text)
    if written:
        said = written[2] or "1"
        return (TRADE.get(said, said) if topic == "units" else said) == (unit or "1")
    # A sentence of the function's own names the unit somewhere, as a word.
    plain = rf"(?<![\w.(/]){re.escape(unit or '1')}(?!\.?[\w(/])"
    return unit in (None, "1") or re.search(plain, text) is not None


def above(x, limit):
    """By how much x is above its limit, relative to the greater."""
    size = max(abs(x), abs(limit))
    if math.isinf(size):
        return math.copysign(1.0, x - limit)
    return (x - limit) / size if size else 0.0


def half_turn(v):
    angles = v("small_dwell") + v("rise") + v("large_dwell") + v("fall")
    return abs(angles - math.pi) - 1e-6


def thickens(v):
    warmer = v("temperature_2") - v("temperature_1")
    return above(v("viscosity_2"), v("viscosity_1")) * math.copysign(1, warmer) if warmer else 0.0


def slots_meet(v, radius):
    return above(v("slot_width") * v("vanes"), 2 * math.pi * radius)


def no_grade(v):
    return -1.0 if v("grade") in ISO_3448 else 1.0


def no_whole_rows(v):
    return 1.0 if v("elements") % v("readings") else -1.0


def no_power(v):
    return above(0.0, v("x")) or 1.0 if v("model") in (4, 5) else -1.0


# Of each model for curves.
COEFFICIENTS = (2, 3, 5, 2, 3, 3, 2, 3, 4, 7, 3, 4)


# The rules between several parameters that the documentation says in words, for a range cannot:
# the words, which must stand in what the manifest says of the item, and by how much the rule is
# broken, where v gives the parameter or field of a name beside it. What breaks one must be
# refused; and only what breaks one may be, though its own range holds it.
RULES = {
    "vane_ring.fall": ("the four angles add up to pi", half_turn),
    "vane_parts.outlet_close": (
        "at most pi + inlet_open", lambda v: above(v("outlet_close"), math.pi + v("inlet_open")),
    ),
    "vane_parts.notch": (
        "at most outlet_open - inlet_close",
        lambda v: above(v("notch"), v("outlet_open") - v("inlet_close")),
    ),
    "vane_parts.tip_radius": (
        "at least half the thickness", lambda v: above(v("vane_thickness") / 2, v("tip_radius")),
    ),
    "vane_parts.vanes": ("even", lambda v: 1.0 if v("vanes") % 2 else -1.0),
    "vane_parts.slot_width": (
        "that of all slots less than 2 pi groove_outer",
        lambda v: slots_meet(v, v("groove_outer")),
    ),
    "vane_parts.vane_height": (
        "greater than ring.large_radius - rotor_radius; slot_width times vanes less than "
        "2 pi (ring.small_radius - vane_height)",
        lambda v: max(
            above(v("ring.large_radius") - v("rotor_radius"), v("vane_height")),
            slots_meet(v, v("ring.small_radius") - v("vane_height")),
        ),
    ),
    "temperature_2": (
        "not the first", lambda v: 1.0 if v("temperature_1") == v("temperature_2") else -1.0,
    ),
    "viscosity_2": ("not higher if hotter", thickens),
    "vane_oil_grade_viscosity.grade": ("number of ISO 3448", no_grade),
    "vane_oil_grade_minimum.grade": ("number of ISO 3448", no_grade),
    "vane_oil_grade_maximum.grade": ("number of ISO 3448", no_grade),
    "vane_oil_from_grade.grade": ("number of ISO 3448", no_grade),
    "vane_displacement_roots_outlet.vanes": (
        "times vane_thickness less than pi (large_radius + small_radius)",
        lambda v: above(
            v("vanes") * v("vane_thickness"), math.pi * (v("large_radius") + v("small_radius"))
        ),
    ),
    "vane_fit_linear.elements": ("a multiple of readings", no_whole_rows),
    "vane_fit_robust.elements": ("a multiple of readings", no_whole_rows),
    "weights": ("readings, or 0", lambda v: -1.0 if v("weights") in (0, v("readings")) else 1.0),
    "coefficients": (
        "as many as the model has",
        lambda v: -1.0 if v("coefficients") == COEFFICIENTS[v("model") - 1] else 1.0,
    ),
    "vane_fit_curve.x": ("above 0 for a power", no_power),
    "vane_fit_curve_at.x": ("above 0 for a power", no_power),
    "vane_measure_combine.elements": (
        "sources^2, or 0",
        lambda v: -1.0 if v("elements") in (0, v("sources") ** 2) else 1.0,
    ),
    # One element cannot tell: it hangs on all the others.
    "vane_measure_combine.correlation": ("one that quantities can have", lambda v: 0.0),
}


def rule_of(leaf):
    """The rule in words of a number, or None."""
    return next((r for r in (leaf.rule, leaf.rule.split(".")[1]) if r in RULES), None)


class Report:
    def __init__(self, board):
        self.board = board
        self.sentences, self.known = [], set()
        self.functions = self.calls = self.inside = self.outside = self.excepted = 0
        self.used = set()

    def making(self, words):
        """Leaves the call that is about to be made where the parent finds it."""
        self.calls += 1
        raw = words.encode()[: len(self.board) - 1] + b"\0"
        self.board[: len(raw)] = raw

    def breach(self, key, sentence):
        if key not in self.known:
            self.known.add(key)
            self.sentences.append(sentence)


def nothing(leaf, x):
    return math.isnan(x) if leaf.code == "d" else x == 0


def same(a, b):
    return a == b or math.isnan(a) and math.isnan(b)


def values_for(function, leaf, values):
    """What a number is tried with: hostile values, and its limits from both sides."""
    limits = [function.limit(leaf, side, values) for side in ("low", "high")]
    if leaf.code == "d":
        tried = list(HOSTILE)
        for x in limits:
            if x is not None:
                tried += [math.nextafter(x, -math.inf), x, math.nextafter(x, math.inf)]
        return tried
    most = 2 ** (draw.BITS[leaf.code] - 1)
    tried = {-most, -most + 1, -1, 0, 1, most - 2, most - 1}
    for x in limits:
        if x is not None:
            tried |= {math.ceil(x) - 1, math.ceil(x), math.floor(x), math.floor(x) + 1}
    return sorted(x for x in tried if -most <= x < most)


def said(outcome):
    if outcome.code == OK:
        return "accepts it"
    return f"answers code {outcome.code} for '{outcome.name}', element {outcome.index}"


class Trial:
    """One accepted draw of a function, and what becomes of it."""

    def __init__(self, function, call, outcome, where, report):
        self.function, self.call, self.report = function, call, report
        self.good, self.where = outcome, where
        self.leaves = call.inner
        self.named = {
            (x.name, -1 if x.index is None else x.index): x for x in self.leaves.values()
        }
        self.params = {p["name"]: p for p in function.params}
        self.names = {*(x.name for x in self.leaves.values()), *self.params, "result"}
        self.ruled = [x for x in self.leaves.values() if rule_of(x)]
        for leaf in self.ruled:
            words = RULES[rule_of(leaf)][0]
            if words not in " ".join(leaf.item["text"].split()):
                self.breach(
                    leaf, "words",
                    f"{leaf} is held to a rule that its documentation does not give: '{words}'.",
                )
        self.readers = {}
        for leaf in self.leaves.values():
            for key in function.references(leaf):
                self.readers.setdefault(key, []).append(leaf)

    def breach(self, leaf, kind, sentence):
        self.report.breach(
            (self.function.name, getattr(leaf, "name", leaf), kind),
            f"{self.function.name}(): {sentence} ({self.where})",
        )

    def likes(self, leaf):
        """What the others of its unit in the same record are: equals divide by zero."""
        if leaf.code != "d":
            return []
        scope = leaf.key[1:2] + leaf.fields[:-1] + ((leaf.param,) if leaf.fields else ())
        return sorted({
            self.call.values[y.key]
            for y in self.leaves.values()
            if y.code == "d" and y.item["unit"] == leaf.item["unit"] and y.key != leaf.key
            and y.key[1:2] + y.fields[:-1] + ((y.param,) if y.fields else ()) == scope
        })

    def accepted(self):
        """What was drawn inside every range gives results inside theirs."""
        values = {**self.call.values, **self.good.outputs}
        for leaf in self.call.outs:
            if leaf.key not in values:
                continue
            x, enum = values[leaf.key], self.function.interface.enums.get(leaf.item.get("enum"))
            if leaf.code == "d" and not math.isfinite(x) or x == draw.POISON[leaf.code]:
                self.breach(leaf, "written", f"output {leaf} is {x!r}, though the call succeeds.")
            elif leaf.item.get("range") and not self.function.admits(leaf, values):
                self.breach(
                    leaf, "output",
                    f"output {leaf} is {x!r}, outside its documented range "
                    f"'{leaf.item['range']['text']}'.",
                )
            elif enum:
                known = [v["value"] for v in enum["values"]]
                if x & ~sum(known) if leaf.item["set"] else x not in known:
                    self.breach(leaf, "enum", f"output {leaf} is {x}, no value of {enum['name']}.")
        self.bare(self.good, None, "drawn inputs")

    def bare(self, outcome, leaf, words):
        """The same call without an error record comes to the same."""
        again = self.call.run(error=False)
        if again.code is not None and again.code != outcome.code or not all(
            same(x, outcome.outputs[key]) for key, x in again.outputs.items()
        ):
            self.breach(leaf, "bare", f"{words}: without an error record the outcome differs.")

    def run(self, words):
        self.report.making(f"{self.function.name}() with {words} ({self.where})")
        return self.call.run()

    def violated(self, *changed):
        """Leaves outside their documented ranges, when some have been changed."""
        near = {y.key: y for x in changed for y in (x, *self.readers.get(x.key, ()))}
        return [x for x in near.values() if not self.function.admits(x, self.call.values)]

    def attack(self, leaf, x, bare):
        before = self.call.values[leaf.key]
        if leaf.param in self.function.lengths:
            if not self.lengthen(leaf, x, bare):
                return
        self.call.set(leaf, x)
        words = f"{leaf} = {x!r}"
        outcome, out = self.run(words), self.violated(leaf)
        if out:
            self.report.outside += 1
            self.refused(leaf, x, words, outcome, out)
        else:
            self.report.inside += 1
            self.taken(leaf, words, outcome)
        self.outputs(leaf, words, outcome)
        self.beyond(leaf, words, outcome)
        if bare:
            self.bare(outcome, leaf, words)
        self.call.set(leaf, before)

    def together(self, rng):
        """Two or three extremes at once: each may be harmless by itself."""
        changed = [x for x in self.leaves.values() if x.code == "d"]
        changed = rng.sample(changed, min(len(changed), rng.choice((2, 2, 3))))
        before = [(leaf, self.call.values[leaf.key]) for leaf in changed]
        for leaf in changed:
            x = self.call.values[leaf.key]
            self.call.set(leaf, rng.choice((*EXTREMES, x * 1e150, x * 1e-150)))
        words = ", ".join(f"{x} = {self.call.values[x.key]!r}" for x in changed)
        outcome, out = self.run(words), self.violated(*changed)
        # A rule in words, or an earlier element of a map, may be what is refused first.
        first = min((x.index or 0 for x in out), default=0) > outcome.index >= 0
        if not out or first or self.excuse(outcome):
            self.report.inside += 1
            self.taken(None, words, outcome)
        else:
            self.report.outside += 1
            self.refused(None, None, words, outcome, out)
        self.outputs(None, words, outcome)
        for leaf, x in before:
            self.call.set(leaf, x)

    def lengthen(self, leaf, x, first):
        """Whether the arrays at hand can have a length; once they repeat themselves to reach it."""
        if not self.function.admits(leaf, {**self.call.values, leaf.key: x}):
            return True
        held = self.call.values[leaf.key]
        if x <= held:
            return True
        # Of an array without elements there is nothing to repeat.
        if first and held and x <= LONGEST:
            values = dict(self.call.values)
            for key, value in self.call.values.items():
                if self.params[key[0]]["length"] == leaf.param:
                    for i in range(key[1] + held, x, held):
                        values[(key[0], i, key[2])] = value
            values[leaf.key] = x
            call, self.call = self.call, draw.Call(self.function, values, self.call.null)
            outcome = self.run(f"{leaf} = {x}")
            self.taken(leaf, f"{leaf} = {x}", outcome)
            self.outputs(leaf, f"{leaf} = {x}", outcome)
            self.call = call
        return False

    def refused(self, leaf, x, words, outcome, out):
        right = {(y.name, -1 if y.index is None else y.index) for y in out}
        wanted = " or ".join(sorted(map(str, out)))
        if outcome.code != INVALID_ARGUMENT:
            self.breach(
                leaf, "outside",
                f"{words} puts {wanted} outside the documented range, yet it {said(outcome)}.",
            )
        elif (outcome.name, outcome.index) not in right:
            self.breach(
                leaf, "name",
                f"{words} must be refused by the name of {wanted}, but it {said(outcome)}.",
            )
        elif outcome.name not in outcome.text:
            self.breach(leaf, "text", f"{words}: the sentence does not name it: {outcome.text!r}.")
        elif not self.says_unit(outcome):
            unit = self.named[outcome.name, outcome.index].item["unit"]
            self.breach(
                leaf, "unit",
                f"{words}: {outcome.name} is documented in [{unit}], but the sentence says: "
                f"{outcome.text!r}",
            )
        elif leaf and out == [leaf] and not same(outcome.value, float(x)):
            self.breach(leaf, "value", f"{words}: error.value is {outcome.value!r}.")

    def says_unit(self, outcome):
        unit = self.named[outcome.name, outcome.index].item["unit"]
        return says_unit(outcome.text, unit, self.function.manifest["topic"])

    def taken(self, leaf, words, outcome):
        if outcome.code == OK:
            for y in self.ruled:
                if self.broken(y) > SLIGHT:
                    self.breach(
                        leaf, "rule",
                        f"{words} breaks a documented rule of {y}, "
                        f"'{RULES[rule_of(y)][0]}', yet it is accepted.",
                    )
            for y in self.call.outs:
                if y.code == "d" and not math.isfinite(outcome.outputs.get(y.key, 0.0)):
                    self.breach(
                        leaf, "finite", f"{words} is accepted, but output {y} is not finite."
                    )
        elif not isinstance(outcome.code, int) or outcome.code < 0:
            self.breach(leaf, "code", f"{words}: the function returns {outcome.code}.")
        elif not outcome.name or not outcome.text:
            self.breach(leaf, "silent", f"{words} is refused without a name or a reason.")
        elif outcome.name not in self.names:
            self.breach(
                leaf, "stranger", f"{words}: the error names '{outcome.name}', no parameter."
            )
        elif outcome.code == INVALID_ARGUMENT:
            rule = self.excuse(outcome)
            if rule:
                self.report.used.add(rule)
                self.report.excepted += 1
                if not self.says_unit(outcome):
                    self.breach(
                        leaf, "unit",
                        f"{words}: the unit of {outcome.name} is not in the sentence: "
                        f"{outcome.text!r}",
                    )
            else:
                self.breach(
                    leaf, "inside",
                    f"{words} is inside every documented range, yet it {said(outcome)}: "
                    f"{outcome.text}",
                )

    def outputs(self, leaf, words, outcome):
        """On failure NaN and 0; of a map over arrays, for the element at fault."""
        if outcome.code == OK:
            return
        mapped = {}
        for y in self.call.outs:
            if y.key not in outcome.outputs:
                continue
            x = outcome.outputs[y.key]
            length = self.length_of(y)
            if isinstance(length, str):
                # Where the length itself is refused, no element can be reached.
                count = self.call.inner[(length, None, ())]
                at = self.call.values[count.key]
                if y.index >= at or not self.function.admits(count, self.call.values):
                    continue
                if y.index != outcome.index >= 0:
                    mapped.setdefault(y.index, []).append((y, x))
                    continue
            if not nothing(y, x):
                self.breach(leaf, "remains", f"{words} fails, but output {y} is {x!r}.")
        for i, element in mapped.items():
            whole = all(math.isfinite(x) and x != draw.POISON[y.code] for y, x in element)
            if not whole and not all(nothing(y, x) for y, x in element):
                self.breach(leaf, "half", f"{words} fails and leaves half a result at element {i}.")

    def excuse(self, outcome):
        """The broken rule in words that a refusal rests on, or None."""
        leaf = self.named.get((outcome.name, outcome.index))
        if outcome.code != INVALID_ARGUMENT or not leaf:
            return None
        # Of a number that is no number nothing can be told.
        return rule_of(leaf) if rule_of(leaf) and not self.broken(leaf) < -SLIGHT else None

    def broken(self, leaf):
        """By how much the rule in words of a number is broken."""

        def beside(name):
            path = tuple(name.split("."))
            if path == (leaf.param,):
                return self.call.values[leaf.key]
            if leaf.fields:
                return self.call.values[(leaf.param, leaf.index, leaf.fields[:-1] + path)]
            return self.call.values[(path[0], None, path[1:])]

        return RULES[rule_of(leaf)][1](beside)

    def length_of(self, leaf):
        return self.params.get(leaf.param, {}).get("length")

    def beyond(self, leaf, words, outcome):
        """Elements past a length made shorter are not written."""
        for y in self.call.outs:
            if self.length_of(y) == leaf.param and y.index >= self.call.values[leaf.key]:
                if outcome.outputs.get(y.key, draw.POISON[y.code]) != draw.POISON[y.code]:
                    self.breach(leaf, "beyond", f"{words}, yet output {y} is written.")

    def longest(self, name):
        """Both sides of the limit of a length that no array at hand can have.

        The arrays are NULL: which of the two is refused shows whether the length is.
        """
        leaf = self.leaves[(name, None, ())]
        most, held = self.function.limit(leaf, "high", self.call.values), self.call.values[leaf.key]
        if most is None or most <= LONGEST:
            return
        arrays = [p["name"] for p in self.function.params if p["length"] == name]
        for x, blamed in ((int(most), arrays), (int(most) + 1, [name])):
            words = f"{name} = {x} and NULL for {' and '.join(arrays)}"
            self.report.making(f"{self.function.name}() with {words} ({self.where})")
            self.call.values[leaf.key] = x
            outcome = self.call.run(null=arrays)
            if outcome.code != INVALID_ARGUMENT or outcome.name not in blamed:
                self.breach(
                    leaf, "longest",
                    f"{words} must be refused by the name of {' or '.join(blamed)}, but it "
                    f"{said(outcome)}.",
                )
        self.call.values[leaf.key] = held

    def null(self, param):
        name = param["name"]
        if name in self.call.null:
            return
        words = f"{name} = NULL"
        self.report.making(f"{self.function.name}() with {words} ({self.where})")
        outcome = self.call.run(null=[name])
        # So may an array without elements.
        if param["optional"] or self.function.count(param, self.call.values) == 0:
            if outcome.code != OK or not all(
                same(x, self.good.outputs[key]) for key, x in outcome.outputs.items()
            ):
                self.breach(name, "optional", f"{words} may be, but then the outcome differs.")
            return
        if (outcome.code, outcome.name, outcome.index) != (INVALID_ARGUMENT, name, -1):
            self.breach(name, "null", f"{words}: it {said(outcome)}.")
        self.outputs(None, words, outcome)
        again = self.call.run(error=False, null=[name])
        if again.code not in (None, INVALID_ARGUMENT):
            self.breach(name, "null", f"{words} without an error record returns {again.code}.")


def check(function, seed, draws, report):
    rng = draw.generator(seed, function)
    for i in range(draws):
        where = f"seed {seed}, draw {i}"
        report.making(f"{function.name}() with drawn inputs ({where})")
        found = function.accepted(rng)
        if found is None:
            break
        trial = Trial(function, *found, where, report)
        trial.accepted()
        chosen = {}
        for leaf in trial.leaves.values():
            # One element of each array.
            if leaf.index is not None:
                count = function.count(trial.params[leaf.param], trial.call.values)
                if chosen.setdefault(leaf.param, rng.randrange(count)) != leaf.index:
                    continue
            for x in values_for(function, leaf, trial.call.values) + trial.likes(leaf):
                trial.attack(leaf, x, bare=i == 0)
        for name in function.lengths:
            trial.longest(name)
        for _ in range(TOGETHER):
            trial.together(rng)
        for param in function.params:
            if "*" in param["type"]:
                trial.null(param)
        if trial.run("drawn inputs again") != trial.good and not math.isnan(trial.good.value):
            trial.breach(None, "again", "the same call a second time comes to something else.")
    if function.starved():
        report.breach((function.name, "share"), function.starved())
    report.functions += 1


def others(interface, report):
    """Defaults take NULL; texts take any number."""
    for function in interface.manifest["functions"]:
        name, params = function["name"], function["params"]
        c = getattr(interface.library, name)
        if function["kind"] == "defaults":
            report.making(f"{name}(NULL)")
            c.restype, c.argtypes = None, [ctypes.c_void_p]
            c(None)
        elif function["kind"] == "text":
            c.restype, c.argtypes = ctypes.c_char_p, [ctypes.c_int32] * len(params)
            for x in (-(2**31), -1, 0, 1, 3, 2**31 - 1):
                report.making(f"{name}({x})")
                if not c(*[x] * len(params)):
                    report.breach((name, x), f"{name}({x}) returns no text.")
        else:
            continue
        report.functions += 1


def work(options, board):
    faulthandler.enable()
    interface = draw.Interface()
    functions, left = interface.functions(options.patterns)
    report = Report(board)
    print(f"seed {options.seed}, {options.draws} draws of each function")
    for function in functions:
        check(function, options.seed, options.draws, report)
    if not options.patterns:
        others(interface, report)
    line, nameless = draw.undrawn(left)
    print(line, end="\n" if line else "")
    for sentence in nameless:
        report.breach(sentence, sentence)
    print(f"rules in words that refused what the ranges hold, {report.excepted} times:")
    for rule in sorted(report.used):
        print(f"    {rule}: {RULES[rule][0]}")
    print("\n".join(report.sentences), end="\n" if report.sentences else "")
    print(
        f"{report.functions} functions, {report.calls} calls, {report.outside} values outside "
        f"and {report.inside} inside the ranges: {len(report.sentences)} breaches"
    )
    return 1 if report.sentences or not report.calls else 0


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--draws", type=int, default=4)
    options.add_argument("patterns", nargs="*", help="names of functions or topics, with * and ?")
    options = options.parse_args()
    board = mmap.mmap(-1, 1024)
    child = os.fork()
    if child == 0:
        status = 1
        try:
            status = work(options, board)
        except BaseException:
            sys.excepthook(*sys.exc_info())
        finally:
            sys.stdout.flush()
            os._exit(status)
    last, since = b"", time.monotonic()
    while True:
        done, status = os.waitpid(child, os.WNOHANG)
        if done:
            break
        if board[:] != last:
            last, since = board[:], time.monotonic()
        elif time.monotonic() - since > PATIENCE:
            os.kill(child, signal.SIGKILL)
        time.sleep(0.05)
    call = board[:].split(b"\0")[0].decode()
    if os.WIFSIGNALED(status):
        kind = signal.Signals(os.WTERMSIG(status)).name
        print(f"{call}: the call does not return, but ends in {kind}.")
        return 1
    if os.WEXITSTATUS(status) not in (0, 1):
        # A sanitizer ends the process with a status of its own.
        print(f"{call}: the call does not return, but ends the process.")
    return os.WEXITSTATUS(status)


if __name__ == "__main__":
    sys.exit(main())
