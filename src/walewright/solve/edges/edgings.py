"""Edgings: how many rows of one are seen, and what its stitches have to be a multiple of."""

from __future__ import annotations

from math import floor

from walewright.design.model import Design, Edging
from walewright.trade.edgings import EDGINGS

_ODD = (2, 1)


def edging_rows(design: Design, edging: Edging, size: int) -> int:
    """Rows of an edging as it is seen: of a folded one those of the outside. One that is only chained off has one row."""
    if not EDGINGS[edging.kind].has_depth:
        return 1
    return even(edging.depth[size] * design.fabric(edging.fabric).rows_per_cm)


def even(wanted: float) -> int:
    """The nearest even number of rows or stitches, 2 at least."""
    return max(2, 2 * floor(wanted / 2 + 0.5))


def needles_of(edging: Edging) -> tuple[int, int]:
    """(step, rest): the needles of an edging of that kind are `rest` more than a multiple of `step`; (0, 0): any number will do.

    A mock rib begins and ends with as many needles in work as it has between those that are out; the eyelets of a picot edge, at
    every second needle, have a stitch on each side (common practice)."""
    facts = EDGINGS[edging.kind]
    if facts.idle_needles and edging.mock:
        return edging.mock, edging.mock - 1
    if facts.eyelets:
        return _ODD
    return 0, 0
