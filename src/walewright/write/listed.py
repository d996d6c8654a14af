"""Listed: at which readings of the counter hands do something by what was said before, a chart, stripes or a rib, told wherever
rows are knitted in which they do."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import field, fields
from typing import Any, TypeVar

from walewright.design.model import Chart
from walewright.knit import steps as st
from walewright.knit.bench_steps import Needles
from walewright.knit.steps import Step
from walewright.record import record, replace
from walewright.trade.cells import CellKind
from walewright.write.align import Column
from walewright.write.columns import NO_COLUMNS, Columns, ColumnsUp
from walewright.write.tally import RowTally, counted

Readings = tuple[int, ...]
"""Readings of the counter before the rows at which something is done; of latching up, at which it is done."""


@record
class Way:
    """What is done on the way through some rows: crosses, moves and needles held that charts ask for, however many of their
    stitches are in work; ribs latched up; another yarn in stripes."""

    crossed: Readings = ()
    moved: Readings = ()
    dropped: Readings = ()
    held: Readings = ()
    latched: Readings = ()
    columns: tuple[tuple[int, Needles], ...] = ()
    """At which readings purl columns of charts are latched up, each with their needles."""
    changed: Readings = ()
    again: Readings = ()
    """Where the first row of a chart in several yarns comes again: what its rows ask for, the chart alone says."""
    heights: Readings = ()
    """Rows of the charts that are worked again and again."""
    period: Readings = ()
    """Rows of the stripes, if there are any."""

    def __bool__(self) -> bool:
        return any((self.crossed, self.moved, self.dropped, self.held, self.latched, self.columns, self.changed, self.again))


NOTHING = Way()


@record
class KnitToListed(st.KnitTo):
    way: Way = NOTHING


@record
class KnitRowsListed(st.KnitRows):
    way: Way = NOTHING


@record
class RepeatListed(st.Repeat):
    way: Way = NOTHING


@record
class TogetherListed(st.Together):
    way: Way = NOTHING


PLAIN: Mapping[type[Step], type[Step]] = {
    KnitToListed: st.KnitTo,
    KnitRowsListed: st.KnitRows,
    RepeatListed: st.Repeat,
    TogetherListed: st.Together,
}
"""What each of these is in the plan."""


@record
class InRowOrder(st.Repeat):
    """What goes on together, as its moves in the order worked; `titles` are what goes on."""

    titles: tuple[st.Words, ...] = ()


@record
class Laid:
    """A chart in force, its first row knitted when the counter reads `begun`; `on`: the needles that it was begun on, None over
    the whole width, where it is in force once."""

    chart: Chart
    begun: int
    on: tuple[int, int] | None

    def row(self, counter: int) -> int | None:
        """Its row that is knitted when the counter reads so."""
        above, height = counter - self.begun, len(self.chart.rows)
        return None if above < 0 or (above >= height and not self.chart.repeat) else above % height

    def asks(self, counter: int, kinds: frozenset[CellKind]) -> bool:
        """Whether a cell of such a kind is in that row."""
        row = self.row(counter)
        return row is not None and self._has(row, kinds)

    def begins_again(self, counter: int) -> bool:
        """Whether that row of a chart in several yarns is its first, once more."""
        in_yarns = any(k.cell.yarn for k in self.chart.key if any(k.symbol in row for row in self.chart.rows))
        return counter > self.begun and self.row(counter) == 0 and in_yarns

    def begins(self, counter: int, kind: CellKind) -> bool:
        """Whether a column of such cells begins with that row."""
        return self._goes_over(self._cells(counter), self._cells(counter - 1), kind)

    def ends(self, counter: int, kind: CellKind) -> bool:
        """Whether a column of such cells has ended with the row before, and the chart goes on."""
        return self.row(counter) is not None and self._goes_over(self._cells(counter - 1), self._cells(counter), kind)

    def _cells(self, counter: int) -> tuple[CellKind | None, ...]:
        row = self.row(counter)
        kinds: dict[str, CellKind] = {k.symbol: k.cell.kind for k in self.chart.key}
        return (None,) * self.chart.width if row is None else tuple(kinds[symbol] for symbol in self.chart.rows[row])

    @staticmethod
    def _goes_over(one: Sequence[CellKind | None], other: Sequence[CellKind | None], kind: CellKind) -> bool:
        return any(a == kind != b for a, b in zip(one, other, strict=True))

    def always(self, kinds: frozenset[CellKind]) -> bool:
        """Whether there is one in every row: that is no news."""
        return all(self._has(row, kinds) for row in range(len(self.chart.rows)))

    def _has(self, row: int, kinds: frozenset[CellKind]) -> bool:
        return any(k.cell.kind in kinds for k in self.chart.key if k.symbol in self.chart.rows[row])


@record
class Striped:
    """Stripes in force, the first row knitted when the counter reads `begun`; `yarns` has that of each row, once through."""

    begun: int
    yarns: tuple[str, ...]

    def changes(self, counter: int) -> bool:
        """Whether the row that is knitted when the counter reads so has another yarn than the one before."""
        above = counter - self.begun
        return above > 0 and self.yarns[above % len(self.yarns)] != self.yarns[(above - 1) % len(self.yarns)]


@record
class RibInForce:
    """A rib that is latched up at `rows` of the counter. `fresh`: nothing has been knitted since that was said."""

    said: Step
    rows: Readings
    fresh: bool = True


@record
class Going:
    """What is in force so far, and the needles that are known not to be in the part being worked."""

    tally: RowTally = field(default_factory=RowTally)
    charts: tuple[Laid, ...] = ()
    stripes: Striped | None = None
    ribs: tuple[RibInForce, ...] = ()
    waiting: int = 0
    """Parts that wait their turn."""
    away: frozenset[int] = frozenset()
    within: tuple[int, int] | None = None
    """Of a part that goes on after another one has been taken off: its needles, which alone are in work."""
    taken_off: bool = False
    columns: Columns = NO_COLUMNS
    times: int = 0
    """How often the counter has been set."""

    @property
    def worked(self) -> tuple[Laid, ...] | None:
        """The charts with needles in the part being worked; None where one has some of its needles there and others away."""
        there = tuple(c for c in self.charts if c.on is None or any(self._in_work(c.on)))
        return None if any(c.on is not None and not all(self._in_work(c.on)) for c in there) else there

    def _in_work(self, on: tuple[int, int]) -> list[bool]:
        first, last = self.within or on
        return [first <= slot <= last and slot not in self.away for slot in range(on[0], on[1] + 1)]


CROSSED: frozenset[CellKind] = frozenset({"cross"})
MOVED: frozenset[CellKind] = frozenset({"hole"})
"""The stitch of a hole is moved, and what is moved leaves a hole."""
HELD: frozenset[CellKind] = frozenset({"tuck", "slip", "long"})
"""Worked by needles that do not knit in the row."""


def listed(steps: Iterable[Step], drawn: Mapping[str, Chart], going: Going) -> tuple[tuple[Step, ...], Going]:
    """The steps, those that knit rows with what is done on the way."""
    made: list[Step] = []
    for step in steps:
        if up := going.columns.before.get((going.times, going.tally.row or 0, _in_plan(step))):
            made.append(ColumnsUp(up))
            left = {at: needles for at, needles in going.columns.before.items() if needles is not up}
            going = replace(going, columns=replace(going.columns, before=left))
        after = _after(step, drawn, going)
        if isinstance(step, InRowOrder):
            body, _ = listed(step.body, drawn, going)
            made.append(replace(step, body=body))
        else:
            made.append(_with_way(step, going, after.tally.row))
        going = after
    return tuple(made), going


def _in_plan(step: Step) -> str:
    """The class name of the step in the plan."""
    return st.Together.__name__ if isinstance(step, InRowOrder) else type(step).__name__


def _with_way(step: Step, going: Going, end: int | None) -> Step:
    match step:
        case st.KnitTo():
            return _as(KnitToListed, step, way_through(going, going.tally.row or 0, step.row))
        case st.KnitRows() if end is not None:
            return _as(KnitRowsListed, step, way_through(going, end - step.rows, end))
        case st.Repeat():
            # What changes while the rows are knitted is told in them.
            known = going.tally.row is not None and end is not None and not any(_in_force(one) for one in _each(step.body))
            return _as(RepeatListed, step, way_through(going, going.tally.row or 0, end or 0) if known else NOTHING)
        case st.Together(from_row=begin, to_row=last, tracks=tracks):
            known = not any(_in_force(one) for track in tracks for one in _each(track.steps))
            return _as(TogetherListed, step, way_through(going, begin, last) if known else NOTHING)
    return step


def way_through(going: Going, begin: int, end: int) -> Way:
    """What is done in the rows from reading `begin` to `end`."""
    rows, charts = range(begin, end), going.worked or ()
    columns = ((row, going.columns.in_rows.get((going.times, row), ())) for row in range(begin + 1, end + 1))
    # Where needles are held for yarns too, or in every row, the chart alone says which.
    by_chart = any(c.chart.yarns or c.always(HELD) for c in charts)
    held = () if by_chart else tuple(r for r in rows if any(c.asks(r, HELD) for c in charts))
    stripes = going.stripes
    return Way(
        crossed=tuple(r for r in rows if any(c.asks(r, CROSSED) for c in charts)),
        moved=tuple(r for r in rows if any(c.asks(r, MOVED) or c.begins(r, "ladder") for c in charts)),
        dropped=tuple(r for r in rows if any(c.ends(r, "ladder") for c in charts)),
        held=held,
        latched=_latched(going.ribs, begin, end),
        columns=tuple((row, needles) for row, needles in columns if needles),
        changed=tuple(r for r in rows if stripes is not None and stripes.changes(r)),
        again=tuple(r for r in rows if any(c.begins_again(r) for c in charts)),
        heights=tuple(sorted({len(c.chart.rows) for c in charts if c.chart.repeat})),
        period=(len(stripes.yarns),) if stripes is not None else (),
    )


def _latched(ribs: Sequence[RibInForce], begin: int, end: int) -> Readings:
    """A rib whose rows have been said in the line above, all of them in these rows, says enough."""
    if all(rib.fresh and all(begin < row <= end for row in rib.rows) for rib in ribs):
        return ()
    return tuple(sorted({row for rib in ribs for row in rib.rows if begin < row <= end}))


def in_one(ways: Sequence[Way]) -> Way:
    """Ways that come one after the other as one."""
    if not ways:
        return NOTHING

    last = ways[-1]
    return Way(
        crossed=tuple(row for way in ways for row in way.crossed),
        moved=tuple(row for way in ways for row in way.moved),
        dropped=tuple(row for way in ways for row in way.dropped),
        held=tuple(row for way in ways for row in way.held),
        latched=tuple(row for way in ways for row in way.latched),
        columns=tuple(one for way in ways for one in way.columns),
        changed=tuple(row for way in ways for row in way.changed),
        again=tuple(row for way in ways for row in way.again),
        heights=last.heights,
        period=last.period,
    )


WithWay = TypeVar("WithWay", bound=Step)


def _as(kind: type[WithWay], step: Step, way: Way) -> WithWay:
    return kind(**{f.name: getattr(step, f.name) for f in fields(step)}, way=way)  # type: ignore[call-arg]


MOST_STAGES = 3
"""Readings at which a rib is latched up that a line of rows tells again; where a size has more in its rows, the rib's own line,
which has them all, is the one to look at."""


def told_briefly(column: Column[Step]) -> Column[Step]:
    """A line of all sizes that does not tell again a rib's many stages."""
    if all(step is None or len(way_of(step).latched) <= MOST_STAGES for step in column):
        return column
    return tuple(None if step is None else _unlatched(step) for step in column)


def way_of(step: Step) -> Way:
    """What is done on the way through its rows, where that is told."""
    return step.way if isinstance(step, KnitToListed | KnitRowsListed | RepeatListed | TogetherListed) else NOTHING


def _unlatched(step: Step) -> Step:
    way = replace(way_of(step), latched=())
    match step:
        case KnitToListed() | KnitRowsListed() | RepeatListed() | TogetherListed():
            return replace(step, way=way)
    return step


def _each(steps: Iterable[Step]) -> Iterator[Step]:
    for step in steps:
        yield from _each(step.body) if isinstance(step, st.Repeat) else (step,)


def _in_force(step: Step) -> bool:
    """Whether a pattern begins or ends with it."""
    return isinstance(
        step,
        st.StartChart
        | st.StopChart
        | st.StopChartOn
        | st.StartStripes
        | st.StopStripes
        | st.LatchInStages
        | st.LatchPanelInStages
        | st.SetRowCounter,
    )


def _after(step: Step, drawn: Mapping[str, Chart], going: Going) -> Going:
    charts = going.charts
    more: dict[str, Any] = {}
    match step:
        case st.StartChart(chart=name, area=area, first=first, last=last):
            on = None if area == "whole" else (first, last)
            if any(c.chart.name == name and c.on == on and c.begun == going.tally.row for c in charts):
                return going
            rest = tuple(c for c in charts if (c.chart.name, c.on) != (name, on))
            charts = (*rest, Laid(drawn[name], going.tally.row or 0, on))
        case st.StopChart(chart=name) | st.StopChartOn(chart=name):
            on = (step.first, step.last) if isinstance(step, st.StopChartOn) else None
            found = [c for c in charts if c.chart.name == name and on in (None, c.on)]
            charts = tuple(c for c in charts if c is not found[-1]) if found else charts
        case st.StartStripes(stripes=stripes):
            more["stripes"] = Striped(going.tally.row or 0, tuple(yarn for yarn, rows in stripes for _ in range(rows)))
        case st.StopStripes():
            more["stripes"] = None
        case st.LatchInStages(rows=rows) | st.LatchPanelInStages(rows=rows):
            more["ribs"] = (*(rib for rib in going.ribs if rib.said != step), RibInForce(step, rows))
        case st.KnitTo() | st.KnitRows() if going.ribs:
            row = counted(going.tally, step).row or 0
            # It is done with its last row, but for a part that waits its turn.
            more["ribs"] = tuple(replace(rib, fresh=False) for rib in going.ribs if going.waiting or row < rib.rows[-1])
        case st.SetRowCounter():
            more["times"] = going.times + 1
        case st.HoldPart() | st.PartOnCord():
            more["waiting"] = going.waiting + 1
        case st.ReturnPart():
            more["waiting"] = max(going.waiting - 1, 0)
        case st.Repeat(body=body, times=times):
            for inner in body * times:
                going = _after(inner, drawn, going)
            return going
        case st.Together(from_row=begin, to_row=end, tracks=tracks):
            for track in tracks:
                going = replace(going, tally=replace(going.tally, row=begin))
                for inner in track.steps:
                    going = _after(inner, drawn, going)
            return replace(going, tally=counted(going.tally, st.SetRowCounter(end)))
    return _parted(step, replace(going, tally=counted(going.tally, step), charts=charts, **more))


def _parted(step: Step, going: Going) -> Going:
    """With the needles that leave the part being worked where the piece parts, and that come back to it."""
    match step:
        case st.CentreToWaste() | st.CloseCentre() | st.HoldPart() | st.PartOnCord():
            return replace(going, away=going.away.union(range(step.first, step.last + 1)))
        case st.CastOnBetween() | st.ReturnPart() | st.NeedlesToWork():
            within = (step.first, step.last) if isinstance(step, st.ReturnPart) and going.taken_off else None
            return replace(going, away=going.away.difference(range(step.first, step.last + 1)), within=within, taken_off=False)
        case st.OffOnWaste() | st.CastOffAll() | st.SewOffAll() | st.GatherAll():
            return replace(going, taken_off=True)
    return going
