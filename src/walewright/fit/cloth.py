"""The garment's cloth in one size: widths at rows, heights along wales, lengths of edges, as the bed knitted them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from math import hypot

from walewright.bed import KnitFabric
from walewright.counted import CountedPiece, counted_piece
from walewright.counted.bands import depth_cm, rim_cm
from walewright.counted.edges import called_on_both
from walewright.counted.model import SizedBand, SizedGarment, SizedPiece
from walewright.counted.needles import ends
from walewright.design.model import Band, Design, DesignInSize, EdgeRun, Opening, Piece
from walewright.glue.model import Place
from walewright.knit.operations import Side
from walewright.record import record
from walewright.trade.edgings import EDGINGS
from walewright.trade.sides import SIDES

SHOULDERS = ("shoulder left", "shoulder right")


@record
class RowEdge:
    """An outer edge of a piece from row `low` to row `high`, named as in `Place`."""

    name: str
    side: Side
    low: int
    high: int

    def share(self, row: float) -> float:
        return (row - self.low) / (self.high - self.low) if self.high > self.low else 1.0

    def row(self, share: float) -> int:
        return min(max(round(self.low + share * (self.high - self.low)), self.low + 1), self.high)


@record
class Cloth:
    at: DesignInSize
    garment: SizedGarment
    counted: Mapping[str, CountedPiece]
    fabrics: Mapping[str, KnitFabric]
    row_edges: Mapping[str, tuple[RowEdge, ...]]
    """By piece, from the start up, the left ones first."""

    @property
    def design(self) -> Design:
        return self.at.design

    def piece(self, owner: str) -> Piece | None:
        return next((p for p in self.design.pieces if p.name == owner), None)

    def sized(self, piece: str) -> SizedPiece:
        return self.garment.piece(piece)

    def band(self, owner: str) -> tuple[Band, SizedBand] | None:
        band = next((b for b in self.design.bands if b.name == owner), None)
        sized = next((b for b in self.garment.bands if b.name == owner), None)
        return (band, sized) if band is not None and sized is not None else None

    def named(self, piece: str, name: str) -> RowEdge | None:
        return next((e for e in self.row_edges.get(piece, ()) if e.name == name), None)

    # -------------------------------------------------------------- across and up

    def stitch(self, owner: str, row: int = 1) -> float:
        """cm of one stitch in row `row` of a piece (0: at its start), beside its panels."""
        return self.counted[owner].stitch_cm(row)

    def row_height(self, owner: str, row: int = 1) -> float:
        """cm of that row."""
        return self.counted[owner].row_cm(row)

    def width(self, piece: str, row: int) -> float | None:
        """From outer edge to outer edge in row `row` (0: at the start), without the gap of an opening."""
        if piece not in self.fabrics:
            return None
        folded = self._folded(piece, row)
        if folded is not None:
            return folded
        fabric, counter = self.fabrics[piece], self.sized(piece).counter(row)
        width, stitches = fabric.width_cm(counter), fabric.stitches_at(counter)
        ends = [fabric.outer_end(counter, side) for side in SIDES]
        if width is None or not stitches or self.parted(piece, row) or None in ends:
            return width
        # Held stitches lie in the row too.
        return width * max((ends[1] or 0) - (ends[0] or 0) + 1, stitches) / stitches

    def _folded(self, piece: str, row: int) -> float | None:
        """How wide the piece is in that row where it is worn folded along needles that were out of work there."""
        lines = zip(self.design.piece(piece).needles_out, self.sized(piece).needles_out, strict=True)
        for line, out in lines:
            if line.worn is not None and out.from_row <= max(row - 1, 0) < out.to_row:
                return self.at.of(line.worn)
        return None

    def extent(self, piece: str, row: int) -> float:
        """From outer edge to outer edge when `row` was knitted, held stitches and gaps included."""
        counter = self.sized(piece).counter(row)
        ends = [self.fabrics[piece].outer_end(counter, side) for side in SIDES]
        left, right = ends
        return 0.0 if left is None or right is None else (right - left + 1) * self.stitch(piece, row)

    def parted(self, piece: str, row: int) -> bool:
        """Whether an opening parts the piece in row `row`."""
        return self.sized(piece).parted(row - 1) is not None

    def height(self, piece: str, share: float) -> float:
        """Along the wale at that share of the start's width, from the left edge (0) to the right one (1); without its edging."""
        sized, fabric = self.sized(piece), self.fabrics[piece]
        if share in (0.0, 1.0):
            side = SIDES[int(share)]
            return sum(self.row_edge(piece, e) for e in self.row_edges[piece] if e.side == side)
        slot = -sized.start_left + min(int(share * sized.start), max(sized.start - 1, 0))
        # What is knitted on at the end lies above the piece.
        above = fabric.rows - sized.counter(sized.rows)
        rows = fabric.rows_in_wale(slot) - (above if ends(sized, sized.rows)[0] <= slot <= ends(sized, sized.rows)[1] else 0)
        whole = fabric.height_cm(0, sized.counter(sized.rows))
        return whole if whole is not None and rows == sized.counter(sized.rows) else rows * self.row_height(piece)

    def row_edge(self, piece: str, edge: RowEdge) -> float:
        found = self.fabrics[piece].edge(edge.name) if edge.name else ()
        lengths = [e.length_cm for e in found]
        if len(lengths) == 1 and lengths[0] is not None:
            return lengths[0]
        # An edge without a name is measured from corner to corner.
        sized, fabric = self.sized(piece), self.fabrics[piece]
        low, high = sized.counter(edge.low), sized.counter(edge.high)
        ends = [fabric.outer_end(max(row, 1), edge.side) for row in (low, high)]
        across = abs((ends[1] or 0) - (ends[0] or 0)) * self.stitch(piece, edge.high)
        return hypot(fabric.height_cm(low, high) or 0.0, across)

    # -------------------------------------------------------------- edges

    def length(self, place: Place) -> float | None:
        """The length at rest of an edge of a piece, or of a band's last edge or ends; None where it is not known."""
        found = self.band(place.owner)
        if found is not None:
            return self.rim(found[1]) if place.edge == "rim" else self.depth(place.owner)
        piece = self.design.piece(place.owner)
        strip = piece.strip_at(place.edge)
        if strip is not None:
            return self.start_depth(piece.name) if strip == "start" else self.end_depth(piece.name)
        if place.edge == "start" and piece.start_edging is not None:
            return self.counted[piece.name].edging_width_cm
        edge = self.named(piece.name, place.edge)
        if edge is not None:
            return self.row_edge(piece.name, edge)
        lengths = [e.length_cm for e in self.fabrics[piece.name].edge(place.edge)]
        known = [length for length in lengths if length is not None]
        return sum(known) if lengths and len(known) == len(lengths) else None

    def rim(self, band: SizedBand) -> float:
        return rim_cm(self.design, band)

    def depth(self, owner: str) -> float:
        """How deep a band is, once: as it is seen where it is folded."""
        found = self.band(owner)
        return 0.0 if found is None else depth_cm(self.design, found[1])

    def adds(self, owner: str) -> float:
        """By how much a band goes on beyond the edge that it hangs on: one that is turned in lies behind that."""
        found = self.band(owner)
        return 0.0 if found is None or self._turned_in(found[0].edging) else self.depth(owner)

    def start_adds(self, piece: str) -> float:
        """The same of the edging at the start of a piece."""
        return 0.0 if self._turned_in(self.design.piece(piece).start_edging) else self.start_depth(piece)

    def end_adds(self, piece: str) -> float:
        """The same of the edging at the end of a piece."""
        return 0.0 if self._turned_in(self.design.piece(piece).end_edging) else self.end_depth(piece)

    def _turned_in(self, edging: str | None) -> bool:
        return edging is not None and EDGINGS[self.design.edging(edging).kind].turned_in

    def start_depth(self, piece: str) -> float:
        """How deep the edging at the start of a piece is."""
        return self.counted[piece].edging_cm

    def end_depth(self, piece: str) -> float:
        """How deep the edging at the end of a piece is."""
        return self.counted[piece].end_cm


def cloth(at: DesignInSize, garment: SizedGarment, fabrics: Iterable[KnitFabric]) -> Cloth:
    """The cloth of one size: as counted, and as the bed knitted it."""
    design = at.design
    edges = {p.name: tuple(_row_edges(p, garment.piece(p.name))) for p in design.pieces}
    counted = {p.name: counted_piece(design, p) for p in garment.pieces}
    return Cloth(at, garment, counted, {f.name: f for f in fabrics}, edges)


def _row_edges(piece: Piece, sized: SizedPiece) -> Iterator[RowEdge]:
    both = called_on_both(piece)
    for side, runs in zip(SIDES, (piece.left, piece.right), strict=True):
        found: list[RowEdge] = []
        for run, low, high in _rows(runs, sized):
            name = f"{run.name} {side}" if run.name in both else run.name
            if found and found[-1].name == name and found[-1].high == low:
                found[-1] = RowEdge(name, side, found[-1].low, high)
            else:
                found.append(RowEdge(name, side, low, high))
        yield from found


def _rows(runs: Iterable[EdgeRun], sized: SizedPiece) -> Iterator[tuple[EdgeRun, int, int]]:
    low = 0
    for run in runs:
        high = sized.row(run.to_level)
        if run.path != "across" and high > low:
            yield run, low, high
        low = high


def to_top(piece: Piece) -> Opening | None:
    """The opening that parts a piece to its top; of several the one nearest to the centre."""
    return next(iter(at_the_middle(piece)), None)


def at_the_middle(piece: Piece) -> tuple[Opening, ...]:
    """The opening that parts a piece to its top; of several the one nearest to the centre, or those that are as near."""
    found = [o for o in piece.openings if o.to_level in ("", piece.levels[-1].name)]
    nearest = min(map(_from_centre, found), default=0.0)
    return tuple(o for o in found if _from_centre(o) < nearest + SAME_CM)


SAME_CM = 0.05
"""Places that are no further apart are one: less than a stitch."""


def _from_centre(opening: Opening) -> float:
    return max(map(abs, opening.centre), default=0.0)
