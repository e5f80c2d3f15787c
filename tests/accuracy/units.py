"""Units: BIPM; NIST SP 811, Appendix B."""

INCH = 0.0254
POUND = 4.4482216152605


def m_from_mm(length):
    return length / 1000


def mm_from_m(length):
    return 1000 * length


def m_from_um(length):
    return length / 10**6


def um_from_m(length):
    return 10**6 * length


def m_from_in(length):
    return 0.0254 * length


def in_from_m(length):
    return length / 0.0254


def m_from_thou(length):
    return 0.0000254 * length


def thou_from_m(length):
    return length / 0.0000254


def pa_from_bar(pressure):
    return 10**5 * pressure


def bar_from_pa(pressure):
    return pressure / 10**5


def pa_from_psi(pressure):
    return POUND / INCH**2 * pressure


def psi_from_pa(pressure):
    return pressure * INCH**2 / POUND


def pa_from_mpa(pressure):
    return 10**6 * pressure


def mpa_from_pa(pressure):
    return pressure / 10**6


def pa_from_kpa(pressure):
    return 1000 * pressure


def kpa_from_pa(pressure):
    return pressure / 1000


def pa_from_ksi(stress):
    return 1000 * POUND / INCH**2 * stress


def ksi_from_pa(stress):
    return stress * INCH**2 / POUND / 1000


def m2_per_s_from_cst(kinematic_viscosity):
    return kinematic_viscosity / 10**6


def cst_from_m2_per_s(kinematic_viscosity):
    return 10**6 * kinematic_viscosity


def pa_s_from_cp(viscosity):
    return viscosity / 1000


def cp_from_pa_s(viscosity):
    return 1000 * viscosity


def m3_per_s_from_l_per_min(flow):
    return flow / 60000


def l_per_min_from_m3_per_s(flow):
    return 60000 * flow


def m3_per_s_from_us_gal_per_min(flow):
    return 231 * INCH**3 / 60 * flow


def us_gal_per_min_from_m3_per_s(flow):
    return 60 * flow / (231 * INCH**3)


def m3_from_cm3(volume):
    return volume / 10**6


def cm3_from_m3(volume):
    return 10**6 * volume


def m3_from_in3(volume):
    return INCH**3 * volume


def in3_from_m3(volume):
    return volume / INCH**3


def n_m_from_lbf_ft(torque):
    return POUND * 12 * INCH * torque


def lbf_ft_from_n_m(torque):
    return torque / (POUND * 12 * INCH)


def n_m_from_lbf_in(torque):
    return POUND * INCH * torque


def lbf_in_from_n_m(torque):
    return torque / (POUND * INCH)


def n_from_lbf(force):
    return POUND * force


def lbf_from_n(force):
    return force / POUND


def w_from_hp(power):
    return 550 * 12 * INCH * POUND * power


def hp_from_w(power):
    return power / (550 * 12 * INCH * POUND)


def w_from_kw(power):
    return 1000 * power


def kw_from_w(power):
    return power / 1000


@conditioned("zeros of scales that meet")
def k_from_degc(temperature):
    return temperature + 273.15


@conditioned("zeros of scales that meet")
def degc_from_k(temperature):
    return temperature - 273.15


@conditioned("zeros of scales that meet")
def k_from_degf(temperature):
    return (temperature + 459.67) / 1.8


@conditioned("zeros of scales that meet")
def degf_from_k(temperature):
    return 1.8 * temperature - 459.67


def rev_per_s_from_rev_per_min(speed):
    return speed / 60


def rev_per_min_from_rev_per_s(speed):
    return 60 * speed


def rad_from_deg(angle):
    return pi / 180 * angle


def deg_from_rad(angle):
    return 180 / pi * angle


def s_from_min(time):
    return 60 * time


def min_from_s(time):
    return time / 60
