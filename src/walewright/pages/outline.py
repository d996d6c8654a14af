"""Outlines: a piece's counts as a polygon in centimetres.

The origin is the middle of the start, x to the knitter's right as the piece hangs on the bed, y rising with the rows.
Moves of an edge are joined by straight lines, as the blocked edge lies; a large cast-off stays a step. Held rows
are drawn as the slope that they make.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from dataclasses import dataclass

from walewright.design.model import Fabric
from walewright.solve.model import SizedOpening, SizedPiece, SizedRun, SizedWedge

Point = tuple[float, float]

STEP = 4
"""Stitches. A move of fewer, or one that follows within two rows, is part of a slope or a curve; a larger one is a step."""


@dataclass(frozen=True, slots=True)
class Outline:
    """In cm. `left` and `right` are the outer edges from the start up; `shoulder_left/right` the lines from there to the
    neck (or to the middle of the top), outer end first; `neck` runs from the left half's top down and up again to the right's,
    empty when the piece has no opening."""

    left: tuple[Point, ...]
    right: tuple[Point, ...]
    shoulder_left: tuple[Point, ...]
    shoulder_right: tuple[Point, ...]
    neck: tuple[Point, ...]

    @property
    def polygon(self) -> tuple[Point, ...]:
        """The whole outline, counter-clockwise from the start's left end, each corner once."""
        inner = tuple(reversed(self.neck))
        points = (
            *self.right,
            *self.shoulder_right,
            *inner,
            *reversed(self.shoulder_left),
            *reversed(self.left),
        )
        start = self.left[0]
        return _without_repeats((start, *(p for p in points if p != start)))

    @property
    def width(self) -> float:
        """Extent across, cm."""
        xs = [p[0] for p in self.polygon]
        return max(xs) - min(xs)

    @property
    def polygon_left(self) -> float:
        """x of the leftmost point, cm (not positive)."""
        return min(p[0] for p in self.polygon)

    @property
    def height(self) -> float:
        """Extent up, cm."""
        return max(p[1] for p in self.polygon)

    def half_width(self, height: float, side: str) -> float:
        """Distance in cm from the middle to the outer edge of `side` at that height, just below any step there."""
        edge = self.right if side == "right" else self.left
        for (x0, y0), (x1, y1) in itertools.pairwise(edge):
            if y0 <= height <= y1 and y1 > y0:
                return abs(x0 + (x1 - x0) * (height - y0) / (y1 - y0))
        return abs(edge[-1][0])


def outline(piece: SizedPiece, fabric: Fabric) -> Outline:
    """The outline of `piece` knitted in `fabric`."""
    across, up = 1 / fabric.stitches_per_cm, 1 / fabric.rows_per_cm

    def cm(points: Iterator[Point]) -> tuple[Point, ...]:
        return _straightened(tuple((x * across, row * up) for x, row in points))

    half = piece.start / 2
    # With an odd count the middle of the start is still its origin: the drawing is symmetric even if the bed is not.
    right = tuple(_below_wedge(piece, "right", _edge(piece.right, half, +1)))
    left = tuple(_below_wedge(piece, "left", _edge(piece.left, half, -1)))
    opening = piece.openings[0] if piece.openings else None
    return Outline(
        left=cm(iter(left)),
        right=cm(iter(right)),
        shoulder_left=cm(_shoulder(piece, opening, left[-1], "left")),
        shoulder_right=cm(_shoulder(piece, opening, right[-1], "right")),
        neck=cm(_neck(piece, opening)),
    )


def _edge(runs: tuple[SizedRun, ...], half: float, sign: int) -> Iterator[Point]:
    """(stitches from the middle, row) of an outer edge, bottom up."""
    x = half
    yield sign * x, 0.0
    last = 0
    for run in runs:
        if run.from_row > last:
            yield sign * x, float(run.from_row)
            last = run.from_row
        for row, by in run.changes():
            if row == last or (abs(by) >= STEP and row - last > 2):
                yield sign * x, float(row)
            x += by
            yield sign * x, float(row)
            last = row
        if run.to_row > last:
            yield sign * x, float(run.to_row)
            last = run.to_row


def _below_wedge(piece: SizedPiece, side: str, points: Iterator[Point]) -> Iterator[Point]:
    """An edge as far as the holding begins: from there on the outermost needles are held and the edge does not rise."""
    rows = [w.from_row for w in piece.wedges if w.edge in ("both", side)]
    last: Point | None = None
    for x, row in points:
        if rows and row > rows[-1]:
            if last is not None and last[1] < rows[-1]:
                yield last[0] + (x - last[0]) * (rows[-1] - last[1]) / (row - last[1]), float(rows[-1])
            return
        yield x, row
        last = (x, row)


def _shoulder(piece: SizedPiece, opening: SizedOpening | None, corner: Point, side: str) -> Iterator[Point]:
    sign = 1 if side == "right" else -1
    outer = abs(corner[0])
    wedges = [w for w in piece.wedges if w.edge in ("both", side)]
    if wedges:
        wedge = wedges[-1]
        yield sign * outer, float(wedge.from_row)
        yield from _slope(wedge, outer, sign)
    else:
        yield sign * outer, float(piece.rows)
    yield sign * (opening.width / 2 if opening else 0.0), float(piece.rows)


def _slope(wedge: SizedWedge, outer: float, sign: int) -> Iterator[Point]:
    row = float(wedge.from_row)
    for group in wedge.groups:
        outer -= group
        row += 2
        yield sign * outer, row


def _neck(piece: SizedPiece, opening: SizedOpening | None) -> Iterator[Point]:
    if opening is None:
        return
    half: list[Point] = [(opening.flat / 2, float(opening.row))]
    for row, by in opening.run.changes():
        half.append((half[-1][0] - by, float(row)))
    if half[-1][1] < piece.rows:
        half.append((half[-1][0], float(piece.rows)))
    yield from ((-x, row) for x, row in reversed(half))
    yield from half


def _straightened(points: tuple[Point, ...]) -> tuple[Point, ...]:
    """Without points that lie on the line between their neighbours."""
    kept: list[Point] = []
    for point in _without_repeats(points):
        while len(kept) >= 2 and _on_line(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return tuple(kept)


def _without_repeats(points: tuple[Point, ...]) -> tuple[Point, ...]:
    return tuple(p for i, p in enumerate(points) if i == 0 or p != points[i - 1])


def _on_line(a: Point, b: Point, c: Point) -> bool:
    cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    onward = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1])
    return abs(cross) < 1e-9 and onward >= 0
