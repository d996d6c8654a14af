"""The formatter: a tree written anew, in the one tidy layout.

Four columns a block, a blank line around every block and between lines of different kinds, the size table in columns.
Comments stay before or beside the statement they stood at.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.record import record
from walewright.source import syntax
from walewright.source.blocks import BLOCK_INDENT, BLOCKS
from walewright.source.expressions import number
from walewright.source.statements import described, line

INDENT = " " * BLOCK_INDENT
_NO_ROWS: Mapping[int, str] = {}


@record
class Written:
    """A statement as a line, with its indentation; `kind` is what it is, `block` whether others stand under it.

    `depth` is in how many blocks it stands; `inside`: in one of them that is more than an alternative of the margin; `first`: right
    under the line that opens the innermost."""

    text: str
    kind: type
    depth: int
    inside: bool
    first: bool
    block: bool


def tidy(tree: syntax.Tree) -> str:
    """The source of a tree: tidying what it reads as gives the same text again, and the tree is the same but for spans."""
    written = tuple(_written(tree.statements))
    own: dict[int, list[syntax.Comment]] = {}
    beside: dict[int, str] = {}
    for comment in tree.comments:
        if comment.own_line:
            own.setdefault(comment.before, []).append(comment)
        else:
            beside[comment.before] = comment.text
    lines: list[str] = []
    for ordinal, statement in enumerate(written):
        last = written[ordinal - 1] if ordinal else None
        apart = last is not None and _apart(last, statement)
        _above(lines, own.get(ordinal, ()), apart, statement.depth)
        if ordinal == 0 and lines:
            # What stands above the first statement is about the whole file.
            lines.append("")
        text = statement.text
        lines.append(f"{text}  {_comment(beside[ordinal])}" if ordinal in beside else text)
    _above(lines, own.get(len(written), ()), bool(written), 0)
    if lines[-1:] == [""]:
        lines.pop()
    return "\n".join(lines) + "\n" if lines else ""


def _above(lines: list[str], comments: Iterable[syntax.Comment], apart: bool, depth: int) -> None:
    """Adds comments, and the blank line before a statement that stands apart, so deep: before its own comments, after those that
    end the block above."""
    for comment in comments:
        if apart and comment.indent <= depth:
            lines.append("")
            apart = False
        lines.append(INDENT * comment.indent + _comment(comment.text))
    if apart and lines[-1:] != [""]:
        lines.append("")


def _comment(text: str) -> str:
    return f"# {text}" if text and not text.startswith("#") else f"#{text}"


def _apart(last: Written, statement: Written) -> bool:
    """Whether a blank line stands between the two: never within a block, and around every one."""
    if statement.inside or statement.first:
        return False
    if last.inside or last.depth != statement.depth:
        return True
    broken_block = statement.kind is syntax.Broken and statement.text.startswith(" " * (BLOCK_INDENT * statement.depth + 1))
    return not broken_block and (last.block or statement.block or last.kind is not statement.kind)


def _written(
    statements: Iterable[syntax.Statement], depth: int = 0, rows: Mapping[int, str] = _NO_ROWS, inside: bool = False
) -> Iterable[Written]:
    """The statements and what stands in their blocks; `rows` are lines that the block has laid out already."""
    for at, statement in enumerate(statements):
        inner = table(statement) if isinstance(statement, syntax.Sizes) else {}
        text = inner.get(id(statement)) or rows.get(id(statement)) or line(statement)
        first = depth > 0 and at == 0
        yield Written(INDENT * depth + text, type(statement), depth, inside, first, isinstance(statement, BLOCKS))
        within = inside or not isinstance(statement, syntax.ForBlock)
        yield from _written(getattr(statement, "body", ()), depth + 1, inner, within)


def table(sizes: syntax.Sizes) -> Mapping[int, str]:
    """The size table in columns, numbers right under the names of their sizes: the lines by the identity of their node.

    Rows that do not have one number a size stand as they are, and so does a table without a row of numbers."""
    rows = [r for r in sizes.body if isinstance(r, syntax.SizeRow) and r.table is None and len(r.values) == len(sizes.names)]
    if not rows:
        return {}
    cells = {id(r): [number(v) for v in r.values] for r in rows}
    widths = [max(len(name), *(len(c[i]) for c in cells.values())) for i, name in enumerate(sizes.names)]
    # The names of the rows are indented, the word `sizes` is not.
    names = max(len("sizes") - BLOCK_INDENT, *(len(r.name) for r in rows))
    found = {id(sizes): _row("sizes", names + BLOCK_INDENT, sizes.names, widths)}
    for row in rows:
        unit = f" {row.unit}" if row.unit is not None else ""
        fit = ", to fit" if row.to_fit else ""
        about = f" {described(row)}" if row.about else ""
        found[id(row)] = _row(row.name, names, cells[id(row)], widths) + unit + fit + about
    return found


def _row(name: str, width: int, cells: Iterable[str], widths: Iterable[int]) -> str:
    return " ".join((name.ljust(width), *(c.rjust(w) for c, w in zip(cells, widths, strict=True))))
