"""A piece as it looks when it is worn: its sides are even where they are shaped in steps, or where one fabric follows another.

On the bed an edge steps where stitches are cast on in groups, and where a border's stitches are a little narrower than those
of the cloth about it; where one is moved now after one row and now after two, it goes in waves. Sewn up and pressed nothing of
that is seen.
"""

from __future__ import annotations

from collections.abc import Iterable

from walewright.counted.model import ShapingPhrase, SizedRun
from walewright.counted.outline import STEP, Outline, Point, outline
from walewright.counted.piece import CountedPiece
from walewright.design.model import Fabric
from walewright.figures.measures import LaidPiece
from walewright.record import replace

NEAR = 0.08
"""By how much, of the cloth's, the width of a stitch may differ for the side to lie straight: a rib draws in by more."""

STRAIGHT = (3.0, 0.1)
"""By how many stitches a slope may leave the straight line between its ends, and by which share of all that it moves."""


def evened(piece: LaidPiece) -> LaidPiece:
    """The same piece with even sides."""
    of = piece.of
    own = of.design.fabric(piece.piece.fabric)
    layers = tuple(replace(layer, fabric=_as_wide(layer.fabric, own)) for layer in of.layers)
    sized = replace(of.sized, left=tuple(map(_sloped, of.sized.left)), right=tuple(map(_sloped, of.sized.right)))
    alike = layers == of.layers and sized == of.sized
    made = of if alike else CountedPiece(of.design, of.piece, sized, layers, of.panels)
    shape = _straightened(made, piece.shape if alike else outline(made))
    return piece if shape == piece.shape and alike else LaidPiece(made, shape)


def _straightened(of: CountedPiece, shape: Outline) -> Outline:
    """The outline without the waves of its slopes."""
    return replace(shape, left=_without_waves(of, shape.left, of.sized.left), right=_without_waves(of, shape.right, of.sized.right))


def _without_waves(of: CountedPiece, edge: tuple[Point, ...], runs: Iterable[SizedRun]) -> tuple[Point, ...]:
    ends = [(run.from_row, list(run.changes())[-1][0]) for run in runs if _straight(of, run)]
    slopes = [(of.height_cm(low), of.height_cm(high)) for low, high in ends]
    return tuple(p for p in edge if not any(low + 1e-6 < p[1] < high - 1e-6 for low, high in slopes))


def _straight(of: CountedPiece, run: SizedRun) -> bool:
    """Whether a run, all in one fabric, goes as straight as stitches let it."""
    # What is cast off at once, as under a raglan, goes before the slope.
    moves = [(row, by) for row, by in run.changes() if row > run.from_row]
    if len(moves) < 2 or run.across or any(run.from_row < layer.low < run.to_row for layer in of.layers):
        return False
    rows, whole = moves[-1][0] - run.from_row, sum(by for _, by in moves)
    ahead, moved = [], 0
    for row, by in moves:
        level = whole * (row - run.from_row) / rows
        ahead += [abs(moved - level), abs(moved + by - level)]
        moved += by
    return max(ahead) <= min(STRAIGHT[0], STRAIGHT[1] * abs(whole))


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
