"""The layout of the printed text: sizes, charts, sections, heads over lines for some sizes, and lines put together again."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from walewright.readback.language import PageLayout, ReadLanguage
from walewright.readback.tokens import as_name, sizes_named
from walewright.record import record, replace

_MARK = re.compile(r"(?:\[ \] )+|(?P<own>(?:\( \) )+)|- {3}")

_TICKS = re.compile(r" {4,}(?:\[[0-9]{1,4}\] ?)+")
"""What is ticked off below a line, number by number."""

_BOXES = re.compile(r" {4,}(?:\[ \] ?|\( \) ?)+")
"""The boxes of more copies than have theirs before the line."""


@record
class PrintedLine:
    """One line to read, as characters `start`..`end` of the text have it; `only` names the sizes it is for, None for all.
    `first` and `last` are the numbers of the steps that it stands for, as printed; without one that after the last. 0 for a line
    that is not ticked off."""

    words: str
    only: frozenset[str] | None
    start: int
    end: int
    own: bool = False
    """In the author's own words: its box is round."""
    first: int = 0
    last: int = 0
    ticks: tuple[int, ...] = ()
    """What is ticked off below it, number by number, once for each box."""


@record
class PrintedSection:
    """`name` and `copies` as the heading tells them, one number for all sizes or one for each; under a heading of `joining` things
    are put together off the bed. Characters `start`..`end` are the heading."""

    name: str
    copies: tuple[int, ...]
    lines: tuple[PrintedLine, ...]
    start: int
    end: int
    joining: bool = False


@record
class Printed:
    """A line of a chart's section as it is printed, its continuations put to it; characters `start`..`end` of the text."""

    words: str
    start: int
    end: int


@record
class PrintedSheet:
    """The section of a chart, without its notes. Characters `start`..`end` are the heading."""

    name: str
    lines: tuple[Printed, ...]
    start: int
    end: int


@record
class PrintedText:
    """The whole text. `strange` are the places (start, end) of lines that are nothing of what a text is made of."""

    sizes: tuple[str, ...]
    sheets: tuple[PrintedSheet, ...]
    sections: tuple[PrintedSection, ...]
    strange: tuple[tuple[int, int], ...]


@dataclass(slots=True)
class _Open:
    """What has been read of a section so far."""

    heading: str
    start: int
    lines: list[PrintedLine]
    only: frozenset[str] | None = None
    chart: str = ""
    """The chart's name, if the section is one's."""
    printed: list[Printed] = field(default_factory=list)
    in_note: bool = False


def laid_out(text: str, language: ReadLanguage) -> PrintedText:
    """The parts of a printed text. Never fails: what it cannot place is in `strange`."""
    layout = language.layout
    rows = text.split("\n")
    sizes: tuple[str, ...] = ()
    opened: list[_Open] = []
    strange: list[tuple[int, int]] = []
    at = 0
    going_on = False
    for number, row in enumerate(rows):
        start, at = at, at + len(row) + 1
        under = rows[number + 1] if number + 1 < len(rows) else ""
        here = opened[-1] if opened else None
        mark = _MARK.match(row)
        if going_on and here is not None and not here.chart and _TICKS.fullmatch(row):
            line = here.lines[-1]
            here.lines[-1] = replace(line, ticks=(*line.ticks, *map(int, re.findall(r"[0-9]+", row))), end=start + len(row))
            continue
        if going_on and _BOXES.fullmatch(row):
            continue
        if going_on and row.startswith("    ") and row.strip() and here is not None:
            _go_on(here, row, start + len(row))
            continue
        going_on = False
        if not row or _underlines(row, rows[number - 1] if number else ""):
            continue
        if _underlines(under, row, "="):
            chart = layout.chart.fullmatch(row)
            opened.append(_Open(row, start, [], chart=as_name(chart["name"]) if chart is not None else ""))
        elif here is not None and here.chart:
            going_on = _of_chart(here, row, start, layout)
        elif here is None:
            found = layout.sizes.fullmatch(row)
            if found is None or sizes:
                strange.append((start, start + len(row)))
            else:
                named = (found["first"], *(found["others"].split(language.between) if found["others"] else ()))
                sizes = tuple(map(as_name, named))
        elif _underlines(under, row, "-"):
            here.only = None
        elif some := layout.only.fullmatch(row):
            here.only = sizes_named(some["sizes"])
        elif mark is not None:
            here.lines.append(_line(here, row, mark, start, layout))
            going_on = True
        else:
            strange.append((start, start + len(row)))
    sheets = tuple(PrintedSheet(o.chart, tuple(o.printed), o.start, o.start + len(o.heading)) for o in opened if o.chart)
    return PrintedText(sizes, sheets, tuple(_section(o, language) for o in opened if not o.chart), tuple(strange))


def _line(here: _Open, row: str, mark: re.Match[str], start: int, layout: PageLayout) -> PrintedLine:
    """The line that begins here."""
    if row.startswith("-"):
        return PrintedLine(row[mark.end() :].strip(), here.only, start, start + len(row))
    found = layout.numbered.match(row, mark.end())
    words = row[found.end() if found is not None else mark.end() :].strip()
    if found is not None:
        first, last = int(found["first"]), int(found["last"] or found["first"])
    else:
        first = last = next((line.last for line in reversed(here.lines) if line.last), 0) + 1
    return PrintedLine(words, here.only, start=start, end=start + len(row), own=mark["own"] is not None, first=first, last=last)


def _of_chart(here: _Open, row: str, start: int, layout: PageLayout) -> bool:
    """Whether the next row, if it is indented, goes on with this one of a chart's section."""
    note = _MARK.match(row)
    here.in_note = note is not None and layout.note.match(row[note.end() :]) is not None
    if not here.in_note:
        here.printed.append(Printed(row, start, start + len(row)))
    return here.in_note or layout.told.match(row) is not None


def _go_on(here: _Open, row: str, end: int) -> None:
    """The row, which is indented, is put to the line before it."""
    if not here.chart:
        last = here.lines[-1]
        here.lines[-1] = replace(last, words=f"{last.words} {row.strip()}", end=end)
    elif not here.in_note:
        before = here.printed[-1]
        here.printed[-1] = Printed(f"{before.words} {row.strip()}", before.start, end)


def _underlines(row: str, above: str, by: str = "=-") -> bool:
    return bool(row) and len(row) == len(above) and any(row == sign * len(row) for sign in by)


def _section(opened: _Open, language: ReadLanguage) -> PrintedSection:
    found = language.layout.several.fullmatch(opened.heading)
    title, told = (found["name"], found["copies"]) if found else (opened.heading, "1")
    copies = tuple(int(n) for n in re.findall(r"[0-9]+", told))
    # A link is told by its edge behind a colon in some languages: that is no part of a band.
    runs = None if language.layout.link.fullmatch(title) else language.layout.part.fullmatch(title)
    title = runs["name"] if runs else title
    joining = language.layout.joining.fullmatch(opened.heading) is not None
    end = opened.start + len(opened.heading)
    return PrintedSection(section_name(title, language), copies, tuple(opened.lines), opened.start, end, joining)


def section_name(title: str, language: ReadLanguage) -> str:
    """The name that a heading tells, or what a sentence calls the section."""
    # A name in quotes is printed as it is; in a heading others had their first letter made a capital.
    quoted = len(title) > 2 and (title[0], title[-1]) == language.quotes
    capital = title[:1].upper() + title[1:]
    if quoted:
        return as_name(_linked(title[1:-1], language) or title[1:-1])
    return as_name(_linked(capital, language) or _begun_small(title, language))


def _begun_small(title: str, language: ReadLanguage) -> str:
    """The title with the first letter of the name that it tells."""
    first = re.split("[ \u00a0]", title, maxsplit=1)[0]
    own = language.small is not None and not language.small.fullmatch(first.lower())
    return title if own else title[:1].lower() + title[1:]


def _linked(title: str, language: ReadLanguage) -> str:
    """The name of the link that a heading tells, as all stages have it; nothing for other headings."""
    link = language.layout.link.fullmatch(title)
    if link is None:
        return ""
    number = f" {link['number']}" if link["number"] else ""
    edge = f"{link['edge']} {link['part']}" if link["part"] else link["edge"]
    return f"{link['owner']} {language.edge(edge)}{number} link"


def is_note(line: PrintedLine, language: ReadLanguage) -> bool:
    """Whether the line is the author's own words, which nothing follows from."""
    return line.own or language.layout.note.match(line.words) is not None
