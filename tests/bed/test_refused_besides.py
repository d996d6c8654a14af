"""What the bed refuses besides: needles that are not there, a machine that stands otherwise, waste yarn that stays, rows without a
stitch, edges that lie otherwise than is said."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields, is_dataclass, replace

import pytest

from tests.bed.by_hand import BED, fabric, refusal, rows
from tests.bed.words import told
from walewright.bed import BedResult, knit
from walewright.bed.reach import spans
from walewright.knit import operations as op
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOn,
    Check,
    IntoWork,
    MoveCarriage,
    OntoWaste,
    OutOfWork,
    Pass,
    PictureRow,
    SetCounter,
    SewOff,
    Transfer,
    UseYarn,
    Work,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 5), UseYarn("wool", "4"), CastOn("e-wrap", 0, 5))


# ------------------------------------------------------------------------------------------------------ needles that are there


@pytest.mark.parametrize(
    ("first", "last", "missing", "needle"), [(0, 5, {5}, "R 6"), (-3, 2, {-3, 2}, "L 3"), (0, 5, {3, 4}, "R 4")]
)
def test_a_missing_needle_is_named_wherever_in_a_range_it_lies(first: int, last: int, missing: set[int], needle: str) -> None:
    ops = (MoveCarriage("right"), IntoWork(first, last))
    made = knit(Work("S", (Block("swatch", ops),)), replace(BED, missing=frozenset(missing)))
    assert refusal(made) == "needle-missing"
    assert needle in told(made.faults[0])
    beside = replace(BED, missing=frozenset({first - 1, last + 1}))
    whole = (*ops, UseYarn("wool", "4"), CastOn("e-wrap", first, last), *rows(2, "left"), OntoWaste(first, last, 8, "end"))
    assert knit(Work("S", (Block("swatch", whole),)), beside).faults == ()


@pytest.mark.parametrize("slot", [-21, -20, 19, 20])
def test_the_bed_ends_at_its_last_needles(one: One, slot: int) -> None:
    """Forty of them: L 20 to R 20."""
    made = one(IntoWork(slot, slot))
    assert ("beyond-bed" in {f.code for f in made.faults}) == (slot in (-21, 20))


@pytest.mark.parametrize(("first", "last", "code"), [(3, 2, "needles-reversed"), (2, 2, ""), (2, 3, "")])
def test_needles_are_named_from_left_to_right(one: One, first: int, last: int, code: str) -> None:
    made = one(*START, Transfer(first, last, 1))
    assert ([f.code for f in made.faults if f.code == "needles-reversed"] or [""]) == [code]


def test_every_move_names_its_needles() -> None:
    """Of each operation with the fields of a range these are a range that is looked at; ones with needles of their own besides."""
    for kind in vars(op).values():
        if isinstance(kind, type) and is_dataclass(kind) and {"first", "last"} <= {f.name for f in fields(kind)}:
            given = {f.name: 0 for f in fields(kind)}
            if "counts" in given:
                given["counts"] = (1, 2, 1)  # type: ignore[assignment]
            made = kind(**{**given, "first": 3, "last": 7})
            assert (3, 7) in spans(made), kind
    assert spans(op.Transfer(3, 4, -2)) == ((3, 4), (1, 2))
    assert spans(op.Spread(3, 5, -1, (1, 2, 1, 1))) == ((3, 5), (-1, 2))
    assert spans(op.FillFromBelow(4, 6)) == ((4, 4), (6, 6))
    assert spans(op.PictureRow("left", "4", (("wool", 0, 3), ("navy", 4, 6)))) == ((0, 3), (4, 6))
    assert spans(op.Wrap(3)) == ((3, 3),)
    assert spans(op.InFabric("plain")) == spans(Pass("left")) == ()
    assert spans(op.InFabric("plain", 2, 4)) == ((2, 4),)


# -------------------------------------------------------------------------------------------------- the machine as it is stated


@pytest.mark.parametrize(
    ("stated", "differs"),
    [
        (Check(6, 2, "right"), 0),
        (Check(5, 2, "right"), 1),
        (Check(7, 2, "right"), 1),
        (Check(6, 1, "right"), 1),
        (Check(6, 3, "right"), 1),
        (Check(6, 2, "left"), 1),
        (Check(5, 3, "left"), 3),
    ],
)
def test_each_thing_that_is_stated_is_looked_at(one: One, stated: Check, differs: int) -> None:
    made = one(*START, SetCounter(0), *rows(2, "left"), stated, OntoWaste(0, 5, 8, "end"))
    if not differs:
        assert made.faults == ()
        return
    assert refusal(made) == "check-differs"
    assert told(made.faults[0]).count(" not ") + told(made.faults[0]).count(", ") >= differs - 1


def test_a_carriage_that_was_never_taken_anywhere_stands_nowhere(one: One) -> None:
    made = one(IntoWork(0, 5), Check(0, 0, "left"))
    assert refusal(made) == "check-differs"
    assert "left" in told(made.faults[0])


# ----------------------------------------------------------------------------------------------------- waste yarn, empty rows


def test_a_picture_row_needs_needles_and_stitches(one: One) -> None:
    row = PictureRow("left", "4", (("wool", 0, 5),))
    empty = (MoveCarriage("right"), UseYarn("wool", "4"))
    assert refusal(one(*empty, row)) == "no-needle-in-work"
    assert refusal(one(*empty, IntoWork(0, 5), row)) == "no-loops"


def test_sewing_off_needs_a_tail(one: One) -> None:
    assert refusal(one(*START, *rows(2, "left"), SewOff(0, 5, "right"))) == "sew-off-yarn-unbroken"
    assert refusal(one(*START, *rows(2, "left"), BreakYarn(), SewOff(0, 5, "right"))) == "tail-too-short"


# ---------------------------------------------------------------------------------------------------------- a row is a row


def test_a_row_over_one_empty_hook_makes_a_bar_and_over_two_none(one: One) -> None:
    off = (OntoWaste(0, 5, 8, "end"),)
    one_empty = (*START, *rows(2, "left"), Transfer(2, 2, 1), *rows(2, "left"), *off)
    assert len(fabric(one(*one_empty)).bars) == 1
    two = (*START, *rows(2, "left"), Transfer(2, 2, -1), Transfer(3, 3, 1), Pass("left"))
    assert refusal(one(*two)) == "bars-side-by-side"
    out = (
        *START,
        *rows(2, "left"),
        Transfer(2, 2, -1),
        OutOfWork(2, 2),
        Transfer(3, 3, 1),
        *rows(2, "left"),
        OntoWaste(0, 5, 8, "end"),
    )
    assert len(fabric(one(*out)).bars) == 1


# ------------------------------------------------------------------------------------------------------ what is noted of a move


@pytest.mark.parametrize(("towards", "start"), [("left", "right"), ("right", "left")])
def test_a_close_begins_at_the_end_that_it_goes_away_from(one: One, towards: op.Side, start: op.Side) -> None:
    off = (OntoWaste(0, 1, 8, "a"), OntoWaste(4, 5, 8, "b"))
    made = fabric(one(*START, op.Close(2, 3, towards), *rows(2, "left"), *off))
    (course,) = (c for c in made.courses if c.kind == "close")
    assert course.to == start


@pytest.mark.parametrize("held", [False, True])
def test_what_is_cast_on_over_a_slot_has_its_edge_though_a_stitch_of_it_is_older(one: One, held: bool) -> None:
    """R 3 was held while two rows were knitted past it, and is taken off with its floats."""
    older = (op.Hold(2, 2), Pass("left"), Pass("right"), op.Release(2, 2)) if held else rows(2, "left")
    slot = (OntoWaste(2, 3, 8, "slot"), IntoWork(2, 3), CastOn("e-wrap", 2, 3, own_length=True))
    made = fabric(one(*START, *rows(2, "left"), *older, *slot, *rows(2, "left"), OntoWaste(0, 5, 8, "end")))
    assert [edge.count for edge in made.edge("slot")] == [2]
    assert [edge.count for edge in made.edge("slot upper")] == [2]
