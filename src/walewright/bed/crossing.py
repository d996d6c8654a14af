"""Cables: two neighbouring groups of loops change places."""

from __future__ import annotations

from walewright.bed.carriage import unwrapped_across
from walewright.bed.loops import NOTHING
from walewright.bed.machine import NON_WORKING, WORKING, Machine, Refusal
from walewright.bed.model import Crossed
from walewright.bed.needles import needs_work
from walewright.knit.operations import Cross

TIGHT = 3
"""Loops from which on a group cannot reach its new needles without slack beside it (common practice)."""


def cross_over(m: Machine, op: Cross) -> Refusal | None:
    """The loops keep what they are drawn through; the next row draws through them on their new needles."""
    first, last = m.span(op.first, op.last)
    right = last - first + 1 - op.left
    if op.left < 1 or right < 1:
        return m.refuse("cross-of-one-group", f"{m.name(first)} to {m.name(last)} are crossed, but not as two groups", first, last)
    widest = max(m.bed.prongs, default=0)
    if max(op.left, right) > widest:
        return m.refuse(
            "tool-too-narrow",
            f"{max(op.left, right)} loops of {m.name(first)} to {m.name(last)} are lifted together, but the widest tool has "
            f"{widest} prongs",
            first,
            last,
            prongs=max(op.left, right),
        )
    for i in range(first, last + 1):
        refusal = needs_work(m, i, "to be crossed")
        if refusal is not None:
            return refusal
        if m.top[i] == NOTHING:
            return m.refuse("cross-empty", f"needle {m.name(i)} carries no loop to cross", i)
    if max(op.left, right) >= TIGHT and not (_slack(m, first - 1) or _slack(m, last + 1)):
        return m.refuse(
            "cross-without-slack",
            f"{op.left} and {right} loops of {m.name(first)} to {m.name(last)} are crossed with stitches close beside them on both "
            "sides: let the wale beside them run down first, or leave an empty needle there",
            first,
            last,
        )
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
