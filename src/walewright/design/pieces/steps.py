"""Edges that move in steps: how many there are, and, where they differ, how much each of them moves."""

from __future__ import annotations

from walewright.design.findings import within
from walewright.design.model import CountPerSize, PerSize, StepsAlike
from walewright.design.pieces.outline import NOTHING
from walewright.design.reading.numbered import numbered
from walewright.design.reading.places import AmountPlace
from walewright.record import record
from walewright.report.said import Said, said
from walewright.source import syntax

MOST_STEPS = 200
"""More steps than that are a slope."""


@record
class StepsFound:
    """The steps of a statement by size: how many, none of another path; and, where they are of several sizes, what each moves."""

    count: CountPerSize = ()
    in_turn: tuple[StepsAlike, ...] = ()

    @property
    def far(self) -> PerSize:
        """How far they go in all, of several sizes."""
        moves = [[by * n for by, n in zip(alike.cm, alike.times, strict=True)] for alike in self.in_turn]
        return tuple(sum(of_size) for of_size in zip(*moves, strict=True))


def steps_of(node: syntax.EdgeLine, place: AmountPlace, what: Said) -> StepsFound | None:
    """In which steps an edge goes, measured at its level; none where it goes otherwise. None when told why they cannot be."""
    if node.path != "steps":
        return StepsFound()
    if not node.in_turn:
        times = _times(node, node.times, place) if node.times is not None else ()
        return None if times is None else StepsFound(times)
    found: list[StepsAlike] = []
    for alike in node.in_turn:
        by = place.across(alike.by, said("edge-of", of=what))
        times = _times(node, alike.times, place)
        if by is None or times is None:
            return None
        found.append(StepsAlike(by, times))
    count = tuple(sum(of_size) for of_size in zip(*(alike.times for alike in found), strict=True))
    if not _few_enough(node, count, place) or not _one_way(node, found, place):
        return None
    return StepsFound(count, tuple(found))


def _times(node: syntax.EdgeLine, wanted: int | syntax.Name, place: AmountPlace) -> CountPerSize | None:
    times = numbered(wanted, place.scope, said("steps-to", level=node.to_level), place.findings)
    return times if times is not None and _few_enough(node, times, place) else None


def _few_enough(node: syntax.EdgeLine, times: CountPerSize, place: AmountPlace) -> bool:
    wrong = tuple(s for s, n in zip(place.scope.sizes, times, strict=True) if not 1 <= n <= MOST_STEPS)
    if wrong:
        first = times[place.scope.sizes.index(wrong[0])]
        kind = "not-positive/edge-steps" if first < 1 else "absurd-count/edge-steps"
        only = place.scope.only(wrong)
        helps = within(first, 1, MOST_STEPS)
        place.findings.report(kind, (node.span, "steps"), helps=helps, sizes=only, most=MOST_STEPS, times=first)
    return not wrong


def _one_way(node: syntax.EdgeLine, steps: list[StepsAlike], place: AmountPlace) -> bool:
    """Whether all steps go the way of the first one, and each goes somewhere."""
    for number, alike in enumerate(steps[1:], 1):
        wrong = tuple(
            s for s, first, by in zip(place.scope.sizes, steps[0].cm, alike.cm, strict=True) if first * by < NOTHING * NOTHING
        )
        if wrong:
            place.findings.report(
                "steps-turn-back",
                (node.in_turn[number].span, "other-way"),
                (node.in_turn[0].span, "first"),
                helps=("one-way",),
                sizes=place.scope.only(wrong),
                to_level=node.to_level,
            )
            return False
    return True
