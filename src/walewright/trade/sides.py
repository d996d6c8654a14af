"""Left and right: as a piece hangs on the bed, its purl side to the knitter."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

EdgeSide = Literal["left", "right"]

WhichEdges = Literal["both", EdgeSide]
"""Which of the two outer edges of a piece are meant."""

SIDES: tuple[EdgeSide, EdgeSide] = ("left", "right")

WHICH_EDGES: tuple[WhichEdges, ...] = ("both", *SIDES)

CentreSide = Literal["", "own", EdgeSide]
"""On which side of the centre line a place is: "own" of an edge on its own side, or, of a piece that lies beside the centre line,
on that of the piece; "" where a place is no distance from the centre line."""

PlaceOf = Literal["own", EdgeSide, "edge"]
"""What the place of a line inside a piece is measured from: the centre line, as of `CentreSide`, or the edge."""

OTHER_SIDE: Mapping[EdgeSide, EdgeSide] = {"left": "right", "right": "left"}

EdgePart = Literal["whole", "left", "centre", "right"]
"""Of an edge: all of it; of an opening's, or of one called on both sides, that part."""

GAP_PARTS: tuple[EdgePart, ...] = ("left", "centre", "right")
"""Of an opening's edge, or of one called on both sides, from left to right as the piece hung on the bed."""

EdgeEnd = Literal["bottom", "top", "left", "right"]
"""An end of an edge: of rows the bottom or the top one, of stitches the left or the right one, as the piece hung on the bed."""

OTHER_END: Mapping[EdgeEnd, EdgeEnd] = {"bottom": "top", "top": "bottom", "left": "right", "right": "left"}
