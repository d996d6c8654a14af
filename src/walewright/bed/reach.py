"""Which needles an operation names, and whether the bed has them: looked at once, before the operation's own rule."""

from __future__ import annotations

from walewright.bed.machine import Machine
from walewright.bed.refusals import Refusal, slot_of
from walewright.knit.operations import (
    DrawLong,
    Drop,
    FillFromBelow,
    HangFeet,
    InFabric,
    LatchUp,
    LayIn,
    Operation,
    PictureRow,
    Spread,
    Transfer,
    Wrap,
)


def spans(op: Operation) -> tuple[tuple[int, int], ...]:
    """The slot ranges that the operation names, as written; () where it names none."""
    match op:
        case Wrap(slot=slot) | LatchUp(slot=slot) | Drop(slot=slot) | DrawLong(slot=slot):
            return ((slot, slot),)
        case LayIn(needles=slots) | HangFeet(onto=slots):
            return tuple((slot, slot) for slot in slots)
        case PictureRow():
            return tuple((first, last) for _, first, last in op.blocks)
        case InFabric() if op.first > op.last:
            return ()
        case FillFromBelow():
            return ((op.target, op.target), (op.source, op.source))
        case Transfer():
            return ((op.first, op.last), (op.first + op.by, op.last + op.by))
        case Spread():
            return ((op.first, op.last), (op.to_first, op.to_first + len(op.counts) - 1))
        case _ if hasattr(op, "first") and hasattr(op, "last"):
            return ((op.first, op.last),)
        case _:
            return ()


def out_of_reach(m: Machine, op: Operation) -> Refusal | None:
    """Ranges run from left to right, over needles that the bed has and that are not missing from it."""
    for first, last in spans(op):
        if first > last:
            return m.refuse("needles-reversed/span", first=slot_of(first), last=slot_of(last))
        for slot in (first, last):
            if not -m.half <= slot < m.half:
                return m.refuse("beyond-bed", needle=slot_of(slot), first=slot_of(-m.half), last=slot_of(m.half - 1))
        gone = next((slot for slot in range(first, last + 1) if slot in m.bed.missing), None) if m.bed.missing else None
        if gone is not None:
            return m.refuse("needle-missing", needle=slot_of(gone))
    return None
