"""What lies along an edge, and along each part of it."""

from __future__ import annotations

from walewright.record import record
from walewright.trade.sides import EdgePart


@record
class EdgeLength:
    """What lies along an edge: rows, stitches and centimetres."""

    rows: int
    stitches: int
    cm: float

    def __add__(self, other: EdgeLength) -> EdgeLength:
        """Both, one after the other."""
        return EdgeLength(self.rows + other.rows, self.stitches + other.stitches, self.cm + other.cm)


NOTHING = EdgeLength(0, 0, 0.0)


@record
class EdgeStretch:
    """One part of an edge. `part` is "whole", "left", "centre" or "right"; `points` are the places along it where a needle can
    take something up, from below or from the left."""

    part: EdgePart
    length: EdgeLength
    points: int
