"""Shaping along a line within a piece: the stitches outside it are moved by one needle, so that none stands empty."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from walewright.counted.model import SizedRun
from walewright.knit import inside_steps as st
from walewright.knit import operations as op
from walewright.knit.manners import EndsShaped
from walewright.knit.operations import Operation, Side
from walewright.knit.rows import Done
from walewright.knit.state import State
from walewright.knit.step import Step
from walewright.record import replace


def shaped_inside(by: int, run: SizedRun, other: SizedRun, ends: EndsShaped, prongs: int, origin: str) -> list[Step]:
    """One move of a run, a stitch along each of its lines, the outermost first; a smaller move leaves the outer ones out. `other`
    is the run of the right end where both are moved."""
    made: list[Step] = []
    for line, there in reversed([*zip(run.lines, other.lines, strict=True)][: abs(by)]):
        if line.of == "count" and line == there:
            outer = st.DecreaseOuter if by < 0 else st.IncreaseOuter
            made.append(outer(ends, line.at, prongs, origin=origin))
        elif line.of == "count":
            outer = st.DecreaseOuter if by < 0 else st.IncreaseOuter
            made += [outer("left end", line.at, prongs, origin=origin), outer("right end", there.at, prongs, origin=origin)]
        else:
            left, right = -line.at, there.at - 1
            first, last = (left, left) if ends == "left end" else (right, right) if ends == "right end" else (left, right)
            on = st.DecreaseOn if by < 0 else st.IncreaseBeside
            made.append(on(ends, first, last, prongs, origin=origin))
    return made


# ----------------------------------------------------------------- what hands do


def lines_of(s: State, step: Step) -> tuple[tuple[Side, int], ...]:
    """(end, the last needle that stays) of each line of a step."""
    match step:
        case st.DecreaseOn(ends=ends, first=first, last=last) | st.IncreaseBeside(ends=ends, first=first, last=last):
            found: dict[Side, int] = {"left": first, "right": last}
        case st.DecreaseOuter(ends=ends, stitches=n) | st.IncreaseOuter(ends=ends, stitches=n):
            found = {"left": s.first + n, "right": s.last - n}
        case _:
            return ()
    return tuple((side, at) for side, at in found.items() if ends in ("both ends", f"{side} end"))


def decrease_inside(s: State, step: st.DecreaseOn | st.DecreaseOuter) -> Done:
    """From the line outwards, as many at a time as the tool has prongs."""
    made: list[Operation] = []
    for side, stays in lines_of(s, step):
        if side == "left":
            for high in range(stays - 1, s.first - 1, -step.prongs):
                made.append(op.Transfer(max(s.first, high - step.prongs + 1), high, 1))
            made.append(op.OutOfWork(s.first, s.first))
            s = replace(s, first=s.first + 1)
        else:
            for low in range(stays + 1, s.last + 1, step.prongs):
                made.append(op.Transfer(low, min(s.last, low + step.prongs - 1), -1))
            made.append(op.OutOfWork(s.last, s.last))
            s = replace(s, last=s.last - 1)
    return tuple(made), s


def increase_inside(s: State, step: st.IncreaseBeside | st.IncreaseOuter) -> Done:
    """From the edge inwards; the gap is filled from the stitch that stays beside it."""
    made: list[Operation] = []
    for side, stays in lines_of(s, step):
        if side == "left":
            made.append(op.IntoWork(s.first - 1, s.first - 1))
            for low in range(s.first, stays, step.prongs):
                made.append(op.Transfer(low, min(stays - 1, low + step.prongs - 1), -1))
            made.append(op.FillFromBelow(stays - 1, stays))
            s = replace(s, first=s.first - 1)
        else:
            made.append(op.IntoWork(s.last + 1, s.last + 1))
            for high in range(s.last, stays, -step.prongs):
                made.append(op.Transfer(max(stays + 1, high - step.prongs + 1), high, 1))
            made.append(op.FillFromBelow(stays + 1, stays))
            s = replace(s, last=s.last + 1)
    return tuple(made), s


INSIDE_HANDS: Mapping[type[Step], Callable[[State, Any], Done]] = {
    st.DecreaseOn: decrease_inside,
    st.DecreaseOuter: decrease_inside,
    st.IncreaseBeside: increase_inside,
    st.IncreaseOuter: increase_inside,
}
