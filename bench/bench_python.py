"""What the Python module costs: one call with numbers beside the same formula in Python, and
nanoseconds per element over arrays beside NumPy, in the same run. Fails if results disagree.

NumPy's best is the faster of two forms without temporaries, ufuncs in place over the whole array or
over blocks that stay in the cache. It checks nothing; vane checks every element of every argument.
"""

import math
import sys
import time

import numpy as np
import vane

TYPICAL = dict(width=0.020, gap=12.5e-6, length=0.005, dp=15e6, viscosity=8.6e-3, wall_speed=0.1)
SIZES = (1_000, 100_000, 10_000_000)
BLOCK = 8_192
ROUNDS = 7
SECONDS = 0.05  # one candidate, one round


def plain(width, gap, length, dp, viscosity, wall_speed):
    return width / length * (gap * gap * gap) / 12 * (dp / viscosity) + width * gap * (
        wall_speed / 2
    )


def checked(width, gap, length, dp, viscosity, wall_speed):
    """The same with the checks that the library makes."""
    if not (width > 0 and math.isfinite(width) and gap >= 0 and math.isfinite(gap)):
        raise ValueError
    if not (length > 0 and math.isfinite(length) and math.isfinite(dp)):
        raise ValueError
    if not (viscosity > 0 and math.isfinite(viscosity) and math.isfinite(wall_speed)):
        raise ValueError
    result = plain(width, gap, length, dp, viscosity, wall_speed)
    if not math.isfinite(result):
        raise OverflowError
    return result


def in_place(width, gap, length, dp, viscosity, wall_speed, out, scratch):
    np.multiply(gap, gap, out=out)
    np.multiply(out, gap, out=out)
    np.divide(width, length, out=scratch)
    np.multiply(out, scratch, out=out)
    np.divide(dp, viscosity, out=scratch)
    np.multiply(out, scratch, out=out)
    np.divide(out, 12, out=out)
    np.multiply(width, gap, out=scratch)
    np.multiply(scratch, wall_speed, out=scratch)
    np.multiply(scratch, 0.5, out=scratch)
    np.add(out, scratch, out=out)


def in_place_of_gap(width, gap, length, dp, viscosity, wall_speed, out, scratch):
    """All but the gap are numbers: two coefficients, by Horner's rule."""
    np.multiply(gap, gap, out=out)
    np.multiply(out, width / length / 12 * (dp / viscosity), out=out)
    np.add(out, width * wall_speed / 2, out=out)
    np.multiply(out, gap, out=out)


def in_blocks(work, arguments, out, scratch):
    for first in range(0, len(out), BLOCK):
        part = slice(first, first + BLOCK)
        block = out[part]
        work(
            *(a if isinstance(a, float) else a[part] for a in arguments),
            block,
            scratch[: len(block)],
        )


def fastest(candidates):
    """Seconds for one turn of each, by the fastest round; what disturbs only makes it slower."""
    turns, least = {}, dict.fromkeys(candidates, math.inf)
    for name, work in candidates.items():
        start = time.perf_counter()
        work()
        turns[name] = max(1, int(SECONDS / (time.perf_counter() - start)))
    for _ in range(ROUNDS):
        for name, work in candidates.items():
            start = time.perf_counter()
            for _ in range(turns[name]):
                work()
            taken = (time.perf_counter() - start) / turns[name]
            least[name] = min(least[name], taken)
    return least


def numbers():
    values = list(TYPICAL.values())
    took = fastest(
        {
            "vane, by position": lambda: vane.slot_flow(*values),
            "vane, by keyword": lambda: vane.slot_flow(**TYPICAL),
            "Python, unchecked": lambda: plain(*values),
            "Python, checked": lambda: checked(*values),
        }
    )
    print("one call with numbers, ns")
    for name, seconds in took.items():
        print(f"    {name:<18} {1e9 * seconds:7.0f}")
    call = took["vane, by position"]
    print(f"    vane / Python unchecked {call / took['Python, unchecked']:.2f}")
    print(f"    vane / Python checked   {call / took['Python, checked']:.2f}")
    return math.isclose(vane.slot_flow(*values), plain(*values), rel_tol=1e-14)


def ramp(n):
    return 1 + np.arange(n) % 64 / 64


def contiguous(n):
    return [value * ramp(n) for value in TYPICAL.values()], in_place


def repeated(n):
    arguments = list(TYPICAL.values())
    arguments[1] = arguments[1] * ramp(n)
    return arguments, in_place_of_gap


def strided(n):
    """Each argument a column of a table of three."""
    values = list(TYPICAL.values())
    tables = [np.empty(3 * n), np.empty(3 * n)]
    columns = [table[first::3] for table in tables for first in range(3)]
    for column, value in zip(columns, values):
        np.multiply(ramp(n), value, out=column)
    return columns, in_place


def arrays(name, layout, n):
    arguments, best = layout(n)
    out, scratch, blocks, own = (np.empty(n) for _ in range(4))
    short = np.empty(min(n, BLOCK))
    took = fastest(
        {
            "vane": lambda: vane.slot_flow(*arguments, out=own),
            "whole": lambda: best(*arguments, out, scratch),
            "blocks": lambda: in_blocks(best, arguments, blocks, short),
            "naive": lambda: plain(*arguments),
        }
    )
    took = {form: 1e9 * seconds / n for form, seconds in took.items()}
    fast = min(took["whole"], took["blocks"])
    print(
        f"    {name:<11} {n:>9,}  vane {took['vane']:6.2f}  in place {took['whole']:6.2f}"
        f"  by blocks {took['blocks']:6.2f}  naive {took['naive']:6.2f}"
        f"  vane/best {took['vane'] / fast:5.2f}  vane/naive {took['vane'] / took['naive']:5.2f}"
    )
    # The naive form has the library's order, and so its bits.
    return np.array_equal(own, plain(*arguments)) and all(
        np.allclose(own, other, rtol=1e-13, atol=0) for other in (out, blocks)
    )


def main():
    agree = numbers()
    print("arrays, ns per element")
    for layout in (contiguous, repeated, strided):
        for n in SIZES:
            agree &= arrays(layout.__name__, layout, n)
    if not agree:
        sys.exit("the results do not agree")


if __name__ == "__main__":
    main()
