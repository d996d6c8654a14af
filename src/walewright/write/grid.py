"""A chart as plain text: rows of symbols with their numbers, in strips where it is wider than the page, and its key in words."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.report.said import said
from walewright.write.language import PrintedLanguage
from walewright.write.model import ChartText
from walewright.write.said import prose

COLUMNS = 38
"""In one strip: with the row numbers at both ends they fit the page."""

OVERLAP = 4
"""Columns at the beginning of a strip that stand in the one before too, to lay the strips together by."""

_GROUP = 10
"""Rows between two gaps, so that the eye keeps its row."""

_NUMBERED = 5
"""Every so many columns the ruler has a number, and at the first and the last."""


def strips(width: int) -> tuple[tuple[int, int], ...]:
    """The columns of each strip, from 1, both included."""
    made = [(1, min(width, COLUMNS))]
    while made[-1][1] < width:
        first = made[-1][1] - OVERLAP + 1
        made.append((first, min(width, first + COLUMNS - 1)))
    return tuple(made)


def grid_lines(chart: ChartText, language: PrintedLanguage) -> Iterator[str]:
    """The strips of the chart from left to right, each from the top row down."""
    width = len(chart.rows[0])
    before = 0
    for first, last in strips(width):
        head = said("strip/again" if before else "strip", first=first, last=last, width=width, before=before)
        yield from (prose(head, language), "")
        yield from _strip(chart.rows, first, last)
        yield ""
        before = last


def _strip(rows: tuple[str, ...], first: int, last: int) -> Iterator[str]:
    digits = len(str(len(rows)))
    ruler = _ruler(first, last, digits + len(" | "))
    yield ruler
    for number in range(len(rows), 0, -1):
        cells = " ".join(rows[number - 1][first - 1 : last])
        yield f"{number:>{digits}} | {cells} | {number}"
        if number % _GROUP == 1 and number > 1:
            yield ""
    if len(rows) > _GROUP:
        yield ruler


def _ruler(first: int, last: int, indent: int) -> str:
    """Column numbers, the last figure of each above its column, as far as there is a blank between them."""
    line = ""
    for number in range(first, last + 1):
        begin = indent + 2 * (number - first) + 1 - len(str(number))
        if (number in (first, last) or number % _NUMBERED == 0) and (begin > len(line) or not line):
            line = line.ljust(begin) + str(number)
    return line
