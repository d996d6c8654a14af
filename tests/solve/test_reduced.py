"""The smaller programme has the same best numbers, and every number of the larger one."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright.report.said import said
from walewright.solve.algebra.highs import solve_programme
from walewright.solve.algebra.programme import Kind, Linear, Programme, Rule, Variable, Wish, amount
from walewright.solve.algebra.reduced import reduced

COUNT, MOST = 4, 3

TERMS = st.dictionaries(st.integers(0, COUNT - 1), st.sampled_from([-2, -1, 1, 2]), min_size=1, max_size=3).map(
    lambda found: tuple(found.items())
)
LINES = st.builds(
    lambda terms, low, wide: Linear(terms, None if low is None else low, None if wide is None else (low or 0) + wide),
    TERMS,
    st.none() | st.integers(-4, 4),
    st.none() | st.integers(0, 3),
)
PAIRS = st.permutations(range(COUNT)).map(lambda order: Linear(((order[0], 1), (order[1], -1)), 0, 0))
WEIGHTS = st.sampled_from([0.5, 1.0])
WISHES = st.builds(
    Wish,
    TERMS,
    st.integers(-3, 6).map(float),
    st.sampled_from([0.5, 1.0]),
    st.sampled_from([0.0, 2.0]),
    st.sampled_from([0.0, 1.0]),
)


def cost(programme: Programme, values: dict[int, int]) -> float | None:
    """What the values cost by the words of `Wish`, None where they break a line."""
    if any(True for _ in programme.broken(values)):
        return None
    offs = [(abs(amount(wish.terms, values) - wish.wanted), wish) for wish in programme.wishes]
    wished = sum(wish.weight * off + wish.beyond * max(0.0, off - wish.free) for off, wish in offs)
    return wished + sum(each * values[v] for v, each in programme.nudges)


@settings(max_examples=draws(60), deadline=None)
@given(st.lists(LINES | PAIRS, max_size=5), st.lists(WISHES, min_size=1, max_size=5))
def test_the_best_of_the_smaller_programme_is_the_best_of_all(lines: list[Linear], wishes: list[Wish]) -> None:
    bounds = [Linear(((v, 1),), 0, MOST) for v in range(COUNT)]
    rule = Rule(said("some"), Kind.MACHINE, (), (), tuple((0, line) for line in (*lines, *bounds)))
    nudges = tuple((v, 0.01 * (v + 1)) for v in range(COUNT))
    programme = Programme(tuple(Variable("n", "p", 0) for _ in range(COUNT)), (rule,), tuple(wishes), nudges)
    answer = solve_programme(programme)
    every = [{v: number // (MOST + 1) ** v % (MOST + 1) for v in range(COUNT)} for number in range((MOST + 1) ** COUNT)]
    costs = [found for values in every if (found := cost(programme, values)) is not None]
    assert (answer.values is None) == (not costs)
    if answer.values is not None:
        found = cost(programme, answer.values)
        assert found is not None
        assert abs(found - min(costs)) < 1e-6


def test_what_compares_numbers_that_have_to_be_equal_is_left_out() -> None:
    """Three sizes alike, each compared with each: one number, and one wish for it three times over."""
    alike = tuple((-1, Linear(((v + 1, 1), (v, -1)), *ends)) for v in (0, 1) for ends in ((0, None), (None, 0)))
    rule = Rule(said("some"), Kind.GRADING, (), (), alike)
    pairs = tuple(Wish(((a, 1), (b, -1)), 0.0, 1.5) for a, b in ((0, 1), (0, 2), (1, 2)))
    wanted = tuple(Wish(((v, 2),), 7.0, 1.0) for v in range(3))
    smaller = reduced(Programme(tuple(Variable("n", "p", i) for i in range(3)), (rule,), (*pairs, *wanted)))
    assert smaller.leader == {0: 0, 1: 0, 2: 0}
    assert smaller.wishes == (Wish(((0, 2),), 7.0, 3.0),)
    assert [line.terms for line in smaller.lines] == [()]


def test_a_number_that_only_a_wish_speaks_of_is_found_too() -> None:
    programme = Programme((Variable("n", "p", 0), Variable("m", "p", 0)), (), (Wish(((1, 1),), 5.0, 1.0),))
    answer = solve_programme(programme)
    assert answer.values == {1: 5}
