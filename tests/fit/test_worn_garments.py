"""Garments that have what there is to be worn, in their smallest and largest sizes: girths, ease, reach, openings, what passes
what, buttons and what is needed, as ever."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.brief import brief
from tests.fit.tried_on import worn
from tests.whole.shipped_once import source
from walewright.report.english import in_english

SHOWN: dict[str, tuple[str, ...]] = {
    # Necks, cuffs and sleeves, of each construction: dropped, set in, saddle, raglan; hoods and collars.
    "tidewrack": ("XS", "4X"),
    "saltmarsh": ("XS", "2X"),
    "halyard": ("S", "2X"),
    "spindrift": ("2_years", "12_years"),
    "fulmar": ("XS", "XL"),
    "teasel": ("3_months", "24_months"),
    # Laps and buttons; a neck that nothing may pass; a band in parts.
    "marram": ("XS", "2X"),
    "samphire": ("2_years", "10_years"),
    "sanderling": ("3_months", "24_months"),
    "turnstone": ("XS", "2X"),
    "whimbrel": ("XS", "2X"),
    "dunlin": ("2_years", "10_years"),
    # Knitted from side to side, in gores, with pleats: girths along rows, waists.
    "kittiwake": ("XS", "XL"),
    "skerry": ("toddler", "man"),
    "limpet": ("baby", "man"),
    "windrow": ("XS", "2X"),
    "curlew": ("2_years", "10_years"),
    # Hands and feet.
    "dotterel": ("child", "large"),
    "mooring": ("toddler", "man"),
    "driftline": ("toddler_shoe_5", "man_shoe_12"),
    # What goes round nothing.
    "breakwater": ("doll", "bed"),
    "sandbar": ("one",),
}


@pytest.mark.parametrize("name", SHOWN)
def test_a_garment_is_worn_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    made = worn(source(name), "", SHOWN[name])
    told = tuple(in_english(d).message for d in made.told)
    assert brief("fit", made.fit) + brief("told", told) == snapshot
