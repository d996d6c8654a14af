"""A slot that is closed is a hole like a buttonhole: it has no edge, and nothing is said of it."""

from __future__ import annotations

import pytest

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import compile

SOURCE = """pattern "Bag"
sizes one
    length 40 cm
machine standard
yarn wool "fingering-weight wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
piece front in plain
    levels hem 0 cm, mid 20 cm, top length
    start 20 cm wide with e-wrap
    edges straight to top called side
    slot pocket {width} wide at mid, cast off
    end cast off
"""


@pytest.mark.parametrize("width", ["2 cm", "10 cm", "18 cm"])
def test_a_closed_slot_is_proven(width: str) -> None:
    outcome = compile(SOURCE.format(width=width), "bag.wale", shipped(), Changes())
    assert outcome.proven, outcome.diagnostics
    assert outcome.glued is not None
    assert not any(place.edge.startswith("pocket") for opening in outcome.glued.groups[0].openings for place in opening.edges)
