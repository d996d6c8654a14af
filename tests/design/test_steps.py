"""Edges that move in steps: how many, how far, and which of them are larger."""

from __future__ import annotations

import pytest

from tests.design.shaped import front, only, piece
from walewright.design.model import StepsAlike
from walewright.report.english import in_english


def test_steps_of_several_sizes_move_by_their_sum() -> None:
    # A stitch is half a centimetre.
    made = front("edges steps -3 stitches then -1 cm 2 times to low").left[0]
    assert made.in_turn == (StepsAlike((-1.5, -1.5), (1, 1)), StepsAlike((-1.0, -1.0), (2, 2)))
    assert made.steps == (3, 3)
    assert made.change == pytest.approx((-3.5, -3.5))
    assert not made.equal_steps
    assert made.of_size(1).in_turn == (StepsAlike((-1.5,), (1,)), StepsAlike((-1.0,), (2,)))


@pytest.mark.parametrize("order", ["first", "last"])
def test_steps_that_may_differ_by_a_stitch(order: str) -> None:
    made = front(f"edges steps -1 cm 3 times to low, larger steps {order}").left[0]
    assert (made.larger, made.steps, made.in_turn, made.equal_steps) == (order, (3, 3), (), False)
    assert front("edges steps -1 cm 3 times to low").left[0].equal_steps


def test_where_moves_begin_and_end_is_of_the_run_that_says_it() -> None:
    made = front("edges slope to 36 cm wide at low, ending with a move", "edges slope to 34 cm wide at top, beginning with a move")
    assert [(run.begins_moving, run.ends_moving) for run in made.left] == [(False, True), (True, False)]
    assert made.left == made.right
    (rate,) = set(front("edges in 1 stitch every 10 rows to low, ending with a move").left[0].rates)
    # From row 1 to the last row but one every tenth: once in the first, and then once in each whole gap.
    assert (rate.moves(11), rate.moves(12), rate.moves(21), rate.moves(22)) == (1, 2, 2, 3)
    assert [front("neck 18 cm wide, 8 cm deep, v, ending with a move").openings[0].left[0].ends_moving] == [True]


@pytest.mark.parametrize(
    "steps", ["-2 cm then 1 cm to low", "-2 cm then 0 cm to low", "2 cm 3 times then -1 stitch to low", "0 cm then 2 cm to low"]
)
def test_all_steps_go_one_way(steps: str) -> None:
    found = only(piece(f"edges steps {steps}"))
    assert found.code == "steps-turn-back"
    assert in_english(found).helps


@pytest.mark.parametrize("steps", ["1 cm 0 times then 2 cm to low", "1 cm 150 times then 1 stitch 60 times to low"])
def test_there_is_a_step_of_each_size_and_not_too_many(steps: str) -> None:
    assert only(piece(f"edges steps {steps}")).code in ("not-positive", "absurd-count")
