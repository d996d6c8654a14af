"""Edgings: what the stitches of one have to be a multiple of."""

from __future__ import annotations

from walewright.design.model import Edging
from walewright.trade.edgings import EDGINGS

_ODD = (2, 1)


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
