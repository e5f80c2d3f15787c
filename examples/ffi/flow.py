"""Flow of a vane pump over pressure, from its measured clearances, in Python.

The pump is invented: no such part was ever made or measured.
"""

import vane


def width(readings_mm, instrument):
    return vane.clearance_width(
        [vane.units_m_from_mm(reading) for reading in readings_mm], instrument
    )


def measured_parts(ring, rotor, blade):
    rad = vane.units_rad_from_deg
    parts = vane.parts_default()
    parts.ring = vane.ring_default()
    parts.ring.large_radius = 0.0300
    parts.ring.small_radius = 0.0268
    parts.ring.width = ring.mean
    parts.rotor_radius = 0.0262
    parts.rotor_width = rotor.mean
    parts.slot_width = 2.030e-3
    parts.vane_width = blade.mean
    parts.vane_thickness = 2.000e-3
    parts.vane_height = 9.0e-3
    parts.tip_radius = 1.2e-3
    parts.plate_bore = 0.0110
    parts.groove_inner = 0.0150
    parts.groove_outer = 0.0185
    parts.inlet_open = rad(17)
    parts.inlet_close = rad(73)
    parts.outlet_open = rad(110)
    parts.outlet_close = rad(164)
    parts.notch = rad(4)
    parts.shaft_radius = 0.0105
    parts.shaft_gap = 0.05e-3
    parts.shaft_length = 0.012
    parts.vanes = 12
    return parts


def print_flow(parts):
    litres_per_minute = vane.units_l_per_min_from_m3_per_s
    oil = vane.oil_from_grade(46, 100)
    duty = vane.duty_default()
    duty.temperature = vane.units_k_from_degc(50)
    duty.speed = vane.units_rev_per_s_from_rev_per_min(1500)

    print("  bar    L/min      slip   eta_v")
    for megapascal in range(2, 21, 2):
        duty.outlet_pressure = vane.units_pa_from_mpa(megapascal)
        pump = vane.pump_run(parts, oil, duty)
        print(
            f"{vane.units_bar_from_pa(duty.outlet_pressure):5.0f}"
            f" {litres_per_minute(pump.outlet_flow):8.4f}"
            f" {litres_per_minute(pump.slip.total):9.5f}"
            f" {pump.volumetric_efficiency:7.5f}"
        )


def print_three_gaps():
    flow = vane.slot_flow(
        width=0.020,
        gap=[10e-6, 20e-6, 40e-6],
        length=0.005,
        dp=15e6,
        viscosity=8.6e-3,
        wall_speed=0,
    )
    flow = vane.units_l_per_min_from_m3_per_s(flow)
    print(f"three gaps: {flow[0]:.6f} {flow[1]:.6f} {flow[2]:.6f} L/min")


def main():
    instrument = vane.instrument(
        error_limit=1e-6,
        repeatability=0.5e-6,
        resolution=1e-6,
        temperature_range=1,
        expansion=11.5e-6,
    )
    ring = width([25.412, 25.411, 25.413], instrument)
    rotor = width([25.393, 25.394, 25.392], instrument)
    blade = width([25.398, 25.397, 25.398], instrument)
    side = vane.clearance_between(ring, rotor, same_instrument=1)
    print(
        f"side clearance {vane.units_um_from_m(side.total):.1f} um,"
        f" standard uncertainty {vane.units_um_from_m(side.uncertainty):.2f} um"
    )

    print_flow(measured_parts(ring, rotor, blade))
    print_three_gaps()
    try:
        vane.slot_flow(
            width=0.020, gap=-1, length=0.005, dp=15e6, viscosity=8.6e-3, wall_speed=0
        )
    except vane.Error as refusal:
        print(f"refused: {refusal.text}")


if __name__ == "__main__":
    main()
