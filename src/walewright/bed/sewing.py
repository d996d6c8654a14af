"""Casting off by back-stitch, with the tail of the yarn."""

from __future__ import annotations

from walewright.bed.closing import ended_by, stitches_there
from walewright.bed.density import Density
from walewright.bed.loops import NOTHING, SEWN_COURSE, LoopKind
from walewright.bed.machine import NON_WORKING, Machine, Refusal
from walewright.bed.pending import Tail
from walewright.bed.strands import REACH
from walewright.knit.operations import SewOff

WIDTHS = 3
"""Length of the tail in widths of the stitches (common practice)."""


def sew_off(m: Machine, op: SewOff) -> Refusal | None:
    """A back-stitch per needle, through its loops and the back-stitch before; the last is fastened."""
    first, last = m.span(op.first, op.last)
    tail = m.pending.tail
    if m.yarn is not None and not m.fastened:
        return m.refuse("sew-off-yarn-unbroken", f"the {m.yarn} is not broken off, so there is no tail to sew with", yarn=m.yarn)
    if tail is None:
        return m.refuse("sew-off-without-tail", "no tail of a broken yarn is left to sew with")
    refusal = stitches_there(m, first, last, "to be sewn off", "sew-off-empty") or _at_tail(m, op, tail)
    if refusal is not None:
        return refusal
    if any(m.top[i] < NOTHING for i in range(first, last + 1)):
        return m.refuse("only-waste-yarn", f"{m.name(first)} to {m.name(last)} carry only waste yarn", first, last)
    width = Density(m.bed.gauges, m.bed.fabrics).width_cm(
        m.course_of(m.top[first]), range(op.first, op.last + 1), op.last - op.first + 1
    )
    if width is not None and tail.cm < WIDTHS * width:
        return m.refuse(
            "tail-too-short",
            f"the tail of the {tail.yarn} is {tail.cm} cm long, and {m.name(first)} to {m.name(last)} are {width:.0f} cm wide: "
            f"sewing off takes {WIDTHS} widths",
            first,
            last,
            tail_cm=tail.cm,
            width_cm=round(width),
        )
    begin = len(m.loops.parent)
    sewn: list[int] = []
    for i in range(last, first - 1, -1) if op.start == "right" else range(first, last + 1):
        sewn.append(m.loops.add(i - m.half, LoopKind.SEWN, (*m.lift(i), *sewn[-1:])))
    m.set_position(first, last, NON_WORKING)
    m.course(SEWN_COURSE, first, last, begin, op.start, tail.run, (tail.yarn, tail.tension))
    m.fastened_loops.append(sewn[-1])
    m.pending.tail = None
    if m.working_ends() is None:
        ended_by(m, sewn, first)
    return None


def _at_tail(m: Machine, op: SewOff, tail: Tail) -> Refusal | None:
    first, last = m.span(op.first, op.last)
    outermost = last if op.start == "right" else first
    if (first, last) != m.working_ends():
        return m.refuse(
            "sew-off-not-all", f"{m.name(first)} to {m.name(last)} are sewn off, but they are not all stitches in work", first, last
        )
    if tail.side != op.start or abs(tail.at - outermost) > REACH:
        where = "hangs from no stitch" if tail.side is None else f"hangs at the {tail.side}, at needle {m.name(tail.at)}"
        return m.refuse(
            "sew-off-away-from-tail",
            f"{m.name(first)} to {m.name(last)} cannot be sewn off from the {op.start}: the tail of the {tail.yarn} {where}",
            first,
            last,
        )
    return None
