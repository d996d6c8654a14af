"""Charted fabrics on a garment's drawing: their repeat laid again and again where they are worked. Colours are those of the yarns,
a lace shows its holes, a cable its crossings with the front strand whole, anything else a short stroke where it is worked."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedChart
from walewright.counted.outline import Point
from walewright.design.model import Chart, Design
from walewright.figures import yarns
from walewright.figures.measures import LaidPiece
from walewright.figures.model import Tile
from walewright.figures.pens import Paper, path
from walewright.figures.trims import shade_of
from walewright.figures.worked import Placement, clipped

HOLE, LINE = 0.34, 0.2
"""Across a hole, and of the lines of a cable, mm at least."""

WORKED = ("purl", "tuck", "slip", "long", "ladder")
"""Kinds of cells shown by a stroke."""

Stretch = tuple[float, float, float, float]
"""From (x, y) to (x, y), in cells right of and above the lower left corner of the repeat."""


def show_charted(paper: Paper, design: Design, piece: LaidPiece, put: Placement) -> None:
    """The charted fabrics of a piece that lies upright, turned round or not."""
    of = piece.of
    for number, worked in enumerate(c for c in of.sized.charts if c.fabric):
        area = _area(piece, worked)
        if not area:
            continue
        chart, shade = design.chart(worked.chart), shade_of(design, design.fabric(worked.fabric))
        if worked.area == "whole":
            # No wale of the cloth about it goes through it.
            paper.draw("fill" if shade else "blank", path([put(p) for p in area], closed=True), colour=shade)
        a, b = put(of.point(worked.first, worked.from_row, above=True)), put(of.point(worked.first + 1, worked.from_row + 1))
        cell = (b[0] - a[0], a[1] - b[1])
        outline = path([put(p) for p in area], closed=True)
        for at, (ink, pen, lines) in enumerate(_layers(design, chart, cell)):
            name = f"worn-{piece.name}-{number}-{at}"
            paper.tiled(_tile(name, chart, lines=lines, origin=a, cell=cell, colour=ink, pen=pen), outline)


def _area(piece: LaidPiece, worked: SizedChart) -> list[Point]:
    of, shape = piece.of, piece.shape
    area = clipped(shape.polygon, 1, of.height_cm(worked.from_row), of.height_cm(worked.to_row))
    if worked.area != "panel":
        return area
    x0, x1 = (of.point(slot, worked.to_row)[0] for slot in (worked.first, worked.last + 1))
    return clipped(area, 0, x0, x1)


def _columns(chart: Chart) -> tuple[int, int]:
    """The first column of what is repeated, and how many columns it has."""
    return (chart.before, chart.repeat) if chart.repeat else (0, chart.width)


def _layers(design: Design, chart: Chart, cell: tuple[float, float]) -> Iterator[tuple[str, float, list[Stretch]]]:
    """(colour or its name in a theme, width of the pen in mm, strokes) of what is drawn."""
    first, wide = _columns(chart)
    cells = [(x, y, chart.cell(y, first + x)) for y in range(len(chart.rows)) for x in range(wide)]
    for yarn in chart.yarns:
        own = [(float(x), y + 0.5, x + 1.0, y + 0.5) for x, y, c in cells if c.yarn == yarn]
        yield yarns.colour(design, yarn), cell[1] * 1.05, own
    size = min(abs(cell[0]), cell[1])
    holes = [(x + 0.5, y + 0.4, x + 0.5, y + 0.6) for x, y, c in cells if c.kind == "hole"]
    if holes:
        yield "ink", max(HOLE, size * 0.5), holes
    crossed = [
        s for x, y, c in cells if c.kind == "cross" and _begins(chart, first, x, y) for s in _crossing(x, y, c.cross, c.hung_first)
    ]
    if crossed:
        yield "ink", LINE, crossed
    other = [(x + 0.15, y + 0.5, x + 0.85, y + 0.5) for x, y, c in cells if c.kind in WORKED]
    if other:
        yield "hatch", max(LINE, size * 0.25), other


def _begins(chart: Chart, first: int, x: int, y: int) -> bool:
    """Whether a crossing begins in that cell: those at its left are as many as whole crossings have."""
    run = 0
    while x - run > 0 and chart.cell(y, first + x - run - 1) == chart.cell(y, first + x):
        run += 1
    return run % (2 * chart.cell(y, first + x).cross) == 0


def _crossing(x: int, y: int, count: int, in_front: str) -> Iterator[Stretch]:
    """The strand in front whole, the one behind in two parts."""
    wide, low, high = 2.0 * count, y + 0.5 - count, y + 0.5 + count
    rising, falling = (x, low, x + wide, high), (x, high, x + wide, low)
    front, back = (rising, falling) if in_front == "left" else (falling, rising)
    yield front
    for begin, end in ((0.0, 0.36), (0.64, 1.0)):
        (x0, y0, x1, y1) = back
        yield x0 + (x1 - x0) * begin, y0 + (y1 - y0) * begin, x0 + (x1 - x0) * end, y0 + (y1 - y0) * end


def _tile(name: str, chart: Chart, lines: list[Stretch], origin: Point, cell: tuple[float, float], colour: str, pen: float) -> Tile:
    """The repeat as a tile laid from (0, 0) of the paper, so that it comes to lie at `origin`."""
    wide, high = _columns(chart)[1] * abs(cell[0]), len(chart.rows) * cell[1]
    drawn: list[str] = []
    for x0, y0, x1, y1 in lines:
        a = (origin[0] + x0 * cell[0], origin[1] - y0 * cell[1])
        b = (origin[0] + x1 * cell[0], origin[1] - y1 * cell[1])
        left, top = min(a[0], b[0]), min(a[1], b[1])
        by = left % wide - left, top % high - top
        # What goes over an edge of the tile comes in at the opposite one.
        for dx in (0.0, -wide):
            for dy in (0.0, -high):
                if max(a[0], b[0]) + by[0] + dx > -pen and max(a[1], b[1]) + by[1] + dy > -pen:
                    drawn.append(path([(a[0] + by[0] + dx, a[1] + by[1] + dy), (b[0] + by[0] + dx, b[1] + by[1] + dy)]))
    return Tile(name, round(wide, 4), round(high, 4), "".join(drawn), colour, round(pen, 3))
