"""Where the first and the last move of a run are made that begins or ends with one, and steps of several sizes."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright.counted.model import SizedRun
from walewright.design.model import EdgeRun, Origin, Rate, ShapingWay
from walewright.report.model import Span
from walewright.solve.edges.curves import pinned
from walewright.solve.schedule.schedule import ALLOWED_BEYOND, Taper, best_schedule, deviation
from walewright.solve.schedule.shaping import edge_runs
from walewright.solve.schedule.spans import GAP, LEFT, PAIR, RIGHT
from walewright.solve.schedule.spans import ShapingSpan as Counted
from walewright.solve.schedule.structure import phrase_schedules
from walewright.solve.schedule.turned import turned_runs

HERE = Origin("piece front / edge to top", Span("front.wale", 0, 1))


def taper(moves: int, rows: int, gap: int, first: bool, last: bool) -> Taper:
    slots = tuple(range(1, rows))
    line = pinned(moves, (1 if first else 0, rows - 1 if last else rows), first, last)
    return Taper(moves, rows, tuple(line(i - 0.5) for i in range(1, rows + 1)), slots, gap, first=first, last=last)


SMALL = st.builds(
    lambda moves, rows, gap, ends: taper(moves, rows, gap, *ends),
    st.integers(1, 4),
    st.integers(2, 13),
    st.integers(1, 3),
    st.sampled_from(((True, False), (False, True), (True, True))),
)


def keeps_to(wanted: Taper, used: tuple[int, ...]) -> bool:
    if wanted.first and not (wanted.last and wanted.moves == 1) and used[0] != wanted.slots[0]:
        return False
    return not wanted.last or used[-1] == wanted.slots[-1]


@settings(max_examples=draws(200), deadline=None)
@given(SMALL)
def test_the_best_schedule_with_its_ends_pinned_is_that_of_exhaustive_search(wanted: Taper) -> None:
    ways = [u for u in combinations(wanted.slots, wanted.moves) if all(b - a >= wanted.least_gap for a, b in pairwise(u))]
    all_ways = min((deviation(wanted, u) for u in ways if keeps_to(wanted, u)), default=None)
    found = best_schedule(wanted)
    assert (found is None) == (all_ways is None)
    if found is not None and all_ways is not None:
        assert keeps_to(wanted, found[1])
        assert found[0] == pytest.approx(all_ways)
        phrases = phrase_schedules([wanted], [1])
        assert phrases is not None
        (made,) = phrases
        used = [row for row, _ in SizedRun("", 0, wanted.rows, made, ShapingWay("simple"), HERE).changes()]
        assert keeps_to(wanted, tuple(used))
        assert deviation(wanted, used) <= all_ways + ALLOWED_BEYOND + 1e-9


@pytest.mark.parametrize(("first", "last", "rows"), [(True, False, 41), (False, True, 41), (True, True, 38)])
def test_moves_are_as_far_apart_as_each_other_where_the_rows_allow_it(first: bool, last: bool, rows: int) -> None:
    """A whole gap at an end that is not pinned, where the other one is."""
    line = taper(10, rows, 1, first, last)
    phrases = phrase_schedules([line], [1])
    assert phrases is not None
    used = [row for row, _ in SizedRun("", 0, rows, phrases[0], ShapingWay("simple"), HERE).changes()]
    assert {b - a for a, b in pairwise(used)} == {4}
    assert (used[0], rows - used[-1]) == (1 if first else 4, 1 if last else 4)


def run(
    path: str, spans: list[Counted], way: ShapingWay, first: bool = False, last: bool = False, rate: Rate | None = None
) -> EdgeRun:
    change = tuple(float(span.change) for span in spans)
    rates = (rate,) * len(spans) if rate is not None else ()
    steps = tuple(span.steps for span in spans) if path == "steps" else ()
    nothing = tuple(0.0 for _ in spans)
    return EdgeRun("", "top", path, change, nothing, steps, way, HERE, None, rates, begins_moving=first, ends_moving=last)


def last_row(whose: str, rows: int, at_carriage: bool) -> int:
    """By hand: the row below the last, or, at the carriage, the last but one where both ends need it or it is at the right."""
    return rows - (2 if at_carriage and whose in (PAIR, RIGHT) else 1)


def first_row(whose: str, at_carriage: bool) -> int:
    return 2 if at_carriage and whose in (PAIR, RIGHT) else 1


@settings(max_examples=draws(200), deadline=None)
@given(
    st.sampled_from([PAIR, LEFT, RIGHT, GAP]),
    st.sampled_from(["slope", "steps", "rate"]),
    st.booleans(),
    st.booleans(),
    st.integers(2, 9),
    st.integers(20, 40),
    st.booleans(),
    st.booleans(),
)
def test_an_edge_begins_and_ends_where_hands_can_move_it(
    whose: str, path: str, outwards: bool, fashioned: bool, moves: int, pairs: int, first: bool, turned: bool
) -> None:
    rows, each = 2 * pairs, 3 if path == "steps" else 1
    way = ShapingWay("fashioned", 2) if fashioned else ShapingWay("simple")
    at_carriage = path == "steps" or (outwards and not fashioned)
    rate = None
    if path == "rate":
        every = 4 if at_carriage else 5
        last = 0 if whose == GAP and at_carriage else 2 if at_carriage else 1
        rate = Rate(1, every, 2 if at_carriage else 1, last, at_carriage, pinned=True)
        moves = rate.moves(rows)
    change = (1 if outwards else -1) * moves * each
    span = Counted(10, 10 + rows, change, 0, moves if path == "steps" else 0)
    made = (turned_runs if turned and whose != GAP else edge_runs)(run(path, [span], way, first, not first, rate), whose, [span])
    assert made is not None
    at = [row - 10 for row, _ in made[0].changes()]
    assert sum(by for _, by in made[0].changes()) == change
    assert at[0 if first else -1] == (first_row(whose, at_carriage) if first else last_row(whose, rows, at_carriage))
    if rate is not None:
        assert {b - a for a, b in pairwise(at)} == {rate.rows}


GROUPS = st.lists(st.tuples(st.integers(1, 6), st.integers(0, 4)), min_size=1, max_size=4)


@settings(max_examples=draws(200), deadline=None)
@given(
    st.lists(GROUPS, min_size=1, max_size=3),
    st.sampled_from([PAIR, LEFT, RIGHT, GAP]),
    st.sampled_from([-1, 1]),
    st.integers(0, 30),
)
def test_steps_of_several_sizes_are_made_in_turn_and_in_even_rows(
    sizes: list[list[tuple[int, int]]], whose: str, sign: int, more: int
) -> None:
    longest = max(len(groups) for groups in sizes)
    spans = []
    for groups in sizes:
        own = [*groups, *[(1, 0)] * (longest - len(groups))]
        own[0] = (own[0][0], own[0][1] + 1)
        times = sum(n for _, n in own)
        spans.append(Counted(10, 10 + 2 * times + 4 + 2 * more, sign * sum(by * n for by, n in own), 0, times, in_turn=tuple(own)))
    made = edge_runs(run("steps", spans, ShapingWay("simple")), whose, spans)
    assert made is not None
    # Every size has every phrase, so that one text can have them all.
    assert len({len(sized.phrases) for sized in made}) == 1
    for sized, span in zip(made, spans, strict=True):
        assert [by for _, by in sized.changes()] == [sign * by for by, n in span.in_turn for _ in range(n)]
        at = [row for row, _ in sized.changes()]
        gaps = [b - a for a, b in pairwise([10, *at])]
        assert at[-1] < span.to_row
        assert not gaps[1:] or max(gaps[1:]) - min(gaps[1:]) <= max(6, span.rows / len(gaps))
