"""At which rows the carriage is at an edge, and lines within a piece put apart: each against counting through."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.solve.tiny import tiny
from tests.solve.workshop import SIMPLE, origin
from walewright.counted.model import SizedLine, SizedRun
from walewright.solve.schedule.shaping import GAP, LEFT, PAIR, RIGHT, _at_carriage
from walewright.solve.schedule.spans import ShapingSpan
from walewright.solve.sized.inside import apart


@given(st.integers(0, 9), st.integers(0, 30), st.integers(0, 12))
def test_an_edge_is_moved_where_the_carriage_is(low: int, rows: int, first: int) -> None:
    """It begins at the right: after an even number of rows it is there again, after an odd one at the left; a gap's edge is moved
    after odd ones. At the right no move is made before two rows are knitted; both ends need a row after the second move."""
    span = ShapingSpan(low, low + rows, -4, 0, 0)
    within = range(first, rows)
    assert _at_carriage(RIGHT, span, first) == tuple(t for t in within if t % 2 == 0 and t >= 2)
    assert _at_carriage(LEFT, span, first) == tuple(t for t in within if t % 2 == 1)
    assert _at_carriage(GAP, span, first) == tuple(t for t in within if t % 2 == 1)
    assert _at_carriage(PAIR, span, first) == tuple(t for t in within if t % 2 == 0 and 2 <= t < rows - 1)


def run(low: int, high: int, *places: int, of: str = "needle") -> SizedRun:
    lines = tuple(SizedLine(of, at) for at in places)  # type: ignore[arg-type]
    return SizedRun("side", low, high, (), SIMPLE, origin("run"), lines=lines)


@given(st.integers(-6, 9), st.integers(-6, 9))
def test_lines_in_the_same_rows_have_two_stitches_between_them(one: int, other: int) -> None:
    """Counted outwards from the centre mark on both sides: they come to two together, each moved as little as can be, and as far
    out as the other at the most, or a needle more."""
    left, right = apart((run(0, 20, one),), (run(10, 30, other),))
    a, b = left[0].lines[0].at, right[0].lines[0].at
    assert a + b == max(2, one + other)
    assert a >= one
    assert b >= other
    if one + other < 2:
        # The one that lies less far out is moved first.
        near, far = sorted((one, other))
        moved = 2 - one - other
        assert sorted((a, b)) == ([near + moved, far] if near + moved <= far else [1, 1])


def test_lines_of_other_rows_stay_and_so_do_those_told_from_the_edge() -> None:
    for left, right in (
        ((run(0, 10, -1),), (run(10, 20, -1),)),
        ((run(10, 20, -1),), (run(0, 10, -1),)),
        ((run(0, 20, 1, of="count"),), (run(0, 20, -3),)),
        ((run(0, 20, -3),), (run(0, 20, 1, of="count"),)),
        ((run(0, 20),), (run(0, 20, -3),)),
        ((run(0, 20, 1),), (run(0, 20, 1),)),
    ):
        assert apart(left, right) == (left, right)
    # A row that both have is enough; only the innermost line is moved.
    left, right = apart((run(0, 11, 0, 7),), (run(10, 20, 0, 9),))
    assert [line.at for line in (*left[0].lines, *right[0].lines)] == [1, 7, 1, 9]


TAKEN_IN = """\
piece front in plain
    levels hem 0 cm, top 30 cm
    start 24 cm wide with e-wrap
    {edge} slope by -2 cm at top, shaped {where}
    end cast off
"""


@pytest.mark.parametrize("edge", ["left edge", "right edge"])
@pytest.mark.parametrize(
    ("where", "lines"),
    [
        # One line keeps the stitches outside it: the nearest number of them, one at the least.
        ("0.2 cm from the edge", [("count", 1)]),
        ("1 cm from the edge", [("count", 1)]),
        ("1.4 cm from the edge", [("count", 1)]),
        ("1.6 cm from the edge", [("count", 2)]),
        ("4 cm from the edge", [("count", 4)]),
        # Told from the centre it keeps its needle, 12 being the outermost.
        ("5 cm from centre", [("needle", 5)]),
        ("5.4 cm from centre", [("needle", 5)]),
        ("5.6 cm from centre", [("needle", 6)]),
        # Of several the outermost keeps the stitches outside it, and the others their needles.
        ("8 cm from the edge and 2 cm from the edge", [("needle", 4), ("count", 2)]),
        ("5 cm from centre and 1 cm from the edge", [("needle", 5), ("count", 1)]),
        ("5 cm from centre and 0.2 cm from the edge", [("needle", 5), ("count", 1)]),
    ],
)
def test_where_the_lines_within_a_piece_lie(edge: str, where: str, lines: list[tuple[str, int]]) -> None:
    piece = tiny(TAKEN_IN.format(edge=edge, where=where)).piece
    (run,) = piece.left if edge == "left edge" else piece.right
    assert [(line.of, line.at) for line in run.lines] == lines
