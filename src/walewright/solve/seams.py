"""Joins of the counted garment: what both sides come to, and whether they meet."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, EdgeName, Join
from walewright.report.model import Diagnostic, Label
from walewright.solve.geometry import NOTHING, EdgeLength, edge_length
from walewright.solve.joining import easing_mm, spoken
from walewright.solve.model import SizedJoin, SizedPiece

ROUNDING_CM = 1e-6


def side_length(design: Design, pieces: Sequence[SizedPiece], side: Sequence[EdgeName]) -> EdgeLength:
    """Rows, stitches and centimetres of one side of a join."""
    found = NOTHING
    for edge in side:
        piece = design.piece(edge.piece)
        sized = next(p for p in pieces if p.name == edge.piece)
        found = found.plus(edge_length(piece, sized, design.fabric(piece.fabric), edge.edge))
    return found


def sized_join(design: Design, join: Join, size: int, pieces: Sequence[SizedPiece]) -> SizedJoin:
    """A join in one size."""
    one, other = (side_length(design, pieces, side) for side in (join.one, join.other))
    along_rows = not (one.stitches or other.stitches)
    return SizedJoin(
        join.one,
        join.other,
        one.rows if along_rows else None,
        other.rows if along_rows else None,
        one.cm,
        other.cm,
        easing_mm(join, size) / 10,
        join.origin,
    )


STITCH_EDGES = frozenset({"start", "end", "shoulder"})
"""Edges along stitches; a neck has both, and what authors call by a name runs along rows."""


def unlike_joins(design: Design) -> list[Diagnostic]:
    """A message for each join without easing of rows to stitches: no counts could make those equal."""
    told: list[Diagnostic] = []
    for join in design.joins:
        sizes = tuple(design.sizes[i] for i in range(len(design.sizes)) if easing_mm(join, i) == 0)
        one, other = (_kinds(side) for side in (join.one, join.other))
        if sizes and one != other:
            note = f"{spoken(join.one)} runs along {one}, {spoken(join.other)} along {other}"
            told.append(unmet(join, (note,), sizes, design, ("allow some easing: then their lengths are compared",)))
    return told


def _kinds(side: Sequence[EdgeName]) -> str:
    names = {e.edge for e in side}
    stitches = bool(names & (STITCH_EDGES | {"neck"}))
    rows = bool(names - STITCH_EDGES)
    return "rows and stitches" if rows and stitches else "rows" if rows else "stitches"


def unmet_joins(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> list[Diagnostic]:
    """A message for each join whose sides do not meet, over all sizes; `garments[i]` are the pieces of size i."""
    told: list[Diagnostic] = []
    for join in design.joins:
        notes: list[str] = []
        sizes: list[str] = []
        for size, pieces in enumerate(garments):
            one, other = (side_length(design, pieces, side) for side in (join.one, join.other))
            note = _apart(join, size, one, other)
            if note:
                notes.append(f"{design.sizes[size]}: {note}")
                sizes.append(design.sizes[size])
        if notes:
            told.append(unmet(join, tuple(notes), tuple(sizes), design))
    return told


def unmet(join: Join, notes: tuple[str, ...], sizes: tuple[str, ...], design: Design, helps: tuple[str, ...] = ()) -> Diagnostic:
    """The message that the sides of a join do not meet."""
    mine = tuple(
        Label(piece.origin.span, f"the {piece.name}")
        for piece in design.pieces
        if any(e.piece == piece.name for e in (*join.one, *join.other))
    )
    advice = helps or ("change the levels or widths that these edges come from, or allow more easing",)
    return Diagnostic(
        "join-does-not-meet",
        f"{spoken(join.one)} and {spoken(join.other)} do not meet",
        (Label(join.origin.span, "joined here"), *mine),
        notes,
        advice,
        sizes=sizes if len(sizes) < len(design.sizes) else (),
    )


def _apart(join: Join, size: int, one: EdgeLength, other: EdgeLength) -> str:
    easing = easing_mm(join, size)
    if easing == 0:
        if (one.rows, one.stitches) == (other.rows, other.stitches):
            return ""
        return f"{counted(one)} against {counted(other)}, and no easing is allowed"
    apart = abs(one.cm - other.cm)
    if apart <= easing / 10 + ROUNDING_CM:
        return ""
    return f"{one.cm:.1f} cm against {other.cm:.1f} cm: {apart:.1f} cm apart, and {easing / 10:g} cm can be eased in"


def counted(length: EdgeLength) -> str:
    """ "98 rows", "40 stitches", or both."""
    parts = [f"{length.rows} rows"] if length.rows else []
    parts += [f"{length.stitches} stitches"] if length.stitches else []
    return " and ".join(parts) or "nothing"
