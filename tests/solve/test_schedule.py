"""Schedules against exhaustive search, and against the line that they follow."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright.counted.model import ShapingPhrase, SizedRun
from walewright.design.model import ShapingWay
from walewright.design.model.origin import Origin
from walewright.report.model import Span
from walewright.solve.edges.curves import quarter_ellipse, straight, targets
from walewright.solve.schedule.schedule import ALLOWED_BEYOND, Taper, best_schedule, deviation, least_deviation
from walewright.solve.schedule.structure import LONG, LONG_STRUCTURES, LONGEST_MOTIF, STRUCTURES, phrase_schedules


def taper(moves: int, rows: int, gap: int = 1, step: int = 1, curved: bool = False) -> Taper:
    curve = quarter_ellipse(moves, rows) if curved else straight(moves, rows)
    return Taper(moves, rows, targets(curve, rows), tuple(range(step, rows, step)), gap)


def rows_of(phrases: tuple[ShapingPhrase, ...]) -> list[int]:
    found, row = [], 0
    for phrase in phrases:
        for _ in range(phrase.times):
            for gap in phrase.gaps:
                row += gap
                found.append(row)
    return found


def exhaustive(wanted: Taper) -> float | None:
    """The least deviation of all ways to choose slots, measured row by row."""
    fitting = [
        used for used in combinations(wanted.slots, wanted.moves) if all(b - a >= wanted.least_gap for a, b in pairwise(used))
    ]
    return min((deviation(wanted, used) for used in fitting), default=None)


SMALL = st.builds(
    taper,
    moves=st.integers(1, 4),
    rows=st.integers(2, 13),
    gap=st.integers(1, 3),
    step=st.integers(1, 2),
    curved=st.booleans(),
)


@settings(max_examples=draws(150), deadline=None)
@given(SMALL)
def test_the_least_deviation_is_that_of_exhaustive_search(wanted: Taper) -> None:
    least, all_ways = least_deviation(wanted), exhaustive(wanted)
    assert (least is None) == (all_ways is None)
    if least is not None and all_ways is not None:
        assert least == pytest.approx(all_ways)


@settings(max_examples=draws(100), deadline=None)
@given(SMALL)
def test_the_best_schedule_has_the_deviation_it_claims(wanted: Taper) -> None:
    found = best_schedule(wanted)
    if found is not None:
        assert deviation(wanted, found[1]) == pytest.approx(found[0])
        assert set(found[1]) <= set(wanted.slots)


MANY = st.lists(st.tuples(st.integers(0, 30), st.integers(2, 90)), min_size=1, max_size=5)


@settings(max_examples=draws(60), deadline=None)
@given(MANY, st.sampled_from([1, 2]))
def test_phrases_keep_the_promise_in_every_size(sizes: list[tuple[int, int]], step: int) -> None:
    tapers = [taper(moves, rows, gap=step, step=step) for moves, rows in sizes]
    made = phrase_schedules(tapers, [-1] * len(tapers))
    if made is None:
        assert any(least_deviation(t) is None for t in tapers)
        return
    for wanted, phrases in zip(tapers, made, strict=True):
        used = rows_of(phrases)
        assert len(used) == wanted.moves
        assert set(used) <= set(wanted.slots)
        assert all(b - a >= wanted.least_gap for a, b in pairwise(used))
        least = least_deviation(wanted)
        assert least is not None
        assert deviation(wanted, used) <= least + ALLOWED_BEYOND + 1e-6


def test_all_sizes_have_one_structure_and_a_phrase_may_be_left_out() -> None:
    tapers = [taper(4, 21), taper(7, 40), taper(0, 30), taper(13, 30)]
    made = phrase_schedules(tapers, [1, 1, 1, 1])
    assert made is not None
    shapes = {tuple(len(p.gaps) for p in phrases) for phrases in made}
    assert len(shapes) == 1
    assert shapes <= set(STRUCTURES)
    assert sum(p.times for p in made[2]) == 0


def test_the_plainest_structure_is_taken() -> None:
    made = phrase_schedules([taper(4, 20), taper(5, 30)], [-1, -1])
    assert made == ((ShapingPhrase((4,), (-1,), 4),), (ShapingPhrase((5,), (-1,), 5),))


def test_the_greatest_gap_goes_first_only_if_it_follows_the_line() -> None:
    """Twelve gaps of three and fourteen of two, all of a kind together, would leave the line by more than two stitches."""
    made = phrase_schedules([taper(26, 65)], [-1])
    assert made is not None
    assert any(len(p.gaps) == 2 for p in made[0])


def test_a_long_slope_has_few_phrases_of_several_gaps() -> None:
    """A hundred and ten moves in 249 rows, and others beside them, keep to no four phrases of one gap or two."""
    tapers = [taper(110, 249), taper(126, 287), taper(143, 325)]
    made = phrase_schedules(tapers, [1, 1, 1])
    assert made is not None
    (lengths,) = {tuple(min(len(p.gaps), LONG) for p in phrases if p.times) for phrases in made}
    assert lengths in LONG_STRUCTURES
    for wanted, phrases in zip(tapers, made, strict=True):
        used, least = rows_of(phrases), least_deviation(wanted)
        assert least is not None
        assert len(used) == wanted.moves
        assert deviation(wanted, used) <= least + ALLOWED_BEYOND + 1e-6
        long = [p.gaps for p in phrases if len(p.gaps) > 1]
        assert all(LONG <= len(gaps) <= LONGEST_MOTIF for gaps in long)
        assert all(len({*gaps[:-1]}) == 1 and abs(gaps[-1] - gaps[0]) in (1, 2) for gaps in long)


def test_what_keeps_to_plain_phrases_has_no_others() -> None:
    made = phrase_schedules([taper(26, 65), taper(30, 70)], [-1, -1])
    assert made is not None
    assert {tuple(len(p.gaps) for p in phrases) for phrases in made} <= set(STRUCTURES)


def test_moves_that_do_not_fit_are_refused() -> None:
    assert phrase_schedules([taper(5, 20), taper(5, 5)], [-1, -1]) is None


PHRASES = st.lists(
    st.tuples(st.lists(st.tuples(st.integers(0, 4), st.integers(-3, 3)), min_size=1, max_size=3), st.integers(0, 4)), max_size=4
)


@given(PHRASES, st.integers(0, 5), st.integers(-1, 60))
def test_what_is_moved_up_to_a_row_is_the_sum_of_the_moves_till_then(
    drawn: list[tuple[list[tuple[int, int]], int]], begin: int, to: int
) -> None:
    made = tuple(ShapingPhrase(tuple(g for g, _ in motif), tuple(by for _, by in motif), times) for motif, times in drawn)
    run = SizedRun("side", begin, 99, made, ShapingWay("simple"), Origin(Span("", 0, 0)))
    assert run.moved(to) == sum(by for row, by in run.changes() if row <= to)
