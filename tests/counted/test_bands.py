"""Bands in centimetres: what is counted of them in the fabric that they are knitted in."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.counted.test_piece import asked
from tests.solve.workshop import origin
from walewright.counted.bands import band_fabric, depth_cm, rim_cm
from walewright.counted.model import SizedBand
from walewright.design.model import Band, Edging


@pytest.mark.parametrize("kind", ["plain", "folded", "chained"])
def test_a_band_is_as_deep_as_its_rows_and_as_long_as_its_stitches(kind: str) -> None:
    """The rib has 4 stitches and 6 rows to the cm; the 5 cm that were asked for are not what 28 rows come to."""
    edging = Edging("welt", "rib", (5.0,), "after", "chain", origin("welt"), kind)
    band = Band("collar", "welt", (), origin("collar"))
    design = replace(asked().design, edgings=(edging,), bands=(band,))
    counted = SizedBand("collar", 90, 28, (), origin("collar"))
    assert band_fabric(design, "collar").name == "rib"
    assert depth_cm(design, counted) == pytest.approx(28 / 6)
    assert rim_cm(design, counted) == pytest.approx(90 / 4)
