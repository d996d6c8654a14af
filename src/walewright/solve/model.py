"""Counts: every counted piece of every size, and how surely they are the best.

Counts of one size are plain integers; a garment is `Counts.sizes[i]` for size i of the design.
"""

from __future__ import annotations

from dataclasses import dataclass

from walewright.counted.model import MeasureKey as MeasureKey
from walewright.counted.model import Phrase as Phrase
from walewright.counted.model import PickUp as PickUp
from walewright.counted.model import SizedBand as SizedBand
from walewright.counted.model import SizedChart as SizedChart
from walewright.counted.model import SizedGarment as SizedGarment
from walewright.counted.model import SizedJoin as SizedJoin
from walewright.counted.model import SizedOpening as SizedOpening
from walewright.counted.model import SizedPiece as SizedPiece
from walewright.counted.model import SizedRepeat as SizedRepeat
from walewright.counted.model import SizedRun as SizedRun
from walewright.counted.model import SizedSlot as SizedSlot
from walewright.counted.model import SizedWedge as SizedWedge
from walewright.counted.model import SizedZone as SizedZone
from walewright.design.model import Band
from walewright.glue.model import Glued


@dataclass(frozen=True, slots=True)
class Component:
    """One independently solved part of the programme: proven optimal when `status` is "optimal" and objective equals bound."""

    pieces: tuple[str, ...]
    status: str
    objective: float
    bound: float


@dataclass(frozen=True, slots=True)
class Counts:
    sizes: tuple[SizedGarment, ...]
    components: tuple[Component, ...]
    parted: tuple[tuple[Band, ...], Glued] | None = None
    """Where bands wider than the bed are knitted in parts: the bands as they are knitted, and the garment put together so."""
