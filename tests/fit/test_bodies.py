"""What is the body of a garment, and what only looks like one: tubes that open further up."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import SHIPPED, source
from walewright.design import Changes
from walewright.fit import Fit
from walewright.pipeline import compile

KITTIWAKE = source("kittiwake").replace("finished bust 2 * half, fits bust\n", "")


def fit_of(text: str, size: str) -> Fit:
    made = compile(text, "worn.wale", SHIPPED, Changes((size,)))
    assert made.proven
    assert made.fit is not None
    return made.fit


@pytest.mark.parametrize(("text", "size"), [(source("driftline"), "woman_shoe_7"), (KITTIWAKE, "M")])
def test_a_sock_s_leg_and_sleeves_knitted_from_cuff_to_cuff_are_no_body(text: str, size: str) -> None:
    found = fit_of(text, size)
    assert found.girths
    assert [g.at for g in found.girths if g.body] == []
    assert found.eases == ()


def test_a_pullover_has_one() -> None:
    found = fit_of(source("tidewrack"), "M")
    assert [g.piece for g in found.girths if g.body] == ["back"]
    assert found.eases
