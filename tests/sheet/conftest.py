"""The pullover built by hand, for every test here."""

from tests.sheet.pullover import pattern

__all__ = ["pattern"]
