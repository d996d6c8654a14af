"""Tubes on paper: round, with the wales of their fabric, ribs, stripes, a thumb; and a sock from its side."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures import yarns
from walewright.figures.pens import Paper, path
from walewright.figures.trims import Trim, finish, lay, rule, shade_of
from walewright.figures.tubes import Foot, MadeTube, Thumb, rounded
from walewright.figures.worked import Placement

ROUND = 0.16
"""How far the middle of a tube's rim lies below its sides, as a share of half its width."""

RIBS, WALES = 1.6, 3.4
"""Between ribs and between the wales that are drawn, mm, in the middle of a tube."""

LEAN = 24.0
"""Degrees that a thumb leans."""

CURVE = 20
"""Points of half a curve."""


def box(made: MadeTube) -> tuple[float, float, float, float]:
    """(left, bottom, right, top) of the drawing in cm; the start's middle is (0, 0), of a sock its top's."""
    if made.foot is not None:
        foot = made.foot
        half = foot.thick / 2
        return -half, -foot.leg - foot.thick, foot.length - half, made.edging[0]
    widest = max(made.widest, made.edging[1])
    low = -made.edging[0] - ROUND * max(made.edging[1], made.profile[0][1])
    high = rounded(made)[-1][0] + made.band + (0.0 if made.closed else ROUND * made.profile[-1][1])
    left, right = -widest, widest
    if made.thumb is not None:
        out = max(abs(x) for x, _ in _thumb_shape(made, made.thumb))
        left, right = min(left, -out), max(right, out)
    return left, low, right, high


def draw_tube(paper: Paper, design: Design, made: MadeTube, place: Placement, scale: float) -> None:
    """The tube, where `place` puts it, at `scale` mm a cm."""
    if made.foot is not None:
        _sock(paper, design, made, made.foot, place, scale)
        return
    line = rounded(made)
    if not made.closed:
        _opening(paper, line[-1][0] + made.band, line[-1][1], place)
    if made.edging[0]:
        _edging(paper, made.trim, (-made.edging[0], made.edging[1]), (0.0, line[0][1]), place, scale)
    _body(paper, design, made, line, place, scale)
    if made.band:
        _edging(paper, made.band_trim, line[-1], (line[-1][0] + made.band, line[-1][1]), place, scale, up=True)
    if made.thumb is not None:
        shape = [place(p) for p in _thumb_shape(made, made.thumb)]
        shade = shade_of(design, design.fabric(made.piece.piece.fabric))
        paper.draw("fill" if shade else "blank", path(shape, closed=True), colour=shade)
        rule(paper, "wale", shade, *(path([place(p) for p in wale]) for wale in _thumb_wales(made, made.thumb, scale)))
        paper.draw("outline", path(shape))
        if not made.thumb.closed:
            paper.draw("inside", path([place(p) for p in _thumb_opening(made, made.thumb)], closed=True))


# ----------------------------------------------------------------- round about an axis


def _rim(height: float, half: float, share: float = 1.0) -> list[Point]:
    """The front half of a rim, from the left to the right, up to a `share` of its width."""
    angles = (math.pi * (n / CURVE / 2 - 0.5) for n in range(2 * CURVE + 1))
    return [(half * share * math.sin(a), height - ROUND * half * math.cos(a)) for a in angles]


def _between(lower: Point, upper: Point) -> list[Point]:
    """The front of a tube between two rims, each (height, half its width)."""
    return [*_rim(*lower), *reversed(_rim(*upper))]


def _opening(paper: Paper, height: float, half: float, place: Placement) -> None:
    back = [(x, 2 * height - y) for x, y in _rim(height, half)]
    paper.draw("inside", path([place(p) for p in (*_rim(height, half), *reversed(back))], closed=True))


def _edging(paper: Paper, trim: Trim, lower: Point, upper: Point, place: Placement, scale: float, up: bool = False) -> None:
    """An edging between two rims, each (height, half its width); its last edge is the lower one, or that which lies `up`."""
    lay(paper, trim.shade, path([place(p) for p in _between(lower, upper)], closed=True))
    inner, outer = ([place(p) for p in _rim(*rim)] for rim in ((lower, upper) if up else (upper, lower)))
    finish(paper, trim, inner, outer, (path([place(a), place(b)]) for a, b in _uprights([lower, upper], RIBS / scale)))


def _uprights(line: Sequence[Point], spacing: float, quarter: int = 0) -> Iterator[tuple[Point, ...]]:
    """Lines that rise on the front of a tube, nearer to each other towards its sides, as they are seen; about so far apart, or so
    many to a `quarter` of it."""
    widest = max(half for _, half in line)
    count = quarter or max(1, round(math.pi * widest / 2 / spacing))
    for n in range(1 - count, count):
        angle = n / count * math.pi / 2
        t, sink = math.sin(angle), math.cos(angle)
        seen = next((at for at, lean in enumerate(_leans(line)) if lean <= sink), 0)
        yield tuple((half * t, y - ROUND * half * sink) for y, half in line[seen:])


def _leans(line: Sequence[Point]) -> list[float]:
    """Of each stretch of a profile, how it leans out as it rises, where 1 is as steep as it is looked down upon: what leans out
    more is seen nowhere, and what leans out less nearer to its middle than the cosine of this."""
    return [max(ROUND * (b - a) / max(high - low, 1e-9), 0.0) for (low, a), (high, b) in pairwise(line)]


def _silhouette(line: Sequence[Point]) -> list[Point]:
    """The right half of a body's outline, from the middle of its foot up: on a cloth that leans out its outline lies before its
    sides, and hides where it hangs on."""
    made: list[Point] = []
    for ((low, a), (high, b)), lean in zip(pairwise(line), _leans(line), strict=True):
        if lean > 1 or high <= low:
            continue
        aside = math.sqrt(1 - lean**2)
        if not made:
            made += [(x, y) for x, y in _rim(low, a) if 0 <= x < a * aside]
        made += [(half * aside, y - ROUND * half * lean) for y, half in ((low, a), (high, b))]
    return [p for at, p in enumerate(made) if not at or p != made[at - 1]]


def _body(paper: Paper, design: Design, made: MadeTube, line: Sequence[Point], place: Placement, scale: float) -> None:
    right = _silhouette(line)
    top = [] if made.closed else list(reversed(_rim(*line[-1])))
    shape = [*right, *top, *((-x, y) for x, y in reversed(right))]
    shade = shade_of(design, design.fabric(made.piece.piece.fabric))
    lay(paper, shade, path([place(p) for p in shape], closed=True))
    striped = list(_stripes(design, made, line)) if made.upright else []
    for low, high, shade in striped:
        between = [low, *(p for p in line if low[0] < p[0] < high[0]), high]
        band = [*_rim(*low), *((h, y) for y, h in between), *reversed(_rim(*high)), *((-h, y) for y, h in reversed(between))]
        paper.draw("fill", path([place(p) for p in band], closed=True), colour=shade)
    below = [p for p in line if p[0] <= made.waist + 1e-6]
    if made.folds:
        folds = _uprights(below, RIBS / scale, quarter=max(1, round(made.folds / 4)))
        paper.draw("seam", *(path([place(p) for p in fold]) for fold in folds))
    elif not striped:
        rule(paper, "wale", shade, *(path([place(p) for p in wale]) for wale in _uprights(line, WALES / scale)))
    if below and made.waist:
        paper.draw("outline", path([place(p) for p in _rim(*below[-1])]))
    paper.draw("outline", path([place(p) for p in shape], closed=True))


def _stripes(design: Design, made: MadeTube, line: Sequence[Point]) -> Iterator[tuple[Point, Point, str]]:
    """(lower rim, upper rim, colour) of each stripe."""
    of = made.piece.of
    for layer in of.layers:
        row, turn = layer.low, 0
        while layer.fabric.stripes and row < layer.high:
            yarn, rows = layer.fabric.stripes[turn % len(layer.fabric.stripes)]
            low, high = of.height_cm(row), of.height_cm(min(row + rows, layer.high))
            yield (low, half_at(line, low)), (high, half_at(line, high)), yarns.colour(design, yarn)
            row, turn = row + rows, turn + 1


def half_at(line: Sequence[Point], height: float) -> float:
    """Half the width at a height."""
    for (y0, h0), (y1, h1) in pairwise(line):
        if y0 <= height <= y1:
            return h0 + (h1 - h0) * (height - y0) / max(y1 - y0, 1e-9)
    return line[-1][1]


def _thumb_shape(made: MadeTube, thumb: Thumb) -> list[Point]:
    """The thumb leaning outwards, its end round where it is closed."""
    round_ = min(thumb.half, thumb.length) if thumb.closed else 0.0
    tip = [
        (thumb.half * math.cos(math.pi * n / 12), thumb.length - round_ + round_ * math.sin(math.pi * n / 12)) for n in range(13)
    ]
    flat = [
        (thumb.half, 0.0),
        *(tip if thumb.closed else [(thumb.half, thumb.length), (-thumb.half, thumb.length)]),
        (-thumb.half, 0.0),
    ]
    return _leaning(made, thumb, flat)


def _thumb_wales(made: MadeTube, thumb: Thumb, scale: float) -> Iterator[list[Point]]:
    """Up the thumb, nearer to each other at its sides."""
    count = max(2, round(math.pi * thumb.half / 2 / (WALES / scale)))
    for n in range(1 - count, count):
        x, end = thumb.half * math.sin(n / count * math.pi / 2), thumb.length - (thumb.half if thumb.closed else 0.0)
        yield _leaning(made, thumb, [(x, 0.0), (x, max(end, 0.0))])


def _thumb_opening(made: MadeTube, thumb: Thumb) -> list[Point]:
    """The end of a thumb that is not closed, seen a little from above as the tube's own is."""
    angles = [math.pi * n / CURVE for n in range(2 * CURVE)]
    return _leaning(made, thumb, [(thumb.half * math.cos(a), thumb.length + ROUND * thumb.half * math.sin(a)) for a in angles])


def _leaning(made: MadeTube, thumb: Thumb, points: Sequence[Point]) -> list[Point]:
    """Points of a thumb, from the middle of its base, where they lie."""
    half = half_at(rounded(made), thumb.height)
    way = 1 if thumb.across >= 0 else -1
    base = (thumb.across * max(half - thumb.half, 0.0), thumb.height)
    c, s = math.cos(math.radians(LEAN)), math.sin(math.radians(LEAN))
    return [(base[0] + x * c + way * y * s, base[1] + y * c - way * x * s) for x, y in points]


# ----------------------------------------------------------------- a sock


def _sock(paper: Paper, design: Design, made: MadeTube, foot: Foot, place: Placement, scale: float) -> None:
    """From its side: the leg down, the heel round, the foot to the right. The middle of its top is (0, 0)."""
    half = foot.thick / 2
    ankle, sole, tip = -foot.leg, -foot.leg - foot.thick, foot.length - half
    heel = _quarter((-half + half, ankle - half), half, half, 180, 270)
    toe = _quarter((tip - half, ankle - half), half, half, 270, 450)
    instep = _quarter((half + half * 0.5, ankle + half * 0.5), half * 0.5, half * 0.5, 270, 180)
    shape = [(-half, 0.0), (-half, ankle - half), *heel, *toe, *instep, (half, 0.0)]
    if made.edging[0]:
        upper, lower = ((-made.edging[1], made.edging[0]), (made.edging[1], made.edging[0])), ((-half, 0.0), (half, 0.0))
        lay(paper, made.trim.shade, path([place(p) for p in (*lower, *reversed(upper))], closed=True))
        count = max(2, round(foot.thick * scale / RIBS))
        shares = [n / count for n in range(1, count)]
        ribs = ([(a + (b - a) * t, y) for (a, y), (b, _) in (lower, upper)] for t in shares)
        inner, outer = ([place(p) for p in line] for line in (lower, upper))
        finish(paper, made.trim, inner, outer, (path([place(p) for p in rib]) for rib in ribs))
    shade = shade_of(design, design.fabric(made.piece.piece.fabric))
    lay(paper, shade, path([place(p) for p in shape], closed=True))
    rule(paper, "wale", shade, *(path([place(p) for p in wale]) for wale in _sock_wales(foot, scale)))
    # Where the rows turn back: from the ankle to the heel's corner, and round the toe.
    paper.draw("dart", path([place(p) for p in ((0.0, ankle - half), (-half * 0.72, sole + half * 0.28))]))
    paper.draw("dart", path([place(p) for p in ((0.0, ankle - half), (-half, ankle + half * 0.1))]))
    if foot.turned_toe:
        paper.draw("dart", path([place(p) for p in ((tip - half, sole), (tip - half * 0.9, ankle - half), (tip - half, ankle))]))
    paper.draw("outline", path([place(p) for p in shape], closed=True))


def _sock_wales(foot: Foot, scale: float) -> Iterator[list[Point]]:
    """Wales down the leg and along the foot, round the front of the ankle."""
    half = foot.thick / 2
    ankle, tip = -foot.leg, foot.length - half
    count = max(2, round(foot.thick * scale / WALES))
    for n in range(1, count):
        t = n / count
        x = half - foot.thick * t
        if t < 0.5:
            r = half * 0.5 + foot.thick * t
            bend = _quarter((half * 1.5, ankle + half * 0.5), r, r, 180, 270)
            yield [(x, 0.0), *bend, (tip - half, ankle - foot.thick * t)]
        else:
            yield [(x, 0.0), (x, ankle + half * 0.1 - (1 - t) * half * 1.2)]
            yield [(0.0 - (t - 0.5) * half, ankle - foot.thick * t), (tip - half, ankle - foot.thick * t)]


def _quarter(middle: Point, across: float, up: float, begin: float, end: float) -> list[Point]:
    """Points of an ellipse from one angle to another, degrees."""
    count = max(2, round(abs(end - begin) / 9))
    angles = (math.radians(begin + (end - begin) * n / count) for n in range(count + 1))
    return [(middle[0] + across * math.cos(a), middle[1] + up * math.sin(a)) for a in angles]
