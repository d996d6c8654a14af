"""A sound source on disk."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.bad_sources import SOUND


@pytest.fixture
def sound(tmp_path: Path) -> Path:
    """A source that builds, in a folder of its own."""
    path = tmp_path / "slackwater.wale"
    path.write_text(SOUND, encoding="utf-8")
    return path
