"""Writes the C declarations of libvane for parsers that know no preprocessor.

cffi and LuaJIT's ffi take what this writes as it stands: enums, records and
functions from the manifest, no attribute, no directive.

    python3 cdef.py vane-api.json vane.cdef.h
"""

import json
import sys


def declaration(kind, name):
    """The type before the name, with C's blank unless a star ends the type."""
    return kind + name if kind.endswith("*") else f"{kind} {name}"


def enum(item):
    values = ",\n".join(f"\t{value['name']} = {value['value']}" for value in item["values"])
    return f"enum {item['name']} {{\n{values}\n}};\n"


def record(item):
    lines = []
    for field in item["fields"]:
        extent = f"[{field['length']}]" if isinstance(field["length"], int) else ""
        lines.append(f"\t{declaration(field['type'], field['name'])}{extent};\n")
    return f"typedef struct {item['name']} {{\n{''.join(lines)}}} {item['name']};\n"


def function(item):
    params = ", ".join(declaration(param["type"], param["name"]) for param in item["params"])
    return f"{declaration(item['returns']['type'], item['name'])}({params or 'void'});\n"


def nested_first(records):
    """The records in such an order that each comes after those it contains."""
    known = {item["name"]: item for item in records}
    placed = {}

    def place(item):
        for field in item["fields"]:
            if field["type"] in known:
                place(known[field["type"]])
        placed.setdefault(item["name"], item)

    for item in records:
        place(item)
    return list(placed.values())


def cdef(manifest):
    return "\n".join(
        [
            f"/* {manifest['library']} {manifest['version']}: every public declaration, without\n"
            " * preprocessor lines. Written by lib/bind/cdef.py from vane-api.json; do not edit.\n"
            " * A C program includes <vane.h> instead. */\n",
            *map(enum, manifest["enums"]),
            *map(record, nested_first(manifest["records"])),
            "".join(map(function, manifest["functions"])),
        ]
    )


def main(arguments):
    if len(arguments) != 3:
        sys.exit(__doc__)
    with open(arguments[1], encoding="utf-8") as file:
        manifest = json.load(file)
    with open(arguments[2], "w", encoding="utf-8") as file:
        file.write(cdef(manifest))


if __name__ == "__main__":
    main(sys.argv)
