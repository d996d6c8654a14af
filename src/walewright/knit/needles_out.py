"""Needles out of work over a stretch of rows: when they go and come back, and what hands do."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import Any

from walewright.counted.model import SizedNeedlesOut, SizedPiece
from walewright.counted.needles import InWork
from walewright.knit import needle_steps as st
from walewright.knit import operations as op
from walewright.knit.operations import Operation
from walewright.knit.order import Group, Move, Rank, alone
from walewright.knit.rows import Done
from walewright.knit.state import State
from walewright.knit.step import Step
from walewright.record import replace


def out_groups(sized: SizedPiece) -> Iterator[Group]:
    """Of a whole width. What is out from the start is left out when the piece is cast on (`left_out`), and what is out up to the
    top is passed over when it is taken off."""
    for number, out in enumerate(sized.needles_out):
        first, last = InWork(sized).at(out.from_row)
        wide = last - first + 1
        begins = _out(out, wide) if out.from_row else ()
        ends = _back(out, wide) if out.to_row < sized.rows else ()
        for part, (row, steps) in enumerate(((out.from_row, begins), (out.to_row, ends))):
            for at, step in enumerate(steps):
                yield alone(("needles", 1000 * number + 500 * part + at), Move(row, Rank.SLOT, step))


def _out(out: SizedNeedlesOut, wide: int) -> Iterator[Step]:
    origin = out.origin.path
    if out.every:
        yield st.NeedlesOutEvery(out.every, out.slots[0], out.slots[-1], wide - len(out.slots), origin=origin)
        return
    for number, slot in enumerate(out.slots):
        yield st.NeedleOut(slot, wide - number - 1, origin=origin)


def left_out(sized: SizedPiece) -> Iterator[Step]:
    """Needles of the start that are out of work from its first row on."""
    for out in sized.needles_out:
        if out.from_row:
            continue
        origin = out.origin.path
        if out.every:
            yield st.LeaveOutEvery(out.every, out.slots[0], out.slots[-1], sized.start - len(out.slots), origin=origin)
            return
        for number, slot in enumerate(out.slots):
            yield st.LeaveOut(slot, sized.start - number - 1, origin=origin)


def _back(out: SizedNeedlesOut, wide: int) -> Iterator[Step]:
    origin = out.origin.path
    if out.every:
        yield st.NeedlesBackEvery(out.every, out.slots[0], out.slots[-1], wide, origin=origin)
        return
    for number, slot in enumerate(out.slots):
        yield st.NeedleBack(slot, wide - len(out.slots) + number + 1, origin=origin)


# ----------------------------------------------------------------- what hands do


def _slots(step: Step) -> tuple[int, ...]:
    match step:
        case st.NeedleOut(at=at) | st.NeedleBack(at=at) | st.LeaveOut(at=at):
            return (at,)
        case (
            st.NeedlesOutEvery(every, first, last) | st.NeedlesBackEvery(every, first, last) | st.LeaveOutEvery(every, first, last)
        ):
            return tuple(range(first, last + 1, every))
    return ()


def go_out(s: State, step: st.NeedleOut | st.NeedlesOutEvery) -> Done:
    """Each stitch to the needle at its right, and the needle out of work."""
    made: list[Operation] = []
    for slot in _slots(step):
        made += [op.Transfer(slot, slot, 1), op.OutOfWork(slot, slot)]
    return tuple(made), replace(s, idle=tuple(sorted({*s.idle, *_slots(step)})))


def stay_out(s: State, step: st.LeaveOut | st.LeaveOutEvery) -> Done:
    """Empty as they are, out of work."""
    out = _slots(step)
    return tuple(op.OutOfWork(slot, slot) for slot in out), replace(s, idle=tuple(sorted({*s.idle, *out})))


def come_back(s: State, step: st.NeedleBack | st.NeedlesBackEvery) -> Done:
    """Empty: the next row lays a loop in each."""
    back = _slots(step)
    return tuple(op.IntoWork(slot, slot) for slot in back), replace(s, idle=tuple(x for x in s.idle if x not in back))


NEEDLE_HANDS: Mapping[type[Step], Callable[[State, Any], Done]] = {
    st.NeedleOut: go_out,
    st.NeedlesOutEvery: go_out,
    st.LeaveOut: stay_out,
    st.LeaveOutEvery: stay_out,
    st.NeedleBack: come_back,
    st.NeedlesBackEvery: come_back,
}
