"""Breaks the library on purpose, one place at a time; each time a test must turn red.

A reviewer's mutations: unit codes exchanged in a doc block, a factor of 2 pi
dropped, a range check relaxed, and what else the contract forbids. Each is made
in a copy of the tree, built there, and the tests named beside it are run. One
that no test notices is a hole in the tests, and this program fails.

    python3 mutations.py TREE SCRATCH [PATTERN...]
"""

import pathlib
import re
import shutil
import subprocess
import sys

UNITS, RANGES, PROMISES = "unit-scaling", "ranges", "promises"

# File, what stands there (the first time counts), what is put instead, and the
# tests of which at least one must fail; "build" if it must not even build.
MUTATIONS = [
    # Unit codes in doc blocks, exchanged or false.
    ("include/vane/slot.h", "[Pa; any].\n * @param[in] viscosity   Dynamic viscosity [Pa.s; > 0]",
     "[Pa.s; any].\n * @param[in] viscosity   Dynamic viscosity [Pa; > 0]", [UNITS]),
    ("include/vane/slot.h", "Radius of the inner edge [m; > 0]",
     "Radius of the inner edge [m2; > 0]", [UNITS]),
    ("include/vane/displacement.h", "convention A [m3].", "convention A [m2].", [UNITS]),
    ("include/vane/shaft.h", "Torque [N.m].", "Torque [W].", [UNITS]),
    ("include/vane/tip.h", "Normal force between tip and ring [N; any]",
     "Normal force between tip and ring [N.m; any]", [UNITS]),
    ("include/vane/stand.h", "laminar slip coefficient [m3; any]",
     "laminar slip coefficient [m2; any]", [UNITS]),
    ("include/vane/oil.h", "Dynamic viscosity [Pa.s; > 0]. */",
     "Dynamic viscosity [m2/s; > 0]. */", [UNITS]),
    ("include/vane/thread.h", "Proof stress of the class [Pa; > 0]",
     "Proof stress of the class [N; > 0]", [UNITS]),
    ("include/vane/units.h", "Pressure to convert [[psi]; any]",
     "Pressure to convert [bar; any]", [UNITS]),
    ("include/vane/pump.h", "Density at the inlet temperature [kg/m3; > 0]",
     "Density at the inlet temperature [kg/m2; > 0]", [UNITS]),
    # Units that only all four base units together can tell, and constants behind them.
    ("include/vane/pump.h", "Power the shaft takes [W; >= 0]",
     "Power the shaft takes [m3/s; >= 0]", [UNITS]),
    ("include/vane/pump.h", "Rotational speed [1/s; > 0]", "Rotational speed [rad/s; > 0]",
     ["build"]),
    ("include/vane/pump.h", "Outlet flow over ideal flow [1; any]",
     "Outlet flow over ideal flow [Pa; any]", [UNITS]),
    ("include/vane/oil.h", "Specific heat capacity [J/(kg.K); > 0]",
     "Specific heat capacity [W; > 0]", [UNITS]),
    ("include/vane/oil.h", "Volumetric thermal expansion coefficient [1/K; >= 0]",
     "Volumetric thermal expansion coefficient [1/Pa; >= 0]", [UNITS]),
    ("include/vane/thread.h", " * @constant The table's diameters [m].\n", "", [UNITS]),
    ("include/vane/shaft.h", " * @valid   Exact.\n",
     " * @valid   Exact.\n * @constant Nothing at all [m].\n", [UNITS]),
    ("lib/pump.c", "< 10e-6 * VN_SQUARE_METRE_PER_SECOND", "< 10e-6", [UNITS]),
    ("lib/pump.c", "(0.13 * VN_WATT / (VN_METRE * VN_KELVIN))", "0.13", [UNITS]),
    ("lib/oil.c", "870 * VN_KILOGRAM / VN_CUBIC_METRE", "870", [UNITS]),
    ("lib/oil.c", "0.7e-6 * VN_SQUARE_METRE_PER_SECOND", "0.7e-6", [UNITS]),
    ("lib/parts.c", "1e-6 * VN_METRE", "1e-6", [UNITS]),
    # What the library says, and what the documentation says in words.
    ("lib/oil.c", '"J/(kg.K)"', '"J/kg"', [RANGES]),
    ("lib/units.c", '"cSt"', '"cP"', [RANGES]),
    ("lib/pump.c", "most_duties = 1000000000", "most_duties = 100000000", [RANGES]),
    ("lib/parts.c", "if (p->vanes % 2 != 0)", "if (p->vanes % 2 > 7)", [RANGES]),
    ("include/vane/parts.h", ", at most pi + inlet_open", "", [RANGES]),
    ("include/vane/parts.h", "Angle where the inlet port begins [rad; >= 0]",
     "Angle where the inlet port begins [1; >= 0]", [RANGES]),
    ("include/vane/joint.h", "Tightening torque of each bolt [N.m; > 0]",
     "Tightening torque of each bolt [J; > 0]", [RANGES]),
    # What no call can tell apart.
    ("include/vane/displacement.h", "Angle of the contact [rad; any]",
     "Angle of the contact [1; any]", [PROMISES]),
    ("include/vane/clearance.h", "A number of enum vane_action [",
     "A number of enum vane_verdict [", [PROMISES]),
    ("include/vane/clearance.h", "Probability that it is within its limits [1; 0 <= x <= 1]",
     "Probability that it is within its limits [1; -1 <= x <= 5]", [PROMISES]),
    ("include/vane/stand.h", "Volume per revolution at zero pressure difference [m3; any]",
     "Volume per revolution at zero pressure difference [m3; >= 0]", [PROMISES]),
    # Constants and factors.
    ("lib/shaft.c", "displacement / (2 * PI) * dp", "displacement * dp", ["shaft"]),
    ("lib/slip.c", "const double omega = 2 * PI * s->speed", "const double omega = s->speed",
     ["slip"]),
    ("lib/stand.c", "displacement * dp / torque / two_pi", "displacement * dp / torque",
     ["stand"]),
    ("lib/tip.c", "2 * mass * omega2 * crown.slope", "mass * omega2 * crown.slope", ["tip"]),
    ("lib/displacement.c", "2 * PI * width * (large_radius - small_radius)",
     "PI * width * (large_radius - small_radius)", ["displacement"]),
    ("lib/slot.c", "aspect * cubed_gap / 12", "aspect * cubed_gap / 6", ["slot"]),
    ("lib/clearance.c", "instrument->error_limit / sqrt(3)", "instrument->error_limit / 3",
     ["clearance"]),
    ("lib/units.c", "#define US_GALLON 3.785411784e-3", "#define US_GALLON 4.54609e-3",
     ["units", UNITS]),
    ("lib/joint.c", "1 / (1 + joint->bolt_stiffness / joint->joint_stiffness)",
     "1 / (1 + joint->joint_stiffness / joint->bolt_stiffness)", ["joint"]),
    ("lib/oil.c", "viscosity * exp(pressure_viscosity * pressure)",
     "viscosity * exp(-pressure_viscosity * pressure)", ["oil"]),
    ("lib/pump.c", "r.heat = r.shaft_power - r.hydraulic_power",
     "r.heat = r.shaft_power + r.hydraulic_power", ["pump"]),
    # The handbook floor: one factor, sign or constant at a time.
    ("lib/bearing.c", "vn_two_ratio(rating, load)", "vn_two_ratio(load, rating)", ["bearing"]),
    ("lib/bearing.c", "2.5671 - starved", "2.5671 + starved", ["bearing"]),
    ("lib/bearing.c", "{0.95, 0.64}", "{0.95, 0.62}", ["bearing"]),
    ("lib/seal.c", "PI / 4 * (section / groove_width)", "PI / 2 * (section / groove_width)",
     ["seal"]),
    ("lib/seal.c", "((1 + eccentricity) / 2)", "(1 + eccentricity)", ["seal"]),
    ("lib/seal.c", "50 * c3 * c3", "5 * c3 * c3", ["seal"]),
    ("lib/seal.c", 'vn_between(hardness, 70, 95, "hardness"',
     'vn_between(hardness, 60, 95, "hardness"', [RANGES]),
    ("lib/contact.c", "2 * sqrt(line_load / contact_modulus",
     "sqrt(line_load / contact_modulus", ["contact"]),
    ("lib/contact.c", "(hollow_radius - radius) / hollow_radius",
     "(hollow_radius + radius) / hollow_radius", ["contact"]),
    ("lib/plate.c", "load[SHEAR] += p->line * c / r;", "load[SHEAR] -= p->line * c / r;",
     ["plate"]),
    ("lib/plate_cylinder.c", "stress / 2", "stress", ["plate"]),
    ("lib/plate_spring.c", "(4 + 2 * inverse)", "(4 + inverse)", ["plate"]),
    ("lib/joint_load.c", "introduction / (1 + joint_stiffness / bolt_stiffness)",
     "introduction / (1 + bolt_stiffness / joint_stiffness)", ["joint", "joint_bolt"]),
    ("lib/joint_load.c", "{3, 4.5, 2.5}", "{3, 4, 2.5}", ["joint_bolt"]),
    ("lib/thread_tighten.c", "1.5 * sqrt3", "2 * sqrt3", ["thread_tightening"]),
    ("lib/thread_torque.c", "thread_friction * pitch_diameter / sqrt3",
     "thread_friction * pitch_diameter / 2", ["thread"]),
    ("lib/slot_plate.c", "(M_PI / 2 * speed)", "(M_PI * speed)", ["slot_values", "slot_limits"]),
    ("lib/slot_step.c", "6 * viscosity * wall_speed", "12 * viscosity * wall_speed",
     ["slot_values", "slot_limits"]),
    ("lib/slot_opening.c", "sqrt(2 * loss_coefficient", "sqrt(4 * loss_coefficient",
     ["slot_values", "slot_rows"]),
    ("lib/oil_air.c", ".gas_modulus = polytropic_exponent * absolute_pressure",
     ".gas_modulus = absolute_pressure", ["oil_pressure"]),
    ("lib/oil_saybolt.c", "0.000061", "0.00061", ["oil"]),
    ("lib/oil_pressure.c", "(138 * VN_KELVIN)", "(135 * VN_KELVIN)", ["oil_pressure"]),
    ("lib/measure.c", "sqrt(square / (double)(readings - 1))",
     "sqrt(square / (double)readings)", ["measure"]),
    ("lib/measure.c", "sample.spread / sqrt((double)readings)", "sample.spread", ["measure"]),
    ("lib/measure_student.c", "(3 * s + 19)", "(3 * s + 18)", ["measure"]),
    ("lib/measure_verdict.c", "const double guard = coverage * uncertainty;",
     "const double guard = uncertainty;", ["measure"]),
    ("lib/fit.c", "sqrt(sum / freedom)", "sqrt(sum)", ["fit"]),
    ("lib/fit_report.c", "(own * sqrt(free))", "own", ["fit"]),
    ("include/vane/seal.h", "Force over length [N/m].", "Force over length [N].", [UNITS]),
    ("include/vane/contact.h", "Contact modulus [Pa].", "Contact modulus [N/m].", [UNITS]),
    # Checks relaxed, and ranges that say less or more than the code.
    ("lib/slot.c", 'vn_least(gap, 0, "gap", "m", error)', 'vn_finite(gap, "gap", "m", error)',
     [RANGES]),
    ("lib/parts.c", 'vn_between(p->rotor_width, 0, p->ring.width, "rotor_width", "m", e)',
     "true", [RANGES]),
    ("lib/ring.c", '2 * PI, "phase"', '7, "phase"', [RANGES]),
    ("lib/pump.c", 'vn_above(d->inlet_pressure, -ATMOSPHERE, "inlet_pressure"',
     'vn_above(d->inlet_pressure, -2 * ATMOSPHERE, "inlet_pressure"', [RANGES]),
    ("lib/stand.c", 'vn_above(r->speed, 0, "speed"', 'vn_least(r->speed, 0, "speed"', [RANGES]),
    ("lib/clearance.c", '"coverage"', '"cover"', [RANGES, "clearance"]),
    ("include/vane/slot.h", "Offset of the axes over the radial gap [1; 0 <= x <= 1]",
     "Offset of the axes over the radial gap [1; 0 <= x < 1]", [RANGES]),
    ("include/vane/thread.h", "[m; 0.0016 <= x <= 0.0762]",
     "[m; 0.0016 <= x <= 0.0763]", [RANGES]),
    # The form of the contract.
    ("include/vane/slip.h", " * @source  White", " * White", ["build"]),
    ("include/vane/ring.h", "Radius of the small dwell [m; > 0]", "Radius of the small dwell [m]",
     ["build"]),
    ("include/vane/parts.h", "[m; > groove_inner]", "[m; > groove_inside]", ["build"]),
    ("include/vane/error.h", "VANE_NO_MEMORY = 4,", "VANE_NO_MEMORY = 7,",
     ["error"]),
    ("lib/error.c", "const char *vane_version(void)\n{",
     "static int calls;\n\nconst char *vane_version(void)\n{\n\tif (calls++ > 9)\n\t\treturn \"\";",
     ["purity-symbols"]),
    ("lib/error.c", "const char *vane_status_text(int32_t code)\n{",
     "int puts(const char *);\nconst char *vane_status_text(int32_t code)\n{\n\tputs(\"\");",
     ["purity"]),
    ("lib/array.c", "argument[j][(first + i) * stride[j]]", "argument[j][first + i]", ["array"]),
]


def run(command, cwd=None):
    return subprocess.run(command, cwd=cwd, capture_output=True, text=True)


def copy_tree(tree, scratch):
    """The files under version control and those about to be, or all but builds."""
    shutil.rmtree(scratch, ignore_errors=True)
    listed = run(["git", "ls-files", "-co", "--exclude-standard", "-z"], tree)
    if listed.returncode == 0:
        for name in filter(None, listed.stdout.split("\0")):
            if (tree / name).is_file():
                (scratch / name).parent.mkdir(parents=True, exist_ok=True)
                shutil.copy2(tree / name, scratch / name)
    else:
        shutil.copytree(tree, scratch, ignore=shutil.ignore_patterns("build*", ".git"))


def needed(build, tests):
    """What the tests rest on: the library, the manifest, and their own programs."""
    yield from (f"lib/{p.name}" for p in (build / "lib").glob("libvane.so.*.*") if p.is_file())
    yield "docs/vane-api.json"
    for test in tests:
        for program in (build / "tests" / f"test_{test}", build / "tests" / "contract" / test):
            if program.is_file():
                yield str(program.relative_to(build))


def red(build, tests):
    """The first of the tests that fails, and its last words."""
    built = run(["ninja", "-C", str(build), *needed(build, tests)])
    if built.returncode != 0:
        return "build", built.stdout
    for test in tests:
        if test != "build":
            done = run(["meson", "test", "-C", str(build), "--no-rebuild", test])
            if done.returncode != 0:
                return test, done.stdout
    return None, ""


def main(arguments):
    if len(arguments) < 3:
        sys.exit(__doc__)
    tree, scratch = pathlib.Path(arguments[1]).resolve(), pathlib.Path(arguments[2]).resolve()
    wanted = re.compile("|".join(arguments[3:]) or ".")
    copy_tree(tree, scratch)
    build = scratch / "build"
    for command in (["meson", "setup", str(build), str(scratch)], ["ninja", "-C", str(build)]):
        made = run(command)
        if made.returncode != 0:
            sys.exit(made.stdout + made.stderr)
    chosen = [m for m in MUTATIONS if wanted.search(m[0]) or wanted.search(m[2])]
    everything = sorted({test for m in chosen for test in m[3]} - {"build"})
    before, words = red(build, everything)
    if before:
        sys.exit(f"{words}\nWithout any mutation, {before} fails.")

    unnoticed = 0
    for name, old, new, tests in chosen:
        file = scratch / name
        whole = file.read_text(encoding="utf-8")
        label = f"{name}: {' '.join(old.split())}  ->  {' '.join(new.split())}"
        if old not in whole:
            print(f"GONE      {label}", flush=True)
            unnoticed += 1
            continue
        file.write_text(whole.replace(old, new, 1), encoding="utf-8")
        test, _ = red(build, tests)
        file.write_text(whole, encoding="utf-8")
        unnoticed += test is None or (test == "build") != (tests == ["build"])
        print(f"{test or 'UNNOTICED':18}  {label}", flush=True)
    shutil.rmtree(scratch)
    print(f"{len(chosen)} mutations, {unnoticed} unnoticed")
    return 1 if unnoticed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
