"""Counts: every counted piece of every size, and how surely they are the best.

Counts of one size are plain integers; a garment is `Counts.sizes[i]` for size i of the design.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from walewright.counted.model import SizedGarment
from walewright.design.model import Band, EdgeCut
from walewright.glue.model import GluedSizes

SolveStatus = Literal["optimal", "infeasible", "stopped"]


@dataclass(frozen=True, slots=True)
class Component:
    """One independently solved part of the programme: proven optimal when `status` is "optimal" and objective equals bound."""

    pieces: tuple[str, ...]
    status: SolveStatus
    objective: float
    bound: float


@dataclass(frozen=True, slots=True)
class Counts:
    sizes: tuple[SizedGarment, ...]
    components: tuple[Component, ...]
    parted: tuple[tuple[Band, ...], tuple[EdgeCut, ...], GluedSizes] | None = None
    """Where bands wider than the bed are knitted in parts: the bands as they are knitted, where edges are cut for them, and the
    garment put together so."""
