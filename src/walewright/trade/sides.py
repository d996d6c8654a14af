"""Left and right: as a piece hangs on the bed, its purl side to the knitter."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

EdgeSide = Literal["left", "right"]

WhichEdges = Literal["both", EdgeSide]
"""Which of the two outer edges of a piece are meant."""

SIDES: tuple[EdgeSide, EdgeSide] = ("left", "right")

WHICH_EDGES: tuple[WhichEdges, ...] = ("both", *SIDES)

OTHER_SIDE: Mapping[EdgeSide, EdgeSide] = {"left": "right", "right": "left"}
