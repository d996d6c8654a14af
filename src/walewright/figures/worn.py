"""A garment with a body, as it is worn: sleeves folded along their middle and let hang, the back's neck seen through the
front's, bands and welts with their ribs."""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from walewright.counted.outline import Outline, Point
from walewright.design.model import Design, EdgeName
from walewright.figures.measures import MeasuredPiece
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, hatched, path, turned
from walewright.figures.textures import show_charted
from walewright.figures.worked import WorkedStripe, mirrored, show_motifs, show_panels, show_stripes, stripes
from walewright.trade.sides import SIDES

HANG = 52.0
"""Degrees below the horizontal at which a sleeve hangs."""

BOX = (150.0, 100.0)
"""mm of paper."""

RIB = 1.25
"""Between rib lines, mm."""

WALE = 3.4
"""Between the wales that are drawn, mm."""

EDGE = 1.0
"""Round the drawing, mm."""

UP_THE_NECK = (0.5, 0.35)
"""Of its depth, how far a neckband's rim lies inwards and upwards at the shoulder."""

Placing = Callable[[Point], Point]


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece of the front, its origin `x` cm right of the garment's middle."""

    piece: MeasuredPiece
    x: float

    def at(self, point: Point) -> Point:
        return point[0] + self.x, point[1]


@dataclass(frozen=True, slots=True)
class Trunk:
    """The front, in one piece or in two side by side; the back; `band` cm of band along the neck or between the fronts."""

    fronts: tuple[Placed, ...]
    back: MeasuredPiece | None
    band: float


@dataclass(frozen=True, slots=True)
class _Sleeve:
    """In cm, y upwards, hanging at the garment's right: the folded shape, and its cuff's inner and outer edge."""

    shape: tuple[Point, ...]
    cuff: tuple[tuple[Point, Point], tuple[Point, Point]] | None
    striped: tuple[WorkedStripe, ...]


def worn(design: Design, pieces: tuple[MeasuredPiece, ...], trunk: Trunk, size: int, title: str) -> Drawing:
    """The garment made up, seen from its right side; the pieces are measured as they hang on the bed."""
    sleeves = tuple(_sleeves(design, pieces, trunk, size))
    corners = [(0.0, max(p.piece.outlines[size].height + p.piece.end_cm[size] for p in trunk.fronts) + 2.0)]
    for placed in trunk.fronts:
        foot = -placed.piece.edging_cm[size]
        corners += [*(placed.at(p) for p in placed.piece.outlines[size].polygon), (0.0, foot)]
    corners += [(x * side, y) for sleeve in sleeves for x, y in sleeve.shape for side in (1, -1)]
    low, high = min(y for _, y in corners), max(y for _, y in corners)
    wide = max(abs(x) for x, _ in corners)
    scale = min(BOX[0] / (2 * wide), BOX[1] / (high - low))
    across = -scale if mirrored(design, trunk.fronts[0].piece) else scale
    place: Placing = lambda p: (EDGE + wide * scale + p[0] * across, EDGE + (high - p[1]) * scale)  # noqa: E731
    paper = Paper()
    _back(paper, trunk, size, place)
    for sleeve in sleeves:
        for side in (1, -1):
            _draw_sleeve(paper, sleeve, side, place)
    for placed in trunk.fronts:
        draw_piece(paper, design, placed.piece, size, lambda p, on=placed: place(on.at(p)))  # type: ignore[misc]
    if len(trunk.fronts) == 1:
        _neckband(paper, trunk, size, place)
    else:
        _front_bands(paper, trunk, size, place)
    return paper.finished(title, 2 * (wide * scale + EDGE), (high - low) * scale + 2 * EDGE)


def draw_piece(paper: Paper, design: Design, piece: MeasuredPiece, size: int, place: Placing, squeeze: float = 1.0) -> None:
    """A piece as cloth with its edging's ribs; `squeeze` 1/2 folds it lengthwise, and less than 0 turns it round."""

    def put(p: Point) -> Point:
        return place((p[0] * squeeze, p[1]))

    shape = piece.outlines[size]
    foot, half = piece.edging_cm[size], piece.counted[size].edging_width_cm / 2
    if foot:
        wide = max(shape.start_width, 1e-6)
        upper = [put(p) for p in shape.foot]
        lower = [put((-half + (x - shape.foot[0][0]) / wide * 2 * half, y - foot)) for x, y in shape.foot]
        paper.draw("cloth", path([*upper, *reversed(lower)], closed=True))
        for (a, b), (c, d) in zip(itertools.pairwise(upper), itertools.pairwise(lower), strict=True):
            paper.draw("hatch", *hatched((a, b), (c, d), RIB))
    paper.draw("cloth", path([put(p) for p in shape.polygon], closed=True))
    for gap in shape.gaps:
        paper.draw("inside", path([put(p) for p in gap.edge], closed=True))
    _end_edging(paper, piece, size, put)
    striped = tuple(stripes(design, piece, size, shape.polygon))
    patterned = any(c.fabric and c.area == "whole" for c in piece.sized[size].charts)
    if not striped and not patterned:
        paper.draw("wale", *_wales(shape, put))
    show_stripes(paper, striped, put)
    show_panels(paper, piece, size, put)
    show_charted(paper, design, piece, size, put)
    show_motifs(paper, design, piece, size, put)
    # What lies over the inner half of the outline is no part of it.
    paper.draw("outline", path([put(p) for p in shape.polygon], closed=True))


def _end_edging(paper: Paper, piece: MeasuredPiece, size: int, put: Placing) -> None:
    """The edging knitted on at the end of a piece, above its last row."""
    of, shape = piece.counted[size], piece.outlines[size]
    if not of.end_cm:
        return
    (x0, y), (x1, _) = shape.left[-1], shape.right[-1]
    more = (of.end_width_cm - (x1 - x0)) / 2
    lower = put((x0, shape.height)), put((x1, shape.height))
    upper = put((x0 - more, y + of.end_cm)), put((x1 + more, y + of.end_cm))
    paper.draw("cloth", path([*lower, upper[1], upper[0]], closed=True))
    paper.draw("hatch", *hatched(lower, upper, RIB))


def _wales(shape: Outline, put: Placing) -> Iterator[str]:
    """The wales of the fabric, a few of many, as fine lines from the hem up: enough to show which way it runs."""
    edge = shape.polygon
    x0, x1 = min(x for x, _ in edge), max(x for x, _ in edge)
    wide = abs(put((x1, 0.0))[0] - put((x0, 0.0))[0])
    count = max(2, round(wide / WALE))
    for n in range(1, count):
        x = x0 + (x1 - x0) * n / count
        met = sorted(
            a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0])
            for a, b in itertools.pairwise([*edge, edge[0]])
            if min(a[0], b[0]) <= x < max(a[0], b[0])
        )
        for low, high in zip(met[::2], met[1::2], strict=False):
            yield path([put((x, low)), put((x, high))])


# ----------------------------------------------------------------- sleeves


def _sleeves(design: Design, pieces: tuple[MeasuredPiece, ...], trunk: Trunk, size: int) -> Iterator[_Sleeve]:
    """Pieces joined to edges of the front and of another piece, at once or by one edge of theirs: those go round an armhole."""
    done: set[str] = set()
    front = {p.piece.piece.name for p in trunk.fronts}
    bodies = front | ({trunk.back.piece.name} if trunk.back else set())
    met: dict[tuple[str, str], list[EdgeName]] = {}
    for join in design.joins:
        for own, other in ((join.one, join.other), (join.other, join.one)):
            if len({e.piece for e in own}) == 1 and own[0].piece not in bodies and design.band(own[0].piece) is None:
                met.setdefault((own[0].piece, own[0].edge), []).extend(other)
    for (name, _), others in met.items():
        if name in done or len({e.piece for e in others}) < 2:
            continue
        tip = next((t for t in (_tip(placed, others, size) for placed in trunk.fronts) if t is not None), None)
        if tip is not None:
            done.add(name)
            yield _hung(design, next(p for p in pieces if p.piece.name == name), tip, size)


def _tip(body: Placed, edges: list[EdgeName], size: int) -> Point | None:
    """The upper end, at the garment's right, of the first of the edges that is an outer edge of the front."""
    names = {e.edge for e in edges if e.piece == body.piece.piece.name} - {""}
    shape, sized = body.piece.outlines[size], body.piece.sized[size]
    for side, runs, sign in zip(SIDES[::-1], (sized.right, sized.left), (1, -1), strict=True):
        for run in runs:
            if run.name in names:
                height = body.piece.counted[size].height_cm(run.to_row)
                return sign * body.at((shape.edge_x(height, side), height))[0], height
    return None


def _hung(design: Design, sleeve: MeasuredPiece, tip: Point, size: int) -> _Sleeve:
    shape = sleeve.outlines[size]
    top = (0.0, shape.height)
    foot, half = -sleeve.edging_cm[size], sleeve.counted[size].edging_width_cm / 2

    def hang(points: list[Point]) -> list[Point]:
        return [(x + tip[0], y + tip[1] - shape.height) for x, y in turned(points, top, 90 - HANG)]

    edge = [*shape.left, *shape.shoulder_left, top]
    striped = tuple((tuple(hang(list(area))), shade) for area, shade in stripes(design, sleeve, size, [(0.0, 0.0), *edge]))
    if not foot:
        return _Sleeve(tuple(hang([(0.0, 0.0), *edge])), None, striped)
    cuff = hang([shape.left[0], (0.0, 0.0), (-half, foot), (0.0, foot)])
    return _Sleeve(tuple(hang([(0.0, foot), (-half, foot), *edge])), ((cuff[0], cuff[1]), (cuff[2], cuff[3])), striped)


def _draw_sleeve(paper: Paper, sleeve: _Sleeve, side: int, place: Placing) -> None:
    def put(p: Point) -> Point:
        return place((p[0] * side, p[1]))

    paper.draw("cloth", path([put(p) for p in sleeve.shape], closed=True))
    show_stripes(paper, sleeve.striped, put)
    paper.draw("outline", path([put(p) for p in sleeve.shape], closed=True))
    if sleeve.cuff is not None:
        upper, lower = ((put(a), put(b)) for a, b in sleeve.cuff)
        paper.draw("hatch", *_ribs(upper, lower))
        paper.draw("seam", path(list(upper)))


def _ribs(upper: tuple[Point, Point], lower: tuple[Point, Point]) -> list[str]:
    # The cuff lies aslant: its ribs are counted along its own edge.
    length = ((upper[0][0] - upper[1][0]) ** 2 + (upper[0][1] - upper[1][1]) ** 2) ** 0.5
    flat = max(abs(upper[1][0] - upper[0][0]), 1e-6)
    return hatched(upper, lower, RIB * flat / max(length, 1e-6))


# ----------------------------------------------------------------- neck and front


def _back(paper: Paper, trunk: Trunk, size: int, place: Placing) -> None:
    """The back as far as it is seen: through the front's neck, or between the fronts."""
    if trunk.back is None:
        return
    front, back = trunk.fronts[0].piece.outlines[size], trunk.back.outlines[size]
    rise = max(p.piece.outlines[size].height for p in trunk.fronts) - back.height
    if len(trunk.fronts) > 1:
        paper.draw("inside", path([place((x, y + rise)) for x, y in back.polygon], closed=True))
        return
    line = [(x, y + rise) for x, y in back.neck]
    if not line or not front.neck:
        return
    paper.draw("inside", path([place(p) for p in (*line, *reversed(front.neck))], closed=True))
    if trunk.band:
        above = _inner(line, trunk.band)
        paper.draw("cloth", path([place(p) for p in (*line, *reversed(above))], closed=True))
        paper.draw("hatch", *_rungs(line, above, place))
    else:
        paper.draw("seam", path([place(p) for p in line]))


def _neckband(paper: Paper, trunk: Trunk, size: int, place: Placing) -> None:
    line = list(trunk.fronts[0].piece.outlines[size].neck)
    if not trunk.band or not line:
        return
    inner = _inner(line, trunk.band)
    paper.draw("cloth", path([place(p) for p in (*line, *reversed(inner))], closed=True))
    paper.draw("hatch", *_rungs(line, inner, place))


def _front_bands(paper: Paper, trunk: Trunk, size: int, place: Placing) -> None:
    """A band along the inner edge of each front, the right one over the left."""
    if not trunk.band:
        return
    for placed, side in zip(trunk.fronts, (1, -1), strict=True):
        shape = placed.piece.outlines[size]
        foot = -placed.piece.edging_cm[size]
        edge = shape.right if side > 0 else shape.left
        outer = [placed.at(p) for p in ((edge[0][0], foot), *edge)]
        inner = [(x + side * trunk.band, y) for x, y in outer]
        paper.draw("cloth", path([place(p) for p in (*outer, *reversed(inner))], closed=True))
        paper.draw("hatch", *_rungs(outer, inner, place))


def _inner(line: list[Point], depth: float) -> list[Point]:
    """The rim of a band of that depth along a neck line: square to the line, and at its ends up the neck, since the band goes round
    it."""
    made: list[Point] = []
    whole = sum(math.hypot(b[0] - a[0], b[1] - a[1]) for a, b in itertools.pairwise(line))
    done = 0.0
    for at, (x, y) in enumerate(line):
        (ax, ay), (bx, by) = line[max(at - 1, 0)], line[min(at + 1, len(line) - 1)]
        done += math.hypot(x - ax, y - ay)
        far = max(math.hypot(bx - ax, by - ay), 1e-6)
        # Near an end the rim comes down from the neck.
        near = max(0.0, 1 - min(done, whole - done) / max(depth * 1.5, 1e-6))
        way = 1 if done < whole / 2 else -1
        across = -(by - ay) / far * (1 - near) + way * UP_THE_NECK[0] * near
        up = (bx - ax) / far * (1 - near) + UP_THE_NECK[1] * near
        made.append((x + across * depth, y + up * depth))
    return made


def _rungs(outer: list[Point], inner: list[Point], place: Placing) -> list[str]:
    """Rib lines across a curved band."""
    rungs = []
    for (a, b), (c, d) in zip(itertools.pairwise(outer), itertools.pairwise(inner), strict=True):
        pa, pb, pc, pd = place(a), place(b), place(c), place(d)
        length = ((pb[0] - pa[0]) ** 2 + (pb[1] - pa[1]) ** 2) ** 0.5
        count = max(1, round(length / RIB))
        for i in range(count):
            t = i / count
            start = (pa[0] + (pb[0] - pa[0]) * t, pa[1] + (pb[1] - pa[1]) * t)
            end = (pc[0] + (pd[0] - pc[0]) * t, pc[1] + (pd[1] - pc[1]) * t)
            rungs.append(path([start, end]))
    return rungs
