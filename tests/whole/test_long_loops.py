"""Stitches drawn long are hand work, one by one: the page says how many there are, as the bed counted them."""

from __future__ import annotations

from collections import Counter

import pytest

from tests.whole.garment import SHIPPED
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.knit.operations import DrawLong
from walewright.pipeline import compile
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
    (fact,) = long_loops(LANGUAGE, made.proof, "wrap")
    rows = made.proof.sizes[0].pieces[0].long_rows
    assert fact.text.startswith(f"by hand, at most {max(rows)} (")
    assert f"{sum(rows)} (" in fact.text
    assert list(long_loops(LANGUAGE, made.proof, "nothing")) == []


@pytest.mark.parametrize("edging", ["mock rib 2 by 1, inside at tension 6", "folded, inside at tension 6"])
def test_long_loops_in_the_row_that_closes_a_fold_belong_to_the_start(edging: str) -> None:
    """The needles held in that row have yarn laid over them, and no stitch of their own in it."""
    text = f"""\
pattern "Long"
sizes one
    length 40 cm
machine standard
yarn wool "wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
chart grid
    key i long
    key . knit
    | . . . . |
    | i . . . |
    repeat 4 stitches
fabric patterned
    chart grid in wool at tension 7, 2 edge stitches
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
edging welt in plain, 1.7 cm deep, {edging}, knitted first
piece back in patterned
    levels hem 0 cm, top length
    start 20 cm wide on waste yarn, with welt
    end cast off
"""
    made = compile(text, "long.wale", SHIPPED, Changes())
    assert made.proven, [(d.code, d.facts) for d in made.diagnostics]
