"""The measured schematic of one piece: its outline with dimension lines, lettered for a legend or carrying the figures."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from itertools import pairwise

from walewright.counted.outline import Point, between_tops
from walewright.design.model import Fabric
from walewright.figures.dimensions import LANE, Box, Ruler, box_round, lanes
from walewright.figures.hung import edges_named, first_row
from walewright.figures.marks import Bench, cloth, words
from walewright.figures.measures import DrawnMeasure, MeasuredPiece, name_of
from walewright.figures.model import Drawing, LetteringKind
from walewright.figures.pens import Paper
from walewright.figures.trims import NO_TRIMS, Trim
from walewright.guide.model import Guide
from walewright.guide.numbers import inches

BOX = (84.0, 52.0)
"""Largest outline, mm of paper."""

LEAST = 34.0
"""A piece is drawn at least so long one way, mm: its figures need the room."""

WIDEST = 83.0
"""mm of the whole drawing. It is printed 66 mm wide at most, so that its figures are 6.5 pt high at least."""

FIGURED = 0.75
"""A piece that carries figures is made no smaller than that for them."""

ROUNDS = 4
"""In which the width is found."""

CROWDED = 12
"""Measures. A drawing with more of them carries letters even of one size."""

LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"

EDGE = 1.0
"""Round the whole drawing, mm."""

LETTER_STEP, FIGURE_STEP = 5.0, 6.0
"""From one lane to the next, mm."""


def fitting_scale(pieces: tuple[MeasuredPiece, ...], size: int) -> float:
    """mm of paper a cm at which the largest piece fits: all schematics share it, so that they can be compared."""
    return min(min(BOX[0] / _extent(p, size)[0], BOX[1] / _extent(p, size)[1]) for p in pieces)


def _extent(piece: MeasuredPiece, size: int) -> tuple[float, float]:
    shape = piece.outlines[size]
    return max(shape.width, 1.0), max(piece.full_height(size), 1.0)


def drawing(
    guide: Guide,
    piece: MeasuredPiece,
    sizes: tuple[str, ...],
    size: int,
    units: str,
    shared_scale: float,
    fabrics: tuple[Fabric, ...] = (),
    trims: Mapping[str, Trim] = NO_TRIMS,
) -> Drawing:
    """The schematic, its outline that of size number `size`. A piece that would be tiny at the shared scale is drawn up to
    twice as large, or as large as its lettering needs."""
    width, height = _extent(piece, size)
    scale = min(BOX[0] / width, BOX[1] / height, max(shared_scale * 2, LEAST / max(width, height)))
    # Figures need room on the piece as well.
    least = LEAST / 2 if lettered(piece, sizes) else FIGURED * width * scale
    for _ in range(ROUNDS):
        made = _drawn(guide, piece, sizes, size, units, scale, fabrics, trims)
        # Lettering beside the piece keeps its size: the piece gives way.
        over = (made.width - WIDEST) * 1.03
        if over <= 0 or width * scale - over < least:
            break
        scale *= 1 - over / (width * scale)
    return made


def _drawn(
    guide: Guide,
    piece: MeasuredPiece,
    sizes: tuple[str, ...],
    size: int,
    units: str,
    scale: float,
    fabrics: tuple[Fabric, ...],
    trims: Mapping[str, Trim],
) -> Drawing:
    paper = Paper()
    kind: LetteringKind = "letter" if lettered(piece, sizes) else "figure"
    bench = Bench(guide, piece, size, scale, fabrics, not lettered(piece, sizes), paper, Ruler(paper, kind), trims)
    cloth(bench)
    bench.ruler.edges.extend(_edges(bench))
    first_row(bench)
    bench.ruler.blank = bool(piece.sized[size].zones or piece.sized[size].charts or piece.sized[size].needles_out)
    labelled = list(zip(labels(guide, piece, sizes, units), piece.measures, strict=True))
    # What has few places to stand goes first.
    for place in _ORDER:
        for label, measure in labelled:
            if measure.place == place:
                _PLACES[place](bench, measure, label)
    edges_named(bench)
    words(bench)
    bench.ruler.draw_guides()
    return _trimmed(bench, _alt(guide, piece, sizes, size))


def lettered(piece: MeasuredPiece, sizes: tuple[str, ...]) -> bool:
    """Whether the schematic carries letters and a legend stands beneath: for several sizes, or for more figures than have room."""
    return len(sizes) > 1 or len(piece.measures) > CROWDED


def labels(guide: Guide, piece: MeasuredPiece, sizes: tuple[str, ...], units: str) -> tuple[tuple[str, ...], ...]:
    """The lines that letter each measure: its letter, or its figures."""
    if lettered(piece, sizes):
        return tuple((_letter(i),) for i in range(len(piece.measures)))
    return tuple(_figures(guide, m, 0, units) for m in piece.measures)


def _letter(index: int) -> str:
    """A … Z, then AA, AB …; no I and no O, which look like a line and a figure."""
    count = len(LETTERS)
    return LETTERS[index] if index < count else _letter(index // count - 1) + _letter(index % count)


def _figures(guide: Guide, measure: DrawnMeasure, size: int, units: str) -> tuple[str, ...]:
    value = measure.values[size]
    in_cm, in_inches = guide.say("label/cm", value=guide.cm(value)), guide.say("label/in", value=inches(value))
    lengths = {"cm": (in_cm,), "in": (in_inches,), "both": (in_cm, in_inches)}[units]
    return (*lengths, guide.say(f"label/{measure.unit}", count=measure.counts[size])) if measure.counts else lengths


def _alt(guide: Guide, piece: MeasuredPiece, sizes: tuple[str, ...], size: int) -> str:
    told = "; ".join(_told(guide, m, size) for m in piece.measures)
    drawn = sizes[size] if len(sizes) > 1 else ""
    return guide.say("drawing/schematic", piece=name_of(piece.piece.name), size=drawn, told=told)


def _told(guide: Guide, measure: DrawnMeasure, size: int) -> str:
    what, value = measure.spoken(guide), guide.cm(measure.values[size])
    if not measure.counts:
        return guide.say("drawing/measured", what=what, cm=value)
    return guide.say(f"drawing/measured-{measure.unit}", what=what, cm=value, count=measure.counts[size])


# ----------------------------------------------------------------- where each dimension stands


def _step(bench: Bench) -> float:
    return LETTER_STEP if bench.ruler.kind == "letter" else FIGURE_STEP


def _edges(bench: Bench) -> Iterator[tuple[Point, Point]]:
    """What of the piece no lettering may lie across: its outline, its openings and its darts."""
    shape = bench.piece.outlines[bench.size]
    rings = [(*shape.polygon, shape.polygon[0]), *((*gap.edge, gap.edge[0]) for gap in shape.gaps)]
    for line in (*rings, *(dart.lines for dart in shape.darts)):
        yield from pairwise([bench.at(p) for p in line])


def _start(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape = bench.piece.outlines[bench.size]
    x0, x1 = bench.at(shape.left[0])[0], bench.at(shape.right[0])[0]
    bench.ruler.across(x0, x1, lanes(bench.foot + LANE - 1, _step(bench)), label, (bench.foot, bench.foot))


def _across(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape, height = bench.piece.outlines[bench.size], bench.piece.height(bench.size, measure.at[0])
    (x0, y), (x1, _) = bench.at((shape.edge_x(height, "left"), height)), bench.at((shape.edge_x(height, "right"), height))
    if y - bench.top < 1 and not shape.neck:
        bench.ruler.across(x0, x1, lanes(bench.top - LANE + 1, -_step(bench)), label, (y, y))
        return
    below, above = lanes(bench.foot + LANE - 1, _step(bench)), lanes(bench.top - LANE + 1, -_step(bench))
    near = [y + d for d in (0.0, 2.5, -2.5, 5.0, -5.0, 8.0) if bench.top + 1 < y + d < bench.foot]
    if not bench.ruler.has_room(x0, x1, label):
        # Figures wider than the piece would lie across its edges.
        near = []
    bench.ruler.across(x0, x1, (*near, *(above if y - bench.top < bench.foot - y else below)), label, (y, y))


def _rise(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    y0, y1 = (bench.at((0, bench.piece.height(bench.size, name)))[1] for name in measure.at)
    _up_right(bench, y0, y1, label)


def _edging(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    _up_right(bench, bench.foot, 0.0, label)


def _end_edging(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    _up_right(bench, bench.at((0.0, bench.piece.outlines[bench.size].height))[1], bench.top, label)


def _up_right(bench: Bench, y0: float, y1: float, label: tuple[str, ...]) -> None:
    shape = bench.piece.outlines[bench.size]
    x = bench.ruler.up(lanes(bench.right + LANE, _step(bench)), y0, y1, label, +1)
    for y in (y0, y1):
        # Hairlines lead from the piece's edge to the line; those of the edging from its own.
        edge = shape.edge_x(max(0.0, -y / bench.scale), "right") * bench.scale
        bench.ruler.guide((edge + 0.8, y), (x + 1.6, y))


def _whole(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    bracket = 5.0 if bench.piece.sized[bench.size].repeats else 0.0
    bench.ruler.up(lanes(bench.left - LANE - bracket, -_step(bench)), bench.foot, bench.top, label, -1)


def _at_top(bench: Bench, name: str) -> tuple[Point, ...]:
    """The edge of an opening that goes to the top."""
    return next(gap.edge for gap in bench.piece.outlines[bench.size].tops if gap.name == name)


def _neck_width(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    neck = _at_top(bench, measure.at[0])
    x0, x1 = bench.at(neck[0])[0], bench.at(neck[-1])[0]
    bench.ruler.across(x0, x1, lanes(bench.top - LANE + 1, -_step(bench)), label, (bench.top, bench.top))


def _neck_depth(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    neck = _at_top(bench, measure.at[0])
    bottom = min(y for _, y in neck)
    x0, x1 = min(x for x, y in neck if y <= bottom + 0.05), max(x for x, y in neck if y <= bottom + 0.05)
    x, y = bench.at(((x0 + x1) / 2, bottom))
    places = (x, x + 3, x - 3, x + 6, x - 6, *lanes(bench.right + LANE, _step(bench)))
    text = (" · ".join(label),)
    if bench.ruler.kind == "figure" and bench.ruler.write_free(
        ((x, y + d, "middle") for d in (4.0, 7.0, 10.0)), text, "figure", True
    ):
        # Figures are wider than most necks are: they stand beneath.
        label = ()
    bench.ruler.up(places, y, bench.top, label, +1)


def _shoulder(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape = bench.piece.outlines[bench.size]
    outer = {"left": shape.shoulder_left, "right": shape.shoulder_right}
    line = outer.get(measure.at[0]) or between_tops(shape, int(measure.at[0]))
    xs = sorted(bench.at(p)[0] for p in (line[0], line[-1]))
    bench.ruler.across(xs[0], xs[1], lanes(bench.top - LANE + 1, -_step(bench)), label, (bench.top, bench.top))


def _gap_box(bench: Bench, name: str) -> Box:
    gap = next(g for g in bench.piece.outlines[bench.size].gaps if g.name == name)
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
    dart = bench.piece.outlines[bench.size].darts[int(measure.at[0])]
    points = [bench.at(p) for p in dart.lines]
    x0, top, x1, bottom = box_round(points)
    bench.ruler.across(x0, x1, [v for d in (2.2, 4.5, 7.0, 10.0) for v in (top - d, bottom + d)], label, None)


def _worn(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    """In the middle of what is folded, as wide as it is then."""
    low, high = (bench.piece.height(bench.size, level) for level in measure.at)
    half = measure.values[bench.size] / 2
    shape = bench.piece.outlines[bench.size]
    middle = (shape.edge_x((low + high) / 2, "left") + shape.edge_x((low + high) / 2, "right")) / 2
    (x0, y), (x1, _) = (bench.at((middle + x, (low + high) / 2)) for x in (-half, half))
    bench.ruler.across(x0, x1, [y + d for d in (0.0, 5.0, -5.0, 10.0, -10.0)], label, None)


_Place = Callable[[Bench, DrawnMeasure, tuple[str, ...]], None]

_PLACES: dict[str, _Place] = {
    "start": _start,
    "across": _across,
    "rise": _rise,
    "edging": _edging,
    "ending": _end_edging,
    "whole": _whole,
    "neck width": _neck_width,
    "neck depth": _neck_depth,
    "shoulder": _shoulder,
    "gap width": _gap_width,
    "gap height": _gap_height,
    "dart": _dart,
    "worn": _worn,
}

_ORDER = (
    "gap width",
    "gap height",
    "dart",
    "worn",
    "neck depth",
    "start",
    "neck width",
    "shoulder",
    "across",
    "edging",
    "ending",
    "rise",
    "whole",
)


def _trimmed(bench: Bench, title: str) -> Drawing:
    """The paper cut round everything on it."""
    ruler = bench.ruler
    boxes = [*ruler.texts, *ruler.lines, (bench.left, bench.top, bench.right, bench.foot)]
    half = bench.piece.counted[bench.size].edging_width_cm / 2 * bench.scale
    boxes.append((-half, 0.0, half, bench.foot))
    shape, top = bench.piece.outlines[bench.size], bench.piece.counted[bench.size].end_width_cm / 2
    if top:
        (x0, y), (x1, _) = (bench.at((x, shape.height)) for x in (shape.left[-1][0], shape.right[-1][0]))
        boxes.append(((x0 + x1) / 2 - top * bench.scale, bench.top, (x0 + x1) / 2 + top * bench.scale, y))
    left, top = min(b[0] for b in boxes) - EDGE, min(b[1] for b in boxes) - EDGE
    right, bottom = max(b[2] for b in boxes) + EDGE, max(b[3] for b in boxes) + EDGE
    return bench.paper.finished(title, right - left, bottom - top, left, top)
