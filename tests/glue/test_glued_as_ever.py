"""Every shipped garment and one of each kind that is drawn, put together: seams, lines, openings and the order of work as ever."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.kept import KEPT, kept

NOT_WATCHED = True


@pytest.mark.parametrize("name", KEPT)
def test_a_garment_is_put_together_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    assert kept("glued", name) == snapshot
