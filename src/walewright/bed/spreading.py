"""Loops taken off and hung back on more or fewer needles: the width changes at once, over all stitches."""

from __future__ import annotations

from walewright.bed.carriage import unwrapped_across
from walewright.bed.loops import NOTHING
from walewright.bed.machine import NON_WORKING, WORKING, Machine
from walewright.bed.model import Hung
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Refusal
from walewright.knit.operations import Spread

MOST_ON_A_NEEDLE = 2


def spread(m: Machine, op: Spread) -> Refusal | None:
    """Stitches keep their order; no yarn is knitted, so they are linked only when the next row draws a loop through them."""
    old = m.span(op.first, op.last)
    to_first, to_last = m.span(op.to_first, op.to_first + len(op.counts) - 1)
    refusal = _there(m, op, *old) or _shared_out(m, op) or _room(m, old, to_first, to_last) or unwrapped_across(m, *old)
    if refusal is not None:
        return refusal
    hangs_at = m.yarn_at
    stitches = [m.lift(i) for i in range(old[0], old[1] + 1)]
    m.set_position(*old, NON_WORKING)
    m.set_position(to_first, to_last, WORKING)
    given = iter(stitches)
    for i, count in enumerate(op.counts, to_first):
        for _ in range(count):
            m.hang(i, next(given))
    # The yarn hangs from the last stitch, and goes with it.
    m.yarn_at = to_first if hangs_at == old[0] else to_last if hangs_at == old[1] else hangs_at
    m.held_here.clear()
    m.spreads.append(Hung(len(m.loops.parent), (op.first, op.last), (op.to_first, op.to_first + len(op.counts) - 1)))
    return None


def _there(m: Machine, op: Spread, first: int, last: int) -> Refusal | None:
    for i in range(first, last + 1):
        refusal = needs_work(m, i, "be-hung-back")
        if refusal is not None:
            return refusal
        if m.top[i] == NOTHING:
            return m.refuse("spread-empty", needle=m.at(i))
    if m.waiting_chain is not None:
        m.settle_chain(goes_on=True)
    return None


def _shared_out(m: Machine, op: Spread) -> Refusal | None:
    taken, given = op.last - op.first + 1, sum(op.counts)
    if min(op.counts) < 0 or taken != given:
        return m.refuse("spread-count", taken=taken, given=given)
    if max(op.counts) > MOST_ON_A_NEEDLE:
        i = op.to_first + m.half + op.counts.index(max(op.counts))
        return m.refuse("spread-crowded", stitches=max(op.counts), needle=m.at(i), most=MOST_ON_A_NEEDLE)
    return None


def _room(m: Machine, old: tuple[int, int], first: int, last: int) -> Refusal | None:
    for i in range(first, last + 1):
        if not old[0] <= i <= old[1] and m.top[i] != NOTHING:
            return m.refuse("spread-over-loops", needle=m.at(i))
    return None
