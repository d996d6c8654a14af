"""Shapings that go on at the same time: how they are found and told, and the order in which they are worked."""

from __future__ import annotations

import pytest

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.at_once import crowds, told
from walewright.knit.hands import perform
from walewright.knit.merging import merged
from walewright.knit.order import Group, Move, Rank, RowStretch
from walewright.knit.state import State
from walewright.report.said import said
from walewright.trade.sides import EdgeSide

RAGLAN = st.Decrease("right end", 1, 2)
NECK = st.Decrease("left end", 1, 0)


def every(track: str, number: int, start: int, gap: int, times: int, step: st.Step) -> Group:
    """A group of `times` moves, `gap` rows apart."""
    moves = tuple(Move(start + gap * (i + 1), Rank.SHAPE, step) for i in range(times))
    return Group((track, number), start, moves[-1].row, moves, st.Repeat((st.KnitRows(gap), step), times))


def stretch(*groups: Group) -> RowStretch:
    return RowStretch(0, 40, groups)


OUTER, INNER = every("outer", 0, 0, 4, 3, RAGLAN), every("gap right neck", 0, 2, 3, 2, NECK)


def test_what_overlaps_in_one_size_goes_together_in_all() -> None:
    apart = every("gap right neck", 0, 14, 3, 2, NECK)
    assert crowds([stretch(OUTER, apart)]) == ()
    assert crowds([stretch(OUTER, apart), stretch(OUTER, INNER)]) == (frozenset({("outer", 0), ("gap right neck", 0)}),)


def short_rows(side: EdgeSide, number: int, start: int, groups: tuple[int, ...]) -> Group:
    """Held step by step at one end, every 2 rows from `start` on."""
    holds = [Move(start + 2 * i, Rank.HOLD, st.HoldAtEnd(side, count)) for i, count in enumerate(groups)]
    wraps = [Move(start + 2 * i + 1, Rank.WRAP, st.WrapHeld(side)) for i in range(len(groups))]
    moves = sorted((*holds, *wraps), key=lambda move: move.row)
    return Group((f"wedge {number} {side}", number), start, moves[-1].row, tuple(moves), None)


def test_short_rows_at_both_ends_in_turn_are_told_in_one_order() -> None:
    left, right = short_rows("left", 0, 0, (2,) * 6), short_rows("right", 1, 1, (2,) * 6)
    assert crowds([stretch(left, right)]) == ()
    # Of another rhythm each they have too many steps in one order; with a neck beside them nobody turns at both ends only.
    uneven = short_rows("right", 1, 1, (2, 3, 1, 4, 2, 5))
    assert crowds([stretch(left, uneven)]) == (frozenset({left.key, uneven.key}),)
    assert len(crowds([stretch(left, right, INNER)])) == 1


def test_what_falls_between_is_taken_in() -> None:
    between = every("mark", 0, 4, 1, 1, st.MarkEdges("side"))
    (crowd,) = crowds([stretch(OUTER, INNER), stretch(OUTER, between)])
    assert ("mark", 0) in crowd


def test_a_stretch_worked_several_times_has_none() -> None:
    assert crowds([RowStretch(0, 40, (OUTER, INNER), times=3)]) == ()


def test_each_track_counts_all_the_rows() -> None:
    together = told(stretch(OUTER, INNER), frozenset({OUTER.key, INNER.key}))
    assert together == st.Together(
        0,
        12,
        (
            st.Track(said("outer-edge"), (st.Repeat((st.KnitRows(4), RAGLAN), 3), st.KnitRows(0))),
            st.Track("neck", (st.KnitRows(2), st.Repeat((st.KnitRows(3), NECK), 2), st.KnitRows(4))),
        ),
    )
    assert list(merged(together)) == [
        st.KnitRows(4),
        RAGLAN,
        st.KnitRows(1),
        NECK,
        st.KnitRows(3),
        RAGLAN,
        NECK,
        st.KnitRows(4),
        RAGLAN,
    ]


def test_at_one_row_wraps_go_first_then_returns_then_holds() -> None:
    steps: tuple[st.Step, ...] = (NECK, st.HoldAtEnd("right", 2), st.ReturnHeld("left"), st.WrapHeld("right"))
    tracks = tuple(st.Track(f"{i}", (st.KnitRows(1), step)) for i, step in enumerate(steps))
    assert list(merged(st.Together(5, 6, tracks))) == [st.KnitRows(1), *reversed(steps)]


def test_a_track_with_a_row_too_few_is_refused() -> None:
    with pytest.raises(ValueError, match="1 rows of 2"):
        list(merged(st.Together(5, 7, (st.Track("neck", (st.KnitRows(1), NECK)),))))


def test_hands_knit_each_row_once() -> None:
    tracks = (st.Track("one", (st.KnitRows(2),)), st.Track("other", (st.KnitRows(1), st.CastOffAtCarriage(2), st.KnitRows(1))))
    made, after = perform(State("back", first=-5, last=4, side="right", row=8), st.Together(8, 10, tracks))
    assert made == (op.Pass("left"), op.CastOff(-5, -4, "left"), op.Pass("right"))
    assert (after.first, after.row) == (-3, 10)


def test_what_began_before_the_stretch_goes_on_in_rounds() -> None:
    """Moves at rows 3, 5, 8, 10, 13, 15, 18, of which the first three fall before row 9."""
    body = (st.KnitRows(3), RAGLAN, st.KnitRows(2), RAGLAN)
    rows = (3, 5, 8, 10, 13, 15, 18, 20)
    group = Group(("outer", 0), 0, 20, tuple(Move(r, Rank.SHAPE, RAGLAN) for r in rows), st.Repeat(body, 4))
    neck = every("gap right neck", 0, 10, 2, 3, NECK)
    together = told(RowStretch(9, 40, (group, neck)), frozenset({group.key, neck.key}))
    assert together is not None
    assert together.tracks[0].steps == (st.Repeat((st.KnitRows(1), RAGLAN), 1), st.Repeat(body, 2), st.KnitRows(0))
