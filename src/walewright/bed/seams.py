"""Joins between finished pieces, and what is still open when everything is knitted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from walewright.bed.fabric import Fabric, Piece
from walewright.bed.model import Edge, Fault
from walewright.knit.operations import Join

_CLOSE = 1e-6
_ROUNDED = 0.5 + _CLOSE
"""Lengths are told in whole millimetres."""
SEWN = ("sewn", "gathered")
LOOP_TO_LOOP = ("grafted", "linked")


@dataclass(frozen=True, slots=True)
class Seam:
    """One side of a join: rows and stitches added up apart, and the length in cm (None without a gauge). `loose_mm`: by how much
    another reckoning of its slopes may differ."""

    rows: int
    stitches: int
    length_cm: float | None
    loose_mm: float = 0.0


def edges_of(fabrics: Mapping[str, Fabric], side: Sequence[tuple[str, str]]) -> tuple[Edge, ...] | None:
    """The edges that lie along one side of a join; None if a piece or an edge is unknown.

    An edge that both sides of a piece have alike lies there once, for pieces lie one on the other, and both seams are alike. But
    where the side also runs along a start or an end of that piece, it goes round it: up one edge, along, and down the other.
    """
    round_ = {piece for piece, name in side if name in ("start", "end")}
    found: list[Edge] = []
    for piece, name in side:
        edges = fabrics[piece].edge(name) if piece in fabrics else ()
        if not edges:
            return None
        if piece in round_ and edges[0].each and edges[0].name == name:
            edges = tuple(edge for edge in fabrics[piece].edges if edge.name == name)
        found += edges
    return tuple(found)


def seam(fabrics: Mapping[str, Fabric], side: Sequence[tuple[str, str]]) -> Seam | None:
    """Measure ((piece, edge), ...); None if a piece or an edge is unknown."""
    edges = edges_of(fabrics, side)
    if edges is None:
        return None
    lengths = [edge.length_cm for edge in edges]
    known = [length for length in lengths if length is not None]
    return Seam(
        sum(edge.count for edge in edges if edge.along == "rows"),
        sum(edge.count for edge in edges if edge.along == "stitches"),
        sum(known) if len(known) == len(lengths) else None,
        10 * sum(edge.loose_cm for edge in edges),
    )


def spoken(side: Sequence[tuple[str, str]]) -> str:
    """ "back armhole + front armhole"."""
    return " + ".join(f"{piece} {edge}" for piece, edge in side)


def join(op: Join, index: int, pieces: dict[str, Piece]) -> Fault | None:
    """Check one join and count its live edges as taken up."""
    fabrics = {name: piece.fabric for name, piece in pieces.items() if piece.fabric is not None}
    for name, edge in (*op.one, *op.other):
        if name not in pieces:
            return _fault("piece-unknown", index, f"there is no piece {name!r} to join", piece=name)
        if name not in fabrics:
            return None
        if not fabrics[name].edge(edge):
            known = ", ".join(sorted({e.name for e in fabrics[name].edges}))
            return _fault("edge-unknown", index, f"the {name} has no edge {edge!r} to join; it has {known}", piece=name, edge=edge)
    text = f"{spoken(op.one)} to {spoken(op.other)}"
    fault = _way(op, index, text, pieces, fabrics)
    for name, edge_name in (*op.one, *op.other):
        pieces[name].taken.update((edge.name, edge.part) for edge in fabrics[name].edge(edge_name))
    if fault is not None:
        return fault
    one, other = seam(fabrics, op.one), seam(fabrics, op.other)
    assert one is not None
    assert other is not None
    fault = _told(op, index, text, one, other)
    if fault is not None:
        return fault
    if op.way in LOOP_TO_LOOP or (op.easing_mm == 0 and op.longer_mm == 0):
        return _equal(index, text, one, other)
    return _eased(op, index, text, one, other)


def _told(op: Join, index: int, text: str, one: Seam, other: Seam) -> Fault | None:
    """What the join says of its edges is so."""
    if op.rows and (one.rows, other.rows) != (op.rows, op.rows):
        message = f"joining {text}: {one.rows} rows against {other.rows}, where it says {op.rows}"
        return _fault("join-told", index, message, rows=op.rows)
    for said, edge in ((op.one_mm, one), (op.other_mm, other)):
        if said and (edge.length_cm is None or abs(edge.length_cm * 10 - said) > _ROUNDED + edge.loose_mm):
            long = "of no known length" if edge.length_cm is None else f"{edge.length_cm * 10:.0f} mm long"
            return _fault("join-told", index, f"joining {text}: an edge is {long}, where it says {said} mm", mm=said)
    return None


def _way(op: Join, index: int, text: str, pieces: Mapping[str, Piece], fabrics: Mapping[str, Fabric]) -> Fault | None:
    """Grafting goes from open loop to open loop; linking also takes stitches that were cast on or off."""
    if op.way not in (*SEWN, *LOOP_TO_LOOP):
        ways = ", ".join((*SEWN, *LOOP_TO_LOOP))
        return _fault("join-way", index, f"joining {text}: there is no join called {op.way!r}; there are {ways}", way=op.way)
    if op.way in SEWN:
        return None
    for name, edge_name in (*op.one, *op.other):
        for edge in fabrics[name].edge(edge_name):
            is_open = edge.live or (edge.name == "start" and bool(fabrics[name].feet))
            if edge.along == "rows" or (op.way == "grafted" and not is_open):
                what = "row ends" if edge.along == "rows" else "closed stitches"
                wanted = "open loops" if op.way == "grafted" else "stitches"
                return _fault(
                    f"{op.way}-not-{wanted.replace(' ', '-')}",
                    index,
                    f"joining {text}: the {edge_name} of the {name} is {what}, and only {wanted} can be {op.way}",
                    piece=name,
                    edge=edge_name,
                )
            if is_open and (edge.name, edge.part) in pieces[name].taken and not _linked_already(op, name, edge, pieces):
                message = f"joining {text}: the open loops of the {edge_name} of the {name} have been taken up already"
                return _fault("edge-taken", index, message, piece=name, edge=edge_name)
    return None


def _equal(index: int, text: str, one: Seam, other: Seam) -> Fault | None:
    for what, here, there in (("rows", one.rows, other.rows), ("stitches", one.stitches, other.stitches)):
        if here != there:
            counts = {f"{what}_one": here, f"{what}_other": there}
            return _fault("join-unequal", index, f"joining {text}: {here} {what} against {there}", **counts)
    return None


def _linked_already(op: Join, name: str, edge: Edge, pieces: Mapping[str, Piece]) -> bool:
    """Was the edge hung on the bed together with one of the other side, for this very join?"""
    partners = [with_ for own, with_ in pieces[name].linked if own == (edge.name, edge.part)]
    sides = [{(piece, e) for piece, at in side for e in _parts(pieces, piece, at)} for side in (op.one, op.other)]
    here = {(name, (edge.name, edge.part))}
    across = sides[1] if here <= sides[0] else sides[0]
    return op.way == "linked" and bool(partners) and all((piece, (e, part)) in across for piece, e, part in partners)


def _parts(pieces: Mapping[str, Piece], piece: str, name: str) -> list[tuple[str, str]]:
    fabric = pieces[piece].fabric
    return [] if fabric is None else [(edge.name, edge.part) for edge in fabric.edge(name)]


def _eased(op: Join, index: int, text: str, one: Seam, other: Seam) -> Fault | None:
    if one.length_cm is None or other.length_cm is None:
        return _fault("no-gauge", index, f"joining {text}: without the gauge of their fabrics the edges have no length to compare")
    off = (one.length_cm - other.length_cm) * 10 - op.longer_mm
    if abs(off) <= op.easing_mm + one.loose_mm + other.loose_mm + _CLOSE:
        return None
    apart = f"they are {abs(off):.0f} mm apart"
    if op.longer_mm:
        than = "longer" if op.longer_mm > 0 else "shorter"
        apart = f"the first should be {abs(op.longer_mm)} mm {than}, which is {abs(off):.0f} mm off"
    return _fault(
        "join-unequal",
        index,
        f"joining {text}: {one.length_cm:.1f} cm against {other.length_cm:.1f} cm; {apart} and {op.easing_mm} mm can be eased in",
        off_mm=round(abs(off)),
        easing_mm=op.easing_mm,
    )


def _fault(code: str, index: int, message: str, **data: int | str) -> Fault:
    return Fault(code, "joins", index, message, tuple(sorted(data.items())))


def open_feet(pieces: Mapping[str, Piece]) -> list[Fault]:
    """First rows that run down when the waste yarn is taken out, because nothing took up their feet."""
    return [
        Fault(
            "feet-open",
            name,
            -1,
            f"the {name} was begun on waste yarn, and nothing takes up the {len(piece.fabric.feet)} feet of its first row",
            (("feet", len(piece.fabric.feet)),),
        )
        for name, piece in pieces.items()
        if piece.fabric is not None and piece.fabric.feet and ("start", "whole") not in piece.taken
    ]


def open_edges(pieces: Mapping[str, Piece]) -> tuple[tuple[str, str], ...]:
    """(piece, edge) of stitches that stay on waste yarn for good."""
    return tuple(
        (name, edge.name if edge.part == "whole" else f"{edge.name} {edge.part}")
        for name, piece in pieces.items()
        if piece.fabric is not None
        for edge in piece.fabric.edges
        if edge.live and (edge.name, edge.part) not in piece.taken
    )
