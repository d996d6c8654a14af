"""A page of one size has the numbers that the graded page has in that size."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import pytest

from tests.whole.shipped_once import compiled
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes

PATTERNS = Path(__file__).resolve().parents[2] / "patterns"
GIVEN = shipped()


def regraded(name: str, **given: object) -> pipeline.Outcome:
    path = PATTERNS / f"{name}.wale"
    return pipeline.compile(path.read_text(encoding="utf-8"), path.name, GIVEN, Changes(**given))  # type: ignore[arg-type]


@pytest.mark.parametrize("name", ["plover", "tidewrack", "limpet", "whimbrel"])
def test_a_size_has_the_numbers_of_the_graded_page(name: str) -> None:
    graded = compiled(name)
    assert graded.counts is not None
    for size, counted in zip(graded.counts.sizes[1:4], graded.counts.sizes[2:5], strict=False):
        alone = regraded(name, sizes=(size.size, counted.size))
        assert alone.proven
        assert alone.counts is not None
        assert [one.pieces for one in alone.counts.sizes] == [size.pieces, counted.pieces]
        if graded.counts.parted is None:
            assert alone.counts.sizes == (size, counted)


def test_the_sizes_differ_where_each_is_counted_by_itself() -> None:
    """What the test above would see: in this garment the other sizes have a say in the numbers."""
    graded, by_itself = compiled("plover"), regraded("plover", sizes=("M",))
    understood = pipeline.understood(by_itself.text, by_itself.file, GIVEN, Changes(sizes=("M",)))
    alone = pipeline.from_design(understood)
    assert graded.counts is not None
    assert alone.counts is not None
    at = [size.size for size in graded.counts.sizes].index("M")
    assert by_itself.counts is not None
    assert by_itself.counts.sizes[0] == graded.counts.sizes[at] != alone.counts.sizes[0]


def test_a_size_with_figures_of_ones_own_is_counted_by_itself() -> None:
    own = Changes(sizes=("M",), tensions={"plain": "14 st 20 rows"})
    assert not own.only_choose_sizes
    assert replace(own, tensions={}).only_choose_sizes
    assert not Changes().only_choose_sizes
    assert Changes(sizes=("M",), dials={"plain": "6"}).only_choose_sizes


def test_a_size_is_made_though_another_cannot_be() -> None:
    """One size is wider than the bed, so the pattern is not made; the other one is, by itself."""
    blocks = (PATTERNS.parent / "docs" / "errors" / "README.md").read_text(encoding="utf-8")
    panel = re.search(r"```wale frame panel\n(.*?)```", blocks, re.DOTALL)
    assert panel is not None
    text = (
        panel.group(1).replace("sizes S M\n", "sizes S M\n    across 40 120 cm\n").replace("start 40 cm wide", "start across wide")
    )
    together, small, large = (pipeline.compile(text, "panel.wale", GIVEN, Changes(sizes=sizes)) for sizes in (None, ("S",), ("M",)))
    assert [found.code for found in together.diagnostics] == ["wider-than-bed"]
    assert small.proven
    assert [found.code for found in large.diagnostics] == ["wider-than-bed"]
