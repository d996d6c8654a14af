"""Which lap is meant by two edges that meet: both have to be named, in either order, each with its edge or as a whole."""

from __future__ import annotations

from dataclasses import replace

from tests.fit.wardrobe import CARDIGAN, HEAD
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Origin
from walewright.design.model.wearing import Lap
from walewright.fit.girths import lap_of
from walewright.fit.loops import LoopEnd
from walewright.pipeline import understood

OVER, UNDER, APART = (LoopEnd(key, key) for key in (("left_front", "edge", 1), ("right_front", "edge", 1), ("back", "armhole", 1)))


def test_a_lap_is_of_both_edges_that_it_names() -> None:
    design = understood(HEAD + CARDIGAN, "small.wale", shipped(), Changes()).design
    assert design is not None
    whole = Lap(("left_front", ""), ("right_front", ""), (), Origin("lap"))
    by_edge = Lap(("left_front", "edge"), ("right_front", "edge"), (), Origin("lap"))
    elsewhere = Lap(("left_front", "end"), ("right_front", "end"), (), Origin("lap"))
    for lap in (whole, by_edge):
        lapped = replace(design, laps=(elsewhere, lap))
        assert lap_of(lapped, (OVER, UNDER)) is lap
        assert lap_of(lapped, (UNDER, OVER)) is lap
        assert lap_of(lapped, (OVER, APART)) is None
        assert lap_of(lapped, (APART, UNDER)) is None
    assert lap_of(replace(design, laps=(elsewhere,)), (OVER, UNDER)) is None
    assert lap_of(replace(design, laps=()), (OVER, UNDER)) is None
