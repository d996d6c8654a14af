"""A band along a first row that was begun on waste yarn: its loops hang on the needles, and the ravel cord is pulled out."""

from __future__ import annotations

import pytest

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit import steps as st

MAT = """\
pattern "Mat"
sizes one
    length 30 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric wide
    stocking stitch in wool at tension 10
    swatch 40 stitches by 60 rows = 22 cm by 20 cm
edging border in {fabric}, 2 cm deep, added after, cast off chain
piece mat in plain
    levels hem 0 cm, top length
    start 20 cm wide {begun}
    edges straight to top called side
    end cast off
band foot with border along mat start
free mat side_left + mat side_right + mat end
"""


@pytest.mark.parametrize(
    ("begun", "fabric", "loops"),
    [("on waste yarn", "plain", "on cord"), ("on waste yarn", "wide", "cord"), ("with e-wrap", "plain", "")],
)
def test_a_first_row_on_waste_yarn_comes_off_its_ravel_cord(begun: str, fabric: str, loops: str) -> None:
    made = pipeline.compile(MAT.format(begun=begun, fabric=fabric), "mat.wale", shipped(), Changes())
    assert made.proven, made.diagnostics
    (plan,) = made.plans
    steps = [step for block in plan.blocks for _, own in block.paragraphs for step in own]
    assert [step.loops for step in steps if isinstance(step, st.PickUpAlong)] == [loops]
    words = " ".join((made.plain_text or "").split())
    assert words.count("and pull out the ravel cord") == (1 if loops else 0)
