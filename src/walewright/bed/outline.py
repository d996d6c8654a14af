"""The outline of a piece, read off its passes: which pass ends lie on which edge, and how long the edge is.

A row lies on an outer edge only if its pass worked the outermost loop on the bed: the short rows of a wedge end inside the
piece and lengthen no edge. Parts of a parted piece are told apart by the counter being set back between them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from walewright.bed.model import Course, Edge, Gauge
from walewright.knit.operations import Side

Gauges = Mapping[tuple[str, str], Gauge]


@dataclass(frozen=True, slots=True)
class Shape:
    """`trunk` passes over the whole width up to `parting`, then `arms`, each a part's own passes, from left to right."""

    trunk: tuple[Course, ...]
    parting: int
    arms: tuple[tuple[Course, ...], ...]

    def outer(self, side: Side) -> tuple[Course, ...]:
        """Passes whose `side` end belongs to the piece's outer edge, if they reach it."""
        if not self.arms:
            return self.trunk
        return self.trunk + (self.arms[0] if side == "left" else self.arms[-1])


def shape(passes: Sequence[Course]) -> Shape | None:
    """None if the counter was set back over the same needles, so that a row number means two rows."""
    sections: dict[int, list[Course]] = {}
    for course in passes:
        sections.setdefault(course.section, []).append(course)
    groups = list(sections.values())
    if len(groups) < 2:
        return Shape(tuple(passes), passes[-1].counter if passes else 0, ())
    parting = min(group[0].counter for group in groups[1:]) - 1
    trunk = tuple(course for course in groups[0] if course.counter <= parting)
    arms = [arm for arm in ([c for c in groups[0] if c.counter > parting], *groups[1:]) if arm]
    arms.sort(key=lambda arm: min(course.first for course in arm))
    for one, beside in pairwise(arms):
        if max(course.last for course in one) >= min(course.first for course in beside):
            return None
    return Shape(trunk, parting, tuple(map(tuple, arms)))


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


def row_edge(
    name: str,
    side: Side,
    rows: Sequence[Course],
    below: int | None,
    casts: Sequence[Course],
    gauges: Gauges,
    each: bool,
) -> Edge:
    """The edge along the `side` ends of `rows`, which begins beside slot `below` (None: straight above itself).

    Points are the ends of the rows, one more for the beginning, and the chains cast off on the way. The length is that of
    the polyline through the row ends: each row one step up and as many stitches sideways as the end moved.
    """
    points: list[tuple[int, ...]] = [(end_loop(rows[0], side),)]
    length: float | None = 0.0
    at = end_slot(rows[0], side) if below is None else below
    previous = -1
    for course in rows:
        for cast in casts:
            if previous < cast.first_loop < course.first_loop and cast.section == course.section:
                points += [(loop,) for loop in range(cast.first_loop, cast.first_loop + cast.count)]
        points.append((end_loop(course, side),))
        gauge = gauges.get((course.yarn, course.tension))
        if gauge is None or length is None:
            length = None
        else:
            across = (end_slot(course, side) - at) / gauge.stitches_per_cm
            length += hypot(across, 1 / gauge.rows_per_cm)
        at = end_slot(course, side)
        previous = course.first_loop
    return Edge(name, side, "rows", len(rows), length, tuple(points), each=each)
