"""Columns side by side, made here: the renderer's own balance each block again and again, which takes a quarter of the time."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

from walewright.guide.model import Advice
from walewright.sheet.model import HowTo

T = TypeVar("T")

CHARACTERS = 42
"""Characters to a line of a how-to, three of which stand side by side."""

LINE, HEAD, WIDEST = 3.95, 10.0, 54.0
"""Height of a line of a how-to, and of all about it that is no line; what a drawing is wide at most, mm."""


def in_columns(items: Sequence[T], count: int, long: bool = False) -> list[list[T]]:
    """The items in so many runs, in their order, the longest run as short as can be. `long`: rows of a table may be longer than a
    line, and weigh what their words take."""
    weights = [_words(item) if long and isinstance(item, tuple) else _weight(item) for item in items]
    return _runs(items, weights, count)


def _runs(items: Sequence[T], weights: Sequence[float], count: int) -> list[list[T]]:
    if count == 1 or len(items) <= 1:
        return [list(items)]
    best: list[list[T]] | None = None
    least = float("inf")
    for cut in range(1, len(items)):
        first = sum(weights[:cut])
        if first >= least:
            break
        others = _runs(items[cut:], weights[cut:], count - 1)
        at = cut
        longest = first
        for run in others:
            longest = max(longest, sum(weights[at : at + len(run)]))
            at += len(run)
        if longest < least:
            least, best = longest, [list(items[:cut]), *others]
    return best if best is not None else [list(items)]


def _weight(item: object) -> float:
    if isinstance(item, Advice):
        return 60.0 + sum(len(line) + 12 for line in item.lines)
    if isinstance(item, str):
        return len(item) + 12.0
    return 1.0


def _words(row: tuple[object, ...]) -> float:
    return sum(len(str(word)) for word in row) + 12.0


def in_rows(ways: Sequence[HowTo], count: int) -> list[list[HowTo]]:
    """How-tos in rows of so many, each beside others about as high and the lowest row first, so that little of the page stays
    white; a row that is not full is the last. One above the other they stay in their order."""
    if count == 1:
        return [[way] for way in ways]
    high = sorted(ways, key=_height)
    few = len(high) % count
    rows = [high[:few]] * bool(few) + [high[i : i + count] for i in range(few, len(high), count)]
    order = list(ways).index
    # They are in the order of their heights but for the row that is not full.
    return sorted((sorted(row, key=order) for row in rows), key=lambda row: len(row) < count)


def _height(way: HowTo) -> float:
    shown = way.drawing
    lines = sum(-(-len(line) // CHARACTERS) for line in way.lines)
    return HEAD + shown.height * min(1.0, WIDEST / shown.width) + LINE * lines
