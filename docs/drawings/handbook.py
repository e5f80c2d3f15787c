"""What the drawings of the handbook's topics show."""

import math

from draw import ACCENT, FAINT, INK, METAL, OIL, Drawing, arc


def slot():
    d = Drawing(720, 430, "Slot between two plates, rounded tip, taper and annulus")
    # Parallel plates.
    d.box(40, 40, 300, 26)
    d.box(40, 110, 300, 26)
    d.box(40, 66, 300, 44, OIL, "none")
    d.line(40, 66, 340, 66)
    d.line(40, 110, 340, 110)
    d.arrow(120, 88, 205, 88, "flow")
    d.arrow(230, 53, 300, 53, "wall_speed", dy=-18)
    d.upright(66, 110, 362, "gap", 340, 340)
    d.across(40, 340, 160, "length", 136, 136)
    d.text(22, 92, "dp", color=ACCENT)
    d.text(190, 205, "width is square to the sheet", color=FAINT, size=12)
    # Rounded tip.
    d.path([(430, 40), (680, 40), (680, 66), (430, 66)], METAL)
    tip = arc(555, 190, 118, -math.pi / 2 - 0.42, -math.pi / 2 + 0.42)
    d.path([*tip, (tip[-1][0], 170), (tip[0][0], 170)], METAL)
    d.upright(66, 72, 640, "film", 556, 556)
    d.arrow(440, 53, 505, 53, "wall_speed", dy=-18)
    d.across(555, tip[-1][0], 190, "half_width", 72, 170, below=True)
    d.line(555, 168, tip[8][0], tip[8][1], INK, 0.8)
    d.tip(tip[8][0], tip[8][1], math.atan2(tip[8][1] - 168, tip[8][0] - 555))
    d.text(512, 140, "radius")
    # Taper.
    d.path([(40, 260), (340, 296), (340, 250), (40, 235)], METAL)
    d.box(40, 335, 300, 26)
    d.path([(40, 260), (340, 296), (340, 335), (40, 335)], OIL, "none")
    d.line(40, 260, 340, 296)
    d.line(40, 335, 340, 335)
    d.arrow(130, 312, 215, 312, "flow")
    d.upright(260, 335, 24, "", 40, 40)
    d.text(50, 300, "gap_in", "start")
    d.upright(296, 335, 362, "gap_out", 340, 340)
    d.across(40, 340, 385, "length", 361, 361)
    # Annulus, eccentric.
    d.circle(555, 315, 88, OIL)
    d.circle(567, 315, 56, METAL)
    d.axis(450, 315, 660, 315)
    d.axis(555, 215, 555, 415)
    d.line(567, 225, 567, 405, FAINT, 0.8)
    d.across(511, 623, 330, "diameter", below=True)
    d.text(640, 240, "eccentricity x gap", "middle", size=12)
    d.line(561, 232, 590, 236, FAINT, 0.8)
    d.text(450, 412, "gap = difference of radii", "start", FAINT, 12)
    return d


def oil():
    d = Drawing(720, 360, "Viscosity over temperature and over pressure, and oil with free air")

    def frame(x, y, across, up):
        d.line(x, y, x + 190, y)
        d.line(x, y, x, y - 220)
        d.tip(x + 190, y, 0)
        d.tip(x, y - 220, -math.pi / 2)
        d.text(x + 100, y + 32, across)
        d.text(x + 4, y - 230, up, "start")

    # The double logarithm is straight.
    frame(40, 280, "temperature (log)", "kinematic_viscosity (log log)")
    d.line(58, 90, 215, 258, ACCENT, 1.8)
    for x, n in ((85, 1), (185, 2)):
        y = 90 + (x - 58) * 168 / 157
        d.circle(x, y, 4, ACCENT, ACCENT)
        d.line(x, y, x, 280, FAINT, 0.8, "3 3")
        d.line(x, y, 40, y, FAINT, 0.8, "3 3")
        d.text(x, 294, f"temperature_{n}", size=10)
        d.text(x + 8, y - 6, f"viscosity_{n}", "start", size=11)
    # Under pressure.
    frame(280, 280, "pressure", "viscosity (log)")
    d.line(280, 240, 450, 90, ACCENT, 1.8)
    # The same slope at zero: 150/170.
    d.path([(280 + 4 * i, 240 - 88.2 * ((1 + 4 * i / 60) ** 0.6 - 1)) for i in range(43)],
           color=INK, width=1.6, closed=False)
    d.text(400, 96, "Barus", color=ACCENT)
    d.text(440, 160, "Roelands")
    d.text(288, 258, "slope at zero: pressure_viscosity", "start", FAINT, 11)
    # Modulus with air.
    frame(520, 280, "absolute_pressure", "bulk modulus")
    d.line(520, 100, 700, 100, FAINT, 0.8, "3 3")
    d.text(612, 92, "bulk_modulus", color=FAINT, size=11)
    curves = ((0.6, INK, "air_fraction small", 0.25), (4.0, ACCENT, "large", 0.5))
    for a, color, words, at in curves:
        points = []
        for i in range(1, 46):
            p = i / 45
            soft = 1 + a * 0.08 / p**1.7
            points.append((520 + 178 * p, 280 - 180 / soft))
        d.path(points, color=color, width=1.8, closed=False)
        x, y = points[int(45 * at)]
        d.text(x + 12, y + 16, words, "start", color, 11)
    return d


def thread():
    d = Drawing(720, 400, "Profile of the thread and where the torque goes")
    # Two pitches of the basic profile, axis below.
    pitch, x0, top = 130, 60, 90
    height = pitch * math.sqrt(3) / 2
    crest, root = top, top + 5 * height / 8
    points = [(x0, root)]
    for i in range(3):
        x = x0 + i * pitch
        points += [(x + pitch / 8, root), (x + pitch * 7 / 16, crest),
                   (x + pitch * 9 / 16, crest), (x + pitch * 7 / 8, root)]
    points.append((x0 + 3 * pitch, root))
    d.path([*points, (x0 + 3 * pitch, 290), (x0, 290)], METAL)
    d.axis(40, 290, 480, 290)
    d.across(x0 + pitch / 2, x0 + 3 * pitch / 2, 60, "pitch", crest, crest)
    middle = crest + 3 * height / 8
    d.line(x0, middle, x0 + 3 * pitch, middle, FAINT, 0.8, "6 3")
    for x, y, words in ((470, crest, "diameter / 2"), (560, middle, "pitch_diameter / 2"),
                        (650, root, "minor_diameter / 2")):
        d.line(x0 + 2.9 * pitch if y != crest else x0 + 2.56 * pitch, y, x + 5, y, FAINT, 0.8)
        d.upright(y, 290, x, "")
        d.text(x - 6, 318 if x < 500 else 338 if x < 600 else 358, words, "middle", size=12)
        d.line(x, 292, x, 304 if x < 500 else 324 if x < 600 else 344, FAINT, 0.8)
    # The flanks' angle.
    x = x0 + pitch
    d.path(arc(x, crest + height * 13 / 16, 62, -math.pi / 2 - 0.52, -math.pi / 2 + 0.52, 20),
           color=ACCENT, closed=False)
    d.text(x, crest - 8, "60 deg", color=ACCENT)
    d.text(x0 + 10, 312, "axis of the bolt", "start", FAINT, 12)
    words = "torque = preload (pitch part + thread_friction part + bearing_friction part)"
    d.text(x0 + 10, 385, words, "start", INK, 13)
    return d


def joint():
    d = Drawing(800, 400, "Bolted joint and its diagram of forces")
    # The joint, cut.
    d.box(60, 120, 260, 70)
    d.box(60, 190, 260, 90)
    d.box(166, 80, 48, 260, "#eee")
    d.box(140, 80, 100, 40, "#c4c4c4")
    d.box(140, 280, 100, 36, "#c4c4c4")
    d.path([(140, 120), (98, 190), (98, 212), (140, 280)], color=ACCENT, closed=False)
    d.path([(240, 120), (282, 190), (282, 212), (240, 280)], color=ACCENT, closed=False)
    d.axis(190, 60, 190, 360)
    d.upright(120, 280, 340, "length", 320, 320)
    d.across(140, 240, 66, "face_diameter", 80, 80)
    d.across(166, 214, 352, "diameter", 316, 316, below=True)
    d.arrow(90, 118, 90, 84, "load", dx=-22, dy=4)
    d.arrow(90, 282, 90, 316, "load", dx=-22, dy=4)
    d.text(104, 240, "half_angle", "start", ACCENT, 11)
    # Forces over deformation.
    x, y = 420, 330
    d.line(x, y, x + 280, y)
    d.line(x, y, x, 70)
    d.tip(x + 280, y, 0)
    d.tip(x, 70, -math.pi / 2)
    d.text(x + 240, y + 20, "deformation")
    d.text(x + 8, 70, "force", "start")
    peak, left, right = 150, x + 130, x + 215
    d.line(x, y, left + 130 * 50 / 180, peak - 50, INK, 1.8)
    d.line(left, peak, right, y, INK, 1.8)
    d.line(x, peak, left, peak, FAINT, 0.8, "3 3")
    d.text(x + 6, peak - 6, "preload", "start")
    at = left + 26
    up = peak - 26 * 180 / 130
    down = peak + 26 * 180 / 85
    d.line(at, up, at, down, ACCENT, 2.2)
    d.text(at + 8, peak - 4, "load", "start", ACCENT)
    d.upright(up, peak, at + 78, "load_factor x load", at, left)
    d.upright(down, y, at + 20, "clamp", at)
    d.text(x + 28, 258, "bolt_stiffness", "start", size=11)
    d.text(right - 52, 316, "joint_stiffness", "end", size=11)
    return d


def plate():
    d = Drawing(800, 310, "Round plate under pressure, thick cylinder")
    d.path([(50, 130), (350, 130), (350, 160), (50, 160)], METAL)
    d.box(30, 100, 26, 90, "#c4c4c4")
    d.box(344, 100, 26, 90, "#c4c4c4")
    for i in range(9):
        d.arrow(75 + i * 31, 90, 75 + i * 31, 126)
    d.text(200, 80, "pressure", color=ACCENT)
    d.path([(56 + i * 6, 146 + 38 * (1 - ((i - 24) / 24) ** 2) ** 2) for i in range(49)],
           color=FAINT, closed=False)
    d.upright(146, 184, 214, "deflection", 200, 200)
    d.across(200, 344, 225, "radius", 184, 190)
    d.axis(200, 60, 200, 240)
    d.upright(130, 160, 388, "thickness", 350, 350)
    d.circle(560, 150, 105, METAL)
    d.circle(560, 150, 52, "#fff")
    for i in range(8):
        a = math.pi / 4 * i + math.pi / 8
        d.arrow(560 + 22 * math.cos(a), 150 + 22 * math.sin(a), 560 + 50 * math.cos(a),
                150 + 50 * math.sin(a))
        d.arrow(560 + 132 * math.cos(a), 150 + 132 * math.sin(a), 560 + 107 * math.cos(a),
                150 + 107 * math.sin(a))
    d.text(560, 142, "inner_pressure", color=ACCENT, size=10)
    d.text(560, 300, "outer_pressure", color=ACCENT)
    for radius, down, words in ((52, 0, "inner_radius"), (105, 36, "outer_radius")):
        edge = 560 + math.sqrt(radius**2 - down**2)
        d.line(560, 150, edge, 150 + down, INK, 0.8)
        d.line(edge, 150 + down, 704, 150 + down, FAINT, 0.8)
        d.text(708, 154 + down, words, "start", size=12)
    return d


def contact():
    d = Drawing(720, 350, "Two cylinders in contact, the pressure and the shear below it")
    d.path(arc(190, 90, 80, 0, 2 * math.pi, 90), METAL)
    d.path([(60, 170), (320, 170), (320, 290), (60, 290)], METAL)
    d.arrow(190, 30, 190, 84, "line_load", dx=38)
    d.line(190, 90, 246, 34)
    d.text(236, 70, "1 / curvature", "start", size=11)
    d.line(168, 170, 212, 170, ACCENT, 3)
    d.across(190, 212, 320, "half_width", 170, 170, below=True)
    d.text(250, 160, "contact_modulus", "start", FAINT, 11)
    x, y = 470, 130
    d.line(x - 80, y, x + 160, y)
    d.path([(x + i * 2, y - 70 * math.sqrt(max(0, 1 - (i / 25) ** 2))) for i in range(-25, 26)],
           OIL, closed=True)
    d.upright(60, y, x - 62, "pressure", x, None, left=True)
    d.axis(x, 40, x, 320)
    shear = []
    for i in range(60):
        z = i / 20
        t = z * (1 - z / math.hypot(1, z))
        shear.append((x + 400 * t * 1.0, y + 62 * z))
    d.path(shear, color=ACCENT, width=1.8, closed=False)
    d.line(x, y + 62 * 0.786, x + 120, y + 62 * 0.786, FAINT, 0.8, "3 3")
    d.text(x + 128, y + 62 * 0.786 + 4, "0.300 pressure", "start", ACCENT, 12)
    d.upright(y, y + 62 * 0.786, x - 30, "depth", x, x, left=True)
    d.text(x + 70, 312, "shear stress below the middle", "middle", ACCENT, 12)
    return d


def bearing():
    d = Drawing(720, 340, "Ball bearing under load, and life over load")
    d.circle(180, 165, 130, METAL)
    d.circle(180, 165, 105, "#fff")
    d.circle(180, 165, 75, METAL)
    d.circle(180, 165, 50, "#fff")
    for i in range(10):
        a = math.pi / 5 * i
        d.circle(180 + 90 * math.cos(a), 165 + 90 * math.sin(a), 14, "#eee")
    d.arrow(180, 165, 180, 240, "radial_force", dx=48)
    d.across(90, 270, 318, "pitch_diameter", 165, 165)
    x, y = 420, 280
    d.line(x, y, x + 260, y)
    d.line(x, y, x, 50)
    d.tip(x + 260, y, 0)
    d.tip(x, 50, -math.pi / 2)
    d.text(x + 190, y + 22, "load / rating (log)")
    d.text(x + 8, 48, "life (log)", "start")
    d.line(x + 20, 80, x + 230, 250, ACCENT, 1.8)
    d.text(x + 110, 120, "slope = -exponent", "start", ACCENT)
    d.circle(x + 218, 240, 4, ACCENT, ACCENT)
    d.text(x + 205, 232, "1e6 turns at the rating", "end", size=11)
    return d


def seal():
    d = Drawing(720, 340, "O-ring in its groove")
    d.path([(40, 70), (400, 70), (400, 108), (40, 108)], METAL)
    d.path([(40, 122), (130, 122), (130, 230), (290, 230), (290, 122), (400, 122), (400, 280),
            (40, 280)], METAL)
    d.add("ellipse", cx=236, cy=169, rx=54, ry=61, fill="#777", stroke=INK, stroke_width=1.2)
    d.arrow(60, 115, 122, 115, "pressure", dy=-50)
    d.upright(108, 230, 320, "gland_depth", 236, 290)
    d.across(130, 290, 305, "groove_width", 230, 230)
    d.upright(108, 122, 420, "gap", 400, 400)
    d.circle(590, 165, 84, "#777")
    d.circle(590, 165, 56, "#fff")
    d.across(534, 646, 165, "inner_diameter")
    d.across(646, 674, 280, "section", 165, 165, below=True)
    d.text(590, 60, "the ring, free")
    return d


def measure():
    d = Drawing(720, 320, "Limits, guard bands and the distribution of a measured value")
    x0, x1, y = 40, 690, 220
    d.line(x0, y, x1, y)
    d.tip(x1, y, 0)
    low, high, u = 160, 560, 34
    for x, words in ((low, "low"), (high, "high")):
        d.line(x, 60, x, 240, INK, 1.6)
        d.text(x, 256, words)
    for x, way in ((low, 1), (high, -1)):
        d.box(min(x, x + way * 2 * u), 200, 2 * u, 20, OIL)
        d.across(x, x + way * 2 * u, 290, "coverage x uncertainty", 240, 220)
    bell = [(430 + i * 3, y - 130 * math.exp(-((i * 3 / u) ** 2) / 2)) for i in range(-40, 61)]
    d.path(bell, color=ACCENT, width=1.8, closed=False)
    d.axis(430, 70, 430, 240)
    d.text(430, 256, "value", color=ACCENT)
    d.across(430, 430 + u, 140, "uncertainty")
    d.text(360, 190, "conforms", size=12)
    d.text(90, 190, "fails", size=12)
    d.text(630, 190, "fails", size=12)
    return d


def fit():
    d = Drawing(720, 320, "Readings, the fitted line, residual and leverage")
    x, y = 60, 270
    d.line(x, y, x + 600, y)
    d.line(x, y, x, 40)
    d.tip(x + 600, y, 0)
    d.tip(x, 40, -math.pi / 2)
    d.text(x + 560, y + 20, "x")
    d.text(x - 16, 60, "y")
    d.line(x, 240, x + 580, 80, ACCENT, 1.8)
    off = (8, -10, 5, -6, 12, -60, -4, 9, -7)
    for i, miss in enumerate((*off, 14)):
        px = x + 40 + i * 32 if i < 9 else x + 540
        line = 240 - (px - x) * 160 / 580
        if i == 5:
            d.line(px, line, px, line + miss, INK, 1.2, "3 3")
            d.text(px + 8, line + miss - 4, "residual: a wild reading", "start", size=12)
        d.circle(px, line + miss, 4, INK, INK)
    d.text(x + 540, 128, "far from the others:", "middle", size=12)
    d.text(x + 540, 144, "leverage", "middle", size=12)
    return d


def ring():
    d = Drawing(720, 380, "Ring of a balanced pump with its dwells and flanks")
    small, large, x, y = 105, 140, 230, 190
    outline = []
    for i in range(181):
        a = math.pi * 2 * i / 180
        t = (a + 0.35) % math.pi
        if t < 0.7:
            r = small
        elif t < 1.45:
            s = (t - 0.7) / 0.75
            r = small + (large - small) * (10 * s**3 - 15 * s**4 + 6 * s**5)
        elif t < 2.39:
            r = large
        else:
            s = min((t - 2.39) / 0.75, 1)
            r = large - (large - small) * (10 * s**3 - 15 * s**4 + 6 * s**5)
        outline.append((x + r * math.cos(a), y - r * math.sin(a)))
    d.circle(x, y, 168, METAL)
    d.path(outline, "#fff")
    d.circle(x, y, 96, "#eee")
    d.axis(x - 180, y, x + 180, y)
    d.axis(x, y - 180, x, y + 180)
    d.line(x, y, x + small * math.cos(0.2), y - small * math.sin(0.2))
    d.text(x + 40, y - 14, "small_radius", "middle", size=11)
    d.line(x, y, x + large * math.cos(1.7), y - large * math.sin(1.7))
    d.text(x + 8, y - 76, "large_radius", "start", size=11)
    base = 300
    left, wide = 440, 250
    d.line(left, base, left + wide + 10, base)
    d.line(left, base, left, 90)
    d.tip(left + wide + 10, base, 0)
    d.tip(left, 90, -math.pi / 2)
    parts = (("small_dwell", 0.7), ("rise", 0.75), ("large_dwell", 0.94), ("fall", 0.7516))
    at = left
    curve = []
    for name, angle in parts:
        w = wide * angle / math.pi
        for i in range(21):
            s = i / 20
            q = 10 * s**3 - 15 * s**4 + 6 * s**5
            h = {"small_dwell": 0, "rise": q, "large_dwell": 1, "fall": 1 - q}[name]
            curve.append((at + w * s, base - 40 - 100 * h))
        d.line(at, 100, at, base, FAINT, 0.8, "3 3")
        d.text(at + w / 2, base + (18 if "dwell" in name else 34), name, size=11)
        at += w
    d.line(at, 100, at, base, FAINT, 0.8, "3 3")
    d.path(curve, color=ACCENT, width=1.8, closed=False)
    d.text(left + 6, 84, "radius over angle, half a turn", "start", size=12)
    return d


def clearance():
    d = Drawing(720, 300, "Rotor and vane between the side plates")
    d.box(60, 50, 40, 200)
    d.box(300, 50, 40, 200)
    d.box(112, 130, 176, 120, "#c4c4c4")
    d.box(108, 70, 184, 60, "#e6e6e6")
    d.text(200, 195, "rotor")
    d.text(200, 105, "vane")
    d.across(100, 300, 34, "ring.mean: distance of the plates", 50, 50)
    d.across(112, 288, 276, "rotor.mean", 250, 250)
    d.across(108, 292, 60, "", 70, 70)
    d.text(360, 64, "vane.mean", "start")
    d.text(380, 120, "ring - rotor: clearance of the rotor, both sides together", "start", size=11)
    d.text(380, 142, "ring - vane: clearance of the vane", "start", size=11)
    d.text(380, 164, "each with the uncertainty of its difference", "start", FAINT, 11)
    return d


def displacement():
    d = Drawing(720, 345, "Vane between two dwells: what a turn displaces")
    x, y = 200, 170
    d.circle(x, y, 142, METAL)
    d.circle(x, y, 120, OIL)
    d.circle(x - 30, y, 88, "#e6e6e6")
    for i in range(8):
        a = math.pi / 4 * i
        c = -30 * math.cos(a)
        far = -c + math.sqrt(c * c - 900 + 120**2)
        d.line(x - 30 + 60 * math.cos(a), y + 60 * math.sin(a), x - 30 + far * math.cos(a),
               y + far * math.sin(a), INK, 4)
    d.axis(x - 160, y, x + 160, y)
    d.line(x, y, x, y - 120)
    d.text(x + 6, y - 60, "ring_radius", "start", size=11)
    d.across(x - 30, x, 326, "", y, y)
    d.text(x + 10, 330, "eccentricity", "start")
    d.box(440, 90, 120, 150, METAL)
    d.across(440, 560, 262, "width", 240, 240, below=True)
    d.text(440, 60, "balanced: large_radius and small_radius", "start", size=12)
    d.text(440, 78, "of the ring take the eccentricity's place", "start", size=12)
    return d


def shaft():
    d = Drawing(720, 280, "Shaft with a key, under torque and bending")
    d.box(50, 100, 380, 80)
    d.axis(30, 140, 460, 140)
    d.box(150, 84, 120, 32, "#999")
    d.across(150, 270, 66, "key_length", 84, 84)
    d.upright(100, 180, 24, "", 50, 50)
    d.text(60, 204, "diameter", "start")
    d.across(50, 430, 230, "length", 180, 180)
    d.path(arc(470, 140, 40, -1.1, 1.1, 20), color=ACCENT, width=1.8, closed=False)
    d.tip(488, 176, 2.2, ACCENT)
    d.text(526, 144, "torque", color=ACCENT)
    d.circle(630, 140, 60, METAL)
    d.circle(630, 140, 22, "#fff")
    d.box(614, 70, 32, 26, "#999")
    d.across(614, 646, 58, "key_width", 70, 70)
    d.across(608, 652, 222, "bore_diameter", 140, 140, below=True)
    return d


DRAWINGS = {f.__name__: f for f in (
    slot, oil, thread, joint, plate, contact, bearing, seal, measure, fit, ring, clearance,
    displacement, shaft,
)}
