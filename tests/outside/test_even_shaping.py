"""Published worked examples of even shaping, and schedules beside straight lines drawn by an independent library."""

from __future__ import annotations

from collections import Counter
from itertools import pairwise

import pytest
from PIL import Image, ImageDraw

from tests.outside.worked import PER_INCH, garment, moves, proven
from walewright.counted.model import ShapingPhrase
from walewright.solve.edges.curves import straight, targets
from walewright.solve.schedule.schedule import ALLOWED_BEYOND, Taper, deviation, least_deviation
from walewright.solve.schedule.structure import phrase_schedules


def rows_of(phrases: tuple[ShapingPhrase, ...]) -> list[int]:
    found, row = [], 0
    for phrase in phrases:
        for _ in range(phrase.times):
            for gap in phrase.gaps:
                row += gap
                found.append(row)
    return found


def slope(moves: int, rows: int) -> Taper:
    """A slope as every piece has it: the new width is knitted before the run ends."""
    return Taper(moves, rows, targets(straight(moves, rows), rows), tuple(range(1, rows)))


def closing(moves: int, rows: int) -> Taper:
    """Whole intervals with the last move on the last row: each move half a stitch later than on the line that halves the first
    interval, and no slot in the last interval but its end."""
    line = tuple(f - 0.5 for f in targets(straight(moves, rows), rows))
    return Taper(moves, rows, line, (*range(1, rows - rows // moves + 1), rows))


def made(taper: Taper) -> tuple[ShapingPhrase, ...]:
    found = phrase_schedules([taper], [1])
    assert found is not None
    return found[0]


SPREADS = [
    # 26 shapings over 64 rows. Knitter-designer blog on drafting machine-knitted sweaters, 2007,
    # http://designyourownsweater.blogspot.com/2007/01/set-in-sleeves.html
    (26, 64, {2: 14, 3: 12}),
    # 24 to 20 stitches on one edge over 20 rows, followed by straight knitting. Knitters' mailing list archive, post on
    # shaping formulas, September 1997 (host stephthornton.co.uk)
    (4, 20, {5: 4}),
    # 38 to 60 stitches over 108 rows. Designer blog, 2014,
    # http://kristentendyke.blogspot.com/2014/02/how-to-increase-evenly-along-set-number.html
    (11, 108, {9: 2, 10: 9}),
    # 43 to 93 stitches over 133 rows. Hand-knitting designer blog, 2015,
    # https://heronponddesigns.wordpress.com/2015/10/26/sweater-math/
    (25, 133, {5: 17, 6: 8}),
    # 50 to 72 stitches over 84 rows. Designer blog, 2016, https://knittingunplugged.com/2016/05/23/
    # how-to-figure-out-decrease-and-increase-placement-when-adjusting-sleeve-length-and-cap-shaping/
    (11, 84, {7: 4, 8: 7}),
    # 34 to 40 stitches over 48 rows: every 16th row 3 times. Knitter blog, baby sweater design,
    # http://slippedstitches.wordpress.com/category/baby-sweater-design/
    (3, 48, {16: 3}),
]


@pytest.mark.parametrize(("moves", "rows", "published"), SPREADS)
def test_the_gaps_of_a_published_spread(moves: int, rows: int, published: dict[int, int]) -> None:
    """Every gap as often as published. Where two kinds of gap together would leave the line, ours alternate."""
    used = rows_of(made(closing(moves, rows)))
    assert used[-1] == rows
    assert Counter(b - a for a, b in pairwise([0, *used])) == published


@pytest.mark.parametrize(("times", "rows", "published"), [*SPREADS, (36, 140, {3: 4, 4: 32})])
def test_a_source_that_ends_with_a_move_has_the_gaps_of_a_published_spread(
    times: int, rows: int, published: dict[int, int]
) -> None:
    """From the source to the bed: the last move lies in the last published row, and no more than a whole gap before the first. The
    last spread: textile teaching blog, shaping, 2013,
    https://apparel-analysis.blogspot.com/2013/06/needle-increasing-or-decreasing-for.html. Levels lie on even rows, so where the
    published rows are even too there is one more here, before the first move."""
    sleeve = garment(
        f"""
piece sleeve in plain
    levels cuff 0 cm, wide {rows + 2 - rows % 2} rows, top {rows + 22} rows
    start 40 stitches wide with e-wrap
    edges slope by {times} stitches at wide, fashioned 2 in, ending with a move
    end cast off
""",
        bed="standard",
    ).piece("sleeve")
    (grow, *_) = sleeve.left
    at = [row for row, _ in moves(grow)]
    assert at[-1] == sleeve.row("wide") - 1
    gaps = Counter(b - a for a, b in pairwise([0, *at]))
    if rows % 2:
        assert gaps == published
    else:
        # A row more than published goes to the gaps.
        assert at[-1] == rows + 1
        assert set(gaps) <= {*published, *(gap + 1 for gap in published)}


@pytest.mark.parametrize(("moves", "rows", "published"), SPREADS)
def test_an_ordinary_slope_follows_the_line_better_or_is_plainer_than_published(
    moves: int, rows: int, published: dict[int, int]
) -> None:
    """The published gaps, all of a kind together as printed, over the same rows and one in which the last width is knitted."""
    taper = slope(moves, rows + 1)
    printed, row = [], 0
    for gap, times in published.items():
        for _ in range(times):
            row += gap
            printed.append(row)
    ours = made(taper)
    least = least_deviation(taper)
    assert least is not None
    assert deviation(taper, rows_of(ours)) <= least + ALLOWED_BEYOND + 1e-9
    assert deviation(taper, rows_of(ours)) <= deviation(taper, printed) + 1e-9 or len(ours) < len(published)


def test_the_notation_of_rows_stitches_and_times() -> None:
    """Source: Japanese knitting studio, how to read charts, https://knittercocoon.com/how-to-read-the-patterns: every 8 rows 1
    stitch 5 times, then 7 rows even: 5 stitches over 47 rows. Levels lie on even rows here, so over 48."""
    outcome = proven(
        """
piece part in plain
    levels hem 0 cm, top 48 rows
    start 40 stitches wide with e-wrap
    edges slope to 30 stitches wide at top, fashioned 2 in
    end cast off
"""
    )
    said = " ".join(outcome.plain_text.split())
    assert "Knit 8 rows, decrease 1 st at both ends" in said
    assert "work this 5 times in all. 30 sts, RC 40" in said
    assert "Knit to RC 48. 30 sts" in said


def drawn(moves: int, rows: int) -> list[int]:
    """Counter values of the moves of a line that a drawing library draws, half a row to the pixel.

    The middle of row i is pixel 2i - 1; its height is how many moves are made before it. Pixels count from the bottom here."""
    image = Image.new("1", (2 * rows + 1, moves + 1))
    ImageDraw.Draw(image).line([(0, 0), (2 * rows, moves)], fill=1)
    pixels = image.load()
    assert pixels is not None
    heights = [max(y for y in range(moves + 1) if pixels[2 * i - 1, y]) for i in range(1, rows + 1)]
    found = []
    for row, (low, high) in enumerate(pairwise([0, *heights])):
        found += [row] * (high - low)
    return found


LINES = [(1, 9), (3, 17), (7, 40), (11, 108), (20, 56), (26, 64), (19, 44), (30, 61), (40, 90)]


@pytest.mark.parametrize(("moves", "rows"), LINES)
def test_the_best_schedule_is_no_worse_than_a_drawn_line(moves: int, rows: int) -> None:
    """Source: the integer line drawing of the imaging library Pillow (pixels nearest to the line)."""
    taper = slope(moves, rows)
    line = drawn(moves, rows)
    assert len(line) == moves
    least = least_deviation(taper)
    assert least is not None
    assert least <= deviation(taper, line) + 1e-9
    assert deviation(taper, line) <= 0.5 + 1e-9, "a drawn line is within half a pixel"
    assert deviation(taper, rows_of(made(taper))) <= deviation(taper, line) + ALLOWED_BEYOND + 1e-9


@pytest.mark.parametrize(("moves", "rows"), LINES)
def test_moves_are_where_the_line_is_drawn_or_near(moves: int, rows: int) -> None:
    """Each move within the rows that one move takes, of where the drawing library makes it."""
    for ours, theirs in zip(rows_of(made(slope(moves, rows))), drawn(moves, rows), strict=True):
        assert abs(ours - theirs) <= rows / moves + 1


def test_stitches_are_of_one_parity_with_the_piece() -> None:
    """Source: designer blog, 2014, http://kristentendyke.blogspot.com/2014/02/how-to-increase-evenly-along-set-number.html: 7.75 in
    and 12 in at 5 stitches to the inch: 38 (not 39) and 60 stitches, 11 increases on each side, over 15.5 in at 7 rows to the
    inch."""
    sleeve = garment(
        """
piece sleeve in plain
    levels cuff 0 cm, wide 15.5 in, top 17.5 in
    start 7.75 in wide with e-wrap
    edges slope to 12 in wide at wide, fashioned 2 in
    end cast off
""",
        5 * PER_INCH,
        7 * PER_INCH,
        "standard",
    ).piece("sleeve")
    assert sleeve.start == 38
    assert sleeve.row("wide") == 108
    (grow, *_) = sleeve.left
    assert [by for _, by in moves(grow)] == [1] * 11
    assert sleeve.start + 2 * 11 == 60
    # The published gaps, with a row of the last width kept: every 9th row and every 10th became every 9th.
    assert {b - a for (a, _), (b, _) in pairwise(moves(grow))} <= {9, 10}
