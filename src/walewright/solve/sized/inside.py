"""Lines within a piece along which its edges are shaped, in needles and stitches."""

from __future__ import annotations

from math import floor

from walewright.counted.model import SizedLine, SizedRun
from walewright.design.model import DesignInSize, Piece
from walewright.record import replace
from walewright.solve.edges.edges import runs_of
from walewright.solve.edges.gauge import fabric_below
from walewright.trade.sides import EdgeSide

APART = 2
"""Stitches from the innermost line of one edge to that of the other in the same rows: with fewer both would take one stitch."""


def lined(
    at: DesignInSize, piece: Piece, side: EdgeSide, runs: tuple[SizedRun, ...], begin: int, middle: float
) -> tuple[SizedRun, ...]:
    """The runs of an edge with their lines. The edge begins `begin` stitches from the centre mark, the middle of the start is
    `middle` stitches right of it. The outermost of several lines keeps the stitches outside it, and the others keep their needles,
    so that the place of each is told alike each time: the stitches between the two outermost are those that are lost."""
    made: list[SizedRun] = []
    out = begin
    for run, designed in zip(runs, runs_of(piece, side), strict=True):
        per_cm = fabric_below(at.design, piece, designed.to_level).stitches_per_cm
        lines: list[SizedLine] = []
        for number, line in enumerate(designed.lines):
            stitches = at.of(line.at(side)) * per_cm
            outermost = 0 < number == len(designed.lines) - 1
            from_middle = middle if side == "right" else -middle
            needle = floor(from_middle + stitches + 0.5) if line.of == "centre" else out - max(1, round(stitches))
            count = out - needle
            alone = line.of == "edge" and len(designed.lines) == 1
            lines.append(SizedLine("count", max(count, 1)) if outermost or alone else SizedLine("needle", needle))
        made.append(replace(run, lines=tuple(lines)) if lines else run)
        out += sum(by for _, by in run.changes())
    return tuple(made)


def apart(left: tuple[SizedRun, ...], right: tuple[SizedRun, ...]) -> tuple[tuple[SizedRun, ...], tuple[SizedRun, ...]]:
    """The runs of both edges, the innermost lines of those that go on in the same rows so far apart that each has its own needle.
    Of two that are too near the one that lies less far out is moved outwards first."""
    edges = [list(left), list(right)]
    for one in range(len(left)):
        for other in range(len(right)):
            a, b = edges[0][one], edges[1][other]
            if not (a.lines and b.lines) or a.lines[0].of == "count" or b.lines[0].of == "count":
                continue
            if max(a.from_row, b.from_row) >= min(a.to_row, b.to_row):
                continue
            for _ in range(APART - a.lines[0].at - b.lines[0].at):
                if a.lines[0].at < b.lines[0].at:
                    a = _outwards(a)
                else:
                    b = _outwards(b)
            edges[0][one], edges[1][other] = a, b
    return tuple(edges[0]), tuple(edges[1])


def _outwards(run: SizedRun) -> SizedRun:
    """Its innermost line a needle farther from the centre."""
    return replace(run, lines=(replace(run.lines[0], at=run.lines[0].at + 1), *run.lines[1:]))
