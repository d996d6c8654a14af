"""What of several copies is added up: the width of those that are joined at their sides, the height of those at their rows."""

from __future__ import annotations

import pytest

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes

STRIPS = """\
pattern "Strips"
sizes one
    length 40 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
piece strip in plain, knit 4
    levels hem 0 cm, top length
    start 20 cm wide with e-wrap
    left edge straight to top called one
    right edge straight to top called other
    end cast off
join strip {one} to strip {other}, each to the next
free {free}
"""


@pytest.mark.parametrize(
    ("sides", "free", "added"),
    [
        (("one", "other"), "strip start + strip end", [("width", "start", 4)]),
        (("end", "start"), "strip one + strip other", [("height", "level", 4)]),
    ],
)
def test_what_goes_on_in_the_next_copy(sides: tuple[str, str], free: str, added: list[tuple[str, str, int]]) -> None:
    made = pipeline.compile(STRIPS.format(one=sides[0], other=sides[1], free=free), "strips.wale", shipped(), Changes())
    assert made.proof is not None, made.diagnostics
    (strip,) = made.proof.sizes[0].pieces
    assert [(m.key.extent, m.key.at, m.key.times) for m in strip.measures if m.key.times] == added
