"""Casting off by back-stitch, with the tail of the yarn."""

from __future__ import annotations

from walewright.bed.closing import ended_by, stitches_there, with_stitches
from walewright.bed.density import Density
from walewright.bed.loops import NOTHING, SEWN_COURSE, LoopKind
from walewright.bed.machine import NON_WORKING, Machine, Thread
from walewright.bed.pending import Tail
from walewright.bed.refusals import Refusal
from walewright.bed.strands import REACH
from walewright.knit.operations import SewOff
from walewright.report.said import Amount

WIDTHS = 3
"""Length of the tail in widths of the stitches (common practice)."""


def sew_off(m: Machine, op: SewOff) -> Refusal | None:
    """A back-stitch per needle, through its loops and the back-stitch before; the last is fastened."""
    first, last = m.span(op.first, op.last)
    tail = m.pending.tail
    if m.yarn is not None and not m.fastened:
        return m.refuse("sew-off-yarn-unbroken", yarn=m.yarn)
    if tail is None:
        return m.refuse("sew-off-without-tail")
    refusal = stitches_there(m, first, last, "be-sewn-off", "sew-off-empty") or _at_tail(m, op, tail)
    if refusal is not None:
        return refusal
    if any(m.top[i] < NOTHING for i in range(first, last + 1)):
        return m.refuse("only-waste-yarn/needles", first=m.at(first), last=m.at(last))
    width = Density(m.bed.gauges, m.bed.fabrics).width_cm(
        m.course_of(m.top[first]), range(op.first, op.last + 1), op.last - op.first + 1
    )
    if width is not None and tail.cm < WIDTHS * width:
        return m.refuse(
            "tail-too-short/sewing-off",
            yarn=tail.yarn,
            tail=Amount(tail.cm),
            first=m.at(first),
            last=m.at(last),
            width=Amount(round(width)),
            widths=WIDTHS,
        )
    begin = len(m.loops.parent)
    sewn: list[int] = []
    at = with_stitches(m, first, last)
    for i in reversed(at) if op.start == "right" else at:
        sewn.append(m.loops.add(i - m.half, LoopKind.SEWN, (*m.lift(i), *sewn[-1:])))
    m.set_position(first, last, NON_WORKING)
    m.course(SEWN_COURSE, first, last, begin, op.start, Thread(tail.run, tail.yarn, tail.tension))
    m.fastened_loops.append(sewn[-1])
    m.pending.tail = None
    if m.working_ends() is None:
        ended_by(m, sewn, first)
    return None


def _at_tail(m: Machine, op: SewOff, tail: Tail) -> Refusal | None:
    first, last = m.span(op.first, op.last)
    outermost = last if op.start == "right" else first
    if (first, last) != m.working_ends():
        return m.refuse("sew-off-not-all", first=m.at(first), last=m.at(last))
    if tail.side != op.start or abs(tail.at - outermost) > REACH:
        return (
            m.refuse("sew-off-away-from-tail/loose", first=m.at(first), last=m.at(last), start=op.start, yarn=tail.yarn)
            if tail.side is None
            else m.refuse(
                "sew-off-away-from-tail/elsewhere",
                first=m.at(first),
                last=m.at(last),
                start=op.start,
                yarn=tail.yarn,
                side=tail.side,
                needle=m.at(tail.at),
            )
        )
    return None
