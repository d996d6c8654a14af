"""Rows of one size table that leave no possible cap, told where a garment uses all of them."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, SHIPPED
from walewright.design import Changes, understand
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.source import read

SLEEVE = """\
piece sleeve in plain
    levels hem 0 cm, low seam, high reach - back / 2, top reach
    start depth * 2 wide on waste yarn
    end on waste yarn
"""


def said(sizes: str, table: str, changes: Changes | None = None, own: str = "", sleeve: str = SLEEVE) -> list[Diagnostic]:
    rows = f"""\
sizes {sizes}
    reach from {table} centre_back_neck_to_wrist{own}
    back from {table} cross_back
    seam from {table} arm_length_to_underarm
    depth from {table} armhole_depth
"""
    tree, unread = read("sleeve.wale", HEAD.replace("sizes S M\n    length 40 42 cm\n", rows) + sleeve)
    assert unread == ()
    _, found = understand(tree, SHIPPED, changes or Changes())
    return [d for d in found if d.code == "table-rows-disagree"]


@pytest.mark.parametrize(
    ("sizes", "table", "told"),
    [
        ("3_months 6_months 12_months 18_months", "baby", ()),
        ("12_months 18_months 24_months", "baby", ("18_months", "24_months")),
        ("24_months", "baby", ()),
        ("2_years 4_years 6_years 8_years", "youth", ("2_years", "4_years")),
        ("6_years 8_years 10_years 12_years 14_years 16_years", "youth", ()),
        ("XS S M L XL 2X 3X 4X 5X", "women", ()),
        ("S M L XL 2X", "men", ()),
    ],
)
def test_which_sizes_disagree(sizes: str, table: str, told: tuple[str, ...]) -> None:
    found = said(sizes, table)
    assert len(found) == (1 if told or sizes == "24_months" else 0)
    assert all(d.severity is Severity.WARNING and d.sizes == told for d in found)


def test_both_figures_are_named() -> None:
    (one,) = said("24_months", "baby")
    assert in_english(one).notes[0] == (
        "24 months: centre_back_neck_to_wrist 45.5 cm less half of cross_back 22 cm less arm_length_to_underarm 21.5 cm leaves "
        "13 cm for a cap, beside armhole_depth 10.5 cm"
    )
    assert len(one.labels) == 4


def test_quiet_where_a_row_is_not_used_or_not_the_tables() -> None:
    assert said("24_months", "baby", sleeve=SLEEVE.replace("depth * 2", "40 cm")) == []
    assert said("24_months", "baby", Changes(measures={"reach": "37 cm"})) == []
    assert said("24_months", "baby", own=", 24_months 38 cm") == []
