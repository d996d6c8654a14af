"""Needles in a list: ranges, and what comes again at equal distances."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.record import record
from walewright.write.filling import Part, filled
from walewright.write.language import PrintedLanguage
from walewright.write.model import Abbreviation, Run
from walewright.write.said import between

_OFTEN = 3
"""Ranges alike from which on they are told as one."""


@record
class LikeRuns:
    """`times` runs of `count` neighbours, each begun `every` needles after the one before it, the first on slot `first`."""

    first: int
    count: int
    every: int
    times: int

    @property
    def last(self) -> int:
        """The last needle of the last run."""
        return self.first + self.every * (self.times - 1) + self.count - 1


def in_runs(slots: Sequence[int]) -> tuple[LikeRuns, ...]:
    """The slots, which rise, as few things to say."""
    left = _neighbours(slots)
    made: list[LikeRuns] = []
    while left:
        best = _longest(left)
        made.append(best)
        told = {best.first + best.every * number for number in range(best.times)}
        left = [run for run in left if run[0] not in told]
    return tuple(sorted(made, key=lambda run: run.first))


def _neighbours(slots: Sequence[int]) -> list[tuple[int, int]]:
    """(first, how many)."""
    made: list[tuple[int, int]] = []
    for slot in slots:
        if made and made[-1][0] + made[-1][1] == slot:
            made[-1] = (made[-1][0], made[-1][1] + 1)
        else:
            made.append((slot, 1))
    return made


def _longest(left: list[tuple[int, int]]) -> LikeRuns:
    """The longest row of like runs at equal distances that begins with the first one; that one alone where no other follows."""
    first, count = left[0]
    begins = {begin for begin, many in left if many == count}
    best = LikeRuns(first, count, 0, 1)
    for begin in sorted(begins - {first}):
        every = begin - first
        times = 1
        while first + every * times in begins:
            times += 1
        if times > best.times and times >= _OFTEN:
            best = LikeRuns(first, count, every, times)
    return best


def listed(slots: Sequence[int], language: PrintedLanguage) -> list[Part]:
    """The needles in words, with commas between."""
    return list(between(language.sentences["between"], (_told(run, language) for run in in_runs(slots))))


def _told(run: LikeRuns, language: PrintedLanguage) -> Iterator[Part]:
    first, last = (needle_run(run.first, language),), (needle_run(run.last, language),)
    if run.first == run.last:
        return filled("listed/needle", language, first=first)
    if run.times == 1 and run.count == 2:
        # Two side by side are no run to count along.
        both = (filled("listed/needle", language, first=one) for one in (first, last))
        return between(language.sentences["between"], both)
    if run.times == 1:
        return filled("listed/run", language, first=first, last=last)
    if run.count == 1:
        every = language.ordinal(run.every)
        return filled("listed/every", language, every=every, first=first, last=last)
    return filled("listed/groups", language, count=run.count, every=run.every, first=first, last=last)


def needle_run(slot: int, language: PrintedLanguage) -> Run:
    """One needle."""
    side = Abbreviation.LEFT if slot < 0 else Abbreviation.RIGHT
    return Run(language.needle(slot), "needle", frozenset({side}))
