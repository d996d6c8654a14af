"""The parser of one line, made from the grammar file, and what it expects after given words."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Any

from lark import Lark, Token, Tree
from lark.exceptions import UnexpectedInput
from lark.lexer import PatternStr

from walewright.source.terminals import whole_word
from walewright.world.tables import Grammar, made

KINDS = (
    "in_file",
    "in_pattern",
    "in_sizes",
    "in_machine",
    "in_fabric",
    "in_chart",
    "in_piece",
    "in_opening",
    "in_shape",
    "in_making_up",
)
"""Start symbols: the kinds of block a line can stand in."""

_WITHIN_A_PIECE = {"opening": "in_opening"}
_ALTERNATIVE = "for"
"""Opens a block of lines of the kind that it stands among."""

HEADERS: Mapping[str, Mapping[str, str]] = {
    "in_file": {
        _ALTERNATIVE: "in_file",
        "pattern": "in_pattern",
        "sizes": "in_sizes",
        "machine": "in_machine",
        "fabric": "in_fabric",
        "chart": "in_chart",
        "piece": "in_piece",
        "shape": "in_shape",
        "making": "in_making_up",
    },
    "in_piece": {_ALTERNATIVE: "in_piece", **_WITHIN_A_PIECE},
    "in_shape": {_ALTERNATIVE: "in_shape", **_WITHIN_A_PIECE},
    "in_pattern": {_ALTERNATIVE: "in_pattern"},
    "in_making_up": {_ALTERNATIVE: "in_making_up"},
}
"""Kind of block to the first words of its lines that open a block in it, and the kind of that block."""

GRAMMAR = Grammar("source", "source/terminals.py", KINDS, whole_word, lambda: {"propagate_positions": True})


@cache
def parser() -> Lark:
    """The LALR parser, with one start symbol for each of `KINDS`."""
    return made(GRAMMAR)


@cache
def literals() -> dict[str, str]:
    """Terminal name to the word or sign that it stands for; terminals of many words are not in it."""
    found = {}
    for terminal in parser().terminals:
        if isinstance(terminal.pattern, PatternStr):
            found[terminal.name] = terminal.pattern.value
        elif terminal.priority == 1:
            found[terminal.name] = str(terminal.pattern.raw)
    return found


@lru_cache(maxsize=16_384)
def parsed(kind: str, content: str) -> Tree[Token] | None:
    """The parser's tree of a line (not to be changed), or None when it does not read.

    Remembered by content: most lines of a source that is read again, and many within one source, are old friends.
    """
    try:
        return parser().parse(content, start=kind)
    except UnexpectedInput:
        return None


@lru_cache(maxsize=4096)
def expected(kind: str, read: tuple[str, ...]) -> frozenset[str]:
    """Terminals that can follow the terminals `read` in a line of that kind; "$END" where the line may end.

    `read` is all that the parser needs to come to the same state, so that faulty lines of one shape are asked for once.
    """
    state: Any = parser().parse_interactive(start=kind)
    for terminal in read:
        state.feed_token(_token(terminal))
    return frozenset(state.accepts())


@cache
def first_words(kind: str) -> frozenset[str]:
    """Words that a line of that kind can begin with, as far as they are fixed."""
    return frozenset(literals()[t] for t in expected(kind, ()) if t in literals())


def _token(terminal: str) -> Token:
    return Token(terminal, literals().get(terminal, "x"), 0, line=1, column=1, end_line=1, end_column=1, end_pos=1)
