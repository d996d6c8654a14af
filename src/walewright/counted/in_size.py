"""A garment's counted pieces in one size: the view of a design in a size, with what was counted in it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.counted.edges import NOTHING, EdgeLength, edge_length
from walewright.counted.edgings import strip_end
from walewright.counted.model import SizedPiece
from walewright.counted.piece import CountedPiece, counted_piece
from walewright.design.model import Design, DesignInSize
from walewright.record import record


@record
class InSize:
    """`at`: the design in a size; its counted `pieces` by their names, all or some of them. Of bands the ends are edges too."""

    at: DesignInSize
    pieces: Mapping[str, CountedPiece]

    @property
    def design(self) -> Design:
        return self.at.design

    def length(self, edges: Iterable[tuple[str, str]], round_them: Iterable[str] = ()) -> EdgeLength:
        """Rows, stitches and centimetres of edges, each by its piece or band and its name, one after the other; `round_them`: the
        pieces that they go all round."""
        whole = frozenset(round_them)
        return sum((self._edge(owner, edge, owner in whole) for owner, edge in edges), NOTHING)

    def _edge(self, owner: str, edge: str, round_it: bool) -> EdgeLength:
        band = self.design.band(owner)
        if band is not None:
            return strip_end(self.at, self.design.edging(band.edging))
        return edge_length(self.pieces[owner], edge, round_it)


def in_size(at: DesignInSize, pieces: Iterable[SizedPiece]) -> InSize:
    """These pieces of the design, as they are counted in that size."""
    return InSize(at, {p.name: counted_piece(at.design, p) for p in pieces})
