"""Every shipped garment and one of each kind that is drawn, understood: every field of every part of a design as ever."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.kept import KEPT, kept

NOT_WATCHED = True


@pytest.mark.parametrize("name", KEPT)
def test_a_design_is_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    assert kept("design", name) == snapshot
