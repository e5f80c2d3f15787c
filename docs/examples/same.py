"""Runs a worked example and holds what it prints to the text that its page shows.

    python3 same.py PROGRAM FILE
"""

import difflib
import pathlib
import subprocess
import sys

program, file = sys.argv[1:]
run = subprocess.run([program], capture_output=True, text=True, timeout=60)
shown = pathlib.Path(file).read_text(encoding="utf-8").splitlines()
printed = run.stdout.splitlines()
differences = list(difflib.unified_diff(shown, printed, "shown", "printed", lineterm=""))
print("\n".join(differences) or run.stdout)
sys.exit(1 if differences or run.returncode else 0)
