"""Edges shaped by themselves: hands work where the carriage stands, however little room there is."""

from __future__ import annotations

import pytest

from tests.solve.workshop import SIMPLE, Workshop, solve
from walewright.counted.model import SizedPiece
from walewright.design.model import EdgeRun

PARTED_FROM = 1_000_000


def runs(shop: Workshop, path: str, change: float, cast_off: float, steps: int) -> tuple[EdgeRun, ...]:
    moving = shop.run("mid", change, path, cast_off=cast_off, steps=steps, way=SIMPLE)
    return (shop.run("low"), moving, shop.run("top"))


@pytest.mark.parametrize("neck_depth", [0, 5, 12])
@pytest.mark.parametrize(("path", "steps"), [("slope", 0), ("steps", 3), ("curve", 0), ("arch", 0)])
@pytest.mark.parametrize(("change", "cast_off"), [(-4.0, 0.0), (-4.0, 2.0), (3.0, 0.0)])
def test_casting_off_and_on_is_where_the_carriage_is(
    workshop: type[Workshop], path: str, steps: int, change: float, cast_off: float, neck_depth: int
) -> None:
    shop = workshop("M")
    neck = shop.neck("front", 10, neck_depth, 4) if neck_depth else None
    straight = runs(shop, "straight", 0.0, 0.0, 0)
    shaped = runs(shop, path, change, cast_off, steps)
    counted = 0
    for height in (2, 3, 5, 8):
        levels = shop.levels("front", hem=0, low=20, mid=20 + height, top=35)
        for left, right in ((shaped, straight), (straight, shaped)):
            counts, told = solve(shop.design(shop.piece("front", 50, levels, left, right, neck=neck)))
            assert (counts is None) == bool(told)
            if counts is not None:
                counted += 1
                _at_the_carriage(counts.sizes[0].pieces[0])
    assert counted


def _at_the_carriage(piece: SizedPiece) -> None:
    """It is at the right at even rows, and beside a gap at the part's outer edge."""
    parting = piece.openings[0].row if piece.openings else PARTED_FROM
    for side, edge in (("left", piece.left), ("right", piece.right)):
        for run in edge:
            for row, by in run.changes():
                if by < -1 or by > 0:
                    at_left = side == "left" and row < parting
                    assert row % 2 == int(at_left), f"{side} {run.name} at row {row} by {by}, parted at {parting}"


def test_steps_after_a_cast_off_are_equal(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    levels = shop.levels("front", hem=0, low=20, mid=26, top=35)
    counts, told = solve(shop.design(shop.piece("front", 50, levels, runs(shop, "steps", -8.0, 2.0, 3))))
    assert told == ()
    assert counts is not None
    (first, *rest) = [by for _, by in counts.sizes[0].pieces[0].left[1].changes()]
    assert first == -4
    assert len(rest) == 3
    assert len(set(rest)) == 1
