"""Admissible random inputs for every function of the manifest, and the calls.

Nothing here knows a function: types, offsets, ranges, units and lengths are the
manifest's, so a new topic is drawn the day it is documented. What ranges cannot
say, such as angles that add up to half a turn, stands in the hints at the end.

VANE_LIBRARY and VANE_MANIFEST name the shared library and its manifest; without
them those of the Python package are taken.
"""

import ctypes
import fnmatch
import json
import math
import os
import random
import re
import struct
from collections import namedtuple

CODES = {"double": "d", "int32_t": "i", "int64_t": "q"}
BITS = {"i": 32, "q": 64}
SCALARS = {"d": ctypes.c_double, "i": ctypes.c_int32, "q": ctypes.c_int64}
# What no result is: an output that still holds it was not written.
POISON = {"d": 1.2345678e-77, "i": 0x5A5A5A5A, "q": 0x5A5A5A5A5A5A5A5A}

OK, INVALID_ARGUMENT = 0, 1

# Sizes met round a vane pump, by unit; other units are composed from these.
SIZES = {
    "1": (1e-2, 1e1),
    "rad": (1e-2, 3.0),
    "m": (1e-6, 1e-1),
    "m2": (1e-6, 1e-2),
    "m3": (1e-6, 1e-3),
    "s": (1e-3, 1e3),
    "kg": (1e-2, 1e2),
    "K": (280.0, 380.0),
    "Pa": (1e5, 3e7),
    "N": (1e1, 1e5),
    "N/m": (1e7, 1e9),
    "N.m": (1e0, 1e3),
    "W": (1e2, 1e5),
    "J": (1e0, 1e4),
    "Hz": (1e0, 1e4),
    "Pa.s": (2e-3, 2e-1),
    "m2/s": (3e-6, 5e-4),
    "m3/s": (1e-7, 1e-2),
    "m/s": (1e-2, 1e1),
    "1/s": (5.0, 60.0),
    "kg/m3": (800.0, 900.0),
    "1/K": (1e-6, 1e-3),
    "1/Pa": (5e-9, 3e-8),
    "J/(kg.K)": (1500.0, 2500.0),
}


def size(unit):
    unit = unit or "1"
    if unit not in SIZES:
        low = high = 1.0
        for sign, power, atom, exponent in factors(unit):
            middle = math.sqrt(math.prod(SIZES.get(atom, (1.0, 1.0))))
            low *= middle ** (sign * power)
        SIZES[unit] = low / 3, low * 3
    return SIZES[unit]


def factors(unit):
    """('m3/(s.Pa)') -> the signs, powers and atoms of a unit with one '/' at most."""
    for sign, side in zip((1, -1), unit.split("/")):
        for atom, power in re.findall(r"([A-Za-z]+)(\d*)", side):
            yield sign, int(power or 1), atom, power


class Leaf(namedtuple("Leaf", "param index fields item offset code owner")):
    """One number: a parameter, a field of a record, an element of an array."""

    __slots__ = ()

    @property
    def key(self):
        return self.param, self.index, self.fields

    @property
    def name(self):
        """As an error names it."""
        return ".".join((self.param, *self.fields))

    @property
    def rule(self):
        """As its documentation is found: vane_ring.fall, vane_slot_flow.gap."""
        return f"{self.owner}.{self.fields[-1] if self.fields else self.param}"

    def __str__(self):
        return self.name if self.index is None else f"{self.name}[{self.index}]"


Outcome = namedtuple("Outcome", "code name index value text outputs")


class Interface:
    """The manifest and the library that it describes."""

    def __init__(self, library=None):
        manifest, library = os.environ.get("VANE_MANIFEST"), library or os.environ.get("VANE_LIBRARY")
        if not manifest or not library:
            from vane import _where

            manifest, library = manifest or _where.MANIFEST, library or _where.LIBRARY
        with open(manifest, encoding="utf-8") as file:
            self.manifest = json.load(file)
        self.library = ctypes.CDLL(library)
        self.records = {r["name"]: r for r in self.manifest["records"]}
        self.enums = {e["name"]: e for e in self.manifest["enums"]}
        error = self.records["vane_error"]
        self.error_size = error["size"]
        self.error_at = {f["name"]: f["offset"] for f in error["fields"]}

    def functions(self, patterns=()):
        """Formulas and procedures, and the names of those whose types cannot be drawn."""
        made, left = [], []
        for function in self.manifest["functions"]:
            named = [function["name"], function["topic"]]
            wanted = any(fnmatch.fnmatch(n, p) for n in named for p in patterns)
            if function["kind"] not in ("formula", "procedure") or patterns and not wanted:
                continue
            if any(p["type"].count("*") > 1 or "char" in p["type"] for p in function["params"]):
                left.append(function["name"])
            else:
                made.append(Function(self, function))
        return made, left

    def flat(self, kind, item, owner, fields=(), offset=0):
        """Every number of a type: its fields, item, offset, code and owner."""
        if kind in CODES:
            return [(fields, item, offset, CODES[kind], owner)]
        return [
            number
            for f in self.records[kind]["fields"]
            if f["type"] != "char"
            for number in self.flat(
                f["type"], f, kind, (*fields, f["name"]), offset + f["offset"]
            )
        ]


class Function:
    def __init__(self, interface, manifest):
        self.interface, self.manifest = interface, manifest
        self.name = manifest["name"]
        self.formula = manifest["kind"] == "formula"
        self.params = [p for p in manifest["params"] if p["name"] != "error"]
        self.plain = {p["name"]: p["type"].replace("const ", "").rstrip(" *") for p in self.params}
        self.flats = {
            p["name"]: interface.flat(self.plain[p["name"]], p, self.name) for p in self.params
        }
        self.sizes = {
            name: interface.records[kind]["size"] if kind in interface.records
            else struct.calcsize(CODES[kind])
            for name, kind in self.plain.items()
        }
        self.lengths = {p["length"] for p in self.params if isinstance(p["length"], str)}
        self.tried = self.kept = 0
        self.c = getattr(interface.library, self.name)
        self.c.restype = ctypes.c_double if self.formula else ctypes.c_int32
        self.c.argtypes = [
            ctypes.c_void_p if "*" in p["type"] else SCALARS[CODES[p["type"]]]
            for p in self.params
        ] + [ctypes.c_void_p]

    def count(self, param, values):
        length = param["length"]
        return values[(length, None, ())] if isinstance(length, str) else length

    def leaves(self, direction, values):
        """Every number that goes in, or comes out, of a call."""
        found = []
        for param in self.params:
            if param["direction"] not in (direction, "inout"):
                continue
            name, count = param["name"], self.count(param, values)
            for i in [None] if count is None else range(count):
                base = (i or 0) * self.sizes[name]
                found += [
                    Leaf(name, i, fields, item, base + offset, code, owner)
                    for fields, item, offset, code, owner in self.flats[name]
                ]
        if self.formula and direction == "out":
            found.append(Leaf("result", None, (), self.manifest["returns"], 0, "d", self.name))
        return found

    def limit(self, leaf, side, values):
        """The number that bounds a leaf on one side, or None."""
        limit = (leaf.item.get("range") or {}).get(side)
        if not isinstance(limit, dict):
            return limit
        return limit["times"] * values[self.referred(leaf, limit)]

    def referred(self, leaf, limit):
        path = tuple(limit["of"].split("."))
        if leaf.fields:
            return leaf.param, leaf.index, leaf.fields[:-1] + path
        return path[0], None, path[1:]

    def references(self, leaf):
        for side in ("low", "high"):
            limit = (leaf.item.get("range") or {}).get(side)
            if isinstance(limit, dict):
                yield self.referred(leaf, limit)

    def admits(self, leaf, values):
        """Whether the documented range holds the leaf's value."""
        x, item = values[leaf.key], leaf.item.get("range") or {}
        low, high = self.limit(leaf, "low", values), self.limit(leaf, "high", values)
        return (
            abs(x) < math.inf
            and (low is None or x > low or x == low and not item["low_open"])
            and (high is None or x < high or x == high and not item["high_open"])
        )

    def draw(self, rng):
        """Values for one call, each inside its range: ({key: value}, names that are NULL)."""
        values = {}
        for name in self.lengths:
            low, high = 1, 6
            for param in self.params:
                if param["length"] == name:
                    low, high = COUNTS.get(self.plain[param["name"]], (low, high))
            values[(name, None, ())] = rng.randint(low, high)
        null = {p["name"] for p in self.params if p["optional"] and rng.random() < 0.2}
        for name, x in FUNCTIONS.get(self.name, lambda rng: {})(rng).items():
            values[name if isinstance(name, tuple) else (name, None, ())] = x
        leaves = {leaf.key: leaf for leaf in self.leaves("in", values)}
        for param in self.params:
            name, kind = param["name"], self.plain[param["name"]]
            if kind not in self.interface.records or param["direction"] == "out":
                continue
            count = self.count(param, values)
            if kind in ARRAYS and count is not None:
                rows = ARRAYS[kind](rng, count)
            else:
                rows = [self.hinted(kind, rng) for _ in range(1 if count is None else count)]
            for i, row in enumerate(rows):
                for path, x in row.items():
                    key = name, None if count is None else i, tuple(path.split("."))
                    # A hint for a field that is no more must not hide the rest.
                    if key in leaves:
                        values[key] = x
        for leaf in leaves.values():
            self.fill(leaf, leaves, values, rng)
        return values, null

    def hinted(self, kind, rng):
        if kind in RECORDS:
            return RECORDS[kind](rng)
        return {
            f"{f['name']}.{path}": x
            for f in self.interface.records[kind]["fields"]
            if f["type"] in self.interface.records
            for path, x in self.hinted(f["type"], rng).items()
        }

    def fill(self, leaf, leaves, values, rng):
        if leaf.key in values:
            return
        for key in self.references(leaf):
            self.fill(leaves[key], leaves, values, rng)
        low, high = self.limit(leaf, "low", values), self.limit(leaf, "high", values)
        if leaf.code == "d":
            values[leaf.key] = real(leaf.item, low, high, rng)
        else:
            values[leaf.key] = self.integer(leaf.item, low, high, rng)

    def integer(self, item, low, high, rng):
        low = -(2**31) if low is None else math.ceil(low)
        high = 2**31 - 1 if high is None else math.floor(high)
        enum = self.interface.enums.get(item["enum"], {"values": []})
        known = [v["value"] for v in enum["values"]]
        if item["set"]:
            return min(max(sum(v for v in known if rng.random() < 0.5), low), high)
        known = [v for v in known if low <= v <= high]
        return rng.choice(known) if known else rng.randint(low, min(high, low + 99))

    def accepted(self, rng, tries=60):
        """(call, its outcome) of values that the library takes, or None after many tries."""
        for _ in range(tries):
            values, null = self.draw(rng)
            call = Call(self, values, null)
            self.tried += 1
            outcome = call.run()
            if outcome.code == OK:
                self.kept += 1
                return call, outcome
        return None

    def starved(self):
        """A sentence where too few draws were taken for the test to mean much, or None."""
        if self.kept >= 0.2 * self.tried > 0:
            return None
        return (
            f"{self.name}(): only {self.kept} of {self.tried} inputs drawn from the manifest "
            "are accepted; it needs a hint in draw.py."
        )


def between(low, high, rng):
    """Over decades where there are some, else evenly."""
    if low > 0 and high > 10 * low:
        return math.exp(rng.uniform(math.log(low), math.log(high)))
    return rng.uniform(low, high)


def real(item, low, high, rng):
    least, most = size(item["unit"])
    limits = item["range"]
    closed = [x for x, side in ((low, "low"), (high, "high"))
              if x is not None and not limits[side + "_open"]]
    if closed and rng.random() < 0.03:
        return rng.choice(closed)
    if low is None and high is None:
        return between(least, most, rng) * (-1 if rng.random() < 0.3 else 1)
    if high is None:
        # Above another parameter: near it as often as far.
        if low > 0 and (most <= 1.01 * low or rng.random() < 0.5):
            return low * (1 + between(1e-2, 2, rng))
        if low < 0 and rng.random() < 0.2:
            return low * rng.uniform(0, 0.99)
        return between(max(least, low * 1.001), most, rng)
    if low is None:
        return high - between(least, most, rng)
    inner, outer = max(low, min(least, high)), min(high, most)
    if low == 0 and inner < outer and rng.random() < 0.5:
        low, high = inner, outer
    return between(low, high, rng)


class Call:
    """The arguments of one call in memory, as C sees them."""

    def __init__(self, function, values, null=()):
        self.function, self.values, self.null = function, dict(values), set(null)
        self.outs = function.leaves("out", values)
        self.inner = {leaf.key: leaf for leaf in function.leaves("in", values)}
        self.buffers, self.poison = {}, {}
        for param in function.params:
            if "*" in param["type"]:
                count = function.count(param, values)
                room = function.sizes[param["name"]] * (1 if count is None else count)
                self.buffers[param["name"]] = ctypes.create_string_buffer(room)
        for leaf in self.inner.values():
            self.put(leaf, values[leaf.key])
        for leaf in self.outs:
            if leaf.param in self.buffers:
                self.put(leaf, POISON[leaf.code])
        for leaf in self.outs:
            if leaf.param in self.buffers:
                self.poison[leaf.param] = self.buffers[leaf.param].raw
        self.error = ctypes.create_string_buffer(function.interface.error_size)

    def put(self, leaf, x):
        if leaf.param in self.buffers:
            struct.pack_into(leaf.code, self.buffers[leaf.param], leaf.offset, x)

    def set(self, leaf, x):
        self.values[leaf.key] = x
        self.put(leaf, x)

    def argument(self, param, null):
        name = param["name"]
        if name not in self.buffers:
            return self.values[(name, None, ())]
        return None if name in null else ctypes.addressof(self.buffers[name])

    def run(self, error=True, null=()):
        """Outcome of the call; without an error record, its code is that of a procedure."""
        function, null = self.function, self.null | set(null)
        for name, raw in self.poison.items():
            ctypes.memmove(self.buffers[name], raw, len(raw))
        where = ctypes.addressof(self.error) if error else None
        if error:
            ctypes.memset(self.error, 0x5A, len(self.error))
        returned = function.c(*(self.argument(p, null) for p in function.params), where)
        outputs = {
            leaf.key: returned if leaf.param not in self.buffers
            else struct.unpack_from(leaf.code, self.buffers[leaf.param], leaf.offset)[0]
            for leaf in self.outs
            if leaf.param not in null
        }
        if not error:
            return Outcome(None if function.formula else returned, "", -1, 0.0, "", outputs)
        at, raw = function.interface.error_at, self.error.raw
        code = struct.unpack_from("i", raw, at["code"])[0]
        if not function.formula and code != returned:
            code = f"{returned} beside error.code {code}"
        words = [
            raw[at[n] : at[n] + room].split(b"\0")[0].decode(errors="replace")
            for n, room in (("name", 48), ("text", 160))
        ]
        return Outcome(
            code,
            words[0],
            struct.unpack_from("q", raw, at["index"])[0],
            struct.unpack_from("d", raw, at["value"])[0],
            words[1],
            outputs,
        )


# What takes pointers to pointers or text, which none of this draws, and what holds it instead.
UNDRAWN = {"vane_array_run": "the test 'array' holds it to the formulas, bit by bit"}


def undrawn(left):
    """A line for what was left out with a reason, and a breach for each that has none."""
    named = [f"{name} ({UNDRAWN[name]})" for name in left if name in UNDRAWN]
    return (
        f"not drawn: {', '.join(named)}" if named else "",
        [
            f"{name}(): its types cannot be drawn, and draw.py names nothing that tests it instead."
            for name in left
            if name not in UNDRAWN
        ],
    )


# What ranges cannot say, each as small as it can be.

# A fit needs more readings than coefficients; a map of few duties shows what one of many does.
COUNTS = {"vane_reading": (12, 24), "vane_duty": (1, 2)}


def ring(rng):
    """The four angles of a lobe add up to half a turn."""
    part = [rng.uniform(*limits) for limits in ((0.5, 1), (1, 2), (0.5, 1), (1, 2))]
    angle = [math.pi * x / sum(part) for x in part]
    large = between(0.02, 0.08, rng)
    return {
        "large_radius": large,
        "small_radius": large * rng.uniform(0.85, 0.95),
        "width": large * rng.uniform(0.4, 1.2),
        **dict(zip(("small_dwell", "rise", "large_dwell", "fall"), angle)),
    }


def parts(rng):
    """Parts that fit into each other: radii from the bore outward, ports in turn."""
    turn = ring(rng)
    large, small, width = turn["large_radius"], turn["small_radius"], turn["width"]
    rotor = small * rng.uniform(0.96, 0.999)
    bore, inner, outer = (rotor * rng.uniform(*x) for x in ((0.3, 0.4), (0.45, 0.55), (0.6, 0.7)))
    vanes = rng.choice((8, 10, 12))
    thickness = 2 * math.pi * outer / vanes * rng.uniform(0.08, 0.15)
    land = math.pi / vanes
    return {
        **{f"ring.{name}": x for name, x in turn.items()},
        "rotor_radius": rotor,
        "rotor_width": width * (1 - between(1e-3, 1e-2, rng)),
        "vane_width": width * (1 - between(1e-3, 1e-2, rng)),
        "vane_thickness": thickness,
        "slot_width": thickness * (1 + between(1e-3, 3e-2, rng)),
        "vane_height": (large - rotor) * rng.uniform(1.3, 1.6) + 0.1 * rotor,
        "vane_density": rng.uniform(7000, 8000),
        "tip_radius": thickness * rng.uniform(0.55, 0.9),
        "tip_film": between(3e-7, 3e-6, rng),
        "plate_bore": bore,
        "groove_inner": inner,
        "groove_outer": outer,
        "shaft_radius": bore * rng.uniform(0.98, 0.999),
        "shaft_gap": between(1e-5, 1e-4, rng),
        "shaft_length": width * rng.uniform(0.5, 1),
        "inlet_open": land * rng.uniform(0.9, 1.1),
        "inlet_close": math.pi / 2 - land * rng.uniform(1, 1.2),
        "outlet_open": math.pi / 2 + land * rng.uniform(1, 1.2),
        "outlet_close": math.pi - land * rng.uniform(0.9, 1.1),
        "notch": land * rng.uniform(0, 0.5),
        "seal_friction": rng.uniform(100, 300),
        "slot_friction": rng.uniform(0, 0.15),
        "tip_friction": rng.uniform(0, 0.15),
        "vanes": vanes,
    }


def two_points(rng):
    """Oil thins as it warms; either point may come first."""
    thick = between(2e-5, 3e-4, rng)
    cold = {"temperature": rng.uniform(290, 320), "viscosity": thick}
    hot = {"temperature": rng.uniform(350, 380), "viscosity": thick * rng.uniform(0.1, 0.3)}
    points = rng.sample((cold, hot), 2)
    return {f"{name}_{i}": x for i, p in enumerate(points, 1) for name, x in p.items()}


def width(rng):
    """Parts that belong together differ by little, and what errs alike is part of what errs."""
    uncertainty = between(1e-7, 1e-5, rng)
    return {
        "mean": rng.uniform(0.0238, 0.0242),
        "uncertainty": uncertainty,
        "systematic": uncertainty * rng.uniform(0, 1),
    }


def width_limits(rng):
    """Limits near what the widths above come to, or every part would be judged alike."""
    return {
        **{f"ring_{part}_low": rng.uniform(-4e-4, 0) for part in ("rotor", "vane")},
        **{f"ring_{part}_high": rng.uniform(1e-5, 4e-4) for part in ("rotor", "vane")},
        **{f"{part}_least": rng.uniform(0.0236, 0.0241) for part in ("ring", "rotor", "vane")},
        "coverage": rng.uniform(1, 3),
    }


def joint(rng):
    """A nut factor of 0 stands for the friction of thread and bearing instead."""
    return {"nut_factor": rng.choice((0.0, rng.uniform(0.1, 0.3)))}


def readings(rng, count):
    """Plans that tell the terms of the slip law apart, some at one speed, with some scatter."""
    displacement, leak = between(1e-5, 1e-4, rng), between(5e-14, 2e-12, rng)
    speeds = rng.choice(((12, 24), (12, 24), (25,)))
    plan = [(n, dp, t) for dp in (2e6, 7e6, 1.4e7) for n in speeds for t in (300, 340)]
    rows = []
    for i in range(count):
        speed, dp, temperature = (x * rng.uniform(0.99, 1.01) for x in plan[i % len(plan)])
        inlet = rng.uniform(-2e4, 5e4)
        slip = leak * dp * (temperature / 300) ** 8
        rows.append({
            "speed": speed,
            "pressure": inlet + dp,
            "inlet_pressure": inlet,
            "temperature": temperature,
            "flow": max((displacement * speed - slip) * rng.uniform(0.999, 1.001), 0.0),
        })
    return rows


def grade(rng):
    """The numbers of ISO 3448 that have a usual viscosity index."""
    return {"grade": float(rng.choice((10, 15, 22, 32, 46, 68, 100, 150, 220, 320)))}


def index_points(rng):
    """Oils whose viscosity index is a usual one."""
    hot = between(3e-6, 1e-4, rng)
    return {"viscosity_100": hot, "viscosity_40": hot * rng.uniform(4, 12)}


def columns(rng):
    """Whole rows, and more of them than columns."""
    count = rng.randint(1, 3)
    rows = count + rng.randint(3, 9)
    return {"readings": rows, "weights": rng.choice((0, rows)), "elements": count * rows}


def polynomial(rng):
    """More readings than coefficients."""
    degree = rng.randint(0, 3)
    rows = degree + rng.randint(3, 9)
    return {"readings": rows, "weights": rng.choice((0, rows)), "degree": degree}


def power_law(rng):
    """Readings that a curve can be laid through, and where to begin."""
    scale, power, places = rng.uniform(0.5, 5), rng.uniform(0.5, 2), range(7)
    x = [rng.uniform(1, 9) for _ in places]
    return {
        "model": 4, "coefficients": 2, "readings": 7, "weights": 7,
        **{("x", i, ()): x[i] for i in places},
        **{("y", i, ()): scale * x[i] ** power * rng.uniform(0.98, 1.02) for i in places},
        **{("uncertainty", i, ()): rng.uniform(0.5, 2) for i in places},
        ("start", 0, ()): scale * rng.uniform(0.7, 1.4), ("start", 1, ()): power,
    }


def sources(rng):
    """Sources of which each pair is correlated alike, as any quantities may be."""
    count, r = rng.randint(1, 5), rng.uniform(0, 1)
    return {
        "sources": count, "elements": count**2,
        **{("correlation", i, ()): 1.0 if i % (count + 1) == 0 else r for i in range(count**2)},
    }


def plate(rng):
    """Loaded to the outer edge: past all load the shear of a free edge is nothing but rounding."""
    outer = between(0.01, 0.2, rng)
    return {
        "inner_radius": rng.choice((0.0, outer * rng.uniform(0.1, 0.7))),
        "outer_radius": outer,
        "thickness": outer * rng.uniform(0.02, 0.3),
        "zone_outer": outer,
    }


def o_ring(rng):
    """A ring measured near a section there is: far from all, which is nearest hangs on rounding."""
    return {
        "inner_diameter": between(0.003, 0.5, rng),
        "section": rng.choice((1.78e-3, 2.62e-3, 3.53e-3, 5.33e-3)) * rng.uniform(0.95, 1.05),
        "diameter_uncertainty": between(1e-5, 1e-3, rng),
        "section_uncertainty": between(1e-5, 2e-4, rng),
    }


def fit_options(rng):
    """Steps enough to settle, and nothing that can be told apart taken for the same."""
    return {"rank_tolerance": between(1e-14, 1e-9, rng), "iterations": rng.randint(500, 2000)}


RECORDS = {
    "vane_ring": ring,
    "vane_parts": parts,
    "vane_oil": two_points,
    "vane_width": width,
    "vane_width_limits": width_limits,
    "vane_joint": joint,
    "vane_plate": plate,
    "vane_fit_options": fit_options,
}
ARRAYS = {"vane_reading": readings}
FUNCTIONS = {
    "vane_oil_walther": two_points,
    "vane_oil_walther_temperature": two_points,
    "vane_oil_d341": two_points,
    "vane_oil_d341_temperature": two_points,
    "vane_oil_index": index_points,
    "vane_oil_viscosity_100": lambda rng: {
        "viscosity_40": between(2e-5, 5e-4, rng), "index": rng.uniform(50, 180),
    },
    "vane_oil_grade_viscosity": grade,
    "vane_oil_grade_minimum": grade,
    "vane_oil_grade_maximum": grade,
    "vane_oil_from_grade": lambda rng: {**grade(rng), "viscosity_index": rng.uniform(80, 120)},
    "vane_thread_strength": lambda rng: {"diameter": rng.uniform(0.0064, 0.038)},
    "vane_thread_find": lambda rng: {"diameter": rng.choice((0.012, 0.0254))},
    "vane_joint_rectangle_order": lambda rng: rng.choice(
        ({"columns": 2, "bolts": 4}, {"columns": 3, "bolts": 8})
    ),
    "vane_seal_identify": o_ring,
    "vane_fit_linear": columns,
    "vane_fit_robust": lambda rng: {k: x for k, x in columns(rng).items() if k != "weights"},
    "vane_fit_polynomial": polynomial,
    "vane_fit_curve": power_law,
    "vane_fit_curve_at": lambda rng: {"model": 7, "coefficients": 2},
    "vane_measure_sample": lambda rng: {"readings": rng.randint(2, 9)},
    "vane_measure_correlation": lambda rng: {"readings": rng.randint(2, 9)},
    "vane_measure_combine": sources,
    "vane_stand_slip_fit": lambda rng: {"terms": rng.randint(0, 7)},
}


def generator(seed, function):
    """The same draws for a function whichever others are drawn."""
    return random.Random(f"{seed} {function.name}")
