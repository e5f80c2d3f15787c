"""Holds what the documentation promises to the committed list, line by line.

One line for every parameter, field, return and enumerator: its type, unit, range,
length and enum. What no call can tell apart, such as the range of an output or a
torque's N.m beside an energy's J, cannot change unnoticed then: each difference is
one sentence. A promise that is meant to change is written down by the same program.

    python3 promises.py vane-api.json promises.txt [--write]
"""

import json
import sys


def promise(name, item):
    """A promise as words in a fixed order; what is not promised is left out."""
    limits, enum = item.get("range"), item.get("enum")
    words = [
        item.get("direction"),
        item["type"],
        f"[{item['unit']}]" if item.get("unit") else None,
        limits and limits["text"],
        f"length {item['length']}" if item.get("length") is not None else None,
        "or NULL" if item.get("optional") else None,
        enum and f"{'set of' if item.get('set') else 'of'} {enum}",
    ]
    return f"{name}: {'; '.join(w for w in words if w)}"


def promises(manifest):
    for function in manifest["functions"]:
        name = function["name"]
        yield promise(f"{name}()", function["returns"])
        for i, param in enumerate(function["params"], 1):
            words = promise(f"{name}.{param['name']}", param)
            yield f"{words}; parameter {i}"
        for unit in sorted(c["unit"] for c in function["constants"]):
            yield f"{name}(): constant; [{unit}]"
    for record in manifest["records"]:
        yield f"{record['name']}: {record['size']} bytes"
        for field in record["fields"]:
            name = f"{record['name']}.{field['name']}"
            yield f"{promise(name, field)}; at {field['offset']}"
    for enum in manifest["enums"]:
        for value in enum["values"]:
            kind = "bit of" if enum["set"] else "number of"
            yield f"{value['name']}: {value['value']}; {kind} {enum['name']}"


def main(arguments):
    write = arguments[3:] == ["--write"]
    if len(arguments) != 3 + write:
        sys.exit(__doc__)
    with open(arguments[1], encoding="utf-8") as file:
        found = list(promises(json.load(file)))
    if write:
        with open(arguments[2], "w", encoding="utf-8") as file:
            file.write("".join(f"{line}\n" for line in sorted(found)))
        return 0
    with open(arguments[2], encoding="utf-8") as file:
        listed = file.read().splitlines()
    sentences = [f"Promised, and not in the list: {x}" for x in sorted(set(found) - set(listed))]
    sentences += [f"In the list, and no longer promised: {x}" for x in listed if x not in set(found)]
    if not sentences and listed != sorted(found):
        sentences = ["The list is not in order, or names a promise twice."]
    for sentence in sentences:
        print(sentence)
    print(f"{len(found)} promises, {len(sentences)} differences")
    return 1 if sentences or not found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
