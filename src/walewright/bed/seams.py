"""Joins between finished pieces, and what is still open when everything is knitted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from walewright.bed.fabric import Fabric, Piece
from walewright.bed.model import Edge, Fault
from walewright.knit.operations import Join

_CLOSE = 1e-6


@dataclass(frozen=True, slots=True)
class Seam:
    """One side of a join: rows and stitches added up apart, and the length in cm (None without a gauge)."""

    rows: int
    stitches: int
    length_cm: float | None


def seam(fabrics: Mapping[str, Fabric], side: Sequence[tuple[str, str]]) -> Seam | None:
    """Measure ((piece, edge), ...); None if a piece or an edge is unknown."""
    edges: list[Edge] = []
    for piece, name in side:
        found = fabrics[piece].edge(name) if piece in fabrics else ()
        if not found:
            return None
        edges += found
    lengths = [edge.length_cm for edge in edges]
    known = [length for length in lengths if length is not None]
    return Seam(
        sum(edge.count for edge in edges if edge.along == "rows"),
        sum(edge.count for edge in edges if edge.along == "stitches"),
        sum(known) if len(known) == len(lengths) else None,
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
    for name, edge_name in (*op.one, *op.other):
        pieces[name].taken.update((edge.name, edge.part) for edge in fabrics[name].edge(edge_name))
    one, other = seam(fabrics, op.one), seam(fabrics, op.other)
    assert one is not None
    assert other is not None
    text = f"{spoken(op.one)} to {spoken(op.other)}"
    if op.easing_mm == 0:
        for what, here, there in (("rows", one.rows, other.rows), ("stitches", one.stitches, other.stitches)):
            if here != there:
                counts = {f"{what}_one": here, f"{what}_other": there}
                return _fault("join-unequal", index, f"joining {text}: {here} {what} against {there}", **counts)
        return None
    if one.length_cm is None or other.length_cm is None:
        return _fault("no-gauge", index, f"joining {text}: without the gauge of their fabrics the edges have no length to compare")
    off = abs(one.length_cm - other.length_cm) * 10
    if off > op.easing_mm + _CLOSE:
        return _fault(
            "join-unequal",
            index,
            f"joining {text}: {one.length_cm:.1f} cm against {other.length_cm:.1f} cm; "
            f"they are {off:.0f} mm apart and {op.easing_mm} mm can be eased in",
            off_mm=round(off),
            easing_mm=op.easing_mm,
        )
    return None


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
