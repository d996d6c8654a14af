"""What is reported of two numbers that have to be alike."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.report.said import Said

Told = Iterator[tuple[Said, int, int]]
"""(where, counted, knitted)."""
