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


@pytest.mark.parametrize(
    ("width", "flat", "steps", "published"),
    [
        # Knitting course book, stored as a scan, https://zanotowane.pl/713/7786: 32 stitches wide, 12 in the middle, then on each
        # side every 2nd row 3, 2, 2, 1, 1, 1; and its back, 20 in the middle, then 4 once and 2 once.
        (32, 12, "3 stitches then 2 stitches 2 times then 1 stitch 3 times", [3, 2, 2, 1, 1, 1]),
        (32, 20, "4 stitches then 2 stitches", [4, 2]),
        # Craft book excerpt, shaping the shoulders, https://www.knittingmagic.biz/guide-4/shaping-the-shoulders.html: 15 in the
        # middle, at each neck edge 3 once, 2 twice, then a stitch every other row twice. 16 here, of an even number.
        (34, 16, "3 stitches then 2 stitches 2 times then 1 stitch 2 times", [3, 2, 2, 1, 1]),
    ],
)
def test_a_neck_step_by_step_as_published(width: int, flat: int, steps: str, published: list[int]) -> None:
    """Each step as written, every 2nd row, where there are so many rows."""
    rows = 2 * len(published)
    front = garment(
        f"""
piece front in plain
    levels hem 0 cm, low {120 - rows} rows, top 120 rows
    start 100 stitches wide with e-wrap
    opening round_neck {flat} stitches wide from low to top, cast off
        edges steps {steps} to top
    end cast off
"""
    ).piece("front")
    (opening,) = front.openings
    assert (opening.flat, opening.width) == (flat, width)
    for runs in (opening.left, opening.right):
        assert [(row - opening.row, -by) for run in runs for row, by in run.changes()] == [
            (1 + 2 * i, by) for i, by in enumerate(published)
        ]


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
