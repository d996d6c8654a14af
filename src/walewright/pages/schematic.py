"""The measured schematic of one piece: its outline with dimension lines, lettered for a legend or carrying the figures."""

from __future__ import annotations

from dataclasses import dataclass

from walewright.pages.figures import cm, graded, inches
from walewright.pages.measures import Measure, MeasuredPiece
from walewright.pages.model import Cell, Drawing, Row, RowGroup, SizeTable
from walewright.pages.outline import Point
from walewright.pages.pens import LETTER_MM, Paper, hatched, path, stitches

LEGIBLE_SIZES = 3
"""With more sizes than this the figures go into a legend and the drawing carries letters."""

BOX = (84.0, 62.0)
"""Largest outline, mm of paper."""

LANE = 6.5
"""From the outline to a dimension line, mm."""

MARGIN = 12.0
"""Room for dimension lines and their figures on each side, mm."""

RIB = 1.7
"""Between a band's rib lines, mm."""


def fitting_scale(pieces: tuple[MeasuredPiece, ...], size: int) -> float:
    """mm of paper a cm at which the largest piece fits: all schematics share it, so that they can be compared."""
    return min(min(BOX[0] / _extent(p, size)[0], BOX[1] / _extent(p, size)[1]) for p in pieces)


def _extent(piece: MeasuredPiece, size: int) -> Point:
    shape = piece.outlines[size]
    return max(shape.width, 1.0), max(shape.height + piece.edging_cm[size], 1.0)


def drawing(piece: MeasuredPiece, sizes: tuple[str, ...], size: int, units: str, shared_scale: float) -> Drawing:
    """The schematic, its outline that of size number `size`. A piece that would be tiny at the shared scale is drawn up to
    twice as large."""
    width, height = _extent(piece, size)
    scale = min(BOX[0] / width, BOX[1] / height, shared_scale * 2)
    labels = _labels(piece, sizes, units)
    if lettered(sizes, units):
        kind, right, above = "letter", MARGIN, MARGIN
    else:
        # Figures stand beside the upright lines, and those of the shoulder in a lane of their own above the neck's.
        beside = [len(text) for text, m in zip(labels, piece.measures, strict=True) if m.place in ("rise", "edging")]
        kind, right, above = "figure", LANE + 3 + max(beside, default=0) * LETTER_MM, MARGIN + LANE
    middle = MARGIN - piece.outlines[size].polygon_left * scale
    bench = _Bench(piece, size, scale, middle, above + piece.outlines[size].height * scale, kind, Paper())
    _cloth(bench)
    for label, measure in zip(labels, piece.measures, strict=True):
        _dimension(bench, measure, label)
    title = f"Schematic of the {piece.piece.name}: " + "; ".join(
        f"{m.label.lower()} {graded([cm(v) for v in m.values])} cm" for m in piece.measures
    )
    return bench.paper.finished(title, MARGIN + width * scale + right, above + height * scale + MARGIN)


def lettered(sizes: tuple[str, ...], units: str) -> bool:
    """Whether the schematics carry letters and a legend stands beneath."""
    return len(sizes) > (1 if units == "both" else LEGIBLE_SIZES)


def legend(piece: MeasuredPiece, sizes: tuple[str, ...], units: str) -> SizeTable | None:
    """The figures of the letters, or None where the drawing carries them itself."""
    if not lettered(sizes, units):
        return None
    rows = tuple(
        Row(m.label, tuple(_cell(v, units) for v in m.values), key=key)
        for key, m in zip(_labels(piece, sizes, units), piece.measures, strict=True)
    )
    unit = {"cm": "centimetres", "in": "inches", "both": "centimetres, with inches in small type"}[units]
    return SizeTable(f"Measurements of the {piece.piece.name} in {unit}", sizes, (RowGroup("", rows),))


def _cell(value: float, units: str) -> Cell:
    if units == "in":
        return Cell(inches(value))
    return Cell(cm(value), inches(value) if units == "both" else "")


def _labels(piece: MeasuredPiece, sizes: tuple[str, ...], units: str) -> tuple[str, ...]:
    if lettered(sizes, units):
        return tuple(chr(ord("A") + i) for i in range(len(piece.measures)))
    texts = []
    for measure in piece.measures:
        in_cm = graded([cm(v) for v in measure.values])
        in_inches = graded([inches(v) for v in measure.values])
        texts.append({"cm": in_cm, "in": in_inches, "both": f"{in_cm} cm · {in_inches} in"}[units])
    return tuple(texts)


@dataclass(frozen=True, slots=True)
class _Bench:
    """The piece laid on paper: its origin (middle of the start) at (`x`, `y`) mm."""

    piece: MeasuredPiece
    size: int
    scale: float
    x: float
    y: float
    kind: str
    """Of the dimensions' lettering: letter | figure."""
    paper: Paper

    def at(self, point: Point) -> Point:
        return self.x + point[0] * self.scale, self.y - point[1] * self.scale


def _cloth(bench: _Bench) -> None:
    shape = bench.piece.outlines[bench.size]
    depth = bench.piece.edging_cm[bench.size]
    paper = bench.paper
    if depth:
        half = bench.piece.edging_widths[bench.size] / 2
        upper = bench.at(shape.left[0]), bench.at(shape.right[0])
        lower = bench.at((-half, -depth)), bench.at((half, -depth))
        paper.draw("hatch", *hatched(upper, lower, RIB))
        paper.draw("outline", path([upper[0], lower[0], lower[1], upper[1]]))
    paper.draw("outline", path([bench.at(p) for p in shape.polygon], closed=True))
    _way_of_knitting(bench)


def _way_of_knitting(bench: _Bench) -> None:
    """Stitches and an arrow: which way the piece grows on the bed."""
    height = bench.piece.outlines[bench.size].height * bench.scale
    if height < 26:
        return
    x, y = bench.x, bench.y - 5
    bench.paper.draw("texture", *stitches(x, y - 6.5, (3, 5, 7), 2.0))
    bench.paper.draw("measure", path([(x, y - 9), (x, y - 16)]), path([(x - 1.2, y - 14.2), (x, y - 16), (x + 1.2, y - 14.2)]))
    bench.paper.letter(x + 2, y - 11.4, "knitted this way", anchor="start", kind="word")


def _dimension(bench: _Bench, measure: Measure, text: str) -> None:
    shape, size, paper, kind = bench.piece.outlines[bench.size], bench.size, bench.paper, bench.kind
    left, right = bench.x + min(p[0] for p in shape.polygon) * bench.scale, bench.x + max(p[0] for p in shape.polygon) * bench.scale
    top = bench.y - shape.height * bench.scale
    foot = bench.y + bench.piece.edging_cm[size] * bench.scale
    if measure.place == "start":
        x0, x1 = bench.at(shape.left[0])[0], bench.at(shape.right[0])[0]
        paper.across(x0, x1, foot + LANE - 1, text, kind)
    elif measure.place == "across":
        height = bench.piece.height(size, measure.at[0])
        x0, y = bench.at((-shape.half_width(height, "left"), height))
        x1, _ = bench.at((shape.half_width(height, "right"), height))
        if y - top < 1 and not shape.neck:
            paper.across(x0, x1, top - LANE + 1, text, kind)
        else:
            paper.across(x0, x1, y, text, kind)
    elif measure.place == "rise":
        y0, y1 = (bench.at((0, bench.piece.height(size, name)))[1] for name in measure.at)
        _guides(bench, right + LANE, y0, y1)
        paper.up(right + LANE, y0, y1, text, kind, +1)
    elif measure.place == "edging":
        _guides(bench, right + LANE, foot, bench.y)
        paper.up(right + LANE, foot, bench.y, text, kind, +1)
    elif measure.place == "whole":
        paper.up(left - LANE, foot, top, text, kind, -1)
    elif measure.place == "neck width":
        paper.across(bench.at(shape.neck[0])[0], bench.at(shape.neck[-1])[0], top - LANE + 1, text, kind)
    elif measure.place == "neck depth":
        bottom = bench.y - (shape.height - measure.values[size]) * bench.scale
        paper.up(bench.x, bottom, top, text if kind == "letter" else "", kind, +1)
        if kind == "figure":
            paper.letter(bench.x, bottom + 4, text)
    elif measure.place == "shoulder":
        xs = sorted(bench.at(p)[0] for p in (shape.shoulder_left[0], shape.shoulder_left[-1]))
        lane = LANE - 1 if kind == "letter" else 2 * LANE - 1
        paper.across(xs[0], xs[1], top - lane, text, kind)


def _guides(bench: _Bench, x: float, *heights: float) -> None:
    """Hairlines that lead from the piece's edge to a dimension line."""
    shape = bench.piece.outlines[bench.size]
    for y in heights:
        above = max(0.0, (bench.y - y) / bench.scale)
        edge = bench.x + shape.half_width(min(above, shape.height), "right") * bench.scale
        if above > shape.right[-1][1]:
            edge = bench.x + abs(shape.shoulder_right[-1][0]) * bench.scale
        bench.paper.draw("guide", path([(edge + 0.8, y), (x + 1.6, y)]))
