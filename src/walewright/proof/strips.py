"""The ends of edgings and bands that something is hung on or sewn to, beside what the bed knitted: which rows lie there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.bed import BedEdge, KnitFabric
from walewright.counted.model import SizedGarment, SizedPiece
from walewright.design.model import Design, Edging
from walewright.glue.model import Glued
from walewright.proof.told import Told
from walewright.report.said import Said, said
from walewright.trade.edge_names import BAND_ENDS, StripAt
from walewright.trade.edgings import EDGINGS
from walewright.trade.sides import SIDES


def strips_as_counted(
    design: Design, garment: SizedGarment, fabrics: Mapping[str, KnitFabric]
) -> Iterator[tuple[str, tuple[Said, int, int]]]:
    """(block, (where, counted, knitted)) of each end of an edging that has a name on the bed."""
    for piece in design.pieces:
        for name, at in piece.strips:
            edging = design.edging((piece.start_edging if at == "start" else piece.end_edging) or "")
            block = f"{piece.name} {edging.name}" if at == "start" and edging.when == "after" else piece.name
            if block in fabrics and fabrics[block].edge(name):
                for told in _ends(garment.piece(piece.name), edging, at, name, fabrics[block]):
                    yield block, told


def band_ends_as_counted(
    design: Design, glued: Glued, garment: SizedGarment, fabrics: Mapping[str, KnitFabric]
) -> Iterator[tuple[str, tuple[Said, int, int]]]:
    """The same of each end of a band that another one is picked up along."""
    hung = {(place.owner, place.edge) for line in glued.lines for place in line.along}
    for sized in garment.bands:
        edging = design.edging(next(band.edging for band in design.bands if band.name == sized.name))
        for end in BAND_ENDS:
            if (sized.name, end) in hung and sized.name in fabrics:
                where = said("at/band-end", band=sized.name, end=end)
                begun = 1 if EDGINGS[edging.kind].turned_in else 0
                for told in _rows(where, sized.rows, begun, edging, fabrics[sized.name].edge(end), fabrics[sized.name]):
                    yield sized.name, told


def _rows(end: Said, rows: int, before: int, edging: Edging, edges: Sequence[BedEdge], fabric: KnitFabric) -> Told:
    """Of a folded edging both layers lie there, row upon row."""
    places = [point for edge in edges for point in edge.points]
    yield said("at/end-rows", end=end), rows, len(places)
    yield said("at/end-first-row", end=end), before + 1, min((fabric.course_of(p[0]).counter for p in places), default=0)
    yield said("at/end-layers", end=end), rows * (2 if EDGINGS[edging.kind].folded else 1), sum(map(len, places))


def _ends(sized: SizedPiece, edging: Edging, at: StripAt, name: str, fabric: KnitFabric) -> Told:
    """Of one that is knitted first and folded, the outside comes last; one that is turned in has a row more, to fold along."""
    rows, after = (sized.edging_rows, 0) if at == "start" else (sized.end_rows, sized.counter(sized.rows))
    rows += 1 if EDGINGS[edging.kind].turned_in else 0
    folded = EDGINGS[edging.kind].folded
    hidden = rows + bool(edging.fold_tension) if folded and edging.when == "first" and at == "start" else 0
    for side in SIDES:
        where = said("at/edging-end", piece=sized.name, edging=edging.name, side=side)
        yield from _rows(where, rows, after + hidden, edging, fabric.edge(f"{name} {side}"), fabric)
