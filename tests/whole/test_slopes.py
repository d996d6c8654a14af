"""Slopes and curves at random, scheduled by the solver: its own length of the edge, the bed's string, and the length of the line
that was wanted, which knows neither."""

from __future__ import annotations

import random
from itertools import pairwise
from math import cos, hypot, pi, sin

import pytest

from tests.whole.garment import SHIPPED
from walewright.bed.slopes import RowEnd, length_as_worn, loose_cm
from walewright.counted import counted_piece
from walewright.counted.edges import edge_length
from walewright.counted.model import SizedPiece, SizedRun
from walewright.design import Changes
from walewright.design.model import Design, EdgeRun, ShapingWay
from walewright.pipeline import compile
from walewright.solve.schedule.shaping import ShapingSpan, edge_runs

WAYS = ShapingWay("simple"), ShapingWay("fashioned", 2), ShapingWay("fashioned", 2, 2)
PATHS = "slope", "curve", "arch"
SOURCE = """pattern "One"
sizes one
    length 60 cm
machine fine
yarn wool "wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch {across:g} stitches by {up:g} rows = 10 cm by 10 cm, 62 g
piece back in plain
    levels hem 0 cm, top length
    start 40 cm wide with chain
    left edge straight to top called edge
    right edge straight to top
    end cast off
"""
FROM = 10


def design(across: float, up: float) -> Design:
    found = compile(SOURCE.format(across=10 * across, up=10 * up), "one.wale", SHIPPED, Changes()).design
    assert found is not None
    return found


def drawn(path: str, wide: float, high: float) -> float:
    """Length of the wanted line: straight, or a quarter of an ellipse."""
    if path == "slope":
        return hypot(wide, high)
    places = [(wide * cos(i * pi / 2000), high * sin(i * pi / 2000)) for i in range(1001)]
    return sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(places))


def row_ends(run: SizedRun, across: float, up: float) -> list[RowEnd]:
    """What a bed sees of it: how far each row's end lies from the one before."""
    moved = dict(run.changes())
    ends = [moved.get(row - 1, 0) for row in range(run.from_row + 1, run.to_row + 1)]
    return [RowEnd(by / across, 1 / up, abs(by) > 1 and by != -run.way.at_once) for by in ends]


@pytest.mark.parametrize("gauge", [(1.3, 1.85), (2.0, 3.0), (2.8, 4.0), (3.4, 4.8)])
def test_three_reckonings_agree(gauge: tuple[float, float]) -> None:
    across, up = gauge
    plan = design(across, up)
    (piece,) = plan.pieces
    draws = random.Random(f"slopes {gauge}")
    compared = smooth = 0
    while compared < 60:
        rows, by = 2 * draws.randint(6, 60), draws.choice((1, -1)) * draws.randint(1, 30)
        way, path, whose = draws.choice(WAYS), draws.choice(PATHS), draws.choice(("pair", "left", "right"))
        if abs(by) > rows // 2 or (way.at_once == 2 and by > 0):
            continue
        wanted = EdgeRun("edge", "top", path, (float(by),), (0.0,), (), way, piece.origin)
        made = edge_runs(wanted, whose, [ShapingSpan(FROM, FROM + rows, by, 0, 0)])
        if made is None:
            continue
        (run,) = made
        sized = SizedPiece("back", 100, (("hem", 0), ("top", FROM + rows)), FROM + rows, made, (), (), (), 0, 100)
        counted = edge_length(counted_piece(plan, sized), "edge").cm
        ends = row_ends(run, across, up)
        string, loose = length_as_worn(ends), loose_cm(ends, counted)
        where = f"{path} by {by} over {rows} rows, {way}: {run.phrases}"
        assert counted == pytest.approx(string, abs=1e-9 + loose), where
        line = drawn(path, abs(by) / across, rows / up)
        stairs = any(end.step for end in ends)
        # Never shorter than the shortest; what is cast off at once is a step beside the line.
        assert hypot(by / across, rows / up) - 1e-9 <= min(counted, string), where
        assert counted <= line * (1.25 if stairs else 1.03) + 0.5 / up + 0.5 / across, where
        if not stairs:
            assert max(counted, string) == pytest.approx(line, rel=0.05, abs=0.5 / up + 0.5 / across), where
            smooth += 1
        compared += 1
    assert smooth > 20


@pytest.mark.parametrize("every", [1, 2, 3, 5])
def test_a_steady_slope_is_straight_and_no_saw(every: int) -> None:
    """As many rows as each move has, the first after half of them."""
    across, up = 2.0, 3.0
    ends = [RowEnd((row % every == every // 2) / across, 1 / up) for row in range(20 * every)]
    line, saw = hypot(20 / across, 20 * every / up), sum(hypot(end.across, end.up) for end in ends)
    assert length_as_worn(ends) == pytest.approx(line, rel=0.004)
    if every > 1:
        assert saw > 1.04 * line


def test_a_step_is_a_step() -> None:
    ends = [RowEnd(0, 1), RowEnd(0, 1), RowEnd(4, 1, step=True), RowEnd(0, 1)]
    assert length_as_worn(ends) == pytest.approx(3 + hypot(4, 1))


def test_an_edge_that_turns_back_is_held_there() -> None:
    out = [RowEnd(0.5 * (row % 2), 1 / 3) for row in range(20)]
    back = [RowEnd(-end.across, end.up) for end in out]
    assert length_as_worn([*out, *back]) == pytest.approx(2 * hypot(5, 20 / 3), rel=0.02)
