"""Columns: at which readings of the counter the purl columns of charts are latched up as rows are knitted, for which needles.

That goes by the rows of a column that are not latched up yet, by crosses beside it, and by what is in work: nobody keeps such a
count at the bed, so the lines that knit these rows name the readings.
"""

from __future__ import annotations

from collections.abc import Sequence, Set
from dataclasses import dataclass, field

from walewright.design.model import Chart
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.hands import perform
from walewright.knit.merging import one_by_one
from walewright.knit.pattern_steps import ColumnsLatched
from walewright.knit.rows import knit_row
from walewright.knit.state import State
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.record import replace

_TAKING = (st.CentreToWaste, st.CloseCentre, st.SlotOnWaste, st.SlotClosed)
"""Steps that take stitches off their needles all at once."""

BlockColumns = tuple[ColumnsLatched, ...]


def columns_latched(plan: SizePlan, charts: Sequence[Chart]) -> tuple[BlockColumns, ...]:
    """Of each block of a plan, in the order of its rows. `charts` are all that it may name."""
    purl = {chart.name for chart in charts if any(key.cell.kind == "purl" for key in chart.key)}
    return tuple(_of_block(block, tuple(charts)) if _works(block, purl) else () for block in plan.blocks)


def _works(block: StepBlock, charts: Set[str]) -> bool:
    """Whether it works any of these."""
    steps = (step for _, steps in block.paragraphs for step in steps)
    return not block.joining and any(isinstance(step, st.StartChart) and step.chart in charts for step in steps)


def _of_block(block: StepBlock, charts: tuple[Chart, ...]) -> BlockColumns:
    rows = _Rows(State(block.name, charts=charts))
    for _, steps in block.paragraphs:
        for step in steps:
            rows.line(step)
    return tuple(rows.found)


@dataclass(slots=True)
class _Rows:
    """The rows knitted so far; the counter has been set `times` times."""

    state: State
    found: list[ColumnsLatched] = field(default_factory=list)
    times: int = 0

    def line(self, step: Step) -> None:
        """A step with its repeats, and what goes on together in it."""
        begun = self.state.row
        for one in one_by_one((step,)):
            within = one is not step and self.state.row > begun
            self._work(one, "" if within else type(step).__name__)

    def _work(self, step: Step, line: str) -> None:
        """A step; what it disturbs is told before the `line`, if that is one."""
        match step:
            case st.KnitRows(rows=rows) if self.state.in_force:
                self._knit(rows)
            case st.KnitTo(row=row) if self.state.in_force:
                self._knit(row - self.state.row)
            case _:
                self._by_step(step, line)
                self.times += isinstance(step, st.SetRowCounter)
                _, self.state = perform(self.state, step)

    def _by_step(self, step: Step, line: str) -> None:
        # What is disturbed among the rows of a line, or where a part goes on, goes by the chart's note.
        if not line or not self.state.in_force or not isinstance(step, _TAKING):
            return
        moves, _ = perform(replace(self.state, ribs=()), step)
        needles = tuple(move.slot for move in moves if isinstance(move, op.LatchUp))
        if not needles:
            return
        last = self.found[-1] if self.found else None
        if last is not None and (last.nth, last.row, last.line) == (self.times, self.state.row, line):
            self.found[-1] = replace(last, needles=tuple(sorted({*last.needles, *needles})))
        else:
            self.found.append(ColumnsLatched(self.times, self.state.row, needles, line))

    def _knit(self, rows: int) -> None:
        for _ in range(rows):
            # What ribs ask for is told by their own lines.
            moves, after = knit_row(replace(self.state, ribs=()) if self.state.ribs else self.state)
            knitted = next(i for i, move in enumerate(moves) if isinstance(move, op.Pass | op.PictureRow))
            needles = tuple(move.slot for move in moves[knitted:] if isinstance(move, op.LatchUp))
            if needles:
                self.found.append(ColumnsLatched(self.times, after.row, needles))
            self.state = knit_row(self.state)[1] if self.state.ribs else after
