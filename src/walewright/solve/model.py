"""Counts: every counted piece of every size, and how surely they are the best.

Counts of one size are plain integers; a garment is `Counts.sizes[i]` for size i of the design.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from walewright.counted.model import SizedGarment
from walewright.design.model import Band, Design, EdgeCut, EdgeJoin, EdgeName
from walewright.glue.model import GluedSizes
from walewright.record import record, replace

SolveStatus = Literal["optimal", "infeasible", "stopped"]


@record
class Component:
    """One independently solved part of the programme: proven optimal when `status` is "optimal" and objective equals bound."""

    pieces: tuple[str, ...]
    status: SolveStatus
    objective: float
    bound: float


@record
class InParts:
    """Bands wider than the bed as they are knitted, where edges are cut for them, the joins and free edges with the ends of the
    parts in place of those of the bands, and the garment put together so."""

    bands: tuple[Band, ...]
    cuts: tuple[EdgeCut, ...]
    joins: tuple[EdgeJoin, ...]
    free: tuple[EdgeName, ...]
    glued: GluedSizes

    def of(self, design: Design) -> Design:
        """The design with the bands in parts."""
        return replace(design, bands=self.bands, cuts=self.cuts, joins=self.joins, free=self.free)

    def in_sizes(self, design: Design, places: Sequence[int]) -> Design:
        """`design`, which has the sizes of those numbers alone and its bands whole, with its bands in these parts."""
        whole = {band.name: band for band in design.bands}
        bands = tuple(
            replace(whole[band.name], along=band.along, hole_along=band.hole_along) if band.name in whole else _at(band, places)
            for band in self.bands
        )
        joins = tuple(replace(own, one=join.one, other=join.other) for own, join in zip(design.joins, self.joins, strict=True))
        cuts = tuple(replace(cut, at=tuple(cut.at[i] for i in places)) for cut in self.cuts)
        return replace(design, bands=bands, cuts=cuts, joins=joins, free=self.free)


def _at(part: Band, places: Sequence[int]) -> Band:
    """A part of a band in some of its sizes; a part that has no buttonhole in any of them is a part without."""
    holes = tuple(part.holes[i] for i in places) if part.holes else ()
    if not any(holes):
        return replace(part, holes=(), hole_stitches=0, first=(), last=(), places=())
    first, last = (tuple(cm[i] for i in places) for cm in (part.first, part.last))
    return replace(part, holes=holes, places=tuple(part.places[i] for i in places), first=first, last=last)


@record
class Counts:
    sizes: tuple[SizedGarment, ...]
    components: tuple[Component, ...]
    parted: InParts | None = None
    """Where bands wider than the bed are knitted in parts."""
