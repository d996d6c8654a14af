"""How deep expressions may be nested: later stages walk them by recursion, and no author can follow more."""

from __future__ import annotations

import re

from walewright.report.model import Diagnostic, Label, Span

DEEPEST = 100
"""Levels of brackets, or of operations inside one another."""

_TEXT_OR_BRACKET = re.compile(r'"(?:\\.|[^"\\])*"|[()]')


def bracket_beyond(content: str) -> int | None:
    """Place of the first bracket of a line that opens one level too many."""
    open_brackets = 0
    for found in _TEXT_OR_BRACKET.finditer(content):
        open_brackets += {"(": 1, ")": -1}.get(found[0], 0)
        if open_brackets > DEEPEST:
            return found.start()
    return None


def too_deep(span: Span) -> Diagnostic:
    """For what begins at the level that is one too many."""
    return Diagnostic(
        "too-deep",
        f"brackets and operations stand more than {DEEPEST} deep in one another",
        (Label(span, "still deeper from here"),),
        helps=("give parts of it names, a `let` line for each",),
    )
