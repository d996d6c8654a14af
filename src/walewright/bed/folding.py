"""Folded edgings: the first row of a block hung on its needles again."""

from __future__ import annotations

from itertools import pairwise
from typing import Literal

from walewright.bed.edges import feet
from walewright.bed.loops import LoopKind
from walewright.bed.machine import Machine
from walewright.bed.model import Course
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Refusal
from walewright.knit.operations import HangFeet

FoldedTo = Literal["front", "behind"]


def hang_feet(m: Machine, op: HangFeet) -> Refusal | None:
    """A loop without yarn for each, drawn from that of the first row; the next row knits it with what the needle carries."""
    onto = [slot + m.half for slot in op.onto]
    if any(b <= a for a, b in pairwise(onto)):
        return m.refuse("needles-reversed/first-row")
    if op.row:
        first_row = _free(m, _row(m, op.row))
    elif m.feet_hung_at is not None:
        return m.refuse("edge-taken/own-start")
    else:
        first_row = _free(m, _first_row(m))
    if not first_row:
        return m.refuse("fold-without-rows")
    if len(onto) != len(first_row):
        return m.refuse("hang-feet-count", feet=len(first_row), needles=len(onto))
    for i in onto:
        refusal = needs_work(m, i, "take-a-loop")
        if refusal is not None:
            return refusal
    low = op.row or max(m.course_of(first_row[0]).counter, 1)
    m.folds.append((m.section, low, m.counter))
    begin = len(m.loops.parent)
    for i, foot in zip(onto, first_row, strict=True):
        m.hang(i, (m.loops.add(i - m.half, LoopKind.REHUNG, (foot,)),))
    m.course("hang feet", onto[0], onto[-1], begin)
    way: FoldedTo = "behind" if op.behind else "front"
    if op.row:
        m.folded_above = way
    else:
        m.feet_hung_at, m.folded = begin, way
    return None


def _made_as(course: Course) -> tuple[object, ...]:
    """What all courses of one row have in common."""
    return course.kind, course.cast_on, course.apart, course.counter, course.section


def _first_row(m: Machine) -> tuple[int, ...]:
    """The feet on waste yarn, what was cast on, or the first row on loops hung from elsewhere; from left to right."""
    if not m.courses:
        return ()
    found = feet(m)
    if not found:
        first = m.courses[0]
        if first.kind != "cast on":
            first = next((course for course in m.courses if course.kind == "knit"), first)
        same = [c for c in m.courses if _made_as(c) == _made_as(first)]
        ids = [loop for c in same for loop in range(c.first_loop, c.first_loop + c.count)]
        found = tuple(sorted(ids, key=m.loops.slot.__getitem__))
    return found


def _row(m: Machine, row: int) -> tuple[int, ...]:
    """The loops of the last row that brought the counter there, from left to right."""
    made = [c for c in m.courses if c.kind == "knit" and c.counter == row]
    same = [c for c in made if c.section == made[-1].section]
    ids = [loop for c in same for loop in range(c.first_loop, c.first_loop + c.count)]
    return tuple(sorted(ids, key=m.loops.slot.__getitem__))


def _free(m: Machine, row: tuple[int, ...]) -> tuple[int, ...]:
    """Nothing, as long as those very loops are on the needles."""
    return () if set(row) & {*m.top, *(loop for more in m.more.values() for loop in more)} else row
