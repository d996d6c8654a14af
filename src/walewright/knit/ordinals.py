"""Ordinals of copies: the 1st of two sleeves."""

from __future__ import annotations


def ordinal(number: int) -> str:
    """1st, 2nd, 3rd, 4th, 11th."""
    ending = "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{ending}"


def number_of(told: str) -> int:
    """2 of "2nd"; 0 of an empty text and of "each"."""
    return int(told[:-2]) if told[:1].isdigit() else 0
