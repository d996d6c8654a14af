"""Published worked examples of stitches picked up along edges, hung by the bed on pieces compiled from sources."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.outside.worked import PER_INCH, garment, knitted, picked, proven
from walewright.pipeline import Outcome

STRIP = """
piece strip in plain
    levels hem 0 cm, top {rows} rows
    start 40 stitches wide with e-wrap
    left edge straight to top called one
    end cast off

band edge with band along strip one
"""


def along_rows(rows: int, stitches_to_10_cm: float, rows_to_10_cm: float) -> tuple[int, list[int]]:
    """How many stitches a band gets along a straight row edge, and at which of its places."""
    outcome = proven(STRIP.format(rows=rows), stitches_to_10_cm, rows_to_10_cm, "standard")
    return counted(outcome, "edge"), picked(outcome, "edge", "strip", "one")


def counted(outcome: Outcome, band: str) -> int:
    assert outcome.counts is not None
    return next(b.stitches for b in outcome.counts.sizes[0].bands if b.name == band)


def skips(places: list[int]) -> list[int]:
    return [b - a - 1 for a, b in pairwise(places)]


def test_two_of_every_three_rows() -> None:
    """Source: knitting forum thread, http://www.menwhoknit.com/community/?q=node/5359: 16 stitches and 24 rows to 4 in; over 20 in
    120 rows and 80 stitches: 2 of every 3 rows."""
    stitches, places = along_rows(120, 16 / 4 * PER_INCH, 24 / 4 * PER_INCH)
    assert stitches == 80
    assert set(skips(places)) == {0, 1}
    assert all(2 <= sum(at < place <= at + 4 for place in places) <= 3 for at in range(0, 112))


def test_four_of_five_rows() -> None:
    """Source: knitting forum thread, http://www.menwhoknit.com/community/?q=node/5359: 80 stitches along 102 rows: 22 rows are
    skipped; the ratio is 0.784, close to 4 of 5. Knitted at a tension of that ratio."""
    stitches, places = along_rows(102, 0.784 * 30, 30)
    assert stitches == 80
    assert sum(skips(places)) == pytest.approx(22, abs=1)
    assert max(skips(places)) == 1


def test_three_of_every_four_rows_is_the_ratio_of_usual_tensions() -> None:
    """Source: lecture slides quoting Doyle and Munden, fr.scribd.com/presentation/143644499: relaxed plain knitting has about 1.3
    rows to the stitch, so 4 rows meet about 3 stitches, as knitters pick up (common practice)."""
    stitches, places = along_rows(80, 20, 1.3 * 20)
    assert stitches / 80 == pytest.approx(3 / 4, abs=0.03)
    assert max(skips(places)) == 1


def test_five_of_every_eight_rows_without_two_skips_together() -> None:
    """Source: knitter blog, picking up stitches, 2009, http://stitchesofviolet.blogspot.com/2009/02/picking-up-stitches.html: 5
    stitches and 8 rows to the inch: 5 stitches from 8 rows, and never two skips together."""
    stitches, places = along_rows(80, 5 * PER_INCH, 8 * PER_INCH)
    assert stitches == 5 * 80 / 8
    assert set(skips(places)) == {0, 1}


def test_no_more_stitches_than_places() -> None:
    """Common practice: a row end gives one stitch, however fine the band. 20 rows have 20 places, each its own."""
    stitches, places = along_rows(20, 50, 20)
    assert stitches == 20
    assert len(set(places)) == 20


def test_three_of_four_along_a_straight_edge() -> None:
    """Source: online knitting handbook, chapter on neck bands, http://studioknits.com/bookpage82.htm: along a straight row edge 3
    stitches for 4 rows: 45 along 60 rows, on each side of an opening."""
    outcome = proven(
        """
piece front in plain
    levels hem 0 cm, top 100 rows
    start 90 stitches wide with e-wrap
    neck 30 stitches wide, 60 rows deep, square
    end cast off

band edge with band along front neck
""",
        stitches=30,
        rows=40,
    )
    assert outcome.counts is not None
    (band,) = outcome.counts.sizes[0].bands
    assert [(p.part, p.stitches) for p in band.pick_ups] == [("left", 45), ("centre", 30), ("right", 45)]


BORDERS = [(30, 25, 18, 128), (32, 30, 20, 144), (37, 32, 23, 161), (43, 35, 24, 180)]


@pytest.mark.parametrize(("to_neck", "slope", "back_neck", "all_round"), BORDERS)
def test_a_border_in_four_sizes_adds_up(to_neck: int, slope: int, back_neck: int, all_round: int) -> None:
    """Source: craft book chapter stored as a scan, project with borders, https://issuhub.com/view/index/4587?pageIndex=251: to the
    neck 30 (32, 37, 43), the neck's side 25 (30, 32, 35), the back neck 18 (20, 23, 24), both sides alike: 128 (144, 161, 180)
    in all. Knitted with 2 rows to the stitch, so that each stretch has a whole number of rows; a band has an even number, so 161
    may come out one off."""
    odd = ", centre stitch" if back_neck % 2 else ""
    outcome = proven(
        f"""
piece back in plain{odd}
    levels hem 0 cm, top 80 rows
    start {back_neck} stitches wide with e-wrap
    edges straight to top called strip
    end on waste yarn

piece right_front in plain
    levels hem 0 cm, bend {2 * to_neck} rows, top {2 * to_neck + 2 * slope} rows
    start 40 stitches wide with e-wrap
    left edge straight to bend called front
    left edge straight to top called throat
    end cast off

piece left_front in plain, mirror of right_front

band border with band along right_front front + right_front throat + back end + left_front throat + left_front front
join right_front end to back strip_left, easing 1 cm
join left_front end to back strip_right, easing 1 cm
""",
        stitches=20,
        rows=40,
    )
    assert outcome.counts is not None
    (band,) = outcome.counts.sizes[0].bands
    lower, upper, middle, upper_too, lower_too = [p.stitches for p in band.pick_ups]
    assert middle == back_neck
    assert band.stitches == pytest.approx(all_round, abs=all_round % 2)
    # The two sides are alike but for the one stitch that makes the sum even.
    assert (lower + upper) - (lower_too + upper_too) in (0, 1, -1)
    assert (lower, upper) == (pytest.approx(to_neck, abs=1), pytest.approx(slope, abs=1))


SLOPES = [(4, 30), (6, 20)]


@pytest.mark.parametrize(("every", "wide"), SLOPES)
def test_four_of_five_along_a_gentle_slope(every: int, wide: int) -> None:
    """Source: online knitting handbook, chapter on neck bands, http://studioknits.com/bookpage82.htm: where a straight row edge
    gets 3 stitches for 4 rows, the edge of a v that loses a stitch every 4th or 6th row gets 4 for 5: 48 along 60 rows, more than
    the 45 of the straight edge."""
    outcome = proven(
        f"""
piece front in plain
    levels hem 0 cm, top 100 rows
    start 90 stitches wide with e-wrap
    neck {wide} stitches wide, 60 rows deep, v
    end cast off

band edge with band along front neck
""",
        stitches=30,
        rows=40,
    )
    fabric = knitted(outcome, "front")
    inner = [fabric.inner_end(row, "right") for row in range(41, 101)]
    assert len({slot for slot in inner if slot is not None}) == 60 // every + 1, "a stitch every so many rows"
    assert outcome.counts is not None
    (band,) = outcome.counts.sizes[0].bands
    left, right = [p.stitches for p in band.pick_ups]
    assert left == right
    assert 45 < left <= 49


def test_a_raglan_edge_is_as_long_as_its_slant() -> None:
    """Source: knitter blog, baby sweater design, http://slippedstitches.wordpress.com/category/baby-sweater-design/: 1 stitch at
    each end every 2nd row 15 times, over 30 rows. By Pythagoras that is the longest side over 15 stitches and
    30 rows; along the teeth it would be a tenth more."""
    raglan = garment(
        """
piece sleeve in plain
    levels underarm 0 cm, top 30 rows
    start 36 stitches wide with e-wrap
    edges slope to 6 stitches wide at top, fashioned 2 in called raglan
    end cast off

piece other in plain
    levels underarm 0 cm, top 30 rows
    start 36 stitches wide with e-wrap
    edges slope to 6 stitches wide at top, fashioned 2 in called raglan
    end cast off

join sleeve raglan to other raglan
""",
        stitches=28,
        rows=40,
    ).joins[0]
    across, up = 15 / 2.8, 30 / 4.0
    assert raglan.one_cm == pytest.approx((across**2 + up**2) ** 0.5, rel=0.01)


@pytest.mark.parametrize(
    ("ratio", "rows", "published"),
    [
        # Knitting forum thread, http://www.menwhoknit.com/community/?q=node/5359: 120 rows and 80 stitches, 2 of every 3 rows.
        ("2 stitches to 3 rows", 120, 80),
        # Online knitting handbook, http://studioknits.com/bookpage82.htm: along a straight row edge 3 of 4.
        ("3 stitches to 4 rows", 80, 60),
        # Knitter blog, 2009, http://stitchesofviolet.blogspot.com/2009/02/picking-up-stitches.html: 5 stitches from 8 rows.
        ("5 stitches to 8 rows", 80, 50),
    ],
)
@pytest.mark.parametrize("tension", [(16, 24), (30, 30), (28, 40)])
def test_a_written_ratio_is_kept_at_every_tension(ratio: str, rows: int, published: int, tension: tuple[int, int]) -> None:
    """As the published sources count off, whatever the lengths are; never two skips together."""
    outcome = proven(STRIP.format(rows=rows).replace("along strip one", f"along strip one, {ratio}"), *tension, "standard")
    assert counted(outcome, "edge") == published
    assert set(skips(picked(outcome, "edge", "strip", "one"))) == {0, 1}
