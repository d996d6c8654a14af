"""Each step's expansion, from a known state."""

from __future__ import annotations

import pytest

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.hands import perform, rib_slots
from walewright.knit.state import State, WaitingPart

READY = State("back", first=-10, last=9, side="right", row=20)


def test_a_row_goes_to_the_other_side_and_counts() -> None:
    made, after = perform(READY, st.KnitRows(3))
    assert made == (op.Pass("left"), op.Pass("right"), op.Pass("left"))
    assert (after.row, after.side) == (23, "left")


def test_knitting_to_a_counter_value_knits_what_is_missing() -> None:
    made, after = perform(READY, st.KnitTo(24))
    assert len(made) == 4
    assert after.row == 24
    assert after.side == "right"


def test_a_simple_decrease_at_both_ends_starts_at_the_left() -> None:
    made, after = perform(READY, st.Decrease("both ends", 1, 0))
    assert made == (op.Transfer(-10, -10, 1), op.OutOfWork(-10, -10), op.Transfer(9, 9, -1), op.OutOfWork(9, 9))
    assert (after.first, after.last) == (-9, 8)


def test_a_fashioned_decrease_lifts_as_many_loops_as_prongs() -> None:
    made, _ = perform(READY, st.Decrease("right end", 1, 3))
    assert made == (op.Transfer(7, 9, -1), op.OutOfWork(9, 9))


def test_losing_two_at_once_moves_the_tool_by_two() -> None:
    made, after = perform(READY, st.Decrease("left end", 2, 2))
    assert made == (op.Transfer(-10, -9, 2), op.OutOfWork(-10, -9))
    assert after.first == -8


def test_two_simple_decreases_are_two_transfers() -> None:
    made, after = perform(READY, st.Decrease("left end", 2, 0))
    assert [m for m in made if isinstance(m, op.Transfer)] == [op.Transfer(-10, -10, 1), op.Transfer(-9, -9, 1)]
    assert after.first == -8


def test_a_fashioned_increase_fills_the_gap_from_the_stitch_inside_it() -> None:
    made, after = perform(READY, st.IncreaseFashioned("both ends", 2))
    assert made == (
        op.IntoWork(-11, -11),
        op.Transfer(-10, -9, -1),
        op.FillFromBelow(-9, -8),
        op.IntoWork(10, 10),
        op.Transfer(8, 9, 1),
        op.FillFromBelow(8, 7),
    )
    assert after.stitches == 22


@pytest.mark.parametrize(("side", "slot"), [("right", 10), ("left", -11)])
def test_a_simple_increase_is_where_the_carriage_is(side: op.Side, slot: int) -> None:
    made, _ = perform(State("x", first=-10, last=9, side=side), st.IncreaseAtCarriage())
    assert made == (op.IntoWork(slot, slot),)


def test_casting_off_starts_at_the_carriage() -> None:
    made, after = perform(READY, st.CastOffAtCarriage(4))
    assert made == (op.CastOff(6, 9, "right"),)
    assert after.last == 5


def test_holding_goes_inwards_group_by_group_and_wraps_the_innermost() -> None:
    _, one = perform(State("x", first=-10, last=9, side="left"), st.HoldAtEnd("right", 4))
    made, two = perform(one, st.HoldAtEnd("right", 3))
    assert made == (op.Hold(3, 5),)
    assert perform(two, st.WrapHeld("right"))[0] == (op.Wrap(3),)
    assert perform(two, st.ReturnHeld("right"))[0] == (op.Release(3, 9),)


def test_parting_leaves_the_near_half_in_work_and_returns_the_far_one_with_what_it_held() -> None:
    begin = State("x", first=-10, last=9, held_left=3, held_right=3, side="right", row=40)
    _, gap = perform(begin, st.CentreToWaste(4, -2, 1, "neck centre"))
    assert gap.stitches == 16
    made, half = perform(gap, st.HoldPart("left", -7, -3))
    assert made == (op.Hold(-7, -3),)
    assert (half.first, half.last, half.held_left, half.held_right, half.waiting) == (2, 9, 0, 3, 8)
    assert half.stitches == 16
    _, done = perform(half, st.OffOnWaste(8, "shoulder right"))
    assert done.stitches == 8
    made, back = perform(done, st.ReturnPart("left", -7, -3))
    assert made == (op.Release(-7, -3),)
    assert (back.first, back.last, back.held_left, back.waiting) == (-10, -3, 3, 0)


def test_some_of_the_held_needles_return_from_the_inside() -> None:
    held = State("x", first=-10, last=9, held_left=6, held_right=5, side="left")
    made, after = perform(held, st.ReturnSome("right", 2))
    assert made == (op.Release(5, 6),)
    assert after.held_right == 3
    made, after = perform(held, st.ReturnSome("left", 4))
    assert made == (op.Release(-8, -5),)
    assert after.held_left == 2


def test_spreading_names_the_loops_of_every_needle() -> None:
    made, after = perform(READY, st.SpreadEvenly(-7, 6, 14, "two together", 2, 3, 1, 2))
    assert made == (op.Spread(-10, 9, -7, (1, 1, 2, 1, 1, 2, 1, 1, 2, 1, 2, 1, 2, 1)),)
    assert (after.first, after.last) == (-7, 6)
    made, _ = perform(State("x", first=0, last=3), st.SpreadEvenly(0, 5, 6, "an empty needle", 2, 1, 1, 1))
    assert made == (op.Spread(0, 3, 0, (1, 1, 0, 1, 0, 1)),)


def test_a_slot_is_cast_on_again_with_its_own_length_of_yarn() -> None:
    again = (op.IntoWork(3, 6), op.CastOn("e-wrap", 3, 6, own_length=True))
    made, after = perform(READY, st.SlotOnWaste(4, 3, 6, "thumb"))
    assert made == (op.OntoWaste(3, 6, 8, "thumb"), *again)
    assert after == READY
    assert perform(READY, st.SlotClosed(4, 3, 6)) == ((op.Close(3, 6, "right"), *again), READY)


@pytest.mark.parametrize(("side", "by"), [("left", -1), ("right", 1)])
def test_an_eyelet_leaves_its_needle_in_work(side: op.Side, by: int) -> None:
    assert perform(READY, st.EyeletAt(4, side)) == ((op.Transfer(4, 4, by),), READY)


def test_parts_wait_on_either_side_until_they_rejoin() -> None:
    begin = State("x", first=-10, last=9, held_left=2, held_right=3, side="left", row=20)
    made, gap = perform(begin, st.CloseCentre(3, -1, 1))
    assert made == (op.Close(-1, 1, "right"),)
    assert gap.stitches == 17
    _, left = perform(gap, st.HoldPart("right", 2, 6))
    assert (left.first, left.last, left.held_left, left.held_right) == (-10, -2, 2, 0)
    assert left.parts == (WaitingPart(2, 9, 0, 3),)
    _, none = perform(left, st.HoldPart("left", -8, -2))
    assert (none.stitches, none.waiting, none.last < none.first) == (17, 17, True)
    made, right = perform(none, st.ReturnPart("right", 2, 6))
    assert made == (op.Release(2, 6),)
    assert (right.first, right.last, right.held_right, right.waiting) == (2, 9, 3, 9)
    made, closed = perform(right, st.CastOnBetween(3, -1, 1))
    assert made == (op.IntoWork(-1, 1), op.CastOn("e-wrap", -1, 1, own_length=True))
    made, whole = perform(closed, st.ReturnPart("left", -8, -2))
    assert made == (op.Release(-8, -2),)
    assert (whole.first, whole.last, whole.held_left, whole.held_right, whole.waiting) == (-10, 9, 2, 3, 0)


def test_of_three_parts_two_wait() -> None:
    begin = State("x", first=-10, last=9, held_left=2, side="right", row=20)
    _, gaps = perform(begin, st.CloseCentre(2, -6, -5))
    _, gaps = perform(gaps, st.CloseCentre(3, 4, 6))
    assert gaps.stitches == 15
    _, one = perform(gaps, st.HoldPart("right", 7, 9))
    assert (one.first, one.last, one.waiting) == (-10, 3, 3)
    _, first = perform(one, st.HoldPart("middle", -4, 3))
    assert (first.first, first.last, first.held_left, first.waiting, first.stitches) == (-10, -7, 2, 11, 15)
    _, put_by = perform(first, st.PartOnCord("left", -10, -7, 40))
    assert put_by.parts == (WaitingPart(-10, -7, 2, 0, cord=True), WaitingPart(-4, 3, 0, 0), WaitingPart(7, 9, 0, 0))
    _, middle = perform(put_by, st.ReturnPart("middle", -4, 3))
    assert middle.beside("left") == WaitingPart(-10, -7, 2, 0, cord=True)
    assert middle.beside("right") == WaitingPart(7, 9, 0, 0)
    _, closed = perform(middle, st.CastOnBetween(2, -6, -5))
    _, drawn = perform(closed, st.DrawPartsCord("left", -10, -7))
    _, joined = perform(drawn, st.ReturnPart("left", -8, -7))
    assert (joined.first, joined.last, joined.held_left, joined.waiting, joined.stitches) == (-10, 3, 2, 3, 17)


def test_no_part_returns_that_does_not_wait() -> None:
    with pytest.raises(ValueError, match="no part waits on L 8"):
        perform(READY, st.ReturnPart("left", -8, -2))


def test_gathering_takes_all_stitches() -> None:
    made, after = perform(READY, st.GatherAll())
    assert made == (op.Gather(-10, 9),)
    assert after.stitches == 0


def test_a_panel_has_the_ribs_wales_within_it() -> None:
    made, _ = perform(READY, st.LatchPanel(3, 1, 12, -9, 1))
    assert [m.slot for m in made if isinstance(m, op.LatchUp)] == [-8, -5, -2, 1]
    assert all(isinstance(m, op.LatchUp) and m.rows == 12 for m in made)


@pytest.mark.parametrize("half", range(3, 20))
@pytest.mark.parametrize("every", [2, 3, 4])
def test_a_rib_is_symmetric_and_spares_the_end_needles(half: int, every: int) -> None:
    wales = rib_slots(-half, half - 1, every, every // 2)
    assert tuple(sorted(-1 - w for w in wales)) == wales
    assert all(-half < w < half - 1 for w in wales)
    if every == 3:
        assert 1 in wales
        assert -2 in wales


def test_every_kind_of_step_has_hands() -> None:
    from walewright.knit.hands import _HANDS

    kinds = {c for c in vars(st).values() if isinstance(c, type) and issubclass(c, st.Step) and c is not st.Step}
    assert kinds - set(_HANDS) == {st.JoinEdges, st.SeamOf, st.EdgeInSeam, st.Track}
