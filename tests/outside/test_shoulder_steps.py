"""Published worked examples of shoulders held in steps and of stitches cast off in steps."""

from __future__ import annotations

from walewright.design.model import Origin
from walewright.solve.model import SizedWedge
from walewright.solve.wedges import groups


def test_equal_holding_steps() -> None:
    """Source: a machine maker's help page on shoulders (as restated in a collection of worked examples; address withheld there): 15
    shoulder stitches in three groups of 5, carriage at the neck side: hold 5, 2 rows; hold 5, 2 rows; all back to work, 1 row: 4
    short rows and 1 over all. With the row that takes the carriage to the neck side the slope takes 6 rows."""
    wedge = SizedWedge("shoulders", "both", 88, groups(15, 3), Origin("shoulders"))
    assert wedge.groups == (5, 5, 5)
    short_rows = 2 * (len(wedge.groups) - 1)
    assert short_rows == 4
    assert wedge.to_row - wedge.from_row == 1 + short_rows + 1


def test_a_third_of_the_rows_may_be_shoulder() -> None:
    """Source: machine knitter blog, 2012, http://ozlorna.blogspot.com/2012/09/: 36 rows to 10 cm, an armhole of 25 cm: 90 rows, a
    third of them 30. Stitches that do not go evenly into the steps leave the larger steps outside."""
    assert groups(37, 15) == (3,) * 7 + (2,) * 8
    assert sum(groups(37, 15)) == 37
