"""Loops closed without yarn: chained through each other, or drawn up on a thread."""

from __future__ import annotations

from walewright.bed.closing import stitches_there, with_stitches
from walewright.bed.density import Density
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import NON_WORKING, WORKING, Machine
from walewright.bed.model import BedEdge
from walewright.bed.refusals import Refusal
from walewright.knit.operations import Close, Gather
from walewright.report.said import Amount

GATHERED = 1.5
"""Least length of the tail that gathers, in widths of the stitches (common practice: 1.5 to 2)."""


def close(m: Machine, op: Close) -> Refusal | None:
    """Each needle's loops are drawn through those before; the last ones hang on the neighbour, working or waiting."""
    first, last = m.span(op.first, op.last)
    if m.waiting_chain is not None and first - 1 <= m.waiting_chain[1] <= last + 1:
        m.settle_chain(goes_on=True)
    refusal = stitches_there(m, first, last, "be-chained-off", "close-empty") or _of_the_piece(m, first, last)
    if refusal is not None:
        return refusal
    neighbour = last + 1 if op.towards == "right" else first - 1
    if not 0 <= neighbour < len(m.top) or m.top[neighbour] < 0:
        return (
            m.refuse(
                "close-without-neighbour/needle", first=m.at(first), last=m.at(last), towards=op.towards, needle=m.at(neighbour)
            )
            if 0 <= neighbour < len(m.top)
            else m.refuse("close-without-neighbour/end-of-bed", first=m.at(first), last=m.at(last), towards=op.towards)
        )
    begin = len(m.loops.parent)
    drawn: tuple[int, ...] = ()
    for i in with_stitches(m, first, last) if op.towards == "right" else reversed(with_stitches(m, first, last)):
        drawn = (m.loops.add(i - m.half, LoopKind.CLOSED, (*m.lift(i), *drawn)),)
    m.hang(neighbour, drawn)
    m.set_position(first, last, NON_WORKING)
    m.course("close", first, last, begin, "left" if op.towards == "right" else "right")
    return None


def gather(m: Machine, op: Gather) -> Refusal | None:
    """The end of the piece: its last stitches on the tail of its yarn."""
    first, last = m.span(op.first, op.last)
    if m.yarn is not None and not m.fastened:
        return m.refuse("gather-yarn-unbroken", yarn=m.yarn)
    refusal = stitches_there(m, first, last, "be-gathered", "gather-empty") or _of_the_piece(m, first, last)
    if refusal is not None:
        return refusal
    left = [i for i, loop in enumerate(m.top) if loop != NOTHING and not first <= i <= last]
    if left:
        held = any(m.position[i] != WORKING for i in left)
        return m.refuse(
            "gather-not-all",
            first=m.at(first),
            last=m.at(last),
            stitches=len(left),
            held=held,
            one=m.at(left[0]),
            other=m.at(left[-1]),
        )
    refusal = _tail_long_enough(m, first, last)
    if refusal is not None:
        return refusal
    if any(edge.name == "end" for edge, _ in m.ended):
        return m.refuse("edge-named-twice/end")
    points = tuple(m.lift(i) for i in with_stitches(m, first, last))
    m.fastened_loops += [loop for point in points for loop in point]
    m.set_position(first, last, NON_WORKING)
    m.ended.append((BedEdge("end", "whole", "stitches", len(points), None, points), op.first))
    return None


def _tail_long_enough(m: Machine, first: int, last: int) -> Refusal | None:
    """A tail whose length was asked for goes through the loops as they lie, and again through the drawn-up ones."""
    tail = m.pending.tail
    if tail is None or not tail.cm:
        return None
    slots = range(first - m.half, last - m.half + 1)
    width = Density(m.bed.gauges, m.bed.fabrics).width_cm(m.course_of(m.top[first]), slots, len(slots))
    if width is None or tail.cm >= GATHERED * width:
        return None
    return m.refuse(
        "tail-too-short/gathering",
        yarn=tail.yarn,
        tail=Amount(tail.cm),
        first=m.at(first),
        last=m.at(last),
        width=Amount(round(width)),
        widths=GATHERED,
    )


def _of_the_piece(m: Machine, first: int, last: int) -> Refusal | None:
    for i in range(first, last + 1):
        if m.top[i] < NOTHING:
            return m.refuse("only-waste-yarn/needle", needle=m.at(i))
    return None
