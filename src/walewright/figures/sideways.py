"""A body that is knitted with its sleeves from side to side, as it is worn: the front laid on the back, turned so that the opening
for the head lies up.

It is known by its neck: the opening that the head passes lies along the side edges of two pieces, and these two are joined to
nothing but each other.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from walewright.counted.edge_lines import edge_line
from walewright.counted.outline import Point
from walewright.design.model import Design, EdgeName
from walewright.figures.banded import rims as rims_of
from walewright.figures.banded import seen_bands
from walewright.figures.drawn import DrawnGarment
from walewright.figures.fastened import draw_pockets
from walewright.figures.measures import LaidPiece
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, path
from walewright.figures.rims import Placing, draw_rim, inner_rim
from walewright.figures.trims import RIBBED, Trim
from walewright.figures.worked import mirrored
from walewright.figures.worn import BOX, EDGE, draw_piece
from walewright.record import record, replace
from walewright.trade.edge_names import part_of_edge
from walewright.trade.sides import EdgeSide

_SeenLine = tuple[Point, ...]


@record
class Sideways:
    """`up`: the side of the front, as it hangs on the bed, that is worn up. The rest in cm as it is worn, seen from outside and
    from the left to the right: the front's neck, the back's, and the bands along other edges, (edge, last edge of the band).
    `band`: depth of that along the neck."""

    front: LaidPiece
    up: EdgeSide
    across: int
    neck: _SeenLine
    behind: _SeenLine
    band: float
    rims: tuple[tuple[_SeenLine, _SeenLine, Trim], ...]
    trim: Trim = RIBBED

    def worn(self, points: Iterable[Point]) -> _SeenLine:
        """Points of the front as it hangs on the bed, as they are seen when it is worn."""
        side = 1 if self.up == "right" else -1
        return tuple((-side * y * self.across, side * x) for x, y in points)


def sideways(garment: DrawnGarment) -> Sideways | None:
    """The two pieces, if there are such."""
    design, by_name = garment.design, {p.name: p for p in garment.pieces}
    for passage in design.passages:
        if passage.part != "head" or passage.never:
            continue
        edges = _edges(design, passage.owner)
        owners = list(dict.fromkeys(e.piece for e in edges))
        if len(owners) != 2 or not set(owners) <= by_name.keys() or _met(design, owners) - set(owners):
            continue
        necks = [(by_name[name], *neck) for name in owners if (neck := _neck(by_name[name], edges)) is not None]
        if len(necks) != 2:
            continue
        front, back = sorted(necks, key=lambda one: _drop(one[2]), reverse=True)
        return _laid(garment, passage.owner, front, back)
    return None


def lying_sideways(design: Design) -> frozenset[str]:
    """Names of the pieces of a body that is knitted with its sleeves from side to side."""
    found: set[str] = set()
    for passage in design.passages:
        edges = _edges(design, passage.owner) if passage.part == "head" and not passage.never else ()
        owners = list(dict.fromkeys(e.piece for e in edges))
        if len(owners) == 2 and not _met(design, owners) - set(owners) and all(_of_rows(design, edge) for edge in edges):
            found.update(owners)
    return frozenset(found)


def _of_rows(design: Design, edge: EdgeName) -> bool:
    """Whether the edge lies at a side of its piece."""
    piece = design.piece(edge.piece)
    return part_of_edge(edge.edge).name in {run.name for run in (*piece.left, *piece.right)}


_Necked = tuple[LaidPiece, EdgeSide, _SeenLine]


def _edges(design: Design, owner: str) -> tuple[EdgeName, ...]:
    """The edges of pieces round an opening: those that the band lies along whose last edge it is."""
    band = design.band(owner)
    return band.along if band is not None else ()


def _met(design: Design, owners: Sequence[str]) -> set[str]:
    """All pieces in joins with these."""
    joins = [{e.piece for e in (*j.one, *j.other) if design.band(e.piece) is None} for j in design.joins]
    return {name for join in joins if join & set(owners) for name in join}


def _neck(piece: LaidPiece, edges: Sequence[EdgeName]) -> tuple[EdgeSide, _SeenLine] | None:
    """The side on which all of the named edges of a piece lie, and their line; None where they lie otherwise."""
    names = {e.edge for e in edges if e.piece == piece.name}
    of, shape = piece.of, piece.shape
    sides: tuple[tuple[EdgeSide, set[str]], ...] = (
        ("left", {run.name for run in of.sized.left}),
        ("right", {run.name for run in of.sized.right}),
    )
    for side, own in sides:
        lines = [edge_line(of, shape, name) for name in sorted(names & own)]
        if names <= own and all(lines):
            return side, tuple(point for line in sorted(lines, key=lambda line: line[0][1]) for point in line)
    return None


def _drop(line: _SeenLine) -> float:
    """How far a neck reaches in from the line between its ends."""
    return max(abs(x - line[0][0]) for x, _ in line)


def _laid(garment: DrawnGarment, neckband: str, front: _Necked, back: _Necked) -> Sideways:
    piece, up, line = front
    across = -1 if mirrored(garment.design, piece) else 1
    bare = Sideways(front=piece, up=up, across=across, neck=(), behind=(), band=0.0, rims=())
    seen = _rightwards(bare.worn(line))
    # The back is seen from within, where left and right are exchanged.
    within = _rightwards(Sideways(front=back[0], up=back[1], across=-across, neck=(), behind=(), band=0.0, rims=()).worn(back[2]))
    (x, y), (own_x, own_y) = (_between(one) for one in (seen, within))
    behind = tuple((px + x - own_x, py + y - own_y) for px, py in within)
    names = {e.edge for e in _edges(garment.design, neckband) if e.piece == piece.name}
    rims = tuple((bare.worn(rim.line), bare.worn(rim.outer), rim.trim) for rim in rims_of(garment, piece, names))
    deep, trim = next(((cm, trim) for band, cm, trim in seen_bands(garment) if band.name == neckband), (0.0, RIBBED))
    return replace(bare, neck=seen, behind=behind, band=deep, rims=rims, trim=trim)


def _rightwards(line: _SeenLine) -> _SeenLine:
    return line if line[0][0] <= line[-1][0] else line[::-1]


def _between(line: _SeenLine) -> Point:
    """The middle between the ends of a line."""
    return (line[0][0] + line[-1][0]) / 2, (line[0][1] + line[-1][1]) / 2


def draw_sideways(garment: DrawnGarment, found: Sideways, title: str) -> Drawing:
    """Seen from the front, as large as it fits."""
    piece = found.front
    shape = piece.shape
    foot = -piece.of.edging_cm
    ends = [(x, y) for x in (shape.polygon_left, shape.polygon_right) for y in (foot, shape.height + piece.of.end_cm)]
    corners = [*found.worn(ends), *found.behind, *(p for rim in found.rims for line in rim[:2] for p in line)]
    left, right = min(x for x, _ in corners), max(x for x, _ in corners)
    low, high = min(y for _, y in corners), max(y for _, y in corners) + found.band
    scale = min(BOX[0] / (right - left), BOX[1] / (high - low))
    place: Placing = lambda p: (EDGE + (p[0] - left) * scale, EDGE + (high - p[1]) * scale)  # noqa: E731
    paper = Paper()
    paper.draw("inside", path([place(p) for p in (*found.behind, *reversed(found.neck))], closed=True))
    if found.band:
        draw_rim(paper, found.trim, found.behind, inner_rim(found.behind, found.band), place)
    for edge, outer, trim in found.rims:
        draw_rim(paper, trim, edge, outer, place)
    put: Placing = lambda p: place(found.worn((p,))[0])  # noqa: E731
    draw_piece(paper, garment.design, piece, put)
    draw_pockets(paper, garment, piece, put)
    if found.band:
        draw_rim(paper, found.trim, found.neck, inner_rim(found.neck, found.band), place)
    return paper.finished(title, (right - left) * scale + 2 * EDGE, (high - low) * scale + 2 * EDGE)
