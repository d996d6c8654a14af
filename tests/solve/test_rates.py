"""Edges that move at a rate: one gap between all moves, at any rate, in any way, on any edge and in its mirror image."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright.design.model import EdgeRun, Origin, Rate, ShapingWay
from walewright.report.model import Span
from walewright.solve.schedule.shaping import edge_runs
from walewright.solve.schedule.spans import GAP, LEFT, PAIR, RIGHT
from walewright.solve.schedule.spans import ShapingSpan as Counted
from walewright.solve.schedule.turned import turned_runs

HERE = Origin("piece front / edge to top", Span("front.wale", 0, 1))


def counted(
    rate: Rate, rows: int, sign: int, cast_off: int = 0, begin: int = 10, parted: tuple[tuple[int, int], ...] = ()
) -> Counted:
    return Counted(begin, begin + rows, sign * (cast_off + rate.stitches * rate.moves(rows)), cast_off, 0, parted)


def moves(rate: Rate, whose: str, span: Counted, turned: bool = False) -> list[tuple[int, int]]:
    change = (float(span.change),)
    run = EdgeRun("", "top", "rate", change, (float(span.cast_off),), (), ShapingWay("simple"), HERE, None, (rate,))
    made = (turned_runs if turned else edge_runs)(run, whose, [span])
    assert made is not None
    return [(row - span.from_row, by) for row, by in made[0].changes()]


ANY = st.builds(
    lambda stitches, rows, carriage, cast, gap: Rate(
        stitches,
        2 * rows if carriage else rows,
        (4 if cast else 2) if carriage else 2 if cast else 1,
        (0 if gap else 2) if carriage else 1,
        carriage,
    ),
    st.integers(1, 4),
    st.integers(1, 9),
    st.booleans(),
    st.booleans(),
    st.just(False),
)


@settings(max_examples=draws(300), deadline=None)
@given(ANY, st.integers(1, 60), st.sampled_from([PAIR, LEFT, RIGHT]), st.sampled_from([-1, 1]))
def test_all_moves_are_one_gap_apart_and_as_many_as_there_are_gaps(rate: Rate, pairs: int, whose: str, sign: int) -> None:
    rows = 2 * pairs
    if rate.moves(rows) == 0:
        return
    late = rate.first == (4 if rate.at_carriage else 2)
    cast = 3 if late and sign < 0 else 0
    made = moves(rate, whose, counted(rate, rows, sign, cast))
    made = made[1:] if cast else made
    assert {by for _, by in made} == {sign * rate.stitches}
    assert {after - before for (before, _), (after, _) in pairwise(made)} <= {rate.rows}
    # As many as whole gaps; where these are short, one less, and two after what was cast off.
    fewer = (2 if late else 1) if rate.rows < rate.first + rate.last else 0
    assert rows // rate.rows - fewer <= len(made) <= rows // rate.rows
    assert 0 < made[0][0] <= made[-1][0] < rows
    if rate.at_carriage:
        assert {row % 2 for row, _ in made} == {1 if whose == LEFT else 0}


@settings(max_examples=draws(100), deadline=None)
@given(ANY, st.integers(8, 60), st.sampled_from([LEFT, RIGHT]), st.sampled_from([-1, 1]))
def test_a_mirror_image_moves_in_the_same_rows_or_one_apart(rate: Rate, pairs: int, whose: str, sign: int) -> None:
    span = counted(rate, 2 * pairs, sign)
    if rate.moves(span.rows) == 0:
        return
    model = moves(rate, LEFT if whose == RIGHT else RIGHT, span)
    image = moves(rate, whose, span, turned=True)
    assert image == moves(rate, whose, span)
    apart = {b - a for (a, _), (b, _) in zip(model, image, strict=True)}
    assert apart == ({0} if not rate.at_carriage else {1} if whose == RIGHT else {-1})


@pytest.mark.parametrize(("rows", "first"), [(44, 4), (48, 4), (40, 4), (41 + 1, 4), (46, 4)])
def test_where_the_first_gap_is_whole_and_where_it_is_half(rows: int, first: int) -> None:
    rate = Rate(1, 4, 1, 1, False)
    made = moves(rate, PAIR, counted(rate, rows, -1))
    assert made[0][0] == (first if rows % 4 else 2)
    assert len(made) == rows // 4


def test_the_edge_of_a_gap_has_the_carriage_at_odd_rows() -> None:
    rate = Rate(2, 2, 2, 0, True)
    assert moves(rate, GAP, counted(rate, 12, -1)) == [(row, -2) for row in (1, 3, 5, 7, 9, 11)]


@pytest.mark.parametrize("parting", range(2, 48, 2))
def test_a_pair_moves_where_the_piece_does_not_part(parting: int) -> None:
    rate = Rate(1, 6, 2, 2, True)
    made = moves(rate, PAIR, counted(rate, 48, 1, parted=((10 + parting, 90),)))
    assert parting not in [row for row, _ in made]
    assert {b - a for (a, _), (b, _) in pairwise(made)} == {6}
    assert len(made) == 8


def test_a_left_edge_moves_a_row_later_once_it_is_a_part_s() -> None:
    rate = Rate(1, 4, 2, 2, True)
    made = [row for row, _ in moves(rate, LEFT, counted(rate, 42, 1, parted=((30, 90),)))]
    assert made == [3, 7, 11, 15, 20, 24, 28, 32, 36, 40]
    assert [row for row, _ in moves(rate, RIGHT, counted(rate, 42, 1, parted=((30, 90),)))] == list(range(4, 41, 4))


def test_sizes_begin_alike() -> None:
    """A whole gap first only where every size has a row left behind its last move."""
    rate = Rate(1, 4, 1, 1, False)
    spans = [counted(rate, rows, -1) for rows in (42, 44)]
    run = EdgeRun("", "top", "rate", (-10.0, -11.0), (0.0, 0.0), (), ShapingWay("simple"), HERE, None, (rate, rate))
    made = edge_runs(run, PAIR, spans)
    assert made is not None
    assert [[p.gaps for p in sized.phrases] for sized in made] == [[(2,), (4,)]] * 2
