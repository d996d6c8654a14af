"""The author's words in the language that is printed: a text that is told in it takes the place of the source's own."""

from __future__ import annotations

from dataclasses import replace

from walewright.source import syntax
from walewright.source.syntax import Statement, Tree


def in_language(tree: Tree, language: str) -> Tree:
    """The tree with every text and title that it has in a language in that language; the others as they are."""
    return replace(tree, statements=tuple(_chosen(statement, language) for statement in tree.statements))


def _chosen(statement: Statement, language: str) -> Statement:
    match statement:
        case syntax.TextLine(others=others):
            found = _told(others, language)
            return statement if found is None else replace(statement, text=found)
        case syntax.NeededLine(others=others):
            found = _told(others, language)
            return statement if found is None else replace(statement, text=found)
        case syntax.PhotographLine(others=others):
            found = _told(others, language)
            return statement if found is None else replace(statement, showing=found)
        case syntax.PatternBlock(body=body, others=others):
            found = _told(others, language)
            return replace(statement, title=statement.title if found is None else found, body=_all(body, language))
        case syntax.FabricBlock() | syntax.PieceBlock() | syntax.MakingUp() | syntax.ShapeBlock() | syntax.ForBlock():
            return replace(statement, body=_all(statement.body, language))
    return statement


def _all(body: tuple[Statement, ...], language: str) -> tuple[Statement, ...]:
    return tuple(_chosen(statement, language) for statement in body)


def _told(others: tuple[syntax.InLanguage, ...], language: str) -> str | None:
    return next((other.text for other in others if other.language == language), None)
