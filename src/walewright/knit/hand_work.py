"""Operations of hands within a row or at its end: yarn lifted off, drawn long, laid in or across; folds hung up, loops sewn off."""

from __future__ import annotations

from walewright.knit.needle import Side
from walewright.record import record


@record
class LiftOff:
    """The yarn that the last pass laid over the held needles `first`..`last` is lifted off their hooks: it floats past them, on
    the knitter's side."""

    first: int
    last: int


@record
class DrawLong:
    """The yarn that the last pass laid over the held needle `slot` is drawn through its loops by hand, to twice the length of a
    stitch beside it."""

    slot: int


@record
class LayIn:
    """Knit the held needles `needles` (rising) by hand, one loop each, with another yarn, going `to` a side; it floats between
    those that are not neighbours. The end in the carriage and the counter take no part."""

    yarn: str
    tension: str
    needles: tuple[int, ...]
    to: Side


@record
class PictureRow:
    """One row by hand: into the open hooks from left to right each block's yarn is laid, `blocks` being (yarn, first, last)
    without a gap over all needles in work, neighbouring yarns `crossed` where they meet; then the carriage without yarn crosses
    to `to` and knits them, and the counter counts. A block goes on with the end of its yarn that hangs beside it, if one does."""

    to: Side
    tension: str
    blocks: tuple[tuple[str, int, int], ...]
    crossed: bool = True


@record
class HangFeet:
    """Fold what has been knitted and hang the first garment row of this block, from left to right, on the needles `onto`
    besides what they carry; if it began in waste yarn, that comes away. Empty needles among `onto` have to be in work.

    It is folded up in front of the work, between it and the knitter, so that its purl sides lie together inside, or `behind` it."""

    onto: tuple[int, ...]
    behind: bool = False
    row: int = 0
    """In place of the first row, the one that brought the counter there; 0: the first."""


@record
class SewOff:
    """Cast off `first`..`last` by back-stitch with the tail of the yarn, which was broken at side `start`. Needles go to
    non-working."""

    first: int
    last: int
    start: Side
