"""The builder of designs, for every test of this stage; and whatever they have counted, kept."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.as_ever import kept_as_ever, watched
from tests.kept import programme_parts
from tests.solve.workshop import Workshop
from walewright.solve import solver


@pytest.fixture
def workshop() -> type[Workshop]:
    """The builder of designs: `workshop(sizes, across, up, needles)`."""
    return Workshop


@pytest.fixture(autouse=True)
def counted_as_ever(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch, snapshot: SnapshotAssertion) -> Iterator[None]:
    """Every line of every programme, the counts, and what is told of what cannot be counted."""
    made = watched(
        monkeypatch,
        solver,
        {
            "programme_of": lambda given: programme_parts(given[0]),
            "_attempted": lambda given: given,
            "_at_a_glance": lambda given: given,
            "helped": lambda given: given,
        },
    )
    yield
    kept_as_ever(made, request, snapshot)
