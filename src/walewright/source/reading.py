"""Reading a source: lines into statements, statements into blocks."""

from __future__ import annotations

from dataclasses import dataclass

from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.near import near
from walewright.source import syntax
from walewright.source.blocks import BlockEntry, assembled, placed
from walewright.source.build import built
from walewright.source.grammar import HEADERS, first_words, parsed
from walewright.source.layout import SourceLine, empty, laid_out
from walewright.source.limits import beyond_limits, too_long
from walewright.source.unreadable import unreadable


@dataclass(slots=True)
class ReadBlock:
    """A block that is open: the kind of its lines, None for a block that nobody can guess, whose lines go unread.

    `outer` is how far its header is indented, `indent` its first line (None: there has been none)."""

    kind: str | None
    outer: int
    indent: int | None = None
    guessed: bool = False
    """Whether that line was indented with a tab."""


def read(file: str, text: str) -> tuple[syntax.Tree, tuple[Diagnostic, ...]]:
    """The tree of a source and everything that is wrong with its lines, in their order.

    There is always a tree: a line that cannot be read is one diagnostic and a `Broken` node; a line that opens a block
    opens it all the same, by what its first word says or nearly says. Spans count code points of `text`.
    """
    beyond = too_long(file, text)
    if beyond is not None:
        return syntax.Tree(file, (), ()), (beyond,)
    lines, told = laid_out(file, text)
    reader = _Reader(file)
    for line in lines:
        if line.content:
            reader.take(line)
    if not reader.entries:
        told = (*told, empty(file))
    diagnostics = sorted((*told, *_without_uses(reader.told, text)), key=lambda d: d.labels[0].span.start)
    return syntax.Tree(file, assembled(reader.entries), placed(lines, reader.entries)), tuple(diagnostics)


class _Reader:
    """Lines in, entries out. Remembers the blocks that are open, the innermost last."""

    def __init__(self, file: str) -> None:
        self.file = file
        self.entries: list[BlockEntry] = []
        self.told: list[Diagnostic] = []
        self.open: list[ReadBlock] = []

    def take(self, line: SourceLine) -> None:
        """One line with content."""
        del self.open[self._depth(line) :]
        kind = self.open[-1].kind if self.open else "in_file"
        if kind is None:
            self._keep(syntax.Broken(line.content, span=line.span(self.file)), line)
            return
        self._take_as(kind, line)
        self._open_block(kind, line)

    def _open_block(self, kind: str, line: SourceLine) -> None:
        """Opens the block whose header the line is, or nearly is, or, of a line that nobody can guess at, may be."""
        headers = HEADERS.get(kind)
        if headers is None:
            return
        outer = (self.open[-1].indent or 0) if self.open else 0
        first = _first(line)
        known = first_words(kind)
        header = headers.get(first if first in known else near(first, known) or "")
        broken = isinstance(self.entries[-1].statement, syntax.Broken)
        if header is not None or (broken and first not in known):
            self.open.append(ReadBlock(header, outer))

    def _depth(self, line: SourceLine) -> int:
        """In how many of the open blocks the line stands; reports an indentation that does not fit."""
        if line.column == 0:
            return self._depth_at_margin(line)
        here = Span(self.file, line.start - min(line.column, 1), line.start)
        if not self.open:
            if not line.tabbed:
                self._indent_fault("wrong-indent/no-block", here, "indented", line)
            return 0
        while self.open[-1].indent is None or (self.open[-1].guessed and not line.tabbed):
            if line.column > self.open[-1].outer:
                self.open[-1].indent, self.open[-1].guessed = line.column, line.tabbed
                return len(self.open)
            self.open.pop()
        for depth, block in enumerate(self.open, 1):
            if block.indent == line.column:
                return depth
        if self.open[-1].kind is None and line.column > self.open[-1].outer:
            return len(self.open)
        fitting = self._reads_inside(line)
        if line.tabbed:
            # Reported as a tab; how far it was meant to indent nobody knows.
            return fitting or len(self.open)
        column = self.open[(fitting or len(self.open)) - 1].indent or 0
        self._indent_fault("wrong-indent/unlike-block", here, "unlike", line, column)
        if not fitting and _first(line) in first_words("in_file"):
            return 0
        return fitting or len(self.open)

    def _depth_at_margin(self, line: SourceLine) -> int:
        fitting = self._reads_inside(line)
        if _first(line) in first_words("in_file") and (not fitting or _reads("in_file", line)):
            return 0
        if fitting:
            self._indent_fault("wrong-indent/at-margin", line.span(self.file), "at-margin", line)
        return fitting

    def _reads_inside(self, line: SourceLine) -> int:
        """The depth of the innermost open block in which the line reads; 0 for none."""
        return next((n for n in range(len(self.open), 0, -1) if _reads(self.open[n - 1].kind, line)), 0)

    def _indent_fault(self, kind: str, here: Span, label: str, line: SourceLine, block: int = 0) -> None:
        self.told.append(diagnosed(kind, (here, label), helps=("as-first-line",), indent=line.column, block=block))

    def _take_as(self, kind: str, line: SourceLine) -> None:
        """Reads the line as one of that kind; a line already reported is not reported again."""
        span = line.span(self.file)
        told_before = any(d.code == "wrong-indent" and _on(d, line) for d in self.told[-1:])
        statement: syntax.Statement | Diagnostic | None = None
        if line.readable:
            statement = beyond_limits(line.content, span)
        if line.readable and statement is None:
            tree = parsed(kind, line.content)
            if tree is not None:
                statement = built(tree, self.file, line.start, span, line.content)
            elif not told_before:
                statement = unreadable(kind, line, self.file)
        if isinstance(statement, Diagnostic):
            # A name that cannot be read is reported once, not wherever it is used.
            if statement.code != "name-unreadable" or _what(statement) not in {_what(d) for d in self.told}:
                self.told.append(statement)
            statement = None
        self._keep(statement or syntax.Broken(line.content, span=span), line)

    def _keep(self, statement: syntax.Statement, line: SourceLine) -> None:
        self.entries.append(BlockEntry(statement, line, len(self.open)))


def _without_uses(told: list[Diagnostic], text: str) -> list[Diagnostic]:
    """What was told, but for lines that do not read only for a name that is refused where it is given."""
    refused = {dict(d.facts)["name"] for d in told if d.code == "reserved-word"}

    def uses(diagnostic: Diagnostic) -> bool:
        if diagnostic.code != "unreadable-line":
            return False
        place = diagnostic.labels[0].span
        # Where the name ends the line, it is what comes after it that is missing; else what follows it may not be what would follow
        # the word of the language.
        last, before = (text[:end].split("\n")[-1].split()[-1:] for end in (place.end, place.start))
        ends = diagnostic.case == "ends-too-soon" and refused.issuperset(last)
        return text[place.start : place.end] in refused or ends or (bool(before) and refused.issuperset(before))

    return [d for d in told if not uses(d)]


def _what(diagnostic: Diagnostic) -> tuple[object, ...]:
    """What is reported, wherever it stands."""
    return diagnostic.code, diagnostic.case, diagnostic.facts


def _first(line: SourceLine) -> str:
    return line.content.split(maxsplit=1)[0]


def _reads(kind: str | None, line: SourceLine) -> bool:
    within = line.readable and beyond_limits(line.content, line.span("")) is None
    return within and kind is not None and parsed(kind, line.content) is not None


def _on(diagnostic: Diagnostic, line: SourceLine) -> bool:
    return line.start - 1 <= diagnostic.labels[0].span.start <= line.start
