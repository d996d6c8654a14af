"""Garments of many kinds, drawn at random: each is proven, and none with the fabric of another of its sizes."""

from __future__ import annotations

import pytest

from tests.made_of import drawn_at_random, faults_of, one_of_each_kind


@pytest.mark.parametrize(("drawer", "seed"), one_of_each_kind()[1::2])
def test_a_fabric_is_proven_for_its_own_size_alone(drawer: str, seed: int) -> None:
    outcome = drawn_at_random(drawer, seed)
    assert faults_of(outcome, outcome.works, outcome.results) == []
    if len(outcome.works) > 1 and outcome.results[0].fabrics != outcome.results[-1].fabrics:
        assert faults_of(outcome, outcome.works, (*outcome.results[1:], outcome.results[0]))
