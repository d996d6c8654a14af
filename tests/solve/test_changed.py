"""Figures that a help proposes are such as can be written."""

from __future__ import annotations

import pytest

from tests.solve.test_amounts import plain
from tests.solve.workshop import Workshop
from walewright.design.reading.machine import MOST_NEEDLES
from walewright.design.reading.materials import FEWEST_PER_CM, MOST_PER_CM
from walewright.report.model import Change, WrittenFigure
from walewright.solve.conflict.changed import FEWEST_TO_10_CM, MOST_TO_10_CM, WIDEST_BED, changed


def test_the_bounds_are_those_of_the_language() -> None:
    assert WIDEST_BED == MOST_NEEDLES
    assert (FEWEST_TO_10_CM, MOST_TO_10_CM) == (FEWEST_PER_CM * 10, MOST_PER_CM * 10)


@pytest.mark.parametrize(
    ("figure", "value", "able"),
    [("needles", 400.0, True), ("needles", 402.0, False), ("stitches", 3.0, True), ("stitches", 2.9, False)],
)
def test_a_bed_or_a_tension_that_cannot_be_is_not_proposed(figure: WrittenFigure, value: float, able: bool) -> None:
    shop = Workshop("S")
    design = shop.design(plain(shop, 40, 20))
    fabric = "" if figure == "needles" else design.fabrics[0].name
    assert (changed(design, (Change(figure, fabric, "", (("S", value),)),)) is not None) == able
