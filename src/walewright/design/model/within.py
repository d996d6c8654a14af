"""What is done within a piece over some of its rows: another fabric, a motif, rows worked again and again."""

from __future__ import annotations

from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.record import record


@record
class Zone:
    """Another fabric from one level to another, over the whole width, or (`width`) over a panel of it whose middle is
    `centre` cm right of the centre line."""

    fabric: str
    from_level: str
    to_level: str
    width: PerSize | None
    centre: PerSize
    origin: Origin
    repeats: CountPerSize = ()
    """Of a panel of a charted fabric given in repeats: how many wide by size (`width` is then the width of so many)."""


@record
class Motif:
    """A chart without a repeat, worked once in the fabric of its place: its first row is the one above `level`, its middle `centre`
    cm right of the centre line."""

    chart: str
    level: str
    centre: PerSize
    origin: Origin


@record
class RepeatStretch:
    """The rows between two levels are worked `times` times in all, by size. Heights of the piece's levels count it once."""

    from_level: str
    to_level: str
    times: CountPerSize
    origin: Origin


@record
class NeedlesOut:
    """Needles that take no part from `from_level` to `to_level`: `every` so many across the width (0: none so), and those at
    `places` (cm right of the middle of the start). `turned`: counted from the other side, as of a mirror image. `worn`: how wide
    the piece is there, folded along them; None where it is not folded."""

    from_level: str
    to_level: str
    every: int
    places: tuple[PerSize, ...]
    origin: Origin
    turned: bool = False
    worn: PerSize | None = None
