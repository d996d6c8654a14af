"""A rate of shaping, as an edge has it."""

from __future__ import annotations

from walewright.record import record


@record
class Rate:
    """`stitches` every `rows` rows. The first move is made after `first` rows of its run at the earliest, and `last` rows follow
    the last one. `at_carriage`: a move is made where the carriage is."""

    stitches: int
    rows: int
    first: int
    last: int
    at_carriage: bool
    pinned: bool = False
    """Whether it begins in the first row where it can, or ends in the last one: then it moves once more than it has whole gaps
    between these two."""

    @property
    def spare(self) -> int:
        """Rows of a run that are no part of a gap, where these are short or it is pinned to a row."""
        return self.first + self.last - self.rows if self.pinned else max(0, self.first + self.last - self.rows)

    def moves(self, rows: int) -> int:
        """How often the edge moves in a run of so many rows."""
        return max(0, (rows - self.spare) // self.rows)
