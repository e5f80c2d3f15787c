"""libvane: hydraulic calculations for vane pumps.

All quantities are SI without prefixes: m, Pa, m3/s, K; speeds are revolutions
per second, pressures gauge. The functions named vane.units_... convert.

    >>> import vane
    >>> vane.slot_flow(width=0.020, gap=12.5e-6, length=0.005, dp=15e6,
    ...                viscosity=8.6e-3, wall_speed=0)

A formula takes arrays too, NumPy's or nested lists, broadcasts them and answers
in kind. A call that the library refuses raises vane.Error, which says what was
wrong. Records have named fields: vane.ring(large_radius=0.03).

These are textbook numbers. Oil under pressure, springs and bolted covers injure
people: local codes, the parts' own documentation and licensed practice come
first.
"""

import ctypes as _ctypes
import enum as _enum
import os as _os

from ._docs import python_name as _python_name
from ._docs import read as _read
from ._functions import Builder as _Builder
from ._functions import Error
from ._records import make_records as _make_records

try:
    from . import _where
except ImportError:
    _where = None


def _find(variable, *places):
    """The file that an environment variable names, or the first that is there."""
    named = _os.environ.get(variable)
    if named and not _os.path.exists(named):
        raise ImportError(f"{variable} names {named}, which is not there")
    found = [place for place in places if place and _os.path.exists(place)]
    return named or next(iter(found), None)


def _load(namespace):
    here = _os.path.dirname(_os.path.abspath(__file__))
    manifest = _find(
        "VANE_MANIFEST",
        _os.path.join(here, "vane-api.json"),
        _where and _where.MANIFEST,
    )
    if not manifest:
        raise ImportError("vane-api.json is not where it was installed; VANE_MANIFEST can name it")
    manifest = _read(manifest)
    library = _find(
        "VANE_LIBRARY",
        # Where a wheel carries it.
        _os.path.join(
            here, "..", ".libvane.mesonpy.libs", f"libvane.so.{manifest['version']}"
        ),
        _where and _where.LIBRARY,
    )
    try:
        loaded = _ctypes.CDLL(library or "libvane.so.0")
        loaded.vane_version.restype = _ctypes.c_char_p
    except (OSError, AttributeError) as reason:
        raise ImportError(
            f"libvane cannot be loaded ({reason}); VANE_LIBRARY can name it"
        ) from None
    running = loaded.vane_version().decode()
    if running != manifest["version"]:
        raise ImportError(
            f"{loaded._name} is version {running}, its manifest {manifest['version']}"
        )

    records = _make_records(manifest)
    public = {"Error": Error, **{record.__name__: record for record in records.values()}}
    for item in manifest["enums"]:
        members = {_python_name(v["name"]): v["value"] for v in item["values"]}
        kind = _enum.IntFlag if item["set"] else _enum.IntEnum
        made = kind(_python_name(item["name"]), members, module="vane")
        made.__doc__ = item["brief"]
        public.update({made.__name__: made, **made.__members__})
    builder = _Builder(loaded, records)
    for function in manifest["functions"]:
        # The formulas themselves take arrays; their door needs no name here.
        if function["topic"] != "array":
            made = builder.build(function)
            public[made.__name__] = made
    namespace.update(public, __version__=manifest["version"], __all__=list(public))


_load(globals())
