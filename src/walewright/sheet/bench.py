"""The bench copy as pages: a sheet for each thing on the bed, its lines as the rows of a table, in large type.

A sheet has also what is joined off the bed after it, since that is done before the next one. Charts, abbreviations, and the
drawings to which pieces are pinned out stand at the end.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence

from walewright.figures.measures import measured, name_of
from walewright.figures.model import Drawing
from walewright.guide.model import Guide
from walewright.knit.steps import SizePlan, UseYarnStep
from walewright.record import record, replace
from walewright.sheet.charts import charts_at_bench
from walewright.sheet.composing import page_words
from walewright.sheet.images import images
from walewright.sheet.legends import schematics
from walewright.sheet.model import ChartPart, PageOptions, TableCell
from walewright.sheet.proven import ProvenPattern
from walewright.trade.papers import IN_STYLE_SHEETS
from walewright.trade.sides import EdgeSide
from walewright.write.model import Instructions, Paragraph, Run, Section, Sentence

Pieces = tuple[Run, ...]
"""A sentence as it is set."""


@record
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
    kept: bool = False
    """Whether it is on one page with the row above: one turn of the hands with it, or nobody asks for it by itself."""


@record
class BenchStage:
    """Rows under a small heading, which may be empty."""

    title: str
    rows: tuple[BenchRow, ...]
    kept: bool = False
    """Whether it begins on one page with the last row of the stage before it."""


@record
class Joined:
    """What is joined off the bed."""

    anchor: str
    title: str
    rows: tuple[BenchRow, ...]


@record
class PinnedPiece:
    """The drawing of a piece with its measures; `figures` are those of its letters, if it has letters."""

    title: str
    drawing: Drawing
    figures: tuple[tuple[str, str, str], ...]
    """(letter, measure, how much)."""


@record
class BenchSheet:
    """One thing on the bed; without `stages` only what is joined before anything is knitted. `tension`: "tension 4", or nothing."""

    anchor: str
    title: str
    tension: str
    stages: tuple[BenchStage, ...]
    joined: tuple[Joined, ...]
    several: bool = False
    """Whether it is knitted more than once, with a box to tick for each."""
    counted: tuple[bool, bool, bool] = (True, True, True)
    """Which of the needles in work, held and waiting any row counts: a column that has nothing in any row leaves its place to the
    words."""


@record
class BenchDocument:
    """The whole copy of one size."""

    language: str
    paper: str
    title: str
    how: str
    sheets: tuple[BenchSheet, ...]
    charts: tuple[ChartPart, ...]
    pinned: tuple[PinnedPiece, ...]
    abbreviations: tuple[tuple[str, str], ...]
    words: Mapping[str, str]
    version: str
    date: str
    heads: tuple[tuple[str, str], ...] = ()
    """What stands in the upper corners of each page: what its first line belongs to, and the number of the page within that; none
    before the pages are laid out."""


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
        charts=charts_at_bench(guide, pattern),
        pinned=tuple(_pinned(guide, pattern, plan.size, options.units)),
        abbreviations=instructions.abbreviations,
        words=page_words(guide),
        version=options.version,
        date=options.date,
    )


def with_heads(guide: Guide, made: BenchDocument, pages: Sequence[Sequence[str]]) -> BenchDocument:
    """The document with the heads of its pages; `pages`: the anchors that lie on each, begun there or before."""
    stretches = tuple(_headed(made))
    heads: list[tuple[str, str]] = []
    for number, there in enumerate(pages):
        first = next((one for one in stretches if one.anchor in there), None)
        if first is None:
            heads.append((made.title, ""))
            continue
        before, all_of_it = (sum(first.anchor in some for some in part) for part in (pages[: number + 1], pages))
        of = guide.say("bench/page", page=before, pages=all_of_it) if all_of_it > 1 else ""
        tension = guide.say("bench/head", tension=first.tension, page=of) if first.tension and of else first.tension or of
        heads.append((guide.say("bench/part", title=made.title, part=first.title), tension))
    return replace(made, heads=tuple(heads))


@record
class _HeadedPart:
    """What the head of a page can name."""

    anchor: str
    title: str
    tension: str = ""


def _headed(made: BenchDocument) -> Iterator[_HeadedPart]:
    """In the order of the pages."""
    for sheet in made.sheets:
        if sheet.stages:
            yield _HeadedPart(sheet.anchor, sheet.title, sheet.tension)
        yield from (_HeadedPart(joined.anchor, joined.title) for joined in sheet.joined)
    yield from (_HeadedPart(chart.anchor, chart.title) for chart in made.charts)
    yield _HeadedPart(SHORT, made.words["abbreviations"])
    yield _HeadedPart(PINNED, made.words["bench-pinned"])


PINNED, SHORT = "pinned", "abbreviations"
"""Places of what stands at the end."""


def _pinned(guide: Guide, pattern: ProvenPattern, size: str, units: str) -> Iterator[PinnedPiece]:
    """The drawings of the pieces, larger than in the booklet: whoever pins them out looks from above."""
    design, counts = pattern.design, pattern.counts
    number = design.sizes.index(size)
    pieces = tuple(measured(design, counts, piece.name) for piece in design.pieces)
    image_of = images(design.pieces, pattern.instructions.sections)
    for name, (drawn, legend) in schematics(guide, design, pieces, counts, units, image_of).items():
        if drawn is not None:
            rows = (row for group in legend.groups for row in group.rows) if legend else ()
            figures = tuple((row.key, row.label, _figure(guide, row.cells[number], units)) for row in rows)
            yield PinnedPiece(name_of(name), replace(drawn, scale=round(_pinned_scale(drawn), 3)), figures)


def _figure(guide: Guide, cell: TableCell, units: str) -> str:
    if cell.under:
        return f"{guide.say('label/cm', value=cell.text)} ({cell.under})"
    return guide.say("label/in" if units == "in" else "label/cm", value=cell.text)


PINNED_SCALES = (1.2, 1.35)
"""Of drawings, least and most: so their figures are 10 to 11 pt high."""

BESIDE = 88.0
"""mm. Two drawings no wider than this stand side by side on the narrowest paper."""


def _pinned_scale(drawn: Drawing) -> float:
    """As large as it may be beside another one; alone where it would be small for that."""
    least, most = PINNED_SCALES
    beside = BESIDE / drawn.width
    return most if beside < least else min(most, beside)


def _sheets(guide: Guide, plan: SizePlan, instructions: Instructions) -> Iterator[BenchSheet]:
    sheet: BenchSheet | None = None
    for number, section in enumerate(instructions.sections):
        if section.joining:
            told = tuple(_row(s, 1) for p in section.paragraphs for s in p.sentences)
            joined = Joined(_anchor(number, "joined"), section.title, told)
            if sheet is None:
                sheet = BenchSheet(_anchor(number, ""), "", "", (), ())
            sheet = replace(sheet, joined=(*sheet.joined, joined))
            continue
        if sheet is not None:
            yield sheet
        tension = _tension(plan, section.name)
        stages = _kept_together(_stages(section))
        sheet = BenchSheet(
            anchor=_anchor(number, section.name),
            title=name_of(section.title),
            tension=guide.say("bench/tension", tension=tension) if tension else "",
            stages=stages,
            joined=(),
            several=section.most > 1,
            counted=_counted(section),
        )
    if sheet is not None:
        yield sheet


def _anchor(number: int, name: str) -> str:
    """The place of a sheet, which is also the name of its pages."""
    return f"sheet-{number + 1}-" + re.sub(r"[^A-Za-z0-9]+", "-", name)


def _tension(plan: SizePlan, block: str) -> str:
    """The tensions of a block, in the order in which they are set."""
    steps = (step for b in plan.blocks if b.name == block for _, some in b.paragraphs for step in some)
    return ", ".join(dict.fromkeys(step.tension for step in steps if isinstance(step, UseYarnStep)))


def _stages(section: Section) -> tuple[BenchStage, ...]:
    """The paragraphs. Which rows make which edges is asked for when they are joined: it stands in one row below the last step."""
    made: list[BenchStage] = []
    for paragraph in section.paragraphs:
        if made and _names_edges(paragraph):
            told = (run for s in paragraph.sentences for run in (Run(" "), *s.runs))
            row = BenchRow(0, note=(Run(f"{name_of(paragraph.title)}:"), *told), kept=True)
            made[-1] = replace(made[-1], rows=(*made[-1].rows, row))
        else:
            made.append(_stage(paragraph, section))
    return tuple(made)


def _kept_together(stages: tuple[BenchStage, ...]) -> tuple[BenchStage, ...]:
    """No line stands alone on the last page, nor one with the heading of its stage."""
    if not stages:
        return ()
    *before, last = stages
    steps = [number for number, row in enumerate(last.rows) if not row.note]
    if len(steps) < 2:
        return (*before, replace(last, kept=bool(before)))
    rows = tuple(replace(row, kept=row.kept or number == steps[-1]) for number, row in enumerate(last.rows))
    return (*before, replace(last, rows=rows))


def _counted(section: Section) -> tuple[bool, bool, bool]:
    """Needles in work are told of everything."""
    cells = [s.bench for p in section.paragraphs for s in p.sentences if s.bench]
    return True, any(c.held for c in cells), any(c.waiting for c in cells)


def _names_edges(paragraph: Paragraph) -> bool:
    """With a note of theirs."""
    edges = {"EdgeIs", "GapIs"}
    told = [{*s.kinds} for s in paragraph.sentences]
    return any(kinds & edges for kinds in told) and all(kinds and kinds <= {*edges, "Say"} for kinds in told)


def _stage(paragraph: Paragraph, section: Section) -> BenchStage:
    rows: list[BenchRow] = []
    before: Sentence | None = None
    for sentence in paragraph.sentences:
        row = _row(sentence, section.most)
        stood = bool(rows) and bool(row.counter) and not row.rows and rows[-1].counter == row.counter
        kept = before is not None and _one_turn(before, sentence, stood)
        rows.append(replace(row, again=stood, kept=kept))
        before = sentence
    return BenchStage(paragraph.title, tuple(rows))


_TURNED = {"HoldAtEnd", "ReturnHeld", "ReturnSome"}


def _one_turn(before: Sentence, sentence: Sentence, stood: bool) -> bool:
    """Whether a line belongs to the one above: what is held or returned, and the wrap after the row there; crosses of one row."""
    wrapped = "WrapHeld" in sentence.kinds and not _TURNED.isdisjoint(before.kinds)
    crossed = "CrossStitches" in sentence.kinds and "CrossStitches" in before.kinds
    return wrapped or (stood and crossed)


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
