"""One run of one edge in one size, counted, as its schedule is made from it."""

from __future__ import annotations

from walewright.record import record

PAIR, LEFT, RIGHT, GAP = "pair", "left", "right", "gap"
"""Whose an edge is: both outer ones shaped alike, one of them, or the inner one of a part beside a gap."""


@record
class ShapingSpan:
    """One run of an edge in one size, counted: rows `from_row`..`to_row`, `change` stitches outwards as the part sees it, the
    first `cast_off` of an inward change at once; `steps` are that many moves alike (0: moves as the path has them),
    or, `in_turn`, of so many stitches so often, one after the other.
    `parted`: the rows where the piece parts and where its parts end or rejoin, of each opening."""

    from_row: int
    to_row: int
    change: int
    cast_off: int
    steps: int
    parted: tuple[tuple[int, int], ...] = ()
    in_turn: tuple[tuple[int, int], ...] = ()

    @property
    def rows(self) -> int:
        return self.to_row - self.from_row

    @property
    def sign(self) -> int:
        return -1 if self.change < 0 else 1

    @property
    def rest(self) -> int:
        """Stitches to move after the cast-off."""
        return abs(self.change) - self.cast_off

    def in_parts(self, at: int) -> bool:
        """Whether the row that is `at` rows after the run's beginning is worked on parts."""
        return any(low <= self.from_row + at < high for low, high in self.parted)
