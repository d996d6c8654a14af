"""Which needles an operation names, and whether the bed has them: looked at once, before the operation's own rule."""

from __future__ import annotations

from walewright.bed.machine import Machine, Refusal
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
    needle,
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
    """Ranges run from left to right, over needles that the bed has."""
    for first, last in spans(op):
        if first > last:
            return m.refuse("needles-reversed", f"needles are named from left to right, not {needle(first)} to {needle(last)}")
        for slot in (first, last):
            if not -m.half <= slot < m.half:
                ends = f"{needle(-m.half)} to {needle(m.half - 1)}"
                return m.refuse(
                    "beyond-bed",
                    f"needle {needle(slot)} is beyond the bed, which has {ends}",
                    needle=needle(slot),
                    needles=m.bed.needles,
                )
    return None
