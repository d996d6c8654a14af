"""Which tail is needed where: what is sewn with an end of yarn that is broken off, by the joins and bands that use its edge.

A graft is sewn with the tail of a last row, that of the side named first if it is one. A seam begins with the tail of a last edge
that lies along it, else with that of an edging hung on at its foot, else with that of a last edge at its head; one tail sews one
seam, in the order of the joins. A band's tail sews the band's own end.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from walewright.design.model import Design, Fabric, Piece
from walewright.glue.model import Chain, Glued, Place, Seam
from walewright.knit.lengths import grafting_cm, seam_tail_cm
from walewright.solve.model import SizedGarment

LAST = ("end", "shoulder")
"""Names of the last edge of a piece: an author may call it either."""
_SEWN = ("sewn", "gathered")

Where = tuple[str, str]
"""(piece, "start", or "end" with a side where the author named one)."""


@dataclass(frozen=True, slots=True)
class Tails:
    """What one size's tails are needed for: grafts, and centimetres of seam, by place."""

    grafts: frozenset[Where] = frozenset()
    seams: Mapping[Where, float] = field(default_factory=dict)

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


def tails(design: Design, glued: Glued, garment: SizedGarment) -> Tails:
    """The tails that one size needs. Copies are knitted alike, so that each has the tail that one of them needs."""
    grafts: set[Where] = set()
    for made in glued.seams:
        if design.joins[made.join].way == "grafted" or _both_open(design, made):
            grafts.update(_open_last(design, made.one) or _open_last(design, made.other))
    seams: dict[Where, float] = {}
    used: set[tuple[Where, int]] = set()
    for made, sized in zip(glued.seams, garment.seams, strict=True):
        if design.joins[made.join].way not in _SEWN or _both_open(design, made):
            continue
        for where, copy in _hanging(design, garment, made):
            if (where, copy) not in used and where not in grafts:
                used.add((where, copy))
                seams[where] = max(seams.get(where, 0.0), sized.one_cm, sized.other_cm)
                break
    return Tails(frozenset(grafts), seams)


def places(seam: Seam) -> Chain:
    """All edges of a seam."""
    return (*seam.one, *seam.other)


def open_end(design: Design, place: Place) -> bool:
    """Whether the edge is the last row of a piece that ends on waste yarn."""
    return _last(place.edge) != "" and design.piece(place.owner).end_way == "waste"


def _both_open(design: Design, seam: Seam) -> bool:
    """No seam holds open loops: what is joined so is grafted."""
    return design.joins[seam.join].way == "sewn" and all(open_end(design, place) for place in places(seam))


def _last(edge: str) -> str:
    """ "end" of a last edge, with its side if one is named; of any other nothing."""
    name, _, side = edge.partition(" ")
    return f"end {side}".strip() if name in LAST else ""


def _open_last(design: Design, side: Chain) -> list[Where]:
    return [(place.owner, _last(place.edge)) for place in side if open_end(design, place)]


def _hanging(design: Design, garment: SizedGarment, seam: Seam) -> Iterator[tuple[Where, int]]:
    """Where a tail could hang that begins the seam, and of which copy, the best place first."""
    edges = [(design.piece(place.owner), place) for place in places(seam)]

    def runs(piece: Piece, number: int) -> set[str]:
        """What the first or last run of both edges is called."""
        sized = garment.piece(piece.name)
        return {side[number].name for side in (sized.left, sized.right) if side}

    for piece, place in edges:
        if _last(place.edge) and _keeps_its_tail(piece):
            yield (piece.name, _last(place.edge)), place.copy
    for piece, place in edges:
        edging = design.edging(piece.start_edging) if piece.start_edging is not None else None
        if edging is not None and edging.when == "after" and _called(place.edge) in runs(piece, 0):
            yield (piece.name, "start"), place.copy
    for piece, place in edges:
        if _keeps_its_tail(piece) and _called(place.edge) in runs(piece, -1):
            yield (piece.name, "end"), place.copy


def _called(edge: str) -> str:
    """The name that the author gave to an edge on both sides, or on one."""
    return edge.removesuffix(" left").removesuffix(" right")


def _keeps_its_tail(piece: Piece) -> bool:
    """Whether the tail is still free when the last edge is off the bed: by back-stitch it is sewn up, and so it is drawn up."""
    return piece.end_way in ("cast-off", "waste")
