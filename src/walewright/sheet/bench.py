"""The bench copy as pages: a sheet for each thing on the bed, its lines as the rows of a table, in large type.

A sheet has also what is joined off the bed after it, since that is done before the next one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.knit.steps import SizePlan, UseYarnStep
from walewright.sheet.charts import charts
from walewright.sheet.composing import page_words
from walewright.sheet.model import ChartPart, PageOptions
from walewright.sheet.proven import ProvenPattern
from walewright.trade.papers import IN_STYLE_SHEETS
from walewright.trade.sides import EdgeSide
from walewright.write.model import Instructions, Paragraph, Run, Section, Sentence

Pieces = tuple[Run, ...]
"""A sentence as it is set."""


@dataclass(frozen=True, slots=True)
class BenchRow:
    """A row of the table. `counter` has the three figures of the counter, or nothing; `charts` and `what` are sentences. A row of
    `note` alone runs across: something that is only stated, or is done off the bed."""

    boxes: int
    rows: str = ""
    counter: str = ""
    side: EdgeSide | str = ""
    charts: tuple[Pieces, ...] = ()
    what: tuple[Pieces, ...] = ()
    counts: tuple[str, ...] = ()
    again: bool = False
    """Whether the counter stands where it stood in the row above."""
    note: Pieces = ()
    beside: bool = False
    """Whether it is on one page with the row above: nobody asks for it by itself."""


@dataclass(frozen=True, slots=True)
class BenchStage:
    """Rows under a small heading, which may be empty."""

    title: str
    rows: tuple[BenchRow, ...]


@dataclass(frozen=True, slots=True)
class Joined:
    """What is joined off the bed."""

    title: str
    rows: tuple[BenchRow, ...]


@dataclass(frozen=True, slots=True)
class BenchSheet:
    """One thing on the bed; without `stages` only what is joined before anything is knitted. `tension`: "tension 4", or nothing."""

    anchor: str
    title: str
    tension: str
    stages: tuple[BenchStage, ...]
    joined: tuple[Joined, ...]
    several: bool = False
    """Whether it is knitted more than once, with a box to tick for each."""


@dataclass(frozen=True, slots=True)
class BenchDocument:
    """The whole copy of one size."""

    language: str
    paper: str
    title: str
    how: str
    sheets: tuple[BenchSheet, ...]
    charts: tuple[ChartPart, ...]
    abbreviations: tuple[tuple[str, str], ...]
    words: Mapping[str, str]
    version: str
    date: str
    heads: tuple[tuple[str, tuple[str, ...]], ...] = ()
    """Of each sheet, what stands in the upper right corner of each of its pages; none before the pages are counted."""


def compose_bench(guide: Guide, pattern: ProvenPattern, plan: SizePlan, options: PageOptions) -> BenchDocument:
    """The pages of a bench copy, the pattern's instructions being that of `plan` in the language of `guide`."""
    instructions = pattern.instructions
    guide = guide.on_plates() if plan.plates else guide
    size = name_of(plan.size)
    return BenchDocument(
        language=guide.code,
        paper=IN_STYLE_SHEETS[options.paper],
        title=guide.say("bench/title", title=pattern.design.title, size=size),
        how=guide.say("bench/how"),
        sheets=tuple(_sheets(guide, plan, instructions)),
        charts=charts(guide, pattern, large_print=True),
        abbreviations=instructions.abbreviations,
        words=page_words(guide),
        version=options.version,
        date=options.date,
    )


def with_pages(guide: Guide, made: BenchDocument, pages: Mapping[str, int]) -> BenchDocument:
    """The document with the number of each page of a sheet in its head; `pages`: anchor -> how many."""
    heads = tuple(
        (
            sheet.anchor,
            tuple(_head(guide, sheet, number, pages.get(sheet.anchor, 1)) for number in range(1, pages[sheet.anchor] + 1)),
        )
        for sheet in made.sheets
        if sheet.anchor in pages
    )
    return replace(made, heads=heads)


def _head(guide: Guide, sheet: BenchSheet, page: int, pages: int) -> str:
    of = guide.say("bench/page", page=page, pages=pages)
    return guide.say("bench/head", tension=sheet.tension, page=of) if sheet.tension else of


def _sheets(guide: Guide, plan: SizePlan, instructions: Instructions) -> Iterator[BenchSheet]:
    sheet: BenchSheet | None = None
    for number, section in enumerate(instructions.sections):
        if section.joining:
            joined = Joined(section.title, tuple(_row(s, 1) for p in section.paragraphs for s in p.sentences))
            if sheet is None:
                sheet = BenchSheet(_anchor(number, ""), "", "", (), ())
            sheet = replace(sheet, joined=(*sheet.joined, joined))
            continue
        if sheet is not None:
            yield sheet
        tension = _tension(plan, section.name)
        sheet = BenchSheet(
            anchor=_anchor(number, section.name),
            title=name_of(section.title),
            tension=guide.say("bench/tension", tension=tension) if tension else "",
            stages=_stages(section),
            joined=(),
            several=section.most > 1,
        )
    if sheet is not None:
        yield sheet


def _anchor(number: int, name: str) -> str:
    """The place of a sheet, which is also the name of its pages."""
    return f"sheet-{number + 1}-" + re.sub(r"[^A-Za-z0-9]+", "-", name)


def _tension(plan: SizePlan, block: str) -> str:
    """The tension that a block is begun at."""
    steps = (step for b in plan.blocks if b.name == block for _, some in b.paragraphs for step in some)
    return next((step.tension for step in steps if isinstance(step, UseYarnStep)), "")


def _stages(section: Section) -> tuple[BenchStage, ...]:
    """The paragraphs. Which rows make which edges is asked for when they are joined: it stands in one row below the last step."""
    made: list[BenchStage] = []
    for paragraph in section.paragraphs:
        if made and _names_edges(paragraph):
            told = (run for s in paragraph.sentences for run in (Run(" "), *s.runs))
            row = BenchRow(0, note=(Run(f"{name_of(paragraph.title)}:"), *told), beside=True)
            made[-1] = replace(made[-1], rows=(*made[-1].rows, row))
        else:
            made.append(_stage(paragraph, section))
    return tuple(made)


def _names_edges(paragraph: Paragraph) -> bool:
    return bool(paragraph.sentences) and all(s.kinds and {*s.kinds} <= {"EdgeIs", "GapIs"} for s in paragraph.sentences)


def _stage(paragraph: Paragraph, section: Section) -> BenchStage:
    rows: list[BenchRow] = []
    for sentence in paragraph.sentences:
        row = _row(sentence, section.most)
        stood = bool(rows) and bool(row.counter) and not row.rows and rows[-1].counter == row.counter
        rows.append(replace(row, again=stood))
    return BenchStage(paragraph.title, tuple(rows))


def _row(sentence: Sentence, copies: int) -> BenchRow:
    cells = sentence.bench
    if cells is None:
        return BenchRow(0 if sentence.check else copies, note=sentence.runs)
    counts = tuple(str(n) if n else "\N{MIDDLE DOT}" for n in (cells.in_work, cells.held, cells.waiting))
    return BenchRow(
        boxes=copies,
        rows=str(cells.rows) if cells.rows else "",
        counter=f"{cells.row:03}" if cells.row is not None else "",
        side=cells.side,
        charts=cells.charts,
        what=cells.what,
        counts=counts,
    )
