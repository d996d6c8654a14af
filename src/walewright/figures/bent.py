"""A long piece that short rows bend: a strip whose wedges, worked again and again, are all at one side lies as a crescent.

On the bed it is straight, and what is repeated is drawn once. Worn it goes round a middle: in each repeat the side of the wedges
has fewer rows than the other one, and the angle is what they lack, over as far as they reach in.

Ends that run out to a tip are pinned on along the same curve: each wale keeps its length and its distance from the inner edge, and
only the rows lean (common practice).
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise

from walewright.counted.model import SizedRepeat
from walewright.counted.outline import Point
from walewright.figures.measures import LaidPiece
from walewright.figures.pens import Paper, path
from walewright.figures.rims import Placing
from walewright.figures.trims import lay, rule, shade_of
from walewright.figures.worn import wales
from walewright.record import record
from walewright.trade.sides import EdgeSide

ROUND_ABOUT = math.radians(300)
"""A piece that is bent by more would lie over itself."""

FINE = 40
"""Into so many parts is a line divided that goes round the whole bend."""

HALVINGS = 40
"""In which a place on a curve is found."""

TIP = 0.25
"""Of its greatest width, how wide an end is at most that runs out to a tip."""


@record
class Bend:
    """Of what lies between `low` and `high` (cm above the start, drawn once): the angle of all repeats together, and the radius of
    the inner edge, which lies at `edge` cm right of the middle of the start; `way` leads from there into the piece. `pinned`: the
    length of the inner edge that lies on one curve from tip to tip, 0 where the ends are straight."""

    low: float
    high: float
    angle: float
    radius: float
    edge: float
    way: int
    pinned: float = 0.0

    def at(self, point: Point) -> Point:
        """Where a point of the piece lies, its middle below the centre of the bend."""
        x, y = point
        far = self.radius + (x - self.edge) * self.way
        share = min(max((y - self.low) / (self.high - self.low), 0.0), 1.0)
        turned = self.angle * (share - 0.5)
        along = min(y - self.low, 0.0) + max(y - self.high, 0.0)
        if self.pinned:
            return self._on_curve(turned * far + along, far - self.radius)
        return far * math.sin(turned) + along * math.cos(turned), along * math.sin(turned) - far * math.cos(turned)

    def _on_curve(self, along: float, out: float) -> Point:
        """What lies so far along its own wale from the middle, and so far out from the inner edge, as that is pinned: along a curve
        that bends most in its middle and no more at its tips, by the same angle in all."""
        half = self.pinned / 2
        low, high = -half, half
        for _ in range(HALVINGS):
            at = (low + high) / 2
            # A wale outside of the curve is longer by what the curve has turned, times how far out it lies.
            low, high = (at, high) if at + out * self._turned(at) < along else (low, at)
        step = at / FINE
        turns = [self._turned(step * (n + 0.5)) for n in range(FINE)]
        x, y = sum(map(math.cos, turns)) * step, sum(map(math.sin, turns)) * step
        return x + out * math.sin(self._turned(at)), y - out * math.cos(self._turned(at))

    def _turned(self, at: float) -> float:
        """The angle by which the inner edge has turned so far from its middle."""
        return self.angle / 2 * math.sin(math.pi * at / self.pinned)

    def line(self, points: list[Point]) -> list[Point]:
        """A line on the piece as it is bent."""
        made = [self.at(points[0])]
        for a, b in pairwise(points):
            made += [self.at((a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t)) for t in self._shares(a[1], b[1])]
        return made

    def _shares(self, begin: float, end: float) -> list[float]:
        """Where to divide a line between two heights, as shares of it: finely, as far as it is bent."""
        if begin == end:
            return [1.0]
        fine = [self.low + (self.high - self.low) * n / FINE for n in range(FINE + 1)]
        if self.pinned:
            fine += [begin + (end - begin) * n / FINE for n in range(FINE)]
        shares = sorted((y - begin) / (end - begin) for y in fine)
        return [*(t for t in shares if 0 < t < 1), 1.0]


def bend(piece: LaidPiece) -> Bend | None:
    """How a piece is bent; None of one that lies straight, that goes all round, or that has on it what would have to be bent with
    it."""
    of = piece.of
    repeat = max(of.sized.repeats, key=lambda one: one.times, default=None)
    patterned = of.sized.charts or any(layer.fabric.stripes for layer in of.layers) or of.panels
    if repeat is None or of.edging_cm or of.end_cm or patterned:
        return None
    angles = {side: sum(_angles(piece, repeat, side)) for side in ("left", "right")}
    inner: EdgeSide = "left" if angles["left"] > angles["right"] else "right"
    angle = (angles[inner] - angles["right" if inner == "left" else "left"]) * repeat.times
    if not 0 < angle < ROUND_ABOUT:
        return None
    low, high = of.height_cm(repeat.from_row), of.height_cm(repeat.to_row)
    held = max(
        of.height_cm(w.to_row) - of.height_cm(w.from_row)
        for w in of.sized.wedges
        if w.edge == inner and repeat.from_row <= w.from_row < repeat.to_row
    )
    bent = max(high - low - held, 0.0) * repeat.times
    edge, way = piece.shape.edge_x((low + high) / 2, inner), 1 if inner == "left" else -1
    whole = bent + piece.shape.height - (high - low)
    return Bend(low, high, angle, bent / angle, edge=edge, way=way, pinned=whole if _tipped(piece) else 0.0)


def _tipped(piece: LaidPiece) -> bool:
    """Whether both ends run out to a tip."""
    shape = piece.shape
    ends = (shape.left[0][0], shape.right[0][0]), (shape.left[-1][0], shape.right[-1][0])
    return all(abs(right - left) <= TIP * shape.width for left, right in ends)


def _angles(piece: LaidPiece, repeat: SizedRepeat, side: EdgeSide) -> Iterator[float]:
    """Those of the wedges of one repeat at a side."""
    of = piece.of
    for wedge in of.sized.wedges:
        if wedge.edge == side and repeat.from_row <= wedge.from_row < repeat.to_row:
            held = of.height_cm(wedge.to_row) - of.height_cm(wedge.from_row)
            yield held / max(wedge.reach * of.stitch_cm(wedge.to_row), 1e-6)


def outline_of(piece: LaidPiece, found: Bend) -> list[Point]:
    """The outline as it is bent, cm."""
    polygon = piece.shape.polygon
    return found.line([*polygon, polygon[0]])


def draw_bent(paper: Paper, piece: LaidPiece, found: Bend, place: Placing) -> None:
    """The piece as it is worn."""
    outline = path([place(p) for p in outline_of(piece, found)], closed=True)
    shade = shade_of(piece.of.design, piece.of.design.fabric(piece.piece.fabric))
    lay(paper, shade, outline)
    rule(
        paper,
        "wale",
        shade,
        *wales(piece.shape.polygon, lambda p: place(found.at(p)), bent=lambda line: [place(p) for p in found.line(line)]),
    )
    paper.draw("outline", outline)
