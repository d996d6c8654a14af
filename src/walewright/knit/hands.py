"""What a knitter's hands do on reading one step: the expansion of steps into operations.

`perform` returns the operations of a step and the state after it (`state.State`); nothing is decided here that the
sentence does not say.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.edging_hands import EDGING_HANDS
from walewright.knit.inside import INSIDE_HANDS
from walewright.knit.merging import merged
from walewright.knit.needles_out import NEEDLE_HANDS
from walewright.knit.operations import Operation, Side
from walewright.knit.part_hands import PART_HANDS
from walewright.knit.pattern_hands import PATTERN_HANDS
from walewright.knit.rows import Done, knit_row, leave, taken_up
from walewright.knit.stages import before_step
from walewright.knit.stages import rib_slots as rib_slots
from walewright.knit.state import State
from walewright.record import replace

CENTRE_WASTE_ROWS = 8
"""Rows of waste yarn that hold the centre stitches of a neck, or those of a slot. Common practice: 6 to 10."""

_KNITTING = (st.KnitRows, st.KnitTo, st.Repeat, st.Together, st.StopChart, st.StopChartOn)
"""Steps that look after what charts have begun themselves, row by row or one by one."""


def perform(state: State, step: st.Step) -> Done:
    """The operations of `step` in `state`, and the state after it. What a chart has begun on needles that the step takes from it
    is ended first, and columns of ribs that it disturbs are latched up. Raises KeyError for a kind of step without hands."""
    before, made, after = in_turn(state, step)
    return (*before, *made), after


def in_turn(state: State, step: st.Step) -> tuple[tuple[Operation, ...], tuple[Operation, ...], State]:
    """As `perform`, what goes before the step apart from the step's own operations."""
    latched: tuple[Operation, ...] = ()
    if state.ribs:
        latched, state = before_step(state, step)
    made, after = _done(state, step)
    if isinstance(step, _KNITTING) or not any(one.pending for one in state.in_force):
        return latched, made, after
    before, settled = leave(state, after, _hung_on(step))
    if settled.in_force == state.in_force:
        return latched, made, after
    made, after = _done(settled, step)
    return (*latched, *before), made, after


def _done(state: State, step: st.Step) -> Done:
    made, after = _HANDS[type(step)](state, step)
    if state.put_by and isinstance(step, st.ReturnPart | st.StartChart):
        more, after = taken_up(after)
        made = (*made, *more)
    return made, after


def _hung_on(step: st.Step) -> frozenset[int]:
    """Needles that stay in work and get a further loop by the step: no column can be dropped through two."""
    if isinstance(step, st.CloseCentre | st.SlotClosed):
        return frozenset({step.last + 1})
    if isinstance(step, st.EyeletAt):
        return frozenset({step.needle + (1 if step.side == "right" else -1)})
    return frozenset()


def _carriage(state: State) -> Side:
    if state.side is None:
        raise ValueError(f"{state.block}: the carriage side is not known yet")
    return state.side


def _needles_to_work(s: State, step: st.NeedlesToWork) -> Done:
    return (op.IntoWork(step.first, step.last),), replace(s, first=step.first, last=step.last)


def _carriage_at(s: State, step: st.CarriageAt) -> Done:
    if s.side == step.side:
        return (), s
    return (op.MoveCarriage(step.side, "" if step.way == "held" else step.way),), replace(s, side=step.side)


def _passes(s: State, rows: int) -> tuple[tuple[Operation, ...], Side]:
    side = _carriage(s)
    made: list[Operation] = []
    for _ in range(rows):
        side = op.other(side)
        made.append(op.Pass(side))
    return tuple(made), side


def _waste_start(s: State, step: st.WasteStart) -> Done:
    waste_yarn, cord = op.UseYarn("waste", "waste"), op.UseYarn("ravel", "ravel")
    cast_on = op.CastOn("e-wrap" if step.way == "by hand" else step.way, s.first, s.last)
    head: tuple[Operation, ...] = (waste_yarn, cast_on)
    if step.way == "hem":
        parting, side = _passes(s, 1)
        head, s = (cord, cast_on, *parting, waste_yarn), replace(s, side=side)
    waste, side = _passes(s, step.rows)
    ravel, side = _passes(replace(s, side=side), 1)
    return (*head, *waste, cord, *ravel), replace(s, side=side)


def _closed_start(s: State, step: st.ClosedStart) -> Done:
    return (op.CastOn(step.way, s.first, s.last),), s


def _use_yarn(s: State, step: st.UseYarnStep) -> Done:
    thread = op.UseYarn(step.yarn, step.tension, carried=step.before == "carried")
    said = (op.InFabric(step.fabric),) if step.fabric != s.fabric else ()
    return (thread, *said), replace(s, yarn=(step.yarn, step.tension), fabric=step.fabric)


def _set_counter(s: State, step: st.SetRowCounter) -> Done:
    return (op.SetCounter(step.rows),), replace(s, row=step.rows)


def _knit_rows(s: State, step: st.KnitRows) -> Done:
    if s.stripes is None and not s.in_force and not s.ribs:
        passes, side = _passes(s, step.rows)
        return passes, replace(s, side=side, row=s.row + step.rows)
    made: list[Operation] = []
    for _ in range(step.rows):
        more, s = knit_row(s)
        made += more
    return tuple(made), s


def _knit_to(s: State, step: st.KnitTo) -> Done:
    return _knit_rows(s, st.KnitRows(step.row - s.row))


def _ends(ends: str) -> tuple[Side, ...]:
    if ends == "both ends":
        return ("left", "right")
    return ("left",) if ends == "left end" else ("right",)


def _decrease(s: State, step: st.Decrease) -> Done:
    made: list[Operation] = []
    lift = max(step.inset, 1)
    for side in _ends(step.ends):
        for _ in range(step.by if step.inset == 0 else 1):
            by = 1 if step.inset == 0 else step.by
            if side == "left":
                made += [op.Transfer(s.first, s.first + lift - 1, by), op.OutOfWork(s.first, s.first + by - 1)]
                s = replace(s, first=s.first + by)
            else:
                made += [op.Transfer(s.last - lift + 1, s.last, -by), op.OutOfWork(s.last - by + 1, s.last)]
                s = replace(s, last=s.last - by)
    return tuple(made), s


def _increase_fashioned(s: State, step: st.IncreaseFashioned) -> Done:
    made: list[Operation] = []
    k = step.inset
    for side in _ends(step.ends):
        if side == "left":
            made += [op.IntoWork(s.first - 1, s.first - 1), op.Transfer(s.first, s.first + k - 1, -1)]
            made.append(op.FillFromBelow(s.first + k - 1, s.first + k))
            s = replace(s, first=s.first - 1)
        else:
            made += [op.IntoWork(s.last + 1, s.last + 1), op.Transfer(s.last - k + 1, s.last, 1)]
            made.append(op.FillFromBelow(s.last - k + 1, s.last - k))
            s = replace(s, last=s.last + 1)
    return tuple(made), s


def _grow(s: State, count: int) -> tuple[int, int, State]:
    """`count` further needles at the carriage side."""
    if _carriage(s) == "left":
        return s.first - count, s.first - 1, replace(s, first=s.first - count)
    return s.last + 1, s.last + count, replace(s, last=s.last + count)


def _increase_at_carriage(s: State, step: st.IncreaseAtCarriage) -> Done:
    first, last, after = _grow(s, 1)
    return (op.IntoWork(first, last),), after


def _cast_on_at_carriage(s: State, step: st.CastOnAtCarriage) -> Done:
    first, last, after = _grow(s, step.stitches)
    return (op.IntoWork(first, last), op.CastOn("e-wrap", first, last)), after


def _cast_off_at_carriage(s: State, step: st.CastOffAtCarriage) -> Done:
    side = _carriage(s)
    if side == "left":
        return (op.CastOff(s.first, s.first + step.stitches - 1, side),), replace(s, first=s.first + step.stitches)
    return (op.CastOff(s.last - step.stitches + 1, s.last, side),), replace(s, last=s.last - step.stitches)


def _hold_at_end(s: State, step: st.HoldAtEnd) -> Done:
    first, last = s.working()
    if step.side == "left":
        return (op.Hold(first, first + step.stitches - 1),), replace(s, held_left=s.held_left + step.stitches)
    return (op.Hold(last - step.stitches + 1, last),), replace(s, held_right=s.held_right + step.stitches)


def _wrap_held(s: State, step: st.WrapHeld) -> Done:
    first, last = s.working()
    return (op.Wrap(first - 1 if step.side == "left" else last + 1),), s


def _return_held(s: State, step: st.ReturnHeld) -> Done:
    if step.side == "left":
        return (op.Release(s.first, s.first + s.held_left - 1),), replace(s, held_left=0)
    return (op.Release(s.last - s.held_right + 1, s.last),), replace(s, held_right=0)


def _return_some(s: State, step: st.ReturnSome) -> Done:
    first, last = s.working()
    if step.side == "left":
        return (op.Release(first - step.stitches, first - 1),), replace(s, held_left=s.held_left - step.stitches)
    return (op.Release(last + 1, last + step.stitches),), replace(s, held_right=s.held_right - step.stitches)


def spread_counts(step: st.SpreadEvenly) -> tuple[int, ...]:
    """The loops that each of the needles `first`..`last` gets."""
    changed = 2 if step.changed == "two together" else 0
    counts = ((1,) * step.first_singles + (changed,)) * step.first_runs
    counts += ((1,) * step.singles + (changed,)) * step.runs + ((1,) * step.more_singles + (changed,)) * step.more_runs
    return counts + (1,) * (step.stitches - len(counts))


def _spread_evenly(s: State, step: st.SpreadEvenly) -> Done:
    return (op.Spread(s.first, s.last, step.first, spread_counts(step)),), replace(s, first=step.first, last=step.last)


def _cast_on_again(step: st.SlotOnWaste | st.SlotClosed | st.CastOnBetween) -> tuple[Operation, ...]:
    cast_on = op.CastOn("e-wrap", step.first, step.last, own_length=True, length_cm=step.length_cm)
    return op.IntoWork(step.first, step.last), cast_on


def _slot_on_waste(s: State, step: st.SlotOnWaste) -> Done:
    off = op.OntoWaste(step.first, step.last, CENTRE_WASTE_ROWS, step.edge)
    return (off, *_cast_on_again(step)), s


def _slot_closed(s: State, step: st.SlotClosed) -> Done:
    return (op.Close(step.first, step.last, "right"), *_cast_on_again(step)), s


def _eyelet_at(s: State, step: st.EyeletAt) -> Done:
    return (op.Transfer(step.needle, step.needle, 1 if step.side == "right" else -1),), s


def _repeat(s: State, step: st.Repeat) -> Done:
    made: list[Operation] = []
    for _ in range(step.times):
        for inner in step.body:
            more, s = perform(s, inner)
            made += more
    return tuple(made), s


def _together(s: State, step: st.Together) -> Done:
    made: list[Operation] = []
    for inner in merged(step):
        more, s = perform(s, inner)
        made += more
    return tuple(made), s


def _now(s: State, step: st.Now) -> Done:
    return (op.Check(step.stitches, step.row, step.side),), s


def _now_in_half(s: State, step: st.NowInHalf) -> Done:
    return (op.Check(step.stitches + step.waiting, step.row, step.side),), s


def _centre_to_waste(s: State, step: st.CentreToWaste) -> Done:
    return (op.OntoWaste(step.first, step.last, CENTRE_WASTE_ROWS, step.edge),), replace(s, gaps=(*s.gaps, (step.first, step.last)))


def _close_centre(s: State, step: st.CloseCentre) -> Done:
    return (op.Close(step.first, step.last, "right"),), replace(s, gaps=(*s.gaps, (step.first, step.last)))


def _cast_on_between(s: State, step: st.CastOnBetween) -> Done:
    first, last = min(s.first, step.first), max(s.last, step.last)
    return _cast_on_again(step), replace(s, first=first, last=last)


def _off_on_waste(s: State, step: st.OffOnWaste) -> Done:
    return (op.OntoWaste(s.first, s.last, step.rows, step.edge),), replace(s, first=0, last=-1)


def _cast_off_all(s: State, step: st.CastOffAll) -> Done:
    return (op.CastOff(s.first, s.last, _carriage(s)),), replace(s, first=0, last=-1)


def _sew_off_all(s: State, step: st.SewOffAll) -> Done:
    return (op.SewOff(s.first, s.last, _carriage(s)),), replace(s, first=0, last=-1)


def _gather_all(s: State, step: st.GatherAll) -> Done:
    return (op.Gather(s.first, s.last),), replace(s, first=0, last=-1)


def _break_off(s: State, step: st.BreakOff) -> Done:
    return (op.BreakYarn(step.tail_cm),), replace(s, yarn=None)


def _edge_is(s: State, step: st.EdgeIs) -> Done:
    return (op.NameEdge(step.edge, step.where, step.from_row, step.to_row),), s


def _gap_is(s: State, step: st.GapIs) -> Done:
    return (op.NameGap(step.edge, step.where, step.from_row, step.to_row, step.gap),), s


def _nothing(s: State, step: st.Step) -> Done:
    return (), s


_HANDS: dict[type[st.Step], Callable[[State, Any], Done]] = {
    st.NeedlesToWork: _needles_to_work,
    st.CarriageAt: _carriage_at,
    st.WasteStart: _waste_start,
    st.ClosedStart: _closed_start,
    st.UseYarnStep: _use_yarn,
    st.SetRowCounter: _set_counter,
    st.KnitRows: _knit_rows,
    st.KnitTo: _knit_to,
    st.Decrease: _decrease,
    st.IncreaseFashioned: _increase_fashioned,
    st.IncreaseAtCarriage: _increase_at_carriage,
    st.CastOffAtCarriage: _cast_off_at_carriage,
    st.CastOnAtCarriage: _cast_on_at_carriage,
    st.HoldAtEnd: _hold_at_end,
    st.WrapHeld: _wrap_held,
    st.ReturnHeld: _return_held,
    st.ReturnSome: _return_some,
    st.SpreadEvenly: _spread_evenly,
    st.SlotOnWaste: _slot_on_waste,
    st.SlotClosed: _slot_closed,
    st.EyeletAt: _eyelet_at,
    st.Repeat: _repeat,
    st.Together: _together,
    st.MarkEdges: _nothing,
    st.Now: _now,
    st.NowInHalf: _now_in_half,
    st.CentreToWaste: _centre_to_waste,
    st.CloseCentre: _close_centre,
    st.CastOnBetween: _cast_on_between,
    st.OffOnWaste: _off_on_waste,
    st.CastOffAll: _cast_off_all,
    st.SewOffAll: _sew_off_all,
    st.GatherAll: _gather_all,
    st.BreakOff: _break_off,
    st.EdgeIs: _edge_is,
    st.GapIs: _gap_is,
    st.Say: _nothing,
    **INSIDE_HANDS,
    **NEEDLE_HANDS,
    **PART_HANDS,
    **PATTERN_HANDS,
    **EDGING_HANDS,
}
