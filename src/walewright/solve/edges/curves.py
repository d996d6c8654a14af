"""Wanted lines: how far an edge should have moved at a height, from 0 to its whole move over a run.

A line is asked at the middle of each row: row i of a run lies between i - 1 and i rows up. Lines never turn back.
"""

from __future__ import annotations

from collections.abc import Callable
from math import sqrt

from walewright.trade.shaping import RunPath

Curve = Callable[[float], float]
"""Rows up from the beginning of the run to stitches moved."""


def straight(stitches: int, rows: int) -> Curve:
    """The straight line over `rows` rows."""
    return lambda height: stitches * height / rows


def pinned(stitches: int, between: tuple[int, int], begins: bool, ends: bool) -> Curve:
    """The straight line of moves that begin in a row, end in a row, or both. A move lies half of it above the line and half below,
    so where it begins or ends with one the line is half a stitch off; at its other end is a whole gap (published examples of even
    shaping have the last move in the last row, and a whole gap before the first)."""
    low, high = between
    first, last = (0.5, stitches - 0.5) if begins and ends else (0.5, stitches + 0.5) if begins else (-0.5, stitches - 0.5)

    def at(height: float) -> float:
        far = first + (last - first) * (height - low) / max(high - low, 1)
        return min(max(far, 0.0), float(stitches))

    return at


def quarter_ellipse(stitches: int, rows: int) -> Curve:
    """Level at first, upright in the end: the lower part of an armhole, the side of a round neck (common practice)."""

    def at(height: float) -> float:
        rest = max(0.0, 1 - height / rows)
        return stitches * sqrt(max(0.0, 1 - rest * rest))

    return at


def arch(stitches: int, rows: int) -> Curve:
    """Upright at first, level in the end: the quarter of an ellipse the other way round (the top of a cap, the back of a hood)."""

    def at(height: float) -> float:
        share = min(1.0, height / rows)
        return stitches * (1 - sqrt(max(0.0, 1 - share * share)))

    return at


def line_of(path: RunPath) -> Callable[[int, int], Curve]:
    """The line that a path follows."""
    match path:
        case "curve":
            return quarter_ellipse
        case "arch":
            return arch
        case "straight" | "slope" | "steps" | "rate" | "across":
            return straight


def targets(curve: Curve, rows: int) -> tuple[float, ...]:
    """The wanted move at the middle of each row; entry i - 1 is row i's."""
    return tuple(curve(i - 0.5) for i in range(1, rows + 1))
