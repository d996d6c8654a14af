"""howto: what hands do, a technique a box, in words of our own and with a small drawing of needles and tools.

All of it is common practice where no source is named.
"""

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
