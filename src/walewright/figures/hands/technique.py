"""One technique: when it is needed, and what is drawn."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from walewright.figures.hands.scene import Scene


@dataclass(frozen=True, slots=True)
class Technique:
    """`when` are the features of a pattern that need it, any of them: the class of a step ("WasteStart"), or such as "cell hole",
    "edging folded", "join grafted"; see `handwork.features`. What is said of it stands in the guide under its `key`."""

    key: str
    when: tuple[str, ...]
    draw: Callable[[Scene], None]
