"""Records of the library as objects with named fields."""

import collections.abc
import ctypes
import math
import numbers
import operator

from ._docs import document_record, python_name

try:
    import numpy
except ImportError:
    numpy = None

NUMBERS = {"double": ctypes.c_double, "int32_t": ctypes.c_int32, "int64_t": ctypes.c_int64}


def masked(value):
    """Whether NumPy holds a number for missing; what is under the mask is no number."""
    if not numpy or not isinstance(value, numpy.ma.MaskedArray):
        return False
    # numpy.ma.is_masked() knows no records.
    return any(numpy.ma.getmaskarray(value).tobytes())


def integer(value, size, what):
    """An integer that fits; ctypes would cut it off without a word."""
    try:
        value = operator.index(None if masked(value) else value)
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
        if not (complex_kind or isinstance(value, (str, bytes, bytearray)) or masked(value)):
            return float(value)
    except (TypeError, ValueError):
        pass
    except OverflowError:
        raise OverflowError(f"{what} is too large for a double") from None
    raise TypeError(f"{what} must be a number, not {value!r}")


def converted(kind, value, what):
    """A number, a record or text as ctypes takes it."""
    if kind is ctypes.c_double:
        return real(value, what)
    if kind in NUMBERS.values():
        return integer(value, ctypes.sizeof(kind), what)
    if issubclass(kind, Record):
        return value if isinstance(value, kind) else kind(mapping(value, what))
    if not isinstance(value, str):
        raise TypeError(f"{what} must be text, not {value!r}")
    if kind is ctypes.c_char_p:
        return value.encode()
    if len(value.encode()) >= ctypes.sizeof(kind):
        raise ValueError(f"{what} must be of fewer than {ctypes.sizeof(kind)} bytes")
    return value


class Record(ctypes.Structure):
    """A record of the library.

    Made from named fields, from a mapping, or from another record with some
    fields changed; what is not given is 0. It is a mapping itself: dict(record)
    and record.as_dict() give its fields back.
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
        if name not in self._members:
            raise AttributeError(f"there is no field {what}")
        super().__setattr__(name, converted(self._members[name], value, what))

    keys = collections.abc.Mapping.keys
    items = collections.abc.Mapping.items
    values = collections.abc.Mapping.values
    get = collections.abc.Mapping.get
    __contains__ = collections.abc.Mapping.__contains__

    def __iter__(self):
        return iter(self._members)

    def __len__(self):
        return len(self._members)

    def __getitem__(self, name):
        if name not in self._members:
            raise KeyError(name)
        return getattr(self, name)

    def as_dict(self):
        """The fields as a dictionary, records inside as dictionaries too."""
        return {
            name: value.as_dict() if isinstance(value, Record) else value
            for name, value in self.items()
        }

    def __eq__(self, other):
        return type(self) is type(other) and dict(self) == dict(other)

    __hash__ = None

    def __reduce__(self):
        return type(self), (self.as_dict(),)

    def __repr__(self):
        lines = [
            f"    {name}={source(value)},".replace("\n", "\n    ") + self._notes[name]
            for name, value in self.items()
        ]
        return "\n".join([f"vane.{type(self).__name__}(", *lines, ")"])


# ctypes has a metaclass of its own, which keeps Record from being a subclass.
collections.abc.Mapping.register(Record)


class Text:
    """A field of characters, which ctypes has as bytes, as text."""

    def __init__(self, field):
        self.field, self.offset = field, field.offset

    def __get__(self, record, kind=None):
        return self if record is None else self.field.__get__(record).decode()

    def __set__(self, record, value):
        self.field.__set__(record, value.encode())


def source(value):
    """What evaluates to the value; repr(nan) does not."""
    finite = not isinstance(value, float) or math.isfinite(value)
    return repr(value) if finite else f"float('{value}')"


def mapping(value, what):
    if not isinstance(value, collections.abc.Mapping):
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
        kinds[record["name"]] = made = type(
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
        for name, kind in members.items():
            if kind not in kinds.values():
                setattr(made, name, Text(getattr(made, name)))
    return {name: kind for name, kind in kinds.items() if name.startswith("vane_")}
