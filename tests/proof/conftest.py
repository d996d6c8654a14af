"""Whatever the tests of this stage have proven, kept."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.as_ever import kept_as_ever, watched


@pytest.fixture(autouse=True)
def proven_as_ever(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch, snapshot: SnapshotAssertion) -> Iterator[None]:
    """What holds of each size, and what does not."""
    names = ("_size", "seam_proofs", "merged", "pictures", "float_warnings")
    made = watched(monkeypatch, import_module("walewright.proof.prove"), {name: lambda given: given for name in names})
    yield
    kept_as_ever(made, request, snapshot)
