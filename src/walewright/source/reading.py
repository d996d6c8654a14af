"""Reading a source: lines into statements, statements into blocks."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from walewright.report.model import Diagnostic, Label, Span
from walewright.report.near import near
from walewright.source import syntax
from walewright.source.build import built
from walewright.source.grammar import HEADERS, first_words, parsed
from walewright.source.layout import Line, empty, laid_out
from walewright.source.limits import beyond_limits
from walewright.source.unreadable import unreadable

BLOCK_INDENT = 4
"""Columns that a line of a block is indented when it is written anew."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A statement on its line: at the left margin (`inside` False) or in the block above it."""

    statement: syntax.Statement
    line: Line
    inside: bool


def read(file: str, text: str) -> tuple[syntax.Tree, tuple[Diagnostic, ...]]:
    """The tree of a source and everything that is wrong with its lines, in their order.

    There is always a tree: a line that cannot be read is one diagnostic and a `Broken` node; a line that opens a block
    opens it all the same, by what its first word says or nearly says. Spans count code points of `text`.
    """
    lines, told = laid_out(file, text)
    reader = _Reader(file)
    for line in lines:
        if line.content:
            reader.take(line)
    if not reader.entries:
        told = (*told, empty(file))
    diagnostics = sorted((*told, *reader.told), key=lambda d: d.labels[0].span.start)
    return syntax.Tree(file, tuple(_assembled(reader.entries)), _comments(lines, reader.entries)), tuple(diagnostics)


class _Reader:
    """Lines in, entries out. Remembers the block that is open: its kind, and how far its first line is indented."""

    def __init__(self, file: str) -> None:
        self.file = file
        self.entries: list[Entry] = []
        self.told: list[Diagnostic] = []
        self.kind: str | None = None
        self.indent: int | None = None
        self.lost = False
        """Whether the lines of the block go unread, because nobody knows what block it is."""

    def take(self, line: Line) -> None:
        """One line with content."""
        inside = self._inside(line)
        if not inside:
            self._take_outside(line)
        elif self.lost or self.kind is None:
            self._keep(syntax.Broken(line.content, span=line.span(self.file)), line, inside)
        else:
            self._take_as(self.kind, line, inside)

    def _take_outside(self, line: Line) -> None:
        first = _first(line)
        known = first_words("in_file")
        header = HEADERS.get(first if first in known else near(first, known) or "")
        self._take_as("in_file", line, False)
        broken = isinstance(self.entries[-1].statement, syntax.Broken)
        self.kind, self.indent = header, None
        # A line that nobody can guess at may have opened a block: what stands in it is then lost with it, silently.
        self.lost = broken and header is None and first not in known

    def _inside(self, line: Line) -> bool:
        """Whether the line belongs to the open block; tells of an indentation that does not fit."""
        file = self.file
        here = Span(file, line.start - min(line.column, 1), line.start) if line.column else line.span(file)
        if line.column == 0:
            if self.kind is not None and _first(line) not in first_words("in_file") and _reads(self.kind, line):
                self._indent_fault("this line belongs to the block above it and is not indented", here, "at the left margin")
                return True
            return False
        if self.kind is None and not self.lost:
            if line.tabbed:
                return False
            self._indent_fault("this line is indented, and no block is open here", here, f"indented {line.column}")
            return False
        if line.tabbed:
            # Told of as a tab; how far it was meant to indent nobody knows.
            return True
        if self.indent is None:
            self.indent = line.column
        elif line.column != self.indent and not self.lost:
            header = _first(line) in first_words("in_file") and not _reads(self.kind or "", line)
            self._indent_fault(
                "this line is not indented as the others of its block",
                here,
                f"indented {line.column}, the block {self.indent}",
            )
            return not header
        return True

    def _indent_fault(self, message: str, here: Span, label: str) -> None:
        helps = ("a line of a block is indented as the first line of the block; all others begin at the left margin",)
        self.told.append(Diagnostic("wrong-indent", message, (Label(here, label),), helps=helps))

    def _take_as(self, kind: str, line: Line, inside: bool) -> None:
        """Reads the line as one of that kind; a line that was told of before is not told of again."""
        span = line.span(self.file)
        told_before = any(d.code == "wrong-indent" and _on(d, line) for d in self.told[-1:])
        statement: syntax.Statement | Diagnostic | None = None
        if line.readable:
            statement = beyond_limits(line.content, span)
        if line.readable and statement is None:
            tree = parsed(kind, line.content)
            if tree is not None:
                statement = built(tree, self.file, line.start, span)
            elif not told_before:
                statement = unreadable(kind, line, self.file)
        if isinstance(statement, Diagnostic):
            self.told.append(statement)
            statement = None
        self._keep(statement or syntax.Broken(line.content, span=span), line, inside)

    def _keep(self, statement: syntax.Statement, line: Line, inside: bool) -> None:
        self.entries.append(Entry(statement, line, inside))


def _first(line: Line) -> str:
    return line.content.split(maxsplit=1)[0]


def _reads(kind: str, line: Line) -> bool:
    within = line.readable and beyond_limits(line.content, line.span("")) is None
    return within and bool(kind) and parsed(kind, line.content) is not None


def _on(diagnostic: Diagnostic, line: Line) -> bool:
    return line.start - 1 <= diagnostic.labels[0].span.start <= line.start


def _assembled(entries: Iterable[Entry]) -> list[syntax.Statement]:
    """Statements at the left margin, each with its block. A block whose first line is broken stays as broken lines."""
    statements: list[syntax.Statement] = []
    bodies: list[list[syntax.Statement]] = []
    for entry in entries:
        if not entry.inside:
            statements.append(entry.statement)
            bodies.append([])
        elif isinstance(statements[-1], syntax.Broken):
            statements.append(syntax.Broken(" " * BLOCK_INDENT + entry.line.content, span=entry.statement.span))
            bodies.append([])
        else:
            bodies[-1].append(entry.statement)
    return [_with_body(s, tuple(b)) if b else s for s, b in zip(statements, bodies, strict=True)]


def _with_body(statement: syntax.Statement, body: tuple[syntax.Statement, ...]) -> syntax.Statement:
    assert isinstance(statement, BLOCKS)
    return replace(statement, body=body)


BLOCKS = (syntax.Pattern, syntax.Sizes, syntax.Machine, syntax.Fabric, syntax.Piece, syntax.MakingUp)
"""Statements with a block."""


def _comments(lines: Iterable[Line], entries: list[Entry]) -> tuple[syntax.Comment, ...]:
    """Comments by the number of the statement they stand before or beside, each as deep as what it stands among."""
    comments: list[syntax.Comment] = []
    number = 0
    ended = False
    """Whether a comment at the left margin has ended the block that was open."""
    for line in lines:
        if line.content:
            if line.comment is not None:
                comments.append(syntax.Comment(line.comment, number, False, int(entries[number].inside)))
            number += 1
            ended = False
        elif line.comment is not None:
            if number < len(entries) and entries[number].inside:
                inside = True
            else:
                inside = line.column > 0 and not ended and _open_after(entries[:number][-1:])
            ended = not inside
            comments.append(syntax.Comment(line.comment, number, True, int(inside)))
    return tuple(comments)


def _open_after(last: list[Entry]) -> bool:
    """Whether a block is open after that line (none at the beginning of the source)."""
    if not last:
        return False
    statement, text = last[0].statement, last[0].line.content
    header = isinstance(statement, syntax.Broken) and text.split(maxsplit=1)[0] in HEADERS
    return last[0].inside or isinstance(statement, BLOCKS) or header
