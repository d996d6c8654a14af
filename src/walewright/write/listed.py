"""Listed: at which readings of the counter hands cross, move or hold stitches while a chart is worked, told where rows are knitted
to a row far above."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, fields, replace
from itertools import pairwise

from walewright.design.model import Chart
from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.trade.cells import CellKind
from walewright.write.filling import Part, filled
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.rounds import graded_row
from walewright.write.said import StepSaid, between
from walewright.write.tally import RowTally, counted

Readings = tuple[int, ...]
"""Readings of the counter before the rows at which something is done."""


@dataclass(frozen=True, slots=True)
class KnitToListed(st.KnitTo):
    """Before which of these rows the charts ask for crosses, moves and needles to be held, however many of their stitches are in
    work."""

    crossed: Readings = ()
    moved: Readings = ()
    held: Readings = ()
    heights: Readings = ()
    """Readings of the charts that are worked again and again."""


@dataclass(frozen=True, slots=True)
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
        return row is not None and any(k.cell.kind in kinds for k in self.chart.key if k.symbol in self.chart.rows[row])


@dataclass(frozen=True, slots=True)
class Going:
    """What is in force so far, and the needles that are known not to be in the part being worked."""

    tally: RowTally = field(default_factory=RowTally)
    charts: tuple[Laid, ...] = ()
    away: frozenset[int] = frozenset()
    within: tuple[int, int] | None = None
    """Of a part that goes on after another one has been taken off: its needles, which alone are in work."""
    taken_off: bool = False

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
    """The steps, rows that are knitted to a row far above with what is done on the way."""
    if not drawn:
        return tuple(steps), going
    made: list[Step] = []
    for step in steps:
        made.append(_with_rows(step, going) if isinstance(step, st.KnitTo) else step)
        going = _after(step, drawn, going)
    return tuple(made), going


def _with_rows(step: st.KnitTo, going: Going) -> KnitToListed:
    rows, charts = range(going.tally.row or 0, step.row), going.worked or ()
    crossed, moved, held = (tuple(r for r in rows if any(c.asks(r, kinds) for c in charts)) for kinds in (CROSSED, MOVED, HELD))
    # Where needles are held for yarns too, or in every row, the chart alone says which.
    told = held if len(held) < len(rows) and not any(c.chart.yarns for c in charts) else ()
    heights = tuple(sorted({len(c.chart.rows) for c in charts if c.chart.repeat}))
    return KnitToListed(
        **{f.name: getattr(step, f.name) for f in fields(step)}, crossed=crossed, moved=moved, held=told, heights=heights
    )


def _after(step: Step, drawn: Mapping[str, Chart], going: Going) -> Going:
    charts = going.charts
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
    return _parted(step, replace(going, tally=counted(going.tally, step), charts=charts))


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


# ----------------------------------------------------------------- in words

FEW = 4
"""Readings that are named one by one; more are told by how often they come, where that is so in all sizes."""


def crossings(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """At which rows stitches are crossed."""
    return _told(said, language, "crossing", lambda step: step.crossed)


def movings(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """At which rows stitches are moved."""
    return _told(said, language, "moving", lambda step: step.moved)


def holdings(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """At which rows needles are held."""
    return _told(said, language, "holding", lambda step: step.held)


def _told(said: StepSaid, language: PrintedLanguage, key: str, of: Callable[[KnitToListed], Readings]) -> list[Part]:
    lists = [None if step is None else of(step) for step in said.steps if step is None or isinstance(step, KnitToListed)]
    if not any(lists):
        return []
    regular = _regular(said, lists)
    if regular is None:
        longest = max(len(rows) for rows in lists if rows)
        columns = [[graded_row(lists, i, longest, said).number(language)] for i in range(longest)]
        told = list(between(language.sentences["between"], columns, language.sentences["and"]))
        return list(filled(f"{key}/at", language, rows=tuple(told)))
    every, runs = regular
    if len(runs) > 1 and _reach_alike(runs, every):
        latest = Graded(tuple(max((z for z in row if z is not None), default=None) for row in _lasts(runs)), said.group)
        firsts = tuple(between(language.sentences["between"], ([r[0].number(language)] for r in runs), language.sentences["and"]))
        return list(filled(key, language, rows=tuple(filled("every/several", language, every=every, firsts=firsts, last=latest))))
    ways = (filled("every", language, every=every, first=first, last=last) for first, last in runs)
    return list(filled(key, language, rows=tuple(between(language.sentences["and"], ways))))


def _regular(said: StepSaid, lists: Sequence[Readings | None]) -> tuple[int, list[tuple[Graded, Graded]]] | None:
    """Every how many rows, and from where to where, one pair for each row of the chart that asks for it; None where that cannot be
    said in all sizes."""
    heights = {step.heights for step in said.steps if isinstance(step, KnitToListed)}
    working = [rows for rows in lists if rows is not None]
    if len(heights) != 1 or len(only := heights.pop()) != 1 or all(len(rows) <= FEW for rows in working):
        return None
    apart = {b - a for rows in working for a, b in pairwise(rows)}
    every = apart.pop() if len(apart) == 1 else only[0]
    runs = [None if rows is None else _runs(rows, every) for rows in lists]
    told = [r for r in runs if r is not None]
    if len({len(r) for r in told}) != 1 or any(len(run) < 2 for r in told for run in r):
        return None
    pairs = [
        tuple(Graded(tuple(None if r is None else r[i][end] for r in runs), said.group) for end in (0, -1))
        for i in range(len(told[0]))
    ]
    return every, [(first, last) for first, last in pairs]


def _lasts(runs: Sequence[tuple[Graded, Graded]]) -> list[tuple[int | None, ...]]:
    """The last readings of all runs, size by size."""
    return list(zip(*(last.values for _, last in runs), strict=True))


def _reach_alike(runs: Sequence[tuple[Graded, Graded]], every: int) -> bool:
    """Whether all of them go on as far as the one that goes farthest: none would come once more."""
    told = ([row for row in lasts if row is not None] for lasts in _lasts(runs))
    return all(max(rows) - min(rows) < every for rows in told if rows)


def _runs(rows: Readings, every: int) -> list[Readings]:
    """The rows by where they lie in the repeat; each is as far from the next as the repeat is high, or it does not count."""
    at: dict[int, list[int]] = {}
    for row in rows:
        at.setdefault(row % every, []).append(row)
    runs = [tuple(run) for run in at.values()]
    return runs if all(b - a == every for run in runs for a, b in pairwise(run)) else [()]
