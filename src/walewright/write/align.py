"""Alignment: the step lists of all sizes laid side by side, so that equal phrases line up.

Progressive: each size's list is merged into the columns found so far along a longest common subsequence, of those the
one with most equal numbers. Every size's own order survives whatever lines up, so the alignment decides how well the
text reads, never what it says.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from typing import TypeVar

from walewright.knit.steps import (
    BreakOff,
    CastOnBetween,
    Decrease,
    JoinEdges,
    KnitRows,
    Now,
    Repeat,
    SlotClosed,
    SlotOnWaste,
    Step,
    Together,
    numbers,
    shape,
)

T = TypeVar("T")

Column = tuple[T | None, ...]
"""One entry a size; None where the size has nothing there. At least one entry is something."""


def likeness(step: Step) -> Hashable:
    """What must agree for steps of several sizes to be one sentence: their shape, and whether a decrease is fashioned, because
    the two ways have different words; of a repeat, whether it begins with rows at all; of a join, whether its first side is
    the shorter one and what is said about both; of a yarn's end or a length of its own, whether centimetres are asked for. What
    must be true can be said of carriages at both sides at once, and what goes on together has tracks that are laid side by
    side."""
    return type(step).__name__ if isinstance(step, Now | Together) else (shape(step), _ways(step))


def _ways(step: Step) -> Hashable:
    if isinstance(step, Decrease):
        return step.inset > 0
    if isinstance(step, JoinEdges):
        return step.longer_mm < 0, step.rows > 0, step.one_mm > 0, step.one_chain > 0
    if isinstance(step, BreakOff):
        return step.tail_cm > 0
    if isinstance(step, SlotOnWaste | SlotClosed | CastOnBetween):
        return step.length_cm > 0
    if isinstance(step, Repeat):
        return tuple(_nothing(inner) or _ways(inner) for inner in step.body)
    return None


def _nothing(step: Step) -> bool:
    """Whether a repeat begins its other steps at once: what is said then has no "0 rows" before it."""
    return isinstance(step, KnitRows) and step.rows == 0


def closeness(one: Step, other: Step) -> int:
    """How many numbers two steps of one likeness share. What must be true has no say: it goes with the step before it."""
    if isinstance(one, Together) and isinstance(other, Together):
        return len({t.title for t in one.tracks} & {t.title for t in other.tracks})
    return 0 if isinstance(one, Now) else sum(a == b for a, b in zip(numbers(one), numbers(other), strict=True))


def align(
    lists: Sequence[Sequence[T]], key: Callable[[T], Hashable], close: Callable[[T, T], int] = lambda one, other: 0
) -> list[Column[T]]:
    """The columns of `lists`, one list a size. Entries of a column have equal `key`; `close` chooses among alignments that
    line up equally many."""
    columns: list[Column[T]] = []
    for done, items in enumerate(lists):
        columns = _merged(columns, items, done, key, close)
    return columns


def _merged(
    columns: list[Column[T]], items: Sequence[T], done: int, key: Callable[[T], Hashable], close: Callable[[T, T], int]
) -> list[Column[T]]:
    heads = [next(x for x in reversed(c) if x is not None) for c in columns]
    merged: list[Column[T]] = []
    left = right = 0
    for i, j in (*_matches(heads, items, key, close), (len(columns), len(items))):
        merged += [(*c, None) for c in columns[left:i]]
        merged += [(*(None,) * done, x) for x in items[right:j]]
        if i < len(columns):
            merged.append((*columns[i], items[j]))
        left, right = i + 1, j + 1
    return merged


def _matches(
    heads: Sequence[T], items: Sequence[T], key: Callable[[T], Hashable], close: Callable[[T, T], int]
) -> list[tuple[int, int]]:
    """Index pairs of a best common subsequence, in order."""
    one, other = [key(x) for x in heads], [key(x) for x in items]
    if one == other:
        return [(i, i) for i in range(len(one))]
    # best[i][j]: (lined up, numbers shared) of the lists from i and j on.
    best = [[(0, 0)] * (len(other) + 1) for _ in range(len(one) + 1)]
    for i in reversed(range(len(one))):
        for j in reversed(range(len(other))):
            best[i][j] = max(best[i + 1][j], best[i][j + 1])
            if one[i] == other[j]:
                lined, shared = best[i + 1][j + 1]
                best[i][j] = max(best[i][j], (lined + 1, shared + close(heads[i], items[j])))
    pairs: list[tuple[int, int]] = []
    i = j = 0
    while i < len(one) and j < len(other):
        lined, shared = best[i + 1][j + 1]
        # Of equally good alignments, the one that lines up earlier.
        if one[i] == other[j] and best[i][j] == (lined + 1, shared + close(heads[i], items[j])):
            pairs.append((i, j))
            i, j = i + 1, j + 1
        elif best[i][j] == best[i + 1][j]:
            i += 1
        else:
            j += 1
    return pairs
