"""Shafts, keys and splines, and the rated outputs of motors, as vane/shaft.h prints them."""

IEC = [
    0.06, 0.09, 0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5,
    22, 30, 37, 45, 55, 75, 90, 110, 132, 150, 160, 185, 200, 220, 250,
]
NEMA = [
    0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250,
    300, 350, 400, 450, 500,
]


def _next(rated, unit, need):
    return next(x * unit for x in rated if x * unit >= need)


def _motor(rng):
    return {"power": 10 ** rng.uniform(0, 5.2), "service_factor": rng.uniform(1, 1.5)}


def ideal_torque(displacement, dp):
    return displacement * dp / (2 * pi)


def power(torque, speed):
    return 2 * pi * speed * torque


@drawn(_motor)
def motor_iec(power, service_factor):
    return _next(IEC, 1000, power * service_factor)


@drawn(_motor)
def motor_nema(power, service_factor):
    return _next(NEMA, 550 * 0.3048 * 4.4482216152605, power * service_factor)


def torsion_stress(torque, diameter, bore_diameter):
    return 16 * torque * diameter / (pi * (diameter**4 - bore_diameter**4))


def torsion_diameter(torque, stress):
    return cbrt(16 * torque / (pi * stress))


def twist(torque, length, diameter, bore_diameter, shear_modulus):
    return 32 * torque * length / (pi * shear_modulus * (diameter**4 - bore_diameter**4))


def bending_stress(bending_moment, diameter, bore_diameter):
    return 32 * bending_moment * diameter / (pi * (diameter**4 - bore_diameter**4))


def von_mises(bending_stress, torsion_stress):
    return sqrt(bending_stress**2 + 3 * torsion_stress**2)


def key_shear(torque, diameter, key_width, key_length):
    return 2 * torque / (diameter * key_width * key_length)


def key_bearing(torque, diameter, key_depth, key_length):
    return 2 * torque / (diameter * key_depth * key_length)


def spline_shear(torque, pitch_diameter, tooth_thickness, spline_length, teeth, share):
    return 2 * torque / (pitch_diameter * teeth * tooth_thickness * spline_length * share)


def spline_bearing(torque, mean_diameter, tooth_height, spline_length, teeth, share):
    return 2 * torque / (mean_diameter * teeth * tooth_height * spline_length * share)
