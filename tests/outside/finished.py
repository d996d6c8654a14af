"""Finished measurements of a compiled garment, read off the fabrics that the bed knitted, and the ease that its page prints.

The one place that knows where these figures come from: when the compiler measures the worn garment itself, only this file changes.
"""

from __future__ import annotations

from walewright.pages.finished import ease
from walewright.pages.measures import measured
from walewright.pipeline import Outcome


def width(outcome: Outcome, piece: str, level: str, size: int = 0) -> float:
    """cm across one piece at the end of the row of a level."""
    assert outcome.counts is not None
    row = outcome.counts.sizes[size].piece(piece).row(level)
    cm = next(fabric for fabric in outcome.results[size].fabrics if fabric.name == piece).width_cm(row)
    assert cm is not None
    return cm


def length(outcome: Outcome, piece: str, low: str, high: str, size: int = 0) -> float:
    """cm up one piece from level to level, its edging at the start left out."""
    assert outcome.counts is not None
    sized = outcome.counts.sizes[size].piece(piece)
    fabric = next(fabric for fabric in outcome.results[size].fabrics if fabric.name == piece)
    cm = fabric.height_cm(sized.row(low), sized.row(high))
    assert cm is not None
    return cm


def girth(outcome: Outcome, level: str, *pieces: str, size: int = 0) -> float:
    """cm all round at a level, over all these pieces, one of a kind."""
    return sum(width(outcome, piece, level, size) for piece in pieces)


def reach(outcome: Outcome, back: str, shoulder: str, sleeve: str, cuff: str, top: str, size: int = 0) -> float:
    """cm from the middle of the back to the wrist: half the back at its shoulder, and a sleeve from its cuff to its top."""
    return width(outcome, back, shoulder, size) / 2 + length(outcome, sleeve, cuff, top, size)


def printed_ease(outcome: Outcome, level: str) -> tuple[float, ...]:
    """cm of ease, size by size, that the page prints for the girth at a level."""
    assert outcome.design is not None
    assert outcome.counts is not None
    pieces = tuple(measured(outcome.design, outcome.counts, piece.name) for piece in outcome.design.pieces)
    (values,) = [values for label, values in ease(outcome.design, pieces) if label.endswith(f"all round at {level}")]
    return values
