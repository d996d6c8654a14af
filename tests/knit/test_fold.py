"""Folding: the fewest sentences for the same work."""

from __future__ import annotations

import random

import pytest

from walewright.knit import steps as st
from walewright.knit.fold import body_shape, fold
from walewright.trade.sides import SIDES

ROW, TWO, THREE = st.KnitRows(1), st.KnitRows(2), st.KnitRows(3)
LEFT, RIGHT = st.Decrease("left end", 1, 0), st.Decrease("right end", 1, 3)


def unfolded(steps: tuple[st.Step, ...]) -> list[st.Step]:
    made: list[st.Step] = []
    for step in steps:
        made += unfolded(step.body) * step.times if isinstance(step, st.Repeat) else [step]
    return made


def test_what_recurs_is_one_repeat_that_begins_with_its_rows() -> None:
    assert fold([LEFT, TWO, LEFT, TWO, LEFT, TWO, LEFT]) == (LEFT, st.Repeat((TWO, LEFT), 3))


def test_two_periods_that_agree_are_one_round() -> None:
    body = (TWO, RIGHT, ROW, RIGHT, LEFT)
    assert fold([*body] * 4 + [TWO, RIGHT]) == (st.Repeat(body, 4), TWO, RIGHT)


def test_a_repeat_within_a_repeat() -> None:
    body = [THREE, LEFT] + [ROW, RIGHT] * 3
    assert fold(body * 2) == (st.Repeat((THREE, LEFT, st.Repeat((ROW, RIGHT), 3)), 2),)


def test_holding_begins_a_round() -> None:
    turn = [st.HoldAtEnd("left", 4), ROW, st.WrapHeld("left"), ROW]
    assert fold([ROW, *turn * 3]) == (ROW, st.Repeat(tuple(turn), 3))


def test_the_first_stitches_held_at_an_end_are_told_before_a_round_that_is_as_long_without_them() -> None:
    """At the left all but a few, then two at each end in turn: the two that are the first at the right are read by themselves."""
    left, right = ((st.HoldAtEnd(side, 2), ROW, st.WrapHeld(side)) for side in SIDES)
    first = (st.HoldAtEnd("left", 34), ROW, st.WrapHeld("left"))
    assert fold([*first, *right, *[*left, *right] * 4]) == (*first, *right, st.Repeat((*left, *right), 4))
    # Where that would be longer they are the first round.
    assert fold([*first, *right * 5]) == (*first, st.Repeat(right, 5))


def test_steps_without_rows_are_no_round() -> None:
    assert fold([LEFT, RIGHT, LEFT, RIGHT]) == (LEFT, RIGHT, LEFT, RIGHT)


def test_a_single_round_of_what_another_size_repeats_is_a_repeat_too() -> None:
    once = [THREE, RIGHT, LEFT, ROW]
    assert fold(once) == tuple(once)
    known = {body_shape((TWO, RIGHT, LEFT)): 1}
    assert fold(once, known) == (st.Repeat((THREE, RIGHT, LEFT), 1), ROW)


def test_of_two_ways_the_one_that_most_sizes_have_is_taken() -> None:
    """Held first at the left or first at the right: which round is repeated is free."""
    left, right = ((st.HoldAtEnd(side, 1), ROW, st.WrapHeld(side)) for side in SIDES)
    turns = [*left, *right] * 3 + [*left]
    assert fold(turns) == (st.Repeat((*left, *right), 3), *left)
    known = {body_shape((*left, *right)): 2, body_shape((*right, *left)): 3}
    assert fold(turns, known)[3:] == (st.Repeat((*right, *left), 3),)


@pytest.mark.parametrize("seed", range(30))
def test_folding_never_changes_the_work(seed: int) -> None:
    some = random.Random(seed)
    steps = [some.choice((ROW, TWO, LEFT, RIGHT)) for _ in range(20)]
    folded = fold([*steps, *steps])
    assert unfolded(folded) == [*steps, *steps]
