"""The line drawing on the cover: the garment made up, from the outlines of its own pieces in a middle size.

Seen from the front. A body is known by a neck, or by two fronts that are joined to one back; sleeves are the pieces that are
joined to the body's edge and to another's. Whatever forms no body is laid out as a group to one scale, what is joined to
a tube as it looks when made up.
"""

from __future__ import annotations

from walewright.counted.bands import depth_cm
from walewright.design.model import Design, EdgeJoin
from walewright.figures.group import group
from walewright.figures.measures import MeasuredPiece
from walewright.figures.model import Drawing
from walewright.figures.worn import Placed, Trunk, worn
from walewright.glue.model import GluedSizes
from walewright.guide.model import Guide
from walewright.solve.model import Counts

OPEN = 0.8
"""cm between the fronts of a body that has no band there."""


def middle_size(counts: Counts) -> int:
    """The size that drawings show."""
    return (len(counts.sizes) - 1) // 2


def cover(
    guide: Guide, design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...], glued: GluedSizes | None = None
) -> Drawing:
    """The garment in its middle size; without what meets what (`glued`) nothing is made up but a body."""
    size = middle_size(counts)
    named = counts.sizes[size].size if len(counts.sizes) > 1 else ""
    trunk = _trunk(design, counts, pieces, size)
    if trunk is not None:
        return worn(design, pieces, trunk, size, guide.say("drawing/worn", title=design.title, size=named))
    own = glued.in_size(size) if glued is not None else None
    return group(design, counts, own, pieces, size, guide.say("drawing/group", title=design.title, size=named))


def _trunk(design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...], size: int) -> Trunk | None:
    necked = [p for p in pieces if _neck_cm(p, size) > OPEN]
    open_fronts = _fronts(design, pieces, size)
    if open_fronts is not None:
        left, right, behind = open_fronts
        edges = {run.name for p in (left, right) for run in (*p.sized[size].left, *p.sized[size].right)} - {""}
        depth = _band_depth(design, counts, {(p.piece.name, e) for p in (left, right) for e in edges}, size)
        half = (depth or OPEN) / 2
        placed = (
            Placed(left, -half - left.outlines[size].polygon_right),
            Placed(right, half - right.outlines[size].polygon_left),
        )
        return Trunk(placed, behind, depth)
    if not necked:
        return None

    def drop(p: MeasuredPiece) -> float:
        return p.outlines[size].height - min(y for _, y in p.outlines[size].neck)

    body = max(necked, key=drop)
    back = next((p for p in pieces if p.piece.name != body.piece.name and p.outlines[size].neck), None)
    return Trunk(
        (Placed(body, 0.0),), back, _band_depth(design, counts, {(body.piece.name, o.name) for o in body.piece.openings}, size)
    )


def _neck_cm(piece: MeasuredPiece, size: int) -> float:
    """How wide an opening goes to its top, cm."""
    neck = piece.outlines[size].neck
    return neck[-1][0] - neck[0][0] if neck else 0.0


def _fronts(
    design: Design, pieces: tuple[MeasuredPiece, ...], size: int
) -> tuple[MeasuredPiece, MeasuredPiece, MeasuredPiece] | None:
    """(the piece that hangs at the left, the one at the right, the back) of a body that is open in front."""
    by_name = {p.piece.name: p for p in pieces}
    sides: dict[str, dict[str, str]] = {}
    edges: dict[tuple[str, str], set[str]] = {}
    for join in design.joins:
        for own, other in _single(design, join):
            piece = by_name[own[0]]
            edges.setdefault((other[0], own[0]), set()).add(own[1])
            side = _side_of(piece, own[1], size)
            if side and own[0] != other[0] and not piece.outlines[size].neck:
                sides.setdefault(other[0], {}).setdefault(own[0], side)
    for back, found in sides.items():
        halves = [by_name[name] for name in found]
        for left in halves:
            for right in halves:
                if found[left.piece.name] != "left" or found[right.piece.name] != "right":
                    continue
                met_alike = edges[back, left.piece.name] == edges[back, right.piece.name]
                if _alike(left, right) or (met_alike and _as_long(left, right, size)):
                    return left, right, by_name[back]
    return None


def _single(design: Design, join: EdgeJoin) -> list[tuple[tuple[str, str], tuple[str, str]]]:
    """(piece, edge) to (piece, edge), both ways round, of a join of one edge to one, ends of bands and edgings left out."""
    sides = [[(e.piece, e.edge) for e in side if design.strip(e.piece, e.edge) is None] for side in (join.one, join.other)]
    if any(len(side) != 1 for side in sides):
        return []
    (one,), (other,) = sides
    return [(one, other), (other, one)]


def _side_of(piece: MeasuredPiece, edge: str, size: int) -> str:
    """The side of a piece that alone has the named edge, or ""."""
    on = [
        side
        for side, runs in (("left", piece.sized[size].left), ("right", piece.sized[size].right))
        if any(r.name == edge for r in runs)
    ]
    return on[0] if len(on) == 1 else ""


AS_LONG = 0.02
"""Of their length: by no more do two fronts of one body differ."""


def _alike(one: MeasuredPiece, other: MeasuredPiece) -> bool:
    mirrored = one.piece.mirror_of == other.piece.name or other.piece.mirror_of == one.piece.name
    return mirrored or (one.piece.name != other.piece.name and one.piece.levels == other.piece.levels)


def _as_long(one: MeasuredPiece, other: MeasuredPiece, size: int) -> bool:
    """Whether they are as long as each other: one of two fronts may have a pocket, and so a level, more than the other."""
    lengths = one.full_height(size), other.full_height(size)
    return one.piece.name != other.piece.name and max(lengths) - min(lengths) <= AS_LONG * max(lengths)


def _band_depth(design: Design, counts: Counts, edges: set[tuple[str, str]], size: int) -> float:
    """Depth in cm of the band along one of the edges, 0 without one."""
    for band in design.bands:
        if any((e.piece, e.edge) in edges for e in band.along):
            return depth_cm(design, next(b for b in counts.sizes[size].bands if b.name == band.name))
    return 0.0
