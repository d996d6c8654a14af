"""A chart as it was drawn: its cells with their places in the source, and how it lies side by side on the needles."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import field

from walewright.design.findings import Findings
from walewright.design.model import Cell, Chart
from walewright.record import record
from walewright.report.model import Severity, Span
from walewright.report.said import Fact, Said, said
from walewright.trade.cells import CellKind

MOST_TOLD = 5
"""Cells of one chart with one fault that are reported; a reader finds the others from there."""


@record
class Stand:
    """A column as it stands on the needles. One that is not `told` is there only to be the neighbour of others."""

    column: int
    told: bool = True


@record
class Drawn:
    """`places[row][column]`: where a cell stands in the source, rows from the bottom. `upwards`: the rows are worked again and
    again, so that the first lies above the last."""

    chart: Chart
    places: tuple[tuple[Span, ...], ...]
    upwards: bool
    findings: Findings
    _cells: dict[str, Cell] = field(default_factory=dict)
    """By symbol, each looked up once: charts have thousands of cells."""
    _told: dict[str, set[tuple[int, int]]] = field(default_factory=dict)

    @property
    def height(self) -> int:
        return len(self.chart.rows)

    def cell(self, row: int, column: int) -> Cell:
        symbol = self.chart.rows[row][column]
        if symbol not in self._cells:
            self._cells[symbol] = self.chart.cell(row, column)
        return self._cells[symbol]

    def symbol(self, row: int, column: int) -> str:
        return self.chart.rows[row][column]

    def place(self, row: int, column: int) -> Span:
        return self.places[row][column]

    def above(self, row: int) -> int | None:
        """The row above; None when nothing of the chart is there."""
        if row + 1 < self.height:
            return row + 1
        return 0 if self.upwards else None

    def below(self, row: int) -> int | None:
        """The row below; None when nothing of the chart is there."""
        if row > 0:
            return row - 1
        return self.height - 1 if self.upwards else None

    @property
    def stands(self) -> tuple[Stand, ...]:
        """The columns side by side: the borders once, the repeat often enough that each of its columns has all the neighbours
        it ever gets."""
        chart = self.chart
        if not chart.repeat:
            return tuple(Stand(c) for c in range(chart.width))
        repeat = range(chart.before, chart.before + chart.repeat)
        ghost = tuple(Stand(c, told=False) for c in repeat)
        left = tuple(Stand(c) for c in range(chart.before)) or ghost
        right = tuple(Stand(c) for c in range(chart.before + chart.repeat, chart.width)) or ghost
        return (*left, *(Stand(c) for c in (*repeat, *repeat)), *right)

    def runs_up(self, column: int, kind: CellKind) -> Iterator[tuple[int, int, bool]]:
        """(first row, rows, whether it never ends) of every run of cells of a kind, one above another in a column."""
        is_kind = [self.cell(row, column).kind == kind for row in range(self.height)]
        if self.upwards and all(is_kind):
            yield 0, self.height, True
            return
        for row, here in enumerate(is_kind):
            below = self.below(row)
            if not here or (below is not None and is_kind[below]):
                continue
            rows, at = 0, row
            while is_kind[at]:
                rows += 1
                above = self.above(at)
                if above is None:
                    break
                at = above
            yield row, rows, False

    def report_cell(
        self,
        kind: str,
        /,
        at: tuple[int, int],
        label: str | Said,
        *labels: tuple[Span, str | Said],
        notes: Iterable[str | Said] = (),
        helps: Iterable[str | Said] = (),
        severity: Severity = Severity.ERROR,
        facts: Mapping[str, Fact] | None = None,
        **more: Fact,
    ) -> None:
        """A fault of the cell at (row, column), once. Its sentence begins with the fact `cell`: where it is, counted from 1, the
        row from the bottom."""
        told = self._told.setdefault(kind.partition("/")[0], set())
        if at in told or len(told) >= MOST_TOLD:
            return
        told.add(at)
        row, column = at
        self.findings.report(
            kind,
            (self.place(*at), label),
            *labels,
            notes=notes,
            helps=helps,
            severity=severity,
            facts={**(facts or {}), **more},
            cell=said("cell", row=row + 1, column=column + 1, chart=self.chart.name),
        )

    def symbol_for(self, kind: CellKind) -> Said:
        """For a proposal: the author's own symbol of that kind, else the kind."""
        found = next((k.symbol for k in self.chart.key if k.cell.kind == kind), None)
        return said("symbol", symbol=found) if found is not None else said("symbol-that-means", kind=kind)


def meaning(cell: Cell) -> Said:
    """What a cell means, for a message."""
    return said("knit-in", yarn=cell.yarn) if cell.yarn else said("cell-kind", kind=cell.kind)
