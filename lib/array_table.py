"""Writes the table of formulas for array.c from the public headers.

A formula returns double and takes one or more doubles, then vane_error *error.
Each becomes one line FORMULA(name, arity), in the order of strcmp(). A
function that returns double and does not fit ends the build with a sentence.

    python3 array_table.py OUTPUT HEADER...
"""

import pathlib
import re
import sys

GREATEST_ARITY = 12

COMMENT = re.compile(r"/\*.*?\*/|//[^\n]*", re.DOTALL)
RETURNS_DOUBLE = re.compile(r"\bVANE_API\s+double\b([^;]*)")
FORMULA = re.compile(
    r"\s*(vane_\w+)\s*\(((?:\s*double\s+\w+\s*,)+)\s*vane_error\s*\*\s*error\s*\)\s*"
)


def formulas_of(header):
    """Name and arity of each formula that a header declares."""
    code = COMMENT.sub(" ", header.read_text(encoding="utf-8"))
    for declaration in RETURNS_DOUBLE.findall(code):
        words = " ".join(declaration.split())
        formula = FORMULA.fullmatch(declaration)
        if not formula:
            sys.exit(
                f"{header.name}: '{words}' returns double, but does not take doubles and then "
                "vane_error *error."
            )
        name, parameters = formula.groups()
        arity = parameters.count(",")
        if arity > GREATEST_ARITY:
            sys.exit(
                f"{header.name}: {name}() takes {arity} doubles; array.c goes up to "
                f"{GREATEST_ARITY}."
            )
        yield name, arity


def main(output, headers):
    table = {}
    for header in headers:
        for name, arity in formulas_of(pathlib.Path(header)):
            if name in table:
                sys.exit(f"{name}() is declared twice.")
            table[name] = arity
    if not table:
        sys.exit("The headers declare no formula.")
    lines = [f"FORMULA({name}, {table[name]})\n" for name in sorted(table)]
    pathlib.Path(output).write_text("".join(lines), encoding="utf-8")


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    main(sys.argv[1], sys.argv[2:])
