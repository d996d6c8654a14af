"""What the counts of every shipped garment, and of one of each kind that is drawn, have to keep and are wished to come near: every
line of the integer programme as ever. Many a rule binds in few garments, so that the counts alone would not show that it is missing
or one off. Of those that are drawn, which are soon counted, the counts as well."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.kept import KEPT, kept

DRAWN = [name for name in KEPT if " " in name]


@pytest.mark.parametrize("name", KEPT)
def test_a_programme_is_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    assert kept("programme", name) == snapshot


@pytest.mark.parametrize("name", DRAWN)
def test_counts_are_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    assert kept("counts", name) == snapshot
