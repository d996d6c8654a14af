"""One technique: when it is needed, and what is drawn."""

from __future__ import annotations

from collections.abc import Callable

from walewright.figures.hands.scene import Scene
from walewright.record import record


@record
class Technique:
    """`when` are the features of a pattern that need it, any of them: the class of a step ("WasteStart"), or such as "cell hole",
    "edging folded", "join grafted"; see `handwork.features`. What is said of it stands in the guide under its `key`."""

    key: str
    when: tuple[str, ...]
    draw: Callable[[Scene], None]
