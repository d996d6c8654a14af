"""Which tail is needed where: what is sewn with an end of yarn that is broken off, by the joins and bands that use its edge.

A graft is sewn with the tail of a last row, that of the side named first if it is one. A seam begins with the tail of a last edge
that lies along it, else with that of an edging hung on at its foot, else with that of a last edge at its head; one tail sews one
seam, in the order of the joins. A band's tail sews the band's own end.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from walewright.design.model import Design, EdgeName, Fabric, Piece
from walewright.knit.lengths import grafting_cm, seam_tail_cm
from walewright.solve.model import SizedGarment, SizedJoin

LAST = ("end", "shoulder")
"""Names of the last edge of a piece: an author may call it either."""
_SEWN = ("sewn", "gathered")

Place = tuple[str, str]
"""(piece, "start", or "end" with a side where the author named one)."""


@dataclass(frozen=True, slots=True)
class Tails:
    """What one size's tails are needed for: grafts, and centimetres of seam, by place."""

    grafts: frozenset[Place] = frozenset()
    seams: Mapping[Place, float] = field(default_factory=dict)

    def of_end(self, piece: str, edge: str, fabric: Fabric, stitches: int) -> int:
        """Of the `stitches` of a last edge called "end", "shoulder left" or another."""
        places = {(piece, last) for last in (_last(edge), "end")}
        if places & self.grafts:
            return grafting_cm(fabric, stitches)
        return seam_tail_cm(max((self.seams.get(place, 0.0) for place in places), default=0.0))

    def of_start(self, piece: str, depth_cm: float) -> int:
        """Of an edging `depth_cm` deep hung on the start of a piece: the seam is as much longer."""
        seam = self.seams.get((piece, "start"), 0.0)
        return seam_tail_cm(seam + depth_cm if seam else 0.0)


def tails(design: Design, garment: SizedGarment) -> Tails:
    """The tails that one size needs."""
    grafts: set[Place] = set()
    seams: dict[Place, float] = {}
    for join in garment.joins:
        if join.way == "grafted" or _both_open(design, join):
            side = _open_last(design, join.one) or _open_last(design, join.other)
            grafts.update(side)
    for join in garment.joins:
        if join.way in _SEWN and not _both_open(design, join):
            free = next((place for place in _places(design, garment, join) if place not in seams and place not in grafts), None)
            if free is not None:
                seams[free] = max(join.one_cm, join.other_cm)
    return Tails(frozenset(grafts), seams)


def open_end(design: Design, edge: EdgeName) -> bool:
    """Whether the edge is the last row of a piece that ends on waste yarn."""
    return _last(edge.edge) != "" and design.piece(edge.piece).end_way == "waste"


def _both_open(design: Design, join: SizedJoin) -> bool:
    """No seam holds open loops: what is joined so is grafted."""
    return join.way == "sewn" and all(open_end(design, e) for e in (*join.one, *join.other))


def _last(edge: str) -> str:
    """ "end" of a last edge, with its side if one is named; of any other nothing."""
    name, _, side = edge.partition(" ")
    return f"end {side}".strip() if name in LAST else ""


def _open_last(design: Design, side: tuple[EdgeName, ...]) -> list[Place]:
    return [(e.piece, _last(e.edge)) for e in side if open_end(design, e)]


def _places(design: Design, garment: SizedGarment, join: SizedJoin) -> Iterator[Place]:
    """Where a tail could hang that begins the seam, the best place first."""
    edges = [(design.piece(e.piece), e.edge) for e in (*join.one, *join.other)]

    def names(piece: Piece, run: int) -> set[str]:
        """What the first or last run of both edges is called."""
        sized = garment.piece(piece.name)
        return {runs[run].name for runs in (sized.left, sized.right) if runs}

    for piece, edge in edges:
        if _last(edge) and _keeps_its_tail(piece):
            yield piece.name, _last(edge)
    for piece, edge in edges:
        if piece.start_edging is not None and design.edging(piece.start_edging).when == "after" and edge in names(piece, 0):
            yield piece.name, "start"
    for piece, edge in edges:
        if _keeps_its_tail(piece) and edge in names(piece, -1):
            yield piece.name, "end"


def _keeps_its_tail(piece: Piece) -> bool:
    """Whether the tail is still free when the last edge is off the bed: by back-stitch it is sewn up, and so it is drawn up."""
    return piece.end_way in ("cast-off", "waste")
