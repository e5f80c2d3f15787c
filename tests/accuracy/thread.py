"""Screw threads: ISO 68-1, ASME B1.1, VDI 2230, as vane/thread.h prints them."""


@conditioned("diameter and pitch that nearly cancel")
def pitch_diameter(diameter, pitch):
    return diameter - 3 * sqrt(3) * pitch / 8


@conditioned("diameter and pitch that nearly cancel")
def minor_diameter(diameter, pitch):
    return diameter - 5 * sqrt(3) * pitch / 8


@conditioned("diameter and pitch that nearly cancel")
def root_diameter(diameter, pitch):
    return diameter - 17 * sqrt(3) * pitch / 24


@conditioned("diameter and pitch that nearly cancel")
def stress_diameter(diameter, pitch):
    return diameter - 13 * sqrt(3) * pitch / 24


@conditioned("diameter and pitch that nearly cancel")
def stress_area(diameter, pitch):
    return pi / 4 * (diameter - 13 * sqrt(3) * pitch / 24) ** 2


@conditioned("diameter and pitch that nearly cancel")
def stress_area_unified(diameter, pitch):
    return pi / 4 * (diameter - 9 * sqrt(3) * pitch / 16) ** 2


@conditioned("diameter and pitch that nearly cancel")
def root_diameter_unified(diameter, pitch):
    return diameter - 3 * sqrt(3) * pitch / 4


@conditioned("diameter and pitch that nearly cancel")
def stress_area_strong(pitch_diameter, pitch):
    return pi * (pitch_diameter / 2 - 3 * sqrt(3) * pitch / 32) ** 2


def area(diameter):
    return pi * diameter**2 / 4


def lead_angle(pitch, pitch_diameter):
    return atan(pitch / (pi * pitch_diameter))


def bearing_diameter(face_diameter, hole_diameter):
    return (face_diameter + hole_diameter) / 2


def length(diameter, length):
    if length <= float("0.125"):
        return 2 * diameter + 0.006
    return 2 * diameter + (0.012 if length <= float("0.2") else 0.025)


def length_inch(diameter, length):
    return 2 * diameter + (0.0254 / 4 if length <= float("0.1524") else 0.0254 / 2)


def _arm(pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter):
    flank = thread_friction * pitch_diameter / (2 * cos(pi / 6))
    return pitch / (2 * pi) + flank + bearing_friction * bearing_diameter / 2


def torque(preload, pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter):
    return preload * _arm(
        pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
    )


def preload(torque, pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter):
    return torque / _arm(
        pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
    )


def torque_nut_factor(preload, nut_factor, diameter):
    return nut_factor * preload * diameter


def preload_nut_factor(torque, nut_factor, diameter):
    return torque / (nut_factor * diameter)


def _tangent(pitch, pitch_diameter, thread_friction):
    """tan(phi + rho')."""
    slope, f = pitch / (pi * pitch_diameter), thread_friction / cos(pi / 6)
    return (slope + f) / (1 - f * slope)


def _exact_arm(pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter):
    flank = pitch_diameter / 2 * _tangent(pitch, pitch_diameter, thread_friction)
    return flank + bearing_friction * bearing_diameter / 2


@within(6, "eight to ten roundings follow each other")
def torque_exact(
    preload, pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
):
    return preload * _exact_arm(
        pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
    )


@within(6, "eight to ten roundings follow each other")
def preload_exact(
    torque, pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
):
    return torque / _exact_arm(
        pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
    )


def nut_factor(
    diameter, pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter
):
    arm = _exact_arm(pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter)
    return arm / diameter


def stretch(stress, length, modulus):
    return stress * length / modulus


def turn_angle(stretch, pitch):
    return 2 * pi * stretch / pitch


def proof_load(stress_area, proof_stress):
    return stress_area * proof_stress


def tensile_stress(force, stress_area):
    return force / stress_area


def shear_stress(torque, diameter):
    return 16 * torque / (pi * diameter**3)


def von_mises(tensile_stress, shear_stress):
    return sqrt(tensile_stress**2 + 3 * shear_stress**2)


def _torsion(pitch, pitch_diameter, stress_diameter, thread_friction):
    """sigma_v / sigma."""
    turn = _tangent(pitch, pitch_diameter, thread_friction)
    return sqrt(1 + 3 * (1.5 * pitch_diameter / stress_diameter * turn) ** 2)


@within(8, "a dozen roundings follow each other")
def preload_utilization(
    utilization, yield_stress, pitch, pitch_diameter, stress_diameter, thread_friction
):
    both = _torsion(pitch, pitch_diameter, stress_diameter, thread_friction)
    return pi * stress_diameter**2 / 4 * utilization * yield_stress / both


@within(8, "a dozen roundings follow each other")
def utilization(preload, yield_stress, pitch, pitch_diameter, stress_diameter, thread_friction):
    both = _torsion(pitch, pitch_diameter, stress_diameter, thread_friction)
    return preload * both / (pi * stress_diameter**2 / 4 * yield_stress)


@within(6, "eight to ten roundings follow each other")
def preload_low(
    torque, torque_scatter, friction_scatter, pitch, pitch_diameter, thread_friction,
    bearing_friction, bearing_diameter,
):
    friction = _arm(0, pitch_diameter, thread_friction, bearing_friction, bearing_diameter)
    return torque * (1 - torque_scatter) / (pitch / (2 * pi) + (1 + friction_scatter) * friction)


@within(6, "eight to ten roundings follow each other")
def preload_high(
    torque, torque_scatter, friction_scatter, pitch, pitch_diameter, thread_friction,
    bearing_friction, bearing_diameter,
):
    friction = _arm(0, pitch_diameter, thread_friction, bearing_friction, bearing_diameter)
    return torque * (1 + torque_scatter) / (pitch / (2 * pi) + (1 - friction_scatter) * friction)


def scatter(torque_scatter, friction_scatter, efficiency):
    return sqrt(torque_scatter**2 + ((1 - efficiency) * friction_scatter) ** 2)


def tightening_factor(scatter):
    return (1 + scatter) / (1 - scatter)


def factor_scatter(tightening_factor):
    return (tightening_factor - 1) / (tightening_factor + 1)


def _sheared(diameter, pitch, wide, narrow):
    return pi * diameter / pitch * (pitch / 2 + (wide - narrow) / sqrt(3))


def shear_area_external(length, pitch, minor_diameter, pitch_diameter):
    return length * _sheared(minor_diameter, pitch, pitch_diameter, minor_diameter)


def shear_area_internal(length, pitch, pitch_diameter, diameter):
    return length * _sheared(diameter, pitch, diameter, pitch_diameter)


def strip_force(shear_area, shear_strength):
    return shear_area * shear_strength


@within(6, "eight to ten roundings follow each other")
def engagement_external(force, shear_strength, pitch, minor_diameter, pitch_diameter):
    return force / shear_strength / _sheared(minor_diameter, pitch, pitch_diameter, minor_diameter)


@within(6, "eight to ten roundings follow each other")
def engagement_internal(force, shear_strength, pitch, pitch_diameter, diameter):
    return force / shear_strength / _sheared(diameter, pitch, diameter, pitch_diameter)


@conditioned("terms of a polynomial that cancel")
def nut_dilation(width, diameter):
    ratio = width / diameter
    return 3.8 * ratio - ratio**2 - 2.61 if ratio <= 1.9 else mpf(1)


@conditioned("terms of a polynomial that cancel", 16)
def bolt_bending(strength_ratio):
    r = strength_ratio
    if r < 1:
        return +0.897
    return 5.594 - 13.682 * r + 14.107 * r**2 - 6.057 * r**3 + 0.9353 * r**4


@conditioned("terms of a polynomial that cancel", 8)
def nut_bending(strength_ratio):
    r = strength_ratio
    return 0.728 + 1.769 * r - 2.896 * r**2 + 1.296 * r**3 if r <= 1 else +0.897


def endurance_rolled(diameter):
    return 0.85 * (0.15 / diameter + 45) * 10**6


def endurance_rolled_after(diameter, preload_fraction):
    return (2 - preload_fraction) * 0.85 * (0.15 / diameter + 45) * 10**6
