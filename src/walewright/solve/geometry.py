"""Lengths of a counted piece's edges: along the polyline through its row ends, as knitted."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from walewright.design.model import Fabric, Piece
from walewright.solve.model import SizedOpening, SizedPiece, SizedRun


@dataclass(frozen=True, slots=True)
class EdgeLength:
    """What lies along an edge: rows, stitches and centimetres."""

    rows: int
    stitches: int
    cm: float

    def plus(self, other: EdgeLength) -> EdgeLength:
        """Both, one after the other."""
        return EdgeLength(self.rows + other.rows, self.stitches + other.stitches, self.cm + other.cm)


NOTHING = EdgeLength(0, 0, 0.0)


def edge_length(piece: Piece, sized: SizedPiece, fabric: Fabric, edge: str) -> EdgeLength:
    """Length of a named edge. What both sides have alike counts once; `shoulder` and `neck` are both halves' together.

    A join's two sides are measured alike by the bed, which this has to agree with."""
    if edge == "start":
        return _stitches(sized.start, fabric)
    if edge == "end":
        return _stitches(top_width(sized), fabric)
    if edge == "shoulder":
        return _stitches(top_width(sized) - sum(o.width for o in sized.openings), fabric)
    if edge == "neck":
        found = NOTHING
        for opening in sized.openings:
            half = half_neck(opening, fabric)
            found = found.plus(half).plus(half).plus(_stitches(opening.flat, fabric))
        return found
    return _polyline(next(r for r in sized.left if r.name == edge), fabric)


def top_width(sized: SizedPiece) -> int:
    """Stitches of the last row, the opening's included."""
    return sized.start + sum(by for run in (*sized.left, *sized.right) for _, by in run.changes())


def _stitches(count: int, fabric: Fabric) -> EdgeLength:
    return EdgeLength(0, count, count / fabric.stitches_per_cm)


def half_neck(opening: SizedOpening, fabric: Fabric) -> EdgeLength:
    """The row edge of one half, from the parting to the top."""
    return _polyline(opening.run, fabric)


def _polyline(run: SizedRun, fabric: Fabric) -> EdgeLength:
    """Each row one step up and as many stitches sideways as the edge moved before it. A named edge ends where stitches
    begin to be held, so every row of it reaches the edge."""
    moves: dict[int, int] = {}
    for row, by in run.changes():
        moves[row] = moves.get(row, 0) + by
    across, up = 1 / fabric.stitches_per_cm, 1 / fabric.rows_per_cm
    rows = range(run.from_row + 1, run.to_row + 1)
    cm = sum(hypot(moves.get(row - 1, 0) * across, up) for row in rows)
    return EdgeLength(len(rows), 0, cm)
