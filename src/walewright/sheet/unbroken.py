"""Graded figures stay in one line: "58 (64: 70)" is never broken inside its brackets."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.sheet.stage import Spans

LONG, LONGER = 56, 72
"""Characters of one graded figure from which on it is set smaller, and smaller still, to stay in one line."""


def longest(figures: Spans) -> int:
    """Characters of the longest of the figures, 0 without one."""
    return max((end - begin for begin, end in figures), default=0)


def stretches(text: str, figures: Spans) -> tuple[tuple[str, str], ...]:
    """The text cut so that each of its figures is one stretch that no line breaks: (text, "" | "whole" | "long" | "longer")."""
    return tuple(_stretches(text, figures))


def _stretches(text: str, figures: Spans) -> Iterator[tuple[str, str]]:
    done = 0
    for begin, end in figures:
        if begin > done:
            yield text[done:begin], ""
        length = end - begin
        yield text[begin:end], "longer" if length > LONGER else "long" if length > LONG else "whole"
        done = end
    if done < len(text):
        yield text[done:], ""
