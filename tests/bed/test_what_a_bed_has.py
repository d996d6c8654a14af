"""What a bed has beside its needles: how it is begun on, how its carriage passes loops, and its plates."""

from __future__ import annotations

import pytest

from walewright.bed import Bed, BedResult, knit
from walewright.bed.model import BedCrossing, BedStartsWith
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    CrossingWay,
    Hold,
    IntoWork,
    MoveCarriage,
    Operation,
    Pass,
    Release,
    SetCounter,
    UseYarn,
    Work,
)

WOOL = UseYarn("wool", "4")
BEGUN = (MoveCarriage("right"), IntoWork(-4, 3), WOOL, CastOn("e-wrap", -4, 3), SetCounter(0), Pass("left"))
OFF = (CastOff(-4, 3, "left"), BreakYarn(20))


def result(
    *moves: Operation, start: BedStartsWith = "comb", crossing: BedCrossing = "any", plates: tuple[str, ...] = ()
) -> BedResult:
    return knit(Work("S", (Block("back", moves),)), Bed(20, (1,), start=start, crossing=crossing, settings=plates))


def codes(made: BedResult) -> list[str]:
    return [fault.code for fault in made.faults]


@pytest.mark.parametrize("has", ["slip", "lift", "hold"])
@pytest.mark.parametrize("way", ["slip", "lift", "hold"])
def test_the_carriage_passes_loops_in_the_way_that_the_bed_has(has: BedCrossing, way: CrossingWay) -> None:
    made = result(*BEGUN, MoveCarriage("right", way), MoveCarriage("left", way), *OFF, crossing=has)
    assert codes(made) == ([] if has == way else ["crossing-not-there"])


@pytest.mark.parametrize("has", ["slip", "lift", "hold", "none"])
def test_past_loops_in_work_it_has_to_be_said_how(has: BedCrossing) -> None:
    assert codes(result(*BEGUN, MoveCarriage("right"), MoveCarriage("left"), *OFF, crossing=has)) == ["crossing-drops"]


@pytest.mark.parametrize("has", ["slip", "lift", "hold", "none", "any"])
def test_past_no_loop_in_work_it_simply_crosses(has: BedCrossing) -> None:
    held = (Hold(-4, 3), MoveCarriage("right"), MoveCarriage("left"), Release(-4, 3))
    assert codes(result(*BEGUN, *held, *OFF, crossing=has)) == []
    assert codes(result(MoveCarriage("left"), MoveCarriage("right"), *BEGUN[1:], *OFF, crossing=has)) == []


def test_a_bed_of_which_nothing_is_said_crosses_in_any_way() -> None:
    assert codes(result(*BEGUN, MoveCarriage("right"), MoveCarriage("left", "slip"), *OFF)) == []


def begun(way: str, yarn: str) -> tuple[Operation, ...]:
    """Cast on `way` with `yarn`, then in the garment's."""
    first = (MoveCarriage("left"), IntoWork(-4, 3), UseYarn(yarn, yarn), CastOn(way, -4, 3))  # type: ignore[arg-type]
    return (*first, Pass("right"), UseYarn("waste", "waste"), Pass("left"), UseYarn("ravel", "ravel"), Pass("right"), WOOL)


OPEN = (SetCounter(0), Pass("left"), *OFF)


@pytest.mark.parametrize(
    ("has", "way", "yarn", "told"),
    [
        ("comb", "comb", "waste", ["feet-open"]),
        ("hem", "hem", "ravel", ["feet-open"]),
        ("nothing", "e-wrap", "waste", ["feet-open"]),
        ("hem", "comb", "waste", ["no-such-start"]),
        ("nothing", "comb", "waste", ["no-such-start"]),
        ("comb", "hem", "ravel", ["no-such-start"]),
        ("nothing", "hem", "ravel", ["no-such-start"]),
        ("hem", "hem", "waste", ["hem-knitted-on"]),
        ("hem", "hem", "wool", ["hem-knitted-on"]),
    ],
)
def test_an_open_start_takes_what_the_bed_has(has: BedStartsWith, way: str, yarn: str, told: list[str]) -> None:
    assert codes(result(*begun(way, yarn), *OPEN, start=has)) == told


def test_the_first_row_over_a_hem_hangs_on_the_cord() -> None:
    (fabric,) = result(*begun("hem", "ravel"), *OPEN, start="hem").fabrics
    assert len(fabric.feet) == 8
    assert fabric.helpers["ravel"] == 16
    assert fabric.helpers["waste"] == 8


def test_only_plates_that_are_there_set_a_tension() -> None:
    assert codes(result(*BEGUN, *OFF, plates=("3", "4"))) == []
    assert codes(result(*BEGUN, *OFF, plates=("3", "5"))) == ["no-such-plate"]
    # Waste yarn and ravel cord are knitted with any.
    assert codes(result(*begun("comb", "waste"), *OPEN, plates=("4",))) == ["feet-open"]
