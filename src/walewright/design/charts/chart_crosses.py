"""Crosses in a chart: whole, within reach of the tools and of the fabric."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from walewright.design.charts.drawn import Drawn
from walewright.design.model import MachineProfile
from walewright.record import record
from walewright.report.model import Severity
from walewright.trade.cells import CELLS

NEEDS_SLACK = 3
"""A cross of 3 over 3 or wider is drawn too tight without slack from a dropped column beside it (common practice)."""
SLACK_ROWS = 2
"""Rows of that column below the cross: dropped, each gives a bar's length (common practice)."""


@record
class _Cross:
    """Columns left to right, and what stands beside them (None: nothing of the chart)."""

    row: int
    columns: tuple[int, ...]
    beside: tuple[int | None, int | None]
    symbol: str
    over: int


def check_crosses(drawn: Drawn, machine: MachineProfile | None) -> None:
    """Reports crosses that cannot be made, and warns of those that follow each other too soon."""
    crosses = [cross for row in range(drawn.height) for cross in _crosses(drawn, row)]
    too_wide = _beyond_tools(drawn, machine)
    for cross in crosses:
        if cross.over >= NEEDS_SLACK and cross.symbol not in too_wide and not _slack(drawn, cross):
            _tell_slack(drawn, cross)
    _too_soon(drawn, crosses)


def _crosses(drawn: Drawn, row: int) -> Iterator[_Cross]:
    """The whole crosses of a row; what is left over of a run is reported."""
    stands, chart = drawn.stands, drawn.chart
    symbols = [drawn.symbol(row, s.column) for s in stands]
    repeat = set(chart.rows[row][chart.before : chart.before + chart.repeat])
    at = 0
    while at < len(stands):
        symbol = symbols[at]
        cell = drawn.cell(row, stands[at].column)
        end = at + 1
        while end < len(stands) and symbols[end] == symbol:
            end += 1
        begin, at = at, end
        if not CELLS[cell.kind].of_groups:
            continue
        wide = 2 * cell.cross
        through = repeat == {symbol}
        if through and chart.repeat % wide:
            _tell_cut(drawn, row, chart.before, chart.repeat, cell.cross)
            return
        ghost = not stands[begin].told or not stands[end - 1].told
        if (end - begin) % wide and not ghost:
            _tell_cut(drawn, row, stands[end - (end - begin) % wide].column, end - begin, cell.cross)
            continue
        for first in range(begin, end - wide + 1, wide):
            if all(s.told for s in stands[first : first + wide]):
                left = stands[first - 1].column if first else None
                right = stands[first + wide].column if first + wide < len(stands) else None
                columns = tuple(s.column for s in stands[first : first + wide])
                yield _Cross(row, columns, (left, right), symbol, cell.cross)


def _tell_cut(drawn: Drawn, row: int, column: int, run: int, over: int) -> None:
    drawn.report_cell("cross-cut", (row, column), "part", helps=("draw-all",), over=over, needles=2 * over, here=run)


def _beyond_tools(drawn: Drawn, machine: MachineProfile | None) -> set[str]:
    """The symbols of crosses that the tools at hand cannot make, reported at the first cell of each."""
    found: set[str] = set()
    if machine is None:
        return found
    for row in range(drawn.height):
        for column, symbol in enumerate(drawn.chart.rows[row]):
            over = drawn.cell(row, column).cross
            if over > max(machine.prongs) and symbol not in found:
                found.add(symbol)
                key = next(k for k in drawn.chart.key if k.symbol == symbol)
                drawn.report_cell(
                    "cross-beyond-tools",
                    (row, column),
                    "over",
                    (key.origin.span, "meant"),
                    notes=("largest",),
                    helps=("cross-fewer",),
                    over=over,
                    prongs=max(machine.prongs),
                )
    return found


def _slack(drawn: Drawn, cross: _Cross) -> bool:
    """Whether a purl column beside the cross has rows enough below it, and is still to be latched up in its row."""
    if cross.row < SLACK_ROWS:
        return False
    rows = range(cross.row - SLACK_ROWS, cross.row + 1)
    return any(c is not None and all(drawn.cell(row, c).kind == "purl" for row in rows) for c in cross.beside)


def _tell_slack(drawn: Drawn, cross: _Cross) -> None:
    low = cross.row < SLACK_ROWS
    drawn.report_cell(
        "cross-without-slack",
        (cross.row, cross.columns[0]),
        "tight",
        notes=("dropped", *(("rows-below",) if low else ())),
        helps=("cross-higher",) if low else ("draw-purl",),
        over=cross.over,
        needed=SLACK_ROWS,
        below=cross.row,
        least=SLACK_ROWS + 1,
    )


def _too_soon(drawn: Drawn, crosses: list[_Cross]) -> None:
    """Warns where the same needles are crossed again within fewer rows than the cross is needles wide (6 rows for 3 over 3 is
    common practice)."""
    for lower, upper in combinations(crosses, 2):
        if lower.row != upper.row and set(lower.columns) & set(upper.columns):
            _warn(drawn, upper, lower, upper.row - lower.row)
            if drawn.upwards:
                _warn(drawn, lower, upper, lower.row + drawn.height - upper.row)
    if drawn.upwards:
        for cross in crosses:
            _warn(drawn, cross, cross, drawn.height)


def _warn(drawn: Drawn, again: _Cross, before: _Cross, rows: int) -> None:
    wanted = 2 * max(again.over, before.over)
    if rows >= wanted:
        return
    drawn.report_cell(
        "cross-too-soon",
        (again.row, again.columns[0]),
        "again",
        (drawn.place(before.row, before.columns[0]), "before"),
        notes=("usual",),
        helps=("later",),
        rows=rows,
        row=before.row + 1,
        over=wanted // 2,
        usual=wanted,
        severity=Severity.WARNING,
    )
