"""Charts in words: what each symbol asks for, as the knitter sees it, what is repeated, and how a row's yarns are laid.

The knitter sits before the purl side; left and right are those of the bed. Every meaning has a rule in
`grammar/instructions.lark`: what is said here must be readable there.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Literal

from walewright.design.model import Cell, Chart
from walewright.knit.steps import Repeat, SizePlan, StartChart, Step, Together
from walewright.trade.cells import CellKind
from walewright.write.model import ChartNote, ChartText, NoteKind
from walewright.write.said import spelt

OneFormKind = Literal[
    "hole",
    "from left",
    "from right",
    "two from left",
    "two from right",
    "three",
    "purl",
    "tuck",
    "slip",
    "long",
    "ladder",
]

MEANINGS: Mapping[OneFormKind, str] = {
    "hole": "leave the needle empty in work; its st goes one needle to the side that the marks beside it show",
    "from left": "the st of the needle on the left comes here; the needle's own goes one needle to the right",
    "from right": "the st of the needle on the right comes here; the needle's own goes one needle to the left",
    "two from left": "the st of the needle on the left comes here, on top of the needle's own",
    "two from right": "the st of the needle on the right comes here, on top of the needle's own",
    "three": "the sts of the needles on the left and on the right come here, on top of the needle's own, the left one first",
    "purl": "knit; where no such mark follows above, drop the column of these marks and latch it up on the other face",
    "tuck": "hold the needle, so that the yarn lies over it, until another mark stands above",
    "slip": "hold the needle for this row, then lift the yarn off it to float past on your side",
    "long": "hold the needle for this row, then draw the yarn through by hand to twice the length of a st",
    "ladder": "knit, having moved the st one needle to the right before the column's first row; before the next row without such a"
    " mark, drop the column of these marks",
}
"""Of the kinds of cells that have but one form."""

PURL_IN_STAGES = (
    "knit; where {rows} or more such marks of a column are not latched up yet and no cross stands beside the column in the row"
    " above, and where none follows above, drop the column as far down as it was latched up last and latch it up on the other face"
)
"""Of a chart with columns too deep for one go."""

NEEDS_SLACK = 3
"""Of a cross of so many over so many and wider is said what it needs beside it."""

PICTURE_WAY = (
    "by hand, over the whole width, beginning at the carriage's side, where the yarns hang, lay each block's yarn into the open"
    " hooks, those of other charts too, crossing neighbouring yarns where they meet; then take the carriage across without yarn"
)

SIDE = "The purl side faces you; left and right are the bed's. Row 1 is the lowest and is knitted first."

PLAIN = "Where a needle of a move or a cross is missing, held or an edge st, knit all sts of that move or cross plain."

BEFORE = "Moves and crosses are made before the row is knitted."

SLACK = (
    "A column of purl marks right beside a cross is dropped before it, as deep as it was not latched up yet, and "
    "latched up after it; one between two crosses is latched up after both."
)

TIGHT = "A cross of 3 over 3 or wider without such a column beside it is knit plain."

COLUMNS = (
    "Purl marks: latch each column up after the last of them, and sooner where the chart ends or where its needle is about to be "
    "decreased, cast off, held, taken off or hung with a further st. In a part that waits its turn the columns wait too."
)

IN_STAGES = "Deep columns are latched up in stages: as soon as {rows} rows are to be, the first from the foot of the column."

RETURNED = "Where the chart ends, or an end of the work comes near, tucked needles return to work."

LADDERS = (
    "Ladders: drop each before the row above its last mark and leave the needle in work; one that the chart's end or "
    "shaping reaches stays knitted."
)


def meaning(cell: Cell, picture: bool, stage: int = 0) -> str:
    """What a symbol asks for, without a capital or full stop; `stage` as in `Chart`."""
    if cell.kind == "knit":
        return _knit(cell.yarn, picture)
    if cell.kind == "cross":
        k = cell.cross
        exchanged = f"exchange the left {k} and the right {k}, hanging the {cell.hung_first} first"
        return f"of every {2 * k} such marks side by side {exchanged}"
    if cell.kind == "purl" and stage:
        return PURL_IN_STAGES.format(rows=stage)
    return MEANINGS[cell.kind]


def _knit(yarn: str, picture: bool) -> str:
    if picture:
        return f"lay {yarn}" if yarn else "lay the yarn in use"
    if yarn:
        return f"hold the needle for this row, then lift the yarn off it and knit it by hand with {yarn}"
    return "knit plain"


def repeated(chart: Chart) -> str:
    """What is worked again and again, without a full stop."""
    width, rows = chart.width, len(chart.rows)
    if not chart.repeat:
        return f"none; the {_many(width, 'column')} and {_many(rows, 'row')} are worked once"
    first, last = chart.before + 1, chart.before + chart.repeat
    left = f", {_from_to(1, first - 1, 'column')} once at the left" if chart.before else ""
    right = f", {_from_to(last + 1, width, 'column')} once at the right" if chart.after else ""
    return f"{_from_to(first, last, 'column')} across{left}{right}; {_from_to(1, rows, 'row')} upwards"


def _many(number: int, what: str) -> str:
    return f"{number} {what}{'' if number == 1 else 's'}"


def _from_to(first: int, last: int, what: str) -> str:
    return f"{what} {first}" if first == last else f"{what}s {first} to {last}"


def chart_text(chart: Chart) -> ChartText:
    """The chart with the words of those symbols that occur in it. Two of the notes begin with what they are about: "Repeat: "
    and, of a picture, "Way: ", as their reader asks for."""
    used = {symbol for row in chart.rows for symbol in row}
    key = tuple((k.symbol, spelt(meaning(k.cell, chart.picture, chart.stage))) for k in chart.key if k.symbol in used)
    kinds = {k.cell.kind for k in chart.key if k.symbol in used}
    return ChartText(
        chart.name,
        spelt(f"Chart {chart.name}"),
        chart.rows,
        chart.before,
        chart.repeat,
        chart.after,
        chart.picture,
        key,
        (
            ChartNote(NoteKind.SIDE, SIDE),
            *(
                ChartNote(NoteKind.WHEN, said)
                for said in _when(kinds, max((k.cell.cross for k in chart.key if k.symbol in used), default=0), chart.stage)
            ),
            *((ChartNote(NoteKind.NEXT_ROW, _next_row(len(chart.rows))),) if chart.repeat else ()),
            ChartNote(NoteKind.REPEAT, f"Repeat: {repeated(chart)}."),
            *((ChartNote(NoteKind.WAY, f"Way: {PICTURE_WAY}."),) if chart.picture else ()),
        ),
    )


def _next_row(rows: int) -> str:
    """How a row that comes again and again is found from the counter."""
    if rows == 1:
        return "The one row comes again and again."
    return (
        f"The counter tells the row: from its value take the value where the chart began, and then {rows} as often as that goes. "
        "So many rows of the chart are done; where the counter is set back, the chart goes back with it."
    )


def _when(kinds: set[CellKind], widest: int, stage: int) -> Iterator[str]:
    """When within a row, or after which row, what the marks ask for is done."""
    if kinds & {"hole", "cross"}:
        yield BEFORE
        yield PLAIN
    if {"cross", "purl"} <= kinds:
        yield SLACK
        if widest >= NEEDS_SLACK:
            yield TIGHT
    if "purl" in kinds:
        yield COLUMNS
        if stage:
            yield IN_STAGES.format(rows=stage)
    if "tuck" in kinds:
        yield RETURNED
    if "ladder" in kinds:
        yield LADDERS


def worked_charts(plans: Sequence[SizePlan], charts: Sequence[Chart]) -> tuple[ChartText, ...]:
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
    return tuple(chart_text(c) for c in charts if c.name in names)


def _each(steps: Sequence[Step]) -> Iterator[Step]:
    for step in steps:
        if isinstance(step, Repeat):
            yield from _each(step.body)
        elif isinstance(step, Together):
            for track in step.tracks:
                yield from _each(track.steps)
        else:
            yield step
