"""Several shapings that go on at the same time, each told by itself."""

from __future__ import annotations

from walewright.knit.step import Step, Words
from walewright.record import record


@record
class Track(Step):
    """One of them: rows, shaping and repeats in `steps`, `title` what a knitter calls it: the name of an opening, or what the house
    says."""

    title: Words
    steps: tuple[Step, ...]


@record
class Together(Step):
    """From counter value `from_row` to `to_row`, at each row what any of the `tracks` asks for there. Each track counts all
    these rows. At one row wraps go before returns, these before holds and these before the rest, each in the order of the
    tracks."""

    from_row: int
    to_row: int
    tracks: tuple[Track, ...]
