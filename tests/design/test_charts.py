"""Charts: what is read of them, and every fault at its very cell."""

from __future__ import annotations

import pytest

from tests.design.drawing import chart, drawn, lacy, marked, piece, places, plain, said, said_of, sound, source
from walewright.design.model import Cell
from walewright.report.model import Severity


def test_the_bottom_line_is_the_first_row() -> None:
    made = drawn(chart("..O/..", "......"), plain(lacy()), piece())
    assert made.rows == ("......", "..O/..")
    assert made.cell(1, 2) == Cell("hole")
    assert made.cell(1, 3) == Cell("two from left")


def test_rows_know_their_lines() -> None:
    parts = (chart("..O/..", "......"), plain(lacy()), piece())
    text = source(*parts)
    origin = drawn(*parts).row_origins[1]
    assert text[origin.span.start : origin.span.end] == ". . O / . ."
    assert origin.path == "chart lace / row 2"


def test_the_whole_grid_is_the_repeat_of_a_fabric_and_none_of_a_motif() -> None:
    assert drawn(chart("..O/..", "......"), plain(lacy()), piece()).repeat == 6
    assert drawn(chart("..O/..", "......"), plain(), piece("motif lace at low")).repeat == 0


def test_columns_beside_the_repeat() -> None:
    made = drawn(
        chart("..O/...", ".......", lines=["repeat 4 stitches, after 1 stitch"]), plain(lacy()), piece(more=", centre stitch")
    )
    assert (made.before, made.repeat, made.after) == (1, 4, 2)


def test_the_meaning_of_every_kind_of_symbol() -> None:
    keys = {k.symbol: k.cell for k in drawn(chart("-DDDDDD-NN", *["-......-.."] * 6), plain(lacy()), piece()).key}
    assert keys["D"] == Cell("cross", "", 3, "right")
    assert keys["N"] == Cell("knit", "navy")
    assert keys["-"] == Cell("purl")


def test_colours_laid_in_blocks() -> None:
    made = drawn(chart("NN..", "NNRR", lines=["colours laid in blocks"]), plain(lacy()), piece())
    assert made.picture
    assert made.yarns == ("navy", "red")
    assert not drawn(chart("NN..", "N..."), plain(lacy()), piece()).picture


# ----------------------------------------------------------------- the grid


def test_a_row_too_long_is_marked_at_its_first_cell_too_many() -> None:
    assert marked("......", "..O/..", ".......", "......") == [("chart-ragged", 2, 7)]


def test_a_row_too_short_is_marked_at_its_end() -> None:
    (told,) = said_of("......", "..O/..", ".....", "......")
    assert "row 2 of chart `lace` has 5 cells, and row 1 has 6" in told.message
    assert places(source(chart("......", "..O/..", ".....", "......")), [told]) == [("chart-ragged", 2, 6)]


def test_most_rows_say_how_long_a_row_is() -> None:
    assert marked(".......", "..O/..", "......", "........") == [("chart-ragged", 4, 7), ("chart-ragged", 1, 7)]


def test_an_unknown_symbol_is_told_once_with_the_one_it_is_taken_for() -> None:
    keys = ["key . knit", "key O hole", "key / two from left"]
    assert marked("..0/..", "..0/..", "..O/..", keys=keys) == [("chart-unknown-symbol", 2, 3)]
    (told,) = said_of("..0/..", "..0/..", "..O/..", keys=keys)
    assert told.helps == ("`O` is close",)
    assert "row 2, column 3 of chart `lace`" in told.message
    assert [label.text for label in told.labels] == ["not in the key", "here too"]


def test_a_symbol_like_no_other_is_proposed_a_line_of_the_key() -> None:
    (told,) = said_of("..Z...", "......", keys=["key . knit"])
    assert told.helps == ("add a line for it, such as `key Z knit`",)


def test_symbols_given_twice_and_not_drawn() -> None:
    told = said_of("......", keys=["key . knit", "key . purl", "key T tuck"])
    assert [(d.code, d.severity) for d in told] == [("repeated-name", Severity.ERROR), ("chart-key-unused", Severity.WARNING)]


def test_a_chart_of_nothing() -> None:
    assert [d.code for d in said_of(keys=["key . knit"])] == ["chart-empty"]


def test_a_repeat_wider_than_the_grid() -> None:
    assert [d.code for d in said_of("....", lines=["repeat 4 stitches, after 1 stitch"])] == ["chart-repeat-too-wide"]
    assert [d.code for d in said_of("....", lines=["repeat 0 stitches"])] == ["not-positive"]


def test_a_chart_without_a_repeat_used_in_two_ways() -> None:
    told = said(
        chart("..O/..", "......"), plain(), plain(lacy(), name="lacy"), piece("fabric lacy from hem to low", "motif lace at middle")
    )
    assert [d.code for d in told] == ["chart-in-two-ways"]
    assert [label.text for label in told[0].labels] == ["one chart", "repeated in a fabric", "worked once as a motif"]


# ----------------------------------------------------------------- moves


@pytest.mark.parametrize(
    "row",
    ["..O/..", "..\\O..", "O>>/..", "..\\<<O", ".OAO..", "O>A<O.", "\\O.O/.", "O....\\", "/....O", ">/...O", "O/O/O/", "AO...O"],
)
def test_moves_that_belong_together_also_across_the_border_of_two_repeats(row: str) -> None:
    assert said_of(row, "......") == ()


@pytest.mark.parametrize(
    ("row", "code", "column"),
    [
        (".../..", "hole-unasked", 3),
        ("..\\...", "hole-unasked", 4),
        ("/.....", "hole-unasked", 6),
        (".O>...", "hole-without-move", 3),
        ("..O...", "hole-without-move", 3),
        ("..O>.\\", "hole-unasked", 1),
        (".\\O/..", "move-without-hole", 4),
        (".O//..", "move-without-hole", 4),
        ("..<O..", "hole-without-move", 3),
        (">>>>>>", "move-without-hole", 1),
        (".\\OO/.", "holes-meet", 4),
        ("OH....", "holes-meet", 2),
    ],
)
def test_what_does_not_belong_together_is_marked_at_its_cell(row: str, code: str, column: int) -> None:
    rows = (row, row) if "H" in row else (row,)
    found = marked(*rows, "......")
    assert (code, 2, column) in found


def test_two_moves_onto_one_needle_leave_two_holes() -> None:
    assert marked("..A...", "......") == [("hole-unasked", 2, 2), ("hole-unasked", 2, 4)]
    (first, _) = said_of("..A...", "......")
    assert first.message.startswith("row 2, column 2 of chart `lace`: its loop is moved to the right")
    assert first.labels[1].text == "the loop lies here"


def test_one_fault_is_told_once_though_the_repeat_lies_side_by_side() -> None:
    assert marked("..O...", "......") == [("hole-without-move", 2, 3)]


def test_a_border_has_no_neighbour_beyond_it() -> None:
    lines = ["repeat 4 stitches, after 1 stitch"]
    parts = (chart("/.....", "......", lines=lines), plain(lacy()), piece())
    assert places(source(*parts), said(*parts)) == [("move-without-hole", 2, 1)]
    # The same needle inside the repeat takes its loop from the repeat to its left.
    assert said_of("/....O", "......") == ()


def test_a_motif_has_no_neighbour_of_its_own() -> None:
    parts = (chart("/....O", "......"), plain(), piece("motif lace at low"))
    found = places(source(*parts), said(*parts))
    assert sorted(found) == [("hole-without-move", 2, 6), ("move-without-hole", 2, 1)]


def test_more_loops_than_a_tool_has_prongs() -> None:
    assert marked("O>>>/.", "......") == [("move-beyond-tools", 2, 1)]
    assert said_of("O>>/..", "......") == ()
    (told,) = said_of("O>>>/.", "......")
    assert "4 loops" in told.message
    assert told.notes == ("the largest transfer tool at hand has 3 prongs",)


def test_a_hole_above_a_hole() -> None:
    assert marked("..O/..", "..O/..", "......") == [("holes-meet", 3, 3)]
    # The first row lies above the last.
    assert marked("..O/..", "......", "..O/..") == [("holes-meet", 1, 3)]
    # A motif has nothing above its last row.
    assert said(chart("..O/..", "......", "..O/.."), plain(), piece("motif lace at low")) == ()


# ----------------------------------------------------------------- crosses

BELOW = ["......"] * 3


def test_a_cross_takes_its_cells_whole() -> None:
    assert said_of(".CCCC.", *BELOW) == ()
    assert said_of("CC..CC", *BELOW) == ()
    assert marked(".CCC..", *BELOW) == [("cross-cut", 4, 2)]
    assert marked("CCCCC.", *BELOW) == [("cross-cut", 4, 5)]
    assert marked("C..CC.", *BELOW)[0][0] == "cross-cut"


def test_a_whole_row_of_crosses_needs_a_repeat_of_whole_crosses() -> None:
    assert said_of("CCCCCCCC", *["........"] * 3) == ()
    assert marked("CCCCCC", *BELOW) == [("cross-cut", 4, 1)]


def test_a_cross_beyond_the_tools_is_marked_where_it_is_drawn_first() -> None:
    rows = ["-EEEEEEEE-", *["-........-"] * 9, "-EEEEEEEE-", *["-........-"] * 9]
    assert marked(*rows) == [("cross-beyond-tools", 10, 2)]


def test_a_wide_cross_needs_slack_beside_it() -> None:
    six = ["........"] * 5
    assert marked(".DDDDDD.", *six) == [("cross-without-slack", 6, 2)]
    for slack in ("-......-", ".......-", "-......."):
        cross = slack.replace("......", "DDDDDD", 1) if slack.startswith("-") else ".DDDDDD-"
        assert said_of(cross, *[slack] * 2, *["........"] * 3) == ()
    # One row of it is too little, and so is a column that is not directly beside the cross.
    assert marked("-DDDDDD.", "-.......", *["........"] * 4) == [("cross-without-slack", 6, 2)]
    # A column that is knit in the row of the cross has been latched up before it.
    assert marked(".DDDDDD.", "-.......", "-.......", *["........"] * 3) == [("cross-without-slack", 6, 2)]
    assert marked("-.DDDDDD.", *["-........"] * 5) == [("cross-without-slack", 6, 3)]


def test_the_first_rows_of_a_chart_have_nothing_below() -> None:
    rows = ["-......-"] * 5
    assert marked(*rows[:4], "-DDDDDD-", rows[0]) == [("cross-without-slack", 2, 2)]


def test_needles_crossed_again_too_soon() -> None:
    rows = (".CCCC.", "......", "......", ".CCCC.", *["......"] * 4)
    (told,) = said_of(*rows)
    assert (told.code, told.severity) == ("cross-too-soon", Severity.WARNING)
    assert marked(*rows) == [("cross-too-soon", 8, 2)]
    # Other needles may be crossed at once, the same ones after as many rows as the cross is needles wide.
    assert said_of(".CCCC.....", "..........", "......CCCC", "..........") == ()
    # The chart begins again above its last row.
    assert marked("......", "......", ".CCCC.") == [("cross-too-soon", 1, 2)]


# ----------------------------------------------------------------- columns


def test_a_needle_held_too_long_is_marked_at_the_row_too_many() -> None:
    held = [".T...."] * 4
    assert said_of("......", *held) == ()
    assert marked("......", ".T....", *held) == [("tuck-too-long", 5, 2)]
    assert marked(".T....") == [("tuck-too-long", 1, 2)]
    # Three rows at the bottom lie above two at the top.
    assert marked(".T....", ".T....", "......", *held[:3]) == [("tuck-too-long", 3, 2)]


def test_needles_held_side_by_side() -> None:
    assert marked("......", "..TT..") == [("tuck-side-by-side", 1, 4)]
    assert marked("......", "T....T") == [("tuck-side-by-side", 1, 1)]
    assert said(chart("......", "T....T"), plain(), piece("motif lace at low")) == ()


def test_a_stitch_slipped_too_long_is_warned_of() -> None:
    assert said_of("......", ".V....", ".V....") == ()
    (told,) = said_of("......", *[".V...."] * 3)
    assert (told.code, told.severity) == ("slip-too-long", Severity.WARNING)
    assert marked("......", *[".V...."] * 3) == [("slip-too-long", 3, 2)]
    (never,) = said_of(".V....")
    assert never.severity is Severity.ERROR
    assert len(never.labels) == 1
    assert "draw a row that knits there" in never.helps[0]


def test_ladders_need_two_rows_and_plain_stitches() -> None:
    assert said_of("......", "..H...", "..H...") == ()
    assert marked("..H...") == [("ladder-never-dropped", 1, 3)]
    assert marked("..H...", "..H...") == [("ladder-never-dropped", 1, 3)]
    assert marked("......", "..H...") == [("ladder-too-short", 1, 3)]
    assert marked("......", "..H-..", "..H-..") == [("ladder-needs-knit", 1, 3)]
    assert marked("......", "..-...", "..H...", "..H...") == [("ladder-needs-knit", 3, 3)]
    # At the right end of the repeat the neighbour is the next one's first column.
    assert marked("......", "-....H", "-....H") == [("ladder-needs-knit", 1, 6)]
    assert [d.code for d in said(chart("......", ".....H", ".....H"), plain(), piece("motif lace at low"))] == ["ladder-needs-knit"]
    # A motif has no row above its last one, in which the ladder would be dropped.
    motif = chart("..H...", "..H...", "......"), plain(), piece("motif lace at low")
    assert places(source(*motif), said(*motif)) == [("ladder-needs-knit", 3, 3)]
    assert said(chart("......", "..H...", "..H..."), plain(), piece("motif lace at low")) == ()


# ----------------------------------------------------------------- yarns


def test_one_other_yarn_in_a_row() -> None:
    assert marked("......", "N.R...") == [("three-colours-in-row", 1, 3)]
    assert said_of("N.....", "..R...") == ()
    assert said_of("N.R...", "......", lines=["colours laid in blocks"]) == ()


def test_a_row_keeps_the_yarn_of_the_fabric_within_the_repeat() -> None:
    assert marked("......", "NNNNNN") == [("row-without-main", 1, 1)]
    assert marked(".......", ".NNNNN.", lines=["repeat 5 stitches, after 1 stitch"])[0] == ("row-without-main", 1, 2)
    # Round a motif the yarn of the fabric goes on.
    assert said(chart("......", "NNNNNN"), plain(), piece("motif lace at low")) == ()


def test_a_symbol_for_the_yarn_of_the_fabric_itself() -> None:
    keys = ["key . knit in wool", "key N knit in navy"]
    assert [d.code for d in said_of("..N...", "......", keys=keys)] == ["chart-in-own-yarn"]
    assert said_of("..N...", "......", keys=keys, lines=["colours laid in blocks"]) == ()
    motif = said(chart("..N...", "......", keys=["key . knit", "key N knit in wool"]), plain(), piece("motif lace at low"))
    assert [d.code for d in motif] == ["chart-in-own-yarn"]


def test_blocks_of_yarn_have_only_knit() -> None:
    assert marked("N.T...", "N.-...", lines=["colours laid in blocks"]) == [
        ("picture-other-stitch", 2, 3),
        ("picture-other-stitch", 1, 3),
    ]


def test_a_yarn_that_is_not_there() -> None:
    assert [d.code for d in said_of("..G...", keys=["key . knit", "key G knit in green"])] == ["unknown-name"]


def test_several_faults_in_one_run() -> None:
    found = [d.code for d in said_of("..O...", ".../..", "..TT..", ".CCC..")]
    assert sorted(found) == ["cross-cut", "hole-unasked", "hole-without-move", "tuck-side-by-side"]


def test_a_large_chart_with_one_fault_everywhere_is_told_of_in_a_few_cells() -> None:
    assert len(said_of("O....." * 10, *["......" * 10, "O....." * 10, "......" * 10] * 10)) == 5


def test_a_cross_of_unlike_groups() -> None:
    told = said_of(".CCCC.", *BELOW, keys=["key . knit", "key C cross 2 over 3, left first"])
    assert [d.code for d in told] == ["cross-uneven"]


def test_the_charts_of_a_design_stand_in_the_order_of_the_source() -> None:
    made = sound(
        chart("..O/..", "......"),
        chart("..N...", "......", name="dots"),
        plain(),
        plain(lacy(), name="lacy"),
        piece("fabric lacy from hem to low", "motif dots at middle"),
    )
    assert [c.name for c in made.charts] == ["lace", "dots"]
    assert made.chart("dots").repeat == 0
