"""The sheet: everything that is printed, already worded and formatted. Templates only lay it out.

Nothing here is a length, a stitch or a row any more, except inside drawings, which are in millimetres of paper.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import groupby
from typing import Literal

from walewright.figures.model import Drawing
from walewright.guide.model import Advice
from walewright.record import record
from walewright.sheet.stage import Spans, Stage
from walewright.trade.papers import PaperSize


@record
class PageOptions:
    """How pages are wanted. `version` is the compiler's, `date` is ISO (or "" for an undated copy)."""

    paper: PaperSize = "a4"
    units: Literal["cm", "in", "both"] = "cm"
    version: str = ""
    date: str = ""
    large_print: bool = False


# ----------------------------------------------------------------- tables


@record
class TableCell:
    """One size's figure, and a smaller one beneath it where two are compared."""

    text: str
    under: str = ""


@record
class Row:
    """`key` is a legend's letter or empty; `note` is small print after the label; `cells` run in the order of the sizes."""

    label: str
    cells: tuple[TableCell, ...]
    key: str = ""
    note: str = ""

    @property
    def in_line(self) -> bool:
        """Whether the smaller figures are short enough to stand beside the others in a column of eight sizes."""
        return all(len(c.text) + len(c.under) <= 10 for c in self.cells)


@record
class RowGroup:
    """Rows under a small heading ("To fit"), which may be empty."""

    title: str
    rows: tuple[Row, ...]

    @property
    def alike(self) -> tuple[Row, ...]:
        """The rows that say the same in all sizes, which are said in one line."""
        return tuple(row for row in self.rows if len(row.cells) > 1 and len(set(row.cells)) == 1)


@record
class SizesTable:
    """A table with one column a size."""

    caption: str
    sizes: tuple[str, ...]
    groups: tuple[RowGroup, ...]
    heading: str = ""
    """Over the rows' labels; empty where they are measures."""


# ----------------------------------------------------------------- words


@record
class Fact:
    """`figures` as in write.model.Run."""

    label: str
    text: str
    figures: Spans = ()

    @property
    def short(self) -> bool:
        """Whether it is kept on one line where others stand in line with it."""
        return len(self.label) + len(self.text) < SHORT


SHORT = 36
"""Characters of a fact and its label, which have room on a line of the narrowest column."""


@record
class HowTo:
    """One technique in a box, with a drawing of needles and tools; `anchor` is its place on the page."""

    anchor: str
    title: str
    lines: tuple[str, ...]
    drawing: Drawing


@record
class JoinsPicture:
    """The pieces opened out: how the drawing is read, and what its numbers stand for, each with the number. `sizes`: which
    it is of, where others are put together of more or fewer copies and have a drawing of their own; else empty."""

    drawing: Drawing
    sizes: str
    reading: str
    numbers: tuple[tuple[str, str], ...]
    columns: int = 0
    """In how many the numbers stand beneath the drawing; 0: in one beside it."""


BESIDE_FACTS = 120.0
"""How wide a drawing is at most that has facts beside it, in its own mm; one in a column has them beneath it anyway."""

PAGE_OF_STEPS = 2100
"""Characters of steps with their rules between them on two thirds of a page."""

MOST_ABREAST = 4
"""Tick boxes before one line."""


@record
class SheetPart:
    """A `piece`, edging or band: one section of the pages. `short`: it is kept on one page;
    `headed`: its stages have headings. `counted`, `sided`: some of its lines have the row counter, or the carriage's side, in a
    column."""

    anchor: str
    title: str
    facts: tuple[Fact, ...]
    details: tuple[Fact, ...]
    """Facts with long figures, which stand beneath the drawing."""
    drawing: Drawing | None
    legend: SizesTable | None
    stages: tuple[Stage, ...]
    piece: bool
    short: bool
    headed: bool
    counted: bool
    sided: bool
    by_hand: tuple[tuple[str, str], ...] = ()
    """(anchor, title) of the boxes that explain its handwork, and of the charts that it works."""
    joins: tuple[JoinsPicture, ...] = ()
    """In the last section of making up."""
    drawn: str = ""
    """The anchor of the section that has the drawing with the numbers of its joins, where that follows."""
    buttons: tuple[str, ...] = ()
    """Where buttons are sewn, there too."""

    @property
    def across(self) -> bool:
        """Whether its drawing is too wide for what it measures to stand beside it."""
        return self.drawing is not None and self.legend is None and self.drawing.width > BESIDE_FACTS

    @property
    def fills_a_page(self) -> bool:
        """Whether its steps leave no room on their page for a drawing and what comes after them: that may be on the page before."""
        return sum(len(run.text) for stage in self.stages for line in stage.lines for run in line.pieces) > PAGE_OF_STEPS

    @property
    def bare(self) -> bool:
        """Whether its lines say by themselves what they are, and need no heads of columns: where there is nothing but steps, and a
        heading or a numbered step stands first."""
        first = self.stages[0] if self.stages else None
        if first is None or self.counted or self.sided:
            return False
        return bool((first.title and self.headed) or first.only or (first.lines and first.lines[0].number))

    @property
    def boxes(self) -> int:
        """Tick boxes abreast: one a copy, of many copies four."""
        most = max((line.boxes for stage in self.stages for line in stage.lines), default=1)
        of_rows = max((row.boxes for stage in self.stages for row in stage.rows), default=0)
        return min(max(most, of_rows), MOST_ABREAST)


@record
class SetAlike:
    """Parts that follow each other, and whether they are set in two columns."""

    narrow: bool
    parts: tuple[SheetPart, ...]


# ----------------------------------------------------------------- charts


@record
class KeyRow:
    """A symbol as drawn and as the plain text writes it, its name and what is done."""

    drawing: Drawing
    written: str
    name: str
    what: str


@record
class ChartRows:
    """Rows `low` to `high` of a chart lie one over the other, each `rise` mm high and `wide` mm wide, the highest at the top of the
    drawing's plane."""

    low: int
    high: int
    rise: float
    wide: float


@record
class ChartSheet:
    """`caption` such as "Sheet A: columns 1 to 30, rows 1 to 52"; empty where one sheet holds the whole chart."""

    drawing: Drawing
    caption: str
    rows: ChartRows | None = None
    """Of a chart: where its rows lie in the drawing."""


BESIDE_KEY = 78.0
"""mm. A chart is at most so wide that has its key beside it."""


@record
class ChartPart:
    """One chart: `sheets` of it, a `map` of them where there are several, where it lies (`places`), and its fabric as the bed
    knitted it."""

    anchor: str
    title: str
    facts: tuple[Fact, ...]
    notes: tuple[str, ...]
    map: Drawing | None
    sheets: tuple[ChartSheet, ...]
    key: tuple[KeyRow, ...]
    places: SizesTable | None
    picture: Drawing | None
    picture_note: str
    cut_note: str = ""
    """Where there are several sheets: how they go together."""

    @property
    def narrow(self) -> bool:
        """Whether its key goes beside it."""
        if self.map is not None or len(self.sheets) != 1:
            return False
        drawing = self.sheets[0].drawing
        return drawing.width * drawing.scale <= BESIDE_KEY


@record
class ListTable:
    """A plain table: its heads, and rows of as many texts, the first of each the row's head."""

    caption: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@record
class Tension:
    """A fabric's tension: `density`, two figures to 10 cm (or 4 in) that begin and end at `figures`, and the words about it."""

    title: str
    density: str
    figures: Spans
    text: str


@record
class Regrade:
    """What can be given in place of the source's own: measurements a size, everything else, and words about it."""

    measures: SizesTable | None
    others: ListTable
    lines: tuple[str, ...]


@record
class PlacedPicture:
    """A photograph written into the page, and what is to be seen on it."""

    uri: str
    alternative: str
    width: int
    height: int


@record
class Sheet:
    """The whole booklet, in the order in which it is printed."""

    language: str
    paper: str
    """The size of the page as a style sheet calls it, such as "A4"."""
    title: str
    summary: str
    difficulty: str
    story: tuple[str, ...]
    notes: tuple[str, ...]
    cover_facts: tuple[Fact, ...]
    cover: Drawing
    contents: tuple[tuple[str, str], ...]
    """(anchor, title) of every section after the cover."""
    sizes: SizesTable
    size_notes: tuple[str, ...]
    materials: SizesTable
    materials_notes: tuple[str, ...]
    tools: tuple[str, ...]
    tensions: tuple[Tension, ...]
    swatch: Advice
    care: Advice
    machine: tuple[Fact, ...]
    reading: Advice
    handwork: tuple[HowTo, ...]
    example: str
    """The sizes as they stand in brackets, or "" for a single size."""
    abbreviations: tuple[tuple[str, str], ...]
    """What is said short, and words of the trade, each with what it means."""
    parts: tuple[SheetPart, ...]
    trouble: tuple[Advice, ...]
    safety: Advice
    children: Advice | None
    """Cautions for a garment that a child wears, where it is for children."""
    checked: tuple[str, ...]
    """How the pattern was checked."""
    author: str
    credits: tuple[str, ...]
    """Whose pattern it is, and of when, as the author says."""
    version: str
    date: str
    """ISO date, or empty."""
    colophon: str
    words: Mapping[str, str]
    """Headings and other words of the templates."""
    charts: tuple[ChartPart, ...] = ()
    pictures: tuple[ChartSheet, ...] = ()
    """Of fabrics without a chart, such as stripes."""
    bobbins: tuple[ListTable, ...] = ()
    floats: ListTable | None = None
    """Floats that are longer than fingers like."""
    choices: tuple[Fact, ...] = ()
    """Of what the source leaves to the knitter, what this copy has and what there is besides."""
    regraded: ListTable | None = None
    """What a knitter gave, beside the source's own; None for the source's own edition."""
    regraded_line: str = ""
    """The same in one sentence."""
    regrade: Regrade | None = None
    photograph: PlacedPicture | None = None
    """In place of the drawing on the cover."""
    narrow: bool = False
    """Its lines are short, as those of one size are in ordinary print: it is set in two columns."""

    @property
    def stretches(self) -> tuple[SetAlike, ...]:
        """The parts, those next to each other that are set alike as one stretch."""
        runs = groupby(self.parts, key=lambda part: self.narrow and not part.joins)
        return tuple(SetAlike(narrow, tuple(parts)) for narrow, parts in runs)
