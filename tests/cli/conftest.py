"""A sound source on disk."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))
from bad_sources import SOUND


@pytest.fixture
def sound(tmp_path: Path) -> Path:
    """A source that builds, in a folder of its own."""
    path = tmp_path / "slackwater.wale"
    path.write_text(SOUND, encoding="utf-8")
    return path
