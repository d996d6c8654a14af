"""Graded figures stay in one line: "58 (64: 70)" is never broken inside its brackets."""

from __future__ import annotations

import re
from collections.abc import Iterator

LONG, LONGER = 56, 72
"""Characters of one graded figure from which on it is set smaller, and smaller still, to stay in one line."""

_GRADED = re.compile(r"(?:\b(?:[LR]|RC)[ \u00a0])?[^\s()]+ \([^()]*:[^()]*\)[^\s\w]?")


def graded_length(text: str) -> int:
    """Characters of the longest graded figure in the text, 0 without one."""
    return max((len(found.group()) for found in _GRADED.finditer(text)), default=0)


def stretches(text: str) -> tuple[tuple[str, str], ...]:
    """The text cut so that each graded figure, with its brackets and the stop behind it, is one stretch that no line breaks:
    (text, "" | "whole" | "long" | "longer")."""
    return tuple(_stretches(text))


def _stretches(text: str) -> Iterator[tuple[str, str]]:
    end = 0
    for found in _GRADED.finditer(text):
        if found.start() > end:
            yield text[end : found.start()], ""
        length = len(found.group())
        yield found.group(), "longer" if length > LONGER else "long" if length > LONG else "whole"
        end = found.end()
    if end < len(text):
        yield text[end:], ""
