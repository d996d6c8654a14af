"""Tracks and their weaving into one order of sentences."""

from __future__ import annotations

from dataclasses import replace

from walewright.counted.model import ShapingPhrase, SizedRun, SizedWedge
from walewright.design.model import Origin, ShapingWay
from walewright.knit import steps as st
from walewright.knit.holding import HeldEnd, wedge_groups
from walewright.knit.order import Group, RowStretch
from walewright.knit.state import State
from walewright.knit.tracks import BOTH, ShapedEnds
from walewright.knit.tracks import run_groups as groups_of_run
from walewright.knit.weave import crowded, weave

HERE = Origin("test")
SIMPLE = ShapingWay("simple")
READY = State("x", first=-30, last=29, side="right")


def run(*phrases: ShapingPhrase, to_row: int = 100, way: ShapingWay = SIMPLE) -> SizedRun:
    return SizedRun("side", 0, to_row, phrases, way, HERE)


def run_groups(track: str, run: SizedRun, number: int, ends: str, origin: str) -> list[Group]:
    return list(groups_of_run(track, run, number, ShapedEnds(ends), origin))


def sentences(part: RowStretch, state: State = READY) -> tuple[st.Step, ...]:
    return weave(part, crowded([part]), state)[0]


def test_one_phrase_is_one_repeat_with_its_count_after_it() -> None:
    groups = tuple(run_groups("outer", run(ShapingPhrase((6,), (-1,), 5)), 0, BOTH, "o"))
    made = sentences(RowStretch(0, 40, groups))
    assert made[0] == st.Repeat((st.KnitRows(6), st.Decrease(BOTH, 1, 0)), 5)
    assert made[1] == st.Now(50, 30, "right")
    assert made[2:] == (st.KnitTo(40), st.Now(50, 40, "right"))


def test_a_motif_of_two_gaps_is_one_repeat() -> None:
    (group,) = run_groups("outer", run(ShapingPhrase((2, 3), (-1, -1), 4)), 0, BOTH, "o")
    assert isinstance(group.repeat, st.Repeat)
    assert [type(s).__name__ for s in group.repeat.body] == ["KnitRows", "Decrease", "KnitRows", "Decrease"]
    assert group.last == 20


def test_simple_increases_at_both_ends_take_two_rows_and_keep_their_rhythm() -> None:
    (group,) = run_groups("outer", run(ShapingPhrase((6,), (1,), 4)), 0, BOTH, "o")
    assert group.repeat == st.Repeat((st.KnitRows(5), st.IncreaseAtCarriage(), st.KnitRows(1), st.IncreaseAtCarriage()), 4)
    made = sentences(RowStretch(0, 30, (group,)))
    assert made[1] == st.Now(68, 24, "right")


def test_casting_off_at_both_ends_at_once_is_done_before_two_rows() -> None:
    groups = tuple(run_groups("outer", run(ShapingPhrase((0,), (-4,), 1), ShapingPhrase((2,), (-1,), 3)), 0, BOTH, "o"))
    made = sentences(RowStretch(0, 20, groups))
    assert made[0] == st.Repeat((st.CastOffAtCarriage(4), st.KnitRows(1), st.CastOffAtCarriage(4)), 1)
    assert made[1] == st.Now(52, 1, "left")
    # The first of the three has one row less before it, since the pair ended a row late.
    assert made[2] == st.Repeat((st.KnitRows(1), st.Decrease(BOTH, 1, 0)), 1)
    assert made[4] == st.Repeat((st.KnitRows(2), st.Decrease(BOTH, 1, 0)), 2)
    assert made[5] == st.Now(46, 6, "right")


def test_two_busy_edges_are_printed_row_by_row() -> None:
    left = run_groups("left", run(ShapingPhrase((4,), (-1,), 3)), 0, "left end", "o")
    right = run_groups("right", run(ShapingPhrase((6,), (-1,), 2)), 0, "right end", "o")
    made = sentences(RowStretch(0, 14, (*left, *right)))
    assert not any(isinstance(s, st.Repeat) for s in made)
    assert [s for s in made if isinstance(s, st.Decrease)] == [
        st.Decrease("left end", 1, 0),
        st.Decrease("right end", 1, 0),
        st.Decrease("left end", 1, 0),
        st.Decrease("left end", 1, 0),
        st.Decrease("right end", 1, 0),
    ]
    assert made[-1] == st.Now(55, 14, "right")


def test_what_is_cast_off_at_once_comes_before_a_phrase_that_begins_with_rows() -> None:
    """Both begin at row 10, whichever edge is told first."""
    up, off = (
        SizedRun("up", 10, 20, (ShapingPhrase((1,), (3,), 1),), SIMPLE, HERE),
        SizedRun("off", 10, 20, (ShapingPhrase((0,), (-2,), 1),), SIMPLE, HERE),
    )
    left, right = run_groups("left", up, 0, "left end", "o"), run_groups("right", off, 0, "right end", "o")
    made = sentences(RowStretch(10, 20, (*left, *right)), replace(READY, row=10))
    bodies = [s.body for s in made if isinstance(s, st.Repeat)]
    assert bodies == [(st.CastOffAtCarriage(2),), (st.KnitRows(1), st.CastOnAtCarriage(3))]


def test_one_crowded_size_unrolls_the_phrase_in_all() -> None:
    free = run_groups("left", run(ShapingPhrase((4,), (-1,), 3)), 0, "left end", "o")
    met = run_groups("left", run(ShapingPhrase((4,), (-1,), 3)), 0, "left end", "o")
    meets = run_groups("right", run(ShapingPhrase((6,), (-1,), 2)), 0, "right end", "o")
    keys = crowded([RowStretch(0, 20, tuple(free)), RowStretch(0, 20, (*met, *meets))])
    assert ("left", 1) in keys


def test_a_held_edge_ends_with_all_back_and_one_row_over_all() -> None:
    wedge = SizedWedge("shoulder", "right", 10, (6, 5, 5), HERE)
    groups = tuple(wedge_groups("wedge", wedge, HeldEnd("right", 1, 10, 16), "o"))
    made = sentences(RowStretch(10, 16, groups), State("x", first=0, last=15, side="right", row=10))
    assert made == (
        st.KnitTo(11),
        st.Now(16, 11, "left"),
        st.Repeat((st.HoldAtEnd("right", 6), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1)), 1),
        st.Now(16, 13, "left"),
        st.Repeat((st.HoldAtEnd("right", 5), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1)), 1),
        st.Now(16, 15, "left"),
        st.ReturnHeld("right"),
        st.KnitTo(16),
        st.Now(16, 16, "right"),
    )
