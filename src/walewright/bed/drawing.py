"""Loops closed without yarn: chained through each other, or drawn up on a thread."""

from __future__ import annotations

from walewright.bed.closing import stitches_there
from walewright.bed.density import Density
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import NON_WORKING, WORKING, Machine, Refusal
from walewright.bed.model import BedEdge
from walewright.knit.operations import Close, Gather

GATHERED = 1.5
"""Least length of the tail that gathers, in widths of the stitches (common practice: 1.5 to 2)."""


def close(m: Machine, op: Close) -> Refusal | None:
    """Each needle's loops are drawn through those before; the last ones hang on the neighbour, working or waiting."""
    first, last = m.span(op.first, op.last)
    if m.waiting_chain is not None and first - 1 <= m.waiting_chain[1] <= last + 1:
        m.settle_chain(goes_on=True)
    refusal = stitches_there(m, first, last, "to be chained off", "close-empty") or _of_the_piece(m, first, last)
    if refusal is not None:
        return refusal
    neighbour = last + 1 if op.towards == "right" else first - 1
    if not 0 <= neighbour < len(m.top) or m.top[neighbour] < 0:
        where = m.name(neighbour) if 0 <= neighbour < len(m.top) else "the end of the bed"
        return m.refuse(
            "close-without-neighbour",
            f"{m.name(first)} to {m.name(last)} are chained off towards the {op.towards}, "
            f"but {where} has no stitch to hang the last on",
            first,
            last,
            towards=op.towards,
        )
    begin = len(m.loops.parent)
    drawn: tuple[int, ...] = ()
    for i in range(first, last + 1) if op.towards == "right" else range(last, first - 1, -1):
        drawn = (m.loops.add(i - m.half, LoopKind.CLOSED, (*m.lift(i), *drawn)),)
    m.hang(neighbour, drawn)
    m.set_position(first, last, NON_WORKING)
    m.course("close", first, last, begin, "left" if op.towards == "right" else "right")
    return None


def gather(m: Machine, op: Gather) -> Refusal | None:
    """The end of the piece: its last stitches on the tail of its yarn."""
    first, last = m.span(op.first, op.last)
    if m.yarn is not None and not m.fastened:
        return m.refuse(
            "gather-yarn-unbroken", f"the {m.yarn} is not broken off, so there is no tail to thread through the stitches"
        )
    refusal = stitches_there(m, first, last, "to be gathered", "gather-empty") or _of_the_piece(m, first, last)
    if refusal is not None:
        return refusal
    left = [i for i, loop in enumerate(m.top) if loop != NOTHING and not first <= i <= last]
    if left:
        how = "held" if any(m.position[i] != WORKING for i in left) else "left"
        return m.refuse(
            "gather-not-all",
            f"{m.name(first)} to {m.name(last)} are gathered, but {len(left)} stitches are still {how} on the bed, "
            f"from {m.name(left[0])} to {m.name(left[-1])}",
            left[0],
            left[-1],
            stitches=len(left),
        )
    refusal = _tail_long_enough(m, first, last)
    if refusal is not None:
        return refusal
    if any(edge.name == "end" for edge, _ in m.ended):
        return m.refuse("edge-named-twice", "the piece has an end already, so no more stitches are gathered to it", edge="end")
    points = tuple(m.lift(i) for i in range(first, last + 1))
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
        "tail-too-short",
        f"the tail of the {tail.yarn} is {tail.cm} cm long, and {m.name(first)} to {m.name(last)} are {width:.0f} cm wide: "
        f"gathering takes {GATHERED} widths",
        first,
        last,
        tail_cm=tail.cm,
        width_cm=round(width),
    )


def _of_the_piece(m: Machine, first: int, last: int) -> Refusal | None:
    for i in range(first, last + 1):
        if m.top[i] < NOTHING:
            return m.refuse("only-waste-yarn", f"needle {m.name(i)} carries only waste yarn, no stitch of the piece", i)
    return None
