#!/usr/bin/env python3
"""Gives the rebuild sheet broken inputs, each made from a good one by one change, and looks
that it refuses each with exit status 2, one line that holds the expected word, and no sheet."""

import json
import os
import subprocess
import sys
import tempfile

rebuild, examples = map(os.path.abspath, sys.argv[1:3])

with open(os.path.join(examples, "worn.json"), encoding="utf-8") as file:
    good_job = file.read()
with open(os.path.join(examples, "worn.csv"), encoding="utf-8") as file:
    good_csv = file.read()


def job(path, value):
    """The good job with one field changed, or removed if the value is None."""
    changed = json.loads(good_job)
    *sections, name = path.split(".")
    place = changed
    for section in sections:
        place = place[section]
    if value is None:
        del place[name]
    else:
        place[name] = value
    return json.dumps(changed), good_csv


def csv(change):
    lines = good_csv.splitlines()
    change(lines)
    return good_job, "\n".join(lines) + "\n"


def swap(lines):
    lines[4], lines[5] = lines[5], lines[4]


def field(line, column, text):
    def change(lines):
        cells = lines[line].split(",")
        cells[column] = text
        lines[line] = ",".join(cells)
    return change


def set_line(number, text):
    def change(lines):
        lines[number] = text
    return change


def width(value, unit="mm"):
    return {"readings": [value], "unit": unit}


noise = bytes((i * i * 31 + i // 7) % 256 for i in range(1 << 20)) * 10

broken = {
    "unknown field": (job("ring.colour", "blue"), "ring.colour"),
    "unknown section": (job("magic", {}), "magic"),
    "missing field": (job("rotor.width", None), "rotor.width: is missing"),
    "missing section": (job("oil", None), "oil.grade"),
    "wrong unit": (job("ring.large_radius", {"value": 33, "unit": "bar"}), "wrong unit \"bar\""),
    "no unit": (job("ring.large_radius", 33), "ring.large_radius"),
    "unit given twice over": (
        job("duty.speed", {"value": 1500, "unit": "r/min", "note": "x"}), "duty.speed"),
    "wrong type": (job("duty.speed", {"value": "fast", "unit": "r/min"}), "must be a number"),
    "text for a list": (job("ring.width", {"readings": "24", "unit": "mm"}), "ring.width"),
    "list for a section": (job("ring", [1]), "ring"),
    "number for a text": (job("pump", 7), "pump"),
    "fraction for a count": (job("cover.bolts", 4.5), "cover.bolts"),
    "unknown law": (job("ring.law", "5-6-7"), "ring.law"),
    "not a number": ((good_job.replace("0.0005", "NaN", 1), good_csv), "not valid JSON"),
    "too large a number": ((good_job.replace("0.0005", "1e999", 1), good_csv), "line"),
    "negative length": (job("ring.large_radius", {"value": -33, "unit": "mm"}), "ring.large_radius"),
    "negative gap at the rotor": (job("rotor.width", width(24.01)), "negative gap"),
    "negative gap in the slot": (job("rotor.slot_width", {"value": 1.79, "unit": "mm"}), "negative gap"),
    "negative gap at a vane": (
        job("vanes.width", {"readings": [[24.02]] * 12, "unit": "mm"}), "vanes.width"),
    "a vane not measured": (
        job("vanes.width", {"readings": [[23.97]] * 11, "unit": "mm"}), "vanes.width"),
    "angles that do not add up": (job("ring.rise", {"value": 60, "unit": "deg"}), "rise"),
    "radii swapped": (job("ring.small_radius", {"value": 34, "unit": "mm"}), "radius"),
    "no such oil grade": (job("oil.grade", 47), "grade"),
    "duty below absolute zero": (
        job("duty.temperature", {"value": -300, "unit": "degC"}), "duty.temperature"),
    "field given twice": (
        (good_job.replace('"site"', '"site": "twice",\n\t"site"', 1), good_csv), "uplicate"),
    "job cut short": ((good_job[:500], good_csv), "not valid JSON"),
    "empty job": (("", good_csv), "empty"),
    "job that is a list": (("[]", good_csv), "object"),
    "job of noise": ((noise, good_csv), "larger"),
    "little noise as a job": ((noise[:5000], good_csv), "not valid JSON"),
    "deep nesting": (("[" * 100000, good_csv), "not valid JSON"),
    "terminal commands in a name": (job("ring.\x1b[31mred\nline", 1), "unknown field"),

    "empty readings": ((good_job, ""), "empty"),
    "head without readings": ((good_job, good_csv.splitlines()[0] + "\n"), "no readings"),
    "readings of noise": ((good_job, noise), "larger"),
    "little noise as readings": ((good_job, noise[:5000]), "line"),
    "zero bytes": ((good_job, good_csv.encode() + b"\0\0\n"), "line 26"),
    "readings out of order": (csv(swap), "line 6: readings are out of order"),
    "reading repeated": (csv(field(3, 0, "2")), "line 4: readings are out of order"),
    "decimal commas": (csv(field(2, 2, "35,1")), "line 3"),
    "quoted decimal commas": (csv(field(2, 2, '"35,1"')), "decimal point"),
    "missing column": (csv(field(0, 5, "torque_Nm")), "twice"),
    "flow missing": (
        (good_job, "\n".join(",".join(line.split(",")[:5]) for line in good_csv.splitlines())),
        "flow is missing"),
    "column without unit": (csv(field(0, 5, "flow")), "flow_L_min"),
    "column in a wrong unit": (csv(field(0, 2, "pressure_L_min")), "wrong unit"),
    "unknown column": (csv(field(0, 3, "noise_dB")), "noise_dB"),
    "semicolons": ((good_job, good_csv.replace(",", ";")), "separated by commas"),
    "text in a number": (csv(field(7, 5, "lots")), "line 8: flow"),
    "infinite flow": (csv(field(7, 5, "inf")), "line 8: flow"),
    "hexadecimal flow": (csv(field(7, 5, "0x20")), "line 8: flow"),
    "negative flow": (csv(field(7, 5, "-3")), "line 8: flow"),
    "empty cell": (csv(field(7, 4, "")), "line 8: temperature is empty"),
    "kelvin as Celsius": (csv(field(7, 4, "323")), "line 8: temperature"),
    "pressure below the inlet": (csv(field(7, 2, "-0.5")), "line 8"),
    "cell too many": (csv(field(7, 6, "1,2")), "line 8: has 8 fields"),
    "cell too few": (csv(set_line(7, "7,1001,6.6")), "line 8: has 3 fields"),
    "quote that does not end": (csv(field(7, 6, '"1')), "line"),
    "too many readings": (
        (good_job, good_csv.splitlines()[0] + "\n" + "".join(
            f"{i},1500,100,0,50,50,70\n" for i in range(600))), "more than 500"),
}


def run(directory, texts, target):
    for name, text in zip(("job.json", "readings.csv"), texts):
        with open(os.path.join(directory, name), "wb") as file:
            file.write(text if isinstance(text, bytes) else text.encode())
    return subprocess.run([rebuild, "job.json", "readings.csv", target], cwd=directory,
                          capture_output=True, timeout=60, check=False)


failures = []


def expect(name, condition, what):
    if not condition:
        failures.append(f"{name}: {what}")


for name, (texts, word) in broken.items():
    with tempfile.TemporaryDirectory() as directory:
        result = run(directory, texts, "out.html")
        said = result.stderr.decode(errors="replace")
        expect(name, result.returncode == 2, f"exit status {result.returncode}: {said}")
        expect(name, said.count("\n") == 1 and said.endswith("\n"), f"not one line: {said!r}")
        expect(name, "\x1b" not in said, f"control bytes: {said!r}")
        expect(name, word in said, f"{word!r} is not in {said!r}")
        expect(name, "job.json" in said or "readings.csv" in said, f"no file named: {said!r}")
        expect(name, result.stdout == b"", "wrote a sheet on the terminal")
        expect(name, sorted(os.listdir(directory)) == ["job.json", "readings.csv"],
               f"left files behind: {os.listdir(directory)}")

# A sheet that was there before must outlive a failure.
with tempfile.TemporaryDirectory() as directory:
    target = os.path.join(directory, "out.html")
    with open(target, "w", encoding="utf-8") as file:
        file.write("before")
    expect("old sheet", run(directory, ("", good_csv), "out.html").returncode == 2, "accepted")
    with open(target, encoding="utf-8") as file:
        expect("old sheet", file.read() == "before", "was touched")

for name, word in (("healthy", "Fit for service"), ("worn", "Do not put back")):
    with tempfile.TemporaryDirectory() as directory:
        texts = []
        for kind in (".json", ".csv"):
            with open(os.path.join(examples, name + kind), "rb") as file:
                texts.append(file.read())
        texts[0] = texts[0].replace(b'(invented)"', b'<script>alert(1)</script>"', 1)
        texts[1] = b"\xef\xbb\xbf" + texts[1].replace(b"\n", b"\r\n")
        result = run(directory, texts, "out.html")
        expect(name, result.returncode == 0 and result.stderr == b"", result.stderr)
        text = result.stdout.decode()
        expect(name, word in text, "verdict")
        expect(name, max(map(len, text.splitlines())) <= 80, "wider than 80 columns")
        with open(os.path.join(directory, "out.html"), encoding="utf-8") as file:
            page = file.read()
        expect(name, page.count("<svg") == 2 and page.endswith("</html>\n"), "page is not whole")
        expect(name, "<script" not in page and "&lt;script&gt;" in page, "not escaped")
        expect(name, "http" not in page.replace("http://www.w3.org/", ""), "not self-contained")

print(f"{len(broken)} broken inputs, {len(failures)} failures")
for failure in failures:
    print(failure)
sys.exit(1 if failures else 0)
