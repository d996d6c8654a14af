"""A piece begun along edges much longer than its first row draws them in."""

from __future__ import annotations

import pytest

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import compile

COLLAR = """pattern "Collar"

sizes S
    length 40 cm

machine standard

yarn wool "fine wool", 50 g = 200 m

fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 11 g

piece cloth in plain
    levels foot 0 cm, top length
    start 30 cm wide with chain
    left edge straight to top called one
    right edge straight to top
    end cast off

piece collar in plain
    levels foot 0 cm, rim 6 cm
    start {wide} cm wide along cloth one
    edges straight to rim
    end cast off
"""


@pytest.mark.parametrize(("wide", "told"), [("40", []), ("34.5", []), ("33", ["start-draws-in"]), ("28", ["start-draws-in"])])
def test_a_start_much_narrower_than_its_edges_is_warned_of(wide: str, told: list[str]) -> None:
    made = compile(COLLAR.format(wide=wide), "collar.wale", shipped(), Changes())
    assert made.proven
    assert [d.code for d in made.diagnostics] == told
