"""Joins of ends of welts and bands: each garment is proven or truly told, and its instructions say all that it is glued by."""

from __future__ import annotations

import pytest

from tests.draws import few_of
from tests.whole.joined_ends_at_random import joined_ends
from tests.whole.test_bands_at_random import outcome_of, proven_or_told
from tests.whole.test_sewn_and_told import differences

DRAWS = 400


@pytest.mark.parametrize("seed", few_of(range(DRAWS), 12))
def test_drawn(seed: int) -> None:
    text = joined_ends(seed)
    proven_or_told(text)
    outcome = outcome_of(text)
    assert not outcome.proven or differences(outcome) == set(), text
