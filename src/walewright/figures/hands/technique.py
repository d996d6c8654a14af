"""One technique: when it is needed, what is said and what is drawn."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from walewright.figures.hands.scene import Scene


@dataclass(frozen=True, slots=True)
class Technique:
    """`when` are the features of a pattern that need it, any of them: the class of a step ("WasteStart"), or such as "cell hole",
    "edging folded", "join grafted"; see `handwork.features`. `shown` says what the drawing shows."""

    title: str
    when: tuple[str, ...]
    text: str
    shown: str
    draw: Callable[[Scene], None]
