"""Runs the handbook's examples and holds each of their lines to the book.

    python3 check.py PROGRAM...

A line reads 'source: book X unit, here Y unit, difference Z'. Y must be X within half of X's last
printed digit, or within half of a digit given up by the printing of Y. Exit status 1 and the lines
that are not so, if any.
"""

import re
import subprocess
import sys
from decimal import Decimal, InvalidOperation

LINE = re.compile(r".+: book (\S+?)( \S+)?, here (\S+?)( \S+)?, difference \S+")


def half_digit(printed):
    return Decimal(1).scaleb(printed.as_tuple().exponent) / 2


def agrees(line):
    found = LINE.fullmatch(line)
    if not found or found[2] != found[4]:
        return False
    try:
        book, here = Decimal(found[1]), Decimal(found[3])
        return abs(here - book) <= half_digit(book) + half_digit(here)
    except (InvalidOperation, TypeError):
        return False


def main():
    wrong = []
    for program in sys.argv[1:]:
        run = subprocess.run([program], capture_output=True, text=True, timeout=60)
        print(run.stdout, end="")
        lines = run.stdout.splitlines()
        if run.returncode != 0 or not lines:
            wrong.append(f"{program}: exit status {run.returncode}")
        wrong += [line for line in lines if not agrees(line)]
    for line in wrong:
        print("differs:", line, file=sys.stderr)
    return 1 if wrong or len(sys.argv) < 2 else 0


sys.exit(main())
