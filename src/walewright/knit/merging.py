"""Merging: shapings told one by one, worked together row by row."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.knit import steps as st
from walewright.knit.order import Rank
from walewright.knit.steps import Step

_RANKS: dict[type[Step], Rank] = {
    st.WrapHeld: Rank.WRAP,
    st.LatchRib: Rank.LATCH,
    st.LatchPanel: Rank.LATCH,
    st.ReturnHeld: Rank.RETURN,
    st.ReturnSome: Rank.RETURN,
    st.UseYarnStep: Rank.YARN,
    st.SpreadEvenly: Rank.SPREAD,
    st.HoldAtEnd: Rank.HOLD,
}
"""What goes before the rest at one row, as in `order`, by which the moves were planned; all else counts as shaping, in the order of
the tracks."""


def merged(step: st.Together) -> Iterator[Step]:
    """The rows and moves of a `Together` in the order worked, without repeats. Raises ValueError where a track does not count
    all its rows."""
    todo: list[tuple[int, Rank, int, Step]] = []
    for number, track in enumerate(step.tracks):
        at = step.from_row
        for one in in_turn(track.steps):
            if isinstance(one, st.KnitRows):
                at += one.rows
            else:
                todo.append((at, _RANKS.get(type(one), Rank.SHAPE), number, one))
        if at != step.to_row:
            raise ValueError(f"{at - step.from_row} rows of {step.to_row - step.from_row}")
    at = step.from_row
    for row, _, _, one in sorted(todo, key=lambda t: t[:3]):
        if row > at:
            yield st.KnitRows(row - at, origin=one.origin)
            at = row
        yield one
    if step.to_row > at:
        yield st.KnitRows(step.to_row - at)


def in_turn(steps: Sequence[Step]) -> Iterator[Step]:
    """The steps with repeats written out."""
    for step in steps:
        if isinstance(step, st.Repeat):
            for _ in range(step.times):
                yield from in_turn(step.body)
        else:
            yield step


def one_by_one(steps: Sequence[Step]) -> Iterator[Step]:
    """The steps as hands come to them, with repeats written out and tracks merged."""
    for step in in_turn(steps):
        if isinstance(step, st.Together):
            yield from merged(step)
        else:
            yield step


def rows_of(step: Step) -> int:
    """The rows that a step knits."""
    return sum(one.rows for one in in_turn((step,)) if isinstance(one, st.KnitRows))
