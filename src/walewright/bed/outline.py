"""The outline of a piece, read off its passes: which pass ends lie on which edge, and how long the edge is.

A piece is a sequence of stretches. Each begins with rows over the whole width; it may then part, and the parts are worked one
after another, told apart by the counter being set back between them. Where the parts come together again the next stretch
begins. So an outer edge runs through the whole rows, the outermost part's rows, the whole rows again, and so on up.

A row lies on an outer edge only if its pass worked the outermost loop on the bed: the short rows of a wedge end inside the
piece and lengthen no edge.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import groupby, pairwise

from walewright.bed.density import Density
from walewright.bed.model import BedEdge, Course, Hung
from walewright.bed.slopes import RowEnd, length_as_worn, loose_cm
from walewright.knit.operations import Side

BY_TRANSFER = 2
"""Stitches by which an edge moves at most without casting off or on: two laid on their neighbours at once."""


def whole_rows(passes: Sequence[Course]) -> tuple[Course, ...]:
    """The blocks of a picture row put together: one course a row and part, with the yarn that most of it is of."""
    rows: list[Course] = []
    widest = 0
    for course in passes:
        last = rows[-1] if rows else None
        if last is None or _row(last) != _row(course) or course.first != last.last + 1:
            rows.append(course)
            widest = course.count
            continue
        whole = replace(last, last=course.last, count=last.count + course.count)
        if course.count > widest:
            widest = course.count
            whole = replace(whole, yarn=course.yarn, run=course.run)
        rows[-1] = whole
    return tuple(rows)


def _row(course: Course) -> tuple[int, int, int]:
    return course.counter, course.section, course.stretch


@dataclass(frozen=True, slots=True)
class OutlineStretch:
    """`trunk` passes over the whole width up to `parting`, then `arms`, each a part's own passes, from left to right."""

    trunk: tuple[Course, ...]
    parting: int
    arms: tuple[tuple[Course, ...], ...]

    def outer(self, side: Side) -> tuple[Course, ...]:
        """Passes whose `side` end belongs to the piece's outer edge, if they reach it."""
        if not self.arms:
            return self.trunk
        return self.trunk + (self.arms[0] if side == "left" else self.arms[-1])

    @property
    def top(self) -> int:
        """The last row that any part has."""
        return max((course.counter for arm in (self.trunk, *self.arms) for course in arm), default=0)


@dataclass(frozen=True, slots=True)
class Shape:
    """The stretches, from the start up."""

    stretches: tuple[OutlineStretch, ...]

    def outer(self, side: Side) -> tuple[Course, ...]:
        """Passes along one outer edge, all the way up."""
        return tuple(course for stretch in self.stretches for course in stretch.outer(side))

    def inner(self, part: Side) -> tuple[Course, ...]:
        """Passes of the left or of the right part, wherever the piece is in two."""
        arms = [stretch.arms[0 if part == "left" else 1] for stretch in self.stretches if len(stretch.arms) == 2]
        return tuple(course for arm in arms for course in arm)

    def parted(self, after: int, to: int) -> OutlineStretch | None:
        """The stretch in which the piece is in two parts all the rows after+1 .. to."""
        return next((s for s in self.stretches if len(s.arms) == 2 and s.parting <= after and to <= s.top), None)


def shape(passes: Sequence[Course]) -> Shape | None:
    """None if the counter was set back over the same needles, so that a row number means two rows."""
    stretches: list[OutlineStretch] = []
    for _, group in groupby(passes, key=lambda course: course.stretch):
        found = _stretch(list(group))
        if found is None:
            return None
        stretches.append(found)
    for below, above in pairwise(stretches):
        # Whole rows go on counting from where the parts came together.
        if above.trunk and above.trunk[0].counter <= below.top:
            return None
    return Shape(tuple(stretches))


def _stretch(passes: Sequence[Course]) -> OutlineStretch | None:
    groups = [list(group) for _, group in groupby(passes, key=lambda course: course.section)]
    if len(groups) < 2:
        return OutlineStretch(tuple(passes), passes[-1].counter, ())
    parting = min(group[0].counter for group in groups[1:]) - 1
    trunk = tuple(course for course in groups[0] if course.counter <= parting)
    arms = [arm for arm in ([c for c in groups[0] if c.counter > parting], *groups[1:]) if arm]
    arms.sort(key=lambda arm: min(course.first for course in arm))
    for one, beside in pairwise(arms):
        if max(course.last for course in one) >= min(course.first for course in beside):
            return None
    return OutlineStretch(trunk, parting, tuple(map(tuple, arms)))


def reaches(course: Course, side: Side) -> bool:
    """Did the pass work the outermost loop on the bed?"""
    return course.first == course.live_first if side == "left" else course.last == course.live_last


def end_slot(course: Course, side: Side) -> int:
    """The outermost slot of a course at one side."""
    return course.first if side == "left" else course.last


def end_loop(course: Course, side: Side) -> int:
    """The outermost loop of a course at one side."""
    return course.first_loop if side == "left" else course.first_loop + course.count - 1


def missing_row(chain: Sequence[Course], after: int, to: int) -> int | None:
    """The first row of after+1 .. to that no pass of `chain` knitted."""
    knitted = {course.counter for course in chain}
    return next((row for row in range(after + 1, to + 1) if row not in knitted), None)


@dataclass(frozen=True, slots=True)
class Between:
    """What happened to an edge between two of its rows."""

    casts: tuple[Course, ...]
    """Stitches cast off or on at the side, in order."""
    spreads: tuple[Hung, ...]
    """Loops hung back on other needles."""

    def at_edge(self, side: Side, since: int, course: Course) -> list[Course]:
        """Those casts after the loop `since` that lie at the edge which `course` goes on with."""
        found = [cast for cast in self.casts if since < cast.first_loop < course.first_loop]
        if side == "left":
            # Cast on, they lie within the row; cast off, beyond its end.
            return [c for c in found if c.first <= course.first <= c.last or c.last < course.first]
        return [c for c in found if c.first <= course.last <= c.last or c.first > course.last]

    def carried(self, side: Side, since: int, course: Course, at: int) -> int:
        """Where the end at slot `at` lies after the loops were hung back."""
        for hung in self.spreads:
            if since < hung.before <= course.first_loop:
                old, new = (hung.old[0], hung.new[0]) if side == "left" else (hung.old[1], hung.new[1])
                at = at + new - old if hung.old[0] <= at <= hung.old[1] else at
        return at


def row_edge(
    name: str, side: Side, rows: Sequence[Course], below: Course | int | None, between: Between, density: Density, each: bool
) -> BedEdge:
    """The edge along the `side` ends of `rows`. It begins at the end of the row `below`, or beside that slot, or (None) straight
    above itself.

    Points are the ends of the rows, and the stitches cast off or on on the way: each a loop of its own. What lies below the first
    row is the end of a row of another edge, or was cast on, and belongs to the start. The length is that
    of the edge as it is worn (`slopes`). Loops hung back on fewer or more needles are drawn together or apart, not shaped: that is
    no way sideways along the edge.
    """
    points: list[tuple[int, ...]] = []
    ends: list[RowEnd | None] = []
    at = end_slot(rows[0], side) if below is None else below if isinstance(below, int) else end_slot(below, side)
    previous = below.first_loop if isinstance(below, Course) else rows[0].first_loop
    for course in rows:
        casts = between.at_edge(side, previous, course)
        for cast in casts:
            points += [(loop,) for loop in range(cast.first_loop, cast.first_loop + cast.count)]
        points.append((end_loop(course, side),))
        at = between.carried(side, previous, course, at)
        # A panel that the edge has come into changes neither the rows nor what is shaped beside it.
        gauge = density.base(course)
        moved = end_slot(course, side) - at
        step = abs(moved) > BY_TRANSFER or (abs(moved) > 1 and bool(casts))
        ends.append(RowEnd(moved / gauge.stitches_per_cm, 1 / gauge.rows_per_cm, step) if gauge is not None else None)
        at = end_slot(course, side)
        previous = course.first_loop
    known = [end for end in ends if end is not None]
    length = length_as_worn(known) if len(known) == len(ends) else None
    loose = loose_cm(known, length or 0.0)
    return BedEdge(name, "whole", "rows", len(rows), length, tuple(points), each=each, at=side, loose_cm=loose)
