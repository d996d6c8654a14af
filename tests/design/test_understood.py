"""Garments that have what there is to be said, from their text to their designs: what is written is understood as ever."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.brief import brief
from tests.whole.shipped_once import SHIPPED, source
from walewright.design import Changes
from walewright.pipeline import understood

SHOWN: dict[str, Changes] = {
    # Charts, their own and shipped ones, motifs, stripes, pictures, cables.
    "shoal": Changes(("2_years", "10_years")),
    "hawser": Changes(("M",)),
    "saltmarsh": Changes(("M",)),
    # Wedges, repeats, laps, buttonholes, passages, slots.
    "kittiwake": Changes(("XS", "XL")),
    "peatbank": Changes(("M",), tensions={"plain": "17 st 24 rows"}),
    "samphire": Changes(("2_years",)),
    "mooring": Changes(("woman",)),
    # Choices, needles out of work, shapes.
    "redshank": Changes(("M",), measures={"bust": "97 cm"}, chosen={"neckline": "v"}),
    "curlew": Changes(("6_years",), bed="standard"),
}

TOLD_ELSEWHERE = frozenset({"texts", "making_up", "edition", "bodies", "as_written"})
"""The author's words, and the source's own figures beside those of a copy."""


@pytest.mark.parametrize("name", SHOWN)
def test_a_garment_is_understood_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    made = understood(source(name), f"{name}.wale", SHIPPED, SHOWN[name])
    assert made.design is not None, made.diagnostics
    reported = "".join(brief("reported", one) for one in made.diagnostics)
    assert brief("design", made.design, TOLD_ELSEWHERE) + reported == snapshot
