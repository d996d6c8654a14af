"""Drawing with a pen: path data in millimetres of paper, hatching, stitches, loops."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from walewright.counted.outline import Point
from walewright.figures.model import Drawing, Lettering, LetteringKind, Stroke, Tile

LETTER_MM = 1.55
"""Width of an average character of the drawings' lettering (about 8 pt), to leave room for it."""


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

    _layers: list[tuple[tuple[str, str, float], list[str]]] = field(default_factory=list)
    _letterings: list[Lettering] = field(default_factory=list)
    _tiles: list[Tile] = field(default_factory=list)

    def draw(self, pen: str, *data: str, colour: str = "", width: float = 0.0) -> None:
        """Draw with `pen`, of such a colour and width (mm) where the pen has none of its own; runs of the same pen become one
        path."""
        with_ = (pen, colour, round(width, 2))
        if not data:
            return
        if self._layers and self._layers[-1][0] == with_:
            self._layers[-1][1].extend(data)
        else:
            self._layers.append((with_, list(data)))

    def tiled(self, tile: Tile, *data: str) -> None:
        """Fill with `tile`."""
        self._tiles.append(tile)
        self.draw("tiled", *data, colour=tile.name)

    def letter(self, x: float, y: float, text: str, anchor: str = "middle", turn: int = 0, kind: LetteringKind = "figure") -> None:
        self._letterings.append(Lettering(round(x, 2), round(y, 2), text, anchor, turn, kind))

    def finished(self, title: str, width: float, height: float, left: float = 0.0, top: float = 0.0) -> Drawing:
        """The drawing, of `width` by `height` mm, whose upper left corner has the coordinates (`left`, `top`)."""
        strokes = tuple(Stroke("".join(data), *pen) for pen, data in self._layers)
        sizes = (round(v, 1) for v in (width, height, left, top))
        letterings, tiles = tuple(self._letterings), tuple(self._tiles)
        return Drawing(
            title, next(sizes), next(sizes), strokes=strokes, letterings=letterings, left=next(sizes), top=next(sizes), tiles=tiles
        )


def smooth(points: Sequence[Point]) -> str:
    """Path data of a curve through points (a Catmull-Rom spline)."""
    made = f"M{points[0][0]:.2f} {points[0][1]:.2f}"
    for i in range(len(points) - 1):
        (ax, ay), (bx, by), (cx, cy), (dx, dy) = (points[min(max(j, 0), len(points) - 1)] for j in (i - 1, i, i + 1, i + 2))
        made += f"C{bx + (cx - ax) / 6:.2f} {by + (cy - ay) / 6:.2f} "
        made += f"{cx - (dx - bx) / 6:.2f} {cy - (dy - by) / 6:.2f} {cx:.2f} {cy:.2f}"
    return made


def hatched(upper: tuple[Point, Point], lower: tuple[Point, Point], spacing: float) -> list[str]:
    """Rib lines of a band between its upper and lower edge (each left end, right end), about `spacing` mm apart."""
    count = max(2, round(math.hypot(upper[1][0] - upper[0][0], upper[1][1] - upper[0][1]) / spacing))
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


def loops(x0: float, x1: float, y: float, spacing: float = 1.6) -> list[str]:
    """Open loops side by side along a line, as they hang on the needles."""
    count = max(2, round((x1 - x0) / spacing))
    step = (x1 - x0) / count
    r = step * 0.32
    return [f"M{_n(x0 + (i + 0.5) * step - r)} {_n(y)}a{_n(r)} {_n(r * 1.3)} 0 1 0 {_n(2 * r)} 0" for i in range(count)]


def zigzag(x0: float, x1: float, y: float, height: float, spacing: float = 1.5) -> str:
    """A gathering stitch from x0 to x1 about the line at y."""
    count = max(2, round((x1 - x0) / spacing))
    return path([(x0 + (x1 - x0) * i / count, y + (height / 2 if i % 2 else -height / 2)) for i in range(count + 1)])


def turned(points: Iterable[Point], about: Point, degrees: float) -> list[Point]:
    """`points` turned about a point (y upwards, anticlockwise positive)."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    ox, oy = about
    return [(ox + (x - ox) * c - (y - oy) * s, oy + (x - ox) * s + (y - oy) * c) for x, y in points]
