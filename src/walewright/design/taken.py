"""Stitches that are taken up: by a band, a start along them, or a join that goes loop by loop. They can be, once.

Copies of a piece and edges along rows are not looked at here: each copy has loops of its own, and a row edge has none.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from walewright.design.findings import Findings
from walewright.design.joins import EXACT_WAYS
from walewright.design.model import Band, EdgeName, Join, Origin, Piece

PARTS = ("left", "centre", "right")


@dataclass(frozen=True, slots=True)
class _Taking:
    """`how` the stitches of the edges are taken."""

    edges: tuple[EdgeName, ...]
    how: str
    origin: Origin


def taken_once(
    pieces: Mapping[str, Piece | None], bands: Iterable[Band | None], joins: Iterable[Join | None], findings: Findings
) -> None:
    """Tells of stitches that are taken up a second time, of each statement once."""
    seen: list[tuple[EdgeName, _Taking]] = []
    for taking in _takings(pieces, bands, joins):
        for edge in taking.edges:
            piece = pieces.get(edge.piece)
            if piece is None or not _is_of_stitches(edge, piece):
                continue
            before = next((t for e, t in seen if _share(e, edge) and (piece.copies == 1 or _again(t, taking))), None)
            seen.append((edge, taking))
            if before is not None:
                _tell(edge, taking, before, findings)
                break


def _again(one: _Taking, other: _Taking) -> bool:
    """Whether a join of copies is said twice."""
    return one is not other and one.how in EXACT_WAYS and (one.how, one.edges) == (other.how, other.edges)


def _tell(edge: EdgeName, now: _Taking, before: _Taking, findings: Findings) -> None:
    findings.tell(
        "taken-twice",
        f"the stitches of `{edge.piece} {edge.edge.replace(' ', '_')}` are to be taken up twice",
        (now.origin.span, f"{now.how} here" if now is not before else f"{now.how}, named twice here"),
        *([(before.origin.span, f"{before.how} here")] if now is not before else []),
        helps=("leave one of them out, or name the part of the edge that is meant",),
    )


def _takings(pieces: Mapping[str, Piece | None], bands: Iterable[Band | None], joins: Iterable[Join | None]) -> Iterator[_Taking]:
    for piece in pieces.values():
        if piece is not None and piece.start_along and piece.mirror_of is None:
            yield _Taking(piece.start_along, "hung up for a piece", piece.origin)
    for band in bands:
        if band is not None:
            yield _Taking(band.along, "picked up for a band", band.origin)
    for join in joins:
        if join is not None and join.way in EXACT_WAYS:
            yield _Taking(tuple(dict.fromkeys((*join.one, *join.other))), join.way, join.origin)


def _is_of_stitches(edge: EdgeName, piece: Piece) -> bool:
    if edge.edge.split(" ")[0] in ("start", "end", "shoulder"):
        return True
    inner = {*(o.name for o in piece.openings), *(s.name for s in piece.slots)}
    head, _, part = edge.edge.rpartition(" ")
    return edge.edge in inner or (head in inner and part in (*PARTS, "upper"))


def _share(one: EdgeName, other: EdgeName) -> bool:
    """Whether two names are of one edge, or of an edge and a part of it."""
    parts = {f"{whole} {part}" for whole in (one.edge, other.edge) for part in PARTS}
    return one.piece == other.piece and (one.edge == other.edge or bool({one.edge, other.edge} & parts))
