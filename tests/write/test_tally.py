"""The knitter's count of rows and stitches."""

from __future__ import annotations

from dataclasses import replace

import pytest

from walewright.knit import steps as st
from walewright.write.tally import RowTally, counted

START = RowTally(10, 40)


@pytest.mark.parametrize(
    ("steps", "row", "stitches"),
    [
        ((st.KnitRows(3), st.KnitTo(20)), 20, 40),
        ((st.SetRowCounter(4), st.KnitRows(3)), 7, 40),
        ((st.Decrease("both ends", 2, 3), st.Decrease("left end", 1, 0)), 10, 35),
        ((st.IncreaseFashioned("both ends", 2), st.IncreaseFashioned("left end", 2), st.IncreaseAtCarriage()), 10, 44),
        ((st.CastOffAtCarriage(5), st.CastOnAtCarriage(3)), 10, 38),
        ((st.Repeat((st.KnitRows(2), st.Repeat((st.CastOffAtCarriage(2), st.KnitRows(1)), 2)), 3),), 22, 28),
        ((st.SlotOnWaste(4, 0, 3, "a"), st.SlotClosed(4, 0, 3), st.EyeletAt(1, "left"), st.MarkEdges("a")), 10, 40),
        ((st.CentreToWaste(4, -2, 1, "a"), st.CloseCentre(2, 2, 3), st.CastOnBetween(1, 3, 3)), 10, 35),
        ((st.SpreadEvenly(-15, 14, 30, "two together", 2, 10, 0, 0),), 10, 30),
        ((st.Now(50, 16, "right"),), 16, 50),
        ((st.NowInHalf(21, 16, "right", 30),), 16, 21),
        ((st.CastOffAll(),), 10, 0),
        ((st.SewOffAll(),), 10, 0),
        ((st.EveryOutOfWork(3, 27), st.KnitRows(8), st.PicotRow()), 18, 27),
        ((st.LeaveOut(3, 39), st.KnitRows(8), st.NeedleBack(3, 40)), 18, 40),
        ((st.LeaveOutEvery(12, -18, 18, 36), st.KnitRows(8)), 18, 36),
        ((st.EveryOutOfWork(3, 27), st.FoldUp(27, "all needles", 40)), 10, 40),
        ((st.StartChart("a", "b", "whole", 0, 1, 0, 0), st.StopChart("a")), 10, 40),
        # Held needles are of the part, and wait with it.
        ((st.HoldAtEnd("right", 6), st.ReturnSome("right", 2), st.WrapHeld("right")), 10, 40),
        ((st.HoldAtEnd("right", 6), st.ReturnSome("right", 2), st.HoldPart("right", 0, 15)), 10, 20),
        ((st.HoldAtEnd("left", 6), st.ReturnHeld("left"), st.HoldPart("left", -20, -1)), 10, 20),
        ((st.HoldAtEnd("left", 6), st.HoldPart("right", 0, 19)), 10, 20),
        ((st.HoldAtEnd("left", 6), st.HoldPart("left", -14, -1), st.GatherAll(), st.ReturnPart("left", -14, -1)), 10, 20),
        # One needle more at the left is cast on while the right part with its held ones waits.
        (
            (
                *(st.HoldAtEnd("right", 4), st.HoldPart("right", 0, 15), st.CastOnAtCarriage(1), st.HoldPart("left", -21, -1)),
                *(st.ReturnPart("right", 0, 15), st.HoldPart("right", 0, 15)),
            ),
            10,
            0,
        ),
        ((st.HoldAtEnd("right", 4), st.HoldPart("right", 0, 15), st.HoldPart("right", -5, -1)), 10, 15),
    ],
)
def test_after(steps: tuple[st.Step, ...], row: int, stitches: int) -> None:
    tally = START
    for step in steps:
        tally = counted(tally, step)
    assert (tally.row, tally.stitches) == (row, stitches)


def test_rows_are_not_known_before_the_counter_is_set() -> None:
    assert counted(RowTally(), st.KnitRows(4)).row is None


@pytest.mark.parametrize(
    ("steps", "side"),
    [
        ((st.KnitRows(3),), "left"),
        ((st.KnitRows(2), st.KnitTo(21)), "left"),
        ((st.Repeat((st.KnitRows(1), st.WrapHeld("right")), 3),), "left"),
        ((st.Together(10, 13, (st.Track("a", (st.KnitRows(3),)), st.Track("b", (st.KnitRows(3),)))),), "left"),
        ((st.KnitRows(1), st.CarriageAt("right"), st.SetRowCounter(4)), "right"),
        ((st.KnitRows(1), st.Now(40, 11, "left"), st.KnitRows(1)), "right"),
        ((st.OffOnWaste(8, "end"),), None),
    ],
)
def test_where_the_carriage_stands(steps: tuple[st.Step, ...], side: str | None) -> None:
    tally = replace(START, side="right")
    for step in steps:
        tally = counted(tally, step)
    assert tally.side == side
