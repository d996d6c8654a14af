"""Picture knitting: a row laid by hand, block by block, each with an end of yarn of its own."""

from __future__ import annotations

from itertools import pairwise

from walewright.bed.carriage import bars_of_row, empty_hooks, loops_of_row, row_can_be_knitted, row_done, turned
from walewright.bed.loops import HELPERS, NOTHING
from walewright.bed.machine import Layout, Machine, Thread
from walewright.bed.pending import Strand
from walewright.bed.refusals import Refusal, slot_of
from walewright.bed.strands import ends_for, leave_hanging, take_up
from walewright.knit.operations import PictureRow, other


def picture_row(m: Machine, op: PictureRow) -> Refusal | None:
    """One course a block, ids running on from left to right. Afterwards the yarn in use is where it hangs at the carriage's side,
    if it does; else it is a fresh end."""
    start = other(op.to)
    if m.side == op.to:
        return m.refuse("carriage-already-there", to=op.to)
    m.settle_chain(goes_on=True)
    at = m.layout()
    if not at.runs:
        return m.refuse("no-needle-in-work")
    empty = empty_hooks(m, at)
    refusal = _blocks_cover(m, op, at) or _crossed(m, op) or _stitches(m, op) or row_can_be_knitted(m, at, empty)
    if refusal is not None:
        return refusal
    leave_hanging(m)
    turned(m, at, start, start)
    m.counter += 1
    begin = loops_of_row(m, at)
    wanted = [(yarn, (first if op.to == "right" else last) + m.half) for yarn, first, last in op.blocks]
    for (yarn, first, last), run in zip(op.blocks, ends_for(m, start, wanted), strict=True):
        loop = begin + first + m.half - at.first
        thread = Thread(run, yarn, op.tension)
        m.course("knit", first + m.half, last + m.half, loop, op.to, thread, count=last - first + 1)
        end = (last if op.to == "right" else first) + m.half
        m.pending.strands.append(Strand(yarn, run, op.to, end, m.counter, m.section))
    outermost = m.pending.strands[-1 if op.to == "right" else -len(op.blocks)]
    bars_of_row(m, empty, at.live_first - m.half, at.live_last - m.half)
    m.kept.crossings += [(m.counter, first) for _, first, _ in op.blocks[1:]]
    m.pending.laid.clear()
    m.pending.lifted.clear()
    if m.yarn is not None and m.helper() is None:
        m.new_end()
        take_up(m, op.to, outermost.at)
    m.pending.at_edge = outermost if m.run != outermost.run else None
    row_done(m, at, op.to)
    return None


def _blocks_cover(m: Machine, op: PictureRow, at: Layout) -> Refusal | None:
    """All needles in work, and those alone, each in one block."""
    if len(at.runs) > 1:
        last, first = at.runs[0][1] - 1, at.runs[1][0]
        return m.refuse("picture-gap/out-of-work", last=m.at(last), first=m.at(first))
    reached = at.first - m.half - 1
    for yarn, first, last in op.blocks:
        if yarn in HELPERS:
            return m.refuse("only-waste-yarn/laid-in", yarn=yarn)
        if first != reached + 1 or last < first:
            return m.refuse("picture-gap/block", yarn=yarn, first=slot_of(first), last=slot_of(last), wanted=slot_of(reached + 1))
        reached = last
    if reached != at.last - m.half:
        return m.refuse("picture-gap/too-short", reached=slot_of(reached), last=m.at(at.last))
    return None


def _crossed(m: Machine, op: PictureRow) -> Refusal | None:
    if op.crossed or len(op.blocks) < 2:
        return None
    (one, _, last), (another, first, _) = next(pairwise(op.blocks))
    return m.refuse("block-uncrossed", one=one, other=another, last=slot_of(last), first=slot_of(first))


def _stitches(m: Machine, op: PictureRow) -> Refusal | None:
    if all(m.top[i] == NOTHING for i in range(op.blocks[0][1] + m.half, op.blocks[-1][2] + m.half + 1)):
        return m.refuse("no-loops")
    return None
