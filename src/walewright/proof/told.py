"""What is reported of two numbers that have to be alike."""

from __future__ import annotations

from collections.abc import Iterator

Told = Iterator[tuple[str, int, int]]
"""(where, counted, knitted)."""
