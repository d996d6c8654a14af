"""Whole sheets as they are composed, of a pullover made by hand and of garments that have what there is to be had. A change in any
of these is a change of what is printed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.sheet.dumped import dumped
from tests.whole.shipped_once import SHIPPED, source
from walewright import sheet
from walewright.bench_copies import bench_copy
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome, compile
from walewright.sheet.text_copy import text_copy

Make = Callable[..., Any]

SHOWN: dict[str, tuple[str, Changes, sheet.PageOptions]] = {
    # Picture knitting, stripes, a motif, a folded hem, linked shoulders, for children.
    "shoal": ("shoal", Changes(sizes=("2_years", "4_years")), sheet.PageOptions(units="cm", version="9.9", date="2026-01-31")),
    # Buttons, a lap, what is needed besides, grafted, for babies.
    "sanderling": ("sanderling", Changes(sizes=("3_months", "12_months")), sheet.PageOptions(paper="letter", units="in")),
    # A choice, and a copy regraded for one person.
    "redshank": (
        "redshank",
        Changes(sizes=("M",), chosen={"neckline": "v"}, measures={"bust": "97 cm"}, dials={"plain": "6"}),
        sheet.PageOptions(units="both"),
    ),
    # Cables and their charts in large print.
    "hawser": ("hawser", Changes(sizes=("M",)), sheet.PageOptions(large_print=True)),
    # Needles out of work, copies joined all round, an edging at the end.
    "curlew": ("curlew", Changes(sizes=("6_years", "8_years")), sheet.PageOptions()),
    # A hood, a part that waits on cord, bands: its bench copy alone.
    "fulmar": ("fulmar", Changes(sizes=("S", "XL")), sheet.PageOptions()),
}


@cache
def outcome(name: str) -> Outcome:
    garment, changes, _ = SHOWN[name]
    made = compile(source(garment), f"{garment}.wale", SHIPPED, changes)
    assert made.proven, made.diagnostics
    return made


def proven(made: Outcome) -> sheet.ProvenPattern:
    return sheet.ProvenPattern(*made.result(), made.fit, glued=made.glued)


def composed(name: str) -> sheet.Sheet:
    made = outcome(name)
    return sheet.compose(LANGUAGE, proven(made), SHOWN[name][2])


@pytest.mark.parametrize(("count", "units"), [(1, "in"), (3, "both")])
def test_a_pullover(pattern: Make, count: int, units: str, snapshot: SnapshotAssertion) -> None:
    assert dumped(pattern(count).sheet(units=units)) == snapshot


@pytest.mark.parametrize("name", [name for name in SHOWN if name != "fulmar"])
def test_garments(name: str, snapshot: SnapshotAssertion) -> None:
    assert dumped(composed(name), whole=False) == snapshot


@pytest.mark.parametrize("name", ["sanderling", "redshank", "shoal"])
def test_text_copies(name: str, snapshot: SnapshotAssertion) -> None:
    """But for the steps, which are the instructions' own."""
    made = outcome(name)
    told = text_copy(LANGUAGE, composed(name), proven(made), "The steps.\n", SHOWN[name][2].units)
    assert told == snapshot


@pytest.mark.parametrize("name", ["shoal", "fulmar"])
def test_bench_copies(name: str, snapshot: SnapshotAssertion) -> None:
    made = outcome(name)
    copy, faults = bench_copy(made, 0)
    assert faults == ()
    assert copy is not None
    document = sheet.compose_bench(LANGUAGE, replace(proven(made), instructions=copy.instructions), made.plans[0], SHOWN[name][2])
    pages = [(of.anchor, *(joined.anchor for joined in of.joined)) for of in document.sheets for _ in range(2)]
    assert dumped(sheet.with_heads(LANGUAGE, document, [*pages, ("pinned",), ()]), "bench", whole=False) == snapshot
