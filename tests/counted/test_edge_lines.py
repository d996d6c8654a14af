"""Where named edges lie: on the outline of their piece, from the row or needle where they begin to the one where they end."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import hypot

import pytest

from tests.figures import gallery
from walewright.counted import CountedPiece
from walewright.counted.edge_lines import along, edge_line, edging_foot, length, stretch
from walewright.counted.edges import edge_rows
from walewright.counted.outline import Outline, Point, outline

NAMES = ("front", "mirror", "vest", "skirt", "tail", "thumb", "shawl", "scarf")


def made(name: str) -> tuple[CountedPiece, Outline]:
    of = getattr(gallery, name)().counted()
    return of, outline(of)


def on(line: Sequence[Point], point: Point) -> bool:
    """Whether a point lies on a line."""
    for (ax, ay), (bx, by) in pairwise(line):
        whole = hypot(bx - ax, by - ay)
        if abs(hypot(point[0] - ax, point[1] - ay) + hypot(bx - point[0], by - point[1]) - whole) < 1e-6:
            return True
    return False


def close(one: Sequence[Point], other: Sequence[Point]) -> bool:
    return len(one) == len(other) and all(hypot(a[0] - b[0], a[1] - b[1]) < 1e-6 for a, b in zip(one, other, strict=True))


def ring(shape: Outline) -> tuple[Point, ...]:
    return (*shape.polygon, shape.polygon[0])


@pytest.mark.parametrize("name", NAMES)
def test_every_edge_of_rows_lies_on_the_outline_of_its_side(name: str) -> None:
    """From the row in which it begins to that in which it ends, but for rows that are held, which do not rise."""
    of, shape = made(name)
    for side, outer in (("left", shape.left), ("right", shape.right)):
        for run in of.sized.left if side == "left" else of.sized.right:
            line = edge_line(of, shape, f"{run.name} {side}" if run.name else side)
            if not run.name:
                assert line == ()
                continue
            rising = [point for point in line if point[1] >= -1e-9]
            assert all(on(outer, point) for point in rising)
            low, high = edge_rows(of, f"{run.name} {side}")[2]
            held = [w for w in of.sized.wedges if w.edge in ("both", side) and w.to_row >= of.sized.rows and w.kind == "in"]
            assert rising[-1][1] == pytest.approx(min(of.height_cm(high), *(of.height_cm(w.from_row) for w in held), 1e9))
            assert rising[0][1] == pytest.approx(of.height_cm(low))
            # Rows of the edging come before those of the piece.
            assert (len(line) > len(rising)) == bool(of.edging_cm and low == 0)
            if len(line) > len(rising):
                assert line[0][1] == pytest.approx(-of.edging_cm)
            # Without its side it is the left one, if that has the name.
            assert edge_line(of, shape, run.name) == edge_line(of, shape, f"{run.name} {_first_side(of, run.name)}")


def _first_side(of: CountedPiece, name: str) -> str:
    return "left" if any(run.name == name for run in of.sized.left) else "right"


@pytest.mark.parametrize("name", NAMES)
def test_the_start_is_the_foot_or_the_outer_edge_of_its_edging(name: str) -> None:
    of, shape = made(name)
    line = edge_line(of, shape, "start")
    assert len(line) == len(shape.foot)
    assert line[0][0] < line[-1][0]
    if not of.edging_cm:
        assert line == shape.foot
        return
    assert line == tuple(edging_foot(of, shape))
    assert line[-1][0] - line[0][0] == pytest.approx(of.edging_width_cm)
    assert [y for _, y in line] == pytest.approx([y - of.edging_cm for _, y in shape.foot])


@pytest.mark.parametrize("name", NAMES)
def test_the_end_goes_from_the_left_to_the_right_without_the_neck(name: str) -> None:
    of, shape = made(name)
    whole, left, right = (edge_line(of, shape, part) for part in ("end", "end left", "end right"))
    assert whole == edge_line(of, shape, "shoulder")
    assert close(left, shape.shoulder_left)
    assert close(right, tuple(reversed(shape.shoulder_right)))
    assert whole[0] == left[0] == shape.left[-1]
    assert whole[-1] == right[-1] == shape.right[-1]
    assert all(on(ring(shape), point) for point in whole)
    gap = hypot(left[-1][0] - right[0][0], left[-1][1] - right[0][1])
    assert length(whole) == pytest.approx(length(left) + length(right) + gap)
    assert (gap > 1e-9) == bool(shape.neck)
    assert len(set(whole)) == len(whole)


def test_a_neck_goes_down_across_and_up_again() -> None:
    of, shape = made("vest")
    whole, left, centre, right = (edge_line(of, shape, f"neck {part}".strip()) for part in ("", "left", "centre", "right"))
    assert close(whole, shape.neck)
    assert close(left, tuple(reversed(shape.neck[: len(left)])))
    assert close(right, shape.neck[-len(right) :])
    assert close(centre, (left[0], right[0]))
    # From L 14 on, 6 stitches, 2 to the cm; parted at row 66 of 90, 3 to the cm.
    assert close(centre, ((-7.0, 22.0), (-4.0, 22.0)))
    assert (left[-1], right[-1]) == ((-9.0, 30.0), (1.0, 30.0))


def test_a_gap_that_rejoins_has_an_edge_above_it() -> None:
    """At R 5 it takes ten stitches, and two more of each side on the way up: 14 are cast on above it from R 3 on."""
    of, shape = made("vest")
    assert close(edge_line(of, shape, "pocket"), shape.gaps[0].edge)
    at = edge_line(of, shape, "pocket upper")
    assert at[1][0] - at[0][0] == pytest.approx(14 / 2)
    assert close(at, ((1.0, 40 / 3), (8.0, 40 / 3)))
    assert at[0] == shape.gaps[0].edge[0]
    assert at[1] == shape.gaps[0].edge[-1]
    assert edge_line(of, shape, "neck upper") == ()


def test_a_slot_lies_in_its_row() -> None:
    of, shape = made("vest")
    assert edge_line(of, shape, "thumb") == edge_line(of, shape, "thumb upper")
    assert close(edge_line(of, shape, "thumb"), ((4.0, 52 / 3), (8.0, 52 / 3)))
    assert edge_line(of, shape, "armhole") == ()


def test_a_step_and_moves_in_one_row_are_drawn_as_the_outline_has_them() -> None:
    """The left front's armhole begins with four stitches cast off, its neck edge with five."""
    of, shape = made("front")
    armhole, throat = edge_line(of, shape, "armhole"), edge_line(of, shape, "throat")
    assert close(armhole[:2], ((-10.0, 20.0), (-8.0, 20.0)))
    assert close(throat[:2], ((10.0, 70 / 3), (7.5, 70 / 3)))
    # The armhole's last rows are held for the shoulder.
    assert armhole[-1] == shape.left[-1] == (-6.0, 32.0)


LINE = ((0.0, 0.0), (3.0, 0.0), (3.0, 4.0), (6.0, 8.0))


def test_along_a_line() -> None:
    """3 + 4 + 5 cm."""
    assert length(LINE) == 12
    assert length(LINE[:1]) == 0
    assert along(LINE, 0.0) == ((0.0, 0.0), (1.0, 0.0))
    assert along(LINE, 2 / 12) == ((2.0, 0.0), (1.0, 0.0))
    assert along(LINE, 5 / 12)[0] == pytest.approx((3.0, 2.0))
    assert along(LINE, 5 / 12)[1] == (0.0, 1.0)
    # At a corner the way is still that by which it is reached.
    assert along(LINE, 3 / 12)[1] == (1.0, 0.0)
    assert along(LINE, 9.5 / 12)[0] == pytest.approx((4.5, 6.0))
    assert along(LINE, 9.5 / 12)[1] == pytest.approx((0.6, 0.8))
    assert along(LINE, 1.0)[0] == pytest.approx((6.0, 8.0))
    assert along((*LINE, LINE[-1]), 1.0)[1] == pytest.approx((0.6, 0.8))
    assert along(LINE[-1:], 0.5) == ((6.0, 8.0), (1.0, 0.0))
    assert along((LINE[0], LINE[0], LINE[1]), 0.5) == ((1.5, 0.0), (1.0, 0.0))


@pytest.mark.parametrize(("low", "high"), [(0.0, 1.0), (0.0, 0.5), (0.1, 0.2), (0.25, 7 / 12), (0.3, 0.9), (0.5, 0.5)])
def test_some_of_a_line(low: float, high: float) -> None:
    part = stretch(LINE, low, high)
    assert length(part) == pytest.approx((high - low) * 12)
    assert part[0] == along(LINE, low)[0]
    assert part[-1] == along(LINE, high)[0]
    assert all(on(LINE, point) for point in part)
    corners = [corner for at, corner in ((3, LINE[1]), (7, LINE[2])) if low * 12 + 1e-6 < at < high * 12 - 1e-6]
    assert list(part[1:-1]) == corners


def test_a_share_of_an_edge() -> None:
    of, shape = made("front")
    whole = edge_line(of, shape, "armhole")
    assert edge_line(of, shape, "armhole", (0.0, 1.0)) == whole
    half = edge_line(of, shape, "armhole", (0.5, 1.0))
    assert length(half) == pytest.approx(length(whole) / 2)
    assert half[-1] == pytest.approx(whole[-1])
    assert edge_line(of, shape, "nothing", (0.0, 0.5)) == ()


@pytest.mark.parametrize("gap", [2, 3])
@pytest.mark.parametrize("by", [-3, -5])
def test_a_cast_off_beside_a_plain_run(gap: int, by: int) -> None:
    """Of four stitches and more, and more than two rows above the last corner, it is a step; else it is a part of the slope."""
    shaped = gallery.run(40, 60, gallery.every(gap, by, 1), name="armhole")
    runs = (gallery.run(0, 40, name="side"), shaped)
    of = gallery.sketch("p", 40, 60, (("hem", 0), ("top", 60)), runs, runs).counted()
    shape = outline(of)
    step = gap > 2 and by == -5
    for side, sign in (("left", -1), ("right", 1)):
        line = edge_line(of, shape, f"armhole {side}")
        corner = [(sign * 10.0, (40 + gap) / 3)] if step else []
        moved = sign * (20 + by) / 2
        assert close(line, ((sign * 10.0, 40 / 3), *corner, (moved, (40 + gap) / 3), (moved, 20.0)))
        assert all(on(shape.left if side == "left" else shape.right, point) for point in line)
