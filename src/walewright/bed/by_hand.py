"""Hand work on held needles within a row: yarn lifted off, drawn long, laid in; and what lies there when the next row begins."""

from __future__ import annotations

from itertools import pairwise

from walewright.bed.loops import HELPERS, NOTHING, LoopKind
from walewright.bed.machine import HELD, Machine, Thread
from walewright.bed.model import Float
from walewright.bed.pending import Strand
from walewright.bed.refusals import Purpose, Refusal, purpose_of
from walewright.bed.strands import ends_for
from walewright.knit.operations import DrawLong, LayIn, LiftOff, other

MOST_TUCKS = 4
"""Rows whose yarn a hook takes besides its stitch before it jams (common practice: 4, fine yarns a few more)."""


def lift_off(m: Machine, op: LiftOff) -> Refusal | None:
    """The yarn laid there is no loop any more, but a float."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        refusal = _yarn_laid(m, i, "be-lifted-off")
        if refusal is not None:
            return refusal
    for i in range(first, last + 1):
        loop = m.pending.laid.pop(i)
        _unhang(m, i, loop)
        m.loops.kind[loop] = LoopKind.FLOAT
        m.pending.lifted.add(i)
        m.kept.floats.append(Float(m.counter, m.course_of(loop).yarn, i - m.half, i - m.half))
    return None


def draw_long(m: Machine, op: DrawLong) -> Refusal | None:
    """The yarn laid there becomes the needle's stitch, drawn through all that it carried."""
    index = op.slot + m.half
    refusal = _yarn_laid(m, index, "be-drawn-through")
    if refusal is not None:
        return refusal
    loop = m.pending.laid.pop(index)
    _unhang(m, index, loop)
    _through(m, index, loop, LoopKind.LONG)
    return None


def lay_in(m: Machine, op: LayIn) -> Refusal | None:
    """One loop each of another yarn, drawn through all that the needles carry, floats between them."""
    indices = [slot + m.half for slot in op.needles]
    if not indices:
        return m.refuse("lay-in-nowhere", yarn=op.yarn)
    if any(b <= a for a, b in pairwise(indices)):
        return m.refuse("needles-reversed/yarn", yarn=op.yarn)
    if op.yarn in HELPERS:
        return m.refuse("only-waste-yarn/laid-in", yarn=op.yarn)
    for i in indices:
        refusal = _free_for_another_yarn(m, i, op.yarn)
        if refusal is not None:
            return refusal
    begin = len(m.loops.parent)
    for i in indices:
        _through(m, i, m.loops.add(i - m.half, LoopKind.KNIT), LoopKind.KNIT)
        m.pending.lifted.discard(i)
    start, end = (indices[0], indices[-1]) if op.to == "right" else (indices[-1], indices[0])
    (run,) = ends_for(m, other(op.to), [(op.yarn, start)])
    m.course("by hand", indices[0], indices[-1], begin, op.to, Thread(run, op.yarn, op.tension))
    m.pending.strands.append(Strand(op.yarn, run, op.to, end, m.counter, m.section))
    for a, b in pairwise(indices):
        if b > a + 1:
            m.kept.floats.append(Float(m.counter, op.yarn, a + 1 - m.half, b - 1 - m.half))
    return None


def _yarn_laid(m: Machine, index: int, purpose: Purpose) -> Refusal | None:
    if m.position[index] != HELD:
        return m.refuse("not-held/to-work", needle=m.at(index), purpose=purpose_of(purpose))
    if index not in m.pending.laid:
        return _beyond_the_row(m, index) or m.refuse("nothing-laid/to-work", needle=m.at(index), purpose=purpose_of(purpose))
    return None


def _free_for_another_yarn(m: Machine, index: int, yarn: str) -> Refusal | None:
    if m.position[index] != HELD:
        return m.refuse("lay-in-not-held", needle=m.at(index), yarn=yarn)
    if m.top[index] < 0:
        return m.refuse("only-waste-yarn/needle", needle=m.at(index))
    if index in m.pending.laid:
        return m.refuse("lay-in-over-yarn", needle=m.at(index))
    if index in m.pending.lifted:
        return None
    return _beyond_the_row(m, index) or m.refuse("nothing-laid/worked", needle=m.at(index))


def _beyond_the_row(m: Machine, index: int) -> Refusal | None:
    """At the very edge no stitch holds a float at its outer end."""
    at = m.layout()
    if at.first <= index <= at.last:
        return None
    return m.refuse("float-at-edge", needle=m.at(index), first=m.at(at.first), last=m.at(at.last))


def _unhang(m: Machine, index: int, loop: int) -> None:
    rest = [other for other in m.more[index] if other != loop]
    if rest:
        m.more[index] = rest
    else:
        del m.more[index]


def _through(m: Machine, index: int, loop: int, kind: LoopKind) -> None:
    """The loop is drawn through what the needle carries, and alone hangs there then."""
    parents = m.lift(index)
    m.loops.kind[loop] = kind
    m.loops.parent[loop] = parents[0]
    if len(parents) > 1:
        m.loops.more[loop] = parents[1:]
    m.hang(index, (loop,))
    m.pending.tucks.pop(index, None)


# ------------------------------------------------------------------ when the next row begins


def settle(m: Machine, inside: tuple[int, ...]) -> Refusal | None:
    """What lies over held needles is a tuck from now on, and what runs down runs as far as it can.

    `inside` are the needles held in mid-row now: the others' loops are knitted together by the coming row."""
    pending = m.pending
    if not (pending.laid or pending.tucks or pending.dropped):
        return None
    return _tucks(m, inside) or _ladders(m)


def _tucks(m: Machine, inside: tuple[int, ...]) -> Refusal | None:
    pending = m.pending
    for i in sorted(pending.laid):
        if i + 1 in pending.laid:
            return m.refuse("tuck-side-by-side", needle=m.at(i), other=m.at(i + 1))
        pending.tucks[i] = pending.tucks.get(i, 0) + 1
        if pending.tucks[i] > MOST_TUCKS:
            return m.refuse("tuck-too-long", needle=m.at(i), rows=pending.tucks[i], most=MOST_TUCKS)
    pending.laid = {}
    pending.tucks = {i: rows for i, rows in pending.tucks.items() if i in inside}
    return None


def _ladders(m: Machine) -> Refusal | None:
    """A wale let run down has to end on yarn laid in an empty hook: it is a ladder then."""
    for index, wale in m.pending.dropped.items():
        if m.loops.parent[wale[-1]] != NOTHING:
            return m.refuse("ladder-runs-on", needle=m.at(index), rows=len(wale))
        for loop in wale:
            m.loops.kind[loop] = LoopKind.FLOAT
            m.loops.parent[loop] = NOTHING
    m.pending.dropped = {}
    return None
