"""Runs examples/ffi in every language that is there: all must print the same bytes.

Each language is '--', its name and the command that runs its example. Without a
command, or if that exits with 77, the language is missing, which is told and
forgiven, but not of C++ and Python.

    python3 same.py -- C++ ./flow_cpp -- Python python3 flow.py -- Rust
"""

import math
import re
import subprocess
import sys

NEEDED = {"C++", "Python"}
SKIPPED = 77
PRESSURES = [20.0 * step for step in range(1, 11)]

NUMBER = r" *(-?\d+(?:\.\d+)?)"
SIDE = re.compile(rf"side clearance{NUMBER} um, standard uncertainty{NUMBER} um")
HEADING = "  bar    L/min      slip   eta_v"
ROW = re.compile(NUMBER * 4)
GAPS = re.compile(rf"three gaps:{NUMBER}{NUMBER}{NUMBER} L/min")
REFUSAL = "refused: gap must be "


def languages(arguments):
    """{name: command} of what stands between the dashes."""
    found, command = {}, None
    for word in arguments:
        if word == "--":
            command = None
        elif command is None:
            command = found.setdefault(word, [])
        else:
            command.append(word)
    return found


class Missing(Exception):
    """Why a language cannot be run here."""


def run(command):
    """What the command prints, or the reason why that is nothing to compare."""
    if not command:
        raise Missing("it is missing")
    try:
        done = subprocess.run(command, capture_output=True, timeout=120)
    except (OSError, subprocess.TimeoutExpired) as reason:
        return None, str(reason)
    if done.returncode == SKIPPED:
        raise Missing(done.stderr.decode("utf-8", "replace").strip())
    sys.stderr.buffer.write(done.stderr)
    if done.returncode != 0:
        return None, f"exit status {done.returncode}"
    return done.stdout, None


def first_difference(output, other):
    pairs = zip(output.splitlines() + [None], other.splitlines() + [None])
    for number, (line, wanted) in enumerate(pairs, 1):
        if line != wanted:
            return f"line {number} is {line!r}, not {wanted!r}"
    return "the ends of the lines differ"


def numbers(pattern, line):
    match = pattern.fullmatch(line)
    return [float(number) for number in match.groups()] if match else []


def faults(output):
    """What no sound pump prints; each a sentence."""
    lines = output.decode("utf-8", "replace").split("\n")
    if len(lines) != 15 or lines[-1]:
        yield "There are not 14 whole lines."
        return
    if len(numbers(SIDE, lines[0])) != 2 or lines[1] != HEADING:
        yield "The clearance or the heading does not read."
    rows = [numbers(ROW, line) for line in lines[2:12]]
    if any(len(row) != 4 for row in rows):
        yield "A row does not hold four numbers."
        return
    pressure, flow, slip, efficiency = map(list, zip(*rows))
    if pressure != PRESSURES:
        yield "The pressures are not 20, 40, ... 200 bar."
    if slip != sorted(set(slip)) or slip[0] <= 0 or flow[::-1] != sorted(set(flow)):
        yield "Slip does not rise, or flow does not fall, with pressure."
    if not all(0.85 < value < 1 for value in efficiency):
        yield "A volumetric efficiency is that of no sound pump."
    gaps = numbers(GAPS, lines[12])
    # Flow goes with the third power of the gap.
    if len(gaps) != 3 or not math.isclose(gaps[2], 64 * gaps[0], rel_tol=1e-4):
        yield "The flows through the three gaps do not read, or are not as their cubes."
    if not lines[13].startswith(REFUSAL):
        yield "The gap of -1 is not refused by name."


def main(arguments):
    outputs, failed = {}, False
    for name, command in languages(arguments[1:]).items():
        try:
            output, reason = run(command)
        except Missing as reason:
            print(f"{name} was NOT run: {reason}.")
            continue
        if reason:
            failed = True
            print(f"{name} failed: {reason}.")
        else:
            outputs[name] = output
    for name in sorted(NEEDED - outputs.keys()):
        failed = True
        print(f"{name} is needed, and did not run.")
    if outputs:
        reference, expected = next(iter(outputs.items()))
        for sentence in faults(expected):
            failed = True
            print(f"{reference}: {sentence}")
        for name, output in outputs.items():
            if output != expected:
                failed = True
                print(f"{name} differs from {reference}: {first_difference(output, expected)}.")
    print(f"{len(outputs)} languages ran: {', '.join(outputs)}")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
