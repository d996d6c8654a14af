"""Whatever the tests of this stage have put together, kept."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.as_ever import kept_as_ever, watched
from walewright.glue import stage


@pytest.fixture(autouse=True)
def glued_as_ever(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch, snapshot: SnapshotAssertion) -> Iterator[None]:
    """Seams, lines, openings and order, and what is told of what does not hold together."""
    made = watched(monkeypatch, stage, {"_in_sizes_like": lambda given: given, "merged": lambda given: given})
    yield
    kept_as_ever(made, request, snapshot)
