"""What goes round a body steps from size to size as the body does: no step is nil where the body grows, and none is much more."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.whole.shipped_once import compiled

AWAY_CM = 2.2
"""By how much a step may be off the body's: rows and stitches go by whole numbers."""


@pytest.mark.parametrize(("name", "body"), [("anemone", "bust"), ("shoal", "chest"), ("limpet", "head"), ("skerry", "head")])
def test_steps_follow_the_body(name: str, body: str) -> None:
    made = compiled(name)
    assert made.design is not None
    assert made.fit is not None
    fitted = next(m.values for m in made.design.measurements if m.name == body)
    girth = next((g.values for g in made.fit.girths if g.body), made.fit.girths[0].values)
    for (low, high), (small, large) in zip(pairwise(fitted), pairwise(girth), strict=True):
        assert large > small
        assert abs((large - small) - (high - low) * girth[0] / fitted[0]) <= AWAY_CM
