"""Mock ribs, folded edgings and linked pieces: which loops hang on which needle, and what comes of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.bed.by_hand import BED, Ops, fabric, refusal, rows
from walewright.bed import BedResult, KnitFabric, LoopKind, knit
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    HangFeet,
    IntoWork,
    Join,
    MoveCarriage,
    OntoWaste,
    Operation,
    OutOfWork,
    Pass,
    PickUpEdge,
    Rehang,
    SetCounter,
    Transfer,
    UseYarn,
    Work,
)

One = Callable[..., BedResult]


def row(made: KnitFabric, number: int) -> dict[int, int]:
    (course,) = made.passes(number)
    return {made.slots[i]: i for i in range(course.first_loop, course.first_loop + course.count)}


def on_waste(*idle: int, way: str = "comb") -> Ops:
    """Needles R 1 .. R 8 but the idle ones, two rows of waste and one of ravel yarn, the carriage at the right."""
    gaps: Ops = [OutOfWork(slot, slot) for slot in idle]
    yarn: Ops = [UseYarn("waste", "waste"), CastOn(way, 0, 7), *rows(2, "right"), UseYarn("ravel", "ravel"), Pass("right")]
    return [MoveCarriage("left"), IntoWork(0, 7), *gaps, *yarn, SetCounter(0), UseYarn("wool", "4")]


HEM = [*on_waste(), *rows(4, "left"), HangFeet(tuple(range(8))), SetCounter(0), *rows(2, "left")]
MOCK = [
    *on_waste(2, 5),
    *rows(4, "left"),
    IntoWork(2, 2),
    IntoWork(5, 5),
    HangFeet((0, 2, 3, 5, 6, 7)),
    SetCounter(0),
    *rows(2, "left"),
]
OFF = OntoWaste(0, 7, 8, "end")


# ------------------------------------------------------------------ folded edges


def test_a_hem_is_closed_by_the_first_row_hung_again(one: One) -> None:
    made = fabric(one(*HEM, OFF))
    first = range(8)
    (hung,) = (course for course in made.courses if course.kind == "hang feet")
    assert [made.parents_of(hung.first_loop + i) for i in first] == [(i,) for i in first]
    assert {made.kinds[hung.first_loop + i] for i in first} == {LoopKind.REHUNG}
    assert [made.parents_of(row(made, 1)[i]) for i in first] == [(24 + i, hung.first_loop + i) for i in first]
    assert made.feet == ()
    assert made.loops == 6 * 8, "the loops hung again take no yarn"


def test_the_start_of_a_piece_on_a_hem_is_its_first_row(one: One) -> None:
    made = fabric(one(*HEM, OFF))
    (start,) = made.edge("start")
    assert start.points == tuple((loop,) for loop in row(made, 1).values())
    assert made.stitches_at(0) == 8
    assert made.width_cm(0) == pytest.approx(8 / 1.3)
    assert made.rows == 2


def test_feet_left_on_waste_yarn_stay_open(one: One) -> None:
    result = one(*(op for op in HEM if not isinstance(op, HangFeet)), OFF)
    assert [fault.code for fault in result.faults] == ["feet-open"]


def test_a_picot_edge_folds_along_its_holes(one: One) -> None:
    picot: Ops = [Transfer(slot, slot, 1) for slot in (1, 3, 5)]
    made = fabric(one(*on_waste(), *rows(2, "left"), *picot, *rows(2, "left"), HangFeet(tuple(range(8))), Pass("left"), OFF))
    assert [bar.slot for bar in made.bars] == [1, 3, 5]
    third = row(made, 3)
    assert made.parents_of(third[2]) == (row(made, 2)[2], row(made, 2)[1])


def test_what_was_cast_on_or_hung_can_be_folded_up_too(one: One) -> None:
    begun: Ops = [MoveCarriage("right"), IntoWork(0, 7), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7)]
    made = fabric(one(*begun, *rows(2, "left"), HangFeet(tuple(range(8))), Pass("left"), OFF))
    assert made.parents_of(row(made, 3)[5]) == (row(made, 2)[5], 24 + 5)
    assert made.parents_of(24 + 5) == (5,)
    strip = Block("strip", (*on_waste(), *rows(2, "left"), OFF))
    again: Ops = [MoveCarriage("right"), IntoWork(0, 7), Rehang("strip", 0, 7), UseYarn("wool", "2"), SetCounter(0)]
    welt = Block("welt", (*again, *rows(4, "left"), HangFeet(tuple(range(8))), CastOff(0, 7, "right")))
    result = knit(Work("S", (strip, welt)), BED)
    folded = fabric(replace(result, fabrics=result.fabrics[1:]))
    (hung,) = (course for course in folded.courses if course.kind == "hang feet")
    assert folded.parents_of(hung.first_loop) == (row(folded, 1)[0],)
    assert folded.edge("start")[0].points[0] == (0,), "its start is still what was hung from the strip"


@pytest.mark.parametrize(
    ("op", "code"),
    [
        (HangFeet(tuple(range(7))), "hang-feet-count"),
        (HangFeet(tuple(range(9))), "hang-feet-count"),
        (HangFeet((*range(7), 8)), "not-in-work"),
        (HangFeet((1, 0, *range(2, 8))), "needles-reversed"),
        (HangFeet((0, 0, *range(2, 8))), "needles-reversed"),
        (HangFeet((*range(7), 30)), "beyond-bed"),
    ],
)
def test_where_the_first_row_cannot_be_hung(one: One, op: HangFeet, code: str) -> None:
    assert refusal(one(*on_waste(), *rows(4, "left"), op)) == code


def test_there_must_be_something_to_fold(one: One) -> None:
    every = HangFeet(tuple(range(8)))
    assert refusal(one(*on_waste(), every)) == "fold-without-rows"
    assert refusal(one(*on_waste(), Pass("left"), every)) == "fold-without-rows"
    assert refusal(one(*on_waste(), *rows(2, "left"), every, every)) == "edge-taken"


def test_an_edging_knitted_on_is_folded_to_its_own_first_row(one: One) -> None:
    begun: Ops = [MoveCarriage("right"), IntoWork(0, 7), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7), SetCounter(0)]
    made = fabric(one(*begun, *rows(6, "left"), HangFeet(tuple(range(8)), row=3), CastOff(0, 7, "right")))
    (hung,) = (course for course in made.courses if course.kind == "hang feet")
    assert [made.parents_of(hung.first_loop + i) for i in range(8)] == [(row(made, 3)[i],) for i in range(8)]
    assert (made.folded, made.folded_above) == ("", "front")
    (start,) = made.edge("start")
    assert start.points == tuple((i,) for i in range(8)), "its start is still what was cast on"


def test_the_first_row_on_waste_yarn_stays_open_when_another_is_hung_up(one: One) -> None:
    result = one(*on_waste(), *rows(4, "left"), HangFeet(tuple(range(8)), row=2), CastOff(0, 7, "right"))
    assert [fault.code for fault in result.faults] == ["feet-open"]


@pytest.mark.parametrize("number", [4, 5, 40])
def test_a_row_on_the_needles_or_not_yet_knitted_cannot_be_hung(one: One, number: int) -> None:
    assert refusal(one(*on_waste(), *rows(4, "left"), HangFeet(tuple(range(8)), row=number))) == "fold-without-rows"


# ------------------------------------------------------------------ mock rib


def test_a_mock_rib_floats_over_its_idle_needles_until_these_are_filled(one: One) -> None:
    made = fabric(one(*MOCK, OFF))
    assert [(f.counter, f.first, f.last) for f in made.floats] == [(n, s, s) for n in (1, 2, 3, 4) for s in (2, 5)]
    assert list(made.slots[:6]) == [0, 1, 3, 4, 6, 7]
    (hung,) = (course for course in made.courses if course.kind == "hang feet")
    first = hung.first_loop
    above = row(made, 1)
    assert made.parents_of(above[1]) == (19,), "its loop of the first row went to the needle beside it"
    assert made.parents_of(above[2]) == (first + 1,)
    assert made.parents_of(first + 1) == (1,)
    assert made.parents_of(above[3]) == (20, first + 2)
    assert made.stitches_at(0) == made.stitches_at(1) == 8
    assert made.feet == ()


def test_before_it_is_folded_the_start_has_the_loops_that_there_are(one: One) -> None:
    gaps = [IntoWork(0, 7), OutOfWork(2, 2), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7)]
    off = [OntoWaste(0, 1, 8, "end left"), OntoWaste(3, 7, 8, "end right")]
    made = fabric(one(MoveCarriage("right"), *gaps, *rows(2, "left"), *off))
    assert made.stitches_at(0) == made.stitches_at(1) == 7
    assert made.edge("start")[0].points[2] == (2,)
    assert made.slots[2] == 3
    assert made.width_cm(1) == pytest.approx(7 / 1.3)


@pytest.mark.parametrize("way", ["comb", "e-wrap", "chain"])
def test_waste_yarn_comes_away_however_it_was_cast_on(one: One, way: str) -> None:
    made = fabric(one(*(on_waste(2, 5, way=way)), *MOCK[len(on_waste(2, 5)) :], OFF))
    assert made.helpers == {"waste": 2 * 6 + 8 * 8, "ravel": 6}
    assert made.loops == 4 * 6 + 2 * 8


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        ((IntoWork(0, 9), OutOfWork(2, 7), UseYarn("wool", "4"), CastOn("e-wrap", 0, 9), Pass("left")), "yarn-float"),
        ((IntoWork(0, 7), OutOfWork(7, 7), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7)), "not-in-work"),
        ((IntoWork(0, 7), OutOfWork(0, 0), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7)), "not-in-work"),
    ],
)
def test_gaps_too_wide_or_at_the_ends(one: One, ops: tuple[Operation, ...], code: str) -> None:
    assert refusal(one(MoveCarriage("right"), *ops)) == code


def test_a_cast_on_beside_stitches_leaves_no_gap(one: One) -> None:
    begun: Ops = [MoveCarriage("right"), IntoWork(0, 3), UseYarn("wool", "4"), CastOn("e-wrap", 0, 3)]
    assert refusal(one(*begun, IntoWork(4, 4), IntoWork(6, 6), CastOn("e-wrap", 4, 6))) == "not-in-work"


@pytest.mark.parametrize("onto", [(0, 1, 3, 5, 6, 7), (0, 2, 3, 4, 6, 7)])
def test_a_gap_filled_otherwise_is_another_fabric(one: One, onto: tuple[int, ...]) -> None:
    ops = [HangFeet(onto) if isinstance(op, HangFeet) else op for op in MOCK]
    assert fabric(one(*ops, OFF)) != fabric(one(*MOCK, OFF))


# ------------------------------------------------------------------ linking


def strip(name: str, count: int = 4) -> Block:
    begun: Ops = [MoveCarriage("right"), IntoWork(0, count - 1), UseYarn("wool", "4"), CastOn("e-wrap", 0, count - 1)]
    return Block(name, (*begun, *rows(2, "left"), OntoWaste(0, count - 1, 8, "end")))


def link(*over: Operation) -> Block:
    hung: Ops = [
        MoveCarriage("right"),
        IntoWork(0, 3),
        PickUpEdge("one", "end", "whole", 0, 3, facing="knit", left_end="right"),
        *over,
    ]
    return Block("link", (*hung, UseYarn("wool", "4"), SetCounter(0), Pass("left"), CastOff(0, 3, "left"), BreakYarn()))


OVER = PickUpEdge("two", "end", "whole", 0, 3, over=True, left_end="left")


def linking(*over: Operation, joins: tuple[Join, ...] = (), second: int = 4) -> BedResult:
    return knit(Work("S", (strip("one"), strip("two", second), link(*over), *joins)), BED)


def test_linked_stitches_are_drawn_through_as_one_right_sides_together() -> None:
    result = linking(OVER)
    assert result.faults == ()
    assert result.open_edges == ()
    made = result.fabrics[2]
    assert [made.parents_of(row(made, 1)[s]) for s in range(4)] == [(0, 4), (1, 5), (2, 6), (3, 7)]
    of = {edge.loop: (edge.piece, edge.loops) for edge in made.links}
    last = result.fabrics[0].passes()[-1].first_loop
    assert [of[i] for i in range(4)] == [("one", (last + 3 - i,)) for i in range(4)], "its right side is to the knitter"
    assert [of[4 + i] for i in range(4)] == [("two", (last + i,)) for i in range(4)]


def test_a_linked_join_is_made_by_the_block_that_hung_both() -> None:
    assert linking().open_edges == (("two", "end"),)
    grafted = Join((("one", "end", 0),), (("two", "end", 0),), ("left", "right"), 0, way="grafted")
    assert [f.code for f in linking(OVER, joins=(grafted,)).faults] == ["edge-taken"]
    bound = Join((("one", "start", 0),), (("two", "start", 0),), ("left", "right"), 0)
    assert linking(OVER, joins=(bound,)).faults == ()


@pytest.mark.parametrize(
    ("over", "code"),
    [
        ((replace(OVER, last=2),), "link-unequal"),
        ((IntoWork(4, 4), replace(OVER, first=1, last=4)), "link-over-nothing"),
        ((replace(OVER, over=False),), "pick-up-over-loops"),
        ((replace(OVER, facing="knit", left_end="right"),), "linked-face-to-back"),
        ((replace(OVER, left_end="right"),), "edge-lies-otherwise"),
        ((OVER, OVER), "link-over-loops"),
        ((UseYarn("wool", "4"), Pass("left"), OVER), "link-over-loops"),
        ((replace(OVER, first=-1, last=2),), "not-in-work"),
    ],
)
def test_what_cannot_be_hung_over(over: tuple[Operation, ...], code: str) -> None:
    assert linking(*over).faults[0].code == code


def test_more_stitches_than_there_are_needles_are_not_linked() -> None:
    assert linking(OVER, second=5).faults[0].code == "link-unequal"
