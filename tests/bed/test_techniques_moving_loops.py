"""Eyelets and decreases, ladders, latched columns and cables: whose parents are whose, and what is refused."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bed.by_hand import Ops, fabric, refusal, rows
from walewright.bed import BedResult, KnitFabric, LoopKind
from walewright.knit.operations import (
    CastOff,
    CastOn,
    Cross,
    Drop,
    FillFromBelow,
    Hold,
    IntoWork,
    LatchUp,
    MoveCarriage,
    OntoWaste,
    Operation,
    OutOfWork,
    Pass,
    Transfer,
    UseYarn,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 7), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7))
"""Loops 0..7 on R 1 .. R 8, the carriage at the right."""
OFF = OntoWaste(0, 7, 8, "end")


def row(made: KnitFabric, number: int) -> dict[int, int]:
    """Slot -> loop of row `number` (1 ...)."""
    (course,) = made.passes(number)
    return {made.slots[i]: i for i in range(course.first_loop, course.first_loop + course.count)}


# ------------------------------------------------------------------ lace


def test_a_run_moved_from_a_hole_ends_in_two_together(one: One) -> None:
    made = fabric(one(*START, Transfer(2, 4, 1), *rows(2, "left"), OFF))
    first = row(made, 1)
    assert [made.parents_of(first[s]) for s in range(8)] == [(0,), (1,), (), (2,), (3,), (5, 4), (6,), (7,)]
    assert made.kinds[first[2]] == LoopKind.BAR
    assert made.parents_of(row(made, 2)[2]) == (first[2],)


def test_a_run_lifted_without_its_last_loop_is_another_fabric(one: One) -> None:
    sound = fabric(one(*START, Transfer(2, 4, 1), *rows(2, "left"), OFF))
    assert fabric(one(*START, Transfer(2, 3, 1), *rows(2, "left"), OFF)) != sound
    assert refusal(one(*START, Transfer(2, 5, 1), *rows(2, "left"), OFF)) == "tool-too-narrow"


# ------------------------------------------------------------------ ladders


LADDER = (*START, Transfer(3, 3, 1), *rows(3, "left"), Drop(3, 3))


def test_a_ladder_is_bars_that_no_loop_holds(one: One) -> None:
    made = fabric(one(*LADDER, *rows(2, "right"), OFF))
    for number in (1, 2, 3):
        bar = row(made, number)[3]
        assert (made.kinds[bar], made.parents_of(bar)) == (LoopKind.FLOAT, ())
    assert made.parents_of(row(made, 1)[4]) == (4, 3)
    assert made.kinds[row(made, 4)[3]] == LoopKind.BAR
    assert made.parents_of(row(made, 5)[3]) == (row(made, 4)[3],)
    assert made.floats == (), "a ladder's bars lie one above the other"
    assert made.loops == 8 * 6, "their yarn is spent all the same"


def test_dropped_at_the_end_a_ladder_needs_nothing_more(one: One) -> None:
    made = fabric(one(*LADDER, OutOfWork(3, 3), OntoWaste(0, 2, 8, "end left"), OntoWaste(4, 7, 8, "end right")))
    assert made.kinds.count(LoopKind.FLOAT) == 3


@pytest.mark.parametrize("rows_down", [1, 2])
def test_a_ladder_that_stops_on_a_stitch_runs_on(one: One, rows_down: int) -> None:
    begun = (*START, Transfer(3, 3, 1), *rows(3, "left"), Drop(3, rows_down))
    assert refusal(one(*begun, Pass("right"), OFF)) == "ladder-runs-on"
    ends = (OutOfWork(3, 3), OntoWaste(0, 2, 8, "end left"), OntoWaste(4, 7, 8, "end right"))
    assert refusal(one(*begun, *ends)) == "ladder-runs-on"


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        ((*rows(2, "left"), Drop(3, 3)), "drop-too-deep"),
        ((*rows(2, "left"), Drop(3, 0)), "drop-too-deep"),
        ((*rows(1, "left"), Transfer(2, 2, 1), *rows(1, "right"), Drop(3, 2)), "drop-through-join"),
        ((*rows(1, "left"), Transfer(2, 2, 1), Drop(3, 1)), "drop-through-join"),
        ((*rows(1, "left"), Transfer(3, 3, -1), Transfer(2, 2, 1), Drop(3, 1)), "drop-through-join"),
        ((*rows(2, "left"), Cross(2, 3, 1, "left"), Drop(3, 1)), "drop-through-join"),
        (
            (*rows(3, "left"), IntoWork(8, 8), Transfer(7, 7, 1), FillFromBelow(7, 6), Drop(6, 2)),
            "drop-through-join",
        ),
        ((*rows(2, "left"), Hold(3, 3), Drop(3, 1)), "needle-held"),
        ((*rows(2, "left"), Drop(3, 1), Drop(3, 1)), "drop-too-deep"),
        ((Drop(33, 1),), "beyond-bed"),
    ],
)
def test_what_cannot_run_down(one: One, ops: Ops, code: str) -> None:
    assert refusal(one(*START, *ops)) == code


# ------------------------------------------------------------------ purl columns


def test_dropped_and_latched_up_is_as_latched_up_at_once(one: One) -> None:
    both = fabric(one(*START, *rows(3, "left"), Drop(3, 2), LatchUp(3, 2), Pass("right"), OFF))
    at_once = fabric(one(*START, *rows(3, "left"), LatchUp(3, 2), Pass("right"), OFF))
    assert [both.faces[row(both, n)[3]] for n in (1, 2, 3, 4)] == [0, 1, 1, 0]
    assert both.kinds.count(LoopKind.FLOAT) == 0
    assert both == at_once


@pytest.mark.parametrize("up", [1, 3])
def test_what_was_dropped_comes_up_whole(one: One, up: int) -> None:
    assert refusal(one(*START, *rows(3, "left"), Drop(3, 2), LatchUp(3, up))) == "latch-too-deep"


def test_a_wale_does_not_come_up_on_a_loop(one: One) -> None:
    assert refusal(one(*START, *rows(3, "left"), Drop(3, 2), Transfer(2, 2, 1), LatchUp(3, 2))) == "latch-over-loop"


# ------------------------------------------------------------------ cables


def test_crossed_loops_keep_what_they_are_drawn_through(one: One) -> None:
    made = fabric(one(*START, *rows(2, "left"), Cross(2, 5, 2, "left"), Pass("left"), OFF))
    below, above = row(made, 2), row(made, 3)
    assert [made.parents_of(below[s]) for s in range(8)] == [(row(made, 1)[s],) for s in range(8)]
    came = {2: 4, 3: 5, 4: 2, 5: 3}
    assert [made.parents_of(above[s]) for s in range(8)] == [(below[came.get(s, s)],) for s in range(8)]
    (crossed,) = made.crosses
    assert (crossed.counter, crossed.first, crossed.last, crossed.left, crossed.front) == (2, 2, 5, 2, "left")


def test_unequal_groups_cross_too(one: One) -> None:
    made = fabric(one(*START, *rows(2, "left"), Cross(2, 4, 1, "right"), Pass("left"), OFF))
    below, above = row(made, 2), row(made, 3)
    assert [made.parents_of(above[s]) for s in (2, 3, 4)] == [(below[3],), (below[4],), (below[2],)]


@pytest.mark.parametrize(
    "damaged", [Cross(2, 5, 2, "right"), Cross(2, 4, 2, "left"), Cross(1, 4, 2, "left"), Cross(2, 3, 1, "left")]
)
def test_a_cable_crossed_otherwise_is_another_fabric(one: One, damaged: Cross) -> None:
    sound = fabric(one(*START, *rows(2, "left"), Cross(2, 5, 2, "left"), Pass("left"), OFF))
    assert fabric(one(*START, *rows(2, "left"), damaged, Pass("left"), OFF)) != sound


def test_three_over_three_needs_slack_beside_it(one: One) -> None:
    two = rows(2, "left")
    assert refusal(one(*START, *two, Cross(1, 6, 3, "left"))) == "cross-without-slack"
    dropped: Ops = [Drop(0, 2), Cross(1, 6, 3, "left"), LatchUp(0, 2)]
    made = fabric(one(*START, *two, *dropped, Pass("left"), OFF))
    assert [made.faces[row(made, n)[0]] for n in (1, 2, 3)] == [1, 1, 0]
    assert made.parents_of(row(made, 3)[0]) == (row(made, 2)[0],)
    fabric(one(*START, *two, Cross(2, 7, 3, "left"), Pass("left"), OFF))
    fabric(one(*START, *two, Transfer(0, 0, 1), Transfer(1, 1, -1), Cross(2, 7, 3, "left"), Pass("left"), Pass("right"), OFF))
    eyelet: Ops = [Transfer(7, 7, -1), OutOfWork(7, 7), Cross(1, 6, 3, "left"), Pass("left"), OntoWaste(0, 6, 8, "end")]
    fabric(one(*START, *two, *eyelet))


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        ((Transfer(3, 3, 1), Cross(2, 5, 2, "left")), "cross-empty"),
        ((Cross(0, 7, 4, "left"),), "tool-too-narrow"),
        ((Cross(2, 5, 0, "left"),), "cross-of-one-group"),
        ((Cross(2, 5, 4, "left"),), "cross-of-one-group"),
        ((Hold(0, 2), Cross(2, 5, 2, "left")), "needle-held"),
        ((CastOff(6, 7, "right"), Cross(5, 6, 1, "left")), "not-in-work"),
        ((Cross(18, 21, 2, "left"),), "beyond-bed"),
    ],
)
def test_what_cannot_be_crossed(one: One, ops: tuple[Operation, ...], code: str) -> None:
    assert refusal(one(*START, *rows(2, "left"), *ops)) == code
