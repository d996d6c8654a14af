"""Steps of several sizes one after the other, moves beside a panel, the length of a curve: each against counting through."""

from __future__ import annotations

from math import pi, sqrt
from types import SimpleNamespace
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.solve.workshop import SIMPLE, Workshop, origin
from walewright.counted.model import ShapingPhrase, SizedRun, SizedZone
from walewright.design.model import ShapingWay
from walewright.solve.edges.lengths import _curve_more, _step
from walewright.solve.edges.panels import _crossing, _sharing
from walewright.solve.schedule.spans import ShapingSpan
from walewright.solve.schedule.stepped import in_their_steps

# ------------------------------------------------------------------------------------------------------- steps one after another

MOTIF = st.lists(st.integers(2, 8), min_size=1, max_size=3).map(tuple)


@st.composite
def shaped(draw: st.DrawFn) -> tuple[tuple[ShapingPhrase, ...], ShapingSpan]:
    """Phrases of moves that are one like another, and steps of unlike stitches that come to as many moves."""
    phrases = tuple(
        ShapingPhrase(gaps, (1,) * len(gaps), draw(st.integers(1, 4))) for gaps in draw(st.lists(MOTIF, min_size=1, max_size=2))
    )
    left = sum(len(p.gaps) * p.times for p in phrases)
    steps: list[tuple[int, int]] = []
    while left:
        times = draw(st.integers(1, left))
        steps.append((draw(st.integers(1, 5)), times))
        left -= times
    sign = draw(st.sampled_from([-1, 1]))
    change = sign * sum(stitches * times for stitches, times in steps)
    rows = sum(p.rows for p in phrases)
    return phrases, ShapingSpan(0, rows, change, 0, 0, in_turn=tuple(steps))


def moves(phrases: tuple[ShapingPhrase, ...]) -> list[tuple[int, int]]:
    """(rows since the move before, stitches) of each move, in order."""
    return [move for p in phrases for _ in range(p.times) for move in zip(p.gaps, p.by, strict=True)]


@given(st.lists(shaped(), min_size=1, max_size=3))
def test_moves_become_the_steps_in_their_rows(sizes: list[tuple[tuple[ShapingPhrase, ...], ShapingSpan]]) -> None:
    """Each at its row, of as many stitches as its step says; and every size has as many phrases, those that another needs none."""
    assume(len({len(phrases) for phrases, _ in sizes}) == 1)
    made = in_their_steps([phrases for phrases, _ in sizes], [span for _, span in sizes])
    for (phrases, span), found in zip(sizes, made, strict=True):
        gaps = [gap for gap, _ in moves(phrases)]
        by = [span.sign * stitches for stitches, times in span.in_turn for _ in range(times)]
        assert moves(found) == list(zip(gaps, by, strict=True))
        assert all(len(p.gaps) == len(p.by) for p in found)
    assert len({len(found) for found in made}) == 1


# --------------------------------------------------------------------------------------------------------------- beside a panel


def panel(first: int, last: int, low: int = 10, high: int = 20) -> SizedZone:
    return SizedZone("rib", low, high, first, last, origin("panel"))


def piece_of(left: int, right: int, at: int, by: int, side: str, way: ShapingWay = SIMPLE) -> Any:
    """Stitches from the centre mark to each edge, and one move at row `at`, of the edge at that side."""
    still = (SizedRun("side", 0, 40, (), SIMPLE, origin("still")),)
    shaped = (SizedRun("side", 0, 40, (ShapingPhrase((at,), (by,), 1),), way, origin("shaped")),)
    return SimpleNamespace(
        slots=(),
        start=left + right,
        start_left=left,
        left=shaped if side == "left" else still,
        right=shaped if side == "right" else still,
    )


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(
    ("way", "kept"), [(SIMPLE, 1), (ShapingWay("fashioned", 2), 2), (ShapingWay("fashioned", 3), 3)], ids=["simple", "two", "three"]
)
def test_an_edge_moved_beside_a_panel_leaves_its_wales_alone(side: str, way: ShapingWay, kept: int) -> None:
    """A panel of eight needles on each side of the mark; after the move there are `place` stitches outside the mark, and those that
    the tool takes may not be the panel's."""
    for place in range(7, 14):
        sized = piece_of(*((place + 1, 20) if side == "left" else (20, place + 1)), 15, -1, side, way)
        told = list(_crossing(SimpleNamespace(name="front"), sized, panel(-8, 7), True))  # type: ignore[arg-type]
        assert bool(told) == (place - kept < 8)
        assert all(dict(one.facts)["side"] == side for one in told)
        assert not list(_crossing(SimpleNamespace(name="front"), sized, panel(-8, 7), False))  # type: ignore[arg-type]


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(("row", "told"), [(10, False), (11, True), (19, True), (20, False)])
def test_only_moves_within_its_rows_count(side: str, row: int, told: bool) -> None:
    sized = piece_of(8, 8, row, -1, side)
    assert bool(list(_crossing(SimpleNamespace(name="front"), sized, panel(-8, 7), True))) == told  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("first", "last", "beside"), [(-10, -9, True), (-10, -10, False), (8, 9, True), (9, 9, False), (0, 0, True), (-9, 8, True)]
)
@pytest.mark.parametrize(("row", "within"), [(10, False), (11, True), (19, True), (20, False)])
def test_a_slot_or_its_neighbour_is_no_wale_of_a_panel(first: int, last: int, beside: bool, row: int, within: bool) -> None:
    slot = SimpleNamespace(name="pocket", row=row, first=first, last=last)
    sized = piece_of(30, 30, 0, 0, "left")
    sized.slots = (slot,)
    told = list(_crossing(SimpleNamespace(name="front"), sized, panel(-8, 7), False))  # type: ignore[arg-type]
    assert bool(told) == (beside and within)


@given(st.integers(-9, 9), st.integers(0, 6), st.integers(0, 20), st.integers(1, 10))
def test_two_panels_share_a_needle_and_a_row_or_nothing(first: int, wide: int, low: int, high: int) -> None:
    own, other = panel(-2, 3, 8, 14), panel(first, first + wide, low, low + high)
    together = {*range(-2, 4)} & {*range(first, first + wide + 1)} and {*range(8, 14)} & {*range(low, low + high)}
    assert bool(list(_sharing(SimpleNamespace(name="front"), own, [other]))) == bool(together)  # type: ignore[arg-type]


# ------------------------------------------------------------------------------------------------------------------- curves


def quarter(a: float, b: float) -> float:
    """A quarter of an ellipse's circumference (Ramanujan, Modular equations and approximations to pi, 1914)."""
    h = ((a - b) / (a + b)) ** 2
    return pi * (a + b) * (1 + 3 * h / (10 + sqrt(4 - 3 * h))) / 4


@pytest.mark.parametrize(("wide", "high"), [(20, 20), (10, 30), (30, 30), (15, 25), (6, 24)])
def test_a_curve_drawn_smooth_is_as_long_as_its_ellipse(wide: float, high: float) -> None:
    """To two stitches, for it is knitted in them."""
    shop = Workshop(across=4.0, up=6.0)
    more = _curve_more(wide, high, shop.plain, True)
    assert high + more == pytest.approx(quarter(wide, high), abs=0.5)
    assert _curve_more(wide, high, shop.plain, False) > 0
    assert _curve_more(0.0, high, shop.plain, True) == 0.0


@given(st.floats(0.2, 10), st.floats(0.5, 6), st.floats(0.5, 8))
def test_a_step_makes_its_row_as_much_longer_as_the_triangle_says(stitches: float, across: float, up: float) -> None:
    fabric = Workshop(across=across, up=up).plain
    more = _step(stitches, fabric)
    assert (more + 1 / fabric.rows_per_cm) ** 2 == pytest.approx(
        (stitches / fabric.stitches_per_cm) ** 2 + (1 / fabric.rows_per_cm) ** 2
    )
