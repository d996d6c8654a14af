"""The layout pass: a text becomes lines with their indentation, their content and their comment.

Nothing is known here of what a line says but where its texts in quotes begin and end, for a `#` inside them is no comment.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator

from walewright.record import record, replace
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.source.text import ESCAPES

TAB_COLUMNS = 4
"""Columns that a tab is taken for, after it has been reported, so that its line still joins a block."""

_BLANKS = re.compile(r"[^\S\n-\r\x1c-\x1f\x85\u2028\u2029]*")
_CODE = re.compile(r'(?:[^"#]|"(?:\\.|[^"\\])*")*')
_TEXT = re.compile(r'"(?:\\.|[^"\\])*"')
_BACKSLASH = re.compile(r"\\(.)")

TURNS_DIRECTION = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
"""Letters that make a line look other than it reads."""


@record
class SourceLine:
    """A line that says something. `start` is where its content begins in the file; `column` how far it is indented.

    `content` has no comment and no blanks around it. Where `readable` is False, the line has been reported already."""

    start: int
    column: int
    content: str
    comment: str | None = None
    readable: bool = True
    tabbed: bool = False
    """Whether a tab indents it; `column` is then a guess."""

    def span(self, file: str) -> Span:
        """Where the content stands."""
        return Span(file, self.start, self.start + len(self.content))


def laid_out(file: str, text: str) -> tuple[tuple[SourceLine, ...], tuple[Diagnostic, ...]]:
    """Every line of `text` that is not blank, in order, and what is wrong with its letters."""
    lines: list[SourceLine] = []
    told: list[Diagnostic] = []
    position = 0
    for raw in text.split("\n"):
        start, position = position, position + len(raw) + 1
        if start == 0 and raw.startswith("\ufeff"):
            # A byte order mark that an editor left: no part of the source.
            raw, start = raw[1:], 1
        line, faults = _line(file, raw.removesuffix("\r"), start)
        told += faults
        if line is not None:
            lines.append(line)
    tabbed = [line for line in lines if line.tabbed]
    if tabbed:
        told.append(_tabs(file, text, tabbed))
    return tuple(lines), tuple(told)


def _line(file: str, raw: str, start: int) -> tuple[SourceLine | None, list[Diagnostic]]:
    blank = _BLANKS.match(raw)
    indent = blank[0] if blank else ""
    content = raw[len(indent) :]
    if not content:
        return None, []
    column = len(indent.replace("\t", " " * TAB_COLUMNS))
    line = SourceLine(start + len(indent), column, content, tabbed="\t" in indent)
    fault = _unfit(file, line)
    if fault is not None:
        return replace(line, content=content.strip() or "?", readable=False), [fault]
    code = _CODE.match(content)
    assert code is not None
    rest = content[code.end() :]
    if rest.startswith('"'):
        place = Span(file, line.start + code.end(), line.start + len(content.rstrip()))
        return replace(line, content=content.rstrip(), readable=False), [_unclosed(place)]
    line = replace(line, content=code[0].rstrip(), comment=_comment(rest) if rest else None)
    return line, list(_unknown_escapes(file, line))


def _comment(written: str) -> str:
    """What a comment says: without its `#` and the one blank after it."""
    return written[1:].rstrip().removeprefix(" ")


def _unfit(file: str, line: SourceLine) -> Diagnostic | None:
    """The first letter of the line that no text has."""
    if line.content.isprintable():
        return None
    for index, letter in enumerate(line.content):
        kind = unicodedata.category(letter)
        if (kind in ("Cc", "Cs", "Zl", "Zp") and letter != "\t") or letter in TURNS_DIRECTION:
            place = Span(file, line.start + index, line.start + index + 1)
            kind = "control-character/turns" if letter in TURNS_DIRECTION else "control-character/no-letter"
            return diagnosed(kind, (place, "invisible"), helps=("delete",), letter=ord(letter))
    return None


def _unclosed(place: Span) -> Diagnostic:
    return diagnosed("unclosed-text", (place, "to-end"), notes=("quotes",), helps=("close",))


def _unknown_escapes(file: str, line: SourceLine) -> Iterator[Diagnostic]:
    for text in _TEXT.finditer(line.content):
        for found in _BACKSLASH.finditer(text[0]):
            if found[1] not in ESCAPES:
                place = line.start + text.start() + found.start()
                yield diagnosed(
                    "unknown-escape",
                    (Span(file, place, place + 2), "text"),
                    notes=("known",),
                    helps=("double",),
                    letter=found[1],
                )


def _tabs(file: str, text: str, lines: list[SourceLine]) -> Diagnostic:
    further = len(lines) - 1
    tab = text.rindex("\t", 0, lines[0].start)
    return diagnosed(
        "tab-indent",
        (Span(file, tab, tab + 1), "tab"),
        notes=("further",) if further else (),
        helps=("spaces",),
        columns=TAB_COLUMNS,
        further=further,
    )


def empty(file: str) -> Diagnostic:
    """For a text without a statement."""
    return diagnosed("empty-source", (Span(file, 0, 0), "nothing"), helps=("title",))
