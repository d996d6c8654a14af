"""The bench copy: a plan unrolled, a line for each time that hands do something.

Repeats, shapings that go on together, charts, stripes and ribs in stages are all written out. Rows without handwork have no line:
they are counted in the one that follows them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Literal

from walewright.design.model import Chart
from walewright.knit import bench_steps as bs
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.bench_carriage import with_settings
from walewright.knit.bench_moves import told
from walewright.knit.bench_steps import BenchBlock, BenchLine, BenchPart
from walewright.knit.charting import PLAIN, InForce
from walewright.knit.hands import in_turn
from walewright.knit.merging import one_by_one
from walewright.knit.operations import Operation
from walewright.knit.rows import knit_row
from walewright.knit.state import State
from walewright.knit.steps import SizePlan, Step, StepBlock

_ONE_LINE = (
    (st.UseYarnStep, st.SetRowCounter),
    (st.UseLooser, st.SetRowCounter),
    (st.ClosedStart, st.SetRowCounter),
    (st.CarriageAt, st.SetRowCounter),
    (st.BreakOff, st.OffOnWaste),
    (st.BreakOff, st.GatherAll),
    (st.BreakOff, st.SewOffAll),
    (st.BreakOff, st.UseYarnStep),
    (st.BreakOff, bs.TakeUp),
    (st.CastOffAll, st.BreakOff),
    (st.NeedlesToWork, st.EveryOutOfWork),
    (bs.OfChart, Step),
    # A cross, with the columns beside it that are dropped for it and latched up again; a column that is re-formed.
    (bs.DropRows, bs.CrossStitches),
    (bs.CrossStitches, bs.LatchColumns),
    (bs.DropRows, bs.LatchColumns),
)
"""Pairs of steps where the second goes on in the line of the first."""

_PATTERNS = (st.StartChart, st.StopChart, st.StopChartOn, st.StartStripes, st.StopStripes, st.LatchInStages, st.LatchPanelInStages)
"""Steps that say what is to be done in rows to come: that is told where it is done."""


def unrolled(plan: SizePlan, charts: Sequence[Chart]) -> tuple[BenchBlock, ...]:
    """The blocks of a plan. `charts` are all that it may name."""
    return tuple(_joins(block) if block.joining else _block(block, tuple(charts)) for block in plan.blocks)


def _joins(block: StepBlock) -> BenchBlock:
    return BenchBlock(block.name, block.copies, block.paragraphs)


def _block(block: StepBlock, charts: tuple[Chart, ...]) -> BenchBlock:
    made = _Lines(State(block.name, charts=charts))
    paragraphs: list[tuple[st.Words, tuple[BenchPart, ...]]] = []
    for title, steps in block.paragraphs:
        made.parts = []
        for step in one_by_one(steps):
            made.work(step)
        paragraphs.append((title, tuple(made.parts)))
    if made.rows:
        paragraphs.append(("", tuple(made.plain())))
    return BenchBlock(block.name, block.copies, with_settings(paragraphs))


@dataclass(slots=True)
class _Lines:
    """The lines made so far of one block. `rows` have been knitted since the last one, the needles `apart` are held for a
    pattern."""

    state: State
    parts: list[BenchPart] = field(default_factory=list)
    rows: int = 0
    counted: bool = False
    apart: set[int] = field(default_factory=set)

    def work(self, step: Step) -> None:
        """The lines of one step of the plan."""
        match step:
            case st.KnitRows(rows=rows):
                self._knit(rows)
            case st.KnitTo(row=row):
                self._knit(row - self.state.row)
            case st.Now():
                # Each line says what stands on the bed.
                pass
            case st.Say() | st.EdgeIs():
                self.plain()
                self.parts.append(step)
            case _ if isinstance(step, _PATTERNS):
                self._pattern(step)
            case _:
                self._by_hand(step)

    def plain(self) -> list[BenchPart]:
        """Rows that are followed by nothing done in a line of their own; all that has been made."""
        if self.rows:
            self._line(bs.PlainRows())
        return self.parts

    # ------------------------------------------------------------- lines

    def _line(self, step: Step, read: int | None = None) -> None:
        """A line for what has just been done, after the rows before it; or the line before it goes on. `read`: what the counter
        read when it was set anew, if it was: a line with rows tells up to where they were knitted."""
        last = self.parts[-1] if self.parts else None
        body: tuple[Step, ...] = (step,)
        rows, self.rows = self.rows, 0
        if isinstance(last, BenchLine) and not rows and _goes_on(last.body, step):
            rows, body = last.rows, (*last.body, step)
            self.parts.pop()
        s = self.state
        held = s.held_left + s.held_right + len(self.apart)
        there = s.stitches - s.waiting if s.last >= s.first else 0
        row = s.row if self.counted else None
        if rows and read is not None:
            row = read
        out = s.held_left + s.held_right > 0 or any(not part.cord for part in s.parts)
        patterned: Literal["", "begun", "held"] = "held" if self.apart else "begun" if s.in_force else ""
        counts = {"in_work": there - held, "held": held, "waiting": s.waiting}
        self.parts.append(BenchLine(rows=rows, row=row, side=s.side, body=body, **counts, right_out=out, patterned=patterned))

    def _tell(self, moves: Sequence[Operation]) -> None:
        for step in told(moves):
            if isinstance(step, bs.HoldNeedles):
                self.apart |= set(step.needles)
            elif isinstance(step, bs.ReturnNeedles | bs.FloatPast | bs.DrawLongOn | bs.KnitNeedles):
                self.apart -= set(step.needles)
            self._line(step)

    def _by_hand(self, step: Step) -> None:
        before, own, after = in_turn(self.state, step)
        self._tell(before)
        read = self.state.row if self.counted and isinstance(step, st.SetRowCounter) else None
        self.state = after
        self.counted = self.counted or isinstance(step, st.SetRowCounter)
        self._line(_in_full(step), read)
        if isinstance(step, st.ReturnPart):
            self._tell(own[1:])

    # ------------------------------------------------------------- patterns

    def _pattern(self, step: Step) -> None:
        before, own, after = in_turn(self.state, step)
        was, self.state = self.state, after
        moves = [move for move in (*before, *own) if not isinstance(move, op.InFabric)]
        match step:
            case st.StartChart():
                self._tell(before)
                whole = step.area == "whole"
                span = (0, -1) if whole else (step.first, step.last)
                begins = bs.FabricBegins(step.fabric, step.chart, *span) if step.fabric else bs.MotifBegins(step.chart, *span)
                self._line(begins)
                self._tell([move for move in own if not isinstance(move, op.InFabric)])
            case st.StopChart() | st.StopChartOn():
                self._tell(moves)
                ended = next(one for one in was.in_force if one not in after.in_force)
                span = (0, -1) if ended.area == "whole" else (ended.first, ended.last)
                self._line(bs.ChartEnds(step.chart, *span))
            case st.StartStripes():
                self._line(bs.StripesBegin(step.fabric))
            case st.StopStripes():
                self._line(bs.StripesEnd(step.fabric))
            case _:
                self._tell(moves)

    def _knit(self, rows: int) -> None:
        for _ in range(rows):
            self._row()

    def _row(self) -> None:
        moves, after = knit_row(self.state)
        at = next(i for i, move in enumerate(moves) if isinstance(move, op.Pass | op.PictureRow))
        laid = isinstance(moves[at], op.PictureRow)
        if at or laid:
            if laid:
                # The row itself is by hand: those before it are knitted first.
                self.plain()
            for chart, row in _rows_of_charts(self.state.in_force, self.state.row):
                self._line(bs.OfChart(row, chart, itself=laid))
        self._tell(moves[:at])
        self.state = after
        if laid:
            self._tell(moves[at : at + 1])
        else:
            self.rows += 1
        self._tell(moves[at + 1 :])


def _goes_on(body: Sequence[Step], step: Step) -> bool:
    along = isinstance(step, bs.LatchColumns | bs.LatchOn) and step.along
    return along or any(isinstance(body[-1], a) and isinstance(step, b) for a, b in _ONE_LINE)


def _in_full(step: Step) -> Step:
    """The step with what the pages of a graded copy tell once for all pieces."""
    if isinstance(step, st.RehangStart):
        return bs.HangFirstRow(step.piece, step.stitches, step.stitches - 1, step.facing, origin=step.origin)
    return step


def _rows_of_charts(in_force: Sequence[InForce], counter: int) -> list[tuple[str, int]]:
    """The rows of the charts that are worked next and are not plain throughout, from 1, each once."""
    found: dict[tuple[str, int], None] = {}
    for one in in_force:
        row = one.row(counter)
        if row is not None:
            key = {k.symbol: k.cell for k in one.chart.key}
            if any(key[symbol] != PLAIN for symbol in one.chart.rows[row]):
                found[one.chart.name, row + 1] = None
    return list(found)
