"""How edges are put together."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.record import record

JoinWay = Literal["sewn", "grafted", "linked", "gathered", "pleated"]
"""sewn | grafted: loop by loop with a needle | linked: loop by loop on the bed | gathered: sewn, the fullness drawn in | pleated:
sewn, the fullness laid in folds."""

NextCopy = Literal["", "own", "next", "all round"]
"""Of what is knitted several times: as corners tell, each copy to its own, each to the next, or the last to the first too."""

WornFacing = Literal["", "right", "wrong"]
"""The side of pieces to the knitter when they are hung, as they are worn; empty: so that the right side of what is knitted on comes
outside."""


@record
class JoinFacts:
    """What is asked of a way to join."""

    by_loops: bool = False
    """Loop meets loop: both sides have as many."""
    by_needle: bool = False
    """A seam, sewn with a needle."""


JOINS: Mapping[JoinWay, JoinFacts] = {
    "sewn": JoinFacts(by_needle=True),
    "grafted": JoinFacts(by_loops=True),
    "linked": JoinFacts(by_loops=True),
    "gathered": JoinFacts(by_needle=True),
    "pleated": JoinFacts(by_needle=True),
}
