"""What is measured on a piece: its widths, heights, neck and shoulders, in centimetres, for every size.

The same measures letter the schematic, fill its legend and head the table of finished measurements.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from walewright.design.model import Design, Piece
from walewright.pages.figures import sentence
from walewright.pages.outline import Outline, outline
from walewright.solve.model import Counts, SizedPiece

SAME = 0.05
"""cm. Widths that differ by less are one width."""


@dataclass(frozen=True, slots=True)
class Measure:
    """`place` tells the drawing where it belongs: start | across | rise | whole | edging | neck width | neck depth | shoulder.
    `at` are the names of the levels concerned (one of a width, two of a height)."""

    label: str
    place: str
    at: tuple[str, ...]
    values: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class MeasuredPiece:
    """A piece with its outline in each size. `edging_cm` is the depth of the edging along the start, 0 where there is none;
    `edging_widths` its own width at the outer edge, narrower or wider than the start as its fabric is."""

    piece: Piece
    sized: tuple[SizedPiece, ...]
    outlines: tuple[Outline, ...]
    edging_cm: tuple[float, ...]
    edging_widths: tuple[float, ...]
    measures: tuple[Measure, ...]

    def height(self, size: int, level: str) -> float:
        """cm from the start to `level` in size number `size`."""
        return self.sized[size].row(level) * self.row_cm

    @property
    def row_cm(self) -> float:
        """cm of one row (the same for all sizes)."""
        top = self.outlines[0].height
        return top / self.sized[0].rows if self.sized[0].rows else 0.0


def measured(design: Design, counts: Counts, name: str) -> MeasuredPiece:
    """The piece called `name` of the design, measured in all sizes."""
    piece = design.piece(name)
    fabric = design.fabric(piece.fabric)
    sized = tuple(garment.piece(name) for garment in counts.sizes)
    edging_cm = tuple(0.0 for _ in sized)
    edging_widths = edging_cm
    if piece.start_edging is not None:
        band = design.fabric(design.edging(piece.start_edging).fabric)
        edging_cm = tuple(s.edging_rows / band.rows_per_cm for s in sized)
        edging_widths = tuple(s.start / band.stitches_per_cm for s in sized)
    bare = MeasuredPiece(piece, sized, tuple(outline(s, fabric) for s in sized), edging_cm, edging_widths, ())
    return MeasuredPiece(piece, sized, bare.outlines, edging_cm, edging_widths, tuple(_measures(bare)))


def _measures(whole: MeasuredPiece) -> Iterator[Measure]:
    piece, indices = whole.piece, range(len(whole.sized))
    first = piece.levels[0].name
    yield Measure(f"Width at {_name(first)}", "start", (first,), tuple(o.right[0][0] - o.left[0][0] for o in whole.outlines))
    yield from _widths(whole)
    rises = list(_rises(whole))
    yield from rises
    if any(whole.edging_cm):
        yield Measure(f"Depth of {_name(piece.start_edging or '')}", "edging", (), whole.edging_cm)
    if len(rises) + any(whole.edging_cm) > 1:
        label = f"Whole length, with {_name(piece.start_edging or '')}" if any(whole.edging_cm) else "Whole length"
        values = tuple(whole.outlines[i].height + whole.edging_cm[i] for i in indices)
        yield Measure(label, "whole", (), values)
    if all(s.openings for s in whole.sized):
        yield Measure("Width of neck", "neck width", (), tuple(o.neck[-1][0] - o.neck[0][0] for o in whole.outlines))
        depths = tuple((s.rows - s.openings[0].row) * whole.row_cm for s in whole.sized)
        yield Measure("Depth of neck", "neck depth", (), depths)
        shoulders = tuple(abs(o.shoulder_right[0][0] - o.shoulder_right[-1][0]) for o in whole.outlines)
        if any(width > SAME for width in shoulders):
            yield Measure("Shoulder", "shoulder", (), shoulders)


def _widths(whole: MeasuredPiece) -> Iterator[Measure]:
    """Widths at the levels above the start where the piece has become wider or narrower."""
    indices = range(len(whole.sized))
    before = tuple(o.right[0][0] - o.left[0][0] for o in whole.outlines)
    for level in whole.piece.levels[1:]:
        if any(s.row(level.name) > _full_width_ends(s) for s in whole.sized):
            return
        heights = [whole.height(i, level.name) for i in indices]
        now = tuple(
            whole.outlines[i].half_width(heights[i], "left") + whole.outlines[i].half_width(heights[i], "right") for i in indices
        )
        if any(abs(a - b) > SAME for a, b in zip(now, before, strict=True)):
            yield Measure(f"Width at {_name(level.name)}", "across", (level.name,), now)
        before = now


def _rises(whole: MeasuredPiece) -> Iterator[Measure]:
    """Heights from level to level."""
    indices = range(len(whole.sized))
    lower = whole.piece.levels[0]
    for upper in whole.piece.levels[1:]:
        values = tuple(whole.height(i, upper.name) - whole.height(i, lower.name) for i in indices)
        if any(value > SAME for value in values):
            yield Measure(f"{sentence(lower.name)} to {_name(upper.name)}", "rise", (lower.name, upper.name), values)
            lower = upper


def _full_width_ends(sized: SizedPiece) -> int:
    """The last row over which the piece has its full width."""
    rows = [w.from_row for w in sized.wedges] + [sized.rows]
    return min(rows)


def _name(word: str) -> str:
    return word.replace("_", " ")
