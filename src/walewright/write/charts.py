"""Charts in words: what each symbol asks for, as the knitter sees it, what is repeated, and how a row's yarns are laid.

The knitter sits before the purl side; left and right are those of the bed. What is said here must be readable: `readback` reads
the meanings, the repeat and the way of a picture.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Cell, Chart
from walewright.knit.steps import Repeat, SizePlan, StartChart, Step, Together
from walewright.report.said import Said as Prose
from walewright.report.said import said
from walewright.trade.cells import CellKind
from walewright.write.language import PrintedLanguage
from walewright.write.model import ChartNote, ChartText, NoteKind
from walewright.write.said import SPACE, prose

NEEDS_SLACK = 3
"""Of a cross of so many over so many and wider is said what it needs beside it."""


def meaning(cell: Cell, picture: bool, stage: int = 0) -> Prose:
    """What a symbol asks for; `stage` as in `Chart`."""
    match cell.kind:
        case "knit" if picture:
            return said("mark/lay", yarn=cell.yarn) if cell.yarn else said("mark/lay-in-use")
        case "knit":
            return said("mark/by-hand", yarn=cell.yarn) if cell.yarn else said("mark/knit")
        case "cross":
            return said("mark/cross", marks=2 * cell.cross, half=cell.cross, first=cell.hung_first)
        case "purl" if stage:
            return said("mark/purl-in-stages", rows=stage)
    return said(f"mark/{cell.kind}")


def repeated(chart: Chart) -> Prose:
    """What is worked again and again."""
    width, rows = chart.width, len(chart.rows)
    if not chart.repeat:
        return said("repeat/none", columns=width, rows=rows)
    first, last = chart.before + 1, chart.before + chart.repeat
    left = said("repeat/left", columns=_from_to(1, first - 1, "columns")) if chart.before else ""
    right = said("repeat/right", columns=_from_to(last + 1, width, "columns")) if chart.after else ""
    across, upwards = _from_to(first, last, "columns"), _from_to(1, rows, "rows")
    return said("repeat", columns=across, left=left, right=right, rows=upwards)


def _from_to(first: int, last: int, what: str) -> Prose:
    return said(f"{what}/one", first=first) if first == last else said(what, first=first, last=last)


def chart_text(chart: Chart, language: PrintedLanguage) -> ChartText:
    """The chart with the words of those symbols that occur in it."""

    def told(words: Prose) -> str:
        return prose(words, language, SPACE)

    used = {symbol for row in chart.rows for symbol in row}
    key = tuple((k.symbol, told(meaning(k.cell, chart.picture, chart.stage))) for k in chart.key if k.symbol in used)
    kinds = {k.cell.kind for k in chart.key if k.symbol in used}
    widest = max((k.cell.cross for k in chart.key if k.symbol in used), default=0)
    notes = (
        (NoteKind.SIDE, said("chart/side")),
        *((NoteKind.WHEN, words) for words in _when(kinds, widest, chart.stage)),
        *(((NoteKind.NEXT_ROW, _next_row(len(chart.rows))),) if chart.repeat else ()),
        (NoteKind.REPEAT, repeated(chart)),
        *(((NoteKind.WAY, said("chart/by-blocks")),) if chart.picture else ()),
    )
    return ChartText(
        name=chart.name,
        title=told(said("chart", chart=chart.name)),
        rows=chart.rows,
        before=chart.before,
        repeat=chart.repeat,
        after=chart.after,
        picture=chart.picture,
        key=key,
        notes=tuple(ChartNote(kind, told(words)) for kind, words in notes),
    )


def _next_row(rows: int) -> Prose:
    """How a row that comes again and again is found from the counter."""
    return said("chart/one-row") if rows == 1 else said("chart/next-row", rows=rows)


def _when(kinds: set[CellKind], widest: int, stage: int) -> Iterator[Prose]:
    """When within a row, or after which row, what the marks ask for is done."""
    if kinds & {"hole", "cross"}:
        yield said("chart/before-the-row")
        yield said("chart/plain")
    if {"cross", "purl"} <= kinds:
        yield said("chart/slack")
        if widest >= NEEDS_SLACK:
            yield said("chart/tight")
    if "purl" in kinds:
        yield said("chart/columns")
        if stage:
            yield said("chart/in-stages")
    if "tuck" in kinds:
        yield said("chart/returned")
    if "ladder" in kinds:
        yield said("chart/ladders")


def worked_charts(plans: Sequence[SizePlan], charts: Sequence[Chart], language: PrintedLanguage) -> tuple[ChartText, ...]:
    """Those of `charts` that any of the plans works, in their order. Raises KeyError for a chart that is worked and not there."""
    names = {
        step.chart
        for plan in plans
        for block in plan.blocks
        for _, steps in block.paragraphs
        for step in _each(steps)
        if isinstance(step, StartChart)
    }
    for missing in names - {c.name for c in charts}:
        raise KeyError(missing)
    return tuple(chart_text(c, language) for c in charts if c.name in names)


def _each(steps: Sequence[Step]) -> Iterator[Step]:
    for step in steps:
        if isinstance(step, Repeat):
            yield from _each(step.body)
        elif isinstance(step, Together):
            for track in step.tracks:
                yield from _each(track.steps)
        else:
            yield step
