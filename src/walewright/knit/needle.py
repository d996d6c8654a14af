"""Needles and sides of the bed: slots, the names that needles have, and which side is the other."""

from __future__ import annotations

from typing import Literal

Side = Literal["left", "right"]


def needle(slot: int) -> str:
    """The needle's name on the bed, e.g. "R 12"."""
    return f"R {slot + 1}" if slot >= 0 else f"L {-slot}"


def slot(side: Side, number: int) -> int:
    """Slot of needle `number` (1 ...) on a side of the centre mark."""
    return number - 1 if side == "right" else -number


def other(side: Side) -> Side:
    """The opposite side."""
    return "left" if side == "right" else "right"
