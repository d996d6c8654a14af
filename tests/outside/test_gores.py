"""A published way to divide a waist by a number of gores, which may be another in each size."""

from __future__ import annotations

import pytest

from tests.outside.worked import INCH, PER_INCH, proven

SIZES = """sizes six eight
    waist 30 30 in
    gores 6 8
"""
SKIRT = """
piece gore in plain, knit gores
    levels hem 0 cm, waistline 60 rows
    start waist / gores * 2 + 2 stitches wide with e-wrap
    edges slope to waist / gores + 2 stitches wide at waistline called side
    end cast off
join gore side to gore side, each to the next all round
finished all_round round gore waistline, wanted waist
"""


def test_the_waist_divided_by_the_gores_goes_round_it_however_many_there_are() -> None:
    """Source: page of a seamstress, http://www.kitchencountereconomics.com/?p=2023: the waist divided by the number of gores is the
    top of each; of 30 in and 6 gores 5 in. That the number of gores does not change the width of the skirt: notes to a draft of
    1912-1914, http://www.tudorlinks.com/treasury/freepatterns/w191214cdgoreskirt.html. A sewn seam takes a stitch of both its
    sides, which are added here."""
    outcome = proven(SKIRT, stitches=8 * PER_INCH, rows=8 * PER_INCH, sizes=SIZES)
    assert outcome.fit is not None
    assert outcome.counts is not None
    tops = []
    for size in outcome.counts.sizes:
        gore = size.piece("gore")
        tops.append(gore.start + sum(by for runs in (gore.left, gore.right) for run in runs for _, by in run.changes()))
    assert tops == [5 * 8 + 2, 30 + 2]
    assert outcome.fit.beside[0].knitted == pytest.approx((30 * INCH, 30 * INCH), abs=1e-3)
