"""One row of a chart, needle by needle, from expectations written out by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from walewright.design.model import Cell, CellKey, Chart, Origin
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.hands import perform
from walewright.knit.operations import Operation
from walewright.knit.rows import ranges
from walewright.knit.state import State

HERE = Origin("here")
CELLS = {
    ".": Cell("knit"),
    "O": Cell("hole"),
    ">": Cell("from left"),
    "<": Cell("from right"),
    "R": Cell("two from left"),
    "L": Cell("two from right"),
    "3": Cell("three"),
    "-": Cell("purl"),
    "t": Cell("tuck"),
    "s": Cell("slip"),
    "l": Cell("long"),
    "H": Cell("ladder"),
    "x": Cell("cross", cross=1, hung_first="left"),
    "X": Cell("cross", cross=2, hung_first="right"),
    "W": Cell("cross", cross=3, hung_first="left"),
    "b": Cell("knit", "blue"),
    "r": Cell("knit", "red"),
}
KEY = tuple(CellKey(symbol, cell, HERE) for symbol, cell in CELLS.items())


def chart(
    *rows: str, name: str = "grid", repeat: int | None = None, before: int = 0, after: int = 0, picture: bool = False
) -> Chart:
    """Rows from the first knitted up; without more said, the whole of it is the repeat."""
    columns = len(rows[0]) - before - after if repeat is None else repeat
    return Chart(name, rows, KEY, before, columns, after, picture, HERE)


def ready(*charts: Chart, width: int = 12, row: int = 0) -> State:
    """So many stitches from slot 0 on, the carriage at the right, the yarn threaded."""
    return State("piece", first=0, last=width - 1, side="right", row=row, yarn=("wool", "4"), charts=charts)


def whole(name: str = "grid", last: int = 11, edge: int = 0, start: int = 0, fabric: str = "figured") -> st.StartChart:
    return st.StartChart(name, fabric, "whole", edge, last - edge, edge, start)


def motif(name: str, first: int, last: int, edge: int = 1) -> st.StartChart:
    return st.StartChart(name, "", "panel", first, last, edge, first)


def work(state: State, *steps: st.Step) -> tuple[list[Operation], State]:
    """All operations of the steps."""
    made: list[Operation] = []
    for step in steps:
        more, state = perform(state, step)
        made += more
    return made, state


def rows_of(*rows: str, start: st.StartChart | None = None, count: int | None = None, width: int = 12) -> list[Operation]:
    """What the chart asks for in its rows, but for the fabric's name."""
    state = ready(chart(*rows), width=width)
    made, _ = work(state, start or whole(last=width - 1), st.KnitRows(len(rows) if count is None else count))
    return [m for m in made if not isinstance(m, op.InFabric)]


def test_a_plain_chart_is_the_carriage_alone() -> None:
    assert rows_of("....", count=2) == [op.Pass("left"), op.Pass("right")]


def test_a_started_chart_says_its_fabric_and_nothing_more() -> None:
    state = ready(chart("...."))
    assert work(state, whole())[0] == [op.InFabric("figured")]
    panel = st.StartChart("grid", "figured", "panel", 2, 5, 1, 2)
    assert work(state, panel)[0] == [op.InFabric("figured", 2, 5)]
    assert work(state, motif("grid", 2, 5))[0] == []
    assert work(state, panel, st.StopChart("grid"))[0] == [op.InFabric("figured", 2, 5), op.InFabric("", 2, 5)]


# ----------------------------------------------------------------- moved loops


def test_loops_go_to_the_right_as_one_transfer() -> None:
    # Hole at 1, two passing, both at 4: loops 1 to 3 go one needle on.
    assert rows_of(".O>>R.", width=6) == [op.Transfer(1, 3, 1), op.Pass("left")]


def test_loops_go_to_the_left_as_one_transfer() -> None:
    assert rows_of(".L<O..", width=6) == [op.Transfer(2, 3, -1), op.Pass("left")]


def test_three_together_takes_the_left_run_first() -> None:
    assert rows_of("O>3<O.", width=6) == [op.Transfer(0, 1, 1), op.Transfer(3, 4, -1), op.Pass("left")]


def test_groups_are_worked_by_their_needle_furthest_left() -> None:
    made = rows_of("LOOR.O3O", width=8)
    assert made[:-1] == [op.Transfer(1, 1, -1), op.Transfer(2, 2, 1), op.Transfer(5, 5, 1), op.Transfer(7, 7, -1)]


def test_a_group_may_cross_the_border_of_two_repeats() -> None:
    # R first, O last: each hole's taker lies in the repeat after it. The first R and the last O have no partner on the bed.
    assert rows_of("R..O", width=12) == [op.Transfer(3, 3, 1), op.Transfer(7, 7, 1), op.Pass("left")]


def test_a_group_is_cut_off_as_a_whole_by_the_edge_stitches() -> None:
    # Needles 0 and 7 are edge stitches: the groups at 0-1 and 6-7 have a needle there.
    made = rows_of("OR....LO", start=whole(last=7, edge=1), width=8)
    assert made == [op.Pass("left")]
    # The same hole at needle 3 of a triple: its other side is cut off, and it is left out on both.
    assert rows_of(".....O3O", start=whole(last=7, edge=1), width=8) == [op.Pass("left")]


def test_shaping_takes_pairs_out_together() -> None:
    state = ready(chart(".OR...", "......"))
    _, state = work(state, whole(edge=1), st.KnitRows(2))
    made, _ = work(state, st.Decrease("left end", 1, 0), st.KnitRows(1))
    # Now needle 1 is the edge stitch: the pair 1-2 is gone, that at 7-8 remains.
    assert made == [op.Transfer(0, 0, 1), op.OutOfWork(0, 0), op.Transfer(7, 7, 1), op.Pass("left")]


def test_a_hole_that_two_runs_claim_is_plain() -> None:
    assert rows_of("..LOR.", width=6) == [op.Pass("left")]


def test_a_run_without_its_hole_is_plain() -> None:
    assert rows_of("..>R.O", width=6) == [op.Pass("left")]


def test_borders_lie_at_the_ends_of_the_placement_and_the_repeat_goes_on_beyond() -> None:
    # One column before, three in the repeat, two after, on needles 2..11: before at 2, after at 10 and 11.
    grid = chart("s.b.lt", before=1, repeat=3, after=2)
    state = ready(grid, width=14)
    made, _ = work(state, st.StartChart("grid", "", "whole", 2, 11, 0, 3), st.KnitRows(1))
    holds = [m for m in made if isinstance(m, op.Hold)]
    # Slip at 2, blue in the middle of each repeat, also beyond the placement (1 and 13), long at 10, tuck at 11.
    assert holds == [op.Hold(1, 2), op.Hold(4, 4), op.Hold(7, 7), op.Hold(10, 11), op.Hold(13, 13)]


# ----------------------------------------------------------------- columns down the fabric


def test_a_purl_column_is_latched_when_it_ends() -> None:
    made = rows_of("-...", "-...", "....", width=4)
    assert made == [op.Pass("left"), op.Pass("right"), op.LatchUp(0, 2), op.Pass("left")]


def test_a_purl_column_that_never_ends_is_latched_when_the_chart_stops() -> None:
    state = ready(chart("-..."), width=4)
    made, after = work(state, whole(last=3), st.KnitRows(3), st.StopChart("grid"), st.KnitRows(1))
    assert made[4:] == [op.LatchUp(0, 3), op.InFabric(""), op.Pass("right")]
    assert after.in_force == ()


def test_a_purl_column_is_latched_before_its_needle_leaves() -> None:
    state = ready(chart("-..."), width=8)
    _, state = work(state, whole(last=7), st.KnitRows(3))
    made, after = work(state, st.Decrease("left end", 1, 0))
    assert made == [op.LatchUp(0, 3), op.Transfer(0, 0, 1), op.OutOfWork(0, 0)]
    assert after.in_force[0].purl == {4: 3}


def test_a_needle_that_becomes_the_edge_stitch_leaves_too() -> None:
    state = ready(chart(".-.."), width=8)
    _, state = work(state, whole(last=7, edge=1), st.KnitRows(2))
    made, _ = work(state, st.CastOffAtCarriage(2))
    # Needles 6 and 7 are cast off and 5 is the edge stitch now.
    assert made == [op.LatchUp(5, 2), op.CastOff(6, 7, "right")]


def test_needles_held_for_shaping_leave_and_begin_afresh() -> None:
    state = replace(ready(chart("...-"), width=8), side="left")
    _, state = work(state, whole(last=7), st.KnitRows(2))
    made, state = work(state, st.HoldAtEnd("right", 2))
    assert made == [op.LatchUp(7, 2), op.Hold(6, 7)]
    made, state = work(state, st.KnitRows(2), st.ReturnHeld("right"), st.KnitRows(1), st.StopChart("grid"))
    assert [m for m in made if isinstance(m, op.LatchUp)] == [op.LatchUp(3, 5), op.LatchUp(7, 1)]


def test_a_column_waits_with_its_part_and_is_latched_whole_when_it_has_gone_on() -> None:
    state = ready(chart("-...", "-...", "-...", "....", name="grid"), width=8)
    _, state = work(state, whole(last=7), st.KnitRows(2))
    made, state = work(state, st.HoldPart("left", 0, 3))
    assert made == [op.Hold(0, 3)]
    made, state = work(state, st.KnitRows(2), st.OffOnWaste(8, "shoulder right"))
    # The needle of the right part went on: three rows in all, latched as the third ended.
    assert made == [op.Pass("left"), op.LatchUp(4, 3), op.Pass("right"), op.OntoWaste(4, 7, 8, "shoulder right")]
    steps = (st.CarriageAt("left"), st.SetRowCounter(2), st.ReturnPart("left", 0, 3), st.KnitRows(1))
    made, _ = work(state, *steps)
    assert made[-2:] == [op.Pass("right"), op.LatchUp(0, 3)]


def test_a_column_that_has_waited_and_is_an_edge_stitch_now_is_latched_as_its_part_returns() -> None:
    state = ready(chart("-", "-", "-", "-", name="grid"), width=8)
    _, state = work(state, whole(last=7, edge=1), st.KnitRows(2), st.HoldPart("left", 0, 3), st.KnitRows(1))
    made, _ = work(state, st.SetRowCounter(2), st.ReturnPart("left", 0, 3), st.HoldPart("right", 4, 7), st.KnitRows(1))
    assert op.LatchUp(4, 3) not in made
    assert [m for m in made if isinstance(m, op.LatchUp | op.Release)] == [op.Release(0, 3), op.LatchUp(3, 2)]


def test_a_wide_crossing_after_a_parting_has_the_room_of_its_columns() -> None:
    state = ready(chart("-XXXX-", "-XXXX-", repeat=6), width=12)
    _, state = work(state, whole(), st.KnitRows(1), st.HoldPart("left", 0, 5), st.KnitRows(1), st.OffOnWaste(8, "shoulder right"))
    made, _ = work(state, st.CarriageAt("left"), st.SetRowCounter(1), st.ReturnPart("left", 0, 5), st.KnitRows(1))
    assert made[-6:] == [
        *(op.Drop(0, 1), op.Drop(5, 1), op.Cross(1, 4, 2, "right"), op.LatchUp(0, 1), op.LatchUp(5, 1)),
        op.Pass("right"),
    ]


def test_the_centre_leaves_before_it_goes_on_waste_yarn() -> None:
    state = ready(chart("-..."), width=12)
    _, state = work(state, whole(), st.KnitRows(2))
    made, after = work(state, st.CentreToWaste(4, 4, 7, "neck centre"))
    assert made == [op.LatchUp(4, 2), op.OntoWaste(4, 7, 8, "neck centre")]
    assert after.in_force[0].purl == {0: 2, 8: 2}


@pytest.mark.parametrize(
    ("step", "made", "left"),
    [
        (st.CloseCentre(4, 4, 7), [op.LatchUp(4, 2), op.LatchUp(8, 2), op.Close(4, 7, "right")], {0: 2}),
        (st.EyeletAt(7, "right"), [op.LatchUp(8, 2), op.Transfer(7, 7, 1)], {0: 2, 4: 2}),
        (st.EyeletAt(1, "left"), [op.LatchUp(0, 2), op.Transfer(1, 1, -1)], {4: 2, 8: 2}),
    ],
    ids=str,
)
def test_a_column_is_latched_before_a_further_loop_is_hung_on_it(
    step: st.Step, made: list[Operation], left: dict[int, int]
) -> None:
    _, state = work(ready(chart("-..."), width=12), whole(), st.KnitRows(2))
    done, after = work(state, step)
    assert done == made
    assert after.in_force[0].purl == left


def test_a_ladder_begins_with_a_bar_and_is_dropped_when_it_ends() -> None:
    made = rows_of(".H..", ".H..", "....", width=4)
    assert made == [op.Transfer(1, 1, 1), op.Pass("left"), op.Pass("right"), op.Drop(1, 2), op.Pass("left")]


def test_a_ladder_stays_knitted_where_it_leaves_and_where_the_chart_stops() -> None:
    state = ready(chart(".H.."), width=8)
    _, state = work(state, whole(last=7), st.KnitRows(2))
    made, state = work(state, st.Decrease("left end", 2, 2))
    assert made == [op.Transfer(0, 1, 2), op.OutOfWork(0, 1)]
    assert work(state, st.StopChart("grid"))[0] == [op.InFabric("")]


def test_latching_goes_before_dropping() -> None:
    made = rows_of("H.-.", "....", width=4)
    assert made[1:4] == [op.Pass("left"), op.LatchUp(2, 1), op.Drop(0, 1)]


# ----------------------------------------------------------------- crossings


def test_crossings_are_cut_from_the_left() -> None:
    assert rows_of(".xxxx.", width=6) == [op.Cross(1, 2, 1, "left"), op.Cross(3, 4, 1, "left"), op.Pass("left")]


def test_a_crossing_that_loses_a_needle_leaves_the_others_where_they_were() -> None:
    # The edge stitch takes needle 1: the first pair is plain, the second one is still 3-4.
    assert rows_of(".xxxx.", start=whole(last=5, edge=2), width=6) == [op.Pass("left")]
    made = rows_of(".xxxx...", start=st.StartChart("grid", "", "panel", 2, 7, 0, 0), width=8)
    assert made == [op.Cross(3, 4, 1, "left"), op.Pass("left")]


def test_crossings_without_a_gap_are_cut_at_the_border_of_the_repeat() -> None:
    # The repeat begins at needle 1, so that needles 0 and 7 have no partner.
    made = rows_of("xxxx", start=whole(last=7, start=1), width=8)
    assert made == [op.Cross(first, first + 1, 1, "left") for first in (1, 3, 5)] + [op.Pass("left")]


def test_purl_columns_beside_a_crossing_give_it_room() -> None:
    made = rows_of("-....-", "-XXXX-", "......", width=6)
    assert made == [
        op.Pass("left"),
        op.Drop(0, 1),
        op.Drop(5, 1),
        op.Cross(1, 4, 2, "right"),
        op.LatchUp(0, 1),
        op.LatchUp(5, 1),
        op.Pass("right"),
        op.LatchUp(0, 1),
        op.LatchUp(5, 1),
        op.Pass("left"),
    ]


def test_a_column_between_two_crossings_stays_down_for_both() -> None:
    made = rows_of("..-..", "xx-xx", ".....", width=5)
    crossed = [op.Drop(2, 1), op.Cross(0, 1, 1, "left"), op.Cross(3, 4, 1, "left"), op.LatchUp(2, 1)]
    assert made[1:6] == [*crossed, op.Pass("right")]


def test_a_wide_crossing_without_slack_is_plain() -> None:
    rows = ("-......-......", "-WWWWWW-WWWWWW", "..............")
    # Both crossings share the column between them; the last one has no other.
    assert rows_of(*rows, width=14)[1:-1] == [
        *(op.Drop(0, 1), op.Drop(7, 1), op.Cross(1, 6, 3, "left"), op.LatchUp(0, 1), op.Cross(8, 13, 3, "left"), op.LatchUp(7, 1)),
        *(op.Pass("right"), op.LatchUp(0, 1), op.LatchUp(7, 1)),
    ]
    # The first column is an edge stitch, and the crossing beside the second one goes without it.
    made = rows_of(*rows, start=whole(last=13, edge=1), width=14)
    assert [m for m in made if isinstance(m, op.Cross)] == [op.Cross(1, 6, 3, "left")]
    assert rows_of("-......", "-WWWWWW", start=whole(last=6, edge=1), width=7) == [op.Pass("left"), op.Pass("right")]


def test_moves_go_before_crossings_and_these_before_ladders() -> None:
    made = rows_of("H.xx.OR.", width=8)
    assert made[:3] == [op.Transfer(5, 5, 1), op.Cross(2, 3, 1, "left"), op.Transfer(0, 0, 1)]


# ----------------------------------------------------------------- held needles


def test_a_tuck_is_held_until_a_row_without_it() -> None:
    made = rows_of(".t..", ".tt.", "....", width=4)
    assert made == [
        op.Hold(1, 1),
        op.Pass("left"),
        op.Hold(2, 2),
        op.Pass("right"),
        op.Release(1, 2),
        op.Pass("left"),
    ]


def test_a_tuck_returns_before_its_needle_leaves() -> None:
    state = ready(chart("-t.."), width=4)
    _, state = work(state, whole(last=3), st.KnitRows(1))
    made, _ = work(state, st.HoldPart("left", 0, 3))
    assert made == [op.Release(1, 1), op.Hold(0, 3)]


def test_a_tuck_at_the_end_returns_before_the_piece_comes_off() -> None:
    state = ready(chart(".t.."), width=4)
    _, state = work(state, whole(last=3), st.KnitRows(1))
    assert work(state, st.CastOffAll())[0] == [op.Release(1, 1), op.CastOff(0, 3, "left")]
    assert work(state, st.StopChart("grid"))[0] == [op.Release(1, 1), op.InFabric("")]


def test_slipped_long_and_coloured_stitches_in_their_order() -> None:
    made = rows_of("ss.llb.b", width=8)
    assert made == [
        op.Hold(0, 1),
        op.Hold(3, 5),
        op.Hold(7, 7),
        op.Pass("left"),
        op.LiftOff(0, 1),
        op.Release(0, 1),
        op.DrawLong(3),
        op.DrawLong(4),
        op.Release(3, 4),
        op.LiftOff(5, 5),
        op.LiftOff(7, 7),
        op.LayIn("blue", "4", (5, 7), "left"),
        op.Release(5, 5),
        op.Release(7, 7),
    ]


def test_a_cell_in_the_yarn_in_use_is_plain() -> None:
    state = replace(ready(chart("b.b."), width=4), yarn=("blue", "4"))
    assert work(state, whole(last=3), st.KnitRows(1))[0] == [op.InFabric("figured"), op.Pass("left")]


def test_a_picture_row_lays_blocks_over_all_needles_in_work() -> None:
    state = ready(chart(".bbr", name="leaf", repeat=0, picture=True), width=8)
    made, after = work(state, motif("leaf", 2, 5), st.KnitRows(2))
    # The picture has one row: the next one is the carriage's again.
    assert made == [
        op.PictureRow("left", "4", (("wool", 0, 2), ("blue", 3, 4), ("red", 5, 5), ("wool", 6, 7))),
        op.Pass("right"),
    ]
    assert after.row == 2


def test_a_picture_of_the_other_part_leaves_this_one_to_the_carriage() -> None:
    state = ready(chart("bb", name="leaf", repeat=0, picture=True), width=8)
    _, state = work(state, motif("leaf", 1, 2), st.HoldPart("left", 0, 3))
    assert work(state, st.KnitRows(1))[0] == [op.Pass("left")]


# ----------------------------------------------------------------- rows of the chart


def test_rows_repeat_from_the_first() -> None:
    made = rows_of("....", "OR..", count=4, width=4)
    assert made == [
        op.Pass("left"),
        op.Transfer(0, 0, 1),
        op.Pass("right"),
        op.Pass("left"),
        op.Transfer(0, 0, 1),
        op.Pass("right"),
    ]


def test_the_chart_counts_from_where_it_began() -> None:
    state = ready(chart("OR..", "....", "...."), width=4, row=10)
    made, _ = work(state, whole(last=3), st.KnitTo(12), st.SetRowCounter(10), st.KnitRows(1))
    assert made.count(op.Transfer(0, 0, 1)) == 2


def test_rows_of_repeats_and_of_shapings_at_once_are_rows_too() -> None:
    state = ready(chart("OR..", "...."), width=4)
    again = st.Repeat((st.KnitRows(2),), 2)
    together = st.Together(4, 6, (st.Track("neck", (st.KnitRows(2),)), st.Track("edge", (st.KnitRows(2),))))
    made, _ = work(state, whole(last=3), again, together)
    assert made.count(op.Transfer(0, 0, 1)) == 3


def test_the_chart_begun_later_wins_and_gives_back_what_it_took() -> None:
    base, leaf = chart("-...", name="base"), chart("..", name="leaf", repeat=0)
    state = ready(base, leaf, width=8)
    _, state = work(state, whole("base", last=7), st.KnitRows(2))
    made, state = work(state, motif("leaf", 3, 4))
    # What the base had begun on needle 4 is ended as the motif takes it over.
    assert made == [op.LatchUp(4, 2)]
    made, state = work(state, st.KnitRows(2), st.StopChart("leaf"), st.StopChart("base"))
    assert made == [op.Pass("left"), op.Pass("right"), op.LatchUp(0, 4), op.LatchUp(4, 1), op.InFabric("")]


def test_a_panel_lies_over_the_width_and_a_motif_over_both_whichever_came_last() -> None:
    base, panel, leaf = chart("s.", name="base"), chart("-.", name="rib"), chart("..", name="leaf", repeat=0)
    ribbed = st.StartChart("rib", "figured", "panel", 2, 7, 0, 2)
    for order in ((whole("base", last=9), ribbed, motif("leaf", 4, 5)), (motif("leaf", 4, 5), ribbed, whole("base", last=9))):
        made, _ = work(ready(base, panel, leaf, width=10), *order, st.KnitRows(1), st.Decrease("right end", 1, 0))
        assert [m.first for m in made if isinstance(m, op.Hold)] == [0, 8]
        state = work(ready(base, panel, leaf, width=10), *order, st.KnitRows(1))[1]
        assert {slot for one in state.in_force for slot in one.purl} == {2, 6}


def test_one_chart_can_be_in_force_on_two_groups_of_needles() -> None:
    state = ready(chart("-.", repeat=0), width=10)
    _, state = work(state, motif("grid", 2, 3), motif("grid", 6, 7))
    assert [(one.first, one.last) for one in state.in_force] == [(2, 3), (6, 7)]
    made, state = work(state, st.KnitRows(1), st.StopChartOn("grid", 2, 3))
    assert made == [op.Pass("left"), op.LatchUp(2, 1), op.LatchUp(6, 1)]
    assert [(one.first, one.last) for one in state.in_force] == [(6, 7)]


def test_a_ladder_needs_a_needle_to_its_right() -> None:
    assert rows_of("...H", "...H", "....", width=4) == [op.Pass("left"), op.Pass("right"), op.Pass("left")]


def test_a_ladder_that_ends_with_its_chart_leaves_its_loop_for_what_comes() -> None:
    state = ready(chart(".H..", ".H.."), chart(".OR.", name="lace"), width=4)
    made, _ = work(state, whole(last=3), st.KnitRows(2), st.StopChart("grid"), whole("lace", last=3), st.KnitRows(1))
    assert [m for m in made if not isinstance(m, op.InFabric)] == [
        *(op.Transfer(1, 1, 1), op.Pass("left"), op.Pass("right")),
        *(op.Transfer(1, 1, 1), op.Pass("left")),
    ]


def test_a_chart_begun_again_in_its_place_goes_on() -> None:
    state = ready(chart("-..."), width=4)
    _, state = work(state, whole(last=3), st.KnitRows(2), st.SetRowCounter(0), whole(last=3), st.SetRowCounter(2))
    made, _ = work(state, st.StopChart("grid"))
    assert made == [op.LatchUp(0, 2), op.InFabric("")]


def test_a_chart_begun_anew_elsewhere_takes_the_place_of_the_old_one() -> None:
    state = ready(chart("O3O."), width=8)
    made, _ = work(state, whole(last=7), st.KnitRows(1), whole(last=7, start=1), st.KnitRows(1))
    moves = [m.first for m in made if isinstance(m, op.Transfer)]
    assert moves == [0, 2, 4, 6, 1, 3, 5, 7]


def test_increases_bring_needles_into_the_chart() -> None:
    state = ready(chart("s..."), width=4)
    _, state = work(state, whole(last=3), st.IncreaseAtCarriage())
    made, _ = work(state, st.KnitRows(1))
    assert made[:2] == [op.Hold(0, 0), op.Hold(4, 4)]


def test_an_unknown_chart_is_refused() -> None:
    with pytest.raises(ValueError, match="no chart is called 'grid'"):
        work(ready(), whole())
    with pytest.raises(ValueError, match="not in force"):
        work(ready(chart("....")), st.StopChart("grid"))


# ----------------------------------------------------------------- stripes


def stripes(rows: tuple[tuple[str, int], ...], *carried: str) -> st.StartStripes:
    return st.StartStripes("striped", rows, "4", carried)


def test_carried_yarns_hang_and_are_taken_up() -> None:
    made, after = work(ready(), stripes((("wool", 2), ("navy", 2)), "wool", "navy"), st.KnitRows(5))
    assert made == [
        op.InFabric("striped"),
        op.Pass("left"),
        op.Pass("right"),
        op.UseYarn("navy", "4", carried=True),
        op.Pass("left"),
        op.Pass("right"),
        op.UseYarn("wool", "4", carried=True),
        op.Pass("left"),
    ]
    assert after.yarn == ("wool", "4")


def test_a_yarn_that_is_not_carried_is_broken_off() -> None:
    made, _ = work(ready(), stripes((("wool", 1), ("navy", 1))), st.KnitRows(2))
    assert made[2:4] == [op.BreakYarn(), op.UseYarn("navy", "4")]


def test_one_yarn_carried_past_another_that_is_not() -> None:
    made, _ = work(ready(), stripes((("wool", 6), ("navy", 2)), "wool"), st.KnitRows(9))
    yarns = [m for m in made if isinstance(m, op.UseYarn | op.BreakYarn)]
    assert yarns == [op.UseYarn("navy", "4", carried=True), op.BreakYarn(), op.UseYarn("wool", "4", carried=True)]


def test_stripes_go_by_the_counter_and_end() -> None:
    state = ready(row=8)
    _, state = work(state, stripes((("wool", 2), ("navy", 2))), st.KnitRows(2), st.BreakOff(), st.SetRowCounter(11))
    made, state = work(state, st.KnitRows(1))
    assert made == [op.UseYarn("navy", "4"), op.Pass("left")]
    made, _ = work(state, st.StopStripes("striped"), st.KnitRows(4))
    assert made == [op.InFabric(""), op.Pass("right"), op.Pass("left"), op.Pass("right"), op.Pass("left")]


def test_ranges_are_as_long_as_can_be() -> None:
    assert list(ranges({5, 1, 2, 3, 8, 7})) == [(1, 3), (5, 5), (7, 8)]
