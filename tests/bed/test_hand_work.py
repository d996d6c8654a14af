"""Closing, gathering, hanging back, casting on in mid-row, hanging on: who is drawn through whom, and on which needle."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bed.by_hand import fabric
from tests.bed.words import told
from walewright.bed import BedResult, KnitFabric, LoopKind
from walewright.bed.lying import from_the_left
from walewright.knit.operations import (
    BreakYarn,
    CastOn,
    Close,
    Gather,
    Hold,
    IntoWork,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    Pass,
    Release,
    Spread,
    UseYarn,
    needle,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 5), UseYarn("wool", "4"), CastOn("e-wrap", 0, 5))
"""Loops 0..5 on R 1 .. R 6, the carriage at the right."""


def refusal(result: BedResult) -> tuple[str, str]:
    (fault,) = result.faults
    return fault.code, told(fault)


# ------------------------------------------------------------------ close


def test_closing_draws_loops_through_each_other_and_on_to_the_neighbour(one: One) -> None:
    made = fabric(one(*START, Close(2, 3, "right"), Pass("left"), OntoWaste(4, 5, 8, "a"), OntoWaste(0, 1, 8, "b")))
    assert [(made.slots[i], made.parents_of(i), made.kinds[i]) for i in (6, 7)] == [
        (2, (2,), LoopKind.CLOSED),
        (3, (3, 6), LoopKind.CLOSED),
    ]
    (row,) = made.passes()
    assert [(made.slots[i], made.parents_of(i)) for i in range(row.first_loop, row.first_loop + row.count)] == [
        (0, (0,)),
        (1, (1,)),
        (4, (4, 7)),
        (5, (5,)),
    ]
    assert made.loops == 6 + 4, "no yarn is in a closed loop"


def test_closing_towards_the_left_is_its_mirror_image(one: One) -> None:
    made = fabric(one(*START, Close(2, 3, "left"), Pass("left"), OntoWaste(4, 5, 8, "a"), OntoWaste(0, 1, 8, "b")))
    assert [(made.slots[i], made.parents_of(i)) for i in (6, 7)] == [(3, (3,)), (2, (2, 6))]
    assert made.parents_of(made.passes()[0].first_loop + 1) == (1, 7)


def test_closing_needs_no_yarn_and_takes_a_held_neighbour(one: One) -> None:
    held = (Pass("left"), Hold(4, 5), BreakYarn(), Close(2, 3, "right"), UseYarn("wool", "4"), Pass("right"))
    made = fabric(one(*START, *held, BreakYarn(), Release(4, 5), OntoWaste(4, 5, 8, "a"), OntoWaste(0, 1, 8, "b")))
    (waiting,) = made.edge("a")
    assert waiting.points[0] == (10, 13), "its own loop and the last one closed"


@pytest.mark.parametrize(
    ("op", "code", "word"),
    [
        (Close(4, 5, "right"), "close-without-neighbour", "R 7"),
        (Close(0, 5, "left"), "close-without-neighbour", "L 1"),
        (Close(5, 6, "left"), "close-empty", "R 7"),
        (Close(4, 3, "left"), "needles-reversed", "R 5"),
        (Close(4, 20, "left"), "beyond-bed", "R 21"),
    ],
)
def test_what_cannot_be_closed(one: One, op: Close, code: str, word: str) -> None:
    found, message = refusal(one(*START, op))
    assert found == code
    assert word in message


def test_closing_held_stitches_or_waste_yarn_is_refused(one: One) -> None:
    assert refusal(one(*START, Pass("left"), Hold(4, 5), Close(4, 5, "left")))[0] == "needle-held"
    waste = (MoveCarriage("right"), IntoWork(0, 5), UseYarn("waste", "waste"), CastOn("comb", 0, 5), Close(2, 3, "left"))
    assert refusal(one(*waste))[0] == "only-waste-yarn"


# ------------------------------------------------------------------ gather


def test_gathered_stitches_are_held_by_the_thread(one: One) -> None:
    made = fabric(one(*START, Pass("left"), BreakYarn(), Gather(0, 5)))
    (end,) = made.edge("end")
    assert (end.count, end.live, end.points) == (6, False, tuple((loop,) for loop in range(6, 12)))
    assert made.edge("end left") == ()


@pytest.mark.parametrize(
    ("ops", "code", "word"),
    [
        ((Gather(0, 5),), "gather-yarn-unbroken", "wool"),
        ((BreakYarn(), Gather(0, 4)), "gather-not-all", "R 6"),
        ((BreakYarn(4), Gather(0, 5)), "tail-too-short", "R 6"),
        ((BreakYarn(), Gather(0, 6)), "gather-empty", "R 7"),
        ((BreakYarn(), Hold(4, 5), Gather(0, 3)), "gather-not-all", "held"),
        ((BreakYarn(), Hold(4, 5), Gather(0, 5)), "needle-held", "R 5"),
    ],
)
def test_what_cannot_be_gathered(one: One, ops: tuple[Operation, ...], code: str, word: str) -> None:
    found, message = refusal(one(*START, Pass("left"), *ops))
    assert found == code
    assert word in message


# ------------------------------------------------------------------ spread


def test_two_together_are_drawn_through_by_one(one: One) -> None:
    made = fabric(one(*START, Spread(0, 5, 1, (2, 1, 1, 2)), Pass("left"), OntoWaste(1, 4, 8, "end")))
    (row,) = made.passes()
    assert [(made.slots[i], made.parents_of(i)) for i in range(6, 10)] == [(1, (0, 1)), (2, (2,)), (3, (3,)), (4, (4, 5))]
    assert (row.first, row.last, row.live_first, row.live_last) == (1, 4, 1, 4)


def test_an_empty_needle_gets_a_bar_and_then_a_stitch(one: One) -> None:
    counts = (1, 1, 0, 1, 1, 0, 1, 1)
    made = fabric(one(*START, Spread(0, 5, -1, counts), Pass("left"), Pass("right"), OntoWaste(-1, 6, 8, "end")))
    assert [made.parents_of(i) for i in range(6, 14)] == [(0,), (1,), (), (2,), (3,), (), (4,), (5,)]
    assert [(bar.slot, bar.at_edge) for bar in made.bars] == [(1, False), (4, False)]
    assert made.stitches_at(2) == 8


def test_all_loops_of_a_needle_are_one_stitch(one: One) -> None:
    from walewright.knit.operations import OutOfWork, Transfer

    moved = (Transfer(5, 5, -1), OutOfWork(5, 5))
    made = fabric(one(*START, *moved, Spread(0, 4, 0, (1, 2, 2)), Pass("left"), OntoWaste(0, 2, 8, "end")))
    assert made.parents_of(8) == (3, 4, 5)


def test_the_edge_goes_on_from_the_new_end_without_a_way_sideways(one: One) -> None:
    rows = (Pass("left"), Pass("right"))
    ops = (*START, *rows, Spread(0, 5, 1, (2, 1, 1, 2)), *rows, OntoWaste(1, 4, 8, "end"), NameEdge("side", "outer", 0, 4))
    made = fabric(one(*ops))
    for part in ("left", "right"):
        (side,) = made.edge(f"side {part}")
        assert (side.count, side.length_cm) == (4, pytest.approx(4 / 1.85))
    assert made.hung_back(2) is not None
    assert made.hung_back(4) is None
    above = fabric(one(*ops[:-1], NameEdge("side", "outer", 2, 4)))
    assert above.edge("side")[0].length_cm == pytest.approx(2 / 1.85)


@pytest.mark.parametrize(
    ("ops", "code", "word"),
    [
        ((Spread(0, 5, 0, (1, 1, 1, 2)),), "spread-count", "6 stitches are taken off and 5"),
        ((Spread(0, 5, 0, (2, 1, 1, 1, 2)),), "spread-count", "7 hung back"),
        ((Spread(0, 5, 0, (1, 1, 3, 1)),), "spread-crowded", "R 3"),
        ((Spread(0, 5, 0, (2, 2, -1, 2, 1)),), "spread-count", "6"),
        ((Spread(0, 6, 0, (1,) * 7),), "not-in-work", "R 7"),
        ((IntoWork(6, 6), Spread(0, 6, 0, (1,) * 7)), "spread-empty", "R 7"),
        ((Pass("left"), Hold(4, 5), Spread(0, 5, 0, (2, 2, 2))), "needle-held", "R 5"),
        ((Spread(0, 3, 0, (1, 1, 1, 0, 1)),), "spread-over-loops", "R 5"),
        ((Spread(0, 5, 16, (1,) * 6),), "beyond-bed", "R 22"),
        ((Spread(0, 5, 0, (1, 1, 1, 0, 0, 1, 1, 1)), Pass("left")), "bars-side-by-side", "R 4"),
    ],
)
def test_what_cannot_be_hung_back(one: One, ops: tuple[Operation, ...], code: str, word: str) -> None:
    found, message = refusal(one(*START, *ops))
    assert found == code
    assert word in message


def test_the_yarn_goes_with_the_last_stitch(one: One) -> None:
    """Eight needles are left at the carriage's side, and yet the yarn does not float."""
    wide = (MoveCarriage("right"), IntoWork(-8, 7), UseYarn("wool", "4"), CastOn("e-wrap", -8, 7), Pass("left"), Pass("right"))
    assert one(*wide, Spread(-8, 7, -8, (2,) * 8), Pass("left"), OntoWaste(-8, -1, 8, "end")).faults == ()


# ------------------------------------------------------------------ cast on in mid-row


def slot(*again: Operation) -> tuple[Operation, ...]:
    return (*START, Pass("left"), OntoWaste(2, 3, 8, "thumb"), *again, Pass("right"), OntoWaste(0, 5, 8, "end"))


def test_a_slot_has_waiting_stitches_below_and_closed_ones_above(one: One) -> None:
    made = fabric(one(*slot(IntoWork(2, 3), CastOn("e-wrap", 2, 3, own_length=True))))
    (below,), (above,) = made.edge("thumb"), made.edge("thumb upper")
    assert (below.live, below.points) == (True, ((8,), (9,)))
    assert (above.live, above.points, above.part) == (False, ((12,), (13,)), "whole")
    assert made.edge("thumb_upper") == made.edge("thumb upper")
    row = made.passes(2)[0]
    assert [made.parents_of(row.first_loop + i) for i in range(6)] == [(6,), (7,), (12,), (13,), (10,), (11,)]
    runs = {(course.kind, course.apart): course.run for course in made.courses}
    assert runs["cast on", True] not in (runs["cast on", False], runs["knit", False]), "a length of its own"


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        (slot(IntoWork(2, 3)), "bars-side-by-side"),
        (slot(IntoWork(2, 3), CastOn("e-wrap", 2, 3)), "cast-on-away-from-carriage"),
        (slot(CastOn("e-wrap", 2, 3, own_length=True)), "not-in-work"),
        (slot(IntoWork(2, 3), CastOn("e-wrap", 1, 3, own_length=True)), "cast-on-over-loops"),
        (slot(IntoWork(2, 3), BreakYarn(), CastOn("e-wrap", 2, 3, own_length=True)), "no-yarn"),
        (slot(IntoWork(2, 3), CastOn("e-wrap", 2, 3, own_length=True, length_cm=3)), "length-too-short"),
        (slot(IntoWork(2, 3), CastOn("e-wrap", 2, 3, length_cm=30)), "length-unused"),
        (slot(IntoWork(2, 3), CastOn("comb", 2, 3, own_length=True)), "comb-in-garment-yarn"),
    ],
)
def test_a_slot_that_is_not_cast_on_again(one: One, ops: tuple[Operation, ...], code: str) -> None:
    assert refusal(one(*ops))[0] == code


def test_the_yarn_floats_over_no_wide_gap(one: One) -> None:
    wide = (MoveCarriage("right"), IntoWork(-8, 7), UseYarn("wool", "4"), CastOn("e-wrap", -8, 7))
    code, message = refusal(one(*wide, OntoWaste(-3, 2, 8, "pocket"), Pass("left")))
    assert code == "yarn-float"
    assert "6 needles" in message
    assert needle(-4) in message


# ------------------------------------------------------------------ hanging on


def test_a_thumb_hangs_round_its_slot(paired: dict[str, KnitFabric]) -> None:
    """From left to right the waiting stitches, then, the work turned over, the cast-on ones from their right end on."""
    thumb, mitten = paired["thumb"], paired["mitten"]
    hung = [(thumb.slots[link.loop], [mitten.slots[loop] for loop in link.loops]) for link in thumb.links]
    assert hung == [(-4, [-4]), (-3, [-3]), (-2, [-2]), (-1, [-1]), (0, [-1]), (1, [-2]), (2, [-3]), (3, [-4])]


def test_a_gap_is_followed_round_its_left_part_centre_and_right_part(paired: dict[str, KnitFabric]) -> None:
    facing, mitten = paired["facing"], paired["mitten"]
    along = [link.loops[0] for link in facing.links[:10]]
    courses = [mitten.course_of(loop) for loop in along]
    left, right = courses[:4], courses[6:]
    assert [c.counter for c in left] == sorted((c.counter for c in left), reverse=True)
    assert [c.counter for c in right] == sorted(c.counter for c in right)
    assert all(mitten.slots[loop] == c.last for loop, c in zip(along[:4], left, strict=True))
    assert all(mitten.slots[loop] == c.first for loop, c in zip(along[6:], right, strict=True))


def test_a_right_edge_hangs_with_its_top_to_the_left(one: One) -> None:
    rows = (Pass("left"), Pass("right"))
    made = fabric(one(*START, *rows, OntoWaste(0, 5, 8, "end"), NameEdge("l", "left", 0, 2), NameEdge("r", "right", 0, 2)))
    counters = {
        (name, facing): [made.course_of(p[0]).counter for p in from_the_left(made.edge(name)[0], facing)]
        for name in ("l", "r")
        for facing in ("purl", "knit")
    }
    up, down = [1, 2], [2, 1]
    assert counters == {("l", "purl"): up, ("r", "purl"): down, ("l", "knit"): down, ("r", "knit"): up}
