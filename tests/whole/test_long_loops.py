"""Stitches drawn long are hand work, one by one: the page says how many there are, as the bed counted them."""

from __future__ import annotations

from collections import Counter

import pytest

from tests.whole.shipped_once import GARMENTS, compiled
from walewright.knit.operations import DrawLong
from walewright.sheet.facts import long_loops


@pytest.mark.parametrize("name", GARMENTS)
def test_the_loops_drawn_long_are_those_that_hands_draw(name: str) -> None:
    made = compiled(name)
    assert made.proof is not None
    for work, size in zip(made.works, made.proof.sizes, strict=True):
        drawn = Counter[str]()
        for block in work.blocks:
            drawn[block.name] += sum(isinstance(op, DrawLong) for op in block.operations)
        assert {p.name: sum(p.long_rows) for p in size.pieces} == {p.name: drawn[p.name] for p in size.pieces}


def test_they_are_told_where_there_are_any() -> None:
    made = compiled("barnacle")
    assert made.proof is not None
    (fact,) = long_loops(made.proof, "wrap")
    rows = made.proof.sizes[0].pieces[0].long_rows
    assert fact.text.startswith(f"by hand, at most {max(rows)} (")
    assert f"{sum(rows)} (" in fact.text
    assert list(long_loops(made.proof, "nothing")) == []
