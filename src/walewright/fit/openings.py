"""How long the edges of an opening are, one after the other, at rest and stretched: without what lies on another edge there, and
without what the seams take that end at it."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design
from walewright.fit import shares
from walewright.fit.cloth import Cloth
from walewright.fit.loops import Walker, key
from walewright.glue.model import Chain, Place
from walewright.trade.edge_names import BAND_ENDS, is_top
from walewright.trade.joins import JOINS
from walewright.trade.sides import SIDES

FLAT = " centre"
"""Behind the name of an opening: its foot, along stitches."""


def is_strip_end(design: Design, place: Place) -> bool:
    """Whether an edge is the end of a band, or of an edging along a piece."""
    piece = next((p for p in design.pieces if p.name == place.owner), None)
    return place.edge in BAND_ENDS if piece is None else piece.strip_at(place.edge) is not None


def measure(design: Design, walker: Walker, edges: Chain) -> tuple[float, float] | None:
    """(at rest, stretched) of edges one after the other; None where one of them cannot be measured."""
    relaxed = stretched = 0.0
    for place in dict.fromkeys(edges):
        length = walker.cloth.length(place) if place.edge else _unnamed(walker.cloth, edges, place)
        if length is None:
            return None
        length = max(length - _taken(design, walker, place), 0.0)
        relaxed += length
        stretched += length * share(design, place)
    return relaxed, stretched


def _unnamed(cloth: Cloth, edges: Chain, place: Place) -> float | None:
    """All edges of a piece that have no name, if all of them are there: they cannot be told apart."""
    own = [e for e in cloth.row_edges.get(place.owner, ()) if not e.name]
    there = sum(1 for p in edges if p == place)
    return sum(cloth.row_edge(place.owner, e) for e in own) if there == len(own) else None


def share(design: Design, place: Place) -> float:
    """How far an edge stretches."""
    band = next((b for b in design.bands if b.name == place.owner), None)
    if band is not None:
        return shares.of_edging(design, design.edging(band.edging)) if place.edge == "rim" else shares.ROWS
    piece = design.piece(place.owner)
    if place.edge == "start":
        if piece.start_edging is not None:
            return shares.of_edging(design, design.edging(piece.start_edging), piece.start_way)
        return shares.started(piece.start_way)
    if is_top(place.edge):
        if piece.end_edging is not None:
            return shares.of_edging(design, design.edging(piece.end_edging))
        return shares.closed(design.fabric(piece.fabric), piece.end_way)
    return shares.ROWS


# ----------------------------------------------------------------- what lies on another edge


def without_lapped(design: Design, cloth: Cloth, ring: Chain) -> Chain:
    """The ring without ends of strips that lie next to each other in it. They are joined or sewn down one upon the other, at the
    point of a V or in a corner, and make the opening no longer; nor does the foot of a slit that they are sewn down on, where they
    cover it."""
    hidden: set[int] = set()
    for first, place in enumerate(ring):
        after = [(first + step) % len(ring) for step in (1, 2)]
        if not is_strip_end(design, place) or len({first, *after}) < 2:
            continue
        if is_strip_end(design, ring[after[0]]):
            hidden |= {first, after[0]}
        elif len({first, *after}) == 3 and _covered(design, cloth, *(ring[i] for i in (first, *after))):
            hidden |= {first, *after}
    return tuple(place for number, place in enumerate(ring) if number not in hidden)


def _covered(design: Design, cloth: Cloth, one: Place, foot: Place, other: Place) -> bool:
    """Whether the foot of an opening lies under the ends of two strips beside it."""
    if not foot.edge.endswith(FLAT) or not is_strip_end(design, other):
        return False
    deep, wide, deep_too = (cloth.length(place) or 0.0 for place in (one, foot, other))
    return 0.0 < wide <= deep + deep_too


# ----------------------------------------------------------------- what seams take


def _taken(design: Design, walker: Walker, place: Place) -> float:
    """A stitch for each end of an edge along stitches that lies in a sewn seam."""
    cloth = walker.cloth
    band = cloth.band(place.owner)
    if band is not None:
        if place.edge != "rim" or not band[1].stitches:
            return 0.0
        ends = sum(_end_sewn(design, walker, Place(place.owner, end, place.copy)) for end in BAND_ENDS)
        return ends * cloth.rim(band[1]) / band[1].stitches
    if place.edge not in ("start", "end"):
        return 0.0
    sized = cloth.sized(place.owner)
    row = 0 if place.edge == "start" else sized.rows
    seams = sum(_side_sewn(walker, place, row, side) for side in SIDES)
    edged = cloth.counted[place.owner].edging_width_cm if place.edge == "start" else 0.0
    return seams * (edged / sized.start if edged and sized.start else cloth.stitch(place.owner, row))


def _side_sewn(walker: Walker, place: Place, row: int, side: str) -> bool:
    """Whether the row edge on that side is in a sewn seam where it comes to the first or the last row."""
    for edge in walker.cloth.row_edges[place.owner]:
        if edge.side == side and row in (edge.low, edge.high):
            bond = walker.bonds.get((place.owner, edge.name, place.copy))
            return bond is not None and bond.sewn
    return False


def _end_sewn(design: Design, walker: Walker, end: Place) -> bool:
    """Whether the end of a band is sewn to another, by itself or in a seam that goes on along it."""
    return any(key(end) == key(place) for place in _sewn_ends(design, walker))


def _sewn_ends(design: Design, walker: Walker) -> Iterator[Place]:
    for pair in walker.glued.ends:
        yield from (pair.one, pair.other)
    for seam in walker.glued.seams:
        if JOINS[design.joins[seam.join].way].by_needle:
            yield from (place for chain in (seam.one, seam.other, *seam.over) for place in chain)
