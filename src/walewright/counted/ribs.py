"""Latched ribs: over which rows of a counted piece they go, and which wales are re-formed."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedZone
from walewright.counted.needles import widest_of
from walewright.counted.piece import CountedPiece
from walewright.design.model import Fabric
from walewright.record import record

Slots = tuple[int, int]
"""First and last slot."""


@record
class LatchedRib:
    """`fabric` from row `low` to row `high`, on a `panel` or over the whole width, which is `widest` at its widest. `zone` says so,
    or None: it is the piece's own."""

    fabric: Fabric
    low: int
    high: int
    widest: Slots
    panel: Slots | None = None
    zone: SizedZone | None = None

    @property
    def begin(self) -> int | None:
        """From which slot outwards, to both sides alike, its wales are counted; None where it has none."""
        return rib_begin(self.fabric.rib_every, *self.widest, self.panel)

    def over(self, slot: int) -> bool:
        """Whether it lies on that needle."""
        return self.panel is None or self.panel[0] <= slot <= self.panel[1]

    def has(self, slot: int) -> bool:
        """Whether that wale is one of those that are re-formed, unless its needle is at an end."""
        return self.over(slot) and _outwards(slot) % self.fabric.rib_every == self.begin


def ribs(of: CountedPiece) -> Iterator[LatchedRib]:
    """The ribs of a piece: those of its zones, as they are stated, then what of its own fabric lies between these."""
    for zone in of.sized.zones:
        fabric = of.design.fabric(zone.fabric)
        if fabric.rib_every:
            widest = widest_of(of.sized, zone.from_row, zone.to_row)
            yield LatchedRib(fabric, zone.from_row, zone.to_row, widest, zone.panel, zone)
    for layer in of.layers:
        if layer.zone is None and layer.fabric.rib_every:
            yield LatchedRib(layer.fabric, layer.low, layer.high, widest_of(of.sized, layer.low, layer.high))


def rib_begin(every: int, first: int, last: int, panel: Slots | None = None) -> int | None:
    """From which slot outwards every `every`th wale of the width `first`..`last` (of a `panel` in it, those on its slots) is
    latched up: from the half of `every`, or, where no wale but an end needle's would lie there, from the nearest that has one. The
    end needles are never latched up: where there are no others it is None."""
    low, high = max(first + 1, panel[0] if panel else first + 1), min(last - 1, panel[1] if panel else last - 1)
    found = {_outwards(x) % every for x in range(low, high + 1)}
    return min(found, key=lambda begin: (abs(begin - every // 2), begin), default=None)


def _outwards(slot: int) -> int:
    """How many needles from the centre mark outwards, from 0."""
    return slot if slot >= 0 else -1 - slot
