"""Each step's expansion, from a known state."""

from __future__ import annotations

import pytest

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.hands import State, perform, rib_slots

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


@pytest.mark.parametrize("half", range(3, 20))
@pytest.mark.parametrize("every", [2, 3, 4])
def test_a_rib_is_symmetric_and_spares_the_end_needles(half: int, every: int) -> None:
    wales = rib_slots(-half, half - 1, every)
    assert tuple(sorted(-1 - w for w in wales)) == wales
    assert all(-half < w < half - 1 for w in wales)
    if every == 3:
        assert 1 in wales
        assert -2 in wales


def test_every_kind_of_step_has_hands() -> None:
    from walewright.knit.hands import _HANDS

    kinds = {c for c in vars(st).values() if isinstance(c, type) and issubclass(c, st.Step) and c is not st.Step}
    assert kinds - set(_HANDS) == {st.JoinEdges}
