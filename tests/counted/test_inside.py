"""On which needle a stitch is lost or gained along a line within a piece, worked out by hand."""

from __future__ import annotations

from dataclasses import replace

from tests.counted.test_needles import run
from tests.counted.test_piece import asked
from walewright.counted.inside import moves
from walewright.counted.model import ShapingPhrase, SizedLine, SizedRun

DART = SizedLine("needle", 8)
"""R 8, or L 8, is the last needle that stays: slots 7 and -8."""


def shaped(by: int, *lines: SizedLine) -> SizedRun:
    return replace(run(0, 20, ShapingPhrase((4,), (by,), 2)), lines=lines)


def found(left: SizedRun, right: SizedRun) -> list[tuple[str, int, int, int, int]]:
    sized = asked(left=(left,), right=(right,)).sized
    return [(m.side, m.line, m.row, m.by, m.slot) for m in moves(sized)]


def test_a_decrease_joins_the_loop_of_the_last_needle_that_stays() -> None:
    assert found(shaped(-1, DART), shaped(-1, DART)) == [
        ("left", 0, 4, -1, -8), ("left", 0, 8, -1, -8), ("right", 0, 4, -1, 7), ("right", 0, 8, -1, 7),
    ]  # fmt: skip


def test_an_increase_is_hung_on_the_needle_beyond_it() -> None:
    assert found(shaped(1, DART), shaped(1, DART)) == [
        ("left", 0, 4, 1, -9), ("left", 0, 8, 1, -9), ("right", 0, 4, 1, 8), ("right", 0, 8, 1, 8),
    ]  # fmt: skip


def test_a_line_that_keeps_its_stitches_outside_goes_in_with_the_edge() -> None:
    """40 stitches: 5 outside of the line leave 15 within it, and one fewer with each move."""
    line = SizedLine("count", 5)
    assert [m[4] for m in found(shaped(-1, line), shaped(-1, line))] == [-15, -14, 14, 13]


def test_the_outer_of_two_lines_goes_with_what_the_inner_one_moves() -> None:
    outer = SizedLine("needle", 14)
    assert [m[1:] for m in found(shaped(-2, DART, outer), shaped(0)) if m[0] == "left"] == [
        (0, 4, -1, -8), (1, 4, -1, -13), (0, 8, -1, -8), (1, 8, -1, -13),
    ]  # fmt: skip
    # A smaller move is along the first line alone.
    assert {m[1] for m in found(shaped(-1, DART, outer), shaped(0))} == {0}


def test_a_line_is_counted_from_where_its_own_edge_begins() -> None:
    """41 stitches, six more of them at the left: 26 left of the centre mark and 15 right of it."""
    line = SizedLine("count", 5)
    sized = asked(start=41, lean=6, left=(shaped(-1, line),), right=(shaped(-1, line),)).sized
    assert [m.slot for m in moves(sized)] == [-21, -20, 9, 8]
