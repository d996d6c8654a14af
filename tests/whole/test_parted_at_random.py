"""Pieces with openings side by side, drawn at random: each is proven, and none of its damages is."""

from __future__ import annotations

import pytest

from tests.draws import few_of
from tests.whole.parted_at_random import parted
from tests.whole.test_garments_at_random import looked_at

DRAWS = 200


@pytest.mark.parametrize("seed", few_of(range(DRAWS), 6))
def test_a_piece_in_several_parts(seed: int) -> None:
    looked_at(parted(seed))
