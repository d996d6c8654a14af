"""Folded edgings: the first row of a block hung on its needles again."""

from __future__ import annotations

from itertools import pairwise

from walewright.bed.edges import feet
from walewright.bed.loops import LoopKind
from walewright.bed.machine import Machine
from walewright.bed.model import Course
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Refusal
from walewright.knit.operations import HangFeet


def hang_feet(m: Machine, op: HangFeet) -> Refusal | None:
    """A loop without yarn for each, drawn from that of the first row; the next row knits it with what the needle carries."""
    onto = [slot + m.half for slot in op.onto]
    if any(b <= a for a, b in pairwise(onto)):
        return m.refuse("needles-reversed/first-row")
    if m.feet_hung_at is not None:
        return m.refuse("edge-taken/own-start")
    first_row = _first_row(m)
    if not first_row:
        return m.refuse("fold-without-rows")
    if len(onto) != len(first_row):
        return m.refuse("hang-feet-count", feet=len(first_row), needles=len(onto))
    for i in onto:
        refusal = needs_work(m, i, "take-a-loop")
        if refusal is not None:
            return refusal
    begin = len(m.loops.parent)
    for i, foot in zip(onto, first_row, strict=True):
        m.hang(i, (m.loops.add(i - m.half, LoopKind.REHUNG, (foot,)),))
    m.course("hang feet", onto[0], onto[-1], begin)
    m.feet_hung_at = begin
    m.folded = "behind" if op.behind else "front"
    return None


def _made_as(course: Course) -> tuple[object, ...]:
    """What all courses of one row have in common."""
    return course.kind, course.cast_on, course.apart, course.counter, course.section


def _first_row(m: Machine) -> tuple[int, ...]:
    """The feet on waste yarn, what was cast on, or the first row on loops hung from elsewhere; from left to right.

    Nothing, as long as those very loops are on the needles."""
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
    return () if set(found) & {*m.top, *(loop for more in m.more.values() for loop in more)} else found
