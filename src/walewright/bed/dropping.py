"""Wales let run down: re-formed on the other face with the latch tool, or left as ladders."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from walewright.bed.carriage import unwrapped_across
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import Machine
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Refusal
from walewright.knit.operations import Drop, LatchUp


def drop(m: Machine, op: Drop) -> Refusal | None:
    """The needle is empty; its loops wait to be latched up, until the next row makes them a ladder."""
    index = op.slot + m.half
    refusal = needs_work(m, index, "run-down") or unwrapped_across(m, index, index)
    if refusal is not None:
        return refusal
    wale = _wale(m, op)
    if isinstance(wale, Refusal):
        return wale
    m.lift(index)
    m.pending.dropped[index] = wale
    return None


def _wale(m: Machine, op: Drop) -> tuple[int, ...] | Refusal:
    """Its uppermost `rows` loops, from above."""
    index = op.slot + m.half
    loops, found = m.loops, 0
    filled = {loops.parent[c.first_loop] for c in m.courses if c.kind == "fill"}
    loop = m.top[index]
    wale: list[int] = []
    joined = index in m.more
    while found < op.rows and loop >= 0 and not joined:
        joined = loops.slot[loop] != op.slot or loop in filled
        if joined or loops.kind[loop] not in (LoopKind.KNIT, LoopKind.BAR):
            break
        wale.append(loop)
        found += 1
        joined = loop in loops.more and found < op.rows
        loop = loops.parent[loop]
    if joined:
        return m.refuse("drop-through-join", needle=m.at(index), rows=op.rows, found=found)
    if op.rows < 1 or found < op.rows:
        return m.refuse("drop-too-deep", needle=m.at(index), rows=op.rows, found=found)
    return tuple(wale)


def latch_up(m: Machine, op: LatchUp) -> Refusal | None:
    """Turns the faces of the wale's uppermost stitches; what lies below and beside stays as it is."""
    index = op.slot + m.half
    refusal = needs_work(m, index, "be-latched-up") or unwrapped_across(m, index, index)
    if refusal is not None:
        return refusal
    if index in m.pending.dropped:
        return _up_again(m, op)
    loop, found = m.top[index], 0
    wale: list[int] = []
    if index not in m.more:
        # Yarn laid in an empty hook is the lowest that a wale can have: the tool goes under it.
        while found < op.rows and loop >= 0 and m.loops.kind[loop] in (LoopKind.KNIT, LoopKind.BAR):
            wale.append(loop)
            found += 1
            if loop in m.loops.more:
                if found < op.rows:
                    return m.refuse("latch-through-join", needle=m.at(index), rows=op.rows, found=found)
                break
            loop = m.loops.parent[loop]
    if op.rows < 1 or found < op.rows:
        return m.refuse("latch-too-deep/wale", needle=m.at(index), rows=op.rows, found=found)
    refusal = _latched_before(m, index, wale) or _foot(m, op, wale[-1])
    if refusal is None:
        _re_formed(m, op, wale)
    return refusal


def _latched_before(m: Machine, index: int, wale: Sequence[int]) -> Refusal | None:
    """The holder goes through the stitch that was re-formed last: what was re-formed below is not dropped again."""
    found = sum(1 for _ in takewhile(lambda loop: not m.loops.face[loop], wale))
    if found == len(wale):
        return None
    return m.refuse("latched-already", needle=m.at(index), rows=len(wale), found=found)


def _foot(m: Machine, op: LatchUp, lowest: int) -> Refusal | None:
    """A stage that goes on begins in the stitch that was re-formed and hung last."""
    below = m.loops.parent[lowest]
    if not op.goes_on or (below >= 0 and m.loops.face[below]):
        return None
    return m.refuse("latched-above-gap", needle=m.at(op.slot + m.half), rows=op.rows)


def _re_formed(m: Machine, op: LatchUp, wale: Sequence[int]) -> None:
    for loop in wale:
        m.loops.face[loop] = 1
    m.kept.latched.append((len(m.loops.parent), m.counter, op.slot, op.rows))


def _up_again(m: Machine, op: LatchUp) -> Refusal | None:
    """The very loops that were dropped, back on their needle."""
    index = op.slot + m.half
    wale = m.pending.dropped[index]
    if m.top[index] != NOTHING:
        return m.refuse("latch-over-loop", needle=m.at(index))
    if op.rows != len(wale):
        return m.refuse("latch-too-deep/run-down", needle=m.at(index), rows=op.rows, found=len(wale))
    refusal = _latched_before(m, index, wale) or _foot(m, op, wale[-1])
    if refusal is not None:
        return refusal
    del m.pending.dropped[index]
    _re_formed(m, op, wale)
    m.hang(index, (wale[0],))
    return None
