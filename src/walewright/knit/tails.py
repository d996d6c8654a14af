"""Which tail is needed where: what is sewn with an end of yarn that is broken off, by the joins and bands that use its edge.

A graft is sewn with the tail of a last row, that of the side named first if it is one. A seam begins with the tail of a last edge
that lies along it, else with that of an edging hung on at its foot, else with that of a last edge at its head; one tail sews one
seam, in the order of the joins. A band's tail sews the band's own end.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from walewright.counted.model import SizedGarment
from walewright.design.model import Design, Fabric, Piece
from walewright.glue.model import Chain, Glued, Place, Seam, start_facing
from walewright.knit.folding import counted
from walewright.knit.lengths import grafting_cm, seam_tail_cm
from walewright.trade.edge_names import BAND_ENDS, part_of_edge
from walewright.trade.joins import JOINS
from walewright.trade.sides import SIDES, EdgeSide

LAST = ("end", "shoulder")
"""Names of the last edge of a piece: an author may call it either."""

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
        if not JOINS[design.joins[made.join].way].by_needle or _both_open(design, made):
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
    of = part_of_edge(edge)
    if of.name not in LAST:
        return ""
    return "end" if of.part == "whole" else f"end {of.part}"


def _open_last(design: Design, side: Chain) -> list[Where]:
    return [(place.owner, _last(place.edge)) for place in side if open_end(design, place)]


def _hanging(design: Design, garment: SizedGarment, seam: Seam) -> Iterator[tuple[Where, int]]:
    """Where a tail hangs at an end of the seam, and of which copy, the best place first.

    A chain runs from the carriage to the other end, and the carriage is at the right after an even number of rows: the tail of a
    last edge hangs at its left end, that of an edging at the start at the left needle, where the piece's right edge is when its
    purl side was to the knitter."""
    for chain, begins in ((seam.one, seam.one_begins), (seam.other, seam.other_begins)):
        for number, (place, begin) in enumerate(zip(chain, begins, strict=True)):
            outer = (number == 0 and begin == "left") or (number == len(chain) - 1 and begin == "right")
            if _last(place.edge) and outer and _keeps_its_tail(design.piece(place.owner)):
                yield (place.owner, _last(place.edge)), place.copy
    of_pieces = [place for place in places(seam) if design.band(place.owner) is None]
    for place in of_pieces:
        piece = design.piece(place.owner)
        edging = design.edging(piece.start_edging) if piece.start_edging is not None else None
        if edging is not None and edging.when == "after" and (side := _side(garment, place)):
            even = counted(edging, garment.piece(piece.name).edging_rows) % 2 == 0
            at_left = "right" if start_facing(design, piece.name) == "purl" else "left"
            first = piece.strip_at(place.edge) == "start" or _run(garment, place, side, 0)
            if (side == at_left) == even and first:
                yield (piece.name, "start"), place.copy
    for place in of_pieces:
        if _keeps_its_tail(design.piece(place.owner)) and _side(garment, place) == "left" and _run(garment, place, "left", -1):
            yield (place.owner, "end"), place.copy


def _side(garment: SizedGarment, place: Place) -> EdgeSide | None:
    """The side of the bed where a row edge lay, None of any other."""
    if place.edge in BAND_ENDS:
        return None
    sized = garment.piece(place.owner)
    name = _called(place.edge)
    for side, runs in zip(SIDES, (sized.left, sized.right), strict=True):
        if place.edge.endswith(f" {side}") or (name == place.edge and any(run.name == name for run in runs)):
            return side
    return None


def _run(garment: SizedGarment, place: Place, side: EdgeSide, number: int) -> bool:
    """Whether the edge is the first or the last one of its side that has a name."""
    sized = garment.piece(place.owner)
    named = [run.name for run in (sized.left if side == "left" else sized.right) if run.name]
    return bool(named) and named[number] == _called(place.edge)


def _called(edge: str) -> str:
    """The name that the author gave to an edge on both sides, or on one."""
    return part_of_edge(edge).name


def _keeps_its_tail(piece: Piece) -> bool:
    """Whether the tail is still free when the last edge is off the bed: by back-stitch it is sewn up, and so it is drawn up."""
    return piece.end_way in ("cast-off", "waste")
