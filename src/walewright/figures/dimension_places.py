"""Where each dimension of a schematic stands: across the piece, beneath it, beside it, in its neck."""

from __future__ import annotations

from collections.abc import Callable

from walewright.counted.outline import Point, between_tops
from walewright.figures.dimensions import LANE, Box, box_round, lanes
from walewright.figures.marks import Bench
from walewright.figures.measures import DrawnMeasure, LaidPiece

LETTER_STEP, FIGURE_STEP = 5.0, 6.0
"""From one lane to the next, mm."""


def _step(bench: Bench) -> float:
    return LETTER_STEP if bench.ruler.kind == "letter" else FIGURE_STEP


def _start(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape = bench.piece.shape
    x0, x1 = bench.at(shape.left[0])[0], bench.at(shape.right[0])[0]
    bench.ruler.across(x0, x1, lanes(bench.foot + LANE - 1, _step(bench)), label, (bench.foot, bench.foot))


def _across(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape, height = bench.piece.shape, bench.piece.height(measure.at[0])
    (x0, y), (x1, _) = bench.at((shape.edge_x(height, "left"), height)), bench.at((shape.edge_x(height, "right"), height))
    if y - bench.top < 1:
        # Beneath a neck the piece may be wider.
        bench.ruler.across(x0, x1, lanes(bench.top - LANE + 1, -_step(bench)), label, (y, y))
        return
    below, above = lanes(bench.foot + LANE - 1, _step(bench)), lanes(bench.top - LANE + 1, -_step(bench))
    near = [y + d for d in (0.0, 2.5, -2.5, 5.0, -5.0, 8.0) if bench.top + 1 < y + d < bench.foot]
    if not bench.ruler.has_room(x0, x1, label):
        # Figures wider than the piece would lie across its edges.
        near = []
    bench.ruler.across(x0, x1, (*near, *(above if y - bench.top < bench.foot - y else below)), label, (y, y))


def _rise(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    y0, y1 = (bench.at((0, bench.piece.height(name)))[1] for name in measure.at)
    _up_right(bench, y0, y1, label)


def _edging(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    _up_right(bench, bench.foot, 0.0, label)


def _end_edging(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    _up_right(bench, bench.at((0.0, bench.piece.shape.height))[1], bench.top, label)


def _up_right(bench: Bench, y0: float, y1: float, label: tuple[str, ...]) -> None:
    shape = bench.piece.shape
    x = bench.ruler.up(lanes(bench.right + LANE, _step(bench)), y0, y1, label, +1)
    for y in (y0, y1):
        # Hairlines lead from the piece's edge to the line; those of the edging from its own.
        edge = shape.edge_x(max(0.0, -y / bench.scale), "right") * bench.scale
        bench.ruler.guide((edge + 0.8, y), (x + 1.6, y))


def _whole(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    bracket = 5.0 if bench.piece.sized.repeats else 0.0
    bench.ruler.up(lanes(bench.left - LANE - bracket, -_step(bench)), bench.foot, bench.top, label, -1)


def _at_top(piece: LaidPiece, name: str) -> tuple[Point, ...]:
    """The edge of an opening that goes to the top."""
    return next(gap.edge for gap in piece.shape.tops if gap.name == name)


def _neck_width(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    neck = _at_top(bench.piece, measure.at[0])
    x0, x1 = bench.at(neck[0])[0], bench.at(neck[-1])[0]
    bench.ruler.across(x0, x1, lanes(bench.top - LANE + 1, -_step(bench)), label, (bench.top, bench.top))


def _neck_depth(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    beside = bench.beside if measure.place == "other depth" else None
    neck = _at_top(beside or bench.piece, measure.at[0])
    bottom = min(y for _, y in neck)
    x0, x1 = min(x for x, y in neck if y <= bottom + 0.05), max(x for x, y in neck if y <= bottom + 0.05)
    x, y = bench.at(((x0 + x1) / 2, bottom))
    places = (x, x + 3, x - 3, x + 6, x - 6, *lanes(bench.right + LANE, _step(bench)))
    text = (" · ".join(label),)
    beneath = ((x, y + d, "middle") for d in (4.0, 7.0, 10.0))
    if bench.ruler.kind == "figure" and bench.ruler.write_free(beneath, text, "figure", clear=True):
        # Figures are wider than most necks are: they stand beneath.
        label = ()
    bench.ruler.up(places, y, bench.top, label, +1)


def _shoulder(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape = bench.piece.shape
    outer = {"left": shape.shoulder_left, "right": shape.shoulder_right}
    line = outer.get(measure.at[0]) or between_tops(shape, int(measure.at[0]))
    xs = sorted(bench.at(p)[0] for p in (line[0], line[-1]))
    bench.ruler.across(xs[0], xs[1], lanes(bench.top - LANE + 1, -_step(bench)), label, (bench.top, bench.top))


def _gap_box(bench: Bench, name: str) -> Box:
    gap = next(g for g in bench.piece.shape.gaps if g.name == name)
    return box_round([bench.at(p) for p in gap.edge])


def _gap_width(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    x0, top, x1, bottom = _gap_box(bench, measure.at[0])
    inside = [top + (bottom - top) * t for t in (0.35, 0.5, 0.2, 0.7)] if bottom - top > 5 else []
    bench.ruler.across(x0, x1, (*inside, top - 2.4, top - 5, bottom + 2.4, bottom + 5), label, (top, top))


def _gap_height(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    x0, top, x1, bottom = _gap_box(bench, measure.at[0])
    places = (x0 + (x1 - x0) * t for t in (0.5, 0.25, 0.75)) if x1 - x0 > 8 else iter(())
    bench.ruler.up((*places, x1 + 2.4, *lanes(bench.right + LANE, _step(bench))), bottom, top, label, +1)


def _dart(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    dart = bench.piece.shape.darts[int(measure.at[0])]
    points = [bench.at(p) for p in dart.lines]
    x0, top, x1, bottom = box_round(points)
    bench.ruler.across(x0, x1, [v for d in (2.2, 4.5, 7.0, 10.0) for v in (top - d, bottom + d)], label, None)


def _worn(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    """In the middle of what is folded, as wide as it is then."""
    low, high = (bench.piece.height(level) for level in measure.at)
    half = bench.within.of(measure.values) / 2
    shape = bench.piece.shape
    middle = (shape.edge_x((low + high) / 2, "left") + shape.edge_x((low + high) / 2, "right")) / 2
    (x0, y), (x1, _) = (bench.at((middle + x, (low + high) / 2)) for x in (-half, half))
    bench.ruler.across(x0, x1, [y + d for d in (0.0, 5.0, -5.0, 10.0, -10.0)], label, None)


_Place = Callable[[Bench, DrawnMeasure, tuple[str, ...]], None]

PLACES: dict[str, _Place] = {
    "start": _start,
    "across": _across,
    "rise": _rise,
    "edging": _edging,
    "ending": _end_edging,
    "whole": _whole,
    "neck width": _neck_width,
    "neck depth": _neck_depth,
    "other depth": _neck_depth,
    "shoulder": _shoulder,
    "gap width": _gap_width,
    "gap height": _gap_height,
    "dart": _dart,
    "worn": _worn,
}

ORDER = (
    "gap width",
    "gap height",
    "dart",
    "worn",
    "neck depth",
    "other depth",
    "start",
    "neck width",
    "shoulder",
    "across",
    "edging",
    "ending",
    "rise",
    "whole",
)
"""What has few places to stand goes first."""
