"""Published worked examples of stitches gained or lost across a row, of buttonholes, and of wedges held in steps."""

from __future__ import annotations

from itertools import pairwise

import pytest
from worked import compiled, garment

from walewright.knit.steps import SpreadEvenly, Step
from walewright.pipeline import Outcome
from walewright.solve.wedges import groups

ACROSS = """
piece skirt in plain
    levels hem 0 cm, yoke 20 rows, top 40 rows
    start {old} stitches wide with e-wrap
    edges straight to yoke
    across to {new} stitches wide at yoke
    end cast off
"""


def spread(outcome: Outcome) -> SpreadEvenly:
    assert outcome.proven, [(d.code, d.message, d.notes) for d in outcome.diagnostics]
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


@pytest.mark.parametrize(("stitches", "rows"), [(100, 36), (100, 40), (90, 36)])
def test_a_wedge_is_a_line_drawn_on_squared_paper(stitches: int, rows: int) -> None:
    """Source: machine knitting teacher notes on wedges and spirals, http://alessandrina.com/category/miters-and-spirals/page/2/: a
    wedge of 36 rows over 100 stitches is drawn as a line over squares of a stitch and two rows: it shows what to hold each time."""
    held = groups(stitches, rows // 2)
    assert len(held) == rows // 2
    assert sum(held) == stitches
    drawn = [stitches * (i + 1) // len(held) - stitches * i // len(held) for i in range(len(held))]
    assert sorted(held) == sorted(drawn)
