"""Swatches that would weigh more than what is made are knitted smaller, and yarn is reckoned with those."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import compiled
from walewright.guide.english import LANGUAGE
from walewright.proof.yarn import SMALL_CM, SWATCH_STITCHES
from walewright.sheet.supplies import tensions


def grams(name: str) -> list[tuple[float, float]]:
    _, _, _, proof = compiled(name).result()
    return [
        (sum(u.garment_grams for u in size.yarn if u.kind == "yarn"), sum(u.swatch_grams for u in size.yarn if u.kind == "yarn"))
        for size in proof.sizes
    ]


@pytest.mark.parametrize("name", ["dotterel", "mooring"])
def test_swatches_do_not_outweigh_what_is_made(name: str) -> None:
    design, _, _, proof = compiled(name).result()
    assert all(swatches < garment for garment, swatches in grams(name))
    assert {fabric for fabric, *_ in proof.small_swatches} == {f.name for f in design.fabrics if not f.swatch_of}
    for fabric, stitches, rows in proof.small_swatches:
        knit = design.fabric(fabric)
        assert SMALL_CM <= stitches / knit.stitches_per_cm < SMALL_CM + 2
        assert SMALL_CM <= rows / knit.rows_per_cm < SMALL_CM + 2
    weighed = sum(
        (stitches + SWATCH_STITCHES)
        * rows
        * design.fabric(f).swatch_grams
        / (design.fabric(f).swatch_stitches * design.fabric(f).swatch_rows)
        for f, stitches, rows in proof.small_swatches
    )
    assert grams(name)[0][1] == pytest.approx(weighed, rel=0.02)


def test_the_page_says_how_small() -> None:
    design, _, _, proof = compiled("dotterel").result()
    told = [t.text for t in tensions(LANGUAGE, design, "cm", proof.small_swatches)]
    assert all("For something so small 14 stitches by" in text for text in told)


@pytest.mark.parametrize("name", ["bollard", "tidewrack", "breakwater"])
def test_whole_swatches_for_what_weighs_more(name: str) -> None:
    design, _, _, proof = compiled(name).result()
    assert proof.small_swatches == ()
    assert not any("so small" in t.text for t in tensions(LANGUAGE, design, "cm", proof.small_swatches))
