"""Tuck, slip, long stitches and colour by hand: what becomes of the yarn laid over held needles, and what is refused."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bed.by_hand import Ops, fabric, refusal, rows
from walewright.bed import BedResult, KnitFabric, LoopKind
from walewright.knit.operations import (
    CastOn,
    DrawLong,
    Hold,
    InFabric,
    IntoWork,
    LayIn,
    LiftOff,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    Pass,
    Release,
    Side,
    UseYarn,
    Wrap,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 5), UseYarn("wool", "4"), CastOn("e-wrap", 0, 5))
"""Loops 0..5 on R 1 .. R 6, the carriage at the right."""
OFF = OntoWaste(0, 5, 8, "end")


def by_slot(made: KnitFabric, first_loop: int, count: int) -> dict[int, tuple[int, ...]]:
    return {made.slots[i]: made.parents_of(i) for i in range(first_loop, first_loop + count)}


# ------------------------------------------------------------------ tuck


def test_the_stitch_after_a_tuck_is_drawn_through_all_its_bars(one: One) -> None:
    made = fabric(one(*START, Hold(2, 2), *rows(2, "left"), Release(2, 2), Pass("left"), OFF))
    first, second, third = made.passes()
    bars = (first.first_loop + 5, second.first_loop + 5)
    assert [made.kinds[bar] for bar in bars] == [LoopKind.BAR, LoopKind.BAR]
    assert by_slot(made, third.first_loop, 6)[2] == (2, *bars)
    assert by_slot(made, third.first_loop, 6)[1] == (second.first_loop + 1,)
    assert made.floats == ()


def test_a_tuck_row_is_as_wide_as_the_others_and_counts_in_its_wale(one: One) -> None:
    made = fabric(one(*START, Hold(2, 2), Pass("left"), Release(2, 2), Pass("right"), OFF, NameEdge("side", "outer", 0, 2)))
    tucked, plain = made.passes()
    assert (tucked.count, plain.count) == (5, 6)
    assert made.held_in(tucked) == {2}
    assert made.stitches_at(1) == made.stitches_at(2) == 6
    assert made.width_cm(1) == made.width_cm(2) == pytest.approx(6 / 1.3)
    assert made.rows_in_wale(2) == made.rows_in_wale(3) == 2
    assert [edge.count for edge in made.edge("side")] == [2]


def tucked(count: int) -> Ops:
    side: Side = "left" if count % 2 == 0 else "right"
    return [Hold(2, 2), *rows(count, "left"), Release(2, 2), Pass(side)]


def test_a_hook_takes_the_yarn_of_four_rows(one: One) -> None:
    made = fabric(one(*START, *tucked(4), OFF))
    assert len(made.parents_of(made.passes()[-1].first_loop + 2)) == 5
    assert refusal(one(*START, *tucked(5), OFF)) == "tuck-too-long"


def test_rows_are_counted_anew_after_the_tuck_was_knitted(one: One) -> None:
    fabric(one(*START, *tucked(3), *tucked(3), OFF))


def test_tucks_side_by_side_are_refused(one: One) -> None:
    assert refusal(one(*START, Hold(2, 3), Pass("left"), Release(2, 3), Pass("right"), OFF)) == "tuck-side-by-side"
    assert refusal(one(*START, Hold(2, 3), Pass("left"), Release(2, 3), OFF)) == "tuck-side-by-side"
    fabric(one(*START, Hold(2, 2), Hold(4, 4), Pass("left"), Release(2, 2), Release(4, 4), Pass("right"), OFF))


def test_needles_held_at_the_end_tuck_nothing(one: One) -> None:
    fabric(one(*START, Hold(0, 2), Pass("left"), Wrap(2), Pass("right"), Release(0, 2), OFF))


# ------------------------------------------------------------------ slip


def test_yarn_lifted_off_floats_past_and_is_no_loop(one: One) -> None:
    made = fabric(one(*START, Hold(2, 3), Pass("left"), LiftOff(2, 3), Release(2, 3), Pass("right"), OFF))
    lower, upper = made.passes()
    assert by_slot(made, upper.first_loop, 6) == {0: (6,), 1: (7,), 2: (2,), 3: (3,), 4: (8,), 5: (9,)}
    assert [made.kinds[i] for i in (10, 11)] == [LoopKind.FLOAT, LoopKind.FLOAT]
    assert [(f.counter, f.yarn, f.first, f.last, f.needles) for f in made.floats] == [(1, "wool", 2, 3, 2)]
    assert made.loops == 6 + 4 + 6 == sum(made.loops_by_yarn.values())
    assert made.stitches_in(lower) == 6


def test_lifted_in_two_goes_it_is_still_one_float(one: One) -> None:
    made = fabric(one(*START, Hold(2, 4), Pass("left"), LiftOff(3, 3), LiftOff(2, 2), LiftOff(4, 4), Release(2, 4), OFF))
    assert [(f.first, f.last) for f in made.floats] == [(2, 4)]


def test_a_tuck_below_stays_when_the_row_is_lifted_off(one: One) -> None:
    made = fabric(one(*START, Hold(2, 2), *rows(2, "left"), LiftOff(2, 2), Release(2, 2), Pass("left"), OFF))
    first, _, last = made.passes()
    assert by_slot(made, last.first_loop, 6)[2] == (2, first.first_loop + 5)


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        ((Hold(2, 2), LiftOff(2, 2)), "nothing-laid"),
        ((Pass("left"), LiftOff(2, 2)), "not-held"),
        ((Pass("left"), Hold(2, 2), LiftOff(2, 2)), "nothing-laid"),
        ((Hold(2, 2), Pass("left"), LiftOff(2, 2), LiftOff(2, 2)), "nothing-laid"),
        ((Hold(2, 2), Pass("left"), Release(2, 2), LiftOff(2, 2)), "not-held"),
        ((Hold(0, 1), Pass("left"), LiftOff(1, 1)), "float-at-edge"),
        ((Hold(2, 2), Pass("left"), LiftOff(3, 2)), "needles-reversed"),
        ((Hold(2, 2), Pass("left"), LiftOff(2, 40)), "beyond-bed"),
    ],
)
def test_what_cannot_be_lifted_off(one: One, ops: tuple[Operation, ...], code: str) -> None:
    assert refusal(one(*START, *ops)) == code


# ------------------------------------------------------------------ long stitches


def test_a_long_stitch_is_drawn_through_what_its_needle_carried(one: One) -> None:
    made = fabric(one(*START, Hold(2, 2), *rows(2, "left"), DrawLong(2), Release(2, 2), Pass("left"), OFF))
    first, second, third = made.passes()
    long = second.first_loop + 5
    assert made.kinds[long] == LoopKind.LONG
    assert made.parents_of(long) == (2, first.first_loop + 5)
    assert made.parents_of(third.first_loop + 2) == (long,)
    assert made.floats == ()


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        ((Hold(2, 2), DrawLong(2)), "nothing-laid"),
        ((Hold(2, 2), Pass("left"), LiftOff(2, 2), DrawLong(2)), "nothing-laid"),
        ((Hold(2, 2), Pass("left"), DrawLong(2), DrawLong(2)), "nothing-laid"),
        ((Pass("left"), DrawLong(2)), "not-held"),
        ((DrawLong(20),), "beyond-bed"),
    ],
)
def test_what_cannot_be_drawn_long(one: One, ops: tuple[Operation, ...], code: str) -> None:
    assert refusal(one(*START, *ops)) == code


# ------------------------------------------------------------------ colour by hand


def navy(*needles: int, to: Side) -> Ops:
    """Hold, knit, lift, lay in: a row of two yarns."""
    holds: Ops = [Hold(s, s) for s in needles]
    lifts: Ops = [LiftOff(s, s) for s in needles]
    back: Ops = [Release(s, s) for s in needles]
    return [*holds, Pass(to), *lifts, LayIn("navy", "4", needles, to), *back]


def test_loops_laid_in_are_the_rows_own_stitches(one: One) -> None:
    made = fabric(one(*START, *navy(1, 4, to="left"), Pass("right"), OFF))
    row, above = made.passes()
    (laid,) = (course for course in made.courses if course.kind == "by hand")
    assert (laid.yarn, laid.tension, laid.counter, laid.first, laid.last, laid.count, laid.to) == ("navy", "4", 1, 1, 4, 2, "left")
    assert laid.run != row.run
    assert by_slot(made, laid.first_loop, 2) == {1: (1,), 4: (4,)}
    assert [made.kinds[laid.first_loop + i] for i in range(2)] == [LoopKind.KNIT, LoopKind.KNIT]
    assert by_slot(made, above.first_loop, 6)[4] == (laid.first_loop + 1,)
    assert made.stitches_at(1) == 6
    assert made.loops_by_yarn == {("wool", "4"): 6 + 4 + 6, ("navy", "4"): 2}


def test_both_yarns_float_where_the_other_one_knits(one: One) -> None:
    made = fabric(one(*START, *navy(1, 4, to="left"), Pass("right"), OFF))
    assert {(f.counter, f.yarn, f.first, f.last) for f in made.floats} == {(1, "wool", 1, 1), (1, "wool", 4, 4), (1, "navy", 2, 3)}


def test_the_other_yarn_goes_on_from_where_it_hangs(one: One) -> None:
    made = fabric(one(*START, *navy(1, 4, to="left"), *navy(1, 3, to="right"), OFF))
    runs = [course.run for course in made.courses if course.kind == "by hand"]
    assert len(runs) == 2
    assert runs[0] == runs[1]
    again = fabric(one(*START, *navy(1, 4, to="left"), Pass("right"), *navy(1, 4, to="left"), OFF))
    runs = [course.run for course in again.courses if course.kind == "by hand"]
    assert runs[0] != runs[1], "it hangs at the left and is laid from the right: another end"


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        ((Hold(2, 2), Pass("left"), LiftOff(2, 2), LayIn("navy", "4", (2, 3), "left")), "lay-in-not-held"),
        ((Hold(2, 2), Pass("left"), LayIn("navy", "4", (2,), "left")), "lay-in-over-yarn"),
        ((Hold(2, 2), LayIn("navy", "4", (2,), "left")), "nothing-laid"),
        ((Hold(0, 0), Pass("left"), LayIn("navy", "4", (0,), "left")), "float-at-edge"),
        ((Hold(2, 2), Pass("left"), LiftOff(2, 2), LayIn("waste", "4", (2,), "left")), "only-waste-yarn"),
        ((Hold(2, 2), Pass("left"), LiftOff(2, 2), LayIn("navy", "4", (), "left")), "lay-in-nowhere"),
        ((Hold(2, 2), Pass("left"), LiftOff(2, 2), LayIn("navy", "4", (2, 2), "left")), "needles-reversed"),
        (
            (Hold(2, 2), Hold(4, 4), Pass("left"), LiftOff(2, 2), LiftOff(4, 4), LayIn("navy", "4", (4, 2), "left")),
            "needles-reversed",
        ),
        (
            (Hold(2, 2), Pass("left"), LiftOff(2, 2), LayIn("navy", "4", (2,), "left"), LayIn("navy", "4", (2,), "left")),
            "nothing-laid",
        ),
    ],
)
def test_what_cannot_be_laid_in(one: One, ops: tuple[Operation, ...], code: str) -> None:
    assert refusal(one(*START, *ops)) == code


SOUND = (*START, *navy(1, 4, to="left"), Hold(2, 2), Pass("right"), DrawLong(2), Release(2, 2), Pass("left"), OFF)


@pytest.mark.parametrize(
    ("was", "is_"),
    [
        (LayIn("navy", "4", (1, 4), "left"), LayIn("green", "4", (1, 4), "left")),
        (LayIn("navy", "4", (1, 4), "left"), LayIn("navy", "3", (1, 4), "left")),
        (LayIn("navy", "4", (1, 4), "left"), LayIn("navy", "4", (1,), "left")),
        (LayIn("navy", "4", (1, 4), "left"), LayIn("navy", "4", (1, 4), "right")),
        (LiftOff(4, 4), LiftOff(1, 4)),
        (DrawLong(2), LiftOff(2, 2)),
        (DrawLong(2), InFabric("")),
        (Hold(2, 2), Hold(3, 3)),
        (Hold(4, 4), Hold(3, 3)),
    ],
)
def test_a_slip_in_hand_work_makes_another_fabric_or_none(one: One, was: Operation, is_: Operation) -> None:
    sound = fabric(one(*SOUND))
    result = one(*(is_ if op == was else op for op in SOUND))
    assert result.faults or result.fabrics[0] != sound
