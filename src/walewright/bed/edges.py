"""Edges of a finished piece: its start, its ends, and the stretches of row ends and of gaps that got a name."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import takewhile

from walewright.bed.density import Density
from walewright.bed.fabric import UPPER
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import Machine
from walewright.bed.model import INNER_TOP, BedEdge, BedPart, Course
from walewright.bed.outline import Between, OutlineGap, Shape, missing_row, reaches, row_edge
from walewright.bed.refusals import Refusal
from walewright.bed.strips import as_it_hangs, through_both
from walewright.knit.operations import NameEdge, NameGap, Side, other
from walewright.record import replace

SIDES: tuple[Side, Side] = ("left", "right")


def ended(m: Machine) -> Iterator[BedEdge]:
    """Edges of stitches that left the bed; after a slot's, that of the stitches cast on in their place."""
    for edge, first in _in_place(m):
        yield _measured(m, edge)
        last_loop = max(loop for point in edge.points for loop in point)
        at = m.course_of(last_loop)
        for course in m.courses:
            same_row = (course.counter, course.section) == (at.counter, at.section)
            same_needles = (course.first, course.last) == (first, first + edge.count - 1)
            if edge.live and course.apart and same_row and same_needles:
                name = edge.name if edge.part == "whole" else f"{edge.name} {edge.part}"
                yield _stitches(m, f"{name} {UPPER}", "whole", course)


def _in_place(m: Machine) -> list[tuple[BedEdge, int]]:
    """The edges with their first needles; what was closed as the end of a piece is a part of it where more than one was, called by
    its place from the left."""
    closed = sorted((first, n) for n, (edge, first) in enumerate(m.ended) if edge.name == "end" and not edge.live)
    found = list(m.ended)
    for place, (first, n) in enumerate(closed if len(closed) > 1 else (), 1):
        edge = m.ended[n][0]
        if place in (1, len(closed)):
            found[n] = replace(edge, part="left" if place == 1 else "right"), first
        else:
            found[n] = replace(edge, name=f"{INNER_TOP}{place}", part="whole"), first
    return found


def _stitches(m: Machine, name: str, part: BedPart, course: Course) -> BedEdge:
    ids = sorted(range(course.first_loop, course.first_loop + course.count), key=m.loops.slot.__getitem__)
    return _measured(m, BedEdge(name, part, "stitches", course.count, None, tuple((loop,) for loop in ids)))


def _measured(m: Machine, edge: BedEdge) -> BedEdge:
    """Stitches lie as wide as the row that they, or their chains, close."""
    loop = edge.points[0][0]
    while loop >= 0 and m.loops.kind[loop] in (LoopKind.CHAIN, LoopKind.CLOSED, LoopKind.SEWN):
        loop = m.loops.parent[loop]
    if loop < 0:
        return edge
    slots = _across(m.loops.slot[point[0]] for point in edge.points)
    return replace(edge, length_cm=_density(m).width_cm(m.course_of(loop), slots, len(slots)))


def _across(slots: Iterable[int]) -> tuple[int, ...]:
    """Those slots and the single ones between two of them: where a needle is out of work the edge is as wide as with its stitch."""
    there = set(slots)
    return tuple(sorted(there | {s + 1 for s in there if s + 2 in there}))


def _density(m: Machine) -> Density:
    return Density(m.bed.gauges, m.bed.fabrics)


def start(m: Machine, passes: tuple[Course, ...], rows: tuple[Course, ...]) -> list[BedEdge]:
    """What was cast on, rehung or picked up before the first of all `passes`, or else, on waste yarn, the stitches drawn through
    it (all of them: some may be held in the first row); as wide as the first of the piece's own `rows` lies. If these begin on
    an edging that was folded and hung, the first of them, which closes the fold, with the yarn laid over needles held in it."""
    if not rows:
        return []
    first = rows[0]
    if m.feet_hung_at is not None and m.feet_hung_at < first.first_loop:
        loops = [*range(first.first_loop, first.first_loop + first.count), *_laid_with(m, first)]
    else:
        before = [c for c in m.courses if c.first_loop < passes[0].first_loop]
        hung = [c for c in before if c.kind in ("cast on", "rehang", "pick up")]
        loops = [loop for c in hung for loop in range(c.first_loop, c.first_loop + c.count)] or list(feet(m))
    points = tuple((loop,) for loop in sorted(loops, key=m.loops.slot.__getitem__))
    slots = _across(m.loops.slot[loop] for (loop,) in points)
    length = _density(m).width_cm(first, slots, len(slots))
    return [BedEdge("start", "whole", "stitches", len(points), length, points)]


def _laid_with(m: Machine, row: Course) -> Iterator[int]:
    """The loops laid over needles that are held in a row."""
    after = m.courses[m.courses.index(row) + 1 :]
    for course in takewhile(lambda course: course.kind != "knit", after):
        if course.kind == "laid":
            yield from range(course.first_loop, course.first_loop + course.count)


def feet(m: Machine) -> tuple[int, ...]:
    """Loops drawn through waste or ravel yarn, from left to right."""
    parents = m.loops.parent
    found: list[int] = []
    for course in m.courses:
        ids = range(course.first_loop, course.first_loop + course.count)
        if min(parents[ids.start : ids.stop]) < NOTHING:
            found += [loop for loop in ids if parents[loop] < NOTHING]
    return tuple(sorted(found, key=m.loops.slot.__getitem__))


def named(m: Machine, op: NameEdge, outline: Shape | None) -> list[BedEdge] | Refusal:
    """The edges that a name is given to, measured; or why the rows named are on no such edge."""
    after, to = op.from_row, op.to_row
    if outline is None:
        return m.refuse("rows-ambiguous", edge=op.edge, after=after, to=to)
    if after >= to:
        return m.refuse("edge-without-rows/none", edge=op.edge, after=after, to=to)
    if op.where == "inner":
        return _inner(m, op, outline)
    if op.where not in ("outer", *SIDES):
        return m.refuse("edge-where", where=op.where, edge=op.edge)
    sides = [side for side in SIDES if op.where in ("outer", side)]
    found: list[BedEdge] = []
    for side in sides:
        chain = outline.outer(side)
        refusal = _row_missing(m, op, side, chain)
        if refusal is not None:
            return refusal
        found.append(_outer_edge(m, op, side, chain))
    if found[0].count != found[-1].count:
        left, right = found
        return m.refuse("edge-sides-differ", edge=op.edge, left=left.count, right=right.count)
    if not found[0].count:
        return (
            m.refuse("edge-without-rows/on-side", edge=op.edge, after=after, to=to, side=sides[0])
            if len(sides) == 1
            else m.refuse("edge-without-rows/at-either-side", edge=op.edge, after=after, to=to)
        )
    return found


def _row_missing(m: Machine, op: NameEdge, side: Side, chain: tuple[Course, ...]) -> Refusal | None:
    row = missing_row(chain, op.from_row, op.to_row)
    if row is None:
        return None
    return m.refuse("rows-not-knitted", edge=op.edge, after=op.from_row, to=op.to_row, row=row, side=side)


def _outer_edge(m: Machine, op: NameEdge, side: Side, chain: tuple[Course, ...]) -> BedEdge:
    """It begins beside the last row up to there that reached the edge."""
    rows = [c for c in chain if op.from_row < c.counter <= op.to_row and reaches(c, side)]
    each = op.where == "outer"
    if not rows:
        return BedEdge(op.edge, side, "rows", 0, None, (), each=each, at=side)
    below = next((c for c in reversed(chain) if c.counter <= op.from_row and reaches(c, side)), None)
    found = row_edge(op.edge, side, rows=rows, below=below, between=_between(m), density=_density(m), each=each)
    return as_it_hangs(m, through_both(m, replace(found, part=side), rows, chain))


def _inner(m: Machine, op: NameEdge, outline: Shape) -> list[BedEdge] | Refusal:
    """The two row edges of a gap, the stitches chained off at its foot and those cast on above it."""
    gaps = outline.gaps_at(op.from_row + 1)
    number = op.gap if isinstance(op, NameGap) else 1
    if (
        number > len(gaps)
        or (len(gaps) > 1 and not isinstance(op, NameGap))
        or (gaps[number - 1].closed and op.to_row > gaps[number - 1].top)
    ):
        return m.refuse("not-parted", edge=op.edge, after=op.from_row, to=op.to_row)
    gap = gaps[number - 1]
    found: list[BedEdge] = []
    for side in SIDES:
        refusal = _row_missing(m, op, side, gap.arm(side))
        if refusal is not None:
            return refusal
        found.append(_inner_edge(m, op, side, gap))
    for course in _in_gap(m, gap, op.from_row, "first"):
        if course.kind == "close":
            found.append(_stitches(m, op.edge, "centre", course))
    for course in _in_gap(m, gap, op.to_row, "last"):
        if course.apart:
            found.append(_stitches(m, f"{op.edge} {UPPER}", "whole", course))
    return found


def _in_gap(m: Machine, gap: OutlineGap, counter: int, which: str) -> Iterator[Course]:
    """Courses of hand work at that reading of the counter, on needles between the two parts' first or last rows."""
    left, right = (arm[0] if which == "first" else arm[-1] for arm in (gap.left, gap.right))
    for course in m.courses:
        if course.counter == counter and left.last < course.first and course.last < right.first:
            yield course


def _inner_edge(m: Machine, op: NameEdge, side: Side, gap: OutlineGap) -> BedEdge:
    """The left part's right end, the right part's left end; it begins beside the stitches taken out of the middle."""
    end, arm = other(side), gap.arm(side)
    rows = [c for c in arm if op.from_row < c.counter <= op.to_row]
    below: Course | int | None = next((c for c in arm if c.counter == op.from_row), None)
    if below is None:
        # The left part may have been cast off at once; the right one has a row first.
        below = gap.right[0].first - (1 if side == "left" else 0)
        for first, count in _taken_out(m, op, gap):
            below = first - 1 if side == "left" else first + count
    return replace(row_edge(op.edge, end, rows, below, _between(m), _density(m), each=False), part=side)


def _taken_out(m: Machine, op: NameEdge, gap: OutlineGap) -> Iterator[tuple[int, int]]:
    """First slot and number of the stitches taken at the foot of the gap."""
    for edge, first in m.ended:
        if edge.name == op.edge and edge.part == "centre":
            yield first, edge.count
    for course in m.courses:
        # The first rows of the parts may have been shaped already: what is between them lies inside their outer ends.
        if course.kind == "close" and course.counter == op.from_row and gap.left[0].first < course.first < gap.right[0].last:
            yield course.first, course.count


def _between(m: Machine) -> Between:
    return Between(tuple(c for c in m.courses if c.kind in ("cast off", "cast on")), tuple(m.spreads))
