"""Holes in the middle of a row: slots on waste yarn, closed slots and eyelets, one by one or in a regular column."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from walewright.counted.model import SizedSlot
from walewright.design.model import Fabric
from walewright.knit import steps as st
from walewright.knit.lengths import length_cm
from walewright.knit.order import Group, Move, Rank, alone


def slot_step(slot: SizedSlot, fabric: Fabric) -> st.Step:
    """The sentence of a slot at its row, in `fabric`."""
    origin = slot.origin.path
    stitches = slot.stitches
    if slot.taken == "eyelet":
        return st.EyeletAt(slot.first, "right" if slot.first < 0 else "left", origin=origin)
    length = length_cm(fabric, stitches)
    if slot.taken == "waste":
        return st.SlotOnWaste(stitches, slot.first, slot.last, slot.name, length, origin=origin)
    return st.SlotClosed(stitches, slot.first, slot.last, length, origin=origin)


def slot_groups(slots: Sequence[SizedSlot], fabric_at: Callable[[int], Fabric]) -> Iterator[Group]:
    """Slots in order of rows, in the fabrics of these. Of several of one statement on the same needles and equally far apart,
    the first stands alone and the others are one phrase."""
    todo = sorted(slots, key=lambda s: (s.origin.path, s.row))
    number = 0

    def step(slot: SizedSlot) -> st.Step:
        return slot_step(slot, fabric_at(slot.row))

    while todo:
        column = [todo.pop(0)]
        gap = todo[0].row - column[0].row if todo else 0
        while gap > 0 and todo and step(todo[0]) == step(column[0]) and todo[0].row == column[-1].row + gap:
            if todo[0].origin.path != column[0].origin.path:
                break
            column.append(todo.pop(0))
        first, *others = (Move(s.row, Rank.SLOT, step(s)) for s in column)
        yield alone(("slot", 2 * number), first)
        if others:
            origin = column[0].origin.path
            body = (st.KnitRows(gap, origin=origin), others[0].step)
            repeat = st.Repeat(body, len(others), origin=origin)
            yield Group(("slot", 2 * number + 1), first.row, others[-1].row, tuple(others), repeat)
        number += 1
