"""Published worked examples of slopes, wedges and steps, compiled from sources and read off the bed row by row."""

from __future__ import annotations

from collections import Counter
from itertools import pairwise

import pytest

from tests.outside.worked import PER_INCH, knitted, proven
from walewright.bed import KnitFabric

PIECE = """
piece part in plain{odd}
    levels hem 0 cm, {levels}
    start {start} stitches wide with e-wrap
{edges}
    end cast off
"""


def part(levels: str, start: int, *edges: str, stitches: float = 28, rows: float = 40) -> KnitFabric:
    """A piece with those edges, as the bed knitted it; an odd number of stitches has one at the centre."""
    odd = ", centre stitch" if start % 2 else ""
    lines = "\n".join(f"    {edge}" for edge in edges)
    return knitted(proven(PIECE.format(levels=levels, start=start, edges=lines, odd=odd), stitches, rows), "part")


def widths(fabric: KnitFabric) -> list[int]:
    """Needles from edge to edge at each row, from the first."""
    ends = [(fabric.outer_end(row, "left"), fabric.outer_end(row, "right")) for row in range(1, fabric.rows + 1)]
    return [right - left + 1 for left, right in ends if left is not None and right is not None]


def shaped(fabric: KnitFabric) -> list[tuple[int, int]]:
    """(rows knitted before it, stitches more or, negative, fewer) for each row that is wider or narrower than the last."""
    return [(row, b - a) for row, (a, b) in enumerate(pairwise(widths(fabric)), 1) if a != b]


def gaps(fabric: KnitFabric) -> Counter[int]:
    """How often so many rows lie between two shapings, those before the first among them."""
    return Counter(b - a for a, b in pairwise([0, *(row for row, _ in shaped(fabric))]))


def test_a_taper_with_a_plain_tail() -> None:
    """Source: knitters' mailing list archive, post on shaping formulas, September 1997 (host stephthornton.co.uk): 24 to 20
    stitches on one edge over 20 rows: every 4th row 4 times, then 4 rows plain."""
    fabric = part(
        "low 20 rows, top 40 rows", 24, "left edge slope by -4 stitches at low, fashioned 2 in", "right edge straight to top"
    )
    assert shaped(fabric) == [(4, -1), (8, -1), (12, -1), (16, -1)]


def test_a_skirt_in_the_shape_of_an_a() -> None:
    """Source: craft book excerpt, A-line shaping, https://www.knittingmagic.biz/teach-yourself-2/calculating-aline-shaping.html: 5
    stitches and 6 rows to the inch; a hem 6 in wider in two pieces, 3 in or 15 stitches, made 16: 106 for 90; 10 in added to 11
    in are 126 rows; 8 shapings on each edge: every 14th row 8 times, then 14 plain."""
    fabric = part(
        "top 21 in", 106, "edges slope to 90 stitches wide at top, fashioned 2 in", stitches=5 * PER_INCH, rows=6 * PER_INCH
    )
    assert fabric.rows == 126
    assert shaped(fabric) == [(14 * times, -2) for times in range(1, 9)]


@pytest.mark.parametrize(
    ("start", "end", "rows", "published"),
    [
        # 26 shapings over 64 rows. Source: knitter-designer blog on drafting machine-knitted sweaters, 2007,
        # http://designyourownsweater.blogspot.com/2007/01/set-in-sleeves.html
        (100, 48, 64, {2, 3}),
        # 38 to 60 stitches over 108 rows. Source: designer blog, 2014,
        # http://kristentendyke.blogspot.com/2014/02/how-to-increase-evenly-along-set-number.html
        (38, 60, 108, {9, 10}),
        # 43 to 93 stitches over 133 rows: 25 on each edge. Source: hand-knitting designer blog, 2015,
        # https://heronponddesigns.wordpress.com/2015/10/26/sweater-math/: every 5th and every 6th row. Ours, nearer to the straight
        # line, begins with three gaps of 4.
        (43, 93, 134, {4, 5, 6}),
        # 50 to 72 stitches over 84 rows. Source: designer blog, 2016, https://knittingunplugged.com/2016/05/23/
        # how-to-figure-out-decrease-and-increase-placement-when-adjusting-sleeve-length-and-cap-shaping/
        (50, 72, 84, {7, 8}),
    ],
)
def test_the_gaps_of_a_published_spread(start: int, end: int, rows: int, published: set[int]) -> None:
    """Knitted: as many shapings, and no gap that the source does not have. Ours leaves the last width some rows."""
    found = gaps(part(f"top {rows} rows", start, f"edges slope to {end} stitches wide at top, fashioned 2 in"))
    assert sum(found.values()) == abs(end - start) // 2
    assert set(found) <= published


def test_thirty_six_shapings_in_a_hundred_and_forty_rows() -> None:
    """Source: textile teaching blog, shaping, 2013, https://apparel-analysis.blogspot.com/2013/06/
    needle-increasing-or-decreasing-for.html: 36 shapings on each edge over 140 rows: every 3rd row 4 times and every 4th row 32
    times. Ours has the last width knitted by then, so one gap of 4 is 3."""
    found = gaps(part("top 140 rows", 112, "edges slope to 40 stitches wide at top, fashioned 2 in"))
    assert found == {3: 5, 4: 31}


def test_a_baby_s_sleeve_row_by_row() -> None:
    """Source: knitter blog, baby cardigan sleeves,
    https://tessknits.com/3880/provence-baby-cardigan-part-4-%e2%80%93-sleeves-math-knitting-up-stitches-tracking-progress: 34
    stitches and 8 rows; an increase at each edge and then every 4th row 10 times: 36, then 56 stitches, the last in row 49; 7.75 in
    at 8 rows to the inch are 62 rows. Levels lie on even rows here, so it may be a row later."""
    fabric = part(
        "first 8 rows, wide 52 rows, top 7.75 in",
        34,
        "edges straight to first",
        "edges out 1 stitch every 4 rows to wide, fashioned 2 in",
        rows=8 * PER_INCH,
    )
    assert fabric.rows == 62
    moves = shaped(fabric)
    assert [by for _, by in moves] == [2] * 11
    assert {b - a for (a, _), (b, _) in pairwise(moves)} == {4}
    assert widths(fabric)[moves[0][0]] == 36
    assert widths(fabric)[-1] == 56
    assert moves[-1][0] == pytest.approx(49, abs=1)


def test_an_odd_difference_in_pairs() -> None:
    """Source: general question-and-answer page, https://bkkquilt.com/how-to-crochet/
    frequent-question-how-do-you-calculate-a-decrease-in-stitches.html: 21 in less 3 in at 8 rounds to the inch are 144; from 80 to
    45 stitches are 17 pairs and one over: it ends at 46, every 8th round 9 times and every 9th 8 times. Ours leaves the last
    width some rows, so all are every 8th."""
    fabric = part("top 21 in - 3 in", 80, "edges slope to 46 stitches wide at top, fashioned 2 in", rows=8 * PER_INCH)
    assert fabric.rows == 144
    assert sum(gaps(fabric).values()) == 17
    assert set(gaps(fabric)) <= {8, 9}
    asked = part("top 18 in", 80, "edges slope to 45 stitches wide at top, fashioned 2 in", rows=8 * PER_INCH)
    assert abs(widths(asked)[-1] - 45) == 1


def test_a_waist_in_pairs_on_four_lines() -> None:
    """Source: craft magazine site, waist shaping series,
    https://www.interweave.com/article/knitting/waist-shaping-from-hip-to-waist/: a hip of 45.5 in and a waist of 38 in at 7
    stitches to the inch: 52 stitches on four lines are 13 rounds of decreases, and 267 of 319 are left. In two halves, each of an
    even number of stitches, with one line on each edge."""
    fabric = part(
        "waist 7 in, top 8 in",
        160,
        "edges slope to (36.5 in + 1.5 in) / 2 wide at waist, fashioned 2 in",
        stitches=7 * PER_INCH,
        rows=13 * PER_INCH,
    )
    assert [by for _, by in shaped(fabric)] == [-2] * 13
    assert 2 * widths(fabric)[-1] == pytest.approx(267, abs=1)


def test_a_gusset_of_sixteen_stitches() -> None:
    """Source: knitter blog, thumbs, 2012, http://kristinesdelftwear.blogspot.com/2012/10/the-thing-about-thumbs.html: 2 stitches
    every 2nd row until 16 are added: 8 rows of increases over 16 rows, a plain row after each."""
    fabric = part(
        "base 4 rows, full 20 rows, top 30 rows",
        40,
        "edges straight to base",
        "edges slope to 56 stitches wide at full, fashioned 2 in",
    )
    moves = shaped(fabric)
    assert [by for _, by in moves] == [2] * 8
    assert {b - a for (a, _), (b, _) in pairwise(moves)} == {2}
    assert 4 <= moves[0][0] < moves[-1][0] < 20


def test_a_gusset_from_one_stitch() -> None:
    """Source: knitter blog, thumb gusset, 2005, https://haden.wpengine.com/saturday-january-15-2005/: one stitch, then 4 rows of 2
    increases with a plain row between: 1, 3, 5, 7, 9."""
    made = widths(part("top 10 rows", 1, "edges slope to 9 stitches wide at top"))
    assert [made[after] for after in range(0, 10, 2)] == [1, 3, 5, 7, 9]


def test_a_flat_gusset_on_one_side() -> None:
    """Source: knitter blog, mitten tutorial, 2009, http://knittingnonni.blogspot.com/2009/06/mitten-tutorial-step-3.html: 33
    stitches, 4 of them before a marker; one made in every row from 1 to 11: 34 (5 and 29) after the first, 44 (15 and 29) after the
    last."""
    fabric = part(
        "base 4 rows, full 16 rows, top 20 rows",
        33,
        "edges straight to base",
        "left edge slope by 11 stitches at full, fashioned 2 in",
        "right edge straight to top",
    )
    assert [by for _, by in shaped(fabric)] == [1] * 11
    assert {b - a for (a, _), (b, _) in pairwise(shaped(fabric))} == {1}
    marker = -16 + 4
    beside = [
        (marker - (fabric.outer_end(row, "left") or 0), (fabric.outer_end(row, "right") or 0) - marker + 1) for row in (1, 6, 16)
    ]
    assert beside == [(4, 29), (5, 29), (15, 29)]


def test_a_right_triangle_from_the_top() -> None:
    """Source: designer blog, shawl shapes, 2013 (a right triangle): 5 stitches, 4 more every 2nd row: 9 after 2 rows and 85 after
    40."""
    fabric = part("top 42 rows", 5, "edges steps 2 stitches 20 times to top")
    made = widths(fabric)
    assert [made[after] for after in (0, 2, 40)] == [5, 9, 85]
    assert {made[after + 2] - made[after] for after in range(0, 40, 2)} == {4}


def test_a_triangle_with_wings() -> None:
    """Source: designer blog, shawl shapes, 2013 (a triangle with wings): 5 stitches, 4 more every 2 rows to half the depth, then
    6 more every 2 rows: 45 after 20 rows, 105 after 20 more."""
    fabric = part(
        "half 20 rows, top 42 rows", 5, "edges steps 2 stitches 10 times to half", "edges steps 3 stitches 10 times to top"
    )
    made = widths(fabric)
    assert 45 in made
    assert made[-1] == 105
    # Each end gets its stitches where the carriage is, so half of them in each row.
    assert Counter(by for _, by in shaped(fabric)) == {2: 20, 3: 20}


def test_half_counts_of_a_crescent() -> None:
    """Source: knitting podcast notes, 2010, http://cogknitivepodcast.blogspot.com/2010/04/simple-math-for-westknits-daybreak.html:
    5 stitches in the first of 9 repeats and 3 more in each: 5, 8, 11, 14, 17, 20, 23, 26, 29."""
    fabric = part("top 18 rows", 5, "left edge steps 3 stitches 8 times to top", "right edge straight to top")
    assert sorted(set(widths(fabric))) == [5, 8, 11, 14, 17, 20, 23, 26, 29]
    assert {b - a for (a, _), (b, _) in pairwise(shaped(fabric))} == {2}


@pytest.mark.parametrize(("held", "left"), [(6, 12), (4, 16), (8, 8)])
def test_a_toe_by_holding(held: int, left: int) -> None:
    """Source: newspaper craft column, 2010, http://www.journalgazette.net/article/20100711/BLOGS2601/100709663/-1/BLOGS26: of a
    foot of 48 stitches half makes the toe, 24: hold 6 on each side, 12 are left; hold 4, 16 are left; hold 8, 8 are left. One
    needle more in each row, and then back."""
    fabric = part(
        f"base 20 rows, tip {20 + 4 * held} rows, top 80 rows",
        24,
        f"wedge {held} stitches wide at both edges from base to tip, held in and let out",
    )
    counts = [sum(course.count for course in fabric.passes(row)) for row in range(1, 81)]
    assert min(counts) == left
    assert counts.count(left) == 1
    assert {abs(b - a) for a, b in pairwise(counts)} == {0, 1}


def test_shaping_at_a_rate_has_gaps_of_that_rate() -> None:
    """Source: designer blog, 2012 (where gentle shaping starts): 6 rows to the inch, 9 in from underarm to waist: 54 rows; shapings
    8 rows apart over the last 16 begin 38 rows below the underarm."""
    fabric = part(
        "begin 38 rows, waist 9 in, top 12 in",
        80,
        "edges straight to begin",
        "edges in 1 stitch every 8 rows to waist, fashioned 2 in",
        rows=6 * PER_INCH,
    )
    assert fabric.rows == 72
    (first, one), (second, other) = shaped(fabric)
    assert (one, other) == (-2, -2)
    assert second - first == 8
    assert 38 <= first < second <= 54
