"""Stretches of an edge: each is taken once, and those side by side meet where the one ends and the other begins."""

from __future__ import annotations

from dataclasses import replace

import pytest

from walewright.bed import Bed, BedResult, Gauge, knit
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    IntoWork,
    Join,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    Pass,
    PickUpEdge,
    SetCounter,
    UseYarn,
    Work,
)

BED = Bed(60, (1, 2, 3), {("wool", "4"): Gauge(1.3, 1.85)})
ROWS = 20


def panel(waste: bool = False) -> Block:
    """Ten stitches and twenty rows, both edges named, the last row cast off or on waste yarn."""
    off: tuple[Operation, ...] = (OntoWaste(-5, 4, 8, "end"),) if waste else (CastOff(-5, 4, "right"),)
    return Block(
        "panel",
        (
            MoveCarriage("right"),
            IntoWork(-5, 4),
            UseYarn("wool", "4"),
            CastOn("e-wrap", -5, 4),
            SetCounter(0),
            *(Pass("left" if row % 2 == 0 else "right") for row in range(ROWS)),
            *((BreakYarn(), *off) if waste else (*off, BreakYarn())),
            NameEdge("inside", "left", 0, ROWS),
            NameEdge("outside", "right", 0, ROWS),
        ),
    )


def band(name: str, *stretches: tuple[str, int, int], ends: bool = False) -> Block:
    """Four stitches along each stretch, two rows."""
    last = 4 * len(stretches) - 1
    hung = (
        PickUpEdge("panel", edge, "whole", 4 * n, 4 * n + 3, low=low, high=high) for n, (edge, low, high) in enumerate(stretches)
    )
    named = (NameEdge("first end", "left", 0, 2), NameEdge("last end", "right", 0, 2)) if ends else ()
    return Block(
        name,
        (
            MoveCarriage("right"),
            IntoWork(0, last),
            *hung,
            UseYarn("wool", "4"),
            SetCounter(0),
            Pass("left"),
            Pass("right"),
            CastOff(0, last, "right"),
            BreakYarn(),
            *named,
        ),
    )


def done(*tasks: Block | Join, waste: bool = False) -> BedResult:
    return knit(Work("M", (panel(waste), *tasks)), BED)


def codes(result: BedResult) -> list[str]:
    return [fault.code for fault in result.faults]


def test_a_stretch_has_the_rows_after_its_first_reading_up_to_its_last() -> None:
    result = done(band("low", ("inside", 0, 6)), band("high", ("inside", 6, ROWS)))
    assert not result.faults
    fabrics = {fabric.name: fabric for fabric in result.fabrics}
    rows = {name: [fabrics["panel"].course_of(link.loops[0]).counter for link in fabrics[name].links] for name in ("low", "high")}
    assert all(0 < row <= 6 for row in rows["low"])
    assert all(6 < row <= ROWS for row in rows["high"])
    assert ("panel", "inside", 1) not in result.free_edges


def test_an_edge_of_which_a_stretch_is_left_is_free() -> None:
    assert ("panel", "inside", 1) in done(band("low", ("inside", 0, 6))).free_edges


@pytest.mark.parametrize(
    "stretches",
    [[(0, 8), (7, ROWS)], [(0, 8), (0, 8)], [(0, 8), (0, 0)], [(0, 0), (4, 8)]],
)
def test_no_row_is_taken_twice(stretches: list[tuple[int, int]]) -> None:
    bands = [band(f"band {n}", ("inside", low, high)) for n, (low, high) in enumerate(stretches)]
    assert codes(done(*bands)) == ["edge-taken"]


@pytest.mark.parametrize(("low", "high"), [(ROWS, ROWS + 4), (8, 8), (9, 4)])
def test_a_stretch_has_to_be_there(low: int, high: int) -> None:
    assert codes(done(band("band", ("inside", low, high)))) == ["stretch-not-there"]


def test_of_stitches_those_after_the_first_number_from_the_left_up_to_the_last() -> None:
    result = done(band("left", ("end", 0, 6)), band("right", ("end", 6, 10)), waste=True)
    assert not result.faults
    fabrics = {fabric.name: fabric for fabric in result.fabrics}
    taken = {
        name: [fabrics["panel"].slots[loop] for link in fabrics[name].links for loop in link.loops] for name in ("left", "right")
    }
    # Six loops on four needles, each with all of its share.
    assert sorted(taken["left"]) == list(range(-5, 1))
    assert sorted(taken["right"]) == list(range(1, 5))
    assert not result.open_edges
    assert codes(done(band("left", ("end", 0, 11)), waste=True)) == ["stretch-not-there"]


def test_neighbours_in_a_line_meet_where_one_ends_and_the_other_begins() -> None:
    assert not done(band("band", ("inside", 0, 8), ("inside", 8, ROWS))).faults
    # The right edge hangs downwards.
    assert not done(band("band", ("outside", 8, ROWS), ("outside", 0, 8))).faults
    for wrong in ((("inside", 8, ROWS), ("inside", 0, 8)), (("inside", 0, 6), ("inside", 8, ROWS))):
        assert codes(done(band("band", *wrong))) == ["edges-do-not-meet"]


def test_what_is_joined_was_not_taken_in_part() -> None:
    one, other = (("panel", "inside", 0),), (("panel", "outside", 0),)
    assert codes(done(band("band", ("inside", 0, 8)), Join(one, other, ("bottom", "bottom"), 0))) == ["edge-taken"]


def test_the_ends_of_parts_are_sewn_together_row_for_row() -> None:
    parts = band("low", ("inside", 0, 8), ends=True), band("high", ("inside", 8, ROWS), ends=True)
    sewn = Join((("low", "last end", 0),), (("high", "first end", 0),), ("bottom", "bottom"), 0, rows=2)
    assert not done(*parts, sewn).faults
    assert codes(done(*parts, Join(sewn.one, sewn.other, ("bottom", "top"), 0))) == ["side-turned"]


@pytest.mark.parametrize(
    ("edge", "ratio", "so"),
    [
        ("inside", (1, 5), True),
        ("inside", (2, 9), True),
        ("inside", (1, 4), False),
        ("inside", (1, 7), False),
        ("inside", (3, 4), False),
        ("end", (2, 5), False),
    ],
)
def test_what_is_said_of_stitches_and_rows_is_so(edge: str, ratio: tuple[int, int], so: bool) -> None:
    """Four stitches along twenty rows."""
    made = band("band", (edge, 0, 0))
    told = tuple(replace(op, ratio=ratio) if isinstance(op, PickUpEdge) else op for op in made.operations)
    assert codes(done(replace(made, operations=told))) == ([] if so else ["ratio-told"])
