"""The least deviation that a schedule can have, found again by an integer programme that knows nothing of shares and stairs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import combinations_with_replacement, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright.counted.model import ShapingPhrase
from walewright.solve.edges.curves import Curve, arch, quarter_ellipse, straight, targets
from walewright.solve.schedule.schedule import ALLOWED_BEYOND, Taper, least_deviation
from walewright.solve.schedule.stairs import Flight, flight_schedules
from walewright.solve.schedule.stairs import least_deviation as least_of_flight
from walewright.solve.schedule.structure import phrase_schedules

Path = Callable[[int, int], Curve]


def programmed(slots: Sequence[int], most: Sequence[int], least_gap: int, total: int, line: Sequence[float]) -> float | None:
    """The least greatest |moved - line| over all rows when `total` moves are made at slots, at most `most[k]` at slot k and in
    slots `least_gap` rows apart; None if there is no way."""
    import highspy

    class Quiet(highspy.Highs):
        def enableCallbacks(self) -> None:
            self.setOptionValue("output_flag", False)
            super().enableCallbacks()

    highs = Quiet()
    highs.setOptionValue("mip_rel_gap", 0.0)
    highs.setOptionValue("mip_abs_gap", 0.0)
    worst = highs.addVariable(lb=0.0)
    moves = [highs.addIntegral(lb=0, ub=most[k]) for k in range(len(slots))]
    if not moves:
        return None if total else max((abs(w) for w in line), default=0.0)
    highs.addConstr(sum(moves[1:], moves[0]) == total)
    if least_gap > 1:
        for begin in range(slots[0], slots[-1] + 1):
            some = [m for slot, m in zip(slots, moves, strict=True) if begin <= slot < begin + least_gap]
            if len(some) > 1:
                highs.addConstr(sum(some[1:], some[0]) <= 1)
    for row in range(1, len(line) + 1):
        before = [m for slot, m in zip(slots, moves, strict=True) if slot < row]
        if not before:
            highs.addConstr(worst >= abs(line[row - 1]))
            continue
        done = sum(before[1:], before[0])
        highs.addConstr(done - line[row - 1] <= worst)
        highs.addConstr(line[row - 1] - done <= worst)
    highs.minimize(worst)
    if highs.getModelStatus() != highspy.HighsModelStatus.kOptimal:
        return None
    return float(highs.getInfo().objective_function_value)


CURVES = st.sampled_from([straight, quarter_ellipse, arch])


@settings(max_examples=draws(25), deadline=None)
@given(CURVES, st.integers(1, 40), st.integers(2, 110), st.integers(1, 3), st.integers(1, 2), st.integers(1, 3))
def test_the_least_deviation_of_single_moves(curve: Path, moves: int, rows: int, gap: int, step: int, first: int) -> None:
    line = targets(curve(moves, rows), rows)
    taper = Taper(moves, rows, line, tuple(range(first, rows, step)), gap)
    found = least_deviation(taper)
    expected = programmed(taper.slots, [1] * len(taper.slots), gap, moves, line)
    assert (found is None) == (expected is None)
    if found is not None and expected is not None:
        assert found == pytest.approx(expected, abs=1e-5)


@settings(max_examples=draws(25), deadline=None)
@given(
    st.sampled_from([quarter_ellipse, arch]), st.integers(1, 40), st.integers(1, 45), st.integers(1, 2), st.sets(st.integers(0, 44))
)
def test_the_least_deviation_of_stairs(curve: Path, stitches: int, pairs: int, first: int, singles: set[int]) -> None:
    rows = 2 * pairs
    line = targets(curve(stitches, rows), rows)
    slots = tuple(range(first, rows, 2))
    single = frozenset(slot for n, slot in enumerate(slots) if n in singles)
    found = least_of_flight(Flight(stitches, rows, line, slots, single))
    expected = programmed(slots, [1 if slot in single else stitches for slot in slots], 1, stitches, line)
    assert (found == float("inf")) == (expected is None)
    if expected is not None:
        assert found == pytest.approx(expected, abs=1e-5)


def rows_and_moves(phrases: tuple[ShapingPhrase, ...]) -> list[tuple[int, int]]:
    found, row = [], 0
    for phrase in phrases:
        for _ in range(phrase.times):
            for gap, by in zip(phrase.gaps, phrase.by, strict=True):
                row += gap
                found.append((row, abs(by)))
    return found


def astray(made: Sequence[tuple[int, int]], line: Sequence[float]) -> float:
    return max(abs(sum(by for at, by in made if at < row) - line[row - 1]) for row in range(1, len(line) + 1))


SINGLES = st.sets(st.integers(0, 12))


@settings(max_examples=draws(60), deadline=None)
@given(
    st.sampled_from([quarter_ellipse, arch]),
    st.lists(st.tuples(st.integers(0, 30), st.integers(1, 25), SINGLES), min_size=1, max_size=4),
    st.integers(1, 2),
)
def test_no_stairs_stray_more_than_half_a_stitch_beyond_what_they_must(curve: Path, sizes, first: int) -> None:
    flights = []
    for stitches, pairs, singles in sizes:
        slots = tuple(range(first, 2 * pairs, 2))
        single = frozenset(slot for n, slot in enumerate(slots) if n in singles)
        line = targets(curve(stitches, 2 * pairs), 2 * pairs)
        flights.append(Flight(stitches, 2 * pairs, line, slots, single, 0, curve is arch))
    made = flight_schedules(flights, [-1] * len(flights))
    if made is None:
        assert any(f.stitches and least_of_flight(f) == float("inf") for f in flights)
        return
    for flight, phrases in zip(flights, made, strict=True):
        moves = rows_and_moves(phrases)
        assert sum(by for _, by in moves) == flight.stitches
        assert {row for row, _ in moves} <= set(flight.slots)
        assert all(by == 1 for row, by in moves if row in flight.single)
        assert astray(moves, flight.line) <= least_of_flight(flight) + ALLOWED_BEYOND + 1e-6 if flight.stitches else not moves


@settings(max_examples=draws(60), deadline=None)
@given(
    CURVES,
    st.lists(st.tuples(st.integers(0, 40), st.integers(2, 60)), min_size=1, max_size=4),
    st.integers(1, 4),
    st.booleans(),
)
def test_no_moves_of_several_stitches_stray_more_than_half_a_stitch_beyond(curve: Path, sizes, size: int, whole: bool) -> None:
    """Half a stitch, not half a move; the last move may be smaller."""
    tapers = []
    for wanted, rows in sizes:
        stitches = wanted * size if whole else wanted
        moves = -(-stitches // size)
        line = tuple(at / size for at in targets(curve(stitches, rows), rows))
        tapers.append(Taper(moves, rows, line, tuple(range(1, rows)), 1, 0, size, stitches))
    made = phrase_schedules(tapers, [-size] * len(tapers))
    if made is None:
        assert any(least_deviation(t) is None for t in tapers)
        return
    for taper, phrases in zip(tapers, made, strict=True):
        moves = rows_and_moves(phrases)
        assert len(moves) == taper.moves
        less = taper.moves * size - taper.stitches
        if moves and less:
            moves[-1] = (moves[-1][0], size - less)
        least = least_deviation(taper)
        assert least is not None
        assert astray(moves, [at * size for at in taper.line]) <= (least + ALLOWED_BEYOND / size) * size + 1e-6


@settings(max_examples=draws(60), deadline=None)
@given(st.sampled_from([quarter_ellipse, arch]), st.integers(1, 6), st.integers(1, 5), st.sets(st.integers(0, 4)))
def test_stairs_against_every_way_there_is(curve: Path, stitches: int, pairs: int, singles: set[int]) -> None:
    rows = 2 * pairs
    slots = tuple(range(1, rows, 2))
    single = frozenset(slot for n, slot in enumerate(slots) if n in singles)
    line = targets(curve(stitches, rows), rows)
    ways = (
        [(slot, used.count(slot)) for slot in slots if slot in used]
        for used in combinations_with_replacement(slots, stitches)
        if all(used.count(slot) <= 1 for slot in single)
    )
    expected = min((astray(way, line) for way in ways), default=float("inf"))
    assert least_of_flight(Flight(stitches, rows, line, slots, single)) == pytest.approx(expected)


def test_an_arch_is_a_curve_upside_down() -> None:
    """The moves of an arch are those of the curve from its end back: a stitch more or less where slots do not mirror."""
    rows, stitches = 40, 14
    slots = tuple(range(2, rows - 1, 2))
    up = flight_schedules([Flight(stitches, rows, targets(arch(stitches, rows), rows), slots, steepens=True)], [-1])
    down = flight_schedules([Flight(stitches, rows, targets(quarter_ellipse(stitches, rows), rows), slots)], [-1])
    assert up is not None
    assert down is not None
    one, other = rows_and_moves(up[0]), [(rows - row, by) for row, by in reversed(rows_and_moves(down[0]))]
    for row in range(0, rows, 2):
        done, wanted = (sum(by for at, by in some if at < row) for some in (one, other))
        assert abs(done - wanted) <= 2
    assert all(b - a >= 2 for (a, _), (b, _) in pairwise(one))
