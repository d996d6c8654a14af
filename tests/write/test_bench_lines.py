"""A bench copy says what is new, and tells one cross in one line."""

from __future__ import annotations

import re

import pytest

from tests.write.test_repeated import ENDED, block, cast_on, knitted
from walewright.knit import bench_steps as bs
from walewright.knit import steps as st
from walewright.knit.bench import _Lines, unrolled
from walewright.knit.state import State
from walewright.knit.steps import SizePlan, Step
from walewright.trade.sides import EdgeSide
from walewright.write.bench import write_bench
from walewright.write.english import LANGUAGE


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
