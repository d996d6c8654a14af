"""How far edges stretch: the longest that they come to, as a share of their length at rest.

Of hand knitting there are measurements: cast-off edges came to 1.39 to 1.57 of their length (susannawinter.net, comparison of 12
ways to cast off, 2019), ribs to 1.96 and 2.23 (gulfcoastmakers.com, how rib stitch is measured). For the bed nothing is published:
all shares here are from memory, set low. An author who has stretched a swatch states his own.
"""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.model import Design, Edging, Fabric
from walewright.trade.edgings import EdgingCastOff
from walewright.trade.ends import STARTS, ClosedCastOn, EndWay, StartWay

RIB_1_SEWN = 1.5
"""Latched rib 1x1, sewn off. From memory."""
RIB_2_SEWN = 1.4
"""Latched rib 2x1 and wider, sewn off. From memory."""
RIB_CHAIN = 1.3
"""Latched rib, cast off by a loose chain. From memory."""
CHAIN = 1.15
"""Any other edge with an ordinary chain. From memory."""
SEWN = 1.3
"""Plain, closed with back-stitch or with its live loops sewn down. From memory."""
FOLDED_THROUGH_BOTH = 1.2
"""A folded band, cast off or hung through both layers. From memory."""
FOLDED_SEWN = 1.3
"""A folded band, its live loops sewn down. From memory."""
PICOT = 1.25
"""From memory."""
ROLLED = 1.2
"""Rolled, with a loose chain. From memory."""
MOCK_RIB = 1.3
"""From memory."""
CHAINED = 1.1
"""A row with a chain at once; a start with the latch tool. From memory."""
E_WRAP = 1.2
"""From memory."""
ROWS = 1.15
"""A row edge, lengthways. From memory."""

_STARTS: Mapping[ClosedCastOn, float] = {"e-wrap": E_WRAP, "chain": CHAINED}


def of_edging(design: Design, edging: Edging, start_way: StartWay | None = None) -> float:
    """The share of an edging's last edge: the tightest of its fabric, its way of being closed and its start decides."""
    share = _kind(design.fabric(edging.fabric), edging)
    begun = STARTS[start_way].cast_on if start_way is not None and edging.when == "first" else None
    return share if begun is None else min(share, _STARTS[begun])


def _kind(fabric: Fabric, edging: Edging) -> float:
    match edging.kind:
        case "folded":
            return FOLDED_SEWN if edging.cast_off in ("sewn", "waste") else FOLDED_THROUGH_BOTH
        case "picot":
            return PICOT
        case "mock rib":
            return MOCK_RIB
        case "rolled":
            return SEWN if edging.cast_off == "sewn" else ROLLED
        case "chained":
            return CHAINED
        case "facing":
            return FOLDED_SEWN
        case "plain":
            return closed(fabric, edging.cast_off)


def closed(fabric: Fabric, way: EdgingCastOff | EndWay) -> float:
    """Of a last row, however closed; "waste": its live loops sewn down."""
    sewn = way in ("sewn", "sewn-off")
    if fabric.stitch == "latched rib":
        return (RIB_1_SEWN if fabric.rib_every == 2 else RIB_2_SEWN) if sewn else RIB_CHAIN
    return SEWN if sewn or way == "waste" else CHAIN


def started(way: StartWay) -> float:
    """Of a first row without an edging."""
    begun = STARTS[way].cast_on
    return CHAIN if begun is None else _STARTS[begun]
