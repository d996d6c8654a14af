"""Counts: every counted piece of every size, and how surely they are the best.

Counts of one size are plain integers; a garment is `Counts.sizes[i]` for size i of the design.
"""

from __future__ import annotations

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


@record
class Counts:
    sizes: tuple[SizedGarment, ...]
    components: tuple[Component, ...]
    parted: InParts | None = None
    """Where bands wider than the bed are knitted in parts."""
