"""What is counted off within a sentence: rounds of spreading, rows at which a rib is latched up, numbers of the dial."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from walewright.knit import steps as st
from walewright.write.align import Column, align
from walewright.write.columns import ColumnsUp
from walewright.write.filling import Part, filled
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.model import Run
from walewright.write.said import StepSaid, between


def rounds(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """Of `steps.SpreadEvenly`: the loops on each needle, stretch by stretch, and those that are left. Rounds of sizes are laid
    side by side where both have needles of one loop, or neither: a round without any is never said as "0 needles"."""
    of_sizes = [() if step is None else _rounds(step) for step in said.steps]
    told = [_round(column, said, language) for column in align(of_sizes, lambda one: one[0] > 0)]
    left = Graded(tuple(None if step is None else _left(step) for step in said.steps), said.group).unless_none
    if any(left.values):
        told.append(list(filled("rest/one" if left.of_one and left.alone else "rest", language, said, rest=left)))
    return list(between(language.sentences["rounds"], told))


def _rounds(step: st.Step) -> tuple[tuple[int, int], ...]:
    """(needles of one loop each before the changed one, how often) of each stretch that is worked."""
    assert isinstance(step, st.SpreadEvenly)
    stretches = ((step.first_singles, step.first_runs), (step.singles, step.runs), (step.more_singles, step.more_runs))
    return tuple((singles, runs) for singles, runs in stretches if runs)


def _round(column: Column[tuple[int, int]], said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """One stretch; a dash leaves it out."""
    singles, times = (Graded(tuple(None if one is None else one[i] for one in column), said.group) for i in (0, 1))
    each = "" if singles.always(0) else "one" if singles.always(1) else "singles"
    key = "-".join(part for part in (each, "once" if times.of_one and times.alone else "") if part)
    return list(filled(f"round/{key}" if key else "round", language, said, times=times, singles=singles))


def _left(step: st.Step) -> int:
    """Needles that get one loop each after the last changed one."""
    assert isinstance(step, st.SpreadEvenly)
    return step.left


MOST_NEEDLES = 6
"""Needles of a panel of rib that are named one by one; of more, how they are counted off is told."""


FEW_STAGES = 4
"""Rows that are named one by one."""


def few_wales(said: StepSaid) -> bool:
    """Whether every size has so few wales in a panel that each can be named."""
    return all(0 < len(_wales(step)) <= MOST_NEEDLES for step in said.steps if step is not None)


def uneven_middle(said: StepSaid) -> bool:
    """Whether more plain wales lie side by side in the middle of a rib of any size than elsewhere in it, or fewer."""
    ribs = [step for step in said.steps if isinstance(step, st.LatchRib | st.LatchInStages)]
    return any(2 * rib.begin != rib.every - 1 for rib in ribs) and all(rib.begin for rib in ribs)


def needles_named(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The needles of a step from left to right, each with dashes for the sizes that have it not."""
    lists = [() if step is None else _own_needles(step) for step in said.steps]
    slots = sorted({slot for found in lists for slot in found})
    numbers = (Graded(tuple(slot if slot in found else None for found in lists), said.group) for slot in slots)
    return list(between(language.sentences["between"], ([n.needle(language)] for n in numbers), language.sentences["and"]))


def _own_needles(step: st.Step) -> tuple[int, ...]:
    assert isinstance(step, ColumnsUp)
    return step.needles


def wales(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The needles of a panel of rib from left to right, each as all sizes have it; a size that has fewer has dashes at the end."""
    lists = [None if step is None else _wales(step) for step in said.steps]
    longest = max(len(found) for found in lists if found)
    columns = (
        [Graded(tuple(found[i] if found and i < len(found) else None for found in lists), said.group).needle(language)]
        for i in range(longest)
    )
    return list(between(language.sentences["between"], columns, language.sentences["and"]))


def _wales(step: st.Step) -> list[int]:
    """Slots counted off outwards in both halves of the bed."""
    assert isinstance(step, st.LatchPanel | st.LatchPanelInStages)
    outwards = {slot: slot if slot >= 0 else -1 - slot for slot in range(step.first, step.last + 1)}
    return [slot for slot, n in outwards.items() if n >= step.begin and (n - step.begin) % step.every == 0]


def rows_listed(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The rows of the stages, many of them by how often they come, or for each size by itself: nobody picks the own number out of
    a dozen brackets. Sizes that have fewer have dashes before their last one."""
    lists = [step.rows if isinstance(step, st.LatchInStages | st.LatchPanelInStages) else None for step in said.steps]
    longest = max(len(rows) for rows in lists if rows)
    regular = _every(lists) if longest > FEW_STAGES else None
    if regular is not None:
        every, more = regular

        def nth(number: int) -> Graded:
            return Graded(tuple(rows[number] if rows else None for rows in lists), said.group)

        if more:
            return list(filled("stages/more", language, every=every, first=nth(0), last=nth(-2), more=nth(-1)))
        return list(filled("stages/every", language, every=every, first=nth(0), last=nth(-1)))
    if sum(not _graded_row(lists, i, longest, said.group).alone for i in range(longest)) > FEW_STAGES:
        return list(filled("stages/at", language, rows=_size_by_size(lists, said.group, language)))
    return list(filled("stages/at", language, rows=readings(lists, said.group, language)))


def readings(lists: Sequence[tuple[int, ...] | None], group: tuple[int, ...], language: PrintedLanguage) -> tuple[Part, ...]:
    """Rows that all sizes have as many of one after the other, or else for each size by itself: a list with dashes in it has to be
    searched for the own rows."""
    longest = max(len(rows) for rows in lists if rows)
    if any(0 < len(lists[i] or ()) < longest for i in group):
        return _size_by_size(lists, group, language)
    return enumerated([_graded_row(lists, i, longest, group) for i in range(longest)], language)


def _size_by_size(lists: Sequence[tuple[int, ...] | None], group: tuple[int, ...], language: PrintedLanguage) -> tuple[Part, ...]:
    """The rows of those sizes that have the same, one after the other."""
    of = {lists[i]: tuple(n for n in group if lists[n] == lists[i]) for i in group}
    told: list[Iterable[Part]] = []
    for rows, sizes in ((rows, sizes) for rows, sizes in of.items() if rows):
        listed = tuple(
            between(language.sentences["between"], ([Run(str(row), "number")] for row in rows), language.sentences["and"])
        )
        told.append(filled("stages/sizes", language, sizes=language.named_sizes(sizes), rows=listed))
    return tuple(between(language.sentences["rounds"], told))


def _every(lists: Sequence[tuple[int, ...] | None]) -> tuple[int, bool] | None:
    """Every how many rows the stages come in all sizes, and whether the last one comes otherwise; None where they do not."""
    working = [rows for rows in lists if rows]
    if any(len(rows) < 2 for rows in working):
        return None
    for more in (False, True):
        apart = {b - a for rows in working for a, b in pairwise(rows[: len(rows) - more])}
        if len(apart) == 1:
            return apart.pop(), more
    return None


def _graded_row(lists: Sequence[tuple[int, ...] | None], number: int, longest: int, group: tuple[int, ...]) -> Graded:
    """Number `number` of lists of which the longest has so many; a shorter one has dashes before its last number."""

    def row(rows: tuple[int, ...] | None) -> int | None:
        if not rows or (number < longest - 1 and number >= len(rows) - 1):
            return None
        return rows[-1] if number == longest - 1 else rows[number]

    return Graded(tuple(row(rows) for rows in lists), group)


def enumerated(numbers: Sequence[Graded], language: PrintedLanguage) -> tuple[Part, ...]:
    """Graded numbers one after the other."""
    columns = ([number.number(language)] for number in numbers)
    return tuple(between(language.sentences["between"], columns, language.sentences["and"]))


def looser(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """By how many numbers of the dial."""
    least, *most = said.any.by
    if most:
        return list(filled("looser/range", language, least=least, most=most[0]))
    return list(filled("looser", language, least=least))
