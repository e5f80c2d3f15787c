"""Breaks one rule of the public headers at a time: the documentation build must refuse each.

A small header without fault is changed in one place for each rule. Doxygen, as the
library's own Doxyfile sets it, and docs/manifest.py read it as they read the public
headers: one of them must fail and name the item in one line. The header itself,
and the changes that break no rule, must pass.

    python3 breaches.py SOURCE_DIR DOXYGEN
"""

import concurrent.futures
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

HEADER = """\
/**
 * @file probe.h
 * Probes of the contract.
 */
#ifndef VANE_PROBE_H
#define VANE_PROBE_H

#include "vane/error.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Kind of a probe. */
enum vane_probe_kind {
	VANE_PROBE_BLUNT = 1, /**< A blunt one. */
	VANE_PROBE_SHARP = 2  /**< A sharp one. */
};

/** Where a probe stands. */
typedef struct vane_place {
	double x; /**< First coordinate [m; any]. */
	double y; /**< Second coordinate [m; any]. */
} vane_place;

/** A probe. */
typedef struct vane_probe {
	vane_place place; /**< Its place. */
	double length;    /**< Its length [m; > 0]. */
	double depth;     /**< Its depth [m; 0 < x <= length]. */
	int32_t kind;     /**< A number of enum vane_probe_kind [1; 1 <= x <= 2]. */
	int32_t reserved; /**< Must be 0 [1; 0]. */
} vane_probe;

/**
 * Fills a probe.
 *
 * @source  Definition.
 *
 * @param[out] probe  The record to fill.
 */
VANE_API void vane_probe_default(vane_probe *probe);

/**
 * Name of a kind.
 *
 * @source  Definition.
 *
 * @param[in] kind  A number of enum vane_probe_kind [1; any].
 * @return    Static text.
 */
VANE_API const char *vane_probe_name(int32_t kind);

/**
 * Flow past a probe.
 *
 *     q = k gap depth
 *
 * @valid   Everywhere.
 * @constant Speed k [m/s].
 * @source  Definition.
 *
 * @param[in] gap     Distance between the walls [m; >= 0].
 * @param[in] depth   Depth [m; 0 < x <= 0.5 gap].
 * @param[out] error  What went wrong, or NULL.
 * @return    Volume flow [m3/s].
 */
VANE_API double vane_probe_flow(double gap, double depth, vane_error *error);

/**
 * Mean of what a probe reads.
 *
 * @valid   Everywhere.
 * @source  Definition.
 *
 * @param[in] probe     The probe.
 * @param[in] reading   What it reads [m; > 0; length readings].
 * @param[in] readings  Number of readings [1; >= 1].
 * @param[out] mean     Their mean [m; > 0].
 * @param[out] error    What went wrong, or NULL.
 * @return    A number of enum vane_status [1].
 */
VANE_API int32_t vane_probe_mean(const vane_probe *probe, const double *reading, int64_t readings,
				 double *mean, vane_error *error);

#ifdef __cplusplus
}
#endif

#endif
"""

FLOW = "double vane_probe_flow(double gap, double depth, vane_error *error);"
FLOW_COMMENT = HEADER[HEADER.index("/**\n * Flow") : HEADER.index(f"VANE_API {FLOW}")]
FLOW_NAME = "vane_probe_flow()"
MEAN_NAME = "vane_probe_mean()"
GAP = "gap     Distance between the walls [m; >= 0]."
RESERVED = "int32_t reserved; /**< Must be 0 [1; 0]. */"
SOURCE = " * @constant Speed k [m/s].\n * @source  Definition.\n"
LENGTH = "double length;    /**< Its length [m; > 0]. */"
END = "#ifdef __cplusplus\n}\n"


def doc(text):
    """A change of the parameter gap's documentation."""
    return (GAP, f"gap     {text}")


def typed(kind):
    """A change of the parameter gap's type."""
    return (FLOW, FLOW.replace("double gap", kind))


def added(text):
    return (END, f"{text}\n\n{END}")


def returned(kind):
    return ("double vane_probe_flow", f"{kind}vane_probe_flow")


def field(text):
    return (LENGTH, text)


def renamed(name):
    """Changes of the parameter gap's name, wherever it stands."""
    return (
        typed(f"double {name}"),
        (GAP, GAP.replace("gap    ", name)),
        ("0.5 gap", f"0.5 {name}"),
    )


def sourced(words):
    return (SOURCE, SOURCE.replace("  Definition.", words))


ERROR = " * @param[out] error  What went wrong, or NULL.\n"

# What breaks a rule: the words that one line of the refusal must hold, and the changes.
BREACHES = {
    "parameter without brackets": (["gap", FLOW_NAME], doc("Distance between the walls.")),
    "parameter without unit": (["gap", FLOW_NAME], doc("Distance [>= 0].")),
    "parameter without range": (["gap", FLOW_NAME], doc("Distance [m].")),
    "parameter with empty unit": (["gap", FLOW_NAME], doc("Distance [; >= 0].")),
    "parameter with empty range": (["gap", FLOW_NAME], doc("Distance [m; ].")),
    "parameter with too much in brackets": (["gap", FLOW_NAME], doc("Distance [m; >= 0; > 1].")),
    "parameter not described": (["gap", FLOW_NAME], doc("[m; >= 0].")),
    "unit that is a word": (["gap", "'metre'"], doc("Distance [metre; >= 0].")),
    "unit that is no UCUM code": (["gap", "'m^2'"], doc("Distance [m^2; >= 0].")),
    "unit of the trade": (["gap", "'mm'"], doc("Distance [mm; >= 0].")),
    "unit divided twice": (["gap", "'m/s/s'"], doc("Distance [m/s/s; >= 0].")),
    "unit of the data": (["gap", "'any'"], doc("Distance [any; any].")),
    "unit of the data, of a field": (
        ["vane_probe.length", "'any'"],
        field("double length; /**< Its length [any; any]. */"),
    ),
    "speed by the radian": (["gap", "'rad/s'"], doc("Speed [rad/s; >= 0].")),
    "speed by the radian, in a product": (["gap", "'N.rad/s'"], doc("Speed [N.rad/s; >= 0].")),
    "range in words": (["gap", "'positive'"], doc("Distance [m; positive].")),
    "range the wrong way": (["gap", "'1 > x > 0'"], doc("Distance [m; 1 > x > 0].")),
    "range that is empty": (["gap", FLOW_NAME], doc("Distance [m; 2 <= x <= 1].")),
    "limit past every double": (["gap", "'1e999'"], doc("Distance [m; <= 1e999].")),
    "limit of a multiple past every double": (
        ["depth", "'1e999'"],
        ("0.5 gap]", "1e999 gap]"),
    ),
    "limit below every double": (["gap", "'1e-999'"], doc("Distance [m; > 1e-999].")),
    "ranges in a circle": (["gap", "own limit"], doc("Distance [m; > depth].")),
    "ranges in a circle, of fields": (
        ["vane_probe.length", "own limit"],
        field("double length; /**< Its length [m; >= 2 depth]. */"),
    ),
    "range of a parameter that is not there": (["gap", "nothing"], doc("Distance [m; > nothing].")),
    "range of a multiple of what is not there": (
        ["gap", "nothing"],
        doc("Distance [m; 0 < x < 2 nothing]."),
    ),
    "range of the parameter itself": (["gap", FLOW_NAME], doc("Distance [m; > gap].")),
    "range of a field that is not there": (
        ["mean", "probe.nothing"],
        ("Their mean [m; > 0]", "Their mean [m; > probe.nothing]"),
    ),
    "range of a field of a field that is not there": (
        ["mean", "probe.place.z"],
        ("Their mean [m; > 0]", "Their mean [m; > probe.place.z]"),
    ),
    "length naming nothing": (
        ["reading", "nothing"],
        ("length readings]", "length nothing]"),
    ),
    "length in words": (
        ["reading", "'one of each'"],
        ("length readings]", "length one of each]"),
    ),
    "length of nothing": (["reading", "length 0"], ("length readings]", "length 0]")),
    "length of a field": (
        ["vane_probe.length", "not an array"],
        field("double length; /**< Its length [m; > 0; length one of each]. */"),
    ),
    "length naming a double": (["reading", MEAN_NAME], ("length readings]", "length mean]")),
    "length of a single number": (
        ["gap", FLOW_NAME],
        doc("Distance [m; >= 0; length depth]."),
    ),
    "array in without a length": (["reading", MEAN_NAME], ("; length readings]", "]")),
    "enum that is not there": (
        ["kind", "vane_nothing"],
        ("A number of enum vane_probe_kind [1; any]", "A number of enum vane_nothing [1; any]"),
    ),
    "no source": (
        ["source", FLOW_NAME],
        (SOURCE, ""),
    ),
    "source that is empty": (["source", FLOW_NAME], sourced("")),
    "source without a word": (["source", FLOW_NAME], sourced("  ...")),
    "source yet to come": (["source", FLOW_NAME], sourced("  TODO.")),
    "source yet to be found": (["source", FLOW_NAME], sourced("  A handbook, page tbd.")),
    "no validity": (
        ["valid", FLOW_NAME],
        (" * @valid   Everywhere.\n * @constant", " * @constant"),
    ),
    "no brief": (["brief", FLOW_NAME], (" * Flow past a probe.\n *\n", "")),
    "no documentation": (["vane_probe_flow"], (FLOW_COMMENT, "")),
    "no return": (["return", FLOW_NAME], (" * @return    Volume flow [m3/s].\n", "")),
    "return without unit": ([FLOW_NAME, "unit"], ("Volume flow [m3/s]", "Volume flow")),
    "return with a bad unit": ([FLOW_NAME, "'L/min'"], ("flow [m3/s]", "flow [L/min]")),
    "return that is no status": (
        [MEAN_NAME, "vane_status"],
        ("A number of enum vane_status [1]", "Something"),
    ),
    "constant without unit": ([FLOW_NAME], ("Speed k [m/s]", "Speed k")),
    "parameter undocumented": (["gap", "vane_probe_flow"], (f" * @param[in] {GAP}\n", "")),
    "parameter documented, yet not there": (
        ["width", "vane_probe_flow"],
        (" * @return    Volume", " * @param[in] width  Width [m; > 0].\n * @return    Volume"),
    ),
    "parameter documented twice": (
        ["gap", "vane_probe_flow"],
        (f" * @param[in] {GAP}\n", f" * @param[in] {GAP}\n * @param[in] {GAP}\n"),
    ),
    "parameter of no direction": (["gap", FLOW_NAME], (f"@param[in] {GAP}", f"@param {GAP}")),
    "parameter without name": (["gap"], typed("double")),
    "output that is const": (["mean", MEAN_NAME], ("double *mean", "const double *mean")),
    "output that is a number": (["mean", MEAN_NAME], ("double *mean", "double mean")),
    "input that is not const": (
        ["reading", MEAN_NAME],
        ("const double *reading", "double *reading"),
    ),
    "record in that is not const": (["probe", MEAN_NAME], ("const vane_probe *", "vane_probe *")),
    "record by value": (["gap", FLOW_NAME], typed("vane_probe gap")),
    "pointer to pointer out": (["mean", MEAN_NAME], ("double *mean", "double **mean")),
    "callback": (["gap", FLOW_NAME], typed("double (*gap)(double)")),
    "array of variable length": (
        ["reading", MEAN_NAME],
        (
            "const double *reading, int64_t readings",
            "int64_t readings, const double reading[readings]",
        ),
    ),
    "array in brackets": (
        ["reading", MEAN_NAME],
        ("const double *reading", "const double reading[3]"),
    ),
    "array of complex numbers": (
        ["reading", MEAN_NAME],
        ("const double *reading", "const double _Complex *reading"),
    ),
    "record that is not there": (["gap", FLOW_NAME], typed("const vane_nothing *gap")),
    "variable arguments": (
        [FLOW_NAME],
        (FLOW, FLOW.replace("vane_error *error", "vane_error *error, ...")),
    ),
    "no error": (["vane_probe_flow"], (FLOW, FLOW.replace(", vane_error *error", ""))),
    "error of another name": (
        [FLOW_NAME, "error"],
        (f"{ERROR} * @return    Vol", f"{ERROR.replace(' error', ' fault')} * @return    Vol"),
        (FLOW, FLOW.replace("*error", "*fault")),
    ),
    "error that is not last": (
        [FLOW_NAME, "error"],
        (FLOW, "double vane_probe_flow(vane_error *error, double gap, double depth);"),
    ),
    "formula of a whole number": ([FLOW_NAME, "number"], typed("int32_t gap")),
    "formula of an array": (
        [FLOW_NAME, "number"],
        typed("const double *gap"),
        doc("Distance [m; >= 0; length 3]."),
    ),
    "function that is void": ([FLOW_NAME], returned("void ")),
    "function that returns int64_t": ([FLOW_NAME], returned("int64_t ")),
    "function that returns a pointer": ([FLOW_NAME], returned("double *")),
    "function that returns a record": ([FLOW_NAME], returned("vane_probe ")),
    "default of a number": (
        ["vane_probe_default()"],
        ("vane_probe_default(vane_probe *probe)", "vane_probe_default(double *probe)"),
        ("The record to fill.", "The record to fill [1; any]."),
    ),
    "static inline function": (
        [FLOW_NAME, "inline"],
        (f"VANE_API {FLOW}", f"static inline {FLOW[:-1]}\n{{\n\treturn gap * depth;\n}}"),
    ),
    "static function": (
        [FLOW_NAME, "static"],
        (f"VANE_API {FLOW}", f"static {FLOW[:-1]}\n{{\n\treturn gap * depth;\n}}"),
    ),
    "function of another prefix": (["probe_flow"], ("vane_probe_flow", "probe_flow")),
    "record of another prefix": (
        ["place"],
        added("/** Where. */\ntypedef struct place {\n\tdouble x; /**< X [m; any]. */\n} place;"),
    ),
    "enum of another prefix": (
        ["CORNER_LEFT"],
        added("/** Corner. */\nenum corner {\n\tVANE_CORNER_LEFT = 1 /**< Left. */\n};"),
    ),
    "enumerator of another prefix": (["PROBE_BLUNT"], ("VANE_PROBE_BLUNT", "PROBE_BLUNT")),
    "macro": (["VANE_PROBES"], added("/** Probes. */\n#define VANE_PROBES 2")),
    "macro undocumented": (["VANE_PROBES"], added("#define VANE_PROBES 2")),
    "macro like a function": (
        ["VANE_TWICE"],
        added("/** Twice. */\n#define VANE_TWICE(x) (2 * (x))"),
    ),
    "macro like a function, undocumented": (
        ["VANE_TWICE"],
        added("#define VANE_TWICE(x) (2 * (x))"),
    ),
    "alien include": (["probe.h", "stdio.h"], ("<stdint.h>", "<stdio.h>")),
    "alien include of the project": (
        ["probe.h", "check.h"],
        ("#include <stdint.h>", '#include <stdint.h>\n#include "check.h"'),
    ),
    "type of one's own": (["vane_length"], added("/** A length. */\ntypedef double vane_length;")),
    "type of one's own, undocumented": (["vane_length"], added("typedef double vane_length;")),
    "variable": (["vane_probes"], added("/** Probes. */\nVANE_API extern int32_t vane_probes;")),
    "variable undocumented": (["vane_probes"], added("VANE_API extern int32_t vane_probes;")),
    "constant undocumented": (["vane_probes"], added("static const int32_t vane_probes = 2;")),
    "function undocumented": (
        ["vane_probe_area"],
        added("VANE_API double vane_probe_area(double gap);"),
    ),
    "record undocumented": (
        ["vane_corner"],
        added("typedef struct vane_corner {\n\tdouble x;\n} vane_corner;"),
    ),
    "record opaque": (
        ["vane_corner"],
        added("/** A corner. */\ntypedef struct vane_corner vane_corner;"),
    ),
    "enum undocumented": (["vane_corner"], added("enum vane_corner {\n\tVANE_CORNER_LEFT = 1\n};")),
    "enum without name": (
        ["VANE_CORNER_LEFT"],
        added("/** Corner. */\nenum {\n\tVANE_CORNER_LEFT = 1 /**< Left. */\n};"),
    ),
    "union": (
        ["vane_either"],
        added("/** Either. */\ntypedef union vane_either {\n\tdouble x; /**< X [m; any]. */\n"
              "\tint64_t n; /**< N [1; any]. */\n} vane_either;"),
    ),
    "union in a record": (
        ["Field vane_probe."],
        (
            RESERVED,
            "/** Either. */\n\tunion {\n\t\tint32_t kind; /**< Kind [1; any]. */\n"
            "\t\tint32_t steps; /**< Its steps [1; > 0]. */\n\t};",
        ),
    ),
    "record in a record, without name": (
        ["Field vane_probe."],
        (
            RESERVED,
            "/** Inner. */\n\tstruct {\n\t\tint32_t kind; /**< Kind [1; any]. */\n\t} inner;",
        ),
    ),
    "bit field": (["vane_probe.reserved"], ("int32_t reserved;", "int32_t reserved : 4;")),
    "field without brackets": (["vane_probe.length"], field("double length; /**< Its length. */")),
    "field without range": (["vane_probe.length"], field("double length; /**< Its length [m]. */")),
    "field with a bad unit": (
        ["vane_probe.length", "'inch'"],
        field("double length; /**< Its length [inch; > 0]. */"),
    ),
    "field with a bad range": (
        ["vane_probe.length", "'big'"],
        field("double length; /**< Its length [m; big]. */"),
    ),
    "field whose limit is not there": (
        ["vane_probe.depth", "nothing"],
        ("0 < x <= length]", "0 < x <= nothing]"),
    ),
    "field undocumented": (["length"], field("double length;")),
    "field that is a pointer": (["length"], field("double *length; /**< Its length [m; > 0]. */")),
    "field that is an array": (
        ["length"],
        field("double length[3]; /**< Its lengths [m; > 0]. */"),
    ),
    "field that is a record that is not there": (
        ["length", "vane_nothing"],
        field("vane_nothing length; /**< Its length. */"),
    ),
    "field that is an enum": (
        ["length"],
        field("enum vane_probe_kind length; /**< Its length. */"),
    ),
    "field after a smaller one": (
        ["vane_probe.length"],
        field(f"int32_t first; /**< First [1; any]. */\n\t{LENGTH}"),
    ),
    "two fields in one declaration": (
        ["vane_probe"],
        field("double length, breadth; /**< Its sizes [m; > 0]. */"),
    ),
    "record without brief": (["vane_probe"], ("/** A probe. */\n", "")),
    "enumerator without number": (
        ["VANE_PROBE_SHARP"],
        ("VANE_PROBE_SHARP = 2 ", "VANE_PROBE_SHARP "),
    ),
    "enumerator computed": (
        ["VANE_PROBE_SHARP"],
        ("VANE_PROBE_SHARP = 2 ", "VANE_PROBE_SHARP = 1 << 1 "),
    ),
    "enumerator not described": (["VANE_PROBE_SHARP"], ("= 2  /**< A sharp one. */", "= 2")),
    "two enumerators of one number": (
        ["vane_probe_kind"],
        ("VANE_PROBE_SHARP = 2", "VANE_PROBE_SHARP = 1"),
    ),
    "enum without brief": (["vane_probe_kind"], ("/** Kind of a probe. */\n", "")),
    "header without brief": (["probe.h"], (" * Probes of the contract.\n", "")),
    "header without a file comment": (
        ["probe.h"],
        ("/**\n * @file probe.h\n * Probes of the contract.\n */\n", ""),
    ),
    "unknown command of the documentation": (
        ["probe.h", "vlaid"],
        ("@valid   Everywhere.\n * @constant", "@vlaid   Everywhere.\n * @constant"),
    ),
}
# Names that a language of the loaders, or a loader itself, has taken.
for word in ("lambda", "local", "arguments", "out", "self", "_gap", "gap__wide", "Gap"):
    BREACHES[f"parameter called {word}"] = ([f"'{word}'", FLOW_NAME, "name"], *renamed(word))
for word in ("lambda", "end", "yield", "debugger", "keys", "as_dict", "_length", "Length"):
    BREACHES[f"field called {word}"] = (
        [f"vane_probe.{word}", "name"],
        field(f"double {word}; /**< Its length [m; > 0]. */"),
        ("0 < x <= length]", f"0 < x <= {word}]"),
    )
BREACHES["output called lambda"] = (
    ["'lambda'", MEAN_NAME, "name"],
    ("double *mean", "double *lambda"),
    ("[out] mean ", "[out] lambda "),
)
BREACHES["record called import"] = (
    ["vane_import", "name"],
    added("/** A load. */\ntypedef struct vane_import {\n\tdouble x; /**< X [m; any]. */\n"
          "} vane_import;"),
)
for kind in ("bool", "_Bool", "size_t", "long", "long long", "unsigned", "uint32_t", "int", "short",
             "float", "long double", "double _Complex", "char", "enum vane_probe_kind", "wchar_t"):
    BREACHES[f"parameter of type {kind}"] = (["gap", FLOW_NAME], typed(f"{kind} gap"))
    BREACHES[f"field of type {kind}"] = (
        ["vane_probe.length"],
        field(f"{kind} length; /**< Its length [m; > 0]. */"),
    )
for kind in ("FILE *", "void *", "const void *", "char *", "const char **"):
    BREACHES[f"parameter of type {kind}"] = (["gap", FLOW_NAME], typed(f"{kind}gap"))

# What breaks no rule.
SOUND = {
    "the header itself": [],
    "range of a field of a field": [("Their mean [m; > 0]", "Their mean [m; > probe.place.x]")],
    "length in figures": [("length readings]", "length 3]")],
    "length that may be NULL": [("length readings]", "length readings or NULL]")],
    "any": [doc("Distance [m; any].")],
    "distance by the radian": [doc("Distance [m/rad; any].")],
    "ranges in a row": [
        field("double length; /**< Its length [m; > place.x]. */"),
        ("Their mean [m; > 0]", "Their mean [m; > probe.depth]"),
    ],
    "bounds in powers of ten": [doc("Distance [m; 1e-9 <= x < 3.5e2].")],
    "units with points and parentheses": [doc("Distance [W/(m.K); >= 0].")],
}


class Bench:
    def __init__(self, source, doxygen, directory):
        source = pathlib.Path(source)
        self.doxygen, self.manifest = doxygen, source / "docs" / "manifest.py"
        self.errors = source / "include" / "vane" / "error.h"
        self.settings = (source / "docs" / "Doxyfile.in").read_text(encoding="utf-8")
        self.directory = pathlib.Path(directory)

    def doxyfile(self, place):
        """The library's own settings; for one directory."""
        settings = self.settings.replace("@VERSION@", "0").replace("@OUTPUT@", str(place))
        for name, words in (("INPUT", f'"{place}/include"'), ("HTML", "headers"), ("XML", "YES")):
            settings = settings.replace(f"@{name}@", words)
        settings = settings.replace("@PAGES@", "").replace("@SOURCE@/docs", str(place / "include"))
        settings = settings.replace("@SOURCE@", str(place))
        # HTML stays: without it Doxygen 1.9 takes every parameter for undocumented.
        empty = "".join(
            f"{name} =\n" for name in ("USE_MDFILE_AS_MAINPAGE", "EXAMPLE_PATH", "IMAGE_PATH")
        )
        return f"{settings}\nINPUT = {place}/include\n{empty}SEARCHENGINE = NO\n"

    def refusal(self, number, changes):
        """Whether Doxygen or the manifest refuses a changed header, and what they say."""
        header = HEADER
        for old, new in changes:
            if old not in header:
                raise ValueError(f"the header does not hold {old!r}")
            header = header.replace(old, new, 1)
        place = self.directory / str(number)
        (place / "include" / "vane").mkdir(parents=True)
        shutil.copy(self.errors, place / "include" / "vane")
        (place / "include" / "vane" / "probe.h").write_text(header, encoding="utf-8")
        (place / "Doxyfile").write_text(self.doxyfile(place), encoding="utf-8")
        told, refused = "", False
        for command in (
            [self.doxygen, place / "Doxyfile"],
            [sys.executable, self.manifest, place / "xml", "0", place / "vane-api.json"],
        ):
            done = subprocess.run(command, capture_output=True, text=True, timeout=60)
            told += done.stdout + done.stderr
            refused |= done.returncode != 0
        return refused, told.replace(str(place), "")


def verdict(wanted, refused, told):
    """A sentence about what went wrong, or None."""
    if "Traceback" in told:
        return f"ends in a traceback: {told.strip().splitlines()[-1]}"
    if wanted is None:
        return f"is refused: {told.strip()}" if refused else None
    if not refused:
        return "is not refused"
    if not any(all(word in line for word in wanted) for line in told.splitlines()):
        return f"is refused, but no line speaks of {' and '.join(wanted)}: {told.strip()}"
    return None


def main(arguments):
    if len(arguments) != 3:
        sys.exit(__doc__)
    cases = [(name, None, changes) for name, changes in SOUND.items()]
    cases += [(name, words, changes) for name, (words, *changes) in BREACHES.items()]
    failed = 0
    with tempfile.TemporaryDirectory() as directory:
        bench = Bench(arguments[1], arguments[2], directory)
        with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
            runs = [
                pool.submit(bench.refusal, number, changes)
                for number, (_, _, changes) in enumerate(cases)
            ]
            for (name, wanted, _), run in zip(cases, runs):
                fault = verdict(wanted, *run.result())
                if fault:
                    failed += 1
                    print(f"{name}: {fault}")
    print(f"{len(SOUND)} sound headers, {len(BREACHES)} breaches: {failed} faults")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
