"""What help() shows, written from the manifest."""

import json
import keyword
import re
import textwrap

WIDTH = 79


def python_name(c_name):
    """vane_slot_flow and VANE_RING_CYCLOIDAL without the prefix."""
    return unreserved(c_name[len("vane_") :])


def unreserved(name, *reserved):
    """A name that Python reserves ends in _, as is the custom."""
    return name + "_" * (keyword.iskeyword(name) or name in reserved)


def read(path):
    """The manifest, with names that Python allows."""
    with open(path, encoding="utf-8") as file:
        manifest = json.load(file)
    for record in manifest["records"]:
        for field in record["fields"]:
            field["name"] = unreserved(field["name"])
    for function in manifest["functions"]:
        # By this name a formula takes the array to write to.
        taken = ["out"] if function["kind"] == "formula" else []
        for param in function["params"]:
            param["name"] = unreserved(param["name"], *taken)
            if isinstance(param["length"], str):
                param["length"] = unreserved(param["length"], *taken)
    return manifest


def quantity(item):
    """'[m; > 0]' of a parameter, a field or what a function returns."""
    limits = item.get("range")
    parts = [p for p in (item.get("unit"), limits and limits["text"]) if p]
    return "[" + "; ".join(parts) + "]" if parts else ""


def sentence(item):
    kind = plain_type(item)
    kind = "" if kind in ("float", "int") else f"({kind})"
    return " ".join(p for p in (item["text"], quantity(item), kind) if p)


def table(rows):
    """Names in one column, words in the next."""
    column = max((len(name) for name, _ in rows), default=0) + 2
    lines = []
    for name, words in rows:
        lines += textwrap.wrap(
            in_python(words),
            WIDTH,
            initial_indent=name.ljust(column),
            subsequent_indent=" " * column,
            break_on_hyphens=False,
        )
    return "\n".join(lines)


def inputs(function):
    """What the caller gives: no outputs, and no lengths, which arrays bring along."""
    lengths = {p["length"] for p in function["params"] if p["direction"] == "in"}
    return [
        p for p in function["params"] if p["direction"] != "out" and p["name"] not in lengths
    ]


def trailing_optional(params):
    """How many at the end a caller may leave out."""
    return next((i for i, p in enumerate(reversed(params)) if not p["optional"]), len(params))


def outputs(function):
    return [p for p in function["params"] if p["direction"] != "in" and p["name"] != "error"]


def in_python(words):
    """C's names, and its nothing, as Python has them."""
    words = re.sub(r"\b(enum vane_|vane_(?=\w+\()|VANE_(?=[A-Z]))", "vane.", words)
    words = re.sub(r"[.;] [^.;]*\bNULL\b[^.;]*", "", words)
    return words.replace("->index is -1", ".index is None").replace("->", ".")


def fill(words):
    return textwrap.fill(in_python(words), WIDTH)


def document(function):
    """The docstring of a function."""
    parts = [fill(function["brief"])]
    if function["formula"]:
        parts.append(textwrap.indent(in_python(function["formula"]), "    "))
    parts += [fill(p) for p in function["doc"].split("\n\n") if p]
    if inputs(function):
        parts.append(table([(p["name"], sentence(p)) for p in inputs(function)]))
    if function["kind"] in ("formula", "text"):
        gives = [("Returns", sentence(function["returns"]))]
    else:
        # The names tell several outputs apart, and say nothing of a single one.
        several = len(outputs(function)) > 1
        gives = [
            (f"Returns {p['name']}" if several else "Returns", sentence(p))
            for p in outputs(function)
        ]
    parts.append(table(gives))
    notes = [(word.capitalize(), function[word]) for word in ("valid", "source") if function[word]]
    notes += [("Constant", sentence(c)) for c in function["constants"]]
    parts.append(table(notes))
    return "\n\n".join(part for part in parts if part)


def document_record(record):
    rows = [(f["name"], sentence(f)) for f in record["fields"]]
    return f"{fill(record['brief'])}\n\n{table(rows)}"


def plain_type(item):
    """'vane.slip', 'array of vane.performance', 'float'."""
    base = item.get("type", "double").replace("const ", "").rstrip(" *")
    plain = {"double": "float", "int32_t": "int", "int64_t": "int"}.get(base)
    plain = plain or ("str" if base == "char" else f"vane.{python_name(base)}")
    return f"array of {plain}" if item.get("length") and base != "char" else plain
