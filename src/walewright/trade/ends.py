"""How a piece begins and ends, and what becomes of stitches in the middle of a row."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.record import record

OwnStart = Literal["waste", "hand waste", "e-wrap", "chain"]
"""Ways to begin on needles of its own."""

StartWay = Literal[OwnStart, "along"]
"""waste | hand waste: waste yarn cast on by hand | e-wrap | chain | along: hung on edges of other pieces."""

EndWay = Literal["waste", "cast-off", "sewn-off", "gathered"]
"""waste: its loops wait on waste yarn | cast-off: by a chain | sewn-off: by back-stitch | gathered: the tail drawn through."""

Taken = Literal["waste", "cast-off"]
"""What becomes of the stitches that a gap or a slot takes: left on waste yarn, or closed by a chain."""

SlotTaken = Literal[Taken, "eyelet"]
"""eyelet: the one loop is moved to its neighbour, and the empty needle stays in work."""

WasteCastOn = Literal["comb", "hem", "by hand"]

ClosedCastOn = Literal["e-wrap", "chain"]


@record
class StartFacts:
    open: bool = False
    """Whether waste yarn comes first, so that its loops are open."""
    cast_on: ClosedCastOn | None = None
    """How its first row is cast on in its own yarn: a finished edge."""


STARTS: Mapping[StartWay, StartFacts] = {
    "waste": StartFacts(open=True),
    "hand waste": StartFacts(open=True),
    "e-wrap": StartFacts(cast_on="e-wrap"),
    "chain": StartFacts(cast_on="chain"),
    "along": StartFacts(),
}


@record
class EndFacts:
    open: bool = False
    """Its loops wait to be joined."""
    edge: bool = False
    """Its stitches are closed side by side, so that each can be picked up."""


ENDS: Mapping[EndWay, EndFacts] = {
    "waste": EndFacts(open=True),
    "cast-off": EndFacts(edge=True),
    "sewn-off": EndFacts(edge=True),
    "gathered": EndFacts(),
}

TAKEN: tuple[Taken, ...] = ("waste", "cast-off")
