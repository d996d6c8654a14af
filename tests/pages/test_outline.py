"""Outlines: stitches and rows to a polygon in centimetres."""

from __future__ import annotations

import pytest

from walewright.design.model import Fabric, Origin, Way
from walewright.pages.outline import outline
from walewright.solve.model import Phrase, SizedOpening, SizedPiece, SizedRun, SizedWedge

ORIGIN = Origin("by hand")
SIMPLE = Way("simple")
# 2 stitches and 4 rows a cm, so that figures can be followed by eye.
FABRIC = Fabric("plain", "stocking stitch", 0, "wool", "4", 20, 40, 10, 10, 0, ORIGIN)


def run(from_row: int, to_row: int, *phrases: Phrase) -> SizedRun:
    return SizedRun("", from_row, to_row, phrases, SIMPLE, ORIGIN)


def piece(
    *edges: SizedRun,
    start: int = 40,
    rows: int = 80,
    left: tuple[SizedRun, ...] | None = None,
    openings: tuple[SizedOpening, ...] = (),
    wedges: tuple[SizedWedge, ...] = (),
) -> SizedPiece:
    levels = (("hem", 0), ("top", rows))
    return SizedPiece("p", start, levels, rows, edges if left is None else left, edges, openings, wedges, 0, start)


def test_a_plain_piece_is_its_rectangle() -> None:
    shape = outline(piece(run(0, 80)), FABRIC)
    assert shape.polygon == ((-10, 0), (10, 0), (10, 20), (0, 20), (-10, 20))
    assert (shape.width, shape.height) == (20, 20)
    assert shape.neck == ()


def test_even_decreases_make_one_straight_line() -> None:
    shape = outline(piece(run(0, 80, Phrase((8,), (-1,), 10))), FABRIC)
    assert shape.right == ((10, 0), (5, 20))
    assert shape.left == ((-10, 0), (-5, 20))


def test_plain_rows_after_the_shaping_stand_upright() -> None:
    shape = outline(piece(run(0, 80, Phrase((8,), (1,), 5))), FABRIC)
    assert shape.right == ((10, 0), (12.5, 10), (12.5, 20))
    assert shape.half_width(5, "right") == pytest.approx(11.25)
    assert shape.half_width(15, "left") == pytest.approx(12.5)


def test_a_cast_off_at_the_bottom_of_a_run_is_a_step() -> None:
    shape = outline(piece(run(0, 40), run(40, 80, Phrase((0,), (-6,), 1), Phrase((4,), (-1,), 2))), FABRIC)
    assert shape.right == ((10, 0), (10, 10), (7, 10), (6, 12), (6, 20))


def test_a_large_cast_off_far_up_is_a_step_too() -> None:
    shape = outline(piece(run(0, 80, Phrase((40,), (-6,), 1))), FABRIC)
    assert shape.right == ((10, 0), (10, 10), (7, 10), (7, 20))


def test_edges_may_differ() -> None:
    shape = outline(piece(run(0, 80), left=(run(0, 80, Phrase((8,), (-1,), 10)),)), FABRIC)
    assert shape.right == ((10, 0), (10, 20))
    assert shape.left == ((-10, 0), (-5, 20))
    assert shape.width == 20


def test_the_neck_runs_from_the_left_half_round_to_the_right() -> None:
    opening = SizedOpening("neck", 64, 8, 16, run(64, 80, Phrase((1,), (-2,), 1), Phrase((2,), (-1,), 2)), ORIGIN)
    shape = outline(piece(run(0, 80), openings=(opening,)), FABRIC)
    right = ((2, 16), (3, 16.25), (4, 17.25), (4, 20))
    assert shape.neck == (*((-x, y) for x, y in reversed(right)), *right)
    assert shape.shoulder_right == ((10, 20), (4, 20))
    assert shape.polygon.count((2, 16)) == 1
    assert (0, 20) not in shape.polygon


def test_held_rows_slope_the_shoulder_from_the_outer_edge_up_to_the_neck() -> None:
    opening = SizedOpening("neck", 72, 16, 16, run(72, 80), ORIGIN)
    wedge = SizedWedge("shoulders", "both", 74, (4, 4, 4), ORIGIN)
    shape = outline(piece(run(0, 74), openings=(opening,), wedges=(wedge,)), FABRIC)
    assert shape.right[-1] == (10, 18.5)
    assert shape.shoulder_right == ((10, 18.5), (4, 20))
    assert shape.shoulder_left == ((-10, 18.5), (-4, 20))


def test_an_edge_that_is_held_does_not_rise() -> None:
    wedge = SizedWedge("slant", "right", 74, (10, 5, 5), ORIGIN)
    shape = outline(piece(run(0, 80), wedges=(wedge,)), FABRIC)
    assert shape.right[-1] == (10, 18.5)
    assert shape.left[-1] == (-10, 20)
    assert shape.shoulder_right[:2] == ((10, 18.5), (5, 19))
