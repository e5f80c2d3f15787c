"""Tables of published values beside libvane's, from the rows of the tests.

    python3 published.py OUTPUT_DIR TOPIC... -- TEST_PROGRAM...

Runs the test programs, which append their rows to the file that VANE_ROWS
names, and writes published_TOPIC.html for each topic. Rows that hold the
library against computations of our own are counted, not shown.
"""

import html
import math
import os
import pathlib
import subprocess
import sys
import tempfile

# What a row that no publication stands behind says of its source.
OURS = ("mpmath", "prototype", "worked pump", "own computation", "scipy", "reproduced", "by hand")


def rows_of(program):
    """(source, got, want, tolerance) of each row of a test program, in the order of its tests."""
    with tempfile.TemporaryDirectory() as directory:
        path = pathlib.Path(directory) / "rows"
        # What fails is for the tests to say; the table shows it all the same.
        subprocess.run(
            [program], env=os.environ | {"VANE_ROWS": str(path)}, stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL, check=False, timeout=300,
        )
        text = path.read_text(encoding="utf-8") if path.exists() else ""
    for line in text.splitlines():
        source, *numbers = line.split("\t")
        yield source, *map(float, numbers)


def is_published(source):
    return any(c.isupper() or c.isdigit() for c in source) and not any(
        word in source.lower() for word in OURS
    )


def beside(got, want, tolerance):
    """got with a digit more than the tolerance holds."""
    if not math.isfinite(got):
        return str(got)
    if tolerance <= 0:
        return f"{got:.10g}"
    size = max(abs(got), abs(want), tolerance)
    digits = math.floor(math.log10(size)) - math.floor(math.log10(tolerance)) + 2
    return f"{got:.{min(max(digits, 3), 15)}g}"


def table(rows):
    shown = [row for row in rows if is_published(row[0])]
    lines = []
    if shown:
        lines += [
            '<table class="markdownTable published">',
            "<tr><th>Source</th><th>Published</th><th>libvane</th><th>Difference</th>"
            "<th>Allowed</th></tr>",
        ]
        for source, got, want, tolerance in shown:
            cells = (f"{want:.12g}", beside(got, want, tolerance), f"{got - want:.1g}",
                     f"{tolerance:.2g}")
            lines.append(
                f"<tr><td>{html.escape(source)}</td>"
                + "".join(f'<td align="right">{cell}</td>' for cell in cells) + "</tr>"
            )
        lines.append("</table>")
    else:
        lines.append("<p>No published value is held against this topic.</p>")
    ours = len(rows) - len(shown)
    if ours:
        what = "more value of ours is" if ours == 1 else "more values of ours are"
        lines.append(f"<p>{ours} {what} held against independent computations.</p>")
    return "\n".join(lines) + "\n"


def main():
    output, *rest = sys.argv[1:]
    topics, programs = rest[: rest.index("--")], rest[rest.index("--") + 1 :]
    rows = {topic: [] for topic in topics}
    for program in programs:
        name = pathlib.Path(program).stem.removeprefix("test_")
        owners = [t for t in topics if name == t or name.startswith(t + "_")]
        for row in rows_of(os.path.abspath(program)) if owners else ():
            if row not in rows[max(owners, key=len)]:
                rows[max(owners, key=len)].append(row)
    for topic, found in rows.items():
        text = "<p>Built without the tests, and so without rows.</p>\n"
        if programs:
            text = table(found)
        (pathlib.Path(output) / f"published_{topic}.html").write_text(text, encoding="utf-8")


main()
