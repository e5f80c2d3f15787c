"""What the references of a topic are written with.

A reference is the printed formula in mpmath, once more and by other hands than
the library: a function with the formula's name, less vane_ and the topic, and
its parameters. It may cancel and converge slowly; it has digits enough.

Numbers in a topic's file are exact decimals: 0.0254 is 254/10000 there, and
1/3 a third, for its source is rewritten before it runs.
"""

import ast
import pathlib
import re

import mpmath
from mpmath import mp, mpf

DIGITS = 40
HERE = pathlib.Path(__file__).parent


class Reference:
    def __init__(self, function):
        self.function, self.name = function, function.__name__
        self.names = function.__code__.co_varnames[: function.__code__.co_argcount]
        self.ulp, self.reason, self.conditioned = 4, "", 0
        self.digits, self.most, self.draw, self.scale = DIGITS, None, None, None

    def __call__(self, *values):
        return self.function(*values)


def option(**settings):
    def apply(function):
        reference = function if isinstance(function, Reference) else Reference(function)
        for name, value in settings.items():
            setattr(reference, name, value)
        return reference

    return apply


def within(ulp, reason):
    """More than 4 ulp, and why."""
    return option(ulp=ulp, reason=reason)


def conditioned(reason, ulp=4, times=1):
    """The formula magnifies what its inputs are rounded by: so many times that is allowed."""
    return option(conditioned=times, reason=reason, ulp=ulp)


def digits(count):
    """Where the printed form cancels more than the usual digits."""
    return option(digits=count)


def at_most(draws):
    """Where a reference takes so long that the long campaign draws fewer."""
    return option(most=draws)


def drawn(draw):
    """draw(random) gives the parameters that the ranges alone would not make meaningful."""
    return option(draw=draw)


def against(scale):
    """scale(...) of the same parameters: what the error is measured by, if it is the larger."""
    return option(scale=scale)


class Exact(ast.NodeTransformer):
    def __init__(self, source):
        self.source = source

    def visit_Constant(self, node):
        if isinstance(node.value, float):
            text = ast.get_source_segment(self.source, node)
            call = ast.Call(ast.Name("decimal", ast.Load()), [ast.Constant(text)], [])
            return ast.copy_location(call, node)
        return node

    def visit_BinOp(self, node):
        self.generic_visit(node)
        if isinstance(node.op, ast.Div) and isinstance(node.left, ast.Constant):
            call = ast.Call(ast.Name("mpf", ast.Load()), [node.left], [])
            node.left = ast.copy_location(call, node.left)
        return node


class Mpmath:
    """Arithmetic of any precision in Python, with every special function."""

    words = {n: getattr(mpmath, n) for n in (
        "mp", "mpf", "sqrt", "cbrt", "exp", "expm1", "log", "log1p", "log10", "sin", "cos", "tan",
        "atan", "asin", "sinh", "cosh", "tanh", "pi", "polylog", "erfc",
    )}
    number = mpf

    @staticmethod
    def digits(count):
        if mp.dps != count:
            mp.dps = count


class Mpfr:
    """The same numbers from MPFR itself, several times as fast: for the long campaign."""

    words = {}

    @classmethod
    def prepare(cls):
        """False where it is not installed."""
        try:
            import gmpy2
        except ImportError:
            return False
        cls.context = gmpy2.get_context()
        cls.digits(200)
        cls.number = gmpy2.mpfr
        cls.words = {n: getattr(gmpy2, n, None) for n in Mpmath.words}
        cls.words |= {"mpf": gmpy2.mpfr, "pi": gmpy2.const_pi()}
        return True

    @classmethod
    def digits(cls, count):
        bits = int(count * 3.33) + 10
        if cls.context.precision != bits:
            cls.context.precision = bits


def table(file, name):
    """Rows of numbers that the library holds as data: their interpolation is what is tested."""
    source = (HERE.parent.parent / "lib" / file).read_text()
    body = re.search(rf"\b{name}(?:\[\d*\])* = \{{\n(.*?)^\}};", source, re.S | re.M)[1]
    rows = re.findall(r"\{([^{}]*)\}", body)
    return [[x.strip() for x in row.split(",") if x.strip()] for row in rows]


def topic(name, backend=Mpmath):
    """The references of a topic's file by name, or {} where there is none."""
    path = HERE / f"{name}.py"
    if not path.exists():
        return {}
    source = path.read_text(encoding="utf-8")
    tree = ast.fix_missing_locations(Exact(source).visit(ast.parse(source)))
    backend.digits(200)
    decimals = {}

    def decimal(text):
        if text not in decimals:
            decimals[text] = backend.number(text)
        return decimals[text]

    def rows(file, name):
        return [[backend.number(x) for x in row] for row in table(file, name)]

    scope = backend.words | {
        "mpmath": mpmath, "decimal": decimal, "table": rows, "within": within,
        "conditioned": conditioned, "digits": digits, "at_most": at_most, "drawn": drawn,
        "against": against, "__name__": name,
    }
    exec(compile(tree, str(path), "exec"), scope)
    found = {}
    for word, value in scope.items():
        if isinstance(value, Reference):
            found[word] = value
        elif getattr(value, "__module__", None) == name and not word.startswith("_"):
            found[word] = Reference(value)
    return found
