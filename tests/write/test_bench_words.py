"""The words of bench copies, move by move, in each language: read back, they are the moves that were planned."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.made_of import FEW, bench_text, made, read, without_checks
from walewright import bed
from walewright.pipeline import bed_of

RICH = ("mooring", "dunlin", "bollard", "hawser", "barnacle", "curlew", "driftline", "halyard", "limpet")


@pytest.mark.parametrize("name", RICH)
@pytest.mark.parametrize("language", ["german", "english"])
def test_the_lines_are_the_moves_of_the_plan(name: str, language: str) -> None:
    outcome = made(name, language, FEW[name][:1])
    found = read(outcome, bench_text(outcome))
    assert without_checks(found) == without_checks(outcome.works)


@pytest.mark.parametrize("language", ["german", "english"])
def test_lace_moved_in_another_order_is_the_same_fabric(language: str) -> None:
    outcome = made("anemone", language, FEW["anemone"][:1])
    assert outcome.design is not None
    found = read(outcome, bench_text(outcome))
    assert bed.knit(found[0], bed_of(outcome.design)) == outcome.results[0]


@pytest.mark.parametrize("language", ["german", "english"])
@pytest.mark.parametrize("name", ["mooring", "curlew"])
def test_a_whole_copy_as_ever(name: str, language: str, snapshot: SnapshotAssertion) -> None:
    assert bench_text(made(name, language, FEW[name][:1])) == snapshot
