"""Wedges: the groups in which stitches are held, one for every two rows, or, held in and let out, for every four."""

from __future__ import annotations

from walewright.counted.model import SizedWedge
from walewright.design.model import Piece
from walewright.solve.algebra.sums import Values
from walewright.solve.algebra.terms import PieceTerms
from walewright.trade.sides import WhichEdges


def groups(stitches: int, count: int, larger_last: bool = False) -> tuple[int, ...]:
    """`stitches` in `count` groups that differ by one at most, the larger ones first (outermost), or last."""
    size, more = divmod(stitches, count)
    larger, smaller = (size + 1,) * more, (size,) * (count - more)
    return smaller + larger if larger_last else larger + smaller


def sized_wedges(piece: Piece, terms: PieceTerms, values: Values) -> tuple[SizedWedge, ...]:
    """The wedges of a piece in one size; one at both edges whose groups differ comes as two."""
    made: list[SizedWedge] = []
    for wedge, own in zip(piece.wedges, terms.wedges, strict=True):
        count = own.pairs.at(values) // (2 if wedge.kind == "both" else 1)
        row, rest = 2 * own.from_rows.at(values), own.rest.at(values)
        held: dict[WhichEdges, tuple[int, ...]] = {
            side: groups(stitches.at(values), count, wedge.larger_last) for side, stitches in own.held
        }
        if len(set(held.values())) == 1:
            held = {wedge.edge: next(iter(held.values()))}
        made += [
            SizedWedge(name=wedge.name, edge=edge, from_row=row, groups=g, origin=wedge.origin, kind=wedge.kind, rest=rest)
            for edge, g in held.items()
        ]
    return tuple(made)
