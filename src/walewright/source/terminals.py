"""How the words of the source language are told from names: the terminals of its grammar, edited."""

from __future__ import annotations

import re
from collections.abc import Mapping

from lark.lexer import PatternRE, PatternStr, TerminalDef

OPTIONS: Mapping[str, str] = {
    "folded": r"\s*(?:,|$)",
    "picot": r"\s*(?:,|$)",
    "rolled": r"\s*(?:,|$)",
    "facing": r"\s*(?:,|$)",
    "chained": r"\s*(?:,|$)",
    "mock": r"\s+rib\b",
    "fold": r"\s+row\b",
    "inside": r"\s+at\b",
    "across": r"\s+(?:to\b|\w+\s+[^\W\d])",
    "beginning": r"\s+with\s+a\s+move\b",
    "ending": r"\s+with\s+a\s+move\b",
}
"""Words that stand where an amount can stand, and what follows them: before anything else they are names of measurements."""


def whole_word(terminal: TerminalDef) -> None:
    """Make a literal word match whole words only, and win over names where both can stand."""
    if isinstance(terminal.pattern, PatternStr) and terminal.pattern.value[-1].isalnum():
        word = terminal.pattern.value
        followed = rf"(?={OPTIONS[word]})" if word in OPTIONS else ""
        terminal.pattern = PatternRE(rf"{re.escape(word)}(?![\w]){followed}", raw=word)
        terminal.priority = 1
