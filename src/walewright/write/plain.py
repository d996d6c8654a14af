"""The steps as plain text: to work from on paper without the drawings, and to be read back.

A section is underlined with `=`, a small title with `-`; each line has a box to tick for every piece knitted alike, round where
it is in the author's own words, or a hyphen where it only states something. Lines that are too long go on indented. Charts
stand before the pieces. Rows of a table stand in columns where they are narrow enough, as in a copy for one size; else the
counter's values stand on a line of their own.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator

from walewright.report.said import said
from walewright.report.wording import phrased
from walewright.write.grid import grid_lines
from walewright.write.language import PrintedLanguage
from walewright.write.model import Abbreviation, Cells, ChartText, Instructions, Manner, NoteKind, Paragraph, Run, Section, Sentence
from walewright.write.repeated import label
from walewright.write.said import small, spelt
from walewright.write.table import in_columns

WIDTH = 92
_MOST_BOXES = 8
"""Pairs of brackets before a line; those of more copies stand beneath it."""
_GAP = "  "
_NARROW = 20
_READ_BACK = (NoteKind.REPEAT, NoteKind.WAY)
"""Notes that stand below a chart, with its key: its reader needs them."""

_KEPT = "\N{NARROW NO-BREAK SPACE}"
"""Where a line is not broken. It is printed as a plain space; the spaces within names are not."""


def plain_text(instructions: Instructions, language: PrintedLanguage) -> str:
    """The instructions' text, in the order of work. Lines have up to 92 characters, as far as words allow."""
    made = [phrased(said("sizes", sizes=language.bracketed(tuple(map(spelt, instructions.sizes)))), language.prose), ""]
    for chart in instructions.charts:
        made += _chart(chart, language)
    for section in instructions.sections:
        made += _section(section, language)
    return "\n".join(made).rstrip("\n") + "\n"


def _chart(chart: ChartText, language: PrintedLanguage) -> Iterator[str]:
    """The notes, the grid, and then one line for what is repeated, the way of a picture and each symbol."""
    yield from (chart.title, "=" * len(chart.title), "")
    told = [note.text for note in chart.notes if note.kind in _READ_BACK]
    for note in chart.notes:
        if note.kind not in _READ_BACK:
            yield from _wrapped(phrased(said("note", text=note.text), language.prose), "-   ")
    yield ""
    yield from grid_lines(chart, language)
    meanings = (phrased(said("key", symbol=symbol, words=words), language.prose) for symbol, words in chart.key)
    for line in (*told, *meanings):
        yield from textwrap.wrap(line, WIDTH, subsequent_indent="    ", break_long_words=False, break_on_hyphens=False)
    yield ""


def _section(section: Section, language: PrintedLanguage) -> Iterator[str]:
    yield from (section.title, "=" * len(section.title), "")
    width = len(str(max((n for s in section.sentences for n in s.numbers), default=0)))
    for paragraph in section.paragraphs:
        yield from _paragraph(paragraph, section.most, width, language)


def _paragraph(paragraph: Paragraph, copies: int, width: int, language: PrintedLanguage) -> Iterator[str]:
    """`width` is that of a step's number."""
    if paragraph.title:
        yield from (paragraph.title, "-" * len(paragraph.title))
    if paragraph.only:
        yield from (paragraph.only, "")
    marks = [_mark(sentence, copies, width, language) for sentence in paragraph.sentences]
    in_table = [(s.cells, mark) for s, mark in zip(paragraph.sentences, marks, strict=True) if s.cells]
    rows = _table_rows(in_table, language)
    for sentence, mark in zip(paragraph.sentences, marks, strict=True):
        if sentence.cells is None:
            yield from _wrapped(_unbroken(sentence, language), mark)
            for _ in range(copies if sentence.ticks else 0):
                yield from _wrapped(" ".join(f"[{number}]" for number in sentence.ticks), " " * len(mark))
        else:
            yield from next(rows)
        if copies > _MOST_BOXES and not sentence.check:
            yield from _wrapped(" ".join([_pair(sentence)] * (copies - _MOST_BOXES)), " " * len(mark))
    yield ""


def _mark(sentence: Sentence, copies: int, width: int, language: PrintedLanguage) -> str:
    """What stands before a line: a hyphen where it only states something, else boxes and the step's number, if it has one."""
    if sentence.check:
        return "-   "
    boxes = f"{_pair(sentence)} ".replace(_KEPT, " ") * min(copies, _MOST_BOXES)
    return f"{boxes}{label(sentence, language):>{width}}. " if sentence.numbers else boxes


def _pair(sentence: Sentence) -> str:
    """A pair of brackets to tick a line off."""
    return f"({_KEPT})" if sentence.manner is Manner.BY_HAND else f"[{_KEPT}]"


def _table_rows(rows: list[tuple[Cells, str]], language: PrintedLanguage) -> Iterator[list[str]]:
    """The lines of each row of a table behind its mark: in columns where they are narrow enough for that, else what is done stands
    beside the counter's values; under them where these are many."""
    texts = [_texts(cells, language) for cells, _ in rows]
    mark = max((mark for _, mark in rows), key=len, default="")
    row, stitches = (max((len(t[i]) for t in texts), default=0) for i in (0, 2))
    room = WIDTH - len(mark) - row - stitches - 2 * len(_GAP)
    what = max((len(b) for _, b, _ in texts if len(b) <= room), default=0)
    for (a, b, c), (_, mark) in zip(texts, rows, strict=True):
        if row > _NARROW:
            made = [mark + a, *_wrapped(f"{b} {c}", " " * len(mark))]
        elif len(b) <= what:
            made = [f"{mark}{a:<{row}}{_GAP}{b:<{what}}{_GAP}{c:>{stitches}}"]
        else:
            head = f"{mark}{a:<{row}}{_GAP}"
            first, *more = _wrapped(f"{b} {c}", " " * len(head))
            made = [head + first[len(head) :], *more]
        yield [line.replace(_KEPT, " ") for line in made]


def _texts(cells: Cells, language: PrintedLanguage) -> tuple[str, str, str]:
    """The cells with the signs between them: "RC 34:", "decrease 1 st at both ends;", "80 sts."."""
    columns = in_columns(cells.at, small(cells.what), cells.stitches, language)
    row, what, stitches = (language.unbroken.sub(_KEPT, _kept(column, language)) for column in columns)
    return row, what, stitches


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


def _unbroken(sentence: Sentence, language: PrintedLanguage) -> str:
    """The text with graded numbers, and what they count, kept on one line."""
    if sentence.manner is not Manner.STEPS:
        return sentence.text
    return language.unbroken.sub(_KEPT, _kept(sentence.runs, language))


def _figures(language: PrintedLanguage) -> re.Pattern[str]:
    """Graded numbers and carriages in what must be true."""
    counter, *others = (
        re.escape(language.short(a)) for a in (Abbreviation.RC, Abbreviation.COL, Abbreviation.COR, Abbreviation.SKIPPED)
    )
    opening, closing = re.escape(language.marks.opening), re.escape(language.marks.closing)
    return re.compile(rf"(?:{counter} )?(?:\d+|{'|'.join(others)})(?:{opening}[^()]*{closing})?")


def _kept(runs: tuple[Run, ...], language: PrintedLanguage) -> str:
    figures = _figures(language)
    return "".join(
        run.text.replace(" ", _KEPT)
        if run.kind in ("number", "needle")
        else figures.sub(lambda m: m[0].replace(" ", _KEPT), run.text)
        if run.kind == "check"
        else run.text
        for run in runs
    )
