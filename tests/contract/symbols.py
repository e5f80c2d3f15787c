"""Holds the symbols of the library to the manifest and to the committed list.

What the shared library exports, the functions of the manifest and symbols.txt
are one and the same set; and whatever else the static library makes global
begins with vn_, lest it meet a name of the host's. Each difference is one
sentence. NM names another nm.

    python3 symbols.py libvane.so vane-api.json symbols.txt [libvane.a]
"""

import json
import os
import subprocess
import sys

PRIVATE = "vn_"


def defined(library, *flags):
    """Names of the symbols that the library defines for others."""
    command = [os.environ.get("NM", "nm"), "--defined-only", "--format=posix", *flags, library]
    output = subprocess.run(command, check=True, capture_output=True, text=True).stdout
    # In an archive each object has a heading, "libvane.a[slot.c.o]:".
    return {line.split()[0].split("@")[0] for line in output.splitlines() if " " in line}


def absent(names, names_of, others, others_of):
    for name in sorted(names - others):
        yield f"{name} is in {names_of} and not in {others_of}."


def listed(path):
    with open(path, encoding="utf-8") as file:
        lines = file.read().splitlines()
    if lines != sorted(set(lines)):
        sys.exit(f"{path} is not sorted, or names a symbol twice.")
    return set(lines)


def main(arguments):
    if len(arguments) not in (4, 5):
        sys.exit(__doc__)
    exported = defined(arguments[1], "--dynamic")
    with open(arguments[2], encoding="utf-8") as file:
        promised = {item["name"] for item in json.load(file)["functions"]}
    committed = listed(arguments[3])

    faults = [
        *absent(exported, "the library", committed, "symbols.txt"),
        *absent(committed, "symbols.txt", exported, "the library"),
        *absent(exported, "the library", promised, "the manifest"),
        *absent(promised, "the manifest", exported, "the library"),
    ]
    if len(arguments) == 5:
        inside = defined(arguments[4], "--extern-only")
        faults += absent(exported, "the shared library", inside, "the static library")
        for name in sorted(inside - committed):
            if not name.startswith(PRIVATE):
                faults.append(
                    f"{name} is global in the static library, neither public nor {PRIVATE}*."
                )
    for sentence in faults:
        print(sentence)
    print(f"{len(exported)} exported, {len(promised)} in the manifest, "
          f"{len(committed)} in the list: {len(faults)} differences")
    return 1 if faults or not exported else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
