"""Gathers at the head of a sleeve, as they are seen: short folds that run from the shoulder and the armhole into the sleeve."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from walewright.counted.edge_lines import along, edge_line, length
from walewright.counted.outline import Point
from walewright.figures.drawn import DrawnGarment
from walewright.figures.trunks import Placed, Trunk

SHARED_OUT = 0.55
"""Of the front's armhole, from the shoulder down, how much of it the gathers lie along."""

BESIDE = 1.3
"""cm between two gathers."""

LONG = (4.5, 2.8)
"""Their lengths by turns, cm."""


def gathers(garment: DrawnGarment, trunk: Trunk, hang: float) -> Iterator[tuple[Point, Point]]:
    """Each gather from its seam outwards, in cm on the garment, both sleeves'; `hang`: how far below the horizontal the sleeves
    lie, degrees."""
    for placed in trunk.fronts:
        for join in garment.design.joins:
            if join.way != "gathered" or {e.piece for e in join.one} & trunk.bodies:
                continue
            for edge in dict.fromkeys(e.edge for e in join.other if e.piece == placed.name):
                for side in ("left", "right"):
                    yield from _along(placed, edge_line(placed.piece.of, placed.piece.shape, f"{edge} {side}"), hang)


def _along(placed: Placed, line: Sequence[Point], hang: float) -> Iterator[tuple[Point, Point]]:
    """Those along the upper part of one armhole, whose line goes up."""
    whole = length(line)
    down = [placed.at(p) for p in reversed(line)]
    middle = placed.at((0.0, 0.0))[0]
    for at in range(1, int(whole * SHARED_OUT / BESIDE) + 1):
        (x, y), _ = along(down, at * BESIDE / whole)
        out, deep = math.cos(math.radians(hang)), math.sin(math.radians(hang))
        long = LONG[at % 2]
        yield (x, y), (x + math.copysign(long * out, x - middle), y - long * deep)
