"""The measured schematic of one piece: its outline with dimension lines, lettered for a legend or carrying the figures."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from itertools import pairwise, product

from walewright.counted.outline import Point, between_tops
from walewright.design.model import DesignInSize
from walewright.figures.dimensions import LANE, Box, Ruler, box_round, lanes
from walewright.figures.hung import edges_named, first_row
from walewright.figures.marks import Bench, cloth, words
from walewright.figures.measures import SAME, DrawnMeasure, LaidPiece, MeasuredPiece, name_of
from walewright.figures.model import Drawing, LetteringKind
from walewright.figures.pens import Paper
from walewright.figures.trims import finishes
from walewright.guide.model import Guide
from walewright.guide.numbers import inches
from walewright.record import record

BOX, LETTERED_BOX = (68.0, 42.0), (62.0, 34.0)
"""Largest outline, mm of paper; with letters it is as high as its legend, which stands beside it."""

MARKED_BOX, LETTERED_MARKED_BOX = (84.0, 52.0), (66.0, 40.0)
"""The same of a piece in which something lies that is named."""

LEAST, LETTERED_LEAST = 34.0, 26.0
"""A piece is drawn at least so long one way, mm: its figures need the room, or its letters."""

PRINTED, IN_A_COLUMN = 66.0, 82.0
"""mm that a drawing is wide on paper at most: beside its legend, and in one of two columns."""

WIDEST = 83.0
"""mm of the whole drawing, where its piece need not be too small for it. It is printed 66 mm wide at most, so that its figures are
6.5 pt high at least."""

FIGURED = (0.75, 0.5)
"""A piece that carries figures is made no smaller than that for them; than the second where they could not be read otherwise."""

ROUNDS = 4
"""In which the width is found."""

CROWDED = 12
"""Measures. A drawing with more of them carries letters even of one size."""

LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"

EDGE = 1.0
"""Round the whole drawing, mm."""

LETTER_STEP, FIGURE_STEP = 5.0, 6.0
"""From one lane to the next, mm."""


def fitting_scale(at: DesignInSize, pieces: Iterable[MeasuredPiece]) -> float:
    """mm of paper a cm at which the largest piece fits: all schematics share it, so that they can be compared."""
    return min(_fitting(at, piece) for piece in pieces)


def _fitting(at: DesignInSize, piece: MeasuredPiece) -> float:
    laid = at.of(piece.laid)
    boxes = (LETTERED_BOX, LETTERED_MARKED_BOX) if lettered(piece, at.design.sizes) else (BOX, MARKED_BOX)
    (wide, high), (width, height) = boxes[_marked(laid)], _extent(laid)
    return min(wide / width, high / height)


def _marked(piece: LaidPiece) -> bool:
    """Whether something lies in it that has its name there."""
    sized = piece.sized
    rejoined = any(opening.rejoins for opening in sized.openings)
    return bool(rejoined or sized.slots or sized.zones or sized.charts or sized.needles_out)


def _extent(piece: LaidPiece) -> tuple[float, float]:
    shape = piece.shape
    return max(shape.width, 1.0), max(piece.full_height, 1.0)


@record
class LetteredSchematic:
    """`lettered`: it carries letters, and what they stand for is to be told beside it."""

    drawing: Drawing
    lettered: bool


def schematic(
    guide: Guide, at: DesignInSize, piece: MeasuredPiece, units: str, shared_scale: float, printed: float = PRINTED
) -> LetteredSchematic:
    """The schematic of all sizes, its outline that of the one; `printed` mm wide at most on paper. It carries letters where
    figures could not be read there."""
    if lettered(piece, at.design.sizes):
        return LetteredSchematic(_fitted(guide, at, piece, units, shared_scale, letters=True), lettered=True)
    # A name beside the piece is better than one across its edges, and both are better than no figures.
    for aside, figured in product((True, False), FIGURED):
        made = _fitted(guide, at, piece, units, shared_scale, figured=figured, aside=aside)
        if made.width <= WIDEST * printed / PRINTED:
            return LetteredSchematic(made, lettered=False)
    return LetteredSchematic(_fitted(guide, at, piece, units, shared_scale, letters=True), lettered=True)


def drawing(guide: Guide, at: DesignInSize, piece: MeasuredPiece, units: str, shared_scale: float) -> Drawing:
    """The schematic alone."""
    return schematic(guide, at, piece, units, shared_scale).drawing


def _fitted(
    guide: Guide,
    at: DesignInSize,
    piece: MeasuredPiece,
    units: str,
    shared_scale: float,
    *,
    letters: bool = False,
    figured: float = 0.0,
    aside: bool = True,
) -> Drawing:
    """A piece that would be tiny at the shared scale is drawn up to twice as large, or as large as its lettering needs."""
    laid = at.of(piece.laid)
    width, height = _extent(laid)
    least = LETTERED_LEAST if letters else LEAST
    scale = min(_fitting(at, piece), max(shared_scale * 2, least / max(width, height)))
    # Figures need room on the piece as well.
    narrowest = LETTERED_LEAST / 2 if letters else figured * width * scale
    for _ in range(ROUNDS):
        made = _drawn(guide, at, piece, units, scale, letters=letters, aside=aside)
        # Lettering beside the piece keeps its size: the piece gives way.
        over = (made.width - WIDEST) * 1.03
        if over <= 0 or width * scale - over < narrowest:
            break
        scale *= 1 - over / (width * scale)
    return made


def _drawn(
    guide: Guide, at: DesignInSize, piece: MeasuredPiece, units: str, scale: float, *, letters: bool, aside: bool
) -> Drawing:
    laid, paper = at.of(piece.laid), Paper()
    kind: LetteringKind = "letter" if letters else "figure"
    bench = Bench(
        guide,
        laid,
        at,
        scale,
        alone=not letters,
        aside=aside,
        paper=paper,
        ruler=Ruler(paper, kind),
        trims=finishes(at.design),
        beside=at.of(piece.beside) if piece.beside else None,
    )
    cloth(bench)
    bench.ruler.edges.extend(_edges(bench))
    first_row(bench)
    bench.ruler.blank = bool(laid.sized.zones or laid.sized.charts or laid.sized.needles_out)
    labelled = list(zip(labels(guide, piece, units, letters), piece.measures, strict=True))
    # What has few places to stand goes first.
    for place in _ORDER:
        for label, measure in labelled:
            if measure.place == place:
                _PLACES[place](bench, measure, label)
    edges_named(bench)
    words(bench)
    bench.ruler.draw_guides()
    return _trimmed(bench, _alt(guide, at, piece))


def lettered(piece: MeasuredPiece, sizes: tuple[str, ...]) -> bool:
    """Whether the schematic carries letters and a legend stands beneath: for several sizes, or for more figures than have room."""
    return len(sizes) > 1 or len(piece.measures) > CROWDED


def labels(guide: Guide, piece: MeasuredPiece, units: str, letters: bool) -> tuple[tuple[str, ...], ...]:
    """The lines that letter each measure: its letter, or its figures. What is alike has one letter, as the two halves of a piece
    that is knitted from side to side."""
    if letters:
        first = [next(i for i, other in enumerate(piece.measures) if _alike(other, m)) for m in piece.measures]
        order = list(dict.fromkeys(first))
        return tuple((_letter(order.index(i)),) for i in first)
    return tuple(_figures(guide, m, units) for m in piece.measures)


def _alike(one: DrawnMeasure, other: DrawnMeasure) -> bool:
    """Whether two measures of one kind are the same in every size, stitch for stitch and row for row."""
    near = (abs(a - b) <= SAME for a, b in zip(one.values, other.values, strict=True))
    same = (_WIDTHS.get(one.place, one.place), one.counts, one.unit) == (
        _WIDTHS.get(other.place, other.place),
        other.counts,
        other.unit,
    )
    return same and all(near)


_WIDTHS = {"start": "across"}
"""Places of one kind."""


def _letter(index: int) -> str:
    """A … Z, then AA, AB …; no I and no O, which look like a line and a figure."""
    count = len(LETTERS)
    return LETTERS[index] if index < count else _letter(index // count - 1) + _letter(index % count)


def _figures(guide: Guide, measure: DrawnMeasure, units: str) -> tuple[str, ...]:
    """Of one size, which is all there is."""
    value = measure.values[0]
    in_cm, in_inches = guide.say("label/cm", value=guide.cm(value)), guide.say("label/in", value=inches(value))
    lengths = {"cm": (in_cm,), "in": (in_inches,), "both": (in_cm, in_inches)}[units]
    return (*lengths, guide.say(f"label/{measure.unit}", count=measure.counts[0])) if measure.counts else lengths


def _alt(guide: Guide, at: DesignInSize, piece: MeasuredPiece) -> str:
    told = "; ".join(_told(guide, at, m) for m in piece.measures)
    drawn = at.size if len(at.design.sizes) > 1 else ""
    return guide.say("drawing/schematic", piece=name_of(piece.piece.name), size=drawn, told=told)


def _told(guide: Guide, at: DesignInSize, measure: DrawnMeasure) -> str:
    what, value = measure.spoken(guide), guide.cm(at.of(measure.values))
    if not measure.counts:
        return guide.say("drawing/measured", what=what, cm=value)
    return guide.say(f"drawing/measured-{measure.unit}", what=what, cm=value, count=at.of(measure.counts))


# ----------------------------------------------------------------- where each dimension stands


def _step(bench: Bench) -> float:
    return LETTER_STEP if bench.ruler.kind == "letter" else FIGURE_STEP


def _edges(bench: Bench) -> Iterator[tuple[Point, Point]]:
    """What of the piece no lettering may lie across: its outline, its openings and its darts."""
    shape = bench.piece.shape
    rings = [(*shape.polygon, shape.polygon[0]), *((*gap.edge, gap.edge[0]) for gap in shape.gaps)]
    for line in (*rings, *(dart.lines for dart in shape.darts)):
        yield from pairwise([bench.at(p) for p in line])


def _start(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape = bench.piece.shape
    x0, x1 = bench.at(shape.left[0])[0], bench.at(shape.right[0])[0]
    bench.ruler.across(x0, x1, lanes(bench.foot + LANE - 1, _step(bench)), label, (bench.foot, bench.foot))


def _across(bench: Bench, measure: DrawnMeasure, label: tuple[str, ...]) -> None:
    shape, height = bench.piece.shape, bench.piece.height(measure.at[0])
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

_PLACES: dict[str, _Place] = {
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

_ORDER = (
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


def _trimmed(bench: Bench, title: str) -> Drawing:
    """The paper cut round everything on it."""
    ruler = bench.ruler
    boxes = [*ruler.texts, *ruler.lines, (bench.left, bench.top, bench.right, bench.foot)]
    half = bench.piece.of.edging_width_cm / 2 * bench.scale
    boxes.append((-half, 0.0, half, bench.foot))
    shape, top = bench.piece.shape, bench.piece.of.end_width_cm / 2
    if top:
        (x0, y), (x1, _) = (bench.at((x, shape.height)) for x in (shape.left[-1][0], shape.right[-1][0]))
        boxes.append(((x0 + x1) / 2 - top * bench.scale, bench.top, (x0 + x1) / 2 + top * bench.scale, y))
    left, top = min(b[0] for b in boxes) - EDGE, min(b[1] for b in boxes) - EDGE
    right, bottom = max(b[2] for b in boxes) + EDGE, max(b[3] for b in boxes) + EDGE
    return bench.paper.finished(title, right - left, bottom - top, left, top)
