"""Loops and floats by fabric and yarn, as the bed made them by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.bed.by_hand import Ops, rows
from tests.proof.charted_by_hand import BEGIN, DESIGN, END, LACE, PLAIN, knitted
from walewright.knit.operations import (
    BreakYarn,
    CastOn,
    DrawLong,
    Hold,
    InFabric,
    IntoWork,
    LayIn,
    LiftOff,
    OntoWaste,
    OutOfWork,
    Release,
    SewOff,
    Transfer,
)
from walewright.proof.spent import Spent, Tally, knit_of, spent

OFF_WITH_A_GAP: Ops = [OntoWaste(1, 5, 8, "end right"), OntoWaste(-6, -1, 8, "end left")]


def of(*moves: object, copies: int = 1, end: Ops = END) -> Spent:
    return spent(DESIGN, [replace(knitted([*BEGIN, *moves, *end]), copies=copies)])  # type: ignore[list-item]


def test_loops_of_the_cast_on_the_rows_and_the_chain() -> None:
    assert of(*rows(4, "left")).tallies == {("plain", "wool"): Tally(12 + 4 * 12, chains=12)}


def test_a_chain_is_a_chain_at_the_start_too() -> None:
    chained = [replace(op, way="chain") if isinstance(op, CastOn) else op for op in (*BEGIN, *rows(4, "left"), *END)]
    assert spent(DESIGN, [knitted(chained)]).tallies == {("plain", "wool"): Tally(4 * 12, chains=24)}


def test_a_length_cut_to_cast_on_with_counts_whole() -> None:
    again = (OntoWaste(-2, 1, 8, "slot"), IntoWork(-2, 1), CastOn("e-wrap", -2, 1, own_length=True, length_cm=40))
    found = of(*rows(2, "left"), *again, *rows(2, "left"))
    assert found.tallies == {("plain", "wool"): Tally(12 + 4 * 12, chains=12)}
    assert found.tails_cm == {"wool": 40}


def test_copies_count_each() -> None:
    assert of(*rows(4, "left"), copies=2).tallies == {("plain", "wool"): Tally(120, chains=24)}


def test_a_fabric_is_known_by_its_name() -> None:
    found = of(InFabric("lace"), *rows(2, "left"), InFabric(""), *rows(2, "left")).tallies
    assert {knit: tally.loops for (knit, _), tally in found.items()} == {"plain": 12 + 24, "lace": 24}


def test_a_panel_has_its_own_loops() -> None:
    found = of(InFabric("lace", -2, 1), *rows(2, "left"), InFabric("", -2, 1), *rows(2, "left")).tallies
    assert {knit: tally.loops for (knit, _), tally in found.items()} == {"plain": 12 + 16 + 24, "lace": 8}


def test_the_second_colour_has_its_loops_and_both_have_floats() -> None:
    moves = (Hold(-2, -1), Hold(2, 2), *rows(1, "left"), LiftOff(-2, -1), LiftOff(2, 2))
    found = of(*moves, LayIn("navy", "4", (-2, -1, 2), "left"), Release(-2, -1), Release(2, 2), *rows(1, "right")).tallies
    # The wool floats past three needles, the navy past the two between its stitches.
    assert found["plain", "wool"] == Tally(12 + 9 + 12, chains=12, passed=3)
    assert found["plain", "navy"] == Tally(3, passed=2)


def test_a_slipped_needle_has_a_float_and_no_loop() -> None:
    found = of(Hold(0, 0), *rows(1, "left"), LiftOff(0, 0), Release(0, 0), *rows(1, "right")).tallies
    assert found["plain", "wool"] == Tally(12 + 11 + 12, chains=12, passed=1, empty=1)


def test_a_tuck_is_a_loop() -> None:
    found = of(Hold(0, 0), *rows(1, "left"), Release(0, 0), *rows(1, "right")).tallies
    assert found["plain", "wool"] == Tally(12 + 12 + 12, chains=12)


def test_a_long_stitch_is_told() -> None:
    found = of(Hold(0, 0), *rows(1, "left"), DrawLong(0), Release(0, 0), *rows(1, "right")).tallies
    assert found["plain", "wool"] == Tally(12 + 12 + 12, longs=1, chains=12)


def test_what_is_sewn_off_is_its_tail() -> None:
    found = of(*rows(2, "left"), BreakYarn(80), end=[SewOff(-6, 5, "right")])
    assert found.tallies == {("plain", "wool"): Tally(12 + 24)}
    assert found.tails_cm == {"wool": 80}


def test_a_needle_out_of_work_is_passed_but_not_slipped() -> None:
    found = of(Transfer(0, 0, 1), OutOfWork(0, 0), *rows(2, "left"), end=OFF_WITH_A_GAP)
    assert found.tallies["plain", "wool"].passed == 2
    assert found.tallies["plain", "wool"].empty == 0


@pytest.mark.parametrize(
    ("name", "yarn", "tension", "wanted"),
    [
        ("lace", "wool", "4", "lace"),
        ("", "wool", "4", "plain"),
        ("", "navy", "4", "plain"),
        ("", "wool", "7", "loose"),
        ("", "wool", "9", "loose"),
    ],
)
def test_loops_are_reckoned_by_the_nearest_swatch(name: str, yarn: str, tension: str, wanted: str) -> None:
    loose = replace(PLAIN, name="loose", tension="7", swatch_grams=90.0)
    assert knit_of(replace(DESIGN, fabrics=(LACE, PLAIN, loose)), name, yarn, tension).name == wanted
