"""The graded instructions: one text for many sizes, as a tree of sentences that pages, plain text and JSON are made of.

No HTML here, and no knitting decisions: those are in the steps the text was written from.
"""

from __future__ import annotations

from enum import Enum
from typing import Literal

from walewright.knit.steps import Now
from walewright.record import record
from walewright.trade.sides import EdgeSide


class Abbreviation(Enum):
    """What is said with something shorter in the sentences; the language has its form."""

    COL = "carriage on the left"
    COR = "carriage on the right"
    LEFT = "needle left of the centre"
    RIGHT = "needle right of the centre"
    RC = "row counter"
    STITCH = "stitch"
    SKIPPED = "skipped"
    """The dash of a size that skips something."""


class Manner(Enum):
    """What a sentence is: steps in the words of their templates, or plain prose, in which nothing is graded or abbreviated."""

    STEPS = "steps"
    NOTE = "note"
    BY_HAND = "by hand"
    """Something to do off the bed, as the author says it."""


class NoteKind(Enum):
    """What a note beside a chart is about. The repeat and the way are read back; the others are for the knitter alone."""

    SIDE = "side"
    WHEN = "when"
    NEXT_ROW = "next row"
    REPEAT = "repeat"
    WAY = "way"


RunKind = Literal["word", "number", "needle", "check", "section"]
"""word: plain | number: graded: brackets | needle | check: what must be true | section: the name of one referred to."""


@record
class Run:
    """A stretch of a sentence.
    `short` are the abbreviations that stand in it, `figures` where graded figures begin and end that no line may break."""

    text: str
    kind: RunKind = "word"
    short: frozenset[Abbreviation] = frozenset()
    figures: tuple[tuple[int, int], ...] = ()


@record
class Cells:
    """A sentence as a row of a table: knit to counter value `row`, then do `what` (phrases with commas between, the first
    with a capital, no full stop), and then `stitches` ("80 sts") are in the part being worked."""

    row: tuple[Run, ...]
    what: tuple[Run, ...]
    stitches: tuple[Run, ...]
    at: tuple[Run, ...] = ()
    """The counter value with its name, and where the carriage stands if that is told, as it stands in the sentence."""
    carriage: tuple[Run, ...] = ()
    """Where the carriage stands then, by itself."""


BenchPlace = Literal["where", "what", "counts"]
"""where: the rows, the counter and the carriage | what: what is done | counts: what is on the bed after it."""


@record
class BenchCells:
    """A line of a bench copy as a row of its table: knit `rows` rows until the counter reads `row` (None while it has not been
    set), the carriage then at `side` (empty while unknown), and do `what`, each sentence without its stop. `charts`: the rows of
    charts that it is for. After it so many needles are in work, held and waiting."""

    rows: int
    row: int | None
    side: EdgeSide | Literal[""]
    charts: tuple[tuple[Run, ...], ...]
    what: tuple[tuple[Run, ...], ...]
    in_work: int
    held: int
    waiting: int
    stretches: tuple[tuple[BenchPlace, tuple[Run, ...]], ...] = ()
    """The whole sentence, cut where another column begins."""
    chart_rows: tuple[tuple[str, int], ...] = ()
    """The charts that it is for, each with the number of its row."""


@record
class Sentence:
    """One printed line to tick off. `sizes` are indices of the sizes that work it (all, as a rule). `row`: the graded counter
    value after it, and `side` the carriage side, where known alike for all (else empty)."""

    runs: tuple[Run, ...]
    sizes: tuple[int, ...]
    row: str
    side: EdgeSide | Literal[""]
    origin: str
    """The path of the statement that it comes from."""
    check: bool
    """True for a line that only states what must be true."""
    kinds: tuple[str, ...] = ()
    """Class names of the steps it says, in their order, those inside a repeat after "Repeat", those that it refers to after
    "Again"; none for the note above a table."""
    cells: Cells | None = None
    """The same words set as a row of a table, in a paragraph that is one."""
    bench: BenchCells | None = None
    """The same words set as a row of a bench copy."""
    manner: Manner = Manner.STEPS
    row_said: bool = False
    """Whether the words name the counter value `row` themselves."""
    row_graded: bool = False
    """Whether `row` is a figure that no line may break."""
    state: tuple[Now | None, ...] = ()
    """What its last words say must be true, for each size; empty where they say nothing of it."""
    also_of: tuple[str, ...] = ()
    """The paths of further statements that it comes from."""
    keeps: bool = False
    """Whether what was true before it still is."""
    goes_on: bool = False
    """Whether it can stand only after the line before it: a row of a table, one of several shapings that are worked together."""
    numbers: tuple[int, ...] = ()
    """Which step of its section it is; the first and the last of those that it stands for. None for what is not ticked off."""
    refers: str = ""
    """The name of the section whose steps it refers to."""
    ticks: tuple[int, ...] = ()
    """What is ticked off one by one below it: the numbers of the many steps that it refers to, or of its rounds."""

    @property
    def text(self) -> str:
        return "".join(r.text for r in self.runs)

    @property
    def short(self) -> frozenset[Abbreviation]:
        """The abbreviations that it uses."""
        return frozenset(a for r in self.runs for a in r.short)


@record
class Paragraph:
    """Lines under a small title ("Shape neck"); `only` is "" or "S, M only".

    A `table` tells row by row what is shaped at the same time: a note that says so (a sentence without `cells`), then one
    sentence with `cells` for each row at which something is done: RC | what to do | sts. Its lines can also be set as the
    sentences they are: "RC 34: decrease 1 st at both ends; 80 sts."
    """

    title: str
    only: str
    sentences: tuple[Sentence, ...]
    table: bool = False
    resumes: bool = False
    """Whether its title says no more than that all sizes go on after lines of some."""


@record
class Section:
    """A piece, edging, band or something joined off the bed (`joining`): `name` as in the plan, `title` for the reader
    ("Sleeves (knit 2)"), `copies` how often it is made in each size."""

    name: str
    title: str
    copies: tuple[int, ...]
    paragraphs: tuple[Paragraph, ...]
    joining: bool = False
    called: str = ""
    """As the title, where it stands in a sentence: "sleeve"."""
    link: bool = False
    """What is done on the bed to join edges."""

    @property
    def most(self) -> int:
        """How often it is made in the size that needs most of it: each line has a box for so many."""
        return max(self.copies)

    @property
    def sentences(self) -> tuple[Sentence, ...]:
        return tuple(s for p in self.paragraphs for s in p.sentences)


@record
class ChartNote:
    """A plain sentence beside a chart."""

    kind: NoteKind
    text: str


@record
class ChartText:
    """A chart as the plain text has it: `rows` from the bottom up, a character a needle; `key` (symbol, what is done), the symbols
    that occur, in the author's order; `notes`: which side faces, the repeat, how the yarns are laid."""

    name: str
    title: str
    rows: tuple[str, ...]
    before: int
    repeat: int
    after: int
    picture: bool
    key: tuple[tuple[str, str], ...]
    notes: tuple[ChartNote, ...]


@record
class Instructions:
    """Everything a knitter works from, graded over `sizes`; the sections in the order of work."""

    sizes: tuple[str, ...]
    sections: tuple[Section, ...]
    abbreviations: tuple[tuple[str, str], ...]
    """(abbreviation, meaning) of those that occur, in the language's order."""
    charts: tuple[ChartText, ...] = ()
    """Those that the sections work, in the order of the source."""
    in_columns: tuple[tuple[str, str], ...] = ()
    """Further abbreviations, which columns of a table say in full."""
