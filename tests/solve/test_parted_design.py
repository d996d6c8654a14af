"""A band wider than the bed: the design that later stages are given has its parts for bands, with cuts and joins of their own, and
all else as it was."""

from __future__ import annotations

from dataclasses import fields

import pytest

from tests.fit.test_needed import LONG
from tests.whole.shipped_once import SHIPPED, source
from walewright.design import Changes
from walewright.design.model import Band, EdgeCut, EdgeJoin, EdgeName
from walewright.pipeline import compile, counted, understood


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


def test_a_size_by_itself_has_the_parts_that_it_has_among_all() -> None:
    """Though fewer would do: two papers of one size say the same."""
    text = LONG.format(copies="").replace("sizes one", "sizes short long").replace("length 100 cm", "length 60 150 cm")
    every = compile(text, "long.wale", SHIPPED, Changes())
    alone = compile(text, "long.wale", SHIPPED, Changes(("short",)))
    fewer = counted(text, "long.wale", SHIPPED, Changes(("short",)))
    assert every.design is not None
    assert alone.design is not None
    assert fewer.design is not None
    assert [len(made.design.bands) for made in (every, alone, fewer) if made.design] == [3, 3, 1], "by itself it is whole"
    for own, among in zip(alone.design.bands, every.design.bands, strict=True):
        assert (own.name, own.along, own.part_of, own.parts) == (among.name, among.along, among.part_of, among.parts)
        assert sum(own.holes) == (among.holes[0] if among.holes else 0)
    assert [cut.at for cut in alone.design.cuts] == [cut.at[:1] for cut in every.design.cuts]
    assert alone.proven, alone.diagnostics
    assert [d.code for d in alone.diagnostics] == [d.code for d in every.diagnostics]
