"""Limits of floats, tucks, cables and stripes: published, or common practice, and the constants that hold to them."""

from __future__ import annotations

import pytest

from walewright.bed import by_hand, crossing
from walewright.proof import bobbins, floats

INCH = 2.54


def test_the_longest_float_in_stitches() -> None:
    """5 stitches is the usual recommendation. Source: http://alessandrina.com/category/machine-knitting/fair-isle/"""
    assert floats.LONGEST_STITCHES == 5


def test_the_longest_float_in_length() -> None:
    """1 in, so fewer stitches on a coarse bed. Source: https://zpag.net/Artisanat/patterns/english/length_of_floats.htm"""
    assert pytest.approx(INCH, abs=0.05) == floats.LONGEST_CM


def test_six_is_long_on_a_bulky_bed() -> None:
    """Source: https://machineknittingmonthly.net/helpline/float-on/: a float over six is long on a bulky bed. At 13 stitches to
    10 cm it is beyond both limits."""
    assert floats.LONGEST_STITCHES < 6
    assert floats.LONGEST_CM < 6 / 1.3


def test_rows_tucked_on_a_needle() -> None:
    """Limited by the hook. Source: http://fastlane.ojolly.net/2012/09/the-good-tuck.html?m=1; the number, 2 to 4 rows, is common
    practice."""
    assert 2 <= by_hand.MOST_TUCKS <= 4


def test_cables_wide_enough_to_need_slack() -> None:
    """Common practice: from three over three on, a wale beside a crossing is let down first."""
    assert crossing.TIGHT == 3


def test_tails_of_bobbins() -> None:
    """Common practice: 10 to 15 cm and more to darn in, and a tenth more than reckoned."""
    assert 10 <= bobbins.TAIL_CM <= 20
    assert pytest.approx(0.10) == bobbins.SPARE
