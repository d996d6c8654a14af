"""What is measured on a piece: its widths, heights, openings and shoulders, in centimetres and in stitches or rows, for every
size.

The same measures letter the schematic, fill its legend and head the table of finished measurements.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from walewright.counted import CountedPiece, counted_piece
from walewright.counted.model import SizedPiece
from walewright.counted.needles import stitches_at
from walewright.counted.outline import Outline, on_top, outline
from walewright.design.model import Design, Piece, Wedge
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence
from walewright.report.said import Said, said
from walewright.solve.model import Counts
from walewright.trade.edge_names import OWN_EDGES

SAME = 0.05
"""cm. Widths that differ by less are one width."""


@dataclass(frozen=True, slots=True)
class DrawnMeasure:
    """`place` tells the drawing where it belongs: start | across | rise | whole | edging | ending | neck width | neck depth |
    shoulder | gap width | gap height | dart | worn. `at` are the names concerned: one level of a width, two of a height, an
    opening, a side.
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


@dataclass(frozen=True, slots=True)
class MeasuredPiece:
    """A piece as it is counted in each size, with its outlines."""

    piece: Piece
    counted: tuple[CountedPiece, ...]
    outlines: tuple[Outline, ...]
    measures: tuple[DrawnMeasure, ...]

    @property
    def sized(self) -> tuple[SizedPiece, ...]:
        return tuple(of.sized for of in self.counted)

    @property
    def edging_cm(self) -> tuple[float, ...]:
        """The depth of the edging along the start in each size."""
        return tuple(of.edging_cm for of in self.counted)

    @property
    def end_cm(self) -> tuple[float, ...]:
        """The depth of the edging at the end in each size."""
        return tuple(of.end_cm for of in self.counted)

    def full_height(self, size: int) -> float:
        """cm of the whole piece in size number `size`, its edgings at both ends with it."""
        return self.outlines[size].height + self.edging_cm[size] + self.end_cm[size]

    def height(self, size: int, level: str) -> float:
        """cm from the start to `level` in size number `size`."""
        return self.counted[size].height_cm(self.counted[size].sized.row(level))


def measured(design: Design, counts: Counts, name: str) -> MeasuredPiece:
    """The piece called `name` of the design, measured in all sizes."""
    counted = tuple(counted_piece(design, garment.piece(name)) for garment in counts.sizes)
    bare = MeasuredPiece(design.piece(name), counted, tuple(outline(of) for of in counted), ())
    return replace(bare, measures=tuple(_measures(bare)))


def _measures(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    piece, sizes = whole.piece, range(len(whole.sized))
    first = piece.levels[0].name
    starts = tuple(s.start for s in whole.sized)
    yield DrawnMeasure(
        said("measure/width-at", name=name_of(first)), "start", (first,), tuple(o.start_width for o in whole.outlines), starts, "st"
    )
    yield from _widths(whole)
    rises = list(_rises(whole))
    yield from rises
    if any(whole.edging_cm):
        rows = tuple(s.edging_rows for s in whole.sized)
        yield DrawnMeasure(
            said("measure/depth-of", name=name_of(piece.start_edging or "")), "edging", (), whole.edging_cm, rows, "rows"
        )
    if any(whole.end_cm):
        rows = tuple(s.end_rows for s in whole.sized)
        named = said("measure/depth-at-end", name=name_of(piece.end_edging or ""))
        yield DrawnMeasure(named, "ending", (), whole.end_cm, rows, "rows")
    if len(rises) + any(whole.edging_cm) + any(whole.end_cm) > 1:
        edged = [name_of(n or "") for n, cm in ((piece.start_edging, whole.edging_cm), (piece.end_edging, whole.end_cm)) if any(cm)]
        named = said("measure/length", edging=tuple(dict.fromkeys(edged)), once=any(s.repeats for s in whole.sized))
        yield DrawnMeasure(named, "whole", (), tuple(map(whole.full_height, sizes)))
    yield from _openings(whole)
    yield from _darts(whole)
    for out in piece.needles_out:
        if out.worn is not None:
            named = said("measure/worn", lower=name_of(out.from_level), upper=name_of(out.to_level))
            yield DrawnMeasure(named, "worn", (out.from_level, out.to_level), out.worn)


def _widths(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    """Widths at the levels above the start where the piece has become wider or narrower."""
    before = tuple(o.start_width for o in whole.outlines)
    for level in whole.piece.levels[1:]:
        rows = [s.row(level.name) for s in whole.sized]
        if any(row > _full_width_ends(s) for row, s in zip(rows, whole.sized, strict=True)):
            return
        counts = tuple(stitches_at(s, row) for row, s in zip(rows, whole.sized, strict=True))
        now = tuple(of.width_cm(c, row) for c, row, of in zip(counts, rows, whole.counted, strict=True))
        if any(abs(a - b) > SAME for a, b in zip(now, before, strict=True)) and any(counts):
            yield DrawnMeasure(said("measure/width-at", name=name_of(level.name)), "across", (level.name,), now, counts, "st")
        before = now


def _rises(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    """Heights from level to level."""
    sizes = range(len(whole.sized))
    lower = whole.piece.levels[0]
    for upper in whole.piece.levels[1:]:
        values = tuple(whole.height(i, upper.name) - whole.height(i, lower.name) for i in sizes)
        if any(value > SAME for value in values):
            rows = tuple(s.row(upper.name) - s.row(lower.name) for s in whole.sized)
            named = said("measure/rise", lower=name_of(lower.name), upper=name_of(upper.name))
            yield DrawnMeasure(named, "rise", (lower.name, upper.name), values, rows, "rows")
            lower = upper


def _openings(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    names = dict.fromkeys(o.name for s in whole.sized for o in s.openings)
    for name in names:
        called = said(f"edge/{name}") if name in OWN_EDGES else name_of(name)
        found = [next((o for o in s.openings if o.name == name), None) for s in whole.sized]
        openings = [o for o in found if o is not None]
        if len(openings) < len(found):
            continue
        closed = openings[0].rejoins
        places = ("gap width", "gap height") if closed else ("neck width", "neck depth")
        widths, depths = tuple(o.width for o in openings), tuple(o.depth for o in openings)
        ends = [o.to_row for o in openings]
        in_cm = tuple(w * of.stitch_cm(end) for w, of, end in zip(widths, whole.counted, ends, strict=True))
        if any(in_cm):
            yield DrawnMeasure(said("measure/width-of", name=called), places[0], (name,), in_cm, widths, "st")
        deep = tuple(of.height_cm(o.to_row) - of.height_cm(o.row) for of, o in zip(whole.counted, openings, strict=True))
        named = said("measure/height-of" if closed else "measure/depth-of", name=called)
        yield DrawnMeasure(named, places[1], (name,), deep, depths, "rows")
        if not closed:
            yield from _shoulders(whole, name_of(name))


def _shoulders(whole: MeasuredPiece, opening: str) -> Iterator[DrawnMeasure]:
    right = tuple(abs(o.shoulder_right[0][0] - o.shoulder_right[-1][0]) for o in whole.outlines)
    left = tuple(abs(o.shoulder_left[0][0] - o.shoulder_left[-1][0]) for o in whole.outlines)

    def measure(named: Said, side: str, widths: tuple[float, ...]) -> Iterator[DrawnMeasure]:
        if any(width > SAME for width in widths):
            ends = zip(widths, whole.counted, strict=True)
            yield DrawnMeasure(
                named, "shoulder", (side,), widths, tuple(round(w / of.stitch_cm(of.sized.rows)) for w, of in ends), "st"
            )

    beside = said("measure/shoulder") if opening == "neck" else said("measure/beside", opening=opening)
    if all(abs(a - b) <= SAME for a, b in zip(left, right, strict=True)):
        yield from measure(beside, "right", right)
    else:
        yield from measure(said("measure/left", what=beside), "left", left)
        yield from measure(said("measure/right", what=beside), "right", right)


def _darts(whole: MeasuredPiece) -> Iterator[DrawnMeasure]:
    """How far the short rows reach into the piece. Those of both edges made by one statement are one measure."""
    sides = dict.fromkeys((d.name, d.side) for o in whole.outlines for d in o.darts)
    told: set[tuple[str, int]] = set()
    # Rows held for a shoulder have no width of their own, and no name that says what they are.
    wedges = {w.name for w in whole.piece.wedges if w.width is not None}
    called = {w.name: wedge_called(w) for w in whole.piece.wedges}
    for name, side in sides:
        for number in range(min(sum((d.name, d.side) == (name, side) for d in o.darts) for o in whole.outlines)):
            found = [[d for d in o.darts if (d.name, d.side) == (name, side)][number] for o in whole.outlines]
            if (name, found[0].wedge.from_row) in told and found[0].wedge.edge == "both":
                continue
            told.add((name, found[0].wedge.from_row))
            counts = tuple(d.wedge.reach for d in found)
            values = tuple(c * of.stitch_cm(d.wedge.to_row) for c, d, of in zip(counts, found, whole.counted, strict=True))
            at = next(i for i, d in enumerate(whole.outlines[0].darts) if d == found[0])
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
