"""Published worked examples of necklines."""

from __future__ import annotations

import pytest

from tests.outside.worked import garment
from walewright.solve.edges.curves import quarter_ellipse, targets
from walewright.solve.schedule.schedule import ALLOWED_BEYOND
from walewright.solve.schedule.stairs import Flight


def neck(shape: str, width: int, flat: int, rows: int) -> list[tuple[int, int]]:
    """(rows after the parting, stitches) of each move of a part's neck edge. The carriage begins at the part's outer edge."""
    # At a point nothing is cast off.
    off = ", cast off" if shape != "v" or flat else ""
    front = garment(
        f"""
piece front in plain
    levels hem 0 cm, top 120 rows
    start 100 stitches wide with e-wrap
    neck {width} stitches wide, {rows} rows deep, {shape}, {flat} stitches flat{off}
    end cast off
"""
    ).piece("front")
    opening = front.openings[0]
    assert (opening.width, opening.flat) == (width, flat)
    return [(row - opening.row, -by) for run in opening.right for row, by in run.changes()]


def strays(stitches: int, rows: int, moves: list[tuple[int, int]]) -> float:
    """The greatest distance from the curve."""
    line = targets(quarter_ellipse(stitches, rows), rows)
    return max(abs(sum(by for at, by in moves if at < i) - f) for i, f in enumerate(line, 1))


@pytest.mark.parametrize("rows", range(12, 26, 2))
def test_a_round_front_neck(rows: int) -> None:
    """Source: knitting course book, stored as a scan, https://zanotowane.pl/713/7786: 32 stitches wide, 12 in the middle, then on
    each side every 2nd row 3, 2, 2, 1, 1, 1: 10 stitches."""
    published = [(1 + 2 * i, by) for i, by in enumerate([3, 2, 2, 1, 1, 1])]
    ours = neck("round", 32, 12, rows)
    assert sum(by for _, by in ours) == sum(by for _, by in published) == (32 - 12) // 2
    assert [by for _, by in ours] == sorted((by for _, by in ours), reverse=True)
    assert all(at % 2 == 1 for at, _ in ours)
    # Both are schedules of our curve: as near to it as it allows, or half a stitch further off.
    curve = Flight(10, rows, targets(quarter_ellipse(10, rows), rows), tuple(range(1, rows, 2)))
    allowed = max(curve.least()) + ALLOWED_BEYOND
    assert strays(10, rows, ours) <= allowed
    assert strays(10, rows, published) <= allowed


def test_a_shallow_back_neck() -> None:
    """Source: knitting course book, stored as a scan, https://zanotowane.pl/713/7786: 32 stitches wide, 20 in the middle, then on
    each side every 2nd row 4 once and 2 once."""
    assert neck("round", 32, 20, 6) == [(1, 4), (3, 2)]


@pytest.mark.parametrize("rows", [16, 30, 61 - 1])
def test_a_v_neck(rows: int) -> None:
    """Source: knitting article collection, 2015,
    https://knit1knitall.blogspot.com/2015/08/convert-top-down-crew-scoop-or-square.html: 30 stitches across the back neck are 15
    shapings on each side."""
    moves = neck("v", 30, 0, rows)
    assert [by for _, by in moves] == [1] * 15


def test_a_square_neck_is_taken_at_once() -> None:
    """All of the width at the parting (common practice)."""
    assert neck("square", 30, 30, 20) == []
