"""Every formula of the manifest against its reference in mpmath.

    python3 accuracy.py [--draws N] [--seed S] [--jobs J] [--fast] [--page FILE]
                        [--verbose] [PATTERN...]

Inputs are drawn over the documented ranges, far beyond the sizes met round a
pump, and half of them near the limits and near each other. A result may be off
by 4 units in the last place, or by what the reference states with its reason.
A formula without a reference fails, and so does a reference without a formula.

VANE_LIBRARY and VANE_MANIFEST name the shared library and its manifest.
"""

import argparse
import concurrent.futures
import ctypes
import fnmatch
import math
import os
import pathlib
import random
import sys
import time

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
sys.dont_write_bytecode = True
sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "contract"))

import draw  # noqa: E402
import reference  # noqa: E402

# Below, results lose digits for want of exponents; above, products overflow on their way.
LEAST, MOST = 1e-280, 1e280
# A reference that comes to something else with more digits has too few.
SETTLED = 2.0**-70
BATCH = 1000


class Inputs:
    """Numbers for one call, from the ranges of the manifest."""

    def __init__(self, function, rng, special):
        self.function, self.rng, self.special = function, rng, special
        self.params = {p["name"]: p for p in function["params"] if p["name"] != "error"}

    def next(self):
        drawn = self.special(self.rng) if self.special else {}
        values = {name: float(x) for name, x in drawn.items() if name in self.params}
        self.wide = self.rng.choice((1, 1, 30, 1e6))
        for name in self.params:
            self.fill(name, values)
        return [float(values[name]) for name in self.params]

    def limit(self, limit, values):
        if not isinstance(limit, dict):
            return limit
        self.fill(limit["of"], values)
        return limit["times"] * values[limit["of"]]

    def fill(self, name, values):
        if name in values:
            return
        limits = self.params[name]["range"]
        low, high = self.limit(limits["low"], values), self.limit(limits["high"], values)
        for _ in range(100):
            x = self.number(self.params[name]["unit"], low, high)
            above = low is None or x > low or x == low and not limits["low_open"]
            below = high is None or x < high or x == high and not limits["high_open"]
            if above and below:
                break
        values[name] = x

    def number(self, unit, low, high):
        rng = self.rng
        least, most = draw.size(unit) if "[" not in unit else (1e-2, 1e3)
        wide = min(self.wide, 30) if unit == "K" else self.wide
        size = math.exp(rng.uniform(math.log(least / wide), math.log(most * wide)))
        if low is None and high is None:
            return rng.choice((size, size, size, size, -size, -size, 0.0))
        if high is None or low is None:
            sign, end = (1, low) if high is None else (-1, high)
            if end == 0:
                return sign * size if rng.random() < 0.97 else 0.0
            if rng.random() < 0.5 or abs(size) < abs(end):
                return end + sign * abs(end) * 10 ** rng.uniform(-9, 3)
            return sign * size if sign * end > 0 or rng.random() < 0.5 else -sign * size
        near = (high - low) * 10 ** rng.uniform(-12, 0)
        shares = [rng.uniform(low, high), low + near, high - near, low, high]
        if low >= 0 and high > 10 * least:
            shares.append(min(size, high))
        return rng.choices(shares, ([6, 2, 2, 0.2, 0.2, 4])[: len(shares)])[0]


class Trial:
    def __init__(self, function, library, *known):
        """known: a backend and its reference; where one comes to nothing the next is asked."""
        self.function, self.name, self.all_known = function, function["name"], known
        self.use(*known[0])
        self.run = library.vane_array_run
        self.worst, self.at, self.excess, self.kept, self.tried = 0.0, None, 0.0, 0, 0
        self.faults = []

    def use(self, backend, known):
        self.digits, self.number, self.known = backend.digits, backend.number, known

    def fault(self, text):
        if len(self.faults) < 3:
            self.faults.append(f"{self.name}(): {text}")

    def library(self, rows):
        columns = list(zip(*rows))
        arrays = [(ctypes.c_double * len(rows))(*column) for column in columns]
        pointers = (ctypes.c_void_p * len(arrays))(*map(ctypes.addressof, arrays))
        strides = (ctypes.c_int64 * len(arrays))(*[1] * len(arrays))
        out = (ctypes.c_double * len(rows))()
        self.run(self.name.encode(), len(rows), pointers, strides, out, None)
        return list(out)

    def exact(self, row):
        want = self.number(self.known(*map(self.number, row)))
        if not abs(want) < math.inf:
            raise ArithmeticError(want)
        return want

    def draws(self, seed, count):
        rng = random.Random(f"{seed} {self.name}")
        special = self.known.draw or draw.FUNCTIONS.get(self.name)
        inputs = Inputs(self.function, rng, special)
        while count > 0:
            rows = [inputs.next() for _ in range(min(count, BATCH))]
            count -= len(rows)
            self.tried += len(rows)
            for row, got in zip(rows, self.library(rows)):
                if LEAST < abs(got) < MOST or got == 0:
                    for known in self.all_known:
                        self.use(*known)
                        if self.compare(row, got, known is self.all_known[-1]):
                            break
        if self.kept < 0.1 * self.tried:
            self.fault(f"of {self.tried} inputs drawn {self.kept} are accepted: draw others.")

    def compare(self, row, got, last):
        """False where the reference comes to nothing but another is left."""
        self.digits(self.known.digits)
        try:
            want = self.exact(row)
            if self.kept % 50 == 0:
                self.digits(2 * self.known.digits)
                better = self.exact(row)
                if abs(better - want) > SETTLED * abs(better):
                    self.fault(f"the reference has too few digits at {self.said(row)}.")
        except (ArithmeticError, ValueError, TypeError) as error:
            if last:
                self.fault(f"{got!r} where the reference has nothing, {error!r}, "
                           f"at {self.said(row)}.")
            return last
        self.kept += 1
        if abs(want) < LEAST:
            if abs(got - want) > LEAST and not last:
                self.kept -= 1
                return False
            if abs(got - want) > LEAST:
                self.fault(f"{got!r} instead of 0 at {self.said(row)}.")
            return True
        scale = abs(float(want))
        if self.known.scale:
            scale = max(scale, float(self.known.scale(*map(self.number, row))))
        ulp = math.ulp(scale)
        off = abs(float(got - want)) / ulp
        if off > self.worst:
            self.worst, self.at = off, row
        if off > self.known.ulp and not self.excused(row, want, ulp, off):
            self.fault(f"{got!r} is {off:.3g} ulp off at {self.said(row)}.")
        return True

    def excused(self, row, want, ulp, off):
        """Whether inputs each off by an ulp would do as much."""
        if not self.known.conditioned:
            return False
        self.digits(self.known.digits + 30)
        want, step, moved = self.exact(row), 2.0**-70, 0.0
        values = list(map(self.number, row))
        for i, x in enumerate(values):
            if x == 0:
                continue
            for side in (1, -1):
                try:
                    beside = self.known(*values[:i], x + x * (side * step), *values[i + 1 :])
                    moved += float(abs(beside - want)) / step * 2.0**-52
                    break
                except (ArithmeticError, ValueError, TypeError):
                    continue
        share = (off - self.known.ulp) / (moved / ulp) if moved else math.inf
        self.excess = max(self.excess, share)
        return share <= self.known.conditioned

    def said(self, row):
        names = [p["name"] for p in self.function["params"]]
        return ", ".join(f"{n}={x!r}" for n, x in zip(names, row))


def work(name, seed, draws, fast):
    interface = draw.Interface()
    function = next(f for f in interface.manifest["functions"] if f["name"] == name)
    topic = function["topic"]
    short = name.removeprefix(f"vane_{topic}_")
    known = reference.topic(topic)[short]
    backends = [(reference.Mpmath, known)]
    # Special functions, and roots that take long, are mpmath's alone.
    if fast and not known.most and reference.Mpfr.prepare():
        backends.insert(0, (reference.Mpfr, reference.topic(topic, reference.Mpfr)[short]))
    trial = Trial(function, interface.library, *backends)
    start = time.monotonic()
    try:
        trial.draws(seed, min(draws, known.most or draws))
    except Exception as error:
        trial.fault(f"the reference breaks down: {error!r}")
    return {
        "name": name, "faults": trial.faults, "worst": trial.worst, "kept": trial.kept,
        "at": trial.said(trial.at or ()), "ulp": known.ulp, "reason": known.reason,
        "share": trial.excess, "conditioned": known.conditioned,
        "seconds": time.monotonic() - start, "fewer": known.most and known.most < draws,
    }


def table(manifest, patterns):
    """Names to try, and a sentence for each formula or reference that stands alone."""
    names, alone = [], []
    known = {t["name"]: reference.topic(t["name"]) for t in manifest["topics"]}
    met = {topic: set() for topic in known}
    for function in manifest["functions"]:
        if function["kind"] != "formula":
            continue
        topic, name = function["topic"], function["name"]
        short = name.removeprefix(f"vane_{topic}_")
        met[topic].add(short)
        if patterns and not any(fnmatch.fnmatch(n, p) for n in (topic, name) for p in patterns):
            continue
        if short not in known[topic]:
            alone.append(f"{name}() has no reference in tests/accuracy/{topic}.py.")
            continue
        params = tuple(p["name"] for p in function["params"][:-1])
        if known[topic][short].names != params:
            alone.append(f"The reference of {name}() does not take {', '.join(params)}.")
            continue
        names.append(name)
    for topic, references in known.items():
        alone += [f"tests/accuracy/{topic}.py: {name} is no formula."
                  for name in sorted(set(references) - met[topic])]
    return names, alone


PAGE = """# Digits {{#digits}}

Formulas are within 4 units in the last place (ulp) of the exact value over their documented range,
except for these. Each was held against the same formula in mpmath or MPFR, {draws} inputs each where no
other number stands, from far beyond the sizes met round a pump and half of them near the limits;
what lies below {least:.0e} or above {most:.0e} is left out.

A law that magnifies what its inputs are rounded by, as an exponential does, is allowed so many
ulp and, on top, some multiple of what it does to inputs that are each off by one ulp: c.

| formula | allowed, ulp | measured, ulp | over what is allowed | inputs | why |
|---|---|---|---|---|---|
"""


def page(path, results, draws):
    """The exceptions as a page of the documentation."""
    text = PAGE.format(draws=draws, least=LEAST, most=MOST)
    for r in results:
        if r["reason"] or r["fewer"]:
            allowed, over = f"{r['ulp']}", ""
            if r["conditioned"]:
                times = f"{r['conditioned']} " if r["conditioned"] != 1 else ""
                allowed += f" + {times}c"
                over = f"{r['share']:.2f} c" if r["share"] else ""
            fewer = r["kept"] if r["fewer"] else ""
            text += f"| `{r['name']}` | {allowed} | {r['worst']:.3g} | {over} | {fewer} | "
            text += f"{r['reason'] or 'slow to check'} |\n"
    pathlib.Path(path).write_text(text, encoding="utf-8")


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--draws", type=int, default=200)
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--jobs", type=int, default=os.cpu_count())
    options.add_argument("--fast", action="store_true", help="MPFR in place of mpmath")
    options.add_argument("--page", help="write the exceptions to this file, as documentation")
    options.add_argument("--verbose", action="store_true", help="every formula, not the exceptions")
    options.add_argument("patterns", nargs="*", help="names of formulas or topics, with * and ?")
    options = options.parse_args()
    names, faults = table(draw.Interface().manifest, options.patterns)
    count, kept, results = 0, 0, []
    with concurrent.futures.ProcessPoolExecutor(options.jobs) as pool:
        given = options.seed, options.draws, options.fast
        runs = [pool.submit(work, name, *given) for name in names]
        for run in runs:
            r = run.result()
            results.append(r)
            count, kept = count + 1, kept + r["kept"]
            faults += r["faults"]
            if options.verbose or r["reason"] or r["fewer"]:
                line = f"{r['name']}: {r['worst']:.2f} ulp"
                if r["reason"]:
                    line += f", {r['ulp']} allowed"
                    if r["conditioned"]:
                        line += f" and {r['conditioned']} times what an ulp of the inputs does"
                        line += f", at most {r['share']:.2f}"
                    line += f": {r['reason']}"
                if r["fewer"]:
                    line += f" ({r['kept']} inputs, for the reference is slow)"
                if options.verbose:
                    line += f" [{r['seconds']:.1f} s]"
                print(line)
    if options.page:
        page(options.page, results, options.draws)
    print("\n".join(faults), end="\n" if faults else "")
    print(f"{count} formulas, {kept} values, seed {options.seed}: {len(faults)} faults")
    return 1 if faults or not count else 0


if __name__ == "__main__":
    sys.exit(main())
