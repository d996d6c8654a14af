"""Plain text, from the same sheet as the pages."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern


def text(pattern: Pattern) -> str:
    """The text copy of a pattern."""
    from walewright.sheet.text_copy import text_copy

    return text_copy(pattern.guide, pattern.sheet, pattern.proven, pattern.outcome.plain_text, pattern.units)


def _make(pattern: Pattern) -> Made:
    return Made(text(pattern).encode())


FORMAT = Format(".txt", _make, varies_with=frozenset({"units"}))
