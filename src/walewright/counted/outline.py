"""Outlines: a piece's counts as lines in centimetres.

The origin is the middle of the start, x to the knitter's right as the piece hangs on the bed, y rising with the rows.
Moves of an edge are joined by straight lines, as the blocked edge lies; a large cast-off stays a step. Rows held up to the
top, or from the start, are drawn as the slope that they make; held rows in mid-piece are a dart, which the sewn or knitted
piece closes: the edge is drawn straight past it and the dart beside it. A repeated stretch is drawn once.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator

from walewright.counted.model import SizedOpening, SizedPiece, SizedRun, SizedWedge
from walewright.counted.needles import to_the_top
from walewright.counted.piece import CountedPiece
from walewright.record import record
from walewright.trade.sides import EdgeSide

Point = tuple[float, float]
"""(x, y): x to the right, y upwards."""

STEP = 4
"""Stitches. A move of fewer, or one that follows within two rows, is part of a slope or a curve; a larger one is a step."""


@record
class GapOutline:
    """An opening: its edge from the left part's end down and up again to the right part's. `closed`: the parts rejoin."""

    name: str
    edge: tuple[Point, ...]
    closed: bool


@record
class Dart:
    """Held rows in mid-piece: the corner at the edge where they begin, the innermost end, and the corner where they are over."""

    name: str
    side: EdgeSide
    lines: tuple[Point, ...]
    wedge: SizedWedge


@record
class Outline:
    """In cm. `left` and `right` are the outer edges from the start up; `foot` the line along the start from the left edge to the
    right one; `shoulder_left/right` the lines from the edges' upper ends to the neck (or to the middle of the top), outer end
    first; `neck` runs from the leftmost part's top to the rightmost one's, down and up again at each opening there, empty when none
    goes to the top; `tops` are these openings. `gaps` are the openings that rejoin, `darts` held rows in mid-piece."""

    left: tuple[Point, ...]
    right: tuple[Point, ...]
    shoulder_left: tuple[Point, ...]
    shoulder_right: tuple[Point, ...]
    neck: tuple[Point, ...]
    foot: tuple[Point, ...] = ()
    gaps: tuple[GapOutline, ...] = ()
    tops: tuple[GapOutline, ...] = ()
    darts: tuple[Dart, ...] = ()

    @property
    def polygon(self) -> tuple[Point, ...]:
        """The whole outline, counter-clockwise from the start's left end, each corner once."""
        inner = tuple(reversed(self.neck))
        points = (
            *self.foot[1:-1],
            *self.right,
            *self.shoulder_right,
            *inner,
            *reversed(self.shoulder_left),
            *reversed(self.left),
        )
        start = self.left[0]
        return _without_repeats((start, *(p for p in points if p != start)))

    @property
    def neckline(self) -> tuple[Point, ...]:
        """The edge of the opening that goes to the top, of several of the one nearest to the middle of the start."""
        middle = (self.left[0][0] + self.right[0][0]) / 2
        edges = (gap.edge for gap in self.tops)
        return min(edges, key=lambda edge: abs((edge[0][0] + edge[-1][0]) / 2 - middle), default=())

    @property
    def width(self) -> float:
        """Extent across, cm."""
        xs = [p[0] for p in self.polygon]
        return max(xs) - min(xs)

    @property
    def polygon_left(self) -> float:
        """x of the leftmost point, cm."""
        return min(p[0] for p in self.polygon)

    @property
    def polygon_right(self) -> float:
        """x of the rightmost point, cm."""
        return max(p[0] for p in self.polygon)

    @property
    def height(self) -> float:
        """Extent up, cm."""
        return max(p[1] for p in self.polygon)

    @property
    def start_width(self) -> float:
        """Width of the start, cm."""
        return self.right[0][0] - self.left[0][0]

    def edge_x(self, height: float, side: EdgeSide) -> float:
        """x in cm of the outer edge of `side` at that height, just below any step there; above the edge's end, that of the slope
        on from it."""
        edge = self.right if side == "right" else self.left
        slope = self.shoulder_right if side == "right" else self.shoulder_left
        found = _x_at((*edge, *slope), height)
        return edge[-1][0] if found is None else found


def outline(of: CountedPiece) -> Outline:
    """The outline of a counted piece, each row in its fabrics."""
    piece = of.sized
    right = tuple(between_slopes(piece, "right", edge_points(piece.right, of.middle + piece.start / 2, +1)))
    left = tuple(between_slopes(piece, "left", edge_points(piece.left, of.middle - piece.start / 2, -1)))
    tops = to_the_top(piece)
    neck = tuple(point for opening in tops for point in _gap(opening))
    inner = (neck[0][0], neck[-1][0]) if neck else _meeting(piece, left[-1][0], right[-1][0])
    rows = float(piece.rows)
    return Outline(
        left=line_cm(of, left),
        right=line_cm(of, right),
        shoulder_left=line_cm(of, _shoulder(piece, left[-1], "left", inner[0], rows)),
        shoulder_right=line_cm(of, _shoulder(piece, right[-1], "right", inner[1], rows)),
        neck=line_cm(of, neck),
        foot=line_cm(of, _foot(piece, left[0], right[0])),
        gaps=tuple(GapOutline(o.name, line_cm(of, _gap(o)), True) for o in piece.openings if o.rejoins),
        tops=tuple(GapOutline(o.name, line_cm(of, _gap(o)), False) for o in tops),
        darts=tuple(_darts(of)),
    )


def between_tops(shape: Outline, number: int) -> tuple[Point, Point]:
    """The last row of the part between two openings that is the `number`th from the left."""
    return shape.tops[number - 2].edge[-1], shape.tops[number - 1].edge[0]


# ----------------------------------------------------------------- outer edges, in (stitches, row)


def edge_points(runs: tuple[SizedRun, ...], x: float, sign: int) -> Iterator[Point]:
    """(stitches from the centre mark, row) of an outer edge, bottom up; `sign` is the way outwards."""
    yield x, 0.0
    last = 0
    for run in runs:
        if run.from_row > last:
            yield x, float(run.from_row)
            last = run.from_row
        for row, by in run.changes():
            if row == last or (abs(by) >= STEP and row - last > 2):
                yield x, float(row)
            x += sign * by
            yield x, float(row)
            last = row
        if run.to_row > last:
            yield x, float(run.to_row)
            last = run.to_row


def on_top(piece: SizedPiece, side: EdgeSide) -> SizedWedge | None:
    """The holding that slopes the end of an edge: the last one of `side`, held up to the top."""
    found = [w for w in piece.wedges if w.edge in ("both", side) and w.kind == "in" and w.to_row >= piece.rows]
    return found[-1] if found else None


def at_foot(piece: SizedPiece, side: EdgeSide) -> SizedWedge | None:
    """The holding that curves the start: all but the middle held at row 0, and returned step by step."""
    return next((w for w in piece.wedges if w.edge in ("both", side) and w.kind == "out" and w.from_row == 0), None)


def between_slopes(piece: SizedPiece, side: EdgeSide, points: Iterable[Point]) -> Iterator[Point]:
    """An edge between the slope of its foot and that of its top: held needles do not rise."""
    top, foot = on_top(piece, side), at_foot(piece, side)
    low = foot.to_row - 2 if foot else 0
    high = top.from_row if top else piece.rows
    yield from _between(list(points), low, high)


def _between(points: list[Point], low: float, high: float) -> Iterator[Point]:
    """The part of a rising line from row `low` to row `high`."""
    last: Point | None = None
    for x, row in points:
        if last is not None and last[1] < low < row:
            yield last[0] + (x - last[0]) * (low - last[1]) / (row - last[1]), float(low)
        if row > high:
            if last is not None and last[1] < high:
                yield last[0] + (x - last[0]) * (high - last[1]) / (row - last[1]), float(high)
            return
        if row >= low:
            yield x, row
        last = (x, row)


def _meeting(piece: SizedPiece, left: float, right: float) -> tuple[float, float]:
    """Where the lines from both edges meet on a top without an opening: in the middle, or where the only slope ends."""
    slopes = on_top(piece, "left"), on_top(piece, "right")
    if slopes[0] is not None and slopes[1] is None:
        meet = min(left + slopes[0].rest + sum(slopes[0].groups), right)
    elif slopes[1] is not None and slopes[0] is None:
        meet = max(right - slopes[1].rest - sum(slopes[1].groups), left)
    else:
        meet = (left + right) / 2
    return meet, meet


def _shoulder(piece: SizedPiece, corner: Point, side: EdgeSide, inner: float, rows: float) -> Iterator[Point]:
    wedge = on_top(piece, side)
    sign = 1 if side == "right" else -1
    if wedge is not None:
        yield corner[0], float(wedge.from_row)
        yield from _stairs(wedge, corner[0], -sign, wedge.from_row, +1)
    else:
        yield corner[0], rows
    yield inner, rows


def _foot(piece: SizedPiece, left: Point, right: Point) -> Iterator[Point]:
    yield left
    wedge = at_foot(piece, "left")
    if wedge is not None:
        yield from _stairs(wedge, left[0], +1, left[1], -1)
    wedge = at_foot(piece, "right")
    if wedge is not None:
        yield from reversed(list(_stairs(wedge, right[0], -1, right[1], -1)))
    yield right


def _stairs(wedge: SizedWedge, x: float, inwards: int, row: float, up: int) -> Iterator[Point]:
    """The slope of a holding from its outer end at (x, row)."""
    if wedge.rest:
        x += inwards * wedge.rest
        yield x, float(row)
    for at, group in enumerate(wedge.groups):
        if up < 0 and at == len(wedge.groups) - 1:
            return
        x += inwards * group
        row += 2 * up
        yield x, float(row)


# ----------------------------------------------------------------- openings and darts


def _gap(opening: SizedOpening) -> Iterator[Point]:
    """The edge of an opening from the left part's end down, across and up to the right part's."""
    left = list(inner_points(opening.edge("left"), opening.first, +1, opening.row, opening.to_row))
    right = list(inner_points(opening.edge("right"), opening.first + opening.flat, -1, opening.row, opening.to_row))
    yield from reversed(left)
    yield from right


def inner_points(runs: tuple[SizedRun, ...], x: float, sign: int, row: int, to_row: int) -> Iterator[Point]:
    """One edge of a gap, bottom up; a negative move takes stitches from the part, so that the gap widens."""
    yield x, float(row)
    last = row
    for run in runs:
        if run.from_row > last:
            yield x, float(run.from_row)
            last = run.from_row
        for at, by in run.changes():
            x += sign * by
            yield x, float(at)
            last = at
        if run.to_row > last:
            yield x, float(min(run.to_row, to_row))
            last = run.to_row
    if last < to_row:
        yield x, float(to_row)


def _darts(of: CountedPiece) -> Iterator[Dart]:
    piece = of.sized
    for wedge in piece.wedges:
        for side in ("left", "right") if wedge.edge == "both" else (wedge.edge,):
            if wedge in (on_top(piece, side), at_foot(piece, side)):
                continue
            sign = 1 if side == "right" else -1
            runs = piece.right if side == "right" else piece.left
            edge = list(edge_points(runs, of.middle + sign * piece.start / 2, sign))
            x = _x_at(tuple(edge), wedge.from_row)
            yield Dart(wedge.name, side, line_cm(of, _dart(wedge, edge[-1][0] if x is None else x, -sign)), wedge)


def _dart(wedge: SizedWedge, x: float, inwards: int) -> Iterator[Point]:
    """From the edge inwards along the steps of holding, and back along those of returning."""
    groups, low, high = wedge.groups, float(wedge.from_row), float(wedge.to_row)
    edge = x + inwards * wedge.rest
    ends = list(itertools.accumulate(groups[:-1] if wedge.kind != "both" else groups, initial=0))
    steps = [edge + inwards * end for end in ends]
    yield x, low
    if wedge.kind == "in":
        yield from ((at, low + 2 * i) for i, at in enumerate(steps))
        yield x, high
    elif wedge.kind == "out":
        yield from ((at, high - 2 * i) for i, at in reversed(list(enumerate(steps))))
        yield x, high
    else:
        yield from ((at, low + 2 * i) for i, at in enumerate(steps))
        yield from ((at, high - 2 * i) for i, at in reversed(list(enumerate(steps[:-1]))))
        yield x, high


# ----------------------------------------------------------------- lines


def line_cm(of: CountedPiece, points: Iterable[Point]) -> tuple[Point, ...]:
    """A line of (stitches, row) in cm, without points that lie straight between their neighbours."""
    found = list(points)
    if len(of.layers) == 1 and not of.panels:
        return _straightened([of.point(*p) for p in found])
    made = [point for a, b in itertools.pairwise(found) for point in _piecewise(of, a, b)]
    return _straightened(made or [of.point(*p) for p in found])


def _piecewise(of: CountedPiece, a: Point, b: Point) -> Iterator[Point]:
    if a[1] == b[1]:
        yield from (of.point(*a), of.point(*b))
        return
    up = b[1] > a[1]
    ends = {float(layer.low) for layer in of.layers} | {float(r) for p in of.panels for r in (p.low, p.high)}
    cuts = sorted(row for row in ends if min(a[1], b[1]) < row < max(a[1], b[1]))
    for low, high in itertools.pairwise([a[1], *(cuts if up else reversed(cuts)), b[1]]):
        for row, leaving in ((low, True), (high, False)):
            x = a[0] + (b[0] - a[0]) * (row - a[1]) / (b[1] - a[1])
            yield of.point(x, row, above=leaving == up)


def _straightened(points: list[Point]) -> tuple[Point, ...]:
    kept: list[Point] = []
    for point in points:
        if kept and kept[-1] == point:
            continue
        while len(kept) >= 2 and _on_line(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return tuple(kept)


def _on_line(a: Point, b: Point, c: Point) -> bool:
    cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    onward = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1])
    return abs(cross) < 1e-9 and onward >= 0


def _x_at(line: tuple[Point, ...], height: float) -> float | None:
    for (x0, y0), (x1, y1) in itertools.pairwise(line):
        if y0 <= height <= y1 and y1 > y0:
            return x0 + (x1 - x0) * (height - y0) / (y1 - y0)
    return None


def _without_repeats(points: tuple[Point, ...]) -> tuple[Point, ...]:
    return tuple(p for i, p in enumerate(points) if i == 0 or p != points[i - 1])
