"""Columns latched up in stages, and loops that wait on ravel cord: what a bed allows, and what it refuses."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bed.by_hand import Ops, fabric, refusal, rows
from walewright.bed import BedResult, KnitFabric
from walewright.knit.operations import (
    BreakYarn,
    CastOff,
    CastOn,
    Check,
    DrawCord,
    Drop,
    Hold,
    IntoWork,
    LatchUp,
    LayCord,
    MoveCarriage,
    OntoWaste,
    Pass,
    Release,
    SetCounter,
    Transfer,
    UseYarn,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 7), UseYarn("wool", "4"), CastOn("e-wrap", 0, 7))
OFF = OntoWaste(0, 7, 8, "end")


def faces(made: KnitFabric, slot: int) -> list[int]:
    return [
        made.faces[i]
        for row in range(1, made.rows + 1)
        for c in made.passes(row)
        for i in range(c.first_loop, c.first_loop + c.count)
        if made.slots[i] == slot
    ]


# ------------------------------------------------------------------ stages


def test_stages_re_form_what_one_go_does(one: One) -> None:
    staged = fabric(one(*START, *rows(4, "left"), LatchUp(3, 4), *rows(6, "left"), LatchUp(3, 6, goes_on=True), OFF))
    at_once = fabric(one(*START, *rows(10, "left"), LatchUp(3, 10), OFF))
    assert faces(staged, 3) == faces(at_once, 3) == [1] * 10
    assert faces(staged, 2) == [0] * 10
    assert [(counter, slot, deep) for _, counter, slot, deep in staged.latched] == [(4, 3, 4), (10, 3, 6)]
    # Not knitted alike: how deep a column was dropped is part of what hands did.
    assert staged != at_once


@pytest.mark.parametrize(
    ("later", "code"),
    [
        (LatchUp(3, 7), "latched-already"),
        (LatchUp(3, 7, goes_on=True), "latched-already"),
        (LatchUp(3, 5, goes_on=True), "latched-above-gap"),
        (LatchUp(2, 6, goes_on=True), "latched-above-gap"),
    ],
)
def test_a_stage_of_another_depth_is_refused(one: One, later: LatchUp, code: str) -> None:
    assert refusal(one(*START, *rows(4, "left"), LatchUp(3, 4), *rows(6, "left"), later, OFF)) == code


def test_dropped_before_a_stage_is_no_deeper_either(one: One) -> None:
    done = (*START, *rows(4, "left"), LatchUp(3, 4), *rows(2, "left"))
    assert refusal(one(*done, Drop(3, 3), LatchUp(3, 3), OFF)) == "latched-already"


def test_a_column_begins_in_yarn_laid_in_an_empty_hook(one: One) -> None:
    made = fabric(one(*START, *rows(2, "left"), Transfer(3, 3, 1), *rows(4, "left"), LatchUp(3, 4), OFF))
    assert faces(made, 3) == [0, 0, 1, 1, 1, 1]
    assert refusal(one(*START, *rows(2, "left"), Transfer(3, 3, 1), *rows(4, "left"), LatchUp(3, 5), OFF)) == "latch-too-deep"


# ------------------------------------------------------------------ cord

PARTED: tuple[object, ...] = (*START, *rows(2, "left"))
"""The carriage is at the right."""
RIGHT: Ops = [*rows(4, "left"), CastOff(4, 7, "right"), BreakYarn()]


def halves(put_by: Ops, back: Ops) -> Ops:
    """The left half put by, the right half knitted and cast off, and then the left."""
    left: Ops = [MoveCarriage("left"), SetCounter(2), *back, UseYarn("wool", "4"), *rows(4, "right"), Check(4, 6, "left")]
    return [*put_by, *RIGHT, *left, CastOff(0, 3, "left")]


def test_a_half_on_cord_comes_out_as_one_that_was_held(one: One) -> None:
    cord = fabric(one(*PARTED, *halves([LayCord(0, 3)], [DrawCord(0, 3), Release(0, 3)])))
    held = fabric(one(*PARTED, *halves([Hold(0, 3)], [Release(0, 3)])))
    assert cord.parents == held.parents
    assert [(e.name, e.part, e.count) for e in cord.edges] == [(e.name, e.part, e.count) for e in held.edges]
    assert [c.first for c in cord.passes(5)] == [c.first for c in held.passes(5)]
    assert [(first, last) for *_, first, last in cord.corded] == [(0, 3)]
    assert cord != held


def test_each_length_of_cord_is_drawn_by_itself(one: One) -> None:
    """As that of a part beside a slit, where another part waits on the next needle."""
    two = [LayCord(0, 1), LayCord(2, 3)]
    apart = fabric(one(*PARTED, *halves(two, [DrawCord(0, 1), DrawCord(2, 3), Release(0, 3)])))
    held = fabric(one(*PARTED, *halves([Hold(0, 3)], [Release(0, 3)])))
    assert apart.parents == held.parents
    assert refusal(one(*PARTED, *halves(two, [DrawCord(0, 0), Release(0, 0)]))) == "cord-drawn-in-part"


def test_cord_laid_anew_is_another_length(one: One) -> None:
    """However the loops lay on cord before."""
    anew = [LayCord(0, 3), DrawCord(0, 3), Release(0, 3), LayCord(0, 1), LayCord(2, 3)]
    apart = fabric(one(*PARTED, *halves(anew, [DrawCord(0, 1), DrawCord(2, 3), Release(0, 3)])))
    held = fabric(one(*PARTED, *halves([Hold(0, 3)], [Release(0, 3)])))
    assert apart.parents == held.parents
    joined = [LayCord(0, 1), LayCord(2, 3), DrawCord(0, 1), DrawCord(2, 3), Release(0, 3), LayCord(0, 3)]
    assert refusal(one(*PARTED, *halves(joined, [DrawCord(0, 1), DrawCord(2, 3)]))) == "cord-drawn-in-part"


@pytest.mark.parametrize(
    ("put_by", "back", "code"),
    [
        ([LayCord(0, 3)], [Release(0, 3)], "not-held"),
        ([LayCord(0, 3)], [], "no-needle-in-work"),
        ([LayCord(0, 3)], [DrawCord(0, 2), Release(0, 2)], "cord-drawn-in-part"),
        ([LayCord(0, 3)], [DrawCord(1, 3), Release(1, 3)], "cord-drawn-in-part"),
        ([Hold(0, 3)], [DrawCord(0, 3), Release(0, 3)], "not-on-cord"),
        ([LayCord(0, 3), LayCord(2, 3)], [], "already-on-cord"),
        ([LayCord(0, 3), Transfer(3, 3, 1)], [], "needle-on-cord"),
        ([LayCord(0, 3), Hold(2, 2)], [], "needle-on-cord"),
        ([LayCord(4, 7)], [], "cord-under-yarn"),
        ([LayCord(0, 8)], [], "not-in-work"),
        ([Drop(3, 1), LayCord(0, 3)], [], "cord-empty"),
    ],
)  # fmt: skip
def test_what_cord_cannot_do(one: One, put_by: Ops, back: Ops, code: str) -> None:
    assert refusal(one(*PARTED, *halves(put_by, back))) == code


def test_nothing_is_left_on_cord(one: One) -> None:
    assert refusal(one(*PARTED, LayCord(0, 3), *RIGHT)) == "held-left"


def test_the_yarn_passes_cord_by(one: One) -> None:
    """No float, no tuck, no turn: the needles are fully back."""
    made = fabric(one(*PARTED, *halves([LayCord(0, 3)], [DrawCord(0, 3), Release(0, 3)])))
    assert made.turns == ()
    assert made.floats == ()


def test_cord_keeps_no_waste(one: One) -> None:
    waste = (MoveCarriage("right"), IntoWork(0, 7), UseYarn("waste", "waste"), CastOn("comb", 0, 7), *rows(2, "left"))
    assert refusal(one(*waste, LayCord(0, 3), Pass("left"))) == "only-waste-yarn"


# ------------------------------------------------------------------ the yarn of a cast-off


def test_a_cast_off_begins_where_the_yarn_hangs(one: One) -> None:
    """A carriage pushed across without knitting has left the yarn at the other side."""
    assert fabric(one(*PARTED, CastOff(0, 7, "right"))).edge("end")
    across = MoveCarriage("left")
    assert refusal(one(*PARTED, across, CastOff(0, 7, "left"))) == "cast-off-away-from-carriage"
    assert refusal(one(*PARTED, across, CastOff(0, 7, "right"))) == "cast-off-away-from-carriage"
    assert fabric(one(*PARTED, BreakYarn(), across, UseYarn("wool", "4"), CastOff(0, 7, "left"))).edge("end")
