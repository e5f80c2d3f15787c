"""Holds the manifest to the text of the public headers, name by name.

Reads the headers with a reader of its own, independent of the one that wrote
the manifest: every record with its fields in order, every enum with its
enumerators, every function with its parameters. The headers may hold nothing
else. Each difference is one sentence.

    python3 coverage.py vane-api.json HEADER...
"""

import json
import re
import sys

SCALAR = r"(?:double|int32_t|int64_t|void|vane_\w+|const char \*)"
COMMENT = re.compile(r"/\*.*?\*/|//[^\n]*", re.S)
DIRECTIVE = re.compile(r"^[ \t]*#(?:\\\n|[^\n])*", re.M)
LINKAGE = re.compile(r'extern "C" \{(.*)\}', re.S)
RECORD = re.compile(r"typedef struct (\w+) \{([^{}]*)\} \1;")
ENUM = re.compile(r"enum (\w+) \{([^{}]*)\};")
FUNCTION = re.compile(rf"VANE_API {SCALAR}\s?(\w+)\(([^()]*)\);")
LAST_WORD = re.compile(r"(\w+)(?:\[\w+\])?$")


def names(text, separator):
    """The names that a list of declarations declares."""
    found = []
    for piece in text.split(separator):
        piece = piece.split("=")[0].strip()
        if piece and piece != "void":
            found.append(LAST_WORD.search(piece)[1])
    return found


def read(text, path, faults):
    """What one header declares: {"record vane_x": [fields], ...}."""
    text = DIRECTIVE.sub("", COMMENT.sub("", text))
    text = " ".join(LINKAGE.sub(r"\1", text).split())
    declared = {}
    for kind, pattern, separator in (
        ("record", RECORD, ";"),
        ("enum", ENUM, ","),
        ("function", FUNCTION, ","),
    ):
        for match in pattern.finditer(text):
            declared[f"{kind} {match[1]}"] = names(match[2], separator)
        text = pattern.sub("", text)
    if text.strip():
        faults.append(f"{path} holds what is no record, enum or function: {text.strip()[:60]}")
    return declared


def promised(manifest):
    """The same for the manifest."""
    every = {}
    for kind, key, parts in (
        ("record", "records", "fields"),
        ("enum", "enums", "values"),
        ("function", "functions", "params"),
    ):
        for item in manifest[key]:
            every[f"{kind} {item['name']}"] = [part["name"] for part in item[parts]]
    return every


def compare(headers, manifest):
    for item in sorted(headers.keys() - manifest.keys()):
        yield f"The headers declare the {item}, which the manifest lacks."
    for item in sorted(manifest.keys() - headers.keys()):
        yield f"The manifest has the {item}, which no header declares."
    for item in sorted(headers.keys() & manifest.keys()):
        if headers[item] != manifest[item]:
            yield (
                f"The {item} holds {', '.join(headers[item]) or 'nothing'} in the headers "
                f"and {', '.join(manifest[item]) or 'nothing'} in the manifest."
            )


def main(arguments):
    if len(arguments) < 3:
        sys.exit(__doc__)
    with open(arguments[1], encoding="utf-8") as file:
        manifest = promised(json.load(file))
    faults = []
    headers = {}
    for path in arguments[2:]:
        with open(path, encoding="utf-8") as file:
            headers.update(read(file.read(), path, faults))
    faults += compare(headers, manifest)
    for sentence in faults:
        print(sentence)
    print(f"{len(headers)} items in the headers, {len(manifest)} in the manifest: "
          f"{len(faults)} faults")
    return 1 if faults or not headers else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
