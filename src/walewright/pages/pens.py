"""Drawing with a pen: path data in millimetres of paper, dimension lines, hatching, stitches."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from walewright.pages.model import Drawing, Lettering, Stroke
from walewright.pages.outline import Point

LETTER_MM = 1.55
"""Width of an average character of the drawings' lettering (about 8 pt), to leave room for it."""

TICK = 1.1
"""Half a dimension line's end tick, mm."""


def path(points: Sequence[Point], closed: bool = False) -> str:
    """SVG path data through `points`."""
    start, *rest = points
    data = f"M{_n(start[0])} {_n(start[1])}" + "".join(f"L{_n(x)} {_n(y)}" for x, y in rest)
    return data + ("Z" if closed else "")


def _n(value: float) -> str:
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


@dataclass(slots=True)
class Paper:
    """Strokes gathered by pen, so that a drawing has one path a pen and layer. Coordinates in mm, y downwards."""

    _layers: list[tuple[str, list[str]]] = field(default_factory=list)
    _letterings: list[Lettering] = field(default_factory=list)

    def draw(self, pen: str, *data: str) -> None:
        """Draw with `pen`; runs of the same pen become one path."""
        if self._layers and self._layers[-1][0] == pen:
            self._layers[-1][1].extend(data)
        else:
            self._layers.append((pen, list(data)))

    def letter(self, x: float, y: float, text: str, anchor: str = "middle", turn: int = 0, kind: str = "figure") -> None:
        self._letterings.append(Lettering(round(x, 2), round(y, 2), text, anchor, turn, kind))

    def across(self, x0: float, x1: float, y: float, text: str, kind: str) -> None:
        """A dimension line from x0 to x1 at y, its text in a gap of the line, or above a line too short for it."""
        ends = [path([(x, y - TICK), (x, y + TICK)]) for x in (x0, x1)]
        room = len(text) * LETTER_MM + 2
        middle = (x0 + x1) / 2
        if x1 - x0 > room + 3:
            self.draw("measure", *ends, path([(x0, y), (middle - room / 2, y)]), path([(middle + room / 2, y), (x1, y)]))
            self.letter(middle, y + 1, text, kind=kind)
        else:
            self.draw("measure", *ends, path([(x0, y), (x1, y)]))
            self.letter(middle, y - 1.3, text, kind=kind)

    def up(self, x: float, y0: float, y1: float, text: str, kind: str, outwards: int) -> None:
        """A dimension line from y0 to y1 at x. A letter stands in a gap of the line; a figure is turned where it stands to the
        left (outwards = -1) and beside the line where it stands to the right (1), as everything is for which the line is too
        short."""
        y0, y1 = min(y0, y1), max(y0, y1)
        ends = [path([(x - TICK, y), (x + TICK, y)]) for y in (y0, y1)]
        turned = kind == "figure" and outwards < 0
        room = (len(text) * LETTER_MM + 2) if turned else 4.2
        middle = (y0 + y1) / 2
        if text and y1 - y0 > room + 2 and (turned or kind == "letter"):
            self.draw("measure", *ends, path([(x, y0), (x, middle - room / 2)]), path([(x, middle + room / 2), (x, y1)]))
            if turned:
                self.letter(x + 1, middle, text, turn=-90, kind=kind)
            else:
                self.letter(x, middle + 1, text, kind=kind)
        else:
            self.draw("measure", *ends, path([(x, y0), (x, y1)]))
            if text:
                self.letter(x + outwards * 1.8, middle + 1, text, anchor="start" if outwards > 0 else "end", kind=kind)

    def finished(self, title: str, width: float, height: float) -> Drawing:
        """The drawing, of `width` by `height` mm."""
        strokes = tuple(Stroke("".join(data), pen) for pen, data in self._layers)
        return Drawing(title, round(width, 1), round(height, 1), strokes, tuple(self._letterings))


def hatched(upper: tuple[Point, Point], lower: tuple[Point, Point], spacing: float) -> list[str]:
    """Rib lines of a band between its upper and lower edge (each left end, right end), about `spacing` mm apart."""
    count = max(2, round(abs(upper[1][0] - upper[0][0]) / spacing))
    lines = []
    for i in range(1, count):
        t = i / count
        lines.append(path([_between(*upper, t), _between(*lower, t)]))
    return lines


def _between(a: Point, b: Point, t: float) -> Point:
    return (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t)


def stitch(x: float, y: float, size: float) -> str:
    """A knit stitch as a small V, `size` mm wide, its top left corner at (x, y)."""
    return path([(x + size * 0.12, y), (x + size / 2, y + size * 0.62), (x + size * 0.88, y)])


def stitches(middle: float, y: float, rows: Iterable[int], size: float) -> list[str]:
    """Rows of stitches about x = `middle`, from y downwards: so many in each row."""
    return [
        stitch(middle + (wale - count / 2) * size, y + number * size * 0.8, size)
        for number, count in enumerate(rows)
        for wale in range(count)
    ]


def turned(points: Iterable[Point], about: Point, degrees: float) -> list[Point]:
    """`points` turned about a point (y upwards, anticlockwise positive)."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    ox, oy = about
    return [(ox + (x - ox) * c - (y - oy) * s, oy + (x - ox) * s + (y - oy) * c) for x, y in points]
