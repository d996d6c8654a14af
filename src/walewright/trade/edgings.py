"""Edgings: how one is made, when, and how it is closed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.record import record
from walewright.trade.ends import EndWay

EdgingKind = Literal["plain", "folded", "picot", "mock rib", "rolled", "facing", "chained"]
"""plain: so deep, then cast off | folded: so deep, a fold row, as deep again, and its first row hung up | picot: folded along a
row of eyelets | mock rib: folded, with needles out of work | rolled: plain, and rolls by itself | facing: a fold row first,
then so deep; turned in whole and sewn down | chained: one row, then cast off: no depth."""

EdgingWhen = Literal["after", "first"]
"""after: hung on to finished loops | first: knitted before the piece, which goes on from it."""

EdgingCastOff = Literal["chain", "sewn", "waste"]
"""chain | sewn: by back-stitch | waste: left open on waste yarn, to be sewn or grafted down."""

WHENS: tuple[EdgingWhen, ...] = ("after", "first")

ENDED: Mapping[EdgingCastOff, EndWay] = {"chain": "cast-off", "sewn": "sewn-off", "waste": "waste"}
"""How a piece ends that ends with an edging, by how that is closed."""

CAST_OFFS: tuple[EdgingCastOff, ...] = ("chain", "sewn", "waste")


@record
class EdgingFacts:
    """What is asked of a kind of edging."""

    when: tuple[EdgingWhen, ...] = WHENS
    folded: bool = False
    """Its first row is hung up again at the end, so that it has to be open."""
    fold_row: bool = False
    """It may have a row of its own to fold along."""
    turned_in: bool = False
    """It is turned in as a whole, and sewn down."""
    idle_needles: bool = False
    """Some of its needles are out of work."""
    eyelets: bool = False
    """It has a row of eyelets at every second needle."""
    latched: bool = False
    """It can be a latched rib."""
    has_depth: bool = True
    """Its author says how deep it is; else it is one row."""

    @property
    def channel(self) -> bool:
        """Whether a cord can be drawn through between its two layers."""
        return self.folded or self.turned_in


EDGINGS: Mapping[EdgingKind, EdgingFacts] = {
    "plain": EdgingFacts(latched=True),
    "folded": EdgingFacts(folded=True, fold_row=True),
    "picot": EdgingFacts(folded=True, eyelets=True),
    "mock rib": EdgingFacts(("first",), folded=True, fold_row=True, idle_needles=True),
    "rolled": EdgingFacts(),
    "facing": EdgingFacts(("after",), fold_row=True, turned_in=True),
    "chained": EdgingFacts(("after",), has_depth=False),
}
