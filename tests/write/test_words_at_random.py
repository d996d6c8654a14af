"""Garments of many kinds, drawn at random: their words, read back, are the work that was planned; and no line of them is longer
than the page."""

from __future__ import annotations

import pytest

from tests.made_of import drawn_at_random, one_of_each_kind, read
from walewright.write.plain import WIDTH


@pytest.mark.parametrize(("drawer", "seed"), one_of_each_kind()[::3])
def test_the_words_are_the_plan(drawer: str, seed: int) -> None:
    outcome = drawn_at_random(drawer, seed)
    assert read(outcome, outcome.plain_text) == outcome.works
    assert all(len(line) <= WIDTH for line in outcome.plain_text.splitlines())
