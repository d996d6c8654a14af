"""The tally: what a knitter keeps count of while reading, the row counter and the stitches in the part being worked.

Only for what the text says beside the steps; the reader of the words counts for itself and refuses a number that is wrong.
"""

from __future__ import annotations

from walewright.knit import steps as st
from walewright.knit.operations import Side, other
from walewright.knit.steps import Step
from walewright.record import record, replace

Both = tuple[int, int]
"""A number for the left and one for the right."""


@record
class RowTally:
    """`row` is None until the counter is set. `stitches` are those of the part being worked, held ones included; `held` counts
    those held for shaping at its ends, and `waiting` those held at the outer end of each part that waits. `side` is where the
    carriage stands, None while that is not known."""

    row: int | None = None
    stitches: int = 0
    held: Both = (0, 0)
    waiting: Both = (0, 0)
    side: Side | None = None


def counted(tally: RowTally, step: Step) -> RowTally:
    """The tally after `step`; the kinds that there are most of come first."""
    match step:
        case st.KnitRows(rows=rows):
            return _at_row(tally, None if tally.row is None else tally.row + rows, _side_after(tally.side, rows))
        case st.KnitTo(row=row):
            return _at_row(tally, row, None if tally.row is None else _side_after(tally.side, row - tally.row))
    if by := more(step):
        return RowTally(tally.row, tally.stitches + by, tally.held, tally.waiting, tally.side)
    return _otherwise_counted(tally, step)


def _otherwise_counted(tally: RowTally, step: Step) -> RowTally:
    """After a step that neither knits rows nor shapes."""
    match step:
        case st.Now(stitches=stitches, row=row, side=at):
            return replace(tally, stitches=stitches, row=row, side=at)
        case st.CarriageAt(side=at):
            return replace(tally, side=at)
        case st.Repeat(body=body, times=times):
            for inner in body * times:
                tally = counted(tally, inner)
            return tally
        case st.Together(from_row=begin, to_row=row, tracks=tracks):
            end = _side_after(tally.side, row - begin)
            for track in tracks:
                tally = counted(tally, st.Repeat(track.steps, 1))
            return replace(tally, row=row, side=end)
        case st.SetRowCounter(rows=row):
            return _at_row(tally, row, tally.side)
        case st.WasteStart():
            # What is true after it says where the carriage has come.
            return replace(tally, side=None)
        case st.HoldAtEnd(side=side, stitches=stitches):
            return _holding(tally, side, stitches)
        case st.ReturnSome(side=side, stitches=stitches):
            return _holding(tally, side, -stitches)
        case st.ReturnHeld(side=side):
            return replace(tally, held=_with(tally.held, side, 0))
        case st.PartOnCord(side=side, first=first, last=last):
            # All its needles are named, with those held for shaping.
            held = _of(tally.held, side)
            put_by = replace(tally, held=_with(tally.held, side, 0), waiting=_with(tally.waiting, side, held))
            return replace(put_by, stitches=tally.stitches - (last - first + 1))
        case st.HoldPart(side=side, first=first, last=last):
            held = _of(tally.held, side)
            left = replace(tally, held=_with(tally.held, side, 0), waiting=_with(tally.waiting, side, held))
            return replace(left, stitches=tally.stitches - (last - first + 1) - held)
        case st.ReturnPart(side=side, first=first, last=last):
            held = _of(tally.waiting, side)
            back = replace(tally, held=_with(tally.held, side, held), waiting=_with(tally.waiting, side, 0))
            return replace(back, stitches=tally.stitches + last - first + 1 + held)
        case st.NeedleOut(stitches=stitches) | st.NeedlesOutEvery(stitches=stitches):
            return replace(tally, stitches=stitches)
        case st.LeaveOut(stitches=stitches) | st.LeaveOutEvery(stitches=stitches):
            return replace(tally, stitches=stitches)
        case st.NeedleBack(stitches=stitches) | st.NeedlesBackEvery(stitches=stitches):
            return replace(tally, stitches=stitches)
        case st.SpreadEvenly(stitches=stitches) | st.EveryOutOfWork(stitches=stitches) | st.FoldUp(stitches=stitches):
            return replace(tally, stitches=stitches)
        case st.OffOnWaste() | st.CastOffAll() | st.SewOffAll() | st.GatherAll():
            return replace(tally, stitches=0, held=(0, 0), side=None)
    return tally


def _at_row(tally: RowTally, row: int | None, side: Side | None) -> RowTally:
    """Written out, since it is asked for most often, and `replace` takes ten times as long."""
    return RowTally(row, tally.stitches, tally.held, tally.waiting, side)


def _side_after(side: Side | None, rows: int) -> Side | None:
    """Where the carriage stands after so many rows."""
    return other(side) if side is not None and rows % 2 else side


def _holding(tally: RowTally, side: st.PartPlace, more: int) -> RowTally:
    """With more stitches held for shaping at a side; written out like `_at_row`."""
    held = _with(tally.held, side, _of(tally.held, side) + more)
    return RowTally(tally.row, tally.stitches, held, tally.waiting, tally.side)


def more(step: Step) -> int:
    """How many stitches a step of shaping adds to the part being worked."""
    match step:
        case st.Decrease(ends=ends, by=by):
            return -by * (2 if ends == "both ends" else 1)
        case st.DecreaseOn(ends=ends) | st.DecreaseOuter(ends=ends):
            return -2 if ends == "both ends" else -1
        case st.IncreaseFashioned(ends=ends) | st.IncreaseBeside(ends=ends) | st.IncreaseOuter(ends=ends):
            return 2 if ends == "both ends" else 1
        case st.IncreaseAtCarriage():
            return 1
        case st.CastOnAtCarriage(stitches=n) | st.CastOnBetween(stitches=n) | st.NeedlesToWork(stitches=n):
            return n
        case st.CastOffAtCarriage(stitches=n) | st.CentreToWaste(stitches=n) | st.CloseCentre(stitches=n):
            return -n
    return 0


def held_at(tally: RowTally, side: Side) -> int:
    """Stitches held for shaping at an end of the part being worked."""
    return _of(tally.held, side)


def _of(both: Both, side: st.PartPlace) -> int:
    """What is held at the outer end of a part: an inner one has none."""
    return {"left": both[0], "right": both[1]}.get(side, 0)


def _with(both: Both, side: st.PartPlace, number: int) -> Both:
    return {"left": (number, both[1]), "right": (both[0], number)}.get(side, both)
