"""The drawings of the topic pages.

    python3 draw.py OUTPUT_DIR STAMP

Writes TOPIC.svg for each topic that has a drawing, then touches STAMP. Lines, letters and arrows
are of one kind throughout; letters are the names of the formulas' parameters.
"""

import math
import pathlib
import sys
from html import escape

INK, FAINT, METAL, OIL, ACCENT = "#222", "#888", "#d8d8d8", "#f3e3b3", "#b03030"


class Drawing:
    """Shapes on a sheet; y points down, as in SVG."""

    def __init__(self, width, height, title):
        self.width, self.height, self.title, self.shapes = width, height, title, []

    def add(self, name, text=None, **attributes):
        pairs = " ".join(
            f'{key.strip("_").replace("_", "-")}="{number(value)}"'
            for key, value in attributes.items()
        )
        self.shapes.append(f"<{name} {pairs}/>" if text is None
                           else f"<{name} {pairs}>{escape(text)}</{name}>")

    def line(self, x1, y1, x2, y2, color=INK, width=1.2, dash=""):
        more = {"stroke_dasharray": dash} if dash else {}
        self.add("line", x1=x1, y1=y1, x2=x2, y2=y2, stroke=color, stroke_width=width, **more)

    def axis(self, x1, y1, x2, y2):
        self.line(x1, y1, x2, y2, FAINT, 0.8, "10 3 2 3")

    def path(self, points, fill="none", color=INK, width=1.2, closed=True):
        steps = " ".join(f"{number(x)},{number(y)}" for x, y in points)
        self.add("polygon" if closed else "polyline", points=steps, fill=fill, stroke=color,
                 stroke_width=width)

    def box(self, x, y, width, height, fill=METAL, color=INK):
        self.add("rect", x=x, y=y, width=width, height=height, fill=fill, stroke=color,
                 stroke_width=1.2)

    def circle(self, x, y, radius, fill="none", color=INK):
        self.add("circle", cx=x, cy=y, r=radius, fill=fill, stroke=color, stroke_width=1.2)

    def text(self, x, y, words, anchor="middle", color=INK, size=13):
        self.add("text", words, x=x, y=y, fill=color, font_size=size, text_anchor=anchor)

    def tip(self, x, y, angle, color=INK):
        """An arrowhead that points along an angle."""
        sides = [(x - 8 * math.cos(angle + s), y - 8 * math.sin(angle + s)) for s in (-0.35, 0.35)]
        self.path([(x, y), *sides], color, color, 0.5)

    def arrow(self, x1, y1, x2, y2, words="", color=ACCENT, dx=0, dy=-6):
        self.line(x1, y1, x2, y2, color, 1.6)
        self.tip(x2, y2, math.atan2(y2 - y1, x2 - x1), color)
        if words:
            self.text((x1 + x2) / 2 + dx, (y1 + y2) / 2 + dy, words, color=color)

    def across(self, x1, x2, y, words, start=None, end=None, below=False):
        """A horizontal dimension, with lines from what it measures."""
        for x, at in ((x1, start), (x2, end)):
            if at is not None:
                self.line(x, at, x, y + (4 if y > at else -4), FAINT, 0.8)
        self.line(x1, y, x2, y, INK, 0.8)
        self.tip(x1, y, math.pi if x1 < x2 else 0)
        self.tip(x2, y, 0 if x1 < x2 else math.pi)
        self.text((x1 + x2) / 2, y + (16 if below else -5), words)

    def upright(self, y1, y2, x, words, start=None, end=None, left=False):
        """A vertical dimension."""
        for y, at in ((y1, start), (y2, end)):
            if at is not None:
                self.line(at, y, x + (4 if x > at else -4), y, FAINT, 0.8)
        if abs(y2 - y1) > 22:
            self.line(x, y1, x, y2, INK, 0.8)
            self.tip(x, y1, -math.pi / 2)
            self.tip(x, y2, math.pi / 2)
        else:
            self.line(x, y1 - 18, x, y1, INK, 0.8)
            self.line(x, y2, x, y2 + 18, INK, 0.8)
            self.tip(x, y1, math.pi / 2)
            self.tip(x, y2, -math.pi / 2)
        self.text(x + (-7 if left else 7), (y1 + y2) / 2 + 4, words, "end" if left else "start")

    def svg(self):
        head = (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {self.width} {self.height}" '
            f'width="{self.width}" height="{self.height}" role="img" '
            'font-family="DejaVu Sans, Helvetica, Arial, sans-serif">'
        )
        ground = f'<rect width="{self.width}" height="{self.height}" fill="#fff"/>'
        title = f"<title>{escape(self.title)}</title>"
        return "\n".join([head, title, ground, *self.shapes, "</svg>"]) + "\n"


def number(value):
    if isinstance(value, float):
        return f"{value:.2f}".rstrip("0").rstrip(".")
    return escape(str(value))


def arc(x, y, radius, start, end, steps=48):
    """Points of an arc; angles in radians, clockwise on the sheet."""
    turn = (end - start) / steps
    return [(x + radius * math.cos(start + i * turn), y + radius * math.sin(start + i * turn))
            for i in range(steps + 1)]


def main():
    import handbook

    output, stamp = map(pathlib.Path, sys.argv[1:])
    for topic, drawing in handbook.DRAWINGS.items():
        (output / f"{topic}.svg").write_text(drawing().svg(), encoding="utf-8")
    stamp.touch()


if __name__ == "__main__":
    main()
