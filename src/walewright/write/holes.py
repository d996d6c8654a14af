"""Holes above each other with nothing beside them: where sizes would say otherwise how many rows lie between them, each hole is
told at its reading of the counter, so that one line has it for all sizes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from walewright.knit import steps as st
from walewright.knit.merging import in_turn
from walewright.knit.steps import Step
from walewright.report.said import said
from walewright.write.align import Column, likeness
from walewright.write.listed import InRowOrder
from walewright.write.tally import RowTally, counted

_HOLES = (st.EyeletAt, st.SlotClosed)
_BESIDE = (st.KnitTo, st.KnitRows, st.Now)
"""What can stand between them."""


def uneven(column: Column[st.StepBlock]) -> bool:
    """Whether sizes say otherwise how often their holes come."""
    working = [
        [tuple(map(likeness, steps[begin:end])) for _, steps in block.paragraphs for begin, end in _stretches(steps)]
        for block in column
        if block is not None
    ]
    return any(one != other for one, other in pairwise(working)) and len({len(told) for told in working}) == 1


def told_by_rows(steps: Sequence[Step], tally: RowTally) -> list[Step]:
    """The steps, each stretch of holes as its moves in the order worked; `tally` is what is true before them."""
    made: list[Step] = []
    done = 0
    for begin, end in _stretches(steps):
        made += steps[done:begin]
        for step in steps[done:begin]:
            tally = counted(tally, step)
        if tally.row is None:
            made += steps[begin:end]
        else:
            made.append(InRowOrder(tuple(_moves(steps[begin:end], tally)), 1, (said("buttonholes"),), origin=steps[begin].origin))
        for step in steps[begin:end]:
            tally = counted(tally, step)
        # How many there are is said at each hole.
        done = end + (end < len(steps) and isinstance(steps[end], st.Now))
    return [*made, *steps[done:]]


def _stretches(steps: Sequence[Step]) -> Iterator[tuple[int, int]]:
    """Where rows begin to be knitted before a hole, and where the last hole after it is made, of one kind; two holes at least."""
    begin = 0
    while begin < len(steps):
        end = begin
        while end < len(steps) and (isinstance(steps[end], _BESIDE) or _makes(steps[end])):
            end += 1
        first = next((at for at in range(begin, end) if isinstance(steps[at], st.KnitTo | st.KnitRows | st.Repeat)), end)
        last = max((at for at in range(begin, end) if _makes(steps[at])), default=-1)
        holes = [step for step in in_turn(steps[first : last + 1]) if isinstance(step, _HOLES)]
        if len(holes) > 1 and len({likeness(step) for step in holes}) == 1:
            yield first, last + 1
        begin = end + 1


def _makes(step: Step) -> bool:
    """Whether it makes holes, and nothing else but rows."""
    inner = tuple(in_turn((step,)))
    return any(isinstance(one, _HOLES) for one in inner) and all(isinstance(one, (*_HOLES, st.KnitRows)) for one in inner)


def _moves(steps: Sequence[Step], tally: RowTally) -> Iterator[Step]:
    """The rows between holes, and the holes, without repeats; what is true between them is counted in each row."""
    for step in in_turn(steps):
        if isinstance(step, st.KnitTo):
            yield st.KnitRows(step.row - (tally.row or 0), origin=step.origin)
        elif not isinstance(step, st.Now):
            yield step
        tally = counted(tally, step)
