"""What hands do for edgings, bands and links: loops hung on, needles out of work, eyelets, folds, ribs latched up."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.operations import Operation
from walewright.knit.rows import Done
from walewright.knit.stages import Rib, rib_slots
from walewright.knit.state import State
from walewright.record import replace


def _use_looser(s: State, step: st.UseLooser) -> Done:
    return (op.UseYarn(step.yarn, step.setting),), replace(s, yarn=(step.yarn, step.setting))


def _rehang_start(s: State, step: st.RehangStart) -> Done:
    return (op.Rehang(step.piece, s.first, s.last, step.facing),), s


def _pick_up_along(s: State, step: st.PickUpAlong) -> Done:
    where = step.piece, step.edge, step.part, step.first, step.last
    told = step.low, step.high, (step.per, step.every)
    return (op.PickUpEdge(*where, False, step.facing, step.left_end, step.copy.number, *told),), s


def _latch_rib(s: State, step: st.LatchRib) -> Done:
    return tuple(op.LatchUp(x, step.rows) for x in rib_slots(s.first, s.last, step.every, step.begin)), s


def _latch_panel(s: State, step: st.LatchPanel) -> Done:
    wales = (x for x in rib_slots(s.first, s.last, step.every, step.begin) if step.first <= x <= step.last)
    return tuple(op.LatchUp(x, step.rows) for x in wales), s


def _latch_in_stages(s: State, step: st.LatchInStages | st.LatchPanelInStages) -> Done:
    first, last = (step.first, step.last) if isinstance(step, st.LatchPanelInStages) else (0, -1)
    rib = Rib(every=step.every, begin=step.begin, rows=step.rows, first=first, last=last, sooner=bool(step.sooner), base=s.row)
    if not s.by_needle or any(rib.same(one) for one in s.ribs):
        return (), s
    return (), replace(s, ribs=(*s.ribs, rib))


def idle_slots(first: int, last: int, every: int) -> tuple[int, ...]:
    """The needles that a mock rib leaves out of work: every so many-th from the left, never the last one."""
    return tuple(range(first + every - 1, last, every))


def _every_out_of_work(s: State, step: st.EveryOutOfWork) -> Done:
    idle = idle_slots(s.first, s.last, step.every)
    return tuple(op.OutOfWork(x, x) for x in idle), replace(s, idle=idle)


def _picot_row(s: State, step: st.PicotRow) -> Done:
    first, last = s.working()
    return tuple(op.Transfer(x, x, 1) for x in range(first + 1, last, 2)), s


def _fold_up(s: State, step: st.FoldUp) -> Done:
    working = tuple(x for x in range(s.first, s.last + 1) if x not in s.idle)
    if step.onto == "the same needles":
        return (op.HangFeet(working, step.way == "behind", step.row),), s
    # The loop left of an empty needle moves on to it; the others stay below what they were knitted on.
    onto = tuple(x + 1 if x + 1 in s.idle else x for x in working)
    back: tuple[Operation, ...] = tuple(op.IntoWork(x, x) for x in s.idle)
    return (*back, op.HangFeet(onto, step.way == "behind", step.row)), replace(s, idle=())


def _hang_to_link(s: State, step: st.HangToLink) -> Done:
    over = step.over == "the other piece"
    where = step.piece, step.edge, step.part, step.first, step.last, over
    return (op.PickUpEdge(*where, facing=step.facing, left_end=step.left_end, copy=step.copy.number),), s


EDGING_HANDS: Mapping[type[st.Step], Callable[[State, Any], Done]] = {
    st.UseLooser: _use_looser,
    st.RehangStart: _rehang_start,
    st.PickUpAlong: _pick_up_along,
    st.LatchRib: _latch_rib,
    st.LatchPanel: _latch_panel,
    st.LatchInStages: _latch_in_stages,
    st.LatchPanelInStages: _latch_in_stages,
    st.EveryOutOfWork: _every_out_of_work,
    st.PicotRow: _picot_row,
    st.FoldUp: _fold_up,
    st.HangToLink: _hang_to_link,
}
