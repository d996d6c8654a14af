"""The builder of designs, for every test of counted pieces."""

from __future__ import annotations

import pytest

from tests.solve.workshop import Workshop


@pytest.fixture
def workshop() -> type[Workshop]:
    """The builder of designs: `workshop(sizes, across, up, needles)`."""
    return Workshop
