"""Published worked examples of stitches picked up along row edges."""

from __future__ import annotations

import pytest

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
