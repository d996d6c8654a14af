"""A bench copy says what is new, and tells one cross in one line."""

from __future__ import annotations

import re

import pytest

from tests.write.test_repeated import ENDED, block, cast_on, knitted
from walewright.knit import bench_steps as bs
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.bench import _Lines, unrolled
from walewright.knit.bench_moves import told
from walewright.knit.state import State
from walewright.knit.steps import SizePlan, Step
from walewright.trade.sides import EdgeSide
from walewright.write.bench import write_bench
from walewright.write.english import LANGUAGE
from walewright.write.needles import listed


def lines(*steps: Step) -> list[str]:
    plan = SizePlan("S", (block("back", cast_on(20), ("Knit", (*knitted(20, 54), *steps)), ("Finish", ENDED)),))
    made = write_bench(plan, unrolled(plan, ()), LANGUAGE)
    return [s.text for section in made.sections for s in section.sentences]


def turn(side: EdgeSide, stitches: int) -> tuple[Step, ...]:
    return st.HoldAtEnd(side, stitches), st.KnitRows(1), st.WrapHeld(side)


def test_what_is_held_beside_others_is_more() -> None:
    told_so = " ".join(lines(*turn("left", 3), *turn("right", 2), *turn("left", 4), st.ReturnHeld("left"), *turn("left", 1)))
    assert re.findall(r"hold ([^.]*)\.", told_so) == ["3 sts", "2 sts", "4 more sts", "1 st"]


def test_rows_are_knitted_up_to_a_reading_also_where_the_counter_is_set_anew() -> None:
    looser, anew = st.UseYarnStep("wool", "7"), st.SetRowCounter(0)
    told = lines(looser, anew, *knitted(20, 10))
    (line,) = (one for one in told if "tension 7" in one)
    assert line.startswith("54 rows to RC 54, COR:")
    assert "Set the row counter to 000." in line
    (line,) = (one for one in lines(st.Decrease("both ends", 1, 0), looser, anew) if "tension 7" in one)
    assert line.startswith("RC 0,"), "no rows are knitted to it"


@pytest.mark.parametrize(
    ("before", "after", "together"),
    [
        (bs.DropRows((1,), 5), bs.CrossStitches((2,), 2, "left"), True),
        (bs.CrossStitches((2,), 2, "left"), bs.LatchColumns((1,), 5), True),
        (bs.DropRows((1,), 5), bs.LatchColumns((1,), 5), True),
        (bs.LatchColumns((1,), 5), bs.DropRows((4,), 5), False),
        (bs.CrossStitches((2,), 2, "left"), bs.CrossStitches((8,), 2, "right"), False),
    ],
)
def test_a_cross_with_its_columns_is_one_line(before: Step, after: Step, together: bool) -> None:
    made = _Lines(State("back", first=-9, last=8, side="right"))
    for step in (before, after):
        made._line(step)
    assert len(made.parts) == (1 if together else 2)


# ----------------------------------------------------------------- how the carriage is set


def settings(*steps: Step) -> list[str]:
    """What each line of a block sets the carriage to, if anything."""
    found = (re.findall("Set the carriage to (hold|knit all)", line) for line in lines(*steps))
    return [" and ".join(one) for one in found][4:]


def test_the_carriage_is_set_where_needles_are_first_held_and_last_returned() -> None:
    back = st.ReturnHeld("left")
    assert settings(*turn("left", 3), *turn("right", 2), back, st.KnitRows(1), st.ReturnHeld("right"), st.KnitRows(9)) == [
        *("hold", "", "", ""),
        *("", "knit all", ""),
    ]


@pytest.mark.parametrize("rows", [1, 2, 12])
def test_it_is_set_each_time_in_short_rows_however_soon_the_next_ones_are(rows: int) -> None:
    middle = (*turn("left", 3), st.ReturnHeld("left"), st.KnitRows(rows), *turn("right", 2), st.ReturnHeld("right"))
    assert settings(*middle)[:5] == ["hold", "", "knit all", "hold", ""]
    again = st.Repeat((*turn("left", 3), st.KnitRows(1), st.ReturnHeld("left"), st.KnitRows(rows)), 3)
    assert [one for one in settings(again) if one] == ["hold", "knit all"] * 3


def test_it_is_set_each_time_for_a_part_that_waits() -> None:
    left = -10, -2
    parted = (st.CentreToWaste(2, -1, 0, "neck"), st.HoldPart("left", *left), st.KnitRows(2), st.CastOffAll())
    crossed = (st.CarriageAt("left", "held"), st.ReturnPart("left", *left), *turn("left", 3), st.ReturnHeld("left"))
    assert [one for one in settings(*parted, *crossed) if one] == ["hold", "knit all", "hold", "knit all"]


def test_it_is_set_anew_after_it_was_set_to_slip() -> None:
    crossing = st.CarriageAt("left", "slip")
    assert settings(crossing, st.KnitRows(1)) == ["knit all", ""]
    assert settings(*turn("left", 3), st.CarriageAt("right", "slip"), st.KnitRows(1), st.ReturnHeld("left"))[:3] == [
        "hold",
        "",
        "hold",
    ]


# ----------------------------------------------------------------- columns, and needles in a list


def test_columns_of_several_depths_are_one_turn() -> None:
    moves = [op.LatchUp(-9, 4), op.LatchUp(-8, 3), op.LatchUp(7, 3), op.LatchUp(8, 4), op.LatchUp(-3, 4)]
    assert [(s.needles, s.rows, s.along) for s in told(moves) if isinstance(s, bs.LatchColumns)] == [
        ((-9, 8), 4, False),
        ((-8, 7), 3, True),
        ((-3,), 4, False),
    ]
    made = _Lines(State("back", first=-10, last=9, side="right"))
    made._tell(moves)
    assert [len(part.body) for part in made.parts if isinstance(part, bs.BenchLine)] == [2, 1]


@pytest.mark.parametrize(
    ("slots", "words"),
    [((-8, -1, 0, 7), "L 8, L 1, R 1, R 8"), ((-3, -2, -1), "L 3 to L 1"), ((-2, -1), "L 2, L 1"), ((4,), "R 5")],
)
def test_two_neighbours_are_no_run(slots: tuple[int, ...], words: str) -> None:
    assert "".join(part if isinstance(part, str) else part.text for part in listed(slots, LANGUAGE)) == words


# ----------------------------------------------------------------- what hangs on waste yarn


def test_open_loops_come_off_their_waste_yarn_and_others_have_none() -> None:
    where = {"piece": "back", "edge": "neck", "part": "centre", "stitches": 4, "first": 0, "last": 3, "facing": "purl"}
    hung = [st.PickUpAlong(**where, left_end="left", loops=loops) for loops in ("open", "")]  # type: ignore[arg-type]
    assert ["take out their waste yarn" in line for line in lines(*hung) if "along the" in line] == [True, False]


def test_of_a_first_row_one_loop_is_at_its_edge() -> None:
    (line,) = (one for one in lines(st.RehangStart("back", 40)) if "first row" in one)
    assert "hang the 40 loops of the first row of the back on these needles, the 39 between its sts and the one at its edge" in line
    assert "pull out the ravel cord" in line
