"""Needles: which of them have stitches of a counted piece about a row."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from walewright.counted.model import SizedOpening, SizedPiece, SizedRun


@dataclass(frozen=True, slots=True)
class InWork:
    """Which needles of a piece have stitches about a row: over the whole width (`side` None), or in the part at `side` ("left",
    "right") of `opening`."""

    sized: SizedPiece
    side: str | None = None
    opening: SizedOpening | None = None

    def at(self, row: int) -> tuple[int, int]:
        """First and last slot when all moves up to `row` are made; what is held counts as what is in work."""
        sized, gap = self.sized, self.opening
        first = -sized.start_left - _moved(sized.left, row)
        last = sized.start - sized.start_left - 1 + _moved(sized.right, row)
        if gap is not None and self.side == "left":
            last = gap.first - 1 + _moved(gap.left or (gap.run,), row)
        elif gap is not None and self.side == "right":
            first = gap.first + gap.flat - _moved(gap.right or (gap.run,), row)
        return first, last

    def about(self, row: int) -> tuple[int, int]:
        """The slots that have a stitch just before and just after all that is done at a row. A move may come one row before or
        after its own (see `SizedRun`)."""
        ends = [self.at(near) for near in (row - 2, row - 1, row, row + 1)]
        return max(first for first, _ in ends), min(last for _, last in ends)

    def fewest(self, row: int) -> int:
        """The fewest stitches there are about a row."""
        return min(last - first + 1 for first, last in (self.at(near) for near in (row - 1, row, row + 1)))


def _moved(runs: Sequence[SizedRun], row: int) -> int:
    return sum(run.moved(row) for run in runs)


def widest_of(sized: SizedPiece, from_row: int, to_row: int) -> tuple[int, int]:
    """First and last slot of the widest of the rows after `from_row` up to `to_row`."""
    whole = InWork(sized)
    return max((whole.at(row) for row in range(from_row, max(to_row, from_row + 1))), key=lambda ends: ends[1] - ends[0])
