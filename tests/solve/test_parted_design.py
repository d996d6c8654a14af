"""A band wider than the bed: the design that later stages are given has its parts for bands, with cuts and joins of their own, and
all else as it was."""

from __future__ import annotations

from dataclasses import fields

import pytest

from tests.whole.shipped_once import SHIPPED, source
from walewright.design import Changes
from walewright.design.model import Band, EdgeCut, EdgeJoin, EdgeName
from walewright.pipeline import counted, understood


@pytest.mark.parametrize("size", ["XS", "2X"])
def test_a_design_with_a_band_in_parts_is_whole(size: str) -> None:
    text, changes = source("whimbrel"), Changes((size,))
    whole = understood(text, "whimbrel.wale", SHIPPED, changes).design
    made = counted(text, "whimbrel.wale", SHIPPED, changes)
    assert whole is not None
    assert made.design is not None
    assert made.counts is not None
    assert made.counts.parted is not None
    parted = made.counts.parted.of(whole)
    assert parted == made.design
    for name, kind in (("bands", Band), ("cuts", EdgeCut), ("joins", EdgeJoin), ("free", EdgeName)):
        assert all(isinstance(one, kind) for one in getattr(parted, name)), name
    others = {f.name for f in fields(whole)} - {"bands", "cuts", "joins", "free"}
    assert all(getattr(parted, name) == getattr(whole, name) for name in others)
    # Each part says of which band it is one, and of how many; one join more puts each to the next.
    own = [band for band in parted.bands if band.part_of]
    assert {(band.part_of, band.parts) for band in own} == {("front_band", len(own))}
    assert len(own) > 1
    assert len(parted.joins) >= len(whole.joins)
    assert [b for b in parted.bands if not b.part_of] == [b for b in whole.bands if b.name != "front_band"]
    assert made.glued == made.counts.parted.glued
