"""Chart symbols: one drawing for each kind of cell, as path data in millimetres of paper.

Where JIS L 0201-1995 (Letter symbols for knitting stitch, kikakurui.com/l/L0201-1995-01.html) has a symbol, ours follows it; the
numbers are read there, the shapes are drawn from memory of it. The standard draws the face of the fabric. At a single bed the
purl side faces the knitter, so a chart here is drawn as the knitter sees it: left and right are exchanged, and a slant leans the
way the loop is moved on the bed. The ladder, the long stitch and the hatches of yarns are our own drawings.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from walewright.counted.outline import Point
from walewright.design.model import Cell
from walewright.guide.model import Guide
from walewright.trade.cells import CellKind

STANDARD = "JIS L 0201"

_NUMBERS: Mapping[CellKind, str | None] = {
    "knit": "1010",
    "purl": "1020",
    "hole": "1030",
    "two from right": "1040",
    "two from left": "1050",
    "three": "1060",
    "from right": "1090",
    "from left": "1100",
    "tuck": "",
    "slip": "",
    "cross": "",
    "long": None,
    "ladder": None,
}
"""Read; empty of what is in the standard from memory, its number not known, None of what it has not. "Moved right" is that on the
face: on the bed the stitch is moved left; and the stitch that on the face lies on top is the one that was on the needle before."""


def standard(cell: Cell) -> str:
    """ "JIS L 0201 1030", the standard alone where its number is not known, or "" of our own drawings."""
    number = _NUMBERS[cell.kind]
    if cell.yarn or number is None:
        return ""
    return f"{STANDARD} {number}".rstrip()


def name(guide: Guide, cell: Cell) -> str:
    """What the cell is called."""
    if cell.kind == "cross":
        return guide.say("cell/cross", count=cell.cross, side=cell.hung_first)
    return guide.say(f"cell/{cell.kind}")


_SHAPES: Mapping[CellKind, tuple[tuple[tuple[float, float], ...], ...]] = {
    "knit": (),
    "hole": (),
    "tuck": (),
    "long": (),
    "cross": (),
    "purl": (((0.2, 0.5), (0.8, 0.5)),),
    "from left": (((0.18, 0.84), (0.82, 0.16)),),
    "from right": (((0.82, 0.84), (0.18, 0.16)),),
    "two from left": (((0.12, 0.86), (0.8, 0.12)), ((0.5, 0.447), (0.84, 0.86))),
    "two from right": (((0.88, 0.86), (0.2, 0.12)), ((0.5, 0.447), (0.16, 0.86))),
    "three": (((0.5, 0.1), (0.5, 0.88)), ((0.5, 0.36), (0.12, 0.86)), ((0.5, 0.36), (0.88, 0.86))),
    "slip": (((0.2, 0.16), (0.5, 0.84), (0.8, 0.16)),),
    "ladder": (((0.36, 0.0), (0.36, 1.0)), ((0.64, 0.0), (0.64, 1.0)), ((0.36, 0.5), (0.64, 0.5))),
}
"""Strokes within a cell of 1 by 1, y downwards; none of what is drawn round or over several cells."""


def symbol(kind: CellKind, x: float, y: float, w: float, h: float) -> str:
    """The symbol of a cell whose upper left corner is (x, y), "" for a plain stitch. Tucks and crosses reach over several cells:
    see `tuck` and `cross`."""
    if kind == "hole":
        r = 0.31 * min(w, h)
        return f"M{_n(x + w / 2 - r)} {_n(y + h / 2)}a{_n(r)} {_n(r)} 0 1 0 {_n(2 * r)} 0a{_n(r)} {_n(r)} 0 1 0 {_n(-2 * r)} 0"
    if kind == "long":
        (a, b), (c, d), (e, f), (g, k) = ((x + w * u, y + h * v) for u, v in ((0.4, 0.96), (0.0, -0.2), (1.0, -0.2), (0.6, 0.96)))
        return f"M{_n(a)} {_n(b)}C{_n(c)} {_n(d)} {_n(e)} {_n(f)} {_n(g)} {_n(k)}"
    return "".join(_line([(x + w * u, y + h * v) for u, v in stroke]) for stroke in _SHAPES[kind])


def tuck(x: float, top: float, w: float, rise: float, begins: bool = True, ends: bool = True) -> str:
    """An inverted U over the rows of a run, `rise` mm high. Cut by the border of a sheet it is open: `ends` is false where it goes
    on above, `begins` where it comes from below."""
    foot = top + rise - (0.14 * w if begins else 0.0)
    left, right, r = x + 0.2 * w, x + 0.8 * w, 0.3 * w
    if not ends:
        return _line([(left, foot), (left, top)]) + _line([(right, foot), (right, top)])
    arch = min(top + 0.14 * w + r, foot)
    return f"M{_n(left)} {_n(foot)}L{_n(left)} {_n(arch)}a{_n(r)} {_n(r)} 0 0 1 {_n(2 * r)} 0L{_n(right)} {_n(foot)}"


def cross(x: float, y: float, w: float, h: float, cell: Cell, within: tuple[float, float] | None = None) -> str:
    """The strokes of a cross over 2 * `cell.cross` cells from x on: of each group the two sides of its band, of three and more
    stitches its middle too, of a single stitch one line, from where it was, below, to where it is hung. Those hung first are
    not broken: they lie in front on the knit side. `within`: only what lies between these two, across."""
    k = cell.cross
    low, high = y + 0.9 * h, y + 0.1 * h
    # A band is as wide as its stitches, less a little at its feet, so that two groups side by side stay apart.
    feet = {1: (0.5,), 2: (0.2, 1.8)}.get(k, (0.25, k / 2, k - 0.25))
    to_right = [((x + f * w, low), (x + (f + k) * w, high)) for f in feet]
    to_left = [((x + (f + k) * w, low), (x + f * w, high)) for f in feet]
    front, behind = (to_right, to_left) if cell.hung_first == "left" else (to_left, to_right)
    strokes = list(front)
    for (x0, _), (x1, _) in behind:
        strokes.extend(_outside(x0, x1, front, w, low, high))
    return "".join(_line(list(stroke)) for stroke in (_cut_off(strokes, *within) if within else strokes))


def _cut_off(strokes: Iterable[tuple[Point, Point]], left: float, right: float) -> Iterator[tuple[Point, Point]]:
    """What of straight strokes, none of which is upright, lies between `left` and `right`."""
    for (x0, y0), (x1, y1) in strokes:
        begin, end = sorted(((left - x0) / (x1 - x0), (right - x0) / (x1 - x0)))
        begin, end = max(begin, 0.0), min(end, 1.0)
        if begin < end:
            first, last = ((x0 + (x1 - x0) * t, y0 + (y1 - y0) * t) for t in (begin, end))
            yield first, last


GAP = 0.3
"""How far, in cells across, a broken line ends before what lies in front of it."""


def _outside(
    x0: float, x1: float, front: list[tuple[Point, Point]], w: float, low: float, high: float
) -> list[tuple[Point, Point]]:
    """A line from (x0, low) to (x1, high) without what the band `front` covers."""
    (a0, _), (a1, _) = front[0]
    b0 = front[-1][0][0]
    run = (x1 - x0) - (a1 - a0)
    # Shares of the way up at which the line meets the two sides of the band; the gap is told across, so it grows with the slant.
    meets = sorted(((a0 - x0) / run, (b0 - x0) / run))
    gap = GAP * w / abs(run)
    first, last = meets[0] - gap, meets[1] + gap
    made = []
    for start, end in ((0.0, first), (last, 1.0)):
        if end - start > 0.08:
            foot, head = ((x0 + (x1 - x0) * t, low + (high - low) * t) for t in (start, end))
            made.append((foot, head))
    return made


def _line(points: list[tuple[float, float]]) -> str:
    (x, y), *rest = points
    return f"M{_n(x)} {_n(y)}" + "".join(f"L{_n(a)} {_n(b)}" for a, b in rest)


def _n(value: float) -> str:
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
