"""Functions of the library as Python functions, built from the manifest."""

import collections
import ctypes
import math

from . import _arrays
from ._docs import document, inputs, outputs, python_name, trailing_optional
from ._records import NUMBERS, converted, masked, numpy, real

PLAIN = {float, int} | ({numpy.float64} if numpy else set())

# A real signature, for help(), editors and Python's own errors of calling; and
# a formula of plain numbers goes straight to C. What is not the caller's begins
# with _, which no parameter does.
FORMULA = """
def {name}({names}, *, out=None):
    if out is None and _plain({kinds}):
        try:
            _result = _c({names}, None)
        except _ArgumentError:
            _result = _nan
        if _result == _result:
            return _result
    return _general({values}, out)
"""
OTHER = """
def {name}({names}):
    return _general({values})
"""


class Error(ValueError):
    """A call that the library refused.

    function   which call
    code       number of the status, such as vane.INVALID_ARGUMENT
    status     its name, "invalid argument"
    parameter  what was wrong, as documented: "gap", "parts.rotor_width"
    value      the offending value
    index      element of the array at fault, rows end to end, or None
    text       the library's sentence
    result     of arrays: the result, NaN at each bad element; else None
    """

    __module__ = "vane"

    def __init__(self, function, code, status, parameter, value, index, text, result=None):
        super().__init__(function, code, status, parameter, value, index, text, result)
        self.function, self.code, self.status = function, code, status
        self.parameter, self.value, self.index = parameter, value, index
        self.text, self.result = text, result

    def __str__(self):
        where = "" if self.index is None else f" [{self.index}]"
        return f"{self.function}{where}: {self.text or self.status}"


class Builder:
    """Makes each function of a manifest callable, through one loaded library."""

    def __init__(self, library, records):
        self.library = library
        self.records = records
        self.error = records["vane_error"]
        self.status = library.vane_status_name
        self.status.restype, self.status.argtypes = ctypes.c_char_p, [ctypes.c_int32]
        self.array_run = self.declare(
            "vane_array_run",
            ctypes.c_int32,
            [ctypes.c_char_p, ctypes.c_int64] + [ctypes.c_void_p] * 4,
        )

    def declare(self, name, result, arguments):
        function = getattr(self.library, name)
        function.restype, function.argtypes = result, arguments
        return function

    def build(self, function):
        make = getattr(self, function["kind"])
        made = make(python_name(function["name"]), function)
        made.__doc__ = document(function)
        made.__module__ = "vane"
        return made

    def raise_error(self, name, error, result=None):
        raise Error(
            name,
            error.code,
            self.status(error.code).decode(),
            error.name or None,
            error.value,
            error.index if error.index >= 0 else None,
            error.text,
            result,
        )

    def formula(self, name, function):
        names = [p["name"] for p in inputs(function)]
        c = self.declare(
            function["name"],
            ctypes.c_double,
            [ctypes.c_double] * len(names) + [ctypes.POINTER(self.error)],
        )

        def general(values, out):
            if out is not None or not all(map(_arrays.is_scalar, values)):
                return self.run(function["name"], names, values, out)
            error = self.error()
            numbers = [real(v, f"{name}: {n}") for n, v in zip(names, values)]
            result = c(*numbers, error)
            if error.code:
                self.raise_error(name, error)
            return result

        return define(
            FORMULA,
            name,
            names,
            _general=general,
            _c=c,
            _plain=PLAIN.issuperset,
            _type=type,
            _nan=math.nan,
            _ArgumentError=ctypes.ArgumentError,
        )

    def run(self, c_name, names, values, out):
        """A formula over arrays, through the array door."""
        name = python_name(c_name)
        shape, pointers, strides, alive = _arrays.prepare(names, values, name, out)
        result, pointer = _arrays.empty(shape, name, out)
        error = self.error()
        self.array_run(
            c_name.encode(),
            math.prod(shape),
            (ctypes.c_void_p * len(names))(*pointers),
            (ctypes.c_int64 * len(names))(*strides),
            pointer,
            ctypes.byref(error),
        )
        del alive
        result = _arrays.finished(result, shape, values) if out is None else out
        if error.code:
            self.raise_error(name, error, result)
        return result

    def procedure(self, name, function):
        params = function["params"]
        kinds = {p["name"]: self.kind(p) for p in params}
        c = self.declare(
            function["name"],
            ctypes.c_int32,
            [kinds[p["name"]] if "*" not in p["type"] else ctypes.c_void_p for p in params],
        )
        given, wanted = inputs(function), outputs(function)
        results = collections.namedtuple(name, [p["name"] for p in wanted])
        # Where pickle finds it, for by its own name there is the function.
        results.__module__, results.__qualname__ = "vane", f"{name}.results"

        def general(values):
            passed, lengths = {}, {}
            for param, value in zip(given, values):
                what, kind = f"{name}: {param['name']}", kinds[param["name"]]
                if value is None and param["optional"]:
                    passed[param["name"]] = None
                    continue
                take = array_argument if param["length"] else converted
                passed[param["name"]] = value = take(kind, value, what)
                if isinstance(value, int):
                    # A length that only outputs have; what is no length the library refuses.
                    lengths[param["name"]] = max(value, 0)
                if param["length"]:
                    wanted_length = length_of(param, lengths, len(value))
                    if wanted_length != len(value):
                        raise ValueError(f"{what} has {len(value)} elements, not {wanted_length}")
            # An array left out is 0 long, unless another has told its length.
            for length in {p["length"] for p in given if p["length"]}:
                passed[length] = lengths.setdefault(length, 0)
            for param in wanted:
                length = param["length"] and length_of(param, lengths)
                passed[param["name"]] = room(kinds[param["name"]], length)
            passed["error"] = error = self.error()
            error.code = c(*(pointer_of(passed[p["name"]]) for p in params))
            typed = any(isinstance(value, Borrowed) for value in passed.values())
            made = results(*(plain(passed[p["name"]], typed) for p in wanted))
            made = made if len(made) > 1 else made[0]
            if error.code:
                several = any(p["length"] in lengths for p in wanted)
                self.raise_error(name, error, made if several else None)
            return made

        made = define(OTHER, name, [p["name"] for p in given], _general=general)
        made.__defaults__ = (None,) * trailing_optional(given)
        made.results = results
        return made

    def defaults(self, name, function):
        param = function["params"][0]
        c = self.declare(function["name"], None, [ctypes.c_void_p])

        def general(values):
            record = self.kind(param)()
            c(ctypes.byref(record))
            return record

        return define(OTHER, name, [], _general=general)

    def text(self, name, function):
        params = function["params"]
        c = self.declare(function["name"], ctypes.c_char_p, [self.kind(p) for p in params])

        def general(values):
            numbers = (
                converted(self.kind(p), v, f"{name}: {p['name']}")
                for p, v in zip(params, values)
            )
            return c(*numbers).decode()

        return define(OTHER, name, [p["name"] for p in params], _general=general)

    def kind(self, param):
        base = param["type"].replace("const ", "").rstrip(" *")
        return NUMBERS.get(base) or self.records.get(base) or ctypes.c_char_p


def define(template, name, names, **within):
    source = template.format(
        name=name,
        names=", ".join(names),
        values="(" + "".join(f"{n}, " for n in names) + ")",
        kinds="(" + "".join(f"_type({n}), " for n in names) + ")",
    )
    exec(source, within)
    return within[name]


def array_argument(kind, value, what):
    if numpy and isinstance(value, numpy.ndarray):
        if value.ndim != 1:
            raise ValueError(f"{what} must be one row, not of shape {value.shape}")
        if kind is ctypes.c_double:
            value = _arrays.real_array(value, what)
        elif value.dtype != numpy.dtype(kind):
            raise TypeError(f"{what} must have the dtype of {kind.__module__}.{kind.__name__}")
        elif masked(value):
            raise TypeError(f"{what} must be records; some are masked")
        return Borrowed(numpy.require(value, requirements=["C", "A"]))
    # Text, mappings and records go over their letters and names.
    if isinstance(value, _arrays.NOT_ARRAYS) or not hasattr(value, "__iter__"):
        raise TypeError(f"{what} must be a sequence, not {value!r}")
    items = [converted(kind, x, what) for x in value]
    return (kind * len(items))(*items)


def length_of(param, lengths, found=None):
    """A length in figures, or that of the first array of its name."""
    length = param["length"]
    return length if isinstance(length, int) else lengths.setdefault(length, found)


class Borrowed:
    """A NumPy array that C reads where it lies."""

    def __init__(self, array):
        self.array = array

    def __len__(self):
        return len(self.array)


def room(kind, length):
    return kind() if length is None else (kind * length)()


def pointer_of(value):
    if isinstance(value, Borrowed):
        return value.array.ctypes.data
    if isinstance(value, (ctypes.Structure, ctypes.Array, ctypes._SimpleCData)):
        return ctypes.addressof(value)
    return value


def plain(value, typed):
    """An output as the caller wants it: a typed array only to one who gave one."""
    if isinstance(value, ctypes._SimpleCData):
        return value.value
    if isinstance(value, ctypes.Array):
        return numpy.ctypeslib.as_array(value) if typed else list(value)
    return value
