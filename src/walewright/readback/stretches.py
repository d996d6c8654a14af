"""Stretches of neighbouring needles."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence


def blocks(yarns: Iterable[str], working: Sequence[int]) -> tuple[tuple[str, int, int], ...]:
    """Neighbours with one yarn as (yarn, first, last), from left to right."""
    made: list[tuple[str, int, int]] = []
    for yarn, slot in zip(yarns, working, strict=True):
        if made and made[-1][0] == yarn:
            made[-1] = (yarn, made[-1][1], slot)
        else:
            made.append((yarn, slot, slot))
    return tuple(made)


def ranges(slots: Collection[int]) -> list[tuple[int, int]]:
    """Neighbouring slots as (first, last), from left to right."""
    made: list[tuple[int, int]] = []
    for slot in sorted(slots):
        if made and made[-1][1] == slot - 1:
            made[-1] = (made[-1][0], slot)
        else:
            made.append((slot, slot))
    return made
