"""The line drawing on the cover: the garment made up, from the outlines of its own pieces in a middle size.

Seen from the front: the body piece with the deepest neck, the sleeves that are joined to it folded along their middle and
let hang, bands and welts with their ribs. A garment without a neck is drawn as its first piece.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from walewright.design.model import Design, EdgeName
from walewright.pages.measures import MeasuredPiece
from walewright.pages.model import Drawing
from walewright.pages.outline import Outline, Point
from walewright.pages.pens import Paper, hatched, path, stitch, turned
from walewright.solve.model import Counts, SizedRun

HANG = 52.0
"""Degrees below the horizontal at which a sleeve hangs."""

BOX = (150.0, 100.0)
"""mm of paper."""

RIB = 1.25
"""Between rib lines, mm."""

STITCH = 2.2
"""Width of a drawn stitch, mm."""

Place = Callable[[Point], Point]


@dataclass(frozen=True, slots=True)
class _Sleeve:
    """In cm, y upwards, hanging at the garment's right: the folded shape, and its cuff's inner and outer edge."""

    shape: tuple[Point, ...]
    cuff: tuple[tuple[Point, Point], tuple[Point, Point]] | None


def middle_size(counts: Counts) -> int:
    """The size that drawings show."""
    return (len(counts.sizes) - 1) // 2


def cover(design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...]) -> Drawing:
    """The garment in its middle size."""
    size = middle_size(counts)
    body = _body(pieces, size)
    sleeves = tuple(_sleeves(design, pieces, body, size))
    foot = -body.edging_cm[size]
    corners = [*body.outlines[size].polygon, (0.0, foot), (0.0, body.outlines[size].height + 2.0)]
    for sleeve in sleeves:
        for x, y in sleeve.shape:
            corners += [(x, y), (-x, y)]
    low, high = min(y for _, y in corners), max(y for _, y in corners)
    wide = max(abs(x) for x, _ in corners)
    scale = min(BOX[0] / (2 * wide), BOX[1] / (high - low))
    edge = 1.0
    place: Place = lambda p: (edge + (p[0] + wide) * scale, edge + (high - p[1]) * scale)  # noqa: E731
    paper = Paper()
    _neck_behind(paper, design, counts, pieces, body, size, place)
    for sleeve in sleeves:
        for side in (1, -1):
            _draw_sleeve(paper, sleeve, side, place)
    _draw_body(paper, body, size, place)
    _neckband(paper, design, counts, body, size, place)
    title = f"{design.title}, drawn from its pieces in size {counts.sizes[size].size}, seen from the front"
    return paper.finished(title, 2 * (wide * scale + edge), (high - low) * scale + 2 * edge)


def _body(pieces: tuple[MeasuredPiece, ...], size: int) -> MeasuredPiece:
    necked = [p for p in pieces if p.outlines[size].neck]
    return max(necked, key=lambda p: p.outlines[size].height - min(y for _, y in p.outlines[size].neck)) if necked else pieces[0]


def _draw_body(paper: Paper, body: MeasuredPiece, size: int, place: Place) -> None:
    shape = body.outlines[size]
    foot, half = -body.edging_cm[size], body.edging_widths[size] / 2
    if foot:
        upper, lower = (place(shape.left[0]), place(shape.right[0])), (place((-half, foot)), place((half, foot)))
        paper.draw("cloth", path([upper[0], lower[0], lower[1], upper[1]], closed=True))
        paper.draw("hatch", *hatched(upper, lower, RIB))
    paper.draw("cloth", path([place(p) for p in shape.polygon], closed=True))
    paper.draw("texture", *_wales(shape, place))


def _wales(shape: Outline, place: Place) -> Iterator[str]:
    """Stitches in columns that rise from the hem in a slow wave: enough to show the fabric and its direction."""
    x0, foot = place(shape.left[0])
    x1, _ = place(shape.right[0])
    rows = (foot - place((0.0, shape.height * 0.36))[1]) / (STITCH * 0.8)
    count = int((x1 - x0 - STITCH) / STITCH)
    first = (x0 + x1 - count * STITCH) / 2
    for wale in range(count):
        wave = 0.55 + 0.34 * math.sin(wale * 0.2 + 0.6) + 0.12 * math.sin(wale * 0.47 + 2)
        for row in range(1, 1 + round(rows * wave)):
            yield stitch(first + wale * STITCH, foot - row * STITCH * 0.8 - 0.4, STITCH)


# ----------------------------------------------------------------- sleeves


def _sleeves(design: Design, pieces: tuple[MeasuredPiece, ...], body: MeasuredPiece, size: int) -> Iterator[_Sleeve]:
    """Pieces joined as a whole to edges of the body and of another piece: those go round an armhole."""
    for join in design.joins:
        for own, other in ((join.one, join.other), (join.other, join.one)):
            run = _outer_run(body, other, size)
            if len({e.piece for e in own}) == 1 and len({e.piece for e in other}) > 1 and run is not None:
                sleeve = next(p for p in pieces if p.piece.name == own[0].piece)
                if sleeve.piece.name != body.piece.name:
                    yield _hung(sleeve, body, run, size)


def _outer_run(body: MeasuredPiece, edges: tuple[EdgeName, ...], size: int) -> SizedRun | None:
    names = {e.edge for e in edges if e.piece == body.piece.name}
    return next((run for run in body.sized[size].right if run.name and run.name in names), None)


def _hung(sleeve: MeasuredPiece, body: MeasuredPiece, run: SizedRun, size: int) -> _Sleeve:
    shape = sleeve.outlines[size]
    height = run.to_row * body.row_cm
    tip = (body.outlines[size].half_width(height, "right"), height)
    top = (0.0, shape.height)
    foot, half = -sleeve.edging_cm[size], sleeve.edging_widths[size] / 2

    def hang(points: list[Point]) -> list[Point]:
        return [(x + tip[0], y + tip[1] - shape.height) for x, y in turned(points, top, 90 - HANG)]

    edge = [*shape.left, *shape.shoulder_left, top]
    if not foot:
        return _Sleeve(tuple(hang([(0.0, 0.0), *edge])), None)
    cuff = hang([shape.left[0], (0.0, 0.0), (-half, foot), (0.0, foot)])
    return _Sleeve(tuple(hang([(0.0, foot), (-half, foot), *edge])), ((cuff[0], cuff[1]), (cuff[2], cuff[3])))


def _draw_sleeve(paper: Paper, sleeve: _Sleeve, side: int, place: Place) -> None:
    def put(p: Point) -> Point:
        return place((p[0] * side, p[1]))

    paper.draw("cloth", path([put(p) for p in sleeve.shape], closed=True))
    if sleeve.cuff is not None:
        upper, lower = ((put(a), put(b)) for a, b in sleeve.cuff)
        paper.draw("hatch", *_ribs(upper, lower))
        paper.draw("seam", path(list(upper)))


def _ribs(upper: tuple[Point, Point], lower: tuple[Point, Point]) -> list[str]:
    # The cuff lies aslant: its ribs are counted along its own edge.
    length = ((upper[0][0] - upper[1][0]) ** 2 + (upper[0][1] - upper[1][1]) ** 2) ** 0.5
    flat = max(abs(upper[1][0] - upper[0][0]), 1e-6)
    return hatched(upper, lower, RIB * flat / max(length, 1e-6))


# ----------------------------------------------------------------- neck


def _band_depth(design: Design, counts: Counts, body: MeasuredPiece, size: int) -> float:
    """Depth in cm of the band along the body's neck, 0 without one."""
    for band in design.bands:
        if EdgeName(body.piece.name, "neck") in band.along:
            rows = next(b.rows for b in counts.sizes[size].bands if b.name == band.name)
            return rows / design.fabric(design.edging(band.edging).fabric).rows_per_cm
    return 0.0


def _neck_behind(
    paper: Paper,
    design: Design,
    counts: Counts,
    pieces: tuple[MeasuredPiece, ...],
    body: MeasuredPiece,
    size: int,
    place: Place,
) -> None:
    """The back's neck, seen through the front's."""
    back = next((p for p in pieces if p.piece.name != body.piece.name and p.outlines[size].neck), None)
    shape = body.outlines[size]
    if back is None or not shape.neck:
        return
    rise = shape.height - back.outlines[size].height
    line = [(x, y + rise) for x, y in back.outlines[size].neck]
    paper.draw("inside", path([place(p) for p in (*line, *reversed(shape.neck))], closed=True))
    depth = _band_depth(design, counts, body, size)
    if depth:
        above = _inner(line, depth)
        paper.draw("cloth", path([place(p) for p in (*line, *reversed(above))], closed=True))
        paper.draw("hatch", *_rungs(line, above, place))
    else:
        paper.draw("seam", path([place(p) for p in line]))


def _neckband(paper: Paper, design: Design, counts: Counts, body: MeasuredPiece, size: int, place: Place) -> None:
    depth = _band_depth(design, counts, body, size)
    line = list(body.outlines[size].neck)
    if not depth or not line:
        return
    inner = _inner(line, depth)
    paper.draw("cloth", path([place(p) for p in (*line, *reversed(inner))], closed=True))
    paper.draw("hatch", *_rungs(line, inner, place))


def _inner(line: list[Point], depth: float) -> list[Point]:
    """The inner edge of a band of that depth along a neck line: the line drawn in towards the middle of the neck's top."""
    half, top = abs(line[0][0]), line[0][1]
    drop = max(top - min(y for _, y in line), 1e-6)
    across, down = max(half - depth, 0.0) / half, (drop - depth) / drop
    return [(x * across, top - (top - y) * down) for x, y in line]


def _rungs(outer: list[Point], inner: list[Point], place: Place) -> list[str]:
    """Rib lines across a curved band."""
    rungs = []
    for (a, b), (c, d) in zip(itertools.pairwise(outer), itertools.pairwise(inner), strict=True):
        pa, pb, pc, pd = place(a), place(b), place(c), place(d)
        length = ((pb[0] - pa[0]) ** 2 + (pb[1] - pa[1]) ** 2) ** 0.5
        count = max(1, round(length / RIB))
        for i in range(count):
            t = i / count
            rungs.append(
                path(
                    [
                        (pa[0] + (pb[0] - pa[0]) * t, pa[1] + (pb[1] - pa[1]) * t),
                        (pc[0] + (pd[0] - pc[0]) * t, pc[1] + (pd[1] - pc[1]) * t),
                    ]
                )
            )
    return rungs
