"""Published worked examples of even shaping, and schedules against straight lines drawn by an independent library.

A published taper spreads moves over rows so that all gaps differ by one row at most; those that end with a move on the last row
are asked for as such by giving the schedule a row more and only that row for the last move.
"""

from __future__ import annotations

from collections import Counter
from itertools import pairwise

import pytest
from PIL import Image, ImageDraw

from walewright.solve.curves import straight, targets
from walewright.solve.model import Phrase
from walewright.solve.schedule import Taper, best_schedule, deviation, least_deviation
from walewright.solve.structure import phrase_schedules


def spread(moves: int, rows: int, every: int = 1) -> list[int]:
    """The best rows for so many moves, the last of them on the last row; moves at every `every`th row only."""
    line = targets(straight(moves, rows), rows)
    before = tuple(range(every, rows, every))
    found = best_schedule(Taper(moves - 1, rows, line, before))
    assert found is not None
    return [*found[1], rows]


def gaps(rows: list[int]) -> Counter[int]:
    return Counter(b - a for a, b in pairwise([0, *rows]))


def ordinary(moves: int, rows: int) -> tuple[Phrase, ...]:
    """The schedule that a slope gets: the new width is knitted before the run ends."""
    taper = Taper(moves, rows, targets(straight(moves, rows), rows), tuple(range(1, rows)))
    made = phrase_schedules([taper], [-1])
    assert made is not None
    return made[0]


def rows_of(phrases: tuple[Phrase, ...]) -> list[int]:
    found, row = [], 0
    for phrase in phrases:
        for _ in range(phrase.times):
            for gap in phrase.gaps:
                row += gap
                found.append(row)
    return found


TAPERS = [
    # Knitter-designer blog on drafting machine-knitted sweaters, 2007,
    # http://designyourownsweater.blogspot.com/2007/01/set-in-sleeves.html
    (26, 64, {2: 14, 3: 12}),
    # Knitters' mailing list archive, post on shaping formulas, September 1997 (host stephthornton.co.uk)
    (4, 20, {5: 4}),
    # Designer blog, 2014, http://kristentendyke.blogspot.com/2014/02/how-to-increase-evenly-along-set-number.html
    (11, 108, {9: 2, 10: 9}),
    # Hand-knitting designer blog, 2015, https://heronponddesigns.wordpress.com/2015/10/26/sweater-math/
    (25, 133, {5: 17, 6: 8}),
    # Designer blog, 2016,
    # https://knittingunplugged.com/2016/05/23/how-to-figure-out-decrease-and-increase-placement-when-adjusting-sleeve-length-and-cap-shaping/
    (11, 84, {7: 4, 8: 7}),
]


@pytest.mark.parametrize(("moves", "rows", "published"), TAPERS)
def test_moves_published_as_an_even_spread(moves: int, rows: int, published: dict[int, int]) -> None:
    """Any even spread has the published gaps, each as often; their order is ours, since it is what keeps to the line."""
    made = spread(moves, rows)
    assert len(made) == moves
    line = Taper(moves, rows, targets(straight(moves, rows), rows), tuple(range(1, rows + 1)))
    in_order = [row for row in _running(published)]
    assert in_order[-1] == rows
    assert deviation(line, made) <= deviation(line, in_order) + 1e-9
    most_even = min(
        (sum((g - rows / moves) ** 2 * n for g, n in found.items()), found) for found in [published, dict(gaps(made))]
    )
    assert most_even[1] == published


@pytest.mark.parametrize(("moves", "rows", "published"), TAPERS)
def test_the_rule_of_the_published_gaps_is_the_only_one_of_two_neighbouring_gaps(
    moves: int, rows: int, published: dict[int, int]
) -> None:
    """q = rows div moves, r = rows mod moves: moves - r gaps of q and r gaps of q + 1, as our gaps are when they are spread by
    the line itself, drawn to the last row."""
    drawn = [-(-rows * move // moves) for move in range(1, moves + 1)]
    assert gaps(drawn) == Counter(published)


def _running(published: dict[int, int]) -> list[int]:
    rows, row = [], 0
    for gap, times in published.items():
        for _ in range(times):
            row += gap
            rows.append(row)
    return rows
