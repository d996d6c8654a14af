"""The steps as plain text: to work from on paper without the drawings, and to be read back.

A section is underlined with `=`, a small title with `-`; each line has a box to tick for every piece knitted alike, or a
hyphen where it only states something. Lines that are too long go on indented. Charts stand before the pieces. Rows of a
table stand in columns where they are narrow enough, as in a copy for one size; else the counter's values stand on a line of
their own.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator

from walewright.write.grading import bracketed
from walewright.write.grid import grid_lines
from walewright.write.model import Cells, ChartText, Instructions, Manner, NoteKind, Paragraph, Run, Section, Sentence
from walewright.write.sections import heading

WIDTH = 92
_MOST_BOXES = 4
_GAP = "  "
_NARROW = 20
_GRADED = re.compile(r"(?:RC )?(?:\d+|CO[LR]|–)(?: \([^()]*\))?")
_COUNTED = re.compile(
    r"(?<=[\d)]) (?=(?:sts?|rows?|times?|loops?|mm)\b)"
    r"|(?<=RC) |(?<=st) (?=in\b)|(?<=sts) (?=in\b)|(?<=,) (?=CO[LR]\b)"
)
_READ_BACK = (NoteKind.REPEAT, NoteKind.WAY)
"""Notes that stand below a chart, with its key: its reader needs them."""

_KEPT = "\N{NARROW NO-BREAK SPACE}"
"""Where a line is not broken. It is printed as a plain space; the spaces within names are not."""


def plain_text(instructions: Instructions) -> str:
    """The instructions' text, in the order of work. Lines have up to 92 characters, as far as words allow."""
    made = [f"Sizes {bracketed(instructions.sizes)}", ""]
    for chart in instructions.charts:
        made += _chart(chart)
    for section in instructions.sections:
        made += _section(section, section.title if section.joining else heading(section.name, section.copies))
    return "\n".join(made).rstrip("\n") + "\n"


def _chart(chart: ChartText) -> Iterator[str]:
    """The notes, the grid, and then one line for what is repeated, the way of a picture and each symbol."""
    yield from (chart.title, "=" * len(chart.title), "")
    told = [note.text for note in chart.notes if note.kind in _READ_BACK]
    for note in chart.notes:
        if note.kind not in _READ_BACK:
            yield from _wrapped(f"Note: {note.text}", "-   ")
    yield ""
    yield from grid_lines(chart)
    for line in (*told, *(f"Key: {symbol}  {words}." for symbol, words in chart.key)):
        yield from textwrap.wrap(line, WIDTH, subsequent_indent="    ", break_long_words=False, break_on_hyphens=False)
    yield ""


def _section(section: Section, title: str) -> Iterator[str]:
    yield from (title, "=" * len(title), "")
    for paragraph in section.paragraphs:
        yield from _paragraph(paragraph, section.copies)


def _paragraph(paragraph: Paragraph, copies: int) -> Iterator[str]:
    if paragraph.title:
        yield from (paragraph.title, "-" * len(paragraph.title))
    if paragraph.only:
        yield from (paragraph.only, "")
    rows = _table_rows([s.cells for s in paragraph.sentences if s.cells], _mark(copies))
    for sentence in paragraph.sentences:
        if sentence.cells is None:
            yield from _wrapped(_unbroken(sentence), "-   " if sentence.check else _mark(copies))
        else:
            yield from next(rows)
    yield ""


def _mark(copies: int) -> str:
    return "[ ] " * min(copies, _MOST_BOXES)


def _table_rows(rows: list[Cells], mark: str) -> Iterator[list[str]]:
    """The lines of each row of a table: in columns where they are narrow enough for that, else what is done stands beside the
    counter's values; under them where these are many."""
    texts = [_texts(cells) for cells in rows]
    row, stitches = (max((len(t[i]) for t in texts), default=0) for i in (0, 2))
    room = WIDTH - len(mark) - row - stitches - 2 * len(_GAP)
    what = max((len(b) for _, b, _ in texts if len(b) <= room), default=0)
    for a, b, c in texts:
        if row > _NARROW:
            made = [mark + a, *_wrapped(f"{b} {c}", " " * len(mark))]
        elif len(b) <= what:
            made = [f"{mark}{a:<{row}}{_GAP}{b:<{what}}{_GAP}{c:>{stitches}}"]
        else:
            head = f"{mark}{a:<{row}}{_GAP}"
            first, *more = _wrapped(f"{b} {c}", " " * len(head))
            made = [head + first[len(head) :], *more]
        yield [line.replace(_KEPT, " ") for line in made]


def _texts(cells: Cells) -> tuple[str, str, str]:
    """The cells with the signs between them: "RC 34:", "decrease 1 st at both ends;", "80 sts."."""
    row, what, stitches = (_COUNTED.sub(_KEPT, _kept(cell)) for cell in (cells.row, cells.what, cells.stitches))
    return f"RC{_KEPT}{row}:", f"{what[:1].lower()}{what[1:]};", f"{stitches}."


def _wrapped(text: str, mark: str) -> list[str]:
    return [
        line.replace(_KEPT, " ")
        for line in textwrap.wrap(
            text,
            WIDTH,
            initial_indent=mark,
            subsequent_indent=" " * len(mark),
            break_long_words=False,
            break_on_hyphens=False,
        )
    ]


def _unbroken(sentence: Sentence) -> str:
    """The text with graded numbers, and what they count, kept on one line."""
    if sentence.manner is not Manner.STEPS:
        return sentence.text
    return _COUNTED.sub(_KEPT, _kept(sentence.runs))


def _kept(runs: tuple[Run, ...]) -> str:
    return "".join(
        run.text.replace(" ", _KEPT)
        if run.kind in ("number", "needle")
        else _GRADED.sub(lambda m: m[0].replace(" ", _KEPT), run.text)
        if run.kind == "check"
        else run.text
        for run in runs
    )
