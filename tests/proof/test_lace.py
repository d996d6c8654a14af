"""Holes and decreases on the loop graph: what belongs together is silent, what is left over is told."""

from __future__ import annotations

from dataclasses import replace

from tests.bed.by_hand import Ops, rows
from tests.proof.charted_by_hand import BEGIN, END, HOLES, PLACED, SIZED, knitted, lace
from walewright.counted.model import SizedPiece
from walewright.knit.operations import CastOff, FillFromBelow, IntoWork, OutOfWork, Transfer
from walewright.proof.lace import Unpaired, unpaired


def found(ops: Ops, sized: SizedPiece = SIZED) -> list[Unpaired]:
    return list(unpaired(sized, knitted(ops)))


def worked(*moves: object) -> Ops:
    """Moves before the chart's first row, and plain rows after it."""
    return [*BEGIN, *rows(2, "left"), *moves, *rows(8, "left"), *END]  # type: ignore[list-item]


def test_a_hole_beside_its_decrease_is_paired() -> None:
    assert found(lace()) == []


def test_a_hole_away_from_its_decrease_is_paired() -> None:
    assert found(worked(Transfer(-4, -2, 1))) == []
    assert found(worked(Transfer(-2, 0, -1))) == []


def test_two_decreases_on_one_stitch_have_two_holes() -> None:
    assert found(worked(Transfer(-2, -1, 1), Transfer(1, 2, -1))) == []


def test_a_decrease_without_a_hole_is_told() -> None:
    filled = worked(Transfer(-4, -4, 1), FillFromBelow(-4, -5))
    assert found(filled) == [(3, "L 3", "decrease")]


def test_a_hole_without_a_decrease_is_told() -> None:
    """A needle that was left out of work since a row outside the chart comes back within it."""
    ladder = [*BEGIN, Transfer(-4, -4, 1), OutOfWork(-4, -4), *rows(2, "left"), IntoWork(-4, -4), *rows(8, "left"), *END]
    assert found(ladder) == [(3, "L 4", "hole")]


def test_one_side_of_a_triple_decrease_can_lack_its_hole() -> None:
    lacking = worked(Transfer(-2, -1, 1), Transfer(1, 2, -1), FillFromBelow(2, 3))
    assert found(lacking) == [(3, "R 1", "decrease")]


def test_shaping_at_the_ends_is_no_lace() -> None:
    shaped = [
        *BEGIN,
        *rows(2, "left"),
        Transfer(3, 5, -1),
        OutOfWork(5, 5),
        Transfer(-6, -6, 1),
        OutOfWork(-6, -6),
        *rows(2, "left"),
        IntoWork(-6, -6),
        *rows(6, "left"),
        CastOff(-6, 4, "right"),
    ]
    assert found(shaped) == []


def test_rows_without_a_chart_are_not_asked() -> None:
    filled = worked(Transfer(-4, -4, 1), FillFromBelow(-4, -5))
    assert found(filled, replace(SIZED, charts=(replace(PLACED, from_row=4),))) == []
    assert found(filled, replace(SIZED, charts=())) == []


def test_in_a_later_row_too() -> None:
    late = [*BEGIN, *rows(2, "left"), *HOLES, Transfer(0, 0, -1), FillFromBelow(0, -1), *rows(6, "left"), *END]
    assert found(late) == [(5, "L 1", "decrease")]
