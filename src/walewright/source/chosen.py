"""The author's words in the language that is printed: a text that is told in it takes the place of the source's own, and a name
that the language has a word for is that word."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from walewright.record import replace
from walewright.report.model import Diagnostic
from walewright.report.typography import typographic
from walewright.source import syntax
from walewright.source.author_names import unfit, with_authors
from walewright.source.renamed import Renaming, named, renamed, renaming
from walewright.source.syntax import Statement, Tree


def in_language(
    tree: Tree, shapes: tuple[syntax.ShapeBlock, ...], language: str, names: Mapping[str, str], used: Iterable[Tree] = ()
) -> tuple[Tree, tuple[syntax.ShapeBlock, ...], Renaming, tuple[Diagnostic, ...]]:
    """The tree and the shapes that it uses, with every text and title that there is in a language in that language, the others as
    they are; and with other names, by what the author says of them, in this tree before the trees that it `used`, and by `names`,
    TOML of each language; with what each name becomes, and what is wrong with what the author says."""
    own = _name_lines(tree)
    told_of = tuple(line for one in used for line in _name_lines(one))
    shipped: Any = tomllib.loads(names.get(language, ""))
    words = with_authors(shipped, (*told_of, *own), language)
    by = renaming((*tree.statements, *shapes), words)
    faults = unfit(own, named((*tree.statements, *shapes))) if own else ()
    told = tuple(_chosen(statement, language) for statement in tree.statements)
    if not by.any:
        return replace(tree, statements=told), shapes, by, faults
    return replace(tree, statements=renamed(told, by)), renamed(shapes, by), by, faults


def _name_lines(tree: Tree) -> tuple[syntax.NameLine, ...]:
    """Those at its margin and within its alternatives."""

    def within(statements: tuple[Statement, ...]) -> Iterator[syntax.NameLine]:
        for statement in statements:
            if isinstance(statement, syntax.NameLine):
                yield statement
            elif isinstance(statement, syntax.ForBlock):
                yield from within(statement.body)

    return tuple(within(tree.statements))


TEXTS: Mapping[type[Statement], str] = {
    syntax.TextLine: "text",
    syntax.NeededLine: "text",
    syntax.PhotographLine: "showing",
    syntax.PatternBlock: "title",
    syntax.YarnLine: "label",
    syntax.SizeRow: "about",
    syntax.Require: "because",
}
"""The field of a statement that is its author's own text, which `others` has in other languages."""

BLOCKS = (
    syntax.PatternBlock,
    syntax.Sizes,
    syntax.FabricBlock,
    syntax.PieceBlock,
    syntax.MakingUp,
    syntax.ShapeBlock,
    syntax.ForBlock,
)
"""Blocks in which such statements stand."""


def _chosen(statement: Statement, language: str) -> Statement:
    field = TEXTS.get(type(statement))
    changed: dict[str, Any] = {}
    if field is not None:
        own = getattr(statement, field)
        found = _told(getattr(statement, "others", ()), language) or own
        changed = {field: typographic(found)} if found else {}
    if isinstance(statement, BLOCKS):
        changed["body"] = _all(statement.body, language)
    chosen: Statement = replace(statement, **changed)
    return chosen


def _all(body: tuple[Statement, ...], language: str) -> tuple[Statement, ...]:
    return tuple(_chosen(statement, language) for statement in body)


def _told(others: tuple[syntax.InLanguage, ...], language: str) -> str | None:
    return next((other.text for other in others if other.language == language), None)
