"""Row order: more than two shapings at the same time, told row by row, for nobody keeps three lists in mind."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from walewright.knit import steps as st
from walewright.knit.merging import merged
from walewright.knit.steps import Step
from walewright.report.said import said
from walewright.write.align import Column
from walewright.write.listed import InRowOrder
from walewright.write.together import MOST_TRACKS, buttonholes, few_readings, told_by_readings

TitlesAtOnce = frozenset[st.Words]
"""The titles of what goes on together."""


def crowds(column: Column[st.StepBlock]) -> frozenset[TitlesAtOnce]:
    """Of the blocks of all sizes: what is too much to go on side by side in any of them, though what is done at few readings in all
    of them is looked up."""
    together = [
        step
        for block in column
        if block is not None
        for _, steps in block.paragraphs
        for step in steps
        if isinstance(step, st.Together)
    ]
    many = {_title(t) for step in together for t in step.tracks if not (told_by_readings(t) or few_readings(t))}
    return frozenset(
        frozenset(_title(track) for track in step.tracks)
        for step in together
        if sum(_title(track) in many for track in step.tracks) > MOST_TRACKS
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


def _title(track: st.Track) -> st.Words:
    return said("buttonholes") if buttonholes((track,)) else track.title
