"""Rows at a shoulder: those that are knitted at the outer end of a part though the shoulder is held from there in steps."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.knit import steps as st
from walewright.knit.merging import one_by_one
from walewright.knit.operations import Side
from walewright.knit.steps import Step, Words
from walewright.report.said import said


def rows_at_end(steps: Iterable[Step], side: Side, row: int) -> tuple[int, ...]:
    """The readings of the counter after each row above `row` that knits the outermost needle at a side, to the last of its part."""
    at = held = 0
    waits = False
    found: list[int] = []
    for step in one_by_one(tuple(steps)):
        match step:
            case st.SetRowCounter(rows=rows):
                at = rows
            case st.KnitRows() | st.KnitTo():
                to = step.row if isinstance(step, st.KnitTo) else at + step.rows
                found += range(max(at, row) + 1, to + 1) if not held and not waits else ()
                at = to
            case st.HoldAtEnd(side=end, stitches=stitches) if end == side:
                held += stitches
            case st.ReturnSome(side=end, stitches=stitches) if end == side:
                held -= stitches
            case st.ReturnHeld(side=end) if end == side:
                held = 0
            case st.HoldPart(side=end) | st.PartOnCord(side=end) if end == side:
                waits = True
            case st.ReturnPart(side=end) if end == side:
                waits = False
            case st.OffOnWaste() | st.CastOffAll() if found and not waits:
                break
    return tuple(found)


def told(edge: str, rows: tuple[int, ...], begin: int, end: int) -> Words:
    """Which of the rows from reading `begin` to `end` those are, so that they can be counted off."""
    first = next((n for n, row in enumerate(rows) if row != begin + 1 + n), len(rows))
    last = len(rows) - first
    of_last = rows[first:] == tuple(range(end - last + 1, end + 1))
    if of_last and first == 1 and last == 1:
        return said("rows-of-shoulder/ends", edge=edge, rows=len(rows))
    if of_last and first == 1 and last > 1:
        return said("rows-of-shoulder/ends-more", edge=edge, rows=len(rows), last=last)
    if of_last and not first:
        return said("rows-of-shoulder/last", edge=edge, rows=len(rows))
    return said("rows-of-shoulder", edge=edge, rows=len(rows))
