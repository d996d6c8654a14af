"""Published worked examples of stitches picked up along row edges."""

from __future__ import annotations

import pytest
from worked import garment

from walewright.design.model import EdgeName
from walewright.solve.bands import _Part, shared_out

FRONT = EdgeName("front", "neck")


def along_rows(rows: int, rows_per_cm: float, stitches_per_cm: float) -> tuple[int, ...]:
    """Stitches along two equal row edges of so many rows."""
    cm = rows / rows_per_cm
    parts = [_Part(FRONT, part, rows + 1, cm, cm * stitches_per_cm, False) for part in ("left", "right")]
    return shared_out(parts, 0)


def test_two_of_every_three_rows() -> None:
    """Source: knitting forum thread, http://www.menwhoknit.com/community/?q=node/5359: 16 stitches and 24 rows to 4 in; over 20 in
    120 rows and 80 stitches: 2 of every 3 rows."""
    per_inch = 2.54
    assert along_rows(120, 24 / (4 * per_inch), 16 / (4 * per_inch)) == (80, 80)


def test_four_of_five_rows() -> None:
    """Source: knitting forum thread, http://www.menwhoknit.com/community/?q=node/5359: 80 stitches along 102 rows: 22 rows are
    skipped; the ratio is 0.784, close to 4 of 5. The tension with that ratio gives that many back."""
    assert along_rows(102, 3.0, 3.0 * 80 / 102) == (80, 80)
    assert 102 - 80 == 22
    assert pytest.approx(0.784, abs=5e-4) == 80 / 102


def test_three_of_every_four_rows_is_the_ratio_of_usual_tensions() -> None:
    """Source: lecture slides quoting Doyle and Munden, fr.scribd.com/presentation/143644499: relaxed plain knitting has about 1.3
    rows to the stitch, so 4 rows meet about 3 stitches, as knitters pick up (common practice)."""
    left, right = along_rows(80, 1.3 * 2.0, 2.0)
    assert left == right
    assert left / 80 == pytest.approx(3 / 4, abs=0.03)


def test_no_more_stitches_than_places() -> None:
    """A place gives one stitch, however fine the band."""
    assert along_rows(20, 2.0, 5.0) == (21, 21)


V_FRONT = """
piece front in plain
    levels hem 0 cm, top 100 rows
    start 80 stitches wide with e-wrap
    neck {wide} stitches wide, 60 rows deep, {shape}
    end cast off

band neckband with band along front neck
"""


def picked_up(shape: str, wide: int) -> tuple[int, ...]:
    """Stitches that a band takes along each part of a neck 60 rows deep, at a tension of three stitches to four rows."""
    (neckband,) = garment(V_FRONT.format(shape=shape, wide=wide), stitches=30, rows=40).bands
    return tuple(p.stitches for p in neckband.pick_ups if p.part != "centre")


def test_a_straight_edge_and_a_v_over_as_many_rows() -> None:
    """Source: online knitting handbook, chapter on neck bands, http://studioknits.com/bookpage82.htm: 3 of every 4 rows along a
    straight edge, 4 of every 5 along a V edge decreased every 4th or 6th row: over 60 rows 45 and 48 stitches. Decreased every 4th
    row it is 15 stitches out of line, a straight line of 47.4 stitches' length; measured along every tooth it would be 51."""
    assert picked_up("square", 30) == (45, 45)
    every_fourth, every_sixth = picked_up("v", 30), picked_up("v", 20)
    assert every_fourth[0] == every_fourth[1]
    assert 47 <= every_fourth[0] <= 48
    assert 45 <= every_sixth[0] <= 47


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
