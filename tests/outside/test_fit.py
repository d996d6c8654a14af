"""Ease, reach and stretch against published figures."""

from __future__ import annotations

import pytest

from tests.fit.tried_on import worn
from tests.fit.wardrobe import HEAD, VEST
from walewright.fit import shares

SLEEVE = """
piece sleeve in plain, knit 2
    levels cuff 0 cm, wide 45 cm, top 49 cm
    start 26 cm wide with e-wrap
    edges slope to 56 cm wide at wide called seam
    edges straight to top called seam
    end cast off
join sleeve end to back armhole + front armhole, easing 17 cm
join sleeve seam_left to sleeve seam_right
"""


def test_the_sleeve_of_a_dropped_shoulder() -> None:
    """Source: http://designyourownsweater.blogspot.com/2007/01/sleeve.html: centre back to wrist 80 cm, body 62 cm wide: the
    sleeve is 80 - 31 = 49 cm long."""
    wide = VEST.replace("start 44 cm wide", "start 62 cm wide")
    (reach,) = worn(wide + SLEEVE).fit.reaches
    # 147 rows are 49 cm, and one more for an even number.
    assert reach.values == pytest.approx((80.0,), abs=0.4)


@pytest.mark.parametrize(("inches", "ease"), [(42, 2), (44, 4)])
def test_standard_ease(inches: float, ease: float) -> None:
    """Source: https://www.knittingmagic.biz/patterns-7/factoring-in-ease.html: a chest of 40 in and 2 to 4 in of ease are 42 to
    44 in."""
    body = HEAD.replace("chest 80 cm", "chest 40 in")
    # Each half has the two stitches that its two seams take: 1 cm.
    half = f"{inches} in / 2 + 1 cm"
    made = worn(VEST.replace("start 44 cm", f"start {half}"), body)
    # To whole stitches of half a centimetre, two on each piece.
    assert made.fit.eases[0].ease[0] == pytest.approx(ease * 2.54, abs=1.0)


def test_negative_ease_of_a_hat() -> None:
    """Source: https://www.knitgrammer.com/blog/head-size-chart-for-knitting-hats/: a head of 22 in takes a hat of 18.7 to 19.8
    in, which is worn stretched: 10 to 15 % less than the head."""
    hat = """
piece hat in plain
    levels brim 0 cm, top 20 cm
    start 19.2 in + 1 cm wide with e-wrap
    edges straight to top called seam
    end gathered
join hat seam_left to hat seam_right
finished brim_round round hat brim, fits head, stretches
"""
    made = worn(hat, HEAD.replace("80 cm, to fit", "80 cm, to fit\n    head 22 in, to fit"))
    (ease,) = made.fit.eases
    assert 18.7 * 2.54 <= ease.finished[0] <= 19.8 * 2.54
    assert 0.85 <= ease.finished[0] / ease.body[0] <= 0.9
    assert made.codes() == []


def test_shares_are_below_what_hands_have_measured() -> None:
    """Sources: https://www.susannawinter.net/post/2019/07/19/how-stretchy-is-stretchy-comparison-of-12-bind-off-methods: a
    standard cast-off edge goes from 11.5 to 16 cm; https://gulfcoastmakers.com/mosaicism/how-is-rib-stitch-measured-2.html: a
    1x1 rib comes to 1.96 of its length. For the bed nothing is published: no share may promise more."""
    cast_off, rib = 16 / 11.5, 1.96
    assert max(shares.CHAIN, shares.SEWN, shares.ROLLED, shares.PICOT, shares.CHAINED, shares.RIB_CHAIN) < cast_off
    assert max(shares.RIB_1_SEWN, shares.RIB_2_SEWN) < rib
