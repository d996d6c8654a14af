"""Loops that wait on ravel cord: laid in the hooks by hand, the needles fully back; and their way back to work."""

from __future__ import annotations

from walewright.bed.loops import NOTHING
from walewright.bed.machine import CORDED, HELD, NON_WORKING, Machine, Refusal
from walewright.knit.operations import DrawCord, LayCord


def lay_cord(m: Machine, op: LayCord) -> Refusal | None:
    """By hand, wherever the carriage stands. The yarn in use may not hang from the stitches that go: it could not be drawn after
    them."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        refusal = _can_wait(m, i)
        if refusal is not None:
            return refusal
    if m.yarn is not None and m.yarn_side is not None and first <= m.yarn_at <= last:
        return m.refuse(
            "cord-under-yarn",
            f"the {m.yarn} hangs from needle {m.name(m.yarn_at)}: break it off, or knit to the other side, before that needle "
            "waits on cord",
            m.yarn_at,
            yarn=m.yarn,
        )
    m.set_position(first, last, CORDED)
    m.kept.corded.append((len(m.loops.parent), m.counter, op.first, op.last))
    return None


def _can_wait(m: Machine, index: int) -> Refusal | None:
    name = m.name(index)
    if m.position[index] == CORDED:
        return m.refuse("already-on-cord", f"needle {name} waits on cord already", index)
    if m.position[index] == NON_WORKING:
        return m.refuse("not-in-work", f"needle {name} is not in work, as it must be to wait on cord", index)
    if m.top[index] == NOTHING:
        return m.refuse("cord-empty", f"needle {name} carries no loop for the cord to keep", index)
    if m.top[index] < 0:
        return m.refuse("only-waste-yarn", f"needle {name} carries only waste yarn, no stitch of the piece", index)
    return None


def draw_cord(m: Machine, op: DrawCord) -> Refusal | None:
    """The whole cord comes out: what it kept and is not right out by then would drop."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        if m.position[i] != CORDED:
            return m.refuse("not-on-cord", f"needle {m.name(i)} does not wait on cord", i)
    for end, beside in ((first, first - 1), (last, last + 1)):
        if 0 <= beside < len(m.position) and m.position[beside] == CORDED and _cord_of(m, end) == _cord_of(m, beside):
            return m.refuse(
                "cord-drawn-in-part",
                f"the cord is drawn out from needles {m.name(first)} to {m.name(last)}, and needle {m.name(beside)} is still "
                "back on it: its stitch drops",
                beside,
            )
    m.set_position(first, last, HELD)
    return None


def _cord_of(m: Machine, index: int) -> int:
    """Which length of cord keeps the loop of a needle: each time it is laid, it is another. Parts beside a slit wait on two."""
    slot = index - m.half
    return max((n for n, (_, _, first, last) in enumerate(m.kept.corded) if first <= slot <= last), default=-1)
