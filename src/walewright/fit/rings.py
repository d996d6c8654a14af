"""Openings: how long each ring of free edges is, at rest and stretched, and which it is where that can be told.

- The neck: a ring that goes round the whole of a gap in the middle of a piece's top, or over tops of three pieces and more with
  sleeves among them, and over at least two pieces, without coming to any piece's start.
- A cuff: a ring at the lower end of a tube of one piece that is sewn into another.
"""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, PerSize
from walewright.fit.cloth import at_the_middle
from walewright.fit.girths import Tube
from walewright.fit.loops import Bond, PlaceKey, Walker, key
from walewright.fit.model import Ring, Role
from walewright.fit.openings import is_strip_end, measure, without_lapped
from walewright.glue.model import Chain, Glued, Place
from walewright.trade.edge_names import is_top


def rings(design: Design, walkers: Sequence[Walker], tubes: Sequence[Tube]) -> tuple[Ring, ...]:
    """Every opening, those of further copies that are alike counted with the first."""
    of_size = [_openings(walker.glued) for walker in walkers]
    found: list[Ring] = []
    for which in dict.fromkeys(which for openings in of_size for which in openings):
        there = [openings.get(which, ()) for openings in of_size]
        chains = tuple(some[0] if some else () for some in there)
        lengths = [_length(design, w, chain) if chain else None for w, chain in zip(walkers, chains, strict=True)]
        known = [m for m in lengths if m is not None]
        relaxed: PerSize = tuple(m[0] for m in known) if len(known) == len(lengths) else ()
        stretched: PerSize = tuple(m[1] for m in known) if len(known) == len(lengths) else ()
        role = _role(design, walkers[0], tubes, chains[0]) if chains[0] else ""
        found.append(Ring(chains, relaxed, stretched, tuple(map(len, there)), role))
    return tuple(found)


def _length(design: Design, walker: Walker, chain: Chain) -> tuple[float, float] | None:
    """(at rest, stretched) of a whole opening."""
    return measure(design, walker, without_lapped(design, walker.cloth, chain))


WhichRing = tuple[frozenset[tuple[str, str]], int]
"""The names of an opening's edges, and how many other ones there are before it with just these: by that it is the same opening in
sizes where it goes along more or fewer copies."""


def _openings(glued: Glued) -> dict[WhichRing, tuple[Chain, ...]]:
    """The openings, those of further copies that are alike together."""
    alike: dict[tuple[tuple[str, str], ...], list[Chain]] = {}
    for opening in glued.openings:
        alike.setdefault(_alike(opening.edges), []).append(opening.edges)
    found: dict[WhichRing, tuple[Chain, ...]] = {}
    for names, chains in alike.items():
        before = sum(1 for other, _ in found if other == frozenset(names))
        found[frozenset(names), before] = tuple(chains)
    return found


def _alike(edges: Chain) -> tuple[tuple[str, str], ...]:
    """The names of a ring's edges, by which it is like one of another copy, or like its mirror image on the other side."""
    other = {"left": "right", "right": "left"}
    mirrored = [(p.owner, " ".join(other.get(word, word) for word in p.edge.split(" "))) for p in edges]
    return min(tuple(sorted((p.owner, p.edge) for p in edges)), tuple(sorted(mirrored)))


# ----------------------------------------------------------------- which it is


def edges_below(design: Design, glued: Glued, edges: Chain) -> Chain:
    """The edges of pieces that a ring runs along, those under its bands in the place of these."""
    found: list[Place] = []
    for place in edges:
        lines = [line for line in glued.lines_of(place.owner) if line.copy == place.copy]
        if place.edge == "rim" and lines:
            found += [under for under in lines[0].along if not is_strip_end(design, under)]
        elif not is_strip_end(design, place):
            found.append(place)
    return tuple(found)


def _role(design: Design, walker: Walker, tubes: Sequence[Tube], edges: Chain) -> Role:
    below = edges_below(design, walker.glued, edges)
    if is_neck(design, walker, tubes, below):
        return "neck"
    return "cuff" if is_cuff(walker, tubes, below) and not _of_thumb(design, below[0].owner) else ""


def is_neck(design: Design, walker: Walker, tubes: Sequence[Tube], below: Chain) -> bool:
    """Whether a ring along the edges `below` is a neck."""
    discs = {(p.owner, p.copy) for p in below}
    if len(discs) < 2 or any(p.edge == "start" for p in below):
        return False
    if not any(t.open_above and t.owners & {p.owner for p in below} for t in tubes):
        return False
    names = {(p.owner, p.copy, p.edge) for p in below}
    for owner, copy in discs:
        gaps = at_the_middle(design.piece(owner)) if walker.cloth.piece(owner) is not None else ()
        if any({(owner, copy, f"{gap.name} {side}") for side in ("left", "right")} <= names for gap in gaps):
            return True
    tops = {(p.owner, p.copy) for p in below if is_top(p.edge)}
    return len(tops) > 2 and any(is_sleeve(walker, tubes, owner) for owner, _ in tops)


def is_sleeve(walker: Walker, tubes: Sequence[Tube], piece: str) -> bool:
    """Whether a piece is a tube by itself that another tube is sewn to or picked up on further on."""
    return any(t.owners == {piece} and len(t.discs) == 1 for t in tubes) and bool(_others(walker, piece))


def _others(walker: Walker, piece: str) -> set[str]:
    """Pieces that are joined to a piece, bands left out."""
    across: list[Bond] = [b for (owner, _, copy), b in walker.bonds.items() if owner == piece and copy == 1]
    return {p.owner for b in across for p in b.across if walker.cloth.piece(p.owner) is not None} - {piece}


def is_cuff(walker: Walker, tubes: Sequence[Tube], below: Chain) -> bool:
    """The free end of a sleeve: its first or its last row."""
    owners = {p.owner for p in below}
    if len(owners) != 1 or any(walker.cloth.piece(owner) is None for owner in owners):
        return False
    return all(is_sleeve(walker, tubes, owner) for owner in owners) and all(p.edge in ("start", "end") for p in below)


def _of_thumb(design: Design, owner: str) -> bool:
    """Whether a piece is begun on a slot, as a thumb is: no hand passes its end."""
    return any(
        edge.edge in (slot.name, f"{slot.name}_upper")
        for edge in design.piece(owner).start_along
        for slot in design.piece(edge.piece).slots
    )


def free_row_edges(design: Design, walker: Walker) -> tuple[tuple[str, str], ...]:
    """Named row edges that nothing is joined to, hung on or called free."""
    meant = {(e.piece, e.edge) for e in design.free}
    meant |= {(e.piece, f"{e.edge} {side}") for e in design.free for side in ("left", "right")}
    # What is lapped is meant to be free.
    meant |= {place for lap in design.laps for place in (lap.over, lap.under)}
    found: dict[tuple[str, str], None] = {}
    for piece in design.pieces:
        for edge in walker.cloth.row_edges[piece.name]:
            own: PlaceKey = (piece.name, edge.name, 1)
            if edge.name and own not in walker.bonds and not {(piece.name, edge.name), (piece.name, "")} & meant:
                found[piece.name, edge.name] = None
    return tuple(found)


__all__ = ["edges_below", "free_row_edges", "is_sleeve", "key", "rings"]
