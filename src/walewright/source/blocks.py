"""Statements into their blocks, and comments to the statements they stand before or beside."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from walewright.record import record, replace
from walewright.source import syntax
from walewright.source.grammar import HEADERS
from walewright.source.layout import SourceLine

BLOCK_INDENT = 4
"""Columns that a line of a block is indented when it is written anew."""

BLOCKS = (
    syntax.ForBlock,
    syntax.PatternBlock,
    syntax.Sizes,
    syntax.MachineBlock,
    syntax.FabricBlock,
    syntax.ChartBlock,
    syntax.PieceBlock,
    syntax.OpeningLine,
    syntax.ShapeBlock,
    syntax.MakingUp,
)
"""Statements with a block."""

_HEADER_WORDS = frozenset(word for headers in HEADERS.values() for word in headers)


@record
class BlockEntry:
    """A statement on its line. `depth` is how many blocks it stands in: 0 at the left margin."""

    statement: syntax.Statement
    line: SourceLine
    depth: int


def assembled(entries: Sequence[BlockEntry], depth: int = 0) -> tuple[syntax.Statement, ...]:
    """The statements at that depth, each with its block. A block whose first line is broken stays as broken lines."""
    heads = [n for n, entry in enumerate(entries) if entry.depth == depth]
    statements: list[syntax.Statement] = []
    for head, following in pairwise((*heads, len(entries))):
        statement, block = entries[head].statement, entries[head + 1 : following]
        if isinstance(statement, BLOCKS):
            body = assembled(block, depth + 1)
            statements.append(replace(statement, body=body) if body else statement)
        else:
            statements.append(statement)
            statements += (_left_as_it_is(entry, entry.depth - depth) for entry in block)
    return tuple(statements)


def _left_as_it_is(entry: BlockEntry, depth: int) -> syntax.Broken:
    return syntax.Broken(" " * BLOCK_INDENT * depth + entry.line.content, span=entry.statement.span)


def placed(lines: Iterable[SourceLine], entries: Sequence[BlockEntry]) -> tuple[syntax.Comment, ...]:
    """Comments by the number of the statement they stand before or beside, each as deep as what it stands among."""
    comments: list[syntax.Comment] = []
    number = 0
    columns: list[int] = []
    """How far the last lines of the blocks around the last statement are indented, the innermost last."""
    deepest = 0
    """The depth that the next comment can have at most: that of the blocks still open."""
    for line in lines:
        if line.content:
            entry = entries[number]
            if line.comment is not None:
                comments.append(syntax.Comment(line.comment, number, False, entry.depth))
            number += 1
            columns[entry.depth :] = [line.column]
            deepest = entry.depth + _opens(entry)
        elif line.comment is not None:
            following = entries[number].depth if number < len(entries) else 0
            # A comment before a line of a block stands in that block, however it is indented.
            deepest = max(following, min(deepest, _among(line.column, columns)))
            comments.append(syntax.Comment(line.comment, number, True, deepest))
    return tuple(comments)


def _among(column: int, columns: Sequence[int]) -> int:
    """How many blocks are around what is indented so far, after lines that are indented as `columns`."""
    deeper = bool(columns) and column > columns[-1]
    return max(sum(column >= c for c in columns[1:]) + deeper, int(column > 0))


def _opens(entry: BlockEntry) -> bool:
    """Whether a block may follow that line."""
    broken_header = isinstance(entry.statement, syntax.Broken) and entry.line.content.split(maxsplit=1)[0] in _HEADER_WORDS
    return isinstance(entry.statement, BLOCKS) or broken_header
