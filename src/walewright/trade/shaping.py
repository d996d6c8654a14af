"""How an edge goes, and what is done with its stitches."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.record import record

EdgePath = Literal["straight", "slope", "curve", "arch", "steps", "rate"]
"""straight | slope | curve: level at first, upright in the end | arch: upright at first, level in the end | steps: so many at
once, so often | rate: so many stitches every so many rows."""

RunPath = Literal[EdgePath, "across"]
"""across: no rows: the loops are hung back evenly on more or fewer needles."""

WayKind = Literal["simple", "fashioned", "inside"]
"""simple: at the last stitch | fashioned: so many stitches in | inside: along lines within the piece, all that lies outside them
moved with it."""

LargerSteps = Literal["", "first", "last"]
"""Where steps differ by a stitch, which come first: the larger ones, or the others; "" where they do not differ."""

WedgeKind = Literal["in", "out", "both"]
"""in: held step by step from the edge inwards, then all returned | out: held at once, returned step by step outwards | both."""


def rows_inside(inwards: bool) -> int:
    """Rows from one move along a line within a piece to the next, at least: all stitches outside it are moved. Darts lose a stitch
    every 4th row, gussets gain one every 3rd or 4th (common practice)."""
    return 4 if inwards else 3


NeckShape = Literal["round", "v", "square"]

OpeningShape = Literal[NeckShape, "edges"]
"""edges: each edge is given by itself."""


PATHS: tuple[EdgePath, ...] = ("straight", "slope", "curve", "arch", "steps", "rate")


@record
class WedgeFacts:
    """What is asked of a wedge."""

    rows_a_step: int
    """Rows that a step of it takes."""


WEDGES: Mapping[WedgeKind, WedgeFacts] = {"in": WedgeFacts(2), "out": WedgeFacts(2), "both": WedgeFacts(4)}

WAYS: tuple[WayKind, ...] = ("simple", "fashioned", "inside")


@record
class NeckFacts:
    """What is asked of a neck's shape."""

    path: EdgePath
    """How its edges go."""
    flat_share: float
    """How much of its width is taken at once at the bottom, where its author does not say."""


NECKS: Mapping[NeckShape, NeckFacts] = {
    "round": NeckFacts("curve", 0.5),
    "v": NeckFacts("slope", 0.0),
    "square": NeckFacts("straight", 1.0),
}
