"""Columns side by side, made here: the renderer's own balance each block again and again, which takes a quarter of the time."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

from walewright.guide.model import Advice
from walewright.sheet.model import HowTo, Tension

T = TypeVar("T")

CHARACTERS, BESIDE = 62, 35
"""Characters to a line of a how-to, two of which stand side by side, and to one beside its drawing."""

LINE, HEAD, WIDEST, GAP = 3.95, 6.6, 36.0, 1.2
"""Height of a line of a how-to, and of its heading; what a drawing is wide at most, and what stays white about it, mm."""


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
        if first > least:
            break
        others = _runs(items[cut:], weights[cut:], count - 1)
        at = cut
        longest = first
        for run in others:
            longest = max(longest, sum(weights[at : at + len(run)]))
            at += len(run)
        # Of several that are as short, the one whose first runs are the fuller.
        if longest <= least:
            least, best = longest, [list(items[:cut]), *others]
    return best if best is not None else [list(items)]


def _weight(item: object) -> float:
    if isinstance(item, HowTo):
        return _height(item)
    if isinstance(item, Tension):
        return 260.0 + len(item.text)
    if isinstance(item, Advice):
        return 60.0 + sum(len(line) + 12 for line in item.lines)
    if isinstance(item, str):
        return len(item) + 12.0
    return 1.0


def _words(row: tuple[object, ...]) -> float:
    return sum(len(str(word)) for word in row) + 12.0


def in_boxes(ways: Sequence[HowTo], count: int) -> tuple[list[list[HowTo]], list[list[HowTo]]]:
    """How-tos in so many columns: first a row of the first ones, which stay with the heading above them; then all others in columns
    about as long, which are parted wherever a page ends. They keep their order: each goes into the column that is shortest so far,
    so that none begins higher up than the one before it."""
    columns: list[list[HowTo]] = [[] for _ in range(count)]
    for way in ways[count:]:
        min(columns, key=lambda column: sum(map(_height, column))).append(way)
    return [[way] for way in ways[:count]], [column for column in columns if column]


def _height(way: HowTo) -> float:
    """Of a box, its drawing at the left and the words round it, mm."""
    shown = way.drawing
    high = shown.height * min(1.0, WIDEST / shown.width) + GAP
    characters = sum(len(line) for line in way.lines)
    beside = int(high / LINE + 1) * BESIDE
    lines = -(-max(0, characters - beside) // CHARACTERS)
    return HEAD + (high + LINE * lines if lines else max(high, LINE * -(-characters // BESIDE)))
