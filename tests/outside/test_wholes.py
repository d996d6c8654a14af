"""A published sum of pieces: what all of them come to together, and what seams take of it."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.outside.worked import PER_INCH, WIDE, proven
from walewright.pipeline import Outcome

GORES = ("front", "first_side", "second_side", "back", "third_side", "fourth_side")


def skirt(front: str, side: str) -> Outcome:
    """Six gores that hang straight, front and back so wide and four sides, sewn one to the next all round: 28 in are wanted."""
    body = ""
    for name in GORES:
        body += f"""
piece {name} in plain
    levels hem 0 cm, waistline 60 rows
    start {front if name in ("front", "back") else side} wide with e-wrap
    edges straight to waistline called side
    end cast off
"""
    for one, other in pairwise((*GORES, GORES[0])):
        body += f"join {one} side_right to {other} side_left\n"
    body += "finished waist round front waistline, wanted 28 in\n"
    return proven(body, stitches=6 * PER_INCH, rows=8 * PER_INCH, bed=WIDE)


@pytest.mark.parametrize(("front", "side", "stitches"), [(50, 20, 168), (48, 18, 156)])
def test_six_gores(front: int, side: int, stitches: int) -> None:
    """Source: page of old patterns, skirt knitted from the waist down, http://grandmotherspatternbook.com/?p=1273: 168 stitches at
    the waist, 6 to the inch; 48 in front and behind and four sides of 18: 28 in. Sewn of single gores each loses a stitch at both
    sides. With two more each the sum is that published; as many as published
    come to 12 less, and that is told."""
    outcome = skirt(f"{front} stitches", f"{side} stitches")
    assert outcome.fit is not None
    (beside,) = outcome.fit.beside
    assert beside.wanted == pytest.approx((28 * 2.54,))
    assert beside.knitted == pytest.approx((stitches / (6 * PER_INCH) * 10,), abs=1e-3)
    assert ("whole-off" in {d.code for d in outcome.diagnostics}) == (stitches != 168)


def test_free_gores_find_the_published_sum() -> None:
    """Where each gore may be some stitches wider, none has to be reckoned with its seams."""
    outcome = skirt("between 8 in and 8.7 in", "between 3 in and 3.7 in")
    assert outcome.fit is not None
    assert outcome.fit.beside[0].off == pytest.approx((0.0,), abs=1e-3)
