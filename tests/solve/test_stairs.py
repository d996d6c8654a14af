"""Curves in stairs: never far from the curve, steep before flat, alike in all sizes."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright.counted.model import ShapingPhrase
from walewright.design.model import EdgeRun, Origin, ShapingWay
from walewright.solve.edges.curves import quarter_ellipse, targets
from walewright.solve.schedule.schedule import ALLOWED_BEYOND
from walewright.solve.schedule.shaping import edge_runs
from walewright.solve.schedule.spans import ShapingSpan
from walewright.solve.schedule.stairs import Flight, flight_schedules


def flight(stitches: int, rows: int, first: int = 1) -> Flight:
    return Flight(stitches, rows, targets(quarter_ellipse(stitches, rows), rows), tuple(range(first, rows, 2)))


def moves(phrases: tuple[ShapingPhrase, ...]) -> list[tuple[int, int]]:
    found, row = [], 0
    for phrase in phrases:
        for _ in range(phrase.times):
            for gap, by in zip(phrase.gaps, phrase.by, strict=True):
                row += gap
                found.append((row, -by))
    return found


def deviation(wanted: Flight, made: list[tuple[int, int]]) -> float:
    done = [sum(by for row, by in made if row < i) for i in range(1, wanted.rows + 1)]
    return max(abs(d - w) for d, w in zip(done, wanted.line, strict=True))


def least(wanted: Flight) -> float:
    """The least deviation of any rising whole numbers, stair by stair: nothing first, everything last."""
    ends = (0, *wanted.slots, wanted.rows)
    worst = 0.0
    for number, (begin, end) in enumerate(pairwise(ends)):
        rows = wanted.line[begin:end]
        heights = [0] if number == 0 else [wanted.stitches] if end == wanted.rows else range(wanted.stitches + 1)
        worst = max(worst, min(max(abs(h - w) for w in rows) for h in heights))
    return worst


SIZES = st.lists(st.tuples(st.integers(0, 24), st.integers(1, 30)), min_size=1, max_size=4)


@settings(max_examples=draws(60), deadline=None)
@given(SIZES)
def test_stairs_keep_near_the_curve_in_every_size(sizes: list[tuple[int, int]]) -> None:
    flights = [flight(stitches, 2 * pairs) for stitches, pairs in sizes]
    made = flight_schedules(flights, [-1] * len(flights))
    assert made is not None
    for wanted, phrases in zip(flights, made, strict=True):
        worked = moves(phrases)
        assert sum(by for _, by in worked) == wanted.stitches
        assert {row for row, _ in worked} <= set(wanted.slots)
        assert deviation(wanted, worked) <= least(wanted) + ALLOWED_BEYOND + 1e-6
    assert len({len(phrases) for phrases in made}) == 1 or len(flights) == 1


def test_a_round_neck_flattens() -> None:
    made = flight_schedules([flight(10, 28)], [-1])
    assert made is not None
    by = [b for _, b in moves(made[0])]
    assert by == sorted(by, reverse=True)
    assert by[0] > 1
    assert by[-1] == 1


def test_two_rows_are_enough_for_a_neck() -> None:
    assert flight_schedules([flight(5, 2)], [-1]) == ((ShapingPhrase((1,), (-5,), 1),),)


def test_nothing_fits_without_a_slot() -> None:
    assert flight_schedules([Flight(3, 2, (1.0, 2.0), ())], [-1]) is None


def test_several_stitches_never_go_where_only_one_can() -> None:
    wanted = flight(20, 30, 2)
    single = Flight(wanted.stitches, wanted.rows, wanted.line, wanted.slots, frozenset({2, 4}))
    made = flight_schedules([single], [-1])
    assert made is not None
    assert all(by == 1 for row, by in moves(made[0]) if row in (2, 4))
    assert sum(by for _, by in moves(made[0])) == 20


def test_outward_curves_have_outward_moves() -> None:
    made = flight_schedules([flight(8, 20, 2)], [1])
    assert made is not None
    assert sum(p.change for p in made[0]) == 8


@pytest.mark.parametrize("whose", ["pair", "left", "right"])
@pytest.mark.parametrize("path", ["slope", "curve", "arch"])
def test_a_fashioned_increase_has_a_stitch_below_to_be_filled_from(path: str, whose: str) -> None:
    """There is none after the first row of all; further up there is."""
    run = EdgeRun("edge", "top", path, (1.0,), (0.0,), (), ShapingWay("fashioned", 2), Origin("test"))
    for by, rows in ((1, 12), (2, 12), (4, 12), (9, 20)):
        made = edge_runs(run, whose, [ShapingSpan(0, rows, by, 0, 0)])
        assert made is not None
        assert min(row for row, _ in made[0].changes()) >= 2
    above = edge_runs(run, "left", [ShapingSpan(10, 14, 2, 0, 0)])
    assert above is not None
    assert path != "curve" or min(row for row, _ in above[0].changes()) == 11
