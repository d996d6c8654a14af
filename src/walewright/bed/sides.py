"""Which sides of the finished pieces lie out together.

Two pieces that hang together are worn with the same side out (both their purl sides, or both their knit sides), or with opposite
ones. What is hung with its purl side to the knitter goes on in what is knitted; with its knit side, it is turned there. In a seam
two edges lie face to face: walked along it, one goes clockwise round its piece and the other does not, or one piece is turned.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from walewright.bed.model import BedEdge

ClothSheet = tuple[str, int]
"""(piece, copy)."""

Turned = tuple[ClothSheet, bool]
"""A sheet, and whether its knit side lies where the purl side of the others does."""


def clockwise_backwards(edge: BedEdge) -> bool:
    """Whether the points of an edge run against the clock round its piece, which lies with its purl side up."""
    return edge.at == "right" if edge.along == "rows" else edge.name == "start" or edge.name.endswith(" upper")


@dataclass(slots=True)
class BedSides:
    """A union-find of sheets; each keeps whether it is turned against the one it was put to."""

    _to: dict[ClothSheet, Turned] = field(default_factory=dict)

    def of(self, sheet: ClothSheet) -> Turned:
        """The sheet that stands for all that hang together with this one, and whether this one is turned against it."""
        turned = False
        while sheet in self._to:
            sheet, more = self._to[sheet]
            turned ^= more
        return sheet, turned

    def together(self, sheets: Iterable[Turned]) -> ClothSheet | None:
        """Bring sheets together; the first one that is out with its other side already, or None."""
        first: Turned | None = None
        for sheet, turned in sheets:
            one = self.of(sheet)
            at = one[0], one[1] ^ turned
            if first is None:
                first = at
            elif at[0] == first[0]:
                if at[1] != first[1]:
                    return sheet
            else:
                a, b = sorted((first, at))
                self._to[b[0]] = a[0], a[1] ^ b[1]
                first = a
        return None
