"""What a garment's drawing shows of its fabrics: panels and motifs as quiet areas, stripes in the colours of their yarns."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator, Sequence

from walewright.counted.outline import Point
from walewright.design.model import Design
from walewright.figures import yarns
from walewright.figures.measures import LaidPiece
from walewright.figures.pens import Paper, path
from walewright.figures.trims import shade_of

Placement = Callable[[Point], Point]

WorkedStripe = tuple[tuple[Point, ...], str]
"""(corners in cm on the piece, "#rrggbb")."""


def mirrored(design: Design, piece: LaidPiece) -> bool:
    """Whether its right side is seen from behind the bed, so that left and right are exchanged."""
    return design.fabric(piece.piece.fabric).right_side == "knit"


def show_panels(paper: Paper, design: Design, piece: LaidPiece, put: Placement) -> None:
    """Other fabrics over a part of the width: tinted, with lines up their sides."""
    of, shape = piece.of, piece.shape
    for panel in of.panels:
        y0, y1 = of.height_cm(panel.low), of.height_cm(panel.high)
        x0, x1 = of.point(panel.first, panel.high)[0], of.point(panel.last + 1, panel.high)[0]
        area = clipped(clipped(shape.polygon, 1, y0, y1), 0, x0, x1)
        if area:
            shade = shade_of(design, panel.fabric)
            paper.draw("fill" if shade else "tint", path([put(p) for p in area], closed=True), colour=shade)
            sides = [[(x, y0), (x, min(y1, _ceiling(shape.polygon, x, y0)))] for x in (x0, x1)]
            paper.draw("hatch", *(path([put(p) for p in side]) for side in sides))


def show_motifs(paper: Paper, design: Design, piece: LaidPiece, put: Placement) -> None:
    """Motifs: those in colours with their cells; others as a tinted box. Where and which way round they lie is `put`'s to say."""
    of = piece.of
    for motif in (c for c in of.sized.charts if not c.fabric):
        chart = design.chart(motif.chart)
        cells = {key.symbol: key.cell for key in chart.key}

        def box(first: int, end: int, low: int, high: int) -> str:
            spots = [(first, low), (end, low), (end, high), (first, high)]
            return path([put(of.point(*spot)) for spot in spots], closed=True)

        if not chart.yarns:
            paper.draw("tint", box(motif.first, motif.last + 1, motif.from_row, motif.to_row))
        drawn: dict[str, list[str]] = {}
        for row, line in enumerate(chart.rows):
            start = motif.first
            for symbol, run in itertools.groupby(line):
                end, low = start + len(list(run)), motif.from_row + row
                if cells[symbol].yarn:
                    shade = yarns.colour(design, cells[symbol].yarn)
                    drawn.setdefault(shade, []).append(box(start, end, low, low + 1))
                start = end
        for shade, boxes in drawn.items():
            paper.draw("fill", *boxes, colour=shade)


def stripes(design: Design, piece: LaidPiece, shape: Sequence[Point]) -> Iterator[WorkedStripe]:
    """The stripes of fabrics over the whole width, as far as they lie within `shape` (cm on the piece)."""
    of = piece.of
    for layer in of.layers:
        row, turn, stripes = layer.low, 0, layer.fabric.stripes
        shade = shade_of(design, layer.fabric)
        if not stripes and layer.zone is not None and shade and shade != shade_of(design, design.fabric(piece.piece.fabric)):
            stripes = ((layer.fabric.yarn, layer.high - layer.low),)
        while stripes and row < layer.high:
            yarn, rows = stripes[turn % len(stripes)]
            area = clipped(shape, 1, of.height_cm(row), of.height_cm(min(row + rows, layer.high)))
            if area:
                yield tuple(area), yarns.colour(design, yarn)
            row, turn = row + rows, turn + 1


def show_stripes(paper: Paper, found: Sequence[WorkedStripe], put: Placement) -> None:
    """Stripes in their colours, a path a yarn."""
    by_yarn: dict[str, list[str]] = {}
    for area, shade in found:
        by_yarn.setdefault(shade, []).append(path([put(p) for p in area], closed=True))
    for shade, drawn in by_yarn.items():
        paper.draw("fill", *drawn, colour=shade)


def clipped(shape: Sequence[Point], axis: int, low: float, high: float) -> list[Point]:
    """The part of a polygon between two lines across `axis` (0: x, 1: y), to be filled; parts that fall apart hang together by
    lines along the cuts. Sutherland and Hodgman's way, one line after the other (Reentrant polygon clipping, 1974)."""
    found = list(shape)
    for limit, sign in ((low, 1), (high, -1)):
        made: list[Point] = []
        for a, b in itertools.pairwise([*found, *found[:1]]):
            inside, next_inside = sign * (a[axis] - limit) >= 0, sign * (b[axis] - limit) >= 0
            if inside:
                made.append(a)
            if inside != next_inside:
                t = (limit - a[axis]) / (b[axis] - a[axis])
                made.append((a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t))
        found = made
    return found if len(found) > 2 else []


def _ceiling(shape: Sequence[Point], x: float, above: float) -> float:
    """Where a line up from (x, above) first meets the outline."""
    met = [
        a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0])
        for a, b in itertools.pairwise([*shape, *shape[:1]])
        if a[0] != b[0] and min(a[0], b[0]) <= x <= max(a[0], b[0])
    ]
    return min((y for y in met if y > above + 1e-6), default=above)
