"""Outlines: stitches and rows to a polygon in centimetres."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.figures import gallery
from walewright.counted.model import ShapingPhrase, SizedOpening, SizedPiece, SizedRun, SizedWedge
from walewright.counted.outline import Outline
from walewright.counted.outline import outline as outline_on
from walewright.counted.piece import CountedPiece, counted_piece
from walewright.design.model import Fabric, Origin, ShapingWay

ORIGIN = Origin("by hand")
SIMPLE = ShapingWay("simple")
# 2 stitches and 4 rows a cm, so that figures can be followed by eye.
FABRIC = Fabric("plain", "stocking stitch", 0, "wool", "4", 20, 40, 10, 10, 0, ORIGIN)


def counted(of: SizedPiece) -> CountedPiece:
    design = gallery.sketch("p", 40, 80, (("hem", 0), ("top", 80)), (), ()).design()
    return counted_piece(replace(design, fabrics=(FABRIC,)), of)


def outline(of: SizedPiece) -> Outline:
    return outline_on(counted(of))


def run(from_row: int, to_row: int, *phrases: ShapingPhrase) -> SizedRun:
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
    shape = outline(piece(run(0, 80)))
    assert shape.polygon == ((-10, 0), (10, 0), (10, 20), (0, 20), (-10, 20))
    assert (shape.width, shape.height) == (20, 20)
    assert shape.neck == ()


def test_even_decreases_make_one_straight_line() -> None:
    shape = outline(piece(run(0, 80, ShapingPhrase((8,), (-1,), 10))))
    assert shape.right == ((10, 0), (5, 20))
    assert shape.left == ((-10, 0), (-5, 20))


def test_plain_rows_after_the_shaping_stand_upright() -> None:
    shape = outline(piece(run(0, 80, ShapingPhrase((8,), (1,), 5))))
    assert shape.right == ((10, 0), (12.5, 10), (12.5, 20))
    assert shape.edge_x(5, "right") == pytest.approx(11.25)
    assert shape.edge_x(15, "left") == pytest.approx(-12.5)


def test_a_cast_off_at_the_bottom_of_a_run_is_a_step() -> None:
    shape = outline(piece(run(0, 40), run(40, 80, ShapingPhrase((0,), (-6,), 1), ShapingPhrase((4,), (-1,), 2))))
    assert shape.right == ((10, 0), (10, 10), (7, 10), (6, 12), (6, 20))


def test_a_large_cast_off_far_up_is_a_step_too() -> None:
    shape = outline(piece(run(0, 80, ShapingPhrase((40,), (-6,), 1))))
    assert shape.right == ((10, 0), (10, 10), (7, 10), (7, 20))


def test_edges_may_differ() -> None:
    shape = outline(piece(run(0, 80), left=(run(0, 80, ShapingPhrase((8,), (-1,), 10)),)))
    assert shape.right == ((10, 0), (10, 20))
    assert shape.left == ((-10, 0), (-5, 20))
    assert shape.width == 20


def test_the_neck_runs_from_the_left_half_round_to_the_right() -> None:
    opening = SizedOpening(
        "neck", 64, 8, 16, run(64, 80, ShapingPhrase((1,), (-2,), 1), ShapingPhrase((2,), (-1,), 2)), ORIGIN, 80, -4
    )
    shape = outline(piece(run(0, 80), openings=(opening,)))
    right = ((2, 16), (3, 16.25), (4, 17.25), (4, 20))
    assert shape.neck == (*((-x, y) for x, y in reversed(right)), *right)
    assert shape.shoulder_right == ((10, 20), (4, 20))
    assert shape.polygon.count((2, 16)) == 1
    assert (0, 20) not in shape.polygon


def test_held_rows_slope_the_shoulder_from_the_outer_edge_up_to_the_neck() -> None:
    opening = SizedOpening("neck", 72, 16, 16, run(72, 80), ORIGIN, 80, -8)
    wedge = SizedWedge("shoulders", "both", 74, (4, 4, 4), ORIGIN)
    shape = outline(piece(run(0, 74), openings=(opening,), wedges=(wedge,)))
    assert shape.right[-1] == (10, 18.5)
    assert shape.shoulder_right == ((10, 18.5), (4, 20))
    assert shape.shoulder_left == ((-10, 18.5), (-4, 20))


def test_an_edge_that_is_held_does_not_rise() -> None:
    wedge = SizedWedge("slant", "right", 74, (10, 5, 5), ORIGIN)
    shape = outline(piece(run(0, 80), wedges=(wedge,)))
    assert shape.right[-1] == (10, 18.5)
    assert shape.left[-1] == (-10, 20)
    assert shape.shoulder_right[:2] == ((10, 18.5), (5, 19))


def test_an_odd_count_is_drawn_about_its_own_middle() -> None:
    shape = outline(piece(run(0, 80), start=41))
    assert (shape.left[0], shape.right[0]) == ((-10.25, 0), (10.25, 0))


def test_a_one_sided_slope_over_the_whole_width_ends_at_the_other_edge() -> None:
    wedge = SizedWedge("slant", "right", 72, (10, 10, 10, 10), ORIGIN)
    shape = outline(piece(run(0, 80), wedges=(wedge,)))
    assert shape.shoulder_right == ((10, 18), (-10, 20))
    assert shape.polygon == ((-10, 0), (10, 0), (10, 18), (-10, 20))


def test_an_opening_off_the_centre_stands_where_its_needles_are() -> None:
    opening = SizedOpening(
        "neck",
        60,
        4,
        9,
        run(60, 80),
        ORIGIN,
        to_row=80,
        first=-14,
        left=(run(60, 80, ShapingPhrase((2,), (-1,), 2)),),
        right=(run(60, 80, ShapingPhrase((4,), (-1,), 3)),),
    )
    shape = outline(piece(run(0, 80), openings=(opening,)))
    assert shape.neck[0] == (-8, 20)
    assert shape.neck[-1] == (-3.5, 20)
    assert min(y for _, y in shape.neck) == 15
    assert shape.shoulder_left == ((-10, 20), (-8, 20))
    assert shape.shoulder_right == ((10, 20), (-3.5, 20))


def test_an_opening_that_rejoins_is_a_gap_inside_the_piece() -> None:
    opening = SizedOpening("pocket", 20, 8, 8, run(20, 40), ORIGIN, to_row=40, first=2, rejoins=True, left=(run(20, 40),))
    shape = outline(piece(run(0, 80), openings=(opening,)))
    assert shape.neck == ()
    assert [g.name for g in shape.gaps] == ["pocket"]
    assert set(shape.gaps[0].edge) == {(1, 5), (5, 5), (1, 10), (5, 10)}
    assert shape.polygon == outline(piece(run(0, 80))).polygon


@pytest.mark.parametrize(
    ("kind", "lines"),
    [
        ("in", ((10, 5), (7, 5.5), (4, 6), (10, 6.5))),
        ("out", ((10, 5), (4, 5.5), (7, 6), (10, 6.5))),
    ],
)
def test_held_rows_in_mid_piece_are_a_dart(kind: str, lines: tuple[tuple[float, float], ...]) -> None:
    wedge = SizedWedge("bust", "right", 20, (6, 6, 6), ORIGIN, kind)
    shape = outline(piece(run(0, 80), wedges=(wedge,)))
    (dart,) = shape.darts
    assert (dart.side, dart.lines[0], dart.lines[-1]) == ("right", lines[0], lines[-1])
    # The innermost end is as far in as stitches are held; the innermost group is never held.
    assert min(x for x, _ in dart.lines) == 4
    assert shape.right == ((10, 0), (10, 20))


def test_a_dart_of_both_kinds_goes_in_and_out_and_keeps_its_rest() -> None:
    wedge = SizedWedge("heel", "left", 20, (4, 4), ORIGIN, "both", rest=2)
    (dart,) = outline(piece(run(0, 80), wedges=(wedge,))).darts
    assert dart.lines[0] == (-10, 5)
    assert dart.lines[-1] == (-10, 7)
    assert max(x for x, _ in dart.lines) == -5
    assert [x for x, _ in dart.lines] == [x for x, _ in reversed(dart.lines)]


def test_stitches_returned_from_the_start_on_curve_the_hem() -> None:
    wedge = SizedWedge("hem", "both", 0, (5, 5, 10), ORIGIN, "out")
    shape = outline(piece(run(0, 80), wedges=(wedge,)))
    assert shape.darts == ()
    assert shape.foot == ((-10, 1), (-5, 0), (5, 0), (10, 1))
    assert shape.polygon[:4] == ((-10, 1), (-5, 0), (5, 0), (10, 1))


@pytest.mark.parametrize(("edge", "foot"), [("left", ((-10, 1), (-5, 0), (10, 0))), ("right", ((-10, 0), (5, 0), (10, 1)))])
def test_a_hem_may_curve_at_one_side(edge: str, foot: tuple[tuple[float, float], ...]) -> None:
    shape = outline(piece(run(0, 80), wedges=(SizedWedge("hem", edge, 0, (5, 5, 10), ORIGIN, "out"),)))
    assert shape.foot == foot
    assert (shape.left[0], shape.right[0]) == (foot[0], foot[-1])


@pytest.mark.parametrize("edge", ["left", "right"])
def test_a_slope_at_one_side_of_the_top_ends_where_its_groups_do(edge: str) -> None:
    """A wedge over half of the 40 stitches, 5 of them resting: from there the top is level."""
    shape = outline(piece(run(0, 80), wedges=(SizedWedge("slant", edge, 76, (8, 7), ORIGIN, rest=5),)))
    sign = -1 if edge == "left" else 1
    slope = shape.shoulder_left if edge == "left" else shape.shoulder_right
    level = shape.shoulder_right if edge == "left" else shape.shoulder_left
    assert slope == ((sign * 10, 19), (sign * 7.5, 19), (sign * 3.5, 19.5), (0, 20))
    assert level == ((-sign * 10, 20), (0, 20))


def test_loops_hung_back_over_the_width_are_a_step() -> None:
    across = SizedRun("", 40, 40, (ShapingPhrase((0,), (-8,), 1),), SIMPLE, ORIGIN, across=True)
    shape = outline(piece(run(0, 40), across, run(40, 80)))
    assert shape.right == ((10, 0), (10, 10), (6, 10), (6, 20))


def test_a_zone_of_another_tension_steps_the_edge_and_counts_its_own_rows() -> None:
    made = gallery.tail()
    of = made.counted()
    # 30 rows at 3 a cm, then 14 in the rib with the same rows but 2.4 stitches a cm.
    assert of.height_cm(30) == pytest.approx(10)
    assert of.stitch_cm(40) == pytest.approx(1 / 2.4)
    shape = made.measured().laid[0].shape
    assert shape.edge_x(9, "right") == pytest.approx(15)
    assert shape.edge_x(12, "right") == pytest.approx(12.5)


def test_a_mirror_image_is_one() -> None:
    one, other = (made().measured().laid[0].shape for made in (gallery.front, gallery.mirror))
    assert {(-x, y) for x, y in one.polygon} == set(other.polygon)
    assert one.polygon != other.polygon


def test_a_piece_that_begins_off_the_centre_is_drawn_about_its_start() -> None:
    of = counted(replace(piece(run(0, 80)), lean=6))
    shape = outline_on(of)
    assert (shape.left[0], shape.right[0]) == ((-10, 0), (10, 0))
    # Its first needle is L 26: what lies at a needle moves with the piece.
    assert of.point(-26, 0) == (-10, 0)
