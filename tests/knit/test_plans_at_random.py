"""Garments of every kind, drawn at random: what is planned and knitted is what was counted, and told move by move the same."""

from __future__ import annotations

import pytest

from tests.made_of import bench_text, drawn_at_random, faults_of, one_of_each_kind, read, without_checks
from walewright import bed
from walewright.pipeline import bed_of


@pytest.mark.parametrize(("drawer", "seed"), one_of_each_kind())
def test_what_is_planned_is_what_was_counted(drawer: str, seed: int) -> None:
    outcome = drawn_at_random(drawer, seed)
    assert outcome.design is not None
    assert faults_of(outcome, outcome.works, outcome.results) == []
    told = read(outcome, bench_text(outcome))[0]
    if without_checks([told]) != without_checks(outcome.works[:1]):
        assert bed.knit(told, bed_of(outcome.design)) == outcome.results[0]
