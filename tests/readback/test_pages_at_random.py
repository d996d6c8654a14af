"""Garments of many kinds, drawn at random, in German: what is read is what was planned, of the pages and of bench copies."""

from __future__ import annotations

import pytest

from tests.made_of import bench_text, drawn_at_random, one_of_each_kind, read, without_checks
from walewright import bed
from walewright.pipeline import bed_of


@pytest.mark.parametrize(("drawer", "seed"), one_of_each_kind()[::2])
def test_what_is_read_is_the_plan(drawer: str, seed: int) -> None:
    outcome = drawn_at_random(drawer, seed, "german")
    assert outcome.design is not None
    assert read(outcome, outcome.plain_text) == outcome.works
    told = read(outcome, bench_text(outcome))[0]
    if without_checks([told]) != without_checks(outcome.works[:1]):
        assert bed.knit(told, bed_of(outcome.design)) == outcome.results[0]
