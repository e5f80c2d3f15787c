"""Records of the library as objects with named fields."""

import collections.abc
import ctypes
import numbers
import operator

from ._docs import document_record, python_name

NUMBERS = {"double": ctypes.c_double, "int32_t": ctypes.c_int32, "int64_t": ctypes.c_int64}


def integer(value, size, what):
    """An integer that fits; ctypes would cut it off without a word."""
    try:
        value = operator.index(value)
    except TypeError:
        raise TypeError(f"{what} must be an integer, not {value!r}") from None
    if not -(1 << 8 * size - 1) <= value < 1 << 8 * size - 1:
        raise OverflowError(f"{what} does not fit into {8 * size} bits")
    return value


def real(value, what):
    """A float; float() itself would read text, and NumPy drop an imaginary part."""
    if type(value) is float:
        return value
    complex_kind = isinstance(value, numbers.Complex) and not isinstance(value, numbers.Real)
    try:
        if not complex_kind and not isinstance(value, (str, bytes, bytearray)):
            return float(value)
    except (TypeError, ValueError):
        pass
    except OverflowError:
        raise OverflowError(f"{what} is too large for a double") from None
    raise TypeError(f"{what} must be a number, not {value!r}")


class Record(ctypes.Structure):
    """A record of the library.

    Made from named fields, from a mapping, or from another record with some
    fields changed; what is not given is 0. dict(record) and record.as_dict()
    give its fields back.
    """

    __slots__ = ()
    _members = {}

    def __init__(self, other=None, /, **fields):
        super().__init__()
        given = {} if other is None else mapping(other, f"vane.{type(self).__name__}")
        for name, value in {**given, **fields}.items():
            setattr(self, name, value)

    def __setattr__(self, name, value):
        what = f"vane.{type(self).__name__}.{name}"
        kind = self._members.get(name)
        if kind is None:
            raise AttributeError(f"there is no field {what}")
        if issubclass(kind, Record):
            value = value if isinstance(value, kind) else kind(mapping(value, what))
        elif kind is ctypes.c_double:
            value = real(value, what)
        elif kind in NUMBERS.values():
            value = integer(value, ctypes.sizeof(kind), what)
        super().__setattr__(name, value)

    def keys(self):
        return self._members.keys()

    def __getitem__(self, name):
        if name not in self._members:
            raise KeyError(name)
        return getattr(self, name)

    def as_dict(self):
        """The fields as a dictionary, records inside as dictionaries too."""
        return {
            name: value.as_dict() if isinstance(value, Record) else value
            for name, value in dict(self).items()
        }

    def __eq__(self, other):
        return type(self) is type(other) and dict(self) == dict(other)

    __hash__ = None

    def __reduce__(self):
        return type(self), (self.as_dict(),)

    def __repr__(self):
        lines = [
            f"    {name}={repr(value)},".replace("\n", "\n    ") + self._notes[name]
            for name, value in dict(self).items()
        ]
        return "\n".join([f"vane.{type(self).__name__}(", *lines, ")"])


def mapping(value, what):
    if not isinstance(value, (collections.abc.Mapping, Record)):
        raise TypeError(f"{what} must be a record or a mapping, not {value!r}")
    return value


def make_records(manifest):
    """One class for each record of the manifest, by its C name."""
    kinds = {**NUMBERS, "char": ctypes.c_char}
    for record in manifest["records"]:
        members = {
            f["name"]: kinds[f["type"]] * f["length"] if f["length"] else kinds[f["type"]]
            for f in record["fields"]
        }
        kinds[record["name"]] = type(
            python_name(record["name"]),
            (Record,),
            {
                "__slots__": (),
                "__module__": "vane",
                "__doc__": document_record(record),
                "_fields_": list(members.items()),
                "_members": members,
                "_notes": {
                    f["name"]: f"  # {f['unit']}" if f["unit"] not in (None, "1") else ""
                    for f in record["fields"]
                },
            },
        )
    return {name: kind for name, kind in kinds.items() if name.startswith("vane_")}
