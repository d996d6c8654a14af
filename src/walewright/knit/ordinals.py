"""Ordinals of copies: the 1st of two sleeves."""

from __future__ import annotations

from walewright.knit.operations import NEXT_COPY

NEXT = "next"
"""What the next copy is called."""


def ordinal(number: int) -> str:
    """1st, 2nd, 3rd, 4th, 11th."""
    ending = "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{ending}"


def copy_word(number: int) -> str:
    """The number of a copy in words; nothing where none has to be named."""
    return NEXT if number < 0 else ordinal(number) if number else ""


def number_of(told: str) -> int:
    """2 of "2nd"; 0 of an empty text and of "each"; the next copy of "next"."""
    return NEXT_COPY if told == NEXT else int(told[:-2]) if told[:1].isdigit() else 0
