"""Holds the Python module to its promises.

Run it twice: as it is, and with HIDE_NUMPY=1, which makes NumPy look absent.
"""

import ast
import collections.abc
import copy
import fractions
import importlib.util
import inspect
import json
import math
import os
import pathlib
import pickle
import pydoc
import re
import subprocess
import sys
import tempfile
import textwrap
import threading
import unittest

if os.environ.get("HIDE_NUMPY"):
    sys.modules["numpy"] = None

import vane  # noqa: E402

try:
    import numpy
except ImportError:
    numpy = None

PACKAGE = pathlib.Path(vane.__file__).parent
MANIFEST = pathlib.Path(os.environ.get("VANE_MANIFEST") or vane._where.MANIFEST)
API = json.loads(MANIFEST.read_text(encoding="utf-8"))
with_numpy = unittest.skipUnless(numpy, "NumPy is not there: its arrays are NOT tested")

SLOT = dict(width=0.020, gap=12.5e-6, length=0.005, dp=15e6, viscosity=8.6e-3, wall_speed=0.1)


def flow(**changes):
    """Flow through the slot, or through one like it."""
    return vane.slot_flow(**{**SLOT, **changes})


def by_hand(width, gap, length, dp, viscosity, wall_speed):
    return width * gap**3 * dp / (12 * viscosity * length) + width * gap * wall_speed / 2


def pump():
    """The parts of an invented pump."""
    rad = math.radians
    return vane.parts(
        vane.parts_default(),
        ring=vane.ring(
            vane.ring_default(), large_radius=0.0300, small_radius=0.0268, width=25.412e-3
        ),
        rotor_radius=0.0262,
        rotor_width=25.393e-3,
        slot_width=2.030e-3,
        vane_width=25.398e-3,
        vane_thickness=2.000e-3,
        vane_height=9.0e-3,
        tip_radius=1.2e-3,
        plate_bore=0.0110,
        groove_inner=0.0150,
        groove_outer=0.0185,
        inlet_open=rad(17),
        inlet_close=rad(73),
        outlet_open=rad(110),
        outlet_close=rad(164),
        notch=rad(4),
        shaft_radius=0.0105,
        shaft_gap=0.05e-3,
        shaft_length=0.012,
        vanes=12,
    )


def fluid():
    """An oil whose viscosity does not change with pressure."""
    return vane.oil(vane.oil_from_grade(46, 100), pressure_viscosity=0)


def duties(*megapascals):
    return [vane.duty(vane.duty_default(), outlet_pressure=1e6 * p) for p in megapascals]


DISPLACEMENT, LAMINAR = 50e-6, 2e-14


def readings():
    """Of a pump whose slip is laminar, at two speeds and two temperatures."""
    oil = fluid()
    for speed in (15.0, 25.0):
        for temperature in (313.15, 343.15):
            viscosity = vane.oil_at(oil, temperature).viscosity
            for pressure in (2e6, 6e6, 10e6, 14e6):
                yield vane.reading(
                    speed=speed,
                    pressure=pressure,
                    temperature=temperature,
                    flow=DISPLACEMENT * speed - LAMINAR * pressure / viscosity,
                )


class Calls(unittest.TestCase):
    def test_keywords_and_positions_mean_the_same(self):
        wanted = by_hand(**SLOT)
        self.assertAlmostEqual(flow() / wanted, 1, delta=1e-14)
        self.assertEqual(vane.slot_flow(*SLOT.values()), flow())
        backwards = dict(reversed(SLOT.items()))
        self.assertEqual(vane.slot_flow(**backwards), flow())
        self.assertEqual(vane.slot_flow(0.020, 12.5e-6, **dict(list(SLOT.items())[2:])), flow())
        self.assertIs(type(flow()), float)

    def test_a_number_is_whatever_converts_to_float(self):
        self.assertEqual(flow(dp=15_000_000), flow())
        self.assertEqual(flow(dp=fractions.Fraction(15_000_000)), flow())
        self.assertEqual(flow(dp=True), flow(dp=1.0))

    def test_wrong_types_are_refused_by_name(self):
        for wrong in (None, "12", b"12", bytearray(b"1"), 1j, object(), {"a": 1}, {1, 2}, SLOT):
            with self.subTest(wrong=wrong):
                for dp in (1e6, [1, 2]):
                    with self.assertRaisesRegex(TypeError, r"^slot_flow: gap must be a number, n"):
                        flow(gap=wrong, dp=dp)

    def test_integers_beyond_a_double_are_refused_by_name(self):
        for huge in (10**400, -(10**5000)):
            for gap in (huge, [huge, 1e-6]):
                with self.assertRaisesRegex(OverflowError, r"^slot_flow: gap is too large"):
                    flow(gap=gap)

    def test_missing_unknown_and_doubled_arguments(self):
        with self.assertRaisesRegex(TypeError, r"slot_flow\(\) missing 1 .*'wall_speed'"):
            vane.slot_flow(*list(SLOT.values())[:-1])
        with self.assertRaisesRegex(TypeError, r"slot_flow\(\) got an unexpected .*'gape'"):
            flow(gape=1)
        with self.assertRaisesRegex(TypeError, r"slot_flow\(\) got multiple values .*'width'"):
            vane.slot_flow(0.020, **SLOT)
        with self.assertRaisesRegex(TypeError, r"slot_flow\(\) takes 6 positional"):
            vane.slot_flow(*SLOT.values(), 7)
        with self.assertRaisesRegex(TypeError, r"duty_default\(\) takes 0 positional"):
            vane.duty_default(1)
        with self.assertRaisesRegex(TypeError, r"pump_run\(\) missing 1 .*'duty'"):
            vane.pump_run(pump(), vane.oil_default())

    def test_signatures_are_the_manifest_s(self):
        names = list(inspect.signature(vane.slot_flow).parameters)
        self.assertEqual(names, [*SLOT, "out"])
        # The number of readings comes with them.
        names = list(inspect.signature(vane.stand_slip_fit).parameters)
        self.assertEqual(names, ["reading", "oil", "terms"])

    def test_text(self):
        self.assertEqual(vane.version(), vane.__version__)
        self.assertEqual(vane.status_name(vane.INVALID_ARGUMENT), "invalid argument")
        self.assertEqual(vane.status_name(code=0), vane.status_name(vane.OK))
        self.assertIn("10 mm2/s", vane.caution_text(vane.CAUTION_THIN_OIL))
        for wrong in (1.0, "1", None):
            with self.assertRaisesRegex(TypeError, r"^status_name: code must be an integer"):
                vane.status_name(wrong)
        for huge in (2**31, -(2**31) - 1, 10**5000):
            with self.assertRaisesRegex(OverflowError, r"^status_name: code does not fit into 32"):
                vane.status_name(huge)

    def test_defaults(self):
        duty = vane.duty_default()
        self.assertIs(type(duty), vane.duty)
        self.assertEqual((duty.speed, duty.outlet_pressure, duty.inlet_pressure), (25, 10e6, 0))
        self.assertAlmostEqual(duty.temperature, 323.15)
        self.assertIsNot(vane.duty_default(), duty)

    def test_one_result_is_itself(self):
        done = vane.pump_run(pump(), vane.oil_from_grade(46, 100), vane.duty_default())
        self.assertIs(type(done), vane.performance)
        self.assertIs(type(done.slip), vane.slip)
        self.assertTrue(0.8 < done.volumetric_efficiency < 1)

    def test_several_results_have_names(self):
        done = vane.measure_verdict(value=8e-6, uncertainty=1e-6, low=0, high=12e-6, coverage=1.645)
        self.assertEqual(done._fields, ("verdict", "probability"))
        self.assertEqual(done.verdict, vane.VERDICT_CONFORMS)
        self.assertAlmostEqual(done.probability, 0.5 * (1 + math.erf(4 / math.sqrt(2))), places=12)
        verdict, probability = done
        self.assertEqual((verdict, probability), done)
        for protocol in range(pickle.HIGHEST_PROTOCOL + 1):
            other = pickle.loads(pickle.dumps(done, protocol))
            self.assertEqual(other, done)
            self.assertIs(type(other), type(done))

    def test_a_plain_mapping_serves_as_a_record(self):
        given = vane.duty_default().as_dict()
        oil = vane.oil_from_grade(46, 100)
        self.assertEqual(
            vane.pump_run(pump().as_dict(), oil.as_dict(), given),
            vane.pump_run(pump(), oil, vane.duty(given)),
        )
        for wrong in (None, 1, "ring", [1]):
            with self.assertRaisesRegex(TypeError, r"^pump_run: duty must be a record"):
                vane.pump_run(pump(), oil, wrong)
        with self.assertRaisesRegex(TypeError, r"^oil_at: temperature must be a number"):
            vane.oil_at(oil, "hot")
        with self.assertRaisesRegex(TypeError, r"^clearance_between: same_instrument must be an i"):
            vane.clearance_between(vane.width(), vane.width(), 0.5)


class Errors(unittest.TestCase):
    def refusal(self, function, *values, **named):
        with self.assertRaises(vane.Error) as caught:
            function(*values, **named)
        return caught.exception

    def test_a_bad_argument(self):
        error = self.refusal(flow, gap=-1)
        self.assertEqual(
            str(error), "slot_flow: gap must be finite and at least 0 m; it is -1 m."
        )
        self.assertEqual(error.text, "gap must be finite and at least 0 m; it is -1 m.")
        self.assertEqual((error.function, error.parameter), ("slot_flow", "gap"))
        self.assertEqual((error.value, error.index, error.result), (-1.0, None, None))
        self.assertEqual((error.code, error.status), (vane.INVALID_ARGUMENT, "invalid argument"))
        self.assertIsInstance(error, ValueError)

    def test_every_not_a_number_is_caught(self):
        for name in SLOT:
            for wrong in (math.nan, math.inf, -math.inf):
                error = self.refusal(flow, **{name: wrong})
                self.assertEqual(error.parameter, name)
                self.assertTrue(error.value == wrong or math.isnan(error.value))

    def test_a_result_too_large(self):
        error = self.refusal(flow, gap=1e200)
        self.assertEqual((error.code, error.status), (vane.OUT_OF_RANGE, "out of range"))
        self.assertEqual(error.parameter, "result")

    def test_a_procedure(self):
        error = self.refusal(vane.pump_run, pump(), vane.oil_default(), vane.duty(speed=-3))
        self.assertEqual(error.function, "pump_run")
        self.assertIn(error.parameter.split(".")[0], ("oil", "duty"))
        self.assertEqual(str(error), f"pump_run: {error.text}")
        parts = pump()
        parts.ring.width = -1
        error = self.refusal(
            vane.pump_run, parts, vane.oil_from_grade(46, 100), vane.duty_default()
        )
        self.assertEqual(error.parameter, "parts.ring.width")
        self.assertEqual(error.value, -1)

    def test_an_element_of_readings(self):
        taken = list(readings())
        taken[5].flow = -1
        error = self.refusal(vane.stand_slip_fit, taken, vane.oil_from_grade(46, 100), 1)
        self.assertEqual((error.index, error.value), (5, -1))
        self.assertRegex(str(error), r"^stand_slip_fit \[5\]: ")
        self.assertIsNone(error.result)

    def test_data_that_tell_nothing(self):
        error = self.refusal(vane.stand_displacement, list(readings())[:2])
        self.assertEqual(error.code, vane.NOT_IDENTIFIABLE)
        self.assertEqual(error.status, vane.status_name(vane.NOT_IDENTIFIABLE))

    def test_no_readings(self):
        error = self.refusal(vane.stand_displacement, [])
        self.assertEqual((error.code, error.parameter), (vane.INVALID_ARGUMENT, "readings"))

    def test_it_pickles(self):
        for error in (self.refusal(flow, gap=-1), self.refusal(flow, gap=[1e-6, -1])):
            other = pickle.loads(pickle.dumps(error))
            self.assertEqual(str(other), str(error))
            self.assertEqual((other.code, other.index), (error.code, error.index))

    def test_a_bad_element(self):
        error = self.refusal(flow, gap=[1e-5, -2, 2e-5, -3])
        self.assertEqual((error.index, error.value, error.parameter), (1, -2.0, "gap"))
        self.assertEqual(
            str(error), "slot_flow [1]: gap must be finite and at least 0 m; it is -2 m."
        )
        good = [flow(gap=1e-5), flow(gap=2e-5)]
        self.assertEqual([error.result[0], error.result[2]], good)
        self.assertTrue(math.isnan(error.result[1]) and math.isnan(error.result[3]))
        # Rows end to end.
        self.assertEqual(self.refusal(flow, gap=[[1, 1], [1, -1]]).index, 3)

    def test_a_bad_number_beside_arrays(self):
        error = self.refusal(flow, gap=[1e-5, 2e-5], viscosity=0)
        self.assertEqual((error.index, error.parameter), (0, "viscosity"))
        self.assertTrue(all(map(math.isnan, error.result)))


class Lists(unittest.TestCase):
    GAPS = [10e-6, 20e-6, 40e-6]

    def test_elements_have_the_bits_of_single_calls(self):
        done = flow(gap=self.GAPS)
        self.assertIs(type(done), list)
        self.assertIs(type(done[0]), float)
        self.assertEqual(done, [flow(gap=gap) for gap in self.GAPS])

    def test_any_sequence_serves(self):
        for given in (tuple(self.GAPS), collections.UserList(self.GAPS)):
            self.assertEqual(flow(gap=given), flow(gap=self.GAPS))
        self.assertEqual(flow(dp=range(3)), [flow(dp=0), flow(dp=1), flow(dp=2)])
        self.assertEqual(
            flow(dp=[fractions.Fraction(1, 2), 10**30]), [flow(dp=0.5), flow(dp=1e30)]
        )

    def test_shapes_broadcast(self):
        column = [[1e6], [2e6]]
        self.assertEqual(
            flow(gap=self.GAPS, dp=column),
            [[flow(gap=gap, dp=dp) for gap in self.GAPS] for (dp,) in column],
        )
        self.assertEqual(
            flow(gap=self.GAPS, dp=[[[1e6]], [[2e6]]]),
            [[[flow(gap=gap, dp=dp) for gap in self.GAPS]] for dp in (1e6, 2e6)],
        )
        cube = [[[1e-6, 2e-6], [3e-6, 4e-6]], [[5e-6, 6e-6], [7e-6, 8e-6]]]
        self.assertEqual(
            flow(gap=cube, dp=column),
            [[[flow(gap=g, dp=dp) for g in row] for row, (dp,) in zip(m, column)] for m in cube],
        )

    def test_a_single_element_keeps_its_shape(self):
        self.assertEqual(flow(gap=[1e-5]), [flow(gap=1e-5)])
        self.assertEqual(flow(gap=[[1e-5]]), [[flow(gap=1e-5)]])
        self.assertEqual(flow(gap=[[1e-5]], dp=[1.0, 2.0]), [flow(gap=1e-5, dp=[1.0, 2.0])])

    def test_nothing_in_nothing_out(self):
        self.assertEqual(flow(gap=[]), [])
        self.assertEqual(flow(gap=[[], []]), [[], []])
        self.assertEqual(flow(gap=[], dp=[1.0]), [])

    def test_shapes_that_do_not_fit(self):
        with self.assertRaisesRegex(ValueError, r"^slot_flow: .*gap \(3,\), dp \(2,\)$"):
            flow(gap=self.GAPS, dp=[1, 2])
        with self.assertRaisesRegex(ValueError, r"gap \(0,\), dp \(2,\)"):
            flow(gap=[], dp=[1, 2])
        with self.assertRaisesRegex(ValueError, r"gap \(2, 3\), dp \(2,\)"):
            flow(gap=[self.GAPS, self.GAPS], dp=[1, 2])

    def test_ragged_lists(self):
        endless = []
        endless.append(endless)
        for ragged in ([[1, 2], [3]], [1, [2]], [[1], 2], [[[1]], [2]], endless):
            with self.assertRaisesRegex(TypeError, r"^slot_flow: gap must be"):
                flow(gap=ragged)

    def test_elements_that_are_no_numbers(self):
        for wrong in (["1", "2"], [1, None], [1, "2"], [1j, 2], [b"1"], [{}], ["12", [1]]):
            with self.assertRaisesRegex(TypeError, r"^slot_flow: gap must be"):
                flow(gap=wrong)

    def test_out_needs_numpy(self):
        with self.assertRaisesRegex(TypeError, r"^slot_flow: out must be a NumPy array"):
            flow(gap=self.GAPS, out=[0, 0, 0])


@with_numpy
class Arrays(unittest.TestCase):
    def setUp(self):
        self.gap = numpy.linspace(1e-6, 40e-6, 12)

    def check(self, gap, wanted_shape=None, **others):
        """An array gives, element by element, the bits of single calls."""
        done = flow(gap=gap, **others)
        self.assertIs(type(done), numpy.ndarray)
        every = numpy.broadcast_arrays(gap, *others.values())
        self.assertEqual(done.shape, every[0].shape)
        for where in numpy.ndindex(done.shape):
            named = dict(zip(others, (float(a[where]) for a in every[1:])))
            self.assertEqual(done[where], flow(gap=float(every[0][where]), **named))

    def test_layouts(self):
        unaligned = numpy.zeros(12 * 8 + 1, numpy.uint8)[1:].view(float)
        unaligned[:] = self.gap
        packed = numpy.zeros(12, dtype=[("flag", "i1"), ("gap", "f8")])
        packed["gap"] = self.gap
        table = numpy.zeros((12, 5))
        table[:, 3] = self.gap
        for name, gap in {
            "contiguous": self.gap,
            "reversed": self.gap[::-1],
            "strided": self.gap[::3],
            "reversed and strided": self.gap[::-2],
            "column of a table": table[:, 3],
            "field of packed records": packed["gap"],
            "unaligned": unaligned,
            "unaligned and reversed": unaligned[::-1],
            "unaligned and strided": unaligned[::-3],
            "rows": self.gap.reshape(3, 4),
            "transposed": self.gap.reshape(3, 4).T,
            "Fortran's order": numpy.asfortranarray(self.gap.reshape(3, 4)),
            "cut out": self.gap.reshape(3, 4)[1:, ::-2],
            "unaligned rows": unaligned.reshape(3, 4),
            "repeated": numpy.broadcast_to(self.gap[3], 5),
            "other byte order": self.gap.astype(">f8"),
            "float32": self.gap.astype(numpy.float32),
            "float16": numpy.array([1, 2], numpy.float16),
            "int": numpy.arange(5),
            "uint8": numpy.arange(5, dtype=numpy.uint8),
            "bool": numpy.array([True, False]),
            "object": numpy.array([fractions.Fraction(1, 2), 1], dtype=object),
            "read-only": numpy.frombuffer(self.gap.tobytes()),
        }.items():
            with self.subTest(name):
                before = gap.copy()
                self.check(gap)
                numpy.testing.assert_array_equal(gap, before)

    def test_shapes_broadcast(self):
        for gap, dp in (
            ((3,), (1,)),
            ((1,), (3,)),
            ((2, 1), (3,)),
            ((3,), (2, 1)),
            ((2, 3), ()),
            ((1, 1), (1,)),
            ((4, 1, 2), (3, 1)),
            ((0,), (1,)),
            ((2, 0), (1, 1)),
            ((0, 3), (3,)),
        ):
            with self.subTest(gap=gap, dp=dp):
                size = math.prod(gap), math.prod(dp)
                self.check(
                    numpy.linspace(1e-6, 2e-6, size[0]).reshape(gap),
                    dp=numpy.linspace(1e6, 2e6, size[1]).reshape(dp),
                )

    def test_every_argument_an_array(self):
        ramp = numpy.linspace(1, 2, 300)
        done = vane.slot_flow(**{name: value * ramp for name, value in SLOT.items()})
        wanted = by_hand(**{name: value * ramp for name, value in SLOT.items()})
        numpy.testing.assert_allclose(done, wanted, rtol=1e-13)

    def test_numbers_of_numpy_are_numbers(self):
        for kind in (numpy.float64, numpy.float32, numpy.int64):
            self.assertIs(type(flow(dp=kind(15e6))), float)
            self.assertEqual(flow(dp=kind(15e6)), flow())
        self.assertIs(type(flow(dp=numpy.array(15e6))), float)
        self.assertEqual(flow(dp=numpy.array(15e6)), flow())

    def test_lists_beside_arrays(self):
        done = flow(gap=self.gap[:3], dp=[[1e6], [2e6]])
        self.assertIs(type(done), numpy.ndarray)
        self.assertEqual(done.tolist(), flow(gap=self.gap[:3].tolist(), dp=[[1e6], [2e6]]))

    def test_what_numpy_would_take_and_we_do_not(self):
        for wrong in (
            numpy.array([1j, 2]),
            numpy.array(["1", "2"]),
            numpy.array([b"1"]),
            numpy.array([1, None], dtype=object),
            numpy.array([1, "2"], dtype=object),
            numpy.array(["2020-01-01"], dtype="datetime64[D]"),
            numpy.zeros(2, dtype=vane.duty),
            numpy.complex64(1j),
            numpy.complex128(1j),
            numpy.str_("1"),
        ):
            with self.subTest(wrong=wrong):
                with self.assertRaisesRegex(TypeError, r"^slot_flow: gap must be"):
                    flow(gap=wrong)

    def test_what_is_masked_is_no_number(self):
        masked, instrument = numpy.ma.masked, vane.instrument()
        row = numpy.ma.array([1e-5, 9.0], mask=[0, 1])
        hidden = numpy.ma.array(9.0, mask=True)
        for wrong in (row, masked, hidden, [1e-5, masked], [row, row], [[[row]]], (1e-5, hidden)):
            for dp in (1e6, [1e6, 2e6]):
                with self.assertRaisesRegex(TypeError, r"^slot_flow: gap must be .*masked"):
                    flow(gap=wrong, dp=dp)
        with self.assertRaisesRegex(TypeError, r"^slot_flow: gap must be"):
            flow(gap=numpy.array([1, masked], dtype=object))
        for wrong in (row, [0.024, masked], [0.024, hidden]):
            with self.assertRaisesRegex(TypeError, r"^clearance_width: reading must be .*masked"):
                vane.clearance_width(wrong, instrument)
        for wrong in (masked, hidden):
            with self.assertRaisesRegex(TypeError, r"^oil_at: temperature must be .*masked"):
                vane.oil_at(fluid(), wrong)
            with self.assertRaisesRegex(TypeError, r"^vane\.ring\.width must be .*masked"):
                vane.ring(width=wrong)
        with self.assertRaisesRegex(TypeError, r"^vane\.parts\.vanes must be an integer"):
            vane.parts(vanes=numpy.ma.array(5, mask=True))
        given = numpy.ma.zeros(2, dtype=vane.duty)
        given["speed"][1] = masked
        with self.assertRaisesRegex(TypeError, r"^pump_map: duty must be .*masked"):
            vane.pump_map(pump(), fluid(), given)
        # With nothing masked it is an array like any other.
        open_row = numpy.ma.array([1e-5, 2e-5], mask=[0, 0])
        self.assertEqual(flow(gap=open_row).tolist(), flow(gap=[1e-5, 2e-5]))
        self.assertEqual(vane.clearance_width(open_row, instrument).greatest, 2e-5)
        self.assertEqual(len(vane.pump_map(pump(), fluid(), numpy.ma.array(
            [tuple(vane.duty_default().values())], dtype=vane.duty))), 1)

    def test_wrong_shapes(self):
        with self.assertRaisesRegex(ValueError, r"gap \(12,\), dp \(5,\)"):
            flow(gap=self.gap, dp=numpy.ones(5))

    def test_bad_elements(self):
        gap = self.gap.reshape(3, 4).copy()
        gap[1, 2] = numpy.nan
        gap[2, 0] = -1
        with self.assertRaises(vane.Error) as caught:
            flow(gap=gap)
        error = caught.exception
        self.assertEqual((error.index, error.parameter), (6, "gap"))
        self.assertTrue(math.isnan(error.value))
        bad = numpy.zeros((3, 4), bool)
        bad[1, 2] = bad[2, 0] = True
        numpy.testing.assert_array_equal(numpy.isnan(error.result), bad)
        numpy.testing.assert_array_equal(error.result[~bad], flow(gap=gap[~bad]))

    def test_out(self):
        out = numpy.full(12, -1.0)
        self.assertIs(flow(gap=self.gap, out=out), out)
        numpy.testing.assert_array_equal(out, flow(gap=self.gap))
        out = numpy.empty((2, 3))
        self.assertIs(flow(gap=self.gap[:3], dp=[[1e6], [2e6]], out=out), out)
        numpy.testing.assert_array_equal(out, flow(gap=self.gap[:3], dp=[[1e6], [2e6]]))
        out = numpy.empty(())
        self.assertIs(flow(out=out), out)
        self.assertEqual(out, flow())

    def test_out_after_a_refusal(self):
        out = numpy.zeros(2)
        with self.assertRaises(vane.Error) as caught:
            flow(gap=[1e-6, -1], out=out)
        self.assertIs(caught.exception.result, out)
        self.assertEqual(out[0], flow(gap=1e-6))
        self.assertTrue(math.isnan(out[1]))

    def test_out_may_be_an_argument(self):
        long = numpy.linspace(1e-6, 40e-6, 2000)
        wanted = flow(gap=long)
        given = long.copy()
        flow(gap=given, out=given)
        numpy.testing.assert_array_equal(given, wanted)
        given = long.copy()
        flow(gap=given[::-1], out=given)
        numpy.testing.assert_array_equal(given, wanted[::-1])
        given = long.copy()
        flow(gap=given[:-1], out=given[1:])
        numpy.testing.assert_array_equal(given[1:], wanted[:-1])
        given = long.copy()
        flow(gap=given[1000:1001], dp=numpy.full(2000, SLOT["dp"]), out=given)
        numpy.testing.assert_array_equal(given, numpy.full(2000, wanted[1000]))

    def test_an_out_that_does_not_serve(self):
        for wrong in (
            numpy.empty(11),
            numpy.empty((1, 12)),
            numpy.empty(12, numpy.float32),
            numpy.empty(12, ">f8"),
            numpy.empty(24)[::2],
            numpy.frombuffer(bytes(96)),
            numpy.zeros(97, numpy.uint8)[1:].view(float),
        ):
            with self.assertRaisesRegex(ValueError, r"^slot_flow: out must be .* \(12,\)$"):
                flow(gap=self.gap, out=wrong)

    def test_long_arrays(self):
        gap = numpy.tile(self.gap, 10_000)
        done = flow(gap=gap)
        numpy.testing.assert_array_equal(done.reshape(-1, 12), numpy.tile(done[:12], (10_000, 1)))
        numpy.testing.assert_array_equal(done[:12], flow(gap=self.gap))

    def test_readings_of_numbers(self):
        instrument = vane.instrument(error_limit=1e-6, resolution=1e-6)
        taken = [25.412e-3, 25.411e-3, 25.415e-3]
        wanted = vane.clearance_width(taken, instrument)
        for given in (
            numpy.array(taken),
            numpy.repeat(taken, 2)[::2],
            numpy.array(taken[::-1])[::-1],
            numpy.array(taken).astype(">f8"),
        ):
            self.assertEqual(vane.clearance_width(given, instrument), wanted)
        with self.assertRaisesRegex(ValueError, r"^clearance_width: reading must be one row"):
            vane.clearance_width(numpy.array([taken, taken]), instrument)
        for wrong in (numpy.array(["1"]), numpy.array([1j])):
            with self.assertRaisesRegex(TypeError, r"^clearance_width: reading must be numbers"):
                vane.clearance_width(wrong, instrument)


class Records(unittest.TestCase):
    def test_fields_and_what_is_not_given(self):
        ring = vane.ring(large_radius=0.03, law=vane.RING_CYCLOIDAL)
        self.assertEqual((ring.large_radius, ring.small_radius, ring.law), (0.03, 0, 3))
        self.assertEqual(vane.ring(), vane.ring(width=0))

    def test_unknown_fields(self):
        for make in (
            lambda: vane.ring(radius=1),
            lambda: vane.ring({"radius": 1}),
            lambda: setattr(vane.ring(), "radius", 1),
            lambda: vane.parts(ring={"radius": 1}),
            lambda: vane.pump_run({"ring": {"radius": 1}}, vane.oil(), vane.duty()),
        ):
            with self.assertRaisesRegex(AttributeError, r"^there is no field vane\.ring\.radius$"):
                make()
        with self.assertRaises(AttributeError):
            vane.ring().radius
        with self.assertRaises(KeyError):
            vane.ring()["radius"]

    def test_wrong_values(self):
        for wrong in (None, "1", 1j, [1], {}):
            with self.assertRaisesRegex(TypeError, r"^vane\.ring\.width must be a number"):
                vane.ring(width=wrong)
        with self.assertRaisesRegex(OverflowError, r"^vane\.ring\.width is too large"):
            vane.ring(width=10**400)
        for wrong in (1.0, "1", None):
            with self.assertRaisesRegex(TypeError, r"^vane\.parts\.vanes must be an integer"):
                vane.parts(vanes=wrong)
        for huge in (2**31, -(2**31) - 1, 2**64):
            with self.assertRaisesRegex(OverflowError, r"^vane\.parts\.vanes does not fit"):
                vane.parts(vanes=huge)
        self.assertEqual(vane.parts(vanes=-(2**31)).vanes, -(2**31))
        for wrong in (None, 1, "ring", [1]):
            with self.assertRaisesRegex(TypeError, r"^vane\.parts\.ring must be a record"):
                vane.parts(ring=wrong)
        for wrong in (1, "ring", [1]):
            with self.assertRaisesRegex(TypeError, r"^vane\.parts must be a record"):
                vane.parts(wrong)

    def test_nested(self):
        parts = vane.parts(ring={"large_radius": 0.03}, vanes=12)
        self.assertEqual(parts, vane.parts(ring=vane.ring(large_radius=0.03), vanes=12))
        parts.ring.width = 0.02
        self.assertEqual(parts.ring.width, 0.02)
        parts.ring = {"width": 0.01}
        self.assertEqual(parts.ring, vane.ring(width=0.01))

    def test_copies_with_changes_stand_alone(self):
        parts = pump()
        for other in (vane.parts(parts, vanes=10), copy.deepcopy(parts), copy.copy(parts)):
            other.vanes = 10
            other.ring.width = 1
            self.assertEqual((parts.vanes, parts.ring.width), (12, 25.412e-3))
            self.assertEqual(vane.parts(other, vanes=12, ring=parts.ring), parts)
        ring = vane.ring(width=1)
        parts.ring = ring
        ring.width = 2
        self.assertEqual(parts.ring.width, 1)

    def test_a_call_leaves_its_arguments_alone(self):
        parts, duty, oil = pump(), vane.duty_default(), vane.oil_from_grade(46, 100)
        before = [r.as_dict() for r in (parts, duty, oil)]
        vane.pump_run(parts, oil, duty)
        self.assertEqual([r.as_dict() for r in (parts, duty, oil)], before)

    def test_equality(self):
        self.assertEqual(pump(), pump())
        self.assertNotEqual(pump(), vane.parts(pump(), vanes=10))
        self.assertNotEqual(pump(), vane.parts(pump(), ring=vane.ring()))
        self.assertNotEqual(vane.ring(), vane.duty())
        self.assertNotEqual(vane.ring(), vane.ring().as_dict())
        self.assertNotEqual(vane.ring(width=math.nan), vane.ring(width=math.nan))
        with self.assertRaises(TypeError):
            hash(vane.ring())

    def test_pickle(self):
        done = vane.pump_run(pump(), vane.oil_from_grade(46, 100), vane.duty_default())
        for record in (pump(), done, vane.error(name="gap")):
            for protocol in range(pickle.HIGHEST_PROTOCOL + 1):
                other = pickle.loads(pickle.dumps(record, protocol))
                self.assertEqual(other, record)
                self.assertIs(type(other), type(record))

    def test_text(self):
        error = vane.error(name="gap")
        self.assertEqual((error.name, error["text"]), ("gap", ""))
        self.assertEqual(vane.error(name="x" * 47).name, "x" * 47)
        for wrong in (b"gap", None, 1):
            with self.assertRaisesRegex(TypeError, r"^vane\.error\.name must be text, not"):
                vane.error(name=wrong)
        for long in ("x" * 48, "\u00fc" * 24):
            with self.assertRaisesRegex(ValueError, r"^vane\.error\.name .* fewer than 48 bytes"):
                vane.error(name=long)

    def test_repr_is_the_record(self):
        done = vane.pump_run(pump(), vane.oil_from_grade(46, 100), vane.duty_default())
        for record in (pump(), done, vane.error(name="gap"), vane.thread_strength(1, 0.010)):
            self.assertEqual(eval(repr(record), {"vane": vane}), record)
        for odd in (math.nan, math.inf, -math.inf):
            parts = vane.parts(pump(), ring={"width": odd}, notch=odd)
            again = eval(repr(parts), {"vane": vane})
            self.assertEqual(repr(again), repr(parts))
            self.assertEqual(str((again.notch, again.ring.width)), str((odd, odd)))
        self.assertIn("    width=0.025412,  # m\n", repr(pump().ring))

    def test_as_mappings(self):
        ring = vane.ring(width=0.02)
        self.assertEqual(dict(ring), ring.as_dict())
        self.assertEqual(dict(**ring)["width"], 0.02)
        self.assertEqual(ring["width"], 0.02)
        self.assertEqual(list(ring), list(ring.as_dict()))
        self.assertEqual(len(ring), len(ring.as_dict()))
        self.assertTrue("width" in ring and "widht" not in ring)
        self.assertEqual(dict(ring.items()), dict(zip(ring.keys(), ring.values())))
        self.assertEqual((ring.get("width"), ring.get("widht", 7)), (0.02, 7))
        self.assertIsInstance(ring, collections.abc.Mapping)
        parts = pump().as_dict()
        self.assertIs(type(parts["ring"]), dict)
        self.assertEqual(parts["ring"]["width"], 25.412e-3)
        self.assertEqual(vane.parts(parts), pump())
        self.assertEqual(json.loads(json.dumps(parts)), parts)

    def test_names_that_python_reserves(self):
        strength = vane.thread_strength(vane.THREAD_8_8, 0.010)
        self.assertEqual(strength.yield_, 640e6)
        self.assertEqual(vane.thread_class(yield_=1.0).as_dict()["yield_"], 1)

    def test_every_record_has_its_size_in_c(self):
        import ctypes

        for item in API["records"]:
            made = getattr(vane, item["name"][len("vane_") :])
            self.assertEqual(ctypes.sizeof(made), item["size"])
            self.assertEqual(
                [getattr(made, name).offset for name in made().keys()],
                [field["offset"] for field in item["fields"]],
            )


class RecordArrays(unittest.TestCase):
    def setUp(self):
        self.oil = fluid()

    def test_lists_in_lists_out(self):
        given = duties(2, 5, 10)
        done = vane.pump_map(pump(), self.oil, given)
        self.assertIs(type(done), list)
        self.assertEqual(done, [vane.pump_run(pump(), self.oil, duty) for duty in given])
        self.assertEqual(vane.pump_map(pump(), self.oil, [d.as_dict() for d in given]), done)
        self.assertEqual(vane.pump_map(pump(), self.oil, iter(given)), done)

    def test_one_and_none(self):
        self.assertEqual(len(vane.pump_map(pump(), self.oil, duties(5))), 1)
        self.assertEqual(vane.pump_map(pump(), self.oil, []), [])

    def test_a_refused_duty_does_not_stop_the_others(self):
        given = duties(2, -5, 10)
        with self.assertRaises(vane.Error) as caught:
            vane.pump_map(pump(), self.oil, given)
        error = caught.exception
        self.assertEqual((error.index, error.function), (1, "pump_map"))
        self.assertEqual(error.result[0], vane.pump_run(pump(), self.oil, given[0]))
        self.assertEqual(error.result[2], vane.pump_run(pump(), self.oil, given[2]))
        self.assertTrue(math.isnan(error.result[1].outlet_flow))
        self.assertEqual(error.result[1].caution, 0)

    def test_wrong_elements(self):
        for wrong in (5, None, "ab", vane.duty(), vane.duty().as_dict()):
            with self.assertRaisesRegex(TypeError, r"^pump_map: duty must be a sequence"):
                vane.pump_map(pump(), self.oil, wrong)
        for wrong in (b"12", {0.02: 1}, {0.02, 0.03}):
            with self.assertRaisesRegex(TypeError, r"^clearance_width: reading must be a seq"):
                vane.clearance_width(wrong, vane.instrument())
        for wrong in ([1], [None], [vane.duty(), 3]):
            with self.assertRaisesRegex(TypeError, r"^pump_map: duty must be a record"):
                vane.pump_map(pump(), self.oil, wrong)
        with self.assertRaisesRegex(AttributeError, r"vane\.duty\.large_radius"):
            vane.pump_map(pump(), self.oil, [vane.ring(width=1)])
        for wrong in (["1"], [None], [[1.0]]):
            with self.assertRaisesRegex(TypeError, r"^clearance_width: reading must be a number"):
                vane.clearance_width(wrong, vane.instrument())

    def test_slip_fit(self):
        done = vane.stand_slip_fit(
            reading=list(readings()), oil=self.oil, terms=vane.SLIP_LAMINAR | vane.SLIP_ORIFICE
        )
        self.assertEqual(done._fields, ("out", "correlation"))
        self.assertAlmostEqual(done.out.displacement / DISPLACEMENT, 1, delta=1e-9)
        self.assertEqual(done.out.terms, 3)
        self.assertIs(type(done.correlation), list)
        self.assertEqual(len(done.correlation), 16)
        self.assertEqual([done.correlation[i] for i in (0, 5, 10)], [1, 1, 1])
        self.assertEqual(done.correlation[1], done.correlation[4])
        self.assertEqual(done.correlation[15], 0)

    @with_numpy
    def test_numpy_in_numpy_out(self):
        given = numpy.zeros(3, dtype=vane.duty)
        given["speed"], given["temperature"] = 25, 323.15
        given["outlet_pressure"] = [2e6, 5e6, 10e6]
        done = vane.pump_map(pump(), self.oil, given)
        self.assertEqual(done.dtype, numpy.dtype(vane.performance))
        wanted = vane.pump_map(pump(), self.oil, duties(2, 5, 10))
        self.assertEqual(done["slip"]["total"].tolist(), [p.slip.total for p in wanted])
        self.assertEqual(done["caution"].tolist(), [p.caution for p in wanted])
        self.assertEqual(
            [vane.performance.from_buffer_copy(row) for row in done.copy()], wanted
        )
        for other in (given.view(numpy.recarray), numpy.repeat(given, 2)[::2]):
            self.assertEqual(vane.pump_map(pump(), self.oil, other).tolist(), done.tolist())
        self.assertEqual(vane.pump_map(pump(), self.oil, given[:0]).shape, (0,))
        given["speed"][1] = 0
        with self.assertRaises(vane.Error) as caught:
            vane.pump_map(pump(), self.oil, given)
        numpy.testing.assert_array_equal(
            numpy.isnan(caught.exception.result["outlet_flow"]), [False, True, False]
        )

    @with_numpy
    def test_numpy_arrays_that_do_not_serve(self):
        with self.assertRaisesRegex(TypeError, r"^pump_map: duty .* the dtype of vane\.duty$"):
            vane.pump_map(pump(), self.oil, numpy.zeros(3))
        with self.assertRaisesRegex(TypeError, r"the dtype of vane\.duty$"):
            vane.pump_map(pump(), self.oil, numpy.zeros(3, dtype=vane.ring))
        with self.assertRaisesRegex(ValueError, r"^pump_map: duty must be one row"):
            vane.pump_map(pump(), self.oil, numpy.zeros((3, 1), dtype=vane.duty))
        with self.assertRaisesRegex(ValueError, r"^pump_map: duty must be one row"):
            vane.pump_map(pump(), self.oil, numpy.zeros((), dtype=vane.duty))

    @with_numpy
    def test_slip_fit_of_a_numpy_array(self):
        taken = list(readings())
        given = numpy.array([tuple(r.as_dict().values()) for r in taken], dtype=vane.reading)
        done = vane.stand_slip_fit(given, self.oil, vane.SLIP_LAMINAR)
        wanted = vane.stand_slip_fit(taken, self.oil, vane.SLIP_LAMINAR)
        self.assertEqual(done.out, wanted.out)
        self.assertIs(type(done.correlation), numpy.ndarray)
        self.assertEqual(done.correlation.tolist(), wanted.correlation)


class Enumerations(unittest.TestCase):
    def test_numbers_with_names(self):
        self.assertEqual(vane.RING_CYCLOIDAL, 3)
        self.assertIs(vane.ring_law(3), vane.RING_CYCLOIDAL)
        self.assertEqual(vane.ring_law.RING_CYCLOIDAL.name, "RING_CYCLOIDAL")
        with self.assertRaises(ValueError):
            vane.ring_law(99)

    def test_sets(self):
        both = vane.SLIP_LAMINAR | vane.SLIP_COMPRESSIBILITY
        self.assertEqual(both, 5)
        self.assertIs(type(both), vane.slip_term)
        self.assertIn(vane.SLIP_LAMINAR, both)
        self.assertNotIn(vane.SLIP_ORIFICE, both)
        self.assertIn(vane.CAUTION_THIN_OIL, vane.caution(128 + 512))

    def test_all_of_the_manifest_are_there(self):
        for item in API["enums"]:
            kind = getattr(vane, item["name"][len("vane_") :])
            self.assertEqual(kind.__doc__, item["brief"])
            for value in item["values"]:
                member = getattr(vane, value["name"][len("VANE_") :])
                self.assertEqual(member, value["value"])
                self.assertIs(type(member), kind)

    def test_pickle(self):
        for member in (vane.RING_CYCLOIDAL, vane.SLIP_LAMINAR | vane.SLIP_ORIFICE):
            self.assertEqual(pickle.loads(pickle.dumps(member)), member)


class Documentation(unittest.TestCase):
    def made(self, item):
        return getattr(vane, item["name"][len("vane_") :])

    def test_everything_public_is_there_once(self):
        self.assertEqual(len(vane.__all__), len(set(vane.__all__)))
        wanted = {i["name"][5:] for kind in ("records", "enums") for i in API[kind]}
        wanted |= {v["name"][5:] for e in API["enums"] for v in e["values"]}
        wanted |= {f["name"][5:] for f in API["functions"] if f["topic"] != "array"}
        self.assertEqual(set(vane.__all__), wanted | {"Error"})
        self.assertTrue(all(hasattr(vane, name) for name in vane.__all__))
        self.assertTrue(all(name.isidentifier() for name in vane.__all__))

    def test_functions_tell_every_parameter(self):
        for item in API["functions"]:
            if item["topic"] == "array":
                continue
            made = self.made(item)
            doc = " ".join(made.__doc__.split())
            given = list(inspect.signature(made).parameters)
            self.assertTrue(doc.startswith(vane._docs.in_python(item["brief"])), item["name"])
            self.assertEqual((made.__module__, made.__name__), ("vane", item["name"][5:]))
            for param in item["params"]:
                if param["name"] not in given:
                    continue
                with self.subTest(function=item["name"], param=param["name"]):
                    self.assertIn(f"{param['name']} ", doc)
                    unit = param["unit"]
                    if unit is not None:
                        row = re.search(
                            rf"^{param['name']}  (.*?)(?=^\S|\Z)", made.__doc__, re.M | re.S
                        )
                        self.assertIn(f"[{unit}", row[1])
            if item["kind"] == "formula":
                self.assertRegex(doc, rf"Returns .*\[{re.escape(item['returns']['unit'])}\]")
                self.assertIn(vane._docs.in_python(item["formula"]).split("\n")[0], made.__doc__)
            self.assertIn("Source ", doc)

    def test_records_tell_every_field(self):
        for item in API["records"]:
            made = self.made(item)
            self.assertTrue(" ".join(made.__doc__.split()).startswith(item["brief"]))
            for name, field in zip(made().keys(), item["fields"]):
                row = re.search(rf"^{name}  (.*?)(?=^\S|\Z)", made.__doc__, re.M | re.S)
                if field["unit"]:
                    self.assertIn(f"[{field['unit']}", row[1])

    def test_names_in_the_text_are_python_s(self):
        known = {"array_run", *vane.__all__, "units_..."}
        for name in vane.__all__:
            doc = getattr(vane, name).__doc__ or ""
            self.assertNotRegex(doc, r"\bvane_\w+\(|\benum\s|\bVANE_|->|NULL", name)
            for named in re.findall(r"\bvane\.(\w+)", doc):
                self.assertTrue(named in known, f"{name} speaks of {named}")

    def test_lines_fit_a_terminal(self):
        for name in vane.__all__:
            for line in (getattr(vane, name).__doc__ or "").splitlines():
                self.assertEqual(line.strip() and line, line.rstrip(), name)
                if not line.startswith("    "):
                    self.assertLessEqual(len(line), 79, name)

    def test_help_renders(self):
        page = pydoc.plain(pydoc.render_doc(vane))
        self.assertIn("slot_flow(width, gap, length, dp, viscosity, wall_speed, *, out=None)", page)
        self.assertIn("Flow through a slot between two parallel plates", page)
        self.assertIn("class ring(", page)
        page = pydoc.plain(pydoc.render_doc(vane.slot_flow))
        self.assertIn("    gap         Distance between the walls [m; >= 0]\n", page)


class Stub(unittest.TestCase):
    def setUp(self):
        self.tree = ast.parse((PACKAGE / "__init__.pyi").read_text(encoding="utf-8"))

    def test_it_names_what_the_module_names(self):
        names = set()
        for node in self.tree.body:
            if isinstance(node, (ast.FunctionDef, ast.ClassDef)):
                names.add(node.name)
            elif isinstance(node, ast.Assign):
                names |= {target.id for target in node.targets}
        self.assertEqual({n for n in names if not n.startswith("_")}, set(vane.__all__))

    def test_its_parameters_are_the_module_s(self):
        for node in self.tree.body:
            if isinstance(node, ast.FunctionDef):
                made = getattr(vane, node.name)
                self.assertEqual(
                    [argument.arg for argument in node.args.args],
                    [n for n in inspect.signature(made).parameters if n != "out"],
                )

    def test_its_fields_are_the_records(self):
        for node in self.tree.body:
            made = getattr(vane, getattr(node, "name", ""), None)
            if isinstance(node, ast.ClassDef) and hasattr(made, "_members"):
                fields = [n.target.id for n in node.body if isinstance(n, ast.AnnAssign)]
                self.assertEqual(fields, list(made().keys()))

    @unittest.skipUnless(importlib.util.find_spec("mypy"), "mypy is not there: types NOT checked")
    def test_types(self):
        good = """
import vane
flow: float = vane.slot_flow(0.02, gap=1e-5, length=5e-3, dp=1e6, viscosity=8e-3, wall_speed=0)
flows = vane.slot_flow(0.02, [1e-5, 2e-5], 5e-3, 1e6, 8e-3, 0)
parts: vane.parts = vane.parts_default()
parts.ring = vane.ring(vane.ring_default(), width=0.02, law=vane.RING_CYCLOIDAL)
parts = vane.parts(parts, ring={"width": 0.02}, vanes=12)
done = vane.pump_run(parts, vane.oil_from_grade(46, 100), vane.duty_default())
total: float = done.slip.total
verdict: int = vane.measure_verdict(0, 0, 0, 1, 2).verdict
fit = vane.stand_slip_fit([vane.reading()], vane.oil_default(), vane.SLIP_LAMINAR).out
caution: bool = vane.CAUTION_THIN_OIL in vane.caution(fit.caution)
names: list[str] = list(parts) if "ring" in parts else [vane.error().name]
try:
    name: str = vane.status_name(0)
except vane.Error as error:
    index = error.index
"""
        bad = [
            "vane.slot_flow(1)",
            "vane.ring(radius=1.0)",
            "vane.ring().radius",
            "x: str = vane.ring().width",
            "x = vane.parts().ring.radius",
            "vane.parts(ring=3)",
            "vane.pump_run(vane.ring(), vane.oil(), vane.duty())",
        ]
        with tempfile.TemporaryDirectory() as place:
            tried = pathlib.Path(place, "tried.py")
            tried.write_text(good + "\n".join(bad) + "\n")
            done = subprocess.run(
                [sys.executable, "-m", "mypy", "--strict", "--cache-dir", place, str(tried)]
                + [str(PACKAGE / "__init__.pyi")],
                env={**os.environ, "MYPYPATH": str(PACKAGE.parent)},
                capture_output=True,
                text=True,
            )
        found = {int(n) for n in re.findall(r"tried\.py:(\d+): error", done.stdout)}
        first = good.count("\n") + 1
        self.assertEqual(found, set(range(first, first + len(bad))), done.stdout + done.stderr)
        self.assertNotRegex(done.stdout, r"\.pyi:\d+: error")


class Loading(unittest.TestCase):
    def run_python(self, code, **environment):
        return subprocess.run(
            [sys.executable, "-c", code],
            env={**os.environ, "PYTHONPATH": str(PACKAGE.parent), **environment},
            capture_output=True,
            text=True,
        )

    def refused(self, **environment):
        done = self.run_python("import vane", **environment)
        self.assertEqual(done.returncode, 1)
        return done.stderr.strip().splitlines()[-1]

    def test_files_that_are_not_there(self):
        for variable in ("VANE_LIBRARY", "VANE_MANIFEST"):
            self.assertEqual(
                self.refused(**{variable: "/nowhere/at all"}),
                f"ImportError: {variable} names /nowhere/at all, which is not there",
            )

    def test_files_that_are_something_else(self):
        last = self.refused(VANE_LIBRARY=__file__)
        self.assertRegex(last, r"^ImportError: libvane cannot be loaded \(.*VANE_LIBRARY")
        import _ctypes

        if getattr(_ctypes, "__file__", None):
            last = self.refused(VANE_LIBRARY=_ctypes.__file__)
            self.assertRegex(last, r"^ImportError: libvane cannot be loaded \(.*vane_version")

    def test_versions_that_differ(self):
        with tempfile.TemporaryDirectory() as place:
            other = pathlib.Path(place, "vane-api.json")
            other.write_text(json.dumps({**API, "version": "99.1"}), encoding="utf-8")
            last = self.refused(VANE_MANIFEST=str(other))
        self.assertRegex(
            last, rf"^ImportError: .* is version {re.escape(API['version'])}, its manifest 99\.1$"
        )

    def run_with_manifest(self, change, code):
        """Runs a program with the manifest that `change` makes of this one."""
        changed = copy.deepcopy(API)
        change({item["name"]: item for kind in ("functions", "enums") for item in changed[kind]})
        with tempfile.TemporaryDirectory() as place:
            other = pathlib.Path(place, "vane-api.json")
            other.write_text(json.dumps(changed), encoding="utf-8")
            hide = "import sys; sys.modules['numpy'] = None\n" if numpy is None else ""
            head = f"{hide}import inspect, vane\n"
            done = self.run_python(head + textwrap.dedent(code), VANE_MANIFEST=str(other))
        self.assertEqual((done.returncode, done.stderr), (0, ""))

    def test_any_parameter_name_will_do(self):
        names = (
            ["out", "c", "plain", "general", "type", "lambda"],
            ["result", "nan", "ArgumentError", "values", "self", "None"],
        )
        for own in names:
            wanted = [n + "_" if n in ("out", "lambda", "None") else n for n in own]

            def change(items):
                for param, name in zip(items["vane_slot_flow"]["params"], own):
                    param["name"] = name
                items["vane_oil_at"]["params"][1]["name"] = "from"
                items["vane_measure_verdict"]["params"][-2]["name"] = "in"
                for param in items["vane_pump_map"]["params"]:
                    if param["name"] == "duties":
                        param["name"] = "for"
                    if param["length"] == "duties":
                        param["length"] = "for"
                items["vane_status"]["values"][0]["name"] = "VANE_None"

            self.run_with_manifest(
                change,
                f"""
                values = {tuple(SLOT.values())}
                names = {wanted}
                assert list(inspect.signature(vane.slot_flow).parameters) == [*names, "out"]
                assert vane.slot_flow(*values) == {flow()!r}
                assert vane.slot_flow(**dict(zip(names, values))) == {flow()!r}
                assert vane.slot_flow(values[0], [values[1]], *values[2:]) == [{flow()!r}]
                assert all(name + " " in vane.slot_flow.__doc__ for name in names)
                try:
                    vane.slot_flow(*values[:4], "8", 0)
                except TypeError as reason:
                    assert str(reason).startswith("slot_flow: " + names[4]), reason
                oil = vane.oil_from_grade(46, 100)
                assert vane.oil_at(oil, from_=300) == vane.oil_at(oil, 300)
                assert vane.measure_verdict(0, 1, 2, 3, 4)._fields[-1] == "in_"
                parts = vane.parts({pump().as_dict()})
                assert vane.pump_map(parts, oil, []) == []
                assert vane.None_ == 0
                """,
            )

    def test_a_length_may_be_the_caller_s(self):
        def change(items):
            # One duty, and so many performances as the caller says.
            for param in items["vane_pump_map"]["params"]:
                if param["name"] == "duty":
                    param["length"] = None

        self.run_with_manifest(
            change,
            f"""
            oil, duty = vane.oil_from_grade(46, 100), vane.duty_default()
            parts = vane.parts({pump().as_dict()})
            assert vane.pump_map(parts, oil, duty, 1) == [vane.pump_run(parts, oil, duty)]
            assert vane.pump_map(parts, oil, duty, 0) == []
            for wrong in (-1, -(2**31)):
                try:
                    vane.pump_map(parts, oil, duty, wrong)
                except vane.Error as error:
                    assert (error.parameter, error.value) == ("duties", wrong), error
                    assert error.result == []
                else:
                    raise AssertionError(wrong)
            """,
        )

    def test_a_module_that_nothing_was_installed_for(self):
        with tempfile.TemporaryDirectory() as place:
            lonely = pathlib.Path(place, "vane")
            lonely.mkdir()
            for source in PACKAGE.glob("*.py"):
                if not source.name.startswith("_where"):
                    (lonely / source.name).write_bytes(source.read_bytes())
            environment = {"PYTHONPATH": place, "VANE_LIBRARY": "", "VANE_MANIFEST": ""}
            self.assertEqual(
                self.refused(**environment),
                "ImportError: vane-api.json is not where it was installed; "
                "VANE_MANIFEST can name it",
            )
            # Named files, or a manifest beside the module, are all it takes.
            library = os.environ.get("VANE_LIBRARY") or vane._where.LIBRARY
            (lonely / "vane-api.json").write_bytes(MANIFEST.read_bytes())
            done = self.run_python(
                "import vane; print(vane.version())", **{**environment, "VANE_LIBRARY": library}
            )
            self.assertEqual((done.stdout.strip(), done.returncode), (API["version"], 0))

    def test_nothing_is_printed(self):
        done = self.run_python("import vane; vane.pump_run")
        self.assertEqual((done.stdout, done.stderr), ("", ""))

    def test_the_stars_are_the_api(self):
        done = self.run_python("from vane import *; print(slot_flow, RING_CYCLOIDAL, Error)")
        self.assertEqual(done.returncode, 0, done.stderr)


class Threads(unittest.TestCase):
    def test_four_at_a_time(self):
        parts, oil = pump(), vane.oil_from_grade(46, 100)
        wanted = [vane.pump_run(parts, oil, duty) for duty in duties(4, 5, 6, 7)]
        faults = []
        together = threading.Barrier(4)

        def work(number):
            gaps = [(number + 1) * 1e-6] * 50
            (duty,) = duties(4 + number)
            together.wait()
            for turn in range(200):
                if flow(gap=gaps) != [flow(gap=gaps[0])] * 50:
                    faults.append("array")
                if turn % 20 == 0 and vane.pump_run(parts, oil, duty) != wanted[number]:
                    faults.append("procedure")
                try:
                    flow(gap=-1 - number)
                    faults.append("no error")
                except vane.Error as error:
                    if error.value != -1 - number or f"-{1 + number} m." not in error.text:
                        faults.append(error)

        def guarded(number):
            try:
                work(number)
            except Exception as reason:
                faults.append(reason)

        threads = [threading.Thread(target=guarded, args=(n,)) for n in range(4)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(faults, [])


if __name__ == "__main__":
    if numpy is None:
        print("NumPy is not there: its arrays are NOT tested.", file=sys.stderr)
    unittest.main()
