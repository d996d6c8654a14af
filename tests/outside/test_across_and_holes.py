"""Published worked examples of stitches gained or lost across a row, and of buttonholes."""

from __future__ import annotations

from collections import Counter
from itertools import pairwise

import pytest

from tests.outside.worked import compiled, garment, knitted, proven
from walewright.knit.hands import spread_counts
from walewright.knit.operations import Close, Pass
from walewright.knit.spread import with_half_gaps
from walewright.knit.steps import SpreadEvenly, Step
from walewright.pipeline import Outcome
from walewright.report.english import in_english

ACROSS = """
piece skirt in plain
    levels hem 0 cm, yoke 20 rows, top 40 rows
    start {old} stitches wide with e-wrap
    edges straight to yoke
    across to {new} stitches wide at yoke
    end cast off
"""


def spread(outcome: Outcome) -> SpreadEvenly:
    assert outcome.proven, [(d.code, in_english(d).message, in_english(d).notes) for d in outcome.diagnostics]
    steps: list[Step] = [s for block in outcome.plans[0].blocks for _, some in block.paragraphs for s in some]
    return next(s for s in steps if isinstance(s, SpreadEvenly))


def test_increases_in_equal_sections() -> None:
    """Source: general how-to site, http://www.dummies.com/how-to/content/how-to-increase-at-several-points-in-the-same-row.html: 40
    stitches and 4 more: 4 + 1 sections of 8 stitches, one increase after each of the first four."""
    step = spread(compiled(ACROSS.format(old=40, new=44)))
    assert step.stitches == 44
    assert (step.singles, step.runs, step.more_runs) == (8, 4, 0)


@pytest.mark.parametrize(("old", "more", "after"), [(124, 14, {8, 9}), (112, 16, {6, 7})])
def test_increases_across_a_row(old: int, more: int, after: set[int]) -> None:
    """Source: handout by a knitwear author, based on two published handbooks, 2010, https://studyres.com/doc/1062783/
    magic-formula-for-placement-of-increases-or-decreases?page=1: 124 stitches and 14 more: one after every 8th or 9th stitch.
    Source: yarn shop teaching page, http://woolpackyarn.com/calculating-where-to-place-the-increases.html: 112 and 16 more: one
    after every 7th, of flat work beginning in the middle of such a stretch; ours, which keeps both edges clear, comes to 7 and 6.
    """
    step = spread(compiled(ACROSS.format(old=old, new=old + more)))
    assert step.runs + step.more_runs == more
    assert {step.singles, step.more_singles if step.more_runs else step.singles} <= after


def gaps(step: SpreadEvenly) -> list[int]:
    """Needles with one loop before the first changed one, between two, and after the last."""
    changed = [-1, *(i for i, n in enumerate(spread_counts(step)) if n != 1), step.stitches]
    return [after - before - 1 for before, after in pairwise(changed)]


@pytest.mark.parametrize(
    ("old", "new", "published"),
    [
        # Knitter blog, decreasing evenly, 2007, https://annaea.wordpress.com/2007/11/27/how-to-decrease-evenly/: of 54 three, half
        # a gap at each end: 48 / 3 = 16; 8, two together, then 16, two together, twice, and 8.
        (54, 51, [8, 16, 16, 8]),
        # Yarn shop teaching page, http://woolpackyarn.com/calculating-where-to-place-the-increases.html: 112 and 16 more: a gap of
        # 7, flat work starts at 3.5.
        (112, 128, [3, *[7] * 15, 4]),
    ],
)
def test_half_a_gap_at_each_end(old: int, new: int, published: list[int]) -> None:
    step = with_half_gaps(old, -(new // 2), new - new // 2 - 1, "skirt")
    assert step is not None
    assert gaps(step) == published
    if old % 2 == new % 2 == 0:
        halved = ACROSS.replace("at yoke\n    end", "at yoke, half a gap at each end\n    end")
        assert gaps(spread(compiled(halved.format(old=old, new=new)))) == published


def test_both_rules_of_spacing() -> None:
    """Source: general question-and-answer page, https://stampinglane.com/mosaicism/
    how-do-you-decrease-stitches-evenly-in-knitting.html: 115 stitches, increase 8: 115 / 8 = 14.375: in the round 5 gaps of 14
    and 3 of 15; flat, in 8 + 1 gaps, 7 of 13 and 2 of 12. What is halved at the edges is one of the round's gaps."""
    odd = ACROSS.replace("in plain", "in plain, centre stitch").replace("{old} stitches", "115 stitches").replace("{new}", "123")
    assert Counter(gaps(spread(compiled(odd)))) == {13: 7, 12: 2}
    first, *between, last = gaps(spread(compiled(odd.replace("at yoke\n    end", "at yoke, half a gap at each end\n    end"))))
    assert Counter([*between, first + last]) == {14: 5, 15: 3}
    assert last - first in (0, 1)


def test_buttonholes_with_even_spaces() -> None:
    """Source: designer blog, 2012, https://knittingrobin.blogspot.com/2012/08/knitting-math-how-to-calculate.html: on 100 stitches,
    with 3 at each end, 7 buttonholes of 4 leave 66, which are 11 between two."""
    band = garment(
        """
piece front in plain
    levels hem 0 cm, top 40 rows
    start 100 stitches wide with e-wrap
    end on waste yarn

band edge with band along front end, buttonholes 7 over 4 stitches, 3 stitches first, 3 stitches last
"""
    ).bands[0]
    assert band.stitches == 100
    holes = [(hole.first + 50, hole.last + 50) for hole in band.holes]
    assert holes[0] == (3, 6)
    assert holes[-1] == (93, 96)
    assert [b[0] - a[1] - 1 for a, b in pairwise(holes)] == [11] * 6


def test_buttonholes_by_rows() -> None:
    """Source: pattern alteration page of a craft group, http://serendipity.gpvm.com/modify.html: on a band of 56 rows 5 holes, the
    first and the last 4 rows from the ends: rows 4, 16, 28, 40 and 52, and 4 rows more."""
    outcome = proven(
        """
piece front in plain
    levels hem 0 cm, first 4 rows, last 52 rows, top 56 rows
    start 40 stitches wide with e-wrap
    buttonholes 5 over 2 stitches from first to last, 2 cm from the right edge
    end cast off
"""
    )
    assert knitted(outcome, "front").rows == 56
    operations = next(b for b in outcome.works[0].blocks if b.name == "front").operations
    rows = [sum(isinstance(before, Pass) for before in operations[:i]) for i, op in enumerate(operations) if isinstance(op, Close)]
    assert rows == [4, 16, 28, 40, 52]


def test_the_machine_knitter_s_way_from_the_centre_out() -> None:
    """Source: machine knitter blog, 2013 (increasing evenly across the row by machine): 98 needles and 13 increases: (98 - 13) / 13
    = 6.54 needles between the ones that are increased. A piece keeps an even number of stitches, so 12 or 14 come of 13 here; a
    loop beside each empty needle is the increased one."""
    step = spread(compiled(ACROSS.format(old=98, new=111)))
    assert step.runs + step.more_runs == pytest.approx(13, abs=1)
    between = {step.singles - 1, step.more_singles - 1 if step.more_runs else step.singles - 1}
    assert between <= {6, 7}


def test_decreases_from_rib_to_body() -> None:
    """Source: designer blog, Monday maths series, https://papermoonknits.com/musings/math-monday-decreasing-across-a-rowround: 55
    stitches become 38: every 3rd stitch 13 times and every 4th 4 times, a group of 3 being 1 knit and 2 together. Begun on 56
    here, an even number."""
    step = spread(compiled(ACROSS.format(old=56, new=38)))
    assert step.stitches == 38
    assert step.changed == "two together"
    assert {step.singles + 2, step.more_singles + 2} == {3, 4}


def test_heavy_decreases() -> None:
    """Source: knitting forum thread, https://forum.knittinghelp.com/t/pattern-help-needed/45374: 54 decreases in 128 stitches
    between the borders: 34 groups of 2 and 20 groups of 3."""
    step = spread(compiled(ACROSS.format(old=128, new=128 - 54)))
    groups = {step.singles + 2: step.runs, step.more_singles + 2: step.more_runs}
    assert groups == {3: 20, 2: 34}


def test_increases_with_a_gap_at_each_end() -> None:
    """Source: general question-and-answer page,
    https://stampinglane.com/mosaicism/how-do-you-decrease-stitches-evenly-in-knitting.html: 115 stitches and 8 more, flat, with 8 +
    1 gaps: 7 of 13 and 2 of 12; 123 stitches."""
    body = ACROSS.replace("skirt in plain", "skirt in plain, centre stitch").format(old=115, new=123)
    outcome = compiled(body)
    step = spread(outcome)
    assert step.stitches == 123
    # The 9th gap is what is left behind the last increase.
    last = 123 - step.runs * (step.singles + 1) - step.more_runs * (step.more_singles + 1)
    assert sorted([step.singles] * step.runs + [step.more_singles] * step.more_runs + [last]) == [12] * 2 + [13] * 7
    assert knitted(outcome, "skirt").stitches_at(21) == 123


def test_a_crown_line_of_eight() -> None:
    """Source: knitting forum thread, https://forum.knittinghelp.com/t/help-decreasing/77473: 56 stitches, knit 5, 2 together, 8
    times: 48 are left. Flat and with both edges kept clear, 4 or 5 lie between."""
    step = spread(compiled(ACROSS.format(old=56, new=48)))
    assert (step.stitches, step.runs + step.more_runs) == (48, 8)
    assert {step.singles, step.more_singles} == {4, 5}
