"""Saddles: strips of another piece that lie between the shoulders of two pieces, as part of a sleeve does that goes on to the neck.
As it is worn, half of the strip belongs to the length of each of them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.counted.needles import ends
from walewright.design.model import Design, PerSize
from walewright.design.model.per_size import plus
from walewright.figures.measures import LaidPiece, MeasuredPiece
from walewright.record import record
from walewright.trade.edge_names import is_top, part_of_edge

SewnStrip = tuple[str, str]
"""A piece, and the name of the edges on both its sides."""


@record
class Saddle:
    """`called` as the edges of the strip are; `half` of its width."""

    called: str
    half: PerSize

    def with_it(self, length: PerSize) -> PerSize:
        return plus(length, self.half)


def saddle(design: Design, pieces: Sequence[MeasuredPiece], name: str) -> Saddle | None:
    """The strip between the shoulders of the piece called `name` and those of another one; None where no strip lies there."""
    between = {strip: {owner for owner, other in _sewn_on(design) if other == strip} for _, strip in _sewn_on(design)}
    strip = next((strip for strip, owners in between.items() if name in owners and len(owners) > 1), None)
    if strip is None:
        return None
    laid = next(p.laid for p in pieces if p.piece.name == strip[0])
    return Saddle(strip[1], tuple(_wide(one, strip[1]) / 2 for one in laid))


def _sewn_on(design: Design) -> Iterator[tuple[str, SewnStrip]]:
    """A piece whose last row is sewn to an edge of rows of another piece that has such edges on both its sides."""
    for join in design.joins:
        for tops, strips in ((join.one, join.other), (join.other, join.one)):
            for top, edge in ((top, edge) for top in tops if is_top(top.edge) for edge in strips):
                piece = next((p for p in design.pieces if p.name == edge.piece and p.name != top.piece), None)
                called = part_of_edge(edge.edge).name
                if piece is not None and all(any(run.name == called for run in runs) for runs in (piece.left, piece.right)):
                    yield top.piece, (piece.name, called)


def _wide(laid: LaidPiece, called: str) -> float:
    """cm of the strip's width where it ends."""
    level = next(run.to_level for run in laid.piece.left if run.name == called)
    row = laid.sized.row(level)
    first, last = ends(laid.sized, row)
    return laid.of.width_cm(last - first + 1, max(row - 1, 0))
