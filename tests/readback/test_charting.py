"""Rows worked by a chart, move for move: figures worked out by hand from the meaning of the symbols."""

from __future__ import annotations

import pytest

from tests.in_english import plain_text, read_back, write
from tests.write.chart_garments import CELLS, PICTURE_CELLS, chart, worked
from walewright.design.model import Cell, Chart
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.steps import Step

LEFT, RIGHT = op.Pass("left"), op.Pass("right")


def moves(drawn: Chart, *steps: Step) -> tuple[op.Operation, ...]:
    """What is done on a bed of 12 stitches, L 6 to R 6, from the chart's start on; without the casting off."""
    work, faults = read_back(plain_text(write((worked("M", steps, half=6),), charts=(drawn,))), 0)
    assert faults == ()
    assert work is not None
    return work.blocks[0].operations[5:-2]


def on(*drawn: str, first: int = 0, edge: int = 0, cells: bool = False) -> tuple[Chart, st.StartChart]:
    """A chart without a repeat with its first column on slot `first`."""
    made = chart("grid", *drawn, cells=PICTURE_CELLS if cells else CELLS)
    return made, st.StartChart("grid", "", "panel", first, first + made.width - 1, edge, first)


@pytest.mark.parametrize(
    ("drawn", "made"),
    [
        (("O\\",), (op.Transfer(0, 0, 1), LEFT)),
        (("O>>\\",), (op.Transfer(0, 2, 1), LEFT)),
        (("/<O",), (op.Transfer(1, 2, -1), LEFT)),
        (("O>A<O",), (op.Transfer(0, 1, 1), op.Transfer(3, 4, -1), LEFT)),
        (("/OO\\",), (op.Transfer(1, 1, -1), op.Transfer(2, 2, 1), LEFT)),
        # A decrease without its hole, a hole without its decrease: plain.
        (("./..",), (LEFT,)),
        (("O>..",), (LEFT,)),
        (("cccc",), (op.Cross(0, 1, 1, "left"), op.Cross(2, 3, 1, "left"), LEFT)),
        ((".CCCC",), (op.Cross(1, 4, 2, "right"), LEFT)),
        (("CCC.",), (LEFT,)),
        # Casting off lets what is held go.
        (("u.uu",), (op.Hold(0, 0), op.Hold(2, 3), LEFT, op.Release(0, 0), op.Release(2, 3))),
        (("v.vv",), (op.Hold(0, 0), op.Hold(2, 3), LEFT, op.LiftOff(0, 0), op.LiftOff(2, 3), op.Release(0, 0), op.Release(2, 3))),
        (("ll",), (op.Hold(0, 1), LEFT, op.DrawLong(0), op.DrawLong(1), op.Release(0, 1))),
        (
            ("x.x",),
            (
                *(op.Hold(0, 0), op.Hold(2, 2), LEFT, op.LiftOff(0, 0), op.LiftOff(2, 2)),
                *(op.LayIn("navy", "4.", (0, 2), "left"), op.Release(0, 0), op.Release(2, 2)),
            ),
        ),
        (("-.-",), (LEFT, op.LatchUp(0, 1), op.LatchUp(2, 1))),
        (("|.",), (op.Transfer(0, 0, 1), LEFT)),
        # Slips come off before long stitches are drawn, and those before another yarn is knitted.
        (
            ("xlv",),
            (
                *(op.Hold(0, 2), LEFT, op.LiftOff(2, 2), op.Release(2, 2), op.DrawLong(1), op.Release(1, 1)),
                *(op.LiftOff(0, 0), op.LayIn("navy", "4.", (0,), "left"), op.Release(0, 0)),
            ),
        ),
        # Moves come first, whatever stands left of them.
        (("u.O\\",), (op.Transfer(2, 2, 1), op.Hold(0, 0), LEFT, op.Release(0, 0))),
    ],
)  # fmt: skip
def test_a_row(drawn: tuple[str, ...], made: tuple[op.Operation, ...]) -> None:
    grid, start = on(*drawn)
    assert moves(grid, start, st.KnitRows(1)) == made


@pytest.mark.parametrize(
    ("drawn", "made"),
    [
        # A column is latched up once it is complete, a held needle returns when the row comes that knits it.
        (("-.", "--"), (LEFT, op.LatchUp(1, 1), RIGHT, op.LatchUp(0, 2))),
        ((".", "u", "u"), (op.Hold(0, 0), LEFT, RIGHT, op.Release(0, 0), LEFT)),
        # A ladder is let down before the row that does not go on with it; where the chart ends it stays.
        (("..", "|.", "|."), (op.Transfer(0, 0, 1), LEFT, RIGHT, op.Drop(0, 2), LEFT)),
        (("|.", "|."), (op.Transfer(0, 0, 1), LEFT, RIGHT)),
        # The purl columns beside a cross give it slack.
        (
            ("-cc-", "-..-"),
            (
                *(LEFT, op.Drop(0, 1), op.Drop(3, 1), op.Cross(1, 2, 1, "left"), op.LatchUp(0, 1), op.LatchUp(3, 1), RIGHT),
                *(op.LatchUp(0, 1), op.LatchUp(3, 1)),
            ),
        ),
        # What ends is latched up after its row, and let down before the next.
        (("..-", "|.-"), (op.Transfer(0, 0, 1), LEFT, op.Drop(0, 1), RIGHT, op.LatchUp(2, 2))),
    ],
)  # fmt: skip
def test_rows(drawn: tuple[str, ...], made: tuple[op.Operation, ...]) -> None:
    grid, start = on(*drawn)
    assert moves(grid, start, st.KnitRows(len(drawn))) == made


def test_a_column_between_two_crosses_stays_down_for_both_and_a_wide_cross_without_one_is_plain() -> None:
    drawn = "-WWWWWW-WWW", "-......-..."
    grid = chart("grid", *drawn, cells={**CELLS, "W": Cell("cross", "", 3, "left")})
    start = st.StartChart("grid", "", "panel", -6, 4, 0, -6)
    assert moves(grid, start, st.KnitRows(2))[1:7] == (
        *(op.Drop(-6, 1), op.Drop(1, 1), op.Cross(-5, 0, 3, "left"), op.LatchUp(-6, 1), op.LatchUp(1, 1), RIGHT),
    )
    narrow, begin = on("cc-cc", "..-..")
    assert moves(narrow, begin, st.KnitRows(2))[1:6] == (
        *(op.Drop(2, 1), op.Cross(0, 1, 1, "left"), op.Cross(3, 4, 1, "left"), op.LatchUp(2, 1), RIGHT),
    )
    edged = st.StartChart("grid", "", "panel", -5, 0, 0, -6)
    assert moves(grid, edged, st.KnitRows(2)) == (LEFT, RIGHT)


def test_a_chart_without_a_repeat_is_worked_once() -> None:
    grid, start = on("O\\")
    assert moves(grid, start, st.KnitRows(3), st.StopChart("grid")) == (op.Transfer(0, 0, 1), LEFT, RIGHT, LEFT)


def test_a_picture_is_laid_over_the_whole_width() -> None:
    grid, start = on("x.1", cells=True)
    blocks = (("wool", -6, -1), ("navy", 0, 0), ("wool", 1, 1), ("red", 2, 2), ("wool", 3, 5))
    assert moves(grid, start, st.KnitRows(2)) == (op.PictureRow("left", "4.", blocks), RIGHT)


LACE = chart("grid", "....", "O\\..", repeat=4)


def all_over(edge: int, start: int = 0) -> st.StartChart:
    return st.StartChart("grid", "lace", "whole", edge - 6, 5 - edge, edge, start)


def test_a_repeat_goes_on_over_the_width_and_up() -> None:
    holes = tuple(op.Transfer(s, s, 1) for s in (-4, 0, 4))
    assert moves(LACE, all_over(0), st.KnitRows(3)) == (op.InFabric("lace"), *holes, LEFT, RIGHT, *holes, LEFT)
    # R 6 is an end stitch, so that R 5's hole has no needle to go to.
    assert moves(LACE, all_over(1), st.KnitRows(1)) == (op.InFabric("lace"), *holes[:2], LEFT)


def test_no_decrease_without_its_hole() -> None:
    """Where an end stitch takes the place of one of a group, the others knit plain too."""
    holes = op.Transfer(-2, -2, 1), op.Transfer(2, 2, 1)
    assert moves(LACE, all_over(1, start=-6), st.KnitRows(1)) == (op.InFabric("lace"), *holes, LEFT)


def test_shaping_settles_what_has_been_begun_on_the_needles_it_takes() -> None:
    grid = chart("grid", "-u", "-u", "-u", "-u", repeat=2)
    start = st.StartChart("grid", "", "panel", -6, 5, 1, -6)
    made = moves(grid, start, st.KnitRows(2), st.Decrease("both ends", 1, 0))
    held = tuple(op.Hold(s, s) for s in (-5, -3, -1, 1, 3))
    settled = (op.LatchUp(4, 2), op.Release(-5, -5))
    narrower = (op.Transfer(-6, -6, 1), op.OutOfWork(-6, -6), op.Transfer(5, 5, -1), op.OutOfWork(5, 5))
    # What is left on the other needles is settled before they leave the bed.
    rest = (*(op.LatchUp(s, 2) for s in (-4, -2, 0, 2)), *(op.Release(s, s) for s in (-3, -1, 1, 3)))
    assert made == (*held, LEFT, RIGHT, *settled, *narrower, *rest)


def test_a_column_is_latched_before_a_further_loop_is_hung_on_it() -> None:
    grid, start = on("-.-", "-.-", "-.-", "-.-", first=-2)
    steps = (start, st.KnitRows(1), st.EyeletAt(-1, "left"), st.KnitRows(1))
    assert moves(grid, *steps) == (LEFT, op.LatchUp(-2, 1), op.Transfer(-1, -1, -1), RIGHT, op.LatchUp(-2, 1), op.LatchUp(0, 2))
    closed = moves(grid, start, st.KnitRows(1), st.CloseCentre(3, -3, -1), st.HoldPart("left", -6, -4), st.KnitRows(1))
    assert closed[:4] == (LEFT, op.LatchUp(-2, 1), op.LatchUp(0, 1), op.Close(-3, -1, "right"))


def test_a_column_waits_with_its_part() -> None:
    grid, start = on("--", "--", "--", "--", first=-1)
    part = (start, st.KnitRows(1), st.HoldPart("left", -6, -1), st.KnitRows(1), st.OffOnWaste(8, "shoulder right"))
    again = (st.CarriageAt("left"), st.SetRowCounter(1), st.ReturnPart("left", -6, -1), st.KnitRows(2))
    made = moves(grid, *part, *again)
    assert [m for m in made if isinstance(m, op.LatchUp | op.Hold | op.Release)] == [
        *(op.Hold(-6, -1), op.LatchUp(0, 2)),
        *(op.Release(-6, -1), op.LatchUp(-1, 3)),
    ]


def test_holding_settles_too_and_needles_that_return_begin_afresh() -> None:
    grid, start = on("-", "-", "-", "-", first=4)
    steps = (start, st.KnitRows(1), st.HoldAtEnd("right", 2), st.KnitRows(1), st.WrapHeld("right"), st.ReturnHeld("right"))
    assert moves(grid, *steps, st.KnitRows(2)) == (
        *(LEFT, op.LatchUp(4, 1), op.Hold(4, 5), RIGHT, op.Wrap(4), op.Release(4, 5)),
        *(LEFT, RIGHT, op.LatchUp(4, 2)),
    )


def test_an_end_leaves_ladders_knitted() -> None:
    grid = chart("grid", "u|.-", repeat=4)
    start = st.StartChart("grid", "lace", "panel", 0, 3, 0, 0)
    assert moves(grid, start, st.KnitRows(1), st.StopChart("grid")) == (
        *(op.InFabric("lace", 0, 3), op.Transfer(1, 1, 1), op.Hold(0, 0), LEFT),
        *(op.LatchUp(3, 1), op.Release(0, 0), op.InFabric("", 0, 3)),
    )


def test_a_later_chart_has_its_needles_to_itself() -> None:
    rose = chart("rose", "..", "..")
    base = st.StartChart("grid", "lace", "whole", -6, 5, 0, 0)
    motif = st.StartChart("rose", "", "panel", 0, 1, 0, 0)
    work, _ = read_back(plain_text(write((worked("M", (base, motif, st.KnitRows(3)), half=6),), charts=(LACE, rose))), 0)
    assert work is not None
    made = work.blocks[0].operations[5:-2]
    # Once the motif is complete its needles go by the fabric again.
    some, every = (tuple(op.Transfer(s, s, 1) for s in slots) for slots in ((-4, 4), (-4, 0, 4)))
    assert made == (op.InFabric("lace"), *some, LEFT, RIGHT, *every, LEFT)


def test_the_counter_set_back_sets_the_chart_back() -> None:
    steps = (all_over(1), st.KnitRows(1), st.SetRowCounter(0), st.KnitRows(1))
    holes = op.Transfer(-4, -4, 1), op.Transfer(0, 0, 1)
    assert moves(LACE, *steps) == (op.InFabric("lace"), *holes, LEFT, op.SetCounter(0), *holes, RIGHT)


def several(charts: tuple[Chart, ...], *steps: Step) -> tuple[op.Operation, ...]:
    """As `moves`, of several charts, but for what is said of fabrics."""
    work, faults = read_back(plain_text(write((worked("M", steps, half=6),), charts=charts)), 0)
    assert faults == ()
    assert work is not None
    return tuple(m for m in work.blocks[0].operations[5:-2] if not isinstance(m, op.InFabric))


def test_a_panel_goes_before_the_whole_width_and_a_motif_before_both() -> None:
    panelled, rose = chart("ribs", "-.", repeat=2), chart("rose", "..")
    base = st.StartChart("grid", "lace", "whole", -6, 5, 0, 0)
    panel = st.StartChart("ribs", "ribbed", "panel", -4, 3, 0, -4)
    motif = st.StartChart("rose", "", "panel", 0, 1, 0, 0)
    # Of the holes on L 4, R 1 and R 5 the panel has the first two, and of the panel's columns the motif has R 1.
    first = several((LACE, panelled, rose), base, panel, motif, st.KnitRows(1))
    assert several((LACE, panelled, rose), motif, panel, base, st.KnitRows(1)) == first
    assert first == (op.Transfer(4, 4, 1), LEFT, *(op.LatchUp(slot, 1) for slot in (-4, -2, 2)))


def test_a_chart_waits_for_its_first_row_where_the_counter_is_set_back() -> None:
    steps = (st.KnitRows(2), all_over(1), st.KnitRows(1), st.SetRowCounter(0), st.KnitRows(3))
    holes = op.Transfer(-4, -4, 1), op.Transfer(0, 0, 1)
    assert moves(LACE, *steps) == (LEFT, RIGHT, op.InFabric("lace"), *holes, LEFT, op.SetCounter(0), RIGHT, LEFT, *holes, RIGHT)


def test_stripes_wait_for_their_first_row_where_the_counter_is_set_back() -> None:
    start = st.StartStripes("bands", (("navy", 1), ("wool", 1)), "4", ())
    made = moves(LACE, st.KnitRows(2), start, st.KnitRows(2), st.SetRowCounter(0), st.KnitRows(3))
    navy, wool = ((op.BreakYarn(), op.UseYarn(name, "4")) for name in ("navy", "wool"))
    begun = (op.InFabric("bands"), *navy, LEFT, *wool, RIGHT)
    assert made == (LEFT, RIGHT, *begun, op.SetCounter(0), LEFT, RIGHT, *navy, LEFT)


def test_one_chart_on_several_needles_ends_where_it_is_said() -> None:
    grid = chart("grid", "-.")
    one, other = (st.StartChart("grid", "", "panel", first, first + 1, 0, first) for first in (-4, 2))
    assert moves(grid, one, other, st.KnitRows(1)) == (LEFT, op.LatchUp(-4, 1), op.LatchUp(2, 1))
    held = chart("grid", "u.", repeat=2)
    ended = moves(held, one, other, st.KnitRows(1), st.StopChartOn("grid", -4, -3), st.KnitRows(1))
    assert ended == (op.Hold(-4, -4), op.Hold(2, 2), LEFT, op.Release(-4, -4), RIGHT, op.Release(2, 2))


def test_a_ladder_on_the_last_needle_knits_plain() -> None:
    grid, start = on("..", ".|", ".|", first=4)
    assert moves(grid, start, st.KnitRows(3)) == (LEFT, RIGHT, LEFT)


STRIPES = (("wool", 2), ("navy", 1))


@pytest.mark.parametrize(
    ("carried", "changes"),
    [
        ((), ((op.BreakYarn(), op.UseYarn("navy", "4")), (op.BreakYarn(), op.UseYarn("wool", "4")))),
        (("wool",), ((op.UseYarn("navy", "4", carried=True),), (op.BreakYarn(), op.UseYarn("wool", "4", carried=True)))),
        (("wool", "navy"), ((op.UseYarn("navy", "4", carried=True),), (op.UseYarn("wool", "4", carried=True),))),
    ],
)
def test_stripes(carried: tuple[str, ...], changes: tuple[tuple[op.Operation, ...], ...]) -> None:
    steps = (st.StartStripes("bands", STRIPES, "4", carried), st.KnitRows(4), st.StopStripes("bands"))
    there, back = changes
    expected = (op.InFabric("bands"), LEFT, RIGHT, *there, LEFT, *back, RIGHT, op.InFabric(""))
    assert moves(LACE, *steps) == expected
