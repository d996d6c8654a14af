"""What is measured on a piece: its widths, heights, openings and shoulders, in centimetres and in stitches or rows, for every
size.

The same measures letter the schematic, fill its legend and head the table of finished measurements.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from walewright.counted import CountedPiece, counted_piece
from walewright.counted.model import SizedPiece
from walewright.counted.needles import stitches_at
from walewright.counted.outline import Outline, between_tops, on_top, outline
from walewright.design.model import Band, Design, Piece, Wedge
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence
from walewright.record import record, replace
from walewright.report.said import Said, said
from walewright.solve.model import Counts
from walewright.trade.edge_names import OWN_EDGES
from walewright.trade.edgings import EDGINGS

SAME = 0.05
"""cm. Widths that differ by less are one width."""


@record
class DrawnMeasure:
    """`place` tells the drawing where it belongs: start | across | rise | whole | edging | ending | neck width | neck depth |
    other depth (of the neck of another piece) | shoulder | gap width | gap height | dart | worn. `at` are the names concerned: one
    level of a width, two of a height, an opening, a side.
    `counts` are the stitches or rows (`unit` "st" | "rows"), empty where a measure has none of one fabric. `named` is what is
    measured, as the guide has a phrase for it in mid-sentence."""

    named: Said
    place: str
    at: tuple[str, ...]
    values: tuple[float, ...]
    counts: tuple[int, ...] = ()
    unit: Literal["st", "rows", ""] = ""

    def spoken(self, guide: Guide) -> str:
        """In mid-sentence, where the whole has to be told from its parts."""
        named = guide.said(self.named)
        return guide.say("measure/whole", what=named) if self.place == "whole" else named

    def label(self, guide: Guide) -> str:
        """At the head of a row."""
        return sentence(self.spoken(guide))


@record
class LaidPiece:
    """A piece in one size, laid flat: as it is counted there, with its outline."""

    of: CountedPiece
    shape: Outline

    @property
    def piece(self) -> Piece:
        return self.of.piece

    @property
    def name(self) -> str:
        return self.of.piece.name

    @property
    def sized(self) -> SizedPiece:
        return self.of.sized

    @property
    def full_height(self) -> float:
        """cm of the whole piece, its edgings at both ends with it."""
        return self.shape.height + self.of.edging_cm + self.of.end_cm

    def height(self, level: str) -> float:
        """cm from the start to `level`."""
        return self.of.height_cm(self.sized.row(level))


@record
class MeasuredPiece:
    """A piece as it lies in each size, and what is measured of it in all. `beside`: a piece whose neck is drawn on it besides its
    own, in each size."""

    piece: Piece
    laid: tuple[LaidPiece, ...]
    measures: tuple[DrawnMeasure, ...]
    beside: tuple[LaidPiece, ...] = ()


def measured(design: Design, counts: Counts, name: str) -> MeasuredPiece:
    """The piece called `name` of the design, measured in all sizes."""
    counted = (counted_piece(design, garment.piece(name)) for garment in counts.sizes)
    bare = MeasuredPiece(design.piece(name), tuple(LaidPiece(of, outline(of)) for of in counted), ())
    return replace(bare, measures=tuple(_measures(bare, bool(lengthened_by(design, bare.piece)))))


def lengthened_by(design: Design, piece: Piece) -> list[Band]:
    """The bands hung on its ends that make it longer: what is turned in does not."""
    ends = [[(piece.name, edge)] for edge in ("start", "end")]
    hung = [band for band in design.bands if [(e.piece, e.edge) for e in band.along] in ends]
    return [band for band in hung if not EDGINGS[design.edging(band.edging).kind].turned_in]


def _measures(whole: MeasuredPiece, lengthened: bool) -> Iterator[DrawnMeasure]:
    """`lengthened`: an end of it gets a band afterwards, which is not drawn on it."""
    piece, laid = whole.piece, whole.laid
    first = piece.levels[0].name
    wide = said("measure/width-at", name=name_of(first))
    yield DrawnMeasure(wide, "start", (first,), tuple(p.shape.start_width for p in laid), tuple(p.sized.start for p in laid), "st")
    yield from _widths(whole)
    rises = list(_rises(whole))
    yield from rises
    edging_cm, end_cm = tuple(p.of.edging_cm for p in laid), tuple(p.of.end_cm for p in laid)
    if any(edging_cm):
        rows = tuple(p.sized.edging_rows for p in laid)
        yield DrawnMeasure(said("measure/depth-of", name=name_of(piece.start_edging or "")), "edging", (), edging_cm, rows, "rows")
    if any(end_cm):
        rows = tuple(p.sized.end_rows for p in laid)
        named = said("measure/depth-at-end", name=name_of(piece.end_edging or ""))
        yield DrawnMeasure(named, "ending", (), end_cm, rows, "rows")
    if len(rises) + any(edging_cm) + any(end_cm) > 1:
        edged = [name_of(n or "") for n, cm in ((piece.start_edging, edging_cm), (piece.end_edging, end_cm)) if any(cm)]
        one_end, once = bool(edged) and lengthened, any(p.sized.repeats for p in laid)
        named = said("measure/length", edging=tuple(dict.fromkeys(edged)), one_end=one_end, once=once)
        yield DrawnMeasure(named, "whole", (), tuple(p.full_height for p in laid))
    yield from _openings(whole)
    yield from _darts(whole)
    for out in piece.needles_out:
        if out.worn is not None:
            named = said("measure/worn", lower=name_of(out.from_level), upper=name_of(out.to_level))
            yield DrawnMeasure(named, "worn", (out.from_level, out.to_level), out.worn)


def _levels(piece: Piece) -> Iterator[str]:
    """Those at which something is or becomes other in the piece itself, from its start up: what only its mirror image has does not
    part its height."""
    runs = [*piece.left, *piece.right, *(run for gap in piece.openings for run in (*gap.left, *gap.right))]
    named = {run.to_level for run in runs} | {slot.level for slot in piece.slots} | {motif.level for motif in piece.motifs}
    stretches: list[tuple[str | None, str]] = [
        *((of.from_level, of.to_level) for of in piece.openings),
        *((of.from_level, of.to_level) for of in piece.buttonholes),
        *((of.from_level, of.to_level) for of in piece.wedges),
        *((of.from_level, of.to_level) for of in piece.zones),
        *((of.from_level, of.to_level) for of in piece.repeats),
        *((of.from_level, of.to_level) for of in piece.needles_out),
    ]
    named |= {level for stretch in stretches for level in stretch if level}
    ends = {piece.levels[0].name, piece.levels[-1].name}
    yield from (level.name for level in piece.levels if level.name in named | ends)


def _widths(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    """Widths at the levels above the start where the piece has become wider or narrower."""
    before = tuple(p.shape.start_width for p in whole.laid)
    for level in list(_levels(whole.piece))[1:]:
        rows = [(p, p.sized.row(level)) for p in whole.laid]
        if any(row > _full_width_ends(p.sized) for p, row in rows):
            return
        counts = tuple(stitches_at(p.sized, row) for p, row in rows)
        now = tuple(p.of.width_cm(c, row) for c, (p, row) in zip(counts, rows, strict=True))
        if any(abs(a - b) > SAME for a, b in zip(now, before, strict=True)) and any(counts):
            yield DrawnMeasure(said("measure/width-at", name=name_of(level)), "across", (level,), now, counts, "st")
        before = now


def _rises(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    """Heights from level to level."""
    lower, *others = _levels(whole.piece)
    for upper in others:
        values = tuple(p.height(upper) - p.height(lower) for p in whole.laid)
        if any(value > SAME for value in values):
            rows = tuple(p.sized.row(upper) - p.sized.row(lower) for p in whole.laid)
            named = said("measure/rise", lower=_level(whole.piece, lower), upper=_level(whole.piece, upper))
            yield DrawnMeasure(named, "rise", (lower, upper), values, rows, "rows")
            lower = upper


def _level(piece: Piece, name: str) -> Said | str:
    """What a level is called: where rows begin to be held for a shoulder, that is its outer end, however the author calls it."""
    shoulders = (w for w in piece.wedges if w.width is None)
    return said("level/shoulder-point") if any(w.from_level == name for w in shoulders) else name_of(name)


def _openings(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    names = dict.fromkeys(o.name for p in whole.laid for o in p.sized.openings)
    for name in names:
        called = said(f"edge/{name}") if name in OWN_EDGES else name_of(name)
        found = [(p.of, next((o for o in p.sized.openings if o.name == name), None)) for p in whole.laid]
        openings = [(of, o) for of, o in found if o is not None]
        if len(openings) < len(found):
            continue
        closed = openings[0][1].rejoins
        places = ("gap width", "gap height") if closed else ("neck width", "neck depth")
        widths, depths = tuple(o.width for _, o in openings), tuple(o.depth for _, o in openings)
        in_cm = tuple(o.width * of.stitch_cm(o.to_row) for of, o in openings)
        if any(in_cm):
            yield DrawnMeasure(said("measure/width-of", name=called), places[0], (name,), in_cm, widths, "st")
        deep = tuple(of.height_cm(o.to_row) - of.height_cm(o.row) for of, o in openings)
        named = said("measure/height-of" if closed else "measure/depth-of", name=called)
        yield DrawnMeasure(named, places[1], (name,), deep, depths, "rows")
    tops = [gap.name for gap in whole.laid[0].shape.tops] if whole.laid else []
    if tops and all([gap.name for gap in p.shape.tops] == tops for p in whole.laid):
        yield from _shoulders(whole, tops)


def _shoulders(whole: MeasuredPiece, openings: Sequence[str]) -> Iterator[DrawnMeasure]:
    """What ends beside the openings at the top, and between them."""
    shapes = [p.shape for p in whole.laid]
    right = tuple(abs(o.shoulder_right[0][0] - o.shoulder_right[-1][0]) for o in shapes)
    left = tuple(abs(o.shoulder_left[0][0] - o.shoulder_left[-1][0]) for o in shapes)

    def measure(named: Said, side: str, widths: tuple[float, ...]) -> Iterator[DrawnMeasure]:
        if any(width > SAME for width in widths):
            ends = zip(widths, whole.laid, strict=True)
            counts = tuple(round(w / p.of.stitch_cm(p.sized.rows)) for w, p in ends)
            yield DrawnMeasure(named, "shoulder", (side,), widths, counts, "st")

    one = said("measure/shoulder") if openings[0] == "neck" else said("measure/beside", opening=name_of(openings[0]))
    beside = one if len(openings) == 1 else said("measure/top-part")
    for number in range(2, len(openings) + 1):
        lines = (between_tops(shape, number) for shape in shapes)
        widths = tuple(abs(b[0] - a[0]) for a, b in lines)
        yield from measure(said("measure/nth-top-part", number=number), str(number), widths)
    if all(abs(a - b) <= SAME for a, b in zip(left, right, strict=True)):
        yield from measure(beside, "right", right)
    else:
        yield from measure(said("measure/left", what=beside), "left", left)
        yield from measure(said("measure/right", what=beside), "right", right)


def _darts(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    """How far the short rows reach into the piece. Those of both edges made by one statement are one measure."""
    sides = dict.fromkeys((d.name, d.side) for p in whole.laid for d in p.shape.darts)
    told: set[tuple[str, int]] = set()
    # Rows held for a shoulder have no width of their own, and no name that says what they are.
    wedges = {w.name for w in whole.piece.wedges if w.width is not None}
    called = {w.name: wedge_called(w) for w in whole.piece.wedges}
    for name, side in sides:
        for number in range(min(sum((d.name, d.side) == (name, side) for d in p.shape.darts) for p in whole.laid)):
            found = [[d for d in p.shape.darts if (d.name, d.side) == (name, side)][number] for p in whole.laid]
            if (name, found[0].wedge.from_row) in told and found[0].wedge.edge == "both":
                continue
            told.add((name, found[0].wedge.from_row))
            counts = tuple(d.wedge.reach for d in found)
            values = tuple(d.wedge.reach * p.of.stitch_cm(d.wedge.to_row) for d, p in zip(found, whole.laid, strict=True))
            at = next(i for i, d in enumerate(whole.laid[0].shape.darts) if d == found[0])
            named = said("measure/held" if name in wedges else "measure/short-rows", name=called.get(name, name_of(name)))
            yield DrawnMeasure(named, "dart", (str(at),), values, counts, "st")


def wedge_called(wedge: Wedge) -> Said:
    """What a wedge is called on a page."""
    return said(wedge.printed.key, **{name: name_of(str(fact)) for name, fact in wedge.printed.facts})


def _full_width_ends(sized: SizedPiece) -> int:
    """The last row over which the piece has its full width."""
    slopes = [on_top(sized, side) for side in ("left", "right")]
    return min([sized.rows, *(w.from_row for w in slopes if w is not None)])


def name_of(word: str) -> str:
    """An author's name as a reader sees it in mid-sentence."""
    return word.replace("_", " ")
