"""Loops that wait on ravel cord: laid in the hooks by hand, the needles fully back; and their way back to work."""

from __future__ import annotations

from walewright.bed.loops import NOTHING
from walewright.bed.machine import CORDED, HELD, NON_WORKING, Machine
from walewright.bed.refusals import Refusal, purpose_of
from walewright.knit.operations import DrawCord, LayCord


def lay_cord(m: Machine, op: LayCord) -> Refusal | None:
    """By hand, wherever the carriage stands. The yarn in use may not hang from the stitches that go: it could not be drawn after
    them."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        refusal = _can_wait(m, i)
        if refusal is not None:
            return refusal
    if m.yarn is not None and m.yarn_side is not None and first <= m.yarn_at <= last:
        return m.refuse("cord-under-yarn", yarn=m.yarn, needle=m.at(m.yarn_at))
    m.set_position(first, last, CORDED)
    m.kept.corded.append((len(m.loops.parent), m.counter, op.first, op.last))
    return None


def _can_wait(m: Machine, index: int) -> Refusal | None:
    if m.position[index] == CORDED:
        return m.refuse("already-on-cord", needle=m.at(index))
    if m.position[index] == NON_WORKING:
        return m.refuse("not-in-work", needle=m.at(index), purpose=purpose_of("wait-on-cord"))
    if m.top[index] == NOTHING:
        return m.refuse("cord-empty", needle=m.at(index))
    if m.top[index] < 0:
        return m.refuse("only-waste-yarn/needle", needle=m.at(index))
    return None


def draw_cord(m: Machine, op: DrawCord) -> Refusal | None:
    """The whole cord comes out: what it kept and is not right out by then would drop."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        if m.position[i] != CORDED:
            return m.refuse("not-on-cord", needle=m.at(i))
    for end, beside in ((first, first - 1), (last, last + 1)):
        if 0 <= beside < len(m.position) and m.position[beside] == CORDED and _cord_of(m, end) == _cord_of(m, beside):
            return m.refuse("cord-drawn-in-part", first=m.at(first), last=m.at(last), needle=m.at(beside))
    m.set_position(first, last, HELD)
    return None


def _cord_of(m: Machine, index: int) -> int:
    """Which length of cord keeps the loop of a needle: each time it is laid, it is another. Parts beside a slit wait on two."""
    slot = index - m.half
    return max((n for n, (_, _, first, last) in enumerate(m.kept.corded) if first <= slot <= last), default=-1)
