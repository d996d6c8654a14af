"""Pieces that part and come together again, wedges at any level, an edging knitted first: which rows lie on which edge."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import hypot

import pytest

from tests.bed.by_hand import Ops, fabric, rows
from tests.bed.words import told
from walewright.bed import BedResult, KnitFabric
from walewright.knit.operations import (
    BreakYarn,
    CastOff,
    CastOn,
    Check,
    Close,
    Hold,
    IntoWork,
    MoveCarriage,
    NameEdge,
    NameGap,
    OntoWaste,
    OutOfWork,
    Pass,
    Release,
    SetCounter,
    Side,
    Transfer,
    UseYarn,
    Wrap,
    other,
)

One = Callable[..., BedResult]
WOOL = UseYarn("wool", "4")


def start(first: int, last: int) -> Ops:
    return [MoveCarriage("right"), IntoWork(first, last), WOOL, CastOn("e-wrap", first, last)]


def slit(left: tuple[int, int], right: tuple[int, int], parting: int, left_rows: int, right_rows: int) -> Ops:
    """Parts worked one after the other, the left one first, then both returned; the carriage ends at the right."""
    return [
        BreakYarn(),
        Hold(*right),
        MoveCarriage("left"),
        WOOL,
        *rows(left_rows, "right"),
        Hold(*left),
        BreakYarn(),
        MoveCarriage("right"),
        SetCounter(parting),
        Release(*right),
        WOOL,
        *rows(right_rows, "left"),
        Release(*left),
    ]


# ------------------------------------------------------------------ parts that come together again


def test_outer_edges_run_through_the_parts_beside_them(one: One) -> None:
    made = fabric(
        one(
            *start(-4, 3),
            *rows(2, "left"),
            *slit((-4, 0), (1, 3), 2, 4, 4),
            Check(8, 6, "right"),
            *rows(2, "left"),
            OntoWaste(-4, 3, 8, "end"),
            NameEdge("side", "outer", 0, 8),
            NameEdge("slit", "inner", 2, 6),
        )
    )
    for part, slot in (("left", -4), ("right", 3)):
        (side,) = made.edge(f"side {part}")
        assert (side.count, side.length_cm) == (8, pytest.approx(8 / 1.85))
        assert [made.slots[point[0]] for point in side.points] == [slot] * 8
        counters = [made.course_of(point[0]).counter for point in side.points]
        assert counters == [*range(1, 9)]
    assert made.rows == 8
    assert {made.rows_in_wale(slot) for slot in range(-4, 4)} == {8}
    assert [(edge.part, edge.count, edge.at) for edge in made.edge("slit")] == [("left", 4, "right"), ("right", 4, "left")]
    assert [made.slots[edge.points[0][0]] for edge in made.edge("slit")] == [0, 1]
    assert [made.stitches_at(row) for row in (2, 3, 6, 7)] == [8, 8, 8, 8]
    assert made.extent_at(4) == (-4, 3)
    assert (made.inner_end(4, "left"), made.inner_end(4, "right")) == (0, 1)
    assert made.inner_end(2, "left") is made.inner_end(7, "right") is None
    assert [made.outer_end(row, "right") for row in (1, 4, 8, 9)] == [3, 3, 3, None]


def test_a_gap_is_cast_on_again_and_has_an_edge_above(paired: dict[str, KnitFabric]) -> None:
    made = paired["mitten"]
    left, centre, right = made.edge("gap")
    slope = hypot(1 / 1.3, 6 / 1.85)
    assert [(e.part, e.along, e.count, e.live) for e in (left, centre, right)] == [
        ("left", "rows", 6, False),
        ("centre", "stitches", 2, True),
        ("right", "rows", 6, False),
    ]
    assert (left.length_cm, right.length_cm) == (pytest.approx(slope, rel=0.005), pytest.approx(slope, rel=0.005))
    (upper,) = made.edge("gap upper")
    assert ([made.slots[point[0]] for point in upper.points], upper.live) == ([0, 1, 2, 3], False)
    assert (made.inner_end(20, "left"), made.inner_end(24, "left")) == (0, -1)
    assert (made.inner_end(20, "right"), made.inner_end(24, "right")) == (3, 4)
    row = made.passes(25)[0]
    below = [made.course_of(made.parents_of(row.first_loop + i)[0]) for i in (7, 8, 11, 12)]
    assert [(course.kind, course.cast_on, course.apart) for course in below] == [
        ("knit", "", False),
        ("cast on", "e-wrap", True),
        ("cast on", "e-wrap", True),
        ("knit", "", False),
    ]


def test_stitches_closed_at_a_gaps_foot_are_its_centre(one: One) -> None:
    made = fabric(
        one(
            *start(-4, 3),
            *rows(2, "left"),
            Close(-1, 0, "right"),
            *slit((-4, -2), (1, 3), 2, 2, 2),
            IntoWork(-1, 0),
            CastOn("e-wrap", -1, 0, own_length=True),
            *rows(2, "left"),
            OntoWaste(-4, 3, 8, "end"),
            NameEdge("hole", "inner", 2, 4),
        )
    )
    assert [(e.name, e.part, e.along, e.count, e.live) for e in (*made.edge("hole"), *made.edge("hole upper"))] == [
        ("hole", "left", "rows", 2, False),
        ("hole", "centre", "stitches", 2, False),
        ("hole", "right", "rows", 2, False),
        ("hole upper", "whole", "stitches", 2, False),
    ]
    assert made.edge("hole centre")[0].length_cm == pytest.approx(2 / 1.3)


def test_a_later_parting_stands_above_an_earlier_one(one: One) -> None:
    made = fabric(
        one(
            *start(-4, 3),
            *rows(2, "left"),
            *slit((-4, -1), (0, 3), 2, 2, 2),
            *rows(2, "left"),
            *slit((-4, -3), (-2, 3), 6, 4, 4),
            *rows(2, "left"),
            Hold(-4, 0),
            *rows(2, "left"),
            OntoWaste(1, 3, 8, "shoulder right"),
            BreakYarn(),
            MoveCarriage("left"),
            SetCounter(12),
            Release(-4, 0),
            WOOL,
            *rows(2, "right"),
            OntoWaste(-4, 0, 8, "shoulder left"),
            NameEdge("side", "outer", 0, 14),
            NameEdge("low", "inner", 2, 4),
            NameEdge("high", "inner", 6, 10),
            NameEdge("neck", "inner", 12, 14),
        )
    )
    assert [edge.count for edge in made.edges if edge.name == "side"] == [14, 14]
    assert [(edge.count, made.slots[edge.points[0][0]]) for edge in made.edge("low")] == [(2, -1), (2, 0)]
    assert [(edge.count, made.slots[edge.points[0][0]]) for edge in made.edge("high")] == [(4, -3), (4, -2)]
    assert [(edge.count, made.slots[edge.points[0][0]]) for edge in made.edge("neck")] == [(2, 0), (2, 1)]
    assert made.rows == 14


def three() -> Ops:
    """From RC 2: L 4 to L 2, L 1 to R 2 and R 3 to R 4 apart; the first two to RC 6, joined, and on to RC 8; the third to RC 8."""
    return [
        *start(-4, 3),
        *rows(2, "left"),
        BreakYarn(),
        Hold(2, 3),
        Hold(-1, 1),
        MoveCarriage("left"),
        WOOL,
        *rows(4, "right"),
        Hold(-4, -2),
        BreakYarn(),
        MoveCarriage("right"),
        SetCounter(2),
        Release(-1, 1),
        WOOL,
        *rows(4, "left"),
        BreakYarn(),
        MoveCarriage("left"),
        WOOL,
        Release(-4, -2),
        *rows(2, "right"),
        Hold(-4, 1),
        BreakYarn(),
        MoveCarriage("right"),
        SetCounter(2),
        Release(2, 3),
        WOOL,
        *rows(6, "left"),
        Release(-4, 1),
    ]


def test_of_three_parts_two_come_together_before_the_third(one: One) -> None:
    names = NameEdge("side", "outer", 0, 10), NameGap("low", "inner", 2, 6, 1), NameGap("high", "inner", 2, 8, 2)
    made = fabric(one(*three(), *rows(2, "left"), OntoWaste(-4, 3, 8, "end"), *names))
    assert [made.parts_at(row) for row in (2, 3, 6, 7, 8, 9)] == [1, 3, 3, 2, 2, 1]
    assert [[made.inner_end(row, side, gap) for gap in (0, 1) for side in ("left", "right")] for row in (2, 4, 7)] == [
        [None, None, None, None],
        [-2, -1, 1, 2],
        [1, 2, None, None],
    ]
    assert [edge.count for edge in made.edges if edge.name == "side"] == [10, 10]
    for name, count, slots in (("low", 4, (-2, -1)), ("high", 6, (1, 2))):
        assert [(edge.count, *{made.slots[point[0]] for point in edge.points}) for edge in made.edge(name)] == [
            (count, slot) for slot in slots
        ]


@pytest.mark.parametrize(
    "name",
    [
        NameEdge("low", "inner", 2, 6),
        NameGap("low", "inner", 2, 6, 3),
        NameGap("low", "inner", 2, 8, 1),
        NameGap("low", "inner", 6, 8, 2),
        NameGap("low", "inner", 1, 6, 1),
    ],
)
def test_a_gap_is_named_where_it_is(one: One, name: NameEdge) -> None:
    (fault,) = one(*three(), *rows(2, "left"), OntoWaste(-4, 3, 8, "end"), name).faults
    assert fault.code == "not-parted"


@pytest.mark.parametrize("more", [-2, 2])
def test_three_parts_meet_in_the_same_rows(one: One, more: int) -> None:
    """The third part is knitted two rows less, or more, than those that it meets."""
    ops = three()
    at = ops.index(Release(2, 3)) + 2
    ops[at : at + 6] = rows(6 + more, "left")
    (fault,) = one(*ops, *rows(2, "left"), OntoWaste(-4, 3, 8, "end")).faults
    assert fault.code == "parts-meet-unevenly"


@pytest.mark.parametrize("first", [2, 4, 6])
@pytest.mark.parametrize("second", [2, 4, 6])
@pytest.mark.parametrize("third", [2, 4, 6])
def test_all_that_meet_at_once_have_come_to_one_row(one: One, first: int, second: int, third: int) -> None:
    """L 4 to L 2, L 1 to R 2, R 3 to R 4, one after the other, then all in one row."""
    ops: Ops = [*start(-4, 3), *rows(2, "left"), BreakYarn(), Hold(-1, 3), MoveCarriage("left"), WOOL]
    ops += [*rows(first, "right"), Hold(-4, -2), BreakYarn(), MoveCarriage("left"), SetCounter(2), Release(-1, 1), WOOL]
    ops += [*rows(second, "right"), Hold(-1, 1), BreakYarn(), MoveCarriage("right"), SetCounter(2), Release(2, 3), WOOL]
    ops += [*rows(third, "left"), Release(-4, 1)]
    made = one(*ops, *rows(2, "left"), OntoWaste(-4, 3, 8, "end"))
    assert [fault.code for fault in made.faults] == ["parts-meet-unevenly"] * (not first == second == third)


def test_parts_that_come_together_beside_one_that_waits_meet_in_the_same_row(one: One) -> None:
    ops = three()
    at = ops.index(Release(-1, 1)) + 2
    ops[at : at + 4] = rows(2, "left")
    (fault,) = one(*ops, *rows(2, "left"), OntoWaste(-4, 3, 8, "end")).faults
    assert fault.code == "parts-meet-unevenly"


def test_a_cast_off_of_the_other_part_is_on_no_outer_edge(one: One) -> None:
    """The right part's stitches at its left end are taken between the left part's last row and the first whole one."""
    ops = [*start(-4, 3), *rows(2, "left"), *slit((-4, -1), (0, 3), 2, 4, 4)]
    at = ops.index(Release(0, 3)) + 3
    assert ops[at - 1] == Pass("left")
    ops[at:at] = [CastOff(0, 1, "left")]
    ops[-1:-1] = [IntoWork(0, 1), CastOn("e-wrap", 0, 1, own_length=True)]
    made = fabric(
        one(*ops, *rows(2, "left"), OntoWaste(-4, 3, 8, "end"), NameEdge("side", "outer", 0, 8), NameEdge("slit", "inner", 2, 6))
    )
    assert [len(edge.points) for edge in made.edges if edge.name == "side"] == [8, 8]
    assert [len(edge.points) for edge in made.edge("slit")] == [4, 6], "with its two chains"


@pytest.mark.parametrize(("left", "right", "found"), [(4, 2, "RC 6 and the other to RC 4"), (2, 4, "RC 4 and the other to RC 6")])
def test_parts_meet_in_the_same_row(one: One, left: int, right: int, found: str) -> None:
    (fault,) = one(*start(-4, 3), *rows(2, "left"), *slit((-4, -1), (0, 3), 2, left, right), Pass("left")).faults
    assert fault.code == "parts-meet-unevenly"
    assert found in told(fault)
    assert fault.index == len(start(0, 1)) + 2 + len(slit((-4, -1), (0, 3), 2, left, right))


def test_an_edge_inside_is_named_where_the_piece_is_in_two(one: One) -> None:
    ops = [*start(-4, 3), *rows(2, "left"), *slit((-4, -1), (0, 3), 2, 4, 4), *rows(2, "left"), OntoWaste(-4, 3, 8, "end")]
    for after, to in ((0, 6), (2, 8), (6, 8)):
        (fault,) = one(*ops, NameEdge("slit", "inner", after, to)).faults
        assert fault.code == "not-parted"


def test_one_edge_for_itself(one: One) -> None:
    ops = [*start(0, 3), *rows(2, "left"), CastOff(3, 3, "right"), *rows(2, "left"), OntoWaste(0, 2, 8, "end")]
    made = fabric(one(*ops, NameEdge("front", "left", 0, 4), NameEdge("armhole", "right", 2, 4)))
    (front,), (armhole,) = made.edge("front"), made.edge("armhole")
    assert (front.count, front.each, front.part, front.at, len(front.points)) == (4, False, "left", "left", 4)
    assert (armhole.count, armhole.each, armhole.part, len(armhole.points)) == (2, False, "right", 3)
    assert made.edge("front left") == made.edge("front")
    assert made.edge("front right") == ()
    # Moved before the first row: through the middle of the stitch a quarter of a row up, and on.
    assert armhole.length_cm == pytest.approx(hypot(0.5 / 1.3, 0.25 / 1.85) + hypot(0.5 / 1.3, 1.75 / 1.85))
    (fault,) = one(*ops, NameEdge("front", "upper", 0, 4)).faults
    assert (fault.code, "`upper`" in told(fault)) == ("edge-where", True)


def test_stitches_cast_on_at_an_edge_are_places_along_it(one: One) -> None:
    ops = [*start(0, 3), *rows(2, "left"), IntoWork(4, 5), CastOn("e-wrap", 4, 5), *rows(2, "left"), OntoWaste(0, 5, 8, "end")]
    made = fabric(one(*ops, NameEdge("sleeve", "right", 0, 4), NameEdge("back", "left", 0, 4)))
    assert [len(made.edge(name)[0].points) for name in ("sleeve", "back")] == [6, 4]
    assert made.edge("sleeve")[0].length_cm == pytest.approx(3 / 1.85 + hypot(2 / 1.3, 1 / 1.85))


# ------------------------------------------------------------------ wedges


def wedge(side: Side, kind: str, groups: tuple[int, ...], rest: int, edge: int) -> Ops:
    """From an even row with the carriage at the right; `edge` is the outermost slot, `groups` run from it inwards. Groups are held
    and returned when the carriage is at the other side, and the innermost held needle is wrapped when it comes past."""
    inwards = 1 if side == "left" else -1
    sizes = [groups[0] + rest, *groups[1:]]
    spans: list[tuple[int, int]] = []
    for size in sizes:
        ends = sorted((edge, edge + inwards * (size - 1)))
        spans.append((ends[0], ends[1]))
        edge += inwards * size
    lead, count = (0 if side == "left" else 1), len(groups)
    if kind == "in":
        holds = {lead + 2 * i: [i] for i in range(count - 1)}
        returns = {lead + 2 * (count - 1): list(range(count - 1))}
    elif kind == "out":
        holds = {lead: list(range(count - 1))}
        returns = {lead + 2 * j: [count - 1 - j] for j in range(1, count)}
    else:
        holds = {lead + 2 * i: [i] for i in range(count)}
        returns = {lead + 2 * count + 2 * j: [count - 1 - j] for j in range(count)}
    total = (4 if kind == "both" else 2) * count
    made: Ops = []
    held: list[int] = []
    to: Side = "left"
    for row in range(total):
        for group in holds.get(row, []):
            made.append(Hold(*spans[group]))
            held.append(group)
        for group in returns.get(row, []):
            made.append(Release(*spans[group]))
            held.remove(group)
        made.append(Pass(to))
        if held and to == side:
            innermost = spans[max(held)]
            made.append(Wrap(innermost[1] if side == "left" else innermost[0]))
        to = other(to)
    return made


def wales(made: KnitFabric, slots: Iterable[int], after: int, to: int) -> list[int]:
    return [made.rows_in_wale(slot, after, to) for slot in slots]


WEDGES = {
    ("in", 0): [2, 2, 4, 4, 4, 6, 6, 6],
    ("out", 0): [2, 2, 4, 4, 4, 6, 6, 6],
    ("both", 0): [2, 2, 6, 6, 6, 10, 12, 12],
    ("in", 2): [2, 2, 2, 2, 4, 4, 4, 6],
    ("both", 2): [2, 2, 2, 2, 6, 6, 6, 10],
}
"""Rows of the eight wales nearest the edge, of groups of 2, 3 and 1 stitches."""


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(("kind", "rest"), WEDGES)
def test_a_wedge_gives_its_edge_two_rows_whatever_it_gives_inside(one: One, side: Side, kind: str, rest: int) -> None:
    edge, inwards = (-6, 1) if side == "left" else (5, -1)
    held = wedge(side, kind, (2, 3, 1), rest, edge)
    total = 12 if kind == "both" else 6
    named = [NameEdge("held", side, 2, 2 + total), NameEdge("long", other(side), 2, 2 + total), NameEdge("all", side, 0, 4 + total)]
    made = fabric(one(*start(-6, 5), *rows(2, "left"), *held, *rows(2, "left"), OntoWaste(-6, 5, 8, "end"), *named))
    assert wales(made, (edge + inwards * i for i in range(8)), 2, 2 + total) == WEDGES[kind, rest]
    assert made.edge("held")[0].count == made.edge_rows(side, 2, 2 + total) == 2
    assert made.edge("long")[0].count == total
    assert made.edge("all")[0].count == 6
    assert made.edge("all")[0].length_cm == pytest.approx(6 / 1.85)
    assert all(turn.wrapped for turn in made.turns)
    assert [made.outer_end(row, side) for row in (3, 4, 5)] == [edge] * 3, "held needles are of the piece"


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("kind", ["in", "out", "both"])
def test_every_wrap_is_missed(one: One, side: Side, kind: str) -> None:
    """Those after a partial return as well."""
    held = wedge(side, kind, (2, 3, 2), 0, -6 if side == "left" else 5)
    places = [i for i, op in enumerate(held) if isinstance(op, Wrap)]
    assert len(places) == {"in": 2, "out": 2, "both": 5}[kind]
    for place in places:
        kept = held[:place] + held[place + 1 :]
        (fault,) = one(*start(-6, 5), *rows(2, "left"), *kept, *rows(2, "left"), OntoWaste(-6, 5, 8, "end")).faults
        assert fault.code == "held-edge-unwrapped"


def test_gores_one_above_another(one: One) -> None:
    gore = wedge("left", "in", (2, 2, 2), 0, -6)
    ops = [*start(-6, 5), *(op for _ in range(4) for op in (*gore, *rows(2, "left"))), OntoWaste(-6, 5, 8, "end")]
    made = fabric(one(*ops, NameEdge("crown", "left", 0, 32), NameEdge("brim", "right", 0, 32)))
    assert [made.edge(name)[0].count for name in ("crown", "brim")] == [16, 32]
    assert wales(made, (-6, -4, -2, 0), 0, 32) == [16, 24, 32, 32]


def test_wedges_at_both_edges_at_the_same_time(one: One) -> None:
    """The left one is held at even rows, the right one at odd ones."""
    left, right = wedge("left", "in", (2, 2), 0, -6), wedge("right", "in", (2, 2), 0, 5)
    woven = [
        *left[: left.index(Pass("left"))],
        Pass("left"),
        *(op for op in left if isinstance(op, Wrap)),
        *(op for op in right if isinstance(op, Hold)),
        Pass("right"),
        *(op for op in right if isinstance(op, Wrap)),
        *(op for op in left if isinstance(op, Release)),
        Pass("left"),
        *(op for op in right if isinstance(op, Release)),
        Pass("right"),
    ]
    made = fabric(one(*start(-6, 5), *rows(2, "left"), *woven, OntoWaste(-6, 5, 8, "end"), NameEdge("side", "outer", 0, 6)))
    assert made.edge("side")[0].count == 4
    assert wales(made, (-6, -5, -4, 0, 4, 5), 2, 6) == [2, 2, 4, 4, 2, 2]


def test_an_edge_that_begins_within_a_wedge_begins_at_the_last_row_that_reached_it(one: One) -> None:
    held = wedge("left", "in", (2, 2), 0, -6)
    ops = [*start(-6, 5), *rows(2, "left"), *held, *rows(2, "left"), OntoWaste(-6, 5, 8, "end"), NameEdge("late", "left", 4, 8)]
    made = fabric(one(*ops))
    (late,) = made.edge("late")
    assert (late.count, late.length_cm) == (4, pytest.approx(4 / 1.85))
    moved = [Transfer(-6, -6, 1), OutOfWork(-6, -6), *wedge("left", "in", (2, 2), 0, -5)]
    narrower = [*start(-6, 5), *rows(2, "left"), *moved, *rows(2, "left"), OntoWaste(-5, 5, 8, "end"), ops[-1]]
    assert fabric(one(*narrower)).edge("late")[0].length_cm == pytest.approx(
        hypot(0.5 / 1.3, 0.25 / 1.85) + hypot(0.5 / 1.3, 3.75 / 1.85)
    )
    nowhere = [*ops[:-1], NameEdge("late", "left", 2, 4)]
    (fault,) = one(*nowhere).faults
    assert (fault.code, "no row" in told(fault)) == ("edge-without-rows", True)


# ------------------------------------------------------------------ an edging knitted first


def test_a_piece_counts_from_where_its_edging_ends(paired: dict[str, KnitFabric]) -> None:
    made = paired["mitten"]
    assert (made.rows, made.passes(1)[0].tension, made.stitches_at(0)) == (28, "4", 16)
    assert len([c for c in made.courses if c.kind == "knit"]) > len(made.passes()) == 28 + 6, "the edging, and both parts' rows"
    (foot,) = made.edge("start")
    assert (made.course_of(foot.points[0][0]).cast_on, foot.length_cm) == ("e-wrap", pytest.approx(16 / 1.3))
    assert made.rows_in_wale(-8) == 26, "then its stitch is hung on another needle"
    (palm,) = made.edge("palm")
    assert palm.count == 14
    assert made.loops_by_yarn["wool", "2"] == 16 + 4 * 16


def test_a_counter_set_back_to_0_over_part_of_the_width_is_a_part(one: One) -> None:
    made = fabric(
        one(
            *start(-4, 3),
            Hold(-4, -1),
            *rows(2, "left"),
            OntoWaste(0, 3, 8, "shoulder right"),
            BreakYarn(),
            MoveCarriage("left"),
            SetCounter(0),
            Release(-4, -1),
            WOOL,
            *rows(2, "right"),
            OntoWaste(-4, -1, 8, "shoulder left"),
            NameEdge("slit", "inner", 0, 2),
        )
    )
    assert [edge.count for edge in made.edge("slit")] == [2, 2]


def test_every_place_along_rows_is_a_loop_of_its_own_and_of_one_edge(one: One) -> None:
    """Two edges one above the other, the foot of a slit, chains cast off on the way: no loop is two places."""
    ops = [*start(0, 5), *rows(2, "left"), CastOff(4, 5, "right"), *rows(2, "left"), OntoWaste(0, 3, 8, "end")]
    made = fabric(one(*ops, NameEdge("foot", "outer", 0, 2), NameEdge("scye", "right", 2, 4)))
    low, high = made.edge("foot right")[0], made.edge("scye")[0]
    assert [made.course_of(point[0]).counter for point in low.points] == [1, 2]
    assert [made.course_of(point[0]).kind for point in high.points] == ["cast off", "cast off", "knit", "knit"]
    places = [point for edge in made.edges if edge.along == "rows" for point in edge.points]
    assert len(set(places)) == len(places)
    begun = {point for edge in made.edges if edge.name == "start" for point in edge.points}
    assert not begun & set(places)
