"""Garments that have what there is to be counted, from their sources to the counts of a size or two: stitches, rows and schedules
as ever. What is solved in other words and comes to the same is no change here."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.brief import brief
from tests.whole.shipped_once import SHIPPED, source
from walewright.design import Changes
from walewright.pipeline import counted

SHOWN: dict[str, tuple[str, ...]] = {
    # Whole repeats, panels, motifs, cables, latched rib.
    "hawser": ("S", "2X"),
    "shoal": ("2_years", "10_years"),
    "avocet": (),
    # Free levels, caps, set-in sleeves, bands, buttonholes.
    "redshank": ("2X",),
    "marram": ("XS",),
    # Wedges, repeats, slots, openings, what is begun along edges.
    "kittiwake": ("S",),
    "mooring": ("toddler", "woman"),
    "saltmarsh": ("M",),
    "driftline": (),
    "curlew": ("2_years", "10_years"),
}

TOLD_ELSEWHERE = frozenset({"cm", "one_cm", "other_cm"})
"""Lengths of edges, which are measured on what is counted."""


@pytest.mark.parametrize("name", SHOWN)
def test_a_garment_is_counted_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    made = counted(source(name), f"{name}.wale", SHIPPED, Changes(SHOWN[name] or None))
    assert made.counts is not None, made.diagnostics
    assert brief("counts", made.counts, TOLD_ELSEWHERE) == snapshot
