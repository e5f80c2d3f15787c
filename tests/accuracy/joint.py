"""Bolted joints: VDI 2230 and the handbooks, as vane/joint.h prints them."""


def bar_stiffness(area, length, modulus):
    return area * modulus / length


def bolt_stiffness(shank_area, shank_length, stress_area, thread_length, modulus):
    return modulus / (shank_length / shank_area + thread_length / stress_area)


@within(6, "eight to ten roundings follow each other")
def bolt_stiffness_vdi(
    diameter, root_diameter, shank_diameter, shank_length, thread_length, head_ratio, nut_ratio,
    modulus, nut_modulus,
):
    bolt = (
        head_ratio / diameter
        + shank_length / shank_diameter**2
        + thread_length / root_diameter**2
        + diameter / (2 * root_diameter**2)
    )
    nut = 4 * nut_ratio / (pi * nut_modulus * diameter)
    return 1 / (4 / (pi * modulus) * bolt + nut)


def _cone(modulus, hole, face, thickness, slope):
    wide = 2 * thickness * slope + face
    ratio = (wide - hole) * (face + hole) / ((wide + hole) * (face - hole))
    return pi * modulus * hole * slope / log(ratio)


@digits(100)
@within(8, "ten roundings follow each other")
def frustum_stiffness(modulus, hole_diameter, face_diameter, thickness, half_angle):
    return _cone(modulus, hole_diameter, face_diameter, thickness, tan(half_angle))


@digits(100)
@within(8, "ten roundings follow each other")
def grip_stiffness(modulus, hole_diameter, face_diameter, length, half_angle):
    return _cone(modulus, hole_diameter, face_diameter, length / 2, tan(half_angle)) / 2


def wileman_stiffness(modulus, diameter, length, coefficient, exponent):
    return coefficient * modulus * diameter * exp(exponent * diameter / length)


def _cone_and_sleeve(length, face, hole, outer, modulus, w, slope):
    if outer <= face:
        return pi / 4 * (outer**2 - hole**2) * modulus / length
    wide = min(outer, face + w * length * slope)
    cone = 2 / (w * hole * slope) * log(
        (face + hole) * (wide - hole) / ((face - hole) * (wide + hole))
    )
    sleeve = 4 / (outer**2 - hole**2) * (length - (wide - face) / (w * slope))
    return pi * modulus / (cone + sleeve)


@digits(100)
@conditioned("a cone that nearly fills the parts; a score of roundings", 6)
def cone_stiffness(length, face_diameter, hole_diameter, outer_diameter, modulus):
    y, x = log(outer_diameter / face_diameter), log(length / (2 * face_diameter))
    slope = 0.362 + 0.032 * x + 0.153 * y
    return _cone_and_sleeve(
        length, face_diameter, hole_diameter, outer_diameter, modulus, 1, slope
    )


@digits(100)
@conditioned("a cone that nearly fills the parts; a score of roundings", 6)
def cone_stiffness_tapped(length, face_diameter, hole_diameter, outer_diameter, modulus):
    y, x = log(outer_diameter / face_diameter), log(length / face_diameter)
    slope = 0.348 + 0.013 * x + 0.193 * y
    return _cone_and_sleeve(
        length, face_diameter, hole_diameter, outer_diameter, modulus, 2, slope
    )


def stiffness_series(first, second):
    return first * second / (first + second)


def load_factor(bolt_stiffness, joint_stiffness, introduction):
    return introduction * bolt_stiffness / (bolt_stiffness + joint_stiffness)


@conditioned("preload and load that nearly cancel")
def clamp(preload, load, load_factor):
    return max(mpf(0), preload - (1 - load_factor) * load)


def bolt_load(preload, load, load_factor):
    return max(preload + load_factor * load, load)


def separation_load(preload, load_factor):
    return preload / (1 - load_factor)


def yield_load(preload, load_factor, yield_force):
    if load_factor * yield_force <= yield_force - preload:
        return yield_force
    return (yield_force - preload) / load_factor


def load_safety(proof_load, preload, load, load_factor):
    return (proof_load - preload) / (load_factor * load)


def separation_safety(preload, load, load_factor):
    return preload / ((1 - load_factor) * load)


def yield_safety(proof_load, preload, load, load_factor):
    return proof_load / (load_factor * load + preload)


def assembly_preload(tightening_factor, clamp, load, load_factor, seating_loss, thermal_loss):
    return tightening_factor * (clamp + (1 - load_factor) * load + seating_loss + thermal_loss)


def face_pressure(force, face_diameter, hole_diameter):
    return force / (pi / 4 * (face_diameter**2 - hole_diameter**2))


def turn_angle(preload, pitch, bolt_stiffness, joint_stiffness):
    return 2 * pi * preload * (1 / bolt_stiffness + 1 / joint_stiffness) / pitch


def embedding_loss(embedding, bolt_stiffness, joint_stiffness):
    return embedding / (1 / bolt_stiffness + 1 / joint_stiffness)


@conditioned("expansions that nearly cancel")
def thermal_change(
    length, bolt_stiffness, joint_stiffness, bolt_expansion, bolt_rise, joint_expansion,
    joint_rise,
):
    give = 1 / bolt_stiffness + 1 / joint_stiffness
    return length * (joint_expansion * joint_rise - bolt_expansion * bolt_rise) / give


@conditioned("preload and heat that nearly cancel")
def hot_preload(
    preload, length, bolt_stiffness, joint_stiffness, bolt_expansion, bolt_rise,
    joint_expansion, joint_rise, bolt_ratio, joint_ratio,
):
    cold = preload * (1 / bolt_stiffness + 1 / joint_stiffness)
    heat = length * (joint_expansion * joint_rise - bolt_expansion * bolt_rise)
    hot = 1 / (bolt_stiffness * bolt_ratio) + 1 / (joint_stiffness * joint_ratio)
    return max(mpf(0), (cold + heat) / hot)


def alternating_stress(load_low, load_high, load_factor, stress_area):
    return load_factor * (load_high - load_low) / (2 * stress_area)


def mean_stress(preload, load_low, load_high, load_factor, stress_area):
    return (load_factor * (load_high + load_low) / 2 + preload) / stress_area


def goodman(endurance, tensile, preload_stress, alternating_stress, mean_stress):
    above = mean_stress - preload_stress
    bearable = tensile * alternating_stress + endurance * above
    return endurance * (tensile - preload_stress) / bearable


@digits(60)
@within(8, "ten roundings follow each other")
def gerber(endurance, tensile, preload_stress, alternating_stress):
    root = sqrt(tensile**2 + 4 * endurance * (endurance + preload_stress))
    above = tensile * root - tensile**2 - 2 * preload_stress * endurance
    return above / (2 * alternating_stress * endurance)


@digits(60)
@within(8, "ten roundings follow each other")
def elliptic(endurance, proof_stress, preload_stress, alternating_stress):
    root = sqrt(proof_stress**2 + endurance**2 - preload_stress**2)
    above = endurance * (proof_stress * root - preload_stress * endurance)
    return above / (alternating_stress * (proof_stress**2 + endurance**2))
