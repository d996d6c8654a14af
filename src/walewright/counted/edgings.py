"""Edgings: how many rows of one are seen, and how long their ends are."""

from __future__ import annotations

from math import floor

from walewright.counted.stretches import EdgeLength
from walewright.design.model import DesignInSize, Edging
from walewright.trade.edgings import EDGINGS


def edging_rows(at: DesignInSize, edging: Edging) -> int:
    """Rows of an edging as it is seen: of a folded one those of the outside. One that is only chained off has one row."""
    if not EDGINGS[edging.kind].has_depth:
        return 1
    return even(at.of(edging.depth) * at.design.fabric(edging.fabric).rows_per_cm)


def even(wanted: float) -> int:
    """The nearest even number of rows or stitches, 2 at least."""
    return max(2, 2 * floor(wanted / 2 + 0.5))


def strip_end(at: DesignInSize, edging: Edging) -> EdgeLength:
    """One end of an edging along a piece, or of a band: its rows that are seen."""
    rows = edging_rows(at, edging)
    return EdgeLength(rows, 0, rows / at.design.fabric(edging.fabric).rows_per_cm)
