"""What each operation does to the loop graph: who is drawn through whom, and what a needle then carries."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bed.by_hand import fabric
from walewright.bed import BedResult, KnitFabric, LoopKind
from walewright.knit.operations import (
    BreakYarn,
    CastOff,
    CastOn,
    FillFromBelow,
    Hold,
    IntoWork,
    LatchUp,
    MoveCarriage,
    OntoWaste,
    OutOfWork,
    Pass,
    Release,
    Transfer,
    UseYarn,
    Wrap,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 3), UseYarn("wool", "4"), CastOn("e-wrap", 0, 3))
"""Loops 0..3 on R 1 .. R 4, the carriage at the right."""


def test_a_pass_draws_one_loop_through_each(one: One) -> None:
    made = fabric(one(*START, Pass("left"), OntoWaste(0, 3, 8, "end")))
    assert list(made.parents) == [-1, -1, -1, -1, 0, 1, 2, 3]
    assert list(made.slots) == [0, 1, 2, 3] * 2
    assert [LoopKind(kind) for kind in made.kinds] == [LoopKind.CAST_ON] * 4 + [LoopKind.KNIT] * 4
    (row,) = made.passes()
    assert (row.counter, row.first, row.last, row.count, row.yarn, row.tension, row.to) == (1, 0, 3, 4, "wool", "4", "left")


def test_waste_and_ravel_are_not_fabric_but_parents(one: One) -> None:
    result = one(
        MoveCarriage("right"),
        IntoWork(0, 1),
        UseYarn("waste", "waste"),
        CastOn("comb", 0, 1),
        Pass("left"),
        UseYarn("ravel", "ravel"),
        Pass("right"),
        UseYarn("wool", "4"),
        Pass("left"),
        OntoWaste(0, 1, 8, "end"),
    )
    (made,) = result.fabrics
    assert list(made.parents) == [-3, -3]
    assert made.loops == 2
    assert made.feet == (0, 1)
    assert [fault.code for fault in result.faults] == ["feet-open"]


def test_moved_loops_hang_over_the_resident_and_are_knitted_with_it(one: One) -> None:
    made = fabric(one(*START, Transfer(2, 3, -1), OutOfWork(3, 3), Pass("left"), OntoWaste(0, 2, 8, "end")))
    assert [made.parents_of(loop) for loop in (4, 5, 6)] == [(0,), (1, 2), (3,)]


def test_a_hook_left_empty_gets_a_bar_and_then_a_stitch(one: One) -> None:
    made = fabric(one(*START, Transfer(1, 1, -1), Pass("left"), Pass("right"), OntoWaste(0, 3, 8, "end")))
    assert made.parents_of(4) == (0, 1)
    assert made.parents_of(5) == ()
    assert made.kinds[5] == LoopKind.BAR
    assert made.parents_of(9) == (5,)
    assert [(bar.counter, bar.slot, bar.loop, bar.at_edge) for bar in made.bars] == [(1, 1, 5, False)]


def test_an_edge_needle_brought_into_work_increases_by_a_bar(one: One) -> None:
    made = fabric(one(*START, IntoWork(4, 4), Pass("left"), Pass("right"), OntoWaste(0, 4, 8, "end")))
    assert [(bar.slot, bar.at_edge) for bar in made.bars] == [(4, True)]
    assert made.stitches_at(1) == made.stitches_at(2) == 5


def test_filling_from_below_hangs_the_stitch_below_twice(one: One) -> None:
    made = fabric(
        one(
            *START,
            Pass("left"),
            IntoWork(4, 4),
            Transfer(3, 3, 1),
            FillFromBelow(3, 2),
            Pass("right"),
            OntoWaste(0, 4, 8, "end"),
        )
    )
    fill = 8
    assert (made.kinds[fill], made.parents_of(fill)) == (LoopKind.FILL, (2,))
    assert [made.parents_of(loop) for loop in (11, 12, 13)] == [(6,), (fill,), (7,)]
    assert made.loops == 13, "the fill takes no yarn"
    assert made.bars == ()


def short_row(*between: object) -> tuple[object, ...]:
    return (
        *START,
        Pass("left"),
        Hold(2, 3),
        Pass("right"),
        *between,
        Pass("left"),
        Release(2, 3),
        Pass("right"),
        OntoWaste(0, 3, 8, "end"),
    )


def test_a_held_needle_keeps_its_loop_and_gets_the_wrap(one: One) -> None:
    made = fabric(one(*short_row(Wrap(2))))
    wrap = 10
    assert made.kinds[wrap] == LoopKind.WRAP
    last = made.passes(4)[0]
    assert [made.parents_of(last.first_loop + i) for i in range(4)] == [(11,), (12,), (6, wrap), (7,)]
    assert [made.rows_in_wale(slot) for slot in range(4)] == [4, 4, 2, 2]
    assert [(turn.counter, turn.slot, turn.wrapped) for turn in made.turns] == [(2, 2, True)]


def test_a_needle_held_in_mid_row_gathers_the_yarn(one: One) -> None:
    held = (Pass("right"), Pass("left"))
    made = fabric(one(*START, Pass("left"), Hold(1, 1), *held, Release(1, 1), Pass("right"), OntoWaste(0, 3, 8, "end")))
    tuck = made.passes(4)[0].first_loop + 1
    held, *laid = made.parents_of(tuck)
    assert held == 5
    assert [made.kinds[loop] for loop in laid] == [LoopKind.BAR, LoopKind.BAR]


def test_one_needle_held_at_the_carriage_is_wrapped_by_the_yarn_coming_back(one: One) -> None:
    made = fabric(one(*START, Pass("left"), Hold(0, 0), Pass("right"), Release(0, 0), Pass("left"), OntoWaste(0, 3, 8, "end")))
    assert made.wraps == 1
    assert made.turns == ()


def test_chains_run_through_loops_and_each_other_and_on_to_the_neighbour(one: One) -> None:
    made = fabric(one(*START, CastOff(2, 3, "right"), Pass("left"), OntoWaste(0, 1, 8, "end")))
    assert [(made.slots[loop], made.parents_of(loop)) for loop in (4, 5)] == [(3, (3,)), (2, (2, 4))]
    assert [made.parents_of(loop) for loop in (6, 7)] == [(0,), (1, 5)]
    assert made.chains == 2


def test_the_last_chain_of_a_whole_row_is_fastened_off(one: One) -> None:
    made = fabric(one(*START, Pass("left"), Pass("right"), CastOff(0, 3, "right")))
    (end,) = made.edge("end")
    assert (end.count, end.live, end.along) == (4, False, "stitches")
    assert [made.slots[point[0]] for point in end.points] == [0, 1, 2, 3]


def test_a_last_chain_beside_a_held_needle_waits_for_the_yarn(one: One) -> None:
    begin = (*START, Pass("left"), Hold(2, 3), Pass("right"), Wrap(2), Pass("left"), CastOff(0, 1, "left"))
    goes_on = fabric(one(*begin, Release(2, 3), Pass("right"), OntoWaste(2, 3, 8, "end")))
    assert len(goes_on.parents_of(goes_on.passes(4)[0].first_loop)) == 3, "held loop, wrap and chain"
    broken = fabric(one(*begin, BreakYarn(), Release(2, 3), UseYarn("wool", "4"), Pass("right"), OntoWaste(2, 3, 8, "end")))
    assert len(broken.parents_of(broken.passes(4)[0].first_loop)) == 2


def test_stitches_on_waste_stay_live_with_all_their_loops(one: One) -> None:
    result = one(*START, Pass("left"), Transfer(0, 0, 1), OutOfWork(0, 0), OntoWaste(1, 3, 8, "end"))
    (end,) = fabric(result).edge("end")
    assert (end.live, end.points) == (True, ((5, 4), (6,), (7,)))
    assert result.open_edges == (("swatch", "end"),)


def test_latching_up_turns_faces_and_nothing_else(one: One) -> None:
    rows = (*START, Pass("left"), Pass("right"), Pass("left"))
    plain = fabric(one(*rows, OntoWaste(0, 3, 8, "end")))
    ribbed = fabric(one(*rows, LatchUp(1, 2), OntoWaste(0, 3, 8, "end")))
    assert [loop for loop, face in enumerate(ribbed.faces) if face] == [9, 13]
    assert ribbed.parents == plain.parents
    assert ribbed.digest != plain.digest


def test_rehung_feet_change_left_and_right(fabrics: dict[str, KnitFabric]) -> None:
    welt, back = fabrics["back welt"], fabrics["back"]
    hung = {welt.slots[link.loop]: back.slots[link.loops[0]] for link in welt.links}
    assert hung == {slot: -1 - slot for slot in range(-10, 10)}
    assert welt.loops == 6 * 20 + 20, "rows and chains; the feet take no yarn"


def test_a_band_takes_every_live_stitch_and_spreads_over_firm_edges(fabrics: dict[str, KnitFabric]) -> None:
    band, back = fabrics["neckband"], fabrics["back"]
    taken = [link.loops for link in band.links if link.piece == "back"]
    assert len(taken) == 16
    assert taken[6:10] == [(loop,) for loop in range(19 * 20 + 8, 19 * 20 + 12)], "the centre of row 20"
    left = [back.course_of(loops[0]).counter for loops in taken[:6]]
    right = [back.course_of(loops[0]).counter for loops in taken[10:]]
    assert left == sorted(left, reverse=True)
    assert right == sorted(right)
    assert set(left) == set(right)


def test_picking_up_fewer_needles_than_live_stitches_drops_none(one: One) -> None:
    from walewright.bed.taking import _evenly

    path = [((i,), True) for i in range(5)]
    assert _evenly(path, 3) == [(0,), (1, 2), (3, 4)]
    firm = [((i,), False) for i in range(9)]
    assert _evenly(firm, 3) == [(1,), (4,), (7,)]


@pytest.mark.parametrize("side", ["left", "right"])
def test_where_the_carriage_first_is_does_not_matter_before_it_is_placed(one: One, side: str) -> None:
    other = "right" if side == "left" else "left"
    assert one(*START[1:], Pass(side), Pass(other), OntoWaste(0, 3, 8, "end")).faults == ()
