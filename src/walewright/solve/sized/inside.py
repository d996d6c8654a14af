"""Lines within a piece along which its edges are shaped, in needles and stitches."""

from __future__ import annotations

from dataclasses import replace
from math import floor

from walewright.counted.model import SizedLine, SizedRun
from walewright.design.model import Design, Piece
from walewright.solve.edges.edges import runs_of
from walewright.solve.edges.gauge import fabric_below
from walewright.trade.sides import EdgeSide


def lined(
    design: Design, piece: Piece, side: EdgeSide, runs: tuple[SizedRun, ...], begin: int, middle: float, size: int
) -> tuple[SizedRun, ...]:
    """The runs of an edge with their lines. The edge begins `begin` stitches from the centre mark, the middle of the start is
    `middle` stitches right of it. The outermost of several lines keeps the stitches outside it, and the others keep their needles,
    so that the place of each is told alike each time: the stitches between the two outermost are those that are lost."""
    made: list[SizedRun] = []
    at = begin
    for run, designed in zip(runs, runs_of(piece, side), strict=True):
        per_cm = fabric_below(design, piece, designed.to_level).stitches_per_cm
        lines: list[SizedLine] = []
        for number, line in enumerate(designed.lines):
            stitches = line.at(side)[size] * per_cm
            outermost = 0 < number == len(designed.lines) - 1
            from_middle = middle if side == "right" else -middle
            needle = floor(from_middle + stitches + 0.5) if line.of == "centre" else at - max(1, round(stitches))
            count = at - needle
            alone = line.of == "edge" and len(designed.lines) == 1
            lines.append(SizedLine("count", max(count, 1)) if outermost or alone else SizedLine("needle", needle))
        made.append(replace(run, lines=tuple(lines)) if lines else run)
        at += sum(by for _, by in run.changes())
    return tuple(made)
