"""Numbers, nested lists and NumPy arrays on their way through the array door."""

import collections.abc
import ctypes
import math

from ._records import masked, numpy, real

DOUBLE = ctypes.sizeof(ctypes.c_double)
NOT_ARRAYS = (str, bytes, bytearray, collections.abc.Mapping, collections.abc.Set)


def is_scalar(value):
    return not hasattr(value, "__len__") or isinstance(value, NOT_ARRAYS)


def prepare(names, values, what, out):
    """(shape, pointers, strides, what must stay alive) of arguments that broadcast."""
    if out is not None and not (numpy and isinstance(out, numpy.ndarray)):
        raise TypeError(f"{what}: out must be a NumPy array")
    if numpy:
        return _with_numpy(names, values, what, out)
    return _without_numpy(names, values, what)


def empty(shape, what, out):
    """(array of a shape, its pointer) for C to write to."""
    if out is not None:
        if out.dtype != float or out.shape != shape or not out.flags.carray:
            raise ValueError(
                f"{what}: out must be a contiguous, writable float64 array of shape {shape}"
            )
    elif numpy:
        out = numpy.empty(shape)
    if out is not None:
        return out, out.ctypes.data
    buffer = (ctypes.c_double * math.prod(shape))()
    return buffer, ctypes.addressof(buffer)


def finished(result, shape, values):
    """A number for numbers, nested lists for lists; an array if one is among the arguments."""
    if not shape:
        return float(result)
    if any(hasattr(v, "__array__") and not is_scalar(v) for v in values):
        return result
    return result.tolist() if numpy else nest(list(result), shape)


def real_array(value, what):
    """A float64 array; NumPy by itself would also take text, None and complex numbers."""
    if is_scalar(value):
        value = real(value, what)
    try:
        # To look into lists comes first, for NumPy makes NaN of what is masked in them.
        array = None if any_masked(value) else numpy.asarray(value)
    except (TypeError, ValueError, RecursionError):
        raise TypeError(f"{what} must be numbers in equal rows") from None
    if array is None:
        raise TypeError(f"{what} must be numbers; some are masked")
    if array.dtype.kind == "O":
        flat = [real(x, what) for x in array.flat]
        return numpy.array(flat, dtype=float).reshape(array.shape)
    if array.dtype.kind not in "biuf":
        raise TypeError(f"{what} must be numbers")
    return array.astype(float, copy=False)


def any_masked(value):
    if is_scalar(value) or isinstance(value, numpy.ndarray):
        return masked(value)
    return any(map(any_masked, value))


def _with_numpy(names, values, what, out):
    arrays = [real_array(v, f"{what}: {n}") for n, v in zip(names, values)]
    try:
        shape = numpy.broadcast_shapes(*(a.shape for a in arrays))
    except ValueError:
        raise ValueError(f"{what}: {_shapes(names, [a.shape for a in arrays])}") from None
    strides = []
    for i, array in enumerate(arrays):
        overwritten = out is not None and array is not out and numpy.may_share_memory(array, out)
        if overwritten or not array.flags.aligned:
            array = array.copy()
        if array.size == 1:
            strides.append(0)
        elif array.ndim == 1 and array.shape == shape and array.strides[0] % DOUBLE == 0:
            strides.append(array.strides[0] // DOUBLE)
        else:
            array = numpy.ascontiguousarray(numpy.broadcast_to(array, shape))
            strides.append(1)
        arrays[i] = array
    return shape, [a.ctypes.data for a in arrays], strides, arrays


def _without_numpy(names, values, what):
    shapes = []
    for name, value in zip(names, values):
        try:
            shapes.append(_shape(value))
        except (ValueError, RecursionError):
            raise TypeError(f"{what}: {name} must be numbers in equal rows") from None
    rank = max(len(s) for s in shapes)
    padded = [(1,) * (rank - len(s)) + s for s in shapes]
    shape = tuple(
        next((size for size in sizes if size != 1), 1) for sizes in zip(*padded)
    )
    if any(size not in (1, whole) for s in padded for size, whole in zip(s, shape)):
        raise ValueError(f"{what}: {_shapes(names, shapes)}")
    buffers, strides = [], []
    for name, value, own in zip(names, values, shapes):
        repeated = math.prod(own) == 1
        flat = _spread(value, own, (1,) * len(own) if repeated else shape)
        flat = [real(x, f"{what}: {name}") for x in flat]
        buffers.append((ctypes.c_double * len(flat))(*flat))
        strides.append(0 if repeated else 1)
    return shape, [ctypes.addressof(b) for b in buffers], strides, buffers


def _shapes(names, shapes):
    sizes = ", ".join(f"{n} {s}" for n, s in zip(names, shapes) if s)
    return f"the shapes do not fit together: {sizes}"


def _shape(value):
    if is_scalar(value):
        return ()
    inner = {_shape(v) for v in value} or {()}
    if len(inner) > 1:
        raise ValueError
    return (len(value), *inner.pop())


def _spread(value, own, shape):
    """The numbers of a nested list, repeated up to a shape."""
    if not shape:
        yield value
    elif len(own) < len(shape):
        for _ in range(shape[0]):
            yield from _spread(value, own, shape[1:])
    else:
        for i in range(shape[0]):
            yield from _spread(value[i if own[0] > 1 else 0], own[1:], shape[1:])


def nest(flat, shape):
    if len(shape) < 2:
        return flat
    step = math.prod(shape[1:])
    return [nest(flat[i * step : (i + 1) * step], shape[1:]) for i in range(shape[0])]
