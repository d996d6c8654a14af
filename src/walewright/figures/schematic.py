"""The measured schematic of one piece: its outline with dimension lines, lettered for a legend or carrying the figures."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise, product

from walewright.counted.outline import Point
from walewright.design.model import DesignInSize
from walewright.figures.dimension_places import ORDER, PLACES
from walewright.figures.dimensions import Ruler
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

ROW, ABOUT, HIGHEST = 4.6, 20.0, 76.0
"""mm of paper: how high a row of a legend is, what stands above and below an outline with letters, about, and how high an outline
beside a long legend is at most."""

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


def fitting_scale(at: DesignInSize, pieces: Iterable[MeasuredPiece]) -> float:
    """mm of paper a cm at which the largest piece fits: all schematics share it, so that they can be compared."""
    return min(_fitting(at, piece) for piece in pieces)


def _fitting(at: DesignInSize, piece: MeasuredPiece) -> float:
    laid = at.of(piece.laid)
    letters = lettered(piece, at.design.sizes)
    boxes = (LETTERED_BOX, LETTERED_MARKED_BOX) if letters else (BOX, MARKED_BOX)
    (wide, high), (width, height) = boxes[_marked(laid)], _extent(laid)
    if letters:
        high = max(high, min(len(piece.measures) * ROW - ABOUT, HIGHEST))
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
class Labelling:
    """How the measures are told on a drawing. `figured`: the piece is made no narrower for its figures than that part of its width;
    `aside`: a name stands beside the piece, not across its edges."""

    letters: bool = False
    figured: float = 0.0
    aside: bool = True


LETTERED = Labelling(letters=True)


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
        return LetteredSchematic(_fitted(guide, at, piece, units, shared_scale, LETTERED), lettered=True)
    # A name beside the piece is better than one across its edges, and both are better than no figures.
    for aside, figured in product((True, False), FIGURED):
        made = _fitted(guide, at, piece, units, shared_scale, Labelling(figured=figured, aside=aside))
        if made.width <= WIDEST * printed / PRINTED:
            return LetteredSchematic(made, lettered=False)
    return LetteredSchematic(_fitted(guide, at, piece, units, shared_scale, LETTERED), lettered=True)


def drawing(guide: Guide, at: DesignInSize, piece: MeasuredPiece, units: str, shared_scale: float) -> Drawing:
    """The schematic alone."""
    return schematic(guide, at, piece, units, shared_scale).drawing


def _fitted(guide: Guide, at: DesignInSize, piece: MeasuredPiece, units: str, shared_scale: float, labelling: Labelling) -> Drawing:
    """A piece that would be tiny at the shared scale is drawn up to twice as large, or as large as its lettering needs."""
    laid = at.of(piece.laid)
    width, height = _extent(laid)
    least = LETTERED_LEAST if labelling.letters else LEAST
    scale = min(_fitting(at, piece), max(shared_scale * 2, least / max(width, height)))
    # Figures need room on the piece as well.
    narrowest = LETTERED_LEAST / 2 if labelling.letters else labelling.figured * width * scale
    for _ in range(ROUNDS):
        made = _drawn(guide, at, piece, units, scale, labelling)
        # Lettering beside the piece keeps its size: the piece gives way.
        over = (made.width - WIDEST) * 1.03
        if over <= 0 or width * scale - over < narrowest:
            break
        scale *= 1 - over / (width * scale)
    return made


def _drawn(guide: Guide, at: DesignInSize, piece: MeasuredPiece, units: str, scale: float, labelling: Labelling) -> Drawing:
    laid, paper = at.of(piece.laid), Paper()
    kind: LetteringKind = "letter" if labelling.letters else "figure"
    bench = Bench(
        guide,
        laid,
        at,
        scale,
        alone=not labelling.letters,
        aside=labelling.aside,
        paper=paper,
        ruler=Ruler(paper, kind),
        trims=finishes(at.design),
        beside=at.of(piece.beside) if piece.beside else None,
    )
    cloth(bench)
    bench.ruler.edges.extend(_edges(bench))
    first_row(bench)
    bench.ruler.blank = bool(laid.sized.zones or laid.sized.charts or laid.sized.needles_out)
    labelled = list(zip(labels(guide, piece, units, labelling.letters), piece.measures, strict=True))
    for place in ORDER:
        for label, measure in labelled:
            if measure.place == place:
                PLACES[place](bench, measure, label)
    bench.ruler.edges.extend(bench.ruler.borders)
    edges_named(bench)
    words(bench)
    bench.ruler.draw_guides()
    return _trimmed(bench, _alt(guide, at, piece))


def lettered(piece: MeasuredPiece, sizes: tuple[str, ...]) -> bool:
    """Whether the schematic carries letters and a legend stands beneath: for several sizes, or for more figures than have room."""
    return len(sizes) > 1 or len(piece.measures) > CROWDED


def labels(guide: Guide, piece: MeasuredPiece, units: str, letters: bool) -> tuple[tuple[str, ...], ...]:
    """The lines that letter each measure: its letter, or its figures. What is alike has one letter. Heights have one only in the
    two halves of a piece, as that is knitted from side to side: else it is chance that two of them are the same."""
    if letters:
        halves = _mirrored(piece)
        first = [
            next(i for i, other in enumerate(piece.measures) if other is m or (_alike(other, m) and (halves or m.place != "rise")))
            for m in piece.measures
        ]
        order = list(dict.fromkeys(first))
        return tuple((_letter(order.index(i)),) for i in first)
    return tuple(_figures(guide, m, units) for m in piece.measures)


def _mirrored(piece: MeasuredPiece) -> bool:
    """Whether most heights of a piece are the same from its top down as from its start up."""
    rises = [m for m in piece.measures if m.place == "rise"]
    pairs = list(zip(rises, rises[::-1], strict=True))[: len(rises) // 2]
    return 2 * sum(_alike(low, high) for low, high in pairs) > len(pairs)


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


def _edges(bench: Bench) -> Iterator[tuple[Point, Point]]:
    """What of the piece no lettering may lie across: its outline, its openings and its darts."""
    shape = bench.piece.shape
    rings = [(*shape.polygon, shape.polygon[0]), *((*gap.edge, gap.edge[0]) for gap in shape.gaps)]
    for line in (*rings, *(dart.lines for dart in shape.darts)):
        yield from pairwise([bench.at(p) for p in line])


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
