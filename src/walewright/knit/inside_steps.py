"""Steps of shaping along a line within a piece: all stitches outside it are moved one needle, `prongs` at a time."""

from __future__ import annotations

from walewright.knit.manners import EndsShaped
from walewright.knit.step import Step
from walewright.record import record


@record
class DecreaseOn(Step):
    """Decrease 1 at `ends`: the stitches outside needle `first` (of the left end) and `last` (of the right one) are moved inwards,
    beginning at that needle, which gets a second loop. Of one end both name its needle."""

    ends: EndsShaped
    first: int
    last: int
    prongs: int


@record
class DecreaseOuter(Step):
    """Decrease 1 at `ends`: the outer `stitches` are moved inwards, beginning with the innermost."""

    ends: EndsShaped
    stitches: int
    prongs: int


@record
class IncreaseBeside(Step):
    """Increase 1 at `ends`: the stitches outside those needles are moved outwards, beginning at the edge, and the gap is filled
    from the stitch below that of the needle."""

    ends: EndsShaped
    first: int
    last: int
    prongs: int


@record
class IncreaseOuter(Step):
    """Increase 1 at `ends`: the outer `stitches` are moved outwards, beginning at the edge, and the gap is filled."""

    ends: EndsShaped
    stitches: int
    prongs: int
