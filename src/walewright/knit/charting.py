"""Charts on needles: which cell a needle has in a row, and which needles are worked together.

Columns run from left to right over the bed, the purl side facing. What is found here is what a knitter sees who lays the chart
over the needles: cells, the runs of moved loops, the crossings, and the single needles. Nothing is done yet (see `rows`).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import field

from walewright.design.model import Cell, Chart
from walewright.record import record
from walewright.trade.cells import CELLS
from walewright.trade.fabrics import ChartArea
from walewright.trade.sides import EdgeSide

PLAIN = Cell("knit")

SlotSpan = tuple[int, int]
"""First and last slot; none where last < first."""


@record
class InForce:
    """A chart that has been begun: its first row is the one after counter value `base`; the rest as in `steps.StartChart`.

    What it has begun on needles and not ended: `purl` and `ladder`, rows by slot, and the slots `tucked`, which are held."""

    chart: Chart
    fabric: str
    area: ChartArea
    first: int
    last: int
    edge: int
    start: int
    base: int
    purl: Mapping[int, int] = field(default_factory=dict)
    ladder: Mapping[int, int] = field(default_factory=dict)
    tucked: frozenset[int] = frozenset()

    def row(self, counter: int) -> int | None:
        """The chart's row, from 0, that comes next when the counter reads `counter`; None before its first and after its last."""
        at = counter - self.base
        if at < 0:
            return None
        if self.chart.repeat:
            return at % len(self.chart.rows)
        return at if at < len(self.chart.rows) else None

    def column(self, slot: int) -> int | None:
        """The chart's column on a needle; None where a chart without a repeat has none."""
        chart = self.chart
        if not chart.repeat:
            column = slot - self.start
            return column if 0 <= column < chart.width else None
        if self.first <= slot < self.first + chart.before:
            return slot - self.first
        if self.last - chart.after < slot <= self.last:
            return chart.before + chart.repeat + slot - (self.last - chart.after + 1)
        return chart.before + (slot - self.start) % chart.repeat

    def span(self, working: SlotSpan) -> SlotSpan:
        """The needles it may be worked on, `working` being those in working position."""
        first, last = working[0] + self.edge, working[1] - self.edge
        return (first, last) if self.area == "whole" else (max(first, self.first), min(last, self.last))

    @property
    def height(self) -> int:
        """How far up it lies among charts on the same needles: 0 over the whole width, 1 a panel, 2 a motif."""
        return 0 if self.area == "whole" else 1 if self.fabric else 2

    @property
    def pending(self) -> frozenset[int]:
        """Slots on which something has been begun."""
        return frozenset(self.purl) | frozenset(self.ladder) | self.tucked

    def replaces(self, another: InForce) -> bool:
        """Whether it is the other begun anew: the same chart over the whole width, or on the same needles."""
        if self.chart.name != another.chart.name or self.area != another.area:
            return False
        return self.area == "whole" or (self.first, self.last) == (another.first, another.last)

    def placed_as(self, another: InForce) -> bool:
        """Whether the other is the same chart, from the same row on the same needles."""
        mine = (self.fabric, self.area, self.first, self.last, self.edge, self.start, self.base)
        its = (another.fabric, another.area, another.first, another.last, another.edge, another.start, another.base)
        return self.chart.name == another.chart.name and mine == its


@record
class Active:
    """The needles that have cells of one chart in one row: its `span`, but for those that a chart over it takes."""

    span: SlotSpan
    taken: tuple[SlotSpan, ...]

    def __contains__(self, slot: int) -> bool:
        return self.span[0] <= slot <= self.span[1] and not any(a <= slot <= z for a, z in self.taken)

    def all(self, first: int, last: int) -> bool:
        """Whether all the needles `first`..`last` are among them."""
        return self.span[0] <= first and last <= self.span[1] and not any(a <= last and first <= z for a, z in self.taken)


NOWHERE = Active((0, -1), ())


def active(charts: Sequence[InForce], counter: int, working: SlotSpan) -> tuple[Active, ...]:
    """Of each of the charts, which are in the order begun, the needles that it has in the row after `counter`.

    A panel lies over what goes over the whole width, and a motif over both, whichever of them was begun last: in a second part
    they are begun anew in an order of their own. Of two alike the one begun later lies over the other."""
    found = [NOWHERE] * len(charts)
    over: tuple[SlotSpan, ...] = ()
    for number in sorted(range(len(charts)), key=lambda n: (charts[n].height, n), reverse=True):
        one = charts[number]
        if one.row(counter) is not None:
            span = one.span(working)
            found[number] = Active(span, over)
            over = (*over, span)
    return tuple(found)


def cell(one: InForce, counter: int, slot: int, needles: Active) -> Cell:
    """The cell of a needle in the row after `counter`; plain where the chart does not reach."""
    row, column = one.row(counter), one.column(slot)
    if row is None or column is None or slot not in needles:
        return PLAIN
    return one.chart.cell(row, column)


# ----------------------------------------------------------------- one row


@record
class Moved:
    """Loops `first`..`last` go `by` one needle."""

    first: int
    last: int
    by: int


@record
class CrossedLoops:
    """The loops `first`..`last` change places, half and half; the `hung_first` half is hung first."""

    first: int
    last: int
    hung_first: EdgeSide


@record
class RowOfChart:
    """What a chart asks for in a row: groups of loops to move, each by its needle furthest left; crossings; and the cells of
    single needles that are not plain, by slot."""

    moves: tuple[tuple[int, tuple[Moved, ...]], ...] = ()
    crosses: tuple[CrossedLoops, ...] = ()
    singles: Mapping[int, Cell] = field(default_factory=dict)


def row_of(one: InForce, counter: int, needles: Active) -> RowOfChart:
    """The row after `counter`. Groups are found over more needles than the chart has: one that is cut off is not worked at all."""
    row = one.row(counter)
    if row is None or needles.span[1] < needles.span[0]:
        return RowOfChart()
    key = {k.symbol: k.cell for k in one.chart.key}
    plain = {symbol for symbol, of_it in key.items() if of_it == PLAIN}
    symbols = one.chart.rows[row]
    if plain.issuperset(symbols):
        return RowOfChart()
    found: dict[int, str] = {}
    for slot in range(*_window(one, needles.span)):
        column = one.column(slot)
        if column is not None and symbols[column] not in plain:
            found[slot] = symbols[column]
    cells = {slot: key[symbol] for slot, symbol in found.items()}
    single = {s: c for s, c in cells.items() if s in needles and (CELLS[c.kind].single or (c.kind == "knit" and c.yarn))}
    return RowOfChart(tuple(_moves(cells, needles)), tuple(_crosses(found, cells, needles)), single)


def _window(one: InForce, span: SlotSpan) -> SlotSpan:
    """Slots (the end excluded) in which any group is whole that touches the span. It begins at a repeat's border, so that
    crossings which fill a row are cut there."""
    chart = one.chart
    reach = chart.width
    first = span[0] - reach
    if chart.repeat:
        first -= (first - one.start) % chart.repeat
    return first, span[1] + reach + 1


def _moves(cells: Mapping[int, Cell], needles: Active) -> Iterator[tuple[int, tuple[Moved, ...]]]:
    runs: list[tuple[int, int, tuple[Moved, ...], tuple[int, ...]]] = []
    for q, taker in cells.items():
        takes = CELLS[taker.kind]
        if not takes.takes_from or not takes.keeps_own:
            continue
        first = last = q
        moved: list[Moved] = []
        holes: list[int] = []
        for side in takes.takes_from:
            p = q + (by := -1 if side == "left" else 1)
            while p in cells and CELLS[cells[p].kind].passes_on == side:
                p += by
            if p not in cells or cells[p].kind != "hole":
                break
            moved.append(Moved(p, q - 1, 1) if by < 0 else Moved(q + 1, p, -1))
            holes.append(p)
            first, last = min(first, p), max(last, p)
        else:
            runs.append((first, last, tuple(moved), tuple(holes)))
    every = [hole for run in runs for hole in run[3]]
    for first, last, made, own in sorted(runs):
        # A hole that two runs claim is neither's: the design refuses such a row.
        if needles.all(first, last) and all(every.count(hole) == 1 for hole in own):
            yield first, made


def _crosses(symbols: Mapping[int, str], cells: Mapping[int, Cell], needles: Active) -> Iterator[CrossedLoops]:
    begin: int | None = None
    for slot in sorted(symbols):
        cross = cells[slot]
        if not CELLS[cross.kind].of_groups:
            continue
        if begin is None or slot - 1 not in symbols or symbols[slot - 1] != symbols[slot]:
            begin = slot
        if slot - begin + 1 == 2 * cross.cross:
            if needles.all(begin, slot):
                yield CrossedLoops(begin, slot, cross.hung_first or "right")
            begin = None
