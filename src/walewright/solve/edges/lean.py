"""Lean: where on the bed a one-sided piece is started.

A piece is started with as many needles at both sides of the centre mark. One that grows at one edge alone can come to where
the bed has no needles, though the bed is wide enough: it starts further to one side. Its edges may be drawn past the
middle of its start.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import accumulate

from walewright.counted.model import SizedRun
from walewright.design.model import Piece


def may_lean(piece: Piece) -> bool:
    """Whether a piece may be started off the middle: one with edges of its own, and no gap, which lies about the centre mark."""
    return not piece.symmetric and not piece.openings


def lean(needles: int, start: int, left: Sequence[SizedRun], right: Sequence[SizedRun]) -> int:
    """Stitches that a counted piece starts further left than centred (negative: right): none where both edges find room."""
    half = needles // 2
    reach = (start // 2 + _outermost(left), start - start // 2 + _outermost(right))
    return 0 if max(reach) <= half else (reach[1] - reach[0]) // 2


def _outermost(runs: Sequence[SizedRun]) -> int:
    return max(accumulate((by for run in runs for _, by in run.changes()), initial=0))
