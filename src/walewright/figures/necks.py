"""Two pieces that differ by their necks alone, as a back and a front often do, on one drawing."""

from __future__ import annotations

from walewright.counted.model import SizedPiece
from walewright.counted.outline import Outline
from walewright.figures.measures import DrawnMeasure, MeasuredPiece, name_of
from walewright.record import replace
from walewright.report.said import said

DEPTH = "neck depth"
"""The place of the one measure that differs."""


def differ_by_necks(one: MeasuredPiece, other: MeasuredPiece) -> bool:
    """Whether in every size all but the depths of their necks is the same."""
    if _told(one) != _told(other) or one.piece.start_along or other.piece.start_along:
        return False
    both = list(zip(one.laid, other.laid, strict=True))
    alike = all(_outer(a.shape) == _outer(b.shape) and _inside(a.sized) == _inside(b.sized) for a, b in both)
    necked = all(
        [gap.name for gap in a.shape.tops] == [gap.name for gap in b.shape.tops] and len(a.shape.tops) == 1 for a, b in both
    )
    return alike and necked and any(a.shape.neck != b.shape.neck for a, b in both)


def with_neck(one: MeasuredPiece, other: MeasuredPiece) -> MeasuredPiece:
    """The one piece with the neck of the other on its drawing, and the depths of both, each of its own piece."""
    measures = [_of(one, m) if m.place == DEPTH else m for m in one.measures]
    more = [replace(_of(other, m), place="other depth") for m in other.measures if m.place == DEPTH]
    return replace(one, measures=(*measures, *more), beside=other.laid)


def _of(piece: MeasuredPiece, measure: DrawnMeasure) -> DrawnMeasure:
    return replace(measure, named=said("measure/of-piece", what=measure.named, piece=name_of(piece.piece.name)))


def _told(of: MeasuredPiece) -> tuple[object, ...]:
    """What is written of a piece and measured, but for its neck."""
    piece = of.piece
    made = piece.fabric, piece.start_way, piece.end_way, piece.start_edging, piece.end_edging, piece.mirror_of
    return (*made, *((m.named, m.place, m.at, m.values, m.counts) for m in of.measures if m.place != DEPTH))


def _outer(shape: Outline) -> tuple[object, ...]:
    gaps, darts = tuple(gap.edge for gap in shape.gaps), tuple(dart.lines for dart in shape.darts)
    return shape.left, shape.right, shape.shoulder_left, shape.shoulder_right, shape.foot, gaps, darts


def _inside(sized: SizedPiece) -> tuple[object, ...]:
    """What lies in a piece."""
    slots = tuple((s.name, s.row, s.first, s.last, s.taken) for s in sized.slots)
    zones = tuple((z.fabric, z.from_row, z.to_row, z.first, z.last) for z in sized.zones)
    charts = tuple((c.chart, c.from_row, c.to_row, c.first, c.last) for c in sized.charts)
    return slots, zones, charts, len(sized.needles_out), len(sized.repeats), sized.copies, sized.lean
