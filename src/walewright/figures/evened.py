"""A piece as it looks when it is worn: its sides are even where they are shaped in steps, or where one fabric follows another.

On the bed an edge steps where stitches are cast on in groups, and where a border's stitches are a little narrower than those
of the cloth about it. Sewn up and pressed neither is seen.
"""

from __future__ import annotations

from dataclasses import replace

from walewright.counted.model import ShapingPhrase, SizedRun
from walewright.counted.outline import STEP, outline
from walewright.counted.piece import CountedPiece
from walewright.design.model import Fabric
from walewright.figures.measures import LaidPiece

NEAR = 0.08
"""By how much, of the cloth's, the width of a stitch may differ for the side to lie straight: a rib draws in by more."""


def evened(piece: LaidPiece) -> LaidPiece:
    """The same piece with even sides."""
    of = piece.of
    own = of.design.fabric(piece.piece.fabric)
    layers = tuple(replace(layer, fabric=_as_wide(layer.fabric, own)) for layer in of.layers)
    sized = replace(of.sized, left=tuple(map(_sloped, of.sized.left)), right=tuple(map(_sloped, of.sized.right)))
    if layers == of.layers and sized == of.sized:
        return piece
    made = CountedPiece(of.design, of.piece, sized, layers, of.panels)
    return LaidPiece(made, outline(made))


def _as_wide(fabric: Fabric, own: Fabric) -> Fabric:
    """With stitches as wide as those of the piece's own fabric, where they are nearly so."""
    if fabric.name == own.name or abs(fabric.stitches_per_cm / own.stitches_per_cm - 1) > NEAR:
        return fabric
    return replace(fabric, swatch_stitches=own.stitches_per_cm * fabric.swatch_width_cm)


def _sloped(run: SizedRun) -> SizedRun:
    """A run of several steps as one slope."""
    moves = [by for _, by in run.changes()]
    count = (run.to_row - run.from_row) // 2
    alike = all(by >= STEP for by in moves) or all(by <= -STEP for by in moves)
    if len(moves) < 2 or not alike or not count or run.across:
        return run
    whole = sum(moves)
    reached = [round(whole * (at + 1) / count) for at in range(count)]
    parts = [by - before for by, before in zip(reached, (0, *reached), strict=False)]
    return replace(run, phrases=tuple(ShapingPhrase((2,), (by,), 1) for by in parts))
