"""Lengths and counts go by the fabric that is knitted there, also where two fabrics share a yarn and a tension."""

from __future__ import annotations

import re

import pytest

from tests.whole.shipped_once import SHIPPED
from walewright.design import Changes
from walewright.knit.operations import InFabric
from walewright.pipeline import Outcome, compile

SOURCE = """
pattern "Two cloths"
    summary "Two strips sewn together."

sizes M

machine standard

yarn wool "wool", 100 g = 300 m

{fabrics}

piece one in plain
    levels hem 0 cm, deep 5 cm, low 20 cm, top 30 cm
    {zone}
    start 20 cm wide with e-wrap
    edges straight to deep called side
    edges slope to 30 cm wide at low called side
    edges straight to top called side
    end cast off

piece other in plain
    levels hem 0 cm, top {other}
    start 20 cm wide with e-wrap
    edges straight to top called side
    end cast off

making up
    join one side to other side, easing 1 cm

"""

PLAIN = """fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = 14 cm by 15 cm, 9 g
"""
COLUMNS = """fabric columns
    latched rib every 2nd needle in wool at tension 6
    swatch 40 stitches by 60 rows = 10 cm by 12 cm, 9 g
"""


def made(fabrics: tuple[str, ...], zone: str, other: str = "30 cm") -> Outcome:
    text = SOURCE.format(fabrics="\n".join(fabrics), zone=zone, other=other)
    return compile(text, "two.wale", SHIPPED, Changes())


@pytest.mark.parametrize("fabrics", [(PLAIN, COLUMNS), (COLUMNS, PLAIN)])
def test_a_panel_changes_no_length_beside_it(fabrics: tuple[str, ...]) -> None:
    """Whichever of two fabrics of a yarn and tension is written last."""
    outcome = made(fabrics, "fabric columns from hem to low, 4 cm wide, 2 cm right of centre")
    assert outcome.proven, outcome.diagnostics
    assert "for “" not in outcome.plain_text


@pytest.mark.parametrize("fabrics", [(PLAIN, COLUMNS), (COLUMNS, PLAIN)])
@pytest.mark.parametrize("zone", ["fabric columns from hem to deep", "fabric columns from low to top"])
def test_rows_in_another_fabric_of_the_same_yarn_and_tension(fabrics: tuple[str, ...], zone: str) -> None:
    """The words name the fabric, and bed and reader measure by it."""
    outcome = made(fabrics, zone)
    assert outcome.proven, outcome.diagnostics
    said = re.findall(r"tension 6, for “(\w+)”", outcome.plain_text)
    assert {"plain", "columns"} <= set(said)
    # The strip in plain alone is told too, here or where it is referred to: its yarn and tension are no longer enough.
    read = [InFabric("plain") in block.operations for block in outcome.read[0].blocks]
    assert sum(read) >= 2


def test_one_fabric_of_a_yarn_and_tension_needs_no_name() -> None:
    outcome = made((PLAIN,), "")
    assert outcome.proven, outcome.diagnostics
    assert "for “" not in outcome.plain_text


def test_loops_are_weighed_by_the_fabric_they_are_knitted_in() -> None:
    """A fabric that is eight times as heavy in a third of its piece: not all is weighed by it, and not all without it."""
    grams = []
    for columns in (COLUMNS, COLUMNS.replace("9 g", "72 g")):
        outcome = made((PLAIN, columns), "fabric columns from hem to deep")
        assert outcome.proof is not None
        grams.append(sum(use.grams for use in outcome.proof.sizes[0].yarn if use.kind == "yarn"))
    assert grams[0] * 1.2 < grams[1] < grams[0] * 6
