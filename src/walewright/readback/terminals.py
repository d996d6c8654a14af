"""How the fixed words of the printed sentences are told from names: the terminals of their grammar, edited."""

from __future__ import annotations

import re

from lark.lexer import PatternRE, PatternStr, TerminalDef

NAME_SPACE = "\N{NO-BREAK SPACE}"
"""Between the words of a name, which is one word with underscores."""


def whole_words(terminal: TerminalDef) -> None:
    """A fixed phrase such as "to" is not the beginning of a longer word, and wins over names where both can stand."""
    if isinstance(terminal.pattern, PatternStr):
        if terminal.pattern.value[-1].isalnum():
            terminal.pattern = _bounded(terminal.pattern)
        terminal.priority = 1


def _bounded(pattern: PatternStr) -> PatternRE:
    return PatternRE(rf"{re.escape(pattern.value)}(?![\w{NAME_SPACE}])", pattern.flags, raw=pattern.raw)
