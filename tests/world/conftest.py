"""A sound source on disk, for every test here."""

from tests.cli.conftest import sound

__all__ = ["sound"]
