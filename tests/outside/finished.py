"""Finished measurements of a compiled garment, read off the fabrics that the bed knitted, and the ease that its page prints.

The one place that knows where these figures come from: when the compiler measures the worn garment itself, only this file changes.
"""

from __future__ import annotations

from walewright.pipeline import Outcome
from walewright.sheet.fitting import eases


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


def worn_girth(outcome: Outcome, size: int = 0) -> float:
    """cm round the body of the garment as it is worn: what its seams take is taken off."""
    assert outcome.fit is not None
    (girth,) = [g for g in outcome.fit.girths if g.body]
    return girth.values[size]


def reach(outcome: Outcome, back: str, shoulder: str, sleeve: str, cuff: str, top: str, size: int = 0) -> float:
    """cm from the middle of the back to the wrist: half the back at its shoulder, and a sleeve from its cuff to its top."""
    return width(outcome, back, shoulder, size) / 2 + length(outcome, sleeve, cuff, top, size)


def printed_ease(outcome: Outcome) -> tuple[float, ...]:
    """cm of ease, size by size, that the page prints for the girth of the body."""
    assert outcome.fit is not None
    (values,) = [values for label, values in eases(outcome.fit) if ": all round" in label]
    return values
