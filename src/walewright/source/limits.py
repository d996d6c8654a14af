"""What no line goes beyond: how deep expressions are nested, and how long a line is without its texts.

Later stages walk expressions by recursion, and an editor reads every line again and again; both want a bound.
"""

from __future__ import annotations

import re

from walewright.report.model import Diagnostic, Span, diagnosed

DEEPEST = 100
"""Levels of brackets, or of operations inside one another."""

LONGEST = 1000
"""Characters of a line, its texts not counted. Thirty sizes or ten levels need less than half of it."""

MOST_LINES = 5000
MOST_CHARACTERS = 400_000
"""Of a source. The longest garment that is shipped has 150 lines; a chart as wide and as high as a bed has 300,000 characters."""

CHART_ROW = "|"
"""A line that begins so is a row of a chart, in which a bracket is a symbol like any other."""

_TEXT = re.compile(r'"(?:\\.|[^"\\])*"')
_TEXT_OR_BRACKET = re.compile(rf"{_TEXT.pattern}|[()]")


def too_long(file: str, text: str) -> Diagnostic | None:
    """What is wrong with a source before anybody looks at its lines."""
    lines = text.count("\n") + 1
    if lines <= MOST_LINES and len(text) <= MOST_CHARACTERS:
        return None
    kind = "source-too-long/lines" if lines > MOST_LINES else "source-too-long/characters"
    count, most = (lines, MOST_LINES) if lines > MOST_LINES else (len(text), MOST_CHARACTERS)
    return diagnosed(kind, (Span(file, 0, 0), "begins"), helps=("divide",), count=count, most=most)


def beyond_limits(content: str, span: Span) -> Diagnostic | None:
    """What is wrong with a line before anybody tries to read it."""
    if len(content) <= DEEPEST:
        return None
    bracket = _bracket_beyond(content) if not content.startswith(CHART_ROW) else None
    if bracket is not None:
        return too_deep(Span(span.file, span.start + bracket, span.start + bracket + 1))
    length = len(_TEXT.sub("", content))
    if length > LONGEST:
        return diagnosed(
            "line-too-long",
            (Span(span.file, span.start, span.start + 1), "begins"),
            helps=("one-statement",),
            length=length,
            most=LONGEST,
        )
    return None


def too_deep(span: Span) -> Diagnostic:
    """For what begins at the level that is one too many."""
    return diagnosed("too-deep", (span, "deeper"), helps=("name-parts",), most=DEEPEST)


def _bracket_beyond(content: str) -> int | None:
    open_brackets = 0
    for found in _TEXT_OR_BRACKET.finditer(content):
        open_brackets += {"(": 1, ")": -1}.get(found[0], 0)
        if open_brackets > DEEPEST:
            return found.start()
    return None
