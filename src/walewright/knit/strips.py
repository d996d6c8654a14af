"""The ends of edgings along a piece: which of them something is hung on or sewn to, and what their rows are called."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedGarment, SizedPiece
from walewright.design.model import Design, Edging, Piece
from walewright.glue.model import Glued, HangingLine, Place
from walewright.knit import steps as st
from walewright.knit.folding import end_rows, sewn_rows
from walewright.knit.steps import Step
from walewright.report.said import said
from walewright.trade.edge_names import StripAt
from walewright.trade.edgings import EDGINGS

Named = frozenset[StripAt]


def named_strips(glued: Glued, piece: Piece) -> Named:
    """Where the piece has edgings whose ends something hangs on or is joined to, or one at the end whose ends are sewn."""
    found = {piece.strip_at(place.edge) for place in told_ends(glued) if place.owner == piece.name}
    # Where an edging at the end begins, nothing else tells.
    over = (place for seam in glued.seams for side in seam.over for place in side if place.owner == piece.name)
    ended = {at for at in (piece.strip_at(place.edge) for place in over) if at == "end"}
    return frozenset(at for at in found | ended if at is not None)


def told_ends(glued: Glued) -> Iterator[Place]:
    """The edges that lines, seams and ends sewn together speak of by their names."""
    for line in glued.lines:
        yield from line.along
    for seam in glued.seams:
        yield from (*seam.one, *seam.other)
    for pair in glued.ends:
        yield from (pair.one, pair.other)


def strip_note(edging: Edging, piece: Piece, at: StripAt, rows: int, after: int = 0) -> Iterator[Step]:
    """What the ends of the edging's rows that are seen are called, of one that is turned in of all; the counter read `after` before
    its first row."""
    name = next(name for name, where in piece.strips if where == at)
    low, high = end_rows(edging, rows)
    yield st.EdgeIs(name, "outer", after + low, after + high, origin=edging.origin.path)


def end_note(design: Design, piece: Piece, sized: SizedPiece, named: Named) -> Iterator[Step]:
    """The same of an edging knitted on at the end."""
    if "end" in named and piece.end_edging is not None:
        yield from strip_note(design.edging(piece.end_edging), piece, "end", sized.end_rows, sized.counter(sized.rows))


def through_both(design: Design, line: HangingLine) -> Iterator[Step]:
    """A note where the line goes over the ends of what is folded: loops are taken of both layers."""
    over = [place for place in line.along if _is_folded(design, place)]
    if over:
        edges = tuple(said("edge", piece=place.owner, edge=place.edge) for place in over)
        yield st.Say(said("through-both", edges=edges), origin=line.origin.path)


def _is_folded(design: Design, place: Place) -> bool:
    """Whether a place is the end of a folded edging, or of a folded band."""
    piece = next((p for p in design.pieces if p.name == place.owner), None)
    if piece is None:
        name: str | None = next(band.edging for band in design.bands if band.name == place.owner)
    else:
        at = piece.strip_at(place.edge)
        name = None if at is None else piece.start_edging if at == "start" else piece.end_edging
    return name is not None and EDGINGS[design.edging(name).kind].folded


def end_of_strip(design: Design, garment: SizedGarment, end: Place) -> tuple[st.Strip, int]:
    """The edging or band that an end belongs to, and how many rows are sewn there."""
    edging = design.strip(end.owner, end.edge)
    assert edging is not None, "it is the end of a strip"
    if design.band(end.owner) is not None:
        return (end.owner, ""), sewn_rows(edging, next(b.rows for b in garment.bands if b.name == end.owner))
    piece, sized = design.piece(end.owner), garment.piece(end.owner)
    at = piece.strip_at(end.edge)
    name = next(name for name, where in piece.strips if where == at)
    return (piece.name, name), sewn_rows(edging, sized.edging_rows if at == "start" else sized.end_rows)


def end_cm(design: Design, garment: SizedGarment, end: Place) -> float:
    """How long the end of a strip is."""
    edging = design.strip(end.owner, end.edge)
    assert edging is not None, "it is the end of a strip"
    return end_of_strip(design, garment, end)[1] / design.fabric(edging.fabric).rows_per_cm
