"""Corners of a finished piece, where its edges end, and which corners have come together.

A corner of an outer edge is a row at a side. Of short rows at an edge two reach it, and they belong to the stitches that were held:
rows that do not reach an edge, with two that do, are no way along it. Corners nearer than two rows are one.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from walewright.bed.model import BedEdge, BedPart, inner_top
from walewright.bed.outline import OutlineGap, Shape, reaches
from walewright.bed.sides import BedSides
from walewright.knit.operations import NEXT_COPY, HungFace, HungPart, NameEdge, NameGap, SeamEnd, Side
from walewright.record import record

Corner = tuple[str, int]
"""A side ("left", "right") and a row along it; or a name of an opening or a slot and where there: 0 foot left, 1 foot right, 2 head
left, 3 head right."""

Corners = tuple[Corner, Corner]
"""Of rows the bottom and the top one, of stitches the left and the right one."""


@record
class HungEdge:
    """An edge of a finished piece on needles `first`..`last` (indices), by the name it was asked for, with its corners at the left
    and at the right needle (None where they are not known). `copy` as in `PickUpEdge`."""

    piece: str
    edge: str
    part: HungPart
    copy: int
    first: int
    last: int
    corners: tuple[Corner, Corner] | None
    facing: HungFace
    left_end: SeamEnd
    """Which of its ends is at the left: of rows "bottom" or "top", of stitches "left" or "right"."""
    stretch: tuple[int, int] = (0, 0)
    """Of a stretch of the edge, as `PickUpEdge.low` and `high`."""

    def copy_for(self, number: int, copies: int) -> int:
        """Which of the copies of the piece hangs on copy `number` of the block."""
        return self.copy if self.copy > 0 else number % copies + 1 if self.copy == NEXT_COPY else number

    @property
    def label(self) -> str:
        """ "armhole left"."""
        return self.edge if self.part == "whole" else f"{self.edge} {self.part}"


NEAR = 2
"""Rows within which two corners at a side are one."""

_TOP = "top of the opening"


def corners(edges: Sequence[BedEdge], named: Sequence[NameEdge], outline: Shape | None) -> dict[tuple[str, BedPart], Corners]:
    """The two corners of each edge, by its name and part."""
    if outline is None:
        return {}
    sides = {"left": _along(outline, "left"), "right": _along(outline, "right")}
    rows = {op.edge: (op.from_row, op.to_row) for op in named}
    top = outline.top
    parted = _to_the_top(named, outline)
    found: dict[tuple[str, BedPart], Corners] = {}
    for edge in edges:
        found[edge.name, edge.part] = _corners(edge, edges, named=named, sides=sides, rows=rows, parted=parted, top=top)
    return _snapped(found)


def _corners(
    edge: BedEdge,
    edges: Sequence[BedEdge],
    named: Sequence[NameEdge],
    sides: dict[str, _Along],
    rows: dict[str, tuple[int, int]],
    parted: dict[str, int],
    top: int,
) -> Corners:
    ends = (("left", sides["left"].at(top)), ("right", sides["right"].at(top)))
    if edge.along == "rows" and _is_inner(edge, named):
        to_top, right = edge.name in parted, edge.part == "right"
        footed = any(e.name == edge.name and e.part == "centre" for e in edges)
        # Of a gap that has come to nothing where its parts rejoin, both edges end in one place.
        headed = to_top or any(e.name == f"{edge.name} upper" for e in edges)
        foot = (edge.name, 1 if right and footed else 0)
        return foot, (_top(parted[edge.name]) if to_top else edge.name, 3 if right and headed else 2)
    if edge.along == "rows":
        side = edge.at or "left"
        low, high = rows.get(edge.name, (0, top))
        return (side, sides[side].at(low)), (side, sides[side].at(high))
    if edge.name == "start":
        return ("left", sides["left"].at(0)), ("right", sides["right"].at(0))
    if inner_top(edge.name):
        return (_top(inner_top(edge.name) - 1), 3), (_top(inner_top(edge.name)), 2)
    if edge.name in ("end", "shoulder"):
        if edge.part == "left":
            return ends[0], (_top(1), 2)
        return ((_top(max(parted.values(), default=1)), 3), ends[1]) if edge.part == "right" else ends
    if edge.part == "centre":
        return (edge.name, 0), (edge.name, 1)
    above = edge.name.removesuffix(" upper")
    is_gap = any(e.name == above and e.along == "rows" for e in edges)
    return ((above, 2), (above, 3)) if is_gap else ((above, 0), (above, 1))


def _top(number: int) -> str:
    """Where the corners at the top of an opening belong: that of the `number`th from the left of those that go there."""
    return f"{_TOP} {number}"


def _to_the_top(named: Sequence[NameEdge], outline: Shape) -> dict[str, int]:
    """By the name of an opening that goes to the top: which it is of these, from the left."""
    found: dict[str, OutlineGap] = {}
    for op in named:
        gaps = outline.gaps_at(op.from_row + 1)
        number = op.gap if isinstance(op, NameGap) else 1
        if op.where == "inner" and op.to_row == outline.top and number <= len(gaps):
            found[op.edge] = gaps[number - 1]
    order = sorted(found, key=lambda name: found[name].right[0].first)
    return {name: number for number, name in enumerate(order, 1)}


def _is_inner(edge: BedEdge, named: Sequence[NameEdge]) -> bool:
    return any(op.edge == edge.name and op.where == "inner" for op in named)


@record
class _Along:
    """Rows along one outer edge: the counters of those that are knitted, from the lowest up, and how far up the edge each lies."""

    rows: Sequence[int]
    lengths: Sequence[int]

    def at(self, row: int) -> int:
        """How far up the edge the row lies."""
        count = bisect_right(self.rows, row)
        return self.lengths[count - 1] if count else 0


def _along(outline: Shape, side: Side) -> _Along:
    """Rows that reach the edge count; each stretch of others takes off so many that corners about it are one."""
    reaching = {course.counter: reaches(course, side) for course in outline.outer(side)}
    rows = sorted(reaching)
    lengths: list[int] = []
    reached = held = 0
    before = True
    for row in rows:
        there = reaching[row]
        reached += there
        held += before and not there
        before = there
        lengths.append(reached - NEAR * held)
    return _Along(rows, lengths)


def _snapped(found: dict[tuple[str, BedPart], Corners]) -> dict[tuple[str, BedPart], Corners]:
    """Corners of one side that are nearly one are one."""
    rows: dict[str, list[int]] = {}
    for pair in found.values():
        for where, row in pair:
            if where in ("left", "right"):
                rows.setdefault(where, []).append(row)
    near: dict[Corner, Corner] = {}
    for where, some in rows.items():
        begun: int | None = None
        for row in sorted(set(some)):
            if begun is None or row - begun > NEAR:
                begun = row
            near[where, row] = (where, begun)
    return {key: (near.get(a, a), near.get(b, b)) for key, (a, b) in found.items()}


# ----------------------------------------------------------------- what has come together


@dataclass(slots=True)
class Meetings:
    """Corners (piece, copy, corner) that seams have brought together, and the sides that lie out together by them."""

    sides: BedSides = field(default_factory=BedSides)
    _same: dict[tuple[str, int, Corner], tuple[str, int, Corner]] = field(default_factory=dict)

    def one_of(self, corner: tuple[str, int, Corner]) -> tuple[str, int, Corner]:
        while corner in self._same:
            corner = self._same[corner]
        return corner

    def join(self, one: tuple[str, int, Corner], other: tuple[str, int, Corner]) -> None:
        a, b = self.one_of(one), self.one_of(other)
        if a != b:
            self._same[max(a, b)] = min(a, b)

    def meet(self, one: tuple[str, int, Corner], other: tuple[str, int, Corner]) -> bool:
        return self.one_of(one) == self.one_of(other)


def copies_of(copy: int, copies: int) -> Iterator[int]:
    """The copies that are meant: one, or (0) each."""
    yield from (copy,) if copy > 0 else range(1, copies + 1)
