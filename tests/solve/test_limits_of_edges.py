"""Edges at their limits: how many moves go into how many rows, and on which rows they come; against all ways to make them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import combinations, pairwise
from math import sqrt

import pytest

from tests.solve.tiny import Best, Number, Tiny, agrees, least, moves, off, tiny, width, width_at

BED = """\
piece back in plain
    levels hem 0 cm, top {high:g} cm
    start {start:g} cm wide with e-wrap
    {edges}
    end cast off
"""

ABOVE = """\
piece back in plain
    levels hem 0 cm, low 8 cm, top {high:g} cm
    start {start:g} cm wide with e-wrap
    edges straight to low
    {edges}
    end cast off
"""


def straight(stitches: int, rows: int) -> list[float]:
    return [stitches * (row - 0.5) / rows for row in range(1, rows + 1)]


def curved(stitches: int, rows: int) -> list[float]:
    return [stitches * sqrt(1 - (1 - (row - 0.5) / rows) ** 2) for row in range(1, rows + 1)]


def astray(made: Sequence[tuple[int, int]], line: Sequence[float]) -> float:
    """The greatest |moved before a row - the line at the middle of that row|."""
    return max(abs(sum(by for at, by in made if at < row) - at_row) for row, at_row in enumerate(line, 1))


def keeps_to_the_line(made: list[tuple[int, int]], slots: Sequence[int], apart: int, rows: int) -> None:
    """Moves of as many stitches each, at `slots`, so many rows `apart`: half a stitch worse than the best of all ways at most."""
    (by,) = {abs(by) for _, by in made}
    line = straight(by * len(made), rows)
    ways = [[(at, by) for at in w] for w in combinations(slots, len(made)) if all(b - a >= apart for a, b in pairwise(w))]
    done = [(at, by) for at, _ in made]
    assert done in ways
    assert astray(done, line) <= min(astray(way, line) for way in ways) + 0.5 + 1e-6


@pytest.mark.parametrize("high", [5, 6, 7, 8, 10, 12, 16])
@pytest.mark.parametrize(
    ("edges", "to", "need", "first", "step"),
    [
        # A simple increase once in two rows, at even rows; the last new width is knitted.
        ("slope to 16 cm wide at top", 16, lambda n: 2 * n + 2, 2, 2),
        # A decrease once a row, and a row after the last one.
        ("slope to 2 cm wide at top", 2, lambda n: n + 1, 1, 1),
        # A fashioned increase is filled from the stitch below the last row's: not after the first row of all.
        ("slope to 16 cm wide at top, fashioned 1 in", 16, lambda n: n + 2, 2, 1),
    ],
)
def test_a_slope_has_the_rows_that_its_moves_need(
    high: int, edges: str, to: int, need: Callable[[int], int], first: int, step: int
) -> None:
    made = tiny(BED.format(start=9, high=high, edges="edges " + edges))
    wanted = {"start": width(9), "wide": width(to), "top": Number(high)}
    least_width = 4 if "fashioned" in edges else 2

    def possible(c: dict[str, int]) -> bool:
        n = abs(c["wide"] - c["start"]) // 2
        way = (c["wide"] - c["start"]) * (to - 9) >= 0
        return way and c["top"] >= need(n) and min(c["wide"], c["start"]) >= least_width

    slopes(made, least(wanted, possible), "edges " + edges, lambda rows: range(first, rows - step + 1, step), step)


@pytest.mark.parametrize("high", range(12, 21, 2))
def test_a_fashioned_increase_above_the_start_has_a_row_for_each_and_one_more(high: int) -> None:
    made = tiny(ABOVE.format(start=9, high=high, edges="edges slope to 18 cm wide at top, fashioned 1 in"))
    wanted = {"start": width(9), "wide": width(18), "low": Number(8), "top": Number(high)}
    best = least(
        wanted,
        lambda c: c["top"] - c["low"] >= max(2, (c["wide"] - c["start"]) // 2 + 1) and c["start"] >= 4,
        lambda c: off(c["top"] - c["low"], high - 8) if abs(c["top"] - c["low"] - high + 8) <= 3 else 1e6,
    )
    slopes(made, best, "edges slope to 18 cm wide at top, fashioned 1 in", lambda rows: range(1, rows), 1)


def slopes(made: Tiny, best: Best | None, line: str, slots: Callable[[int], range], apart: int) -> None:
    """Counted as is best and on rows that are near the line; or refused, the edge being blamed."""
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == line
        return
    piece = made.piece
    counted = {"start": piece.start, "wide": width_at(piece, "top"), **{k: r for k, r in piece.levels if k != "hem"}}
    agrees(made, best, counted)
    assert piece.left == piece.right
    run = piece.left[-1]
    done = [(at - run.from_row, by) for at, by in run.changes()]
    keeps_to_the_line(done, slots(run.to_row - run.from_row), apart, run.to_row - run.from_row)


@pytest.mark.parametrize("high", [5.5, 6, 8, 10])
@pytest.mark.parametrize("shaped", ["slope", "curve"])
def test_two_at_once_take_half_the_rows(high: int, shaped: str) -> None:
    """Sixteen stitches a side to four: twelve, by six moves, in seven rows; the last may be of one stitch."""
    edges = f"edges {shaped} to 9 cm wide at top, fashioned 2 in, two at once"
    made = tiny(BED.format(start=31, high=high, edges=edges))
    best = least(
        {"start": width(31), "wide": width(9), "top": Number(high)},
        lambda c: c["top"] >= -(-((c["start"] - c["wide"]) // 2) // 2) + 1,
    )
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == edges
        return
    agrees(made, best, {"start": made.piece.start, "wide": width_at(made.piece, "top"), "top": made.piece.rows})
    by = [-b for _, b in moves(made.piece.left)]
    assert by[:-1] == [2] * (len(by) - 1)
    assert by[-1] == 2 - (made.piece.start - width_at(made.piece, "top")) // 2 % 2


@pytest.mark.parametrize(
    ("high", "each", "times"), [(4, 2.4, 3), (6, 2.4, 3), (8, 2.4, 3), (10, 2.4, 3), (12, 1.5, 5), (13, 1.5, 5)]
)
def test_equal_steps_are_made_at_every_second_row(high: int, each: float, times: int) -> None:
    """Three steps need eight rows; each is as large as the others, so the width goes by six, and may be as many stitches off as
    there are steps and two more."""
    edges = f"edges steps {each:g} cm {times} times to top"
    made = tiny(BED.format(start=8, high=high, edges=edges))
    best = least(
        {"start": width(8), "wide": Number(8 + 2 * times * each, within=2.0 + times), "top": Number(high)},
        lambda c: c["top"] >= 2 * (times + 1) and (c["wide"] - c["start"]) % (2 * times) == 0 and c["wide"] > c["start"],
    )
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == edges
        return
    agrees(made, best, {"start": made.piece.start, "wide": width_at(made.piece, "top"), "top": made.piece.rows})
    done = moves(made.piece.left)
    assert len(done) == times
    keeps_to_the_line(done, range(2, made.piece.rows - 1, 2), 2, made.piece.rows)


@pytest.mark.parametrize("high", [11.9, 12, 14, 16])
@pytest.mark.parametrize("shaped", ["slope", "curve"])
def test_what_follows_a_cast_off_waits_for_both_ends(high: int, shaped: str) -> None:
    """Two cast off at once and five or so after it: those wait for two rows, and a row is knitted after the last."""
    edges = f"edges cast off 2 cm then {shaped} to 7.2 cm wide at top"
    made = tiny(ABOVE.format(start=21, high=high, edges=edges))
    wanted = {"start": width(21), "wide": width(7.2), "cast": Number(2, step=1, within=1, share=0.3)}

    def possible(c: dict[str, int]) -> bool:
        single = (c["start"] - c["wide"]) // 2 - c["cast"]
        rows = c["top"] - c["low"]
        return single >= 0 and rows >= (single + 2 if shaped == "slope" else 4)

    best = least(
        {**wanted, "low": Number(8), "top": Number(high)},
        possible,
        lambda c: off(c["top"] - c["low"], high - 8) if abs(c["top"] - c["low"] - high + 8) <= 3 else 1e6,
    )
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == edges
        return
    piece = made.piece
    done = moves(piece.left)
    assert done[0][0] == piece.row("low")
    counted = {"start": piece.start, "wide": width_at(piece, "top"), "cast": -done[0][1]}
    agrees(made, best, {**counted, "low": piece.row("low"), "top": piece.rows})
    rows = piece.rows - piece.row("low")
    after = [(at - piece.row("low"), -by) for at, by in done[1:]]
    assert all(2 <= at < rows for at, _ in after)
    if shaped == "slope":
        assert {by for _, by in after} == {1}
    else:
        assert all(at % 2 == 0 and at <= rows - 2 for at, by in after)


@pytest.mark.parametrize("rows", [4, 6, 8])
def test_a_curve_is_as_near_as_moves_in_every_second_row_can_be(rows: int) -> None:
    made = tiny(BED.format(start=20, high=rows, edges="edges curve to 6 cm wide at top"))
    done = [(at, -by) for at, by in moves(made.piece.left)]
    slots = range(2, rows - 1, 2)
    ways = [
        [(at, by) for at, by in zip(slots, (b - a for a, b in pairwise((0, *cuts, 7))), strict=True) if by]
        for cuts in combinations(sorted([*range(8)] * (len(slots) - 1)), len(slots) - 1)
        if list(cuts) == sorted(cuts)
    ]
    line = curved(7, rows)
    assert sum(by for _, by in done) == 7
    assert {at for at, _ in done} <= set(slots)
    assert astray(done, line) <= min(astray(way, line) for way in ways) + 0.5 + 1e-6


# ----------------------------------------------------------------- one edge by itself


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("rows", [7, 8, 10, 12])
def test_an_edge_by_itself_grows_where_the_carriage_is(side: str, rows: int) -> None:
    """At odd rows on the left, at even rows on the right; a stitch off at the most, and as many rows as for a pair."""
    made = tiny(BED.format(start=10, high=rows, edges=f"{side} edge slope by 4.2 cm at top"))
    best = least(
        {"start": width(10), "out": Number(9.2, step=1, within=1), "top": Number(rows)},
        lambda c: c["top"] >= 2 * (c["out"] - c["start"] // 2) + 2 and c["out"] >= c["start"] // 2,
        lambda c: off(c["out"] + c["start"] // 2, 14.2),
    )
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == f"{side} edge slope by 4.2 cm at top"
        return
    piece = made.piece
    runs = piece.left if side == "left" else piece.right
    done = moves(runs)
    agrees(made, best, {"start": piece.start, "out": piece.start // 2 + sum(b for _, b in done), "top": piece.rows})
    begin = 1 if side == "left" else 2
    keeps_to_the_line(done, range(begin, piece.rows, 2), 2, piece.rows)


# ----------------------------------------------------------------- rates


@pytest.mark.parametrize("rows", [6, 8, 10, 14])
@pytest.mark.parametrize("every", [1, 2, 3, 4, 6])
def test_a_rate_moves_as_often_as_its_rows_have_whole_gaps(rows: int, every: int) -> None:
    """Of a decrease a row is knitted after the last one: where it moves in every row, it is one less."""
    text = "1 row" if every == 1 else f"{every} rows"
    made = tiny(BED.format(start=30, high=rows, edges=f"edges in 1 stitch every {text} to top"))
    times = rows // every - (1 if every == 1 else 0)
    done = moves(made.piece.left)
    assert len(done) == times
    assert {b - a for (a, _), (b, _) in pairwise(done)} <= {every}
    assert done[0][0] >= 1
    assert done[-1][0] < made.piece.rows
    if every * times < rows:
        assert done[0][0] == every


@pytest.mark.parametrize(("rows", "every", "times"), [(4, 2, 1), (6, 2, 2), (8, 2, 3), (4, 4, 1), (6, 4, 1), (8, 4, 2), (10, 6, 1)])
def test_a_rate_at_the_carriage_leaves_two_rows_for_both_ends(rows: int, every: int, times: int) -> None:
    made = tiny(BED.format(start=12, high=rows, edges=f"edges out 1 stitch every {every} rows to top"))
    done = moves(made.piece.left)
    assert len(done) == times
    assert {b - a for (a, _), (b, _) in pairwise(done)} <= {every}
    assert all(at % 2 == 0 and 2 <= at <= rows - 2 for at, _ in done)


def test_a_rate_that_never_moves_is_refused() -> None:
    made = tiny(BED.format(start=12, high=6, edges="edges in 1 stitch every 9 rows to top"))
    assert made.error.code == "rate-not-kept"
    assert made.line() == "edges in 1 stitch every 9 rows to top"
    assert len(moves(tiny(BED.format(start=12, high=7, edges="edges in 1 stitch every 8 rows to top")).piece.left)) == 1


# ----------------------------------------------------------------- all at once over the row


@pytest.mark.parametrize("to", [6.5, 7, 8, 9.5, 20, 24, 25.9])
def test_across_the_width_goes_between_half_and_double(to: float) -> None:
    line = f"across to {to:g} cm wide at low"
    made = tiny(ABOVE.format(start=13, high=20, edges=line))
    grows = 1 if to > 13 else -1
    best = least(
        {"start": width(13), "wide": width(to), "low": Number(8), "top": Number(20)},
        lambda c: c["start"] <= 2 * c["wide"] and c["wide"] <= 2 * c["start"] and (c["wide"] - c["start"]) * grows >= 0,
        lambda c: off(c["top"] - c["low"], 12),
    )
    assert best is not None
    piece = made.piece
    wide = piece.start + sum(by for run in (*piece.left, *piece.right) for _, by in run.changes())
    agrees(made, best, {"start": piece.start, "wide": wide, "low": piece.row("low"), "top": piece.rows})
    assert {row for row, _ in moves(piece.left)} <= {piece.row("low")}
