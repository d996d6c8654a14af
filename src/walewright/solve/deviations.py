"""Wanted against solved, at every width station and level of a piece."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design, Piece
from walewright.solve.model import Deviation, SizedPiece


def deviations(design: Design, piece: Piece, sized: SizedPiece, size: int) -> Iterator[Deviation]:
    """The rows of the check table that a piece has in one size."""
    fabric = design.fabric(piece.fabric)
    across, up = fabric.stitches_per_cm, fabric.rows_per_cm

    def width(where: str, cm: float, stitches: int) -> Deviation:
        return Deviation(piece.name, f"width at {where}", cm, cm * across, stitches, stitches / across, "st")

    def height(what: str, cm: float, rows: int) -> Deviation:
        return Deviation(piece.name, what, cm, cm * up, rows, rows / up, "rows")

    yield width("start", piece.start_width[size], sized.start)
    for level in piece.levels:
        row = sized.row(level.name)
        runs = (*piece.left, *piece.right)
        if any(r.to_level == level.name for r in runs):
            wanted = sum(r.change[size] for r in runs if sized.row(r.to_level) <= row)
            solved = sum(by for r in (*sized.left, *sized.right) if r.to_row <= row for _, by in r.changes())
            yield width(level.name, piece.start_width[size] + wanted, sized.start + solved)
        if row:
            yield height(f"height of {level.name}", level.height[size], row)
    for opening, made in zip(piece.openings, sized.openings, strict=True):
        yield width(opening.name, opening.width[size], made.width)
        yield height(f"depth of {opening.name}", opening.depth[size], sized.rows - made.row)
