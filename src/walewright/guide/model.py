"""What the guide says, as data."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Advice:
    """A short heading and what to do, in order where `ordered`."""

    title: str
    lines: tuple[str, ...]
    ordered: bool = False
