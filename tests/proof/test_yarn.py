"""Yarn for a size: by the swatch's weight where it was weighed, else by the estimated loop."""

from __future__ import annotations

from dataclasses import replace

import pytest
from garment import regraded, tidewrack

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design, Fabric
from walewright.pipeline import compile
from walewright.proof.yarn import SPARE, yarn_uses


@pytest.fixture(scope="module")
def design() -> Design:
    found = compile(tidewrack(), "tidewrack.wale", shipped(), Changes(sizes=("M",))).design
    assert found is not None
    return found


def test_a_swatch_of_loops_weighs_a_swatch(design: Design) -> None:
    plain = design.fabric("plain")
    one = yarn_uses(design, {})[0].grams
    two = yarn_uses(design, {(plain.yarn, plain.tension): 40 * 60})[0].grams
    assert two - one == pytest.approx(62 * (1 + SPARE))
    # Both swatches, with the stitches and rows round the measured block, are knitted from the same yarn before the garment.
    assert one == pytest.approx((62 + 56) * (50 * 94) / (40 * 60) * (1 + SPARE))


def test_balls_are_whole_and_enough(design: Design) -> None:
    for loops in (0, 10_000, 23_000, 41_000):
        (use,) = yarn_uses(design, {("wool", "4"): loops})
        assert use.balls * 100 >= use.grams > (use.balls - 1) * 100
        assert use.metres == pytest.approx(use.grams * 1.2)


def test_an_unweighed_swatch_is_estimated_and_said_to_be(design: Design) -> None:
    unweighed = replace(design, fabrics=tuple(replace(f, swatch_grams=0.0) for f in design.fabrics))
    (weighed,) = yarn_uses(design, {("wool", "4"): 30_000})
    (guessed,) = yarn_uses(unweighed, {("wool", "4"): 30_000})
    assert "estimated" in guessed.way
    assert "estimated" not in weighed.way
    # The example's yarn is an ordinary one, so the estimate is not wild.
    assert guessed.grams == pytest.approx(weighed.grams, rel=0.4)


def test_larger_sizes_take_more() -> None:
    outcome = regraded(13, 18.5)
    assert outcome.proof is not None
    grams = [s.yarn[0].grams for s in outcome.proof.sizes]
    assert grams == sorted(grams)


def test_fabrics_of_one_yarn_and_tension_share_their_loops(design: Design) -> None:
    """The loops are counted once, at the weight of the heavier fabric."""
    rib = replace(design.fabric("rib"), tension=design.fabric("plain").tension)
    heavy = replace(rib, swatch_grams=2 * rib.swatch_grams)
    plain = [f for f in design.fabrics if f.name != "rib"]
    key = ("wool", rib.tension)

    def knitted(*fabrics: Fabric) -> float:
        one = replace(design, fabrics=fabrics)
        return yarn_uses(one, {key: 10_000})[0].grams - yarn_uses(one, {})[0].grams

    assert knitted(*plain, heavy) == pytest.approx(knitted(heavy))
    assert knitted(heavy, *plain) == pytest.approx(knitted(heavy))
    assert knitted(heavy) > knitted(*plain)
