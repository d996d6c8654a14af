"""A printed chart as a knitter understands it: strips laid together, what is repeated, and a meaning for every symbol.

Everything comes from the chart's own section of the text. The rows are given from the top down there, and kept from the
bottom up here, as they are knitted.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Literal

from walewright.readback.language import ReadLanguage
from walewright.readback.layout import Printed, PrintedSheet
from walewright.readback.phrases import ReadPhrase
from walewright.readback.sentences import Unreadable, chart_line, meaning
from walewright.record import record
from walewright.report.said import Fact, Said, said

MarkKind = Literal[
    "knit",
    "hole",
    "left",
    "right",
    "onto left",
    "onto right",
    "onto both",
    "purl",
    "tuck",
    "slip",
    "long",
    "ladder",
    "cross",
    "by hand",
    "lay",
]
"""left, right: the neighbour's loop comes, the own one goes | onto left, onto right, onto both: the neighbours' come on top |
cross: one group over the other | by hand: in a yarn of its own | lay: in blocks."""


@record
class Mark:
    """What a symbol asks of one needle for one row. kind: "knit", "hole", "left" or "right" (the neighbour's loop comes, the own
    one goes), "onto left" or "onto right" (the neighbour's comes on top; from the left, from the right), "onto both", "purl",
    "tuck", "slip", "long", "ladder", "cross" (`half` over `half`, the group `first` hung first), "by hand" and "lay" (with `yarn`;
    of "lay", empty: the yarn in use)."""

    symbol: str
    kind: MarkKind
    yarn: str = ""
    half: int = 0
    first: str = ""
    stage: int = 0
    """Of purl marks: a column of so many is latched up and goes on; 0: none is."""


@record
class ReadChart:
    """`rows` from the bottom up. `before` columns, then `repeat` that are worked again and again (0: none, worked once), then
    `after`. `picture`: laid by hand, block by block."""

    name: str
    rows: tuple[tuple[Mark, ...], ...]
    before: int
    repeat: int
    after: int
    picture: bool

    @property
    def in_yarns(self) -> bool:
        """Whether any mark names a yarn."""
        return any(mark.yarn for row in self.rows for mark in row)


@record
class Wrong:
    """`code` of a diagnostic, what is wrong, and where: characters `start`..`end` of the text."""

    code: str
    why: Said
    start: int
    end: int


_ROW = re.compile(r" *([0-9]{1,4}) \| (\S(?: \S)*) \| ([0-9]{1,4})")
_RULER = re.compile(r" *[0-9][0-9 ]*")


@dataclass(slots=True)
class _Strip:
    """Columns `first`..`last` of `of`, from 1; `rows` by their number."""

    first: int
    last: int
    of: int
    shared: int
    place: Printed
    rows: dict[int, tuple[str, Printed]]


class _Fault(Exception):
    def __init__(self, key: str, place: Printed, code: str = "words-contradict", **facts: Fact) -> None:
        super().__init__(key)
        self.wrong = Wrong(code, said(key, **facts), place.start, place.end)


def drawing(sheet: PrintedSheet, language: ReadLanguage) -> ReadChart | Wrong:
    """The chart of a section, or the first thing that is wrong with it."""
    try:
        return _drawn(sheet, language)
    except _Fault as fault:
        return fault.wrong


def _drawn(sheet: PrintedSheet, language: ReadLanguage) -> ReadChart:
    layout = language.layout
    strips: list[_Strip] = []
    told: list[tuple[str, ReadPhrase, Printed]] = []
    for line in sheet.lines:
        if (found := layout.strip.fullmatch(line.words)) is not None:
            strips.append(_strip(found, line, strips))
        elif layout.told.match(line.words) is not None:
            told.append(_told(line, language))
        elif (row := _ROW.fullmatch(line.words)) is not None and strips:
            _into(strips[-1], row, line)
        elif _RULER.fullmatch(line.words) is not None and strips:
            _measured(strips[-1], line)
        else:
            raise _Fault("contradiction/strange-line", line, "words-unreadable")
    title = Printed(sheet.name, sheet.start, sheet.end)
    grid = _laid_together(strips, title)
    meanings, picture = _key(told, title)
    before, repeat = _repeated(told, grid, title)
    marks = tuple(tuple(_mark(symbol, meanings, place) for symbol in row) for row, place in grid)
    after = len(grid[0][0]) - before - repeat if repeat else 0
    return ReadChart(sheet.name, marks, before, repeat, after, picture)


# ----------------------------------------------------------------- the grid


def _strip(found: re.Match[str], line: Printed, strips: list[_Strip]) -> _Strip:
    first, last, of = (int(found[n]) for n in ("first", "last", "width"))
    before = strips[-1] if strips else None
    begin, end = (int(found["again"]), int(found["before"])) if found["again"] else (first, first - 1)
    if not 1 <= first <= last <= of or (before is not None and before.of != of):
        raise _Fault("contradiction/columns-beyond-chart", line)
    if begin != first or end != (before.last if before is not None else 0) or end < first - 1 or end >= last:
        raise _Fault("contradiction/columns-not-going-on", line)
    return _Strip(first, last, of, end - begin + 1, line, {})


def _into(strip: _Strip, row: re.Match[str], line: Printed) -> None:
    number, cells = int(row[1]), row[2][::2]
    if row[3] != row[1]:
        raise _Fault("contradiction/row-numbers-differ", line, left=row[1], right=row[3])
    if len(cells) != strip.last - strip.first + 1:
        raise _Fault("contradiction/symbols-for-columns", line, symbols=len(cells), columns=strip.last - strip.first + 1)
    if strip.rows and number != min(strip.rows) - 1:
        raise _Fault("contradiction/rows-out-of-order", line, number=number, above=min(strip.rows))
    strip.rows[number] = (cells, line)


def _measured(strip: _Strip, line: Printed) -> None:
    """Every number of a ruler ends above its column. Where that is goes by the frame, which is as wide as the rows' numbers."""
    if not strip.rows:
        strip.place = Printed(strip.place.words, strip.place.start, line.end)
    numbers = [(int(m[0]), m.end()) for m in re.finditer(r"[0-9]+", line.words)]
    number, end = numbers[0]
    for other, place in numbers:
        if place - end != 2 * (other - number) or not strip.first <= other <= strip.last:
            raise _Fault("contradiction/column-number-off", line, other=other)


def _laid_together(strips: list[_Strip], title: Printed) -> list[tuple[str, Printed]]:
    """The rows of the whole width from the bottom up, each with its place in the last strip."""
    if not strips or not strips[0].rows:
        raise _Fault("contradiction/no-rows", title)
    if strips[-1].last != strips[-1].of:
        raise _Fault("contradiction/chart-ends-early", strips[-1].place, last=strips[-1].last, width=strips[-1].of)
    numbers = set(strips[0].rows)
    if min(numbers) != 1:
        raise _Fault("contradiction/lowest-row", strips[0].rows[min(numbers)][1], lowest=min(numbers))
    grid: list[tuple[str, Printed]] = []
    for strip in strips:
        if set(strip.rows) != numbers:
            missing = min(numbers ^ set(strip.rows))
            raise _Fault("contradiction/row-missing-in-strip", strip.place, missing=missing)
    for number in sorted(numbers):
        whole, place = "", title
        for strip in strips:
            cells, place = strip.rows[number]
            shared = cells[: strip.shared]
            if shared and whole[-strip.shared :] != shared:
                raise _Fault("contradiction/strips-disagree", place, number=number)
            whole += cells[strip.shared :]
        grid.append((whole, place))
    return grid


# ----------------------------------------------------------------- the words beside it


def _told(line: Printed, language: ReadLanguage) -> tuple[str, ReadPhrase, Printed]:
    """(symbol, what is said of it); the symbol is empty for what is said of the whole chart."""
    key = language.layout.key.match(line.words)
    told = meaning(line.words[key.end() :], language) if key is not None else chart_line(line.words, language)
    if isinstance(told, Unreadable):
        raise _Fault("contradiction/words-beside-chart", line, "words-unreadable")
    return key["symbol"] if key is not None else "", told, line


def _key(told: list[tuple[str, ReadPhrase, Printed]], title: Printed) -> tuple[dict[str, Mark], bool]:
    picture = any(phrase.kind == "by_blocks" for _, phrase, _ in told)
    meanings: dict[str, Mark] = {}
    for symbol, phrase, line in told:
        if not symbol:
            continue
        if symbol in meanings:
            raise _Fault("contradiction/two-meanings", line, symbol=symbol)
        mark = _meaning(symbol, phrase, line)
        if (mark.kind == "lay") != picture:
            raise _Fault("contradiction/yarns-laid", line)
        meanings[symbol] = mark
    if not meanings:
        raise _Fault("contradiction/no-key", title)
    return meanings, picture


_PLAIN: Mapping[str, MarkKind] = {
    "hole": "hole",
    "three": "onto both",
    "knit": "knit",
    "purl": "purl",
    "tuck": "tuck",
    "slip": "slip",
    "long": "long",
}


def _meaning(symbol: str, phrase: ReadPhrase, line: Printed) -> Mark:
    words: tuple[Any, ...] = phrase.arguments
    match phrase.kind:
        case "knit_by_hand":
            return Mark(symbol, "by hand", words[0])
        case "lay":
            return Mark(symbol, "lay", words[0])
        case "lay_in_use":
            return Mark(symbol, "lay")
        case "from_side":
            if words[0] == words[1]:
                raise _Fault("contradiction/both-to-one-side", line)
            return Mark(symbol, words[0])
        case "two_from":
            return Mark(symbol, "onto left" if words[0] == "left" else "onto right")
        case "ladder":
            return Mark(symbol, "ladder")
        case "purl_in_stages":
            return Mark(symbol, "purl", stage=words[0])
        case "cross":
            both, left, right, first = words
            if left != right or both != left + right or left < 1:
                raise _Fault("contradiction/halves", line, left=left, right=right, both=both)
            return Mark(symbol, "cross", "", left, first)
    if phrase.kind not in _PLAIN:
        raise _Fault("contradiction/no-meaning", line)
    return Mark(symbol, _PLAIN[phrase.kind])


def _repeated(told: list[tuple[str, ReadPhrase, Printed]], grid: list[tuple[str, Printed]], title: Printed) -> tuple[int, int]:
    """The columns before those repeated, and the number of these."""
    lines = [(phrase, line) for _, phrase, line in told if phrase.kind in ("repeated", "worked_once")]
    if len(lines) != 1:
        raise _Fault("contradiction/repeat-not-told-once", title)
    ((phrase, line),) = lines
    width, height = len(grid[0][0]), len(grid)
    words: tuple[Any, ...] = phrase.arguments
    if phrase.kind == "worked_once":
        if words != (width, height):
            raise _Fault("contradiction/size-of-chart", line, width=width, height=height)
        return 0, 0
    (first, last), *beside, rows = words
    if rows != (1, height):
        raise _Fault("contradiction/rows-of-chart", line, height=height)
    if not 1 <= first <= last <= width:
        raise _Fault("contradiction/columns-of-chart", line, width=width)
    there = list(_beside(first, last, width))
    if [(p.kind, p.arguments[0]) for p in beside] != there:
        raise _Fault("contradiction/columns-beside-repeat", line)
    return first - 1, last - first + 1


def _beside(first: int, last: int, width: int) -> Iterator[tuple[str, tuple[int, int]]]:
    if first > 1:
        yield "once_left", (1, first - 1)
    if last < width:
        yield "once_right", (last + 1, width)


def _mark(symbol: str, meanings: dict[str, Mark], place: Printed) -> Mark:
    if symbol not in meanings:
        raise _Fault("contradiction/not-in-key", place, "words-unreadable", symbol=symbol)
    return meanings[symbol]
