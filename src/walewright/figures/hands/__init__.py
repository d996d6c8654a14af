"""hands: what hands do, a small drawing of needles and tools for each technique; its words are the guide's."""

from __future__ import annotations

from walewright.figures.hands import colour, edges, finishing, joins, shaping, stages, starts, stitches
from walewright.figures.hands.technique import Technique

__all__ = ["TECHNIQUES", "Technique"]

TECHNIQUES: tuple[Technique, ...] = (
    *starts.TECHNIQUES,
    *shaping.TECHNIQUES,
    *stitches.TECHNIQUES,
    *colour.TECHNIQUES,
    *edges.TECHNIQUES,
    *stages.TECHNIQUES,
    *finishing.TECHNIQUES,
    *joins.TECHNIQUES,
)
"""In the order of work."""
