"""The garment on the bed beside the garment glued: what stayed free, and on which side folds lie."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.bed import BedResult
from walewright.design.model import Design, Piece
from walewright.glue.model import Glued

STRIPS = ("left strip", "right strip")
"""Ends of edgings at the start, which are no edges of a piece on the bed."""


def left_free(design: Design, glued: Glued, result: BedResult) -> Iterator[str]:
    """Edges of pieces that are free in one of the two and not in the other, each with where it is free."""
    pieces = {p.name: p for p in design.pieces}
    wanted = {
        (place.owner, place.edge, place.copy)
        for opening in glued.openings
        for place in opening.edges
        if place.owner in pieces and place.edge and place.edge not in STRIPS and not _edged(pieces[place.owner], place.edge)
    }
    found = {(piece, _label(pieces[piece], edge), copy) for piece, edge, copy in result.free_edges if piece in pieces}
    known = {(p, e) for p, e, _ in wanted}
    for piece, edge, copy in sorted(wanted ^ found):
        if (piece, edge, copy) in wanted or (piece, edge) in known or edge not in ("end", "start"):
            where = "glued and not on the bed" if (piece, edge, copy) in wanted else "on the bed and not as glued"
            yield f"the {edge} of the {piece} stays free {where}"


def _edged(piece: Piece, edge: str) -> bool:
    """Whether the edge is that of an edging at the start, which is knitted on or before it."""
    return edge == "start" and piece.start_edging is not None


def _label(piece: Piece, edge: str) -> str:
    """The bed calls the last rows of a parted piece its end or its shoulder, as they were named when they went on waste."""
    head, _, part = edge.rpartition(" ")
    return f"shoulder {part}" if head == "end" and part in ("left", "right") else edge


def folds(design: Design, result: BedResult) -> Iterator[str]:
    """Hems whose inside comes to lie at the side that is worn outside."""
    for fabric in result.fabrics:
        edging = _edging_of(design, fabric.name)
        if edging and fabric.folded:
            inside = "front" if design.fabric(design.edging(edging).fabric).right_side == "knit" else "behind"
            if fabric.folded != inside:
                yield f"the {fabric.name} is folded {fabric.folded}, where its inside would show"


def _edging_of(design: Design, block: str) -> str:
    for band in design.bands:
        if band.name == block:
            return band.edging
    for piece in design.pieces:
        if piece.start_edging and block in (piece.name, f"{piece.name} {piece.start_edging}"):
            return piece.start_edging
    return ""
