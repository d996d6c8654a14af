"""On the way: what is done in rows that are knitted, each kind with the readings of the counter, in words."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Any

from walewright.knit.bench_steps import Needles
from walewright.write.filling import Part, filled
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.listed import Readings, Way
from walewright.write.rounds import MOST_NEEDLES, enumerated, readings
from walewright.write.said import StepSaid, between

FEW = 4
"""Readings that are named one by one; more are told by how often they come, where that is so in all sizes."""

MOST_GRADED = 2
"""Readings that rows are counted off from and that differ from size to size: of more, nobody finds the own ones."""

_KINDS: Mapping[str, Callable[[Way], tuple[Readings, Readings]]] = {
    "crossing": lambda way: (way.crossed, way.heights),
    "moving": lambda way: (way.moved, way.heights),
    "dropping": lambda way: (way.dropped, way.heights),
    "holding": lambda way: (way.held, way.heights),
    "latching": lambda way: (way.latched, ()),
    "columns": lambda way: (tuple(row for row, _ in way.columns), way.heights),
    "changing": lambda way: (way.changed, way.period),
    "again_from_row_1": lambda way: (way.again, way.heights),
}
"""The readings of each kind, and after how many rows they come again: nothing where that is not known."""

_NAMED_HERE = frozenset({"columns"})
"""Kinds whose readings stand nowhere but in the lines of rows: nothing that was said before could be gone by."""


def on_the_way(said: StepSaid, language: PrintedLanguage) -> Iterator[tuple[Part, ...]]:
    """A phrase for each kind of what is done in the rows of a step, which has its `way`."""
    for key, of in _KINDS.items():
        found = [None if step is None else of(_way(step)) for step in said.steps]
        if key not in _NAMED_HERE and _full_of_dashes(found):
            yield tuple(filled(f"{key}/said", language))
            continue
        needles = _needles(said, language) if key == "columns" else ()
        lists, heights = [None if one is None else one[0] for one in found], {one[1] for one in found if one}
        told = _told(said, language, f"{key}/on" if needles else key, needles=needles, lists=lists, heights=heights)
        if told:
            yield told


def and_on_the_way(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The same behind what is said of the step."""
    return [part for told in on_the_way(said, language) for part in (language.sentences["between"], *told)]


def _way(step: Any) -> Way:
    way: Way = step.way
    return way


def _told(
    said: StepSaid,
    language: PrintedLanguage,
    key: str,
    *,
    needles: tuple[Part, ...],
    lists: Sequence[Readings | None],
    heights: set[Readings],
) -> tuple[Part, ...]:
    if not any(lists):
        return ()
    regular = _regular(lists, heights)
    if regular is None:
        return tuple(filled(f"{key}/at", language, rows=readings(lists, said.group, language), needles=needles))
    every, firsts = regular
    begun = [Graded(tuple(_nth(rows, i) for rows in firsts), said.group) for i in range(max(map(len, firsts)))]
    last = Graded(tuple(rows[-1] if rows else None for rows in lists), said.group)
    rows = filled("every", language, every=every, firsts=enumerated(begun, language), last=last)
    return tuple(filled(key, language, rows=tuple(rows), needles=needles))


def _full_of_dashes(found: Sequence[tuple[Readings, Readings] | None]) -> bool:
    """Whether the readings of the sizes that work the step would be lists with dashes at more than one place, or counted off from a
    dash, from a reading to itself, or from many figures in brackets. Then what was said before is gone by: only where it is in
    force in each of these sizes."""
    working = [one for one in found if one is not None]
    if not any(rows for rows, _ in working) or not all(rows or again for rows, again in working):
        return False
    lists = [rows for rows, _ in working]
    regular = _regular(lists, {again for _, again in working})
    if regular is None:
        return max(map(len, lists)) - min(map(len, lists)) > 1
    _, firsts = regular
    if len({*map(len, firsts)}) > 1 or any(begun[0] == rows[-1] for rows, begun in zip(lists, firsts, strict=True)):
        return True
    return sum(len({*one}) > 1 for one in zip(*firsts, strict=True)) > MOST_GRADED


def _needles(said: StepSaid, language: PrintedLanguage) -> tuple[Part, ...]:
    """The needles on which columns are latched up, where they are few and each time the same."""
    lists: list[Needles | None] = []
    for step in said.steps:
        found = {needles for _, needles in _way(step).columns} if step is not None else set()
        if len(found) > 1 or any(len(needles) > MOST_NEEDLES for needles in found):
            return ()
        lists.append(found.pop() if found else None)
    longest = max((len(needles) for needles in lists if needles), default=0)
    columns = (
        [Graded(tuple(needles[i] if needles and i < len(needles) else None for needles in lists), said.group).needle(language)]
        for i in range(longest)
    )
    return tuple(between(language.sentences["between"], columns, language.sentences["and"]))


def _nth(rows: Readings, number: int) -> int | None:
    return rows[number] if number < len(rows) else None


def _regular(lists: Sequence[Readings | None], heights: set[Readings]) -> tuple[int, list[Readings]] | None:
    """Every how many rows, and for each size from where: one reading for each row of the repeat that asks for it. None where that
    cannot be said of all sizes, or says no less than the readings one by one. `heights`: what repeats in each of them."""
    working = [rows for rows in lists if rows]
    longest = max(map(len, working))
    apart = {b - a for rows in working for a, b in pairwise(rows)}
    repeats = heights.pop() if len(heights) == 1 else ()
    if longest <= FEW or not (len(apart) == 1 or len(repeats) == 1):
        return None
    every = apart.pop() if len(apart) == 1 else repeats[0]
    firsts = [_firsts(rows or (), every) for rows in lists]
    complete = all(
        {*rows} == {row for first in begun for row in range(first, rows[-1] + 1, every)}
        for rows, begun in zip(lists, firsts, strict=True)
        if rows
    )
    places = max(map(len, firsts))
    shorter = places + 1 < longest and (longest >= 2 * places or longest > 2 * FEW)
    return (every, firsts) if complete and shorter else None


def _firsts(rows: Readings, every: int) -> Readings:
    """The first reading of each place in the repeat."""
    return tuple(sorted({row % every: row for row in reversed(rows)}.values()))
