"""Steps of a part that waits for its turn, right out or on ravel cord."""

from __future__ import annotations

from typing import Literal

from walewright.knit.step import Step
from walewright.record import record

PartPlace = Literal["left", "middle", "right", "nth"]
"""Where a part lies among all: the outermost ones, the middle one of three, or, of more, the nth from the left."""


@record
class _OfPart(Step):
    """Of the part at `side`, needles `first`..`last`."""

    side: PartPlace
    first: int
    last: int


@record
class HoldPart(_OfPart):
    """Put all needles of the part into hold: they wait for their turn.

    `nth`: which part from the left it is, where that is said."""

    nth: int = 0


@record
class ReturnPart(_OfPart):
    """Return the part that waits to work."""

    nth: int = 0


@record
class PartOnCord(_OfPart):
    """Lay ravel cord by hand into the hooks of the part, those held for shaping included, and push its needles fully back: it
    waits `rows` rows for its turn."""

    rows: int
    nth: int = 0


@record
class DrawPartsCord(_OfPart):
    """Push the needles of the part that waits right out and draw the cord out: the part waits in hold then, as after
    `HoldPart`."""

    nth: int = 0
