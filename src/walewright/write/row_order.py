"""Row order: more than two shapings at the same time, told row by row, for nobody keeps three lists in mind."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.report.said import said
from walewright.write.align import Column
from walewright.write.listed import InRowOrder
from walewright.write.together import buttonholes, done_once, moves_of

MOST_TRACKS = 2
"""What goes on at the same time and is still told side by side; what is done once has its reading of the counter."""

TitlesAtOnce = frozenset[st.Words]
"""The titles of what goes on together."""


def crowds(column: Column[st.StepBlock]) -> frozenset[TitlesAtOnce]:
    """Of the blocks of all sizes: what is too much to go on side by side in any of them."""
    return frozenset(
        frozenset(_title(track) for track in step.tracks)
        for block in column
        if block is not None
        for _, steps in block.paragraphs
        for step in steps
        if isinstance(step, st.Together) and sum(not done_once(track) for track in step.tracks) > MOST_TRACKS
    )


def in_row_order(steps: Sequence[Step], crowd: Collection[TitlesAtOnce]) -> list[Step]:
    """The steps, what goes on together of a `crowd` as its moves in the order worked. What is true after it is said after the rows
    that follow, where some do."""
    made: list[Step] = []
    left = list(steps)
    while left:
        step = left.pop(0)
        titles = tuple(_title(track) for track in step.tracks) if isinstance(step, st.Together) else ()
        if not isinstance(step, st.Together) or not any(crowd_of.issuperset(titles) for crowd_of in crowd):
            made.append(step)
            continue
        body = list(merged(step))
        if len(left) > 1 and isinstance(left[0], st.Now) and isinstance(left[1], st.KnitTo):
            left.pop(0)
            while body and isinstance(body[-1], st.KnitRows):
                body.pop()
        made.append(InRowOrder(tuple(body), 1, titles, origin=step.origin))
    return made


_FIRST = (st.WrapHeld, st.LatchRib | st.LatchPanel, st.ReturnHeld | st.ReturnSome, st.UseYarnStep, st.SpreadEvenly, st.HoldAtEnd)
"""What goes before the rest at one row, and in which order, as `steps.Together` says."""


def merged(step: st.Together) -> Iterator[Step]:
    """The rows and moves of all tracks in the order worked, without repeats."""
    todo = [
        (row, _rank(move), number, move) for number, track in enumerate(step.tracks) for row, move in moves_of(track, step.from_row)
    ]
    at = step.from_row
    for row, _, _, move in sorted(todo, key=lambda told: told[:3]):
        if row > at:
            yield st.KnitRows(row - at, origin=move.origin)
            at = row
        yield move
    if step.to_row > at:
        yield st.KnitRows(step.to_row - at)


def _rank(move: Step) -> int:
    return next((rank for rank, kinds in enumerate(_FIRST) if isinstance(move, kinds)), len(_FIRST))


def _title(track: st.Track) -> st.Words:
    return said("buttonholes") if buttonholes((track,)) else track.title
