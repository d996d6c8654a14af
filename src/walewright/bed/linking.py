"""Linking: the stitches of a second piece hung over those of a first, right sides together, to be knitted off as one."""

from __future__ import annotations

from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import Machine
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Refusal
from walewright.knit.operations import PickUpEdge


def over_another(m: Machine, op: PickUpEdge) -> Refusal | None:
    """Each needle carries one stitch of a finished piece."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        refusal = needs_work(m, i, "take-a-linked-stitch")
        if refusal is not None:
            return refusal
        if m.top[i] == NOTHING:
            return m.refuse("link-over-nothing", needle=m.at(i))
        if i in m.more or m.top[i] < 0 or m.loops.kind[m.top[i]] != LoopKind.PICKED:
            return m.refuse("link-over-loops", needle=m.at(i))
    return None
