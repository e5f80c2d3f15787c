"""Efficiencies of ISO 4409 and the correction to a nominal speed."""


def volumetric_efficiency(flow, speed, displacement):
    return flow / (speed * displacement)


def mechanical_efficiency(displacement, dp, torque):
    return displacement * dp / (2 * pi * torque)


def overall_efficiency(flow, dp, torque, speed):
    return flow * dp / (2 * pi * speed * torque)


@conditioned("flow and correction that nearly cancel")
def speed_corrected(flow, displacement, speed, nominal_speed):
    return flow + displacement * (nominal_speed - speed)
