"""Writes the type stub of the Python module from the manifest, for editors.

    python3 stubs.py MANIFEST OUT.pyi
"""

import pathlib
import sys
import textwrap

sys.path.insert(0, str(pathlib.Path(__file__).parent / "vane"))
import _docs  # noqa: E402

HEAD = '''"""Types of the module vane, written from the manifest."""

from enum import IntEnum, IntFlag
from typing import Any, ItemsView, Iterator, KeysView, Mapping, NamedTuple, Optional, Sequence
from typing import Union, ValuesView, overload

__version__: str
_Array = Any
"""NumPy array, nested list or number."""

class Error(ValueError):
    function: str
    code: int
    status: str
    parameter: Optional[str]
    value: float
    index: Optional[int]
    text: str
    result: Any

# No Mapping by name, or one record would serve for another.
class _Record:
    def keys(self) -> KeysView[str]: ...
    def values(self) -> ValuesView[Any]: ...
    def items(self) -> ItemsView[str, Any]: ...
    def get(self, name: str, default: Any = ...) -> Any: ...
    def __getitem__(self, name: str) -> Any: ...
    def __contains__(self, name: object) -> bool: ...
    def __iter__(self) -> Iterator[str]: ...
    def __len__(self) -> int: ...
    def as_dict(self) -> dict[str, Any]: ...
'''
NUMBERS = {"double": "float", "int32_t": "int", "int64_t": "int"}


def type_of(item):
    base = item["type"].replace("const ", "").rstrip(" *")
    if base == "char":
        return "str"
    # By a second name, for fields bear those of records.
    return NUMBERS.get(base) or f"_{_docs.python_name(base)}"


def taken(item):
    """The type of what the caller gives: for a record, a mapping does too."""
    kind = type_of(item)
    if kind.startswith("_"):
        kind = f"Union[{kind}, Mapping[str, Any]]"
    return f"Union[Sequence[{kind}], Any]" if item["length"] and kind != "str" else kind


def block(words):
    return textwrap.indent(f'"""{words}\n"""', "    ", lambda line: line.strip())


def record(item):
    name = _docs.python_name(item["name"])
    fields = item["fields"]
    yield f"class {name}(_Record):"
    yield block(_docs.document_record(item))
    yield from (f"    {f['name']}: {type_of(f)}" for f in fields)
    words = "".join(f", {f['name']}: {taken(f)} = ..." for f in fields)
    yield f"    def __init__(self, other: Any = ..., /, *{words}) -> None: ..."
    yield f"_{name} = {name}"


def enum(item):
    name = _docs.python_name(item["name"])
    yield f"class {name}({'IntFlag' if item['set'] else 'IntEnum'}):"
    yield block(item["brief"])
    labels = [(_docs.python_name(v["name"]), v["value"]) for v in item["values"]]
    yield from (f"    {label} = {value}" for label, value in labels)
    yield from (f"{label} = {name}.{label}" for label, _ in labels)


def function(item):
    name = _docs.python_name(item["name"])
    given, wanted = _docs.inputs(item), _docs.outputs(item)
    if item["kind"] == "formula":
        words = ", ".join(f"{p['name']}: float" for p in given)
        arrays = ", ".join(f"{p['name']}: _Array" for p in given)
        yield f"@overload\ndef {name}({words}) -> float:"
        yield block(_docs.document(item)) + "\n    ..."
        yield f"@overload\ndef {name}({arrays}, *, out: Any = ...) -> Any: ..."
        return
    gives = "str" if item["kind"] == "text" else "None"
    if len(wanted) == 1:
        gives = "Any" if wanted[0]["length"] else type_of(wanted[0])
    elif wanted:
        gives = f"_{name}"
        yield f"class {gives}(NamedTuple):"
        yield from (
            f"    {p['name']}: {'Any' if p['length'] else type_of(p)}" for p in wanted
        )
    needed = len(given) - _docs.trailing_optional(given)
    words = ", ".join(
        f"{p['name']}: {taken(p)}" + (" = ..." if i >= needed else "")
        for i, p in enumerate(given)
    )
    yield f"def {name}({words}) -> {gives}:"
    yield block(_docs.document(item)) + "\n    ..."


def main(arguments):
    if len(arguments) != 3:
        sys.exit(__doc__)
    manifest = _docs.read(arguments[1])
    lines = [HEAD]
    for item in manifest["enums"]:
        lines += [*enum(item), ""]
    for item in manifest["records"]:
        lines += [*record(item), ""]
    for item in manifest["functions"]:
        if item["topic"] != "array":
            lines += [*function(item), ""]
    pathlib.Path(arguments[2]).write_text("\n".join(lines), encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv)
