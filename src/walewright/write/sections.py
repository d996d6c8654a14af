"""Sections: the blocks of all sizes as one graded text."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from walewright.design.model import Chart
from walewright.knit.steps import SizePlan, Step, StepBlock, Together
from walewright.write.align import Column, align
from walewright.write.charts import worked_charts
from walewright.write.grading import only
from walewright.write.lines import Line, grouped, lines, sentence
from walewright.write.model import Abbreviation, Instructions, Paragraph, Section, Sentence
from walewright.write.row_by_row import Rows, closeness, folded, likeness, only_several
from walewright.write.said import SPACE, spelt
from walewright.write.table import tabled
from walewright.write.tally import RowTally
from walewright.write.together import side_by_side
from walewright.write.words import worked

ALL_SIZES = "All sizes"
"""Title of a paragraph that goes on after one for some sizes only."""

AT_ONCE = "At the same time"
"""Title of a table that has no title of its own."""

AFTERWARDS = "After that"
"""Title of a paragraph that goes on after a table."""


def write(plans: tuple[SizePlan, ...], sizes: Sequence[str] | None = None, charts: Sequence[Chart] = ()) -> Instructions:
    """The graded instructions of `plans`, one plan a size. `sizes` are the names to print, those of the plans by default;
    `charts` has at least those that the plans work.

    Raises ValueError without plans, or when there are not as many names as plans; KeyError for a chart that is not there.
    """
    names = tuple(p.size for p in plans) if sizes is None else tuple(sizes)
    if not plans or len(names) != len(plans):
        raise ValueError(f"{len(plans)} plans for {len(names)} sizes")
    columns = align([p.blocks for p in plans], lambda block: (block.name, block.copies))
    sections = tuple(_section(column) for column in columns)
    return Instructions(names, sections, _abbreviations(sections), worked_charts(plans, charts))


def heading(name: str, copies: int) -> str:
    """A block's name as a heading from which it can be told: "Back welt", "Sleeve (knit 2)". A name that does not begin with
    a small letter stands in quotes as it is, and so does one that would look like the heading of a chart."""
    capital = name[:1].upper()
    small = name[:1].islower() and capital.lower() == name[:1] and not name.startswith("chart ")
    told = spelt(capital + name[1:] if small else f"“{name}”")
    return f"{told} (knit {copies})" if copies != 1 else told


def _section(column: Column[StepBlock]) -> Section:
    block = next(b for b in column if b is not None)
    parts = [() if b is None else _folded(_titled(b)) for b in column]
    paragraphs: list[Paragraph] = []
    for row in _paired(align(parts, lambda part: part[0])):
        # Of two titles for one paragraph, the longer one says more.
        title = max((p[0] for p in row if p is not None), key=len)
        paragraphs += _graded(title, [() if p is None else p[1] for p in row], paragraphs[-1] if paragraphs else None)
    if block.joining:
        return Section(block.name, _put_together(block), 1, tuple(paragraphs), joining=True)
    return Section(block.name, heading(block.title, block.copies), block.copies, tuple(paragraphs))


def _put_together(block: StepBlock) -> str:
    """The heading with the name of what comes next as words; plain spaces tell it from the name of a piece."""
    return f"Before the {spelt(block.before).replace(' ', SPACE)}" if block.before else block.title


SectionPart = tuple[str, tuple[Step, ...]]


def _paired(rows: list[Column[SectionPart]]) -> list[Column[SectionPart]]:
    """The rows, where every size has just one of two neighbours those two as one: it goes by another title in some sizes."""
    made: list[Column[SectionPart]] = []
    for row in rows:
        if made and all((a is None) != (b is None) for a, b in zip(made[-1], row, strict=True)):
            made[-1] = tuple(a if b is None else b for a, b in zip(made[-1], row, strict=True))
        else:
            made.append(row)
    return made


def _titled(block: StepBlock) -> list[SectionPart]:
    """The paragraphs, one without a title joined to the one before it."""
    parts: list[SectionPart] = []
    for title, steps in block.paragraphs:
        if parts and not title:
            parts[-1] = (parts[-1][0], (*parts[-1][1], *steps))
        else:
            parts.append((title, steps))
    return parts


def _folded(parts: list[SectionPart]) -> list[SectionPart]:
    """The paragraphs without steps that do nothing, stretches of shaping as one."""
    tally = RowTally()
    made: list[SectionPart] = []
    for title, steps in parts:
        rows, tally = folded([s for s in steps if worked(s)], tally)
        made.append((title, rows))
    return made


def _graded(title: str, lists: Sequence[Sequence[Step]], before: Paragraph | None = None) -> list[Paragraph]:
    """The lists of steps of all sizes as paragraphs, the first with the `title`; `before` is the one that they come after."""
    columns = align(only_several(lists), likeness, closeness)
    made: list[Paragraph] = []
    for group, printed in grouped(lines(columns), len(lists)):
        head = only(group, len(lists))
        for is_table, some in groupby(printed, key=_is_table):
            told = tuple(s for line in some for s in _told(line, group))
            named = _going_on(is_table, head, made[-1] if made else before)
            made.append(Paragraph((not made and spelt(title)) or named, head, told, is_table))
    return made


def _told(line: Line, group: tuple[int, ...]) -> tuple[Sentence, ...]:
    if _is_table(line):
        return tabled(_stretches(line), group)
    together = tuple(step if isinstance(step, Together) else None for step in line.columns[0])
    return side_by_side(together, group) if any(together) else (sentence(line, group),)


def _is_table(line: Line) -> bool:
    return any(isinstance(step, Rows) for step in line.columns[0])


def _stretches(line: Line) -> Column[Rows]:
    return tuple(step if isinstance(step, Rows) else None for step in line.columns[0])


def _going_on(is_table: bool, head: str, before: Paragraph | None) -> str:
    """Title of a paragraph that has none of its own."""
    if is_table:
        return AT_ONCE
    if before is not None and before.only and not head:
        return ALL_SIZES
    return AFTERWARDS if before is not None and before.table else ""


_MEANINGS = {
    Abbreviation.COL: "carriage on the left",
    Abbreviation.COR: "carriage on the right",
    Abbreviation.LEFT: "needle left of the centre mark: L 1 is the first",
    Abbreviation.RIGHT: "needle right of the centre mark: R 1 is the first",
    Abbreviation.RC: "row counter: RC 20 is when 20 rows are counted, before row 21",
    Abbreviation.STITCH: "stitch(es)",
    Abbreviation.SKIPPED: "your size skips this",
}
"""Alphabetically; the dash goes last."""


def _abbreviations(sections: Sequence[Section]) -> tuple[tuple[str, str], ...]:
    """Those that occur, with their meanings."""
    used = {short for section in sections for p in section.paragraphs for s in p.sentences for short in s.short}
    return tuple((short.value, meaning) for short, meaning in _MEANINGS.items() if short in used)
