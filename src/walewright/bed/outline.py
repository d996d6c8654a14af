"""The outline of a piece, read off its passes: which pass ends lie on which edge, and how long the edge is.

A piece begins with rows over the whole width; it may then part, and the parts are worked one after another, told apart by the
counter being set back between them. Parts may part again, and come together with those beside them. So an outer edge runs through
the whole rows, the outermost part's rows, the whole rows again, and so on up, and the edge of a gap likewise.

A row lies on an outer edge only if its pass worked the outermost loop on the bed: the short rows of a wedge end inside the
piece and lengthen no edge.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby, pairwise, takewhile

from walewright.bed.density import Density
from walewright.bed.model import BedEdge, Course, Hung
from walewright.bed.slopes import RowEnd, length_as_worn, loose_cm
from walewright.knit.operations import Side
from walewright.record import record, replace

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


@record
class OutlinePart:
    """Passes over the same stitches, one row above the other. `above`: the numbers of the parts that go on from it, from left to
    right: several where it parts, one where parts come together."""

    passes: tuple[Course, ...]
    above: tuple[int, ...] = ()

    @property
    def top(self) -> int:
        """Its last row."""
        return self.passes[-1].counter

    @property
    def span(self) -> tuple[int, int]:
        """The outermost slots that any of its passes worked."""
        return min(course.first for course in self.passes), max(course.last for course in self.passes)


@record
class OutlineGap:
    """What lies between two parts from row `parting` up: the passes along its left edge and those along its right one. `closed`:
    the parts come together again."""

    parting: int
    left: tuple[Course, ...]
    right: tuple[Course, ...]
    closed: bool

    @property
    def top(self) -> int:
        """The last row that any of the two has."""
        return max(self.left[-1].counter, self.right[-1].counter)

    def arm(self, side: Side) -> tuple[Course, ...]:
        """The passes along the edge at that side."""
        return self.left if side == "left" else self.right


BesideGap = tuple[Course | None, Course | None]
"""The pass at the left of a gap and that at its right, where there is one."""


@record
class Shape:
    """The parts, those that lie on no other as `roots` from left to right, and the gaps between them."""

    parts: tuple[OutlinePart, ...]
    roots: tuple[int, ...]
    gaps: tuple[OutlineGap, ...]

    def outer(self, side: Side) -> tuple[Course, ...]:
        """Passes along one outer edge, all the way up."""
        chain = _chain(self.parts, self.roots[0 if side == "left" else -1], 0 if side == "left" else -1) if self.roots else ()
        return tuple(course for number in chain for course in self.parts[number].passes)

    @property
    def top(self) -> int:
        """The last row that any part has."""
        return max((part.top for part in self.parts), default=0)

    def gaps_at(self, row: int) -> tuple[OutlineGap, ...]:
        """Those between parts at that row, from left to right."""
        found = [gap for gap in self.gaps if gap.parting < row <= gap.top]
        return tuple(sorted(found, key=lambda gap: gap.right[0].first))


def beside_gaps(shape: Shape) -> dict[int, tuple[BesideGap, ...]]:
    """By the rows where the piece is in parts: of each gap, from left to right, the passes beside it."""
    rows = sorted({course.counter for gap in shape.gaps for course in (*gap.left, *gap.right)})
    passes = {id(gap): [{c.counter: c for c in arm} for arm in (gap.left, gap.right)] for gap in shape.gaps}
    found: dict[int, tuple[BesideGap, ...]] = {}
    for row in rows:
        pairs = (passes[id(gap)] for gap in shape.gaps_at(row))
        found[row] = tuple((left.get(row), right.get(row)) for left, right in pairs)
    return found


def shape(passes: Sequence[Course]) -> Shape | None:
    """None if the counter was set back over the same needles, so that a row number means two rows."""
    if _twice(passes):
        return None
    cut = _cut([list(group) for _, group in groupby(passes, key=lambda course: (course.section, course.stretch))])
    loose = [OutlinePart(tuple(group)) for group in cut]
    parts = tuple(replace(part, above=tuple(_above(part, loose))) for part in loose)
    begun = {number for part in parts for number in part.above}
    lowest = min((part.passes[0].counter for part in parts), default=0)
    roots = [n for n, part in enumerate(parts) if n not in begun and part.passes[0].counter == lowest]
    roots.sort(key=lambda n: parts[n].span)
    beside = [(lowest - 1, tuple(roots)), *((part.top, part.above) for part in parts)]
    gaps = (_gap(parts, parting, *pair) for parting, above in beside for pair in pairwise(above))
    return Shape(parts, tuple(roots), tuple(gaps))


def _twice(passes: Sequence[Course]) -> bool:
    """Whether two rows of one number lie over the same needle."""
    rows: dict[int, list[Course]] = {}
    for course in passes:
        rows.setdefault(course.counter, []).append(course)
    return any(a.last >= b.first for row in rows.values() for a, b in pairwise(sorted(row, key=lambda course: course.first)))


def _cut(groups: list[list[Course]]) -> list[list[Course]]:
    """Groups of passes cut where a part was left that is gone on with later, the counter set back to that row."""
    done: list[list[Course]] = []
    for group in groups:
        parting = group[0].counter - 1
        span = OutlinePart(tuple(group)).span
        for number, before in enumerate(done):
            low, high = [c for c in before if c.counter <= parting], [c for c in before if c.counter > parting]
            if low and high and _meet(OutlinePart(tuple(low)).span, span):
                done[number : number + 1] = [low, high]
                break
        done.append(group)
    return done


def _meet(one: tuple[int, int], other: tuple[int, int]) -> bool:
    return one[0] <= other[1] and other[0] <= one[1]


def _above(part: OutlinePart, parts: Sequence[OutlinePart]) -> list[int]:
    found = [n for n, other in enumerate(parts) if other.passes[0].counter == part.top + 1 and _meet(part.span, other.span)]
    return sorted(found, key=lambda n: parts[n].span)


def _chain(parts: Sequence[OutlinePart], number: int, towards: int) -> list[int]:
    """From a part upwards, along its left edge (`towards` 0) or its right one (-1)."""
    found = [number]
    while parts[found[-1]].above:
        found.append(parts[found[-1]].above[towards])
    return found


def _gap(parts: Sequence[OutlinePart], parting: int, left: int, right: int) -> OutlineGap:
    """That between two parts side by side."""
    arms = _chain(parts, left, -1), _chain(parts, right, 0)
    # From where they come together the one may part again, to the right of this gap or to its left.
    meet = next((n for n in arms[0] if n in arms[1]), None)
    one, other = (tuple(c for n in takewhile(lambda n: n != meet, arm) for c in parts[n].passes) for arm in arms)
    return OutlineGap(parting, one, other, meet is not None)


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


@record
class Between:
    """What happened to an edge between two of its rows."""

    casts: tuple[Course, ...]
    """Stitches cast off or on at the side, in order."""
    spreads: tuple[Hung, ...]
    """Loops hung back on other needles."""

    def at_edge(self, side: Side, below: Course | None, course: Course) -> list[Course]:
        """Those casts between the row `below` (None: that where the piece parted) and `course`, which goes on with the edge: made
        after the one or before the other, for other parts may have been worked meanwhile."""
        if not self.casts:
            return []
        rows = {(course.section, course.counter - 1), *([(below.section, below.counter)] if below is not None else ())}
        since = -1 if below is None else below.first_loop
        found = [c for c in self.casts if since < c.first_loop < course.first_loop and (c.section, c.counter) in rows]
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
    """The edge along the `side` ends of `rows`. It begins at the end of the row `below`, or beside that slot (then what was cast
    off or on before the first row belongs to it), or (None) straight above itself.

    Points are the ends of the rows, and the stitches cast off or on on the way: each a loop of its own. What lies below the first
    row is the end of a row of another edge, or was cast on, and belongs to the start. The length is that
    of the edge as it is worn (`slopes`). Loops hung back on fewer or more needles are drawn together or apart, not shaped: that is
    no way sideways along the edge.
    """
    points: list[tuple[int, ...]] = []
    ends: list[RowEnd | None] = []
    at = end_slot(rows[0], side) if below is None else below if isinstance(below, int) else end_slot(below, side)
    previous = below if isinstance(below, Course) else None
    for course in rows:
        casts = between.at_edge(side, previous, course) if previous is not None or isinstance(below, int) else []
        for cast in casts:
            points += [(loop,) for loop in range(cast.first_loop, cast.first_loop + cast.count)]
        points.append((end_loop(course, side),))
        at = between.carried(side, course.first_loop if previous is None else previous.first_loop, course, at)
        # A panel that the edge has come into changes neither the rows nor what is shaped beside it.
        gauge = density.base(course)
        moved = end_slot(course, side) - at
        step = abs(moved) > BY_TRANSFER or (abs(moved) > 1 and bool(casts))
        ends.append(RowEnd(moved / gauge.stitches_per_cm, 1 / gauge.rows_per_cm, step) if gauge is not None else None)
        at = end_slot(course, side)
        previous = course
    known = [end for end in ends if end is not None]
    length = length_as_worn(known) if len(known) == len(ends) else None
    loose = loose_cm(known, length or 0.0)
    return BedEdge(name, "whole", "rows", len(rows), length, tuple(points), each=each, at=side, loose_cm=loose)
