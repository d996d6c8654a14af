"""Cables: two neighbouring groups of loops change places."""

from __future__ import annotations

from walewright.bed.carriage import unwrapped_across
from walewright.bed.loops import NOTHING
from walewright.bed.machine import NON_WORKING, WORKING, Machine
from walewright.bed.model import Crossed
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Refusal
from walewright.knit.operations import Cross

TIGHT = 3
"""Loops from which on a group cannot reach its new needles without slack beside it (common practice)."""


def cross_over(m: Machine, op: Cross) -> Refusal | None:
    """The loops keep what they are drawn through; the next row draws through them on their new needles."""
    first, last = m.span(op.first, op.last)
    right = last - first + 1 - op.left
    if op.left < 1 or right < 1:
        return m.refuse("cross-of-one-group", first=m.at(first), last=m.at(last))
    widest = max(m.bed.prongs, default=0)
    if max(op.left, right) > widest:
        return m.refuse("tool-too-narrow", loops=max(op.left, right), first=m.at(first), last=m.at(last), prongs=widest)
    for i in range(first, last + 1):
        refusal = needs_work(m, i, "be-crossed")
        if refusal is not None:
            return refusal
        if m.top[i] == NOTHING:
            return m.refuse("cross-empty", needle=m.at(i))
    if max(op.left, right) >= TIGHT and not (_slack(m, first - 1) or _slack(m, last + 1)):
        return m.refuse("cross-without-slack", one=op.left, other=right, first=m.at(first), last=m.at(last))
    refusal = unwrapped_across(m, first, last)
    if refusal is not None:
        return refusal
    before = len(m.loops.parent)
    lifted = [m.lift(i) for i in range(first, last + 1)]
    for i, loops in enumerate((*lifted[op.left :], *lifted[: op.left]), first):
        m.hang(i, loops)
    m.kept.crosses.append(Crossed(before, m.counter, op.first, op.last, op.left, op.hung_first))
    return None


def _slack(m: Machine, index: int) -> bool:
    """Nothing pulls from there: no needle, none in work, or one whose stitch is gone from it."""
    if not 0 <= index < len(m.top) or m.position[index] == NON_WORKING:
        return True
    return m.position[index] == WORKING and m.top[index] == NOTHING
