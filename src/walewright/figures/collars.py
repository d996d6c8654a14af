"""What is worn round the neck of a body that is open in front and is knitted as pieces: a collar that rolls over on the fronts, and
a hood. Both are known by what they are joined to; how deep and how high they are, is counted."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import accumulate, pairwise

from walewright.counted.edge_lines import edge_line, length
from walewright.counted.edges import edge_length
from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures.drawn import DrawnGarment
from walewright.figures.measures import LaidPiece
from walewright.figures.pens import Paper, path
from walewright.figures.rims import Placing, beside
from walewright.figures.trunks import Trunk
from walewright.glue.model import OPPOSITE, EndAt, Glued, Place, bare
from walewright.record import record
from walewright.trade.edge_names import is_top
from walewright.trade.sides import SIDES

FALL = 0.6
"""Of its depth, how much of a collar lies on the front when it is rolled over."""

RISE = 0.18
"""Of its depth, how far the fold of a collar rises behind the neck."""

HOOD = (0.5, 0.92, 0.4)
"""A hood as it stands: half its width as a share of its depth from face to back; its top and where it is widest, as shares of its
height."""

FACE = (0.68, 0.86)
"""Its opening: half its width as a share of the hood's, its top as a share of the hood's height."""

CURVE = 12
"""Lines of a quarter of a curve."""


@record
class Hood:
    """In cm as it is worn: its outline and the opening for the face."""

    outline: tuple[Point, ...]
    face: tuple[Point, ...]


@record
class Rolled:
    """On one of the fronts: the line that the collar hangs on and its last edge as it lies, each from the foot up."""

    front: str
    line: tuple[Point, ...]
    rim: tuple[Point, ...]


@record
class Collars:
    rolled: tuple[Rolled, ...] = ()
    behind: float = 0.0
    """How far the fold rises behind the neck, cm."""
    hood: Hood | None = None

    @property
    def corners(self) -> tuple[Point, ...]:
        """What has to find room on the paper."""
        hood = self.hood.outline if self.hood is not None else ()
        return (*hood, *((0.0, of.line[-1][1] + self.behind) for of in self.rolled))


NO_COLLARS = Collars()

_Hung = tuple[tuple[Place, ...], tuple[EndAt, ...]]
"""Edges along the start of a piece from its left end to its right one, and the end at which each begins."""


def collars_of(garment: DrawnGarment, trunk: Trunk) -> Collars:
    """What pieces that are no part of the body make along its neck."""
    if len(trunk.fronts) < 2:
        return NO_COLLARS
    rolled, behind, hoods = [], 0.0, []
    for piece in garment.pieces:
        if piece.name in trunk.bodies:
            continue
        for places, begins in _hung(garment.design, garment.glued, piece.name):
            # What lies along the back as well goes round the neck; the lining of a pocket does not.
            if not {p.owner for p in places} & {placed.name for placed in trunk.backs}:
                continue
            if _shut(garment.glued, piece.name):
                hoods.append((piece, places))
                continue
            depth = piece.shape.height
            found = list(_on_fronts(garment, piece, places, begins, trunk))
            rolled += found
            behind = max(behind, depth * RISE if found else 0.0)
    hood = _hood(hoods[0][0], [p for _, places in hoods for p in places], trunk) if hoods else None
    return Collars(tuple(rolled), behind, hood)


def _hung(design: Design, glued: Glued, owner: str) -> Iterator[_Hung]:
    """What the start of a piece hangs on, or is sewn to."""
    for line in glued.lines_of(owner):
        yield line.along, line.left_ends
    for seam in (bare(design, seam) for seam in glued.seams):
        for own, own_begins, other, begins in (
            (seam.one, seam.one_begins, seam.other, seam.other_begins),
            (seam.other, seam.other_begins, seam.one, seam.one_begins),
        ):
            if any(p.owner == owner and p.edge == "start" for p in own) and other:
                leftwards = own_begins[0] != "left"
                ends = tuple(OPPOSITE[b] for b in begins[::-1]) if leftwards else begins
                yield (other[::-1] if leftwards else other), ends


def _shut(glued: Glued, name: str) -> bool:
    """Whether its last row is closed, as a hood's is."""
    return any(p.owner == name and is_top(p.edge) for seam in glued.seams for p in (*seam.one, *seam.other))


# ----------------------------------------------------------------- rolled over


def _on_fronts(
    garment: DrawnGarment, collar: LaidPiece, places: Sequence[Place], begins: Sequence[EndAt], trunk: Trunk
) -> Iterator[Rolled]:
    lines = [_line(garment.piece(p.owner), p.edge, begin) for p, begin in zip(places, begins, strict=True)]
    ends = list(accumulate(map(length, lines)))
    deep = tuple(_side_cm(collar, side) for side in SIDES)
    for front in trunk.fronts:
        for place, line, end in zip(places, lines, ends, strict=True):
            if place.owner != front.name or len(line) < 2:
                continue
            begin = end - length(line)
            depths = [deep[0] + (deep[1] - deep[0]) * at / ends[-1] for at in _walked(line, begin)]
            fold = [front.at(p) for p in line]
            rim = _outwards(fold, [FALL * d for d in depths])
            upwards = 1 if fold[0][1] <= fold[-1][1] else -1
            yield Rolled(front.name, tuple(fold[::upwards]), tuple(rim[::upwards]))


def _line(piece: LaidPiece, edge: str, begin: EndAt) -> tuple[Point, ...]:
    line = edge_line(piece.of, piece.shape, edge)
    return line if begin in ("bottom", "left") else line[::-1]


def _walked(line: Sequence[Point], begin: float) -> list[float]:
    return list(accumulate((math.hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line)), initial=begin))


def _side_cm(piece: LaidPiece, side: str) -> float:
    sized = piece.sized
    runs = sized.left if side == "left" else sized.right
    names = dict.fromkeys(run.name for run in runs if run.name)
    return sum(edge_length(piece.of, name).cm for name in names) or piece.shape.height


def _outwards(fold: Sequence[Point], depths: Sequence[float]) -> list[Point]:
    """The edge of what is rolled over from its fold to the outside, away from the middle of the garment where it is highest."""
    moved = beside(fold, 1.0)
    top = max(range(len(fold)), key=lambda n: fold[n][1])
    way = 1.0 if abs(moved[top][0]) >= abs(fold[top][0]) else -1.0
    return [
        (x + (mx - x) * depth * way, y + (my - y) * depth * way)
        for (x, y), (mx, my), depth in zip(fold, moved, depths, strict=True)
    ]


def draw_stand(paper: Paper, collars: Collars, place: Placing) -> None:
    """The fold of a rolled collar behind the neck."""
    tops = sorted(of.line[-1] for of in collars.rolled)
    if len(tops) > 1:
        fold = _arch(tops[0], tops[-1], collars.behind)
        # It stands behind the neck: its inside is seen below the fold, nothing of its fall above.
        paper.draw("cloth", path([place(p) for p in (*fold, *_arch(tops[0], tops[-1], 0.0)[::-1])], closed=True))
        paper.draw("outline", path([place(p) for p in fold]))


def draw_rolled(paper: Paper, collars: Collars, front: str, place: Placing) -> None:
    """The collar on one of the fronts."""
    for of in collars.rolled:
        if of.front == front:
            shape = path([place(p) for p in (*of.line, *reversed(of.rim))], closed=True)
            paper.draw("cloth", shape)
            paper.draw("outline", shape)


def _arch(left: Point, right: Point, rise: float) -> list[Point]:
    steps = [n / CURVE for n in range(CURVE + 1)]
    return [(left[0] + (right[0] - left[0]) * t, left[1] + (right[1] - left[1]) * t + rise * math.sin(math.pi * t)) for t in steps]


# ----------------------------------------------------------------- a hood


def _hood(hood: LaidPiece, places: Sequence[Place], trunk: Trunk) -> Hood | None:
    necks = [
        [front.at(p) for p in edge_line(front.piece.of, front.piece.shape, place.edge)]
        for front in trunk.fronts
        for place in places
        if place.owner == front.name
    ]
    points = sorted(point for line in necks for point in line)
    if len(points) < 2:
        return None
    low = [min(line, key=lambda p: p[1]) for line in necks]
    left_foot, right_foot = min(low), max(low)
    high = [max(line, key=lambda p: p[1]) for line in necks]
    left, right = min(high), max(high)
    shape = hood.shape
    half = max(HOOD[0] * shape.width, (right[0] - left[0]) / 2)
    outer = _dome(left, right, half, HOOD[2] * shape.height, HOOD[1] * shape.height)
    face = _dome(left_foot, right_foot, half * FACE[0], *(left[1] - left_foot[1] + s * shape.height for s in (HOOD[2], FACE[1])))
    return Hood((left_foot, *outer, right_foot), tuple(face))


def _dome(left: Point, right: Point, half: float, wide_at: float, top: float) -> list[Point]:
    """From the left point out to `half` the width at the height `wide_at` above it, over the `top`, and down to the right one."""
    quarter = [math.pi / 2 * n / CURVE for n in range(CURVE + 1)]
    middle, foot, near = (left[0] + right[0]) / 2, left[1], (right[0] - left[0]) / 2
    rise = [(near + (half - near) * math.sin(t), foot + wide_at * n / CURVE) for n, t in enumerate(quarter)]
    over = [(half * math.cos(t), foot + wide_at + (top - wide_at) * math.sin(t)) for t in quarter[1:]]
    side = [*rise, *over]
    return [*((middle - x, y) for x, y in side), *((middle + x, y) for x, y in side[-2::-1])]


def draw_hood(paper: Paper, collars: Collars, place: Placing) -> None:
    """Up, as it stands when nobody wears it, with the opening for the face."""
    if collars.hood is None:
        return
    for pen, shape in (("cloth", collars.hood.outline), ("inside", collars.hood.face)):
        data = path([place(p) for p in shape], closed=True)
        paper.draw(pen, data)
        paper.draw("outline", data)
